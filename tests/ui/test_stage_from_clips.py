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

ROOT = Path(__file__).parents[2]
STAGE = "eyes-and-head"
SMALL = {"width_px": 480, "height_px": 360, "vertical_fov_deg": 40.0, "rate_hz": 10}
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


@pytest.mark.slow
@pytest.mark.timeout(1800)
def test_a_whole_stage_gives_one_valid_summary(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """In one test, so that nothing of it is drawn or measured twice."""
    plan = tmp_path / "plan.json"
    save_plan(plan, starter_plan())
    clips = stage_clips(tmp_path)
    folder = practised(plan, list(clips.values()), tmp_path / "s")
    whole_and_in_its_order(summary := load_summary(folder / "summary.json"))
    counted_as_drawn(summary)
    not_asked(summary)
    one_and_valid(folder, capsys)
    as_by_itself(plan, clips["nods-on-target"], summary, tmp_path / "alone.json")


def stage_clips(folder: Path) -> dict[str, Path]:
    """A clip for each entry of the stage."""
    found = {x: first_part(shipped_clip(name), folder, CUT_S) for x, name in SHIPPED.items()}
    for exercise, drawn in DRAWN.items():
        scenario = {"name": exercise, "exercise": exercise, "seed": 7, "camera": SMALL}
        scenario |= {"setup": False} | drawn
        found[exercise] = render_scenario(Scenario.model_validate(scenario), folder)
    return found


def practised(plan: Path, clips: list[Path], folder: Path) -> Path:
    """The folder of the session that comes of them."""
    words = ["practise", "--plan", str(plan), "--no-window", "--out", str(folder)]
    for clip in clips:
        words += ["--clip", str(clip)]
    code = (
        f"import sys; from ui.cli import main; code = main({words!r}); "
        "sys.exit(code or 5 * ('PySide6' in sys.modules))"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, check=False)
    assert done.returncode == 0
    return folder


def whole_and_in_its_order(summary: Summary) -> None:
    asked = [e.entry_id for e in starter_plan().entries if e.stage == STAGE]
    assert len(asked) == len(DRAWN) + len(SHIPPED) == 7
    assert [e.entry_id for e in summary.exercises] == asked
    assert (summary.not_done, summary.ended) == ([], "finished")


def counted_as_drawn(summary: Summary) -> None:
    counted = {e.exercise: e.done.repetitions for e in summary.exercises}
    for exercise, drawn in DRAWN.items():
        off = abs((counted[exercise] or 0) - drawn["movement"]["repetitions"])
        assert off <= (exercise == "near-far"), exercise
    assert all(counted[exercise] for exercise in SHIPPED)


def not_asked(summary: Summary) -> None:
    """What nobody could answer."""
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


def one_and_valid(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert [p.relative_to(folder).as_posix() for p in folder.rglob("summary*")] == ["summary.json"]
    capsys.readouterr()
    assert main(["schema", "summary"]) == 0
    schema = json.loads(capsys.readouterr().out)
    found = json.loads((folder / "summary.json").read_text(encoding="utf-8"))
    jsonschema.validate(found, schema)
    # The schema is one that can say no.
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(found | {"exercises": "seven"}, schema)


def as_by_itself(plan: Path, clip: Path, summary: Summary, out: Path) -> None:
    """``check`` finds the same in one of the clips."""
    call = ["check", str(clip), "--exercise", "nods-on-target", "--plan", str(plan)]
    assert main([*call, "--out", str(out)]) == 0
    by_itself = load_summary(out).exercises[0]
    found = next(e for e in summary.exercises if e.exercise == "nods-on-target")
    assert (found.done, found.head, found.gaze) == (by_itself.done, by_itself.head, by_itself.gaze)
