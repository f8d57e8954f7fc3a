"""Machine code for the few inner loops that every frame runs through."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, ParamSpec, TypeVar, cast

import numba
import numpy as np
from numpy.typing import NDArray

P = ParamSpec("P")
R = TypeVar("R")


def compiled(function: Callable[P, R]) -> Callable[P, R]:
    """Compile a loop over numbers and arrays at its first call.

    The machine code is kept beside the source or in the user's cache folder, so
    that the seconds of compiling are spent once. Where neither can be written
    to, it is compiled anew in each process. Arithmetic is not reordered: the
    same numbers in give the same numbers out.
    """
    try:
        made = numba.njit(cache=True, nogil=True)(function)
    except RuntimeError:
        made = numba.njit(nogil=True)(function)
    return cast("Callable[P, R]", made)


@compiled
def solve_positive(left: NDArray[Any], right: NDArray[Any]) -> NDArray[Any]:
    """Solution ``(n,)`` of ``left @ x = right`` for a symmetric positive ``left`` (Cholesky).

    For the six by six of a pose, which it solves in a microsecond. An unknown
    that nothing was measured of comes out as 0.
    """
    n = len(right)
    root = np.zeros((n, n))
    for i in range(n):
        for j in range(i + 1):
            rest = left[i, j]
            for k in range(j):
                rest -= root[i, k] * root[j, k]
            if i == j:
                root[i, i] = np.sqrt(rest) if rest > 1e-12 * left[i, i] + 1e-300 else 1e150
            else:
                root[i, j] = rest / root[j, j]
    x = right.copy()
    for i in range(n):
        for k in range(i):
            x[i] -= root[i, k] * x[k]
        x[i] /= root[i, i]
    for i in range(n - 1, -1, -1):
        for k in range(i + 1, n):
            x[i] -= root[k, i] * x[k]
        x[i] /= root[i, i]
    return x
