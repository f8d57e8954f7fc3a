"""A short running mean, for slow movements that are measured with much noise."""

from __future__ import annotations

from collections import deque
from math import isfinite

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

#: The usual span (own choice).
SPAN_S = 0.2
#: Longer holes are not averaged across (own choice).
HOLE_S = 0.5
#: Times are told apart to so much (own choice).
_SAME_S = 1e-6


class RunningMean:
    """Mean of time and value over the last moments; a hole starts it afresh.

    The mean of the times goes along with that of the values, so uneven samples
    shift nothing. A sine of 0.5 Hz loses 1.6 % of its size over 0.2 s.

    Parameters
    ----------
    span_s
        Length of the window.
    hole_s
        Longer holes are not averaged across.
    least_s
        Nothing comes from a shorter stretch than this: a mean of a few noisy values
        would start a movement with a jump.

    Notes
    -----
    The usual span and hole are this project's own choice; what a span costs is arithmetic.
    """

    def __init__(
        self, span_s: float = SPAN_S, hole_s: float = HOLE_S, least_s: float = 0.0
    ) -> None:
        self._span_s, self._hole_s, self._least_s = span_s, hole_s, least_s
        self._rows: deque[tuple[float, float]] = deque()

    def feed(self, time_s: float, value: float) -> tuple[float, float] | None:
        """Take a value; gives mean time and mean value, None where there is none yet."""
        if not isfinite(value):
            return None
        if self._rows and time_s - self._rows[-1][0] >= self._hole_s:
            self._rows.clear()
        self._rows.append((time_s, value))
        while time_s - self._rows[0][0] > self._span_s + _SAME_S:
            self._rows.popleft()
        if time_s - self._rows[0][0] < self._least_s:
            return None
        count = len(self._rows)
        return sum(t for t, _ in self._rows) / count, sum(v for _, v in self._rows) / count


def means_of(
    times_s: Array, values: Array, span_s: float, *, least_s: float = 0.0
) -> tuple[Array, Array]:
    """What a :class:`RunningMean` gives for a whole signal at once.

    Parameters
    ----------
    times_s, values
        ``(n,)`` finite samples, rising in time.
    span_s, least_s
        As of :class:`RunningMean`.

    Returns
    -------
    tuple
        Mean times and mean values ``(m,)``, m at most n.
    """
    index = np.arange(len(times_s))
    fresh = np.concatenate([[True], np.diff(times_s) >= HOLE_S])[: len(times_s)]
    begun = np.maximum.accumulate(np.where(fresh, index, 0))
    first = np.maximum(np.searchsorted(times_s, times_s - span_s - _SAME_S), begun)
    kept = times_s - times_s[first] >= least_s
    count = index - first + 1
    # Less their middles, so that sums of many lose nothing.
    middles = [float(v.mean()) if len(v) else 0.0 for v in (times_s, values)]
    means = []
    for signal, middle in zip((times_s, values), middles, strict=True):
        sums = np.concatenate([[0.0], np.cumsum(signal - middle)])
        means.append(((sums[index + 1] - sums[first]) / count + middle)[kept])
    return means[0], means[1]
