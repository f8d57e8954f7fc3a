"""Practice away from the laptop: put down in one step, taken back in one."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication

from tests.ui.fakes import FakeWorld, Make
from tests.ui.patient import ENTER, STAND, TURNS, Person, plan_of
from tracker.session.flags import REPORTED
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary import load_summary
from ui import wiring, words
from ui.session_flow import Phase
from ui.widgets.posts import Posts, posts_of


def offered(make: Make, fake: FakeWorld) -> Person:
    window = make()
    window.pages["welcome"].offer(plan_of(TURNS, STAND))
    person = Person(window, fake)
    person.settle()
    return person


def test_one_press_saves_it_as_told(make: Make, fake: FakeWorld) -> None:
    person = offered(make, fake)
    person.choose("I practised without the laptop")
    assert person.director.phase == Phase.summary and not fake.services
    page = person.window.pages["summary"]
    assert page.said.text() == words.say("summary.finished_reported")
    assert [r.value for r in page._rows] == [words.say("summary.reported")] * 2
    summary = load_summary(person.director.saved.folder / SUMMARY_NAME)
    assert summary.person == "Wren"
    assert [e.entry_id for e in summary.exercises] == ["turns", "stand"]
    assert REPORTED in {f.flag for f in summary.quality}
    person.choose("Practise again")
    assert person.director.phase == Phase.welcome
    assert not fake.forgotten


def test_a_second_press_takes_it_back(make: Make, fake: FakeWorld) -> None:
    person = offered(make, fake)
    person.choose("I practised without the laptop")
    folder = person.director.saved.folder
    person.choose("Take it back")
    assert fake.forgotten == [folder] and person.director.phase == Phase.welcome
    # What is practised before the camera can't be taken back.
    person.choose("Practise my plan")
    person.none_of_these()
    person.press("0", ENTER)
    person.choose("End for today")
    QApplication.processEvents()
    assert person.director.phase == Phase.summary
    assert not person.window.pages["summary"].take_back.isVisible()
    person.director.take_report_back()
    assert fake.forgotten == [folder]


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space])
def test_a_key_that_is_held_presses_no_further_button(
    make: Make, fake: FakeWorld, key: Qt.Key
) -> None:
    person = offered(make, fake)
    button = person.window.pages["welcome"].practise
    button.setFocus()
    for _ in range(3):
        for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
            held = QKeyEvent(kind, key, Qt.KeyboardModifier.NoModifier, "", True)
            QApplication.sendEvent(button, held)
    person.settle()
    assert person.director.phase == Phase.welcome
    person.press(key)
    assert person.director.phase == Phase.asking


def test_only_who_has_a_plan_can_tell(make: Make, fake: FakeWorld) -> None:
    window = make()
    window.refresh()
    assert not window.pages["welcome"].report.isVisible()


def test_the_real_recording_is_written_and_deleted(private_data_folder: Path) -> None:
    recording = wiring.make_reported(plan_of(TURNS))
    recording.finish("finished")
    saved = recording.save()
    assert load_summary(saved.summary_path).quality[0].flag == REPORTED
    assert saved.folder.is_relative_to(private_data_folder)
    wiring.forget_session(saved.folder)
    assert not saved.folder.exists() and saved.folder.parent.exists()


def test_posts_are_all_tall_only_when_all_is_done() -> None:
    assert posts_of(3, 3) == (3, 3)
    assert posts_of(0, 12) == (0, 12)
    assert posts_of(59, 60) == (19, 20) and posts_of(60, 60) == (20, 20)
    assert posts_of(1, 100) == (1, 20)
    assert posts_of(14, 12) == (12, 12)


def test_posts_are_described(make: Make) -> None:
    make()
    assert Posts(2.0, 12.0).accessibleName() == words.say("practice.of", done=2, goal=12)
