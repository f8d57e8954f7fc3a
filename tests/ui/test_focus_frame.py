"""The ring around what has the keys."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication, QLineEdit, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot
from shiboken6 import delete

from ui.widgets.focus_frame import FocusFrame


def test_a_ring_leaves_what_was_deleted_alone(qtbot: QtBot) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    column = QVBoxLayout(window)
    first, second = QLineEdit(), QLineEdit()
    column.addWidget(first)
    column.addWidget(second)
    ring = FocusFrame(window)
    window.show()
    window.activateWindow()
    qtbot.waitExposed(window)
    first.setFocus()
    qtbot.waitUntil(ring.isVisible)
    around = ring.geometry()
    delete(first)
    second.setFocus()
    QApplication.processEvents()
    assert ring.isVisible() and ring.geometry() != around
