"""Which sessions of a folder are to be sent: those that the desk shows, from the same reading."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path, PurePosixPath

from tracker.errors import InputError, system_reason
from tracker.inputs import read_bytes
from tracker.records.figures import SessionFigures, record_of
from tracker.records.folder import Unread
from tracker.records.index import Records
from tracker.records.people import name_of
from tracker.records.rows import SessionRow
from tracker.session.saving import JOURNAL_NAME, SUMMARY_NAME
from tracker.session.summary_file import MAX_FILE_BYTES, load_summary


@dataclass(frozen=True, slots=True)
class Found:
    """A summary below the folder; ``digest`` is the sha256 of the file.

    ``session`` is the session's ID, as notes have it, and ``person`` whose it is.
    """

    path: str
    digest: str
    session: str = ""
    person: str = ""


@dataclass(frozen=True, slots=True)
class LeftOut:
    """What is not sent, and why; ``harmless`` where nothing is amiss."""

    path: str
    why: str
    harmless: bool = False


def find_summaries(kept: Records) -> Iterator[Found | LeftOut]:
    """Every session of a folder that was read, by path: of several files the one that counts."""
    for one in sorted([*kept.unread, *kept.rows], key=_path_of):
        if isinstance(one, SessionRow):
            yield _found(kept.folder, one)
        elif not one.handed_over:
            # Of a session's own file and of a folder something is amiss. Any other may have been
            # a session: that is said, but nobody can send it.
            name = PurePosixPath(one.path).name
            amiss = name == SUMMARY_NAME or not name.endswith((".json", ".jsonl"))
            yield LeftOut(one.path, one.why, harmless=one.copy or not amiss)


def _path_of(one: SessionRow | Unread) -> str:
    return one.place if isinstance(one, SessionRow) else one.path


def read_session(folder: Path, found: Found) -> SessionFigures | LeftOut:
    """What is told of a session, or why it is not sent."""
    path = folder / found.path
    try:
        record = record_of(load_summary(path))
    except InputError as error:
        return LeftOut(found.path, str(error).removeprefix(f"{path}: "))
    if not (record.person_id or "").strip():
        return LeftOut(found.path, "names no pseudonym, so it belongs to nobody", harmless=True)
    return record


def _found(folder: Path, row: SessionRow) -> Found | LeftOut:
    if PurePosixPath(row.place).name == JOURNAL_NAME:
        return LeftOut(row.place, "broke off and has no summary yet", harmless=True)
    try:
        content = read_bytes(folder / row.place, MAX_FILE_BYTES)
    except OSError as error:
        return LeftOut(row.place, f"can't be read ({system_reason(error)})")
    digest = hashlib.sha256(content).hexdigest()
    return Found(row.place, digest, row.session_id or row.content_id, name_of(row))
