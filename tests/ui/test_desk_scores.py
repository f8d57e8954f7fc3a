"""Questionnaire scores on the desk: entered by keys, shown with their trend, taken back."""

from __future__ import annotations

import csv
import io
import shutil
from collections.abc import Callable
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from tests.records.clinic import TODAY
from tests.ui.test_desk import choose, folder, open_desk  # noqa: F401 - fixtures
from tracker.records.notes import NoteBook, author_of_system
from tracker.records.questionnaires import add_score, scores_of
from ui import words
from ui.cli import main
from ui.desk.scores_panel import ScoresPanel, _number
from ui.desk.window import DeskWindow

Open = Callable[..., DeskWindow]
TAB, ENTER = Qt.Key.Key_Tab, Qt.Key.Key_Return


def panel_of(window: DeskWindow, name: str = "teal") -> ScoresPanel:
    choose(window, name)
    panel = window.person_page.scores
    window.person_page.tabs.setCurrentWidget(panel)
    QApplication.processEvents()
    return panel


def type_in(panel: ScoresPanel, *texts: str, days_ago: int = 0) -> None:
    """Name, score, least and most, as one types them from field to field."""
    day = TODAY - timedelta(days=days_ago)
    panel.day.setDate(QDate(day.year, day.month, day.day))
    fields: list[QLineEdit] = [panel.name, *panel.numbers.values()]
    for field, text in zip(fields, texts, strict=False):
        field.setFocus()
        field.clear()
        QTest.keyClicks(field, text)
    QTest.keyClick(fields[len(texts) - 1], ENTER)
    QApplication.processEvents()


def test_scores_are_entered_by_keys_and_stand_there_with_their_trend(
    open_desk: Open,  # noqa: F811
    folder: Path,  # noqa: F811
) -> None:
    window = open_desk()
    panel = panel_of(window)
    assert panel.day.date().toPython() == TODAY
    type_in(panel, "Balance A", "60", "0", "100", days_ago=30)
    assert "Kept: Balance A, 60" in panel.said.text()
    assert not any(line.text() for line in (panel.name, *panel.numbers.values()))
    # The range that it had before is there already.
    type_in(panel, "balance a", "47.5")
    (row,) = panel.table.scores.rows
    name, first, last, change, every = row.cells
    assert name == "balance a (0 to 100)" and first.startswith("60.0, ")
    assert last.startswith("47.5, ") and change == "12.5 lower"
    assert every == f"{first}; {last}" and [p.value for p in row.points] == [60.0, 47.5]
    kept = scores_of(NoteBook(folder, "anybody"))
    assert [(s.person, s.score, s.most) for s in kept] == [("teal", 60, 100), ("teal", 47.5, 100)]
    # Somebody else has none of them, but the name can be chosen again.
    assert panel_of(window, "wren").table.scores.rows == []
    completer = panel.name.completer()
    assert completer is not None and completer.completionModel().index(0, 0).data() == "balance a"


@pytest.mark.parametrize(
    ("typed", "says", "field"),
    [
        (("", "1", "0", "10"), "Type the name", "name"),
        (("A", "", "0", "10"), "“Score” needs a number", "score"),
        (("A", "5", "0", "ten"), "“Most possible” needs a number", "most"),
        (("A", "5", "10", "0"), "must be below the most", "least"),
        (("A", "0", "0.001", "0.004"), "must be below the most", "least"),
        (("A", "11", "0", "10"), "between 0 and 10", "score"),
    ],
)
def test_what_makes_no_sense_is_said_and_nothing_typed_is_lost(
    open_desk: Open,  # noqa: F811
    folder: Path,  # noqa: F811
    typed: tuple[str, ...],
    says: str,
    field: str,
) -> None:
    panel = panel_of(open_desk())
    type_in(panel, *typed)
    assert panel.said.isVisible() and says in panel.said.text()
    assert [panel.name.text(), *(n.text() for n in panel.numbers.values())] == list(typed)
    assert QApplication.focusWidget() is panel._fields[field]
    assert not (folder / "notes").exists()


