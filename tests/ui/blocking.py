"""How long a window stands still by the clock, less the time for which others had the processor."""

from __future__ import annotations

import contextlib
import os
import time
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QObject, Qt, QTimer

#: Spacing of the looks.
PULSE_MS = 2
#: The threads of this process. Not the window's alone: while another one of ours has Python's
#: lock, and others the processor that it needs, the window waits for both.
_THREADS = Path("/proc/self/task")


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


def waits(also: Sequence[Path] = ()) -> dict[str, int]:
    """For how long each thread of ours was ready while others had the processor, ns (Linux).

    ``also`` are further threads that the window waits for: those of the X server.
    """
    found = {}
    for told in (*_THREADS.glob("*/schedstat"), *also):
        with contextlib.suppress(OSError):
            found[told.parent.name] = int(told.read_text().split()[1])
    return found


class Gauge(QObject):
    """Looks at the window's loop as often as it comes around.

    That another thread of the program has Python's lock is no wait for the processor, and stays
    in.

    Attributes
    ----------
    whole_s, own_s
        The longest time between two looks; the longest, each less the wait in it.
    """

    def __init__(self) -> None:
        super().__init__()
        self.whole_s = self.own_s = 0.0
        self._also = screen_server()
        self._timer = QTimer(self)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self._look)
        self._before = (time.monotonic(), waits(self._also))
        self._timer.start(PULSE_MS)

    def _look(self) -> None:
        now = (time.monotonic(), waits(self._also))
        gap_s = now[0] - self._before[0]
        self.whole_s = max(self.whole_s, gap_s)
        before = self._before[1]
        waited_s = sum(v - before.get(k, v) for k, v in now[1].items()) / 1e9
        self.own_s = max(self.own_s, gap_s - waited_s)
        self._before = now

    def forget(self) -> None:
        """Begin anew: what was until now is not looked at."""
        self._before = (time.monotonic(), waits(self._also))
        self.whole_s = self.own_s = 0.0

    def stop(self) -> None:
        """Look a last time."""
        self._look()
        self._timer.stop()
