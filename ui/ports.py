"""What the director asks of the world: measuring, recording, jobs beside the window, sound.

The real ones are made in ``ui.wiring``; tests hand in their own.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any, Protocol

import numpy as np
from numpy.typing import NDArray

from calibration.mark import MarkFound
from tracker.exercises.events import Cue
from tracker.lens import DEFAULT_LENS, Lens
from tracker.plan.model import Plan
from tracker.practice.day import Told
from tracker.sample import Sample
from tracker.session.live import Dropped, LiveState
from tracker.session.recovery import Interrupted
from tracker.session.stage import Step
from tracker.session.summary_file import Summary
from tracker.vision.messages import Message, SourceState, SourceStats
from ui.sounds.beats import Tempo


class ServiceLike(Protocol):
    """Capture and measuring somewhere else (``tracker.vision.service.Service``)."""

    def start(self) -> None:
        """Begin to measure."""
        ...

    def poll(self) -> list[Message]:
        """Take the news; never waits."""
        ...

    def hold_setup(self, *, keep: bool, take: bool) -> None:
        """Keep the pictures of the set-up, or let them go; ``take`` what comes for a part of it."""
        ...

    def request_fit(self, steps: list[Step], part: str = "") -> None:
        """Ask for a fit, of one part done again if it is named; the answer is news."""
        ...

    def watch_body(self, on: bool, every_s: float = 0.0) -> None:
        """Have shoulders and hands measured, too, or no longer; not more often than that."""
        ...

    def set_preview(self, on: bool) -> None:
        """Have pictures written, or not."""
        ...

    def preview(self) -> NDArray[np.uint8] | None:
        """Give the newest picture (BGR, not mirrored)."""
        ...

    @property
    def stats(self) -> SourceStats:
        """Pictures given so far, and those passed over."""
        ...

    def now_s(self) -> float:
        """Tell the session's time."""
        ...

    def stop(self, timeout_s: float = 2.0) -> None:
        """End within a time."""
        ...


@dataclass(frozen=True, slots=True)
class Saved:
    """A session that was saved: its folder, its summary's file and content."""

    folder: Path
    summary_path: Path
    summary: dict[str, Any]


class RecordingLike(Protocol):
    """One session being judged and written down."""

    def begin(self, step: Step) -> int:
        """A step has begun; gives its number."""
        ...

    def use_setup(self, from_s: float, found: Mapping[str, Any]) -> None:
        """From a time on another set-up holds."""
        ...

    def answer(self, about: str, value: Any, number: int | None = None) -> None:
        """Something was answered, of the session or of a step."""
        ...

    def mark(self, name: str, time_s: float, **values: Any) -> None:
        """Something is worth a place in time."""
        ...

    def untold(self, numbers: Sequence[int]) -> tuple[str, ...]:
        """Tell what the camera could not tell of a set."""
        ...

    def dropped(self, numbers: Sequence[int]) -> Dropped:
        """Whether the head dropped suddenly in any of a set's steps."""
        ...

    def dropping(self, numbers: Sequence[int], *, at_all: bool = False) -> bool:
        """Whether the head drops now in one of a set's steps, and it is not decided yet."""
        ...

    @property
    def looks_on(self) -> bool:
        """Whether samples are of use although a set is over: a drop in it may become a fall."""
        ...

    def tell_by(self, tell: Callable[[Cue], bool]) -> None:
        """Have cues given so; ``tell`` says whether the person gets to know of one."""
        ...

    def feed(self, sample: Sample) -> None:
        """Take a sample."""
        ...

    def advance(self, now_s: float) -> None:
        """Time goes on."""
        ...

    def finish(self, ended: str) -> None:
        """The session ended."""
        ...

    def save(self, into: Path | None = None) -> Saved:
        """Put everything on disk: where it belongs, or into another folder."""
        ...

    def close(self) -> None:
        """Let the files go."""
        ...

    @property
    def fault(self) -> str:
        """Why the disk takes nothing at the moment, or empty."""
        ...

    @property
    def repetitions(self) -> int:
        """Repetitions of the whole session."""
        ...

    @property
    def live(self) -> LiveState:
        """How it stands."""
        ...


