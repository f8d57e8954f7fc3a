"""What a crash leaves behind: no image of the memory, in which there are pictures of a person."""

from __future__ import annotations

import contextlib
import importlib

#: The most bytes of an image (setrlimit(2)). Linux hands a crash to a program of the system at 0,
#: too; at 1 it does not, and no file is as small as that (fs/coredump.c).
MOST_BYTES = 1


def leave_no_image() -> None:
    """Have the system keep nothing of this process, and of those it starts, if it crashes.

    Where the system has no such limit (Windows), nothing is done. Where its hard limit is 0 it
    can't be raised to :data:`MOST_BYTES`: no file is left, but Linux may hand a crash to a program
    of the system. (To call the process undumpable would stop that, too, but may keep the
    desktop's portals from seeing who asks them for a dialog; that was not tried.)
    """
    try:
        resource = importlib.import_module("resource")
    except ImportError:
        return
    _, hard = resource.getrlimit(resource.RLIMIT_CORE)
    with contextlib.suppress(OSError, ValueError):
        resource.setrlimit(resource.RLIMIT_CORE, (0 if hard == 0 else MOST_BYTES, hard))
