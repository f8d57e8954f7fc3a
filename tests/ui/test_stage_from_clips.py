"""A whole stage of the starter plan, practised from clips with no window and nobody to answer.

Real pixels, in a process of its own that must not import Qt. Two clips are shipped ones, cut;
the other five are drawn for it, small and short: what is tested is that a session comes of
them, not how exactly a camera measures (``tests/sample_clips``).
"""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from sample_clips import shipped_clip
from sample_clips.render import render_scenario
from sample_clips.scenario import Scenario
from tests.vision.clip_files import first_part
from tracker.plan.files import save_plan
from tracker.plan.starter import starter_plan
from tracker.session.summary_file import Summary, load_summary
from ui.cli import main

pytestmark = [pytest.mark.slow, pytest.mark.timeout(900)]
ROOT = Path(__file__).parents[2]
STAGE = "eyes-and-head"
SMALL = {"width_px": 480, "height_px": 360, "vertical_fov_deg": 40.0, "rate_hz": 15}
#: The fingertip is brought near from as far as the exercise asks for.
BACK = SMALL | {"vertical_fov_deg": 23.4, "position_mm": (0.0, 60.0, 1000.0), "tilt_deg": 3.0}
NODS = {"kind": "nods", "amplitude_deg": 13, "tempo_bpm": 60, "repetitions": 3}
TURNS = {"kind": "turns", "amplitude_deg": 18, "tempo_bpm": 60, "repetitions": 3}
#: Exercise -> how it is drawn; a set-up (18 s of each clip) only where eyes are counted.
DRAWN: dict[str, dict[str, Any]] = {
    "eyes-up-down": {
        "setup": True,
        "movement": {"kind": "jumps", "vertical": True, "tempo_bpm": 40, "repetitions": 3},
    },
    "nods-on-target": {"movement": NODS},
    "nods-together": {"movement": NODS, "eyes_with_head": True},
    "turns-together": {"movement": TURNS, "eyes_with_head": True},
    "near-far": {
        "setup": True,
        "camera": BACK,
        "target_distance_mm": 1000,
        "movement": {"kind": "near_far", "tempo_bpm": 30, "repetitions": 2},
    },
}
#: Shipped clips, until so long after their set-ups (18 s) that a few repetitions are in them.
SHIPPED = {"turns-on-target": "turns-good", "eyes-side-to-side": "jumps-head-helps"}
CUT_S = 25.0


@pytest.fixture(scope="module")
def clips(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    """A clip for each entry of the stage."""
    folder = tmp_path_factory.mktemp("clips")
    found = {x: first_part(shipped_clip(name), folder, CUT_S) for x, name in SHIPPED.items()}
    for exercise, drawn in DRAWN.items():
        scenario = {"name": exercise, "exercise": exercise, "seed": 7, "camera": SMALL}
        scenario |= {"setup": False} | drawn
        found[exercise] = render_scenario(Scenario.model_validate(scenario), folder)
    return found


@pytest.fixture(scope="module")
def plan(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("plan") / "plan.json"
    save_plan(path, starter_plan())
    return path


@pytest.fixture(scope="module")
def folder(plan: Path, clips: dict[str, Path], tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of the session that comes of them."""
    made = tmp_path_factory.mktemp("session") / "s"
    words = ["practise", "--plan", str(plan), "--no-window", "--out", str(made)]
    for clip in clips.values():
        words += ["--clip", str(clip)]
    code = (
        f"import sys; from ui.cli import main; code = main({words!r}); "
        "sys.exit(code or 5 * ('PySide6' in sys.modules))"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, check=False)
    assert done.returncode == 0
    return made


@pytest.fixture(scope="module")
def summary(folder: Path) -> Summary:
    return load_summary(folder / "summary.json")


def test_the_stage_is_done_whole_and_in_its_order(summary: Summary) -> None:
    asked = [e.entry_id for e in starter_plan().entries if e.stage == STAGE]
    assert len(asked) == len(DRAWN) + len(SHIPPED) == 7
    assert [e.entry_id for e in summary.exercises] == asked
    assert (summary.not_done, summary.ended) == ([], "finished")


def test_there_is_one_summary_and_it_is_valid(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert [p.relative_to(folder).as_posix() for p in folder.rglob("summary*")] == ["summary.json"]
    assert main(["schema", "summary"]) == 0
    schema = json.loads(capsys.readouterr().out)
    found = json.loads((folder / "summary.json").read_text(encoding="utf-8"))
    jsonschema.validate(found, schema)
    # The schema is one that can say no.
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(found | {"exercises": "seven"}, schema)


def test_what_was_done_is_counted(summary: Summary) -> None:
    counted = {e.exercise: e.done.repetitions for e in summary.exercises}
    for exercise, drawn in DRAWN.items():
        off = abs((counted[exercise] or 0) - drawn["movement"]["repetitions"])
        assert off <= (exercise == "near-far"), exercise
    assert all(counted[exercise] for exercise in SHIPPED)


def test_what_nobody_could_answer_was_not_asked(summary: Summary) -> None:
    gate = summary.gate
    assert gate["outcome"] == "not_asked"
    assert gate["answers"] and set(gate["answers"].values()) == {None}
    for part in (summary, *summary.exercises):
        symptoms = part.symptoms
        assert {symptoms[k] for k in ("before", "after", "settled_minutes")} == {None}
        assert set(symptoms["reasons"].values()) == {"not asked"}
    asked = [e.clarity for e in summary.exercises if e.exercise in ("turns-on-target", "near-far")]
    assert asked == [{"value": None, "reason": "not asked"}] * 2
    assert {e.own_count for e in summary.exercises} == {None}
    assert "from_clips" in {flag.flag for flag in summary.quality}


def test_a_clip_of_a_session_agrees_with_check(
    plan: Path, clips: dict[str, Path], summary: Summary, tmp_path: Path
) -> None:
    alone = tmp_path / "alone.json"
    call = ["check", str(clips["turns-on-target"]), "--exercise", "turns-on-target"]
    assert main([*call, "--plan", str(plan), "--out", str(alone)]) == 0
    by_itself = load_summary(alone).exercises[0]
    found = next(e for e in summary.exercises if e.exercise == "turns-on-target")
    assert (found.done, found.head, found.gaze) == (by_itself.done, by_itself.head, by_itself.gaze)
