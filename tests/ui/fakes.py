"""Stand-ins for measuring, recording and jobs: everything runs in the test's own time."""

from __future__ import annotations

import json
import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import numpy as np

from calibration.mark import MarkFound
from calibration.parts import PartFound
from calibration.report import Again
from tracker.errors import RunError
from tracker.exercises.events import Cue
from tracker.lens import DEFAULT_LENS, Lens
from tracker.plan.model import Plan
from tracker.practice.day import Told
from tracker.sample import Sample
from tracker.session.engine import Engine
from tracker.session.flags import REPORTED
from tracker.session.journal import MemoryJournal
from tracker.session.live import Dropped, LiveState, SessionInfo
from tracker.session.projections import session_record
from tracker.session.recovery import Interrupted
from tracker.session.stage import Step
from tracker.session.summary import summarise
from tracker.session.summary_file import Summary
from tracker.vision.messages import (
    Fitted,
    Measured,
    Message,
    SourceChanged,
    SourceState,
    SourceStats,
)
from ui.geometry import FieldExtent
from ui.ports import Baseline, CameraChoice, ClipPlan, Job, NoVoice, Saved, VoiceLike, World

EXTENT = FieldExtent((0.0, -100.0), 160.0, 80.0)
CAMERA = CameraChoice(0, "Test camera")


@dataclass(frozen=True)
class Report:
    """What a fit gives; nobody may change it, as nobody may the real one."""

    steps: list[Step]
    profile: str = "the person"
    error_deg: float = 0.7
    findings: tuple[str, ...] = ()
    ok: bool = True
    parts: tuple[PartFound, ...] = ()
    again: Again | None = None


class FakeService:
    """A measuring process whose clock and news the test sets."""

    def __init__(self, source: Any, profile: Any) -> None:
        self.source, self.profile = source, profile
        self.time_s = 0.0
        self.news: list[Message] = []
        self.fit_steps: list[Step] | None = None
        self.fit_part = ""
        #: What was said of the set-up's pictures: kept or not, and whether new ones are taken.
        self.held: list[tuple[bool, bool]] = []
        self.started = self.stopped = False
        self.preview_on = self.body_on = False
        self.body_every_s = 0.0
        self.picture: Any = None
        self.stats = SourceStats(width_px=640, height_px=480)

    def start(self) -> None:
        self.started = True
        self.news.append(SourceChanged(SourceState.opening))

    def poll(self) -> list[Message]:
        news, self.news = self.news, []
        return news

    def hold_setup(self, *, keep: bool, take: bool) -> None:
        self.held.append((keep, take))

    def request_fit(self, steps: list[Step], part: str = "") -> None:
        self.fit_steps, self.fit_part = steps, part

    def watch_body(self, on: bool, every_s: float = 0.0) -> None:
        self.body_on, self.body_every_s = on, every_s

    def set_preview(self, on: bool) -> None:
        self.preview_on = on

    def preview(self) -> Any:
        return self.picture if self.preview_on else None

    def now_s(self) -> float:
        return self.time_s

    def stop(self, timeout_s: float = 2.0) -> None:  # noqa: ARG002
        self.stopped = True


class FakeRecording:
    """The real engine on a journal in memory."""

    def __init__(
        self,
        setup: dict[str, Any],
        folder: Path,
        plan: Plan | None = None,
        notes: tuple[str, ...] = (),
        baseline: Baseline | None = None,
    ) -> None:
        self.setup, self.folder = setup, folder
        self.journal = MemoryJournal()
        about = SessionInfo(session_id="s1", setup=setup, notes=notes)
        if plan is not None:
            about = about.model_copy(update={"plan_id": plan.plan_id, "person": plan.person})
        about = about.model_copy(update={"baseline": baseline is not None})
        self.engine = Engine(self.journal, about=about)
        self.fail: Exception | None = None
        self.fault = ""
        self.closed = False

    @property
    def live(self) -> LiveState:
        return self.engine.live

    @property
    def repetitions(self) -> int:
        return sum(run.counter.repetitions for run in self.engine.runs)

    def begin(self, step: Step) -> int:
        return self.engine.begin(step)

    def use_setup(self, from_s: float, found: Any) -> None:
        self.engine.use_setup(from_s, found)

    def answer(self, about: str, value: Any, number: int | None = None) -> None:
        self.engine.answer(about, value, number)

    def untold(self, numbers: Sequence[int]) -> tuple[str, ...]:
        return self.engine.untold(numbers)

    def dropped(self, numbers: Sequence[int]) -> Dropped:
        return self.engine.dropped(numbers)

    def dropping(self, numbers: Sequence[int], *, at_all: bool = False) -> bool:
        return self.engine.dropping(numbers, at_all=at_all)

    @property
    def looks_on(self) -> bool:
        return self.engine.looks_on

    def mark(self, name: str, time_s: float, **values: Any) -> None:
        self.engine.mark(name, time_s, **values)

    def tell_by(self, tell: Callable[[Cue], bool]) -> None:
        self.engine.tell = tell

    def feed(self, sample: Sample) -> None:
        self.engine.feed(sample)

    def advance(self, now_s: float) -> None:
        self.engine.advance(now_s)

    def finish(self, ended: str) -> None:
        self.engine.finish(ended)

    def close(self) -> None:
        self.closed = True

    def save(self, into: Path | None = None) -> Saved:
        if self.fail is not None and into is None:
            raise self.fail
        self.folder = into or self.folder
        summary = summarise(session_record(self.journal.content())).model_dump(mode="json")
        self.folder.mkdir(parents=True, exist_ok=True)
        path = self.folder / "summary.json"
        path.write_text(json.dumps(summary), encoding="utf-8")
        return Saved(self.folder, path, summary)


