"""Practice outside a plan that had to be ended is heeded by the plan's next session.

The sessions are made by the real conductor; that such a session holds back what is new is
this project's own choice, as a planned one that ended so does.
"""

from __future__ import annotations

import json
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.practice.person import SEATED, Person, done_ids, plan_of, refused, sessions
from tests.practice.test_conductor import AFTER_TURNS, LATER, staged
from tracker.plan.model import Plan
from tracker.plan.starter import TRY_ID
from tracker.practice.earlier import Earlier, earlier_of
from tracker.practice.history import load_history
from tracker.practice.reported import reported_entries
from tracker.practice.tasks import AskGate, ShowToday
from tracker.practice.week import Week, week_before
from tracker.records.conditions import Standing, conditions_of
from tracker.records.index import Records
from tracker.records.people import people_of
from tracker.records.rows import pack, row_of, unpack
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import Summary, save_summary
from ui import wiring

DAY = date(2026, 3, 2)
EIGHT_DAYS = timedelta(days=8)


def alone(ended: str = "stopped_unwell", **changes: Any) -> Summary:
    """A session without a plan and a name, in which somebody felt unwell."""
    person = Person()
    questions = plan_of(SEATED).model_copy(update={"entries": [], "stages": []})
    conductor = person.practise(questions, until=AskGate)
    conductor.unwell()
    person.go_on(conductor)
    found = person.summary
    assert found.ended == "stopped_unwell" and found.exercises == []
    none = {"person": None, "plan_id": None, "ended": ended}
    return found.model_copy(update=none | changes)


def on_days(*found: Summary) -> list[Summary]:
    days = [f"{DAY + timedelta(days=k)}T09:00:00+01:00" for k in range(len(found))]
    return [
        s.model_copy(update={"started_at": d, "session_id": d})
        for s, d in zip(found, days, strict=True)
    ]


def read_back(folder: Path, plan: Plan, found: list[Summary]) -> list[Summary]:
    for k, summary in enumerate(found):
        (folder / str(k)).mkdir()
        save_summary(folder / str(k) / SUMMARY_NAME, summary)
    history, unread = load_history(folder, plan, own_computer=True)
    assert not unread
    return history


@pytest.mark.parametrize("named", [True, False])
@pytest.mark.parametrize(
    ("ended", "after", "done"),
    [
        ("stopped_unwell", 0, "turns-on-target"),
        ("stopped_unwell", 1, "turns-on-target"),
        ("stopped_unwell", 2, "nods-on-target"),
        ("red_flag", 0, "turns-on-target"),
        ("stopped", 0, "nods-on-target"),
        ("finished", 0, "nods-on-target"),
    ],
)
def test_the_next_stage_waits_for_as_many_sessions_again(
    tmp_path: Path, ended: str, after: int, done: str, named: bool
) -> None:
    plan = staged() if named else staged().model_copy(update={"person": None})
    calm = sessions(plan, 2)
    history = read_back(tmp_path, plan, on_days(*calm, alone(ended), *calm[:after]))
    person = Person()
    person.practise(plan, history=history)
    assert done_ids(person.summary) == [done]
    rows = [row_of(s, str(k)) for k, s in enumerate(history)]
    (found,) = conditions_of(plan, rows, None)
    assert found.condition.met is (done == "nods-on-target")
    if done != "nods-on-target":
        assert found.condition.because == (f"session {2 - after} of the last 2: {WHY[ended]}",)


WHY = {"stopped_unwell": "it was stopped unwell", "red_flag": "a safety question ended it"}


def test_so_does_a_session_of_the_plan_that_ended_before_the_stage_was_done() -> None:
    plan = staged()
    ended = alone(person=plan.person, plan_id=plan.plan_id)
    for last, done in ((ended, "turns-on-target"), (alone(plan_id="another"), "nods-on-target")):
        person = Person()
        person.practise(plan, history=on_days(*sessions(plan, 2), last))
        assert done_ids(person.summary) == [done]


