"""The focal length of a camera from views of a rectangle whose sides are known.

Each view of a flat thing of known size gives its pose, six numbers, by its four corners,
eight numbers; what is left over tells the focal length, the better the more the thing
is tilted (plane-based calibration: Zhang, "A flexible new technique for camera
calibration", IEEE PAMI 22(11), 2000, with square pixels and the axis through the
picture's middle, so that one unknown is left). Held square to the camera it tells
nothing, and a measured distance stands in.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from scipy.optimize import least_squares

from tracker.errors import InputError
from tracker.head.perspective import Array, rotation_of_vector, vector_of_rotation
from tracker.lens import LEAST_DEG, MOST_DEG, Lens, vertical_fov_deg

#: Longer and shorter side in mm: A4 of ISO 216:2007, and ID-1 of ISO/IEC 7810:2019.
SIDES_MM = {"paper": (297.0, 210.0), "card": (85.60, 53.98)}
#: Standard deviation of a corner in pixels that is taken at least; the finder's own on
#: rendered sheets is .1 to .3.
CORNER_PX = 0.3
#: A tape measure at arm's length, in mm (common practice).
DISTANCE_ERROR_MM = 10.0
#: What a pinhole leaves out (a lens that bends straight lines, an axis beside the middle),
#: as a share of the focal length. On sheets rendered through such lenses (k1 -.05, the axis
#: 2 % of the width beside) the fit was off by .8 % in the median and 4 % at worst.
LEFT_OUT = 0.03
#: A result less sure than this share of the focal length is not given: half of what the
#: value taken for granted may miss (this project's own choice).
MOST_ERROR = 0.12
#: Corners farther off than this, of 640 pixels: it is not that rectangle, or it is bent (this
#: project's own choice).
MOST_RESIDUAL_PX = 2.0
#: A view so many times farther off than the others had a finger on a rim (this project's own
#: choice).
STRAY = 3.0
# Where the search begins, a little beyond what is allowed (derived from those bounds).
_GRID_DEG = np.linspace(LEAST_DEG - 5.0, MOST_DEG + 10.0, 49)


@dataclass(frozen=True, slots=True)
class FoundFocal:
    """A focal length.

    Attributes
    ----------
    focal_px, error_px
        The focal length and half the width of its 95 % range.
    residual_px
        Root mean square distance of the corners from where they should be.
    views
        How many views it rests on; those of other things are left out.
    """

    focal_px: float
    error_px: float
    residual_px: float
    views: int

    def lens(self, source: str, width_px: int, height_px: int) -> Lens:
        """The field of view that follows for pictures of this size."""
        fov = vertical_fov_deg(self.focal_px, height_px)
        wider = vertical_fov_deg(max(self.focal_px - self.error_px, 1.0), height_px)
        return Lens(fov, source, wider - fov, width_px / height_px)


def find_focal(
    views: Sequence[Array],
    sides_mm: tuple[float, float],
    size_px: tuple[int, int],
    distance_mm: float | None = None,
) -> FoundFocal:
    """Focal length from views of one rectangle.

    Parameters
    ----------
    views
        ``(4, 2)`` corners in pixels, in order around, one a view.
    sides_mm
        Its longer and shorter side.
    size_px
        Width and height of the pictures.
    distance_mm
        Measured distance from the camera to the rectangle's middle, the same in all
        views; None without.

    Raises
    ------
    InputError
        Where it can't be had: nothing seen, not tilted enough, another thing.
    """
    if not views:
        raise InputError("nothing was seen to measure; hold it up so that all four corners show")
    middle = (np.array(size_px) - 1) / 2
    corners = [np.asarray(v, dtype=float) - middle for v in views]
    most_px = MOST_RESIDUAL_PX * max(size_px) / 640
    focal, laid = _start(corners, sides_mm, size_px[1], distance_mm, most_px)
    kept = [
        (view, body)
        for view, body in zip(corners, laid, strict=True)
        if _pose(view, body, focal)[2] < most_px
    ]
    if not kept or 2 * len(kept) < len(views):
        raise InputError("what was held up has another shape; use a flat, whole one")
    fit, error = _refine(kept, focal, distance_mm)
    off_px = _off_px(fit, len(kept))
    good = off_px < max(STRAY * float(np.median(off_px)), 2 * CORNER_PX)
    if not good.all() and good.sum() >= 3:
        kept = [k for k, is_good in zip(kept, good, strict=True) if is_good]
        fit, error = _refine(kept, focal, distance_mm)
    focal = float(np.exp(fit.x[0]))
    residual = float(np.sqrt((_off_px(fit, len(kept)) ** 2).mean()))
    error = float(np.hypot(2.0 * error, LEFT_OUT))
    if error > MOST_ERROR:
        raise InputError("it was held too square to the camera; tilt it more, to several sides")
    if not LEAST_DEG <= vertical_fov_deg(focal, size_px[1]) <= MOST_DEG:
        raise InputError("no webcam sees so wide or so narrow; measure again")
    return FoundFocal(focal, error * focal, residual, len(kept))


def tilt_between_deg(
    one: Array, other: Array, sides_mm: tuple[float, float], size_px: tuple[int, int]
) -> float:
    """Angle in degrees between a rectangle's planes in two views, roughly.

    The focal length isn't known yet, so that of the usual lens stands in.
    """
    middle = (np.array(size_px) - 1) / 2
    focal = 0.5 * size_px[1] / np.tan(np.radians(26.0))
    normals = []
    for view in (one, other):
        tried = [_pose(np.asarray(view) - middle, o, focal) for o in _laid(sides_mm)]
        rotation, _, _ = min(tried, key=lambda p: p[2])
        normals.append(rotation[:, 2])
    return float(np.degrees(np.arccos(np.clip(abs(normals[0] @ normals[1]), 0.0, 1.0))))


def _laid(sides_mm: tuple[float, float]) -> list[Array]:
    """Corners ``(4, 3)`` of the rectangle, its long side along the first edge or the second."""
    out = []
    for across, down in (sides_mm, sides_mm[::-1]):
        x, y = across / 2, down / 2
        out.append(np.array([[-x, -y, 0.0], [x, -y, 0.0], [x, y, 0.0], [-x, y, 0.0]]))
    return out


def _start(
    corners: Sequence[Array],
    sides_mm: tuple[float, float],
    height_px: int,
    distance_mm: float | None,
    most_px: float,
) -> tuple[float, list[Array]]:
    """A focal length to begin with, and how the rectangle lies in each view.

    Which edge is the long one can't be seen in a tilted view alone, so every focal length
    of a grid is tried with both. A view that fits none (another thing in the room, for
    one) counts no more than one that is just off.
    """
    best: tuple[float, float, list[Array]] | None = None
    for fov in _GRID_DEG:
        focal = 0.5 * height_px / float(np.tan(np.radians(fov / 2)))
        total, laid = 0.0, []
        for view in corners:
            costs = []
            for body in _laid(sides_mm):
                _, position, off = _pose(view, body, focal)
                cost = (min(off, most_px) / CORNER_PX) ** 2
                if distance_mm is not None:
                    far = float(np.linalg.norm(position))
                    cost += ((far - distance_mm) / DISTANCE_ERROR_MM) ** 2
                costs.append((cost, body))
            cost, body = min(costs, key=lambda c: c[0])
            total += cost
            laid.append(body)
        if best is None or total < best[0]:
            best = total, focal, laid
    assert best is not None
    return best[1], best[2]


def _pose(view: Array, body: Array, focal: float) -> tuple[Array, Array, float]:
    """Rotation, position and root mean square error in pixels of a rectangle in a view.

    From the map of the plane to the picture (Zhang 2000, section 3.1).
    """
    rows = []
    for (x, y, _), (u, v) in zip(body, view, strict=True):
        rows.append([x, y, 1, 0, 0, 0, -u * x, -u * y, -u])
        rows.append([0, 0, 0, x, y, 1, -v * x, -v * y, -v])
    scale = np.array([1e-2, 1e-2, 1, 1e-2, 1e-2, 1, 1e-2, 1e-2, 1])
    plane = (np.linalg.svd(np.array(rows) * scale)[2][-1] * scale).reshape(3, 3)
    plane = plane / np.array([[focal], [focal], [1.0]])
    size = float(np.sqrt(np.linalg.norm(plane[:, 0]) * np.linalg.norm(plane[:, 1])))
    plane = plane / (size if plane[2, 2] > 0 else -size)
    raw = np.column_stack([plane[:, 0], plane[:, 1], np.cross(plane[:, 0], plane[:, 1])])
    left, _, right = np.linalg.svd(raw)
    rotation = left @ np.diag([1.0, 1.0, np.linalg.det(left @ right)]) @ right
    off = _project(body, rotation, plane[:, 2], focal) - view
    return rotation, plane[:, 2], float(np.sqrt((off**2).sum() / 4))


def _project(body: Array, rotation: Array, position: Array, focal: float) -> Array:
    seen = body @ rotation.T + position
    return np.asarray(focal * seen[:, :2] / np.maximum(seen[:, 2:], 1e-3))


def _off_px(fit: Any, views: int) -> Array:
    """How far the corners of each view are off, root mean square in pixels ``(views,)``."""
    off = fit.fun[: 8 * views].reshape(views, 8) * CORNER_PX
    return np.asarray(np.sqrt((off**2).sum(axis=1) / 4))


def _refine(
    views: Sequence[tuple[Array, Array]], focal: float, distance_mm: float | None
) -> tuple[Any, float]:
    """Least squares over the focal length and every pose; with the relative standard error."""
    start = [np.log(focal)]
    for view, body in views:
        rotation, position, _ = _pose(view, body, focal)
        start += [*vector_of_rotation(rotation), *(position / 1000.0)]

    def off(values: Array) -> Array:
        out = []
        far = []
        for k, (view, body) in enumerate(views):
            turn, place = values[1 + 6 * k : 4 + 6 * k], values[4 + 6 * k : 7 + 6 * k] * 1000.0
            seen = _project(body, rotation_of_vector(turn), place, float(np.exp(values[0])))
            out.append(((seen - view) / CORNER_PX).ravel())
            if distance_mm is not None:
                far.append((np.linalg.norm(place) - distance_mm) / DISTANCE_ERROR_MM)
        # One tape measure: its error is the same in every view.
        return np.concatenate([*out, np.array(far) / np.sqrt(max(len(far), 1))])

    fit = least_squares(off, np.array(start), x_scale="jac", method="trf")
    free = len(fit.fun) - len(fit.x)
    spread = max(1.0, float((fit.fun**2).sum()) / max(free, 1))
    inverse = np.linalg.pinv(fit.jac.T @ fit.jac)
    return fit, float(np.sqrt(inverse[0, 0] * spread))
