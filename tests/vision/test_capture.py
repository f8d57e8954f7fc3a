"""The newest picture of a camera, and what is said of one that gives none.

No camera is needed: captures are made up. What real drivers answer was never seen by
these tests.
"""

from __future__ import annotations

import itertools
import threading
import time
from collections.abc import Callable
from typing import Any

import numpy as np
import pytest

from tracker.frame import Frame
from tracker.vision import cameras, capture
from tracker.vision.capture import CameraFeed, Patience, one_colour
from tracker.vision.messages import CameraSource, SourceState

pytestmark = pytest.mark.alone


class FakeCapture:
    """A camera at a rate; fails or hangs from a picture on."""

    def __init__(
        self,
        opened: bool = True,
        rate_hz: float = 200.0,
        fail_from: int = 10**9,
        hang: threading.Event | None = None,
        hang_from: int = 10**9,
    ) -> None:
        self._opened, self._rate_hz = opened, rate_hz
        self._fail_from, self._hang, self._hang_from = fail_from, hang, hang_from
        self.k = 0
        self.released = False
        self.asked: list[tuple[int, float]] = []

    def isOpened(self) -> bool:
        return self._opened

    def set(self, what: int, value: float) -> None:
        self.asked.append((what, value))

    def grab(self) -> bool:
        self.k += 1
        if self.k >= self._hang_from and self._hang is not None:
            self._hang.wait(30)
            return False
        if self.k >= self._fail_from:
            return False
        time.sleep(1 / self._rate_hz)
        return True

    def retrieve(self) -> tuple[bool, Any]:
        return True, np.full((120, 160, 3), self.k % 256, np.uint8)

    def release(self) -> None:
        self.released = True


class BlankCapture(FakeCapture):
    """One some of whose pictures are of one colour, plain green, and the others grainy."""

    def __init__(self, blank: range = range(10**9)) -> None:
        super().__init__()
        self._blank = blank

    def retrieve(self) -> tuple[bool, Any]:
        image = np.full((120, 160, 3), (0, 135, 0), np.uint8)
        image[::2, :, 1] += self.k not in self._blank
        return True, image


QUICK = Patience(
    hanging_s=0.2,
    open_s=0.5,
    read_s=0.5,
    failing_s=0.05,
    blank_s=0.6,
    retry_s=0.05,
    settle_s=0,
    settle_retry_s=0,
)


def feed_of(
    *captures: FakeCapture,
    condition: Callable[[], cameras.Condition | None] = lambda: None,
    blank_is_none: bool = False,
) -> CameraFeed:
    waiting = list(captures)

    def open_with(_: CameraSource) -> FakeCapture:
        return waiting.pop(0) if len(waiting) > 1 else waiting[0]

    return CameraFeed(
        CameraSource(0, "Webcam"),
        capture.clock(),
        open_with=open_with,
        condition_of=lambda _: condition(),
        patience=QUICK,
        blank_is_none=blank_is_none,
    )


def until(reached: Callable[[], bool], limit_s: float = 5.0) -> None:
    end_s = time.perf_counter() + limit_s
    while not reached():
        assert time.perf_counter() < end_s
        time.sleep(0.005)


def test_newest_picture_wins_and_the_rest_is_counted() -> None:
    camera = FakeCapture()
    feed = feed_of(camera)
    got = []
    for _ in range(8):
        frame = feed.get(1.0)
        assert frame is not None
        got.append(frame)
        time.sleep(0.03)  # measuring takes longer than the camera's 5 ms
    stats = feed.stats()
    feed.close()
    assert camera.released
    # The picture's own number, counted from 1, is that of its frame: nothing old was kept.
    assert all(f.image[0, 0, 0] == (f.index + 1) % 256 for f in got)
    missing = sum(b.index - a.index - 1 for a, b in itertools.pairwise(got))
    assert missing > 8 and stats.dropped >= missing
    assert np.all(np.diff([f.time_s for f in got]) > 0)
    assert 60 < stats.rate_hz < 210 and (stats.width_px, stats.height_px) == (160, 120)


class Handed:
    """A camera that gives a picture when it is told to."""

    def __init__(self) -> None:
        self._given = threading.Semaphore(0)
        self.k, self.now_s = 0, 0.0

    def give(self, feed: CameraFeed, count: int) -> None:
        before = feed.stats().frames
        for _ in range(count):
            self._given.release()
        until(lambda: feed.stats().frames == before + count)

    def isOpened(self) -> bool:
        return True

    def grab(self) -> bool:
        given = self._given.acquire(timeout=0.02)
        self.now_s += 0.001 * given
        return given

    def retrieve(self) -> tuple[bool, Any]:
        self.k += 1
        return True, np.full((4, 4, 3), self.k, np.uint8)

    def release(self) -> None: ...


