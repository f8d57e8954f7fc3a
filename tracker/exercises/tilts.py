"""Tilts of the head, ear to shoulder, told from turns."""

from __future__ import annotations

from collections.abc import Iterable
from math import inf, isfinite

from tracker.motion.turning import Turn
from tracker.sample import Sample

#: Samples are kept so long to look back at a tilt: longer than one takes from side to side at the
#: usual pace (three seconds; this project's own choice).
TILT_KEPT_S = 10.0
#: What turns as far as it tilts, or farther, is no tilt (this project's own choice: half of the
#: way between the two). The drawn tilts turn by 6 % of it.
TURNED_MOST = 1.0
#: Told that it turned, one is told so until a tilt turns by less than this share of it (this
#: project's own choice: well below the limit, so that on the line it isn't told by turns).
TILTED_AGAIN = 0.7


#: A way begins where so much of it is still to go: what went on before it, while the head
#: hardly moved that way, is not of it (this project's own choice).
WAY = 0.9


def turned_share(samples: Iterable[Sample], turn: Turn, *, of_yaw: bool = False) -> float:
    """How far the head turned for each degree of tilt, on the way to an extreme.

    Parameters
    ----------
    samples
        Those of the way, and others.
    turn
        The way.
    of_yaw
        Whether the way is one of turning, else one of tilting.

    Returns
    -------
    float
        Infinite where nothing tilted; NaN cannot come: without any angles it is 0, as nothing
        speaks against what was counted.
    """
    rows = [
        (s.head_yaw_deg, s.head_roll_deg)
        for s in samples
        if turn.start_s <= s.time_s <= turn.peak_s
        and isfinite(s.head_yaw_deg)
        and isfinite(s.head_roll_deg)
    ]
    if not rows:
        return 0.0
    own = [yaw if of_yaw else roll for yaw, roll in rows]
    whole = max(abs(value - own[-1]) for value in own)
    first = max(k for k, value in enumerate(own) if abs(value - own[-1]) >= WAY * whole)
    way = rows[first:]
    yaw = max(y for y, _ in way) - min(y for y, _ in way)
    roll = max(r for _, r in way) - min(r for _, r in way)
    if roll > 0.0:
        return yaw / roll
    return inf if yaw > 0.0 else 0.0


def is_tilt(samples: Iterable[Sample], turn: Turn) -> bool:
    """Whether a way to the side is more of a tilt than of a turn."""
    return turned_share(samples, turn) < TURNED_MOST
