"""What one repetition is: a channel of the samples and the rule for its turning points."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from math import nan
from typing import Literal, Protocol

from tracker.body.rolls import lift_mm
from tracker.exercises.hands import a_hand_is_seen, hand_difference, is_throw
from tracker.exercises.tilts import TILT_KEPT_S, is_tilt
from tracker.motion.away import BENDING_DOWN, STANDING_UP, AwayFinder, AwayRule
from tracker.motion.drift import Pace
from tracker.motion.smoothing import RunningMean
from tracker.motion.turning import Turn, TurningFinder, TurningRule
from tracker.sample import Sample

#: Below this the eyes' angles are those of a lid in movement and aren't used (this
#: project's own choice; with it closings of a second and more were found in rendered films:
#: DEVELOPERS.md).
EYE_OPEN_LEAST = 0.3


#: Samples are kept so long for a channel that looks back at them: longer than a throw takes
#: (this project's own choice).
KEPT_S = 6.0


@dataclass(frozen=True, slots=True)
class Channel:
    """One number of a sample, with the names of its two sides and its unit.

    Attributes
    ----------
    name, read, sides, rule, unit
        What is counted, and how its turning points are found.
    smooth_s
        A slow movement is averaged over so much time first.
    depth
        Whether it goes to and from the camera.
    body
        Whether it is read from shoulders and hands, which aren't looked at in every frame.
    turns_each
        So many turns are one repetition (there and back, derived from the movement).
    accept
        Which turns count, by the samples of the last ``kept_s`` seconds; None: all.
    seen
        Whether a sample really measured it; None: wherever there is a value.
    """

    name: str
    read: Callable[[Sample], float]
    sides: tuple[str, str]
    rule: TurningRule | AwayRule
    unit: Literal["deg", "mm"] = "deg"
    smooth_s: float = 0.0
    depth: bool = False
    body: bool = False
    turns_each: int = 2
    accept: Callable[[Iterable[Sample], Turn], bool] | None = None
    kept_s: float = KEPT_S
    seen: Callable[[Sample], bool] | None = None

    @property
    def least_s(self) -> float:
        """The shortest stretch that is averaged."""
        # The body is looked at as often as there is time for: one look is better than none.
        return 0.0 if self.body else 0.5 * self.smooth_s


def eyes_usable(sample: Sample) -> bool:
    """Whether the eyes are open enough to be read (or their openness isn't known)."""
    return not sample.eye_open < EYE_OPEN_LEAST


def _eye_yaw(sample: Sample) -> float:
    return sample.eye_yaw_deg if eyes_usable(sample) else nan


def _eye_pitch(sample: Sample) -> float:
    return sample.eye_pitch_deg if eyes_usable(sample) else nan


def _gaze_yaw(sample: Sample) -> float:
    """In space: a sweep is followed by whatever helps; the head is watched by itself."""
    return sample.gaze_yaw_deg if eyes_usable(sample) else nan


def _vergence(sample: Sample) -> float:
    return sample.vergence_deg if eyes_usable(sample) else nan


#: Eye jumps rest at their ends. The floor is above the eyes' error with the head
#: still (0.8 to 0.9 degrees, this project's own aim) and below the smallest pair of
#: targets (4 degrees to each side).
_JUMPS = TurningRule(floor=4.0, first=4.0, plateau=True)
#: From arm's length (60 cm) to 30 cm the lines of sight of eyes 63 mm apart turn in by 6
#: degrees more (2 atan of half their distance by that of the target); of the narrowest
#: adult eyes, 54 mm, by 5. The floor is above the error of a smoothed reading (arithmetic; the
#: floor is this project's own choice).
_NEAR_FAR = TurningRule(floor=2.5, first=3.0)
#: A target that is followed goes 6 degrees or more to each side; the gaze is read to a degree (this
#: project's own choice).
_SWEEPS = TurningRule(floor=5.0, first=5.0)
#: A head that goes to a mark rests there: when it came is the beat.
_TO_MARKS = TurningRule(plateau=True)
#: The share as :class:`TurningRule` derives it (derived there).
_HEAD = TurningRule(hole=0.16)
#: Without a set-up the rest pose and the face's depth are guesses, and a person
#: who only looks about turns by some degrees: 8 to each side at least (this project's own choice).
_UNKNOWN_PERSON = TurningRule(floor=16.0, first=16.0)
#: And with so few turns nobody can tell whether they are of an exercise: two repetitions (this
#: project's own choice; a person before a webcam who only tilted her head and looked about did
#: two such turns in 20 s, and three such nods).
LEAST_UNKNOWN = 4
#: Sways that were asked for, in mm from end to end. The floors lie above the range of
#: ordinary sway of a head in 30 s, estimated from open data of young adults (Santos DA,
#: Duarte M 2016, PeerJ 4:e2648; centre of mass times 1.67): 29 mm fore-aft on a firm
#: floor, 51 mm sideways on foam with shut eyes. Slow drift goes farther now and then, so the
#: first way back has to be a third larger: of 5000 made-up stands 12 had a sway with a first
#: way of 36 and 58 mm; with these none of 1800 had, and of 900 sets of sways none was lost.
_FORE_AFT = TurningRule(floor=32.0, first=42.0)
_SIDEWAYS = TurningRule(floor=55.0, first=72.0)

#: Lift of the shoulders' landmarks in mm. They follow about half of the true lift (.46 to .65
#: on rendered bodies at 70 and 100 cm), and of a still body they wander by 1 mm after the
#: mean. The floor is a true lift of about 16 mm: above deep breathing (drawn as 12 mm in the
#: tests; this project's own choice). Rolls count surely from about 27 mm of true lift.
_SHOULDERS = TurningRule(floor=8.0, first=9.0, last_share=0.5)
#: One wrist against the other: a throw from hand to hand moves them apart by far more, talking
#: hands by less (this project's own choice).
_THROWS = TurningRule(floor=150.0, first=160.0)

#: How long a slow movement is averaged is this project's own choice: short against a repetition of
#: it, long against the time between two pictures.
CHANNELS: dict[str, Channel] = {
    c.name: c
    for c in (
        Channel("head_yaw", lambda s: s.head_yaw_deg, ("right", "left"), _HEAD),
        Channel("head_to_mark", lambda s: s.head_yaw_deg, ("right", "left"), _TO_MARKS),
        Channel("head_pitch", lambda s: s.head_pitch_deg, ("up", "down"), _HEAD),
        Channel(
            "head_roll",
            lambda s: s.head_roll_deg,
            ("right", "left"),
            _HEAD,
            accept=is_tilt,
            kept_s=TILT_KEPT_S,
        ),
        Channel("eye_yaw", _eye_yaw, ("right", "left"), _JUMPS),
        Channel("eye_pitch", _eye_pitch, ("up", "down"), _JUMPS),
        Channel("eye_sweep", _gaze_yaw, ("right", "left"), _SWEEPS, smooth_s=0.2),
        Channel("eye_vergence", _vergence, ("near", "far"), _NEAR_FAR, smooth_s=0.5),
        Channel(
            "neck_fore_aft",
            lambda s: s.neck_z_mm,
            ("forward", "back"),
            _FORE_AFT,
            "mm",
            0.2,
            depth=True,
        ),
        Channel("neck_sideways", lambda s: s.neck_x_mm, ("right", "left"), _SIDEWAYS, "mm", 0.2),
        Channel("shoulder_lift", lift_mm, ("up", "down"), _SHOULDERS, "mm", 0.3, body=True),
        Channel(
            "hand_throw",
            hand_difference,
            ("right", "left"),
            _THROWS,
            "mm",
            0.1,
            body=True,
            turns_each=1,
            accept=is_throw,
            seen=a_hand_is_seen,
        ),
        Channel("head_rise", lambda s: s.head_y_mm, ("up", "down"), STANDING_UP, "mm"),
        Channel("head_reach", lambda s: s.head_y_mm, ("up", "down"), BENDING_DOWN, "mm"),
    )
}


#: Not counted: tells only whether the person is seen, for what is held or guided.
SEEN = Channel("seen", lambda s: s.head_yaw_deg, ("", ""), _HEAD)


def channel_of(name: str) -> Channel:
    """The channel of an exercise; :data:`SEEN` for one that the camera doesn't count."""
    return CHANNELS.get(name, SEEN)


class Finder(Protocol):
    """What finds the turns of a channel."""

    def feed(self, time_s: float, value: float, /) -> list[Turn]:
        """Take a value, NaN where not measured."""

    def finish(self) -> list[Turn]:
        """End the set."""


class SlowFinder:
    """Turns of a slow movement: smoothed, and in the unit of its channel."""

    def __init__(self, channel: Channel, rule: TurningRule) -> None:
        self._finder = TurningFinder(channel.sides, rule)
        self._mean = RunningMean(channel.smooth_s, least_s=channel.least_s)
        self._in_unit = _ways_in_mm if channel.body else _in_mm if channel.unit == "mm" else list

    def feed(self, time_s: float, value: float, /) -> list[Turn]:
        """Take a value, NaN where not measured."""
        smooth = self._mean.feed(time_s, value)
        return [] if smooth is None else self._in_unit(self._finder.feed(*smooth))

    def finish(self) -> list[Turn]:
        """End the set."""
        return self._in_unit(self._finder.finish())


def _in_mm(turns: list[Turn]) -> list[Turn]:
    """The finder counts in the channel's unit; here that is millimetres."""
    return [
        replace(
            t,
            amplitude_deg=nan,
            swing_deg=nan,
            peak_speed_deg_s=nan,
            amplitude_mm=t.amplitude_deg,
            swing_mm=t.swing_deg,
            peak_speed_mm_s=t.peak_speed_deg_s,
        )
        for t in turns
    ]


def _ways_in_mm(turns: list[Turn]) -> list[Turn]:
    """Where shoulders and hands are at rest isn't known, so how far from it isn't either."""
    return [replace(t, amplitude_mm=nan) for t in _in_mm(turns)]


def _is_of_head(channel: Channel) -> bool:
    """Whether turns of the head are counted."""
    return channel.rule in (_HEAD, _TO_MARKS)


def _finder_of(channel: Channel, known_person: bool, pace: Pace) -> Finder:
    rule = channel.rule
    if isinstance(rule, AwayRule):
        return AwayFinder(rule)
    if channel.smooth_s:
        return SlowFinder(channel, rule)
    if _is_of_head(channel):
        known = rule if known_person else replace(_UNKNOWN_PERSON, plateau=rule.plateau)
        rule = replace(known, pace=pace)
    return TurningFinder(channel.sides, rule)


class Counter:
    """Counts the turns of one set in one channel; two of them are a repetition.

    Parameters
    ----------
    channel
        What is counted.
    known_person
        Whether a set-up has been measured; without one only large head turns count, and no
        fewer than :data:`LEAST_UNKNOWN`.
    pace
        What is a drift of the head; None: as where neither tempo nor size is asked for.

    Notes
    -----
    In the channel :data:`SEEN` there are no turns.
    """

    def __init__(
        self, channel: Channel, *, known_person: bool = True, pace: Pace | None = None
    ) -> None:
        self.channel = channel
        self.turns: list[Turn] = []
        self._recent: deque[Sample] = deque()
        self._finder = _finder_of(channel, known_person, pace or Pace())
        self._least = LEAST_UNKNOWN if _is_of_head(channel) and not known_person else 0
        self._few: list[Turn] = []

    def feed(self, sample: Sample) -> list[Turn]:
        """Take a sample; gives the turns that count from now on."""
        if self.channel is SEEN:
            return []
        if self.channel.accept is not None:
            self._recent.append(sample)
            while sample.time_s - self._recent[0].time_s > self.channel.kept_s:
                self._recent.popleft()
        return self._keep(self._finder.feed(sample.time_s, self.channel.read(sample)))

    def finish(self) -> list[Turn]:
        """End the set."""
        return self._keep(self._finder.finish())

    def _keep(self, turns: list[Turn]) -> list[Turn]:
        accept = self.channel.accept
        if accept is not None:
            turns = [t for t in turns if accept(self._recent, t)]
            before = len(self.turns) + len(self._few)
            turns = [replace(t, index=before + k) for k, t in enumerate(turns)]
        if len(self.turns) < self._least:
            turns = [*self._few, *turns]
            self._few = turns if len(turns) < self._least else []
            turns = [] if self._few else turns
        self.turns += turns
        return turns

    @property
    def repetitions(self) -> int:
        """Whole there-and-back cycles; of a throw from hand to hand each one."""
        return len(self.turns) // self.channel.turns_each
