"""Which goes first to a mark, the eyes or the head, and by how much."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import isfinite, nan
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from tracker.exercises.counters import eyes_usable
from tracker.motion.turning import Turn
from tracker.sample import Sample

Array = NDArray[np.float64]
Order = Literal["eyes_first", "together", "head_first", "not_told"]

#: So much apart at least, three pictures of a usual camera: what is nearer went together
#: (this project's own choice).
APART_S = 0.1
#: The eyes go so long before the head at most, and so long after it, that both belong to one
#: turn (this project's own choice).
BEFORE_S, AFTER_S = 3.0, 1.0
#: The gaze's ways from mark to mark are longer than this: four times the error that is this
#: project's own aim (0.8 degrees with the head still) to either end.
LEAST_WAY_DEG = 6.5
#: Longer holes in the measuring hide when something began (this project's own choice).
BRIDGE_S = 0.15


def rows_of(samples: Iterable[Sample]) -> Array:
    """``(n, 3)`` time, yaw of the head and of the gaze; NaN where the eyes can't be read."""
    rows = [(s.time_s, s.head_yaw_deg, s.gaze_yaw_deg if eyes_usable(s) else nan) for s in samples]
    return np.array(rows, dtype=np.float64).reshape(-1, 3)


def lead_s(rows: Array, turn: Turn) -> float:
    """How long before the head the gaze went, in s; below zero the head went first.

    Parameters
    ----------
    rows
        As of :func:`rows_of`, from some seconds before the turn to some after it.
    turn
        A turn of the head in yaw.

    Returns
    -------
    float
        NaN where either beginning was not seen.
    """
    way = 1.0 if turn.side == "right" else -1.0
    head = _head_onset_s(rows[:, 0], way * rows[:, 1], turn)
    if not isfinite(head):
        return nan
    near = (rows[:, 0] >= head - BEFORE_S) & (rows[:, 0] <= head + AFTER_S)
    near &= np.isfinite(rows[:, 2])
    gaze = _gaze_onset_s(rows[near, 0], way * rows[near, 2], head)
    return head - gaze


def order_of(lead: float) -> Order:
    """What a lead amounts to."""
    if not isfinite(lead):
        return "not_told"
    if abs(lead) < APART_S:
        return "together"
    return "eyes_first" if lead > 0 else "head_first"


def leads_s(samples: Sequence[Sample], turns: Sequence[Turn]) -> list[float]:
    """Leads of the turns from mark to mark: of all but the first, which comes from the middle."""
    rows = rows_of(samples)
    return [lead_s(rows, turn) for turn in turns[1:]]


def _head_onset_s(times: Array, head: Array, turn: Turn) -> float:
    inside = (times >= turn.start_s - 0.5) & (times <= turn.peak_s) & np.isfinite(head)
    if inside.sum() < 4:
        return nan
    times, head = times[inside], head[inside]
    from_deg = turn.amplitude_deg - turn.swing_deg
    return _onset_s(times, (head - from_deg) / turn.swing_deg)


def _gaze_onset_s(times: Array, gaze: Array, head_s: float) -> float:
    """Beginning of the gaze's way that lies nearest to the head's."""
    if len(times) < 8:
        return nan
    middle = 0.5 * (np.percentile(gaze, 10) + np.percentile(gaze, 90))
    crossed = np.flatnonzero((gaze[:-1] < middle) & (gaze[1:] >= middle)) + 1
    found = nan
    for k in crossed:
        onset = _way_onset_s(times, gaze, times[k])
        if isfinite(onset) and not abs(found - head_s) <= abs(onset - head_s):
            found = onset
    return found


def _way_onset_s(times: Array, gaze: Array, half_s: float) -> float:
    """Beginning of a way that is half done at a time, by what the gaze was before and after."""
    before = gaze[(times >= half_s - 0.6) & (times <= half_s - 0.3)]
    # Eyes far over in the head are often not read until the head has come.
    after = gaze[(times >= half_s + 0.15) & (times <= half_s + 0.8)]
    if len(before) < 3 or len(after) < 3:
        return nan
    low, high = float(np.median(before)), float(np.median(after))
    if high - low < LEAST_WAY_DEG:
        return nan
    inside = (times >= half_s - 0.6) & (times <= half_s + 0.15)
    return _onset_s(times[inside], (gaze[inside] - low) / (high - low))


def _onset_s(times: Array, done: Array) -> float:
    """When a way from 0 to 1 began.

    A movement that gathers speed evenly from its beginning has gone a tenth of its way
    after half the time that four tenths take it, so that its beginning lies as long before
    the first as the second lies after it. On a minimum-jerk way that is .05 of its time
    late, on half a cosine .03 early.
    """
    half = np.flatnonzero(done >= 0.5)
    if not len(half):
        return nan
    tenth = _passed(times, done, int(half[0]), 0.1)
    return tenth - (_passed(times, done, int(half[0]), 0.4) - tenth)


def _passed(times: Array, done: Array, half: int, level: float) -> float:
    """When a level was last passed before the half, between the samples."""
    below = np.flatnonzero(done[:half] <= level)
    if not len(below):
        return nan
    k = int(below[-1])
    if times[k + 1] - times[k] > BRIDGE_S:
        return nan
    share = (level - done[k]) / (done[k + 1] - done[k])
    return float(times[k] + share * (times[k + 1] - times[k]))
