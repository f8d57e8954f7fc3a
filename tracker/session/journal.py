"""The journal: everything of a session, appended as it happens.

One JSON object a line, its kind under ``kind``. Summary, trace and stage log are
projections of it. A writer thread of its own puts the lines on disk at least
once a second, so that a slow disk never slows measuring; reading puts up with a
half last line and with foreign bytes.

============ ==============================================================
kind         what it holds
============ ==============================================================
``session``  format, version and what is known of the session
``step``     ``number`` and the step, as in a stage log
``sample``   ``v``: the values of a trace row without its text columns, null
             where not measured; ``step`` and ``reason`` where not empty
``turn``     ``number`` of its step and the turn
``event``    ``number`` of its step, ``id`` and the event; a later record
             with the same ``id`` takes the place of an earlier one
``setup``    ``from_s``, ``found`` and ``notes``: a set-up that holds from then on
``answer``   ``about`` and ``value``: what the patient answered; ``number`` of
             the step that it belongs to, if it belongs to one
``mark``     ``name`` and ``time_s``: anything else worth a place in time
``end``      ``time_s`` and ``ended``
============ ==============================================================
"""

from __future__ import annotations

import json
import os
import queue
import threading
from collections.abc import Iterator
from dataclasses import dataclass, field
from math import isfinite, nan
from pathlib import Path
from types import TracebackType
from typing import Any, Protocol

from tracker.errors import InputError, RunError
from tracker.sample import TEXT_COLUMNS, TRACE_COLUMNS, Sample

FORMAT = "turnpost-journal"
FORMAT_VERSION = 1

Record = dict[str, Any]
NUMBER_COLUMNS = tuple(c for c in TRACE_COLUMNS if c not in TEXT_COLUMNS)

#: Issue 7: everything is on disk within a second; half of that leaves room for a slow disk.
SYNC_S = 0.5
#: Bounds of what is read: a line, a whole file (four hours at 60 frames/s are 400 MB at most).
MAX_LINE_BYTES = 1_000_000
MAX_FILE_BYTES = 1_000_000_000
#: Records that wait at most for a disk that doesn't take them (ten minutes at 60 frames/s).
MAX_WAITING = 40_000


class Journal(Protocol):
    """Where records go; never blocks."""

    def append(self, record: Record) -> None:
        """Take one record."""


class MemoryJournal:
    """Keeps its records in memory, for clips and traces."""

    def __init__(self) -> None:
        self.records: list[Record] = []

    def append(self, record: Record) -> None:
        """Take one record."""
        self.records.append(record)

    def content(self) -> JournalContent:
        """What it holds so far."""
        return JournalContent(list(self.records))


class FileJournal:
    """Appends records to a file from a thread of its own.

    Parameters
    ----------
    path
        The file; an existing one is appended to.

    Raises
    ------
    RunError
        If it can't be opened.
    """

    def __init__(self, path: Path) -> None:
        try:
            handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600)
        except OSError as error:
            raise RunError(f"{path}: can't be written ({error.strerror})") from error
        self.path = path
        self._handle = handle
        self._queue: queue.SimpleQueue[Record | None] = queue.SimpleQueue()
        self._waiting = b""
        self._waiting_count = 0
        self._fault: str = ""
        self._lost = 0
        self._closed = False
        self._thread = threading.Thread(target=self._run, name="journal", daemon=True)
        self._thread.start()

    @property
    def fault(self) -> str:
        """Why the disk doesn't take the records at the moment, or empty."""
        return self._fault

    @property
    def lost(self) -> int:
        """Records given up because the disk didn't take them for too long."""
        return self._lost

    def append(self, record: Record) -> None:
        """Take one record; returns at once."""
        if not self._closed:
            self._queue.put(record)

    def close(self, timeout_s: float = 5.0) -> None:
        """Put everything on disk and end the thread."""
        if self._closed:
            return
        self._closed = True
        self._queue.put(None)
        self._thread.join(timeout_s)
        if not self._thread.is_alive():
            os.close(self._handle)

    def __enter__(self) -> FileJournal:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        value: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    def _run(self) -> None:
        open_ended = True
        while open_ended:
            lines, open_ended = self._gather()
            self._waiting_count += len(lines)
            self._waiting += b"".join(lines)
            self._write()

    def _gather(self) -> tuple[list[bytes], bool]:
        """Records of the next half second, as lines; False when the journal was closed."""
        import time

        lines: list[bytes] = []
        until_s = time.monotonic() + SYNC_S
        while (left_s := until_s - time.monotonic()) > 0:
            try:
                record = self._queue.get(timeout=left_s)
            except queue.Empty:
                break
            if record is None:
                return lines, False
            lines.append(encode(record))
        return lines, True

    def _write(self) -> None:
        """Write what waits; what the disk doesn't take is tried again later."""
        if not self._waiting:
            return
        try:
            while self._waiting:
                done = os.write(self._handle, self._waiting)
                self._waiting = self._waiting[done:]
            os.fsync(self._handle)
        except OSError as error:
            self._fault = error.strerror or type(error).__name__
            if self._waiting_count > MAX_WAITING:
                self._lost += self._waiting_count
                self._waiting, self._waiting_count = b"\n", 0
            return
        self._fault = ""
        self._waiting_count = 0


