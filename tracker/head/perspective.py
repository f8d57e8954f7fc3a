"""Pinhole camera, pose of a rigid body, and the fit of a pose to points in a picture.

Camera coordinates are those of the picture: x to the right of the unmirrored
picture, y down, z away from the camera, millimetres.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

#: Numbers of either precision; shapes are in the docstrings.
Array = NDArray[np.floating[Any]]

#: Vertical field of view taken where none is known. Laptop webcams lie at
#: about 40-60 degrees (common practice); a wrong value moves angles by about
#: 5 % at the ends of that range and distances in proportion.
DEFAULT_VERTICAL_FOV_DEG = 52.0


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


def rotation_of_vector(vector_rad: Array) -> Array:
    """Right-handed rotation matrix ``(3, 3)`` of a rotation vector (Rodrigues' formula)."""
    angle = float(np.sqrt(vector_rad @ vector_rad))
    x, y, z = vector_rad
    k = np.array([[0.0, -z, y], [z, 0.0, -x], [-y, x, 0.0]])
    # Series near zero, where the quotients lose their digits.
    if angle < 1e-6:
        a, b = 1.0 - angle**2 / 6.0, 0.5 - angle**2 / 24.0
    else:
        a, b = np.sin(angle) / angle, (1.0 - np.cos(angle)) / angle**2
    return np.asarray(np.eye(3) + a * k + b * (k @ k))


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


def pose_jacobian(turned_mm: Array, in_camera_mm: Array, focal_px: float) -> Array:
    """Derivative of pixels by the step of :meth:`Pose.moved`.

    Parameters
    ----------
    turned_mm
        ``(n, 3)`` body points after rotation alone.
    in_camera_mm
        ``(n, 3)`` the same in camera coordinates.
    focal_px
        Focal length.

    Returns
    -------
    ndarray
        ``(n, 2, 6)`` pixels per radian and per millimetre.
    """
    x, y, z = in_camera_mm.T
    a, b, c = turned_mm.T
    s = focal_px / z
    u, v = x / z, y / z
    out = np.empty((len(x), 2, 6))
    out[:, 0, 0] = -s * u * b
    out[:, 0, 1] = s * (c + u * a)
    out[:, 0, 2] = -s * b
    out[:, 0, 3] = s
    out[:, 0, 4] = 0.0
    out[:, 0, 5] = -s * u
    out[:, 1, 0] = -s * (c + v * b)
    out[:, 1, 1] = s * v * a
    out[:, 1, 2] = s * a
    out[:, 1, 3] = 0.0
    out[:, 1, 4] = s
    out[:, 1, 5] = -s * v
    return out


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
        Distance beyond which a point counts less.
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
    pose, rms = start, np.inf
    for _ in range(rounds):
        turned = body_mm @ pose.rotation.T
        in_camera = turned + pose.position_mm
        # A body behind the camera has no picture; a long step can put it there.
        in_camera[:, 2] = np.maximum(in_camera[:, 2], 20.0)
        left = points_px - camera.project(in_camera)
        distance = np.sqrt((left**2).sum(axis=1))
        weight = np.minimum(1.0, huber_px / np.maximum(distance, 1e-9))
        jacobian = pose_jacobian(turned, in_camera, camera.focal_px)
        weighted = jacobian * weight[:, None, None]
        normal = np.einsum("nij,nik->jk", weighted, jacobian)
        gradient = np.einsum("nij,ni->j", weighted, left)
        # A breath of damping keeps points on one line from blowing up the step.
        step = np.linalg.solve(normal + 1e-9 * np.diag(np.diag(normal) + 1.0), gradient)
        pose = pose.moved(step)
        rms = float(np.sqrt((weight * distance**2).sum() / max(weight.sum(), 1e-9)))
        if np.abs(step[:3]).max() < settled_rad and np.abs(step[3:]).max() < 200 * settled_rad:
            break
    return pose, rms
