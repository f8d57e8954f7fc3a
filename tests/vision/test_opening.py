"""How a camera is opened on each system: what OpenCV is asked for, without a camera.

The three back ends are those that OpenCV names for these systems (videoio.hpp, from memory).
"""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest

from tracker.vision import capture
from tracker.vision.messages import CameraSource
from tracker.vision.opencv import cv2


class Opened:
    """In the place of OpenCV's camera; remembers what it was asked for."""

    is_open = True
    picture: Any = None
    released = 0

    def __init__(self, *asked: Any) -> None:
        self.asked = asked
        self.told: list[tuple[int, float]] = []

    def isOpened(self) -> bool:
        return self.is_open

    def set(self, name: int, value: float) -> None:
        self.told.append((name, value))

    def read(self) -> tuple[bool, Any]:
        return self.picture is not None, self.picture

    def release(self) -> None:
        type(self).released += 1


@pytest.fixture
def camera(monkeypatch: pytest.MonkeyPatch) -> type[Opened]:
    class Camera(Opened):
        pass

    monkeypatch.setattr(cv2, "VideoCapture", Camera)
    return Camera


SOURCE = CameraSource(3, width=640, height=480, rate_hz=25.0)


@pytest.mark.parametrize(
    ("platform", "target", "backend"),
    [("linux", "/dev/video3", cv2.CAP_V4L2), ("darwin", 3, cv2.CAP_AVFOUNDATION)],
)
def test_the_size_is_asked_for_after_compressed_pictures_and_without_a_queue(
    camera: type[Opened], platform: str, target: Any, backend: int
) -> None:
    opened: Any = capture.open_capture(SOURCE, platform)
    assert isinstance(opened, camera) and opened.asked == (target, backend)
    assert opened.told[0] == (cv2.CAP_PROP_FOURCC, cv2.VideoWriter.fourcc(*"MJPG"))
    assert (cv2.CAP_PROP_FRAME_WIDTH, 640) in opened.told
    assert (cv2.CAP_PROP_FRAME_HEIGHT, 480) in opened.told
    assert (cv2.CAP_PROP_FPS, 25.0) in opened.told
    assert (cv2.CAP_PROP_BUFFERSIZE, 1) in opened.told


def test_a_lasting_name_comes_before_a_number(camera: type[Opened]) -> None:
    named = CameraSource(3, device_id="/dev/v4l/by-id/some")
    opened: Any = capture.open_capture(named, "linux")
    assert isinstance(opened, camera) and opened.asked[0] == "/dev/v4l/by-id/some"


def test_one_that_does_not_open_is_asked_for_nothing(camera: type[Opened]) -> None:
    camera.is_open = False
    opened: Any = capture.open_capture(SOURCE, "linux")
    assert opened.told == []


def test_windows_takes_the_size_with_the_opening(camera: type[Opened]) -> None:
    opened: Any = capture.open_capture(SOURCE, "win32")
    index, backend, size = opened.asked
    assert (index, backend) == (3, cv2.CAP_MSMF) and isinstance(opened, camera)
    assert size == [cv2.CAP_PROP_FRAME_WIDTH, 640, cv2.CAP_PROP_FRAME_HEIGHT, 480]
    assert opened.told == []


@pytest.mark.parametrize(
    ("is_open", "picture", "size"),
    [
        (True, np.zeros((480, 640, 3), np.uint8), (640, 480)),
        (True, None, None),
        (False, np.zeros((480, 640, 3), np.uint8), None),
    ],
)
def test_a_number_that_is_tried_is_let_go_of_again(
    camera: type[Opened], is_open: bool, picture: Any, size: tuple[int, int] | None
) -> None:
    camera.is_open, camera.picture = is_open, picture
    assert capture.try_index(0) == size and camera.released == 1
