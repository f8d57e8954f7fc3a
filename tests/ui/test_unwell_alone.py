"""To feel unwell outside a plan: everything stops, and the safety questions come."""

from __future__ import annotations

import json
from typing import Any

import pytest
from PySide6.QtCore import Qt

from tests.practice.test_ended_alone import alone as alone_before
from tests.ui.fakes import PLAN, FakeWorld, Make, Voice, seen
from tests.ui.patient import ENTER, TURNS, Person, earlier, plan_of
from tests.ui.test_begun_from_desk import held_back
from tests.ui.test_camera_lost_alone import alone, at_choice, in_picture, in_setup
from tests.ui.test_planned_pages import UNWELL, offered, said
from tests.ui.test_window import cut_in
from tracker.errors import RunError
from tracker.plan.gate import EMERGENCY
from tracker.practice.tasks import AskGate, DoSet, Over
from ui import words
from ui.session.flow import Phase
from ui.session.twice import TWICE_S
from ui.widgets.marks import Mark


def asked_why(person: Person) -> None:
    """The questions are those of somebody who feels unwell, and nothing goes on under them."""
    task = person.director.task
    assert isinstance(task, AskGate) and task.because == "unwell"
    page: Any = person.window.stack.currentWidget()
    assert page is person.window.pages["gate"]
    assert page.question.text() == words.say("gate.ask_unwell")
    assert not cut_in(person.window)


def summary_of(person: Person) -> dict[str, Any]:
    assert person.director.saved is not None
    return person.director.saved.summary


@pytest.mark.parametrize("by", ["key", "button"])
def test_in_an_exercise_alone_it_stops_and_asks(
    make: Make, fake: FakeWorld, voice: Voice, by: str
) -> None:
    person = alone(make, fake)
    voice.spoken.clear()
    if by == "key":
        person.press("u")
    else:
        assert UNWELL in offered(person)
        person.window.pages["practice"].unwell.click()
        person.settle()
    asked_why(person)
    # Whatever is answered: there is nothing that could begin.
    assert person.director.plan is not None and not person.director.plan.entries
    assert words.say("say.sit") in voice.texts[-1]
    # The same key once more passes nothing over.
    person.press("u")
    asked_why(person)
    done_s = person.director.now_s
    person.none_of_these()
    task = person.director.task
    assert isinstance(task, Over) and task.ended == "stopped_unwell"
    assert not person.director.camera_on
    person.choose("Show what I did")
    assert person.director.phase == Phase.summary and person.director.plan is None
    found = summary_of(person)
    assert found["ended"] == "stopped_unwell" and found["not_done"] == []
    assert found["gate"] is not None and len(found["exercises"]) == 1
    # By that the next session of a plan knows it (`tests/practice/test_ended_alone.py`).
    assert found["plan_id"] is None and found["person"] is None
    assert found["exercises"][0]["done"]["duration_s"] < done_s
    # From here on it is as after any session.
    person.director.leave_summary()
    assert person.director.phase == Phase.welcome and person.director.conductor is None


@pytest.mark.parametrize("where", ["setup", "choose", "countdown", "paused"])
def test_so_it_is_from_the_set_up_on(make: Make, fake: FakeWorld, where: str) -> None:
    if where == "setup":
        person = in_setup(make, fake)
        assert UNWELL in offered(person)
    elif where == "choose":
        person = at_choice(make, fake)
    else:
        person = alone(make, fake)
        person.press(" ")
        if where == "countdown":
            person.press(" ")
        assert person.director.phase == where
    person.press("u")
    asked_why(person)
    person.none_of_these()
    person.choose("Show what I did")
    assert summary_of(person)["ended"] == "stopped_unwell"


