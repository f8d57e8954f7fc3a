"""Which arm reached down is asked where the camera could not tell it, and only there."""

from __future__ import annotations

from collections.abc import Iterator
from math import nan

import numpy as np
import pytest

from tests.practice.person import SEATED, Person, plan_of
from tracker.practice.tasks import AskAfterSet
from tracker.records.figure import shown_with_unit
from tracker.records.figures import record_of
from tracker.sample import Sample
from tracker.session.stage import Step

REACH = {"exercise": "floor-reach"}


def bends(step: Step, apart_mm: list[float]) -> Iterator[Sample]:
    """One bend for each: how much lower the right wrist is, NaN where hands aren't seen."""
    each = (step.to_s - step.from_s - 1.0) / len(apart_mm)
    for t in np.arange(step.from_s + 0.01, step.to_s - 0.05, 1 / 15):
        u = (t - step.from_s) % each / each if t - step.from_s < each * len(apart_mm) else 0.0
        number = min(int((t - step.from_s) / each), len(apart_mm) - 1)
        down = np.clip((u - 0.3) / 0.2, 0, 1) - np.clip((u - 0.55) / 0.2, 0, 1)
        apart = apart_mm[number]
        seen = {
            "wrist_right_x_mm": 200.0,
            "wrist_right_y_mm": -300.0 - apart,
            "wrist_left_x_mm": -200.0,
            "wrist_left_y_mm": -300.0,
        }
        yield Sample(
            float(t),
            head_yaw_deg=0.0,
            head_y_mm=float(-500.0 * down),
            eye_open=1.0,
            body_seen=1.0,
            **(seen if apart == apart else {}),
        )


def practised(apart_mm: list[float], arm: str | None = "left") -> Person:
    person = Person(arm=arm, moves=lambda step: bends(step, apart_mm) if apart_mm else ())
    person.practise(plan_of(REACH))
    return person


def questions(person: Person) -> list[tuple[str, ...]]:
    return [t.questions for t in person.tasks if isinstance(t, AskAfterSet)]


def test_bends_whose_arm_was_seen_are_not_asked_about() -> None:
    person = practised([250.0, -250.0, 250.0])
    found = person.summary.exercises[0]
    assert found.body is not None and found.body["arm"]["right"] == 2
    assert questions(person) == [] and found.arm is None
    assert record_of(person.summary).exercises[0].find("arm") is None


@pytest.mark.parametrize("apart", [[nan, nan, nan], [250.0, nan, 250.0], [250.0, 20.0, 250.0]])
def test_one_bend_that_was_not_told_is_enough_to_ask(apart: list[float]) -> None:
    person = practised(apart)
    assert questions(person) == [("arm",)]
    assert person.summary.exercises[0].arm == {"value": "left", "reason": None}


def test_where_nothing_was_seen_it_is_asked_too() -> None:
    assert questions(practised([])) == [("arm",)]


def test_of_other_exercises_nobody_asks() -> None:
    person = Person()
    person.practise(plan_of(SEATED))
    assert questions(person) == [("clarity",)] and person.summary.exercises[0].arm is None


@pytest.mark.parametrize(
    ("arm", "told"),
    [
        ("right", "right"),
        ("both", "both, in turn"),
        ("not_sure", "not sure"),
        (None, "not asked"),
    ],
)
def test_the_therapist_reads_it_as_reported(arm: str | None, told: str) -> None:
    found = record_of(practised([nan, nan], arm).summary).exercises[0].find("arm")
    assert found is not None and found.origin == "reported"
    assert shown_with_unit(found) == told


def test_no_other_answer_is_taken() -> None:
    with pytest.raises(ValueError, match="not_sure"):
        AskAfterSet(questions=("arm",)).check({"arm": "third"})
