"""Start and stop without hands, for who stands away from the keys: by what is seen.

A set begins once the person is in the picture, and stops when they sit down or step out.

What is seen decides, never what is not measured for other reasons (a dark room, a covered
camera): those hold up nothing and stop nothing.
"""

from __future__ import annotations

from math import isfinite, nan
from statistics import median
from typing import Literal

from tracker.plan.asked import Asked as EntryAsked
from tracker.sample import Sample

#: How high the head is, is learnt over so long from the set's beginning.
LEARN_S = 1.5
#: Lower than that by so much the person sits, or is about to: bending the knees or swaying
#: lowers a head by less, sitting down by 300 to 450 mm (common practice; the scenarios of
#: the sit-to-stand clips use these heights).
SAT_MM = 220.0
#: So long has it to be seen: a deep breath, a stumble and a look at the feet are shorter.
SAT_S, LEFT_S = 1.5, 4.0
#: A hole in what is measured that is longer than this breaks off what was being seen.
GAP_S = 0.6

#: Who comes back into the picture stands still for so long before a set begins; what was seen
#: longer ago than this says nothing of now.
AGAIN_S, FRESH_S = 2.0, 1.0

#: Exercises in which one sits down or bends low as asked.
_DOWN_AS_ASKED = frozenset({"head_rise", "head_reach"})

Seen = Literal["", "sat", "left"]


def stops_by_sight(entry: EntryAsked) -> bool:
    """Whether sitting down or stepping out of the picture stops an entry's set."""
    standing = entry.posture != "sitting" and "face" in entry.exercise.needs
    return standing and entry.exercise.channel not in _DOWN_AS_ASKED


class InSight:
    """Tells whether a set may begin: with nobody in the picture it waits."""

    def __init__(self) -> None:
        self.begin()

    def begin(self) -> None:
        """A countdown begins."""
        self.waits = False
        self._again_s = nan

    def may_begin(self, sample: Sample | None, now_s: float) -> bool:
        """Whether the person is there; where nothing is known, nothing waits."""
        fresh = sample is not None and now_s - sample.time_s < FRESH_S
        if sample is None or not fresh:
            return True
        if sample.reason == "no_face":
            self.waits, self._again_s = True, nan
            return False
        if self.waits and not isfinite(self._again_s):
            self._again_s = now_s
        return not self.waits or now_s - self._again_s >= AGAIN_S


class HandsFree:
    """Tells whether the person has sat down or stepped out of the picture in a set."""

    def __init__(self) -> None:
        self.begin(0.0)

    def begin(self, from_s: float) -> None:
        """A set begins, or goes on."""
        self._from_s = from_s
        self._heights: list[float] = []
        self._since_s: dict[Seen, float] = {}
        self._last_s = from_s

    def take(self, sample: Sample) -> Seen:
        """Take a new sample; the word for what has been seen for long enough, or none."""
        if sample.time_s <= self._last_s:
            return ""
        if sample.time_s - self._last_s > GAP_S:
            self._since_s.clear()
        self._last_s = sample.time_s
        for word, on, least_s in (
            ("sat", self._is_low(sample), SAT_S),
            ("left", sample.reason == "no_face", LEFT_S),
        ):
            seen: Seen = "sat" if word == "sat" else "left"
            if not on:
                self._since_s.pop(seen, None)
            elif sample.time_s - self._since_s.setdefault(seen, sample.time_s) >= least_s:
                return seen
        return ""

    def _is_low(self, sample: Sample) -> bool:
        height = sample.head_y_mm
        if not isfinite(height):
            return False
        if sample.time_s - self._from_s < LEARN_S or not self._heights:
            self._heights.append(height)
            return False
        return height < median(self._heights) - SAT_MM
