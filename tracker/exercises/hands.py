"""What the hands tell: a throw from one to the other, how high it went, which arm went down.

Measured are the wrists, never the object. Heights are from the eyes, on a plane through
them (:mod:`tracker.body.columns`).
"""

from __future__ import annotations

import itertools
from collections import deque
from collections.abc import Iterable
from math import isfinite, nan
from statistics import median
from typing import Literal

from tracker.motion.turning import Turn
from tracker.sample import Sample

Side = Literal["right", "left"]
HeadInThrow = Literal["followed", "stayed"]

#: In a throw the throwing hand itself rises by this share of what the one rises against the
#: other; a hand that only sinks, or stays while the other comes back, throws nothing (this
#: project's own choice: in a fair throw the other hand sinks a little to catch).
OWN_SHARE = 0.4
#: The object leaves the hand before the hand's extreme; the hand is looked at this long after (this
#: project's own choice).
AFTER_S = 0.1
#: Gravity, in mm/s2 (the standard value of 1901, rounded).
GRAVITY_MM_S2 = 9810.0
#: Longer steps between two places say nothing of a speed (this project's own choice: two looks of a
#: slow camera).
STEP_S = 0.15
#: One wrist this much lower than the other is the one that reaches down (this project's own
#: choice: more than the shoulders tilt in a straight bend, less than a forearm).
LOWER_MM = 120.0


def hand_difference(sample: Sample) -> float:
    """How much higher the right wrist is than the left one, in mm; NaN where one isn't known.

    One below the picture stands at its lower edge, so the difference is that or more.
    """
    return sample.wrist_right_y_mm - sample.wrist_left_y_mm


def a_hand_is_seen(sample: Sample) -> bool:
    """Whether one wrist is seen itself, not only known to be below the picture."""
    known = isfinite(hand_difference(sample))
    return known and (isfinite(sample.wrist_right_x_mm) or isfinite(sample.wrist_left_x_mm))


def height_of(sample: Sample, side: str) -> float:
    """Height of a wrist above the eyes, in mm."""
    return sample.wrist_right_y_mm if side == "right" else sample.wrist_left_y_mm


def is_throw(samples: Iterable[Sample], turn: Turn) -> bool:
    """Whether the hand of this turn has risen itself, not only the other one sunk."""
    heights = [height for _, height in _path(samples, turn)]
    if not heights:
        return False
    top = max(range(len(heights)), key=heights.__getitem__)
    own_mm = heights[top] - min(heights[: top + 1])
    return own_mm >= OWN_SHARE * turn.swing_mm


def throw_height_mm(samples: Iterable[Sample], turn: Turn) -> float:
    """How high above the eyes an object gets that the hand lets go where it is fastest, in mm.

    An object that leaves a hand at a height with a speed upwards rises by the speed
    squared over twice the gravity; the most of that over the throw, so never less than the
    hand's own top. From 15 places a second it may be off by what the hand goes between two
    of them. NaN where the hand was not seen.
    """
    rows = list(_path(samples, turn))
    best = max((height for _, height in rows), default=nan)
    for (t0, low), (t1, high) in itertools.pairwise(rows):
        if 0 < t1 - t0 <= STEP_S and high > low:
            speed = (high - low) / (t1 - t0)
            best = max(best, high + speed * speed / (2 * GRAVITY_MM_S2))
    return best


#: A head goes along that nods up and down again, or turns to the catching hand, by so much: well
#: above what a still head wanders and is misread by (under a degree), below the 15 and more by
#: which an object in front rises from hands to eyes (this project's own choice).
FOLLOWS_DEG = 4.0
#: So long before the throwing hand rises and after it was highest: the object flies on (this
#: project's own choice).
BEFORE_S, FLIES_S = 0.2, 0.7
#: The head has to be measured in so many looks in the time of a throw, with no longer hole.
LEAST_LOOKS, HOLE_S = 6, 0.4


def head_with_throw(samples: Iterable[Sample], turn: Turn) -> HeadInThrow | None:
    """Whether the head went along with a throw; None where it was not measured well enough.

    The object itself is not seen: the throwing hand says when it flies, and to which side.
    """
    from_s, to_s = turn.start_s - BEFORE_S, turn.peak_s + FLIES_S
    rows = [
        (s.time_s, s.head_yaw_deg, s.head_pitch_deg)
        for s in samples
        if from_s <= s.time_s <= to_s and isfinite(s.head_yaw_deg + s.head_pitch_deg)
    ]
    times = [from_s, *(r[0] for r in rows), to_s]
    holes = (b - a for a, b in itertools.pairwise(times))
    if len(rows) < LEAST_LOOKS or max(holes) > HOLE_S:
        return None
    pitches, yaws = [r[2] for r in rows], [r[1] for r in rows]
    top = max(range(len(rows)), key=pitches.__getitem__)
    nod_deg = pitches[top] - max(min(pitches[: top + 1]), min(pitches[top:]))
    few = max(len(rows) // 4, 1)
    across_deg = median(yaws[:few]) - median(yaws[-few:])
    turn_deg = across_deg if turn.side == "right" else -across_deg
    return "followed" if max(nod_deg, turn_deg) >= FOLLOWS_DEG else "stayed"


def _path(samples: Iterable[Sample], turn: Turn) -> list[tuple[float, float]]:
    """Times and heights of the throwing hand, from the turn's start to just after its end.

    Where looks are few the fitted end lies before the outermost one: that belongs to it, too.
    """
    return [
        (s.time_s, height)
        for s in samples
        if turn.start_s <= s.time_s <= max(turn.peak_s + AFTER_S, turn.end_s)
        and isfinite(height := height_of(s, turn.side))
    ]


def arm_of_bend(samples: Iterable[Sample], turn: Turn) -> Side | None:
    """Which arm went down in a bend: the lower wrist, last seen together with the other.

    Hands leave the picture early in a bend; None where they were not seen apart.
    """
    apart = [
        d
        for s in samples
        if turn.start_s - 0.3 <= s.time_s <= turn.peak_s
        and isfinite(s.wrist_right_x_mm)
        and isfinite(s.wrist_left_x_mm)
        and isfinite(d := hand_difference(s))
    ]
    if not apart or abs(apart[-1]) < LOWER_MM:
        return None
    return "left" if apart[-1] > 0 else "right"


#: A bend is told once it is over; so long before it began the hands may have been seen
#: (this project's own choice: longer than a bend takes).
BEND_KEPT_S = 30.0


class ArmsOfBends:
    """Which arm went down in each bend of a set, while it goes on."""

    def __init__(self) -> None:
        self._recent: deque[Sample] = deque()
        self.arms: list[Side | None] = []

    def feed(self, sample: Sample) -> None:
        """Take the next sample."""
        if isfinite(hand_difference(sample)):
            self._recent.append(sample)
        while self._recent and sample.time_s - self._recent[0].time_s > BEND_KEPT_S:
            self._recent.popleft()

    def take(self, turn: Turn) -> None:
        """Take the next bend."""
        self.arms.append(arm_of_bend(self._recent, turn))
