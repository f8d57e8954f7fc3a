"""Head and eyes against a target that moves, or two that are looked at in turn."""

# ruff: noqa: ARG002 -- the base class takes what its heirs need

from __future__ import annotations

from collections import deque
from math import isfinite
from typing import ClassVar

import numpy as np

from tracker.exercises.landing import landing_of, stays_in
from tracker.exercises.landing import rows_of as jumps_of
from tracker.exercises.order import Order, lead_s, order_of, rows_of
from tracker.exercises.watchers.base import Asked, Change, Watcher
from tracker.exercises.watchers.gaze import OFF_TARGET_DEG
from tracker.exercises.watchers.turns import OfTurns
from tracker.motion.turning import Turn
from tracker.sample import Sample


class HeadWithTarget(OfTurns):
    """The head goes the same way as a target that it should turn against.

    Told from how head and target go together over two repetitions: their correlation is
    -1 where they are opposite, 0 where the one lags by half a turn, 1 where they go the
    same way. Only what is clearly with the target is said; a poor beat is another thing
    (0.3, this project's own choice).

    Parameters
    ----------
    channel
        ``head_yaw`` or ``head_pitch``.
    """

    code = "head_with_target"
    #: Samples are kept for two repetitions at the slowest beat that a plan may ask for.
    KEEP_S = 30.0

    def __init__(self, channel: str, most: float = 0.3) -> None:
        super().__init__()
        self._up = channel == "head_pitch"
        self._most = most
        self._rows: deque[tuple[float, float, float]] = deque()

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        head = sample.head_pitch_deg if self._up else sample.head_yaw_deg
        target = sample.target_pitch_deg if self._up else sample.target_yaw_deg
        if isfinite(head) and isfinite(target):
            self._rows.append((sample.time_s, head, target))
        while self._rows and self._rows[0][0] < sample.time_s - self.KEEP_S:
            self._rows.popleft()
        return []

    def _wrong(self, turns: list[Turn], asked: Asked) -> bool:
        from_s, to_s = turns[0].start_s, turns[-1].peak_s
        rows = np.array([r[1:] for r in self._rows if from_s <= r[0] <= to_s])
        if len(rows) < 2 * self.LAST or np.ptp(rows, axis=0).min() < 1.0:
            return False
        return float(np.corrcoef(rows.T)[0, 1]) > self._most


class NotEyesFirst(Watcher):
    """The head goes to a mark before the eyes, or both go together, where the eyes should lead.

    Decided from two turns, never from one alone (common practice); over with the first
    that is done otherwise.

    Parameters
    ----------
    order
        What is noticed: ``head_first`` or ``together``.
    """

    CODES: ClassVar[dict[str, Order]] = {"head_first": "head_first", "moved_together": "together"}
    KEEP_S = 12.0

    def __init__(self, code: str) -> None:
        super().__init__()
        self.code = code
        self._order = self.CODES[code]
        self._samples: deque[Sample] = deque()
        self._since_s: list[float] = []

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        self._samples.append(sample)
        while self._samples[0].time_s < sample.time_s - self.KEEP_S:
            self._samples.popleft()
        return []

    def turn(self, turn: Turn, asked: Asked) -> list[Change]:
        """Take the next turn."""
        if turn.index == 0:
            return []
        order = order_of(lead_s(rows_of(self._samples), turn))
        if order == "not_told":
            return []
        if order != self._order:
            self._since_s.clear()
            return [self._end(turn.start_s)] if self.on else []
        self._since_s.append(turn.start_s)
        if self.on or len(self._since_s) < 2:
            return []
        return [self._begin(self._since_s[0])]


class GazeShort(Watcher):
    """The eyes stop short of their target.

    Noticed from two jumps of the last four, never from one alone (common practice); over
    with two in a row that arrive. What the camera could not tell counts as neither.

    Parameters
    ----------
    beyond_deg
        What is farther from the target is short of it, in degrees.
    """

    code = "gaze_short"
    LAST, LEAST = 4, 2
    #: Two jumps at the slowest beat that a plan may ask for, and their targets.
    KEEP_S = 30.0

    def __init__(self, beyond_deg: float = OFF_TARGET_DEG) -> None:
        super().__init__()
        self._limit = beyond_deg
        self._samples: deque[Sample] = deque()
        self._landed: deque[tuple[float, bool]] = deque(maxlen=self.LAST)

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        self._samples.append(sample)
        while self._samples[0].time_s < sample.time_s - self.KEEP_S:
            self._samples.popleft()
        return []

    def turn(self, turn: Turn, asked: Asked) -> list[Change]:
        """Take the next jump."""
        rows = jumps_of(self._samples)
        landing = landing_of(rows, turn, stays_in(rows), self._limit)
        if landing.where == "not_told":
            return []
        self._landed.append((turn.start_s, landing.where == "short"))
        short = [start_s for start_s, is_short in self._landed if is_short]
        if not self.on and len(short) >= self.LEAST:
            return [self._begin(short[0])]
        if self.on and not any(is_short for _, is_short in list(self._landed)[-2:]):
            self._landed.clear()
            return [self._end(turn.start_s)]
        return []
