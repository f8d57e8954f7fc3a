"""The whole main job by itself, as a visitor starts it."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

import sample_clips
from tracker.errors import InputError
from ui.wiring import clip_plan, demo_clip

ROOT = Path(__file__).parents[2]


def test_there_is_a_clip_for_the_demo() -> None:
    plan = clip_plan(demo_clip())
    assert plan.steps[-1].exercise == "turns-on-target"
    assert (plan.steps[-1].model_extra or {}).get("repetitions")


@pytest.mark.parametrize("clip", sample_clips.shipped(), ids=lambda p: p.stem)
def test_each_shipped_clip_can_take_the_place_of_a_camera(clip: Path) -> None:
    plan = clip_plan(clip)
    kinds = [s.step for s in plan.steps]
    assert kinds[0] == "rest" and kinds[-1] == "exercise" and "look" in kinds


def test_a_clip_that_asks_for_no_exercise_is_refused(tmp_path: Path) -> None:
    (tmp_path / "a.stage.json").write_text('{"steps": []}', encoding="utf-8")
    with pytest.raises(InputError, match="no exercise"):
        clip_plan(tmp_path / "a.mp4")


@pytest.mark.slow
@pytest.mark.gui
@pytest.mark.timeout(400)
def test_the_demo_goes_through_by_itself_and_prints_the_summary(
    private_data_folder: Path,
) -> None:
    code = "import sys; from ui.cli import main; sys.exit(main(['demo', '--auto']))"
    ended = subprocess.run(
        [sys.executable, "-c", code],
        cwd=ROOT,
        env=os.environ | {"TURNPOST_DATA": str(private_data_folder)},
        capture_output=True,
        text=True,
        timeout=380,
        check=False,
    )
    assert ended.returncode == 0, ended.stderr
    path = Path(ended.stdout.strip().splitlines()[-1])
    assert path.parent.parent == private_data_folder / "sessions"
    summary = json.loads(path.read_text(encoding="utf-8"))
    truth = json.loads(demo_clip().with_suffix(".events.json").read_text(encoding="utf-8"))
    exercise = summary["exercises"][0]
    assert summary["ended"] == "finished"
    assert exercise["exercise"] == truth["exercise"]
    assert exercise["done"]["repetitions"] == truth["repetitions"]
    assert {p.name for p in path.parent.iterdir()} == {
        "journal.jsonl",
        "summary.json",
        "trace.csv",
        "stage.json",
    }