@pytest.mark.parametrize("where", ["saving", "summary by key", "summary by button"])
def test_just_after_it_the_questions_come_in_a_record_of_their_own(
    make: Make, fake: FakeWorld, where: str
) -> None:
    person = alone(make, fake)
    person.measured(2.0, seen)
    jobs = held_back(person.director) if where == "saving" else []
    person.director.stop()
    person.settle()
    first = fake.recordings[-1]
    assert UNWELL in offered(person)
    if where == "saving":
        assert person.director.phase == Phase.saving
        person.press("u")
        assert person.director.phase == Phase.saving
        for job in jobs:
            job.done = True
        person.settle()
    elif where == "summary by key":
        person.press("u", ENTER)
    else:
        person.choose(UNWELL)
        person.choose(UNWELL)
    asked_why(person)
    assert fake.recordings[-1] is not first
    assert first.save().summary["ended"] == "stopped"
    person.none_of_these()
    person.choose("Show what I did")
    for job in jobs:
        job.done = True
    person.settle()
    found = summary_of(person)
    assert found["ended"] == "stopped_unwell" and found["exercises"] == []
    # Who has just practised is not told that nothing was.
    assert person.window.pages["summary"].said.text() == words.say("summary.done_before")
    # It was asked, and is not offered once more.
    assert UNWELL not in offered(person)


@pytest.mark.parametrize("of_plan", [False, True])
@pytest.mark.parametrize("disk", ["full to the end", "free again"])
def test_a_session_that_waits_for_its_place_is_asked_about_and_not_lost(
    make: Make, fake: FakeWorld, of_plan: bool, disk: str
) -> None:
    person = planned(make, fake) if of_plan else alone(make, fake)
    plan = person.director.plan
    first = fake.recordings[-1]
    first.fail = RunError("the disk is full")
    if of_plan:
        person.director.end_today()
    else:
        person.director.stop()
    person.settle()
    assert person.director.unsaved and UNWELL in offered(person)
    person.choose(UNWELL)
    person.choose(UNWELL)
    asked_why(person)
    second = fake.recordings[-1]
    assert second is not first
    if disk == "full to the end":
        second.fail = RunError("the disk is full")
    else:
        first.fail = None
    person.none_of_these()
    person.choose("Show what I did")
    if disk == "full to the end":
        # Both wait, and nothing leads away from them; unwell was asked about, and once.
        assert person.director.unsaved and UNWELL not in offered(person)
        person.director.leave_summary()
        assert person.director.unsaved and not (first.folder / "summary.json").exists()
        first.fail = None
        person.choose("Try again")
        assert person.director.unsaved and (first.folder / "summary.json").exists()
        second.fail = None
        person.choose("Try again")
    assert not person.director.unsaved and not person.director.save_error
    kept = json.loads((first.folder / "summary.json").read_text(encoding="utf-8"))
    assert kept["ended"] == "stopped" and len(kept["exercises"]) == 1
    found = summary_of(person)
    assert found["ended"] == "stopped_unwell" and found["exercises"] == []
    assert person.director.plan is plan
    assert found["plan_id"] == kept["plan_id"] == (None if plan is None else plan.plan_id)
    person.director.leave_summary()
    assert person.director.phase == Phase.welcome


@pytest.mark.parametrize("of_plan", [False, True])
def test_said_while_saving_and_the_window_closed_it_is_kept(
    make: Make, fake: FakeWorld, of_plan: bool
) -> None:
    """Nobody is there to answer; that somebody felt unwell must not look like a break-off."""
    person = planned(make, fake) if of_plan else alone(make, fake)
    plan, first = person.director.plan, fake.recordings[-1]
    jobs = held_back(person.director)
    person.director.end_today() if of_plan else person.director.stop()
    assert person.director.phase == Phase.saving
    person.press("u")
    assert fake.recordings[-1] is first

    def wait(_: float) -> None:
        for job in jobs:
            job.done = True

    jobs[-1].wait = wait
    person.window.close()
    second = fake.recordings[-1]
    assert second is not first and second.closed
    before = json.loads((first.folder / "summary.json").read_text(encoding="utf-8"))
    assert before["ended"] == "stopped" and len(before["exercises"]) == 1
    kept = json.loads((second.folder / "summary.json").read_text(encoding="utf-8"))
    assert (kept["ended"], kept["ended_because"]) == ("stopped_unwell", ["unwell"])
    assert kept["plan_id"] == (None if plan is None else plan.plan_id)
    assert kept["exercises"] == []


