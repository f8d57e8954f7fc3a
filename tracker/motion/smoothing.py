"""A short running mean, for slow movements that are measured with much noise."""

from __future__ import annotations

from collections import deque
from math import isfinite


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

    def __init__(self, span_s: float = 0.2, hole_s: float = 0.5, least_s: float = 0.0) -> None:
        self._span_s, self._hole_s, self._least_s = span_s, hole_s, least_s
        self._rows: deque[tuple[float, float]] = deque()

    def feed(self, time_s: float, value: float) -> tuple[float, float] | None:
        """Take a value; gives mean time and mean value, None where there is none yet."""
        if not isfinite(value):
            return None
        if self._rows and time_s - self._rows[-1][0] >= self._hole_s:
            self._rows.clear()
        self._rows.append((time_s, value))
        while time_s - self._rows[0][0] > self._span_s + 1e-6:
            self._rows.popleft()
        if time_s - self._rows[0][0] < self._least_s:
            return None
        count = len(self._rows)
        return sum(t for t, _ in self._rows) / count, sum(v for _, v in self._rows) / count
