"""A pair of glasses for a head: two rims, a bridge and two sides, as thin tubes.

Frames only: lenses neither reflect nor bend the light, so real glasses disturb
an eye tracker more than these do.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sample_clips.angles import Array

#: Half the width and height of a lens, and how far it stands before the eyes' front.
HALF_WIDTH_MM, HALF_HEIGHT_MM, AHEAD_MM = 25.0, 19.0, 12.0
TUBE_MM = 1.3
_SIDES = 6


def spectacles(balls_mm: Array, ball_mm: float) -> tuple[Array, NDArray[np.int64]]:
    """Points and triangles of the frame that fits a head's eyes.

    Parameters
    ----------
    balls_mm
        Centres of the balls behind the lids, ``(2, 3)``.
    ball_mm
        Their radius.
    """
    front = float(balls_mm[:, 2].mean()) + ball_mm + AHEAD_MM
    round_ = np.linspace(0, 2 * np.pi, 41)
    lines = []
    for x, y, _ in balls_mm:
        out = np.sign(x)
        rim_x = x + 1.5 * out + HALF_WIDTH_MM * _squared(np.cos(round_))
        rim_y = y - 3.0 + HALF_HEIGHT_MM * _squared(np.sin(round_))
        lines.append(np.stack([rim_x, rim_y, np.full_like(rim_x, front)], axis=1))
        hinge = np.array([x + out * (HALF_WIDTH_MM + 1.5), y + 3.0, front])
        ear = np.array([out * 80.0, y + 4.0, -85.0])
        lines.append(hinge + np.linspace(0, 1, 8)[:, None] * (ear - hinge))
    inner = float(np.abs(balls_mm[:, 0]).mean()) - HALF_WIDTH_MM + 1.5
    height = float(balls_mm[:, 1].mean())
    lines.append(
        np.array([[-inner, height, front], [0, height + 3, front + 1], [inner, height, front]])
    )
    points: list[Array] = []
    faces: list[NDArray[np.int64]] = []
    for line in lines:
        tube, triangles = _tube(line)
        faces.append(triangles + sum(len(p) for p in points))
        points.append(tube)
    return np.vstack(points), np.vstack(faces)


def _squared(wave: Array) -> Array:
    """A rounder square than a circle is."""
    return np.asarray(np.sign(wave) * np.abs(wave) ** 0.7)


def _tube(line: Array) -> tuple[Array, NDArray[np.int64]]:
    ahead = np.gradient(line, axis=0)
    ahead /= np.linalg.norm(ahead, axis=1, keepdims=True)
    side = np.cross(ahead, [0.31, 0.47, 0.83])
    side /= np.linalg.norm(side, axis=1, keepdims=True)
    other = np.cross(ahead, side)
    corners = np.arange(_SIDES) * 2 * np.pi / _SIDES
    ring = np.cos(corners)[:, None] * side[:, None] + np.sin(corners)[:, None] * other[:, None]
    faces = []
    for i in range(len(line) - 1):
        for j in range(_SIDES):
            a, b = _SIDES * i + j, _SIDES * i + (j + 1) % _SIDES
            faces += [[a, b, b + _SIDES], [a, b + _SIDES, a + _SIDES]]
    return (line[:, None] + TUBE_MM * ring).reshape(-1, 3), np.array(faces)
