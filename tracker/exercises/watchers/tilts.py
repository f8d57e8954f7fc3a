"""A head that turns where it should tilt."""

# ruff: noqa: ARG002 -- the base class takes what its heirs need

from __future__ import annotations

from collections import deque

from tracker.exercises.counters import CHANNELS
from tracker.exercises.tilts import TILT_KEPT_S, TILTED_AGAIN, TURNED_MOST, turned_share
from tracker.exercises.watchers.base import Asked, Change, Watcher
from tracker.motion.turning import Turn, TurningFinder, TurningRule
from tracker.sample import Sample


class HeadTurned(Watcher):
    """The head turns in place of tilting; lasts until it tilts again.

    Ways to the side are found in the turning itself, as turns aren't counted here. It takes
    ``least`` of them one after the other, a whole repetition: one odd turn, as a look aside, is
    no reason to speak (common practice).
    """

    code = "head_turned"

    def __init__(self, least: int = 2) -> None:
        super().__init__()
        self._least = least
        rule = CHANNELS["head_yaw"].rule
        assert isinstance(rule, TurningRule)
        self._turns = TurningFinder(CHANNELS["head_yaw"].sides, rule)
        self._recent: deque[Sample] = deque()
        self._wrong: list[float] = []

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        self._recent.append(sample)
        while sample.time_s - self._recent[0].time_s > TILT_KEPT_S:
            self._recent.popleft()
        out: list[Change] = []
        for turn in self._turns.feed(sample.time_s, sample.head_yaw_deg):
            out += self._look(turn, turned=True)
        return out

    def turn(self, turn: Turn, asked: Asked) -> list[Change]:
        """Take the next tilt that counts."""
        return self._look(turn, turned=False)

    def _look(self, turn: Turn, *, turned: bool) -> list[Change]:
        share = turned_share(self._recent, turn, of_yaw=turned)
        if not turned or share < TILTED_AGAIN:
            # Turns before a tilt and after it are not one repetition. A head that then stays
            # tilted has the tilt told late: turns since it began are not before it.
            self._wrong = [s for s in self._wrong if s >= turn.start_s]
        if share < TILTED_AGAIN:
            return [self._end(turn.peak_s)] if self.on else []
        if not turned or share < TURNED_MOST:
            return []
        self._wrong.append(turn.start_s)
        if self.on or len(self._wrong) < self._least:
            return []
        return [self._begin(self._wrong[0])]
