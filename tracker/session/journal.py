"""The journal: everything of a session, appended as it happens.

One JSON object a line, its kind under ``kind``. Summary, trace and stage log are
projections of it. A writer thread of its own puts the lines on disk at least
once a second, so that a slow disk never slows measuring; reading puts up with a
half last line and with foreign bytes.

============ ==============================================================
kind         what it holds
============ ==============================================================
``session``  format, version and what is known of the session; ``columns``: the names of
             the values of a sample, in their order
``step``     ``number`` and the step, as in a stage log; ``journal_version`` and ``demo``, if
             it is one: what the first line says, should that be damaged
``sample``   ``v``: the values of a trace row without its text columns, null
             where not measured; ``step`` and ``reason`` where not empty
``turn``     ``number`` of its step and the turn
``event``    ``number`` of its step, ``id`` and the event; a later record
             with the same ``id`` takes the place of an earlier one
``setup``    ``from_s``, ``found`` and ``notes``: a set-up that holds from then on;
             the same of the first line as a ``step``
``answer``   ``about`` and ``value``: what the patient answered; ``number`` of
             the step that it belongs to, if it belongs to one
``mark``     ``name`` and ``time_s``: anything else worth a place in time
``end``      ``time_s`` and ``ended``
============ ==============================================================
"""

from __future__ import annotations

import os
import queue
import threading
import time
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from math import isfinite, nan
from pathlib import Path
from typing import Any, Protocol

from tracker.closing import Closing
from tracker.errors import InputError, RunError, system_reason
from tracker.inputs import open_file
from tracker.sample import TEXT_COLUMNS, TRACE_COLUMNS, Sample
from tracker.session.files import make_folders, sync_folder, write_atomically
from tracker.session.journal_head import (
    FORMAT,
    FORMAT_VERSION,
    Head,
    head_of,
    is_of_a_session,
    is_of_no_kind,
    stand_in,
)
from tracker.session.journal_line import DROPPED, Record, decode, encode, is_number
from tracker.session.lock import BINARY, lock

NUMBER_COLUMNS = tuple(c for c in TRACE_COLUMNS if c not in TEXT_COLUMNS)
#: The order in journals that don't name theirs, which were written before there were elbows.
UNNAMED_COLUMNS = (
    *("time_s", "head_yaw_deg", "head_pitch_deg", "head_roll_deg"),
    *("head_x_mm", "head_y_mm", "head_z_mm", "neck_x_mm", "neck_y_mm", "neck_z_mm"),
    *("head_yaw_speed_deg_s", "head_pitch_speed_deg_s", "eye_yaw_deg", "eye_pitch_deg"),
    *("vergence_deg", "gaze_yaw_deg", "gaze_pitch_deg", "target_yaw_deg", "target_pitch_deg"),
    *("eye_open", "face_height_px", "light", "quality", "body_seen"),
    *("shoulder_right_x_mm", "shoulder_right_y_mm", "shoulder_left_x_mm", "shoulder_left_y_mm"),
    *("wrist_right_x_mm", "wrist_right_y_mm", "wrist_left_x_mm", "wrist_left_y_mm"),
)

#: Own aim: everything is on disk within a second; half of that leaves room for a slow disk.
SYNC_S = 0.5
#: Bounds of what is read: a line, a whole file (four hours at 60 frames/s are 400 MB at most).
MAX_LINE_BYTES = 1_000_000
MAX_FILE_BYTES = 1_000_000_000
#: Read at once. Python lets go of its lock for each read, and whoever waits for it (the window's
#: thread) asks for its turn after the switch interval without one: small reads starve it, by the
#: clock for all of a long journal.
BUFFER_BYTES = 1 << 20
#: Records that wait at most for a disk that doesn't take them: more than an hour at
#: 60 frames/s, some 60 MB.
MAX_WAITING = 250_000
#: Lines that are never written twice: one more that equals an earlier one is a copy that some
#: damage has made. An answer may be given again.
_ONCE = tuple(f'{{"kind":"{kind}"'.encode() for kind in ("step", "turn", "setup", "mark"))
#: What the rest makes no sense without.
_HEAD_KINDS = frozenset({"session", "step"})