@dataclass
class Beats:
    """Notes what should sound."""

    sounding: tuple[Any, float] | None = None
    started: int = 0

    def start(self, tempo_bpm: Any, duration_s: float) -> None:
        self.sounding = (tempo_bpm, duration_s)
        self.started += 1

    def stop(self) -> None:
        self.sounding = None


@dataclass
class Voice:
    """Notes what is spoken, and when; ``lasts`` keeps it speaking until the test says else."""

    usable: bool = True
    lack: str = ""
    lasts: bool = False
    speaking: bool = False
    prepared: int = 0
    closed: bool = False
    clock: Callable[[], float] = lambda: 0.0
    spoken: list[tuple[float, str]] = field(default_factory=list)

    @property
    def texts(self) -> list[str]:
        return [text for _, text in self.spoken]

    def prepare(self) -> None:
        self.prepared += 1

    def say(self, text: str) -> None:
        self.spoken.append((self.clock(), text))
        self.speaking = self.lasts

    def stop(self) -> None:
        self.speaking = False

    def close(self) -> None:
        self.closed = True


@dataclass
class ScreenReader:
    """Notes what is announced."""

    running: bool = False
    announced: list[tuple[str, bool]] = field(default_factory=list)

    def announce(self, text: str, *, at_once: bool) -> None:
        self.announced.append((text, at_once))


def run_at_once(work: Callable[[], Any]) -> Job:
    """A job that is done when it begins."""
    try:
        return Job(done=True, result=work())
    except Exception as error:
        return Job(done=True, error=error)


@dataclass
class FakeWorld:
    """A world whose parts the test can look at."""

    folder: Path
    cameras: list[CameraChoice] = field(default_factory=lambda: [CAMERA])
    look: Callable[[CameraChoice], tuple[SourceState, str] | None] = lambda _camera: None
    services: list[FakeService] = field(default_factory=list)
    recordings: list[FakeRecording] = field(default_factory=list)
    beats: Beats = field(default_factory=Beats)
    voice: VoiceLike = field(default_factory=NoVoice)
    screen_reader: ScreenReader = field(default_factory=ScreenReader)
    interrupted: list[Interrupted] = field(default_factory=list)
    recovered: list[Interrupted] = field(default_factory=list)
    cannot_save: set[Path] = field(default_factory=set)
    forgotten: list[Path] = field(default_factory=list)
    history: list[Summary] = field(default_factory=list)
    of_today: list[Told] = field(default_factory=list)
    profiles: dict[tuple[str, str], Any] = field(default_factory=dict)
    watchers: list[tuple[str, float | None]] = field(default_factory=list)
    lenses: dict[str, Lens] = field(default_factory=dict)
    marks: dict[tuple[str, str], MarkFound | None] = field(default_factory=dict)

    def world(self) -> World:
        return World(
            make_service=self._service,
            make_recording=self._recording,
            cameras=lambda: list(self.cameras),
            look=lambda camera: self.look(camera),
            run=run_at_once,
            make_planned=self._planned,
            make_reported=self._reported,
            forget=self.forgotten.append,
            kept_profile=lambda camera, glasses: (
                Path("kept.npz") if (camera.name, glasses) in self.profiles else None
            ),
            keep_profile=self._keep,
            make_watcher=self._watcher,
            lens=lambda camera: self.lenses.get(camera.name, DEFAULT_LENS),
            mark=lambda camera, worn: self.marks.get((camera.name, worn)),
            keep_mark=lambda camera, worn, found: self.marks.update({(camera.name, worn): found}),
            keep_lens=lambda camera, lens: self.lenses.update({camera.name: lens}),
            history=lambda plan, _new: [
                s for s in self.history if s.plan_id in (None, plan.plan_id)
            ],
            of_today=lambda _new: list(self.of_today),
            beats=self.beats,
            voice=self.voice,
            screen_reader=self.screen_reader,
            interrupted=lambda: list(self.interrupted),
            save_interrupted=self._save_interrupted,
        )

    def _save_interrupted(self, session: Interrupted) -> Path:
        if session.folder in self.cannot_save:
            raise RunError(f"{session.folder.name}: the disk is full")
        self.recovered.append(session)
        return session.folder

    def _service(self, source: Any, profile: Any) -> FakeService:
        self.services.append(FakeService(source, profile))
        return self.services[-1]

    def _watcher(self, camera: CameraChoice, kind: str, distance_mm: float | None) -> FakeService:
        self.watchers.append((kind, distance_mm))
        return self._service(camera, None)

    def _recording(self, setup: dict[str, Any]) -> FakeRecording:
        self.recordings.append(FakeRecording(setup, self.folder / f"r{len(self.recordings)}"))
        return self.recordings[-1]

    def _keep(self, profile: Any, camera: CameraChoice, glasses: str) -> None:
        self.profiles[camera.name, glasses] = profile

    def _planned(self, plan: Plan, baseline: Baseline | None) -> FakeRecording:
        made = FakeRecording({}, self.folder / f"r{len(self.recordings)}", plan, baseline=baseline)
        self.recordings.append(made)
        return made

    def _reported(self, plan: Plan) -> FakeRecording:
        made = FakeRecording({}, self.folder / f"r{len(self.recordings)}", plan, (REPORTED,))
        self.recordings.append(made)
        return made

    @property
    def service(self) -> FakeService:
        return self.services[-1]


