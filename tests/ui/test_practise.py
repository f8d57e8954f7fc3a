"""``practise`` as one calls it."""

from __future__ import annotations

import errno
import json
import os
import subprocess
import sys
from functools import partialmethod
from pathlib import Path

import jsonschema
import pytest

from tracker.plan.files import save_plan
from tracker.plan.gate import QUESTIONS
from tracker.plan.starter import starter_plan
from tracker.session import journal
from tracker.session.journal import FileJournal
from tracker.session.summary_file import load_summary
from ui.cli import main
from ui.ports import Baseline

ROOT = Path(__file__).parents[2]


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    path = tmp_path / "plan.json"
    save_plan(path, starter_plan())
    return path


def test_the_help_names_every_question(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["practise", "--help"]) == 0
    out = capsys.readouterr().out
    assert all(q in out for q in QUESTIONS) and "settled_minutes" in out


@pytest.mark.parametrize(
    ("words", "code", "says"),
    [
        (["--plan", "none.json", "--no-window"], 2, "none.json: can't be read"),
        (["--plan", "P", "--no-window", "--clip", "none.mp4"], 2, "none.stage.json: can't be"),
        (["--plan", "P", "--no-window", "--stage-id", "none"], 2, "has no stage 'none'"),
        (["--plan", "P", "--no-window", "--answers", "none.json"], 2, "none.json: can't be read"),
        (["--plan", "P", "--no-window", "--out", "FULL"], 2, "is there already"),
        (["--plan", "P", "--out", "there"], 2, "--out goes with --no-window or --baseline"),
        (["--plan", "P", "--baseline", "--out", "FULL"], 2, "is there already"),
        (["--plan", "P", "--clip", "a.mp4"], 2, "--clip goes with --no-window"),
        (["--plan", "none.json"], 2, "none.json: can't be read"),
        (["--no-window"], 2, "--plan"),
    ],
)
def test_errors_say_what_to_do_and_leave_nothing(
    words: list[str],
    code: int,
    says: str,
    plan: Path,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
) -> None:
    full = tmp_path / "full"
    full.mkdir()
    (full / "x").write_text("1")
    named = {"P": str(plan), "FULL": str(full)}
    before = sorted(tmp_path.rglob("*"))
    assert main(["practise", *(named.get(w, w) for w in words)]) == code
    assert says in capsys.readouterr().err
    assert sorted(tmp_path.rglob("*")) == before


def test_without_more_words_the_window_opens_with_the_plan(
    plan: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened: list[object] = []
    monkeypatch.setattr(
        "ui.commands.open.open_program",
        lambda *, plan, baseline: opened.append((plan, baseline)) or 0,
    )
    assert main(["practise", "--plan", str(plan)]) == 0
    assert main(["practise", "--plan", str(plan), "--baseline"]) == 0
    new = plan.with_name("new")
    assert main(["practise", "--plan", str(plan), "--baseline", "--out", str(new)]) == 0
    assert opened == [(plan, None), (plan, Baseline()), (plan, Baseline(new))]


@pytest.mark.parametrize("baseline", [True, False])
def test_a_session_from_clips_can_be_the_baseline(
    plan: Path, capsys: pytest.CaptureFixture[str], baseline: bool
) -> None:
    words = ["practise", "--plan", str(plan), "--no-window", *["--baseline"] * baseline]
    assert main(words) == 0
    assert load_summary(Path(capsys.readouterr().out.splitlines()[-1])).baseline is baseline


def test_a_session_with_no_clip_is_a_session_that_was_not_done(
    plan: Path, private_data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["practise", "--plan", str(plan), "--no-window"]) == 0
    lines = capsys.readouterr().out.splitlines()
    path = Path(lines[-1])
    assert path.parent.parent == private_data_folder / "sessions"
    summary = load_summary(path)
    assert summary.exercises == [] and len(summary.not_done) == 7
    assert {r for e in summary.not_done for r in e.reasons} == {"no_clip"}


def test_answers_at_the_gate_end_it(
    plan: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    answers = tmp_path / "a.json"
    data = {"format": "turnpost-answers", "format_version": 1, "gate": {"fall": True}}
    answers.write_text(json.dumps(data))
    assert main(["schema", "answers"]) == 0
    jsonschema.validate(data, json.loads(capsys.readouterr().out))
    words = ["--plan", str(plan), "--no-window", "--answers", str(answers)]
    assert main(["practise", *words, "--out", str(tmp_path / "s")]) == 0
    assert "red_flag (fall)" in capsys.readouterr().out
    assert load_summary(tmp_path / "s" / "summary.json").ended == "red_flag"


def test_answers_of_the_week_out_of_their_time_are_said(
    plan: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    answers = tmp_path / "a.json"
    data = {"format": "turnpost-answers", "format_version": 1}
    answers.write_text(
        json.dumps({**data, "weekly": {"falls": "once", "medicines_changed": False}})
    )
    words = ["--plan", str(plan), "--no-window", "--answers", str(answers)]
    assert main(["practise", *words, "--out", str(tmp_path / "s")]) == 0
    left = "answers that nothing asked for in this session: weekly falls, medicines_changed"
    assert left in capsys.readouterr().err
    answers.write_text(json.dumps(data))
    assert main(["practise", *words, "--out", str(tmp_path / "t")]) == 0
    assert "nothing asked for" not in capsys.readouterr().err


def test_neither_qt_nor_opencv_is_imported_without_need(plan: Path, tmp_path: Path) -> None:
    code = (
        "import sys; from ui.cli import main; "
        f"main(['practise', '--plan', {str(plan)!r}, '--no-window', '--out', "
        f"{str(tmp_path / 's')!r}]); sys.exit('PySide6' in sys.modules or 'cv2' in sys.modules)"
    )
    assert subprocess.run([sys.executable, "-c", code], cwd=ROOT, check=False).returncode == 0


def test_a_disk_that_takes_nothing_gives_no_half_a_session(
    plan: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def full(path: Path) -> int:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    # Stands in for a full disk at the journal's lowest call.
    monkeypatch.setattr(journal, "_opened", full)
    monkeypatch.setattr(FileJournal, "close", partialmethod(FileJournal.close, 0.2))
    words = ["--plan", str(plan), "--no-window", "--out", str(tmp_path / "s")]
    assert main(["practise", *words]) == 1
    assert "could not be written" in capsys.readouterr().err
    assert sorted(p.name for p in tmp_path.iterdir()) == ["plan.json"]
