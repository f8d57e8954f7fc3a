"""Pictures from a camera: a thread that reads, and the newest pictures for who asks.

It runs inside the measuring process. A call into a driver can hang for good and
can't be broken off; who asks is told so by the state and, in the end, by
``stuck``, upon which the whole process is replaced.
"""

from __future__ import annotations

import math
import sys
import threading
import time
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Protocol

import numpy as np

from tracker.frame import Frame
from tracker.vision import cameras
from tracker.vision.cameras import Condition
from tracker.vision.messages import CameraSource, SourceState, SourceStats
from tracker.vision.room import take_room

#: The clock of capture times. ``perf_counter`` is the same monotonic clock as
#: ``time.monotonic`` on Linux and macOS, the same in every process, and on
#: Windows 10,000 times finer.
clock = time.perf_counter


class CaptureLike(Protocol):
    """The part of ``cv2.VideoCapture`` that is used."""

    def isOpened(self) -> bool: ...  # noqa: D102, N802
    def grab(self) -> bool: ...  # noqa: D102
    def retrieve(self) -> tuple[bool, Any]: ...  # noqa: D102
    def release(self) -> None: ...  # noqa: D102


@dataclass(frozen=True, slots=True)
class Patience:
    """How long what may take, in seconds.

    ``hanging_s`` without a picture or an answer is said to be hanging; an
    opening or a reading that takes longer than its limit is given up. Windows
    opens some cameras in half a minute (opencv#17687). Many cameras wake with black
    pictures: ``blank_s`` of nothing but such ones, and it is opened anew (own choice).
    """

    hanging_s: float = 2.0
    open_s: float = 32.0 if sys.platform == "win32" else 12.0
    read_s: float = 6.0
    failing_s: float = 0.5
    blank_s: float = 8.0
    retry_s: float = 1.0
    #: A camera that another process has just let go of may be refused for a moment.
    settle_s: float = 0.8
    settle_retry_s: float = 0.2


#: So long after a lost picture the newest alone waits; seconds.
CATCH_UP_S = 1.0


def backend(platform: str = sys.platform) -> int:
    """OpenCV's number of the camera interface of this system, so that it tries no other."""
    from tracker.vision.opencv import cv2

    if platform == "linux":
        return int(cv2.CAP_V4L2)
    if platform == "darwin":
        return int(cv2.CAP_AVFOUNDATION)
    return int(cv2.CAP_MSMF)


def open_capture(source: CameraSource, platform: str = sys.platform) -> CaptureLike:
    """Open a camera in the asked size, with compressed pictures and no queue."""
    from tracker.vision.opencv import cv2

    if platform == "win32":
        # Every later change costs MSMF another opening, so the size goes in at once.
        size = [cv2.CAP_PROP_FRAME_WIDTH, source.width, cv2.CAP_PROP_FRAME_HEIGHT, source.height]
        return cv2.VideoCapture(source.index, backend(platform), size)
    target: Any = source.index
    if platform == "linux":
        target = str(cameras.DeviceTree().path_of(source))
    capture = cv2.VideoCapture(target, backend(platform))
    if capture.isOpened():
        settings(capture, source)
    return capture


def settings(capture: Any, source: CameraSource) -> None:
    """Compressed pictures before the size: uncompressed 720p comes at 10 frames/s over USB 2."""
    from tracker.vision.opencv import cv2

    capture.set(cv2.CAP_PROP_FOURCC, cv2.VideoWriter.fourcc(*"MJPG"))
    capture.set(cv2.CAP_PROP_FRAME_WIDTH, source.width)
    capture.set(cv2.CAP_PROP_FRAME_HEIGHT, source.height)
    capture.set(cv2.CAP_PROP_FPS, source.rate_hz)
    capture.set(cv2.CAP_PROP_BUFFERSIZE, 1)


def try_index(index: int) -> tuple[int, int] | None:
    """Width and height of the first picture of camera ``index``, None if it gives none."""
    from tracker.vision.opencv import cv2

    capture = cv2.VideoCapture(index, backend())
    try:
        good, image = capture.read() if capture.isOpened() else (False, None)
        if not good or image is None:
            return None
        return int(image.shape[1]), int(image.shape[0])
    finally:
        capture.release()


def one_colour(image: Any) -> bool:
    """Whether a picture has one colour all over: even in the dark a real camera's are grainy.

    A few of its pixels tell the others at once; all are compared only where those are equal.
    """
    some = image[::16, ::16]
    return bool((some == image[0, 0]).all() and (image == image[0, 0]).all())


