"""How soon after the command the first window stands, as it is seen on the screen.

What is held is a warm start: one came before it, which compiles and fills the caches of files and
is not held to anything but to come. Of several warm ones the middle one counts, less the time for
which other programs had the processor; that time is part of what a person waits, so that the
whole is bound too, but loosely, because it tells more of the machine than of the program.
"""

from __future__ import annotations

import os
import subprocess
import sys
import time
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtGui import QColor, QGuiApplication
from PySide6.QtWidgets import QApplication

from tests.ui.test_window import pixels
from ui import theme

pytestmark = pytest.mark.alone

ROOT = Path(__file__).parents[2]
#: The time in which the first window has to stand: the project's own aim for its machine.
WITHIN_S = 3.0
#: The same with the waiting for others: own choice, four processors' worth of work on one.
WHOLE_WITHIN_S = 4 * WITHIN_S
#: So many warm starts.
COUNTED = 3
#: Looking costs the program some of the processor.
LOOK_EVERY_S = 0.05
#: A window's ground, and the ink of its words, as shares of the window's smallest size.
GROUND_LEAST, INK_LEAST = 0.5, 0.002


def stands() -> bool:
    """Whether the screen shows a window of ours that has words on it, not an empty frame."""
    screen = QGuiApplication.primaryScreen()
    picture = pixels(screen.grabWindow(0).toImage())[..., :3]
    ground, ink = (
        int(np.all(picture == QColor(colour).getRgb()[2::-1], axis=2).sum())
        for colour in (theme.LIGHT.paper, theme.LIGHT.ink)
    )
    room = 960 * 600
    return ground > GROUND_LEAST * room and ink > INK_LEAST * room


def kept_waiting_s(number: int) -> float:
    """For how long other programs had the processor that a process was ready to use (Linux)."""
    try:
        return int(Path(f"/proc/{number}/schedstat").read_text().split()[1]) / 1e9
    except OSError:
        return 0.0


def seconds_to_window(data: Path) -> tuple[float, float]:
    """Start the command as a person does; the time until its window stands, whole and its own.

    Its own is without that in which it waited for other programs of a shared machine.
    """
    kept = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
    ours = {
        "TURNPOST_DATA": str(data),
        "PYTHONPATH": str(ROOT),
        # What the first start compiles is there for the next, as in any folder of one's own.
        "PYTHONPYCACHEPREFIX": str(data.parent / "compiled"),
    }
    began_s = time.monotonic()
    command = [sys.executable, "-m", "ui.cli"]
    with subprocess.Popen(command, cwd=data.parent, env=kept | ours) as program:
        try:
            while not stands():
                assert program.poll() is None, "the program ended"
                assert time.monotonic() - began_s < 60.0, "no window came"
                time.sleep(LOOK_EVERY_S)
            whole_s = time.monotonic() - began_s
            return whole_s, whole_s - kept_waiting_s(program.pid)
        finally:
            program.terminate()


def test_the_first_window_stands_within_three_seconds(qapp: QApplication, tmp_path: Path) -> None:
    """Warm, the middle one of :data:`COUNTED`, less waiting for others; loosely with that, too."""
    assert not stands()
    times_s = []
    for _ in range(1 + COUNTED):
        times_s.append(seconds_to_window(tmp_path / "data"))
        deadline_s = time.monotonic() + 5.0
        while stands():
            assert time.monotonic() < deadline_s, "the window stays"
            time.sleep(0.02)
    whole_s, own_s = np.median(times_s[1:], axis=0)
    assert own_s < WITHIN_S, times_s
    assert whole_s < WHOLE_WITHIN_S, times_s
