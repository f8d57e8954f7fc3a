"""Marks on a wall in place of a target on the screen: where they are, and how exactly known.

The patient (or the plan) gives lengths as measured with a tape: from the eyes straight to the
wall, from mark to mark, and how far above and to the right of the camera the marks are. Where
the camera is, seen from the eyes, the set-up knows. The wall is taken to stand square to
the way in which the patient faces the screen.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import atan2, ceil, cos, degrees, floor, hypot, isfinite, nan, radians, sin, tan
from typing import Any

from tracker.targets import SWING_LEAST_DEG, Point3

#: How far away a mark may be: nearer, a centimetre of the tape is more than half a degree;
#: farther, a room is rarely large enough (the programme asks for 0.9 to 3 m; own
#: choice).
LEAST_MM, MOST_MM = 900.0, 3000.0
#: How far to each side of straight ahead the eyes are read: the looks of a set-up go 12
#: degrees out (derived from the looks of ``ui.session.asked_setup``: what was never seen in a
#: set-up can only be guessed).
EYES_MOST_DEG = 12.0
#: Least half of the angle between two marks for eyes alone: with 4 degrees to each side a jump
#: is told from the error of a reading (``exercises.counters``); one more, as lengths are
#: measured with a tape (own choice).
EYES_LEAST_DEG = 5.0
#: Largest turn of the head to a mark: head yaw is measured to its full accuracy up to 40
#: degrees, and a head is asked for 20; the eyes must still come to a mark before it (own choice).
TURN_MOST_DEG = 25.0
#: Each length as measured with a tape (common practice).
TAPE_MM = 10.0
#: How far off the camera's place from the eyes may be: a twentieth of what it lies aside (own
#: choice; where the camera's field of view is known a face's distance is read to 3 percent).
CAMERA_SHARE = 0.05

#: Why marks can't be used -> the length that is wrong with them.
WALL_FIELDS = {
    "wall_angle": "spacing_mm",
    "wall_right": "right_mm",
    "wall_above": "above_mm",
}


@dataclass(frozen=True, slots=True)
class Wall:
    """One mark, or two, as typed.

    Attributes
    ----------
    distance_mm
        From the eyes straight to the wall.
    spacing_mm
        From mark to mark; None where there is one.
    above_mm, right_mm
        How far the mark, or the middle between the two, is above the camera and to its right
        (the patient's right); below and to the left are below zero.
    """

    distance_mm: float
    spacing_mm: float | None = None
    above_mm: float = 0.0
    right_mm: float = 0.0

    @property
    def half_deg(self) -> float | None:
        """Half of the angle between the two marks, seen from in front of their middle."""
        if self.spacing_mm is None:
            return None
        return degrees(atan2(0.5 * self.spacing_mm, self.distance_mm))

    def marks_mm(self, camera_mm: Point3, *, up: bool = False) -> tuple[Point3, ...]:
        """Places of the marks in the rest frame: the right one, or the upper one, first.

        Parameters
        ----------
        camera_mm
            Where the camera is in the rest frame.
        up
            Whether two marks are one above the other.
        """
        x, y = camera_mm[0] + self.right_mm, camera_mm[1] + self.above_mm
        if self.spacing_mm is None:
            return ((x, y, self.distance_mm),)
        half = 0.5 * self.spacing_mm
        aside, rise = (0.0, half) if up else (half, 0.0)
        return (
            (x + aside, y + rise, self.distance_mm),
            (x - aside, y - rise, self.distance_mm),
        )

    def to_log(self) -> dict[str, float]:
        """As a stage log says it."""
        lengths = {
            "distance_mm": self.distance_mm,
            "spacing_mm": self.spacing_mm,
            "above_mm": self.above_mm,
            "right_mm": self.right_mm,
        }
        return {k: float(v) for k, v in lengths.items() if v is not None}


def wall_of(logged: object) -> Wall | None:
    """The wall that a step of a stage log names; None where it names none that can be."""
    if not isinstance(logged, Mapping):
        return None
    found: dict[str, float] = {}
    for name in ("distance_mm", "spacing_mm", "above_mm", "right_mm"):
        value = logged.get(name)
        if isinstance(value, int | float) and not isinstance(value, bool) and isfinite(value):
            found[name] = float(value)
    lengths = (found.get("distance_mm", 0.0), found.get("spacing_mm", 1.0))
    return Wall(**found) if min(lengths) > 0.0 else None


def bounds_deg(*, eyes: bool) -> tuple[float, float]:
    """Least and most half of the angle between two marks: for eyes alone, or for the head too."""
    return (EYES_LEAST_DEG, EYES_MOST_DEG) if eyes else (SWING_LEAST_DEG, TURN_MOST_DEG)


def spacing_range_mm(distance_mm: float, *, eyes: bool) -> tuple[float, float]:
    """Least and most from mark to mark that can be used so far away."""
    least, most = (2.0 * distance_mm * tan(radians(d)) for d in bounds_deg(eyes=eyes))
    return least, most


def why_not(wall: Wall, *, two: bool, eyes: bool) -> tuple[str, dict[str, float]] | None:
    """Why marks can't be used so: a key, and what is filled in; None where they can.

    Parameters
    ----------
    two
        Whether the exercise goes between two marks.
    eyes
        Whether the eyes alone go there.
    """
    half = wall.half_deg
    if two and half is not None:
        least, most = bounds_deg(eyes=eyes)
        if not least <= half <= most:
            low, high = spacing_range_mm(wall.distance_mm, eyes=eyes)
            # Rounded inwards: what is named must itself be let through.
            said = {"least": float(ceil(low)), "most": float(floor(high))}
            return "wall_angle", {"angle": round(half, 1), **said}
    for name, aside in (("right_mm", wall.right_mm), ("above_mm", wall.above_mm)):
        away = degrees(atan2(abs(aside), wall.distance_mm))
        if away > EYES_MOST_DEG:
            most = wall.distance_mm * tan(radians(EYES_MOST_DEG))
            return f"wall_{name[:-3]}", {"angle": round(away, 1), "most": float(floor(most))}
    return None


def place_error_deg(wall: Wall, camera_mm: Point3 | None = None) -> float:
    """How far off the direction of a mark may be by its lengths (one standard deviation).

    Parameters
    ----------
    camera_mm
        Where the camera is in the rest frame, where that is known.
    """
    half = 0.5 * (wall.spacing_mm or 0.0)
    out = atan2(half + abs(wall.right_mm), wall.distance_mm)
    along = TAPE_MM * sin(out) * cos(out) / wall.distance_mm
    aside = TAPE_MM * cos(out) ** 2 / wall.distance_mm
    off_mm = CAMERA_SHARE * hypot(*camera_mm[:2]) if camera_mm is not None else 0.0
    return degrees(hypot(along, aside, off_mm / wall.distance_mm))


def head_error_deg(mark: object, turn_deg: float, claim_share: float, claim_deg: float) -> float:
    """How far off the head's yaw may be at a turn.

    By the check at a mark on the wall where there was one: what it was off there, and what its
    tape leaves open, both as a share of that turn. Else by what the program claims.

    Parameters
    ----------
    mark
        What the check showed, as a summary says it.
    turn_deg
        The turn that is asked for.
    claim_share, claim_deg
        Error of the head's yaw as a share of the turn, and of the yaw itself, as claimed.
    """
    off = _of_mark(mark)
    if isfinite(off):
        return off * abs(turn_deg)
    return hypot(claim_share * turn_deg, claim_deg) if turn_deg else 0.0


def _of_mark(mark: object) -> float:
    """What a check at a mark was off for each degree of turn; NaN where there was none."""
    if not isinstance(mark, Mapping):
        return nan
    names = ("error_deg", "expected_deg", "expected_error_deg")
    values = [mark.get(name) for name in names]
    if not all(isinstance(v, int | float) for v in values):
        return nan
    error, expected, open_deg = (float(v) for v in values if v is not None)
    # What the tape leaves open is said as two standard deviations.
    return hypot(error, 0.5 * open_deg) / abs(expected) if expected else nan


def camera_of(found: Mapping[str, Any]) -> Point3 | None:
    """Where the camera is in the rest frame, as a set-up found it; None where it doesn't say."""
    place = found.get("camera_at_mm")
    if not isinstance(place, list | tuple) or len(place) != 3:
        return None
    if not all(isinstance(v, int | float) and isfinite(v) for v in place):
        return None
    return float(place[0]), float(place[1]), float(place[2])
