"""The program outlives any number of calls of Qt."""

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
