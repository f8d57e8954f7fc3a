"""Questionnaire scores of one person: a row a questionnaire, first against last, all as a chart."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHeaderView

from tracker.records.questionnaires import Course, Score, decimals_of
from tracker.records.trends import Point
from ui import words
from ui.desk import trade
from ui.desk.small import as_tip
from ui.desk.table import Index, Table
from ui.desk.table_model import RowsModel
from ui.desk.trend_table import CHART_COLUMN, POINTS_ROLE, ChartDelegate


@dataclass(frozen=True)
class CourseRow:
    """A row: a questionnaire and all its scores."""

    course: Course

    @property
    def cells(self) -> list[str]:
        """What stands in the columns; in that of the chart, what the chart shows."""
        course = self.course
        first, last = course.scores[0], course.scores[-1]
        name = words.say(
            "scores.course",
            name=course.name,
            least=number_words(course.least),
            most=number_words(course.most),
        )
        dated = [self.dated(s) for s in course.scores]
        return [name, self.dated(first), self.dated(last), self.change, "; ".join(dated)]

    def dated(self, score: Score) -> str:
        """A score with its day."""
        shown = words.number(score.score, self.course.decimals)
        return words.say("scores.on", score=shown, day=trade.day(score.day))

    @property
    def change(self) -> str:
        """By how much the last is above or below the first."""
        by = self.course.against_first(self.course.scores[-1])
        if by is None:
            return words.say("scores.only")
        if by == 0:
            return words.say("scores.same")
        key = "scores.higher" if by > 0 else "scores.lower"
        return words.say(key, by=words.number(abs(by), self.course.decimals))

    @property
    def points(self) -> list[Point]:
        """The scores, to be drawn."""
        return [Point(s.id, s.day, s.score) for s in self.course.scores]


def number_words(value: float) -> str:
    """A number with the decimals that it needs, as the user's country writes it."""
    return words.number(value, decimals_of(value))


class ScoreModel(RowsModel):
    """The questionnaires of one person."""

    columns = ("name", "first", "last", "change", "trend")
    heads = "scores.col"

    def __init__(self) -> None:
        super().__init__()
        self.rows: list[CourseRow] = []

    def show(self, courses: Sequence[Course]) -> None:
        """Show others."""
        self.beginResetModel()
        self.rows = [CourseRow(c) for c in courses]
        self.endResetModel()

    def data(self, index: Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        """Words, points, and what a screen reader says."""
        if not index.isValid():
            return None
        row, column = self.rows[index.row()], index.column()
        if role == Qt.ItemDataRole.DisplayRole:
            return "" if column == CHART_COLUMN else row.cells[column]
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return ", ".join(row.cells) if column == 0 else row.cells[column]
        if role == Qt.ItemDataRole.ToolTipRole:
            return as_tip(row.cells[column])
        return row.points if role == POINTS_ROLE else None


class ScoreTable(Table):
    """The questionnaires of one person."""

    def __init__(self) -> None:
        super().__init__(words.say("scores.tab"))
        self.scores = ScoreModel()
        self.setModel(self.scores)
        self._charts = ChartDelegate(self)
        self.setItemDelegateForColumn(CHART_COLUMN, self._charts)
        header = self.horizontalHeader()
        for column in range(CHART_COLUMN):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(CHART_COLUMN, QHeaderView.ResizeMode.Stretch)
        self.set_percent(100)

    def show_courses(self, courses: Sequence[Course]) -> None:
        """Show the questionnaires."""
        self.scores.show(courses)
        self.arrange()

    def set_percent(self, percent: int) -> None:
        """Fewer rows than in other tables: a form stands over it."""
        super().set_percent(percent)
        self.setMinimumHeight(5 * self.fontMetrics().height())

    def arrange(self) -> None:
        """Room for a chart in each row."""
        line = self.fontMetrics().height()
        self.horizontalHeader().setMinimumSectionSize(5 * line)
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.verticalHeader().setDefaultSectionSize(round(1.7 * line))
