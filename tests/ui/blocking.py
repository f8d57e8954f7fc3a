"""How long a window stands still by the clock, less the time for which others had the processor.

Of one stretch of standing still at most one wait is taken off: that of the window's own thread,
or that of the X server that it waits for, whichever is longer. Waits of several threads pass at
the same time, so their sum would hide a block.
"""

from __future__ import annotations

import contextlib
import os
import threading
import time
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject, Qt, QTimer

#: Spacing of the looks.
PULSE_MS = 2


def screen_server() -> list[Path]:
    """What tells the wait of the X server that shows our windows, where it is Xvfb."""
    shown = os.environ.get("DISPLAY", "").split(".")[0].encode()
    found = []
    for process in Path("/proc").glob("[0-9]*"):
        with contextlib.suppress(OSError):
            called, *words = (process / "cmdline").read_bytes().split(b"\0")
            if called.endswith(b"Xvfb") and shown in words:
                found.append(process / "schedstat")
    return found


def this_thread() -> Path:
    """What tells the wait of the thread that asks (Linux)."""
    return Path(f"/proc/self/task/{threading.get_native_id()}/schedstat")


def _ran_and_waited_s(told: Path) -> tuple[float, float]:
    """How long a thread has run, and was ready while others had the processor; 0 if not told."""
    with contextlib.suppress(OSError):
        ran, waited, *_ = told.read_text().split()
        return int(ran) / 1e9, int(waited) / 1e9
    return 0.0, 0.0


@dataclass(frozen=True, slots=True)
class Moment:
    """Readings of the clocks, in seconds: the time, the window's thread, and the X server."""

    at_s: float
    ran_s: float
    waited_s: float
    server_waited_s: float = 0.0

    @classmethod
    def now(cls, mine: Path, servers: Sequence[Path]) -> Moment:
        """What the clocks say now."""
        waited = [_ran_and_waited_s(server)[1] for server in servers]
        return cls(time.monotonic(), *_ran_and_waited_s(mine), sum(waited))

    def stands_still_s(self, later: Moment) -> tuple[float, float]:
        """The time until ``later``, and the same less the longest single wait in it."""
        gap_s = later.at_s - self.at_s
        ran_s, waited_s = later.ran_s - self.ran_s, later.waited_s - self.waited_s
        # Who waits for the server sleeps; while the window runs, nothing waits for it.
        asleep_s = max(gap_s - ran_s - waited_s, 0.0)
        server_s = min(later.server_waited_s - self.server_waited_s, asleep_s)
        return gap_s, gap_s - max(waited_s, server_s)


class Gauge(QObject):
    """Looks at the loop of the window, in whose thread it is made, as often as it comes around.

    That another thread of the program has Python's lock is no wait for the processor, and stays
    in, even where that thread waits for the processor meanwhile.

    Attributes
    ----------
    whole_s, own_s
        The longest time between two looks; the longest, each less the longest single wait in it.
    """

    def __init__(self) -> None:
        super().__init__()
        self.whole_s = self.own_s = 0.0
        self._mine, self._servers = this_thread(), screen_server()
        self._timer = QTimer(self)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self._look)
        self._before = self._now()
        self._timer.start(PULSE_MS)

    def _now(self) -> Moment:
        return Moment.now(self._mine, self._servers)

    def _look(self) -> None:
        now = self._now()
        gap_s, own_s = self._before.stands_still_s(now)
        self.whole_s, self.own_s = max(self.whole_s, gap_s), max(self.own_s, own_s)
        self._before = now

    def forget(self) -> None:
        """Begin anew: what was until now is not looked at."""
        self._before = self._now()
        self.whole_s = self.own_s = 0.0

    def stop(self) -> None:
        """Look a last time."""
        self._look()
        self._timer.stop()
