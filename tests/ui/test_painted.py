"""Every text and shape that the windows paint: whole, large enough, and to be told from its ground.

Looked at as painters are told it (:mod:`tests.ui.painted`), so that widgets that paint
themselves are no exception; and held against the window's picture.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from tests.ui.contrast import faint_shapes, faint_texts
from tests.ui.desk_walk import spoil_one, walk_desk
from tests.ui.editing import OpenEditor
from tests.ui.fakes import FakeWorld, Make
from tests.ui.legible import cut_texts, low_texts, small_texts
from tests.ui.painted import painted_by
from tests.ui.test_desk import folder, open_desk  # noqa: F401 - fixtures
from tests.ui.test_every_page import (
    DESK_PX,
    SHAPES_LEAST,
    TEXT_PX,
    WALKS,
    WORDS_LEAST,
    editor_pages,
    pages,
)
from tests.ui.test_window import pixels
from tracker.records.trends import Point
from ui import theme
from ui.desk import people_list
from ui.desk.chart import draw_chart
from ui.desk.trend_table import chosen_palette
from ui.share import WORDS_SHARE


def faults_of(window: QWidget, least_px: int) -> list[str]:
    """Everything that is wrong with what a window paints now."""
    for line in window.findChildren(QLineEdit):
        # What is chosen in a field is painted twice, over itself.
        line.deselect()
    picture = pixels(window.grab().toImage())
    found = cut_texts(window) + small_texts(window, least_px)
    found += faint_texts(window, picture, WORDS_LEAST)
    return found + faint_shapes(window, picture, SHAPES_LEAST)


@pytest.mark.slow
@pytest.mark.parametrize("colours", ["light", "dark"])
@pytest.mark.parametrize("which", sorted(WALKS))
def test_all_that_is_painted_can_be_read(
    make: Make, fake: FakeWorld, which: str, colours: str
) -> None:
    window = make(colours=colours)
    faults: list[str] = []
    for name in pages(window, fake, which):
        found = faults_of(window, TEXT_PX)
        if window.director.sharing:
            found += low_texts(window, WORDS_SHARE)
        faults += [f"{name}: {fault}" for fault in found]
    assert not faults, "\n".join(dict.fromkeys(faults))


@pytest.mark.slow
@pytest.mark.parametrize("colours", ["light", "dark"])
def test_all_that_the_editor_paints_can_be_read(open_editor: OpenEditor, colours: str) -> None:
    window = open_editor(colours=colours)
    faults: list[str] = []
    for name in editor_pages(window):
        faults += [f"{name}: {fault}" for fault in faults_of(window, DESK_PX)]
    assert not faults, "\n".join(dict.fromkeys(faults))


@pytest.mark.slow
@pytest.mark.timeout(300)
@pytest.mark.parametrize("colours", ["light", "dark"])
def test_all_that_the_desk_paints_can_be_read(
    open_desk: Any,  # noqa: F811
    folder: Path,  # noqa: F811
    qtbot: QtBot,
    colours: str,
) -> None:
    spoil_one(folder)
    window = open_desk()
    window.appearance.set_colours(colours)
    faults: list[str] = []
    for name in walk_desk(window, qtbot):
        faults += [f"{name}: {fault}" for fault in faults_of(window, DESK_PX)]
    assert not faults, "\n".join(dict.fromkeys(faults))


class _Wrong(QWidget):
    """Paints by itself what must not be."""

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor("#ffffff"))
        font = painter.font()
        font.setPixelSize(24)
        painter.setFont(font)
        painter.setPen(QColor("#000000"))
        painter.drawText(20, 40, "whole")
        painter.drawText(360, 40, "beyond the side")
        painter.drawText(20, 100, "one over")
        painter.drawText(30, 105, "another")
        painter.drawText(20, 140, "short…")
        painter.setPen(QColor("#999999"))
        painter.drawText(20, 180, "faint")
        font.setPixelSize(11)
        painter.setFont(font)
        painter.setPen(QColor("#000000"))
        painter.drawText(20, 220, "tiny")


def test_what_is_wrong_is_found(qtbot: QtBot) -> None:
    window = QWidget()
    window.resize(400, 300)
    wrong = _Wrong(window)
    wrong.resize(400, 300)
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    cut = cut_texts(window)
    assert len(cut) == 3
    assert any("beyond the side" in f and "is cut at its side" in f for f in cut)
    assert any("one over" in f and "another" in f for f in cut)
    assert any("short…" in f and "shortened" in f for f in cut)
    faint = faint_texts(window, pixels(window.grab().toImage()), WORDS_LEAST)
    assert len(faint) == 1 and "faint" in faint[0] and "2.8:1" in faint[0]
    small = small_texts(window, DESK_PX)
    assert len(small) == 1 and "tiny" in small[0] and "11 px" in small[0]
    assert len(low_texts(window, 0.05)) == 1


class _Pale(QWidget):
    """A square that is hardly other than its ground, and one that is."""

    __module__ = "ui.made_up"

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor("#ffffff"))
        painter.fillRect(20, 20, 40, 40, QColor("#e0e0e0"))
        painter.fillRect(100, 20, 40, 40, QColor("#555555"))


def test_a_pale_shape_is_found(qtbot: QtBot) -> None:
    window = QWidget()
    window.resize(200, 100)
    pale = _Pale(window)
    pale.resize(200, 100)
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    found = faint_shapes(window, pixels(window.grab().toImage()), SHAPES_LEAST)
    assert len(found) == 1 and "(20, 20, 40, 40)" in found[0]


class _Delegated(QWidget):
    """What the delegates of the desk draw, on the ground of a row that is chosen or is not."""

    __module__ = "ui.made_up"

    def __init__(self, what: str, ground: QPalette.ColorRole, palette: QPalette) -> None:
        super().__init__()
        self._what, self._ground, self._palette = what, ground, palette
        own = self.palette()
        own.setColor(QPalette.ColorRole.Window, palette.color(ground))
        self.setPalette(own)
        self.resize(260, 60)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._palette.color(self._ground))
        if self._what == "triangle":
            people_list._triangle(painter, 20, 20, 20, self._palette)
            return
        values = (10.0, None, 14.0, 30.0, 12.0)
        points = [Point(f"s{k}", None, v, baseline=k == 0) for k, v in enumerate(values)]
        points[3] = points[3]._replace(doubts=("dark",))
        draw_chart(painter, QRectF(self.rect()), points, self._palette)


@pytest.mark.parametrize("colours", ["light", "dark"])
@pytest.mark.parametrize("what", ["triangle", "chart"])
@pytest.mark.parametrize("chosen", [False, True])
def test_what_delegates_draw_is_told_from_its_ground(
    qtbot: QtBot, qapp: QApplication, what: str, chosen: bool, colours: str
) -> None:
    """A list's viewport is no widget of ours: what is painted into it is looked at by itself."""
    theme.apply(qapp, colours)
    role, palette = QPalette.ColorRole, qapp.palette()
    ground = role.AlternateBase if chosen else role.Base
    if what == "chart" and chosen:
        ground, palette = role.Highlight, chosen_palette(palette)
    drawn = _Delegated(what, ground, palette)
    qtbot.addWidget(drawn)
    holder = QWidget()
    qtbot.addWidget(holder)
    holder.resize(300, 100)
    drawn.setParent(holder)
    with qtbot.waitExposed(holder):
        holder.show()
    picture = pixels(holder.grab().toImage())
    assert len(painted_by(drawn).shapes) >= 2
    assert faint_shapes(holder, picture, SHAPES_LEAST) == []
    # In colours of their ground they would be found.
    for own in (role.Highlight, role.Mid, role.Accent):
        if own != ground:
            drawn._palette.setColor(own, drawn._palette.color(ground).darker(115))
    found = faint_shapes(holder, pixels(holder.grab().toImage()), SHAPES_LEAST)
    assert found and all("_Delegated" in fault for fault in found)
