"""No camera before a set: where the keys lie, and the way on without it."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtWidgets import QApplication

from tests.ui.fakes import FakeWorld, Make, seen
from tests.ui.patient import ENTER, EYES, TURNS, Person, plan_of
from tracker.practice.tasks import NO_CAMERA, Prepare
from tracker.vision.messages import SourceChanged, SourceState
from ui import words
from ui.session.flow import Phase

Begin = Callable[..., Person]


@pytest.fixture
def unseen(begin: Begin, fake: FakeWorld) -> Person:
    """Somebody at "I am in place", two exercises to come, and no camera."""
    fake.cameras = []
    person = begin(plan_of(TURNS, EYES))
    person.begin_day(0)
    assert isinstance(person.director.task, Prepare)
    return person


def test_the_keys_are_on_trying_again_and_never_on_a_way_out(unseen: Person) -> None:
    page = unseen.window.pages["camera"]
    unseen.choose("I am in place")
    assert unseen.director.phase == Phase.camera and page.retry.hasFocus()
    # Whoever comes back finds them there, too, and not where they were left.
    unseen.find(words.say("ask.unwell"))
    unseen.director.stop()
    unseen.settle()
    unseen.choose("I am in place")
    assert page.retry.hasFocus()
    unseen.press(ENTER)
    assert unseen.director.phase == Phase.camera


def test_while_a_camera_opens_no_key_leads_back_or_ends_it(begin: Begin, fake: FakeWorld) -> None:
    person = begin(plan_of(TURNS))
    person.begin_day(0)
    person.choose("I am in place")
    page = person.window.pages["camera"]
    for _ in range(2):
        assert QApplication.focusWidget() is page
        person.press(ENTER)
        assert person.director.phase == Phase.camera
        person.find(words.say("ask.unwell"))
        person.director.stop()
        person.settle()
        person.choose("I am in place")
    person.measured(0.5, seen)
    assert page.next.hasFocus()


def test_a_session_goes_on_without_it(unseen: Person, fake: FakeWorld) -> None:
    page = unseen.window.pages["camera"]
    unseen.choose("I am in place")
    assert page.without.isVisible() and page.leave_out.text() in page.without.text()
    unseen.choose("Not this one")
    task = unseen.director.task
    assert isinstance(task, Prepare) and task.asked is not None
    assert task.asked.entry_id == "eyes" and unseen.director.trouble is None
    # Not that it was just left out: the therapist learns why. Nor is it told once more here.
    assert unseen.director.conductor.not_done == [("turns", (NO_CAMERA,))]
    assert not unseen.window.pages["task"]._notes
    assert not fake.services


def test_the_try_can_be_left_out_and_is_nothing_to_note(make: Make, fake: FakeWorld) -> None:
    fake.cameras = []
    person = Person(make(), fake)
    person.director.open_first("try")
    person.settle()
    person.choose("Try it now")
    person.begin_day(0)
    person.choose("I am in place")
    page = person.window.pages["camera"]
    assert page.leave_out.isVisible() and not page.without.isVisible()
    person.choose("Not this one")
    assert person.director.phase == Phase.summary


def test_outside_a_session_and_with_a_camera_nothing_is_left_out(
    make: Make, fake: FakeWorld, begin: Begin
) -> None:
    window = make()
    window.director.start()
    fake.service.news.append(SourceChanged(SourceState.busy))
    window.director.tick()
    window.refresh()
    page = window.pages["camera"]
    assert page.retry.isVisible()
    assert not page.leave_out.isVisible() and not page.without.isVisible()
    person = begin(plan_of(TURNS))
    person.begin_day(0)
    person.choose("I am in place")
    person.measured(0.5, seen)
    page = person.window.pages["camera"]
    assert page.next.isVisible() and not page.leave_out.isVisible()
