"""What is read of one turn: when it began and ended, how far it went, and how fast."""

from __future__ import annotations

from math import inf, nan
from typing import NamedTuple

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from numpy.typing import NDArray

Array = NDArray[np.float64]

#: Fewer pictures missing than this are no hole (one that was dropped; own choice).
HOLE_STEPS = 2.5
#: A turn stays in its middle where it is slower than this share of its mean speed, for so long and
#: for such a share of its time, with so much of its way before and after. On a sine the slowest
#: end of what the cubic is fitted to has half of the mean speed, on a smooth reach as well
#: (arithmetic); the limits below it are this project's own choice.
STAY_SPEED = 0.2
STAY_S = 0.2
STAY_TIME = 0.2
STAY_WAY = 0.2


class Reading(NamedTuple):
    """What is read of one turn, in the unit of what is counted."""

    start_s: float
    peak_s: float
    level: float
    peak_speed: float


def read_turn(
    times: Array,
    values: Array,
    first: int,
    index: int,
    now: int,
    *,
    plateau: bool = False,
    hole: float = inf,
) -> Reading:
    """Times, level and peak speed of a turn.

    Parameters
    ----------
    times, values
        ``(n,)`` samples.
    first, index, now
        Of the extreme before, of the outermost sample, and of the one at which it counted.
    plateau, hole
        As of :class:`~tracker.motion.turning.TurningRule`.

    Returns
    -------
    Reading
        The speed is NaN where it can't be told, and of jumps.
    """
    start = _left_at(values, first, index)
    peak_s, level = _extreme(times, values, start, index, now, plateau)
    if hole < inf and _in_a_hole(times, start, index, now, hole):
        level = nan
    speed = nan
    if not plateau:
        speed = peak_speed(times[start : index + 1], values[start : index + 1])
    return Reading(float(times[start]), peak_s, level, speed)


def _in_a_hole(times: Array, start: int, index: int, now: int, share: float) -> bool:
    """Whether beside the outermost sample so much is missing that the extreme may lie there."""
    steps = np.diff(times[start : now + 1])
    beside = np.diff(times[max(index - 1, start) : min(index + 1, now) + 1])
    # Few pictures a second are no hole: what they cost is reckoned elsewhere (uncertainty.py).
    usual = HOLE_STEPS * float(np.median(steps))
    return bool(beside.max() > max(usual, share * (times[index] - times[start])))


def _left_at(values: Array, start: int, index: int) -> int:
    """Last sample still within 5 % of the swing of where the turn began: pauses are no turn."""
    near = 0.05 * abs(values[index] - values[start])
    inside = np.flatnonzero(np.abs(values[start : index + 1] - values[start]) <= near)
    return start + int(inside[-1])


def _extreme(
    times: Array, values: Array, start: int, index: int, now: int, plateau: bool
) -> tuple[float, float]:
    """Time and level of an extreme, less moved by noise than the outermost sample."""
    swing = abs(values[index] - values[start])
    if plateau:
        near = np.flatnonzero(np.abs(values[start : now + 1] - values[index]) <= 0.3 * swing)
        # Where a plateau is outermost is chance; when it was reached is the beat.
        return float(times[start + near[0]]), float(np.median(values[start + near]))
    # Two samples to each side at the least, but no more than the end of the way.
    apart_s = float(np.median(np.diff(times[start : now + 1])))
    half_s = min(max(0.12, 2.3 * apart_s), 0.3 * (times[index] - times[start]))
    chosen = slice(
        int(np.searchsorted(times, times[index] - half_s - 1e-6)),
        int(np.searchsorted(times, times[index] + half_s + 1e-6)),
    )
    tau, level = times[chosen] - times[index], values[chosen]
    if len(tau) < 3:
        return float(times[index]), float(values[index])
    c, b, a = np.polyfit(tau, level, 2)
    top = -b / (2 * c) if abs(c) > 1e-9 else 0.0
    if abs(top) > half_s or abs(a + b * top + c * top * top - values[index]) > 0.25 * swing:
        return float(times[index]), float(values[index])
    return float(times[index] + top), float(a + b * top + c * top * top)


def peak_speed(times_s: Array, values_deg: Array) -> float:
    """Peak speed of one turn from a cubic through its middle, in deg/s.

    The cubic is fitted to the samples between 5 and 95 % of the way, so neither
    a pause before nor one after the turn moves it, and its steepest slope is far
    less raised by noise than the largest of many noisy speeds. On a sine that
    range is +-64 degrees of phase, over which the cubic under-reads by 0.6 %.
    Where a turn stands still or goes back in its middle, no cubic is like it: then it
    is the faster of what lies before and what comes after.

    Parameters
    ----------
    times_s, values_deg
        ``(n,)`` samples from the start of the turn to its extreme.

    Returns
    -------
    float
        NaN from fewer than four samples or across a hole in the middle.
    """
    if len(times_s) < 4:
        return nan
    way = values_deg[-1] - values_deg[0]
    if abs(way) < 1e-9:
        return nan
    done = (values_deg - values_deg[0]) / way
    last = int(np.flatnonzero(done >= 0.95)[0])
    first = int(np.flatnonzero(done[: last + 1] <= 0.05)[-1])
    lo, hi = first + 1, last
    while hi - lo < 5 and (lo > 0 or hi < len(times_s)):
        lo, hi = max(lo - 1, 0), min(hi + 1, len(times_s))
    tau = times_s[lo:hi]
    if len(tau) < 4 or (np.diff(tau).max() > 0.3 * (tau[-1] - tau[0]) + 1e-9 and len(tau) > 5):
        return nan
    stay = _stay(tau, done[lo:hi])
    if stay is not None:
        before, after = slice(lo + stay[0] + 1), slice(lo + stay[1], None)
        parts = [peak_speed(times_s[k], values_deg[k]) for k in (before, after)]
        if not all(np.isnan(parts)):
            return float(np.nanmax(parts))
    middle = 0.5 * (tau[0] + tau[-1])
    half = max(0.5 * (tau[-1] - tau[0]), 1e-9)
    u = (tau - middle) / half
    d3, d2, d1, _ = np.polyfit(u, values_deg[lo:hi], 3)
    candidates = [-1.0, 1.0]
    if abs(d3) > 1e-12:
        candidates.append(float(np.clip(-d2 / (3 * d3), -1.0, 1.0)))
    slopes = [abs(3 * d3 * x * x + 2 * d2 * x + d1) for x in candidates]
    steepest = slopes[-1] if len(slopes) == 3 else max(slopes)
    return float(steepest / half)


def _stay(times_s: Array, done: Array) -> tuple[int, int] | None:
    """First and last sample of the slowest stretch of a turn's middle where it stays, if it does.

    ``done`` is the share of the way that is done at each time.
    """
    lasts_s = times_s[-1] - times_s[0]
    steps = max(STAY_S, STAY_TIME * lasts_s) / (lasts_s / (len(times_s) - 1))
    count = max(int(np.ceil(steps)) + 1, 4)
    if count > len(times_s) - 2:
        return None
    at = sliding_window_view(times_s, count)
    way = sliding_window_view(done, count)
    off = at - at.mean(axis=1, keepdims=True)
    slopes = (off * way).sum(axis=1) / (off * off).sum(axis=1)
    middle = way.mean(axis=1)
    slopes[(middle < STAY_WAY) | (middle > 1.0 - STAY_WAY)] = np.inf
    first = int(slopes.argmin())
    mean = (done[-1] - done[0]) / lasts_s
    return (first, first + count - 1) if slopes[first] < STAY_SPEED * mean else None
