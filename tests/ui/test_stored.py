"""The page of what is stored: seen, copied, deleted; asked once more, the keys on the safe side."""

from __future__ import annotations

import errno
import os
import shutil
import sys
import zipfile
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog
from pytestqt.qtbot import QtBot

from tests.handover.made import session_id, write_session
from tests.stored import made
from tests.ui.fakes import PLAN, FakeWorld, Make
from tests.ui.patient import ENTER, SPACE
from tests.ui.pictures import keep
from tests.ui.test_window import cut_in
from tracker.session.files import data_folder
from tracker.session.journal import FileJournal
from tracker.session.lock import LOCK_NAME, OnlyCopy
from tracker.session.recovery import Interrupted
from tracker.stored.look import SESSIONS, Kind
from tracker.stored.readers import Readers
from ui import opening, stored, words
from ui.app import Window
from ui.languages import CODES
from ui.pages.stored import AT_A_TIME, Step, StoredPage
from ui.ports import CameraChoice, Job
from ui.session.flow import Phase
from ui.settings import Settings
from ui.setup.lens_store import load_mark
from ui.stored_telling import day_words
from ui.widgets.basic import Button, Words

#: Said of files that are the owner's alone.
WHO = "stored.who.own" if sys.platform == "linux" else "stored.who.unknown"


def page_of(window: Window) -> StoredPage:
    page = window.pages["stored"]
    assert isinstance(page, StoredPage)
    return page


def settle(window: Window) -> None:
    for _ in range(4):
        window.refresh()
        QApplication.processEvents()


def to_stored(window: Window) -> StoredPage:
    window.director.open_tools()
    window.pages["tools"].stored.click()
    settle(window)
    page = page_of(window)
    assert window.stack.currentWidget() is page
    return page


def said(page: StoredPage) -> str:
    return "\n".join(label.text() for label in [page.lead, page.where, *page._made, page.others])


def fill() -> Path:
    """Stored things of every kind, without the seconds that a clinic's key takes."""
    data = made.make_private_folder(data_folder())
    made.sessions(data)
    for number in range(4):
        write_session(data, "2026-11-19", number + 1)
    camera = CameraChoice(0, "Test camera", "usb-1")
    made.wiring.keep_profile(made.nobody(), camera, "varifocal-left")
    made.keep_plan_in_use(made.plan_with(plain=True))
    (data / "keys").mkdir()
    (data / "keys" / "clinic-0abcdefg.age").write_text("locked")
    (data / "0 1 2").write_text("somebody's")
    return data


def walk(window: Window, fake: FakeWorld) -> Iterator[str]:
    """Every step of the page."""
    del fake
    # Another walk may have been here.
    shutil.rmtree(data_folder(), ignore_errors=True)
    data = fill()
    page = to_stored(window)
    yield "stored"
    page.one.click()
    yield "stored one"
    page.older.click()
    yield "stored older"
    page.this.click()
    yield "stored ask one"
    page.keep.click()
    settle(window)
    for button in (page.sessions, page.faces, page.everything):
        button.click()
        yield f"stored ask {page._what}"
        page.keep.click()
        settle(window)
    page.copy.click()
    yield "stored copy"
    page.save_copy("sessions", data.parent / "file 1.age")
    yield "stored copied"
    page.back.click()
    settle(window)
    page.save_copy("sessions", data / "file 1.age")
    yield "stored copy failed"
    page.back.click()
    settle(window)
    window.switch_sharing()
    yield "stored in a call"
    window.switch_sharing()
    with FileJournal(data / "sessions" / session_id("2026-11-26") / "journal.jsonl"):
        page.enter()
        settle(window)
        page.sessions.click()
        page.yes.click()
        yield "stored not all deleted"
    page.back.click()
    settle(window)
    page._run, run = (lambda _work: Job()), page._run
    page.faces.click()
    page.yes.click()
    yield "stored deleting"
    page._job, page._run = Job(done=True, result=stored.delete_for_good(stored.look(), ())), run
    settle(window)
    yield "stored deleted"
    page.back.click()
    settle(window)
    page.everything.click()
    page.yes.click()
    yield "stored all deleted"
    # A new window would take this one's place.
    page.step = Step.all
    window.settings.remember()
    (data / "0 1 2").unlink()
    page.enter()
    settle(window)
    yield "stored nothing"
    page.back.click()
    window.director.stop()


@pytest.mark.parametrize("percent", [100, 200])
def test_nothing_is_cut(make: Make, fake: FakeWorld, percent: int) -> None:
    window = make(percent=percent)
    faults = []
    for k, name in enumerate(walk(window, fake)):
        settle(window)
        keep(window, f"pages/stored-{percent}-{k:02d}-{name}")
        faults += [f"{name}: {fault}" for fault in cut_in(window)]
    assert not faults


