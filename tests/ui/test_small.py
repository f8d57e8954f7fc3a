"""The starter is remembered; a timed set says what is left; Pause stays in sight."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.ui.fakes import SIZE, FakeWorld, Make, seen
from tests.ui.patient import TURNS, Person, plan_of, turned
from tests.ui.test_window import cut_in
from tracker.plan.files import save_plan
from tracker.plan.model import Entry
from tracker.plan.starter import SEATED_ID
from ui import words
from ui.app import Window
from ui.languages import CODES
from ui.session.flow import Phase

TIMED = Entry(entry_id="turns", exercise="turns-on-target", seconds=30)


def to_the_set(
    make: Make, fake: FakeWorld, entry: Entry, percent: int = 100, language: str = ""
) -> Person:
    window = make(percent=percent, language=language)
    window.pages["welcome"].offer(plan_of(entry))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.get_in_place(0)
    person.measured(3.2, seen)
    assert person.director.phase == Phase.exercise
    return person


def offered(window: Window) -> str:
    plan = window.pages["welcome"].plan  # type: ignore[attr-defined]
    return "" if plan is None else plan.plan_id


def test_the_starter_is_offered_again_at_the_next_start(make: Make) -> None:
    window = make()
    assert offered(window) == ""
    window.pages["welcome"].starter.click()
    assert offered(window) == SEATED_ID
    assert offered(make()) == SEATED_ID


def test_a_plan_that_is_opened_takes_the_starters_place(make: Make, tmp_path: Path) -> None:
    window = make()
    window.pages["welcome"].starter.click()
    path = tmp_path / "plan.json"
    save_plan(path, plan_of(TURNS))
    window.open_plan(path)
    assert offered(make()) == "p1"


def test_a_timed_set_says_what_is_left_in_calm_steps(make: Make, fake: FakeWorld) -> None:
    person = to_the_set(make, fake, TIMED)
    page = person.window.pages["practice"]
    said = []
    for _ in range(60):
        turned(person, 0.5)
        if person.director.phase != Phase.exercise:
            break
        text = page.asked.text().split("   ·   ")[0]
        if not said or said[-1] != text:
            said.append(text)
    left = [words.say("ask.left", time=t) for t in ("0:30", "0:25", "0:20", "0:15", "0:10")]
    assert said[: len(left)] == left
    assert said[len(left)] == words.say("ask.left", time="0:09")


def test_a_counted_set_says_no_time(make: Make, fake: FakeWorld) -> None:
    person = to_the_set(make, fake, TURNS)
    turned(person, 0.5)
    assert "left" not in person.window.pages["practice"].asked.text()


@pytest.mark.parametrize("percent", [100, 150, 200])
@pytest.mark.parametrize("size", [(960, 600), (1366, 768)])
def test_everything_that_stops_or_rests_is_in_sight_in_the_smallest_window(
    make: Make, fake: FakeWorld, percent: int, size: tuple[int, int]
) -> None:
    person = to_the_set(make, fake, TIMED, percent)
    window = person.window
    person.resize(size)
    for _ in range(3):
        turned(person, 0.4)
        QApplication.processEvents()
    assert not cut_in(window)
    page = window.pages["practice"]
    for button in (page.stop, page.unwell, page.pause):
        assert button.isVisible()
    # In a set the target keeps its place, and the lines above it stay or are gone.
    assert page.field.height() >= 120
    QTest.keyClick(window, Qt.Key.Key_Space)
    assert person.director.phase == Phase.paused


@pytest.mark.parametrize("language", CODES)
def test_the_bow_over_the_target_is_whole_with_large_text(
    make: Make, fake: FakeWorld, language: str
) -> None:
    person = to_the_set(make, fake, TIMED, 200, language)
    for _ in range(3):
        turned(person, 0.4)
        QApplication.processEvents()
    field = person.window.pages["practice"].field
    assert person.window.size().toTuple() == SIZE
    assert field.height() / 2 >= field.bow_reach_px()