def seen(time_s: float, **values: float) -> Sample:
    """A sample of a face that is seen well."""
    return Sample(time_s, **({"face_height_px": 180.0, "light": 0.5, "quality": 0.9} | values))


def turning(time_s: float, start_s: float, amplitude_deg: float = 18.0) -> Sample:
    """A head that turns at 60 beats a minute with the eyes on a target 600 mm away."""
    yaw = amplitude_deg * math.sin(math.pi * (time_s - start_s)) if time_s > start_s else 0.0
    return seen(
        time_s,
        head_yaw_deg=yaw,
        head_pitch_deg=0.0,
        head_roll_deg=0.0,
        head_x_mm=0.0,
        head_y_mm=0.0,
        head_z_mm=0.0,
        neck_x_mm=0.0,
        neck_y_mm=0.0,
        neck_z_mm=0.0,
        eye_yaw_deg=-yaw,
        eye_pitch_deg=0.0,
        gaze_yaw_deg=0.0,
        gaze_pitch_deg=0.0,
        eye_open=1.0,
    )


def feed(
    service: FakeService,
    director: Any,
    until_s: float,
    make: Callable[[float], Sample],
    rate_hz: float = 30,
) -> None:
    """Let a service measure so many samples a second up to a time, ticking the director."""
    while service.time_s < until_s - 1e-9 and not service.stopped:
        service.time_s += 1 / rate_hz
        service.news.append(Measured(make(service.time_s)))
        director.tick()


def answer_fit(service: FakeService, director: Any) -> None:
    """Answer a request for a fit with the steps as they were."""
    assert service.fit_steps is not None
    service.news.append(Fitted(Report(list(service.fit_steps))))
    director.tick()


def clip_steps() -> list[Step]:
    """A short stage log: rest, four looks, turn, nod, three repetitions of turns."""
    rows: list[dict[str, Any]] = [{"from_s": 0, "to_s": 1, "step": "rest"}]
    middle = (0.0, -60.0, 600.0)
    looks = ((120.0, -60.0), (-120.0, -60.0), (0.0, 30.0), (0.0, -150.0))
    for k, (x, y) in enumerate(looks):
        place = (x, y, 600.0)
        rows.append({"from_s": 1 + k, "to_s": 2 + k, "step": "look", "target_mm": place})
    rows.append({"from_s": 5, "to_s": 7, "step": "turn_slowly"})
    rows.append({"from_s": 7, "to_s": 9, "step": "nod_slowly"})
    rows.append(
        {
            "from_s": 9,
            "to_s": 15.5,
            "step": "exercise",
            "exercise": "turns-on-target",
            "entry_id": "e1",
            "tempo_bpm": 60,
        }
    )
    return [Step.model_validate({"target_mm": middle} | r) for r in rows]


#: The clip plan and the window's size that most tests take.
PLAN = ClipPlan(Path("sample.mp4"), clip_steps())
SIZE = (1366, 768)
#: Makes a window (see ``conftest.py``).
Make = Callable[..., Any]


def grey_picture() -> Any:
    """A plain picture with a bright side, so that mirroring shows."""
    picture = np.full((360, 640, 3), 90, dtype=np.uint8)
    picture[:, :200] = 200
    return picture
