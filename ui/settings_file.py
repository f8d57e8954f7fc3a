r"""The file of the settings before Qt reads it: Qt trusts it, and crashes or waits over some.

A pipe is read without end, a large file fills the memory, some values that Qt can write and
this program never does crash it, and a lock that a kill has left is waited for: for half a
minute, on a full disk without end.

Such values begin with ``@``, once Qt has undone quotes, escapes and lines that go on. What else
Qt undoes is not followed here: of lines only those reach it whose text begins with another sign
that stays, and that of the window's place.
"""

from __future__ import annotations

import contextlib
import re
import stat
import time
from pathlib import Path

from tracker.errors import TurnpostError
from tracker.inputs import TooLargeError, read_bytes
from tracker.session.files import write_atomically

#: A hundred times what the settings take (own choice).
MAX_FILE_BYTES = 1_000_000
#: Qt holds its lock for some milliseconds; an older one was left (own choice).
LOCK_LEFT_S = 5.0
#: Escapes of Qt's form of INI files: a sign by its number of 16 bits, which must end there; a zero;
#: signs by letters.
_ESCAPE = rb"\\x[0-9A-Fa-f]{1,4}(?![0-9A-Fa-f])|\\0(?![0-7])|\\[abfnrtv\"?'\\]"
#: What a text begins with: a sign that stays, and is none of comma, quote, backslash and a single
#: ``@`` (of two Qt takes one away and unpacks nothing).
_FIRST = rb" *(?:@@|[!#-+.-?A-\[\]-~-]|[\xc2-\xee\xf0-\xf4]|\xef(?!\xbb\xbf)|\\[\\\"])"
#: What follows: without quotes around it a comma would begin another text.
_REST, _BARE = (
    rb"(?:[^\x00-\x08\x0a-\x1f\"\\" + less + rb"]|" + _ESCAPE + rb")*" for less in (rb"", rb",")
)
#: The window's place stands as bytes.
_VALUE = (
    rb"(?:(?:" + _FIRST + _BARE + rb")?|\"(?:" + _FIRST + _REST + rb")?\""
    rb"|@ByteArray\(" + _BARE + rb"\)|\"@ByteArray\(" + _REST + rb"\)\")"
)
_NAME = rb"(?:\\?[A-Za-z0-9_.%~-])+"
#: A comment, a section, a value, or nothing.
_LINE = re.compile(rb"[ \t]*(?:;.*|\[[A-Za-z0-9_.%~ -]*\]|" + _NAME + rb"[ \t]*=" + _VALUE + rb")?")


def make_harmless(path: Path) -> Path:
    """Take away what Qt would fail on: a lock that was left, a file that can't be ours, values.

    Returns
    -------
    Path
        The file; where nothing can be taken away, one that can't be, which Qt takes for empty.
    """
    _drop_lock(path.with_name(f"{path.name}.lock"))
    if _has_become_harmless(path):
        return path
    return path / "none"


def _has_become_harmless(path: Path) -> bool:
    try:
        content = read_bytes(path, MAX_FILE_BYTES)
    except TooLargeError:
        return _dropped(path)
    except (OSError, ValueError):
        return not _is_odd(path) or _dropped(path)
    lines = re.split(rb"[\r\n]+", content)
    kept = [line for line in lines if _LINE.fullmatch(line) and _is_text(line)]
    if len(kept) == len(lines):
        return True
    try:
        write_atomically(path, b"\n".join(kept) + b"\n")
    except TurnpostError:
        # A disk that takes no new file still lets one go.
        return _dropped(path)
    return True


def _is_text(line: bytes) -> bool:
    """Whether it is UTF-8: Qt's decoder swallows half of a sign and lets what follows begin."""
    try:
        line.decode("utf-8")
    except UnicodeDecodeError:
        return False
    return True


def _drop_lock(lock: Path) -> None:
    with contextlib.suppress(OSError):
        known = lock.stat()
        # Qt writes into its lock at once: an empty one was made on a full disk, or before a kill.
        # One from the future was written before the clock was set back.
        if not known.st_size or abs(time.time() - known.st_mtime) > LOCK_LEFT_S:
            lock.unlink()


def _is_odd(path: Path) -> bool:
    """Whether it is a pipe, a device or the link to one."""
    try:
        kind = path.stat().st_mode
    except (OSError, ValueError):
        return False
    return not stat.S_ISREG(kind) and not stat.S_ISDIR(kind)


def _dropped(path: Path) -> bool:
    try:
        path.unlink(missing_ok=True)
    except (OSError, ValueError):
        return False
    return True
