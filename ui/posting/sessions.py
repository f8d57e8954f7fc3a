"""Which sessions of a folder are to be sent: those that the desk shows, from the same reading."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
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
from ui.posting.record import Sent


@dataclass(frozen=True, slots=True)
class Found:
    """A summary below the folder; ``digest`` is the sha256 of the file.

    ``session`` is the session's ID, as notes have it, ``person`` whose it is, and ``name`` its ID
    on the server and in the record.
    """

    path: str
    digest: str
    session: str = ""
    person: str = ""
    name: str = ""


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


def each_its_own(found: Sequence[Found], known: Sent, tell: Callable[[str], None]) -> list[Found]:
    """Sessions with an ID each on the server, where two people's files have the same.

    The plain ID is kept by whose file went under it before, or else by the first; it is given to
    nobody where who had it is not among them. An ID that was made so stays.
    """
    alike: dict[str, list[Found]] = {}
    for one in found:
        if one.person:
            alike.setdefault(one.session, []).append(one)
    named = []
    for one in found:
        others, apart = alike.get(one.session, []), _apart(one)
        rest = [f for f in others if _apart(f) not in known.tried]
        before = [f for f in rest if _went_before(f, known)]
        plain = before or (rest if one.session not in known.tried or len(rest) == 1 else [])
        if len(others) > 1 and one is not others[0]:
            tell(
                f"{one.path}: has the ID of a session of another pseudonym, {others[0].path}; "
                "both are sent, each for its own; look whose it is"
            )
        shared = len(others) > 1 and one not in plain[:1]
        named.append(replace(one, name=apart) if shared or apart in known.tried else one)
    return named


def _went_before(one: Found, known: Sent) -> bool:
    """Whether what went under a session's ID was this person's: the file may have changed since."""
    same = one.digest in known.went or one.digest in known.failed
    return same or known.people.get(one.session) == one.person


def _apart(one: Found) -> str:
    return f"{one.session} of {one.person}"


def read_session(folder: Path, found: Found) -> SessionFigures | LeftOut:
    """What is told of a session, or why it is not sent."""
    path = folder / found.path
    try:
        record = record_of(load_summary(path))
    except InputError as error:
        return LeftOut(found.path, str(error).removeprefix(f"{path}: "))
    if not (record.person_id or "").strip():
        return LeftOut(found.path, "names no pseudonym, so it belongs to nobody", harmless=True)
    return replace(record, stable_id=found.name)


def _found(folder: Path, row: SessionRow) -> Found | LeftOut:
    if PurePosixPath(row.place).name == JOURNAL_NAME:
        return LeftOut(row.place, "broke off and has no summary yet", harmless=True)
    try:
        content = read_bytes(folder / row.place, MAX_FILE_BYTES)
    except OSError as error:
        return LeftOut(row.place, f"can't be read ({system_reason(error)})")
    digest = hashlib.sha256(content).hexdigest()
    session = row.session_id or row.content_id
    return Found(row.place, digest, *(session, name_of(row), session))
