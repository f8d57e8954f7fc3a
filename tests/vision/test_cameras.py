"""Cameras: which there are, and why one can't be used.

No camera is needed: device trees and system calls are made up. What
real drivers answer was never seen by these tests.
"""

from __future__ import annotations

import errno
import os
import struct
import sys
import time
from collections.abc import Iterator
from multiprocessing.connection import Connection
from pathlib import Path

import pytest

from tracker.vision import cameras
from tracker.vision.cameras import DeviceTree
from tracker.vision.messages import CameraSource, SourceState
from ui import words
from ui.commands.camera import TO_DO

pytestmark = pytest.mark.alone

CAPTURE, META = 0x04200001, 0x04A00000
WEBCAM_ID = "usb-Some_Maker_Webcam-video-index0"


class FakeKernel:
    """Answers ``open`` and ``ioctl`` for devices that can be refused or taken."""

    def __init__(self) -> None:
        self.device_caps: dict[str, int] = {}
        self.open_error: dict[str, int] = {}
        self.format_error: dict[str, int] = {}
        self.handles: dict[int, str] = {}

    def open_device(self, path: Path, flags: int) -> int:
        assert flags & os.O_RDWR
        name = path.resolve().name
        if name in self.open_error:
            raise OSError(self.open_error[name], os.strerror(self.open_error[name]))
        handle = 1000 + len(self.handles)
        self.handles[handle] = name
        return handle

    def ioctl(self, handle: int, request: int, data: bytearray) -> int:
        name = self.handles[handle]
        if request == 0x80685600:
            assert len(data) == 104
            caps = self.device_caps.get(name, CAPTURE)
            struct.pack_into("<II", data, 84, 0x80000000 | CAPTURE | META, caps)
        elif request == 0xC0D05605 and name in self.format_error:
            raise OSError(self.format_error[name], "")
        return 0

    def close_device(self, handle: int) -> None:
        del self.handles[handle]


@pytest.fixture
def kernel() -> FakeKernel:
    return FakeKernel()


@pytest.fixture
def tree(tmp_path: Path, kernel: FakeKernel) -> Iterator[DeviceTree]:
    """A webcam with its second device for data about pictures, and a second webcam."""
    names = {"video0": "Webcam: Webcam", "video1": "Webcam: Webcam", "video10": "Other"}
    for k, (node, name) in enumerate(names.items()):
        (tmp_path / "dev").mkdir(exist_ok=True)
        (tmp_path / "dev" / node).touch()
        folder = tmp_path / "sys/class/video4linux" / node
        folder.mkdir(parents=True)
        (folder / "name").write_text(name + "\n")
        (folder / "index").write_text("1\n" if k == 1 else "0\n")
    by_id = tmp_path / "dev/v4l/by-id"
    by_id.mkdir(parents=True)
    (by_id / WEBCAM_ID).symlink_to("../../video0")
    kernel.device_caps["video1"] = META
    yield DeviceTree(tmp_path, kernel.open_device, kernel.ioctl, kernel.close_device)
    assert not kernel.handles, "a device was left open"


WEBCAM = CameraSource(0, "Webcam", f"/dev/v4l/by-id/{WEBCAM_ID}")


def test_cameras_by_name_and_lasting_id(tree: DeviceTree) -> None:
    assert tree.cameras() == [WEBCAM, CameraSource(10, "Other")]


def test_cameras_that_may_not_be_opened_are_listed(tree: DeviceTree, kernel: FakeKernel) -> None:
    kernel.open_error = dict.fromkeys(("video0", "video1", "video10"), errno.EACCES)
    assert [c.index for c in tree.cameras()] == [0, 10]


def test_camera_that_can_be_used(tree: DeviceTree) -> None:
    assert tree.condition(WEBCAM) is None
    assert tree.condition(CameraSource(10)) is None
    assert tree.path_of(WEBCAM).name == WEBCAM_ID


