"""Taking in what a patient handed over: all of it or nothing, and never twice."""

from __future__ import annotations

import contextlib
import json
import os
import re
import shutil
import time
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from tracker.errors import InputError, RunError, TurnpostError, system_reason
from tracker.handover import container, crypt
from tracker.handover.keys import clinic_keys
from tracker.inputs import open_file, read_bytes
from tracker.records.folder import Place, find_places
from tracker.session.files import (
    make_private_folder,
    new_folder,
    rights_of_group,
    write_atomically,
)
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import MAX_FILE_BYTES as MAX_SUMMARY
from tracker.session.summary_file import load_summary

#: Above what a hand-over comes to: its content, squeezed, and what encryption adds.
MAX_FILE = container.MAX_TOTAL + container.MAX_HEAD + 10_000_000
#: How the folders begin that sessions are taken in to.
PREFIX = "handed-over"
#: A summary as this program writes it, up to the session's ID: it need not be read whole.
_WRITTEN = re.compile(
    rb'\{\s*"format": "turnpost-session",\s*"format_version": \d+,\s*'
    rb'"program_version": "[^"\\]*",\s*"session_id": ("(?:[^"\\]|\\.)*"|null),'
)
#: So much of a file is looked at for its session's ID (bytes).
START = 16_384
#: What a program that was killed left of one is cleared away after a day.
LEFT_S = 86_400.0


@dataclass(frozen=True, slots=True)
class Received:
    """What was taken in.

    Attributes
    ----------
    person
        The pseudonym, or None.
    folder
        Where the new sessions are; None if there was none.
    new, known, other
        IDs of the sessions that are new, that were there already, and that were there with
        other content: those stay as they are.
    encrypted
        Whether the file was encrypted.
    """

    person: str | None
    folder: Path | None
    new: tuple[str, ...]
    known: tuple[str, ...]
    other: tuple[str, ...]
    encrypted: bool


def needs_key(path: Path) -> bool:
    """Whether a file is encrypted.

    Raises
    ------
    InputError
        If it can't be read.
    """
    return crypt.is_encrypted(_read(path, 64))


def receive(path: Path, into: Path, identities: Sequence[str] = ()) -> Received:
    """Take the sessions of a hand-over into a folder.

    Everything is checked before the first byte is written; the sessions then appear together.
    What is in the folder already is never changed.

    Parameters
    ----------
    path
        The file that was handed over.
    into
        The clinic's folder; made if need be.
    identities
        Secret keys of the clinic.

    Raises
    ------
    InputError
        If the file can't be used; the folder stays as it was.
    RunError
        If the folder can't be written to; it stays as it was.
    """
    content = _read(path, MAX_FILE)
    encrypted = crypt.is_encrypted(content)
    try:
        if encrypted:
            content = crypt.decrypt(content, identities)
        head, contents = container.unpack(content)
    except crypt.WrongKeyError as error:
        raise crypt.WrongKeyError(f"{path}: {_why_shut(identities) or error}") from error
    except InputError as error:
        raise InputError(f"{path}: {error}") from error
    del content
    make_private_folder(into)
    _clear_away(into)
    have = _sessions_in(into)
    states = {s: _state(s, contents, have) for s in dict.fromkeys(m.session for m in head.members)}
    new = [s for s, state in states.items() if state == "new"]
    folder = _take_in(path, into, head, contents, new) if new else None
    return Received(
        head.person,
        folder,
        tuple(new),
        tuple(s for s, state in states.items() if state == "known"),
        tuple(s for s, state in states.items() if state == "other"),
        encrypted,
    )


def _why_shut(identities: Sequence[str]) -> str:
    """Said where keys of this computer were not tried, as another passphrase opens them."""
    tried = {crypt.public_of(i) for i in identities}
    keys = clinic_keys()
    shut = [k.name for k in keys if k.public not in tried]
    if not shut or not tried:
        return ""
    some = f"{len(keys) - len(shut)} of the {len(keys)}"
    return (
        f"the passphrase opens {some} keys on this computer, and not one for this file: another of "
        f"the clinic's keys ({', '.join(shut)}) may have another passphrase; type that one. Else "
        "the file was made for another clinic, or its beginning is damaged"
    )


