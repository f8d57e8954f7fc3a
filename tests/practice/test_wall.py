"""Notes on the wall in a planned session: what is asked, what is refused, what the set gets."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest

from tests.practice.person import SEATED, Person, plan_of, refused
from tracker.plan.model import Plan
from tracker.practice.conductor import Conductor
from tracker.practice.scripted import Answers
from tracker.practice.tasks import AskWall, DoSet, Over, Prepare, Task
from tracker.session.summary_file import Summary

DAY = date(2026, 3, 2)
JUMPS = {"exercise": "eyes-side-to-side", "note": "asked for"}
OPEN = {**JUMPS, "wall": {"above_mm": 80}}
TYPED = {**JUMPS, "wall": {"distance_mm": 1500, "spacing_mm": 500}}
STANDING = {"exercise": "turns-on-target", "posture": "standing", "wall": {"distance_mm": 2000}}


class Measuring(Person):
    """Somebody with a tape; lengths in mm, or False without any notes."""

    tape: dict[str, Any] = {"distance": 1600.0, "spacing": 540.0}  # noqa: RUF012

    def _answer(self, task: Task) -> Any:
        if isinstance(task, AskWall):
            return self.tape[task.length]
        return super()._answer(task)


def steps_of(person: Person) -> list[dict[str, Any]]:
    found = [dict(r["step"]) for r in person.journal.content().of("step")]
    return [s for s in found if s["step"] == "exercise"]


def asked_lengths(person: Person) -> list[AskWall]:
    return [t for t in person.tasks if isinstance(t, AskWall)]


def test_what_the_plan_leaves_open_is_asked_once_and_goes_into_the_step() -> None:
    person = Measuring()
    person.practise(plan_of({**OPEN, "entry_id": "a"}))
    distance, spacing = asked_lengths(person)
    assert (distance.length, spacing.length) == ("distance", "spacing")
    assert (distance.least_mm, distance.most_mm) == (900.0, 3000.0)
    # 5 to 12 degrees to each side at 1.6 m: 2 * 1600 * tan.
    assert (spacing.least_mm, spacing.most_mm) == (280.0, 680.0), "whole centimetres, inwards"
    (step,) = steps_of(person)
    wall = {"distance_mm": 1600.0, "spacing_mm": 540.0, "above_mm": 80.0, "right_mm": 0.0}
    assert step["wall"] == wall
    (done,) = person.summary.exercises
    assert {k: done.prescribed["wall"][k] for k in wall} == wall


def test_what_is_typed_in_the_plan_is_not_asked() -> None:
    person = Measuring()
    person.practise(plan_of({**TYPED, "entry_id": "a"}))
    assert asked_lengths(person) == []
    assert steps_of(person)[0]["wall"]["distance_mm"] == 1500.0


def test_who_has_no_notes_goes_on_without_that_entry() -> None:
    person = Measuring()
    person.tape = {"distance": False, "spacing": False}
    person.practise(plan_of(OPEN, SEATED))
    assert refused(person.summary) == {"eyes-side-to-side": ["no_marks"]}
    assert [e.exercise for e in person.summary.exercises] == ["turns-on-target"]


def test_who_cannot_say_does_it_without_being_judged_there() -> None:
    person = Measuring()
    person.tape = {"distance": None, "spacing": None}
    person.practise(plan_of(OPEN))
    (step,) = steps_of(person)
    assert "wall" not in step and step["target_mm"] is None
    (done,) = person.summary.exercises
    assert done.arrivals is not None and done.arrivals["arrived"] is None


@pytest.mark.parametrize("answer", [800.0, 3001.0, True, "far", -5])
def test_a_length_that_will_not_do_is_refused(answer: Any) -> None:
    person = Measuring()
    conductor: Conductor = person.practise(plan_of(OPEN), until=AskWall)
    assert isinstance(conductor.task, AskWall)
    with pytest.raises(ValueError, match="will do"):
        conductor.answer(answer)
    assert isinstance(conductor.task, AskWall)
    conductor.answer(1234)


def test_nobody_looks_at_the_screen_so_it_is_led_by_sound() -> None:
    person = Measuring(sound=False, reader=False)
    person.practise(plan_of(TYPED, SEATED))
    assert refused(person.summary) == {"eyes-side-to-side": ["no_voice"]}
    heard = Measuring()
    heard.practise(plan_of(TYPED))
    (prepare,) = [t for t in heard.tasks if isinstance(t, Prepare)]
    assert prepare.voice == "sound"


def test_the_eyes_are_led_to_new_marks_in_a_set_up_of_their_own() -> None:
    person = Measuring()
    other = {**JUMPS, "entry_id": "other", "wall": {"distance_mm": 1500, "spacing_mm": 400}}
    same = {**TYPED, "entry_id": "same"}
    person.practise(plan_of(SEATED, TYPED, same, other, {**JUMPS, "entry_id": "screen"}))
    asked = [
        (t.asked.entry_id, t.rest_pose) for t in person.tasks if isinstance(t, Prepare) and t.asked
    ]
    assert asked == [
        ("turns-on-target", True),
        ("eyes-side-to-side", True),
        ("same", False),
        ("other", True),
        ("screen", False),
    ]


def test_marks_one_above_the_other_are_others_than_marks_side_by_side() -> None:
    person = Measuring()
    upright = {"exercise": "eyes-up-down", "note": "x", "entry_id": "up", "wall": TYPED["wall"]}
    person.practise(plan_of(TYPED, upright, {**upright, "entry_id": "again"}))
    asked = [t.rest_pose for t in person.tasks if isinstance(t, Prepare) and t.asked]
    assert asked == [True, True, False]


def test_what_the_patient_measures_keeps_to_the_neck_limit_and_the_range() -> None:
    neck = {"yaw": 10, "pitch": 10}
    entry = {"exercise": "eyes-then-head", "amplitude_deg": [8, 10], "wall": {"spacing_mm": 400}}
    person = Measuring()
    conductor = person.practise(plan_of(entry, neck_limit_deg=neck), until=AskWall)
    assert isinstance(conductor.task, AskWall) and conductor.task.length == "distance"
    with pytest.raises(ValueError, match="will do"):
        conductor.answer(900.0)
    # 200 mm to each side: 10 degrees from 1134 mm away on, 8 degrees up to 1423 mm.
    assert (conductor.task.least_mm, conductor.task.most_mm) == (1140.0, 1420.0)


def test_standing_before_a_mark_has_its_wall_too() -> None:
    person = Measuring()
    person.practise(plan_of(STANDING))
    (step,) = steps_of(person)
    assert step["posture"] == "standing" and step["wall"]["distance_mm"] == 2000.0
    assert isinstance(person.tasks[-1], Over)
    assert any(isinstance(t, DoSet) for t in person.tasks)


def test_a_file_of_answers_may_hold_the_lengths() -> None:
    answers = Answers.model_validate(
        {
            "format": "turnpost-answers",
            "format_version": 1,
            "entries": {"eyes-side-to-side": {"distance_mm": 1500, "spacing_mm": 100}},
        }
    )
    person = Measuring()
    conductor = person.practise(plan_of(OPEN), until=AskWall)
    assert answers.to(conductor.task) == 1500
    conductor.answer(1500)
    assert isinstance(conductor.task, AskWall) and conductor.task.length == "spacing"
    assert answers.to(conductor.task) is None, "100 mm would lie 1.9 degrees to each side"


# --- what was given last time ---


def days_after(person: Person, plan: Plan, history: list[Summary], day: int) -> Summary:
    today = DAY + timedelta(days=day)
    person.practise(plan, history=history, today=today)
    return person.summary.model_copy(update={"started_at": f"{today}T09:00:00+01:00"})


def offered(person: Person) -> list[float | None]:
    return [t.last_mm for t in asked_lengths(person)]


def lengths_said(person: Person) -> list[tuple[Any, ...]]:
    marks = [m for m in person.journal.content().of("mark") if m["name"] == "wall_length"]
    return [(m["length"], m["mm"], m["as_last_time"]) for m in marks]


def test_what_was_measured_last_is_offered_and_the_newest_counts() -> None:
    plan = plan_of(OPEN)
    history: list[Summary] = []
    first = Measuring()
    history.append(days_after(first, plan, [], 0))
    assert offered(first) == [None, None]
    assert lengths_said(first) == [("distance", 1600.0, False), ("spacing", 540.0, False)]
    moved = Measuring()
    moved.tape = {"distance": 1700.0, "spacing": True}
    history.append(days_after(moved, plan, history, 1))
    assert offered(moved) == [1600.0, 540.0]
    assert lengths_said(moved) == [("distance", 1700.0, False), ("spacing", 540.0, True)]
    third = Measuring()
    days_after(third, plan, history, 2)
    assert offered(third) == [1700.0, 540.0]


def test_what_a_tape_shows_once_more_was_measured() -> None:
    plan = plan_of(OPEN)
    history = [days_after(Measuring(), plan, [], 0)]
    again = Measuring()
    days_after(again, plan, history, 1)
    assert offered(again) == [1600.0, 540.0]
    assert lengths_said(again) == [("distance", 1600.0, False), ("spacing", 540.0, False)]
    still = Measuring()
    still.tape = {"distance": True, "spacing": True}
    days_after(still, plan, history, 2)
    assert lengths_said(still) == [("distance", 1600.0, True), ("spacing", 540.0, True)]
    assert steps_of(still)[0]["wall"]["distance_mm"] == 1600.0


def test_nothing_is_taken_without_an_answer() -> None:
    plan = plan_of(OPEN)
    history = [days_after(Measuring(), plan, [], 0)]
    silent = Measuring()
    silent.tape = {"distance": None, "spacing": None}
    days_after(silent, plan, history, 1)
    assert offered(silent) == [1600.0]
    (step,) = steps_of(silent)
    assert "wall" not in step and step["target_mm"] is None
    assert lengths_said(silent) == []


def test_the_plans_own_length_stands_before_the_one_of_last_time() -> None:
    history = [days_after(Measuring(), plan_of(OPEN), [], 0)]
    person = Measuring()
    days_after(person, plan_of({**JUMPS, "wall": {"distance_mm": 1500}}), history, 1)
    (task,) = asked_lengths(person)
    assert task.length == "spacing" and task.last_mm == 540.0
    assert steps_of(person)[0]["wall"]["distance_mm"] == 1500.0
    typed = Measuring()
    days_after(typed, plan_of(TYPED), history, 1)
    assert asked_lengths(typed) == []
    assert steps_of(typed)[0]["wall"]["spacing_mm"] == 500.0


def test_what_would_not_do_any_more_is_not_offered() -> None:
    history = [days_after(Measuring(), plan_of(OPEN), [], 0)]
    far = Measuring()
    far.tape = {"distance": 3000.0, "spacing": 600.0}
    days_after(far, plan_of(OPEN), history, 1)
    # Three metres away 540 mm are 5.1 degrees to each side, which will do ...
    assert offered(far) == [1600.0, 540.0]
    near = Measuring()
    near.tape = {"distance": 1000.0, "spacing": 300.0}
    days_after(near, plan_of(OPEN), history, 1)
    # ... from one metre they are 15, where 12 are the most.
    assert offered(near) == [1600.0, None]


def test_another_posture_is_another_place() -> None:
    stands = {"exercise": "turns-on-target", "posture": "standing", "wall": {"above_mm": 0}}
    history = [days_after(Measuring(), plan_of(stands), [], 0)]
    again = Measuring()
    days_after(again, plan_of(stands), history, 1)
    assert offered(again) == [1600.0]
    seated = Measuring()
    days_after(seated, plan_of({**stands, "posture": "sitting"}), history, 1)
    assert offered(seated) == [None]


def test_a_second_entry_of_the_day_is_offered_what_the_first_was_given() -> None:
    person = Measuring()
    person.practise(plan_of({**OPEN, "entry_id": "a"}, {**OPEN, "entry_id": "b"}))
    assert offered(person) == [None, None, 1600.0, 540.0]
