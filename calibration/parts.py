"""The parts of a set-up as a person knows them: which there are, and how each came out.

Light enough for the window's process; ``calibration.parts_found`` fills them in.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import nan

from tracker.session.stage import Step

#: The parts in the order in which they are asked for, and in which a fit takes their steps.
PARTS = ("rest", "looks", "check", "turn", "nod")
#: Those in which the head is to be still.
STILL = frozenset({"rest", "looks", "check"})
#: Frames of a set-up that are kept at most (two minutes at 30 frames/s: longer than it takes,
#: with steps done again; this project's own choice, for the memory).
MAX_HELD = 3600
_OF_STEP = {"rest": "rest", "turn_slowly": "turn", "nod_slowly": "nod"}


@dataclass(frozen=True, slots=True)
class PartFound:
    """How one part of a set-up came out; NaN and 0 where a figure is none of its own.

    Attributes
    ----------
    part
        One of :data:`PARTS`.
    seen
        Share of its frames with a face, 0 to 1.
    wander_deg
        In 19 of 20 frames the head was no farther from its middle (rest, looks, check).
    error_deg
        Median error of the gaze: on looks left out of the fit one by one (looks), or on those
        that no fit has seen (check).
    points, points_seen
        Looks that were asked for, and those with a face in them; of the check those at the
        screen, as marks on the wall have a check of their own.
    plus_deg, minus_deg
        How far the head went right or up, and left or down (turn, nod).
    """

    part: str
    seen: float
    wander_deg: float = nan
    error_deg: float = nan
    points: int = 0
    points_seen: int = 0
    plus_deg: float = nan
    minus_deg: float = nan


def is_held_out(step: Step) -> bool:
    """Whether a look is kept from the fit, to check it."""
    return step.step == "look" and (step.model_extra or {}).get("held_out") is True


def on_wall(step: Step) -> tuple[float, float, float] | None:
    """A mark on the wall: right of the camera, above it, and how far from the eyes, in mm."""
    place = (step.model_extra or {}).get("wall_mm")
    if not isinstance(place, list | tuple) or len(place) != 3:
        return None
    right, above, distance = (float(v) for v in place)
    return right, above, distance


def part_of(step: Step) -> str:
    """The part that a step of a set-up belongs to."""
    if step.step == "look":
        return "check" if is_held_out(step) else "looks"
    return _OF_STEP.get(step.step, step.step)


def parts_in(steps: Iterable[Step]) -> list[str]:
    """The parts that some steps make up, in their order."""
    there = {part_of(s) for s in steps}
    return [p for p in PARTS if p in there]


def in_order(steps: Iterable[Step]) -> list[Step]:
    """Steps by their parts, then by time: one that was done again takes its old place.

    The fit takes what is straight ahead from the first.
    """
    return sorted(steps, key=lambda s: (PARTS.index(part_of(s)), s.from_s))
