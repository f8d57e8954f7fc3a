"""Whether a screen of X answers, asked in the way in which Qt asks for it."""

from __future__ import annotations

import ctypes
import os


def unreached() -> str:
    """Name of the screen that windows would be opened on and that does not answer, else nothing.

    Only where X alone shows windows; whether another system of windows answers is not asked.
    """
    display = os.environ.get("DISPLAY", "")
    if not display or os.environ.get("WAYLAND_DISPLAY"):
        return ""
    return "" if answers(display) else display


def answers(display: str) -> bool:
    """Whether a screen of X can be reached; true where nobody can ask."""
    try:
        xcb = ctypes.CDLL("libxcb.so.1")
    except OSError:
        # Qt has one of its own, then.
        return True
    xcb.xcb_connect.restype = ctypes.c_void_p
    screen = ctypes.c_void_p(xcb.xcb_connect(os.fsencode(display), None))
    failed = xcb.xcb_connection_has_error(screen)
    xcb.xcb_disconnect(screen)
    return not failed
