"""A step of the set-up done again: with notes on the wall, by a shaky hand, without a camera."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from calibration.check import GazeCheck
from calibration.parts import MAX_HELD, on_wall, part_of
from calibration.report import Again
from tests.ui.fakes import EXTENT, FakeWorld, Make, feed, seen
from tests.ui.patient import ENTER, Person, plan_of
from tests.ui.pictures import keep
from tests.ui.test_setup_again import begin_again, in_setup, report_of, through, told_page
from tests.ui.test_wall import JUMPS
from tracker.practice.tasks import CountDown
from tracker.session.stage import Step
from tracker.vision.messages import Fitted, SourceChanged, SourceState
from ui import words
from ui.session.asked_setup import READ_S, setup_asked
from ui.session.flow import Phase
from ui.setup.parts import parts_told
from ui.setup.reach import Wanted

pytestmark = pytest.mark.usefixtures("qapp")

Begin = Callable[..., Person]


def notes_in(steps: list[Step], part: str) -> int:
    return sum(part_of(s) == part and on_wall(s) is not None for s in steps)


def before_notes(begin: Begin) -> Person:
    """The set-up before two notes on the wall has begun."""
    person = begin(plan_of(JUMPS))
    person.begin_day()
    person.choose("Yes")
    person.choose("I am in place")
    assert person.director.phase == Phase.camera
    person.measured(0.5, seen)
    person.press(ENTER)
    assert person.director.phase == Phase.setup
    return person


def steps_of(person: Person) -> list[Step]:
    return [a.step for a in person.director._asked]


def until(person: Person, time_s: float) -> None:
    """Let the session's clock go on to a time."""
    person.measured(time_s - person.director.now_s, seen)


# --- notes on the wall ---


def test_who_repeats_the_looks_at_once_is_led_to_the_notes_again(begin: Begin) -> None:
    person = before_notes(begin)
    director = person.director
    first = steps_of(person)
    assert notes_in(first, "looks") == notes_in(first, "check") == 2
    until(person, [s for s in first if s.step == "look"][-1].to_s + 0.3)
    assert director.part_over == "check" and director.repeats == "looks"
    director.repeat_part()
    again = steps_of(person)
    assert [part_of(s) for s in again] == [part_of(s) for s in first]
    assert notes_in(again, "looks") == notes_in(again, "check") == 2
    assert next(s for s in again if s.step == "look").from_s > director.now_s


@pytest.mark.parametrize("part", ["looks", "check"])
def test_looks_done_again_afterwards_have_the_notes_in_them(begin: Begin, part: str) -> None:
    person = before_notes(begin)
    director, service = person.director, person.fake.service
    while director.phase == Phase.setup:
        person.measured(1.0, seen)
    steps = list(service.fit_steps or [])
    poor = replace(report_of(steps), wall_check=GazeCheck(3.5, 60, 2))
    service.news.append(Fitted(poor))
    person.settle()
    # The eyes at the wall are read too badly: that alone keeps the page.
    assert director.phase == Phase.setup_told
    page: Any = person.window.pages["came"]
    said = page.rows["check"].said.text()
    assert "on 2 points: about half a degree off. That is good." in said
    assert "checked at the wall: about 4 degrees off. That is too far off" in said
    keep(person.window, "came-wall")
    now_s = director.now_s
    page.rows[part].again.setFocus()
    person.press(ENTER)
    new = [s for s in steps_of(person) if s.from_s > now_s]
    assert {part_of(s) for s in new} == {part} and notes_in(new, part) == 2
    while director.phase == Phase.setup:
        person.measured(1.0, seen)
    fitted = list(service.fit_steps or [])
    assert service.fit_part == part and notes_in(fitted, part) == 2
    good = replace(
        report_of(fitted), wall_check=GazeCheck(0.6, 60, 2), again=Again(part), profile="anew"
    )
    service.news.append(Fitted(good))
    person.settle()
    assert director.told.good
    person.choose("Go on")
    assert isinstance(director.task, CountDown)
    found: Any = director._found()
    assert found["wall_check"]["gaze_error_deg"] == 0.6


