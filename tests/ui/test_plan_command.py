"""``plan``, ``schema`` and ``check --plan``, as one calls them."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from sample_clips import __file__ as clips
from tests.plan.examples import TEXT, changed
from tests.session.synthetic import steps, turns_samples
from tracker.exercises.catalogue import CATALOGUE
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.summary import summarise
from tracker.session.summary_file import load_summary
from tracker.session.trace import save_trace
from ui.cli import main

ROOT = Path(__file__).parents[2]


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    path = tmp_path / "plan.json"
    path.write_text(TEXT, encoding="utf-8")
    return path


@pytest.fixture
def trace(tmp_path: Path) -> Path:
    path = tmp_path / "t.csv"
    save_trace(path, run_samples(turns_samples(), steps(), SessionInfo()).samples)
    return path


def test_the_catalogue_is_one_line_an_exercise(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["plan", "show"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert [line.split()[0] for line in lines] == list(CATALOGUE)
    uncounted = [
        line.split()[0] for line in lines if "not counted" in line or "held, timed" in line
    ]
    assert uncounted == [e.id for e in CATALOGUE.values() if not e.counted]


def test_the_forms_of_the_programme_stand_on_their_line(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """Standing is three rows of the programme: eyes open, eyes closed, and on a soft surface."""
    assert main(["plan", "show"]) == 0
    lines = {line.split()[0]: line for line in capsys.readouterr().out.splitlines()}
    forms = "[firm surface: eyes open and closed; soft surface: eyes open and closed]"
    assert lines["stand"].endswith(forms)
    for name in ("stand-head-shake", "weight-shift"):
        assert lines[name].endswith("[soft surface: eyes open and closed]")
    assert "[" not in lines["turns-on-target"] and "[" not in lines["stand-tandem"]


def test_the_table_of_options_is_shown(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["plan", "show", "--options"]) == 0
    head, *rows = capsys.readouterr().out.splitlines()
    assert [row.split()[0] for row in rows] == list(CATALOGUE)
    toss = next(row.split()[1:] for row in rows if row.startswith("hand-toss"))
    found = dict(zip(head.split(), toss, strict=True))
    assert (found["eyes_closed"], found["sitting"]) == ("never", "allowed")


def test_a_starter_plan_is_made_once_and_can_be_used(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "new.json"
    assert main(["plan", "new", "--out", str(path)]) == 0
    before = path.read_bytes()
    assert main(["plan", "check", str(path)]) == 0
    out = capsys.readouterr().out
    assert "can be used; 24 entries" in out and "remark: line 15, emergency_number" in out
    assert main(["plan", "new", "--out", str(path)]) == 2
    assert "is there already" in capsys.readouterr().err
    assert path.read_bytes() == before


def test_a_starter_plan_without_a_file_is_printed(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["plan", "new"]) == 0
    (tmp_path / "p.json").write_text(capsys.readouterr().out)
    assert main(["plan", "show", str(tmp_path / "p.json")]) == 0
    out = capsys.readouterr().out
    order = [out.index(f"({stage}") for stage in ("eyes-and-head", "body-sitting", "walking")]
    assert order == sorted(order)


def test_a_plan_is_shown_as_it_stands_in_a_week(
    plan: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["plan", "show", str(plan), "--week", "5"]) == 0
    later = capsys.readouterr().out
    assert main(["plan", "show", str(plan), "--week", "1"]) == 0
    first = capsys.readouterr().out
    assert "12 times; 60 to 90 beats a minute; 10 to 15 degrees" in first
    assert "12 times; 80 beats a minute; 15 to 25 degrees" in later
    for said in (
        "for P-07",
        "emergency number: +44 112",
        "45 s; own pace",
        "opens when the patient agrees and: Steady with the eyes open.",
        "helper within reach",
        "at least 20 for a chronic loss",
        "as quoted",
    ):
        assert said in first


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["plan", "check", "P"], "line 8, affected_side: a bilateral loss"),
        (["plan", "show", "P"], "line 8, affected_side"),
        (["plan", "show", "none.json"], "none.json: can't be read"),
        (["plan", "show", "--week", "0"], "--week counts from 1"),
        (["plan", "new", "--out", "no/folder/p.json"], "there is no folder"),
    ],
)
def test_errors_are_one_line(
    words: list[str], says: str, plan: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    plan.write_text(changed("kind_of_loss", "bilateral"))
    rows = plan.read_text().splitlines()
    line = next(k for k, row in enumerate(rows, 1) if '"affected_side"' in row)
    assert main([str(plan) if w == "P" else w for w in words]) == 2
    err = capsys.readouterr().err.strip()
    assert len(err.splitlines()) == 1
    assert says.replace("line 8", f"line {line}") in err


def checked(trace: Path, plan: Path, *words: str) -> Any:
    out = trace.with_name("s.json")
    call = ["check", str(trace), "--exercise", "turns-on-target", "--plan", str(plan)]
    assert main([*call, "--out", str(out), *words]) == 0
    return load_summary(out)


def test_check_asks_for_what_the_plan_asks(trace: Path, plan: Path) -> None:
    summary = checked(trace, plan, "--entry", "turns")
    assert (summary.plan_id, summary.person) == ("plan-7", "P-07")
    found = summary.exercises[0]
    assert found.entry_id == "turns"
    assert found.prescribed["repetitions"] == 12 and found.prescribed["seconds"] is None
    assert found.prescribed["tempo_bpm"] == [60.0, 90.0]
    assert found.prescribed["amplitude_deg"] == [10.0, 15.0]
    # The trace has 18 degrees and 60 beats a minute throughout.
    assert found.done.repetitions == 10
    assert {e.code for e in found.events} == {"too_slow"}


def test_check_judges_another_week_and_entry_by_theirs(trace: Path, plan: Path) -> None:
    codes = {
        week: {
            e.code
            for e in checked(trace, plan, "--entry", "turns", "--week", week).exercises[0].events
        }
        for week in ("2", "4")
    }
    assert codes["2"] == {"too_slow"}
    assert codes["4"] == {"too_slow"}
    data = json.loads(TEXT)
    data["entries"][0] |= {"tempo_bpm": 60, "amplitude_deg": [25, 30], "ladder": []}
    plan.write_text(json.dumps(data))
    found = checked(trace, plan, "--entry", "turns").exercises[0]
    assert {e.code for e in found.events} == {"too_small"}
    free = checked(trace, plan, "--entry", "turns-free").exercises[0]
    assert free.events == []  # at one's own pace nothing is too slow
    assert (free.prescribed["seconds"], free.prescribed["repetitions"]) == (45.0, None)
    assert free.prescribed["tempo_bpm"] is None


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["--exercise", "turns-on-target"], "name one of turns, turns-free"),
        (["--exercise", "walk"], "has no entry for 'walk'; it has: turns-on-target, stand"),
        (["--exercise", "stand", "--entry", "turns"], "has no entry 'turns' for 'stand'"),
    ],
)
def test_a_plan_without_a_fitting_entry_is_refused(
    words: list[str], says: str, trace: Path, plan: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["check", str(trace), "--plan", str(plan), *words]) == 2
    err = capsys.readouterr().err.strip()
    assert says in err and len(err.splitlines()) == 1


def test_an_entry_without_a_plan_is_refused(
    trace: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["check", str(trace), "--exercise", "stand", "--entry", "corner"]) == 2
    assert "belong to a plan" in capsys.readouterr().err


def test_what_is_not_counted_says_so(trace: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", str(trace), "--exercise", "walk"]) == 0
    out = capsys.readouterr().out
    assert "not counted: the camera does not count this exercise" in out
    assert "amplitude" not in out


def test_shoulders_that_were_never_looked_for_have_no_count(
    trace: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["check", str(trace), "--exercise", "shoulders-back"]) == 0
    out = capsys.readouterr().out
    assert "not counted: what it is counted from was never measured" in out
    assert "amplitude" not in out


def schema_of(kind: str, capsys: pytest.CaptureFixture[str]) -> jsonschema.Draft202012Validator:
    assert main(["schema", kind]) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["$schema"].endswith("2020-12/schema")
    jsonschema.Draft202012Validator.check_schema(found)
    return jsonschema.Draft202012Validator(found)


def test_plans_fit_the_schema_that_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    check = schema_of("plan", capsys)
    check.validate(json.loads(TEXT))
    assert not check.is_valid(json.loads(changed("entries.0.colour", "red")))


@pytest.mark.parametrize("exercise", ["turns-on-target", "eyes-side-to-side", "stand"])
def test_summaries_fit_the_schema_that_is_printed(
    exercise: str, capsys: pytest.CaptureFixture[str]
) -> None:
    check = schema_of("summary", capsys)
    record = run_samples(turns_samples(lost=[(8.0, 9.0)]), steps(exercise), SessionInfo())
    data = summarise(record).model_dump(mode="json")
    check.validate(data)
    for wrong in ({"ended": "bored"}, {"format": "turnpost-plan"}, {"exercises": [{}]}):
        assert not check.is_valid(data | wrong)


def test_stage_logs_fit_the_schema_that_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    check = schema_of("stage", capsys)
    logs = sorted(Path(clips).parent.rglob("*.stage.json"))
    assert logs
    for log in logs:
        check.validate(json.loads(log.read_text(encoding="utf-8")))
    step = {"from_s": 0, "to_s": 1, "step": "rest"}
    check.validate({"steps": [step]})
    for wrong in ({"step": "nap"}, {"tempo_bpm": 0}, {"target_mm": [1, 2]}, {"to_s": "late"}):
        assert not check.is_valid({"steps": [step | wrong]})


@pytest.mark.parametrize(
    "words", [["plan", "show"], ["plan", "new"], ["plan", "check", "P"], ["schema", "summary"]]
)
def test_no_qt_is_imported(words: list[str], plan: Path) -> None:
    words = [str(plan) if w == "P" else w for w in words]
    code = (
        f"import sys; from ui.cli import main; code = main({words!r}); "
        "sys.exit(code or 'PySide6' in sys.modules or 'cv2' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, check=False, capture_output=True)
    assert done.returncode == 0, done.stderr
