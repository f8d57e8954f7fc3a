"""The key for stopping: what it stops, and what it must not, pressed twice or too late."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QApplication

from tests.ui.fakes import FakeWorld, Make, Voice, answer_fit, seen, turning
from tests.ui.patient import ENTER, EYES, SPACE, STAND, TURNS, Person, plan_of, turned
from tests.ui.test_planned_voice import SHUT
from tests.ui.test_window import cut_in
from tracker.plan.model import Entry
from tracker.practice.tasks import (
    AskAfterSet,
    AskGate,
    AskScores,
    CountDown,
    DoSet,
    Over,
    Prepare,
    Rest,
    Settle,
    Wait,
)
from ui import words
from ui.session.flow import Phase
from ui.session.leaving import UNSEEN_S
from ui.session.twice import TWICE_S

Begin = Callable[..., Person]
ESC = Qt.Key.Key_Escape


def in_set(begin: Begin) -> Person:
    person = begin(plan_of(TURNS, EYES))
    person.get_in_place(2)
    person.measured(3.2, seen)
    turned(person, 2.0)
    assert isinstance(person.director.task, DoSet)
    return person


def at_its_end(begin: Begin) -> Person:
    """Just as the set has come to its end by itself."""
    person = in_set(begin)
    start_s = person.fake.service.time_s
    while isinstance(person.director.task, DoSet):
        person.measured(0.1, lambda t: turning(t, start_s))
    assert isinstance(person.director.task, AskAfterSet)
    return person


def asked_to_leave(person: Person) -> bool:
    return person.window.covering() == "leave"


def test_pressed_twice_it_ends_the_set_alone(begin: Begin) -> None:
    person = in_set(begin)
    person.press(ESC, ESC)
    assert isinstance(person.director.task, AskAfterSet) and not asked_to_leave(person)
    person.wait(TWICE_S - 0.5)
    person.press(ESC)
    assert isinstance(person.director.task, AskAfterSet) and not asked_to_leave(person)


def test_just_after_the_end_of_a_set_it_does_nothing(begin: Begin) -> None:
    person = at_its_end(begin)
    person.press(ESC)
    assert isinstance(person.director.task, AskAfterSet) and not asked_to_leave(person)
    person.wait(TWICE_S)
    person.press(ESC)
    assert isinstance(person.director.task, AskAfterSet) and asked_to_leave(person)


def test_between_two_sets_it_asks_and_a_stray_key_goes_on(begin: Begin) -> None:
    person = at_its_end(begin)
    person.wait(TWICE_S)
    person.press(ESC)
    page: Any = person.window.pages["leave"]
    assert person.window.stack.currentWidget() is page and not cut_in(person.window)
    assert QApplication.focusWidget() is page.go_on
    person.press(ENTER)
    assert isinstance(person.director.task, AskAfterSet) and not asked_to_leave(person)
    person.wait(TWICE_S)
    # Esc, too, is a way back.
    person.press(ESC, ESC)
    assert isinstance(person.director.task, AskAfterSet) and not asked_to_leave(person)
    person.wait(TWICE_S)
    person.press(ESC)
    person.choose(words.say("ask.end"))
    assert person.director.phase == Phase.summary and person.director.ended == "stopped"
    assert person.director.saved is not None
    assert person.director.saved.summary["exercises"][0]["done"]["repetitions"] == 3


def test_the_question_gives_way_to_what_comes(begin: Begin) -> None:
    person = at_its_end(begin)
    person.wait(TWICE_S)
    person.choose("Clear")
    assert isinstance(person.director.task, Wait)
    person.press(ESC)
    assert asked_to_leave(person)
    person.wait(11.0)
    assert not isinstance(person.director.task, Wait) and not asked_to_leave(person)


def test_what_comes_over_the_question_takes_no_late_answer(begin: Begin) -> None:
    person = at_its_end(begin)
    person.wait(TWICE_S)
    person.choose("Clear")
    person.wait(11.0)
    person.press("2", ENTER)
    if isinstance(person.director.task, Settle):
        person.choose("I feel as usual again")
    assert isinstance(person.director.task, Rest)
    person.press(ESC)
    assert asked_to_leave(person)
    while isinstance(person.director.task, Rest):
        person.wait(0.25)
    page: Any = person.window.pages["task"]
    assert isinstance(person.director.task, Prepare) and not asked_to_leave(person)
    assert QApplication.focusWidget() is page
    # One sees that it takes no answer, and the ways out are not among the answers.
    assert not any(b.isEnabled() for b in page._options)
    assert page.unwell.isEnabled() and page.end.isEnabled()
    person.press(ENTER, SPACE)
    page._options[0].click()
    page._take(page.card.options[0])
    person.settle()
    assert isinstance(person.director.task, Prepare) and person.director.phase == Phase.asking
    person.wait(UNSEEN_S)
    assert all(b.isEnabled() for b in page._options)
    assert QApplication.focusWidget() is page._options[0]
    person.press(ENTER)
    assert isinstance(person.director.task, CountDown)


def test_a_score_that_comes_over_the_question_is_not_given_by_a_late_click(begin: Begin) -> None:
    person = at_its_end(begin)
    person.wait(TWICE_S)
    person.choose("Clear")
    assert isinstance(person.director.task, Wait)
    person.press(ESC)
    while isinstance(person.director.task, Wait):
        person.wait(0.25)
    page: Any = person.window.pages["scores"]
    assert person.window.stack.currentWidget() is page and QApplication.focusWidget() is page
    steps = page.scale.findChildren(QAbstractButton)
    steps[0].click()
    assert steps and not any(s.isEnabled() for s in steps) and page.scale.value is None
    person.wait(UNSEEN_S)
    assert all(s.isEnabled() for s in steps) and not page.done.isEnabled()
    person.press("2", ENTER)
    assert not isinstance(person.director.task, AskScores)


def test_unwell_works_in_the_question(begin: Begin) -> None:
    person = at_its_end(begin)
    person.wait(TWICE_S)
    person.press(ESC, "u")
    assert type(person.director.task).__name__ == "AskGate" and not asked_to_leave(person)


@pytest.mark.parametrize("why", ["unwell", "double"])
def test_who_is_not_well_is_not_asked_whether_to_go_on(begin: Begin, why: str) -> None:
    person = at_its_end(begin)
    person.wait(TWICE_S)
    if why == "unwell":
        person.press("u")
    else:
        person.choose(words.say("ask.clarity.double"))
    task = person.director.task
    assert isinstance(task, AskGate) and task.because == why
    person.wait(TWICE_S)
    person.press(ESC)
    assert not asked_to_leave(person)
    if why == "unwell":
        # The page that says whom to call, and with which number, still comes.
        task = person.director.task
        assert isinstance(task, Over) and task.ended == "stopped_unwell"
        person.choose("Show what I did")
    assert person.director.phase == Phase.summary and person.director.saved is not None
    ended = {"unwell": "stopped_unwell", "double": "stopped"}[why]
    assert person.director.saved.summary["ended"] == ended


def test_who_rests_off_symptoms_or_may_not_begin_yet_is_offered_the_way_back(
    begin: Begin,
) -> None:
    person = begin(plan_of(TURNS, EYES))
    page: Any = person.window.pages["leave"]
    assert isinstance(person.director.task, AskGate)
    person.press(ESC)
    assert asked_to_leave(person)
    assert page.go_on.text() == page.go_on.accessibleName() == words.say("leave.back")
    person.press(ENTER)
    assert isinstance(person.director.task, AskGate) and not asked_to_leave(person)
    person.get_in_place(2)
    person.measured(3.2, seen)
    turned(person, 8.0)
    person.wait(TWICE_S)
    person.press(ESC)
    assert page.go_on.text() == words.say("leave.go_on")
    person.press(ENTER)
    person.choose("Clear")
    person.wait(11.0)
    person.press("3", ENTER)
    assert isinstance(person.director.task, Settle)
    person.press(ESC)
    assert asked_to_leave(person) and page.go_on.text() == words.say("leave.back")


def test_in_a_countdown_it_goes_back_to_getting_into_place(begin: Begin) -> None:
    person = begin(plan_of(TURNS, EYES))
    person.get_in_place(2)
    assert isinstance(person.director.task, CountDown)
    person.measured(1.0, seen)
    person.press(ESC)
    assert isinstance(person.director.task, Prepare)
    person.press(ESC)
    assert isinstance(person.director.task, Prepare) and not asked_to_leave(person)
    # The set is still to come, with the set-up that was made for it.
    person.wait(5.0)
    assert isinstance(person.director.task, Prepare)
    person.choose("I am in place")
    assert isinstance(person.director.task, CountDown)
    person.measured(3.2, seen)
    turned(person, 8.0)
    assert isinstance(person.director.task, AskAfterSet)


@pytest.mark.parametrize("key", ["voice", "beats"])
@pytest.mark.parametrize(
    ("entry", "before", "said"),
    [
        (STAND, "Stand firm.", "Stopped. Come to the screen once you feel steady."),
        (SHUT, "Shut your eyes.", "Stopped. Open your eyes."),
    ],
)
def test_a_countdown_that_is_called_off_says_so(
    begin: Begin, voice: Voice, fake: FakeWorld, entry: Entry, before: str, said: str, key: str
) -> None:
    voice.usable = voice.lasts = key == "voice"
    person = begin(plan_of(entry, EYES))
    person.begin_day()
    while not isinstance(person.director.task, Prepare):
        person.choose("Yes")
    # The place has been said to its end.
    voice.stop()
    person.choose("I am in place")
    person.set_up()
    assert isinstance(person.director.task, CountDown)
    person.measured(1.0, seen)
    if key == "voice":
        # It is still being said.
        assert voice.speaking and voice.texts[-1].startswith(before)
    person.press(ESC)
    assert isinstance(person.director.task, Prepare)
    if key == "voice":
        assert voice.texts[-1] == said
    # Whoever hears the beats alone hears the end, too.
    assert (fake.beats.sounding or (0.0,))[0] == 180.0


def test_a_set_that_has_just_begun_is_stopped_by_it(begin: Begin) -> None:
    person = begin(plan_of(TURNS))
    person.get_in_place(2)
    person.measured(3.1, seen)
    assert isinstance(person.director.task, DoSet)
    person.press(ESC)
    assert isinstance(person.director.task, AskAfterSet)


def test_a_rest_is_not_the_end_of_the_day(begin: Begin) -> None:
    person = at_its_end(begin)
    person.wait(TWICE_S)
    person.choose("Clear")
    person.wait(11.0)
    person.press("2", ENTER)
    if isinstance(person.director.task, Settle):
        person.choose("I feel as usual again")
    assert isinstance(person.director.task, Rest)
    person.press(ESC)
    assert isinstance(person.director.task, Rest) and asked_to_leave(person)


def test_a_set_up_that_has_just_come_out_is_not_lost(make: Make, fake: FakeWorld) -> None:
    person = Person(make(), fake)
    person.director.start()
    person.settle()
    person.measured(0.5, seen)
    person.director.begin_setup()
    person.settle()
    while person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    answer_fit(fake.service, person.director)
    person.settle()
    assert person.director.phase == Phase.choose
    person.press(ESC)
    assert person.director.phase == Phase.choose
    person.wait(TWICE_S)
    person.press(ESC)
    assert person.director.phase == Phase.welcome


# --- the first question after a set ---


def test_a_pause_that_comes_too_late_says_nothing_of_the_set(begin: Begin) -> None:
    person = at_its_end(begin)
    page: Any = person.window.pages["task"]
    assert QApplication.focusWidget() is page
    person.press(SPACE, ENTER)
    assert isinstance(person.director.task, AskAfterSet) and not page._given
    # Nor does a click that was meant for the page before.
    page._options[0].click()
    assert isinstance(person.director.task, AskAfterSet) and not page._given
    person.wait(UNSEEN_S + 0.3)
    person.press(SPACE, ENTER)
    assert isinstance(person.director.task, AskAfterSet)
    person.choose("Clear")
    assert isinstance(person.director.task, Wait)


@pytest.mark.parametrize("key", [SPACE, ENTER])
def test_stopped_by_hand_it_can_be_answered_at_once_and_by_no_stray_key(
    begin: Begin, key: Qt.Key
) -> None:
    person = in_set(begin)
    person.press(ESC)
    person.press(key)
    assert isinstance(person.director.task, AskAfterSet)
    person.choose("Clear")
    assert isinstance(person.director.task, Wait)
