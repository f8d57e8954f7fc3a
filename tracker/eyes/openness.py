"""How far the eyes are open."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from tracker.head.perspective import Array

#: Upper and lower lid landmarks in pairs, right eye then left, by the numbers of the
#: face mesh's documentation.
_LIDS = (((160, 144), (159, 145), (158, 153)), ((387, 373), (386, 374), (385, 380)))
_CORNERS = ((33, 133), (263, 362))


@dataclass(frozen=True, slots=True)
class LidRange:
    """Lid aperture (height by width) of a person's open and shut eyes."""

    open_ratio: float
    shut_ratio: float


#: Before a person has been measured (common practice for this landmark set).
GENERIC_LIDS = LidRange(open_ratio=0.28, shut_ratio=0.06)


def aperture(points_px: Array, rows: Sequence[int] = (0, 1)) -> float:
    """Mean height-to-width ratio of the eye openings from landmarks ``(>= 468, 2)``.

    ``rows`` are the eyes in use, 0 the right one and 1 the left.
    """
    ratios = []
    for row in rows:
        lids, (outer, inner) = _LIDS[row], _CORNERS[row]
        height = np.mean([np.linalg.norm(points_px[a] - points_px[b]) for a, b in lids])
        ratios.append(height / max(float(np.linalg.norm(points_px[outer] - points_px[inner])), 1.0))
    return float(np.mean(ratios))
