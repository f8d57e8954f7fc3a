"""Turns against what was asked: how far, how fast, and all the way."""

# ruff: noqa: ARG002 -- the base class takes what its heirs need

from __future__ import annotations

from collections import deque
from math import isfinite, nan
from statistics import median
from typing import ClassVar

from tracker.exercises.counters import Channel
from tracker.exercises.watchers.base import Asked, Change, Watcher
from tracker.motion.turning import Turn, steps_s

#: Least time between two turns that is a rest (common practice).
REST_S = 5.0


class OfTurns(Watcher):
    """Judges the last turns together, never one alone."""

    #: Two repetitions: one odd turn is no reason to speak (common practice).
    LAST = 4

    def __init__(self) -> None:
        super().__init__()
        self._turns: deque[Turn] = deque(maxlen=self.LAST)

    def turn(self, turn: Turn, asked: Asked) -> list[Change]:
        """Take the next turn."""
        if self._turns and turn.peak_s - self._turns[-1].peak_s > _rest_s(asked):
            self._turns.clear()  # a rest in between: judge afresh
        self._turns.append(turn)
        if len(self._turns) < self.LAST:
            return []
        wrong = self._wrong(list(self._turns), asked)
        if wrong and not self.on:
            return [self._begin(self._turns[0].start_s)]
        if not wrong and self.on:
            return [self._end(turn.peak_s)]
        return []

    def _wrong(self, turns: list[Turn], asked: Asked) -> bool:
        return False


def _rest_s(asked: Asked) -> float:
    """What is longer is a rest, not the way of a slow beat (common practice)."""
    slow_s = 1.5 * 60.0 / asked.tempo_bpm if asked.tempo_bpm else 0.0
    return max(REST_S, slow_s)


class Amplitude(OfTurns):
    """Turns smaller or larger than asked.

    Tolerances: 10 % below the least asked and 25 % above the most, common
    practice; both lie well beyond the error of an amplitude, 3 to 5 % (this project's own aim).
    """

    def __init__(self, code: str, small_share: float = 0.9, large_share: float = 1.25) -> None:
        super().__init__()
        self.code = code
        self._small, self._large = small_share, large_share

    def _wrong(self, turns: list[Turn], asked: Asked) -> bool:
        if asked.amplitude_deg is None:
            return False
        told = [t.amplitude_deg for t in turns if not t.hidden]
        if 2 * len(told) < len(turns):
            # Of most of them nobody saw how far they went.
            return False
        usual = median(told)
        if self.code == "too_small":
            return usual < self._small * asked.amplitude_deg[0]
        return usual > self._large * asked.amplitude_deg[1]


class Tempo(OfTurns):
    """Turns slower or faster than the beat asked at that time (15 %, common practice)."""

    def __init__(self, code: str, slow_share: float = 0.85, fast_share: float = 1.15) -> None:
        super().__init__()
        self.code = code
        self._slow, self._fast = slow_share, fast_share

    def _wrong(self, turns: list[Turn], asked: Asked) -> bool:
        tempo = tempo_of(turns)
        if asked.tempo_bpm is None or not isfinite(tempo):
            return False
        if self.code == "too_slow":
            return tempo < self._slow * asked.tempo_bpm
        return tempo > self._fast * asked.tempo_bpm


#: What a way is short of when it doesn't count as whole, and the least rise of a stand (common
#: practice: see :class:`FallsShort`).
SHORT_SHARE, LEAST_RISE_MM = 0.25, 220.0


def stood_up(turn: Turn) -> bool:
    """Whether a turn up from a chair went all the way (common practice: :class:`FallsShort`)."""
    whole_mm = turn.swing_mm + turn.short_mm
    return not (turn.swing_mm < LEAST_RISE_MM or turn.short_mm > SHORT_SHARE * whole_mm)


class FallsShort(Watcher):
    """Doesn't stand up, sit up or sit down all the way; lasts until it is done again.

    Each turn counts by itself: to come all the way is what was asked. A way is full
    if no more than a quarter of it is missing (common practice; half the height is
    far short of it); where a body comes back to upright, 80 mm are (leaning forward
    by 25 degrees lowers a head that is 800 mm above the seat by 75). A stand that
    raises the head by less than 220 mm is none, even if all are alike.
    """

    #: Which turn each code is about, by channel.
    SIDES: ClassVar[dict[tuple[str, str], str]] = {
        ("not_upright", "head_rise"): "up",
        ("too_small", "head_rise"): "down",
        ("not_upright", "head_reach"): "down",
    }

    def __init__(
        self,
        code: str,
        channel: Channel,
        most_mm: float = 80.0,
    ) -> None:
        super().__init__()
        self.code = code
        self._side = self.SIDES[code, channel.name]
        self._reach = channel.name == "head_reach"
        self._most_mm = most_mm

    def turn(self, turn: Turn, asked: Asked) -> list[Change]:
        """Take the next turn."""
        if turn.side != self._side:
            return []
        wrong = self._wrong(turn)
        if wrong and not self.on:
            return [self._begin(turn.end_s if self._reach else turn.peak_s)]
        if not wrong and self.on:
            return [self._end(turn.end_s if self._reach else turn.peak_s)]
        return []

    def _wrong(self, turn: Turn) -> bool:
        if self._reach:
            return turn.short_mm > self._most_mm
        if self.code == "not_upright":
            return not stood_up(turn)
        return turn.short_mm > SHORT_SHARE * turn.swing_mm


def tempo_of(turns: list[Turn]) -> float:
    """Beats a minute of turns, one beat a turn: from the median time between extremes."""
    steps = [s for s in steps_s(turns) if s > 0]
    return 60.0 / median(steps) if steps else nan
