"""Where the eyes came to rest after a jump between two targets: there, short of it, or beyond.

Told along the way between the two alone, in space, so that a head that helps changes nothing.
A first jump usually stops short by a tenth and a second one, a tenth or two of a second later,
makes up for it (textbook knowledge of saccades, from memory): what counts is where the eyes
rest after both.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import nan
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from tracker.exercises.counters import eyes_usable
from tracker.exercises.stays import Stay, stays_of, towards, way_deg
from tracker.motion.turning import Turn
from tracker.sample import Sample

Array = NDArray[np.float64]
Where = Literal["arrived", "short", "over", "not_told"]

#: A jump of 30 degrees takes 90 ms (2.2 ms a degree and 21 ms: Carpenter 1988), a correcting
#: one follows within 200 ms of its end: from here on the eyes rest (own choice).
SETTLE_S = 0.25
#: The next jump has begun a little before it counts as one (own choice).
LEAVE_S = 0.12
#: Fewer samples of the rest than this don't tell where it was (this project's own choice).
LEAST_SAMPLES = 3
#: What can be told must be less than this share of the way: beyond half of it the eyes would be
#: as near to the target that they came from (own choice, with room to it).
LIMIT_SHARE_MOST = 0.4
#: Targets nearer to each other than this are one (below the smallest pair, 4 degrees each side;
#: this project's own choice).
APART_DEG = 6.0


@dataclass(frozen=True, slots=True)
class Landing:
    """Where a jump ended: degrees beyond its target (below 0: short of it), and what that is."""

    side: str
    off_deg: float
    where: Where


def rows_of(samples: Iterable[Sample]) -> Array:
    """``(n, 3)`` time, yaw of the gaze and of the target; NaN where the eyes can't be read."""
    rows = [
        (s.time_s, s.gaze_yaw_deg if eyes_usable(s) else nan, s.target_yaw_deg) for s in samples
    ]
    return np.array(rows, dtype=np.float64).reshape(-1, 3)


def stays_in(rows: Array) -> list[Stay]:
    """Where the target was in rows of :func:`rows_of`."""
    return stays_of(rows[:, 0], rows[:, 2])


def is_told(limit_deg: float | None, way_deg: float) -> bool:
    """Whether the error of the gaze leaves room to tell where a jump of this way ended."""
    return (
        limit_deg is not None and way_deg >= APART_DEG and limit_deg <= LIMIT_SHARE_MOST * way_deg
    )


def landing_of(rows: Array, turn: Turn, stays: Sequence[Stay], limit_deg: float) -> Landing:
    """Where one jump ended, against where the target was then.

    Parameters
    ----------
    rows
        As of :func:`rows_of`, from the jump's landing to the next jump.
    turn
        The jump.
    stays
        As of :func:`stays_in`, of the whole set or of what is known of it so far.
    limit_deg
        What is farther off is short or over.
    """
    from_s, to_s = turn.peak_s + SETTLE_S, turn.end_s - LEAVE_S
    at_rest = (rows[:, 0] >= from_s) & (rows[:, 0] <= to_s) & np.isfinite(rows[:, 1])
    asked = towards(stays, turn.side, turn.peak_s)
    told = asked is not None and is_told(limit_deg, way_deg(stays, asked))
    if asked is None or not told or at_rest.sum() < LEAST_SAMPLES:
        return Landing(turn.side, nan, "not_told")
    off = float(np.median(rows[at_rest, 1])) - stays[asked].deg
    off = off if turn.side == "right" else -off
    if abs(off) <= limit_deg:
        return Landing(turn.side, off, "arrived")
    return Landing(turn.side, off, "short" if off < 0 else "over")
