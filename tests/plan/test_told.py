"""A plan in words: all that a therapist has set stands in it, and what is not set is said."""

from __future__ import annotations

import json
import re
from typing import Any

import pytest

from tests.plan.examples import TEXT
from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.arranging import add_entry
from tracker.plan.asked import asked_of, seat_mm
from tracker.plan.files import parse_plan
from tracker.plan.guideline import MINUTES_A_DAY, guideline_words
from tracker.plan.telling import option_lines, plan_lines
from tracker.plan.unlocking import judge_condition


def told(week: int = 1, **fields: Any) -> str:
    data = json.loads(TEXT) | fields
    return "\n".join(plan_lines(parse_plan(json.dumps(data)), week))


def test_what_is_set_is_told() -> None:
    said = told(
        age_group="70-74",
        symptom_rules={"high_start": "baseline", "baseline_rise_most": 3, "also_ask": ["nausea"]},
        hand_over={"plain": True},
    )
    assert "for the published tables of chair stands: 70-74, no sex given" in said
    assert "who starts higher may rise by 3" in said
    assert "(dizziness and nausea)" in said
    assert "hand-over: plain files, which anybody can read" in said
    assert "60 to 90 beats a minute" in said
    assert "from week 2: 80 beats a minute" in said
    assert "neck limit: 30 degrees in yaw, 20 in pitch" in said
    assert "to the patient: Little and often." in said


def test_what_is_not_set_is_told_too() -> None:
    data = json.loads(TEXT)
    for name in ("neck_limit_deg", "emergency_number", "words", "starts_on"):
        del data[name]
    said = "\n".join(plan_lines(parse_plan(json.dumps(data)), 1))
    assert "neck limit: none set" in said and "emergency number: none set" in said
    assert "hand-over: to nobody" in said and "to the patient" not in said
    assert "who starts higher does seated work only" in said
    assert "tables of chair stands" not in said


def test_a_note_is_one_line_however_it_was_typed() -> None:
    data = json.loads(TEXT)
    data["entries"][0]["note"] = "By the window.\n\n  Not after   lunch."
    said = plan_lines(parse_plan(json.dumps(data)), 1)
    assert "    note: By the window. Not after lunch." in said


def test_a_tempo_of_one_value_and_of_none_are_told_apart() -> None:
    said = told(week=2)
    assert "    12 times; 80 beats a minute" in said
    assert "    45 s; own pace" in said


def test_every_exercise_has_its_row_of_options() -> None:
    first, *rows = option_lines()
    assert "sitting" in first and "standing" in first
    assert [r.split()[0] for r in rows if r.split()[0] in CATALOGUE] == list(CATALOGUE)


@pytest.mark.parametrize("loss", ["acute", "chronic", "bilateral", "other"])
def test_the_guideline_has_a_figure_where_it_names_the_loss(loss: str) -> None:
    side = "both" if loss == "bilateral" else "right"
    known = json.loads(TEXT) | {"kind_of_loss": loss, "affected_side": side}
    said = guideline_words(parse_plan(json.dumps(known)))
    figures = [f"{v:g}" for v in MINUTES_A_DAY.get(loss, ()) if v is not None]
    assert re.findall(r"\d+", said.partition("(")[0])[: len(figures)] == figures
    assert (loss == "other") == (not figures)


def test_nothing_asked_for_is_met() -> None:
    assert judge_condition(None, [], None).met


def test_an_entry_is_added_to_the_stage_of_the_one_before_it_else_to_the_last() -> None:
    stages = [{"stage_id": "one", "name": "One"}, {"stage_id": "two", "name": "Two"}]
    data = {
        "stages": stages,
        "entries": [{"entry_id": "a", "exercise": "stand", "stage": "one"}],
    }
    assert add_entry(data, "walk", after=0)[0]["entries"][1]["stage"] == "one"
    assert add_entry(data, "walk")[0]["entries"][1]["stage"] == "two"
    assert "stage" not in add_entry({"entries": []}, "walk")[0]["entries"][0]


@pytest.mark.parametrize(("plan_mm", "said_cm"), [(750, 100), (1200, 120)])
def test_the_seat_is_told_as_the_patient_is_asked_to_sit(plan_mm: int, said_cm: int) -> None:
    data = json.loads(TEXT) | {"seat_distance_mm": plan_mm}
    data["entries"] = [{"entry_id": "near", "exercise": "near-far", "note": "x"}]
    plan = parse_plan(json.dumps(data))
    assert f"about {said_cm} cm from the screen" in "\n".join(plan_lines(plan, 1))
    assert seat_mm(asked_of(plan.entries[0]), plan) == 10 * said_cm
