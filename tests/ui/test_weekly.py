"""The questions of the week in the window."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest

from tests.ui.fakes import FakeWorld, Make
from tests.ui.patient import ENTER, SPACE, TAB, TURNS, Person, plan_of, week_ago
from tests.ui.test_planned_pages import offered, said
from tracker.practice.tasks import AskScores, AskSinceLast, AskWeekly, Over
from tracker.session.said import NOT_ASKED


@pytest.fixture
def asked(make: Make, fake: FakeWorld) -> Person:
    """Somebody who practised a week ago, at the first of the questions."""
    fake.history.append(week_ago("p1"))
    window = make()
    window.pages["welcome"].offer(plan_of(TURNS))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.none_of_these()
    assert person.director.task == AskWeekly(question="falls")
    return person


def saved(person: Person) -> dict[str, Any]:
    assert person.director.saved is not None
    return person.director.saved.summary


def test_no_fall_leads_on_to_the_medicines_and_the_session(asked: Person) -> None:
    assert "Did you fall in the last week?" in said(asked)
    assert offered(asked)[:4] == [
        "No, I did not fall",
        "Yes, once",
        "Yes, more than once",
        "I would rather not say",
    ]
    asked.choose("No, I did not fall")
    assert asked.director.task == AskWeekly(question="medicines_changed")
    assert "no names are kept" in said(asked)
    asked.choose("Yes")
    assert isinstance(asked.director.task, AskSinceLast)
    asked.choose("End for today")
    weekly = saved(asked)["weekly"]
    assert (weekly["falls"], weekly["hurt"], weekly["medicines_changed"]) == ("none", None, True)


def test_by_keys_alone_nothing_is_told_by_chance(asked: Person) -> None:
    """A second Enter at "None of these", or one before the next question is read."""
    asked.press(ENTER, SPACE)
    assert asked.director.task == AskWeekly(question="falls")
    asked.choose("Yes, once")
    asked.press(ENTER, SPACE)
    assert asked.director.task == AskWeekly(question="hurt")
    # One Tab is the first answer.
    asked.press(TAB, ENTER, ENTER)
    assert asked.director.task == AskWeekly(question="medicines_changed")
    asked.choose("I would rather not say")
    asked.choose("Show what I did")
    found = saved(asked)["weekly"]
    assert (found["falls"], found["hurt"], found["medicines_changed"]) == ("once", True, None)


def test_who_ends_after_telling_of_a_fall_reads_whom_to_call(asked: Person) -> None:
    asked.choose("Yes, once")
    asked.choose("End for today")
    assert isinstance(asked.director.task, Over)
    assert "Call your therapist first" in said(asked) and "You told of a fall" in said(asked)
    asked.choose("Show what I did")
    assert saved(asked)["gate"]["put_first"] == ["fall"]


def test_a_fall_told_before_the_window_closed_is_called_for_at_the_next_start(
    make: Make, fake: FakeWorld
) -> None:
    fake.history.append(week_ago("p1"))
    told = {"falls": "once", "hurt": None, "medicines_changed": None}
    told["reasons"] = dict.fromkeys(("hurt", "medicines_changed"), NOT_ASKED)  # type: ignore[assignment]
    today = {"started_at": f"{date.today()}T08:00:00", "weekly": told, "ended": "stopped"}
    fake.history.append(week_ago("p1").model_copy(update=today))
    window = make()
    window.pages["welcome"].offer(plan_of(TURNS))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.none_of_these()
    assert isinstance(person.director.task, Over)
    assert "Call your therapist first" in said(person) and "You told of a fall" in said(person)


def test_closing_the_window_calls_for_nothing_that_nobody_saw(asked: Person) -> None:
    asked.choose("Yes, once")
    asked.window.close()
    found = saved(asked)
    assert found["ended"] == "stopped" and found["gate"]["put_first"] == []
    assert found["weekly"]["falls"] == "once"


def test_a_fall_ends_the_day_with_what_to_do(asked: Person) -> None:
    asked.choose("Yes, more than once")
    assert asked.director.task == AskWeekly(question="hurt")
    asked.choose("Yes")
    asked.choose("No")
    assert isinstance(asked.director.task, Over)
    assert "Call your therapist first" in said(asked)
    asked.choose("Show what I did")
    found = saved(asked)
    assert found["ended"] == "red_flag" and found["gate"]["put_first"] == ["fall"]
    weekly = found["weekly"]
    assert weekly == {"falls": "more", "hurt": True, "medicines_changed": False, "reasons": {}}


def test_it_may_be_passed_over(asked: Person) -> None:
    asked.choose("I would rather not say")
    asked.choose("I would rather not say")
    assert isinstance(asked.director.task, AskSinceLast)
    asked.choose("End for today")
    weekly = saved(asked)["weekly"]
    assert weekly["falls"] is None and weekly["reasons"]["falls"] == "not answered"


def test_within_the_week_it_is_not_asked(make: Make, fake: FakeWorld) -> None:
    for days in (8, 1):
        day = date.today() - timedelta(days=days)
        fake.history.append(week_ago("p1").model_copy(update={"started_at": f"{day}T09:00:00"}))
    fake.history[-1] = fake.history[-1].model_copy(
        update={"weekly": {"falls": "none", "hurt": None, "medicines_changed": False}}
    )
    window = make()
    window.pages["welcome"].offer(plan_of(TURNS))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.none_of_these()
    assert isinstance(person.director.task, AskSinceLast | AskScores)
