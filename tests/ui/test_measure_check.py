"""``check`` on a trace, without a window and without Qt."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from tests.session.synthetic import steps, turns_samples
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.summary_file import load_summary
from tracker.session.trace import save_trace
from ui.cli import main


@pytest.fixture
def trace(tmp_path: Path) -> Path:
    path = tmp_path / "t.csv"
    save_trace(path, run_samples(turns_samples(), steps(), SessionInfo()).samples)
    return path


def test_check_prints_and_writes(trace: Path, capsys: pytest.CaptureFixture[str]) -> None:
    out = trace.with_name("s.json")
    assert main(["check", str(trace), "--exercise", "turns-on-target", "--out", str(out)]) == 0
    assert "repetitions              10" in capsys.readouterr().out
    assert load_summary(out).exercises[0].done.repetitions == 10


@pytest.mark.parametrize(
    "words",
    [
        ["check", "T", "--exercise", "no-such"],
        ["check", "none.csv", "--exercise", "turns-on-target"],
        ["check", "T", "--exercise", "turns-on-target", "--out", "no/folder/s.json"],
        ["measure", "none.mp4"],
    ],
)
def test_errors_are_one_line(
    trace: Path, words: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert main([str(trace) if w == "T" else w for w in words]) == 2
    assert len(capsys.readouterr().err.strip().splitlines()) == 1


def test_no_qt_is_imported(trace: Path) -> None:
    code = (
        "import sys; from ui.cli import main; "
        f"main(['check', {str(trace)!r}, '--exercise', 'turns-on-target']); "
        "sys.exit('PySide6' in sys.modules or 'cv2' in sys.modules)"
    )
    root = Path(__file__).parents[2]
    assert subprocess.run([sys.executable, "-c", code], cwd=root, check=False).returncode == 0
