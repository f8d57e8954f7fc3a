"""Tab through every page: each control once, in reading order, and one sees where one is."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QPushButton, QWidget
from pytestqt.qtbot import QtBot

from tests.ui.desk_walk import spoil_one, walk_desk
from tests.ui.editing import OpenEditor
from tests.ui.fakes import FakeWorld, Make
from tests.ui.focusing import focus_faults
from tests.ui.test_desk import folder, open_desk  # noqa: F401 - fixtures
from tests.ui.test_every_page import WALKS, editor_pages, pages
from ui.widgets.basic import Button


@pytest.mark.slow
@pytest.mark.parametrize(
    ("which", "language"), [*((w, "en") for w in sorted(WALKS)), ("planned", "ar"), ("tools", "ar")]
)
def test_the_keys_go_through_every_page(
    make: Make, fake: FakeWorld, which: str, language: str
) -> None:
    """In Arabic one reads from the right."""
    window = make(language=language)
    faults: list[str] = []
    for name in pages(window, fake, which):
        faults += [f"{name}: {fault}" for fault in focus_faults(window)]
    assert not faults, "\n".join(dict.fromkeys(faults))


@pytest.mark.slow
def test_the_keys_go_through_the_editor(open_editor: OpenEditor) -> None:
    window = open_editor()
    faults: list[str] = []
    for name in editor_pages(window):
        faults += [f"{name}: {fault}" for fault in focus_faults(window)]
    assert not faults, "\n".join(dict.fromkeys(faults))


@pytest.mark.slow
@pytest.mark.timeout(300)
def test_the_keys_go_through_the_desk(
    open_desk: Any,  # noqa: F811
    folder: Path,  # noqa: F811
    qtbot: QtBot,
) -> None:
    spoil_one(folder)
    window = open_desk()
    faults: list[str] = []
    for name in walk_desk(window, qtbot):
        faults += [f"{name}: {fault}" for fault in focus_faults(window)]
    assert not faults, "\n".join(dict.fromkeys(faults))


class _Quiet(QPushButton):
    """A button that does not show that it has the keys."""

    def paintEvent(self, _event: QPaintEvent) -> None:
        QPainter(self).drawRect(self.rect().adjusted(0, 0, -1, -1))


def test_what_is_wrong_is_found(qtbot: QtBot) -> None:
    window = QWidget()
    window.resize(400, 320)
    places = {"first": (10, 10), "second": (10, 80), "third": (10, 150)}
    made = {}
    # Made last, and so last on Qt's own way, though it stands in the middle.
    for name in ("first", "third", "second"):
        made[name] = Button(name)
        made[name].setParent(window)
        made[name].setGeometry(*places[name], 150, 56)
    quiet = _Quiet("quiet", window)
    quiet.setGeometry(10, 240, 150, 56)
    lost = Button("lost")
    lost.setParent(window)
    lost.setGeometry(200, 240, 150, 56)
    lost.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    made["first"].setFocus()
    faults = focus_faults(window)
    assert any("'lost'" in f and "can't be reached" in f for f in faults)
    assert any("'quiet'" in f and "only 0 px" in f for f in faults)
    assert any("'third'" in f and "'second'" in f for f in faults)
    assert not any("'first'" in f and "px" in f for f in faults)
