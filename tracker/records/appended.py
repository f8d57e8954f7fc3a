"""Files of lines that are only ever added to: one JSON object a line, the head first.

Each file has one author. Nothing in it is ever changed, so copies that a synced folder
has made of one can simply be read together. What was cut off in writing costs no more
than the line that it was.
"""

from __future__ import annotations

import errno
import json
import os
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path
from typing import Any

from tracker.errors import RefusedError, system_reason
from tracker.inputs import TooLargeError, must_be_ordinary, read_bytes
from tracker.session.files import make_folders, rights_of_group
from tracker.session.lock import BINARY

#: Keeps a foreign file from filling the memory.
MAX_FILE_BYTES = 20_000_000

Line = dict[str, Any]


def append_line(path: Path, head: Line, line: Line) -> None:
    """Add one line; it is on the disk when this returns.

    Parameters
    ----------
    path
        The file; it and its folder are made if need be.
    head
        ``format``, ``format_version`` and ``author`` of the file, and ``writer`` where it has
        one, written where the file has no head.

    Raises
    ------
    OSError
        If it can't be written, a newer version of the program wrote it, or it would be too large
        to be read again; what stood there is unharmed.
    """
    _make_folder(path.parent)
    flags = os.O_RDWR | os.O_CREAT | os.O_APPEND | BINARY
    handle = os.open(path, flags, 0o600)
    try:
        must_be_ordinary(handle)
        size = os.fstat(handle).st_size
        if size == 0 and os.name == "posix":
            # Colleagues read it too where the folder lets the group in, and nobody else.
            os.fchmod(handle, 0o600 | (rights_of_group(handle, path.parent) & 0o060))
        text = json.dumps(line, ensure_ascii=False) + "\n"
        if size == 0 or not _has_head(path, head):
            text = json.dumps(head) + "\n" + text
        if size and _last_byte(handle, size) != b"\n":
            # Somebody was cut off in mid-line; this one must not be lost with it.
            text = "\n" + text
        data = text.encode("utf-8")
        if size + len(data) > MAX_FILE_BYTES:
            raise TooLargeError(errno.EFBIG, "it is too large")
        _write_all(handle, data)
        os.fsync(handle)
    finally:
        os.close(handle)


def _make_folder(folder: Path) -> None:
    """Make the folder, whatever is usual here for new ones: as open as that above it to its group.

    Colleagues put their own files into it, and nobody else gets in; nor do they where who makes
    it doesn't belong to that group.
    """
    if folder.is_dir():
        return
    make_folders(folder)
    if os.name == "posix":
        allowed = rights_of_group(folder, folder.parent)
        folder.chmod(folder.stat().st_mode | allowed)


def read_lines(
    path: Path, format_name: str, version: int, makes_sense: Callable[[Line], bool]
) -> list[Line]:
    """The lines of a file, with their ``author`` and ``writer``.

    None of a foreign, newer or unreadable one.
    """
    try:
        known = list(_lines_of(path))
        head = _head_of(known, format_name)
        _must_not_be_newer(head, version)
    except OSError:
        return []
    if head is None:
        return []
    # The file tells whose lines they are, whatever a line says of itself.
    lines = [r for r in known if "format" not in r and makes_sense(r)]
    whose = {"author": str(head.get("author")), "writer": str(head.get("writer") or "")}
    return [{**row, **whose} for row in lines]


def why_unread(path: Path, format_name: str, version: int) -> str:
    """Why :func:`read_lines` gives no line of a file; empty where it gives them."""
    try:
        head = _head_of(_lines_of(path), format_name)
        _must_not_be_newer(head, version)
        is_ours = head is not None or path.stat().st_size == 0
    except OSError as error:
        return f"can't be read ({system_reason(error)})"
    return "" if is_ours else "is no file of this program"


def _last_byte(handle: int, size: int) -> bytes:
    os.lseek(handle, size - 1, os.SEEK_SET)
    return os.read(handle, 1)


def _write_all(handle: int, data: bytes) -> None:
    while data:
        data = data[os.write(handle, data) :]


def _has_head(path: Path, own: Line) -> bool:
    """Whether a file says what it is; its head may have been cut off in writing, or be damaged.

    Raises
    ------
    OSError
        If it can't be read, or a newer version of the program wrote it.
    """
    head = _head_of(_lines_of(path), own["format"])
    _must_not_be_newer(head, own["format_version"])
    return head is not None


def _must_not_be_newer(head: Line | None, version: int) -> None:
    if head is not None and head["format_version"] > version:
        raise RefusedError(errno.EINVAL, "a newer version of this program wrote it")


def _lines_of(path: Path) -> Iterator[Line]:
    """What can be read of a file, one after the other: who adds a line needs the head alone."""
    rows = map(_decoded, read_bytes(path, MAX_FILE_BYTES).splitlines())
    return (r for r in rows if r is not None)


def _head_of(lines: Iterable[Line], format_name: str) -> Line | None:
    """The first whole head: one that was cut off or is damaged is followed by another."""
    heads = (r for r in lines if r.get("format") == format_name)
    return next((h for h in heads if isinstance(h.get("format_version"), int)), None)


def _decoded(row: bytes) -> Line | None:
    try:
        data = json.loads(row.decode("utf-8"))
    except (ValueError, RecursionError):
        return None
    return data if isinstance(data, dict) else None
