"""Jobs beside the window: their results, their errors, and where what they hold dies."""

from __future__ import annotations

import threading
import time

from ui import background


def test_what_a_job_gives_or_fails_with_is_kept() -> None:
    well, badly = background.run(lambda: 42), background.run(lambda: 1 // 0)
    for job in (well, badly):
        job.wait(5.0)
    assert well.done and well.result == 42 and well.error is None
    assert badly.done and isinstance(badly.error, ZeroDivisionError)


def test_what_a_job_works_with_dies_in_the_thread_that_starts_the_next() -> None:
    died: list[threading.Thread] = []

    class Window:
        def __del__(self) -> None:
            died.append(threading.current_thread())

        def work(self) -> None:
            time.sleep(0.05)

    background.run(Window().work).wait(5.0)
    assert died == []
    background.run(lambda: None).wait(5.0)
    assert died == [threading.current_thread()]
