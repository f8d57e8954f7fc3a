"""One picture from a camera or a clip."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray


@dataclass(frozen=True, slots=True)
class Frame:
    """A picture and the moment it was taken.

    Attributes
    ----------
    index
        Running number in its source, from 0; a gap means dropped frames.
    time_s
        Capture time in seconds on the source's own monotonic clock.
    image
        ``(height, width, 3)`` BGR, 8 bit, not mirrored.
    """

    index: int
    time_s: float
    image: NDArray[np.uint8]
