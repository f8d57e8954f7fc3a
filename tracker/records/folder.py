"""Finding sessions below a folder, and reading one: what can't be read says why.

A session is a folder with a summary; one with a journal alone broke off. Any other
JSON file, beside a session's own files, too, may be a plan or a summary that was saved
by itself. Nothing is ever written.
"""

from __future__ import annotations

import json
import os
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from tracker.errors import InputError, system_reason
from tracker.inputs import TooLargeError, open_file, read_bytes
from tracker.plan import model as plan_model
from tracker.records.rows import SessionRow, row_of
from tracker.session import summary_file
from tracker.session.journal import read_journal
from tracker.session.projections import session_record
from tracker.session.recovery import written_just_now
from tracker.session.saving import FILE_NAMES, JOURNAL_NAME, SUMMARY_NAME
from tracker.session.summary import summarise
from tracker.session.summary_file import load_summary

#: Deeper than a clinic, a person, a year and a session; keeps a wrong folder from taking for ever.
MAX_DEPTH = 8
#: A JSON file that is larger is neither a plan nor a summary saved by itself.
MAX_OTHER_BYTES = summary_file.MAX_FILE_BYTES

#: How the names of files end that a patient hands over; of others nothing is known.
HANDED_OVER = (".age", ".turnpost")
#: So much of such a file says what it is (bytes).
_ENOUGH = 400

Kind = Literal["summary", "journal", "other", "handover"]


STILL_SHUT = (
    'is a file that a patient has handed over: take it in ("Files in and out" at the desk, or '
    "'turnpost receive'), then move it elsewhere; taken in twice it changes nothing"
)


@dataclass(frozen=True, slots=True)
class Place:
    """A file that may hold a session or a plan; ``path`` is below the folder, with ``/``."""

    path: str
    kind: Kind
    size: int
    mtime_ns: int


@dataclass(frozen=True, slots=True)
class Unread:
    """A file that is left out, and why (one line); ``copy`` where its session is there anyhow."""

    path: str
    why: str
    copy: bool = False

    @property
    def handed_over(self) -> bool:
        """Whether it is a file of a patient's that is to be taken in first."""
        return self.why == STILL_SHUT

    @property
    def not_read(self) -> bool:
        """Whether there may be something in it that is nowhere else, and can't be read."""
        return not self.copy and not self.handed_over


@dataclass(frozen=True, slots=True)
class PlanFile:
    """A file that says of itself that it is a plan."""

    path: str


def find_places(folder: Path) -> Iterator[Place | Unread]:
    """Everything below a folder that may hold a session or a plan, in the order of names.

    Hidden names (half-written files are) and links to folders are passed over.

    Raises
    ------
    InputError
        If the folder itself can't be read.
    """
    if not folder.is_dir():
        raise InputError(f"{folder}: there is no such folder; name one that holds sessions")
    try:
        with os.scandir(folder) as found:
            next(found, None)
    except OSError as error:
        raise InputError(f"{folder}: can't be read ({system_reason(error)})") from error
    yield from _below(str(folder), "", 0)


def _below(root: str, inside: str, depth: int) -> Iterator[Place | Unread]:
    where = f"{root}/{inside}" if inside else root
    try:
        with os.scandir(where) as found:
            entries = sorted((e for e in found if not e.name.startswith(".")), key=_name)
    except OSError as error:
        yield Unread(inside, f"the folder can't be read ({system_reason(error)})")
        return
    endings = (".json", ".jsonl", *HANDED_OVER)
    files = {e.name: e for e in entries if e.name.endswith(endings) and _is_file(e)}
    session: Kind | None = (
        "summary" if SUMMARY_NAME in files else "journal" if JOURNAL_NAME in files else None
    )
    if session is not None:
        name = SUMMARY_NAME if session == "summary" else JOURNAL_NAME
        yield _place(files[name], inside, session)
    own = () if session is None else FILE_NAMES
    # A summary that somebody has put beside the folders of others hides none of them.
    for entry in entries:
        if entry.name in files:
            if entry.name.endswith(".json") and entry.name not in own:
                yield _place(entry, inside, "other")
            elif entry.name.endswith(HANDED_OVER):
                yield _place(entry, inside, "handover")
        elif depth < MAX_DEPTH and entry.is_dir(follow_symlinks=False):
            yield from _below(root, _join(inside, entry.name), depth + 1)


