"""Locks of the system on open files: gone with their owner, however that ends.

A lock file that merely exists would stay after a crash; a lock that the system
keeps on an open file can't. The file's content is never touched by it.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path

#: Windows locks bytes and refuses them to readers, so one far behind any content is taken.
_FAR_BYTE = 2**31 - 2
#: Files are opened so: as bytes on Windows too.
BINARY = getattr(os, "O_BINARY", 0)
#: In the data folder; the program holds it while its window is open.
LOCK_NAME = "open.lock"


def lock(handle: int) -> bool | None:
    """Lock an open file for this handle; never waits.

    The lock ends when the handle is closed or its process ends. Handles of one
    process exclude each other, too.

    Returns
    -------
    bool or None
        True if it is ours now, False if somebody else has it, None where the
        file's system knows no locks.
    """
    try:
        if sys.platform == "win32":
            import msvcrt

            os.lseek(handle, _FAR_BYTE, os.SEEK_SET)
            msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
        else:
            import fcntl

            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except (BlockingIOError, PermissionError):
        return False
    except OSError:
        return None
    return True


class OnlyCopy:
    """Whether this is the only program that has a file locked; holds it until closed.

    Where the file can't be made or the system knows no locks, ``mine`` is true:
    better two copies than none.
    """

    def __init__(self, path: Path) -> None:
        self._handle: int | None = None
        self.mine = True
        try:
            self._handle = os.open(path, os.O_RDWR | os.O_CREAT | BINARY, 0o600)
        except OSError:
            return
        self.mine = lock(self._handle) is not False

    def close(self) -> None:
        """Let it go."""
        if self._handle is not None:
            os.close(self._handle)
            self._handle = None
