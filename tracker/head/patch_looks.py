"""How a picture looks at the patches, compared with the template: compiled loops over pixels."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from tracker.compiled import compiled
from tracker.head.perspective import Array

#: Share of the picture's own slopes beside the template's. An even mix settles from
#: farthest away (efficient second-order minimisation: Malis 2004, Proc IEEE ICRA 2:1843)
#: but reads angles 1.1 % too large on 21 rendered clips, the template's alone .4 % too
#: small and worse beyond 25 degrees (.76 degrees in yaw on the widest clip, .59 with
#: this, .49 with the even mix).
OF_PICTURE = 0.25


@compiled
def compare(
    image: NDArray[np.float32],
    pixels_mm: Array,
    values: NDArray[np.float32],
    gradients: NDArray[np.float32],
    to_here: Array,
    rotation: Array,
    position_mm: Array,
    lens: Array,
) -> tuple[Array, Array, Array, Array]:
    """Look each patch up in a picture and compare it with the template.

    The slopes are a weighted mean of the template's and of this picture's.

    Parameters
    ----------
    image
        ``(h, w)``.
    pixels_mm, values, gradients
        ``(k, p, 3)``, ``(k, p)``, ``(k, p, 2)`` of the template.
    to_here
        ``(k, 2, 2)`` pixels of this picture for each pixel of the rest picture.
    rotation, position_mm
        ``(3, 3)`` and ``(3,)`` of the pose.
    lens
        ``(3,)`` focal length and centre of the picture, in its pixels.

    Returns
    -------
    pull
        ``(k, 2)`` slopes times the grey difference left.
    structure
        ``(k, 2, 2)`` products of the slopes: how well a shift can be seen.
    misfit
        ``(k,)`` root mean square difference of the normalised patches.
    contrast
        ``(k,)`` grey levels; 0 for a patch that lies partly outside the picture.
    """
    count, size = values.shape
    pull, structure = np.zeros((count, 2)), np.zeros((count, 2, 2))
    # As unlike as two patches can be that have nothing to do with each other.
    misfit, contrast = np.full(count, np.sqrt(2.0)), np.zeros(count)
    patch, slopes = np.empty(size), np.empty((size, 2))
    for k in range(count):
        if not _look_up(
            image, pixels_mm[k], to_here[k], rotation, position_mm, lens, patch, slopes
        ):
            continue
        spread = _normalise(patch, slopes)
        contrast[k] = spread
        left = 0.0
        for p in range(size):
            off = values[k, p] - patch[p]
            gx = (1.0 - OF_PICTURE) * gradients[k, p, 0] + OF_PICTURE * slopes[p, 0]
            gy = (1.0 - OF_PICTURE) * gradients[k, p, 1] + OF_PICTURE * slopes[p, 1]
            left += off * off
            pull[k, 0] += gx * off
            pull[k, 1] += gy * off
            structure[k, 0, 0] += gx * gx
            structure[k, 0, 1] += gx * gy
            structure[k, 1, 1] += gy * gy
        structure[k, 1, 0] = structure[k, 0, 1]
        misfit[k] = np.sqrt(left / size)
    return pull, structure, misfit, contrast


@compiled
def _look_up(
    image: NDArray[np.float32],
    pixels_mm: Array,
    to_here: Array,
    rotation: Array,
    position_mm: Array,
    lens: Array,
    patch: Array,
    slopes: Array,
) -> bool:
    """Fill in grey values and their slopes by pixels at rest; False where outside the picture."""
    height, width = image.shape
    for p in range(len(patch)):
        a, b, c = pixels_mm[p, 0], pixels_mm[p, 1], pixels_mm[p, 2]
        z = rotation[2, 0] * a + rotation[2, 1] * b + rotation[2, 2] * c + position_mm[2]
        s = lens[0] / z
        x = lens[1] + s * (
            rotation[0, 0] * a + rotation[0, 1] * b + rotation[0, 2] * c + position_mm[0]
        )
        y = lens[2] + s * (
            rotation[1, 0] * a + rotation[1, 1] * b + rotation[1, 2] * c + position_mm[1]
        )
        # Written so that a point that is not a number is outside too.
        if not (0.0 <= x <= width - 1.001 and 0.0 <= y <= height - 1.001):
            return False
        left, top = np.uint32(x), np.uint32(y)
        right, bottom = np.uint32(left + 1), np.uint32(top + 1)
        fx, fy = x - left, y - top
        upper, lower = image[top, left], image[bottom, left]
        across, below = image[top, right] - upper, image[bottom, right] - lower
        upper += fx * across
        lower += fx * below
        patch[p] = upper + fy * (lower - upper)
        gx, gy = across + fy * (below - across), lower - upper
        slopes[p, 0] = gx * to_here[0, 0] + gy * to_here[1, 0]
        slopes[p, 1] = gx * to_here[0, 1] + gy * to_here[1, 1]
    return True


@compiled
def _normalise(patch: Array, slopes: Array) -> float:
    """Free a patch and its slopes of brightness and contrast in place; its contrast before."""
    size = len(patch)
    mean, mean_x, mean_y, squares = 0.0, 0.0, 0.0, 0.0
    for p in range(size):
        mean += patch[p] / size
        mean_x += slopes[p, 0] / size
        mean_y += slopes[p, 1] / size
    for p in range(size):
        patch[p] -= mean
        squares += patch[p] * patch[p] / size
    spread = np.sqrt(squares)
    inverse = 1.0 / max(spread, 1e-3)
    along_x, along_y = 0.0, 0.0
    for p in range(size):
        patch[p] *= inverse
        slopes[p, 0] -= mean_x
        slopes[p, 1] -= mean_y
        along_x += patch[p] * slopes[p, 0] / size
        along_y += patch[p] * slopes[p, 1] / size
    for p in range(size):
        slopes[p, 0] = (slopes[p, 0] - patch[p] * along_x) * inverse
        slopes[p, 1] = (slopes[p, 1] - patch[p] * along_y) * inverse
    return float(spread)