def keys_on() -> str:
    focus = QApplication.focusWidget()
    return focus.text() if isinstance(focus, Button) else ""


# --- what is seen ---


def test_all_that_is_there_is_listed_with_days_and_sizes(make: Make) -> None:
    data = fill()
    page = to_stored(make())
    text = said(page)
    for kind in {i.kind for i in stored.look().items}:
        assert words.say(f"stored.kind.{kind}") in text, kind
    first, last = day_words(datetime(2026, 11, 3)), day_words(datetime(2026, 11, 26))
    assert f": 8 ({first} to {last})" in text
    assert "Bi- or varifocal, left eye only" in text and "Test camera" in text
    assert "0 1 2" in text and data.name in text.replace("\u200b", "")
    assert words.say(WHO) == page.who.text() and page.who.isVisible()


def test_in_a_call_no_folder_and_no_camera_is_named(make: Make) -> None:
    fill()
    window = make()
    page = to_stored(window)
    window.switch_sharing()
    settle(window)
    assert "Test camera" not in said(page) and not page.where.isVisible()
    assert not page.others.isVisible() and "varifocal" in said(page)
    window.cover("")
    window.director.stop()
    settle(window)
    assert not window.pages["welcome"].stored.isVisible()
    window.director.open_tools()
    settle(window)
    assert not window.pages["tools"].stored.isVisible()


def test_the_page_is_reached_from_where_it_is_promised(make: Make) -> None:
    window = make()
    welcome, first = window.pages["welcome"], window.pages["first"]
    welcome.stored.click()
    settle(window)
    page = page_of(window)
    assert window.stack.currentWidget() is page
    page.back.click()
    assert window.stack.currentWidget() is welcome
    window.director.open_first("privacy")
    settle(window)
    told = [w.text() for w in first.findChildren(Words) if w.isVisible()]
    assert words.say(WHO) in told
    first.stored.click()
    settle(window)
    assert window.stack.currentWidget() is page
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert window.stack.currentWidget() is first and window.director.first_step == "privacy"
    window.director.open_first("about")
    settle(window)
    assert not first.stored.isVisible()


def test_who_tries_the_sample_deletes_nothing_of_anybody(make: Make) -> None:
    window = make(clip=PLAN)
    assert not window.pages["welcome"].stored.isVisible()
    window.director.open_tools()
    settle(window)
    assert not window.pages["tools"].stored.isVisible()


# --- what is deleted ---


def test_one_session_goes_after_it_was_asked_and_no_other(make: Make) -> None:
    fill()
    window = make()
    page = to_stored(window)
    before = {i.path.name for i in stored.look().of(*SESSIONS)}
    page.one.click()
    shown = [b.text() for b in page.choice._group.buttons()]
    assert len(shown) == AT_A_TIME and any("broken off" in text for text in shown)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Down)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Down)
    wanted = page._sessions()[2].path.name
    page.this.click()
    settle(window)
    assert day_words(datetime(2026, 11, 24)) in page.lead.text()
    # The safe answer has the keys: a key pressed twice deletes nothing.
    assert keys_on() == words.say("stored.keep")
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    settle(window)
    assert page.step == Step.all and {i.path.name for i in stored.look().of(*SESSIONS)} == before
    page.one.click()
    page.choice._group.button(2).click()
    page.this.click()
    page.yes.click()
    settle(window)
    assert page.lead.text() == words.say("stored.deleted")
    assert {i.path.name for i in stored.look().of(*SESSIONS)} == before - {wanted}


def test_every_question_gives_the_keys_to_the_safe_answer(make: Make) -> None:
    fill()
    window = make()
    page = to_stored(window)
    for button in (page.sessions, page.faces, page.everything):
        button.setFocus()
        QTest.keyClick(button, SPACE)
        settle(window)
        assert keys_on() == words.say("stored.keep")
        assert page.no_way_back.isVisible()
        assert page._keys.isVisible() == (button is page.everything)
        QTest.keyClick(QApplication.focusWidget(), SPACE)
        settle(window)
        assert page.step == Step.all
    # Esc is the safe answer, too, and leaves the page only after that.
    page.everything.click()
    QTest.keyClick(window, Qt.Key.Key_Escape)
    settle(window)
    assert page.step == Step.all and window.stack.currentWidget() is page
    assert len(stored.look().of(*SESSIONS)) == 9
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert window.stack.currentWidget() is window.pages["tools"]


def test_the_face_goes_with_what_a_mark_showed_for_it(make: Make) -> None:
    data = fill()
    (face,) = (data / "profiles").glob("*.npz")
    made.keep_mark(face.stem, made.MARK)
    made.keep_mark("another", made.MARK)
    page = to_stored(window := make())
    page.faces.click()
    page.yes.click()
    settle(window)
    assert not (data / "profiles").exists() and load_mark(face.stem) is None
    assert load_mark("another") == made.MARK and len(stored.look().of(*SESSIONS)) == 9