def test_the_pauses_before_the_notes_count_in_what_can_be_held(begin: Begin) -> None:
    person = before_notes(begin)
    director = person.director
    until(person, [s for s in steps_of(person) if s.step == "look"][-1].to_s + 0.3)
    counted = director._held_after(director.part_over) / 30.0
    begun_s = steps_of(person)[0].from_s
    director.repeat_part()
    # Exact but for the pause between the looks that teach and those that check: there is none.
    really_s = steps_of(person)[-1].to_s - begun_s
    assert counted == pytest.approx(really_s + READ_S, abs=0.1)
    assert 30.0 * really_s <= MAX_HELD


def test_how_a_part_was_seen_is_said_only_before_the_next_one_begins(begin: Begin) -> None:
    person = before_notes(begin)
    director = person.director
    page: Any = person.window.pages["setup"]
    looks = [s for s in steps_of(person) if s.step == "look"]
    rest = steps_of(person)[0]
    until(person, rest.to_s + 0.5)
    assert page.message.isVisible() and page.message.text().startswith("Keeping still: ")
    assert page.repeat.text() == "Repeat: Keeping still"
    keep(person.window, "setup-part-over")
    for note in (s for s in looks if on_wall(s) is not None):
        # In the pause in which the eyes look for a note.
        until(person, note.from_s - READ_S / 2)
        assert director.asked is None and not page.message.isVisible()
    until(person, looks[-1].to_s + 0.5)
    assert page.message.isVisible() and page.message.text().startswith("Looking at points: ")
    assert page.repeat.text() == page.repeat.accessibleName() == "Repeat: Looking at points"


def test_a_note_that_was_not_seen_is_no_point_on_the_screen() -> None:
    marks = ((265.0, 90.0, 1500.0), (-265.0, 90.0, 1500.0))
    steps = [a.step for a in setup_asked(0.0, EXTENT, 600.0, marks=marks)]
    report = replace(report_of(steps), wall_check=GazeCheck(0.5, 30, 1))
    told = {t.part: t for t in parts_told(report, Wanted())}
    assert "of 2 points" not in told["check"].said and not told["check"].good
    assert "At one of the two notes on the wall your eyes were not seen." in told["check"].said
    assert told["looks"].good


# --- a hand that shakes ---


def test_a_second_press_repeats_nothing_else_and_stops_nothing(make: Make, fake: FakeWorld) -> None:
    window = make()
    director, page = in_setup(window, fake), window.pages["setup"]
    looks = [a.step for a in director._asked if a.step.step == "look"]
    through(fake, director, looks[-1].to_s + 0.3)
    window.refresh()
    QApplication.processEvents()
    page.repeat.setFocus()
    QTest.keyClick(page.repeat, Qt.Key.Key_Space)
    window.refresh()
    steps = [a.step for a in director._asked]
    assert part_of(steps[1]) == "looks" and steps[1].from_s > fake.service.time_s
    assert page.repeat.isHidden() and not director.can_repeat
    # The second press, by whichever key: what has the keys now does nothing with them.
    focus = QApplication.focusWidget()
    assert focus not in (page.stop, page.unwell, page.again)
    for key in (Qt.Key.Key_Space, Qt.Key.Key_Return):
        QTest.keyClick(focus or window, key)
    director.repeat_part()
    window.refresh()
    assert director.phase == Phase.setup
    assert [a.step for a in director._asked] == steps
    # Stop is still the first that Tab comes to, and Escape does it from anywhere.
    QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Tab)
    assert QApplication.focusWidget() is page.stop
    # Once the looks go on again, the part before them can be repeated, by its name.
    through(fake, director, steps[1].from_s + 0.3)
    window.refresh()
    assert page.repeat.isVisible() and page.repeat.text() == "Repeat: Keeping still"
    director.repeat_part()
    assert part_of(director._asked[0].step) == "rest"
    assert director._asked[0].step.from_s > fake.service.time_s


