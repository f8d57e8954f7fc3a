"""Shared memory with one owner, who takes it away however things end.

A block holds a picture of a person, so none may stay behind. Its owner takes it
away when done, at the latest at its own exit; joining it makes nobody else
responsible. What an owner leaves that was killed (and Python's own tracker of
such blocks with it), the next owner takes away.
"""

from __future__ import annotations

import atexit
import contextlib
import errno
import os
import secrets
import threading
import time
from collections.abc import Iterator
from multiprocessing import shared_memory
from multiprocessing.shared_memory import SharedMemory
from pathlib import Path

from tracker.errors import RunError
from tracker.session.lock import lock

#: Names are PREFIX, the owner's process number, a token; at most 30 characters (macOS).
PREFIX = "turnpost-"
#: Where Linux shows shared memory as files.
SHOWN_IN = Path("/dev/shm")
#: A block younger than this may not have been locked by its owner yet (this project's own choice:
#: far longer than a start takes).
YOUNG_S = 20.0
_registering = threading.Lock()


class OwnBlock:
    """A new block of shared memory.

    Parameters
    ----------
    size
        In bytes.

    Raises
    ------
    RunError
        If there is too little memory for it.
    OSError
        If the system refuses it for another reason.
    """

    def __init__(self, size: int) -> None:
        take_away_orphans()
        name = f"{PREFIX}{os.getpid()}-{secrets.token_hex(4)}"
        with _memory_told():
            self.memory = SharedMemory(name=name, create=True, size=size)
        atexit.register(self.take_away)
        self._sign = _life_sign(name)
        self._there = True
        try:
            with _memory_told():
                self._take_room(size)
        except (OSError, RunError):
            self.take_away()
            raise

    def _take_room(self, size: int) -> None:
        """Take all of it now (Linux): whoever writes into what isn't there is killed."""
        if self._sign is not None:
            os.posix_fallocate(self._sign, 0, size)

    def take_away(self) -> None:
        """Take the block away; once or more often."""
        if not self._there:
            return
        self._there = False
        atexit.unregister(self.take_away)
        # A picture that is being copied at this moment holds it a little longer.
        with contextlib.suppress(BufferError):
            self.memory.close()
        with contextlib.suppress(FileNotFoundError):
            self.memory.unlink()
        if self._sign is not None:
            os.close(self._sign)


@contextlib.contextmanager
def _memory_told() -> Iterator[None]:
    """Say what is full: the system speaks of a disk, as Linux shows this memory as one."""
    try:
        yield
    except OSError as error:
        if error.errno != errno.ENOSPC:
            raise
        raise RunError(
            "too little memory for pictures; start the computer anew, and if it comes again, have "
            "more room given to it"
        ) from error


def join(name: str) -> SharedMemory:
    """Join a block by its name.

    Python's tracker would take a block for lost, and say so, that was joined
    while its owner took it away: it is not told.
    """
    with _registering, _untracked():
        return SharedMemory(name=name)


def take_away_orphans() -> None:
    """Take away blocks whose owner has ended without doing so (Linux)."""
    try:
        found = list(SHOWN_IN.glob(f"{PREFIX}*"))
    except OSError:
        return
    for path in found:
        with contextlib.suppress(OSError):
            if time.time() - path.stat().st_ctime < YOUNG_S:
                continue
            handle = os.open(path, os.O_RDWR)
            try:
                if lock(handle):
                    path.unlink()
            finally:
                os.close(handle)


def _life_sign(name: str) -> int | None:
    """Lock the block for as long as its owner lives, where that can be done."""
    try:
        handle = os.open(SHOWN_IN / name, os.O_RDWR)
    except OSError:
        return None
    lock(handle)
    return handle


@contextlib.contextmanager
def _untracked() -> Iterator[None]:
    """Keep a block that is joined from Python's tracker (an argument from Python 3.13 on)."""
    tracker = getattr(shared_memory, "resource_tracker", None)
    if tracker is None:  # Windows, where blocks go with the last who has them
        yield
        return
    before = tracker.register
    tracker.register = lambda *_: None
    try:
        yield
    finally:
        tracker.register = before