def encode(record: Record) -> bytes:
    """One line."""
    text = json.dumps(record, separators=(",", ":"), ensure_ascii=False, allow_nan=False)
    return text.encode("utf-8", errors="replace") + b"\n"


@dataclass(frozen=True, slots=True)
class JournalContent:
    """The records of a journal.

    Attributes
    ----------
    records
        In the order in which they were written.
    damaged_lines
        Lines that could not be read.
    """

    records: list[Record]
    damaged_lines: int = 0
    _by_kind: dict[str, list[Record]] = field(default_factory=dict, repr=False, compare=False)

    def of(self, kind: str) -> list[Record]:
        """Records of one kind."""
        if not self._by_kind:
            for record in self.records:
                self._by_kind.setdefault(record["kind"], []).append(record)
        return self._by_kind.get(kind, [])

    def last_of_each(self, kind: str) -> list[Record]:
        """Records of one kind, of those with the same ``id`` the last."""
        return list({r.get("id"): r for r in self.of(kind)}.values())

    @property
    def ended(self) -> str:
        """How the session ended; ``interrupted`` where the journal breaks off."""
        ends = self.of("end")
        return str(ends[-1].get("ended", "interrupted")) if ends else "interrupted"


def read_journal(path: Path) -> JournalContent:
    """Read a journal, passing over what is damaged.

    Raises
    ------
    InputError
        If it can't be read, is no journal, or is of a newer version.
    """
    try:
        if path.stat().st_size > MAX_FILE_BYTES:
            raise InputError(f"{path}: too large for a journal")
        with path.open("rb") as file:
            rows = list(_records(file))
    except OSError as error:
        raise InputError(f"{path}: can't be read ({error.strerror})") from error
    records = [r for r in rows if r is not None]
    heads = [r for r in records if r["kind"] == "session"]
    if not heads or heads[0].get("format") != FORMAT:
        raise InputError(f"{path}: is no journal of a session")
    version = heads[0].get("format_version")
    if not isinstance(version, int) or version > FORMAT_VERSION:
        raise InputError(f"{path}: was written by a newer version of this program; update it")
    return JournalContent(records, len(rows) - len(records))


def _records(file: Any) -> Iterator[Record | None]:
    while line := file.readline(MAX_LINE_BYTES + 1):
        if not line.strip():
            continue
        yield _decode(line) if len(line) <= MAX_LINE_BYTES else None


def _decode(line: bytes) -> Record | None:
    try:
        record = json.loads(line.decode("utf-8"), parse_constant=_no_constant)
    except (ValueError, RecursionError):
        return None
    if not isinstance(record, dict) or not isinstance(record.get("kind"), str):
        return None
    return record


def _no_constant(name: str) -> float:
    raise ValueError(f"{name} is no JSON")


def sample_record(sample: Sample) -> Record:
    """Record of a sample."""
    values = (getattr(sample, name) for name in NUMBER_COLUMNS)
    record: Record = {"kind": "sample", "v": [v if isfinite(v) else None for v in values]}
    if sample.step:
        record["step"] = sample.step
    if sample.reason:
        record["reason"] = sample.reason
    return record


def sample_of(record: Record) -> Sample | None:
    """Sample of a record, None if it holds none."""
    values = record.get("v")
    if not isinstance(values, list) or not values:
        return None
    if not all(v is None or isinstance(v, int | float) for v in values) or values[0] is None:
        return None
    numbers = {
        name: nan if v is None else float(v)
        for name, v in zip(NUMBER_COLUMNS, values, strict=False)
    }
    text = {name: str(record.get(name, "")) for name in TEXT_COLUMNS}
    return Sample(**numbers, **text)  # type: ignore[arg-type]
