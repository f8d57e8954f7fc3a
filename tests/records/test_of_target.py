"""What a therapist is told of a target that moved."""

from __future__ import annotations

from typing import Any

from tests.exercises.test_landing import SHORT, jumps_of
from tests.exercises.test_moving_sets import FOLLOW, MARKS, X2, score_of, summary_of
from tracker.records.figure import shown_with_unit
from tracker.records.of_exercise import exercise_figures
from tracker.records.of_target import target_figures
from tracker.records.places import Place


def told(exercise: str, movement: dict[str, Any]) -> dict[str, str]:
    found = summary_of(score_of(exercise, movement)).model_dump(mode="json")
    return {f.label: shown_with_unit(f) for f in exercise_figures(Place(found))}


def test_a_target_that_the_screen_made_smaller_is_told_with_what_was_wanted() -> None:
    found = told("turns-x2", X2)
    assert found["Target, to each side"] == "10.0°"
    assert found["Amplitude in the plan"] == "15.0 to 20.0°"
    assert float(found["Eye turn per head turn (no diagnostic gain), expected"]) > 2.0


def test_who_went_first_is_told_with_the_time_between() -> None:
    found = told("eyes-then-head", MARKS | {"head_after_s": -0.3})
    assert found["Went to the mark"].startswith("head first 1")
    assert found["Eyes before the head"].startswith("-0.3")


def test_jumps_while_following_are_told_as_no_diagnosis() -> None:
    found = told("follow-slowly", FOLLOW)
    assert found["Jumps while following, 2 degrees and more (no diagnosis)"] == "0"


def test_what_was_not_seen_is_not_told_as_none() -> None:
    lead = {"median": None, "spread": None, "n": 0, "reason": "never seen"}
    place = Place(
        {
            "order": {"eyes_first": None, "not_told": 9, "lead_s": lead, "reason": "never seen"},
            "catch_up_jumps": {"value": None, "reason": "not together"},
        }
    )
    found = {f.label: shown_with_unit(f) for f in target_figures(place)}
    assert found["Went to the mark"] == "not measured (never seen)"
    assert found["Eyes before the head"] == "not measured (never seen)"
    assert "not measured" in found["Jumps while following, 2 degrees and more (no diagnosis)"]


def test_of_a_background_its_speed_and_size_are_told() -> None:
    drawn = {"speed_deg_s": 2.0, "radius_deg": 6.0}
    place = Place({"prescribed": {"target": {"motion": "background", "background": drawn}}})
    found = {f.label: shown_with_unit(f) for f in target_figures(place)}
    assert found == {"Background": "2°/s", "Background, radius": "6.0°"}


def test_where_eyes_came_to_rest_is_told_with_the_marks_and_the_error_there() -> None:
    done = summary_of(jumps_of(where="wall", **SHORT)).model_dump(mode="json")
    found = {f.label: shown_with_unit(f) for f in target_figures(Place(done))}
    assert found["Wall, from the eyes"] == "1500 mm"
    # Twice 1500 tan(10 degrees).
    assert found["Wall, from mark to mark"] == "529 mm"
    assert found["Gaze error at the wall"] == "0.8°"
    assert found["Eyes came to rest"] == "on the target 11, short of it 3"
    assert found["Eyes came to rest, counted within"] == "5.0°"
    assert found["Targets left out"] == "1"
    assert found["Eyes beyond the target"].endswith("°")


def test_where_the_eyes_were_read_too_coarsely_no_arrival_is_told() -> None:
    place = Place({"arrivals": {"arrived": None, "within_deg": 5.0, "reason": "too coarse"}})
    found = {f.label: shown_with_unit(f) for f in target_figures(place)}
    assert found["Eyes came to rest"] == "not measured (too coarse)"
    assert not {"Eyes came to rest, counted within", "Targets left out"} & set(found)


def test_of_a_still_target_nothing_is_told() -> None:
    assert list(target_figures(Place({"prescribed": {"amplitude_deg": [15, 20]}}))) == []
