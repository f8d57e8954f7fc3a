"""Minutes of gaze stabilisation: seen, told of, and what counts as neither."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest

from tests.practice.person import plan_of
from tests.practice.test_reported import told
from tests.records.made import finished
from tests.records.rows import START, row, set_row
from tracker.exercises.catalogue import CATALOGUE
from tracker.records import telling
from tracker.records.gaze_minutes import GazeMinutes, gaze_minutes
from tracker.records.rows import LONGEST_SET_S, row_of
from tracker.session.summary_file import ExerciseSummary


def of_a_set(**changes: Any) -> tuple[float, float]:
    """What is kept of a set of turns with the eyes on a target, somehow changed."""
    summary = finished()
    known = next(e for e in summary.exercises if e.exercise == "turns-on-target")
    found = ExerciseSummary.model_validate({**known.model_dump(), **changes})
    (kept,) = row_of(summary.model_copy(update={"exercises": [found]}), "s").sets
    return kept.gaze_measured_s, kept.gaze_reported_s


def test_what_the_camera_saw_counts_and_no_more() -> None:
    done = finished().exercises[0].done.model_dump()
    seen = of_a_set(done={**done, "duration_s": 90.0, "measured_fraction": 0.5})
    assert seen == (45.0, 0.0)
    assert of_a_set(done={**done, "duration_s": 90.0, "measured_fraction": None}) == (0.0, 0.0)
    # Nobody practised for a day on end: such a file is not believed.
    assert of_a_set(done={**done, "duration_s": 9e9}) == (LONGEST_SET_S, 0.0)


@pytest.mark.parametrize("exercise", ["eyes-side-to-side", "turns-together", "stand", "unheard-of"])
def test_only_head_movement_with_the_eyes_on_a_target_counts(exercise: str) -> None:
    assert of_a_set(exercise=exercise) == (0.0, 0.0)


def test_the_exercises_that_count_are_those_of_the_guideline() -> None:
    """Head movement with the eyes on a target: Hall CD et al. 2022, as quoted."""
    counted = {e.id for e in CATALOGUE.values() if e.gaze_minutes}
    assert counted == {
        *("turns-on-target", "nods-on-target", "turns-x2", "nods-x2", "remembered-target"),
    }


def test_of_practice_that_was_told_of_the_length_of_the_dose_counts() -> None:
    twenty = {"exercise": "turns-on-target", "repetitions": 20, "tempo_bpm": 60}
    timed = {"exercise": "nods-on-target", "seconds": 45}
    eyes = {"exercise": "eyes-side-to-side", "repetitions": 20}
    kept = row_of(told(plan_of(twenty, timed, eyes)), "s").sets
    # Two beats a repetition at 60 a minute.
    assert [(s.gaze_measured_s, s.gaze_reported_s) for s in kept] == [(0, 40), (0, 45), (0, 0)]


def test_minutes_are_averaged_over_all_days_of_the_window() -> None:
    seen = set_row(gaze_measured_s=300.0)
    told_of = set_row(gaze_reported_s=120.0)
    rows = [row(0, sets=(seen, seen)), row(1, sets=(told_of,)), row(9, sets=(seen,))]
    found = gaze_minutes(rows, START, START + timedelta(days=4))
    assert found is not None
    # Ten minutes on one of five days, two told of on another; the tenth day is outside.
    assert (found.measured, found.reported, found.days) == (2.0, 0.4, 5)


@pytest.mark.parametrize("from_day", [None, START + timedelta(days=1)])
def test_of_no_day_there_is_nothing_to_say(from_day: date | None) -> None:
    assert gaze_minutes([row(0)], from_day, START) is None


@pytest.mark.parametrize(
    ("loss", "quoted"),
    [
        # As quoted from Hall CD et al. 2022.
        ("acute", "; guideline, as quoted: 12 or more"),
        ("chronic", "; guideline, as quoted: 20 or more"),
        ("bilateral", "; guideline, as quoted: 20 to 40"),
        ("other", ""),
    ],
)
def test_what_was_done_stands_beside_what_was_planned_and_the_guideline(
    loss: str, quoted: str
) -> None:
    # Twice twenty repetitions at 60 beats, three bouts a day: four minutes.
    turns = {"exercise": "turns-on-target", "repetitions": 20, "tempo_bpm": 60}
    nods = {"exercise": "nods-on-target", "repetitions": 20, "tempo_bpm": 60}
    plan = plan_of(turns, nods).model_copy(update={"kind_of_loss": loss, "bouts_a_day": 3})
    said = telling.gaze(GazeMinutes(2.51, 0.4, 28), plan)
    begun = "gaze stabilisation: 2.5 minutes a day measured, 0.4 told of; planned 4"
    assert said == begun + quoted


def test_where_none_is_asked_for_and_none_was_done_nothing_is_said() -> None:
    plan = plan_of({"exercise": "stand"})
    assert telling.gaze(GazeMinutes(0.0, 0.0, 28), plan) == ""
    assert telling.gaze(None, plan_of({"exercise": "turns-on-target"})) == ""
    assert telling.gaze(GazeMinutes(1.0, 0.0, 28), None).endswith("0.0 told of")
