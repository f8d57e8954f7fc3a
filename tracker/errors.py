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
}
_BY_NUMBER = {
    getattr(errno, name): reason
    for reason, names in SYSTEM_REASONS.items()
    for name in names
    if hasattr(errno, name)
}
#: Windows' own number of "another program uses it"; as ``errno`` it is a missing right.
_SHARED = 32


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


def system_reason(error: BaseException) -> str:
    """Why the system refused something: words of :data:`SYSTEM_REASONS`, which have translations.

    An error of which we know nothing better keeps the words that it came with.
    """
    if getattr(error, "winerror", None) == _SHARED:
        number: int | None = errno.EBUSY
    else:
        number = getattr(error, "errno", None)
    known = None if number is None else _BY_NUMBER.get(number)
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
