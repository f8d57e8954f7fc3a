"""The measuring process: its own loop, from pictures to samples.

It is started by ``tracker.vision.service`` and imports the heavy libraries only
here. Everything it has to say goes through one pipe; when the other end of the
pipe is gone, it ends at once.
"""

from __future__ import annotations

import contextlib
import math
import os
import pickle
import queue
import signal
import sys
import threading
import time
from collections.abc import Callable
from multiprocessing.connection import Connection
from typing import Any, Protocol

from tracker.collector import spare_what_stays
from tracker.crash import leave_no_image
from tracker.errors import TurnpostError
from tracker.frame import Frame
from tracker.sample import Sample
from tracker.vision.messages import (
    Beat,
    Begin,
    CameraSource,
    ClipSource,
    Fit,
    FitFailed,
    Fitted,
    GivingUp,
    HoldSetup,
    Measured,
    Pulse,
    Ready,
    ShowPreview,
    SourceChanged,
    SourceState,
    SourceStats,
    Stop,
    WatchBody,
)
from tracker.vision.patience import PULSE_S
from tracker.vision.room import keep_room

#: Longest wait for a picture before orders are looked at again, and time between signs of
#: life (this project's own choice: far below the limits of ``service.Limits``).
LOOK_S = 0.05
BEAT_S = 0.25
#: So many frames in a row may fail in the measurer before a new process is asked
#: for (this project's own choice).
MAX_FAULTS = 10
#: Preview pictures at most, and while the measuring takes nearly all the time (a second has
#: so many; this project's own choice).
PREVIEW_S, SLOW_PREVIEW_S = 1 / 25, 1 / 5
#: Share of the time between frames above which the preview gives way (this project's own choice).
BUSY_SHARE = 0.8
#: With this variable set, what native libraries print stays on the terminal.
DEBUG_VARIABLE = "TURNPOST_DEBUG"


class Feed(Protocol):
    """A source of frames, as the loop uses it."""

    def get(self, timeout_s: float) -> Frame | None: ...  # noqa: D102
    @property
    def state(self) -> tuple[SourceState, str]: ...  # noqa: D102
    @property
    def stuck(self) -> bool: ...  # noqa: D102
    def stats(self) -> SourceStats: ...  # noqa: D102
    def pause(self) -> None: ...  # noqa: D102
    def go_on(self) -> None: ...  # noqa: D102
    def close(self) -> None: ...  # noqa: D102


def open_feed(begin: Begin) -> Feed:
    """Open the source of ``begin``.

    A source of another kind opens itself: ``source.open_feed(begin)``.
    """
    source = begin.source
    if isinstance(source, CameraSource):
        from tracker.vision.capture import CameraFeed

        return CameraFeed(source, begin.origin_s)
    if isinstance(source, ClipSource):
        from tracker.vision.playing import ClipFeed

        return ClipFeed(source, begin.resume)
    feed: Feed = source.open_feed(begin)
    return feed


def main(pipe: Connection, factory: bytes, preview: str, parent: int, bound: bool) -> None:
    """Run the measuring process to its end.

    Parameters
    ----------
    pipe
        Orders in, news out.
    factory
        The pickled factory of the measurer; unpickled here, so that what goes
        wrong with its imports can be told.
    preview
        Name of the shared memory for pictures.
    parent
        Process number of the program.
    bound
        Whether the system may end this process with the thread that started it.
    """
    leave_no_image()
    _keep_quiet()
    keep_room()
    _end_with_parent(parent, bound)
    orders: queue.SimpleQueue[Any] = queue.SimpleQueue()
    line = Line(pipe)
    threading.Thread(target=_listen, args=(line, orders), daemon=True).start()
    threading.Thread(target=_beat, args=(line,), daemon=True).start()
    worker: Worker | None = None
    try:
        worker = Worker(line, orders, preview)
        worker.load(factory)
        worker.run()
    except TurnpostError as error:
        _last_words(line, str(error), final=True)
    except (BrokenPipeError, EOFError, ConnectionError):
        pass  # the program is gone, or has let go of this process
    except Exception as error:
        _last_words(line, f"{type(error).__name__}: {_one_line(error)}", worker is None)
    if worker is not None:
        with contextlib.suppress(Exception):
            worker.close()
    # Native threads that hang would hold up an ordinary end.
    os._exit(0)