def test_what_broke_off_is_not_offered_once_it_is_deleted(make: Make, fake: FakeWorld) -> None:
    data = fill()
    gone = data / "sessions" / made.BROKEN_OFF
    fake.interrupted.append(Interrupted(gone, "2026-11-25T10:15:00+01:00", 3))
    window = make()
    window.director.look_for_interrupted()
    window.director.tick()
    settle(window)
    assert window.pages["welcome"].note.isVisible()
    page = to_stored(window)
    page.sessions.click()
    page.yes.click()
    settle(window)
    page.back.click()
    page.back.click()
    window.director.stop()
    settle(window)
    assert window.stack.currentWidget() is window.pages["welcome"]
    assert not window.pages["welcome"].note.isVisible()


def test_a_session_that_is_recorded_by_another_program_is_named(make: Make) -> None:
    data = fill()
    folder = data / "sessions" / session_id("2026-11-26")
    with FileJournal(folder / "journal.jsonl"):
        page = to_stored(window := make())
        page.sessions.click()
        page.yes.click()
        settle(window)
        assert folder.name in page.lead.text().replace("\u200b", "")
        assert words.say("stored.left.in_use") in page.lead.text()
        assert [p.name for p in (data / "sessions").iterdir()] == [folder.name]


def test_while_it_deletes_no_key_leaves_and_closing_waits(make: Make) -> None:
    fill()
    window = make()
    page = to_stored(window)
    waited: list[float] = []
    job = Job(wait=waited.append)
    page._run = lambda _work: job
    page.sessions.click()
    page.yes.click()
    settle(window)
    assert page.lead.text() == words.say("stored.deleting")
    for key in (ENTER, SPACE, Qt.Key.Key_Escape):
        QTest.keyClick(QApplication.focusWidget(), key)
        settle(window)
        assert page.step == Step.busy and window.stack.currentWidget() is page
    window.close()
    assert waited


# --- all of it ---


def test_after_everything_the_program_is_as_on_its_first_day(
    qtbot: QtBot, fake: FakeWorld, monkeypatch: pytest.MonkeyPatch, spoken: Any
) -> None:
    del spoken
    data = fill()
    monkeypatch.setattr("ui.wiring.make_world", lambda *_: fake.world())
    settings = opening.user_settings()
    settings.text_percent, settings.first_step, settings.plan = 200, "", data / "plan-in-use.json"
    settings.language = "de"
    settings.sync()
    lock = OnlyCopy(data / LOCK_NAME)
    (data / "0 1 2").unlink()
    _app, window = opening.open_window()
    assert window.pages["welcome"].plan is not None
    window.cover("")
    page = to_stored(window)
    page.everything.click()
    page.yes.click()
    settle(window)
    assert page.step == Step.over and [p.name for p in data.iterdir()] == [LOCK_NAME]
    page.begin.click()
    qtbot.waitUntil(lambda: opening._shown[0] is not window)
    (new,) = opening._shown
    qtbot.addWidget(new)
    assert isinstance(new, Window) and new.isVisible()
    assert new.pages["welcome"].plan is None
    assert (new.director.phase, new.director.first_step) == (Phase.first, "text")
    assert new.settings.text_percent == 100 and not new.settings.language
    # What is chosen from now on is remembered again.
    new.settings.text_percent = 150
    new.settings.sync()
    assert Settings(data / "window.ini").text_percent == 150
    new.close()
    lock.close()
    assert {i.kind for i in stored.look().items} == {Kind.settings}


def test_nothing_is_remembered_after_everything_where_the_window_is_just_closed(
    make: Make, tmp_path: Path
) -> None:
    fill()
    window = make(percent=200)
    page = to_stored(window)
    page.everything.click()
    page.yes.click()
    settle(window)
    window.close()
    assert not (tmp_path / "window.ini").exists()
    assert not stored.look().items


@pytest.mark.parametrize("in_time", [True, False])
def test_closed_while_all_is_deleted_it_writes_nothing_again(
    make: Make, tmp_path: Path, in_time: bool
) -> None:
    fill()
    window = make(percent=200)
    window.settings.sync()
    assert (tmp_path / "window.ini").exists()
    page = to_stored(window)
    page.everything.click()
    window.settings.target_percent = 150
    works: list[Any] = []

    def finished(_s: float) -> None:
        if in_time:
            job.result, job.done = works.pop()(), True

    job = Job(wait=finished)
    page._run = lambda work: works.append(work) or job
    page.yes.click()
    settle(window)
    assert page.step == Step.busy
    window.close()
    window.settings.sync()
    assert not (tmp_path / "window.ini").exists()
    if not in_time:
        # It goes on after the window is gone.
        works.pop()()
    assert not stored.look().items