# --- no camera ---


def unseen(service: Any) -> None:
    """The measuring answers that it has hardly seen a face."""
    report = report_of(list(service.fit_steps or []))
    service.news.append(Fitted(replace(report, again=Again(service.fit_part, "unseen"))))


@pytest.mark.parametrize("back", [False, True])
def test_a_camera_that_went_is_not_blamed_on_the_face(
    make: Make, fake: FakeWorld, back: bool
) -> None:
    window, came = told_page(make, fake)
    director = window.director
    steps = begin_again(window, fake, "turn")
    through(fake, director, steps[0].from_s + 1.0)
    fake.service.news.append(SourceChanged(SourceState.unplugged))
    fake.service.time_s = steps[-1].to_s - 0.5
    director.tick()
    if back:
        fake.service.news.append(SourceChanged(SourceState.running))
    through(fake, director, steps[-1].to_s + 0.5)
    assert director.phase == Phase.fitting
    unseen(fake.service)
    director.tick()
    window.refresh()
    assert director.phase == Phase.setup_told
    assert "The camera has been unplugged." in came.became.text()
    assert "your face" not in came.became.text()
    # Whether there is a camera again stays known.
    assert (director.trouble is None) is back
    fake.service.news.append(SourceChanged(SourceState.running))
    director.tick()
    assert director.trouble is None
    # The next time, with a camera, it is the face again.
    steps = begin_again(window, fake, "turn")
    through(fake, director, steps[-1].to_s + 0.5)
    unseen(fake.service)
    director.tick()
    window.refresh()
    assert "your face was hardly seen" in came.became.text()


def test_who_leaves_without_a_camera_still_has_none(make: Make, fake: FakeWorld) -> None:
    window, came = told_page(make, fake)
    director = window.director
    begin_again(window, fake, "nod")
    fake.service.news.append(SourceChanged(SourceState.hanging))
    director.tick()
    director.stop()
    window.refresh()
    assert director.phase == Phase.setup_told and "was not finished" in came.became.text()
    assert director.trouble is not None and director.trouble.state == SourceState.hanging


@pytest.mark.parametrize("state", [SourceState.restarting, SourceState.failed])
def test_a_measuring_that_ended_takes_the_offer_with_it(
    make: Make, fake: FakeWorld, state: SourceState
) -> None:
    window, came = told_page(make, fake)
    director = window.director
    assert director.can_do_again and came.rows["turn"].again.isVisible()
    fake.service.news.append(SourceChanged(state, "the measuring process ended"))
    director.tick()
    window.refresh()
    assert not director.can_do_again and not came.rows["turn"].again.isVisible()
    assert words.say("again.gone") in came.hint.text()
    director.do_again("turn")
    assert director.phase == Phase.setup_told


@pytest.mark.parametrize(
    ("state", "said"),
    [
        (SourceState.restarting, "The pictures of the other steps are gone"),
        (SourceState.failed, "The camera can't be used."),
    ],
)
def test_a_measuring_that_ends_in_a_repeat_ends_the_repeat(
    make: Make, fake: FakeWorld, state: SourceState, said: str
) -> None:
    window, came = told_page(make, fake)
    director = window.director
    before, profile = list(director._asked), director._profile
    steps = begin_again(window, fake, "turn")
    through(fake, director, steps[0].from_s + 1.0)
    fake.service.news.append(SourceChanged(state, "the measuring process ended"))
    director.tick()
    window.refresh()
    assert director.phase == Phase.setup_told and not director.part_again
    assert director._asked == before and director._profile == profile
    assert "the earlier step is kept" in came.became.text() and said in came.became.text()
    assert not director.can_do_again
    # The person is still measured, and one may go on.
    feed(fake.service, director, fake.service.time_s + 0.2, seen)
    director.take_setup()
    assert director.phase == Phase.choose
