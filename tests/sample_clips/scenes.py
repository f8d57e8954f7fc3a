"""Small scenarios and still pictures for the tests."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from sample_clips.heads import Attitude, Head, make_head
from sample_clips.scenario import Scenario
from sample_clips.scene import CameraPlace, Scene

CAMERA = CameraPlace(320, 240, 24.0, (0.0, 0.0, 600.0), 0.0)
LIGHT = (0.0, 0.3, 1.0)


def scenario(**changes: Any) -> Scenario:
    data: dict[str, Any] = {
        "name": "test",
        "camera": {"width_px": 160, "height_px": 120},
        "blinks": False,
    }
    return Scenario.model_validate(data | changes)


def attitude_to(
    head: Head,
    point: tuple[float, float, float],
    *,
    yaw: float = 0.0,
    pitch: float = 0.0,
    shift: tuple[float, float, float] = (0.0, 0.0, 0.0),
    shut: float = 0.0,
) -> Attitude:
    """Both eyes look exactly at a point."""
    look = np.zeros((2, 3))
    bare = Attitude(yaw, pitch, 0.0, np.array(shift), look)
    lines = np.array(point) - head.in_space(head.eyes_mm, bare)
    lines /= np.linalg.norm(lines, axis=1, keepdims=True)
    return Attitude(yaw, pitch, 0.0, np.array(shift), lines @ bare.rotation, shut)


def still(attitude: Attitude, name: str = "anna", camera: CameraPlace = CAMERA) -> NDArray[Any]:
    """One picture, without noise."""
    return Scene(camera, LIGHT, 0).draw([(make_head(name), attitude)])


def pixel_of(point: NDArray[Any], camera: CameraPlace = CAMERA) -> NDArray[Any]:
    """Column and row at which a point of the rest frame is seen."""
    right, down, away = camera.see(np.asarray(point)[None])[0]
    middle = np.array([(camera.width_px - 1) / 2, (camera.height_px - 1) / 2])
    return middle + np.array([right, down]) * camera.focal_px / away


def pupil_px(picture: NDArray[Any], near: NDArray[Any], half: int = 9) -> NDArray[Any]:
    """Centre of the dark pupil around a place in the picture."""
    column, row = np.round(near).astype(int)
    patch = picture[row - half : row + half + 1, column - half : column + half + 1].mean(axis=2)
    rows, columns = np.mgrid[row - half : row + half + 1, column - half : column + half + 1]
    # The pupil is far darker than iris, lashes and skin of a light face.
    weight = np.clip(34.0 - patch, 0.0, None)
    return np.array([(columns * weight).sum(), (rows * weight).sum()]) / weight.sum()
