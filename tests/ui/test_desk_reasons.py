"""Reasons on a person's page keep their width, and a long path takes one line."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tracker.records.attention import Kind, Reason
from ui.desk.folder_name import FolderName
from ui.desk.reasons import LETTERS_BESIDE, Reasons, _Line

DAY = date(2026, 11, 22)
LONG = "answered yes: positional spin on bending, looking up or tilting"
REASONS = [
    Reason(Kind.spin, LONG, DAY, "one/summary.json"),
    Reason(Kind.medicines, "said that medicines have changed", DAY, "two/summary.json"),
    Reason(Kind.rising, "dizziness before rose from 1.0 to 4.0 of 10", DAY),
]
#: Room for the page beside the list in a window of 1366 px, at both text sizes.
WIDTHS = {100: 976, 200: 780}
PATH = Path("/clinic/The shared folder of the north ward, patients at home in autumn 2026")


@pytest.fixture
def reasons(qtbot: QtBot, percent: int) -> Reasons:
    made = Reasons()
    qtbot.addWidget(made)
    made.set_percent(percent)
    made.show_reasons(REASONS)
    made.resize(WIDTHS[percent], 600)
    made.show()
    qtbot.waitExposed(made)
    QApplication.processEvents()
    return made


@pytest.mark.parametrize("percent", [100, 200])
def test_a_reason_is_not_squeezed_by_its_button(reasons: Reasons, percent: int) -> None:
    """Before, at 200 % some 15 letters of it found room in a line."""
    for line in reasons.findChildren(_Line):
        letter = line.text.fontMetrics().averageCharWidth()
        assert line.text.width() >= 0.7 * LETTERS_BESIDE * letter
        assert line.text.height() >= line.text.heightForWidth(line.text.width())
        if line.button is None:
            continue
        below = line.button.mapTo(line, QPoint(0, 0)).y() >= line.text.geometry().bottom()
        assert below == (percent == 200)
        assert line.word.y() <= line.text.y() + line.text.height() // 2
        chosen: list[str] = []
        reasons.opened.connect(chosen.append)
        line.button.click()
        assert chosen[-1:] and chosen[-1].endswith("/summary.json")


def test_a_long_path_takes_one_line_and_is_told_whole(qtbot: QtBot) -> None:
    name = FolderName()
    qtbot.addWidget(name)
    name.show()
    for percent in (100, 200):
        name.set_percent(percent)
        name.resize(400, 60)
        name.show_folder(PATH)
        assert name.text().startswith("…") and name.text().endswith("in autumn 2026")
        assert name.fontMetrics().horizontalAdvance(name.text()) <= 400
        assert name.accessibleName() == str(PATH) and PATH.name in name.toolTip()
    # With room for all of it nothing is left out.
    name.resize(4000, 60)
    QApplication.processEvents()
    assert name.text() == str(PATH)
