"""Where a target was that jumps between two places, and which place a jump was asked to go to.

A set can be small at first, so the places of a side differ from jump to jump: what was asked is
taken at the time of each.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
#: Nearer to the middle than this share of the farthest place a target is at neither side: it waits
#: for the first beat, or is just on its way (own choice: half of what a set begins with).
MIDDLE_SHARE = 0.2
#: The sides that count as the plus side of an angle.
PLUS = frozenset({"right", "up"})


@dataclass(frozen=True, slots=True)
class Stay:
    """A target at one place: from when to when, where in degrees, and on the plus side or not."""

    from_s: float
    to_s: float
    deg: float
    plus: bool


def stays_of(times_s: Array, target_deg: Array) -> list[Stay]:
    """Stays of a target in the order of time; neighbours lie on different sides.

    Parameters
    ----------
    times_s, target_deg
        ``(n,)`` samples; those without a target are left out. One that never moves has stays
        that lie next to each other: whoever asks looks at how far apart they are.
    """
    known = np.isfinite(target_deg)
    times, places = times_s[known], target_deg[known]
    if not len(times):
        return []
    aside = places - 0.5 * (places.min() + places.max())
    kept = np.abs(aside) >= MIDDLE_SHARE * np.abs(aside).max()
    times, places, plus = times[kept], places[kept], aside[kept] > 0.0
    begins = [0, *(np.flatnonzero(plus[1:] != plus[:-1]) + 1).tolist(), len(times)]
    return [
        Stay(float(times[a]), float(times[b - 1]), float(np.median(places[a:b])), bool(plus[a]))
        for a, b in pairwise(begins)
    ]


def at(stays: Sequence[Stay], time_s: float) -> int | None:
    """Number of the stay at a time: the first that isn't over; None of none."""
    if not stays:
        return None
    return next((k for k, s in enumerate(stays) if s.to_s >= time_s), len(stays) - 1)


def towards(stays: Sequence[Stay], side: str, time_s: float) -> int | None:
    """Number of the stay that a jump to a side was asked to go to; None where there is none.

    The one at that time; who jumped before the target did, or after it had gone on, is held
    against the nearest in time on the side to which they jumped.
    """
    now = at(stays, time_s)
    if now is None or stays[now].plus == (side in PLUS):
        return now
    beside = [k for k in (now - 1, now + 1) if 0 <= k < len(stays)]
    return min(beside, key=lambda k: _away_s(stays[k], time_s), default=None)


def way_deg(stays: Sequence[Stay], number: int) -> float:
    """How far a target went to come to a stay; to the first one, as far as it then went on.

    0 where it never moved.
    """
    other = number - 1 if number else number + 1
    return abs(stays[number].deg - stays[other].deg) if other < len(stays) else 0.0


def _away_s(stay: Stay, time_s: float) -> float:
    return max(stay.from_s - time_s, time_s - stay.to_s, 0.0)