@pytest.mark.parametrize(
    ("code", "state"),
    [
        (errno.EACCES, SourceState.no_permission),
        (errno.EPERM, SourceState.no_permission),
        (errno.EBUSY, SourceState.busy),
        (errno.ENODEV, SourceState.unplugged),
        (errno.ENXIO, SourceState.unplugged),
        (errno.EMFILE, SourceState.failed),
    ],
)
def test_refused_by_open(
    tree: DeviceTree, kernel: FakeKernel, code: int, state: SourceState
) -> None:
    kernel.open_error["video0"] = code
    told = tree.condition(WEBCAM)
    assert told is not None and told[0] is state and "Webcam" in told[1]


@pytest.mark.parametrize(
    ("code", "state"),
    [(errno.EBUSY, SourceState.busy), (errno.ENODEV, SourceState.unplugged)],
)
def test_taken_by_another_program(
    tree: DeviceTree, kernel: FakeKernel, code: int, state: SourceState
) -> None:
    kernel.format_error["video0"] = code
    told = tree.condition(WEBCAM)
    assert told is not None and told[0] is state
    kernel.format_error["video0"] = errno.EINVAL  # an odd driver is no reason not to try
    assert tree.condition(WEBCAM) is None


def test_unplugged_and_none_at_all(tree: DeviceTree) -> None:
    (tree.root / "dev/video0").unlink()
    (tree.root / "dev/v4l/by-id" / WEBCAM_ID).unlink()
    told = tree.condition(WEBCAM)
    assert told is not None and told[0] is SourceState.unplugged
    for node in ("video1", "video10"):
        (tree.root / "dev" / node).unlink()
    told = tree.condition(CameraSource(0))
    assert told is not None and told[0] is SourceState.no_camera


def test_no_devices_at_all(tmp_path: Path) -> None:
    assert DeviceTree(tmp_path).cameras() == []
    told = DeviceTree(tmp_path).condition(CameraSource(0))
    assert told == (SourceState.no_camera, "no camera was found")


def test_a_device_that_gives_no_pictures(tree: DeviceTree) -> None:
    told = tree.condition(CameraSource(1))
    assert told is not None and told[0] is SourceState.no_camera


@pytest.mark.parametrize(
    ("platform", "name", "closed", "mute"),
    [
        ("win32", "", SourceState.no_camera, SourceState.perhaps_busy),
        ("win32", "Webcam", SourceState.perhaps_busy, SourceState.perhaps_busy),
        ("darwin", "Webcam", SourceState.perhaps_forbidden, SourceState.perhaps_forbidden),
        ("linux", "Webcam", SourceState.failed, SourceState.hanging),
    ],
)
def test_what_is_most_likely_where_the_system_says_nothing(
    platform: str, name: str, closed: SourceState, mute: SourceState
) -> None:
    source = CameraSource(0, name)
    assert cameras.closed_condition(source, platform)[0] is closed
    assert cameras.mute_condition(source, platform)[0] is mute


@pytest.mark.parametrize(
    ("platform", "order"),
    [
        ("darwin", ("allow", "cover", "another program")),
        ("win32", ("another program", "allow", "cover")),
    ],
)
def test_the_likeliest_reason_comes_first(platform: str, order: tuple[str, ...]) -> None:
    state, told = cameras.mute_condition(CameraSource(0, "Webcam"), platform)
    places = [told.index(word) for word in order]
    assert places == sorted(places)
    if platform == "darwin":
        said, line = words.WORDS[f"trouble.{state}.do"], TO_DO[state]
        for text in (said, line):
            places = [text.lower().index(w) for w in ("allow", "cover", "other program")]
            assert places == sorted(places)
        assert "Privacy" in said.split(". ")[0]


def _two_then_hang(news: Connection) -> None:
    news.send((0, 640, 480))
    news.send((2, 1280, 720))
    time.sleep(1000)


def test_trying_numbers_survives_a_driver_that_hangs() -> None:
    found = cameras._try_indices(_two_then_hang, limit_s=3.0)
    assert [(c.index, c.width, c.height) for c in found] == [(0, 640, 480), (2, 1280, 720)]


@pytest.mark.skipif(
    sys.platform != "linux" or any(Path("/dev").glob("video*")), reason="there is a camera"
)
def test_trying_numbers_without_a_camera_is_silent(capfd: pytest.CaptureFixture[str]) -> None:
    assert cameras._try_indices() == []
    assert capfd.readouterr() == ("", "")
