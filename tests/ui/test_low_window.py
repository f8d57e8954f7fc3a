"""What to do about a camera that went, in the lowest window with the largest letters."""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import QPointF, QRectF

from tests.ui.fakes import FakeWorld, Make, seen
from tests.ui.patient import SPACE, Person
from tests.ui.pictures import keep
from tests.ui.test_camera_lost import GONE, back, lose
from tests.ui.test_small import to_the_set
from tests.ui.test_window import cut_in
from tracker.plan.model import Entry
from tracker.vision.messages import SourceState
from ui import words
from ui.app import SMALLEST
from ui.languages import CODES
from ui.session.flow import Phase
from ui.session.lost import LOST_S

#: One of each way that a target keeps or takes; nods x2 has no room with such letters.
TARGETS = ("turns-on-target", "nods-on-target", "eyes-side-to-side", "eyes-up-down", "turns-x2")


def covered(page: Any) -> list[str]:
    """Targets whose disc what is to be read lies on."""
    field, over = page.field, QRectF(page.remedy.geometry())
    radius = field.disc_px()
    found = []
    for offset in field.offsets:
        middle = field.centre_px(offset) + QPointF(field.mapTo(page, field.rect().topLeft()))
        disc = QRectF(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius)
        if over.intersects(disc):
            found.append(f"{over.getRect()} lies on the target at {disc.getRect()}")
    return found


@pytest.mark.parametrize("language", CODES)
@pytest.mark.parametrize(
    ("exercise", "timed"), [*((e, False) for e in TARGETS), (TARGETS[0], True), (TARGETS[1], True)]
)
def test_no_target_is_covered(
    make: Make, fake: FakeWorld, language: str, exercise: str, timed: bool
) -> None:
    dose = {"seconds": 60} if timed else {"repetitions": 30}
    entry = Entry(entry_id="a", exercise=exercise, tempo_bpm=30, **dose)  # type: ignore[arg-type]
    person = to_the_set(make, fake, entry, 200, language)
    person.resize(SMALLEST)
    page: Any = person.window.pages["practice"]
    faults: list[str] = []
    for state in GONE:
        lose(person, state)
        person.wait(0.25)
        for when in ("at first", "counting"):
            assert person.director.phase == Phase.exercise and page.field.offsets
            faults += [f"{state} {when}: {fault}" for fault in covered(page)]
            faults += [f"{state} {when}: {fault}" for fault in cut_in(person.window)]
            if page.remedy.isVisible():
                keep(person.window, f"low/{exercise}-{language}-{state}-{timed}-{when}")
            person.wait(0.0 if when == "counting" else LOST_S)
        if not timed:
            # What to do now is the last that goes.
            first = words.say("lost.count").split(". ")[0]
            assert page.remedy.isVisible() and first in page.remedy.text()
        if timed or state == GONE[-1]:
            back(person)
    assert not faults, "\n".join(faults)


def test_in_a_larger_window_all_of_it_is_read_again(make: Make, fake: FakeWorld) -> None:
    entry = Entry(entry_id="a", exercise="turns-on-target", repetitions=30, tempo_bpm=30)
    person = to_the_set(make, fake, entry, 200)
    person.resize(SMALLEST)
    lose(person, SourceState.perhaps_busy)
    person.wait(LOST_S + 1.0)
    page: Any = person.window.pages["practice"]
    whole = f"{words.say('lost.count')} {words.say('trouble.perhaps_busy.do')}"
    # Else this shows nothing.
    assert page.remedy.text() != whole and whole.startswith(page.remedy.text())
    person.window.resize(1920, 1080)
    person.settle()
    # The target is elsewhere now: one goes on by hand.
    person.press(SPACE)
    person.wait(LOST_S + 1.5)
    assert page.remedy.text() == whole
    assert not covered(page) and not cut_in(person.window)


@pytest.mark.parametrize("language", CODES)
def test_a_set_up_that_waits_says_so_whole(make: Make, fake: FakeWorld, language: str) -> None:
    window = make(percent=200, language=language)
    window.resize(*SMALLEST)
    person = Person(window, fake)
    person.director.start()
    person.measured(0.5, seen)
    person.director.begin_setup()
    person.settle()
    person.measured(2.0, seen)
    page: Any = window.pages["setup"]
    faults: list[str] = []
    for state in (s for s in GONE if s != SourceState.failed):
        lose(person, state)
        person.wait(LOST_S + 0.5)
        assert person.director.setup_waits and page.message.isVisible()
        assert page.message.text().startswith(words.say("lost.setup"))
        keep(window, f"low/setup-{language}-{state}")
        faults += [f"{state}: {fault}" for fault in cut_in(window)]
        back(person)
        person.measured(0.5, seen)
    assert not faults, "\n".join(faults)