class NewerJournalError(InputError):
    """A journal is of a newer version of this program."""


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


class FileJournal(Closing):
    """Appends records to a file from a thread of its own.

    The file is locked while it is open, so that nobody takes it for one that broke
    off. What the disk doesn't take (it is full, gone, read-only; the file can't even
    be made) waits in memory and is tried again; :attr:`fault` says so meanwhile, and
    :meth:`rescue` writes all of it in another place. In place of a record that nothing could
    write stands a line that counts as damaged; :attr:`fault` says so for half a second.

    Parameters
    ----------
    path
        The file; an existing one is appended to. Its folder is made if need be.

    Raises
    ------
    RunError
        If somebody else is writing it.
    """

    def __init__(self, path: Path) -> None:
        self.path = path
        self._queue: queue.SimpleQueue[Record | None] = queue.SimpleQueue()
        self._waiting = bytearray()
        self._waiting_count = 0
        self._head: list[bytes] = []
        self._fault = ""
        self._lost = 0
        self._dropped = False
        self._entered = False
        self._closed = False
        self._let_go = False
        self._handle: int | None = None
        try:
            self._handle = _opened(path)
        except OSError as error:
            self._fault = _why(error)
        self._thread = threading.Thread(target=self._run, name="journal", daemon=True)
        self._thread.start()

    @property
    def fault(self) -> str:
        """Why the disk doesn't take the records at the moment, or empty."""
        return self._fault

    @property
    def lost(self) -> int:
        """Records given up: the disk didn't take them for too long, or nothing could."""
        return self._lost

    def append(self, record: Record) -> None:
        """Take one record; returns at once."""
        if not self._closed:
            self._queue.put(record)

    def finish(self, timeout_s: float = 5.0) -> None:
        """Take no more, put everything on disk and end the thread; the lock stays.

        Called once more it tries again to write what still waits.
        """
        if not self._closed:
            self._closed = True
            self._queue.put(None)
        self._thread.join(timeout_s)
        if self._thread.is_alive():
            self._fault = "the disk does not answer"
        elif self._fault and not self._let_go:
            self._write()

    def close(self, timeout_s: float = 5.0) -> None:
        """Finish, and let the file go: nothing is written any more, however often this is called.

        Else what the disk did not take would make a new file once it has room, although all was
        saved elsewhere.
        """
        self.finish(timeout_s)
        if self._thread.is_alive():
            return
        self._let_go = True
        if self._handle is not None:
            os.close(self._handle)
            self._handle = None

    def rescue(self, path: Path) -> None:
        """Write all of a finished journal to another place, whole or not at all.

        What the disk had taken is read back from the file, even from one whose name
        is gone; if that can't be read any more, what waits in memory is written.

        Raises
        ------
        InputError, RunError
            If that place doesn't take it either.
        """
        self.finish()
        if self._thread.is_alive():
            raise RunError(f"{self.path}: the disk does not answer; try again in a moment")
        try:
            taken = b"" if self._handle is None else _all_of(self._handle)
        except OSError:
            taken = b"".join(self._head)
        # A disk that filled up may have taken half a line; the rest of it waits.
        write_atomically(path, taken + bytes(self._waiting))

    def _run(self) -> None:
        open_ended = True
        while open_ended:
            lines, open_ended = self._gather()
            self._waiting_count += len(lines)
            self._waiting += b"".join(lines)
            self._write()
            if self._dropped:
                self._dropped = False
                self._fault = self._fault or "a record could not be written"

    def _gather(self) -> tuple[list[bytes], bool]:
        """Records of the next half second, as lines; False when the journal was closed."""
        lines: list[bytes] = []
        until_s = time.monotonic() + SYNC_S
        while (left_s := until_s - time.monotonic()) > 0:
            try:
                record = self._queue.get(timeout=left_s)
            except queue.Empty:
                break
            if record is None:
                return lines, False
            lines.append(self._line_of(record))
            if record.get("kind") in _HEAD_KINDS:
                self._head.append(lines[-1])
        return lines, True

    def _line_of(self, record: Record) -> bytes:
        """The line of a record; of one that can't be written a line that counts as damaged."""
        try:
            return encode(record)
        except Exception:  # whatever is in it: the thread goes on, for all the other records
            self._lost += 1
            self._dropped = True
            return DROPPED

    def _write(self) -> None:
        """Write what waits; what the disk doesn't take is tried again later."""
        try:
            if self._handle is None:
                self._handle = _opened(self.path)
            while self._waiting:
                done = os.write(self._handle, self._waiting)
                del self._waiting[:done]
            if self._waiting_count:
                os.fsync(self._handle)
                self._waiting_count = 0
                self._enter()
            self._fault = "" if _is_there(self.path, self._handle) else "its folder is gone"
        except (OSError, RunError) as error:
            self._fault = _why(error)
            if self._waiting_count > MAX_WAITING:
                self._lost += self._waiting_count
                # The line that was half written ends here; the head is needed by rescue.
                self._waiting[:] = b"\n" if self._handle is not None else b"".join(self._head)
                self._waiting_count = 0

    def _enter(self) -> None:
        """Put the names of a new file and of its folder on disk, too: without them it is lost."""
        if not self._entered:
            self._entered = True
            sync_folder(self.path.parent)
            sync_folder(self.path.parent.parent)


