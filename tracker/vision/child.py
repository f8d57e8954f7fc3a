"""One measuring process, seen from the program: never waits for it."""

from __future__ import annotations

import contextlib
import multiprocessing
import os
import queue
import signal
import threading
import time
from collections import deque
from collections.abc import Iterator
from multiprocessing.connection import Connection
from typing import Any

from tracker.vision import worker
from tracker.vision.messages import Pulse, Ready, Stop
from tracker.vision.patience import Patience

#: News kept for a program that doesn't ask; above it the child has to wait (this
#: project's own choice: nearly three minutes of pictures).
MAX_WAITING = 5000


class Child:
    """A measuring process with a thread for its news and one for its orders.

    A pipe to a process that stops in the middle of a message would hold up who
    reads it; here that is a thread, and never the window.

    Parameters
    ----------
    factory
        The pickled factory of the measurer.
    preview
        Name of the shared memory for pictures.
    """

    def __init__(self, factory: bytes, preview: str) -> None:
        context = multiprocessing.get_context("spawn")
        ours, theirs = context.Pipe()
        bound = threading.current_thread() is threading.main_thread()
        self._process: Any = context.Process(
            target=worker.main,
            args=(theirs, factory, preview, os.getpid(), bound),
            name="turnpost-measuring",
            daemon=True,
        )
        with _ctrl_c_held():
            self._process.start()
        theirs.close()
        self._pipe: Connection = ours
        self._news: deque[tuple[float, Any]] = deque()
        self._orders: queue.SimpleQueue[Any] = queue.SimpleQueue()
        self._letting_go = self._cleared = False
        self.closed = False
        self.ready = False
        self.started_s = self.heard_s = time.perf_counter()
        self.patience = Patience(self.started_s)
        self._threads = [
            threading.Thread(target=self._listen, name="measuring-news", daemon=True),
            threading.Thread(target=self._speak, name="measuring-orders", daemon=True),
        ]
        for thread in self._threads:
            thread.start()

    @property
    def pid(self) -> int:
        """Number of the process."""
        return int(self._process.pid)

    def tell(self, order: Any) -> None:
        """Give an order; returns at once."""
        self._orders.put(order)

    def news(self) -> Iterator[tuple[float, Any]]:
        """What has come in since the last call, each with the clock's reading at its arrival."""
        # What is being added meanwhile belongs to the next call.
        for _ in range(len(self._news)):
            yield self._news.popleft()

    @property
    def drained(self) -> bool:
        """Whether the process has ended (or let the pipe go) and all its news were taken."""
        return self.closed and not self._news

    def end(self, deadline_s: float) -> None:
        """Ask it to stop; by ``deadline_s`` of the clock end it, however that must be done."""
        self.tell(Stop())
        self._letting_go = True
        left_s = max(0.0, deadline_s - time.perf_counter())
        self._process.join(left_s * 0.6)
        if self._process.is_alive():
            self._process.terminate()
            self._process.join(left_s * 0.15)
        self.kill()
        self.reap(max(0.05, deadline_s - time.perf_counter()))

    def kill(self) -> None:
        """End it now; returns at once."""
        self._letting_go = True
        if self._cleared:
            return
        if self._process.is_alive():
            self._process.kill()
        self._orders.put(None)

    def reap(self, timeout_s: float = 0.0) -> bool:
        """Clear away what is left of an ended process; True once nothing is."""
        if self._cleared:
            return True
        deadline_s = time.perf_counter() + timeout_s
        self._process.join(timeout_s)
        for thread in self._threads:
            thread.join(max(0.0, deadline_s - time.perf_counter()))
        if self._process.is_alive() or any(t.is_alive() for t in self._threads):
            return False
        self._pipe.close()
        self._process.close()
        self._cleared = True
        return True

    def _listen(self) -> None:
        while True:
            try:
                message = self._pipe.recv()
            except Exception:  # ended, broken off in mid-message, or not to be read
                break
            at_s = time.perf_counter()
            if isinstance(message, Pulse):
                # It says how the process is, not that its work goes on: no news.
                self.patience.pulse(at_s, message.rounds, message.cpu_s)
                continue
            self.heard_s = at_s
            if isinstance(message, Ready):
                self.ready = True
            self._news.append((at_s, message))
            while len(self._news) > MAX_WAITING and not self._letting_go:
                time.sleep(0.02)
        self.closed = True
        self._orders.put(None)

    def _speak(self) -> None:
        while (order := self._orders.get()) is not None:
            try:
                self._pipe.send(order)
            except (OSError, ValueError):
                return


@contextlib.contextmanager
def _ctrl_c_held() -> Iterator[None]:
    """Start a process to which Ctrl+C means nothing, not even while it starts (POSIX)."""
    if not hasattr(signal, "pthread_sigmask"):
        yield
        return
    before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, before)