class CameraFeed:
    """The newest pictures of one camera.

    Two may wait, so that a hitch shorter than a picture loses none. Where measuring is
    slower than the camera, the second would only make every sample later: once a picture
    was lost, the newest alone waits for the next ``CATCH_UP_S``.

    Parameters
    ----------
    source
        The camera.
    origin_s
        Reading of the clock at the session's time 0.
    open_with, condition_of
        How to open a camera and how to ask for its condition; others in tests.
    blank_is_none
        Whether pictures of one colour, before any other, count as none; by the system if None.
    """

    def __init__(
        self,
        source: CameraSource,
        origin_s: float,
        *,
        open_with: Callable[[CameraSource], CaptureLike] = open_capture,
        condition_of: Callable[[CameraSource], Condition | None] = cameras.condition,
        patience: Patience | None = None,
        blank_is_none: bool | None = None,
    ) -> None:
        self._blank_is_none = cameras.gives_blank_ones() if blank_is_none is None else blank_is_none
        self._source, self._origin_s = source, origin_s
        self._open, self._condition = open_with, condition_of
        self._patience = patience or Patience()
        self._changed = threading.Condition()
        self._closing = threading.Event()
        self._began_s = self._since_s = clock()
        self._call: tuple[str, float] | None = None
        self._state: Condition = (SourceState.opening, "")
        self._waiting: deque[Frame] = deque()
        self._lost_s = -math.inf
        self._grabbed = self._dropped = 0
        self._stamps: deque[float] = deque(maxlen=90)
        self._size = (0, 0)
        self._thread = threading.Thread(target=self._run, name="camera", daemon=True)
        self._thread.start()

    # --- for the measuring loop ---

    def get(self, timeout_s: float) -> Frame | None:
        """The next picture that waits; waits for one at most ``timeout_s``."""
        with self._changed:
            self._changed.wait_for(lambda: len(self._waiting) > 0, timeout_s)
            return self._waiting.popleft() if self._waiting else None

    @property
    def state(self) -> Condition:
        """State of the camera, with a few words."""
        now, call = clock(), self._call
        if call is not None and now - call[1] > self._patience.hanging_s:
            what = "takes long to open" if call[0] == "open" else "has stopped giving pictures"
            return SourceState.hanging, f"{self._called} {what}"
        running = self._state[0] is SourceState.running
        if running and now - self._since_s > self._patience.hanging_s:
            return SourceState.hanging, f"{self._called} has stopped giving pictures"
        return self._state

    @property
    def stuck(self) -> bool:
        """Whether a call into the driver has taken so long that it must be given up."""
        call = self._call
        if call is None:
            return False
        limit = self._patience.open_s if call[0] == "open" else self._patience.read_s
        return clock() - call[1] > limit

    def stats(self) -> SourceStats:
        """What the camera has given."""
        stamps = [s for s in list(self._stamps) if s > clock() - 2.5]
        rate = (len(stamps) - 1) / (stamps[-1] - stamps[0]) if len(stamps) > 2 else float("nan")
        return SourceStats(*self._size, rate, self._grabbed, self._dropped)

    def pause(self) -> None:
        """Nothing to do: a camera can't be held."""

    def go_on(self) -> None:
        """Drop what waited during a pause: it is old."""
        with self._changed:
            self._dropped += len(self._waiting)
            self._waiting.clear()

    def close(self, timeout_s: float = 1.0) -> None:
        """Let the camera go, if its driver lets us."""
        self._closing.set()
        self._thread.join(timeout_s)

    # --- the thread ---

    @property
    def _called(self) -> str:
        return self._source.name or f"camera {self._source.index}"

    def _run(self) -> None:
        while not self._closing.is_set():
            trouble = self._condition(self._source) or self._use()
            settling = clock() - self._began_s < self._patience.settle_s
            if not settling:
                self._state = trouble
            wait_s = self._patience.settle_retry_s if settling else self._patience.retry_s
            self._closing.wait(wait_s)

    def _use(self) -> Condition:
        """Open the camera and read it until it fails; gives the trouble."""
        capture = None
        try:
            self._call = ("open", clock())
            capture = self._open(self._source)
            self._call = None
            if not capture.isOpened():
                return self._condition(self._source) or cameras.closed_condition(self._source)
            gave = self._read(capture)
            trouble = self._condition(self._source)
            if trouble is not None:
                return trouble
            if gave:
                return SourceState.unplugged, f"{self._called} has stopped giving pictures"
            return cameras.mute_condition(self._source)
        except Exception as error:  # native libraries raise their own
            return SourceState.failed, f"{self._called}: {str(error).splitlines()[0]}"
        finally:
            self._call = None
            if capture is not None:
                capture.release()

    def _read(self, capture: CaptureLike) -> bool:
        """Read until reading fails for a while; whether there was any picture."""
        gave, good_s = False, clock()
        blank_since_s: float | None = None
        while not self._closing.is_set():
            self._call = ("read", clock())
            good = capture.grab()
            now = clock()
            image = None
            if good:
                good, image = capture.retrieve()
            self._call = None
            good = good and image is not None
            if good and not gave and self._blank_is_none and one_colour(image):
                # It answers, and may only be slow to wake.
                good_s = now
                blank_since_s = now if blank_since_s is None else blank_since_s
                if now - blank_since_s > self._patience.hanging_s:
                    self._state = cameras.mute_condition(self._source)
                if now - blank_since_s > self._patience.blank_s:
                    break
                self._closing.wait(0.01)
            elif good:
                if not gave:
                    take_room(np.asarray(image, np.uint8))
                gave, good_s = True, now
                self._publish(now, image)
            elif now - good_s > self._patience.failing_s:
                break
            else:
                self._closing.wait(0.01)
        return gave

    def _publish(self, now: float, image: Any) -> None:
        frame = Frame(self._grabbed, now - self._origin_s, np.asarray(image, dtype=np.uint8))
        with self._changed:
            room = 2 if now > self._lost_s + CATCH_UP_S else 1
            while len(self._waiting) >= room:
                self._waiting.popleft()
                self._dropped, self._lost_s = self._dropped + 1, now
                room = 1
            self._waiting.append(frame)
            self._grabbed += 1
            self._stamps.append(now)
            self._size = (int(image.shape[1]), int(image.shape[0]))
            self._since_s, self._state = now, (SourceState.running, "")
            self._changed.notify()