@dataclass(slots=True)
class Job:
    """Work that goes on beside the window; ``done`` turns true at its end."""

    done: bool = False
    result: Any = None
    error: Exception | None = None
    wait: Callable[[float], None] = field(default=lambda _s: None)


Runner = Callable[[Callable[[], Any]], Job]


class BeatsLike(Protocol):
    """Sounds the beat."""

    def start(self, tempo_bpm: Tempo, duration_s: float) -> None:
        """Sound the beats of a set from now on."""
        ...

    def stop(self) -> None:
        """Be silent."""
        ...


class NoBeats:
    """No sound."""

    def start(self, tempo_bpm: Tempo, duration_s: float) -> None:
        """Stay silent."""

    def stop(self) -> None:
        """Stay silent."""


class VoiceLike(Protocol):
    """Speaks; nothing it does waits."""

    @property
    def usable(self) -> bool:
        """Whether it can speak now; not before it was prepared."""
        ...

    @property
    def lack(self) -> str:
        """Why it can't speak (``no_engine``, ``no_language``, ``failed``); empty if it can.

        Empty, too, while that is not known yet.
        """
        ...

    @property
    def speaking(self) -> bool:
        """Whether something is being said."""
        ...

    def prepare(self) -> None:
        """Look for an engine and a voice for the language of the words; once is enough."""
        ...

    def say(self, text: str) -> None:
        """Say this now, in place of what is being said."""
        ...

    def stop(self) -> None:
        """Be silent."""
        ...

    def close(self) -> None:
        """Let the engine go."""
        ...


@dataclass(frozen=True, slots=True)
class NoVoice:
    """No voice; ``lack`` says why, or nothing where that need not be said."""

    lack: str = ""
    usable: bool = False
    speaking: bool = False

    def prepare(self) -> None:
        """There is nothing to look for."""

    def say(self, text: str) -> None:
        """Stay silent."""

    def stop(self) -> None:
        """Stay silent."""

    def close(self) -> None:
        """Nothing is held."""


class ScreenReaderLike(Protocol):
    """A screen reader that may be running."""

    @property
    def running(self) -> bool:
        """Whether one listens."""
        ...

    def announce(self, text: str, *, at_once: bool) -> None:
        """Have it say something: when it is silent next, or at once."""
        ...


class NoScreenReader:
    """No screen reader."""

    running = False

    def announce(self, text: str, *, at_once: bool) -> None:
        """Nobody listens."""


@dataclass(frozen=True, slots=True)
class ClipPlan:
    """A clip that stands for a camera, and the steps of its stage log."""

    path: Path
    steps: Sequence[Step]
    vertical_fov_deg: float | None = None


@dataclass(frozen=True, slots=True)
class CameraChoice:
    """A camera by its name, its number and its lasting id."""

    index: int
    name: str
    device_id: str = ""


def _no_watcher(_camera: CameraChoice, _kind: str, _distance_mm: float | None) -> ServiceLike:
    raise RuntimeError("nothing here watches for a sheet")


@dataclass(frozen=True, slots=True)
class Baseline:
    """The next session is done together with the therapist, for later ones to be compared with.

    ``folder`` is a new one for it; None for one beside the other sessions. ``plan_id`` and
    ``person`` are of the plan that it is for; without them it is for any.
    """

    folder: Path | None = None
    plan_id: str | None = None
    person: str | None = None

    def of(self, plan: Plan) -> Baseline:
        """It is for this plan alone."""
        return replace(self, plan_id=plan.plan_id, person=plan.person)

    def is_of(self, plan: Plan | None) -> bool:
        """Whether a session of a plan may be it."""
        if self.plan_id is None:
            return True
        return plan is not None and (plan.plan_id, plan.person) == (self.plan_id, self.person)

    def anew(self) -> Baseline:
        """The same for one more session: where a folder was used, another one beside it."""
        folder, number = self.folder, 1
        while folder is not None and self.folder is not None and folder.exists():
            number += 1
            folder = self.folder.with_name(f"{self.folder.name}-{number}")
        return replace(self, folder=folder)


