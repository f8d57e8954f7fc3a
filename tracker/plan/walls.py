"""How far away and how far apart marks on a wall may be: for the plan's rules and the patient.

Two marks that a head turns between ask it for the angle at which they lie. So they keep to
the neck limit, and what the patient measures keeps to the range that the plan asks for.
"""

from __future__ import annotations

from dataclasses import replace
from math import ceil, floor, inf, radians, tan

from tracker.plan.asked import Asked
from tracker.plan.changes import neck_limit_deg
from tracker.plan.model import Plan, WallMarks
from tracker.wall import EYES_MOST_DEG, LEAST_MM, MOST_MM, bounds_deg

#: Lengths are asked for in whole centimetres, as a tape is read (common practice).
STEP_MM = 10.0
#: So much more than the least angle there must be room for: then some whole centimetre fits at
#: each distance (from 900 mm away half a degree is 16 mm from mark to mark; arithmetic).
ROOM_DEG = 0.5

Bounds = tuple[float, float]


def _turns(asked: Asked) -> bool:
    """Whether the head turns between two marks."""
    return asked.exercise.wall_marks == 2 and not asked.exercise.channel.startswith("eye")


def half_range_deg(plan: Plan, asked: Asked) -> Bounds:
    """Least and most half of the angle between two marks that program, range and neck allow.

    The first is the larger where nothing fits.
    """
    least, most = bounds_deg(eyes=not _turns(asked))
    if _turns(asked) and asked.amplitude_deg is not None:
        most = min(most, asked.amplitude_deg[1])
    return least, min(most, turn_most_deg(plan, asked))


def turn_most_deg(plan: Plan, asked: Asked) -> float:
    """How far the head may turn to the farther of two marks; infinite where nothing limits it."""
    limit = neck_limit_deg(plan, asked.exercise) if _turns(asked) else None
    return inf if limit is None else limit


def neck_spacing_mm(plan: Plan, asked: Asked, distance_mm: float, right_mm: float) -> float:
    """How far apart the neck limit lets marks be whose middle lies so far aside."""
    limit = turn_most_deg(plan, asked)
    return inf if limit == inf else 2.0 * (distance_mm * tan(radians(limit)) - abs(right_mm))


def spacing_bounds_mm(plan: Plan, asked: Asked, distance_mm: float) -> Bounds:
    """Least and most from mark to mark so far from the wall, in whole centimetres.

    Inwards, so that whatever lies between will do; the first is the larger where nothing does.
    """
    least, most = (2.0 * distance_mm * tan(radians(d)) for d in half_range_deg(plan, asked))
    right_mm = 0.0 if asked.wall is None else asked.wall.right_mm
    most = min(most, neck_spacing_mm(plan, asked, distance_mm, right_mm))
    least, most = _inwards(least, most)
    wanted = asked.amplitude_deg if _turns(asked) else None
    if wanted is None or least > most:
        return least, most
    # Of a narrow range a tape may hit nothing: then the most is all there is to choose.
    from_mm = STEP_MM * ceil(2.0 * distance_mm * tan(radians(wanted[0])) / STEP_MM)
    return max(least, min(from_mm, most)), most


def distance_bounds_mm(plan: Plan, asked: Asked) -> Bounds:
    """Least and most from the eyes to the wall, in whole centimetres, as above.

    The mark, or the middle of two, lies no farther up, down or aside of the camera than the
    eyes are read. Where the patient measures from mark to mark, too, some whole centimetre of
    that fits at each of these distances.
    """
    wall = asked.wall
    aside_mm = 0.0 if wall is None else max(abs(wall.above_mm), abs(wall.right_mm))
    near, far = max(LEAST_MM, aside_mm / tan(radians(EYES_MOST_DEG))), MOST_MM
    if asked.exercise.wall_marks != 2:
        return _inwards(near, far)
    low, high = (tan(radians(d)) for d in half_range_deg(plan, asked))
    if low >= high:
        return MOST_MM, LEAST_MM
    limit, spacing = turn_most_deg(plan, asked), None if wall is None else wall.spacing_mm
    turn, right_mm = (
        tan(radians(limit)) if limit < inf else inf,
        abs(wall.right_mm) if wall else 0.0,
    )
    if spacing is None:
        fits = (0.5 * STEP_MM / (high - low), (0.5 * STEP_MM + right_mm) / (turn - low))
        return _inwards(max(near, *fits), far)
    near = max(near, 0.5 * spacing / high, (0.5 * spacing + right_mm) / turn)
    near, far = _inwards(near, min(far, 0.5 * spacing / low))
    wanted = asked.amplitude_deg if _turns(asked) else None
    if wanted is None or near > far:
        return near, far
    to_mm = STEP_MM * floor(0.5 * spacing / tan(radians(wanted[0])) / STEP_MM)
    return near, min(far, max(to_mm, near))


def something_fits(plan: Plan, asked: Asked) -> bool:
    """Whether there are lengths that a patient could measure, of those that are left open."""
    wall = asked.wall
    if wall is None or wall.distance_mm is None:
        near, far = distance_bounds_mm(plan, asked)
        return near <= far
    aside_mm = max(abs(wall.above_mm), abs(wall.right_mm))
    if aside_mm > wall.distance_mm * tan(radians(EYES_MOST_DEG)):
        return False
    least, most = spacing_bounds_mm(plan, asked, wall.distance_mm)
    return least <= most


def in_the_middle(asked: Asked) -> Asked:
    """The same with its marks as high as the camera and midway before it."""
    wall = asked.wall
    if wall is None:
        return asked
    return replace(asked, wall=wall.model_copy(update={"above_mm": 0.0, "right_mm": 0.0}))


def too_far_off(plan: Plan, asked: Asked) -> tuple[str, float]:
    """Which of the two places beside the camera keeps marks from fitting, and its most in mm."""
    wall = asked.wall or WallMarks()
    far = wall.distance_mm or distance_bounds_mm(plan, in_the_middle(asked))[1]
    most = far * tan(radians(EYES_MOST_DEG))
    if abs(wall.above_mm) > most:
        return "above_mm", most
    limit = turn_most_deg(plan, asked)
    if limit < inf:
        least = 2.0 * far * tan(radians(half_range_deg(plan, asked)[0])) + STEP_MM
        turned = far * tan(radians(limit)) - 0.5 * (wall.spacing_mm or least)
        most = min(most, turned)
    return "right_mm", max(most, 0.0)


def _inwards(least: float, most: float) -> Bounds:
    return STEP_MM * ceil(least / STEP_MM), STEP_MM * floor(most / STEP_MM)
