"""Clips: every frame of a video file, each with the moment at which it was taken."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from tracker.closing import Closing
from tracker.errors import InputError, system_reason
from tracker.frame import Frame
from tracker.vision.containers import Container, inspect
from tracker.vision.opencv import cv2

#: Larger pictures (8K) come from no webcam; they would only fill the memory (this project's
#: own choice).
MAX_PIXELS = 7680 * 4320
#: A step between two frames above this is taken for a broken time stamp (this project's own
#: choice).
MAX_STEP_S = 60.0
#: Frame spacing where a file gives neither usable stamps nor a usable rate (common practice: what
#: most webcams give).
DEFAULT_RATE_HZ = 30.0
#: Farther than this a clip is entered by its index in place of frame by frame (this project's
#: own choice).
SEEK_BEYOND_S = 5.0


@dataclass(frozen=True, slots=True)
class ClipInfo:
    """What a clip says of itself.

    Attributes
    ----------
    path
        The file.
    width_px, height_px
        Size of the upright picture.
    frame_count
        Number of frames, None where the container doesn't keep it.
    rate_hz
        Average (nominal) frame rate, None if the file gives none that can be true.
    duration_s
        Length as the container gives it (the sound may be longer than the
        pictures), None if not known.
    """

    path: Path
    width_px: int
    height_px: int
    frame_count: int | None
    rate_hz: float | None
    duration_s: float | None


class FrameTimes:
    """Turns a container's time stamps into times that begin at 0 and always rise.

    A stamp that is missing, doesn't rise, or jumps beyond all reason is put in
    place by the frame rate: one frame after the last.
    """

    def __init__(self, rate_hz: float | None, duration_s: float | None = None) -> None:
        self._spacing_s = 1.0 / (rate_hz or DEFAULT_RATE_HZ)
        self._end_s = math.inf if duration_s is None else duration_s + 1.0
        self._first_s: float | None = None
        self._last_s = 0.0
        self.replaced = 0

    def next(self, stamp_s: float) -> float:
        """Time of the next frame, whose container stamp is ``stamp_s`` (NaN if none)."""
        if self._first_s is None:
            self._first_s = stamp_s if math.isfinite(stamp_s) else 0.0
            self._last_s = 0.0
            return 0.0
        time_s = stamp_s - self._first_s
        step_s = time_s - self._last_s
        # Half a millisecond is the finest step that coarse containers round to nothing.
        fits = step_s > 5e-4 and (step_s <= 2.0 or (time_s <= self._end_s and step_s < MAX_STEP_S))
        if not fits:
            self.replaced += 1
            time_s = self._last_s + self._spacing_s
        self._last_s = time_s
        return time_s

    def jump(self, stamp_s: float, latest_s: float) -> float | None:
        """Time of a frame reached by a jump forward, None if it can't be trusted.

        It must lie after the last frame and not after ``latest_s``.
        """
        if self._first_s is None or self.replaced or not math.isfinite(stamp_s):
            return None
        time_s = stamp_s - self._first_s
        if not self._last_s < time_s <= latest_s:
            return None
        self._last_s = time_s
        return time_s


class ClipReader(Closing):
    """Frames of one clip in order; made by :func:`open_clip`.

    Iterating gives every frame that can be decoded, from the first on; none is
    dropped. ``truncated`` is known once the last frame was read.
    """

    def __init__(self, path: Path, container: Container) -> None:
        self._path, self._container = path, container
        self._capture = _capture(path)
        _refuse_too_large(path, self._capture)
        first = self._grab()
        image = None if first is None else self._retrieve()
        if image is None:
            self.close()
            raise InputError(f"{path}: {_why_unreadable(container)}")
        self.info = _info(path, container, self._capture, image)
        self._times = FrameTimes(self.info.rate_hz, self.info.duration_s)
        self._waiting: Frame | None = Frame(0, self._times.next(first or 0.0), image)
        self._index, self._time_s = 0, 0.0
        self._jumped = self._ended = False

    @property
    def truncated(self) -> bool:
        """Whether the clip broke off: bytes are missing, or frames that it promised.

        (A clip that was cut without being written anew, by an edit list, may
        hold fewer frames than it lists and then says so, too.)
        """
        if self._container.breaks_off:
            return True
        promised = self.info.frame_count
        if not self._ended or promised is None or self._jumped:
            return False
        return promised - self.frames_read > max(3, 0.02 * promised)

    @property
    def frames_read(self) -> int:
        """Number of frames given so far (those passed over by a jump included)."""
        return self._index + (0 if self._waiting is not None else 1)

    @property
    def end_note(self) -> str:
        """One line about a clip that broke off, empty for a whole one."""
        if not self.truncated:
            return ""
        return (
            f"{self._path}: breaks off after {self._time_s:.1f} s; "
            "what was there has been used, copy the file again if more was recorded"
        )

    @property
    def replaced_times(self) -> int:
        """Number of frames whose time stamp was broken and was put in by the frame rate."""
        return self._times.replaced

    def read(self) -> Frame | None:
        """The next frame, or None after the last."""
        if self._waiting is not None:
            frame, self._waiting = self._waiting, None
            return frame
        while not self._ended:
            stamp = self._grab()
            if stamp is None:
                break
            image = self._retrieve()
            if image is not None:
                self._step(stamp)
                return Frame(self._index, self._time_s, image)
        self._ended = True
        return None

    def skip_to(self, time_s: float) -> None:
        """Pass over the frames before ``time_s``, so that :meth:`read` goes on from there."""
        if self._waiting is not None and self._waiting.time_s >= time_s:
            return
        if time_s - self._time_s > SEEK_BEYOND_S:
            self._seek(time_s - 1.0)
        while not self._ended:
            stamp = self._grab()
            if stamp is None:
                self._ended = True
                break
            self._waiting = None
            self._step(stamp)
            if self._time_s >= time_s - 1e-6:
                image = self._retrieve()
                if image is not None:
                    self._waiting = Frame(self._index, self._time_s, image)
                    return
        self._waiting = None

    def _step(self, stamp_s: float) -> None:
        self._time_s = self._times.next(stamp_s)
        self._index += 1

    def _seek(self, time_s: float) -> None:
        """Jump to shortly before ``time_s`` by the index; back to where it was if that fails."""
        rate = self.info.rate_hz
        if rate is None or self._times.replaced:
            return
        before_s, before = self._time_s, self._index
        # The container's count of frames is by average rate, so aim with room to spare.
        self._capture.set(cv2.CAP_PROP_POS_MSEC, max(0.0, time_s - 1.0) * 1000.0)
        stamp = self._grab()
        reached = None if stamp is None else self._times.jump(stamp, time_s)
        if reached is not None:
            self._time_s = reached
            self._index = before + max(1, round((reached - before_s) * rate))
            self._waiting, self._jumped = None, True
            return
        self._capture.release()
        self._capture = _capture(self._path)
        for _ in range(before + 1):
            self._grab()

    def _grab(self) -> float | None:
        """Go to the next frame and give its stamp in seconds; None at the end."""
        if not self._capture.grab():
            return None
        return float(self._capture.get(cv2.CAP_PROP_POS_MSEC)) / 1000.0

    def _retrieve(self) -> NDArray[np.uint8] | None:
        good, image = self._capture.retrieve()
        if not good or image is None or image.size == 0 or image.ndim != 3:
            return None
        return np.asarray(image, dtype=np.uint8)

    def close(self) -> None:
        """Let the file go."""
        self._capture.release()

    def __iter__(self) -> Iterator[Frame]:
        while (frame := self.read()) is not None:
            yield frame


def open_clip(path: str | Path) -> ClipReader:
    """Open a clip.

    Parameters
    ----------
    path
        A video file: MP4, MOV, MKV, WebM, AVI, MPEG or the like.

    Raises
    ------
    InputError
        One line that says what is wrong with the file and what to do.
    """
    path = Path(path)
    if "\0" in str(path):
        raise InputError(f"{str(path)!r}: is not a usable file name")
    try:
        if path.is_dir():
            raise InputError(f"{path}: is a folder; name a clip in it")
        if not path.exists():
            raise InputError(f"{path}: there is no such file; check the name")
        if not path.is_file():
            raise InputError(f"{path}: is not an ordinary file; name a clip")
        if path.stat().st_size == 0:
            raise InputError(f"{path}: is empty; copy or record the clip again")
        container = inspect(path)
    except OSError as error:
        raise InputError(f"{path}: can't be read ({system_reason(error)})") from error
    if container.kind in ("foreign", "sound") or container.has_pictures is False:
        raise InputError(f"{path}: {_why_unreadable(container)}")
    if not container.has_index:
        raise InputError(f"{path}: {_why_unreadable(container)}")
    return ClipReader(path, container)


def _why_unreadable(container: Container) -> str:
    if container.kind == "foreign":
        return "is not a video clip; name an MP4, MOV, MKV, WebM or AVI file"
    if container.kind == "sound" or container.has_pictures is False:
        return "holds sound but no pictures; name a clip with pictures"
    if not container.has_index or container.breaks_off:
        return "breaks off before its first picture can be read; copy or record the clip again"
    return (
        "no picture in it can be read; it may be damaged, hold sound alone, or be in a form "
        "that is not supported: copy it again, or save it as MP4 (H.264)"
    )


def _capture(path: Path) -> cv2.VideoCapture:
    # An absolute path can't be taken for an address ("name:rest") by the decoder.
    return cv2.VideoCapture(str(path.absolute()), cv2.CAP_FFMPEG)


def _refuse_too_large(path: Path, capture: cv2.VideoCapture) -> None:
    width = capture.get(cv2.CAP_PROP_FRAME_WIDTH)
    height = capture.get(cv2.CAP_PROP_FRAME_HEIGHT)
    if width * height > MAX_PIXELS:
        capture.release()
        raise InputError(
            f"{path}: pictures of {width:.0f} x {height:.0f} are too large; make it smaller"
        )


def _info(
    path: Path, container: Container, capture: cv2.VideoCapture, image: NDArray[np.uint8]
) -> ClipInfo:
    height, width = image.shape[:2]
    given_rate = float(capture.get(cv2.CAP_PROP_FPS))
    count = float(capture.get(cv2.CAP_PROP_FRAME_COUNT))
    duration = count / given_rate if given_rate > 0 and count > 0 else math.nan
    known = math.isfinite(duration) and 0 < duration < 1e6
    # Elsewhere the decoder makes the count up from the duration.
    counted = known and container.kind in ("mp4", "avi") and count < 1e8
    return ClipInfo(
        path,
        int(width),
        int(height),
        int(count) if counted else None,
        given_rate if 1.0 <= given_rate <= 1000.0 else None,
        duration if known else None,
    )
