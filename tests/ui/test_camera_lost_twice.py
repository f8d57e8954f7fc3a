"""A camera that went before, once more, or for a moment; and what is left of it afterwards."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt

from tests.ui.fakes import FakeWorld, Make, Voice, answer_fit, grey_picture, seen, turning
from tests.ui.patient import Person
from tests.ui.test_camera_lost import back, lose, nothing_measures, standing
from tests.ui.test_camera_lost_alone import alone, at_choice, in_picture, in_setup, page_of
from tests.ui.test_share_holds import in_call
from tracker.plan.model import Entry
from tracker.vision.messages import FitFailed, SourceState
from ui import words
from ui.session.flow import Dose, Phase
from ui.session.lost import LOST_S

Begin = Callable[..., Person]


def tick(person: Person) -> None:
    """A quarter of a second, after which the measuring may be over."""
    person.fake.service.time_s += 0.25
    person.director.tick()


@pytest.mark.parametrize("gone_s", [8.0, 40.0])
def test_alone_nobody_does_more_where_it_went_before(
    make: Make, fake: FakeWorld, gone_s: float
) -> None:
    # Gone while one chose: the exercise has no picture from its beginning on.
    person = at_choice(make, fake)
    lose(person, SourceState.unplugged, 4.0)
    person.director.start_exercise(Dose("turns-on-target", 12, 60.0))
    while person.director.phase == Phase.countdown:
        tick(person)
    start_s = fake.service.time_s
    while person.director.phase == Phase.exercise and fake.service.time_s < start_s + gone_s:
        tick(person)
    if person.director.phase == Phase.exercise:
        back(person)
    while person.director.phase == Phase.exercise and fake.service.time_s < start_s + 40.0:
        person.measured(0.5, lambda t: turning(t, start_s))
    assert 10.0 <= (fake.service.time_s - start_s) / 2.0 <= 12.5


def test_alone_a_pause_of_ones_own_is_none_of_the_camera(begin: Begin) -> None:
    # A session of a plan ends in a pause for the camera's sake; an exercise alone comes after.
    person = standing(begin)
    lose(person, SourceState.unplugged, 4.0)
    assert person.director.paused_by_camera
    person.director.end_today()
    person.settle()
    person.director.leave_summary()
    assert person.director.phase == Phase.welcome
    person.director.start()
    person.settle()
    person.set_up()
    back(person)
    person.director.start_exercise(Dose("turns-on-target", 12, 60.0))
    person.measured(4.0, seen)
    person.press(Qt.Key.Key_Space)
    assert person.director.phase == Phase.paused and not person.director.paused_by_camera
    assert page_of(person).cue.text() == words.say("practice.paused")


def test_alone_ones_picture_goes_with_its_button(make: Make, fake: FakeWorld) -> None:
    person = alone(make, fake)
    fake.service.picture = grey_picture()
    page = page_of(person)
    page.show_me.click()
    person.measured(1.0, seen)
    assert page.picture.isVisible()
    lose(person, SourceState.unplugged, 4.0)
    back(person)
    person.measured(1.0, seen)
    # The camera is back, and the button is not.
    assert not page.show_me.isVisible() and not page.picture.isVisible()
    assert not person.director.picture_shown and not fake.service.preview_on


def test_another_trouble_is_said_too(make: Make, fake: FakeWorld, voice: Voice) -> None:
    person = alone(make, fake)
    lose(person, SourceState.restarting, 4.0)
    voice.spoken.clear()
    for state in (SourceState.unplugged, SourceState.silent, SourceState.unplugged):
        lose(person, state, 5.0)
    # Said once, and what passes by itself not at all.
    told = words.say("trouble.unplugged"), words.say("trouble.unplugged.do")
    assert voice.texts == [" ".join(told)]


@pytest.mark.parametrize("fitting", [False, True])
def test_a_measuring_that_starts_again_begins_the_set_up_anew(
    make: Make, fake: FakeWorld, voice: Voice, fitting: bool
) -> None:
    # The pictures so far went with it, however soon the next one measures.
    person = in_setup(make, fake)
    while fitting and person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    voice.spoken.clear()
    lose(person, SourceState.restarting)
    page = page_of(person)
    assert person.director.phase == Phase.setup and person.director.setup_waits
    assert page.line.text() == words.say("trouble.restarting") and not page.field.offsets
    assert words.say("lost.setup") in page.message.text() and page.message.isVisible()
    assert words.say("trouble.restarting") in voice.texts[-1]
    person.wait(1.0)
    back_s = fake.service.time_s
    back(person)
    assert words.say("lost.setup_again") in voice.texts[-1] and len(voice.texts) == 2
    person.settle()
    first = person.director._asked[0].step
    assert first.step == "rest" and first.from_s >= back_s
    fake.service.fit_steps = None
    while person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    assert fake.service.fit_steps is not None
    assert min(s.from_s for s in fake.service.fit_steps) >= back_s
    answer_fit(fake.service, person.director)
    assert person.director.phase == Phase.choose


def test_a_fit_that_ended_with_its_measuring_is_said(make: Make, fake: FakeWorld) -> None:
    # It is answered before another process begins: a fit that breaks each time ends so, too.
    person = in_setup(make, fake)
    while person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    fake.service.news.append(FitFailed("the measuring process ended"))
    lose(person, SourceState.restarting)
    back(person)
    assert person.director.phase == Phase.setup_failed and page_of(person).again.isVisible()


@pytest.mark.parametrize("state", [SourceState.unplugged, SourceState.no_permission])
def test_then_try_again_stands_only_by_its_button(
    make: Make, fake: FakeWorld, state: SourceState
) -> None:
    person = in_picture(make, fake)
    lose(person, state)
    page = page_of(person)
    assert page.retry.isVisible() and "try again" in page.what_to_do.text()
    back(person)
    person.measured(0.5, seen)
    person.director.begin_setup()
    person.settle()
    person.measured(2.0, seen)
    lose(person, state, LOST_S + 0.5)
    assert "try again" not in page_of(person).message.text().lower()


@pytest.mark.parametrize("inside", [False, True])
def test_a_check_by_a_mark_recovers_from_a_camera_that_failed(
    make: Make, fake: FakeWorld, inside: bool
) -> None:
    person = at_choice(make, fake)
    if inside:
        person.director.open_mark()
        person.settle()
    lose(person, SourceState.failed)
    services = len(fake.services)
    if not inside:
        person.director.open_mark()
    if inside:
        # Without anything that measures it doesn't begin: it would wait for ever.
        with nothing_measures(person):
            person.director.begin_mark(1500.0, 600.0)
            person.settle()
        assert person.director.mark is None
        assert words.say("trouble.failed") in page_of(person).said.text()
    person.director.begin_mark(1500.0, 600.0)
    back(person)
    person.measured(1.0, seen)
    assert len(fake.services) == services + 1 and fake.service.profile == "the person"
    assert person.director.mark is not None and person.director.trouble is None


def test_in_a_call_too_done_takes_the_place_of_the_pictures_button(
    make: Make, fake: FakeWorld
) -> None:
    """The row stays as it is: large words beside it need all the room that there is."""
    entry = Entry(entry_id="t", exercise="turns-on-target", repetitions=20, tempo_bpm=60)
    person = in_call(make, fake, entry)
    page = page_of(person)
    row, width = page._row, page.width()
    assert page.show_me.isVisible() and not page.done.isVisible()
    before_px = row.heightForWidth(width)
    lose(person, SourceState.unplugged, LOST_S + 1.0)
    assert page.done.isVisible() and not page.show_me.isVisible()
    assert row.heightForWidth(width) == before_px
