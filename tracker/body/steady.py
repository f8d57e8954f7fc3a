"""A running mean over a whole record, for what is looked at afterwards."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


def running_mean(times_s: Array, values: Array, span_s: float) -> Array:
    """Mean of the values within half a span to each side, ``(n,)``; times need not be even."""
    first = np.searchsorted(times_s, times_s - 0.5 * span_s, side="left")
    after = np.searchsorted(times_s, times_s + 0.5 * span_s, side="right")
    sums = np.concatenate([[0.0], np.cumsum(values)])
    return np.asarray((sums[after] - sums[first]) / (after - first))
