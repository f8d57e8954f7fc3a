"""What no output may take the place of: measured and written data, known by name and by content.

A report is made again in seconds, a session never. So whatever writes a file that somebody has
named asks here first.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
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
CLIP_SUMMARY, TRACE, PLAN = "a summary of a clip", "a trace", "a plan"
#: How videos and pictures begin, and at which byte (their formats' specifications, from memory).
_FILMS = (
    *((4, word) for word in (b"ftyp", b"moov", b"mdat", b"wide", b"free", b"skip")),
    (8, b"AVI "),
    (0, b"\x1aE\xdf\xa3"),
    (0, b"\x00\x00\x01\xba"),
    (0, b"\x00\x00\x01\xb3"),
    (0, b"\x30\x26\xb2\x75"),
    (0, b"FLV\x01"),
    (0, b"OggS"),
)
_PICTURES = (
    (0, b"\x89PNG"),
    (0, b"\xff\xd8\xff"),
    (0, b"GIF8"),
    (0, b"II*\x00"),
    (0, b"MM\x00*"),
    (8, b"WEBP"),
)
#: A transport stream has this byte at the start of every packet of so many bytes.
_PACKET, _PACKET_BYTES = 0x47, 188


class HeldDataError(InputError):
    """The place named holds, or would be taken for, what nobody can make again."""


def must_harm_nothing(path: Path, *, replaces: str = "", inputs: Iterable[Path] = ()) -> None:
    """Refuse an output that can't be written, or that would cost measured or written data.

    Parameters
    ----------
    path
        Where it is to go.
    replaces
        :data:`CLIP_SUMMARY`, :data:`TRACE` (of no session) or :data:`PLAN`: what may be
        replaced by what is written, if anything.
    inputs
        What it is made from: none of them is replaced by it.

    Raises
    ------
    HeldDataError
        If an input, a video, a picture, a file of a session, a plan, notes, a hand-over, a key
        or a set-up is there; or if the file would be taken for one of a session or for notes by
        its name.
    InputError
        If it can't be written there (:func:`tracker.session.files.must_be_writable`).
    """
    must_be_writable(path)
    if any(_same(path, other) for other in inputs):
        raise HeldDataError(f"{path}: is read for this; name another file")
    held = kind_of(path)
    made_again = held == replaces and not (held == TRACE and _beside_session(path))
    if held and not made_again:
        raise HeldDataError(f"{path}: holds {held}; name another file")
    reserved = _reserved(path, summaries=replaces == CLIP_SUMMARY)
    if reserved:
        raise HeldDataError(f"{path}: has the name of {reserved}; name another file")


def kind_of(path: Path) -> str:
    """What a file holds that nobody makes again, in words; empty if that is nothing.

    A file that is damaged further on is known by its beginning, and one that can't be read or
    isn't there is nobody's.
    """
    from tracker.handover import container, crypt

    try:
        with open_file(path) as file:
            head = file.read(_HEAD_BYTES)
    except OSError:
        return ""
    film = _film_or_picture(head)
    if film:
        return film
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
    return TRACE if head.startswith(TRACE_COLUMNS[0].encode() + b",") else ""


def _film_or_picture(head: bytes) -> str:
    if any(head.startswith(word, at) for at, word in _FILMS):
        return "a video"
    packets = head[: 2 * _PACKET_BYTES + 1 : _PACKET_BYTES]
    if len(packets) == 3 and set(packets) == {_PACKET}:
        return "a video"
    return "a picture" if any(head.startswith(word, at) for at, word in _PICTURES) else ""


def _same(path: Path, other: Path) -> bool:
    try:
        return path.samefile(other)
    except OSError:
        return False


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
    if path.absolute().parent.name == FOLDER_NAME and name.endswith(".jsonl"):
        return "a file of notes"
    if _beside_session(path) and name in (*FILE_NAMES, JOURNAL_NAME, MOVED_NAME):
        return "a file of the session in this folder"
    # Such a name alone makes a folder a session's for whoever looks for sessions.
    alone = (JOURNAL_NAME, MOVED_NAME) if summaries else (SUMMARY_NAME, JOURNAL_NAME, MOVED_NAME)
    return "a session's file" if name in alone else ""


def _beside_session(path: Path) -> bool:
    """Whether a session's files are in its folder; the summary of a clip makes no session."""
    from tracker.session.saving import JOURNAL_NAME, MOVED_NAME, SUMMARY_NAME

    folder = path.absolute().parent
    summary = folder / SUMMARY_NAME
    if summary.exists() and kind_of(summary) != CLIP_SUMMARY:
        return True
    return any((folder / name).exists() for name in (JOURNAL_NAME, MOVED_NAME))
