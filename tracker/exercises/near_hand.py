"""A fingertip brought near and held out again, from the arm that carries it.

The size of a hand in the picture tells no distance: on rendered arms it grew and shrank
with how the hand was turned. The forearm does: it stands up under a hand that is near the
face, and lies level behind one that is held out. So what is counted is how far the wrist
stands above the elbow. On a rendered body 1 m away it went from 255 mm with the wrist
120 mm before the eyes to 15 mm below with the arm held out. Where the elbow or the hand
is out of the picture nothing is told.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import isfinite, nan

import numpy as np

from tracker.body.raised import elbow_of, wrist_of
from tracker.exercises.counters import Channel, Counter
from tracker.exercises.hands import Side
from tracker.motion.turning import TurningRule
from tracker.sample import Sample

#: From a way of 100 mm a cycle counts: two fifths of what a whole one reads (see above).
#: In a second in which the arm is not seen no whole cycle is hidden. Both are this
#: project's own choice.
_RULE = TurningRule(floor=100.0, first=110.0, bridge_s=1.2)
#: The arm has to be seen in this share of the looks (this project's own choice).
LEAST_SEEN = 0.6
NOT_SEEN = "hand and elbow were not seen for long enough"
NOT_LOOKED_FOR = "the hand was not looked for"
NOTE = (
    "from the forearm, which stands up under a near hand and lies level behind one held out; "
    "tried on rendered bodies, not on people"
)


@dataclass(frozen=True, slots=True)
class NearHand:
    """What the hand was seen to do: whole cycles, and why there are none."""

    cycles: int | None
    side: Side | None = None
    reason: str = ""


def forearm_rise_mm(sample: Sample, side: str) -> float:
    """How far the wrist stands above the elbow, in mm; NaN unless both are seen."""
    (x, y), (elbow_x, elbow_y) = wrist_of(sample, side), elbow_of(sample, side)
    return y - elbow_y if isfinite(x + elbow_x) else nan


def near_hand(samples: Sequence[Sample]) -> NearHand:
    """How often a hand came near and went out again in a set.

    Parameters
    ----------
    samples
        Those of the set; the arm that moves more is the one that is meant.
    """
    looks = [s for s in samples if isfinite(s.body_seen)]
    if not looks:
        return NearHand(None, None, NOT_LOOKED_FOR)
    sides: tuple[Side, Side] = ("right", "left")
    ways = {side: way for side in sides if (way := _way_mm(looks, side)) is not None}
    side = max(ways, key=ways.__getitem__, default=None)
    # An arm that only hangs says nothing while the other one is not seen.
    if side is None or (len(ways) < len(sides) and ways[side] < _RULE.floor):
        return NearHand(None, None, NOT_SEEN)
    return NearHand(_cycles(looks, side), side)


def _way_mm(looks: Sequence[Sample], side: Side) -> float | None:
    """How far the forearm went up and down; None where it was not seen for long enough."""
    rises = np.array([forearm_rise_mm(s, side) for s in looks])
    known = rises[np.isfinite(rises)]
    if len(known) < LEAST_SEEN * len(looks):
        return None
    low, high = np.percentile(known, [5, 95])
    return float(high - low)


def _cycles(looks: Sequence[Sample], side: Side) -> int:
    def rise(sample: Sample) -> float:
        return forearm_rise_mm(sample, side)

    counter = Counter(Channel("hand_near", rise, ("near", "far"), _RULE, "mm", 0.3, body=True))
    for sample in looks:
        # A look that misses the arm is no end of a movement.
        if isfinite(rise(sample)):
            counter.feed(sample)
    counter.finish()
    return counter.repetitions