def read_place(folder: Path, place: Place) -> SessionRow | PlanFile | Unread | None:
    """What a file holds; None for a file of ours that is no session (answers, a stage log)."""
    path = folder / place.path
    try:
        if place.kind == "summary":
            return row_of(load_summary(path), place.path)
        if place.kind == "journal":
            return _broken_off(path, place)
        if place.kind == "handover":
            return _still_shut(path, place)
        return _other(path, place)
    except InputError as error:
        return Unread(place.path, _without_path(str(error), path))


def _broken_off(path: Path, place: Place) -> SessionRow | Unread:
    """The row of a session that broke off: from its journal, in memory."""
    if written_just_now(place.mtime_ns / 1e9):
        return Unread(place.path, "is being written just now, or was a minute ago; look again soon")
    return row_of(summarise(session_record(read_journal(path))), place.path)


def _still_shut(path: Path, place: Place) -> Unread | None:
    """Said of what a patient has handed over and nobody sees as long as it is shut.

    Whether it was taken in before can't be seen from outside. The clinic's own keys have the
    same ending; they are locked with a passphrase (recipient "scrypt" of the format age).
    """
    from tracker.handover import container, crypt

    try:
        with open_file(path) as file:
            start = file.read(_ENOUGH)
    except OSError as error:
        return Unread(place.path, f"can't be read ({system_reason(error)})")
    locked = crypt.is_encrypted(start) and b"-> scrypt " not in start
    return Unread(place.path, STILL_SHUT) if locked or start.startswith(container.MAGIC) else None


def _other(path: Path, place: Place) -> SessionRow | PlanFile | Unread | None:
    try:
        data = json.loads(read_bytes(path, MAX_OTHER_BYTES).decode("utf-8"))
    except TooLargeError:
        return Unread(place.path, "is too large for a file of this program")
    except OSError as error:
        return Unread(place.path, f"can't be read ({system_reason(error)})")
    except (ValueError, RecursionError):
        return Unread(place.path, "is not a whole JSON file; is it still being copied?")
    kind = data.get("format") if isinstance(data, dict) else None
    if kind == summary_file.FORMAT:
        return row_of(load_summary(path), place.path)
    if kind == plan_model.FORMAT:
        return PlanFile(place.path)
    if isinstance(kind, str) and kind.startswith("turnpost-"):
        return None
    if isinstance(data, dict) and "steps" in data and path.name.endswith("stage.json"):
        return None
    return Unread(place.path, "is no file of this program")


def _place(entry: os.DirEntry[str], inside: str, kind: Kind) -> Place | Unread:
    path = _join(inside, entry.name)
    try:
        stat = entry.stat()
    except OSError as error:
        return Unread(path, f"can't be read ({system_reason(error)})")
    return Place(path, kind, stat.st_size, stat.st_mtime_ns)


def _is_file(entry: os.DirEntry[str]) -> bool:
    try:
        # A link that leads nowhere counts: its reading says so.
        return entry.is_file() or (entry.is_symlink() and not entry.is_dir())
    except OSError:
        return True  # its reading will say why


def _name(entry: os.DirEntry[str]) -> str:
    return entry.name


def _join(inside: str, name: str) -> str:
    return f"{inside}/{name}" if inside else name


def _without_path(message: str, path: Path) -> str:
    """The message without the path, which stands beside it."""
    return message.removeprefix(f"{path}: ")
