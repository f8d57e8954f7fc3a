"""A head that sags and is put right again goes to and fro, too: too slowly for a turn."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass
from math import inf
from statistics import fmean

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

#: What goes so far in so long is no drift, whatever comes of it (own choice: 3.3 degrees a second;
#: a drift of 8 degrees to each side, once there and back in 33 s, has 1.5).
BRISK_DEG, BRISK_S = 5.0, 1.5
#: The first way of a set, from rest, is half as long as the next (arithmetic).
HALF = 0.5
#: Slower than half of its mean speed for so long, as the means of its ends tell: a way has come to
#: its end (own choice).
STAYS_S, ENDS_S, STOPPED = 2.5, 0.5, 0.5
#: Samples of so long are averaged, as a range of single ones is mostly noise (own choice).
MEAN_S = 0.2
#: The share of a way that a turn goes within the same share of :attr:`Pace.slowest_s`, so that no
#: hold and no short pause makes it slow (own choice).
MOST = 0.75
#: Turns that are smaller by more are told as too small (``watchers.turns.Amplitude``; own choice).
FULL = 0.9
#: From end to end nobody sags so far, so that somebody slow who turns less than asked counts from
#: there on (own choice: above a drift of 8 degrees to each side with its noise).
LARGE_DEG = 18.0
#: Where no size is asked for, the least that the catalogue asks for to one side (own choice).
USUAL_DEG = 10.0
#: The slowest way of a turn that is smaller than asked (own choice: made-up even turns of 9 s a
#: way are below it, drifts of 33 s there and back are above). With a tempo it is so many beats, if
#: they are shorter (own choice: at 60 a minute even turns of 6 s a way are below it, drifts of
#: 10 s a way are above), and never fewer than what is a rest (``watchers.turns``; common practice).
SLOWEST_S = 10.0
SLOWEST_BEATS = 6.5
LEAST_BEATS = 1.5


@dataclass(frozen=True, slots=True)
class Pace:
    """How slow a way is a drift, and how large it is a turn however slow.

    Attributes
    ----------
    slowest_s
        The time that an even way may take.
    full_deg
        How far from rest somebody goes who does what was asked, if slowly.
    """

    slowest_s: float = SLOWEST_S
    full_deg: float = FULL * USUAL_DEG

    @classmethod
    def of(cls, tempo_bpm: float | None, least_deg: float | None) -> Pace:
        """That of a step: its slowest beat and its least amplitude, None where none is asked."""
        beat_s = inf if tempo_bpm is None else 60.0 / tempo_bpm
        slowest_s = min(SLOWEST_S, SLOWEST_BEATS * beat_s)
        if tempo_bpm is not None:
            slowest_s = max(slowest_s, LEAST_BEATS * beat_s)
        return cls(slowest_s, FULL * (USUAL_DEG if least_deg is None else least_deg))

    def is_full(self, begin_deg: float, end_deg: float, share: float = 1.0) -> bool:
        """Whether a way, or such a share of one, is as large as asked, or larger than a drift.

        As large as asked: to both sides, or from rest to one.
        """
        way = abs(end_deg - begin_deg)
        reach = max(abs(begin_deg), abs(end_deg))
        large = share * min(2.0 * self.full_deg, LARGE_DEG)
        return way >= large or min(way, reach) >= self.full_deg

    def is_turn(self, times: Array, values: Array, share: float = 1.0) -> bool:
        """Whether a way that is over is one of a turn, or such a share of one."""
        if self.is_full(values[0], values[-1], share) or is_brisk(times, values, share):
            return True
        at, where = smooth(times, values)
        whole = float(where[-1] - where[0])
        return farthest(at, where, MOST * self.slowest_s) >= MOST * whole


def is_brisk(times: Array, values: Array, share: float = 1.0) -> bool:
    """Whether a way, or such a share of one, is as fast somewhere as no drift is."""
    if times[-1] - times[0] <= share * BRISK_S:
        return bool(abs(values[-1] - values[0]) >= share * BRISK_DEG)
    return farthest(*smooth(times, values), share * BRISK_S) >= share * BRISK_DEG


def has_stopped(times: Sequence[float], values: Sequence[float], speed: float) -> bool:
    """Whether the last :data:`STAYS_S` were slower than a share of a mean speed."""
    ends = max(bisect_left(times, times[0] + ENDS_S), 1)
    way = abs(fmean(values[-ends:]) - fmean(values[:ends]))
    return way < STOPPED * speed * (STAYS_S - ENDS_S)


def smooth(times: Array, values: Array) -> tuple[Array, Array]:
    """Means over :data:`MEAN_S`, turned so that the way goes up."""
    # Not their median: of pictures that come in bursts that is the time within one.
    steps = float(times[-1] - times[0]) / (len(times) - 1) if len(times) > 1 else MEAN_S
    count = min(max(int(MEAN_S / max(steps, 1e-3)), 1), len(times))
    mean = np.full(count, 1.0 / count)
    at, where = (np.convolve(v, mean, "valid") for v in (times, values))
    return at, where if values[-1] > values[0] else -where


def farthest(times: Array, values: Array, within_s: float) -> float:
    """How far up it goes at most from any sample to one up to ``within_s`` later."""
    later = np.searchsorted(times, times + within_s, side="right") - 1
    return float((values[later] - values).max())
