"""Where a target is that moves: pure functions of the time, led by the beat.

A moving target never follows the measured head: measuring takes a tenth of a second,
and a target that came after it would not be where the exercise needs it. It goes by the
beat, as the person is asked to, so that both are where they should be when the beat is
kept.

The way
    In the first beat from its middle to the first side, then from side to side in a
    cosine, one way a beat. Place, speed and acceleration have no jump anywhere, the
    beginning included.

x2 viewing
    Head and target turn by the same angle to opposite sides. The eyes in the head then
    turn by twice the head's angle, and a little more before a near screen, because they
    lie a distance r in front of the point about which the head turns: about ``2 + r/D``
    times as far at a distance D. That is the ``1 + r/D`` of a near still target (geometry;
    form: Viirre 1986 as quoted) and one more for the target's own angle.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import atan2, ceil, cos, degrees, hypot, isfinite, pi, radians, sin, tan
from typing import ClassVar, Literal

from tracker.motion.turning import TurningRule
from tracker.tempo import Tempo, beats_until, fastest_bpm

#: ``against``: against the head (x2 viewing). ``sweep``: slowly from side to side, for
#: eyes that follow. ``places``: two marks, the asked one changes with the beat.
#: ``background``: the mark stays, what is behind it moves. Empty: nothing moves.
Motion = Literal["", "against", "sweep", "places", "background"]

#: Fastest that a target goes which the eyes are to follow smoothly: this project's own
#: choice, well below the 30 deg/s from which jumps are needed to keep up (encyclopaedic
#: text).
PURSUIT_MOST_DEG_S = 20.0
#: Largest swing to each side of a target that eyes alone follow: normal people leave the
#: head still up to about 10 degrees (near-task study: the head helps from 6 to 11 degrees; this
#: project's own choice).
PURSUIT_SWING_DEG = 10.0
#: Without a tempo a turn is given this long (common practice).
SELF_PACED_BPM = 24.0
#: Rows of a track for each beat, where it isn't very long: straight lines between them lie
#: within half a percent of the swing (its (pi / 16)^2 / 8th; arithmetic; the bounds are this
#: project's own choice).
ROWS_A_BEAT, ROWS_LEAST, ROWS_MOST = 16, 8, 6000

#: Least swing to each side for which a set can be counted: a head that goes four fifths as far
#: (the lower end of a usual range, 10 of 12.5 degrees) still passes the counter's first floor,
#: which is from end to end. To the next half degree (arithmetic).
SWING_LEAST_DEG = ceil(2.0 * 0.5 * TurningRule().first / 0.8) / 2.0

Point3 = tuple[float, float, float]
Row = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class Growth:
    """What a set asks for that is small at first: its share grows evenly, then stays whole.

    Attributes
    ----------
    begins_with
        The share of it at the beginning.
    over_s
        In this time it becomes all of it.
    """

    begins_with: float = 1.0
    over_s: float = 0.0

    def share_at(self, elapsed_s: float) -> float:
        """The share ``elapsed_s`` after the beginning, at most 1."""
        if elapsed_s >= self.over_s:
            return 1.0
        return self.begins_with + (1.0 - self.begins_with) * max(elapsed_s, 0.0) / self.over_s

    @classmethod
    def of_set(
        cls, begins_with: float, beats_s: Sequence[float], turns: int, least: float = 0.0
    ) -> Growth:
        """Growth over the first half of a set's turns, one turn a beat.

        ``least`` is the smallest share that is of use, for example to be counted.
        """
        share = min(max(begins_with, least), 1.0)
        half = min(turns // 2, len(beats_s) - 1)
        return cls(share, beats_s[half]) if share < 1.0 and half > 0 else cls()

    def to_log(self) -> dict[str, float]:
        """As a step of the stage log has it (``grows``)."""
        return {"begins_with": round(self.begins_with, 3), "over_s": round(self.over_s, 3)}

    @classmethod
    def from_log(cls, value: object) -> Growth:
        """The same read back; whatever is no such thing asks for all of it at once."""
        found = value if isinstance(value, dict) else {}
        share, over_s = found.get("begins_with"), found.get("over_s")
        numbers = all(isinstance(v, int | float) and isfinite(v) for v in (share, over_s))
        return cls(float(share), float(over_s)) if numbers and 0 < share <= 1 else cls()  # type: ignore[operator,arg-type]


def share_at(beats: float) -> float:
    """Place of a target ``beats`` after the start: 0 its middle, 1 the first side, -1 the other.

    Twice differentiable everywhere: the first way is the polynomial of the fifth degree
    that starts at rest and meets the cosine in place, speed and acceleration.
    """
    if beats <= 0.0:
        return 0.0
    if beats >= 1.0:
        return -cos(pi * beats)
    u = beats
    rest_to_rest = u**3 * (10.0 - 15.0 * u + 6.0 * u * u)
    return rest_to_rest - 0.5 * pi**2 * u**3 * (1.0 - u) ** 2


@dataclass(frozen=True, slots=True)
class Sweep:
    """A target that goes to and fro with the beat.

    Attributes
    ----------
    swing_deg
        To each side of the middle, seen from straight in front of it; negative to go the
        other way first.
    distance_mm
        From the eyes at rest to the middle.
    tempo_bpm, duration_s
        As of the step: a pair changes evenly over its time.
    """

    swing_deg: float
    distance_mm: float
    tempo_bpm: float | tuple[float, float]
    duration_s: float

    def share(self, elapsed_s: float) -> float:
        """-1 to 1 so long after the start."""
        return share_at(beats_until(self.tempo_bpm, elapsed_s, self.duration_s))

    def offset_mm(self, elapsed_s: float) -> float:
        """From the middle, so long after the start."""
        return self.distance_mm * tan(radians(self.swing_deg * self.share(elapsed_s)))

    @property
    def peak_speed_deg_s(self) -> float:
        """Fastest of the whole set."""
        return peak_speed_deg_s(self.swing_deg, fastest_bpm(self.tempo_bpm))

    def times_s(self) -> list[float]:
        """Times of the rows that a track of it needs, from 0 to the end."""
        beats = beats_until(self.tempo_bpm, self.duration_s, self.duration_s)
        each = min(max(ROWS_MOST / max(beats, 1.0), ROWS_LEAST), ROWS_A_BEAT)
        count = max(round(beats * each), 2)
        return [self.duration_s * k / count for k in range(count + 1)]


def track_of(sweep: Sweep, from_s: float, to_rest: Callable[[float], Point3]) -> list[Row]:
    """Rows of a stage log's ``target_track``; ``to_rest`` takes an offset to the rest frame."""
    rows = []
    for t in sweep.times_s():
        x, y, z = to_rest(sweep.offset_mm(t))
        rows.append((round(from_s + t, 4), round(x, 2), round(y, 2), round(z, 2)))
    return rows


