"""How high a throw goes, as far as the hands tell."""

# ruff: noqa: ARG002 -- the base class takes what its heirs need

from __future__ import annotations

from collections import deque
from math import isfinite
from statistics import median

from tracker.exercises.counters import KEPT_S
from tracker.exercises.hands import hand_difference, throw_height_mm
from tracker.exercises.watchers.base import Asked, Change
from tracker.exercises.watchers.turns import OfTurns
from tracker.motion.turning import Turn
from tracker.sample import Sample


class ThrowLow(OfTurns):
    """The throws stay below the eyes: the usual one of the last four, never one alone.

    From the hands, not from the object: how high something gets that is let go where the
    hand is fastest (:func:`tracker.exercises.hands.throw_height_mm`).
    """

    code = "throw_low"

    def __init__(self) -> None:
        super().__init__()
        self._recent: deque[Sample] = deque()
        self._heights: deque[float] = deque(maxlen=self.LAST)

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        if isfinite(hand_difference(sample)):
            self._recent.append(sample)
        while self._recent and sample.time_s - self._recent[0].time_s > KEPT_S:
            self._recent.popleft()
        return []

    def turn(self, turn: Turn, asked: Asked) -> list[Change]:
        """Take the next throw."""
        self._heights.append(throw_height_mm(self._recent, turn))
        return super().turn(turn, asked)

    def _wrong(self, turns: list[Turn], asked: Asked) -> bool:
        known = [h for h in self._heights if isfinite(h)]
        return len(known) == len(turns) and median(known) < 0.0
