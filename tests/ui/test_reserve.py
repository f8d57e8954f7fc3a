"""The program outlives any number of calls of Qt, with the reserve or without the need of one."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]

CALLS = """
import sys
from PySide6.QtWidgets import QLabel
from ui.opening import make_app
app = make_app()
label = QLabel("x")
for _ in range(400_000):
    label.update()
    label.setText("y")
print("alive", flush=True)
"""


@pytest.mark.gui
def test_many_calls_do_not_end_the_program() -> None:
    done = subprocess.run(
        [sys.executable, "-c", CALLS],
        cwd=ROOT,
        capture_output=True,
        text=True,
        timeout=100,
        check=False,
    )
    assert done.stdout.strip() == "alive", done.stderr[-500:]
    assert done.returncode == 0, done.stderr[-500:]


# Asked in a program of its own, since the tests' own process has its reserve already.
COUNTS = """
import sys
from ui.reserve import RESERVE, keep_constants_alive

before = sys.getrefcount(None)
keep_constants_alive()
given = sys.getrefcount(None) - before
keep_constants_alive()
again = sys.getrefcount(None) - before - given
held = [None] * 5000
kept = sys.getrefcount(None) - before - given - again
print(given / RESERVE, again / RESERVE, kept)
"""


def test_what_can_die_gets_a_reserve_once_and_what_cannot_is_left_alone() -> None:
    # PEP 683: from Python 3.12 on None is immortal, and its count doesn't follow its references.
    words = subprocess.run(
        [sys.executable, "-c", COUNTS], cwd=ROOT, capture_output=True, text=True, check=True
    ).stdout.split()
    given, again, kept = (float(word) for word in words)
    if sys.version_info >= (3, 12):
        assert (given, again, kept) == (0, 0, 0)
    else:
        assert given == pytest.approx(1, abs=1e-6)
        assert again == pytest.approx(0, abs=1e-6)
        assert kept >= 5000
