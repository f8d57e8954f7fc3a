"""The key of a trace: of what lies behind and above its lines, only what there is in it."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from collections.abc import Set

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QPalette, QPen, QPolygonF
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from ui import words
from ui.desk.moments import (
    all_marks_of,
    doubts_of,
    events_of,
    gaps_of,
    pauses_of,
    repetitions_of,
)
from ui.desk.session_data import SessionView, SetView
from ui.widgets.basic import Words

#: Patterns of the stretches, here and in the drawing.
PATTERNS = {
    "not_valid": Qt.BrushStyle.BDiagPattern,
    "pause": Qt.BrushStyle.Dense7Pattern,
    "gap": Qt.BrushStyle.FDiagPattern,
    "doubt": Qt.BrushStyle.DiagCrossPattern,
}
#: How strong the band of every other repetition is.
BAND = 0.16
KINDS = ("repetition", "event", *PATTERNS, "mark")


def kinds_in(view: SessionView, shown: SetView, not_valid: Set[int]) -> list[str]:
    """What is drawn of a set, in the order of the key."""
    there = {
        "repetition": bool(repetitions_of(shown)),
        "event": bool(events_of(shown)),
        "not_valid": bool(not_valid),
        "pause": bool(pauses_of(view, shown)),
        "gap": bool(gaps_of(view, shown)),
        "doubt": bool(doubts_of(view, shown)),
        "mark": bool(all_marks_of(view.summary)),
    }
    return [kind for kind in KINDS if there[kind]]


def band_colour(palette: QPalette) -> QColor:
    """The ground of every other repetition."""
    colour = QColor(palette.color(QPalette.ColorRole.Mid))
    colour.setAlphaF(BAND)
    return colour


def pattern_of(kind: str, palette: QPalette) -> QBrush:
    """The brush of a stretch."""
    role = QPalette.ColorRole.Accent if kind == "not_valid" else QPalette.ColorRole.Mid
    return QBrush(palette.color(role), PATTERNS[kind])


class _Swatch(QWidget):
    """A piece of a stretch, a bar or a mark, as it is drawn."""

    def __init__(self, kind: str) -> None:
        super().__init__()
        self._kind = kind
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Preferred)

    def sizeHint(self) -> QSize:
        """A small piece."""
        return QSize(28, 14)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter, role = QPainter(self), QPalette.ColorRole
        palette, ink = self.palette(), self.palette().color(QPalette.ColorRole.WindowText)
        box = QRectF(2, self.height() / 2 - 7, self.width() - 4, 14)
        if self._kind == "event":
            painter.fillRect(box.adjusted(0, 5, 0, -5), palette.color(role.Accent))
            return
        if self._kind == "mark":
            x = round(box.center().x())
            painter.setPen(QPen(ink, 2.0))
            painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()))
            painter.setBrush(ink)
            top, foot = QPointF(x, box.top()), QPointF(x, box.top() + 7)
            painter.drawPolygon(QPolygonF([top, QPointF(x + 9, box.top() + 3.5), foot]))
            return
        painter.fillRect(box, palette.color(role.Base))
        band = self._kind == "repetition"
        painter.fillRect(box, band_colour(palette) if band else pattern_of(self._kind, palette))
        painter.setPen(QPen(palette.color(role.Mid), 0.8))
        painter.drawRect(box)


class KeyPart(QWidget):
    """One kind with its words."""

    def __init__(self, kind: str) -> None:
        super().__init__()
        self.kind = kind
        self.words = Words(words.say(f"desk.key.{kind}"), "desk", soft=True)
        self.words.setWordWrap(False)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(_Swatch(kind))
        row.addWidget(self.words)
