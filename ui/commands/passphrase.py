"""Asking for a passphrase at the keyboard, where nobody sees it; or reading it from a pipe."""

from __future__ import annotations

import getpass
import sys

from tracker.errors import InputError


def ask_passphrase(prompt: str, *, again: bool = False) -> str:
    """A passphrase; ``again`` asks twice, for a new one.

    Raises
    ------
    InputError
        If none was given, or the two differ.
    """
    if not sys.stdin.isatty():
        given = sys.stdin.readline().rstrip("\r\n")
    else:
        given = getpass.getpass(f"{prompt}: ")
        if again and getpass.getpass("Once more: ") != given:
            raise InputError("the two are not the same; try again")
    if not given:
        raise InputError("no passphrase was given")
    return given
