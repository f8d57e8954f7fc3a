"""Texts around a target, measured by their ink."""

from __future__ import annotations

from PySide6.QtCore import QPointF
from PySide6.QtGui import QFont, QFontMetricsF, QPainter

#: A tempo this far off the asked one gets an arrow (common practice: a tenth).
_TEMPO_SHARE = 0.1


def draw_tight(painter: QPainter, font: QFont, text: str, at: QPointF, *, above: bool) -> None:
    """Text centred at a point, measured by its ink and not by its line."""
    metrics = QFontMetricsF(font)
    painter.setFont(font)
    baseline = at.y() if above else at.y() + metrics.capHeight()
    painter.drawText(QPointF(at.x() - metrics.horizontalAdvance(text) / 2, baseline), text)


def draw_beside(painter: QPainter, font: QFont, text: str, room: float, sign: int) -> None:
    """Text at a distance right (``sign`` +1) or left (-1) of the middle."""
    metrics = QFontMetricsF(font)
    width = metrics.horizontalAdvance(text)
    painter.setFont(font)
    x = room if sign > 0 else -room - width
    painter.drawText(QPointF(x, metrics.capHeight() / 2), text)


def tempo_arrow(tempo: float | None, asked: float | None) -> str:
    """An arrow up where a tempo is to rise, down where it is to fall, else nothing."""
    if tempo is None or asked is None or abs(tempo - asked) <= _TEMPO_SHARE * asked:
        return ""
    return " ▲" if tempo < asked else " ▼"