class Line:
    """The pipe to the program, shared by the work, the pulse and the taker of orders.

    ``rounds`` counts the rounds of the work, for the pulse.
    """

    def __init__(self, pipe: Connection) -> None:
        self._pipe = pipe
        self._one_at_a_time = threading.Lock()
        self.rounds = 0

    def send(self, message: Any) -> None:
        """Send one message."""
        with self._one_at_a_time:
            self._pipe.send(message)

    def receive(self) -> Any:
        """Wait for an order."""
        return self._pipe.recv()


class Worker:
    """The loop of the measuring process."""

    def __init__(self, line: Line, orders: queue.SimpleQueue[Any], preview: str) -> None:
        from tracker.vision.preview import Preview

        self._line, self._orders = line, orders
        self._preview = Preview(preview)
        self._show = False
        self._shown_s = self._beat_s = 0.0
        self._measurer: Any = None
        self._factory: Callable[..., Any] = _nothing
        self._feed: Feed | None = None
        self._told: tuple[SourceState, str] | None = None
        self._faults = 0
        self._load = 0.0
        self._last_s = 0.0
        self._known_s = -math.inf

    def load(self, factory: bytes) -> None:
        """Load libraries and models; afterwards this process is a warm spare."""
        from tracker.vision import capture, environment

        del environment  # imported so that OpenCV finds its variables, whoever loads it
        self._clock = capture.clock
        try:
            self._factory = pickle.loads(factory)
            self._measurer = self._factory()
        except TurnpostError:
            raise
        except Exception as error:
            raise _HopelessError(f"{type(error).__name__}: {_one_line(error)}") from error
        spare_what_stays()
        self._line.send(Ready())

    def run(self) -> None:
        """Obey and measure until told to stop."""
        while True:
            self._line.rounds += 1
            if not self._obey():
                return
            feed = self._feed
            if feed is None:
                continue
            frame = feed.get(LOOK_S)
            if frame is not None:
                self._take(frame)
            self._tell(feed)

    def close(self) -> None:
        """Let the source, the measurer and the memory go."""
        if self._feed is not None:
            self._feed.close()
        if self._measurer is not None:
            self._measurer.close()
        self._preview.close()

    def _obey(self) -> bool:
        """Carry out the orders that have come; False to end."""
        while True:
            try:
                # Before it begins, a spare waits here without using the processor.
                order = self._orders.get(block=self._feed is None)
            except queue.Empty:
                return True
            if isinstance(order, Stop):
                return False
            if isinstance(order, Begin):
                self._begin(order)
            elif isinstance(order, Fit):
                self._fit(order)
            elif isinstance(order, HoldSetup):
                self._hold_setup(order)
            elif isinstance(order, WatchBody):
                self._watch_body(order)
            elif isinstance(order, ShowPreview):
                self._show = order.on
                if not order.on:
                    self._preview.blank()

    def _begin(self, order: Begin) -> None:
        self._line.send(SourceChanged(SourceState.opening))
        if order.profile is not None:
            use = getattr(self._measurer, "use_profile", None)
            if use is not None:
                use(order.profile)
            else:
                self._measurer.close()
                self._measurer = self._factory(profile=order.profile)
        if order.resume is not None:
            self._known_s = order.resume.known_s
        self._feed = open_feed(order)

    def _watch_body(self, order: WatchBody) -> None:
        watch = getattr(self._measurer, "watch_body", None)
        if watch is not None:
            watch(order.on, order.every_s)

    def _hold_setup(self, order: HoldSetup) -> None:
        hold = getattr(self._measurer, "hold_setup", None)
        if hold is not None:
            hold(keep=order.keep, take=order.take)

    def _fit(self, order: Fit) -> None:
        feed = self._feed
        if feed is not None:
            feed.pause()
        try:
            measurer, steps, part = self._measurer, order.steps, order.part
            report = measurer.fit_again(steps, part) if part else measurer.fit(steps)
            self._line.send(Fitted(report))
        except TurnpostError as error:
            self._line.send(FitFailed(str(error)))
        except (BrokenPipeError, ConnectionError):
            raise
        except Exception as error:
            words = f"the set-up could not be used ({type(error).__name__}: {_one_line(error)})"
            self._line.send(FitFailed(words))
        if feed is not None:
            feed.go_on()

    def _take(self, frame: Frame) -> None:
        began_s = self._clock()
        known = frame.time_s <= self._known_s
        if not known:
            self._picture(frame, began_s)
        try:
            sample = self._measurer.take(frame)
            self._faults = 0
        except TurnpostError:
            raise
        except Exception:
            # One bad frame is a frame that was not measured; many are a broken measurer.
            self._faults += 1
            if self._faults > MAX_FAULTS:
                raise
            sample = Sample(frame.time_s, reason="gap")
        if known:
            return
        rough = (getattr(self._measurer, name, None) for name in ("facing_deg", "away_mm"))
        self._line.send(Measured(sample, *rough))
        spent_s, gap_s = self._clock() - began_s, max(began_s - self._last_s, 1e-6)
        self._load += 0.1 * (min(spent_s / gap_s, 2.0) - self._load)
        self._last_s = began_s

    def _picture(self, frame: Frame, now_s: float) -> None:
        """Put a small copy where the program sees it, if it wants one and there is time."""
        pause_s = SLOW_PREVIEW_S if self._load > BUSY_SHARE else PREVIEW_S
        if not self._show or now_s - self._shown_s < pause_s - 0.005:
            return
        from tracker.vision.opencv import cv2
        from tracker.vision.preview import preview_size

        height, width = frame.image.shape[:2]
        size = preview_size(width, height)
        small: Any = frame.image
        if size != (width, height):
            small = cv2.resize(frame.image, size, interpolation=cv2.INTER_AREA)
        self._preview.write(small)
        self._shown_s = now_s

    def _tell(self, feed: Feed) -> None:
        """Tell the state where it is another than before, and now and then that we live."""
        state = feed.state
        if state != self._told:
            self._told = state
            self._line.send(SourceChanged(*state))
        if feed.stuck:
            raise _StuckError(state[1] or "the source does not answer")
        now_s = self._clock()
        if now_s - self._beat_s > BEAT_S:
            self._beat_s = now_s
            self._line.send(Beat(feed.stats()))