def peak_speed_deg_s(swing_deg: float, tempo_bpm: float) -> float:
    """Peak speed of a cosine with one way a beat: pi times the swing a beat."""
    return pi * abs(swing_deg) * tempo_bpm / 60.0


def fitting_swing_deg(wanted_deg: float, room_mm: float, distance_mm: float) -> float:
    """The wanted swing, or the largest for which there is room on the screen.

    Parameters
    ----------
    room_mm
        From the middle to the nearer edge of what may be drawn on.
    distance_mm
        From the eyes to the middle.
    """
    return min(wanted_deg, degrees(atan2(max(room_mm, 0.0), distance_mm)))


def pursuit_swing_deg(tempo_bpm: float | tuple[float, float]) -> float:
    """Largest swing of a target that eyes follow which stays below the pursuit limit."""
    fastest = fastest_bpm(tempo_bpm) / 60.0
    return min(PURSUIT_SWING_DEG, PURSUIT_MOST_DEG_S / (pi * fastest))


def lowered(asked_deg: tuple[float, float], swing_deg: float) -> tuple[float, float]:
    """A range of amplitudes about a swing, where the screen carries less than its middle.

    The range keeps its shape (least and most relative to its middle); one whose middle
    fits, to a fiftieth, is left as it is.
    """
    middle = 0.5 * (asked_deg[0] + asked_deg[1])
    share = swing_deg / middle
    if share > 0.98:
        return asked_deg
    return round(asked_deg[0] * share, 1), round(asked_deg[1] * share, 1)