def _opened(path: Path) -> int:
    """Open a journal for its writer, and lock it."""
    make_folders(path.parent)
    handle = os.open(path, os.O_RDWR | os.O_CREAT | os.O_APPEND | BINARY, 0o600)
    if lock(handle) is False:
        os.close(handle)
        raise RunError(f"{path}: is in use by another window; close that first")
    return handle


def _is_there(path: Path, handle: int) -> bool:
    """Whether the open file still has its name: a deleted one takes writes, too."""
    try:
        return os.path.samestat(path.stat(), os.fstat(handle))
    except OSError:
        return False


def _all_of(handle: int) -> bytes:
    left = min(os.fstat(handle).st_size, MAX_FILE_BYTES)
    os.lseek(handle, 0, os.SEEK_SET)
    parts = []
    while left > 0 and (part := os.read(handle, min(left, 1 << 20))):
        parts.append(part)
        left -= len(part)
    return b"".join(parts)


def _why(error: Exception) -> str:
    return system_reason(error)


@dataclass(frozen=True, slots=True)
class JournalContent:
    """The records of a journal.

    Attributes
    ----------
    records
        In the order in which they were written.
    damaged_lines
        Lines that could not be read.
    damaged_head
        What is known where the first one is among them, or contradicts the others.
    """

    records: list[Record]
    damaged_lines: int = 0
    damaged_head: Head | None = None
    _by_kind: dict[str, list[Record]] = field(default_factory=dict, repr=False, compare=False)

    def of(self, kind: str) -> list[Record]:
        """Records of one kind."""
        if not self._by_kind:
            for record in self.records:
                self._by_kind.setdefault(record["kind"], []).append(record)
        return self._by_kind.get(kind, [])

    @property
    def columns(self) -> tuple[str, ...]:
        """Names of the values of a sample, in the order in which this journal has them."""
        heads = self.of("session")
        named = heads[0].get("columns") if heads else None
        if isinstance(named, list) and named and named[0] == "time_s":
            return tuple(str(name) for name in named)
        # Some were written with elbows and without names: their rows are longer.
        longest = max(
            (len(v) for r in self.of("sample") if isinstance(v := r.get("v"), list)), default=0
        )
        return NUMBER_COLUMNS if longest > len(UNNAMED_COLUMNS) else UNNAMED_COLUMNS

    def last_of_each(self, kind: str) -> list[Record]:
        """Records of one kind, of those with the same ``id`` the last."""
        return list({r.get("id"): r for r in self.of(kind)}.values())

    @property
    def ended(self) -> str:
        """How the session ended; ``interrupted`` where the journal breaks off."""
        ends = self.of("end")
        return str(ends[-1].get("ended", "interrupted")) if ends else "interrupted"


