"""The real world for the director: worker process, engine and journal, cameras, threads, sound.

Nothing here imports OpenCV or MediaPipe; those live in the measuring process.
"""

from __future__ import annotations

import contextlib
import datetime as dt
import secrets
import shutil
from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from typing import Any

from calibration.mark import MarkFound
from tracker.errors import RunError, TurnpostError, system_reason
from tracker.exercises.events import Cue
from tracker.handover.sent import record
from tracker.lens import Lens
from tracker.plan.model import Plan
from tracker.plan.starter import TRY_ID
from tracker.practice.day import Told
from tracker.practice.history import load_history, load_today
from tracker.sample import Sample
from tracker.session.engine import Engine
from tracker.session.files import data_folder, make_private_folder, session_folder
from tracker.session.flags import REPORTED
from tracker.session.journal import FileJournal
from tracker.session.live import Dropped, LiveState, SessionInfo
from tracker.session.recovery import Interrupted, interrupted_sessions, save_interrupted
from tracker.session.saving import JOURNAL_NAME, MOVED_NAME, SUMMARY_NAME, save_session
from tracker.session.stage import Step, load_stage_log, stage_path_of
from tracker.session.summary_file import Summary
from tracker.vision.messages import CameraSource, ClipSource, LazyFactory, SourceState
from ui import background
from ui.ports import (
    Baseline,
    BeatsLike,
    CameraChoice,
    ClipPlan,
    Marks,
    NoBeats,
    NoScreenReader,
    NoVoice,
    Saved,
    ScreenReaderLike,
    ServiceLike,
    VoiceLike,
    World,
)
from ui.setup.lens_store import camera_key, keep_lens, keep_mark, load_lens, load_mark
from ui.sounds.beats import beats_until

#: The folder of the kept profiles.
PROFILES = "profiles"
#: The sample that the demo plays.
DEMO_CLIP = "turns-good"


class Recording:
    """One session: the engine that judges it and the journal that keeps it."""

    def __init__(
        self,
        setup: dict[str, Any],
        notes: tuple[str, ...] = (),
        plan: Plan | None = None,
        baseline: Baseline | None = None,
    ) -> None:
        if baseline is not None and not baseline.is_of(plan):
            baseline = None
        now = dt.datetime.now().astimezone()
        session_id = f"{now:%Y%m%d-%H%M%S}-{secrets.token_hex(2)}"
        self.folder = session_folder(session_id)
        if baseline is not None and baseline.folder is not None:
            self.folder = baseline.folder
        self._journal = FileJournal(self.folder / JOURNAL_NAME)
        about = SessionInfo(
            session_id=session_id,
            started_at=now.isoformat(timespec="seconds"),
            program_version=_version(),
            setup=setup,
            notes=notes,
            person=None if plan is None else plan.person,
            plan_id=None if plan is None else plan.plan_id,
            table_group=None if plan is None else plan.table_group,
            baseline=baseline is not None,
        )
        self._engine = Engine(self._journal, about=about)

    @property
    def live(self) -> LiveState:
        """How it stands."""
        return self._engine.live

    @property
    def repetitions(self) -> int:
        """Repetitions of the whole session, those before a pause too."""
        return sum(run.counter.repetitions for run in self._engine.runs)

    def begin(self, step: Step) -> int:
        """A step has begun; gives its number."""
        return self._engine.begin(step)

    def use_setup(self, from_s: float, found: Mapping[str, Any]) -> None:
        """From a time on another set-up holds."""
        self._engine.use_setup(from_s, found, _notes_of(found))

    def answer(self, about: str, value: Any, number: int | None = None) -> None:
        """Something was answered."""
        self._engine.answer(about, value, number)

    def untold(self, numbers: Sequence[int]) -> tuple[str, ...]:
        """What the camera could not tell of a set."""
        return self._engine.untold(numbers)

    def dropped(self, numbers: Sequence[int]) -> Dropped:
        """Whether the head dropped suddenly in any of a set's steps."""
        return self._engine.dropped(numbers)

    def dropping(self, numbers: Sequence[int], *, at_all: bool = False) -> bool:
        """Whether the head drops now in one of a set's steps."""
        return self._engine.dropping(numbers, at_all=at_all)

    @property
    def looks_on(self) -> bool:
        """Whether samples are of use although a set is over."""
        return self._engine.looks_on

    def mark(self, name: str, time_s: float, **values: Any) -> None:
        """Something is worth a place in time."""
        self._engine.mark(name, time_s, **values)

    def tell_by(self, tell: Callable[[Cue], bool]) -> None:
        """Have cues given so; ``tell`` says whether the person gets to know of one."""
        self._engine.tell = tell

    def feed(self, sample: Sample) -> None:
        """Take a sample."""
        self._engine.feed(sample)

    def advance(self, now_s: float) -> None:
        """Time goes on."""
        self._engine.advance(now_s)

    def finish(self, ended: str) -> None:
        """The session ended."""
        self._engine.finish(ended)

    @property
    def fault(self) -> str:
        """Why the disk takes nothing at the moment, or empty."""
        return self._journal.fault

    def save(self, into: Path | None = None) -> Saved:
        """Put everything on disk: journal, trace, stage log, summary.

        The journal stays locked until the summary stands, so that nobody takes the
        session for one that broke off.
        """
        self._journal.finish()
        folder = self.folder
        if into is not None:
            folder = make_private_folder(into / f"turnpost-{self.folder.name}")
            self._journal.rescue(folder / JOURNAL_NAME)
        elif self._journal.fault:
            raise RunError(f"{folder}: can't be written ({self._journal.fault})")
        summary = save_session(folder)
        self._journal.close()
        if into is not None:
            # What is there of it is no longer a session that broke off.
            first = self.folder / JOURNAL_NAME
            with contextlib.suppress(OSError):
                first.rename(first.with_name(MOVED_NAME))
        return Saved(folder, folder / SUMMARY_NAME, summary.model_dump(mode="json"))

    def close(self) -> None:
        """Let the journal go; what could not be saved is offered at the next start."""
        self._journal.close()


