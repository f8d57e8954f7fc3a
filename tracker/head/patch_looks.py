"""How a picture looks at the patches, compared with the template: compiled loops over pixels."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from tracker.compiled import compiled
from tracker.head.crop import value_at
from tracker.head.perspective import Array, turn

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
    # In one piece: with the sums over a patch's pixels in a function of their own this took
    # 3 to 5 % longer.
    count, size = values.shape
    pull, structure = np.zeros((count, 2)), np.zeros((count, 2, 2))
    # As unlike as two patches can be that have nothing to do with each other.
    misfit, contrast = np.full(count, np.sqrt(2.0)), np.zeros(count)
    at, patch, slopes = np.empty((2, size)), np.empty(size), np.empty((size, 2))
    for k in range(count):
        if not _look_up(
            image, pixels_mm[k], to_here[k], rotation, position_mm, lens, at, patch, slopes
        ):
            continue
        spread = _normalise(patch, slopes)
        contrast[k] = spread
        left, pull_x, pull_y, xx, xy, yy = 0.0, 0.0, 0.0, 0.0, 0.0, 0.0
        for p in range(size):
            off = values[k, p] - patch[p]
            gx = (1.0 - OF_PICTURE) * gradients[k, p, 0] + OF_PICTURE * slopes[p, 0]
            gy = (1.0 - OF_PICTURE) * gradients[k, p, 1] + OF_PICTURE * slopes[p, 1]
            left += off * off
            pull_x += gx * off
            pull_y += gy * off
            xx += gx * gx
            xy += gx * gy
            yy += gy * gy
        pull[k, 0], pull[k, 1] = pull_x, pull_y
        structure[k, 0, 0], structure[k, 0, 1] = xx, xy
        structure[k, 1, 0], structure[k, 1, 1] = xy, yy
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
    at: Array,
    patch: Array,
    slopes: Array,
) -> bool:
    """Fill in places, grey values and their slopes by pixels at rest; False if not in sight."""
    height, width = image.shape
    # By name: for all that the compiler knows, what the loop writes could be one of these.
    r00, r01, r02 = rotation[0, 0], rotation[0, 1], rotation[0, 2]
    r10, r11, r12 = rotation[1, 0], rotation[1, 1], rotation[1, 2]
    r20, r21, r22 = rotation[2, 0], rotation[2, 1], rotation[2, 2]
    at_x, at_y, at_z = position_mm[0], position_mm[1], position_mm[2]
    focal, centre_x, centre_y = lens[0], lens[1], lens[2]
    xx, xy, yx, yy = to_here[0, 0], to_here[0, 1], to_here[1, 0], to_here[1, 1]
    size = len(patch)
    inside = 0
    for p in range(size):
        a, b, c = pixels_mm[p, 0], pixels_mm[p, 1], pixels_mm[p, 2]
        s = focal / (r20 * a + r21 * b + r22 * c + at_z)
        x = centre_x + s * (r00 * a + r01 * b + r02 * c + at_x)
        y = centre_y + s * (r10 * a + r11 * b + r12 * c + at_y)
        at[0, p], at[1, p] = x, y
        # Written so that a point that is not a number is outside too.
        inside += (x >= 0.0) & (x <= width - 1.001) & (y >= 0.0) & (y <= height - 1.001)
    if inside < size:
        return False
    for p in range(size):
        x, y = at[0, p], at[1, p]
        left, top = np.uint32(x), np.uint32(y)
        right, bottom = np.uint32(left + 1), np.uint32(top + 1)
        fx, fy = x - left, y - top
        upper, lower = image[top, left], image[bottom, left]
        across, below = image[top, right] - upper, image[bottom, right] - lower
        upper += fx * across
        lower += fx * below
        patch[p] = upper + fy * (lower - upper)
        gx, gy = across + fy * (below - across), lower - upper
        slopes[p, 0] = gx * xx + gy * yx
        slopes[p, 1] = gx * xy + gy * yy
    return True


@compiled
def _normalise(patch: Array, slopes: Array) -> float:
    """Free a patch and its slopes of brightness and contrast in place; its contrast before."""
    size = len(patch)
    # Divided once, not at each pixel: a division costs more than all the rest.
    mean, mean_x, mean_y, squares = 0.0, 0.0, 0.0, 0.0
    for p in range(size):
        mean += patch[p]
        mean_x += slopes[p, 0]
        mean_y += slopes[p, 1]
    mean, mean_x, mean_y = mean / size, mean_x / size, mean_y / size
    along_x, along_y = 0.0, 0.0
    for p in range(size):
        patch[p] -= mean
        slopes[p, 0] -= mean_x
        slopes[p, 1] -= mean_y
        squares += patch[p] * patch[p]
        along_x += patch[p] * slopes[p, 0]
        along_y += patch[p] * slopes[p, 1]
    spread = np.sqrt(squares / size)
    inverse = 1.0 / max(spread, 1e-3)
    per_square = inverse * inverse / size
    along_x, along_y = along_x * per_square, along_y * per_square
    for p in range(size):
        slopes[p, 0] = (slopes[p, 0] - patch[p] * along_x) * inverse
        slopes[p, 1] = (slopes[p, 1] - patch[p] * along_y) * inverse
        patch[p] *= inverse
    return float(spread)


@compiled
def steepness(
    image: NDArray[np.float32],
    pixels_mm: Array,
    tangents_mm: Array,
    rotation: Array,
    position_mm: Array,
    lens: Array,
) -> Array:
    """How steep patches are in a picture, each freed of its brightness and contrast.

    Parameters
    ----------
    image, rotation, position_mm, lens
        As for :func:`compare`.
    pixels_mm, tangents_mm
        ``(k, p, 3)`` and ``(k, 3, 2)`` of the template.

    Returns
    -------
    ndarray
        ``(k, 2)`` root mean square change along one pixel at rest, sideways and upwards.
        Outside the picture its edge goes on.
    """
    count, size = pixels_mm.shape[:2]
    out = np.empty((count, 2))
    patch, slopes = np.empty(size), np.empty((size, 2))
    place, seen = np.empty(3), np.empty(3)
    for k in range(count):
        for p in range(size):
            total = 0.0
            for axis in range(2):
                ends = 0.0
                for side in (0.5, -0.5):
                    for i in range(3):
                        place[i] = pixels_mm[k, p, i] + side * tangents_mm[k, i, axis]
                    turn(rotation, place, seen)
                    s = lens[0] / (seen[2] + position_mm[2])
                    value = value_at(
                        image,
                        lens[1] + s * (seen[0] + position_mm[0]),
                        lens[2] + s * (seen[1] + position_mm[1]),
                    )
                    total += value
                    ends += 2.0 * side * value
                slopes[p, axis] = ends
            patch[p] = 0.25 * total
        _normalise(patch, slopes)
        for axis in range(2):
            squares = 0.0
            for p in range(size):
                squares += slopes[p, axis] * slopes[p, axis]
            out[k, axis] = np.sqrt(squares / size)
    return out
