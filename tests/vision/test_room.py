"""Memory for pictures is taken once: it does not grow when more of them are held at a time."""

from __future__ import annotations

import subprocess
import sys

import pytest

from tracker.vision import room

#: One picture is held at a time, then two, then more; prints the bytes by which the process
#: has grown since one was held.
GROWS = """
import sys, threading
import numpy as np
from tracker.vision import room

PICTURE = np.zeros((720, 1280, 3), np.uint8)
kept = []

def memory():
    with open("/proc/self/smaps_rollup") as lines:
        return next(1024 * int(x.split()[1]) for x in lines if x.startswith("Anonymous:"))

def hold(most):
    for _ in range(20):
        held = []
        for _ in range(most):
            held.append(np.ones_like(PICTURE))
            kept.append(bytearray(300))  # what stays lies between the pictures

def pictures():
    if sys.argv[1] == "room":
        assert room.keep_room()
        room.take_room(PICTURE)
    hold(1)
    began = memory()
    for most in range(2, room.MOST_HELD):
        hold(most)
    print(memory() - began)

thread = threading.Thread(target=pictures)
thread.start()
thread.join()
"""


def grown(way: str) -> int:
    """Bytes by which a process of its own has grown."""
    done = subprocess.run(
        [sys.executable, "-c", GROWS, way], capture_output=True, text=True, check=True, timeout=60
    )
    return int(done.stdout)


@pytest.mark.skipif(sys.platform != "linux", reason="only glibc's ways are known here")
def test_more_pictures_at_a_time_take_no_more_memory() -> None:
    """Less than a tenth of a picture; without it, more than one whole."""
    picture = 720 * 1280 * 3
    assert grown("room") < 0.1 * picture
    assert grown("usual") > picture


def test_elsewhere_nothing_is_changed() -> None:
    """Only glibc was looked at."""
    assert not room.keep_room("win32")
    assert not room.keep_room("darwin")
