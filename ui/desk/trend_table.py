"""The trends of one person: a row a figure, under the name of its exercise."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QObject, QRectF, Qt
from PySide6.QtGui import QFont, QPainter, QPalette, QPixmap
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from tracker.records.marks import MarkedSets, marked_in
from tracker.records.over_time import End, ends_of
from tracker.records.series import Series
from tracker.records.trends import Change, Point, Spec
from ui import theme, words
from ui.desk import trade
from ui.desk.chart import draw_chart
from ui.desk.small import as_tip
from ui.desk.table import Index, Table
from ui.desk.table_model import RowsModel

POINTS_ROLE = int(Qt.ItemDataRole.UserRole) + 1
#: Last, so that with large text it is the chart and not the words that is out of sight.
CHART_COLUMN = 4


@dataclass(frozen=True)
class Heading:
    """A row that names the exercise of those below it."""

    text: str


@dataclass(frozen=True)
class TrendRow:
    """A row of the trends."""

    series: Series
    change: Change
    affected: bool

    @property
    def cells(self) -> list[str]:
        """What stands in its columns."""
        name = trade.figure(self.series)
        if self.affected:
            name = words.say("desk.affected", figure=name)
        spec = self.series.spec
        start, end = ends_of(self.series, self.change)
        first = "" if start is None else end_words(spec, start)
        if self.change.since is not None and start is not None:
            first = words.say("desk.baseline.mean", value=first)
        last = end_words(spec, end)
        return [name, first, last, self.verdict, self.chart_words]

    @property
    def spoken(self) -> list[str]:
        """The same for who hears it, or looks closer."""
        return [*self.cells[:3], self.whole_verdict, self.chart_words]

    @property
    def chart_words(self) -> str:
        """What the chart shows, for who doesn't see it."""
        points = self.series.points
        return words.say(
            "desk.chart",
            measured=sum(p.value is not None for p in points),
            all=len(points),
            doubt=sum(p.value is not None and bool(p.doubts) for p in points),
        )

    @property
    def whole_verdict(self) -> str:
        """The same with what it was compared with: too long for a column."""
        if self.change.since is None:
            return self.verdict
        day = trade.day(self.change.since)
        return words.say("desk.change.since", text=self.verdict, day=day)

    @property
    def verdict(self) -> str:
        """Whether it changed."""
        change = self.change
        kept = change.verdict == "no_change" and change.limit != "error"
        key = change.limit if kept else change.verdict
        least = trade.least_told(self.series, change)
        text = words.say(f"desk.change.{key}", least=least, count=change.count)
        if change.asked_other:
            text = words.say("desk.change.other_dose", text=text)
        if change.left_out:
            text = words.say("desk.change.left_out", text=text, count=change.left_out)
        return text


def end_words(spec: Spec, end: End) -> str:
    """One value, and whether it is in doubt."""
    text = trade.value(spec, end.value)
    return words.say("desk.in_doubt", value=text) if end.doubtful else text


#: What a therapist asks first stands first.
ORDER = (
    "on_target",
    "clear",
    "still_deg",
    "sway_mm",
    "held_s",
    "dizziness_before",
    "dizziness_after",
    "nausea_before",
    "nausea_after",
    "unsteadiness_before",
    "unsteadiness_after",
    "settled_minutes",
    "repetitions",
    "amplitude_deg",
    "amplitude_mm",
    "vergence_change_deg",
    "swing_mm",
    "peak_speed_deg_s",
    "peak_speed_mm_s",
    "tempo_bpm",
)


def trend_rows(
    series: Sequence[Series],
    affected_side: str,
    *,
    only_changed: bool = False,
    marked: MarkedSets | None = None,
) -> list[Heading | TrendRow]:
    """Rows of the table, each exercise under its heading, which tells of marked repetitions."""
    rows: list[Heading | TrendRow] = []
    at: tuple[str, str] | None = None
    exercises = list(dict.fromkeys((s.exercise, s.form) for s in series))
    for one in sorted(series, key=lambda s: _order(exercises, s)):
        if only_changed and one.change.verdict not in ("rose", "fell"):
            continue
        where = (one.exercise, one.form)
        if where != at:
            at = where
            name = trade.exercise(*where) if one.exercise else words.say("desk.whole")
            count = marked_in(one, marked or {})
            told = words.say("desk.trends.marked", what=name, count=count)
            rows.append(Heading(told if count else name))
        affected = bool(one.side) and one.side == affected_side
        rows.append(TrendRow(one, one.change, affected))
    return rows


def _order(exercises: Sequence[tuple[str, str]], one: Series) -> tuple[int, int]:
    """Exercises as they came up, the whole session last: its lines are on top already."""
    at = exercises.index((one.exercise, one.form)) if one.exercise else len(exercises)
    return at, ORDER.index(one.figure) if one.figure in ORDER else len(ORDER)


