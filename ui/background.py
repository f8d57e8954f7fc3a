"""Jobs beside the window: a thread each, never more than a few, always ended."""

from __future__ import annotations

import threading
from collections.abc import Callable
from typing import Any

from ui.ports import Job


def run(work: Callable[[], Any]) -> Job:
    """Start ``work`` in a thread of its own; its error is kept, not lost."""
    job = Job()

    def body() -> None:
        try:
            job.result = work()
        except Exception as error:  # handed to whoever collects the job
            job.error = error
        job.done = True

    thread = threading.Thread(target=body, name="turnpost-job", daemon=True)
    job.wait = thread.join
    thread.start()
    return job
