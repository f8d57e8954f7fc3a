"""What no output may take the place of: measured and written data, known by name and by content.

A report is made again in seconds, a session never. So whatever writes a file that somebody has
named asks here first.
"""

from __future__ import annotations

import re
from pathlib import Path

from tracker.errors import InputError
from tracker.inputs import open_file
from tracker.sample import TRACE_COLUMNS
from tracker.session.files import must_be_writable

#: So much of a file tells what it is: our own writers put the format first (own choice).
_HEAD_BYTES = 262_144
_FORMAT = re.compile(rb'"format"\s*:\s*"turnpost-([a-z-]{1,40})"')
#: A summary of a single clip has no session: it is made again from the clip.
_NO_SESSION = re.compile(rb'"session_id"\s*:\s*null')
_STAGE = re.compile(rb'"steps"\s*:\s*\[')
#: Formats -> what they are called in messages.
_NAMES = {
    "session": "a summary",
    "plan": "a plan",
    "journal": "a journal",
    "notes": "a therapist's notes",
    "sent": "the record of what was sent",
    "handover": "sessions that were handed over",
    "profile": "a set-up",
}
#: Kinds that a command may replace because it makes them itself.
CLIP_SUMMARY, PLAN = "a summary of a clip", "a plan"


class HeldDataError(InputError):
    """The place named holds, or would be taken for, what nobody can make again."""


def must_harm_nothing(path: Path, *, replaces: str = "") -> None:
    """Refuse an output that can't be written, or that would cost measured or written data.

    Parameters
    ----------
    path
        Where it is to go.
    replaces
        :data:`CLIP_SUMMARY` or :data:`PLAN`: what may be replaced by what is written, if
        anything.

    Raises
    ------
    HeldDataError
        If a file of a session, a plan, notes, a hand-over, a key or a set-up is there; or if
        the file would be taken for one of a session or for notes by its name.
    InputError
        If it can't be written there (:func:`tracker.session.files.must_be_writable`).
    """
    must_be_writable(path)
    held = kind_of(path)
    if held and held != replaces:
        raise HeldDataError(f"{path}: holds {held}; name another file")
    reserved = _reserved(path, summaries=replaces == CLIP_SUMMARY)
    if reserved:
        raise HeldDataError(f"{path}: has the name of {reserved}; name another file")


def kind_of(path: Path) -> str:
    """What of our own a file holds, in words; empty if none, or if there is no file.

    A file that is damaged further on is known by its beginning, and one that can't be read is
    nobody's.
    """
    from tracker.handover import container, crypt

    try:
        with open_file(path) as file:
            head = file.read(_HEAD_BYTES)
    except OSError:
        return ""
    head = head.removeprefix(b"\xef\xbb\xbf").lstrip()
    if head.startswith(b"{"):
        return _kind_of_json(head, path.name)
    if head.startswith(container.MAGIC):
        return "sessions that were handed over"
    if crypt.is_encrypted(head):
        return "a key, or sessions that were handed over"
    if head.upper().startswith((b"AGE1", b"AGE-SECRET-KEY-1")):
        return "a key"
    if head.startswith(b"PK") and b"header.npy" in head[:200]:
        return "a set-up"
    return "a trace" if head.startswith(TRACE_COLUMNS[0].encode() + b",") else ""


def _kind_of_json(head: bytes, name: str) -> str:
    found = _FORMAT.search(head)
    if found is None:
        named = name.casefold().endswith("stage.json")
        of_stage = _STAGE.search(head) and (named or b'"from_s"' in head)
        return "a stage log" if of_stage else ""
    kind = found[1].decode()
    if kind == "session" and _NO_SESSION.search(head):
        return CLIP_SUMMARY
    return _NAMES.get(kind, "a file of this program")


def _reserved(path: Path, *, summaries: bool) -> str:
    """Whose name it has, where a reader of folders would go by the name; empty if nobody's."""
    from tracker.records.notes import FOLDER_NAME
    from tracker.session.saving import FILE_NAMES, JOURNAL_NAME, MOVED_NAME, SUMMARY_NAME

    name = path.name.casefold()
    folder = path.absolute().parent
    if folder.name == FOLDER_NAME and name.endswith(".jsonl"):
        return "a file of notes"
    in_session = any((folder / n).exists() for n in (SUMMARY_NAME, JOURNAL_NAME, MOVED_NAME))
    if in_session and name in (*FILE_NAMES, JOURNAL_NAME, MOVED_NAME):
        return "a file of the session in this folder"
    # Such a name alone makes a folder a session's for whoever looks for sessions.
    alone = (JOURNAL_NAME, MOVED_NAME) if summaries else (SUMMARY_NAME, JOURNAL_NAME, MOVED_NAME)
    return "a session's file" if name in alone else ""
