"""A large clock is drawn whole, in the digits of every language."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtGui import QImage, QPainter
from pytestqt.qtbot import QtBot

from tests.ui.test_window import pixels
from ui import words
from ui.languages import CODES
from ui.session.set_figure import clock_words
from ui.widgets.far import FarFigure


def ink_of(draw: Callable[[QPainter], None], size: QSize) -> tuple[int, int]:
    """Width and height of what is drawn on a picture of a size; in pixels."""
    image = QImage(size, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    draw(painter)
    painter.end()
    shown = pixels(image)
    y, x = np.nonzero((shown != shown[0, 0]).any(axis=2))
    return int(x.max() - x.min()), int(y.max() - y.min())


@pytest.mark.parametrize("language", CODES)
@pytest.mark.parametrize("percent", [100, 200])
def test_no_digit_of_a_large_clock_is_cut(
    spoken: Callable[[str], None], qtbot: QtBot, language: str, percent: int
) -> None:
    spoken(language)
    figure = FarFigure()
    qtbot.addWidget(figure)
    figure.set_percent(percent)
    label = figure.figure
    for seconds in (0, 5, 38, 88, 245, 599, 1428):
        figure.show_figure(clock_words(seconds), words.say("far.left"))
        figure.resize(figure.width(), figure.sizeHint().height())
        figure.ensurePolished()
        figure.layout().activate()

        def free(painter: QPainter) -> None:
            painter.setFont(label.font())
            painter.drawText(QRect(0, 0, 2000, 600), Qt.AlignmentFlag.AlignCenter, label.text())

        whole = ink_of(free, QSize(2000, 600))
        shown = ink_of(lambda painter: label.render(painter, QPoint(0, 0)), label.size())
        assert shown == pytest.approx(whole, abs=2), clock_words(seconds)
