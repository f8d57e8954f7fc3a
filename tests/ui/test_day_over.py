"""All was over for today: a try, and practice outside a plan, ask what a plan's session asks."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest

from tests.ui.fakes import PLAN, FakeWorld, Make
from tests.ui.patient import ENTER, TURNS, Person, plan_of
from tests.ui.test_begun_from_desk import held_back
from tests.ui.test_camera_lost_alone import alone
from tests.ui.test_planned_pages import said
from tracker.practice.day import Told, told_by
from tracker.practice.tasks import AskDayOver, AskGate, AskScores, Over
from tracker.session.summary_file import Summary
from ui.session.flow import Phase

TODAY = date.today()
OWN = plan_of(TURNS, person="Wren", emergency_number="0112")
GO_ON = "My therapist told me today that I may go on"


def told(*because: str, person: str | None = "Wren") -> Told:
    return Told(TODAY, person, ends=True, because=because)


def with_plan(make: Make, fake: FakeWorld, *of_today: Told) -> Person:
    """Wren's plan is at hand, and this is what today's sessions say."""
    fake.of_today = list(of_today)
    person = Person(make(), fake)
    person.window.pages["welcome"].offer(OWN)
    person.settle()
    return person


def begin_alone(person: Person) -> None:
    person.choose("Try one exercise")


def begin_try(person: Person) -> None:
    person.director.open_first("try")
    person.director.begin_try()
    person.settle()


@pytest.mark.parametrize("begin", [begin_alone, begin_try])
def test_after_an_emergency_nothing_else_is_practised_either(
    make: Make, fake: FakeWorld, begin: Any
) -> None:
    person = with_plan(make, fake, told("chest_pain"))
    begin(person)
    # Who comes back may need help now.
    assert isinstance(person.director.task, AskGate) and not fake.services
    person.none_of_these()
    assert person.director.task == AskDayOver(because=("chest_pain",), final=True)
    assert "call now: 0112" in said(person)
    page: Any = person.window.pages["task"]
    assert len(page.card.options) == 1
    person.press(ENTER)
    assert person.director.phase == Phase.summary and not fake.services
    assert person.director.saved is not None
    found = person.director.saved.summary
    assert (found["ended"], found["ended_because"]) == ("stopped", ["day_is_over"])
    assert found["person"] == "Wren" and found["exercises"] == []
    person.director.leave_summary()
    assert person.director.phase == Phase.welcome and person.director.at_rest


def test_the_therapist_s_word_lets_practice_outside_a_plan_begin_and_is_kept(
    make: Make, fake: FakeWorld
) -> None:
    person = with_plan(make, fake, told("neck_pain"))
    begin_alone(person)
    person.none_of_these()
    person.choose(GO_ON)
    person.choose("Yes, my therapist said so today")
    assert isinstance(person.director.task, AskGate)
    person.none_of_these()
    assert person.director.phase == Phase.camera and person.director.camera_on
    assert person.director.conductor is None and person.director.plan is None
    (recording,) = fake.recordings
    kept = Summary.model_validate_json((recording.folder / "summary.json").read_bytes())
    assert recording.closed and kept.allowed_today and kept.person == "Wren"
    assert not kept.anything_begun and not told_by(kept).ends
    # From here on it is as on any day.
    person.set_up()
    assert person.director.phase == Phase.choose


def test_the_safety_questions_end_it_there_too(make: Make, fake: FakeWorld) -> None:
    person = with_plan(make, fake, told())
    begin_alone(person)
    person.director.answer({"chest_pain": True})
    person.settle()
    assert person.director.task == Over(ended="red_flag", because=("chest_pain",))
    assert not fake.services


@pytest.mark.parametrize("at_hand", [True, False])
def test_who_was_told_so_is_not_asked_to_practise_again(
    make: Make, fake: FakeWorld, at_hand: bool
) -> None:
    fake.of_today = [told(person=None)]
    person = with_plan(make, fake, *fake.of_today) if at_hand else Person(make(), fake)
    person.director.start()
    person.settle()
    person.none_of_these()
    person.choose("End for today")
    assert person.director.phase == Phase.summary
    page: Any = person.window.pages["summary"]
    assert page.again.text() == "To the first page"
    person.choose("To the first page")
    assert person.director.phase == Phase.welcome and person.director.at_rest


@pytest.mark.parametrize(
    ("of_today", "over"),
    [
        (told(person=None), True),
        (told(person="Finch"), False),
        (Told(TODAY - timedelta(days=1), "Wren", ends=True), False),
        (Told(TODAY, "Wren", ends=False), False),
    ],
    ids=["nobody's", "another's", "yesterday's", "calm"],
)
@pytest.mark.parametrize("begin", [begin_alone, begin_try, "plan"])
def test_it_is_over_for_whom_it_was_whatever_is_begun(
    make: Make, fake: FakeWorld, of_today: Told, over: bool, begin: Any
) -> None:
    person = with_plan(make, fake, of_today)
    if begin == "plan":
        person.director.start_plan(OWN)
        person.settle()
    else:
        begin(person)
    person.none_of_these()
    if over:
        assert isinstance(person.director.task, AskDayOver)
    elif begin is begin_alone:
        assert person.director.phase == Phase.camera
    else:
        assert isinstance(person.director.task, AskScores)


def test_who_felt_unwell_in_practice_outside_the_plan_has_ended_its_day(
    make: Make, fake: FakeWorld
) -> None:
    """The record names nobody, and the plan at hand is theirs."""
    person = alone(make, fake)
    person.press("u")
    person.none_of_these()
    person.choose("Show what I did")
    assert person.director.saved is not None
    kept = Summary.model_validate(person.director.saved.summary)
    fake.of_today = [told_by(kept.model_copy(update={"started_at": f"{TODAY}T09:00:00"}))]
    person.director.leave_summary()
    person.director.start_plan(OWN)
    person.settle()
    person.none_of_these()
    assert isinstance(person.director.task, AskDayOver)


def test_nothing_else_begins_while_it_is_read(make: Make, fake: FakeWorld) -> None:
    person = with_plan(make, fake, told())
    jobs = held_back(person.director)
    begin_alone(person)
    assert person.director.phase == Phase.welcome and not person.director.at_rest
    person.director.start()
    person.director.start_plan(OWN)
    person.settle()
    assert len(jobs) == 1 and not fake.recordings
    jobs[0].done = True
    person.settle()
    assert isinstance(person.director.task, AskGate)


def test_what_is_read_leads_nowhere_once_one_feels_unwell(make: Make, fake: FakeWorld) -> None:
    person = with_plan(make, fake)
    jobs = held_back(person.director)
    begin_alone(person)
    person.press("u")
    task = person.director.task
    assert isinstance(task, AskGate) and task.because == "unwell"
    jobs[0].done = True
    person.settle()
    assert person.director.task is task and not fake.services


def test_the_sample_may_be_watched(make: Make, fake: FakeWorld) -> None:
    """Nobody practises in it."""
    fake.of_today = [told("chest_pain", person=None)]
    person = Person(make(clip=PLAN), fake)
    person.director.start()
    person.settle()
    assert person.director.phase == Phase.setup