def test_a_hitch_loses_no_picture_and_after_a_loss_the_newest_alone_waits(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    camera = Handed()
    monkeypatch.setattr(capture, "clock", lambda: camera.now_s)
    feed = CameraFeed(
        CameraSource(0, "handed"),
        0.0,
        open_with=lambda _: camera,
        condition_of=lambda _: None,
        patience=Patience(failing_s=1e9),
    )

    def waiting() -> list[int]:
        got = []
        while (frame := feed.get(0.0)) is not None:
            got.append(int(frame.image[0, 0, 0]))
        return got

    camera.give(feed, 2)
    assert waiting() == [1, 2] and feed.stats().dropped == 0
    camera.give(feed, 4)
    assert waiting() == [6] and feed.stats().dropped == 3
    # Measuring is too slow: a second one that waits would only be later.
    camera.now_s += 0.9 * capture.CATCH_UP_S
    camera.give(feed, 2)
    assert waiting() == [8] and feed.stats().dropped == 4
    camera.now_s += 1.1 * capture.CATCH_UP_S
    camera.give(feed, 2)
    assert waiting() == [9, 10] and feed.stats().dropped == 4
    camera.give(feed, 1)
    feed.go_on()
    assert waiting() == [] and feed.stats().dropped == 5
    feed.close()


def test_states_of_a_camera_that_stops_and_comes_back() -> None:
    troubles: list[cameras.Condition | None] = [None]
    feed = feed_of(FakeCapture(fail_from=20), FakeCapture(), condition=lambda: troubles[0])
    until(lambda: feed.state[0] is SourceState.running)
    first = feed.get(1.0)
    troubles[0] = (SourceState.unplugged, "Webcam is gone")
    until(lambda: feed.state[0] is SourceState.unplugged)
    troubles[0] = None
    until(lambda: feed.state[0] is SourceState.running)
    feed.go_on()
    later = feed.get(1.0)
    feed.close()
    assert first is not None and later is not None
    assert later.time_s > first.time_s and later.index > first.index


def test_busy_then_free() -> None:
    troubles: list[cameras.Condition | None] = [(SourceState.busy, "Webcam is in use")]
    feed = feed_of(FakeCapture(), condition=lambda: troubles[0])
    until(lambda: feed.state == (SourceState.busy, "Webcam is in use"))
    assert feed.get(0.05) is None
    troubles[0] = None
    until(lambda: feed.get(0.1) is not None)
    feed.close()


def test_camera_that_hangs_while_it_is_read() -> None:
    free = threading.Event()
    feed = feed_of(FakeCapture(hang=free, hang_from=5))
    until(lambda: feed.state[0] is SourceState.running)
    until(lambda: feed.state[0] is SourceState.hanging)
    assert not feed.stuck
    until(lambda: feed.stuck)
    free.set()
    feed.close()


def test_camera_that_hangs_while_it_opens() -> None:
    free = threading.Event()

    def open_with(_: CameraSource) -> FakeCapture:
        free.wait(30)
        return FakeCapture(opened=False)

    feed = CameraFeed(
        CameraSource(0), 0.0, open_with=open_with, condition_of=lambda _: None, patience=QUICK
    )
    assert feed.state[0] is SourceState.opening
    until(lambda: feed.state == (SourceState.hanging, "camera 0 takes long to open"))
    until(lambda: feed.stuck)
    free.set()
    feed.close()


def test_camera_that_opens_and_gives_nothing() -> None:
    feed = feed_of(FakeCapture(fail_from=0))
    until(lambda: feed.state[0] not in (SourceState.opening, SourceState.running))
    assert feed.state == cameras.mute_condition(CameraSource(0, "Webcam"))
    feed.close()


@pytest.mark.parametrize("blank_is_none", [True, False])
def test_camera_that_gives_pictures_of_one_colour(blank_is_none: bool) -> None:
    """As one that another program has does on Windows; where it doesn't, it is a dark picture."""
    feed = feed_of(BlankCapture(), blank_is_none=blank_is_none)
    if blank_is_none:
        until(lambda: feed.state[0] not in (SourceState.opening, SourceState.running))
        assert feed.state == cameras.mute_condition(CameraSource(0, "Webcam"))
        assert feed.get(0.05) is None
    else:
        until(lambda: feed.get(0.1) is not None)
    feed.close()


def test_a_camera_that_goes_dark_later_goes_on() -> None:
    feed = feed_of(BlankCapture(range(5, 10**9)), blank_is_none=True)
    until(lambda: feed.stats().frames > 20)
    assert feed.state[0] is SourceState.running
    feed.close()


class Waking(BlankCapture):
    """One of 30 pictures a second by its own clock, the first of which are of one colour."""

    def __init__(self, blank_s: float) -> None:
        super().__init__(range(1, round(30 * blank_s) + 1))
        self.now_s, self.opened = 0.0, 0
        self.seen: list[tuple[float, SourceState]] = []
        self.feed: CameraFeed | None = None
        self.taken = threading.Event()

    def open(self, _: CameraSource) -> Waking:
        self.opened += 1
        return self

    def grab(self) -> bool:
        time.sleep(0.002)
        if self.feed is not None:
            self.seen.append((self.now_s, self.feed.state[0]))
        if self.k > 0 and self.k not in self._blank:
            # Nothing comes after the first real picture until it is taken.
            self.taken.wait(30.0)
        self.k += 1
        self.now_s += 1 / 30
        return True


def woken(monkeypatch: pytest.MonkeyPatch, blank_s: float) -> tuple[Waking, Frame]:
    """A camera with the usual patience, and its first picture."""
    camera = Waking(blank_s)
    monkeypatch.setattr(capture, "clock", lambda: camera.now_s)
    feed = camera.feed = CameraFeed(
        CameraSource(0, "Webcam"),
        0.0,
        open_with=camera.open,
        condition_of=lambda _: None,
        blank_is_none=True,
    )
    first = feed.get(30.0)
    assert first is not None and feed.state[0] is SourceState.running
    camera.taken.set()
    feed.close()
    return camera, first


@pytest.mark.parametrize("blank_s", [0.8, 1.9, 4.0, 7.5])
def test_a_camera_that_wakes_with_blank_pictures_is_opened_once(
    monkeypatch: pytest.MonkeyPatch, blank_s: float
) -> None:
    """What it may be is said once it takes long; the first real picture is taken at once."""
    camera, first = woken(monkeypatch, blank_s)
    assert camera.opened == 1
    assert first.index == 0 and not one_colour(first.image)
    assert first.time_s == pytest.approx(blank_s + 1 / 30, abs=0.02)
    unsaid = cameras.mute_condition(CameraSource(0, "Webcam"))[0]
    for at_s, state in camera.seen:
        if at_s < min(blank_s, 2.0):
            assert state is SourceState.opening
        elif 2.1 < at_s < blank_s:
            assert state is unsaid


def test_a_camera_that_stays_blank_is_opened_anew_in_the_end(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    camera, first = woken(monkeypatch, 11.0)
    assert camera.opened == 2 and camera.released
    assert first.index == 0 and not one_colour(first.image)


@pytest.mark.parametrize("colour", [(0, 0, 0), (0, 135, 0), (16, 128, 128)])
def test_one_colour_is_told_from_a_grainy_picture(colour: tuple[int, int, int]) -> None:
    image = np.full((480, 640, 3), colour, np.uint8)
    assert one_colour(image)
    image[333, 77, 2] += 1
    assert not one_colour(image)


def test_library_that_raises_is_a_failure_in_one_line() -> None:
    def open_with(_: CameraSource) -> FakeCapture:
        raise RuntimeError("no such thing\nat line 7")

    feed = CameraFeed(
        CameraSource(0), 0.0, open_with=open_with, condition_of=lambda _: None, patience=QUICK
    )
    until(lambda: feed.state[0] is SourceState.failed)
    assert feed.state[1] == "camera 0: no such thing"
    feed.close()


def test_a_camera_just_let_go_by_another_process_is_not_called_busy_at_once() -> None:
    patience = Patience(settle_s=0.4, settle_retry_s=0.05, retry_s=0.05)
    feed = CameraFeed(
        CameraSource(0),
        0.0,
        open_with=lambda _: FakeCapture(),
        condition_of=lambda _: (SourceState.busy, "in use"),
        patience=patience,
    )
    time.sleep(0.15)
    assert feed.state[0] is SourceState.opening
    until(lambda: feed.state[0] is SourceState.busy)
    feed.close()


def test_compressed_pictures_are_asked_for_before_the_size() -> None:
    import cv2

    camera = FakeCapture()
    capture.settings(camera, CameraSource(0, width=1280, height=720, rate_hz=30))
    order = [what for what, _ in camera.asked]
    assert order[0] == cv2.CAP_PROP_FOURCC
    assert order.index(cv2.CAP_PROP_FRAME_WIDTH) > 0
    assert (cv2.CAP_PROP_BUFFERSIZE, 1) in camera.asked
    backends = {capture.backend(p) for p in ("linux", "darwin", "win32")}
    assert backends == {cv2.CAP_V4L2, cv2.CAP_AVFOUNDATION, cv2.CAP_MSMF}
