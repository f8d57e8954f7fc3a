"""Jobs beside the window: a thread each, never more than a few, always ended."""

from __future__ import annotations

import sys
import threading
from collections.abc import Callable
from typing import Any

from ui.ports import Job

#: A job that reckons keeps Python's lock so long at a time. The window takes the lock anew after
#: each call into Qt, a dozen times to draw itself: at Python's own 5 ms it stood still for 70.
SWITCH_S = 0.0005


#: Jobs, and what they work with. A thread that ended last would be the one in which that dies,
#: a window among it perhaps; it waits here for the next job, which the window's thread starts.
_held: list[tuple[threading.Thread, Callable[[], Any]]] = []


def run(work: Callable[[], Any]) -> Job:
    """Start ``work`` in a thread of its own; its error is kept, not lost."""
    job = Job()
    sys.setswitchinterval(SWITCH_S)
    _held[:] = [held for held in _held if held[0].is_alive()]

    def body() -> None:
        try:
            job.result = work()
        except Exception as error:  # handed to whoever collects the job
            job.error = error
        job.done = True

    thread = threading.Thread(target=body, name="turnpost-job", daemon=True)
    job.wait = thread.join
    thread.start()
    _held.append((thread, work))
    return job
