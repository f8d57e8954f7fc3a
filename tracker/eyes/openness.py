"""How far the eyes are open."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from tracker.head.perspective import Array

#: Upper and lower lid landmarks in pairs, right eye then left.
_LIDS = (((160, 144), (159, 145), (158, 153)), ((387, 373), (386, 374), (385, 380)))
_CORNERS = ((33, 133), (263, 362))


@dataclass(frozen=True, slots=True)
class LidRange:
    """Lid aperture (height by width) of a person's open and shut eyes."""

    open_ratio: float
    shut_ratio: float


#: Before a person has been measured (common practice for this landmark set).
GENERIC_LIDS = LidRange(open_ratio=0.28, shut_ratio=0.06)


def aperture(points_px: Array) -> float:
    """Mean height-to-width ratio of both eye openings from landmarks ``(>= 468, 2)``."""
    ratios = []
    for lids, (outer, inner) in zip(_LIDS, _CORNERS, strict=True):
        height = np.mean([np.linalg.norm(points_px[a] - points_px[b]) for a, b in lids])
        ratios.append(height / max(float(np.linalg.norm(points_px[outer] - points_px[inner])), 1.0))
    return float(np.mean(ratios))
