"""What an exercise of the catalogue is made of."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal

from tracker.targets import Motion

Need = Literal["face", "eyes", "body"]
Eyes = Literal["open", "closed"]
Posture = Literal["sitting", "standing", "walking"]
Surface = Literal["firm", "soft"]
Support = Literal["none", "corner_and_chair", "helper"]

#: Instead of a channel: a posture is held and timed; nothing is counted.
HELD = "held"
#: Instead of a channel: the program leads and times it; the camera doesn't count it.
GUIDED = "guided"
#: What is counted in degrees of the head; bends and stands are millimetres.
_TURNS_OF_HEAD = frozenset({"head_yaw", "head_pitch", "head_roll", "head_to_mark"})


@dataclass(frozen=True, slots=True)
class WatcherSpec:
    """A watcher from the registry, with the parameters that differ from its own."""

    name: str
    parameters: Mapping[str, float] = field(default_factory=lambda: MappingProxyType({}))


#: A line of a guide is said, or read where no voice says it, in about so long (common practice: a
#: dozen words at 2 a second).
READ_S = 6.0


@dataclass(frozen=True, slots=True)
class Guide:
    """How a guided exercise is spoken through: keys of its lines, each with time to do it.

    The seconds run from when a line has been said to when the next one may come. Each line
    leaves it to the person when to begin, so that none hurries anybody (common practice; at
    an old person's .4 to .5 m/s ten short steps take ten seconds).

    Attributes
    ----------
    first
        Said once.
    each
        Said for each repetition.
    last
        Said once all are done.
    """

    first: tuple[tuple[str, float], ...]
    each: tuple[tuple[str, float], ...]
    last: tuple[tuple[str, float], ...] = (("over", 0.0),)

    def lines(self, repetitions: int) -> list[tuple[str, float]]:
        """All of them in order."""
        return [*self.first, *self.each * max(repetitions, 1), *self.last]

    def length_s(self, repetitions: int) -> float:
        """About how long it takes: each line said, and its time to do it."""
        return sum(READ_S + wait_s for _, wait_s in self.lines(repetitions))


@dataclass(frozen=True, slots=True)
class Exercise:
    """One exercise.

    Attributes
    ----------
    id
        Its ID in plans, stage logs and summaries.
    channel
        What a repetition is counted from: a key of ``counters.CHANNELS``, or
        ``HELD`` or ``GUIDED`` where the camera counts nothing in this version. Once
        there is a counter, this is the one line to change.
    watchers
        What must hold while it runs.
    therapist
        Its name and manner in the words of the trade.
    cautions
        Keys of :data:`~tracker.exercises.catalogue.CAUTIONS`; never empty.
    sources
        Where each default comes from: ``dose``, and ``amplitude_deg``, ``begins_with``,
        ``tempo_bpm`` and ``seat_mm`` where there are some.
    dose_repetitions, dose_seconds
        Usual dose: the one or the other.
    amplitude_deg
        Usual least and most to each side of rest; None where it isn't asked.
    begins_with
        What share of its amplitude, or of its targets' distance, a set begins with; all of it
        is reached half-way through (:class:`tracker.targets.Growth`). 1: all of it at once.
    tempo_bpm
        Usual beats a minute, one beat a turn; None for the patient's own pace.
    seat_mm
        How far from the screen one sits for it, so that what is measured stays in the
        picture; None for the plan's own distance.
    posture, surface, eyes, head_shake
        Its usual form.
    support
        The least support its usual form asks for.
    needs
        What has to be seen for what is measured; ``body`` (shoulders and hands) costs
        time, and is looked for only where an exercise needs it.
    on_target
        Whether the eyes are asked to stay on a target.
    head_still
        Whether the head is asked to stay still.
    target
        How the target on the screen moves, or what is behind it; empty where nothing does.
    gaze_minutes
        Whether its time counts as gaze stabilisation: the head moves while the eyes
        stay on a target.
    looks_at
        Whether something is looked at that may blur or double, where the eyes are not asked
        to stay on it all the while.
    asks_note
        Why the therapist is asked for a note when it is put into a plan; empty if not.
    off_by_default
        Whether a plan that has it without that note is refused.
    repetition_s
        About how long one repetition takes at the patient's own pace (common
        practice); for the length of a stage only. Of a guided one its lines tell.
    guide
        How it is spoken through, step by step; None where nothing is.
    not_measured
        Keys of :data:`~tracker.exercises.catalogue.NOT_MEASURED`, said openly.
    """

    id: str
    channel: str
    watchers: tuple[WatcherSpec, ...]
    therapist: str
    cautions: tuple[str, ...]
    sources: Mapping[str, str]
    dose_repetitions: int | None = None
    dose_seconds: float | None = None
    amplitude_deg: tuple[float, float] | None = None
    begins_with: float = 1.0
    tempo_bpm: float | None = None
    seat_mm: float | None = None
    posture: Posture = "sitting"
    surface: Surface = "firm"
    eyes: Eyes = "open"
    head_shake: bool = False
    support: Support = "none"
    needs: tuple[Need, ...] = ("face",)
    on_target: bool = False
    head_still: bool = False
    target: Motion = ""
    gaze_minutes: bool = False
    looks_at: bool = False
    asks_note: str = ""
    off_by_default: bool = False
    repetition_s: float = 5.0
    guide: Guide | None = None
    not_measured: tuple[str, ...] = ()

    def own_pace_s(self, repetitions: int) -> float:
        """About how long a dose takes at the patient's own pace, or as it is spoken through."""
        if self.guide is not None:
            return self.guide.length_s(repetitions)
        return repetitions * self.repetition_s

    @property
    def counted(self) -> bool:
        """Whether the camera counts its repetitions."""
        return self.channel not in (HELD, GUIDED)

    @property
    def in_degrees(self) -> bool:
        """Whether it is counted from turns of the head, so that a range can be asked of it."""
        return self.channel in _TURNS_OF_HEAD

    @property
    def own_pace_bpm(self) -> float:
        """Beats a minute, two a repetition, at the patient's own pace."""
        return 2 * 60.0 / self.repetition_s

    @property
    def wall_marks(self) -> int:
        """How many marks on a wall can stand for its targets; 0 where it needs the screen."""
        if self.channel in ("eye_yaw", "eye_pitch") or self.target == "places":
            return 2
        still = self.on_target and not self.target and self.channel.startswith("head")
        return 1 if still else 0

    @property
    def near_work(self) -> bool:
        """Whether the eyes are led near, up to the place where one tip becomes two."""
        return "double_image" in self.not_measured

    @property
    def asks_clarity(self) -> bool:
        """Whether it is asked after a set how its target looked."""
        return self.on_target or self.looks_at or self.near_work


def watch(*names: str) -> tuple[WatcherSpec, ...]:
    """Watchers by name, with their own parameters."""
    return tuple(WatcherSpec(name) for name in names)


#: What is watched of whoever stands for an exercise that is usually done sitting.
ON_FEET = watch("possible_fall", "left_picture")
#: The head turned away or bent, not ordinary sway or the movement of the shoulders:
#: both move it by some degrees (common practice).
HEAD_ABOUT_LEVEL = WatcherSpec(
    "head_moved", MappingProxyType({"beyond_deg": 10.0, "back_deg": 6.0})
)
#: The same in standing, where the chin is watched by itself (this project's own choice).
HEAD_FORWARD = WatcherSpec(
    "head_moved", MappingProxyType({"beyond_deg": 10.0, "back_deg": 6.0, "pitch_share": 0.0})
)
#: A bend to the floor takes the head out of the picture; from so long on it is said
#: (this project's own choice).
SEEN_BETWEEN_BENDS = WatcherSpec("not_measured", MappingProxyType({"least_s": 8.0}))
#: Hands may rest below the picture between two throws; from so long on it is said
#: (this project's own choice).
HANDS_SEEN = WatcherSpec("not_measured", MappingProxyType({"least_s": 3.0}))
