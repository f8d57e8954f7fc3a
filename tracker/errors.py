"""Errors that a person at the keyboard can act on."""

from __future__ import annotations


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


def _in_one_line(message: str) -> str:
    """A message without what would break the line or turn its letters round.

    Names out of a foreign file stand in it, and they may hold anything.
    """
    return "".join(c if c.isprintable() else "?" for c in " ".join(message.split()))
