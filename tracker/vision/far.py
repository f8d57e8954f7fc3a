"""Faces too small for the whole picture: searched for and followed in crops of it.

The library's detector looks at a thumbnail of 128 by 128 pixels, in which the face
of somebody who stands a metre away before a wide camera is a speck. A crop brings
it back to size.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from tracker.vision.landmarks import Face, LandmarkFinder

#: Side of a search crop as a share of the picture's height, and the step between
#: crops as a share of their side: every face up to a quarter of the height lies
#: whole in one of them (arithmetic).
TILE_SHARE, TILE_STEP = 0.5, 0.5
#: Smaller crops hold no face that could be measured (this project's own choice).
MIN_TILE_PX = 200
#: Side of the crop around a face that is followed, in heights of the face: room for a
#: fast step aside between two pictures, and still a third of the crop is face (this
#: project's own choice).
FOLLOW_HEIGHTS = 3.0
#: Pictures without the face after which it is searched for again (this project's own choice:
#: a sixth of a second at 30 a second, longer than a blur).
LOST_AFTER = 5


class FarFinder:
    """Searches one crop a picture until it finds a face, then follows that.

    Costs nothing until it is first asked: the second landmark finder is made then.
    """

    def __init__(self) -> None:
        self._finder: LandmarkFinder | None = None
        self._followed: Face | None = None
        self._missed = 0
        self._next = 0

    @property
    def followed(self) -> Face | None:
        """The face that is being followed."""
        return self._followed

    def forget(self) -> None:
        """Follow nobody any more."""
        self._followed = None

    def follow(self, face: Face) -> None:
        """Follow this face from now on."""
        self._followed, self._missed = face, 0

    def find(
        self, image: NDArray[np.uint8], wanted: Callable[[list[Face]], list[Face]] = list
    ) -> list[Face]:
        """Faces of a BGR picture, in the one crop that is looked at this time.

        Parameters
        ----------
        image
            The picture, ``(h, w, 3)``.
        wanted
            Which of those faces count; without one of them the followed one is missing.
        """
        height, width = image.shape[:2]
        if self._followed is None:
            tiles = _tiles(width, height)
            if not tiles:
                return []
            left, top, side = tiles[self._next % len(tiles)]
            self._next += 1
        else:
            left, top, side = _around(self._followed, width, height)
        faces = wanted(self._look(image, left, top, side))
        if self._followed is not None and not faces:
            self._missed += 1
            if self._missed >= LOST_AFTER:
                self._followed, self._next = None, 0
        return faces

    def _look(self, image: NDArray[np.uint8], left: int, top: int, side: int) -> list[Face]:
        if self._finder is None:
            self._finder = LandmarkFinder(stills=True)
        crop = np.ascontiguousarray(image[top : top + side, left : left + side])
        found = self._finder.find(crop, 0.0)
        return [replace(f, points_px=f.points_px + np.array([left, top])) for f in found]

    def close(self) -> None:
        """Free the native parts."""
        if self._finder is not None:
            self._finder.close()
            self._finder = None


def _tiles(width: int, height: int) -> list[tuple[int, int, int]]:
    """Left, top and side of the search crops, those nearest the upper middle first."""
    side = round(TILE_SHARE * height)
    if side < MIN_TILE_PX:
        return []
    step = TILE_STEP * side
    lefts = np.unique(np.linspace(0, width - side, 1 + int(np.ceil((width - side) / step))))
    tops = np.unique(np.linspace(0, height - side, 1 + int(np.ceil((height - side) / step))))
    tiles = [(round(float(x)), round(float(y)), side) for x in lefts for y in tops]

    def off(tile: tuple[int, int, int]) -> float:
        return float(np.hypot(tile[0] + side / 2 - width / 2, tile[1] + side / 2 - 0.4 * height))

    return sorted(tiles, key=off)


def _around(face: Face, width: int, height: int) -> tuple[int, int, int]:
    """Left, top and side of the crop around a face, moved into the picture."""
    side = min(max(round(FOLLOW_HEIGHTS * face.height_px), MIN_TILE_PX // 2), width, height)
    x, y = face.centre_px
    left = min(max(round(float(x) - side / 2), 0), width - side)
    top = min(max(round(float(y) - side / 2), 0), height - side)
    return left, top, side