def _take_in(
    path: Path, into: Path, head: container.Head, contents: container.Contents, new: Sequence[str]
) -> Path:
    """Write the new sessions, look through them, and let them appear."""
    folder = _free(into / f"{PREFIX}-{head.person or 'unnamed'}-{head.handover_id}")
    try:
        with new_folder(folder) as whole:
            for (session, name), content in contents.items():
                if session in new:
                    write_atomically(make_private_folder(whole / session) / name, content)
            for session in new:
                _must_fit(path, whole / session, session, head)
            _open_as(whole, into)
            if not {s.casefold() for s in new}.isdisjoint(_sessions_in(into)):
                raise InputError(
                    f"{path}: somebody else has just taken it in here; nothing was taken in twice"
                )
    except RunError as error:
        # The folder with the odd name that it was written to is gone.
        raise RunError(
            f"{into}: can't be written to, nothing was taken in ({_reason(error)}); make room or "
            "choose another folder"
        ) from error
    except OSError as error:
        raise RunError(
            f"{into}: can't be written to, nothing was taken in ({system_reason(error)})"
        ) from error
    return folder


def _must_fit(path: Path, folder: Path, session: str, head: container.Head) -> None:
    """Refuse a session whose summary can't be read, or is another's."""
    try:
        summary = load_summary(folder / SUMMARY_NAME)
    except InputError as error:
        why = str(error).removeprefix(f"{folder / SUMMARY_NAME}: ")
        raise InputError(
            f"{path}: its session {session} can't be used ({why}); nothing was taken in"
        ) from error
    if summary.session_id != session or summary.person != head.person:
        raise InputError(
            f"{path}: its session {session} says it is another session or person's; nothing was "
            "taken in"
        )


def _open_as(whole: Path, into: Path) -> None:
    """Let the group in as far as the clinic's folder does: colleagues read there, too."""
    if os.name != "posix":
        return
    owner = into.stat().st_mode & 0o700
    for path in (whole, *whole.rglob("*")):
        allowed = owner | rights_of_group(path, into)
        own = path.stat().st_mode
        path.chmod(own | allowed if path.is_dir() else own | (allowed & 0o660))


def _sessions_in(into: Path) -> dict[str, list[Path]]:
    """Folders of the sessions below a folder, by the sessions' IDs without regard to capitals."""
    found: dict[str, list[Path]] = {}
    for place in find_places(into):
        if isinstance(place, Place) and place.kind in ("summary", "journal"):
            path = into / place.path
            found.setdefault(_id_in(path).casefold(), []).append(path.parent)
    return found


def _id_in(path: Path) -> str:
    """A session's own ID, from the beginning of its summary or journal.

    A folder may have been renamed, so its name counts only where the file tells nothing.
    """
    # One that the program saved in another place has its name in front.
    name = path.parent.name.removeprefix("turnpost-")
    try:
        start = _start(path)
        if path.name != SUMMARY_NAME:
            about = json.loads(start.split(b"\n", 1)[0])["about"]
        elif (written := _WRITTEN.match(start)) is not None:
            about = {"session_id": json.loads(written[1])}
        else:
            # Another program, or a hand, has put its fields in another order.
            about = json.loads(read_bytes(path, MAX_SUMMARY))
        told = about["session_id"]
    except (OSError, ValueError, KeyError, TypeError, RecursionError):
        return name
    return told if isinstance(told, str) and told else name


def _start(path: Path) -> bytes:
    with open_file(path) as file:
        start: bytes = file.read(START)
    return start


def _state(session: str, contents: container.Contents, have: dict[str, list[Path]]) -> str:
    folders = have.get(session.casefold(), [])
    if not folders:
        return "new"
    own = {name: content for (s, name), content in contents.items() if s == session}
    return "known" if any(_holds(folder, own) for folder in folders) else "other"


def _holds(folder: Path, own: dict[str, bytes]) -> bool:
    with contextlib.suppress(OSError):
        return all(
            read_bytes(folder / name, len(content)) == content for name, content in own.items()
        )
    return False


def _free(folder: Path) -> Path:
    """A name that nothing has: of a file that was taken in before some sessions may be gone."""
    wanted, number = folder, 1
    while folder.exists():
        number += 1
        folder = wanted.with_name(f"{wanted.name}-{number}")
    return folder


def _clear_away(into: Path) -> None:
    for left in into.glob(f".{PREFIX}-*"):
        with contextlib.suppress(OSError):
            if time.time() - left.stat().st_mtime > LEFT_S:
                shutil.rmtree(left, ignore_errors=True)


def _reason(error: TurnpostError) -> str:
    text = str(error)
    return text[text.rfind("(") + 1 : -1] if text.endswith(")") else text


def _read(path: Path, most: int) -> bytes:
    """A file's content, or its beginning where that is enough to see that it is too large."""
    try:
        if path.is_dir():
            raise InputError(f"{path}: is a folder; name the file that was handed over")
        with open_file(path) as file:
            content = file.read(most + 1)
    except OSError as error:
        raise InputError(f"{path}: can't be read ({system_reason(error)})") from error
    if len(content) > MAX_FILE:
        raise InputError(f"{path}: is too large for a hand-over")
    return content
