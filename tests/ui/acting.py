"""A clip as a camera: its person does what is asked for once it is asked.

The pictures, the measuring process and the measurer are the real ones. The session's clock is
that of the pictures, as for any clip, so that a slow machine changes nothing. What the test adds
is a file of cues: from what time on the person goes through the set-up of the clip, and from what
time on through its exercise. Otherwise the person sits still.

What is not the program's own: the targets of the set-up are the clip's, in its order and at its
times (:meth:`Acting.setup_asked`), because its person looks there and nowhere else.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from sample_clips import shipped_clip
from tests.ui.fakes import CAMERA, Beats, FakeWorld
from tests.ui.patient import Person
from tracker.frame import Frame
from tracker.practice.from_clips import shifted_step
from tracker.practice.tasks import DoSet
from tracker.session.stage import SETUP_STEPS, load_stage_log, stage_path_of
from tracker.vision.clips import open_clip
from tracker.vision.messages import Begin, LazyFactory, SourceState, SourceStats
from tracker.vision.service import Limits, Service
from ui.app import Window
from ui.geometry import FieldExtent
from ui.ports import ServiceLike, World
from ui.session import asked

CLIP = shipped_clip("turns-good")
LOG = load_stage_log(stage_path_of(CLIP))
SETUP = [s for s in LOG.steps if s.step in SETUP_STEPS]
EXERCISE = next(s for s in LOG.steps if s.step == "exercise")
#: Its first second, before a blink: somebody who sits still.
STILL_S = 1.0
#: The clip's turns are those of 60 beats a minute, the half-minute try asks for 40.
SLOWER = 1.5
#: Every third picture of stillness and of the set-up is taken, and every second one of the turns.
STRIDE, STEP_S, TURNS_STRIDE = 3, 1 / 10, 2
#: No faster than this while nobody has to wait for it, in seconds a picture.
PACE_S = 1 / 30


@dataclass(frozen=True)
class ActedClip:
    """The source, as the measuring process gets it."""

    cues: Path

    def open_feed(self, _begin: Begin) -> ActedFeed:
        return ActedFeed(self.cues)


class ActedFeed:
    """Pictures one after the other, each as soon as the one before is measured."""

    def __init__(self, cues: Path) -> None:
        self._cues, self._taken, self._k, self._time_s = cues, 0, 0, 0.0
        self._still = [i for _, i in pictures(0.0, STILL_S, STRIDE)]
        height, width = self._still[0].shape[:2]
        self._stats = SourceStats(width, height, 1 / STEP_S)
        self._frames = self._acted()

    def _acted(self) -> Iterator[tuple[float, NDArray[np.uint8]]]:
        while True:
            for part, at_s in self._new_cues():
                if part == "later":
                    self._time_s += at_s
                    continue
                while self._time_s + STEP_S < at_s:
                    yield self._time_s + STEP_S, self._next_still()
                begin_s = max(at_s, self._time_s + STEP_S)
                if part == "setup":
                    for clip_s, image in pictures(0.0, SETUP[-1].to_s, STRIDE):
                        yield begin_s + clip_s, image
                else:
                    first_s, last_s = EXERCISE.from_s, EXERCISE.to_s
                    for clip_s, image in pictures(first_s, last_s, TURNS_STRIDE):
                        yield begin_s + (clip_s - first_s) * SLOWER, image
            time.sleep(PACE_S)
            yield self._time_s + STEP_S, self._next_still()

    def _new_cues(self) -> list[tuple[str, float]]:
        lines = self._cues.read_text().splitlines() if self._cues.exists() else []
        new, self._taken = lines[self._taken :], len(lines)
        return [(part, float(at_s)) for part, at_s in map(str.split, new)]

    def _next_still(self) -> NDArray[np.uint8]:
        """To and fro, so that nothing jumps."""
        n = len(self._still)
        at = self._k % (2 * n - 2)
        return self._still[at if at < n else 2 * n - 2 - at]

    def get(self, _timeout_s: float) -> Frame:
        self._time_s, image = next(self._frames)
        self._k += 1
        return Frame(self._k, self._time_s, image)

    @property
    def state(self) -> tuple[SourceState, str]:
        return SourceState.running, ""

    @property
    def stuck(self) -> bool:
        return False

    def stats(self) -> SourceStats:
        return replace(self._stats, frames=self._k)

    def pause(self) -> None:
        """Waits anyway."""

    def go_on(self) -> None:
        """Waited anyway."""

    def close(self) -> None:
        self._frames.close()  # type: ignore[attr-defined]


def pictures(from_s: float, to_s: float, stride: int) -> Iterator[tuple[float, NDArray[np.uint8]]]:
    """Pictures of the clip with their times in it."""
    with open_clip(CLIP) as clip:
        for k, frame in enumerate(clip):
            if frame.time_s >= to_s:
                return
            if frame.time_s >= from_s and k % stride == 0:
                yield frame.time_s, frame.image


class Acting:
    """Somebody before a window of the program: brings the clip's person to do what is asked."""

    def __init__(self, folder: Path, director: Callable[[], Any]) -> None:
        self._folder, self._director, self._made = folder, director, 0
        self._set: Any = None

    @property
    def _cues(self) -> Path:
        return self._folder / f"cues-{self._made}"

    def world(self, real: World) -> World:
        """The real world, with this clip for its camera and no sound."""
        real.make_service, real.cameras = self._service, lambda: [CAMERA]
        real.look, real.beats = lambda _camera: None, Beats()
        return real

    def _service(self, _source: Any, profile: Any) -> ServiceLike:
        self._made += 1
        given = {} if profile is None else {"profile": profile}
        factory = LazyFactory("calibration.measurer:make_measurer", given)
        limits = Limits(clip_s=60.0)
        service = Service(ActedClip(self._cues), factory, limits=limits, keep_spare=False)
        # Its clock is that of its pictures.
        service._clip = True
        return service

    def _cue(self, part: str, time_s: float) -> None:
        with self._cues.open("a") as file:
            file.write(f"{part} {time_s}\n")

    def setup_asked(
        self, begin_s: float, extent: FieldExtent, _distance_mm: float, **_: Any
    ) -> list[asked.Asked]:
        """Ask for the clip's set-up in place of the program's own: its looks in its order."""
        begin_s += 0.5
        self._cue("setup", begin_s - self._director()._offset_s)
        drawn = asked.clip_asked([shifted_step(s, begin_s) for s in SETUP], extent)
        return [replace(a, step=_on_screen(a, extent)) for a in drawn]

    def look_on(self) -> None:
        """Turn the head when a set has begun."""
        task = self._director().task
        if isinstance(task, DoSet) and self._director().asked and task is not self._set:
            self._set = task
            self._cue("turns", self._director().asked.step.from_s - self._director()._offset_s)

    def wait(self, seconds: float) -> None:
        """Let time pass without pictures."""
        self._cue("later", seconds)


