"""Small pictures of both eyes, freed of the head's movement, as vectors for a regression."""

from __future__ import annotations

import numpy as np

from tracker.head.crop import GreyCrop, sample_bilinear
from tracker.head.perspective import Array, Pinhole, Pose
from tracker.head.shape import LEFT_EYE_CORNERS, RIGHT_EYE_CORNERS

#: Size of the rectified patch in mm around the eye and its spacing: wide enough for both corners,
#: high enough for the lids' way in a look up or down (this project's own choice; an eye is about 30
#: mm wide at its corners).
HALF_WIDTH_MM, HALF_HEIGHT_MM, SPACING_MM = 19.5, 11.25, 1.5
#: How far in front of the eyeball's centre the plane of the patch lies (this project's own
#: choice: about the front of the eye, 12 mm from its centre).
PLANE_MM = 10.0

# Derived from the sizes above.
_X = np.arange(-HALF_WIDTH_MM, HALF_WIDTH_MM + 1e-6, SPACING_MM)
_Y = np.arange(-HALF_HEIGHT_MM, HALF_HEIGHT_MM + 1e-6, SPACING_MM)
#: ``(p, 2)`` offsets in the plane of the patch, mm, derived from the same.
GRID_MM = np.stack(np.meshgrid(_X, _Y), axis=-1).reshape(-1, 2)
#: The same grid for a patch that hangs on the eye's corners: spacing in parts
#: of the corner distance (an adult's is about 30 mm: common practice).
GRID_BY_CORNERS = GRID_MM / 30.0
PATCH_SIZE = len(GRID_MM)
#: Level, slope and bend of a patch's brightness, orthonormal ``(6, p)``: what a light from
#: elsewhere changes most. With these taken away, eyes learnt in one light are read 1.2 degrees
#: off in yaw in one from the other side, and 2.0 without (a rendered head).
_SHADING = np.linalg.qr(
    np.stack([(GRID_MM[:, 0] / HALF_WIDTH_MM) ** i * (GRID_MM[:, 1] / HALF_HEIGHT_MM) ** j
              for i in range(3) for j in range(3 - i)], axis=1)
)[0].T  # fmt: skip


def rectified_patches(crop: GreyCrop, camera: Pinhole, pose: Pose, eyes_mm: Array) -> Array:
    """Patches cut on a plane in front of each eye that turns with the head.

    Parameters
    ----------
    crop, camera
        The picture.
    pose
        Pose of the head.
    eyes_mm
        ``(2, 3)`` eyeball centres in body coordinates.

    Returns
    -------
    ndarray
        ``(2, PATCH_SIZE)`` normalised grey values, right eye first.
    """
    flat = np.zeros((PATCH_SIZE, 3))
    flat[:, :2] = GRID_MM
    flat[:, 2] = -PLANE_MM
    view = crop.camera(camera)
    points = np.stack([view.project(pose.apply(flat + eye)) for eye in eyes_mm])
    return _normalised(sample_bilinear(crop.image, points).astype(float))


def cornered_patches(crop: GreyCrop, points_px: Array) -> Array:
    """Patches hung on the corners of each eye, ``(2, PATCH_SIZE)``.

    Parameters
    ----------
    crop
        The picture.
    points_px
        ``(>= 468, 2)`` landmarks in the whole picture.
    """
    in_crop = (points_px[:468] - [crop.left_px, crop.top_px]) * crop.scale
    grids = []
    # From the picture's left to its right, so that both patches lie alike.
    for first, second in (RIGHT_EYE_CORNERS, LEFT_EYE_CORNERS[::-1]):
        a, b = in_crop[first], in_crop[second]
        across = b - a
        down = np.array([-across[1], across[0]])
        grids.append(
            0.5 * (a + b) + GRID_BY_CORNERS[:, :1] * across + GRID_BY_CORNERS[:, 1:] * down
        )
    return _normalised(sample_bilinear(crop.image, np.stack(grids)).astype(float))


def _normalised(values: Array) -> Array:
    """Patches without their shading, each of unit variance."""
    plain = values - (values @ _SHADING.T) @ _SHADING
    return np.asarray(plain / np.maximum(plain.std(axis=1, keepdims=True), 1.0))
