"""What a session's state is, and what the pages show of it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import StrEnum
from math import isfinite, nan
from typing import Any

from calibration.mark import MarkFound
from tracker.sample import Sample
from tracker.session.live import LiveState
from tracker.session.stage import SETUP_STEPS
from tracker.vision.messages import SourceState
from ui.geometry import ASSUMED_DISTANCE_MM, FieldExtent, ScreenMap, believable_distance_mm
from ui.load import Load
from ui.ports import (
    Baseline,
    CameraChoice,
    ClipPlan,
    Job,
    RecordingLike,
    Saved,
    ServiceLike,
    World,
)
from ui.recovering import Recovering
from ui.session.asked import Asked
from ui.setup.reach import ReachWatch
from ui.sounds.beats import shown_side, shown_sway


class Phase(StrEnum):
    """Where the session stands."""

    welcome = "welcome"
    camera = "camera"
    setup = "setup"
    fitting = "fitting"
    setup_failed = "setup_failed"
    setup_told = "setup_told"
    choose = "choose"
    first = "first"
    tools = "tools"
    lens = "lens"
    screen = "screen"
    mark = "mark"
    asking = "asking"
    countdown = "countdown"
    exercise = "exercise"
    paused = "paused"
    saving = "saving"
    summary = "summary"


#: States of the source that the patient can do something about.
TROUBLES = frozenset(
    {
        SourceState.no_camera,
        SourceState.busy,
        SourceState.perhaps_busy,
        SourceState.perhaps_forbidden,
        SourceState.no_permission,
        SourceState.unplugged,
        SourceState.hanging,
        SourceState.failed,
    }
)
#: Those in which no picture comes, be it for a moment; opening is none: all begins with it.
NO_PICTURE = TROUBLES | {SourceState.silent, SourceState.restarting}
LIVE_PHASES = frozenset({Phase.countdown, Phase.exercise, Phase.paused})
COUNTDOWN_S = 3.0
#: A cue stays at least this long (own choice: 1.5 to 2 s and longer, one at a time).
CUE_SHOWN_S = 3.0
#: A note that is not about the exercise stays longer: nobody need read it at once.
NOTE_SHOWN_S = 8.0
#: Half a second without news is "not measured".
SILENT_S = 0.5


@dataclass(frozen=True, slots=True)
class Trouble:
    """What is wrong with the camera, and the driver's own word on it."""

    state: SourceState
    detail: str = ""


@dataclass(frozen=True, slots=True)
class Dose:
    """What the patient will do."""

    exercise: str
    repetitions: int | None
    tempo_bpm: float | None


