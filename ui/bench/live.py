"""``turnpost bench live``: the program's window in practice, with a clip as its camera."""

from __future__ import annotations

import multiprocessing
import os
import sys
import tempfile
import time
from array import array
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import numpy as np
from PySide6.QtCore import QCoreApplication, QObject, Qt, QTimer

from tracker.collector import spare_what_stays
from tracker.errors import RunError
from tracker.session.stage import Step, load_stage_log, setup_steps, stage_path_of
from tracker.vision.messages import LazyFactory, Measured, Message, SourceState
from tracker.vision.service import Service
from ui.bench.film import FilmCamera, Timing
from ui.ports import ClipPlan
from ui.session.flow import Phase

#: The models are loaded, and the person is fitted, within these; seconds.
LEAD_S, FIT_S = 8.0, 14.0
#: A machine that is busy otherwise may need so much longer.
PATIENCE_S = 60.0
#: From so long after the fit on it is looked at.
SETTLED_S = 3.0
#: Spacing of a timer that finds out how long the window was blocked.
PULSE_MS = 5
#: Spacing of looks at the memory, and from so long on what it grows by is told for an hour:
#: what is loaded once is there by then.
MEMORY_EVERY_S, GROWS_FROM_S = 10.0, 120.0
#: Pictures that the landmarks alone are timed on.
ALONE = 300


@dataclass(slots=True)
class LiveFigures:
    """What was seen of a stretch of practice.

    Attributes
    ----------
    lasted_s
        Its length.
    given, dropped
        Pictures of the camera, and those that nobody took.
    late_s
        For each sample the time from its picture until what it changed was drawn.
    blocked_s
        Longest time between two pulses of the window's own timer.
    processor_s
        Processor time of the program with its measuring process; None where the
        system doesn't tell.
    grown_bytes
        By how much their memory has grown; None likewise.
    memory
        Seconds since the begin and bytes of memory, every few seconds.
    repetitions
        Counted meanwhile.
    """

    lasted_s: float = 0.0
    given: int = 0
    dropped: int = 0
    # Bare numbers: what is kept here must not be what grows.
    late_s: array[float] = field(default_factory=lambda: array("d"))
    blocked_s: float = 0.0
    processor_s: float | None = None
    grown_bytes: int | None = None
    memory: list[tuple[float, int]] = field(default_factory=list)
    repetitions: int = 0

    def grows_mb_hour(self) -> float | None:
        """Slope of the memory once all is loaded; None for a stretch too short to tell."""
        late = np.array([m for m in self.memory if m[0] >= GROWS_FROM_S])
        if len(late) < 6:
            return None
        return float(np.polyfit(late[:, 0], late[:, 1], 1)[0] * 3600.0 / 1e6)


def live_table(clip: Path, lasts_s: float) -> Iterable[str]:
    """Lines of the table.

    Parameters
    ----------
    clip
        A clip with its stage log: set-up and exercise.
    lasts_s
        Seconds of practice that are looked at; the exercise is played again and again.
    """
    seen = practise(clip, lasts_s)
    alone_s, landmarks_s = alone_per_frame_s(clip)
    late_ms = 1000.0 * np.array(seen.late_s)
    yield f"{clip.stem} as a camera, {seen.lasted_s:.0f} s of practice in the window, no sound"
    yield f"pictures given, and dropped        {seen.given:8d} {seen.dropped:6d}"
    yield (
        "capture to screen, median and 95 %  "
        f"{np.median(late_ms):7.1f} {np.percentile(late_ms, 95):6.1f} ms"
    )
    yield f"window blocked at the longest      {1000 * seen.blocked_s:8.1f} ms"
    yield f"repetitions counted                {seen.repetitions:8d}"
    yield f"decoding and landmarks alone       {1000 * alone_s:8.2f} ms of processor a picture"
    yield f"landmarks alone                    {1000 * landmarks_s:8.2f} ms of processor a picture"
    if seen.processor_s is None or seen.grown_bytes is None:
        yield "processor and memory are not measured on this system"
        return
    share = seen.processor_s / seen.lasted_s
    picture_s = seen.processor_s / max(seen.given, 1)
    yield f"processor, of one core             {100 * share:8.1f} %"
    yield f"the program / (decode + landmarks) {picture_s / alone_s:8.2f}"
    yield f"the program / landmarks            {picture_s / landmarks_s:8.2f}"
    yield f"memory grown by                    {seen.grown_bytes / 1e6:8.2f} MB"
    grows = seen.grows_mb_hour()
    if grows is not None:
        yield f"memory grows after two minutes by  {grows:8.2f} MB an hour"


