"""What the desk keeps: who wrote a note, what was typed, what was chosen."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog
from pytestqt.qtbot import QtBot

from tests.records.clinic import TODAY
from tests.records.test_folder import write
from tests.ui.test_desk import Open, choose, folder, look, open_desk, open_last  # noqa: F401
from tracker.plan.files import load_plan
from tracker.records.notes import NoteBook
from ui import theme, words
from ui.desk.trend_table import TrendRow
from ui.desk.window import DeskWindow
from ui.settings import Settings


@pytest.fixture
def other_computer(qtbot: QtBot, folder: Path, tmp_path: Path) -> Iterator[Open]:  # noqa: F811
    """A desk on the same folder under the same login, with settings of its own."""
    made: list[DeskWindow] = []

    def build() -> DeskWindow:
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        theme.apply(app, "light")
        window = DeskWindow(folder, Settings(tmp_path / "other.ini"))
        qtbot.addWidget(window)
        made.append(window)
        window.show()
        qtbot.waitUntil(lambda: window.found is not None, timeout=60_000)
        return window

    yield build
    for window in made:
        window.leaving.drop()


def test_a_note_of_the_same_login_on_another_computer_is_not_undone(
    open_desk: Open,  # noqa: F811
    other_computer: Open,
    qtbot: QtBot,
    folder: Path,  # noqa: F811
    tmp_path: Path,
) -> None:
    one, other = open_desk(), other_computer()
    for window, text in ((one, "from one"), (other, "from the other")):
        open_last(window, qtbot, "heron")
        window.session_page.notes.note.setText(text)
        window.session_page.notes.add.click()
    for _ in range(3):
        one.session_page.notes.undo.click()
    assert [n.text for n in NoteBook(folder, "x").notes()] == ["from the other"]
    assert "from the other" in one.session_page.notes.notes.text()
    # The next start is the same writer.
    writer = Settings(tmp_path / "window.ini").writer
    assert writer == one.settings.writer != other.settings.writer
    other.session_page.notes.undo.click()
    assert NoteBook(folder, "x").notes() == []


def test_a_plan_that_was_handed_out_is_not_the_last_plan(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
    folder: Path,  # noqa: F811
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    window = open_desk()
    choose(window, "heron")
    before = window.person_page.person
    assert before is not None and before.plan is not None
    assert window.found is not None
    own = folder / next(p for p, plan in window.found.records.plans if plan is before.plan)
    offered: list[str] = []

    def where(_parent: object, _title: str, start: str, _kinds: str) -> tuple[str, str]:
        offered.append(start)
        return start, ""

    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(own), ""))
    monkeypatch.setattr(QFileDialog, "getSaveFileName", where)
    window.settings.plain_files = True
    window.show_exchange()
    window.exchange.out.give_plain.click()
    qtbot.waitUntil(lambda: not window.exchange.work.busy, timeout=30_000)
    assert load_plan(Path(offered[0])).hand_over is not None
    window.look_again()
    qtbot.waitUntil(lambda: not window.reading.busy, timeout=30_000)
    qtbot.waitUntil(lambda: len(window.found.records.plans) == 7, timeout=30_000)
    window.show_people()
    now = window.person_page.person
    assert now is not None and now.plan == before.plan and now.reasons == before.reasons
    assert window.open_plan() and window.editor is not None
    window.editor._begin_last()
    assert window.editor.document.path == own
    window.editor.close()


def test_a_session_that_arrives_leaves_days_and_row_chosen(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
    folder: Path,  # noqa: F811
) -> None:
    window = open_desk()
    choose(window, "heron")
    page = window.person_page
    days = sorted({r.day for r in page.sessions.sessions.rows if r.day is not None})
    first, last = QDate(days[1]), QDate(days[-2])
    page.filters.from_day.setDate(first)
    page.filters.to_day.setDate(last)
    page.tabs.setCurrentIndex(1)
    chosen = page.sessions.sessions.rows[2].place
    page.sessions.setCurrentIndex(page.sessions.sessions.index(2, 0))
    page.trends.setCurrentIndex(page.trends.trends.index(3, 0))
    shown = page.trends.trends.rows[3]
    assert isinstance(shown, TrendRow)

    def arrives(name: str, day: date) -> None:
        assert window.found is not None
        count = len(window.found.records.rows)
        write(folder, name, "heron", day.isoformat())
        window.look_again()
        qtbot.waitUntil(lambda: len(window.found.records.rows) > count, timeout=30_000)

    def kept() -> tuple[QDate, QDate, str, str]:
        trend = page.trends.trends.rows[page.trends.currentIndex().row()]
        assert isinstance(trend, TrendRow)
        session = page.sessions.sessions.rows[page.sessions.currentIndex().row()]
        return (
            page.filters.from_day.date(),
            page.filters.to_day.date(),
            session.place,
            trend.series.figure,
        )

    # One within the days, above the row, one after them and one before.
    for name, day in (("x1", days[-2]), ("x2", TODAY), ("x3", days[0] - timedelta(days=3))):
        arrives(f"heron/{name}", day)
        assert kept() == (first, last, chosen, shown.series.figure), name
    # Days at the end of all days go with them; somebody else is shown whole.
    page.filters.show_all()
    arrives("heron/x4", TODAY + timedelta(days=1))
    assert any("x4" in r.place for r in page.sessions.sessions.rows)
    page.filters.to_day.setDate(first)
    choose(window, "wren")
    person = page.person
    assert person is not None and len(page.sessions.sessions.rows) == len(person.rows)
    assert not page.sessions.currentIndex().isValid()


def test_a_note_that_was_typed_waits_for_its_session(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
    folder: Path,  # noqa: F811
    tmp_path: Path,
) -> None:
    window = open_desk()
    open_last(window, qtbot, "heron")
    note = window.session_page.notes.note
    QTest.keyClicks(note, "dizzy in the call")
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert window.stack.currentIndex() == 0
    open_last(window, qtbot, "wren")
    assert note.text() == ""
    QTest.keyClicks(note, "of wren")
    window.session_page.back.click()
    open_last(window, qtbot, "heron")
    assert note.text() == "dizzy in the call"
    # Not for a session of another folder, and no more once it was added.
    window.open_folder(Path(shutil.copytree(folder, tmp_path / "other")))
    qtbot.waitUntil(lambda: window.found is not None, timeout=60_000)
    open_last(window, qtbot, "heron")
    assert note.text() == ""
    window.open_folder(folder)
    qtbot.waitUntil(lambda: window.found is not None, timeout=60_000)
    open_last(window, qtbot, "heron")
    window.session_page.notes.add.click()
    open_last(window, qtbot, "wren")
    assert note.text() == "of wren"
    open_last(window, qtbot, "heron")
    assert note.text() == "" and [n.text for n in NoteBook(folder, "x").notes()] == [
        "dizzy in the call"
    ]


def test_closing_asks_about_a_note_that_was_typed_and_not_added(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
) -> None:
    window = open_desk()
    open_last(window, qtbot, "heron")
    notes, bar = window.session_page.notes, window.leaving.bar
    QTest.keyClicks(notes.note, "dizzy in the call")
    assert not window.close() and window.isVisible() and bar.isVisible()
    assert "dizzy in the call" in bar.said.text()
    # Also where it waits for its session and another one is shown.
    window.show_people()
    open_last(window, qtbot, "wren")
    assert not window.close()
    assert look(window, "draft") == []
    window.appearance.set_text(200)
    assert not window.close()
    assert look(window, "draft-200") == []
    window.appearance.set_text(100)
    buttons = {b.text(): b for b in bar.buttons}
    buttons[words.say("desk.draft.show")].click()
    assert not bar.isVisible() and notes.note.text() == "dizzy in the call"
    assert window.stack.currentWidget() is window.session_page
    notes.note.setText("  ")
    assert notes.drafts() == {}
    notes.note.setText("dizzy in the call")
    assert not window.close()
    {b.text(): b for b in bar.buttons}[words.say("desk.draft.drop")].click()
    assert not window.isVisible()


def test_a_note_that_came_back_is_no_reason_of_not_valid_unless_somebody_types_on(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
    folder: Path,  # noqa: F811
) -> None:
    window = open_desk()
    open_last(window, qtbot, "heron")
    notes = window.session_page.notes
    QTest.keyClicks(notes.note, "to be asked")
    window.show_people()
    open_last(window, qtbot, "heron")
    notes.mark(0, 1)
    assert notes.note.text() == "to be asked"
    QTest.keyClicks(notes.note, ": sneezed")
    notes.mark(0, 2)
    assert notes.note.text() == ""
    found = {n.repetition: n.text for n in NoteBook(folder, "x").notes()}
    assert found == {1: "", 2: "to be asked: sneezed"}


def test_a_note_of_before_writers_is_taken_back_after_a_question_and_else_it_says_why_not(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
    folder: Path,  # noqa: F811
) -> None:
    window = open_desk()
    open_last(window, qtbot, "heron")
    notes = window.session_page.notes
    NoteBook(folder, "somebody").add("note", notes.session, "of somebody else")
    old = NoteBook(folder, notes.book.author)
    old.add("note", notes.session, "of before")
    notes.note.setText("of now")
    notes.add.click()
    notes.undo.click()
    assert "of now" not in notes.notes.text() and notes.sure.isHidden()
    notes.undo.click()
    assert notes.sure.isVisible() and len(notes.own()) == 2
    assert "same login" in notes.notes.text().splitlines()[0]
    assert look(window, "note-older") == []
    window.appearance.set_text(200)
    assert look(window, "note-older-200") == []
    window.appearance.set_text(100)
    # Something else done takes the question back.
    notes.note.setText("more")
    notes.add.click()
    assert notes.sure.isHidden()
    notes.undo_older()
    assert len(notes.own()) == 3
    notes.undo.click()
    notes.undo.click()
    written = old.path.read_bytes()
    notes.sure.click()
    assert [n.text for n in notes.own()] == ["of somebody else"] and notes.sure.isHidden()
    # Each file has one writer still.
    assert old.path.read_bytes() == written
    notes.undo.click()
    assert "nothing of yours" in notes.notes.text().splitlines()[0]
    assert [n.text for n in notes.own()] == ["of somebody else"]
