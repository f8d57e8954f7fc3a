"""Which cameras there are, and why one can't be used.

Linux is asked directly: the device tree for names, ``open`` and three V4L2
calls for the state of a camera. OpenCV alone can't tell "in use" from "not
there". On Windows and macOS the numbers 0 to 4 are tried in a short-lived
process; the desktop program gets the names from Qt. Those two ways were written
by the documents and never run on hardware.
"""

from __future__ import annotations

import errno
import multiprocessing
import os
import struct
import sys
from collections.abc import Callable
from dataclasses import dataclass, field
from multiprocessing.connection import Connection
from pathlib import Path
from typing import Any

from tracker.errors import system_reason
from tracker.vision.messages import CameraSource, SourceState

Condition = tuple[SourceState, str]

# Numbers of the Linux interface (documentation: linux/videodev2.h).
_VIDIOC_QUERYCAP = 0x80685600
_CAPABILITY = struct.Struct("<16s32s32sIII12x")
_HAS_DEVICE_CAPS = 0x80000000
_VIDEO_CAPTURE = 0x00000001
_VIDEO_CAPTURE_MPLANE = 0x00001000
_FORMAT_BYTES = 208 if struct.calcsize("P") == 8 else 204
_VIDIOC_G_FMT = 0xC0005604 | _FORMAT_BYTES << 16
_VIDIOC_S_FMT = 0xC0005605 | _FORMAT_BYTES << 16
_BUFFER_TYPE_CAPTURE = 1

#: Numbers that are tried where the system can't be asked (common practice: few have more).
TRIED_INDICES = range(5)
#: Windows takes up to half a minute for one camera (opencv#17687); a
#: little more is this project's own choice.
TRIAL_LIMIT_S = 40.0


def _ioctl(handle: int, request: int, data: bytearray) -> int:
    if sys.platform == "win32":
        raise OSError(errno.ENOTTY, "no such call here")
    import fcntl

    return int(fcntl.ioctl(handle, request, data, True))


@dataclass(frozen=True)
class DeviceTree:
    """The video devices of a Linux system.

    Parameters
    ----------
    root
        Where ``/dev`` and ``/sys`` hang; another one for tests.
    open_device, ioctl
        System calls; others for tests.
    """

    root: Path = Path("/")
    open_device: Callable[[Path, int], int] = os.open
    ioctl: Callable[[int, int, bytearray], int] = _ioctl
    close_device: Callable[[int], None] = field(default=os.close)

    def cameras(self) -> list[CameraSource]:
        """Every device that gives pictures, in the order of its number."""
        by_id = self._ids()
        found = []
        for node in self._nodes():
            number = int(node.name.removeprefix("video"))
            if not self._captures(node):
                continue
            found.append(CameraSource(number, self._name(node), by_id.get(node.name, "")))
        return found

    def path_of(self, source: CameraSource) -> Path:
        """The device file of a camera: by its lasting name if it has one, else by its number."""
        if source.device_id:
            return self.root / source.device_id.lstrip("/")
        return self.root / "dev" / f"video{source.index}"

    def condition(self, source: CameraSource) -> Condition | None:
        """Why the camera can't be used; None if nothing speaks against it."""
        path = self.path_of(source)
        if not path.exists():
            others = self.cameras()
            if source.device_id or others:
                return SourceState.unplugged, f"{_called(source)} is not there"
            return SourceState.no_camera, "no camera was found"
        try:
            handle = self.open_device(path, os.O_RDWR | getattr(os, "O_NONBLOCK", 0))
        except OSError as error:
            return _from_errno(error, source)
        try:
            if not self._is_capture(handle):
                return SourceState.no_camera, f"{path} gives no pictures"
            return self._taken(handle, source)
        except OSError as error:
            return _from_errno(error, source)
        finally:
            self.close_device(handle)

    def _nodes(self) -> list[Path]:
        nodes = [p for p in (self.root / "dev").glob("video*") if p.name[5:].isdigit()]
        return sorted(nodes, key=lambda p: int(p.name[5:]))

    def _ids(self) -> dict[str, str]:
        """Lasting names: ``videoN`` -> ``/dev/v4l/by-id/...``."""
        folder = self.root / "dev/v4l/by-id"
        if not folder.is_dir():
            return {}
        return {
            link.readlink().name: f"/dev/v4l/by-id/{link.name}"
            for link in sorted(folder.iterdir())
            if link.is_symlink()
        }

    def _sys_text(self, node: Path, what: str) -> str:
        try:
            text = (self.root / "sys/class/video4linux" / node.name / what).read_text("utf-8")
        except (OSError, UnicodeDecodeError):
            return ""
        return text.strip()

    def _name(self, node: Path) -> str:
        name = self._sys_text(node, "name") or f"camera {node.name.removeprefix('video')}"
        # Many drivers say everything twice: "HD Webcam: HD Webcam".
        first, _, second = name.partition(":")
        return first if second.strip() and first.startswith(second.strip()) else name

    def _captures(self, node: Path) -> bool:
        """Whether a device gives pictures: asked if it may be opened, else guessed."""
        try:
            handle = self.open_device(node, os.O_RDWR | getattr(os, "O_NONBLOCK", 0))
        except OSError:
            # A camera's second device, for data about the pictures, has index 1.
            return self._sys_text(node, "index") in ("", "0")
        try:
            return self._is_capture(handle)
        except OSError:
            return False
        finally:
            self.close_device(handle)

    def _is_capture(self, handle: int) -> bool:
        data = bytearray(_CAPABILITY.size)
        self.ioctl(handle, _VIDIOC_QUERYCAP, data)
        *_, capabilities, of_device = _CAPABILITY.unpack(data)
        bits = of_device if capabilities & _HAS_DEVICE_CAPS else capabilities
        return bool(bits & (_VIDEO_CAPTURE | _VIDEO_CAPTURE_MPLANE))

    def _taken(self, handle: int, source: CameraSource) -> Condition | None:
        """Set the format that is set already: refused while another program has the pictures."""
        data = bytearray(_FORMAT_BYTES)
        struct.pack_into("<I", data, 0, _BUFFER_TYPE_CAPTURE)
        try:
            self.ioctl(handle, _VIDIOC_G_FMT, data)
            self.ioctl(handle, _VIDIOC_S_FMT, data)
        except OSError as error:
            if error.errno == errno.EBUSY:
                return SourceState.busy, f"{_called(source)} is in use by another program"
            if error.errno in (errno.ENODEV, errno.ENXIO, errno.EIO):
                return SourceState.unplugged, f"{_called(source)} is gone"
        return None


