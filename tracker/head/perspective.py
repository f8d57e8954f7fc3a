"""Pinhole camera, pose of a rigid body, and the fit of a pose to points in a picture.

Camera coordinates are those of the picture: x to the right of the unmirrored
picture, y down, z away from the camera, millimetres.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.compiled import compiled, solve_positive
from tracker.lens import DEFAULT_VERTICAL_FOV_DEG

#: Numbers of either precision; shapes are in the docstrings.
Array = NDArray[np.floating[Any]]


@dataclass(frozen=True, slots=True)
class Pinhole:
    """An ideal camera with square pixels and its axis through the picture's middle."""

    focal_px: float
    centre_x_px: float
    centre_y_px: float

    @staticmethod
    def from_fov(width_px: int, height_px: int, vertical_fov_deg: float | None) -> Pinhole:
        """Camera of a picture's size and vertical field of view (None: the default)."""
        fov = np.radians(vertical_fov_deg or DEFAULT_VERTICAL_FOV_DEG)
        focal = 0.5 * height_px / np.tan(0.5 * fov)
        # Pixel centres lie at whole numbers, so the middle is at (w - 1) / 2.
        return Pinhole(float(focal), (width_px - 1) / 2, (height_px - 1) / 2)

    @property
    def numbers(self) -> Array:
        """``(3,)`` focal length and centre, as compiled loops take them."""
        return np.array([self.focal_px, self.centre_x_px, self.centre_y_px])

    def project(self, points_mm: Array) -> Array:
        """Pixels ``S + (2,)`` of points ``S + (3,)`` in camera coordinates."""
        scale = self.focal_px / points_mm[..., 2]
        return np.stack(
            [
                points_mm[..., 0] * scale + self.centre_x_px,
                points_mm[..., 1] * scale + self.centre_y_px,
            ],
            axis=-1,
        )

    def rays(self, points_px: Array) -> Array:
        """Rays ``S + (3,)`` with z = 1 through pixels ``S + (2,)``."""
        return np.stack(
            [
                (points_px[..., 0] - self.centre_x_px) / self.focal_px,
                (points_px[..., 1] - self.centre_y_px) / self.focal_px,
                np.ones(points_px.shape[:-1]),
            ],
            axis=-1,
        )


@dataclass(frozen=True, slots=True)
class Pose:
    """``x_camera = rotation @ x_body + position_mm``."""

    rotation: Array
    position_mm: Array

    def apply(self, points_mm: Array) -> Array:
        """Body points ``S + (3,)`` in camera coordinates."""
        return np.asarray(points_mm @ self.rotation.T + self.position_mm)

    def moved(self, step: Array) -> Pose:
        """Pose after a small step ``(6,)``: a turn in radians about the body's origin, a shift."""
        return Pose(rotation_of_vector(step[:3]) @ self.rotation, self.position_mm + step[3:])


@compiled
def rotation_of_vector(vector_rad: Array) -> Array:
    """Right-handed rotation matrix ``(3, 3)`` of a rotation vector (Rodrigues' formula).

    Of a longer vector, a pose's step for one, the first three numbers are taken.
    """
    x, y, z = vector_rad[0], vector_rad[1], vector_rad[2]
    angle = np.sqrt(x * x + y * y + z * z)
    # Series near zero, where the quotients lose their digits.
    if angle < 1e-6:
        a, b = 1.0 - angle**2 / 6.0, 0.5 - angle**2 / 24.0
    else:
        a, b = np.sin(angle) / angle, (1.0 - np.cos(angle)) / angle**2
    c = 1.0 - b * angle**2
    out = np.empty((3, 3))
    out[0, 0], out[0, 1], out[0, 2] = c + b * x * x, b * x * y - a * z, b * x * z + a * y
    out[1, 0], out[1, 1], out[1, 2] = b * x * y + a * z, c + b * y * y, b * y * z - a * x
    out[2, 0], out[2, 1], out[2, 2] = b * x * z - a * y, b * y * z + a * x, c + b * z * z
    return out


def vector_of_rotation(rotation: Array) -> Array:
    """Rotation vector ``(3,)`` in radians of a right-handed rotation matrix, below a half turn."""
    axis = 0.5 * np.array(
        [
            rotation[2, 1] - rotation[1, 2],
            rotation[0, 2] - rotation[2, 0],
            rotation[1, 0] - rotation[0, 1],
        ]
    )
    sine = float(np.sqrt(axis @ axis))
    cosine = 0.5 * (float(np.trace(rotation)) - 1.0)
    return axis if sine < 1e-12 else axis * (np.arctan2(sine, cosine) / sine)