def practise(clip: Path, lasts_s: float) -> LiveFigures:
    """Have the window practise with a clip as a camera, and look on.

    Raises
    ------
    RunError
        If it did not come to the exercise, or to its end.
    """
    from ui.opening import make_app
    from ui.settings import Settings

    app = make_app()
    with tempfile.TemporaryDirectory() as scratch, _data_in(Path(scratch)):
        stage = load_stage_log(stage_path_of(clip))
        timing = _timing(clip, stage.steps)
        plan = ClipPlan(clip, _moved(stage.steps, timing, lasts_s), stage.camera.vertical_fov_deg)
        service = Watched(clip, timing, stage.camera.vertical_fov_deg)
        window = _window(plan, service, Settings(Path(scratch) / "window.ini"))
        look = _Look(window, service, timing.exercise_s, lasts_s)
        window.show()
        # As the opening of the program does.
        QTimer.singleShot(0, spare_what_stays)
        window.director.start()
        app.exec()
        window.close()
    if look.failure:
        raise RunError(look.failure)
    return look.figures


def alone_per_frame_s(clip: Path) -> tuple[float, float]:
    """Processor time of a picture's decoding and landmarks, and of its landmarks alone.

    On the exercise's first pictures; a camera's pictures have to be decoded as well.
    """
    from tracker.vision.clips import open_clip
    from tracker.vision.landmarks import LandmarkFinder

    count, landmarks_s = 0, 0.0
    with open_clip(clip) as frames, LandmarkFinder() as finder:
        first = next(iter(frames))
        finder.find(first.image, first.time_s)
        began_s = time.process_time()
        for frame, _ in zip(frames, range(ALONE), strict=False):
            found_s = time.process_time()
            finder.find(frame.image, frame.time_s)
            landmarks_s += time.process_time() - found_s
            count += 1
        return (time.process_time() - began_s) / max(count, 1), landmarks_s / max(count, 1)


class Watched(Service):
    """The real measuring, with a clip as its camera; keeps what has come but is not drawn yet."""

    def __init__(self, clip: Path, timing: Timing, vertical_fov_deg: float | None) -> None:
        known = {} if vertical_fov_deg is None else {"vertical_fov_deg": vertical_fov_deg}
        factory = LazyFactory("calibration.measurer:make_measurer", known)
        super().__init__(FilmCamera(clip, timing), factory)
        self.undrawn_s: list[float] = []

    def poll(self) -> list[Message]:
        """Take the news, and note the samples among them."""
        news = super().poll()
        self.undrawn_s += [m.sample.time_s for m in news if isinstance(m, Measured)]
        return news


@dataclass(frozen=True, slots=True)
class _State:
    """How far everything was at a moment."""

    at_s: float
    given: int
    dropped: int
    used: tuple[float, int] | None


