"""Charts on paper: lines, marks and labels as vectors and text."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from ui.documents.charts import Band, Item, Label, Line, Mark
from ui.documents.pdf_text import UNIT, font_of_size

GREY = QColor("#d8d8d8")


def draw_item(painter: QPainter, item: Item) -> None:
    """Draw a line, band, label or mark of a chart."""
    match item:
        case Line(x1, y1, x2, y2, width, dashed):
            set_pen(painter, width, dashed=dashed)
            painter.drawLine(line(x1, y1, x2, y2))
        case Band(x, y, width, height):
            painter.fillRect(rect(x, y, width, height), GREY)
        case Label():
            _draw_label(painter, item)
        case Mark():
            _draw_mark(painter, item)


def _draw_label(painter: QPainter, label: Label) -> None:
    painter.setPen(Qt.GlobalColor.black)
    painter.setFont(font_of_size(label.size))
    width = painter.fontMetrics().horizontalAdvance(label.text) / UNIT
    shift = {"start": 0.0, "middle": width / 2, "end": width}[label.anchor]
    painter.drawText(QPointF((label.x - shift) * UNIT, label.y * UNIT), label.text)


def _draw_mark(painter: QPainter, mark: Mark) -> None:
    half = mark.size / 2
    around = rect(mark.x - half, mark.y - half, mark.size, mark.size)
    set_pen(painter, 0.7)
    if mark.kind == "circle":
        painter.setBrush(Qt.GlobalColor.black)
        painter.drawEllipse(around)
    elif mark.kind == "square":
        painter.setBrush(Qt.GlobalColor.white)
        painter.drawRect(around)
    else:
        painter.drawLine(QLineF(around.topLeft(), around.bottomRight()))
        painter.drawLine(QLineF(around.bottomLeft(), around.topRight()))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def set_pen(painter: QPainter, width: float, *, dashed: bool = False) -> None:
    """Draw in black lines of a width in points from now on."""
    pen = QPen(Qt.GlobalColor.black, width * UNIT)
    if dashed:
        pen.setDashPattern([5.0, 5.0])
    painter.setPen(pen)


def rect(x: float, y: float, width: float, height: float) -> QRectF:
    """A rectangle of points in device units."""
    return QRectF(x * UNIT, y * UNIT, width * UNIT, height * UNIT)


def line(x1: float, y1: float, x2: float, y2: float) -> QLineF:
    """A line of points in device units."""
    return QLineF(x1 * UNIT, y1 * UNIT, x2 * UNIT, y2 * UNIT)
