"""The newest picture by shared memory: written by the measuring process, read by the program.

Two places for a picture, used in turn, each with a counter that is odd while it
is being written. The reader copies the newest and takes it only if its counter
was even and unchanged, so a torn picture is never shown; a writer that is killed
half-way leaves the other picture whole.
"""

from __future__ import annotations

import contextlib
import struct
import threading

import numpy as np
from numpy.typing import NDArray

from tracker.vision.blocks import OwnBlock, join

#: Longest side of a preview picture (this project's own choice: it is shown small).
MAX_SIDE_PX = 640

# Layout: three numbers and room to spare (this project's own choice).
_HEADER_BYTES = 64
_PLACE_BYTES = _HEADER_BYTES + MAX_SIDE_PX * MAX_SIDE_PX * 3
#: Size of the one block that a measuring needs in shared memory, in bytes (arithmetic).
BLOCK_BYTES = _HEADER_BYTES + 2 * _PLACE_BYTES
_LATEST = struct.Struct("<q")  # running number of the newest picture, 0 for none
_COUNTER = struct.Struct("<Q")
_SHAPE = struct.Struct("<qII")  # running number, width, height
# A picture that is written over while it is read is read again so often (own choice).
_TRIES = 3


def preview_size(width: int, height: int) -> tuple[int, int]:
    """Width and height of the preview of a picture; never larger than the picture."""
    scale = min(1.0, MAX_SIDE_PX / max(width, height, 1))
    return max(1, round(width * scale)), max(1, round(height * scale))


class Preview:
    """One block of shared memory for the preview.

    Parameters
    ----------
    name
        Name of a block to join; without it a new block is made, which its maker
        takes away by :meth:`unlink`.
    """

    def __init__(self, name: str | None = None) -> None:
        self._own: OwnBlock | None = None
        if name is None:
            self._own = OwnBlock(BLOCK_BYTES)
            self._block = self._own.memory
        else:
            self._block = join(name)
        self._fence = threading.Lock()

    @property
    def name(self) -> str:
        """Name by which another process joins."""
        return self._block.name

    def write(self, image: NDArray[np.uint8]) -> None:
        """Put a picture in; ``(height, width, 3)``, no side longer than ``MAX_SIDE_PX``."""
        height, width = image.shape[:2]
        if max(height, width) > MAX_SIDE_PX:
            raise ValueError(f"a preview of {width} x {height} px is too large")
        buffer = self._memory
        number = _LATEST.unpack_from(buffer, 0)[0] + 1
        place = _place_of(number)
        counter = _COUNTER.unpack_from(buffer, place)[0]
        odd = counter + 1 + (counter & 1)
        _COUNTER.pack_into(buffer, place, odd)
        self._order()
        _SHAPE.pack_into(buffer, place + _COUNTER.size, number, width, height)
        target = np.ndarray(image.shape, np.uint8, buffer, place + _HEADER_BYTES)
        target[:] = image
        self._order()
        _COUNTER.pack_into(buffer, place, odd + 1)
        _LATEST.pack_into(buffer, 0, number)

    def read(self) -> NDArray[np.uint8] | None:
        """A copy of the newest picture, None if there is none (or it is just being replaced)."""
        buffer = self._memory
        for _ in range(_TRIES):
            latest = _LATEST.unpack_from(buffer, 0)[0]
            if latest <= 0:
                return None
            place = _place_of(latest)
            before = _COUNTER.unpack_from(buffer, place)[0]
            self._order()
            number, width, height = _SHAPE.unpack_from(buffer, place + _COUNTER.size)
            if before & 1 or number != latest or not 0 < width * height <= MAX_SIDE_PX**2:
                continue
            source = np.ndarray((height, width, 3), np.uint8, buffer, place + _HEADER_BYTES)
            image = source.copy()
            self._order()
            if _COUNTER.unpack_from(buffer, place)[0] == before:
                return image
        return None

    def blank(self) -> None:
        """Leave no picture behind."""
        _LATEST.pack_into(self._memory, 0, 0)
        for number in (0, 1):
            start = _place_of(number) + _HEADER_BYTES
            np.ndarray(_PLACE_BYTES - _HEADER_BYTES, np.uint8, self._memory, start)[:] = 0

    def close(self) -> None:
        """Let the block go."""
        # A picture that is being copied at this moment holds it a little longer.
        with contextlib.suppress(BufferError):
            self._block.close()

    def unlink(self) -> None:
        """Take the block away (its maker)."""
        if self._own is not None:
            self._own.take_away()

    @property
    def _memory(self) -> memoryview:
        memory = self._block.buf
        if memory is None:
            raise ValueError("the preview was closed")
        return memory

    def _order(self) -> None:
        """Keep the writes before it before those after it, on processors that reorder them too."""
        with self._fence:
            pass


def _place_of(number: int) -> int:
    return _HEADER_BYTES + (number % 2) * _PLACE_BYTES
