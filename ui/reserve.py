"""Keeps Python's constants alive on versions in which they can die.

PySide6 6.12.0 gives away a reference to None that it doesn't have with every call
that returns nothing (seen with Python 3.11.7: one a call; with PySide6 6.11.3: none).
Before Python 3.12 made such constants immortal, None is gone after some ten thousand
calls, that is minutes of practice, and the whole program aborts. A reserve of
references that no session can use up makes them as good as immortal.
"""

from __future__ import annotations

import ctypes
import sys

#: More than a program that paints without pause could give away in a hundred years.
RESERVE = 1 << 44
_CONSTANTS = (None, True, False, NotImplemented, Ellipsis)


def keep_constants_alive() -> None:
    """Give the constants their reserve, once; nothing to do from Python 3.12 on."""
    if sys.version_info >= (3, 12) or sys.implementation.name != "cpython":
        return
    for constant in _CONSTANTS:
        if sys.getrefcount(constant) < RESERVE // 2:
            # The count of references is the first field of every object.
            ctypes.c_ssize_t.from_address(id(constant)).value += RESERVE
