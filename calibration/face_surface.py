"""Where to put patches on a person's face, and how deep each of their pixels lies."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.head.crop import GreyCrop, sample_bilinear
from tracker.head.perspective import Array, Pose
from tracker.head.shape import (
    LEFT_EYE_CORNERS,
    NOSE_BASE,
    PUPIL_DISTANCE_MM,
    RIGHT_EYE_CORNERS,
    FaceShape,
)

#: Side of a patch in samples, and their spacing in crop pixels. A face whose outer eye
#: corners are fewer than :data:`FULL_SPAN_PX` apart gets patches that are as large on the
#: skin, down to samples half a pixel apart; smaller ones on a near face cost accuracy in
#: pitch (.4 to .7 degrees on a rendered head).
PATCH_SIDE = 7
PATCH_SPACING_PX = 1.9
FULL_SPAN_PX = 70.0
MIN_SPACING_PX = 0.5
MAX_PATCHES = 130


@dataclass(frozen=True, slots=True)
class Surface:
    """Patches on the rest picture.

    Attributes
    ----------
    pixels_px
        ``(k, p, 2)`` crop pixels of every patch sample.
    depth_mm
        ``(k, p)`` camera depth of every sample on the generic face.
    normals
        ``(k, 3)`` outward normals in camera axes.
    """

    pixels_px: Array
    depth_mm: Array
    normals: Array


def lay_patches(shape: FaceShape, pose: Pose, points_px: Array, crop: GreyCrop) -> Surface:
    """Choose well-structured places on the still part of the face.

    Left out: the eye openings, everything below the base of the nose (mouth and
    chin move), and the rim where the skin turns away.

    Parameters
    ----------
    shape, pose
        The generic face and its pose at rest.
    points_px
        ``(>= 468, 2)`` landmarks at rest in the whole picture.
    crop
        The rest picture.
    """
    in_crop = (points_px[:468] - [crop.left_px, crop.top_px]) * crop.scale
    in_camera = pose.apply(shape.points_mm)
    depth, facing, allowed = _rasterise(shape, in_crop, in_camera, crop.image.shape)
    outer = in_crop[[RIGHT_EYE_CORNERS[0], LEFT_EYE_CORNERS[0]]]
    share = min(1.0, float(np.linalg.norm(outer[1] - outer[0])) / FULL_SPAN_PX)
    spacing = max(PATCH_SPACING_PX * share, MIN_SPACING_PX)
    centres = _corners(crop.image, allowed, spacing)
    offsets = (np.arange(PATCH_SIDE) - (PATCH_SIDE - 1) / 2) * spacing
    grid = np.stack(np.meshgrid(offsets, offsets), axis=-1).reshape(-1, 2)
    pixels = centres[:, None, :] + grid
    inverse = sample_bilinear((1.0 / depth).astype(np.float32), pixels)
    normals = facing[centres[:, 1].astype(int), centres[:, 0].astype(int)]
    return Surface(pixels, 1.0 / inverse.astype(float), normals)


def _rasterise(
    shape: FaceShape, in_crop: Array, in_camera: Array, size: tuple[int, ...]
) -> tuple[Array, Array, NDArray[np.bool_]]:
    """Depth, normal and permission of each crop pixel under the face's triangles."""
    depth = np.full(size, float(np.median(in_camera[:, 2])))
    facing = np.zeros((*size, 3))
    allowed = np.zeros(size, dtype=bool)
    good = _still_triangles(shape)
    for number, triangle in enumerate(shape.triangles):
        corners = in_crop[triangle]
        low = np.maximum(np.floor(corners.min(axis=0)).astype(int), 0)
        high = np.minimum(np.ceil(corners.max(axis=0)).astype(int) + 1, [size[1], size[0]])
        if (high <= low).any():
            continue
        xs, ys = np.meshgrid(np.arange(low[0], high[0]), np.arange(low[1], high[1]))
        (ax, ay), (bx, by), (cx, cy) = corners
        area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay)
        if abs(area) < 1e-9:
            continue
        wb = ((xs - ax) * (cy - ay) - (cx - ax) * (ys - ay)) / area
        wc = ((bx - ax) * (ys - ay) - (xs - ax) * (by - ay)) / area
        inside = (wb >= -1e-6) & (wc >= -1e-6) & (wb + wc <= 1 + 1e-6)
        za, zb, zc = in_camera[triangle, 2]
        inverse = (1 - wb - wc) / za + wb / zb + wc / zc
        a, b, c = in_camera[triangle]
        normal = np.cross(b - a, c - a)
        normal *= -np.sign(normal @ a) / max(float(np.linalg.norm(normal)), 1e-9)
        where = ys[inside], xs[inside]
        depth[where] = 1.0 / inverse[inside]
        facing[where] = normal
        allowed[where] = good[number] and normal[2] < -0.45
    return depth, facing, allowed


def _still_triangles(shape: FaceShape) -> NDArray[np.bool_]:
    """Triangles away from the eye openings and above the base of the nose."""
    middle = shape.points_mm[shape.triangles].mean(axis=1)
    good = middle[:, 1] < shape.points_mm[NOSE_BASE, 1] + 2.0
    for corners in (RIGHT_EYE_CORNERS, LEFT_EYE_CORNERS):
        eye = shape.points_mm[list(corners)].mean(axis=0)
        # An ellipse that takes in the lids and their folds.
        reach = ((middle - eye)[:, :2] / [0.34 * PUPIL_DISTANCE_MM, 0.20 * PUPIL_DISTANCE_MM]) ** 2
        good &= reach.sum(axis=1) > 1.0
    return np.asarray(good)


def _corners(image: NDArray[np.float32], allowed: NDArray[np.bool_], spacing: float) -> Array:
    """Centres ``(k, 2)`` of the best structured places (Shi-Tomasi), spread over the face."""
    gy, gx = np.gradient(image.astype(float))
    # At least a third of a patch apart, and as wide a window.
    reach = max(2, round(2.1 * spacing))
    xx, yy, xy = (_box(v, reach) for v in (gx * gx, gy * gy, gx * gy))
    least = 0.5 * (xx + yy) - np.sqrt(0.25 * (xx - yy) ** 2 + xy**2)
    margin = int(PATCH_SIDE * spacing / 2) + 2
    score = np.where(_eroded(allowed, 2), least, 0.0)
    score[:margin] = score[-margin:] = 0.0
    score[:, :margin] = score[:, -margin:] = 0.0
    picked: list[tuple[int, int]] = []
    for _ in range(MAX_PATCHES):
        row, column = divmod(int(np.argmax(score)), score.shape[1])
        if score[row, column] <= 0.0:
            break
        picked.append((column, row))
        score[
            max(row - reach, 0) : row + reach + 1, max(column - reach, 0) : column + reach + 1
        ] = 0.0
    return np.array(picked, dtype=float).reshape(-1, 2)


def _box(values: Array, half: int) -> Array:
    """Moving sum over a square of side ``2 half + 1``."""
    padded = np.pad(values, half + 1)
    total = padded.cumsum(axis=0).cumsum(axis=1)
    n = 2 * half + 1
    window = total[n:, n:] - total[:-n, n:] - total[n:, :-n] + total[:-n, :-n]
    return np.asarray(window[: values.shape[0], : values.shape[1]])


def _eroded(mask: NDArray[np.bool_], by: int) -> NDArray[np.bool_]:
    return np.asarray(_box(mask.astype(float), by) > (2 * by + 1) ** 2 - 0.5)