def test_a_day_to_come_is_refused(open_desk: Open, folder: Path) -> None:  # noqa: F811
    panel = panel_of(open_desk())
    type_in(panel, "A", "5", "0", "10", days_ago=-1)
    assert "still to come" in panel.said.text() and not (folder / "notes").exists()


def test_undo_by_button_and_key_takes_ones_own_back(
    open_desk: Open,  # noqa: F811
    folder: Path,  # noqa: F811
) -> None:
    window = open_desk()
    panel = panel_of(window)
    type_in(panel, "A", "5", "0", "10")
    type_in(panel, "A", "6")
    panel.undo.click()
    assert "Taken back: A, 6" in panel.said.text()
    assert [p.value for r in panel.table.scores.rows for p in r.points] == [5]
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert panel.table.scores.rows == [] and scores_of(NoteBook(folder, "x")) == []
    panel.undo.click()
    assert "no score of yours" in panel.said.text()
    # On another tab the key leaves scores alone.
    type_in(panel, "A", "7", "0", "10")
    window.person_page.tabs.setCurrentIndex(0)
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert len(scores_of(NoteBook(folder, "x"))) == 1


def test_a_corrected_name_takes_the_range_of_another_away(
    open_desk: Open,  # noqa: F811
) -> None:
    panel = panel_of(open_desk())
    type_in(panel, "Balance", "60", "0", "100")
    type_in(panel, "Steps", "5", "-4", "24")

    def name(text: str) -> list[str]:
        panel.name.setFocus()
        panel.name.clear()
        QTest.keyClicks(panel.name, text)
        panel.numbers["score"].setFocus()
        return [panel.numbers[key].text() for key in ("least", "most")]

    assert name("Balance") == ["0", "100"]
    assert name("Steps") == ["-4", "24"]
    assert name("Unheard of") == ["", ""]
    assert name("Balance") == ["0", "100"]
    # What was typed stays, whatever the name.
    panel.numbers["most"].clear()
    QTest.keyClicks(panel.numbers["most"], "50")
    assert name("Steps") == ["-4", "50"]
    assert name("Unheard of") == ["", "50"]
    QTest.keyClicks(panel.numbers["score"], "7")
    QTest.keyClicks(panel.numbers["least"], "1")
    QTest.keyClick(panel.name, ENTER)
    assert "Kept: Unheard of, 7 (1 to 50)" in panel.said.text()


def test_a_score_of_an_earlier_sitting_is_asked_for_first(
    open_desk: Open,  # noqa: F811
    folder: Path,  # noqa: F811
) -> None:
    window = open_desk()
    mine = NoteBook(folder, author_of_system(), window.settings.writer)
    old = add_score(mine, "teal", "A", TODAY, 3, (0, 10))
    panel = panel_of(window)
    type_in(panel, "A", "5")
    for _ in range(4):
        QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert scores_of(NoteBook(folder, "x")) == [old]
    assert "still there: A, 3" in panel.said.text() and panel.sure.isVisible()
    # Whoever goes on has thought better of it.
    type_in(panel, "A", "6")
    assert not panel.sure.isVisible()
    panel.undo.click()
    panel.undo.click()
    panel_of(window, "wren")
    assert not panel.sure.isVisible()
    panel.undo_older()
    panel_of(window, "teal")
    panel.undo.click()
    panel.sure.click()
    assert "Taken back: A, 3" in panel.said.text() and not panel.sure.isVisible()
    assert scores_of(NoteBook(folder, "x")) == []


def test_a_score_of_before_there_were_writers_is_taken_back_after_a_question(
    open_desk: Open,  # noqa: F811
    folder: Path,  # noqa: F811
) -> None:
    window = open_desk()
    old = add_score(NoteBook(folder, author_of_system()), "teal", "A", TODAY, 3, (0, 10))
    panel = panel_of(window)
    panel.undo.click()
    assert scores_of(NoteBook(folder, "x")) == [old] and panel.sure.isVisible()
    assert "another computer with the same login: A, 3" in panel.said.text()
    panel.sure.click()
    assert "Taken back: A, 3" in panel.said.text() and scores_of(NoteBook(folder, "x")) == []
    panel.undo.click()
    assert panel.said.text() == words.say("scores.no_undo")


