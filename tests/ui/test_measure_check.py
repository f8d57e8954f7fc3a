"""``check`` on a trace, without a window and without Qt."""

from __future__ import annotations

import json
import subprocess
import sys
from dataclasses import replace
from math import nan
from pathlib import Path

import jsonschema
import pytest

from tests.session.synthetic import steps, turns_samples
from tracker.session.clip_run import run_samples
from tracker.session.figures import NOT_CHECKED
from tracker.session.live import SessionInfo
from tracker.session.reckoned import NO_SETUP, UNKNOWN_SETUP
from tracker.session.stage import StageLog
from tracker.session.summary_file import Summary, load_summary
from tracker.session.trace import save_trace
from ui.cli import main
from ui.commands.schema import published


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


def summary_of(trace: Path, exercise: str = "turns-on-target") -> Summary:
    out = trace.with_name("s.json")
    assert main(["check", str(trace), "--exercise", exercise, "--out", str(out)]) == 0
    jsonschema.validate(json.loads(out.read_text(encoding="utf-8")), published("summary"))
    return load_summary(out)


@pytest.fixture
def looks_away(tmp_path: Path) -> Path:
    """A trace with a look 15 degrees aside, as a session saves it."""
    path = tmp_path / "trace.csv"
    record = run_samples(turns_samples(glances=[(8.0, 9.5, 15.0)]), steps(), SessionInfo())
    save_trace(path, record.samples)
    return path


def beside(trace: Path, setup: dict[str, object] | None) -> None:
    log = StageLog.model_validate({"setup": setup, "steps": steps()})
    trace.with_name("stage.json").write_text(log.model_dump_json(), encoding="utf-8")


def test_a_trace_alone_says_that_its_set_up_is_not_known(
    looks_away: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for alone in (True, False):
        if not alone:
            # A stage log that says nothing of a set-up is no better.
            beside(looks_away, None)
        summary = summary_of(looks_away)
        assert "whether this trace had a set-up" in capsys.readouterr().err
        (told,) = summary.exercises
        for flags in (summary.quality, told.quality):
            assert [f.flag for f in flags] == ["setup_unknown"]
        # Its columns are judged as they stand, and their errors are not known.
        assert [e.code for e in told.events] == ["gaze_off_target"]
        assert told.gaze is not None and told.gaze["on_target_fraction"]["value"] < 1.0
        assert told.gaze["error_deg"]["median"] < 1.0 and told.head is not None
        for figure in (told.head["amplitude_deg"], told.gaze["counter_turn_ratio"]):
            assert figure["median"] is not None
            assert figure["uncertainty"]["expanded"] is None
            assert figure["uncertainty"]["reason"] == UNKNOWN_SETUP


def test_a_trace_with_what_its_set_up_found_is_judged_by_that(looks_away: Path) -> None:
    beside(looks_away, {"calibration": "fitted", "gaze_error_deg": 0.5})
    summary = summary_of(looks_away)
    (told,) = summary.exercises
    assert [e.code for e in told.events] == ["gaze_off_target"]
    assert summary.quality == [] and told.quality == []
    # One that measured no error is known, and so allows no verdict.
    beside(looks_away, {"calibration": "fitted"})
    (told,) = summary_of(looks_away).exercises
    assert told.events == [] and told.gaze is not None
    assert told.gaze["on_target_fraction"]["reason"] == NOT_CHECKED


def test_a_trace_without_a_set_up_says_so(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    bare = [
        replace(s, gaze_yaw_deg=nan, gaze_pitch_deg=nan, reason="no_setup") for s in turns_samples()
    ]
    save_trace(tmp_path / "t.csv", bare)
    summary = summary_of(tmp_path / "t.csv")
    assert "generic values were used" in capsys.readouterr().err
    (told,) = summary.exercises
    for flags in (summary.quality, told.quality):
        assert [f.flag for f in flags] == ["no_setup"]
    assert told.head is not None
    assert told.head["amplitude_deg"]["uncertainty"]["reason"] == NO_SETUP


def test_marks_on_the_wall_are_told_without_an_error_that_nobody_knows(
    looks_away: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A set-up was there, and measured none."""
    wall = {"distance_mm": 1500.0}
    log = {
        "setup": {"calibration": "fitted"},
        "steps": [s.model_dump(exclude_none=True) | {"wall": wall} for s in steps()[1:]],
    }
    looks_away.with_name("stage.json").write_text(json.dumps(log), encoding="utf-8")
    (told,) = summary_of(looks_away).exercises
    assert told.prescribed["wall"]["gaze_error_deg"] is None and told.events == []
    assert "gaze error there, deg    not known" in capsys.readouterr().out


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
