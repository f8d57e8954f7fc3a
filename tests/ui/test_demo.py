"""The clips that take the place of a camera; the demo itself runs in test_nothing_sent."""

from __future__ import annotations

from pathlib import Path

import pytest

import sample_clips
from tracker.errors import InputError
from ui.wiring import clip_plan, demo_clip


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
