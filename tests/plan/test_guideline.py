"""Minutes of gaze stabilisation: only head movement with the eyes on a target counts."""

from __future__ import annotations

import json

import pytest

from tests.plan.examples import TEXT, changed
from tracker.plan.files import parse_plan
from tracker.plan.guideline import MINUTES_A_DAY, gaze_minutes_a_day, guideline_words


def test_minutes_are_those_of_the_sets_times_the_bouts() -> None:
    # 12 repetitions, two beats each, at 75 beats a minute on average; and 45 s; three bouts.
    assert gaze_minutes_a_day(parse_plan(TEXT)) == pytest.approx(3 * (12 * 2 / 75 + 0.75))
    # From week 2 the first goes at 80.
    assert gaze_minutes_a_day(parse_plan(TEXT), 2) == pytest.approx(3 * (12 * 2 / 80 + 0.75))


@pytest.mark.parametrize("exercise", ["eyes-side-to-side", "turns-together", "near-far", "walk"])
def test_other_exercises_add_no_minutes(exercise: str) -> None:
    data = json.loads(TEXT)
    data["entries"].append({"entry_id": "more", "exercise": exercise})
    with_it = gaze_minutes_a_day(parse_plan(json.dumps(data)))
    assert with_it == gaze_minutes_a_day(parse_plan(TEXT))


def test_the_figure_is_that_of_the_kind_of_loss_and_said_to_be_quoted() -> None:
    assert MINUTES_A_DAY == {"acute": (12, None), "chronic": (20, None), "bilateral": (20, 40)}
    said = guideline_words(parse_plan(TEXT))
    assert said.startswith("at least 20 for a chronic loss (Hall CD et al. 2022")
    assert said.endswith("as quoted)")
    assert "names no figure" in guideline_words(parse_plan(changed("kind_of_loss", "other")))