def test_what_stays_of_all_of_it_keeps_what_is_set_from_then_on(make: Make, tmp_path: Path) -> None:
    data = fill()
    folder = data / "sessions" / session_id("2026-11-24")
    window = make(percent=150)
    window.settings.camera = "Camera of before"
    page = to_stored(window)
    with FileJournal(folder / "journal.jsonl"):
        page.everything.click()
        window.settings.sync()
        page._run, run = (lambda work: works.append(work) or waiting), page._run
        works: list[Any] = []
        waiting = Job()
        page.yes.click()
        settle(window)
        window.settings.target_percent = 150
        (tmp_path / "window.ini").unlink()
        waiting.result, waiting.done, page._run = works.pop()(), True, run
        settle(window)
    assert page.step == Step.done and folder.name in page.lead.text().replace("\u200b", "")
    assert not window.settings.held
    window.settings.text_percent = 200
    window.close()
    window.settings.sync()
    file = tmp_path / "window.ini"
    kept = Settings(file)
    assert (kept.text_percent, kept.target_percent) == (200, 150)
    # What was deleted stays so.
    assert kept.camera == "" and "Camera of before" not in file.read_text()
    assert os.name != "posix" or file.stat().st_mode & 0o077 == 0


@pytest.mark.parametrize("closed", [True, False])
def test_a_deletion_that_fails_loses_no_settings(make: Make, tmp_path: Path, closed: bool) -> None:
    fill()
    window = make(percent=150)
    window.settings.camera = "Camera of before"
    page = to_stored(window)
    page.everything.click()
    page._run, run = (lambda _work: job), page._run

    def failed(_s: float) -> None:
        job.error, job.done = OSError(errno.EIO, "no"), True

    job = Job(wait=failed)
    page.yes.click()
    settle(window)
    assert window.settings.held
    window.settings.target_percent = 150
    if not closed:
        failed(0.0)
        page._run = run
        settle(window)
        assert page.step == Step.done and not window.settings.held
    window.close()
    window.settings.sync()
    kept = Settings(tmp_path / "window.ini")
    assert (kept.text_percent, kept.target_percent) == (150, 150)
    assert kept.camera == "Camera of before"


def test_another_job_that_runs_at_the_end_forgets_nothing(make: Make, tmp_path: Path) -> None:
    fill()
    window = make(percent=150)
    window.settings.camera = "Camera of before"
    page = to_stored(window)
    page._job = Job()
    window.settings.hold()
    page.close_jobs()
    window.settings.remember()
    window.settings.sync()
    assert Settings(tmp_path / "window.ini").camera == "Camera of before"


def test_files_that_others_can_read_are_told(make: Make, monkeypatch: pytest.MonkeyPatch) -> None:
    fill()
    for readers in (Readers.others, Readers.unknown):
        monkeypatch.setattr("tracker.stored.look.who_can_read", lambda _paths, r=readers: r)
        monkeypatch.setattr("ui.stored.who_can_read", lambda _paths, r=readers: r)
        window = make()
        page = to_stored(window)
        assert page.who.text() == words.say(f"stored.who.{readers}")
        assert words.say("stored.who.own") != page.who.text()
        window.director.open_first("privacy")
        settle(window)
        first = window.pages["first"].findChildren(Words)
        assert words.say(f"stored.who.{readers}") in [w.text() for w in first if w.isVisible()]


# --- a copy ---


def test_a_copy_of_what_was_chosen_goes_where_it_was_told(
    make: Make, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    fill()
    window = make()
    page = to_stored(window)
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "c.zip"), ""))
    page.copy.click()
    assert page.open.isVisible() and keys_on() == words.say("stored.copy.go")
    # A clinic's keys would go with all of it: said before a place is chosen.
    assert page.copied_keys.isVisible() and page.copied_keys.text() == words.say("stored.copy.keys")
    page.choice._group.button(2).click()
    page.place.click()
    settle(window)
    assert "not encrypted" in page.lead.text()
    with zipfile.ZipFile(tmp_path / "c.zip") as packed:
        assert [n.partition("/")[0] for n in packed.namelist()] == ["read-me.txt", "profiles"]
    # Somebody who chooses no place gets none.
    page.back.click()
    settle(window)
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: ("", ""))
    page.copy.click()
    page.place.click()
    assert page.step == Step.copy


@pytest.mark.parametrize("language", CODES)
def test_why_a_copy_was_refused_is_said_in_the_language(make: Make, language: str) -> None:
    data = fill()
    window = make(language=language)
    page = to_stored(window)
    page.save_copy("everything", data / "copy.zip")
    settle(window)
    told = page.lead.text()
    assert ("would be deleted" in told) == (language == "en") and "copy.zip" in told
