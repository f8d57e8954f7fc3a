"""Rotations and directions in the rest frame (right, up, forward), restated for this package."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


def turned(yaw_deg: float, pitch_deg: float, roll_deg: float) -> Array:
    """Matrix ``(3, 3)`` of yaw to the right, then pitch up, then roll right ear down."""
    y, p, r = np.radians([yaw_deg, pitch_deg, roll_deg])
    about_up = np.array([[np.cos(y), 0, np.sin(y)], [0, 1, 0], [-np.sin(y), 0, np.cos(y)]])
    about_right = np.array([[1, 0, 0], [0, np.cos(p), np.sin(p)], [0, -np.sin(p), np.cos(p)]])
    about_forward = np.array([[np.cos(r), np.sin(r), 0], [-np.sin(r), np.cos(r), 0], [0, 0, 1]])
    return np.asarray(about_up @ about_right @ about_forward)


def direction(yaw_deg: float, pitch_deg: float) -> Array:
    """Unit vector of a direction."""
    y, p = np.radians([yaw_deg, pitch_deg])
    return np.array([np.sin(y) * np.cos(p), np.sin(p), np.cos(y) * np.cos(p)])


def yaw_pitch(vector: Array) -> tuple[float, float]:
    """Yaw and pitch in degrees of a vector of any length."""
    x, y, z = vector
    return float(np.degrees(np.arctan2(x, z))), float(np.degrees(np.arctan2(y, np.hypot(x, z))))
