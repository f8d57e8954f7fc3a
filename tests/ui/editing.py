"""A plan editor that only a test drives, and a pair of hands on its keys."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from tracker.plan.draft import Data
from tracker.plan.lines import Path
from ui.editor.inputs import LineInput
from ui.editor.row_view import RowView
from ui.editor.rows import Item
from ui.editor.window import EditorWindow

OpenEditor = Callable[..., EditorWindow]
CTRL, ALT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.AltModifier
SHIFT, NONE = Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.NoModifier


class Hands:
    """Types into whatever has the keys."""

    def __init__(self, window: EditorWindow) -> None:
        self.window = window

    @property
    def at(self) -> QWidget:
        """What has the keys."""
        found = QApplication.focusWidget()
        return self.window if found is None else found

    def press(self, key: Qt.Key, how: Qt.KeyboardModifier = NONE, times: int = 1) -> None:
        """Press a key."""
        for _ in range(times):
            QTest.keyClick(self.at, key, how)
            settle()

    def type(self, text: str) -> None:
        """Type a text in place of what is there."""
        self.press(Qt.Key.Key_A, CTRL)
        QTest.keyClicks(self.at, text)
        settle()

    def tab_to(self, name: str) -> QWidget:
        """Press Tab until something of that name has the keys."""
        for _ in range(120):
            if self.at.accessibleName() == name:
                return self.at
            self.press(Qt.Key.Key_Tab)
        raise AssertionError(f"Tab doesn't come to {name!r}")


def settle() -> None:
    for _ in range(3):
        QApplication.processEvents()


def view(window: EditorWindow, path: Path, kind: str = "") -> RowView:
    """The row of a field in the form that is shown."""
    found = [v for v in window.editing.form.views if v.row.path == path and v.input is not None]
    return next(v for v in found if not kind or v.row.kind == kind)


def line_of(window: EditorWindow, path: Path) -> LineInput:
    found = view(window, path).input
    assert isinstance(found, LineInput)
    return found


def enter(window: EditorWindow, path: Path, text: str) -> None:
    """Type into a field and leave it."""
    line = line_of(window, path)
    line.setText(text)
    line.commit()
    settle()


def choose(window: EditorWindow, item: Item) -> None:
    window.editing.outline.choose(item)
    settle()


def items(window: EditorWindow) -> list[Item]:
    return [line.item for line in window.editing.outline.lines]


def data_in(window: EditorWindow) -> Data:
    return window.document.data
