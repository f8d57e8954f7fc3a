"""Turning points of a movement, found as the samples come.

A movement to and fro is a row of extremes that alternate between high and low;
two of them are one repetition, wherever the movement's middle lies. An extreme
counts once the signal has come back from it by a share of the swing that is
usual in this set, so that a hesitation in mid-turn, a tremor, talking or a drift
is no turn, and a small movement still is one.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import inf, isfinite, isnan, nan
from statistics import median

import numpy as np
from numpy.typing import NDArray

from tracker.motion.drift import (
    BRISK_DEG,
    BRISK_S,
    HALF,
    MEAN_S,
    STAYS_S,
    Pace,
    has_stopped,
    is_brisk,
)
from tracker.motion.reading import STAY_SPEED, read_turn

Array = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Turn:
    """One half of a repetition.

    Attributes
    ----------
    index
        Running number in its set, from 0.
    side
        ``right`` or ``left``, ``up`` or ``down``: the way it went.
    start_s, peak_s, end_s
        When it left the extreme before, when it was furthest (of a jump: when it
        landed), and when it had come back far enough to count.
    amplitude_deg
        Distance from rest at the extreme, positive towards ``side``.
    swing_deg
        Distance from the extreme before (or from where the set began).
    peak_speed_deg_s
        Fastest on the way, never negative; NaN where it can't be told.
    amplitude_mm, swing_mm, peak_speed_mm_s
        The same of a movement of the head from place to place; then the ones in
        degrees are NaN, as these are for a rotation.
    short_mm
        How far it stayed from the level that it should have reached (fully up, fully
        down); NaN where none is known.
    """

    index: int
    side: str
    start_s: float
    peak_s: float
    end_s: float
    amplitude_deg: float
    swing_deg: float
    peak_speed_deg_s: float
    amplitude_mm: float = nan
    swing_mm: float = nan
    peak_speed_mm_s: float = nan
    short_mm: float = nan

    @property
    def reached_deg(self) -> float:
        """How far it went to its side; NaN where it turned back before the middle.

        Such a turn counts, but who is told of it went nowhere on that side.
        """
        return self.amplitude_deg if self.amplitude_deg >= 0.0 else nan

    @property
    def hidden(self) -> bool:
        """Whether its extreme lies in a hole: neither how far it went nor when is known."""
        return isfinite(self.swing_deg) and not isfinite(self.amplitude_deg)


def steps_s(turns: Sequence[Turn]) -> list[float]:
    """Seconds from the turn before, for each turn; NaN for the first, and where one is hidden.

    Past hidden ones it is the mean of the steps from the last that was seen.
    """
    out = [nan] * len(turns)
    last = None
    for k, turn in enumerate(turns):
        if turn.hidden:
            continue
        if last is not None:
            out[k] = (turn.peak_s - turns[last].peak_s) / (k - last)
        last = k
    return out


@dataclass(frozen=True, slots=True)
class TurningRule:
    """What makes an extreme count; all shares are of the usual swing of the set.

    Distances are in the unit of what is counted: degrees, or millimetres for a
    movement from place to place. For rotations the floor lies above a tremor of 2
    degrees to each side (4 from peak to peak) and below the swing of the smallest
    movement asked (5 degrees to each side); the share lies above a hesitation of 30 %
    and below a turn half as large as usual. Both are this project's own choice,
    checked in its tests.

    Attributes
    ----------
    floor
        Least way back from an extreme.
    first
        The same before two swings are known.
    share
        Least way back as a share of the usual swing.
    last_share
        Least way of a last extreme that nothing came back from.
    wind_up
        A first way from rest that is a smaller share of the next swing than this is
        taken for a wind-up (half of it would be usual).
    bridge_s
        Longer holes in the measuring end a movement.
    plateau
        Whether the signal rests at its extremes (eye jumps) or passes through
        them; tells how the amplitude is read.
    hole
        A hole in the measuring beside the outermost sample that lasts this share of the way
        there hides how far it went: the amplitude is then NaN. The extreme of a sine in the
        middle of such a hole lies 3 % farther out at .16 (1 - cos(pi / 2 * .16)).
    pace
        What is a drift, which nothing counts that it leads to or away from; None: nothing is.
    """

    floor: float = 5.0
    first: float = 5.5
    share: float = 0.4
    last_share: float = 0.66
    wind_up: float = 0.3
    bridge_s: float = 0.5
    plateau: bool = False
    hole: float = inf
    pace: Pace | None = None


#: Swings from which the usual one is taken (this project's own choice).
USUAL_OF = 7


class TurningFinder:
    """Streaming turning points of one channel.

    Parameters
    ----------
    sides
        Names of the high and the low side, for example ``("right", "left")``.
    rule
        When an extreme counts.
    """

    def __init__(self, sides: tuple[str, str], rule: TurningRule | None = None) -> None:
        self._sides = sides
        self._rule = rule or TurningRule()
        self._swings: list[float] = []
        self._steps_s: list[float] = []
        self._peak_s = nan
        self._count = 0
        self._restart()

    def _restart(self) -> None:
        self._times: list[float] = []
        self._values: list[float] = []
        self._way = 0
        self._high = self._low = 0
        #: Where the signal came back farthest, below the high and above the low.
        self._below = self._above = 0
        self._from = 0
        #: Ways down (-1) and up (1), from and to, of which is known that they drift.
        self._drifts: dict[int, tuple[int, int]] = {}
        self._candidate: Turn | None = None

    @property
    def usual_swing(self) -> float:
        """Median of the last swings, NaN before two of them."""
        return median(self._swings[-USUAL_OF:]) if len(self._swings) >= 2 else nan

    def feed(self, time_s: float, value: float) -> list[Turn]:
        """Take a value (NaN where not measured); gives the turns that count from now on."""
        if not isfinite(value):
            return []
        ended: list[Turn] = []
        if self._times and time_s - self._times[-1] >= self._rule.bridge_s:
            ended = self._ended(time_s)
        self._times.append(time_s)
        self._values.append(value)
        now = len(self._values) - 1
        self._look(now)
        return ended + self._reversal(now)

    def _look(self, now: int) -> None:
        """Take a sample for the extremes, and for the ways back from them."""
        value = self._values[now]
        if value > self._values[self._high]:
            self._high = self._below = now
        elif value < self._values[self._below]:
            self._below = now
        if value < self._values[self._low]:
            self._low = self._above = now
        elif value > self._values[self._above]:
            self._above = now

    def finish(self) -> list[Turn]:
        """End the movement: a last extreme a full swing away from the one before counts."""
        return self._ended(nan)

    def _ended(self, next_s: float) -> list[Turn]:
        """The same; the next sample comes at ``next_s``, NaN if none does."""
        # After a hole more of it may come, and then it is judged whole.
        out = self._over(len(self._values) - 1, ends=isnan(next_s)) if self._values else []
        if self._way and self._values:
            index = self._high if self._way > 0 else self._low
            swing = abs(self._values[index] - self._values[self._from])
            usual = self.usual_swing
            need = self._rule.first if not isfinite(usual) else usual * self._rule.last_share
            if self._swings and swing >= max(need, self._rule.floor):
                turn = self._turn(index, self._way, len(self._values) - 1)
                if self._rule.hole < inf and self._cut_off(index, turn, next_s):
                    turn = replace(turn, amplitude_deg=nan)
                out += self._counted(turn)
        self._restart()
        return out

    def _cut_off(self, index: int, turn: Turn, next_s: float) -> bool:
        """Whether nobody saw where a last turn ended: a hole follows, or it was still going."""
        lasts_s = self._times[index] - turn.start_s
        if index == len(self._times) - 1 and index > 0:
            step_s = self._times[index] - self._times[index - 1]
            step = abs(self._values[index] - self._values[index - 1])
            if step * lasts_s > STAY_SPEED * turn.swing_deg * step_s:
                return True
        return next_s - self._times[index] >= self._rule.hole * lasts_s

    def _way_back(self, now: int) -> float:
        usual = self.usual_swing
        if not isfinite(usual):
            return self._rule.first
        share = self._rule.share * usual
        # A movement that suddenly becomes small must not be lost for good: after
        # three usual turns without an extreme the demand shrinks to the floor.
        usual_s = median(self._steps_s[-USUAL_OF:])
        late = (self._times[now] - self._times[self._from]) / max(usual_s, 0.1) - 3.0
        if late > 0:
            share *= max(0.0, 1.0 - late / 2.0)
        return max(self._rule.floor, share)

    def _reversal(self, now: int) -> list[Turn]:
        back = self._way_back(now)
        value = self._values[now]
        if self._way >= 0 and self._values[self._high] - value >= back and self._left(now, -1):
            return self._turned(self._high, -1, now)
        if self._way <= 0 and value - self._values[self._low] >= back and self._left(now, 1):
            return self._turned(self._low, 1, now)
        return self._over(now)

    def _left(self, now: int, way: int) -> bool:
        """Whether the way back from an extreme is surely one of a turn."""
        first = self._high if way < 0 else self._low
        pace = self._rule.pace
        if pace is None or pace.is_full(self._values[first], self._values[now]):
            return True
        recent = bisect_left(self._times, self._times[now] - BRISK_S - MEAN_S, first, now)
        near = self._values[recent : now + 1]
        # Who has just come briskly towards the extreme again was not brisk on the way from it.
        away = way * (near[-1] - near[0]) > 0
        # Asked of every sample of a drift: first what costs little.
        brisk = away and max(near) - min(near) >= BRISK_DEG
        return brisk and is_brisk(*self._samples(recent, now))

    def _samples(self, first: int, last: int) -> tuple[Array, Array]:
        span = slice(first, last + 1)
        return np.asarray(self._times[span]), np.asarray(self._values[span])

    def _is_turn(self, first: int, last: int, share: float = 1.0) -> bool:
        """Whether a way that is over is one of a turn, or such a share of one, and no drift."""
        pace = self._rule.pace
        return pace is None or pace.is_turn(*self._samples(first, last), share)

    def _over(self, now: int, *, ends: bool = False) -> list[Turn]:
        """Of ways back that were slow, and are over now, the turn that one leads away from.

        Where the movement ``ends`` here, so does the way, however far it went.
        """
        if self._rule.pace is None:
            return []
        # What is both slow and much smaller than usual stays a drift, however late it is.
        back, usual, values = self._way_back(now), self.usual_swing, self._values
        back = max(back, self._rule.share * usual) if isfinite(usual) else back
        for first, far, way in ((self._high, self._below, -1), (self._low, self._above, 1)):
            if self._way == way or abs(values[far] - values[first]) < back:
                continue
            turned = abs(values[now] - values[far]) >= self._rule.floor
            known = self._drifts.get(way) == (first, far)
            if not turned and (known or not (ends or self._stopped(first, now))):
                continue
            if not known:
                if self._is_turn(first, far):
                    return self._turned(first, way, now)
                self._drifts[way] = first, far
            if turned:
                self._forget(now, way)
        return []

    def _stopped(self, first: int, now: int) -> bool:
        """Whether a way back has come to its end."""
        recent = bisect_left(self._times, self._times[now] - STAYS_S, first, now)
        way = abs(self._values[now] - self._values[first])
        mean = way / max(self._times[now] - self._times[first], STAYS_S)
        return recent > first and has_stopped(self._times[recent:], self._values[recent:], mean)

    def _forget(self, now: int, way: int) -> None:
        """Where a drift came from is no extreme any more."""
        if way < 0:
            self._high = self._below = now
        else:
            self._low = self._above = now

    def _turned(self, index: int, way: int, now: int) -> list[Turn]:
        turns: list[Turn] = []
        if self._way:
            turns = self._counted(self._turn(index, self._way, now))
        elif index > 0 and self._is_turn(0, index, HALF):
            self._candidate = self._turn(index, -way, now)
        self._way = way
        self._from = index
        self._high = self._low = self._below = self._above = index
        for k in range(index, now + 1):
            self._look(k)
        self._drifts.clear()
        self._drop()
        return turns

    def _counted(self, turn: Turn) -> list[Turn]:
        """The turn, and before it the set's first if that was one and no mere wind-up.

        In a small two-sided set the first way, from rest, is too short to be told
        from a tremor until the next has shown how large the swings are.
        """
        first, self._candidate = self._candidate, None
        counts = first is not None and first.swing_deg >= self._rule.wind_up * turn.swing_deg
        out = []
        for t in (first, turn) if first is not None and counts else (turn,):
            out.append(replace(t, index=self._count))
            self._count += 1
        self._swings.append(turn.swing_deg)
        since_s = turn.peak_s - self._peak_s
        self._steps_s.append(since_s if isfinite(since_s) else 2 * (turn.peak_s - turn.start_s))
        self._peak_s = turn.peak_s
        return out

    def _turn(self, index: int, way: int, now: int) -> Turn:
        values = np.asarray(self._values)
        times, rule = np.asarray(self._times), self._rule
        read = read_turn(
            times, values, self._from, index, now, plateau=rule.plateau, hole=rule.hole
        )
        high = way > 0
        return Turn(
            index=0,
            side=self._sides[0] if high else self._sides[1],
            start_s=read.start_s,
            peak_s=read.peak_s,
            end_s=self._times[now],
            amplitude_deg=read.level if high else 0.0 - read.level,
            swing_deg=float(abs(values[index] - values[self._from])),
            peak_speed_deg_s=read.peak_speed,
        )

    def _drop(self) -> None:
        """Let go of what lies before the last extreme."""
        cut = self._from
        if cut == 0:
            return
        del self._times[:cut], self._values[:cut]
        self._from = 0
        self._high -= cut
        self._low -= cut
        self._below -= cut
        self._above -= cut
