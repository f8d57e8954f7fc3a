"""Practice away from the laptop: put down in one step, taken back in one."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication

from tests.ui.fakes import FakeWorld, Make
from tests.ui.patient import ENTER, STAND, TURNS, Person, plan_of
from tests.ui.test_window import pixels
from tracker.errors import RunError
from tracker.handover.sent import remember
from tracker.practice.tasks import AskGate
from tracker.session.flags import REPORTED
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import load_summary
from ui import wiring, words
from ui.ports import Job
from ui.session.flow import Phase
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


@pytest.mark.parametrize("by", ["key", "button"])
def test_who_has_told_of_it_may_feel_unwell_too(make: Make, fake: FakeWorld, by: str) -> None:
    """The help says "at any time"; who has just practised without the laptop needs it no less."""
    person = offered(make, fake)
    person.choose("I practised without the laptop")
    told = person.director.saved
    assert told is not None
    if by == "key":
        person.press("u", ENTER)
    else:
        person.choose("I feel unwell (U)")
        person.choose("I feel unwell (U)")
    task = person.director.task
    assert isinstance(task, AskGate) and task.because == "unwell"
    person.none_of_these()
    person.choose("Show what I did")
    # What was told of stays, and the record of the questions is none that was told.
    assert not fake.forgotten and (told.folder / SUMMARY_NAME).exists()
    found = load_summary(person.director.saved.folder / SUMMARY_NAME)
    assert (found.ended, found.plan_id) == ("stopped_unwell", "p1")
    page = person.window.pages["summary"]
    assert page.said.text() == words.say("summary.done_before")
    assert not page.take_back.isVisible()


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


def test_a_second_one_on_a_day_is_asked_about(make: Make, fake: FakeWorld) -> None:
    person = offered(make, fake)
    person.choose("I practised without the laptop")
    # No button has the keys, so that one pressed twice tells nothing more.
    person.press(ENTER, ENTER)
    assert person.director.phase == Phase.summary and len(fake.recordings) == 1
    earlier = load_summary(person.director.saved.folder / SUMMARY_NAME)
    at = f"{date.today()}T07:45:00+01:00"
    fake.history = [earlier.model_copy(update={"started_at": at})]
    person.choose("Practise again")
    person.choose("I practised without the laptop")
    page = person.window.pages["welcome"]
    assert person.director.phase == Phase.welcome and len(fake.recordings) == 1
    assert page.noted.isVisible() and "07:45" in page.noted.text() and page.practise.hasFocus()
    person.choose("I practised once more")
    assert person.director.phase == Phase.summary and len(fake.recordings) == 2
    # Of yesterday nothing is asked.
    fake.history = [earlier.model_copy(update={"started_at": "2026-01-01T07:45:00+01:00"})]
    person.choose("Practise again")
    assert not page.noted.isVisible()
    person.choose("I practised without the laptop")
    assert len(fake.recordings) == 3


def test_nothing_else_begins_while_it_is_put_down(
    make: Make, fake: FakeWorld, monkeypatch: pytest.MonkeyPatch
) -> None:
    person = offered(make, fake)
    waiting = Job()
    with monkeypatch.context() as patched:
        patched.setattr(person.director._world, "run", lambda _work: waiting)
        person.choose("I practised without the laptop")
        assert not person.window.pages["welcome"].report.isEnabled()
        person.director.start()
        person.director.open_tools()
        person.director.open_first("text")
        assert person.director.phase == Phase.welcome
        waiting.result, waiting.done = [], True
    person.settle()
    assert person.director.phase == Phase.summary and person.director.reported


def test_what_can_not_be_taken_back_is_said(
    make: Make, fake: FakeWorld, monkeypatch: pytest.MonkeyPatch
) -> None:
    def held(_folder: Path) -> None:
        raise RunError("the disk is write-protected")

    person = offered(make, fake)
    person.choose("I practised without the laptop")
    page, world = person.window.pages["summary"], person.director._world
    monkeypatch.setattr(world, "forget", held)
    person.choose("Take it back")
    assert person.director.phase == Phase.summary and "write-protected" in page.kept.text()
    assert page.kept.isVisible()
    monkeypatch.setattr(world, "was_sent", lambda _folder: True)
    monkeypatch.setattr(world, "forget", lambda _folder: pytest.fail("it was sent"))
    person.director.take_report_back()
    person.settle()
    assert not page.take_back.isVisible() and person.director.phase == Phase.summary


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
    assert not wiring.was_sent(saved.folder)
    mine = plan_of(TURNS)
    remember(mine, [saved.folder.name], private_data_folder)
    assert wiring.was_sent(saved.folder)
    wiring.forget_session(saved.folder)
    with pytest.raises(RunError, match="can't be deleted"):
        wiring.forget_session(saved.folder)
    assert not list(private_data_folder.glob("taken-back*"))
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


def test_posts_grow_with_the_text(make: Make) -> None:
    make()
    heights = []
    for percent in (100, 200):
        posts = Posts(2.0, 12.0)
        posts.set_percent(percent)
        posts.resize(posts.sizeHint())
        picture = pixels(posts.grab().toImage()).astype(int)
        # The first post, which is tall, against the gap before it.
        ink = abs(picture[:, 6] - picture[:, 0]).max(axis=1) > 60
        heights.append(int(ink.sum()))
    assert heights[0] > 20 and heights[1] == pytest.approx(2 * heights[0], abs=2)
