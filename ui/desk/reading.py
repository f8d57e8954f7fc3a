"""Reading a folder beside the window, with progress, a stop, and a look for changes."""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

from tracker.records.index import Records, read_folder
from tracker.records.people import Person, people_of
from ui import background


@dataclass(frozen=True, slots=True)
class Found:
    """What a folder holds, and its people in order."""

    records: Records
    people: list[Person]
    to_day: date


class FolderReading:
    """One folder, read by a thread; look at it with :meth:`poll`.

    Parameters
    ----------
    folder
        The folder.
    today
        Gives the day up to which practice is counted.
    """

    def __init__(self, folder: Path, today: Callable[[], date] = date.today) -> None:
        self.folder, self._today = folder, today
        self.done, self.of = 0, 0
        self.error: Exception | None = None
        self._stop = threading.Event()
        self._job: Any = None
        self._shown: tuple[Any, ...] | None = None

    @property
    def busy(self) -> bool:
        """Whether it is being read now."""
        return self._job is not None

    def start(self) -> None:
        """Read it, or look what has changed; nothing happens while that goes on."""
        if self._job is None:
            self.done, self.of, self.error = 0, 0, None
            self._stop.clear()
            self._job = background.run(self._read)

    def stop(self) -> None:
        """Stop after the file that is being read; what was read is kept."""
        self._stop.set()

    def poll(self) -> Found | None:
        """What was found, once it has been read and if it isn't what was found before."""
        job = self._job
        if job is None or not job.done:
            return None
        self._job = None
        if job.error is not None:
            self.error = job.error
            return None
        found: Found = job.result
        seen = (found.records.fingerprint, found.records.complete, found.to_day)
        if seen == self._shown:
            return None
        self._shown = seen
        return found

    def close(self, timeout_s: float = 3.0) -> None:
        """End the thread."""
        self.stop()
        if self._job is not None:
            self._job.wait(timeout_s)

    def _read(self) -> Found:
        def progress(done: int, of: int) -> None:
            self.done, self.of = done, of

        records = read_folder(self.folder, progress=progress, stopped=self._stop.is_set)
        people = people_of(records, self._today())
        to_day = people[0].adherence.to_day if people else self._today()
        return Found(records, people, to_day)