def test_what_is_practised_already_stays_open() -> None:
    """Free practice says nothing of a stage: it never throws anybody back."""
    plan = staged()
    first = Person()
    first.practise(plan, history=sessions(plan, 2))
    assert first.summary.opened == ["two"]
    person = Person()
    person.practise(plan, history=on_days(*sessions(plan, 2), first.summary, alone()))
    assert done_ids(person.summary) == ["nods-on-target"]


def test_a_yes_upon_which_nothing_was_practised_is_asked_again_and_waits_as_long() -> None:
    """Who felt unwell right after the yes: the same at the patient's, untold, and on the desk."""
    plan, third = staged(), Person()
    calm = sessions(plan, 2)
    conductor = third.practise(plan, until=ShowToday, history=calm)
    conductor.unwell()
    third.go_on(conductor)
    unwell = third.summary
    assert unwell.opened == ["two"] and unwell.ended == "stopped_unwell" and not unwell.exercises
    stage_two = [e.entry_id for e in plan.entries_of("two")]
    for since, open_now in ((0, False), (1, False), (2, True)):
        history = on_days(*calm, unwell, *calm[:since])
        (found,) = conditions_of(plan, [row_of(s, str(k)) for k, s in enumerate(history)], None)
        assert (found.practised, found.condition.met) == (False, open_now)
        told = [e.entry_id for e in reported_entries(plan, history, None)]
        assert not {*told} & {*stage_two}
        person = Person()
        person.practise(plan, history=history)
        assert ("AskOpen" in person.kinds()) is open_now
        assert done_ids(person.summary) == (stage_two if open_now else ["turns-on-target"])


def test_a_yes_counts_as_long_as_something_of_it_was_practised() -> None:
    plan, third = staged(), Person()
    calm = sessions(plan, 2)
    third.practise(plan, history=calm)
    person = Person()
    person.practise(plan, history=on_days(*calm, third.summary))
    assert "AskOpen" not in person.kinds() and done_ids(person.summary) == ["nods-on-target"]


def test_an_entry_waits_as_a_stage_does() -> None:
    plan = plan_of(SEATED, LATER)
    assert LATER["unlock_after"] == AFTER_TURNS
    for found, shut in ((alone(), True), (alone("stopped"), False)):
        person = Person()
        person.practise(plan, history=on_days(*sessions(plan, 2), found))
        assert bool(refused(person.summary)) is shut


def test_a_fall_told_outside_a_plan_may_be_anothers_and_silences_no_stop(tmp_path: Path) -> None:
    """The day before the questions of the week: whoever fell, this person's fall is heard."""
    plan = staged()
    fell = alone("red_flag", gate={"put_first": ["fall"]})
    first = sessions(plan, 1)[0].model_copy(update={"started_at": f"{DAY}T09:00:00+01:00"})
    day_before, today = DAY + timedelta(days=6), DAY + timedelta(days=7)
    fell = fell.model_copy(update={"started_at": f"{day_before}T09:00:00+01:00"})
    history = read_back(tmp_path, plan, [first, fell])
    assert history == [first, fell]
    assert week_before(history, today) == Week(due=True, medicines_due=True)
    person = Person(weekly={"falls": "once", "hurt": False, "medicines_changed": False})
    person.practise(plan, history=history, today=today)
    assert person.summary.ended == "red_flag" and not person.summary.exercises


def test_it_does_not_stand_for_the_call_that_a_fall_asks_for(tmp_path: Path) -> None:
    """A fall told as the window closed leads to the stop next time, whoever fell meanwhile."""
    plan = staged()
    weekly = {"falls": "once", "reasons": {"medicines_changed": "not answered"}}
    left = sessions(plan, 1)[0].model_copy(update={"weekly": weekly})
    fell = alone("red_flag", gate={"put_first": ["fall"]})
    history = read_back(tmp_path, plan, on_days(left, fell))
    assert week_before(history, DAY + timedelta(days=1)).fall_open