#: Marks on a wall, each in mm: right of the camera, above it, from the eyes.
Marks = Sequence[tuple[float, float, float]]


@dataclass(slots=True)
class World:
    """Everything the director needs from outside.

    Attributes
    ----------
    make_service
        From a camera or a clip's path, and the profile of a person, the file of a kept
        one, or None, to a service.
    kept_profile
        The file of the profile that was kept for a camera and what is worn (glasses, and
        the eye in use where it isn't both), None without one.
    keep_profile
        Keeps a profile for a camera and what is worn.
    reads_marks
        Whether the kept profile in a file has taught the eyes to look at marks on a wall (each
        in mm: right of the camera, above it, from the eyes).
    make_watcher
        From a camera, "paper" or "card", and its distance in mm or None, to a service that
        measures the camera's lens by it.
    lens, keep_lens
        What is known of a camera's lens; keeps what was found out.
    mark, keep_mark
        What a mark on the wall showed for the kept profile; keeps or forgets it.
    make_recording
        From what the set-up found to a recording.
    make_planned
        From a plan, and what is known of it if it is the baseline, to the recording of a session.
    make_reported
        From a plan to the recording of practice that no camera saw.
    forget
        Deletes the folder of a session; raises RunError where it can't.
    was_sent
        Whether the session in a folder was handed over to anybody.
    history
        Summaries of earlier sessions with a plan, oldest first; also of those that lie beside
        the folder of the next one, where that is given.
    of_today
        What all sessions on this computer say of today, those that were not saved among them; also
        of those that lie beside the folder of the next one, where that is given.
    cameras
        The cameras there are.
    look
        Why a camera can't be used, as far as one can tell without opening it: the state
        and the driver's word; None where nothing is known to be wrong. It may take long.
    run
        Runs a job beside the window.
    beats
        Sounds the beat.
    voice
        Speaks in a planned session.
    screen_reader
        Is told what would be spoken, where one is running.
    interrupted
        The sessions that broke off before.
    save_interrupted
        Saves one of them and gives its folder.
    """

    make_service: Callable[[CameraChoice | Path, Any], ServiceLike]
    make_recording: Callable[[dict[str, Any]], RecordingLike]
    cameras: Callable[[], list[CameraChoice]]
    run: Runner
    make_planned: Callable[[Plan, Baseline | None], RecordingLike]
    make_reported: Callable[[Plan], RecordingLike]
    look: Callable[[CameraChoice], tuple[SourceState, str] | None] = lambda _camera: None
    forget: Callable[[Path], None] = lambda _folder: None
    was_sent: Callable[[Path], bool] = lambda _folder: False
    history: Callable[[Plan, Path | None], Sequence[Summary]] = lambda _plan, _new: []
    of_today: Callable[[Path | None], Sequence[Told]] = lambda _new: []
    kept_profile: Callable[[CameraChoice, str], Path | None] = lambda _camera, _glasses: None
    keep_profile: Callable[[Any, CameraChoice, str], None] = lambda _p, _c, _g: None
    reads_marks: Callable[[Path, Marks], bool] = lambda _path, _marks: True
    make_watcher: Callable[[CameraChoice, str, float | None], ServiceLike] = _no_watcher
    lens: Callable[[CameraChoice], Lens] = lambda _camera: DEFAULT_LENS
    keep_lens: Callable[[CameraChoice, Lens], None] = lambda _camera, _lens: None
    mark: Callable[[CameraChoice, str], MarkFound | None] = lambda _camera, _worn: None
    keep_mark: Callable[[CameraChoice, str, MarkFound | None], None] = lambda _c, _w, _m: None
    beats: BeatsLike = field(default_factory=NoBeats)
    voice: VoiceLike = field(default_factory=NoVoice)
    screen_reader: ScreenReaderLike = field(default_factory=NoScreenReader)
    interrupted: Callable[[], list[Interrupted]] = list
    save_interrupted: Callable[[Interrupted], Path] = lambda session: session.folder
