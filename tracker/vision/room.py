"""Room in memory for a camera's pictures, taken once and kept.

A picture of 1280x720 takes 2.8 MB. The C library's usual way is to give such a piece back
to the system and ask for it anew, thirty times a second, or to keep as much as was once
held at the same time: then memory grows by a picture whenever one more waits than ever
before, be it after half an hour. Here the most that may be held is taken with the first
picture; afterwards nothing has to grow.
"""

from __future__ import annotations

import ctypes
import sys

import numpy as np
from numpy.typing import NDArray

#: Pictures that exist at the same time at most: two wait, one is measured, one is being
#: read, and one is on its way between two of these places (arithmetic on ``CameraFeed``).
MOST_HELD = 5
#: Pieces up to this size stay with the process when they are let go of; a picture of
#: 1920x1080 has 6.2 MB (own choice: above that, and below the 32 MiB that glibc allows).
KEPT_BYTES = 16 * 1024 * 1024
#: So much that is free at the end of the heap stays (own choice: five pictures of 1920x1080).
FREE_BYTES = 32 * 1024 * 1024
#: Two settings of ``mallopt``, by number (documentation: mallopt(3); glibc's malloc.h).
M_TRIM_THRESHOLD, M_MMAP_THRESHOLD = -1, -3


def keep_room(platform: str = sys.platform) -> bool:
    """Have the C library keep what pictures were in; whether it does.

    glibc alone is asked: elsewhere nothing was measured, and nothing is changed.
    """
    if platform != "linux":
        return False
    try:
        mallopt = ctypes.CDLL(None).mallopt
    except (OSError, AttributeError):
        return False
    return bool(mallopt(M_MMAP_THRESHOLD, KEPT_BYTES) and mallopt(M_TRIM_THRESHOLD, FREE_BYTES))


def take_room(image: NDArray[np.uint8]) -> None:
    """Hold as many pictures of this size as there will ever be, and let go of them.

    Called by the thread that reads the pictures: each thread has its own heap.
    """
    # Memory counts once it was written to.
    held = [np.ones_like(image) for _ in range(MOST_HELD)]
    held.clear()
