"""What holds other widgets: a ring for what has the keys, and a page as high as its words."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from ui import theme
from ui.widgets.basic import draw_focus


class Ring(QWidget):
    """Holds a widget, with room for the ring around it."""

    def __init__(self, inside: QWidget) -> None:
        super().__init__()
        self._inside = inside
        column = QVBoxLayout(self)
        edge = theme.FOCUS_WIDTH
        column.setContentsMargins(edge, edge, edge, edge)
        column.addWidget(inside)
        inside.installEventFilter(self)
        self.setSizePolicy(inside.sizePolicy())

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        """Draw anew when the keys come or go, and go where the widget goes."""
        if event.type() in (QEvent.Type.FocusIn, QEvent.Type.FocusOut):
            self.update()
        if event.type() in (QEvent.Type.HideToParent, QEvent.Type.ShowToParent):
            self.setVisible(not self._inside.isHidden())
        return False

    def paintEvent(self, _event: QPaintEvent) -> None:
        """The ring."""
        if self._inside.hasFocus():
            painter = QPainter(self)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            draw_focus(painter, QRectF(self.rect()), self.palette())


class AsHighAsWords(QWidget):
    """The inside of what scrolls: as high as its words at the width that they have."""

    def minimumSizeHint(self) -> QSize:
        """Let the words alone say how high; a narrower guess would make it too high."""
        return QSize(1, 1)
