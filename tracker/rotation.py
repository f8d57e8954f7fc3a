"""Rotations of head and eyes in the rest frame.

Components are (right, up, forward) as the patient sees them. A rotation is the
proper orthogonal matrix whose columns are the turned right, up and forward
axes. It is composed intrinsically: yaw (+ to the right), then pitch (+ up),
then roll (+ right ear down):

    R = Y(yaw) P(pitch) L(roll)

with forward axis (sin y cos p, sin p, cos y cos p). The frame's axes form a
left-handed triple (right x up = -forward), so its matrices are used for what
they do to components, and the vector of a rotation is written in the right-
handed order of :func:`rotation_vector`.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]


def matrix_from_angles(
    yaw_deg: ArrayLike, pitch_deg: ArrayLike, roll_deg: ArrayLike = 0.0
) -> Array:
    """Rotation matrices of yaw, pitch and roll.

    Parameters
    ----------
    yaw_deg, pitch_deg, roll_deg
        Degrees; anything that broadcasts together to shape ``S``.

    Returns
    -------
    ndarray
        ``S + (3, 3)``; columns are the turned right, up and forward axes.

    Examples
    --------
    >>> matrix_from_angles(20.0, 10.0, 5.0)[:, 2].round(4).tolist()
    [0.3368, 0.1736, 0.9254]
    """
    y, p, r = np.broadcast_arrays(np.radians(yaw_deg), np.radians(pitch_deg), np.radians(roll_deg))
    cy, sy, cp, sp, cr, sr = np.cos(y), np.sin(y), np.cos(p), np.sin(p), np.cos(r), np.sin(r)
    out = np.empty((*y.shape, 3, 3))
    out[..., 0, 0] = cy * cr + sy * sp * sr
    out[..., 0, 1] = cy * sr - sy * sp * cr
    out[..., 0, 2] = sy * cp
    out[..., 1, 0] = -cp * sr
    out[..., 1, 1] = cp * cr
    out[..., 1, 2] = sp
    out[..., 2, 0] = -sy * cr + cy * sp * sr
    out[..., 2, 1] = -sy * sr - cy * sp * cr
    out[..., 2, 2] = cy * cp
    return out


def angles_from_matrix(matrix: ArrayLike) -> Array:
    """Yaw, pitch and roll in degrees of rotation matrices, inverse of :func:`matrix_from_angles`.

    Parameters
    ----------
    matrix
        ``S + (3, 3)``.

    Returns
    -------
    ndarray
        ``S + (3,)``: yaw and roll in (-180, 180], pitch in [-90, 90]. At a
        pitch of +-90 degrees yaw and roll turn about one axis and only their
        combination is defined.
    """
    m = np.asarray(matrix, dtype=float)
    yaw = np.arctan2(m[..., 0, 2], m[..., 2, 2])
    # atan2 keeps full precision near +-90 degrees, where asin loses half the digits.
    pitch = np.arctan2(m[..., 1, 2], np.hypot(m[..., 1, 0], m[..., 1, 1]))
    roll = np.arctan2(-m[..., 1, 0], m[..., 1, 1])
    return np.asarray(np.degrees(np.stack([yaw, pitch, roll], axis=-1)))


def direction_from_angles(yaw_deg: ArrayLike, pitch_deg: ArrayLike) -> Array:
    """Unit vectors (right, up, forward) of yaw and pitch in degrees; shape ``S + (3,)``."""
    y, p = np.broadcast_arrays(np.radians(yaw_deg), np.radians(pitch_deg))
    return np.stack([np.sin(y) * np.cos(p), np.sin(p), np.cos(y) * np.cos(p)], axis=-1)


def angles_from_direction(direction: ArrayLike) -> Array:
    """Yaw and pitch in degrees, shape ``S + (2,)``, of vectors ``S + (3,)`` of any length."""
    d = np.asarray(direction, dtype=float)
    yaw = np.arctan2(d[..., 0], d[..., 2])
    pitch = np.arctan2(d[..., 1], np.hypot(d[..., 0], d[..., 2]))
    return np.asarray(np.degrees(np.stack([yaw, pitch], axis=-1)))


def rotation_vector(matrix: ArrayLike) -> Array:
    """Axis times angle, in degrees, of rotation matrices: their logarithm.

    Parameters
    ----------
    matrix
        ``S + (3, 3)``, angles below 180 degrees.

    Returns
    -------
    ndarray
        ``S + (3,)``, for a small rotation (-pitch, yaw, -roll).
    """
    m = np.asarray(matrix, dtype=float)
    skew = 0.5 * np.stack(
        [
            m[..., 2, 1] - m[..., 1, 2],
            m[..., 0, 2] - m[..., 2, 0],
            m[..., 1, 0] - m[..., 0, 1],
        ],
        axis=-1,
    )
    sine = np.linalg.norm(skew, axis=-1)
    cosine = 0.5 * (np.trace(m, axis1=-2, axis2=-1) - 1.0)
    angle = np.arctan2(sine, cosine)
    scale = np.where(sine > 1e-12, angle / np.maximum(sine, 1e-300), 1.0)
    return np.degrees(skew * scale[..., None])


def angle_between_deg(first: ArrayLike, second: ArrayLike) -> Array:
    """True angle in degrees between directions ``S + (3,)``; shape ``S``."""
    # By components: for one pair, as a sample has it, several times as fast as np.cross.
    a, b = np.asarray(first, dtype=float), np.asarray(second, dtype=float)
    ax, ay, az = a[..., 0], a[..., 1], a[..., 2]
    bx, by, bz = b[..., 0], b[..., 1], b[..., 2]
    x, y, z = ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx
    cross = np.sqrt(x * x + y * y + z * z)
    return np.asarray(np.degrees(np.arctan2(cross, ax * bx + ay * by + az * bz)))
