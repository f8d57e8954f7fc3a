"""Opening what somebody named: ordinary files alone, and no more of one than is expected.

A pipe would be waited for without end, and a device gives without end; either may bear the
name of a plan or lie in a clinic's folder as a summary. Whatever reads a file that it has not
just made itself opens it here.
"""

from __future__ import annotations

import errno
import os
import stat
from pathlib import Path
from typing import BinaryIO

from tracker.errors import InputError, RefusedError, system_reason

#: Opening a pipe that nobody writes to returns at once with it; Windows knows no such pipes.
_FLAGS = os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0)


class TooLargeError(OSError):
    """A file holds more than is read of its kind."""


def open_file(path: Path, buffer_bytes: int = -1) -> BinaryIO:
    """Open an ordinary file for reading; ``buffer_bytes`` as for :func:`open`.

    Raises
    ------
    OSError
        If it can't be opened, is no ordinary file, or can't be a file's name at all.
    """
    try:
        handle = os.open(path, _FLAGS)
    except ValueError as error:
        raise RefusedError(errno.EINVAL, "no file can have such a name") from error
    try:
        must_be_ordinary(handle)
        return os.fdopen(handle, "rb", buffer_bytes)
    except BaseException:
        os.close(handle)
        raise


def must_be_ordinary(handle: int) -> None:
    """Refuse an open pipe, device or folder.

    Raises
    ------
    OSError
        If it is one.
    """
    kind = os.fstat(handle).st_mode
    if stat.S_ISDIR(kind):
        raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR))
    if not stat.S_ISREG(kind):
        raise RefusedError(errno.EINVAL, "it is not an ordinary file")


def read_bytes(path: Path, most: int) -> bytes:
    """Content of an ordinary file of at most ``most`` bytes.

    Raises
    ------
    TooLargeError
        If it holds more.
    OSError
        As for :func:`open_file`, or if reading fails.
    """
    with open_file(path) as file:
        # By its size before anything is read; by what comes where the size says nothing.
        if os.fstat(file.fileno()).st_size <= most and len(content := file.read(most + 1)) <= most:
            return content
    raise TooLargeError(errno.EFBIG, os.strerror(errno.EFBIG))


def read_input(path: Path, most: int, what: str) -> bytes:
    """Content of a file that somebody named; ``what`` it is to be stands in the message.

    Raises
    ------
    InputError
        If it can't be read, is no ordinary file, or is larger than ``most`` bytes.
    """
    try:
        return read_bytes(path, most)
    except TooLargeError as error:
        raise InputError(f"{path}: too large for {what}") from error
    except OSError as error:
        raise InputError(f"{path}: can't be read ({system_reason(error)})") from error


def read_input_text(path: Path, most: int, what: str) -> str:
    """Text of a file that somebody named, without the mark that some editors put before it.

    Raises
    ------
    InputError
        As for :func:`read_input`, or if it is no text in UTF-8.
    """
    try:
        return read_input(path, most, what).decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise InputError(f"{path}: not a text file in UTF-8") from error


def is_folder(path: Path) -> bool:
    """Whether there is a folder; no name, however long or odd, makes this fail."""
    try:
        return path.is_dir()
    except (OSError, ValueError):
        return False