def test_another_folder_takes_nothing_that_was_typed_for_the_one_before(
    open_desk: Open,  # noqa: F811
    folder: Path,  # noqa: F811
    tmp_path: Path,
    qtbot: QtBot,
) -> None:
    window = open_desk()
    panel = panel_of(window)
    QTest.keyClicks(panel.name, "A")
    QTest.keyClicks(panel.numbers["score"], "5")
    other = tmp_path / "another clinic"
    shutil.copytree(folder, other)
    window.open_folder(other)
    # Before a line of it is read nobody is shown, nobody can be chosen, nothing can be added.
    assert window.person_page.person is None and window.people.current is None
    assert not panel.add.isEnabled() and panel.name.text() == ""
    panel.add_typed()
    qtbot.waitUntil(lambda: window.found is not None, timeout=30_000)
    panel = panel_of(window)
    assert panel.add.isEnabled() and [panel.name.text(), panel.numbers["score"].text()] == ["", ""]
    assert not (folder / "notes").exists() and not (other / "notes").exists()


def test_a_score_that_can_not_be_kept_is_said(open_desk: Open, folder: Path) -> None:  # noqa: F811
    panel = panel_of(open_desk())
    (folder / "notes").write_text("a file where the folder should be")
    type_in(panel, "A", "5", "0", "10")
    assert "Not kept" in panel.said.text() and panel.name.text() == "A"


def test_the_report_of_a_person_has_their_scores(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
    tmp_path: Path,
) -> None:
    window = open_desk()
    for name, score in (("teal", "5"), ("wren", "9")):
        type_in(panel_of(window, name), "A", score, "0", "10")
    panel_of(window, "teal")
    report = window.person_page.report
    report.make("scores_csv", tmp_path / "scores.csv")
    qtbot.waitUntil(lambda: report._job is None, timeout=30_000)
    rows = list(csv.DictReader(io.StringIO((tmp_path / "scores.csv").read_text("utf-8-sig"))))
    assert [(r["person"], r["questionnaire"], r["score"]) for r in rows] == [("teal", "A", "5")]
    report.make("html", tmp_path / "report.html")
    qtbot.waitUntil(lambda: report._job is None, timeout=30_000)
    text = (tmp_path / "report.html").read_text("utf-8")
    assert "<h2>Questionnaires</h2>" in text


def test_the_review_as_text_tells_them(
    open_desk: Open,  # noqa: F811
    folder: Path,  # noqa: F811
    capsys: pytest.CaptureFixture[str],
) -> None:
    panel = panel_of(open_desk())
    type_in(panel, "A", "5", "0", "10", days_ago=9)
    type_in(panel, "A", "8")
    assert main(["review", str(folder), "--text", "--person", "teal"]) == 0
    (line,) = [x for x in capsys.readouterr().out.splitlines() if "Questionnaire" in x]
    assert line.startswith("  Questionnaire: A (0 to 10): 5 on ") and line.endswith(": 3 higher")


@pytest.mark.parametrize(("percent", "size"), [(100, (1366, 768)), (200, (960, 600))])
def test_nothing_is_cut(open_desk: Open, percent: int, size: tuple[int, int]) -> None:  # noqa: F811
    window = open_desk(percent=percent, size=size)
    panel = panel_of(window)
    type_in(panel, "A questionnaire with a long name", "5", "0", "10")
    for button in (panel.add, panel.undo):
        assert button.width() >= button.sizeHint().width()
    for label in panel._labels.values():
        assert label.width() >= label.sizeHint().width()
    wide = max(w.geometry().right() for w in panel.findChildren(QLineEdit) if w.isVisible())
    assert wide <= panel.width()


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("47.5", 47.5),
        (" 5 ", 5.0),
        ("-3", -3.0),
        ("0.004", 0.0),
        ("", None),
        ("1e9", None),
        ("nan", None),
    ],
)
def test_numbers_are_read_as_typed(text: str, value: float | None) -> None:
    assert _number(text) == value


def test_numbers_are_read_as_the_country_writes_them(spoken: Any) -> None:
    spoken("de")
    assert _number("47,5") == 47.5 and _number("47.5") == 47.5