def test_what_waits_is_let_go_with_the_window(make: Make, fake: FakeWorld) -> None:
    person = alone(make, fake)
    first = fake.recordings[-1]
    first.fail = RunError("the disk is full")
    person.director.stop()
    person.settle()
    person.press("u", ENTER)
    fake.recordings[-1].fail = first.fail
    person.window.close()
    # What could not be saved is offered at the next start, once its file is let go.
    assert first.closed and fake.recordings[-1].closed


def planned(make: Make, fake: FakeWorld, **more: Any) -> Person:
    """In the first set of a plan."""
    person = Person(make(), fake)
    person.director.start_plan(plan_of(TURNS, **more))
    person.settle()
    person.get_in_place(2)
    person.measured(5.0, seen)
    assert isinstance(person.director.task, DoSet)
    return person


def test_after_a_planned_session_the_questions_come_in_a_record_of_its_plan(
    make: Make, fake: FakeWorld
) -> None:
    person = planned(make, fake)
    plan, first = person.director.plan, fake.recordings[-1]
    person.director.end_today()
    person.settle()
    assert person.director.phase == Phase.summary and UNWELL in offered(person)
    person.choose(UNWELL)
    person.choose(UNWELL)
    asked_why(person)
    assert fake.recordings[-1] is not first
    person.none_of_these()
    person.choose("Show what I did")
    found = summary_of(person)
    assert plan is not None and person.director.plan is plan
    assert (found["ended"], found["exercises"]) == ("stopped_unwell", [])
    assert (found["plan_id"], found["person"]) == (plan.plan_id, plan.person)
    assert UNWELL not in offered(person)
    page = person.window.pages["summary"]
    assert page.said.text() == words.say("summary.done_before")
    # Another time nothing may be done before it.
    person.choose("To the first page")
    person.press("u", ENTER)
    person.none_of_these()
    person.choose("Show what I did")
    assert page.said.text() == words.say("summary.nothing_stopped")


@pytest.mark.parametrize("by", ["key", "button"])
def test_where_the_scores_end_the_day_one_may_still_feel_worse(
    make: Make, fake: FakeWorld, by: str
) -> None:
    person = planned(make, fake)
    person.director.set_done()
    person.answer_set()
    person.wait(11.0)
    person.press("9", ENTER)
    task = person.director.task
    assert isinstance(task, Over) and task.ended == "symptom_rule"
    if by == "key":
        person.press("u")
    else:
        person.choose(UNWELL)
    asked_why(person)
    assert fake.recordings[0].save().summary["ended"] == "symptom_rule"
    person.none_of_these()
    # They were asked now: the page that tells of them does not offer them once more.
    assert isinstance(person.director.task, Over) and UNWELL not in offered(person)
    person.press("u")
    assert isinstance(person.director.task, Over)


@pytest.mark.parametrize("where", ["setup", "came", "choose", "mark"])
def test_every_page_outside_a_plan_has_the_button(make: Make, fake: FakeWorld, where: str) -> None:
    person = in_setup(make, fake) if where == "setup" else at_choice(make, fake)
    if where == "came":
        person.director.open_told()
    elif where == "mark":
        person.director.open_mark()
    person.settle()
    page: Any = person.window.stack.currentWidget()
    assert page is person.window.pages[where] and UNWELL in offered(person)
    if where != "setup":
        person.choose(UNWELL)
        asked_why(person)


