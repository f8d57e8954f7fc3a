"""A therapist's notes on sessions: one append-only file an author, beside the sessions.

``notes/AUTHOR-WRITER.notes.jsonl`` below the reviewed folder, one JSON object a line. The
author is the login, which is what is shown; the writer is an ID of the installation, because
two computers of a clinic often have the same login. Nothing is ever changed in such a file: an
undo is one more line that withdraws an earlier one. So two therapists who share a folder never
undo each other's work, and copies that a synced
folder has made of a file can simply be read together: a line is known by its ``id``.
Files of before there were writers are read; what stands in them is withdrawn by the same login
alone, since nobody can tell any more which computer wrote it.
Scores of questionnaires stand in the same files (:mod:`tracker.records.questionnaires`).
The measured data is never touched; a mark only stands beside it.
"""

from __future__ import annotations

import getpass
import hashlib
import re
import unicodedata
import uuid
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any, Literal

from tracker.errors import InputError, RunError, system_reason
from tracker.records.appended import append_line, read_lines, why_unread
from tracker.records.folder import Unread

FORMAT = "turnpost-notes"
FORMAT_VERSION = 1
FOLDER_NAME = "notes"
SUFFIX = ".notes.jsonl"
MAX_TEXT = 2000
MAX_AUTHOR = 40

Kind = Literal["note", "not_valid"]


@dataclass(frozen=True, slots=True)
class Note:
    """A note on a session, or the mark that one of its repetitions is not valid.

    ``session`` is the session's ID, or the path of its file where it has none;
    ``set_number`` counts its exercises from 0, ``repetition`` from 1.
    """

    id: str
    author: str
    at: str
    kind: Kind
    session: str
    text: str = ""
    set_number: int | None = None
    repetition: int | None = None
    writer: str = ""


def author_of_system() -> str:
    """A name for the notes of who is logged in.

    Where letters can't stand in a file's name, or the name is cut, a few digits made of the
    whole login tell two people apart.
    """
    try:
        # Systems write the same letter in two ways.
        name = unicodedata.normalize("NFC", getpass.getuser())
    except (OSError, KeyError, ImportError):
        name = ""
    plain = re.sub(r"[^A-Za-z0-9._-]+", "-", name).strip("-.").lstrip("-._")
    if name.isascii() and len(plain) <= MAX_AUTHOR:
        return plain or "therapist"
    digits = hashlib.sha256(name.encode("utf-8", "replace")).hexdigest()[:8]
    return f"{plain[: MAX_AUTHOR - 1 - len(digits)] or 'therapist'}-{digits}"