def _save_interrupted(session: Interrupted) -> Path:
    save_interrupted(session)
    return session.folder


def _version() -> str:
    from ui.cli import program_version

    return program_version()


def make_recording(setup: dict[str, Any]) -> Recording:
    """Recording of a session; says in it when the set-up left something out."""
    return Recording(setup, _notes_of(setup))


def make_planned(plan: Plan, baseline: Baseline | None = None) -> Recording:
    """Recording of a session of a plan; what its set-ups find comes later."""
    if plan.plan_id == TRY_ID:
        return Recording({}, ("first_try",), plan)
    return Recording({}, plan=plan, baseline=baseline)


def make_reported(plan: Plan) -> Recording:
    """Recording of practice with a plan that no camera saw."""
    return Recording({}, (REPORTED,), plan)


def forget_session(folder: Path) -> None:
    """Delete a session that was only told of, and by mistake.

    Raises
    ------
    RunError
        If it can't be moved out of the sessions; it counts as before then.
    """
    # Half of a folder must not be left where sessions are looked for.
    gone = folder.parent.parent / f"taken-back-{folder.name}"
    try:
        folder.rename(gone)
    except OSError as error:
        raise RunError(f"{folder}: can't be deleted ({system_reason(error)})") from error
    shutil.rmtree(gone, ignore_errors=True)


def was_sent(folder: Path) -> bool:
    """Whether a session went into a file for anybody."""
    return any(folder.name in sessions for sessions in record(data_folder()).values())


#: What a set-up found that limits the figures.
SAID_IN_SUMMARY = ("gaze_not_fitted", "coarse_picture")


def _notes_of(setup: Mapping[str, Any]) -> tuple[str, ...]:
    """What limits the figures after a set-up."""
    if not setup.get("calibration"):
        return ("setup_failed",)
    return tuple(n for n in setup.get("findings") or [] if n in SAID_IN_SUMMARY)


