"""The face's part of a picture, and its values between the pixels."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.compiled import compiled
from tracker.head.perspective import Array, Pinhole


@dataclass(frozen=True, slots=True)
class GreyCrop:
    """The face's part of a picture, grey, brought to a working size.

    Attributes
    ----------
    pixels
        ``(h, w)`` grey values, 0 to 255: in bytes, as they come from the camera, or float32.
    left_px, top_px
        Place of the crop's first pixel centre in the whole picture.
    scale
        Crop pixels for each pixel of the whole picture, at most 1.
    """

    pixels: NDArray[np.uint8] | NDArray[np.float32]
    left_px: float
    top_px: float
    scale: float

    @property
    def image(self) -> NDArray[np.float32]:
        """The same values as float32, to reckon with.

        Made anew each time: thousands of crops are kept in a set-up, in a quarter of the memory.
        """
        return self.pixels.astype(np.float32, copy=False)

    def camera(self, whole: Pinhole) -> Pinhole:
        """The camera whose picture this crop is."""
        return Pinhole(
            whole.focal_px * self.scale,
            (whole.centre_x_px - self.left_px) * self.scale,
            (whole.centre_y_px - self.top_px) * self.scale,
        )


@compiled
def value_at(image: NDArray[np.float32], x: float, y: float) -> float:
    """Bilinear value of ``(h, w)`` at a point; beyond the edge the edge's value."""
    height, width = image.shape
    x = min(max(x, 0.0), width - 1.001)
    y = min(max(y, 0.0), height - 1.001)
    # Unsigned, so that no time goes into what a negative index would mean.
    left, top = np.uint32(x), np.uint32(y)
    right, bottom = np.uint32(left + 1), np.uint32(top + 1)
    fx, fy = x - left, y - top
    a, b = image[top, left], image[bottom, left]
    upper = a + fx * (image[top, right] - a)
    lower = b + fx * (image[bottom, right] - b)
    return float(upper + fy * (lower - upper))


@compiled
def _values(image: NDArray[np.float32], points_px: Array) -> NDArray[np.float32]:
    out = np.empty(len(points_px), np.float32)
    for i in range(len(points_px)):
        out[i] = value_at(image, points_px[i, 0], points_px[i, 1])
    return out


def sample_bilinear(image: NDArray[np.float32], points_px: Array) -> NDArray[np.float32]:
    """Values ``S`` of an image ``(h, w)`` at points ``S + (2,)``, x and y.

    Outside the image the nearest edge's value is given.
    """
    flat = np.ascontiguousarray(points_px, dtype=np.float64).reshape(-1, 2)
    return _values(image, flat).reshape(points_px.shape[:-1])