class _HopelessError(TurnpostError):
    """Another process would fail in the same way."""


class _StuckError(Exception):
    """A call into a driver never came back."""

    def __str__(self) -> str:
        return str(self.args[0])


def _nothing() -> None:
    return None


def _beat(line: Line) -> None:
    """Let the program know that this process is given the processor, and what it does with it."""
    with contextlib.suppress(OSError, ValueError):
        while True:
            line.send(Pulse(line.rounds, time.process_time()))
            time.sleep(PULSE_S)


def _listen(line: Line, orders: queue.SimpleQueue[Any]) -> None:
    """Take orders as they come; end the process when nobody is left to give any."""
    while True:
        try:
            orders.put(line.receive())
        except (EOFError, OSError):
            os._exit(0)
        except Exception as error:  # an order that can't be read, e.g. a source of a lost module
            _last_words(line, f"{type(error).__name__}: {_one_line(error)}", final=True)
            os._exit(0)


def _last_words(line: Line, words: str, final: bool) -> None:
    with contextlib.suppress(OSError, ValueError):
        line.send(GivingUp(words, final))


def _one_line(error: Exception) -> str:
    return " ".join(str(error).split())[:300]


def _keep_quiet() -> None:
    """Leave Ctrl+C to the program, and the terminal to it, too: native libraries chatter."""
    with contextlib.suppress(ValueError):
        signal.signal(signal.SIGINT, signal.SIG_IGN)
    if os.environ.get(DEBUG_VARIABLE):
        return
    nowhere = os.open(os.devnull, os.O_WRONLY)
    for number in (1, 2):
        with contextlib.suppress(OSError):
            os.dup2(nowhere, number)
    os.close(nowhere)


def _end_with_parent(parent: int, bound: bool) -> None:
    """On Linux have the system end this process with the program, however that ends.

    The pipe does it, too, but not while native code holds Python's lock. The
    system's signal comes with the end of the *thread* that started us, so it is
    asked for only where that was the main thread.
    """
    if sys.platform != "linux":
        return
    if bound:
        import ctypes

        with contextlib.suppress(OSError, AttributeError):
            ctypes.CDLL(None).prctl(1, int(signal.SIGKILL), 0, 0, 0)  # 1: PR_SET_PDEATHSIG
    if os.getppid() != parent:
        os._exit(0)