@pytest.mark.parametrize("number", [None, "112"])
def test_the_number_for_help_is_that_of_the_plan_at_hand(
    make: Make, fake: FakeWorld, number: str | None
) -> None:
    person = Person(make(), fake)
    if number is not None:
        person.window.pages["welcome"].offer(plan_of(TURNS, emergency_number=number))
    person.director.start()
    person.settle()
    person.set_up()
    person.press("u")
    asked_why(person)
    first = words.say(f"gate.{EMERGENCY[0]}")
    page: Any = person.window.pages["gate"]
    mark = next(m for m in page.findChildren(Mark) if m.isVisible() and m.text() == first)
    mark.click()
    page.some.click()
    person.settle()
    key = "gate.outcome.emergency" if number else "gate.outcome.emergency_no_number"
    assert words.say(key, number=number or "") in said(person)


@pytest.mark.parametrize("of_plan", [False, True])
def test_practice_alone_makes_no_later_session_of_a_plan_of_the_first(
    make: Make, fake: FakeWorld, of_plan: bool
) -> None:
    plan = plan_of(TURNS)
    done = earlier(plan.plan_id).exercises
    fake.history = [alone_before(plan_id=plan.plan_id if of_plan else None, exercises=done)]
    person = Person(make(), fake)
    person.director.start_plan(plan)
    person.settle()
    assert isinstance(person.director.task, AskGate)
    page: Any = person.window.pages["gate"]
    key = "gate.ask" if of_plan else "gate.ask_first"
    assert page.question.text() == words.say(key)


@pytest.mark.parametrize("by", ["key", "button"])
@pytest.mark.parametrize("where", ["welcome", "camera", "tools"])
@pytest.mark.parametrize("number", [None, "112"])
def test_before_anything_is_begun_the_questions_come_too(
    make: Make, fake: FakeWorld, where: str, by: str, number: str | None
) -> None:
    """Who stands there, before a session or back from one, has the same key and button."""
    person = Person(make(), fake)
    plan = None if number is None else plan_of(TURNS, emergency_number=number)
    if plan is not None:
        person.window.pages["welcome"].offer(plan)
    if where == "camera":
        person.director.start()
        person.measured(0.5, seen)
    elif where == "tools":
        person.director.open_tools()
    person.settle()
    assert person.window.stack.currentWidget() is person.window.pages[where]
    if by == "key":
        person.press("u")
    else:
        person.choose(UNWELL)
    person.choose(UNWELL)
    asked_why(person)
    assert not person.director.camera_on
    # What is kept of it is the plan's that is at hand.
    person.none_of_these()
    assert words.say("over.stopped_unwell") in said(person)
    person.choose("Show what I did")
    found = summary_of(person)
    assert (found["ended"], found["exercises"]) == ("stopped_unwell", [])
    assert found["plan_id"] == (None if plan is None else plan.plan_id)
    assert person.window.pages["summary"].said.text() == words.say("summary.nothing_stopped")
    person.director.leave_summary()
    assert person.director.phase == Phase.welcome and person.director.conductor is None


BACK_AGAIN = "Pressed by mistake: go back"


@pytest.mark.parametrize("back", ["esc", "button"])
@pytest.mark.parametrize("where", ["welcome", "camera", "tools", "help"])
def test_a_stray_key_before_anything_is_begun_leaves_nothing_behind(
    make: Make, fake: FakeWorld, where: str, back: str
) -> None:
    """Else it would close the day of a plan, and could not be taken back."""
    person = Person(make(), fake)
    person.window.pages["welcome"].offer(plan_of(TURNS))
    if where == "camera":
        person.director.start()
        person.measured(0.5, seen)
    elif where == "tools":
        person.director.open_tools()
    elif where == "help":
        person.window.switch_help()
    person.settle()
    phase = person.director.phase
    # A hand that shakes presses it more than once.
    person.press("u", "u")
    page = person.window.stack.currentWidget()
    assert page is person.window.pages["meant"] and not cut_in(person.window)
    if back == "esc":
        person.press(Qt.Key.Key_Escape)
    else:
        person.choose(BACK_AGAIN)
    under = "welcome" if where == "help" else where
    assert person.window.stack.currentWidget() is person.window.pages[under]
    assert person.director.phase == phase and not fake.recordings
    assert person.director.conductor is None and person.director.plan is None
    assert person.director.camera_on == (where == "camera")


