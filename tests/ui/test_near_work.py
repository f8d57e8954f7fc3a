"""Near work in the window: seeing double ends the set by one key; what is asked around it."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Any

import pytest
from PySide6.QtCore import Qt

from tests.ui.fakes import FakeWorld, seen
from tests.ui.patient import ENTER, SPACE, TURNS, Person, day_ago, plan_of
from tests.ui.pictures import keep
from tests.ui.test_planned_pages import offered, said
from tracker.plan.model import Entry
from tracker.practice.tasks import (
    AskAfterSet,
    AskDayOver,
    AskGate,
    AskScores,
    AskSinceLast,
    DoSet,
    Over,
    Prepare,
    Settle,
    ShowToday,
    Wait,
)
from ui import words
from ui.session.flow import Phase

NEAR = Entry(entry_id="near", exercise="near-hold", seconds=20, note="Why.")
Begin = Callable[..., Person]


def in_the_set(person: Person) -> Any:
    """Up to the set; gives the live page."""
    person.get_in_place(1)
    person.measured(3.2, seen)
    assert isinstance(person.director.task, DoSet)
    assert person.director.phase == Phase.exercise
    return person.window.pages["practice"]


@pytest.mark.parametrize("by", ["key", "button"])
def test_seeing_double_stops_the_set_at_once_and_says_what_to_do(begin: Begin, by: str) -> None:
    person = begin(plan_of(NEAR))
    page = in_the_set(person)
    assert page.double.isVisible() and "I see double (D)" in page.double.text()
    if by == "key":
        person.press("d")
    else:
        page.double.click()
        person.settle()
    task = person.director.task
    assert isinstance(task, Wait) and task.saw_double
    assert "Move your finger back out" in said(person)
    person.wait(10.5)
    assert isinstance(person.director.task, AskScores)
    person.press("1", ENTER)
    assert isinstance(person.director.task, Settle)
    person.choose("I feel as usual again")
    assert person.director.saved is not None
    (done,) = person.director.saved.summary["exercises"]
    assert done["clarity"] == {"value": "double", "reason": None, "stopped_set": True}


def test_another_set_has_neither_the_button_nor_the_key(begin: Begin) -> None:
    person = begin(plan_of(TURNS))
    page = in_the_set(person)
    assert not page.double.isVisible()
    person.press("d")
    assert isinstance(person.director.task, DoSet) and person.director.phase == Phase.exercise


def test_space_still_pauses_and_double_ends_a_paused_set_too(begin: Begin) -> None:
    person = begin(plan_of(NEAR))
    page = in_the_set(person)
    person.press(SPACE)
    assert person.director.phase == Phase.paused and isinstance(person.director.task, DoSet)
    assert page.double.isVisible()
    person.press("d")
    assert isinstance(person.director.task, Wait)


def test_a_stop_is_no_double_image(begin: Begin) -> None:
    person = begin(plan_of(NEAR))
    in_the_set(person)
    person.press(Qt.Key.Key_Escape)
    assert isinstance(person.director.task, AskAfterSet)
    assert "I saw two" in offered(person)


def test_what_was_seen_double_in_today_waits_and_says_why(begin: Begin, fake: FakeWorld) -> None:
    found = day_ago("p1").model_dump()
    found["started_at"] = f"{date.today()}T00:00:01"
    found["exercises"] = [exercise_of("near-hold", "double")]
    fake.history.append(type(day_ago("p1")).model_validate(found))
    person = begin(plan_of(NEAR, TURNS))
    person.none_of_these()
    person.press("1", ENTER)
    assert isinstance(person.director.task, ShowToday)
    assert "That is enough of it for one day" in said(person)
    person.choose("Begin")
    task = person.director.task
    assert isinstance(task, Prepare) and task.asked is not None
    assert task.asked.exercise.id == "turns-on-target"


def test_a_day_that_was_over_is_not_begun_again_and_it_is_said_why(
    begin: Begin, fake: FakeWorld
) -> None:
    ended = {"started_at": f"{date.today()}T00:00:01", "ended": "symptom_rule"}
    fake.history.append(day_ago("p1").model_copy(update=ended))
    person = begin(plan_of(TURNS))
    person.none_of_these()
    assert person.director.task == AskDayOver()
    assert "You were asked to stop for today" in said(person)
    keep(person.window, "near/day-is-over")
    # Not the default: the key that is at hand ends it.
    person.press(ENTER)
    assert person.director.saved is not None
    assert person.director.saved.summary["ended_because"] == ["day_is_over"]
    # It leads to the first page, and does not ask to practise in the next breath.
    page: Any = person.window.pages["summary"]
    assert page.again.text() == "To the first page"


@pytest.mark.parametrize(
    ("because", "whose", "line", "may_go_on"),
    [
        (
            "chest_pain",
            "Wren",
            "If you have not called for emergency help yet, call now: 0112.",
            False,
        ),
        (
            "chest_pain",
            None,
            "If you have not called for emergency help yet, call now: 0112.",
            True,
        ),
        ("neck_pain", "Wren", "Call your therapist before you practise again.", True),
    ],
)
def test_a_day_that_was_over_says_whom_to_call_and_takes_the_therapist_s_word(
    begin: Begin, fake: FakeWorld, because: str, whose: str | None, line: str, may_go_on: bool
) -> None:
    ended = {"started_at": f"{date.today()}T00:00:01", "ended": "red_flag"}
    ended |= {"ended_because": [because], "person": whose}
    fake.history.append(day_ago("p1").model_copy(update=ended))
    person = begin(plan_of(TURNS).model_copy(update={"emergency_number": "0112"}))
    person.none_of_these()
    page: Any = person.window.pages["task"]
    # Help that may still be needed is read first.
    assert line in (said(person) if because == "neck_pain" else page.title.text())
    assert len(page.card.options) == 1 + may_go_on
    assert page.unwell.isVisible() and not page.end.isVisible()
    keep(person.window, f"near/day-is-over-{because}")
    if not may_go_on:
        return
    person.choose("My therapist told me today that I may go on")
    assert "Did your therapist say today that you may go on?" in page.title.text()
    keep(person.window, "near/day-is-over-sure")
    person.press(ENTER)
    assert person.director.task == AskDayOver(because=(because,))
    person.choose("My therapist told me today that I may go on")
    person.choose("Yes, my therapist said so today")
    assert isinstance(person.director.task, AskGate)
    person.none_of_these()
    assert not isinstance(person.director.task, AskGate | AskDayOver | Over)
    person.director.end_today()
    assert person.director.saved is not None
    assert person.director.saved.summary["allowed_today"] is True


def exercise_of(exercise: str, clarity: str) -> dict[str, Any]:
    """The least of one exercise that a summary may have."""
    nothing = ("head", "eyes", "gaze", "stillness", "symptoms")
    return {
        "exercise": exercise,
        "entry_id": "near",
        "prescribed": {},
        "done": {"repetitions": None, "turns": None, "duration_s": 5.0, "measured_fraction": 1.0},
        **dict.fromkeys(nothing),
        "clarity": {"value": clarity, "reason": None},
        "eyes_closed_fraction": {},
        "sway": {},
        "events": [],
        "repetitions_list": [],
        "quality": [],
        "not_measured": [],
    }


def test_before_the_set_it_says_how_to_stop_and_what_is_not_seen(begin: Begin) -> None:
    person = begin(plan_of(NEAR))
    person.begin_day(1)
    assert isinstance(person.director.task, Prepare)
    text = said(person)
    assert "press “I see double (D)”" in text
    assert "The camera does not see: your hand, how far your eyes turn in." in text
    # What it does see is not listed, and no more than two things are.
    assert text.count("The camera does not see") == 1


def test_what_the_camera_sees_in_full_says_nothing_of_it(begin: Begin) -> None:
    person = begin(plan_of(Entry(entry_id="t", exercise="turns-together", repetitions=3)))
    person.begin_day(1)
    assert isinstance(person.director.task, Prepare)
    assert "does not see" not in said(person) and "I see double" not in said(person)


@pytest.mark.parametrize(
    ("first", "second", "kept"),
    [
        ("skip", "skip", {"rest_of_day": None, "next_morning": None}),
        ("skip", "3", {"rest_of_day": None, "next_morning": 3}),
        ("2", "skip", {"rest_of_day": 2, "next_morning": None}),
    ],
)
def test_what_one_does_not_remember_of_the_day_before_is_left_out(
    begin: Begin, fake: FakeWorld, first: str, second: str, kept: dict[str, Any]
) -> None:
    fake.history.append(day_ago("p1"))
    person = begin(plan_of(TURNS))
    person.none_of_these()
    assert isinstance(person.director.task, AskSinceLast)
    for given in (first, second):
        if given == "skip":
            person.choose("I do not remember")
        else:
            person.press(given, ENTER)
    assert isinstance(person.director.task, AskScores)
    # A score of now can't be left out.
    assert not person.window.pages["scores"].leave_out.isVisible()
    person.choose("End for today")
    assert person.director.saved is not None
    assert person.director.saved.summary["gate"]["since_last"] == kept


def test_a_second_bout_on_the_same_day_is_not_asked_about_a_morning_to_come(
    begin: Begin, fake: FakeWorld
) -> None:
    found = day_ago("p1")
    fake.history.append(found.model_copy(update={"started_at": f"{date.today()}T00:00:01"}))
    person = begin(plan_of(TURNS))
    person.none_of_these()
    assert isinstance(person.director.task, AskScores)


def test_a_part_that_may_open_asks_and_praises_nothing() -> None:
    text = words.say("ask.stage.how", name="X")
    assert text.endswith("?") and "well" not in text and "enough" not in text
