"""Nothing shifts while one exercises: the room for what may come is kept from the start."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from PySide6.QtCore import QPoint, QRect, Qt

from tests.ui.fakes import FakeWorld, Make, grey_picture, seen, turning
from tests.ui.patient import Person, plan_of
from tests.ui.pictures import keep
from tests.ui.test_camera_lost import back, lose
from tests.ui.test_window import cut_in
from tracker.plan.model import Entry
from tracker.practice.tasks import CountDown, DoSet, Prepare
from tracker.vision.messages import SourceState
from ui import words
from ui.app import SMALLEST
from ui.session.flow import Dose, Phase

LANGUAGES = ("en", "de", "es", "ar")
SIZES = [((1366, 768), 100), ((1366, 768), 200), (SMALLEST, 200)]
Sized = Callable[[str, tuple[int, int], int], Person]


@pytest.fixture
def sized(make: Make, fake: FakeWorld) -> Sized:
    """Somebody before a window in a language, of a size, with a text size."""

    def build(language: str, size: tuple[int, int], percent: int) -> Person:
        window = make(language=language, percent=percent)
        window.resize(*size)
        person = Person(window, fake)
        person.settle()
        return person

    return build


class Places:
    """Where the target's field lies in the window, from when it is first asked."""

    def __init__(self, person: Person) -> None:
        self._person, self._first = person, QRect()
        self.faults: list[str] = []

    def look(self, when: str) -> None:
        self._person.settle()
        page: Any = self._person.window.stack.currentWidget()
        box = QRect(page.field.mapTo(self._person.window, QPoint(0, 0)), page.field.size())
        if self._first.isNull():
            self._first = box
        if box != self._first:
            self.faults.append(f"{when}: {box.getRect()} in place of {self._first.getRect()}")
        keep(self._person.window, f"shifts/{when}-{box.y()}-{box.height()}")


def go_to(person: Person, phase: Phase) -> None:
    for _ in range(200):
        if person.director.phase == phase:
            return
        person.measured(0.1, seen)
    raise AssertionError(f"{phase} does not come")


@pytest.mark.parametrize(("size", "percent"), SIZES)
@pytest.mark.parametrize("language", LANGUAGES)
def test_in_a_set_alone(sized: Sized, language: str, size: tuple[int, int], percent: int) -> None:
    person = sized(language, size, percent)
    person.director.start()
    person.settle()
    person.set_up()
    person.fake.service.picture = grey_picture()
    person.director.start_exercise(Dose("turns-on-target", 12, 60.0))
    places = Places(person)
    places.look("countdown")
    go_to(person, Phase.exercise)
    places.look("begun")
    start_s = person.fake.service.time_s
    person.measured(3.0, lambda t: turning(t, start_s, 6.0))
    places.look("a cue")
    person.press(Qt.Key.Key_P)
    places.look("with a picture")
    person.press(Qt.Key.Key_P)
    person.press(Qt.Key.Key_Space)
    places.look("a pause")
    person.press(Qt.Key.Key_Space)
    go_to(person, Phase.exercise)
    lose(person, SourceState.silent)
    person.wait(1.0)
    places.look("no picture for a moment")
    back(person)
    places.look("a picture again")
    assert not places.faults, "\n".join(places.faults)


@pytest.mark.parametrize(("size", "percent"), SIZES)
@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("exercise", ["turns-on-target", "near-far"])
def test_in_a_set_of_a_plan(
    sized: Sized, fake: FakeWorld, language: str, size: tuple[int, int], percent: int, exercise: str
) -> None:
    person = sized(language, size, percent)
    person.window.pages["welcome"].offer(plan_of(Entry(entry_id="a", exercise=exercise)))
    person.settle()
    person.choose("Practise my plan")
    person.begin_day()
    for _ in range(8):
        if person.director.phase == Phase.camera:
            break
        person.choose("I am in place" if isinstance(person.director.task, Prepare) else "Yes")
    person.set_up()
    assert isinstance(person.director.task, CountDown)
    places = Places(person)
    places.look("countdown")
    go_to(person, Phase.exercise)
    assert isinstance(person.director.task, DoSet)
    places.look("begun")
    person.press(Qt.Key.Key_Space)
    places.look("a pause")
    person.press(Qt.Key.Key_Space)
    places.look("countdown to go on")
    go_to(person, Phase.exercise)
    places.look("goes on")
    assert not places.faults, "\n".join(places.faults)


@pytest.mark.parametrize(("size", "percent"), SIZES)
@pytest.mark.parametrize("language", LANGUAGES)
def test_in_a_set_up(sized: Sized, language: str, size: tuple[int, int], percent: int) -> None:
    person = sized(language, size, percent)
    person.director.start()
    person.measured(0.5, seen)
    person.director.begin_setup()
    person.settle()
    places = Places(person)
    places.look("set-up")
    offered = False
    while person.director.phase == Phase.setup:
        person.measured(0.5, seen)
        offered |= bool(person.director.repeats)
        if person.director.phase == Phase.setup:
            places.look(f"set-up, {person.director.setup_part}")
    assert offered
    assert not places.faults, "\n".join(places.faults[:6])


@pytest.mark.parametrize(("size", "percent"), SIZES)
@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("exercise", ["turns-on-target", "eyes-side-to-side"])
def test_when_the_camera_goes(
    sized: Sized, language: str, size: tuple[int, int], percent: int, exercise: str
) -> None:
    person = sized(language, size, percent)
    person.director.start()
    person.settle()
    person.set_up()
    person.director.start_exercise(Dose(exercise, 12, 60.0))
    places = Places(person)
    places.look("countdown")
    go_to(person, Phase.exercise)
    places.look("begun")
    lose(person, SourceState.unplugged)
    places.look("unplugged")
    person.wait(4.0)
    page: Any = person.window.stack.currentWidget()
    assert page.done.isVisible()
    whole = f"{words.say('lost.count')} {words.say('trouble.unplugged.do')}"
    # The lowest window has no room for its end (test_low_window).
    assert whole.startswith(page.remedy.text()) and page.remedy.text()
    assert page.remedy.text() == whole or size == SMALLEST
    places.look("counting alone")
    assert not cut_in(person.window)
    back(person)
    places.look("back")
    assert not places.faults, "\n".join(places.faults)