def test_the_key_once_more_says_that_it_is_meant(make: Make, fake: FakeWorld) -> None:
    person = Person(make(), fake)
    person.settle()
    person.press("u")
    person.wait(TWICE_S)
    assert not fake.recordings
    person.press("u")
    asked_why(person)


@pytest.mark.parametrize("where", ["lens", "screen", "first", "first camera"])
def test_where_measures_are_taken_and_in_the_first_steps_the_key_works(
    make: Make, fake: FakeWorld, where: str
) -> None:
    person = Person(make(first="about" if where.startswith("first") else ""), fake)
    if where == "first camera":
        person.director.open_first("camera")
        person.measured(0.5, seen)
    elif where != "first":
        person.director.open_tools()
        person.director.open_lens() if where == "lens" else person.director.open_screen()
    person.settle()
    person.press("u", ENTER)
    asked_why(person)
    assert not person.director.camera_on and not person.director.first_over
    # The first steps go on where they were, at the next start.
    assert bool(person.window.settings.first_step) == where.startswith("first")


@pytest.mark.parametrize("begun", ["practice", "report"])
def test_what_was_about_to_begin_does_not(make: Make, fake: FakeWorld, begun: str) -> None:
    person = Person(make(), fake)
    jobs = held_back(person.director)
    plan = plan_of(TURNS)
    person.window.pages["welcome"].offer(plan)
    if begun == "practice":
        person.director.start_plan(plan)
    else:
        person.director.report_practice(plan)
    person.press("u")
    asked_why(person)
    asked = person.director.conductor
    for job in jobs:
        job.done = True
    person.settle()
    asked_why(person)
    assert person.director.conductor is asked and not person.director.reported


@pytest.mark.parametrize("before", ["nothing", "alone", "of a plan"])
def test_who_felt_unwell_is_led_to_the_first_page_and_not_to_practise(
    make: Make, fake: FakeWorld, before: str
) -> None:
    if before == "nothing":
        # A set-up was made, and one is back from it: what is begun later needs another.
        person = at_choice(make, fake)
        person.director.stop()
        person.settle()
        person.press("u", ENTER)
    else:
        person = alone(make, fake) if before == "alone" else planned(make, fake)
        person.press("u")
    person.none_of_these()
    person.choose("Show what I did")
    assert "Practise again" not in offered(person)
    person.choose("To the first page")
    assert person.director.phase == Phase.welcome and not person.director.camera_on
    if before == "nothing":
        person.director.start()
        person.settle()
        person.set_up()
        assert person.director.report is not None and person.director.told.good


@pytest.mark.parametrize("where", ["welcome", "tools", "screen"])
@pytest.mark.parametrize("sample", [False, True])
def test_wherever_the_button_is_in_sight_it_works(
    make: Make, fake: FakeWorld, where: str, sample: bool
) -> None:
    """In the sample nobody practises: there it is not offered, and its key does nothing."""
    person = Person(make(clip=PLAN if sample else None), fake)
    if where != "welcome":
        person.director.open_tools()
    if where == "screen":
        person.director.open_screen()
    person.settle()
    page: Any = person.window.stack.currentWidget()
    assert page is person.window.pages[where]
    assert (UNWELL in offered(person)) == (not sample and where != "screen")
    if UNWELL in offered(person):
        page.unwell.click()
    else:
        person.press("u")
    person.settle()
    assert person.window.covering() == ("" if sample else "meant")


def test_in_a_clip_it_does_nothing(make: Make, fake: FakeWorld) -> None:
    person = in_picture(make, fake)
    person.director.stop()
    person.window.use_clip()
    person.settle()
    person.measured(0.5, seen)
    person.press("u")
    assert person.director.phase == Phase.setup and UNWELL not in offered(person)