def _called(source: CameraSource) -> str:
    return source.name or f"camera {source.index}"


def _from_errno(error: OSError, source: CameraSource) -> Condition:
    name = _called(source)
    if error.errno in (errno.EACCES, errno.EPERM):
        return SourceState.no_permission, f"{name} may not be opened by this user"
    if error.errno == errno.EBUSY:
        return SourceState.busy, f"{name} is in use by another program"
    if error.errno in (errno.ENOENT, errno.ENODEV, errno.ENXIO, errno.EIO):
        return SourceState.unplugged, f"{name} is gone"
    return SourceState.failed, f"{name} can't be opened ({system_reason(error)})"


def condition(source: CameraSource) -> Condition | None:
    """Why a camera can't be used, as far as it can be known before it is opened."""
    return DeviceTree().condition(source) if sys.platform == "linux" else None


def closed_condition(source: CameraSource, platform: str = sys.platform) -> Condition:
    """What it most likely means that a camera could not be opened.

    On Linux :func:`condition` has had its say before. Elsewhere OpenCV gives no
    reason; where Qt knows the camera's name it is there, and something keeps it
    from being opened.
    """
    name = _called(source)
    if platform == "linux":
        return SourceState.failed, f"{name} gives no picture in a form that is understood"
    if not source.name:
        return SourceState.no_camera, "no camera could be opened"
    return _unsaid(f"{name} could not be opened", platform)


def mute_condition(source: CameraSource, platform: str = sys.platform) -> Condition:
    """What it most likely means that a camera was opened but never gave a picture.

    On Windows and macOS nothing tells a camera that another program has from one that may not
    be used or whose cover is shut, so all three are said, the likeliest first. Never tried on
    such machines.
    """
    name = _called(source)
    if platform == "linux":
        return SourceState.hanging, f"{name} gives no pictures"
    return _unsaid(f"{name} gives no pictures", platform)


def _unsaid(what: str, platform: str) -> Condition:
    """Where the system doesn't say why: on macOS programs share a camera, but must be allowed to.

    Neither was tried; the second is from memory.
    """
    if platform == "darwin":
        why = "macOS doesn't allow it, perhaps, it is covered, or another program has it"
        return SourceState.perhaps_forbidden, f"{what}; {why}"
    system = "Windows" if platform == "win32" else "the system"
    why = f"another program has it, perhaps, {system} doesn't allow it, or it is covered"
    return SourceState.perhaps_busy, f"{what}; {why}"


def gives_blank_ones(platform: str = sys.platform) -> bool:
    """Whether a camera that gives nothing may be read all the same, as pictures of one colour.

    On Windows one that another program has opens, and reading it succeeds (opencv#8358,
    opencvsharp#1443); on macOS one that may not be used does so, as far as is known.
    """
    return platform != "linux"


def list_cameras() -> list[CameraSource]:
    """The cameras of this machine.

    Neither opens a picture stream on Linux nor imports OpenCV into the calling
    process. On Windows and macOS it takes seconds: don't call it from a window.
    """
    if sys.platform == "linux":
        return DeviceTree().cameras()
    return _try_indices()


def _try_indices(
    target: Callable[[Connection], None] | None = None, limit_s: float = TRIAL_LIMIT_S
) -> list[CameraSource]:
    """Open the first few numbers in a process of its own, which may hang without harm."""
    context = multiprocessing.get_context("spawn")
    ours, theirs = context.Pipe(duplex=False)
    process: Any = context.Process(target=target or _trial, args=(theirs,), daemon=True)
    process.start()
    theirs.close()
    found = []
    try:
        while ours.poll(limit_s):
            index, width, height = ours.recv()
            found.append(CameraSource(index, f"camera {index}", width=width, height=height))
    except EOFError:
        pass
    process.kill()
    process.join()
    ours.close()
    return found


def _trial(news: Connection) -> None:
    from tracker.vision.capture import try_index

    for index in TRIED_INDICES:
        size = try_index(index)
        if size is not None:
            news.send((index, *size))
    news.close()
