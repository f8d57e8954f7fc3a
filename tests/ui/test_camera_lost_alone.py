"""A camera that goes outside a set of a plan: in an exercise alone, a set-up, a check."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from tests.ui.fakes import FakeWorld, Make, Voice, answer_fit, seen, turning
from tests.ui.patient import TURNS, Person, plan_of, turned
from tests.ui.pictures import keep
from tests.ui.test_camera_lost import GONE, back, lose, nothing_measures, told_to_count
from tests.ui.test_window import cut_in
from tracker.session.flags import COUNT_LOST
from tracker.session.projections import session_record
from tracker.session.summary import summarise
from tracker.vision.messages import FitFailed, SourceState
from ui import words
from ui.session.flow import Dose, Phase
from ui.session.lost import LOST_S

Begin = Callable[..., Person]


def at_camera(make: Make, fake: FakeWorld, **more: Any) -> Person:
    person = Person(make(**more), fake)
    person.director.start()
    person.settle()
    return person


def in_picture(make: Make, fake: FakeWorld, **more: Any) -> Person:
    person = at_camera(make, fake, **more)
    person.measured(0.5, seen)
    return person


def in_setup(make: Make, fake: FakeWorld, **more: Any) -> Person:
    person = in_picture(make, fake, **more)
    person.director.begin_setup()
    person.settle()
    person.measured(2.0, seen)
    assert person.director.phase == Phase.setup
    return person


def at_choice(make: Make, fake: FakeWorld, **more: Any) -> Person:
    person = at_camera(make, fake, **more)
    person.set_up()
    back(person)
    assert person.director.phase == Phase.choose
    return person


def alone(make: Make, fake: FakeWorld, exercise: str = "turns-on-target", **more: Any) -> Person:
    person = at_choice(make, fake, **more)
    person.director.start_exercise(Dose(exercise, 12, 60.0))
    person.measured(3.2, seen)
    assert person.director.phase == Phase.exercise
    return person


def at_mark(make: Make, fake: FakeWorld) -> Person:
    person = at_choice(make, fake)
    person.director.open_mark()
    return person


def page_of(person: Person) -> Any:
    return person.window.stack.currentWidget()


# --- an exercise alone ---


@pytest.mark.parametrize("state", GONE)
def test_alone_the_person_is_told_and_counts(
    make: Make, fake: FakeWorld, voice: Voice, state: SourceState
) -> None:
    person = alone(make, fake)
    turned(person, 4.0)
    assert not page_of(person).done.isVisible()
    voice.spoken.clear()
    lose(person, state, LOST_S + 1.0)
    assert person.director.phase == Phase.exercise
    told_to_count(person, voice, state)
    assert not cut_in(person.window)
    person.choose("Done")
    assert person.director.phase == Phase.summary and person.director.ended == "finished"
    summary = summarise(session_record(fake.recordings[-1].journal.content()))
    (found,) = summary.exercises
    assert COUNT_LOST in {flag.flag for flag in found.quality}


def test_alone_nobody_does_more_than_is_asked_for(make: Make, fake: FakeWorld) -> None:
    # Twelve at 60 beats a minute are 24 s, of which the camera misses 8.
    person = alone(make, fake)
    start_s = fake.service.time_s
    person.measured(6.5, lambda t: turning(t, start_s))
    lose(person, SourceState.unplugged, 8.0)
    back(person)
    while person.director.phase == Phase.exercise and fake.service.time_s < start_s + 40.0:
        person.measured(0.5, lambda t: turning(t, start_s))
    assert 10.0 <= (fake.service.time_s - start_s) / 2.0 <= 12.5


def test_alone_a_pause_forgets_neither_count_nor_gap(make: Make, fake: FakeWorld) -> None:
    person = alone(make, fake)
    turned(person, 4.0)
    lose(person, SourceState.hanging, 4.0)
    person.press(Qt.Key.Key_Space)
    person.wait(60.0)
    assert person.director.phase == Phase.paused
    back(person)
    person.press(Qt.Key.Key_Space)
    turned(person, 4.0)
    # A minute of rest is no time to practise, and what was missed stays missed.
    assert person.director.phase == Phase.exercise and page_of(person).done.isVisible()
    person.choose("Done")
    summary = summarise(session_record(fake.recordings[-1].journal.content()))
    assert [COUNT_LOST in {f.flag for f in e.quality} for e in summary.exercises] == [True, True]


def test_the_next_exercise_alone_is_counted_again(make: Make, fake: FakeWorld) -> None:
    person = alone(make, fake)
    lose(person, SourceState.unplugged, 4.0)
    person.choose("Done")
    person.director.again()
    person.director.start_exercise(Dose("turns-on-target", 3, 60.0))
    person.measured(3.2, seen)
    back(person)
    assert not person.director.count_lost and not page_of(person).done.isVisible()
    turned(person, 9.0)
    assert person.director.phase == Phase.summary
    summary = summarise(session_record(fake.recordings[-1].journal.content()))
    (found,) = summary.exercises
    assert COUNT_LOST not in {flag.flag for flag in found.quality}


def test_alone_a_stutter_changes_nothing(make: Make, fake: FakeWorld) -> None:
    person = alone(make, fake)
    for _ in range(3):
        lose(person, SourceState.silent, LOST_S - 0.5)
        back(person)
    assert not person.director.count_lost and not page_of(person).done.isVisible()


@pytest.mark.parametrize("percent", [100, 200])
def test_no_exercise_begins_where_nothing_can_measure(
    make: Make, fake: FakeWorld, percent: int
) -> None:
    person = at_choice(make, fake, percent=percent)
    lose(person, SourceState.failed)
    for key in ("trouble.failed", "trouble.failed.do"):
        assert words.say(key) in page_of(person).trouble.text()
    with nothing_measures(person):
        page_of(person).start.click()
        person.settle()
    # It would count down for ever: the clock is that of the measuring.
    assert person.director.phase == Phase.choose and page_of(person).trouble.isVisible()
    keep(person.window, f"pages/choose-without-camera-{percent}")
    assert not cut_in(person.window)
    page_of(person).start.click()
    person.measured(3.2, seen)
    assert person.director.phase == Phase.exercise and fake.service.profile == "the person"


# --- a set-up ---


@pytest.mark.parametrize("state", [s for s in GONE if s != SourceState.failed])
def test_a_set_up_waits_for_its_camera_and_begins_anew(
    make: Make, fake: FakeWorld, voice: Voice, state: SourceState
) -> None:
    person = in_setup(make, fake)
    back(person)
    page = page_of(person)
    voice.spoken.clear()
    lose(person, state, LOST_S + 0.5)
    assert page.line.text() == words.say(f"trouble.{state}")
    assert words.say(f"trouble.{state}.do") in page.message.text() and page.message.isVisible()
    assert not page.field.offsets
    said = [t for t in voice.texts if words.say(f"trouble.{state}") in t]
    assert len(said) == 1 and words.say(f"trouble.{state}.do") in said[0]
    # Two minutes: a whole set-up's time goes by, and nothing is made of pictures that there
    # are none of; nor is anything asked for that nobody sees.
    person.wait(120.0)
    assert person.director.phase == Phase.setup and fake.service.fit_steps is None
    assert voice.texts[-1] == said[0]
    back(person)
    assert words.say("lost.setup_again") in voice.texts[-1]
    person.settle()
    first = person.director._asked[0].step
    assert first.step == "rest" and first.from_s >= fake.service.time_s
    while person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    assert fake.service.fit_steps is not None
    assert min(s.from_s for s in fake.service.fit_steps) >= first.from_s
    answer_fit(fake.service, person.director)
    assert person.director.phase == Phase.choose


def test_a_stutter_does_not_begin_a_set_up_anew(make: Make, fake: FakeWorld) -> None:
    person = in_setup(make, fake)
    first = person.director._asked[0].step.from_s
    lose(person, SourceState.silent, LOST_S - 0.5)
    back(person)
    person.wait(1.0)
    assert person.director._asked[0].step.from_s == first


def test_a_set_up_that_waits_can_be_left(make: Make, fake: FakeWorld) -> None:
    person = in_setup(make, fake)
    lose(person, SourceState.unplugged, 60.0)
    person.press(Qt.Key.Key_Escape)
    assert person.director.phase == Phase.welcome and person.director.trouble is None


@pytest.mark.parametrize("planned", [False, True])
def test_a_set_up_whose_camera_failed_for_good_can_be_begun_again(
    make: Make, begin: Begin, fake: FakeWorld, planned: bool
) -> None:
    if planned:
        person = begin(plan_of(TURNS))
        person.begin_day(0)
        person.choose("I am in place")
        person.measured(0.5, seen)
        person.director.begin_setup()
        person.settle()
        person.measured(2.0, seen)
    else:
        person = in_setup(make, fake)
    services = len(fake.services)
    lose(person, SourceState.failed)
    page = page_of(person)
    assert person.director.phase == Phase.setup_failed and page.again.isVisible()
    assert words.say("trouble.failed") in page.message.text()
    # What the measuring answers later is to nothing.
    fake.service.news.append(FitFailed("nothing is being measured"))
    person.settle()
    page.again.click()
    person.settle()
    assert len(fake.services) == services + 1
    assert person.director.phase == Phase.setup and person.director.trouble is None
    while person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    assert fake.service.fit_steps is not None


def test_a_set_up_without_anything_to_measure_says_so(make: Make, fake: FakeWorld) -> None:
    person = in_setup(make, fake)
    lose(person, SourceState.failed)
    with nothing_measures(person):
        page_of(person).again.click()
        person.settle()
    assert person.director.phase == Phase.setup_failed
    assert words.say("trouble.failed") in page_of(person).message.text()


# --- before it, and after it ---


@pytest.mark.parametrize("state", [SourceState.silent, SourceState.restarting])
def test_no_verdict_is_left_of_a_picture_that_is_gone(
    make: Make, fake: FakeWorld, state: SourceState
) -> None:
    person = in_picture(make, fake)
    page = page_of(person)
    assert page.verdict.text() == words.say("verdict.good") and page.next.isEnabled()
    lose(person, state, LOST_S + 0.5)
    assert page.verdict.text() == words.say(f"trouble.{state}")
    assert page.what_to_do.isVisible() and not page.next.isEnabled()
    assert page.what_to_do.text() == words.say(f"trouble.{state}.do")
    focus = QApplication.focusWidget()
    assert focus is not None and focus.isVisible() and focus.isEnabled()
    back(person)
    person.measured(0.5, seen)
    assert page.verdict.text() == words.say("verdict.good") and page.next.isEnabled()
    assert not page.what_to_do.isVisible()


@pytest.mark.parametrize("state", GONE)
def test_a_check_by_a_mark_ends_and_says_why(
    make: Make, fake: FakeWorld, voice: Voice, state: SourceState
) -> None:
    person = at_mark(make, fake)
    person.director.begin_mark(1500.0, 600.0)
    person.measured(1.0, seen)
    page = page_of(person)
    assert person.director.mark is not None
    voice.spoken.clear()
    lose(person, state, LOST_S + 0.5)
    # The camera may stand elsewhere by now.
    assert person.director.mark is None and page.begin.isVisible()
    for key in (f"trouble.{state}", f"trouble.{state}.do"):
        assert words.say(key) in page.said.text()
    # Who looks at the wall doesn't see the page.
    assert words.say(f"trouble.{state}") in voice.texts[-1]
    back(person)
    assert page.said.text() == words.say("mark.camera_lost")


@pytest.mark.parametrize("state", GONE)
def test_a_camera_that_goes_is_told_before_lengths_that_lack(
    make: Make, fake: FakeWorld, voice: Voice, state: SourceState
) -> None:
    person = at_mark(make, fake)
    person.measured(1.0, seen)
    page = page_of(person)
    page.begin.click()
    assert page.said.text() == words.say("mark.unset")
    lose(person, state, LOST_S + 0.5)
    assert words.say(f"trouble.{state}") in page.said.text()
    back(person)
    assert page.said.text() == words.say("mark.unset")
    # Who comes back to the page has begun nothing yet.
    person.director.stop()
    person.settle()
    person.director.open_mark()
    person.settle()
    assert not page.said.isVisible()


@pytest.mark.parametrize("state", [SourceState.silent, SourceState.restarting])
def test_what_watches_a_sheet_says_that_no_picture_comes(
    make: Make, fake: FakeWorld, state: SourceState
) -> None:
    person = Person(make(), fake)
    director = person.director
    director.open_tools()
    director.open_lens()
    director.lens.start("paper")
    person.settle()
    lose(person, state)
    assert page_of(person).hint.text() == words.say(f"trouble.{state}")
    back(person)
    assert page_of(person).hint.text() != words.say(f"trouble.{state}")
