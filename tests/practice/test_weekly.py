"""The questions of the week: when they come, what is kept, what a fall brings."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.practice.person import ALL_NO, SEATED, Person, done_ids, plan_of
from tracker.plan.starter import TRY_ID
from tracker.practice.conductor import Conductor
from tracker.practice.history import load_history
from tracker.practice.tasks import AskGate, AskScores, AskWeekly, Over
from tracker.practice.week import Week, week_before
from tracker.records.adherence import adherence_of
from tracker.records.attention import reasons_of
from tracker.records.figure import shown
from tracker.records.figures import record_of
from tracker.records.rows import row_of
from tracker.session.said import NOT_ANSWERED, NOT_ASKED
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import Summary, save_summary
from tracker.session.weekly import NO_FALL, QUESTIONS, names_of_yes
from ui.commands.practise import table

DAY = date(2026, 3, 2)
PLAN = plan_of(SEATED)


def session(day: int, person: Person | None = None, history: Sequence[Summary] = ()) -> Summary:
    """A session so many days after the first."""
    today = DAY + timedelta(days=day)
    person = person or Person()
    person.practise(PLAN, history=history, today=today)
    return person.summary.model_copy(update={"started_at": f"{today}T09:00:00+01:00"})


def asked(person: Person) -> list[str]:
    return [t.question for t in person.tasks if isinstance(t, AskWeekly)]


def told(**answers: Any) -> Person:
    return Person(weekly={"falls": "none", "hurt": None, "medicines_changed": False, **answers})


def test_they_come_once_in_seven_days() -> None:
    history: list[Summary] = []
    days = []
    for day in range(0, 24, 2):
        person = Person()
        history.append(session(day, person, history))
        if asked(person):
            days.append(day)
            assert asked(person) == ["falls", "medicines_changed"]
            assert person.kinds()[:2] == ["AskGate", "AskWeekly"]
        else:
            assert person.summary.weekly is None
    # The first is seven days after the first session, the others after the one before.
    assert days == [8, 16]


@pytest.mark.parametrize(("after", "due"), [(6, False), (7, True)])
def test_seven_calendar_days_count(after: int, due: bool) -> None:
    first = session(0)
    assert week_before([first], DAY + timedelta(days=after)).due is due
    second = session(7, history=[first])
    assert second.weekly is not None
    assert week_before([first, second], DAY + timedelta(days=7 + after)).due is due


def test_where_nothing_was_begun_no_week_of_practice_begins() -> None:
    """Who only answered, as one who felt unwell before it, has not practised (own rule)."""
    unwell = session(0).model_copy(update={"exercises": []})
    assert not week_before([unwell], DAY + timedelta(days=7)).due
    practised = session(3)
    assert not week_before([unwell, practised], DAY + timedelta(days=9)).due
    assert week_before([unwell, practised], DAY + timedelta(days=10)).due


def test_a_clock_that_ran_ahead_stops_no_questions() -> None:
    first, ahead = session(0), session(4000)
    ahead = ahead.model_copy(update={"weekly": session(7, history=[first]).weekly})
    assert week_before([first, ahead], DAY + timedelta(days=8)).due
    unknown = first.model_copy(update={"started_at": "once upon a time"})
    assert week_before([unknown], DAY) == Week()


@pytest.mark.parametrize("odd", [{}, {"reasons": []}, {"falls": [1], "reasons": {"falls": {}}}])
def test_an_odd_summary_stops_no_session(odd: dict[str, Any]) -> None:
    first = session(0)
    strange = first.model_copy(update={"weekly": odd, "gate": {"put_first": "fall"}})
    week = week_before([first, strange], DAY + timedelta(days=7))
    assert week == Week(due=True, medicines_due=True)


def test_a_try_asks_nothing_and_counts_for_nothing() -> None:
    first, a_try = session(0), {"plan_id": TRY_ID}
    person = Person()
    today = DAY + timedelta(days=7)
    person.practise(PLAN.model_copy(update=a_try), history=[first], today=today)
    assert not asked(person) and person.summary.weekly is None
    fallen = session(8, Person(gate=ALL_NO | {"fall": True}), [first])
    tried = [session(7, history=[first]).model_copy(update=a_try), fallen.model_copy(update=a_try)]
    assert week_before([first, *tried], DAY + timedelta(days=8)) == Week(
        due=True, medicines_due=True
    )
    assert week_before(tried, DAY + timedelta(days=20)) == Week()


def test_what_was_answered_is_kept() -> None:
    week = session(7, told(falls="none", medicines_changed=True), [session(0)]).weekly
    assert week == {
        "falls": "none",
        "hurt": None,
        "medicines_changed": True,
        "reasons": {"hurt": NO_FALL},
    }


def test_passed_over_is_not_a_no_and_counts_as_asked() -> None:
    first = session(0)
    second = session(7, told(falls=None, medicines_changed=None), [first])
    assert second.weekly is not None
    assert second.weekly["reasons"] == {
        "falls": NOT_ANSWERED,
        "hurt": NOT_ASKED,
        "medicines_changed": NOT_ANSWERED,
    }
    assert done_ids(second) == ["turns-on-target"]
    assert not week_before([first, second], DAY + timedelta(days=8)).due


@pytest.mark.parametrize("falls", ["once", "more"])
def test_a_fall_is_asked_about_once_more_and_ends_the_session(falls: str) -> None:
    person = told(falls=falls, hurt=True)
    found = session(7, person, [session(0)])
    assert asked(person) == ["falls", "hurt", "medicines_changed"]
    assert found.ended == "red_flag" and found.ended_because == ["fall"]
    assert found.gate is not None and found.gate["put_first"] == ["fall"]
    assert found.weekly is not None and found.weekly["hurt"] is True
    assert found.exercises == []
    again = found.gate["asked_again"]
    assert [a["asked_because"] for a in again] == ["weekly"]
    assert again[0]["outcome"] == "call_therapist" and again[0]["answers"]["fall"] is True


def test_a_fall_that_the_gate_has_heard_of_stops_nobody_again() -> None:
    first = session(0)
    fallen = Person(gate=ALL_NO | {"fall": True})
    second = session(4, fallen, [first])
    assert second.ended == "red_flag" and not asked(fallen)
    person = told(falls="once", hurt=False)
    third = session(8, person, [first, second])
    assert asked(person) == ["falls", "hurt", "medicines_changed"]
    assert third.ended == "finished" and third.weekly is not None
    assert third.weekly["falls"] == "once"
    # Told longer ago than that, it says nothing of a fall in the last week.
    for day in (11, 12):
        later = session(day, told(falls="once", hurt=False), [first, second])
        assert later.ended == "red_flag"
    # Of more than one fall at most one was told.
    assert session(8, told(falls="more"), [first, second]).ended == "red_flag"


def test_a_fall_each_week_ends_the_day_each_week() -> None:
    history = [session(0)]
    for day in (7, 14, 21):
        found = session(day, told(falls="once", hurt=False), history)
        assert found.ended == "red_flag", day
        history.append(found)
    # Called for, it stops nobody on the next day.
    assert session(22, None, history).ended == "finished"


@pytest.mark.parametrize("question", ["hurt", "medicines_changed"])
def test_who_ends_after_telling_of_a_fall_is_still_told_to_call(question: str) -> None:
    person = told(falls="once")
    first, day = session(0), DAY + timedelta(days=7)
    conductor = person.practise(PLAN, until=AskWeekly, history=[first], today=day)
    conductor.answer("once")
    if question != "hurt":
        conductor.answer(True)
    assert conductor.task == AskWeekly(question=question)
    conductor.stop()
    assert conductor.task == Over(ended="red_flag", because=("fall",))
    found = person.summary.model_copy(update={"started_at": f"{day}"})
    assert found.ended == "red_flag" and found.gate is not None
    assert found.gate["put_first"] == ["fall"]
    week = week_before([first, found], day + timedelta(days=1))
    assert (week.due, week.medicines_due, week.fall_open) == (False, True, False)
    person = told(medicines_changed=True)
    again = session(8, person, [first, found])
    assert asked(person) == ["medicines_changed"] and again.ended == "finished"
    assert again.weekly is not None and again.weekly["reasons"]["falls"] == NOT_ASKED
    # Asked on the eighth day, medicines are due a day later than falls.
    week = week_before([first, found, again], DAY + timedelta(days=14))
    assert (week.due, week.medicines_due) == (True, False)


@pytest.mark.parametrize("how", ["closed", "killed", "unwell", "drop"])
def test_a_told_fall_that_nobody_was_called_for_stops_the_next_start(how: str) -> None:
    person = told(falls="once")
    first, day = session(0), DAY + timedelta(days=7)
    conductor = person.practise(PLAN, until=AskWeekly, history=[first], today=day)
    conductor.answer("once")
    if how == "closed":
        conductor.stop(shown=False)
    elif how == "drop":
        conductor.stop("possible_fall")
    elif how == "unwell":
        conductor.unwell()
        person.go_on(conductor)
    left = person.summary.model_copy(update={"started_at": f"{day}"})
    assert left.gate is not None and left.gate["put_first"] == []
    for later in (7, 8, 14):
        patient = Person()
        found = session(later, patient, [first, left])
        assert patient.kinds() == ["AskGate", "Over"]
        assert found.ended == "red_flag" and found.ended_because == ["fall"]
        # Told once, it is not said again; that day is over.
        again = session(later, Person(), [first, left, found])
        assert again.ended_because == ["day_is_over"]
        assert session(later + 1, Person(), [first, left, found]).ended == "finished"


def test_a_fall_that_was_heard_of_in_time_stays_closed() -> None:
    first = session(0)
    second = session(4, Person(gate=ALL_NO | {"fall": True}), [first])
    third = session(8, told(falls="once", hurt=False), [first, second])
    assert third.ended == "finished"
    assert session(9, Person(), [first, second, third]).ended == "finished"


def test_a_fall_at_the_gate_is_not_asked_about_again() -> None:
    person = Person(gate=ALL_NO | {"fall": True})
    found = session(7, person, [session(0)])
    assert person.kinds() == ["AskGate", "Over"] and found.weekly is None
    # It was not asked, so it comes the next time.
    assert week_before([session(0), found], DAY + timedelta(days=8)).due


def test_a_fall_told_weekly_is_not_worded_as_an_answer_at_the_gate() -> None:
    said = "a fall, told in the question of the week"
    first = session(0)
    found = session(7, told(falls="once", hurt=False), [first])
    figures = record_of(found)
    safety = figures.find("safety")
    assert safety is not None and shown(safety) == f"yes to: {said}"
    assert figures.alert[:2] == (
        f"Answered yes: {said}",
        "Told of falls in the last week: one fall, not hurt",
    )
    row = row_of(found, "a/summary.json")
    assert [r.text for r in reasons_of([row], adherence_of([row], PLAN, DAY), [])][:1] == [
        "told of falls in the last week: one fall, not hurt"
    ]
    assert (
        "safety questions             call therapist (a fall, told in the question of the week)"
        in (table(found))
    )
    # At the gate itself it is a fall since the last session, also where it was told twice.
    gate = session(7, Person(gate=ALL_NO | {"fall": True}), [first])
    assert record_of(gate).alert[0] == "Answered yes: fall since the last session"
    assert "safety questions             call therapist" in table(gate)
    both = dict(found.gate or {})
    both["asked_again"] = [
        *both["asked_again"],
        {"answers": {"fall": True}, "asked_because": "unwell"},
    ]
    assert row_of(found.model_copy(update={"gate": both}), "a").put_first == ("fall",)


@pytest.mark.parametrize("odd", [None, [], {"put_first": "fall"}, {"put_first": None}])
def test_an_odd_gate_names_nothing(odd: Any) -> None:
    assert names_of_yes(odd) == []
    assert names_of_yes({"put_first": ["fall"], "asked_again": [3, {"answers": []}]}) == ["fall"]


def test_what_was_answered_before_one_ended_is_kept() -> None:
    person = told(falls="once")
    conductor = person.practise(
        PLAN, until=AskWeekly, history=[session(0)], today=DAY + timedelta(days=7)
    )
    conductor.answer("more")
    assert conductor.task == AskWeekly(question="hurt")
    conductor.stop(shown=False)
    assert isinstance(conductor.task, Over)
    weekly = person.summary.weekly
    assert weekly is not None and weekly["falls"] == "more" and weekly["hurt"] is None
    assert weekly["reasons"] == {"hurt": NOT_ASKED, "medicines_changed": NOT_ASKED}


def test_unwell_while_being_asked_brings_the_safety_questions() -> None:
    person = Person()
    conductor = person.practise(
        PLAN, until=AskWeekly, history=[session(0)], today=DAY + timedelta(days=7)
    )
    conductor.unwell()
    assert isinstance(conductor.task, AskGate) and conductor.task.because == "unwell"


@pytest.mark.parametrize("answer", [True, "often", 1])
def test_an_answer_that_makes_no_sense_is_refused(answer: Any) -> None:
    conductor = Person().practise(
        PLAN, until=AskWeekly, history=[session(0)], today=DAY + timedelta(days=7)
    )
    with pytest.raises(ValueError, match="is no answer"):
        conductor.answer(answer)
    assert conductor.task == AskWeekly(question="falls")


def test_where_nobody_is_there_it_is_not_asked_and_stays_due() -> None:
    person = told(falls=None, medicines_changed=None)
    conductor = person.practise(
        PLAN, AskScores, history=[session(0)], today=DAY + timedelta(days=7), attended=False
    )
    assert isinstance(conductor, Conductor)
    weekly = person.summary.weekly
    assert weekly is not None and set(weekly["reasons"].values()) == {NOT_ASKED}
    assert set(weekly["reasons"]) == set(QUESTIONS)
    found = person.summary.model_copy(update={"started_at": f"{DAY + timedelta(days=7)}"})
    assert week_before([session(0), found], DAY + timedelta(days=8)).due
    figures = record_of(found)
    falls, medicines = figures.find("falls"), figures.find("medicines_changed")
    assert falls is not None and medicines is not None
    assert shown(falls) == shown(medicines) == NOT_ASKED


def test_a_damaged_answer_is_none() -> None:
    person = Person()
    person.practise(PLAN, AskScores, history=[session(0)], today=DAY + timedelta(days=7))
    given = {"falls": ["once"], "hurt": "yes", "medicines_changed": 1}
    person.engine.answer("weekly", {"answers": given, "attended": True})
    weekly = person.summary.weekly
    assert weekly is not None and {weekly[q] for q in QUESTIONS} == {None}
    person.engine.answer("weekly", "none")
    assert person.summary.weekly is None


def test_another_plan_of_the_same_person_goes_on_with_the_week(tmp_path: Path) -> None:
    first = session(0)
    other = first.model_copy(update={"plan_id": "the-plan-before"})
    stranger = first.model_copy(update={"person": "somebody else"})
    for name, found in (("a", other), ("b", stranger)):
        (tmp_path / name).mkdir()
        save_summary(tmp_path / name / SUMMARY_NAME, found)
    history, unread = load_history(tmp_path, PLAN)
    assert [s.plan_id for s in history] == ["the-plan-before"] and not unread
    person = Person()
    person.practise(PLAN, history=history, today=DAY + timedelta(days=7))
    # The week goes on, and so does the day before.
    assert asked(person) == ["falls", "medicines_changed"]
    assert "AskSinceLast" in person.kinds()
    nobodys = PLAN.model_copy(update={"person": None})
    assert load_history(tmp_path, nobodys)[0] == []