def track_swing_deg(track: Sequence[Row]) -> float:
    """Half of the angle between the outermost places of a track, seen from the eyes at rest.

    Along the axis, across or up and down, in which it goes farther.
    """
    across = [degrees(atan2(x, z)) for _, x, _, z in track]
    up = [degrees(atan2(y, hypot(x, z))) for _, x, y, z in track]
    return 0.5 * max(max(v) - min(v) for v in (across, up))


def tempo_of_target(tempo_bpm: Tempo) -> float | tuple[float, float]:
    """The tempo that a target goes by; at the person's own pace a slow, even one."""
    return SELF_PACED_BPM if tempo_bpm is None else tempo_bpm


@dataclass(frozen=True, slots=True)
class Backdrop:
    """Soft bars that move slowly behind a still mark: the way one side, then the other.

    All values are this project's own choice: small, slow and soft. The bars pass a place
    every ``period_deg / |speed_deg_s|`` = 2 s, and their contrast is below the tenth of
    the largest luminance from which a change counts as a flash (WCAG 2.x, general flash), so
    that nothing here flashes, at any speed.

    Attributes
    ----------
    radius_deg
        Of the round patch in which they are seen.
    speed_deg_s
        Fastest; it begins, turns and ends softly.
    period_deg
        From bar to bar.
    contrast
        Difference of relative luminance between the brightest and the darkest place.
    """

    radius_deg: float = 6.0
    speed_deg_s: float = 2.0
    period_deg: float = 4.0
    contrast: float = 0.08

    #: It goes one way for so long, and takes so long to get going or to stop.
    WAY_S: ClassVar[float] = 10.0
    SOFT_S: ClassVar[float] = 2.0

    def speed_at(self, elapsed_s: float) -> float:
        """Speed to the right in deg/s, so long after the start."""
        if elapsed_s <= 0.0:
            return 0.0
        way, within = divmod(elapsed_s, self.WAY_S)
        edge = min(within, self.WAY_S - within) / self.SOFT_S
        size = self.speed_deg_s * (0.5 - 0.5 * cos(pi * min(edge, 1.0)))
        return size if way % 2 == 0 else -size

    def shift_deg(self, elapsed_s: float) -> float:
        """How far it has moved to the right: the integral of its speed."""
        if elapsed_s <= 0.0:
            return 0.0
        way, within = divmod(elapsed_s, self.WAY_S)
        whole = self._gone_deg(self.WAY_S) if way % 2 else 0.0
        gone = self._gone_deg(within)
        return whole - gone if way % 2 else gone

    def _gone_deg(self, within_s: float) -> float:
        """Way from the beginning of one direction on."""
        soft, last = self.SOFT_S, self.WAY_S - self.SOFT_S

        def rising(s: float) -> float:
            return 0.5 * s - 0.5 * soft / pi * sin(pi * s / soft)

        if within_s <= soft:
            share = rising(within_s)
        elif within_s <= last:
            share = 0.5 * soft + within_s - soft
        else:
            share = self.WAY_S - soft - rising(self.WAY_S - within_s)
        return self.speed_deg_s * share

    def to_log(self) -> dict[str, float]:
        """As a stage log and a summary say it."""
        return {
            "radius_deg": self.radius_deg,
            "speed_deg_s": self.speed_deg_s,
            "period_deg": self.period_deg,
            "contrast": self.contrast,
        }