class NoteBook:
    """All notes of a folder; writes into the file of one author alone.

    Parameters
    ----------
    folder
        The reviewed folder.
    author
        Whose notes they are, as it is shown.
    writer
        The installation that writes them; empty where there is only reading to be done.

    Raises
    ------
    InputError
        If author or writer can't be the name of a file.
    """

    def __init__(self, folder: Path, author: str, writer: str = "") -> None:
        for name in (author, writer or author):
            if not re.fullmatch(r"[A-Za-z0-9][A-Za-z0-9._-]*", name) or len(name) > MAX_AUTHOR:
                raise InputError(f"{name!r} can't name a file of notes; use letters and digits")
        self.folder, self.author, self.writer = folder / FOLDER_NAME, author, writer
        self.path = self.folder / f"{'-'.join(n for n in (author, writer) if n)}{SUFFIX}"

    def wrote(self, author: str, writer: str) -> bool:
        """Whether a line of this author and writer was written by this book."""
        return (author, writer) == (self.author, self.writer)

    def notes(self) -> list[Note]:
        """What holds, of all authors, oldest first; a line that can't be read is passed over."""
        return sorted(self._in_order(), key=lambda n: n.at)

    def _in_order(self) -> list[Note]:
        """The same, each author's in the order in which they were written."""
        return _notes(self.held_lines("note", "not_valid"))

    def held_lines(self, *kinds: str) -> list[dict[str, Any]]:
        """Lines of some kinds that nobody has withdrawn, each author's in their order."""
        return [line for line, withdrawn in self.all_lines(*kinds) if not withdrawn]

    def all_lines(self, *kinds: str) -> list[tuple[dict[str, Any], bool]]:
        """Lines of some kinds, each with whether it was withdrawn; each author's in their order."""
        lines: dict[str, dict[str, Any]] = {}
        for path in _files_in(self.folder):
            for line in read_lines(path, FORMAT, FORMAT_VERSION, _makes_sense):
                lines.setdefault(str(line.get("id")), line)
        # Only who wrote a line withdraws it; of one without a writer the login has to do.
        gone = [r for r in lines.values() if r.get("kind") == "withdrawn"]
        withdrawn = {(*_whose(r), r.get("of")) for r in gone}
        withdrawn |= {(r.get("author"), "", r.get("of")) for r in gone}
        return [
            (r, (*_whose(r), r.get("id")) in withdrawn)
            for r in lines.values()
            if r.get("kind") in kinds
        ]

    def add(
        self,
        kind: Kind,
        session: str,
        text: str = "",
        *,
        set_number: int | None = None,
        repetition: int | None = None,
    ) -> Note:
        """Write a note.

        Raises
        ------
        RunError
            If it can't be written; what stood there is unharmed.
        """
        values = {
            "session": session,
            "text": text.strip()[:MAX_TEXT],
            "set_number": set_number,
            "repetition": repetition,
        }
        return Note(**self.write_line(kind, values))

    def undo(self, session: str | None = None) -> Note | None:
        """Withdraw the author's own newest note (of a session) that holds; None without one."""
        # By place and not by clock: a clock may be set back.
        mine = [n for n in self._in_order() if self.wrote(n.author, n.writer)]
        own = [n for n in mine if session in (None, n.session)]
        if not own:
            return None
        self.withdraw(own[-1].id)
        return own[-1]

    def last_without_writer(self, session: str) -> Note | None:
        """The newest note of the same login on a session that names no writer; None without one.

        It may be of another computer, so it is withdrawn only after a question.
        """
        mine = [n for n in self._in_order() if (n.author, n.writer) == (self.author, "")]
        found = [n for n in mine if n.session == session]
        return found[-1] if found else None

    def withdraw(self, line_id: str) -> None:
        """Withdraw one of the author's own lines, or one of the same login without a writer.

        Raises
        ------
        RunError
            If that can't be written.
        """
        self.write_line("withdrawn", {"of": line_id})

    def write_line(self, kind: str, values: Mapping[str, Any]) -> dict[str, Any]:
        """Write a line of a kind, and give it as it was written.

        Raises
        ------
        RunError
            If it can't be written; what stood there is unharmed.
        """
        at = datetime.now().astimezone().isoformat(timespec="seconds")
        line = {"id": uuid.uuid4().hex[:16], "author": self.author, "at": at, "kind": kind}
        self._append(line | dict(values))
        return line | dict(values) | {"writer": self.writer}

    def _append(self, line: dict[str, Any]) -> None:
        """One line at the end, on the disk when this returns."""
        head = {"format": FORMAT, "format_version": FORMAT_VERSION, "author": self.author}
        if self.writer:
            head["writer"] = self.writer
        try:
            append_line(self.path, head, line)
        except OSError as error:
            raise RunError(
                f"{self.path}: the note was not saved ({system_reason(error)})"
            ) from error


def _files_in(folder: Path) -> list[Path]:
    return sorted(folder.glob("*.jsonl"))


def unread_notes(folder: Path) -> list[Unread]:
    """Files of notes below a reviewed folder of which nothing is shown, and why.

    A mark in one of them would have left a repetition out of the figures.
    """
    whys = [(p, why_unread(p, FORMAT, FORMAT_VERSION)) for p in _files_in(folder / FOLDER_NAME)]
    return [Unread(f"{FOLDER_NAME}/{path.name}", why) for path, why in whys if why]


def _whose(line: Mapping[str, Any]) -> tuple[Any, Any]:
    return line.get("author"), line.get("writer")


def _makes_sense(row: dict[str, Any]) -> bool:
    """Whether a line's values are of the kinds that a note has."""
    words = all(isinstance(row.get(k, ""), str) for k in ("id", "of", "at", "kind"))
    named = all(isinstance(row.get(k), str | None) for k in ("session", "text"))
    numbers = all(isinstance(row.get(k), int | None) for k in ("set_number", "repetition"))
    return words and named and numbers


def _notes(lines: Iterable[dict[str, Any]]) -> list[Note]:
    names = Note.__dataclass_fields__
    found = []
    for row in lines:
        try:
            found.append(Note(**{k: v for k, v in row.items() if k in names}))
        except TypeError:
            continue
    return [n for n in found if isinstance(n.at, str) and isinstance(n.text, str)]
