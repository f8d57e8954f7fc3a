"""Which sessions of a folder are to be sent, found without reading those that went before."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from tracker.errors import InputError, system_reason
from tracker.inputs import read_bytes
from tracker.records.figures import SessionFigures, record_of
from tracker.records.folder import Place, Unread, find_places, read_place
from tracker.records.rows import SessionRow
from tracker.session.summary_file import MAX_FILE_BYTES, load_summary


@dataclass(frozen=True, slots=True)
class Found:
    """A summary below the folder; ``digest`` is the sha256 of the file."""

    path: str
    digest: str


@dataclass(frozen=True, slots=True)
class LeftOut:
    """What is not sent, and why; ``harmless`` where nothing is amiss."""

    path: str
    why: str
    harmless: bool = False


def find_summaries(folder: Path) -> Iterator[Found | LeftOut]:
    """Every summary below a folder, by path.

    Raises
    ------
    InputError
        If the folder itself can't be read.
    """
    for place in find_places(folder):
        if isinstance(place, Unread):
            yield LeftOut(place.path, place.why)
        elif place.kind == "journal":
            yield LeftOut(place.path, "broke off and has no summary yet", harmless=True)
        elif place.kind == "summary":
            yield _found(folder, place)
        else:
            read = read_place(folder, place)
            if isinstance(read, SessionRow):
                yield _found(folder, place)
            elif isinstance(read, Unread):
                # It may have been a session: that is said, but nobody can send it.
                yield LeftOut(read.path, read.why, harmless=True)


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


def _found(folder: Path, place: Place) -> Found | LeftOut:
    try:
        content = read_bytes(folder / place.path, MAX_FILE_BYTES)
        return Found(place.path, hashlib.sha256(content).hexdigest())
    except OSError as error:
        return LeftOut(place.path, f"can't be read ({system_reason(error)})")
