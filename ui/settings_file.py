"""The file of the settings before Qt reads it: Qt trusts it, and crashes or waits over some.

A pipe is read without end, a large file fills the memory, some values that Qt can write and
this program never does crash it, and a lock that a kill has left is waited for: for half a
minute, on a full disk without end.
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
#: Objects that Qt packs into a value, as it reads them once quotes and escapes are undone.
_PACKED = re.compile(rb"@(Variant|DataStream)\(")
#: Escapes of Qt's form of INI files: a sign by its number, a line that goes on, any other.
_ESCAPE = re.compile(rb'\\x([0-9A-Fa-f]+)|\\([0-7]+)|\\\r?\n|\\(.)|"', re.DOTALL)


def make_harmless(path: Path) -> None:
    """Take away what Qt would fail on: a lock that was left, a file that can't be ours, values."""
    _drop_lock(path.with_name(f"{path.name}.lock"))
    try:
        content = read_bytes(path, MAX_FILE_BYTES)
    except TooLargeError:
        _drop(path)
        return
    except (OSError, ValueError):
        _drop_if_odd(path)
        return
    if _is_packed(content):
        lines = [n for n in content.splitlines(keepends=True) if not _is_doubtful(n)]
        kept = b"".join(lines)
        with contextlib.suppress(TurnpostError):
            write_atomically(path, b"" if _is_packed(kept) else kept)
            return
        # A disk that takes no new file still lets one go.
        _drop(path)


def _is_doubtful(line: bytes) -> bool:
    return _is_packed(line) or line.rstrip(b"\r\n").endswith(b"\\")


def _is_packed(content: bytes) -> bool:
    return _PACKED.search(_ESCAPE.sub(_undone, content)) is not None


def _undone(found: re.Match[bytes]) -> bytes:
    """What an escape stands for; of signs beyond one byte none matters here."""
    by_16, by_8, plain = found.groups()
    if by_16 or by_8:
        number = int(by_16, 16) if by_16 else int(by_8, 8)
        return bytes([number]) if number < 256 else b"?"
    return plain or b""


def _drop_lock(lock: Path) -> None:
    with contextlib.suppress(OSError):
        # One from the future was written before the clock was set back.
        if abs(time.time() - lock.stat().st_mtime) > LOCK_LEFT_S:
            lock.unlink()


def _drop_if_odd(path: Path) -> None:
    """Take a pipe, a device or the link to one away."""
    with contextlib.suppress(OSError, ValueError):
        kind = path.stat().st_mode
        if not stat.S_ISREG(kind) and not stat.S_ISDIR(kind):
            path.unlink()


def _drop(path: Path) -> None:
    with contextlib.suppress(OSError):
        path.unlink()
