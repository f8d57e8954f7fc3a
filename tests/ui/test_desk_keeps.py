"""What the desk keeps: who wrote a note, what was typed, what was chosen."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.ui.test_desk import Open, folder, open_desk, open_last  # noqa: F401
from tracker.records.notes import NoteBook
from ui import theme
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
        window.close()


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