def history_of(plan: Plan, new: Path | None = None) -> list[Summary]:
    """Summaries of earlier sessions with a plan; one that can't be read is left out.

    ``new`` is the folder that the next session gets, if it is to lie elsewhere: those that lie
    beside it count, too. In the clinic they are what is known of the practice at home; but what
    names nobody there is everybody's, and counts from this computer's own folder alone.
    """
    known, _ = load_history(data_folder() / "sessions", plan, own_computer=True)
    if new is not None:
        known += load_history(new.parent, plan)[0]
    once = {s.session_id or id(s): s for s in known}
    return sorted(once.values(), key=lambda s: s.started_at or "")


def told_of_today(new: Path | None = None) -> list[Told]:
    """What sessions say of today: of this computer's own folder all.

    ``new`` is as in :func:`history_of`; of what lies beside it, what names somebody.
    """
    today = dt.date.today()
    told = load_today(data_folder() / "sessions", today)
    beside = [] if new is None else load_today(new.parent, today)
    return [*told, *(t for t in beside if t.person is not None)]


def make_service(source: CameraChoice | Path, profile: Any) -> ServiceLike:
    """Measuring process for a camera or a clip."""
    from tracker.vision.service import Service

    arguments: dict[str, Any] = {}
    if profile is not None:
        arguments["kept" if isinstance(profile, Path) else "profile"] = profile
    if isinstance(source, Path):
        log = load_stage_log(stage_path_of(source))
        if log.camera.vertical_fov_deg is not None:
            arguments["vertical_fov_deg"] = log.camera.vertical_fov_deg
        where: Any = ClipSource(source)
    else:
        arguments["lens"] = lens_of_camera(source)
        where = _where(source)
    return Service(where, LazyFactory("calibration.measurer:make_measurer", arguments))


def _where(camera: CameraChoice) -> CameraSource:
    return CameraSource(camera.index, camera.name, camera.device_id)


def make_watcher(camera: CameraChoice, kind: str, distance_mm: float | None) -> ServiceLike:
    """Measuring process that watches a sheet or a card before a camera."""
    from tracker.vision.service import Service

    arguments = {"kind": kind, "distance_mm": distance_mm}
    factory = LazyFactory("calibration.lens_watch:make_watcher", arguments)
    return Service(_where(camera), factory, keep_spare=False)


def lens_of_camera(camera: CameraChoice) -> Lens:
    """What is known of a camera's lens."""
    return load_lens(camera_key(camera.device_id, camera.name))


def keep_lens_of(camera: CameraChoice, lens: Lens) -> None:
    """Keep what was found out about a camera's lens."""
    keep_lens(camera_key(camera.device_id, camera.name), lens)


def kept_profile(camera: CameraChoice, worn: str) -> Path | None:
    """File of the profile that was kept for a camera and what is worn."""
    path = _profile_path(camera, worn)
    return path if path.is_file() else None


def reads_marks(path: Path, marks: Marks) -> bool:
    """Whether a kept profile has taught the eyes to look at marks on a wall."""
    from calibration import reuse
    from calibration.profile_file import load_profile

    try:
        return reuse.reads_marks(load_profile(path).profile, marks)
    except TurnpostError:
        return False


def keep_profile(profile: Any, camera: CameraChoice, worn: str) -> None:
    """Keep a profile in the user's data folder; the last one for a camera and glasses stays."""
    from calibration.profile_file import save_profile

    made_at = dt.datetime.now().astimezone().isoformat(timespec="seconds")
    make_private_folder(data_folder() / PROFILES)
    about = {"camera": camera.name, "glasses": worn, "made_at": made_at}
    path = _profile_path(camera, worn)
    save_profile(path, profile, about)
    # Those that were made with the lens known otherwise are offered no more.
    for old in path.parent.glob(path.name.rpartition("_")[0] + "_*.npz"):
        if old != path:
            old.unlink(missing_ok=True)


