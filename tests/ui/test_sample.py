"""The sample clip in place of a camera: after it everything is as before."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt

from tests.ui.fakes import CAMERA, PLAN, FakeWorld, Make, answer_fit, seen
from tests.ui.patient import TURNS, Person, plan_of
from tracker.vision.messages import SourceChanged, SourceState
from ui import words
from ui.session.flow import Phase
from ui.widgets.basic import Button

ESC = Qt.Key.Key_Escape


def offered(person: Person) -> list[str]:
    page = person.window.stack.currentWidget()
    return [b.text() for b in page.findChildren(Button) if b.isVisible()]


def at_sample(make: Make, fake: FakeWorld, *, planned: bool) -> tuple[Person, list[str]]:
    """The sample plays, since there is no camera; and what the first page offered before."""
    fake.cameras = []
    window = make()
    if planned:
        window.pages["welcome"].offer(plan_of(TURNS))
    person = Person(window, fake)
    person.settle()
    before = offered(person)
    person.director.start()
    person.settle()
    person.choose(words.say("trouble.demo"))
    assert person.director.phase == Phase.setup and person.director.clip is not None
    return person, before


@pytest.mark.parametrize("planned", [False, True])
@pytest.mark.parametrize("where", ["setup", "summary"])
def test_after_it_everything_is_as_before(
    make: Make, fake: FakeWorld, where: str, planned: bool
) -> None:
    person, before = at_sample(make, fake, planned=planned)
    director = person.director
    distance_mm = director.distance_mm
    person.measured(3.0, seen)
    if where == "summary":
        fake.service.news.append(SourceChanged(SourceState.ended))
        person.settle()
        assert director.phase == Phase.fitting
        answer_fit(fake.service, director)
        person.settle()
        assert director.phase == Phase.exercise
        person.press(ESC)
        assert director.phase == Phase.summary and director.clip is not None
        person.choose(words.say("summary.again"))
    else:
        person.press(ESC)
    assert director.phase == Phase.welcome and director.clip is None
    assert offered(person) == before
    assert director.distance_mm == distance_mm and director.report is None
    # The camera, the first steps and the plan can be had again.
    fake.cameras = [CAMERA]
    director.open_first()
    assert director.phase == Phase.first
    director.leave_first()
    director.start()
    person.settle()
    assert director.phase == Phase.camera and fake.service.source == CAMERA


def test_a_demo_stays_one(make: Make, fake: FakeWorld) -> None:
    window = make(clip=PLAN)
    person = Person(window, fake)
    person.director.start()
    person.settle()
    person.press(ESC)
    assert person.director.phase == Phase.welcome and person.director.clip is PLAN
    assert fake.service.source == Path("sample.mp4")