def read_journal(path: Path, *, without: str = "") -> JournalContent:
    """Read a journal, passing over what is damaged, its first line too, and copies of lines.

    Parameters
    ----------
    path
        The file.
    without
        A kind of record that is not wanted, which saves the time of reading it; it is read
        where nothing else tells that this is a journal.

    Raises
    ------
    NewerJournalError
        If it is of a newer version.
    InputError
        If it can't be read or is no journal.
    """
    try:
        with open_file(path, BUFFER_BYTES) as file:
            if os.fstat(file.fileno()).st_size > MAX_FILE_BYTES:
                raise InputError(f"{path}: too large for a journal")
            rows = list(_records(file, without))
    except OSError as error:
        raise InputError(f"{path}: can't be read ({system_reason(error)})") from error
    records = [r for r in rows if r is not None]
    damaged = len(rows) - len(records)
    head = head_of(records) if any(map(is_of_a_session, records)) else None
    if head is not None:
        wrong = next((r for r in records if r["kind"] == "session"), None)
        if wrong is None and rows[0] is not None and is_of_no_kind(rows[0]):
            # It is no longer of the first line's kind, and says nothing that counts.
            wrong = rows[0]
        damaged += wrong is not None
        others = (r for r in records if r is not wrong)
        records = [stand_in(path.parent.name, records), *others]
    heads = [r for r in records if r["kind"] == "session"]
    if not heads or heads[0].get("format") != FORMAT:
        if without:
            # What was passed over may be all that is left of it.
            return read_journal(path)
        raise InputError(f"{path}: is no journal of a session")
    version = heads[0].get("format_version")
    if not isinstance(version, int) or version > FORMAT_VERSION:
        raise NewerJournalError(
            f"{path}: was written by a newer version of this program; update it"
        )
    return JournalContent(records, damaged, head)


def _records(file: Any, without: str) -> Iterator[Record | None]:
    unwanted = f'{{"kind":"{without}"'.encode()
    seen: set[bytes] = set()
    while line := file.readline(MAX_LINE_BYTES + 1):
        if not line.strip() or line.startswith(unwanted) or line in seen:
            continue
        if line.startswith(_ONCE):
            seen.add(line)
        yield decode(line) if len(line) <= MAX_LINE_BYTES else None


_KNOWN = frozenset(NUMBER_COLUMNS)


def sample_record(sample: Sample) -> Record:
    """Record of a sample."""
    numbers = (getattr(sample, name) for name in NUMBER_COLUMNS)
    values = [v if isfinite(v) else None for v in numbers]
    while values and values[-1] is None:
        # Most exercises have no body columns: they shall cost nothing.
        values.pop()
    record: Record = {"kind": "sample", "v": values}
    if sample.step:
        record["step"] = sample.step
    if sample.reason:
        record["reason"] = sample.reason
    return record


def sample_of(record: Record, columns: Sequence[str] = NUMBER_COLUMNS) -> Sample | None:
    """Sample of a record, None if it holds none; ``columns`` are those of its journal.

    A column that this version doesn't know is passed over.
    """
    values = record.get("v")
    if not isinstance(values, list) or not values:
        return None
    if not all(v is None or is_number(v) for v in values) or values[0] is None:
        return None
    numbers = {
        name: nan if v is None else float(v)
        for name, v in zip(columns, values, strict=False)
        if name in _KNOWN
    }
    text = {name: str(record.get(name, "")) for name in TEXT_COLUMNS}
    return Sample(**numbers, **text)  # type: ignore[arg-type]