class SessionState:
    """The state of one session; reading it changes nothing.

    Parameters
    ----------
    world
        Measuring, recording, cameras, jobs, sound.
    extent
        Gives the part of the screen that targets may be drawn on, as it is now.
    clip
        A clip that stands for the camera, None to use the camera.
    """

    def __init__(
        self,
        world: World,
        extent: Callable[[], FieldExtent],
        clip: ClipPlan | None = None,
    ) -> None:
        self._world = world
        self._extent = extent
        #: The same for a set of an exercise that is still to come.
        self.extent_of_set: Callable[[str], FieldExtent] = lambda _: extent()
        self.clip = clip
        self.phase = Phase.welcome
        self.trouble: Trouble | None = None
        self.source = SourceState.ended
        self.sample: Sample | None = None
        self.report: Any = None
        self.fit_message = ""
        self.saved: Saved | None = None
        self.save_error = ""
        self.ended = ""
        self.dose: Dose | None = None
        self.camera: CameraChoice | None = None
        self.cameras: list[CameraChoice] = []
        #: "none", "single" or "varifocal"; empty where nobody has said.
        self.glasses = ""
        #: The eye in use: "both", "left" or "right".
        self.eyes = "both"
        #: Whether the window is laid out for a call that it is shared in.
        self.sharing = False
        #: What is known of the next session where it is to be the baseline.
        self.baseline: Baseline | None = None
        #: Whether the person wants nothing to move on the screen.
        self.still: Callable[[], bool] = lambda: False
        #: When the symptoms were asked last, and the scores.
        self.scores: tuple[str, dict[str, int]] | None = None
        self.listeners: list[Callable[[], None]] = []
        self._service: ServiceLike | None = None
        self._recording: RecordingLike | None = None
        #: What waits for a place on disk beside it, and what of that was saved with it.
        self._unsaved_before: list[RecordingLike] = []
        self._saved_before: list[Saved] = []
        self._asked: list[Asked] = []
        self._begun = 0
        self._held: list[Sample] = []
        self._map: ScreenMap | None = None
        self._profile: Any = None
        self._rest_distance_mm = ASSUMED_DISTANCE_MM
        self._count_from_s = nan
        self._news_s = nan
        self._job: Job | None = None
        self._stopping: list[Job] = []
        #: Ends of cameras, while they go on: a driver may take its time, and the light stays on.
        self._letting_go: list[Job] = []
        self._preview_wanted = False
        self._disk_said_s = nan
        #: Whether the measuring keeps up with the camera in this set.
        self.load = Load()
        self._busy_said_s = nan
        # The measuring's clock against the session's, and what was counted before this set.
        self._offset_s = 0.0
        # A kept profile's set-up is short; keeping one goes on beside the window.
        self._short = False
        self._keeping: Job | None = None
        self._reps_before = 0
        #: How far the head has gone in the set-up that goes on.
        self.reach = ReachWatch()
        #: What the check by a mark on the wall showed in front of this set-up.
        self.mark_found: MarkFound | None = None
        self.recovering = Recovering(world, self._changed)

    def _changed(self) -> None:
        for listener in list(self.listeners):
            listener()

    @property
    def now_s(self) -> float:
        """The session's clock."""
        return self._service.now_s() if self._service is not None else 0.0

    @property
    def camera_on(self) -> bool:
        """Whether a camera (not a clip) may be giving pictures."""
        return self._measures_by_camera or any(not job.done for job in self._letting_go)

    @property
    def _measures_by_camera(self) -> bool:
        off = self.source in TROUBLES - {SourceState.hanging}
        return self._service is not None and self.clip is None and not off

    @property
    def live(self) -> LiveState | None:
        """The engine's state; its repetitions include those before a pause."""
        if self._recording is None:
            return None
        live = self._recording.live
        if self.clip is None and self.dose is not None:
            live = replace(
                live,
                repetitions=self._recording.repetitions - self._reps_before,
                goal_repetitions=self.dose.repetitions,
            )
        return live

    @property
    def asked(self) -> Asked | None:
        """What is asked now, None between two steps."""
        now_s = self.now_s
        for asked in self._asked:
            if asked.step.from_s <= now_s < asked.step.to_s:
                return asked
        return None

    @property
    def next_asked(self) -> Asked | None:
        """What will be asked next."""
        now_s = self.now_s
        return next((a for a in self._asked if a.step.from_s > now_s), None)

    @property
    def setup_part(self) -> tuple[int, int]:
        """Which part of the set-up it is, of how many."""
        parts = [a for a in self._asked if a.step.step in SETUP_STEPS]
        begun = sum(1 for a in parts if a.step.from_s <= self.now_s)
        return max(begun, 1), max(len(parts), 1)

    @property
    def distance_mm(self) -> float:
        """Distance of the eyes from the target's plane, as well as it is known."""
        sample = self.sample
        moved = sample.head_z_mm if sample is not None and isfinite(sample.head_z_mm) else 0.0
        return believable_distance_mm(self._rest_distance_mm - moved)

    @property
    def drawn_distance_mm(self) -> float:
        """Distance that what is drawn has its size for: fixed for a set, as its places are.

        Else a count, and the target with it, would grow and shrink as the head moves.
        """
        return self._rest_distance_mm if self.phase in LIVE_PHASES else self.distance_mm

    @property
    def not_measured(self) -> str:
        """Why nothing is measured now (a key of the words), empty if it is."""
        if self.source in (SourceState.restarting, SourceState.silent):
            return str(self.source)
        live = self.live
        if live is None or live.measured:
            return ""
        return live.reason or "gap"

    @property
    def cue(self) -> str:
        """Code of the cue to show now, empty for none."""
        live = self.live
        if live is None or live.cue is None:
            return ""
        recent = self.now_s - live.cue.said_at_s < CUE_SHOWN_S
        return str(live.cue.code) if recent else ""

    @property
    def disk_note(self) -> bool:
        """Whether to say now that the disk takes nothing: once in a session, for a while."""
        return 0 <= self.now_s - self._disk_said_s < NOTE_SHOWN_S

    @property
    def busy_note(self) -> bool:
        """Whether to say now that pictures go unmeasured: once in a set, for a while."""
        return 0 <= self.now_s - self._busy_said_s < NOTE_SHOWN_S

    @property
    def unsaved(self) -> bool:
        """Whether a session is over and still waits for a place on disk."""
        return self.phase == Phase.summary and self.saved is None and self._recording is not None

    @property
    def side(self) -> int:
        """Side that the beat asks for: +1, -1, or 0."""
        asked = self.asked
        if self.phase != Phase.exercise or asked is None or asked.step.step != "exercise":
            return 0
        step = asked.step
        return shown_side(step.tempo_bpm, self.now_s - step.from_s, step.to_s - step.from_s)

    @property
    def sway(self) -> float | None:
        """The same for who sees it in a call: it goes to and fro where it can't hold a second."""
        asked = self.asked
        if not self.side or asked is None or self.still():
            return None
        step = asked.step
        return shown_sway(step.tempo_bpm, self.now_s - step.from_s, step.to_s - step.from_s)

    @property
    def any_key_stops(self) -> bool:
        """Whether something moves behind the target: then any key is a stop."""
        asked = self.asked
        return self.phase == Phase.exercise and asked is not None and asked.backdrop is not None

    @property
    def countdown_s(self) -> float:
        """Seconds until the exercise starts."""
        return max(0.0, self._count_from_s + COUNTDOWN_S - self.now_s)

    @property
    def picture_height_px(self) -> int:
        """Height of the camera's own pictures; 0 while none has come."""
        return self._service.stats.height_px if self._service is not None else 0

    @property
    def picture_rate_hz(self) -> float:
        """Pictures a second that the camera gives; NaN while that isn't known."""
        return self._service.stats.rate_hz if self._service is not None else nan

    def preview(self) -> Any:
        """The newest picture (BGR, not mirrored), or None."""
        return self._service.preview() if self._service is not None else None