def _profile_path(camera: CameraChoice, worn: str) -> Path:
    key, lens = camera_key(camera.device_id, camera.name), lens_of_camera(camera)
    seen = "usual" if lens.known_deg is None else f"{lens.known_deg:.2f}"
    return data_folder() / PROFILES / f"{key}_{worn or 'unknown'}_{seen}.npz"


def mark_of(camera: CameraChoice, worn: str) -> MarkFound | None:
    """What a mark on the wall showed for the kept profile."""
    from calibration.profile_file import about_profile

    path = _profile_path(camera, worn)
    found = load_mark(path.stem)
    # One of an earlier day was for the profile before: it could not be forgotten then.
    old = found is not None and found.made_on < str(about_profile(path).get("made_at", ""))[:10]
    return None if old else found


def keep_mark_of(camera: CameraChoice, worn: str, found: MarkFound | None) -> None:
    """Keep what a mark on the wall showed, or forget it."""
    keep_mark(_profile_path(camera, worn).stem, found)


def cameras() -> list[CameraChoice]:
    """The cameras of this machine by name."""
    import sys

    if sys.platform == "linux":
        from tracker.vision.cameras import list_cameras

        return [CameraChoice(c.index, c.name, c.device_id) for c in list_cameras()]
    from PySide6.QtMultimedia import QMediaDevices

    inputs = QMediaDevices.videoInputs()
    return [CameraChoice(k, device.description()) for k, device in enumerate(inputs)]


def look_at_camera(camera: CameraChoice) -> tuple[SourceState, str] | None:
    """Why a camera can't be used, where the system tells without opening it (Linux)."""
    from tracker.vision.cameras import condition

    return condition(_where(camera))


def make_world(
    beats: BeatsLike | None = None,
    voice: VoiceLike | None = None,
    screen_reader: ScreenReaderLike | None = None,
) -> World:
    """Everything real."""
    return World(
        make_service=make_service,
        make_recording=make_recording,
        cameras=cameras,
        look=look_at_camera,
        run=background.run,
        make_planned=make_planned,
        make_reported=make_reported,
        forget=forget_session,
        was_sent=was_sent,
        history=history_of,
        of_today=told_of_today,
        kept_profile=kept_profile,
        reads_marks=reads_marks,
        keep_profile=keep_profile,
        make_watcher=make_watcher,
        lens=lens_of_camera,
        keep_lens=keep_lens_of,
        mark=mark_of,
        keep_mark=keep_mark_of,
        beats=beats or NoBeats(),
        voice=voice or NoVoice(),
        screen_reader=screen_reader or NoScreenReader(),
        interrupted=lambda: interrupted_sessions(newer=True),
        save_interrupted=_save_interrupted,
    )


def clip_plan(path: Path) -> ClipPlan:
    """A clip with its stage log.

    Raises
    ------
    InputError
        If the stage log can't be read or asks for no exercise.
    """
    from tracker.errors import InputError

    log = load_stage_log(stage_path_of(path))
    if not log.steps or log.steps[-1].step != "exercise":
        raise InputError(
            f"{stage_path_of(path)}: its last step is no exercise; choose another clip"
        )
    steps = [_with_dose(s) for s in log.steps]
    return ClipPlan(path, steps, log.camera.vertical_fov_deg)


def _with_dose(step: Step) -> Step:
    """A step that says how many repetitions were asked.

    A stage log need not say it; then it is what its tempo gives in its time, two
    beats a repetition.
    """
    if step.step != "exercise" or (step.model_extra or {}).get("repetitions") is not None:
        return step
    beats = beats_until(step.tempo_bpm, step.to_s - step.from_s, step.to_s - step.from_s)
    return step.model_copy(update={"repetitions": int(beats / 2)}) if beats >= 2 else step


def demo_clip() -> Path:
    """The shipped clip that the demo plays.

    Raises
    ------
    RunError
        If no clip came with the program.
    """
    import sample_clips

    found = [Path(p) for p in sample_clips.shipped()]
    if not found:
        raise RunError("no sample clip came with this program; install it again")
    return next((p for p in found if p.stem == DEMO_CLIP), found[0])
