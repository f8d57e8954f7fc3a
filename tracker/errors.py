"""Errors that a person at the keyboard can act on."""

from __future__ import annotations

import errno

#: Why the system refuses something, in our own words: its own are in a language of its own, and
#: not everybody's. By the names of POSIX; a name that this system doesn't know is passed over.
SYSTEM_REASONS: dict[str, tuple[str, ...]] = {
    "this account has no right to it": ("EACCES", "EPERM"),
    "nothing can be changed there, only read": ("EROFS",),
    "the disk is full": ("ENOSPC", "EDQUOT"),
    "it is not there": ("ENOENT", "ENOTDIR"),
    "it is a folder": ("EISDIR",),
    "something of this name is there already": ("EEXIST",),
    "something else lies in it": ("ENOTEMPTY",),
    "the name is too long": ("ENAMETOOLONG",),
    "it is too large": ("EFBIG",),
    "another program is using it": ("EBUSY", "ETXTBSY", "EAGAIN", "EDEADLK"),
    "the disk has a fault": ("EIO",),
    "the disk is no longer connected": ("ENODEV", "ENXIO"),
    "the place on the network does not answer": ("ESTALE", "ETIMEDOUT", "EHOSTDOWN"),
    "its links lead round in a circle": ("ELOOP",),
    "too many files are open": ("EMFILE", "ENFILE"),
    "the computer has too little memory": ("ENOMEM",),
    "this name can't be used here": ("EINVAL",),
}
#: The same by Windows' own numbers, which tell more: as ``errno`` most of them are a missing
#: right or a wrong value (Microsoft's list of system error codes, and CPython's table from these
#: to ``errno``; both from memory).
WINDOWS_REASONS: dict[str, tuple[int, ...]] = {
    "nothing can be changed there, only read": (19,),
    "the disk is no longer connected": (20, 21),
    "the disk has a fault": (23, 27, 29, 30, 31, 1117),
    "another program is using it": (32, 33),
    "the disk is full": (39, 112),
    "the place on the network does not answer": (53, 64, 121),
    "this name can't be used here": (123, 161),
}
_BY_NUMBER = {
    getattr(errno, name): reason
    for reason, names in SYSTEM_REASONS.items()
    for name in names
    if hasattr(errno, name)
}
_BY_WINDOWS = {number: reason for reason, of in WINDOWS_REASONS.items() for number in of}
#: Numbers of Windows that CPython takes for a missing right, whatever they are.
_TAKEN_FOR_NO_RIGHT = range(19, 37)


class TurnpostError(Exception):
    """Base of every error that is shown to the user as one plain line.

    The message says what is wrong and what to do; ``exit_code`` is what the
    command line ends with.
    """

    exit_code = 1

    def __init__(self, message: str = "") -> None:
        super().__init__(_in_one_line(message))


class InputError(TurnpostError):
    """A wrong call or an input that can't be used (exit code 2)."""

    exit_code = 2


class RunError(TurnpostError):
    """Something failed while running: a device, a disk, a missing model (exit code 1)."""

    exit_code = 1


class RefusedError(OSError):
    """What this program refuses in the system's place; its words are our own."""


def system_reason(error: BaseException) -> str:
    """Why the system refused something: words of :data:`SYSTEM_REASONS`, which have translations.

    An error of which we know nothing better keeps the words that it came with.
    """
    if isinstance(error, RefusedError):
        return str(error.strerror)
    windows, number = getattr(error, "winerror", None), getattr(error, "errno", None)
    known = _BY_WINDOWS.get(windows) if windows else None
    # A number of Windows that nobody knows comes as EINVAL.
    guessed = windows and (windows in _TAKEN_FOR_NO_RIGHT or number == errno.EINVAL)
    if known is None and number is not None and not guessed:
        known = _BY_NUMBER.get(number)
    return known or getattr(error, "strerror", None) or str(error) or type(error).__name__


def in_words(error: BaseException) -> str:
    """Why something failed: our own sentence, the system's reason in our words, or Python's own."""
    if isinstance(error, TurnpostError):
        return str(error)
    return system_reason(error) if isinstance(error, OSError) else repr(error)


def _in_one_line(message: str) -> str:
    """A message without what would break the line or turn its letters round.

    Names out of a foreign file stand in it, and they may hold anything.
    """
    return "".join(c if c.isprintable() else "?" for c in " ".join(message.split()))