def test_alone_it_asks_about_no_day_of_practice_and_begins_no_week(tmp_path: Path) -> None:
    plan = staged()
    (found,) = read_back(tmp_path, plan, on_days(alone()))
    assert earlier_of([found], DAY + timedelta(days=1)) == Earlier()
    # Nobody talked of falls and medicines before it.
    assert not week_before([found], DAY + timedelta(days=7)).due


def test_in_the_clinics_folder_it_is_nobodys(tmp_path: Path, private_data_folder: Path) -> None:
    """There it may be any of their patients'; on the computer's own account it counts."""
    plan = staged()
    calm, mine, theirs = on_days(sessions(plan, 1)[0], alone(), alone())
    clinic, own = tmp_path / "clinic", private_data_folder / "sessions"
    for place, summary in ((clinic / "a", theirs), (clinic / "b", calm), (own / "c", mine)):
        place.mkdir(parents=True)
        save_summary(place / SUMMARY_NAME, summary)
    assert load_history(clinic, plan)[0] == [calm]
    assert wiring.history_of(plan, clinic / "new") == [calm, mine]


def desk_of(plan: Plan, history: list[Summary]) -> Standing:
    """How the plan's one condition stands on the desk, which has what names the person."""
    rows = [row_of(s, str(k)) for k, s in enumerate(history) if s.person == plan.person]
    kept = [unpack(r.place, json.loads(json.dumps(pack(r, shapes := {}))), [*shapes]) for r in rows]
    assert kept == rows
    people = people_of(
        Records(Path(), kept, [("plan.json", plan)], [], 0, 0, complete=True), DAY + EIGHT_DAYS
    )
    (found,) = next(p for p in people if p.name == plan.person).conditions
    return found


def test_the_desk_learns_of_it_by_the_persons_next_session() -> None:
    """What names nobody does not come to the clinic; what it held back is said by who waited."""
    plan = staged()
    calm = sessions(plan, 2)
    history = on_days(*calm, alone(), alone())
    assert desk_of(plan, history).condition.met
    for since in range(3):
        person = Person()
        person.practise(plan, history=history)
        shut = since < 2
        assert done_ids(person.summary) == ["turns-on-target" if shut else "nods-on-target"]
        assert len(person.summary.ended_outside) == 2
        if not shut:
            break
        history = on_days(*history, person.summary)
        found = desk_of(plan, history).condition
        assert found.met is (since == 1)
        if since == 0:
            assert found.because == ("session 1 of the last 2: it was stopped unwell",)


@pytest.mark.parametrize("tried_by", ["the person", "nobody named"])
@pytest.mark.parametrize(("ended", "waits"), [("stopped_unwell", True), ("stopped", False)])
def test_a_first_try_that_ended_unwell_holds_back_what_is_new(
    tmp_path: Path, tried_by: str, ended: str, waits: bool
) -> None:
    plan = staged()
    person = plan.person if tried_by == "the person" else None
    tried = alone(ended, plan_id=TRY_ID, person=person)
    history = read_back(tmp_path, plan, on_days(*sessions(plan, 2), tried))
    today = Person()
    today.practise(plan, history=history)
    assert done_ids(today.summary) == ["turns-on-target" if waits else "nods-on-target"]
    known = desk_of(plan, history)
    if person is None and waits:
        # The clinic learns of it by the session that waited.
        assert known.condition.met
        known = desk_of(plan, [*history, *on_days(*history, today.summary)[-1:]])
    assert known.condition.met is not waits


def test_where_nothing_ended_so_nothing_is_told_of_it() -> None:
    person = Person()
    person.practise(staged(), history=sessions(staged(), 2))
    assert person.summary.ended_outside == []


def test_a_calm_one_and_one_that_names_somebody_are_left_out(tmp_path: Path) -> None:
    found = on_days(alone("finished"), alone("interrupted"), alone(person="somebody else"))
    assert read_back(tmp_path, staged(), found) == []
