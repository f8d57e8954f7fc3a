"""The way of the Tab key through layouts, whatever was put in when."""

from __future__ import annotations

import gc

from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLayout,
    QLayoutItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)
from pytestqt.qtbot import QtBot
from shiboken6 import getAllValidWrappers

from tests.ui.fakes import Make
from ui import tab_order
from ui.widgets.flow import FlowRow


def names(widget: QWidget) -> str:
    return "".join(w.text() for w in tab_order.laid_out(widget) if isinstance(w, QPushButton))


def made(holder: QWidget) -> dict[str, QPushButton]:
    """Made from Z to A, as no order of making tells the places."""
    return {name: QPushButton(name, holder) for name in "HGFEDCBA"}


def test_what_is_within_layouts_comes_in_its_place(qtbot: QtBot) -> None:
    holder = QWidget()
    qtbot.addWidget(holder)
    buttons = made(holder)
    outer, inner, grid, flow = QVBoxLayout(holder), QHBoxLayout(), QGridLayout(), FlowRow()
    outer.addWidget(buttons["A"])
    outer.addLayout(inner)
    outer.addStretch(1)
    outer.addLayout(grid)
    outer.addLayout(flow)
    inner.addWidget(buttons["B"])
    inner.addWidget(buttons["C"])
    grid.addWidget(buttons["F"], 1, 1)
    grid.addWidget(buttons["E"], 1, 0)
    grid.addWidget(buttons["D"], 0, 1)
    flow.addWidget(buttons["H"])
    flow.addWidget(buttons["G"])
    flow.set_apart(buttons["H"])
    assert names(holder) == "ABCDEFGH"


def test_what_no_layout_holds_comes_last(qtbot: QtBot) -> None:
    holder = QWidget()
    qtbot.addWidget(holder)
    buttons = made(holder)
    row = QHBoxLayout(holder)
    for name in "DB":
        row.addWidget(buttons[name])
    assert names(holder) == "DBHGFECA"


def parts_known() -> int:
    """Parts of layouts that PySide6 keeps something for."""
    return sum(
        isinstance(known, QLayoutItem) and not isinstance(known, QLayout)
        for known in getAllValidWrappers()
    )


def test_nothing_is_kept_of_parts_that_qt_may_free(make: Make, qtbot: QtBot) -> None:
    """What is kept of a part is taken for whatever lies in its place in memory next."""
    window = make()
    before = parts_known()
    assert len(list(tab_order.laid_out(window))) > 100
    assert parts_known() == before


def test_a_widget_that_goes_leaves_a_row_of_buttons(qtbot: QtBot) -> None:
    holder = QWidget()
    qtbot.addWidget(holder)
    flow = FlowRow(holder)
    buttons = [QPushButton(name) for name in "ABC"]
    for button in buttons:
        flow.addWidget(button)
    # Windows of earlier tests go first.
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    gc.collect()
    before = parts_known()
    buttons[1].deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    assert names(holder) == "AC" and flow.count() == 2 and parts_known() == before - 1