class TrendModel(RowsModel):
    """The trends."""

    columns = ("figure", "first", "last", "change", "trend")
    heads = "desk.col"

    def __init__(self) -> None:
        super().__init__()
        self.rows: list[Heading | TrendRow] = []
        self.bold = QFont()

    def show(self, rows: Sequence[Heading | TrendRow]) -> None:
        """Show others."""
        self.beginResetModel()
        self.rows = list(rows)
        self.endResetModel()

    def data(self, index: Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        """Words, points, and what a screen reader says."""
        if not index.isValid():
            return None
        row, column = self.rows[index.row()], index.column()
        if isinstance(row, Heading):
            if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
                return row.text if column == 0 else ""
            return self.bold if role == Qt.ItemDataRole.FontRole else None
        if role == Qt.ItemDataRole.DisplayRole:
            return "" if column == CHART_COLUMN else row.cells[column]
        if role == Qt.ItemDataRole.AccessibleTextRole:
            told = row.spoken
            return ", ".join(told) if column == 0 else told[column]
        if role == Qt.ItemDataRole.ToolTipRole:
            return as_tip(row.spoken[column])
        if role == Qt.ItemDataRole.FontRole and row.change.verdict in ("rose", "fell"):
            return self.bold
        return row.series.points if role == POINTS_ROLE else None


def chosen_palette(palette: QPalette) -> QPalette:
    """Colours of a chart in the row that is chosen."""
    made, role = QPalette(palette), QPalette.ColorRole
    for own in (role.Highlight, role.Mid):
        made.setColor(own, palette.color(role.HighlightedText))
    return made


class ChartDelegate(QStyledItemDelegate):
    """Draws the points of a row: once, and then the same picture as long as it is scrolled."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        #: Row and whether it is chosen -> of what else its picture was made, and the picture.
        self.drawn: dict[tuple[int, bool], tuple[tuple[Any, ...], QPixmap]] = {}

    def forget(self) -> None:
        """Other rows are shown."""
        self.drawn.clear()

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw them over the row's own ground."""
        super().paint(painter, option, index)
        points: Sequence[Point] | None = index.data(POINTS_ROLE)
        if not points:
            return
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        palette = chosen_palette(option.palette) if chosen else option.palette
        size, ratio = option.rect.size(), painter.device().devicePixelRatioF()
        # The palette of a chosen row is a new one each time.
        made_of = (size.width(), size.height(), ratio, option.palette.cacheKey())
        known = self.drawn.get((index.row(), chosen))
        if known is None or known[0] != made_of:
            made = QPixmap(size * ratio)
            made.setDevicePixelRatio(ratio)
            made.fill(Qt.GlobalColor.transparent)
            into = QPainter(made)
            draw_chart(into, QRectF(0, 0, size.width(), size.height()), points, palette)
            into.end()
            known = self.drawn[(index.row(), chosen)] = (made_of, made)
        painter.drawPixmap(option.rect.topLeft(), known[1])


def _what(row: Heading | TrendRow) -> tuple[str, ...]:
    """What a row tells of, whatever its figures are."""
    if isinstance(row, Heading):
        return (row.text,)
    series = row.series
    return series.exercise, series.form, series.figure, series.side


class TrendTable(Table):
    """Trends of each exercise."""

    stretching = (CHART_COLUMN,)
    shares = (0.32, 0.19, 0.19, 0.30, 0.40)
    squeezed = (0.28, 0.13, 0.13, 0.28, 0.18)

    def __init__(self) -> None:
        super().__init__(words.say("desk.trends"))
        self.trends = TrendModel()
        self.setModel(self.trends)
        self.charts = ChartDelegate(self)
        self.setItemDelegateForColumn(CHART_COLUMN, self.charts)
        self.set_percent(100)

    def show_rows(self, rows: Sequence[Heading | TrendRow], *, again: bool = False) -> None:
        """Show trends; of the same person the row that was chosen stays chosen."""
        at = self.currentIndex().row()
        was = _what(self.trends.rows[at]) if again and at >= 0 else None
        self.charts.forget()
        self.trends.show(rows)
        self.arrange()
        known = [_what(r) for r in self.trends.rows] if was is not None else []
        self.choose_again(known.index(was) if was in known else None)

    def arrange(self) -> None:
        """Room for a chart in each row, and headings across the whole width."""
        self.trends.bold = theme.font("desk", self.percent, bold=True)
        line = self.fontMetrics().height()
        self.horizontalHeader().setMinimumSectionSize(3 * line)
        self.clearSpans()
        narrow = self.fit_columns()
        for k, row in enumerate(self.trends.rows):
            self.setRowHeight(k, round(1.7 * line))
            if isinstance(row, Heading):
                self.setSpan(k, 0, 1, 5)
        if narrow:
            self.resizeRowsToContents()
            for k in range(len(self.trends.rows)):
                # A chart needs a little more than a line of words.
                self.setRowHeight(k, max(self.rowHeight(k), round(1.4 * line)))