class _Look(QObject):
    """Looks on from the exercise's begin on, for a time; then ends the application."""

    def __init__(self, window: Any, service: Watched, exercise_s: float, lasts_s: float) -> None:
        super().__init__(window)
        self.figures, self.failure = LiveFigures(), ""
        self._window, self._service = window, service
        self._settled_s, self._lasts_s = 0.0, lasts_s
        self._to_s = exercise_s + PATIENCE_S
        self._before: _State | None = None
        self._pulse_s = time.perf_counter()
        self._refresh = window.refresh
        window.refresh = self._refreshed
        self._timer = QTimer(self)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self._pulse)
        self._timer.start(PULSE_MS)

    def _refreshed(self) -> None:
        self._refresh()
        # What the window has asked to be drawn is drawn before a timer of no time ends.
        QTimer.singleShot(0, self._drawn)

    def _drawn(self) -> None:
        undrawn, self._service.undrawn_s = self._service.undrawn_s, []
        if self._before is not None:
            now_s = self._service.now_s()
            self.figures.late_s.extend(now_s - at_s for at_s in undrawn)

    def _pulse(self) -> None:
        now_s = time.perf_counter()
        if self._before is not None:
            self.figures.blocked_s = max(self.figures.blocked_s, now_s - self._pulse_s)
            self._look_at_memory(now_s - self._before.at_s)
        self._pulse_s = now_s
        director = self._window.director
        # Any other trouble of the source goes over by itself, and shows as pictures dropped.
        failed = director.trouble is not None and director.trouble.state == SourceState.failed
        if failed or director.phase in (Phase.saving, Phase.summary):
            self._end(f"the practice ended too early ({director.trouble or director.phase})")
        elif self._service.now_s() >= self._to_s:
            self._end("" if self._before is not None else "the person was not fitted in time")
        elif self._before is None and director.phase == Phase.exercise:
            self._wait_until_settled()

    def _look_at_memory(self, since_s: float) -> None:
        held = self.figures.memory
        if held and since_s < held[-1][0] + MEMORY_EVERY_S:
            return
        used = _used()
        if used is not None:
            held.append((since_s, used[1]))

    def _wait_until_settled(self) -> None:
        """Begin to look some seconds after the fit: it held up pictures and the news of them."""
        now_s = self._service.now_s()
        if not self._settled_s:
            self._settled_s = now_s + SETTLED_S
            self._to_s += SETTLED_S
        elif now_s >= self._settled_s:
            self._before = self._state()
            self._to_s = now_s + self._lasts_s

    def _state(self) -> _State:
        stats = self._service.stats
        return _State(time.perf_counter(), stats.frames, stats.dropped, _used())

    def _end(self, failure: str) -> None:
        self._timer.stop()
        self.failure = failure
        # First: whatever fails now must not leave the bench waiting.
        QCoreApplication.exit(0)
        if self._before is not None:
            self._sum_up(self._before, self._state())

    def _sum_up(self, before: _State, after: _State) -> None:
        seen = self.figures
        seen.lasted_s = after.at_s - before.at_s
        seen.given, seen.dropped = after.given - before.given, after.dropped - before.dropped
        if before.used is not None and after.used is not None:
            seen.processor_s = after.used[0] - before.used[0]
            seen.grown_bytes = after.used[1] - before.used[1]
        live = self._window.director.live
        seen.repetitions = 0 if live is None else live.repetitions


def _used() -> tuple[float, int] | None:
    """Processor seconds and bytes of memory of this process and its children (Linux only)."""
    if sys.platform != "linux":
        return None
    tick_s, page = 1.0 / os.sysconf("SC_CLK_TCK"), os.sysconf("SC_PAGE_SIZE")
    processor_s, memory = 0.0, 0
    for pid in (os.getpid(), *(p.pid for p in multiprocessing.active_children())):
        try:
            # What stands behind the name, which may hold brackets and blanks.
            words = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
            memory += page * int(Path(f"/proc/{pid}/statm").read_text().split()[1])
        except OSError:
            continue
        processor_s += tick_s * (int(words[11]) + int(words[12]))
    return processor_s, memory


def _timing(clip: Path, steps: Iterable[Step]) -> Timing:
    steps = list(steps)
    setup = setup_steps(steps)
    end_s = max(s.to_s for s in steps)
    if not setup or setup[-1].to_s >= end_s:
        raise RunError(f"{clip}: its stage log has no set-up with an exercise after it")
    return Timing(LEAD_S, setup[-1].to_s, FIT_S, end_s)


def _moved(steps: Iterable[Step], timing: Timing, lasts_s: float) -> list[Step]:
    """The steps at the times at which they are played; the exercise lasts as long as asked."""
    out = []
    for step in steps:
        if step.step == "exercise":
            from_s = timing.exercise_s
            to_s = from_s + SETTLED_S + lasts_s + 2 * PATIENCE_S
            out.append(step.model_copy(update={"from_s": from_s, "to_s": to_s}))
            break
        times = {"from_s": step.from_s + timing.lead_s, "to_s": step.to_s + timing.lead_s}
        out.append(step.model_copy(update=times))
    return out


def _window(plan: ClipPlan, service: Watched, settings: Any) -> Any:
    from ui.app import Window
    from ui.screen import bring_back
    from ui.wiring import make_world

    world = make_world()
    world.make_service = lambda _source, _profile: service
    window = Window(world, clip=plan, demo_clip=lambda: plan, settings=settings)
    bring_back(window, window.settings.window)
    return window


@contextmanager
def _data_in(folder: Path) -> Iterator[None]:
    """Keep the user's sessions apart from what the bench records."""
    before: Mapping[str, str] = dict(os.environ)
    os.environ["TURNPOST_DATA"] = str(folder)
    try:
        yield
    finally:
        os.environ.pop("TURNPOST_DATA")
        if "TURNPOST_DATA" in before:
            os.environ["TURNPOST_DATA"] = before["TURNPOST_DATA"]