@compiled
def pose_rows(turned_mm: Array, in_camera_mm: Array, focal_px: float, out: Array) -> None:
    """Derivative of one point's pixel by the step of :meth:`Pose.moved`.

    Parameters
    ----------
    turned_mm, in_camera_mm
        ``(3,)`` the body point after rotation alone, and in camera coordinates.
    focal_px
        Focal length.
    out
        ``(2, 6)``, filled: x and y in pixels per radian and per millimetre.
    """
    a, b, c = turned_mm[0], turned_mm[1], turned_mm[2]
    s = focal_px / in_camera_mm[2]
    u, v = in_camera_mm[0] / in_camera_mm[2], in_camera_mm[1] / in_camera_mm[2]
    out[0, 0], out[0, 1], out[0, 2] = -s * u * b, s * (c + u * a), -s * b
    out[0, 3], out[0, 4], out[0, 5] = s, 0.0, -s * u
    out[1, 0], out[1, 1], out[1, 2] = -s * (c + v * b), s * v * a, s * a
    out[1, 3], out[1, 4], out[1, 5] = 0.0, s, -s * v


@compiled
def move(rotation: Array, position_mm: Array, step: Array) -> tuple[Array, Array, float, float]:
    """Pose after a step ``(6,)``, and the step's largest turn (rad) and shift (mm)."""
    by = rotation_of_vector(step)
    turned, moved = np.zeros((3, 3)), np.empty(3)
    most_rad, most_mm = 0.0, 0.0
    for i in range(3):
        for j in range(3):
            for k in range(3):
                turned[i, j] += by[i, k] * rotation[k, j]
        moved[i] = position_mm[i] + step[3 + i]
        most_rad = max(most_rad, abs(step[i]))
        most_mm = max(most_mm, abs(step[3 + i]))
    return turned, moved, most_rad, most_mm


@compiled
def turn(rotation: Array, vector: Array, out: Array) -> None:
    """``out = rotation @ vector`` without the cost of a library call for three numbers."""
    for i in range(3):
        out[i] = (
            rotation[i, 0] * vector[0] + rotation[i, 1] * vector[1] + rotation[i, 2] * vector[2]
        )


def fit_pose(
    body_mm: Array,
    points_px: Array,
    camera: Pinhole,
    start: Pose,
    *,
    huber_px: float = 2.0,
    rounds: int = 8,
    settled_rad: float = 1e-6,
) -> tuple[Pose, float]:
    """Pose whose projected body points lie nearest to points in the picture.

    Gauss-Newton with Huber weights on the pixel distance.

    Parameters
    ----------
    body_mm
        ``(n, 3)`` points of the body, n >= 4, not on one line.
    points_px
        ``(n, 2)`` where they are seen.
    camera
        The camera.
    start
        A pose within about 45 degrees of the answer.
    huber_px
        Distance beyond which a point counts less (this project's own choice, as the two below:
        landmarks are a pixel or so off).
    rounds
        Steps at most.
    settled_rad
        A step that turns less than this is the last.

    Returns
    -------
    pose
        The fitted pose.
    rms_px
        Weighted root mean square distance left over.
    """
    rotation, position, rms = _settle(
        np.ascontiguousarray(body_mm, dtype=np.float64),
        np.ascontiguousarray(points_px, dtype=np.float64),
        camera.numbers,
        np.ascontiguousarray(start.rotation, dtype=np.float64),
        np.ascontiguousarray(start.position_mm, dtype=np.float64),
        huber_px,
        rounds,
        settled_rad,
    )
    return Pose(rotation, position), float(rms)


@compiled
def _settle(
    body_mm: Array,
    points_px: Array,
    lens: Array,
    rotation: Array,
    position_mm: Array,
    huber_px: float,
    rounds: int,
    settled_rad: float,
) -> tuple[Array, Array, float]:
    rms = np.inf
    turned, seen, rows = np.empty(3), np.empty(3), np.empty((2, 6))
    for _ in range(rounds):
        normal = np.zeros((6, 6))
        right = np.zeros(6)
        total, squares = 0.0, 0.0
        for n in range(len(body_mm)):
            turn(rotation, body_mm[n], turned)
            for i in range(3):
                seen[i] = turned[i] + position_mm[i]
            # A body behind the camera has no picture; a long step can put it there.
            seen[2] = max(seen[2], 20.0)
            off_x = points_px[n, 0] - lens[1] - lens[0] * seen[0] / seen[2]
            off_y = points_px[n, 1] - lens[2] - lens[0] * seen[1] / seen[2]
            square = off_x * off_x + off_y * off_y
            weight = min(1.0, huber_px / max(np.sqrt(square), 1e-9))
            pose_rows(turned, seen, lens[0], rows)
            for i in range(6):
                right[i] += weight * (rows[0, i] * off_x + rows[1, i] * off_y)
                for j in range(6):
                    normal[i, j] += weight * (rows[0, i] * rows[0, j] + rows[1, i] * rows[1, j])
            total += weight
            squares += weight * square
        # A breath of damping keeps points on one line from blowing up the step.
        for i in range(6):
            normal[i, i] += 1e-9 * (normal[i, i] + 1.0)
        step = solve_positive(normal, right)
        rotation, position_mm, most_rad, most_mm = move(rotation, position_mm, step)
        rms = np.sqrt(squares / max(total, 1e-9))
        if most_rad < settled_rad and most_mm < 200 * settled_rad:
            break
    return rotation, position_mm, rms