def _on_screen(drawn: asked.Asked, extent: FieldExtent) -> Any:
    return drawn.step.model_copy(update={"screen_mm": extent.on_screen(drawn.offset)})


class Patient(Person):
    """A person whose camera shows a clip, measured as any camera is; time is that of the clip."""

    def __init__(self, qtbot: QtBot, window: Window, fake: FakeWorld, acting: Acting) -> None:
        super().__init__(window, fake)
        self.director.clock = time.monotonic
        self._qtbot, self._acting = qtbot, acting

    def settle(self) -> None:
        self.director.tick()
        if hasattr(self, "_acting"):
            self._acting.look_on()
        self.window.refresh()
        # A page that has just come needs a few rounds to be laid out.
        for _ in range(4):
            QApplication.processEvents()

    def until(self, reached: Callable[[], bool]) -> None:
        """Let the program and its measuring work until something is reached."""

        def now() -> bool:
            self.window.tick()
            self._acting.look_on()
            return reached()

        self._qtbot.waitUntil(now, timeout=120_000)
        self.settle()

    def seen(self) -> None:
        """The camera has found the face."""
        self.until(lambda: self.director.preview() is not None and self.director.sample is not None)

    def until_asked(self, *tasks: type) -> None:
        self.until(lambda: isinstance(self.director.task, tasks))
