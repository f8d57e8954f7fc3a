"""Practice day by day: a column a day, a box a bout."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from datetime import timedelta

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from tracker.records.adherence import Adherence, Bouts
from ui import theme, words
from ui.desk import trade

DAYS = 42


class PracticeStrip(QWidget):
    """The last weeks; Mondays carry their date."""

    def __init__(self) -> None:
        super().__init__()
        self._found: Adherence | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.set_percent(100)

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self.setFont(theme.font("desk", percent))
        self.updateGeometry()

    def show_practice(self, found: Adherence | None) -> None:
        """Show somebody's practice."""
        self._found = found
        text = "" if found is None else trade.practice(found)
        self.setAccessibleName(words.say("desk.strip", text=text))
        self.updateGeometry()
        self.update()

    @property
    def _rows(self) -> int:
        if self._found is None:
            return 2
        most = max((b.all for b in self._found.days.values()), default=1)
        return min(max(self._found.bouts_asked or 1, most, 1), 6)

    def sizeHint(self) -> QSize:
        """Room for the boxes and a line of dates."""
        line = self.fontMetrics().height()
        return QSize(300, self._rows * 13 + line + 4)

    def minimumSizeHint(self) -> QSize:
        """As high as it wants to be."""
        return QSize(100, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        if self._found is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        found, rows = self._found, self._rows
        wide = min(self.width() / DAYS, 26.0)
        last_date_x = -1e9
        for k in range(DAYS):
            day = found.to_day - timedelta(days=DAYS - 1 - k)
            left = k * wide
            bouts, asked = found.days.get(day, Bouts()), found.asked_on(day)
            for n in range(max(bouts.all, asked)):
                if n < rows:
                    box = QRectF(left + 1, (rows - 1 - n) * 13.0 + 1, wide - 3, 10)
                    self._box(painter, box, n, bouts)
            if day.weekday() == 0:
                text = trade.day(day, found.to_day.year)
                length = self.fontMetrics().horizontalAdvance(text)
                if left > last_date_x and left + length <= self.width():
                    self._date(painter, left, rows * 13.0, text)
                    last_date_x = left + length + theme.S

    def _box(self, painter: QPainter, box: QRectF, number: int, bouts: Bouts) -> None:
        role = QPalette.ColorRole
        ink, line = self.palette().color(role.Highlight), self.palette().color(role.Mid)
        done = number < bouts.all
        pen = QPen(ink if done else line, 1.2)
        if not done:
            pen.setStyle(Qt.PenStyle.DotLine)
        painter.setPen(pen)
        painter.setBrush(ink if number < bouts.measured else Qt.BrushStyle.NoBrush)
        painter.drawRect(box)
        if done and number >= bouts.measured:
            painter.setBrush(ink)
            painter.drawPolygon(
                QPolygonF([QPointF(box.bottomLeft()), box.bottomRight(), box.topLeft()])
            )

    def _date(self, painter: QPainter, left: float, top: float, text: str) -> None:
        role = QPalette.ColorRole
        painter.setPen(QPen(self.palette().color(role.Mid), 1))
        painter.drawLine(QPointF(left, top), QPointF(left, top + 5))
        painter.setPen(self.palette().color(role.WindowText))
        painter.setFont(self.font())
        painter.drawText(QPointF(left + 3, top + self.fontMetrics().ascent() + 2), text)
