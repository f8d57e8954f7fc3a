"""A statement that can be marked as true."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPalette, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy

from ui import theme
from ui.widgets.basic import Button, draw_card, draw_focus


class Mark(Button):
    """A box in front of words that wrap; a hook in it when it is marked.

    The arrow keys go to the next one, space and Enter mark it.
    """

    def __init__(self, text: str) -> None:
        super().__init__(text)
        self.setCheckable(True)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def hasHeightForWidth(self) -> bool:
        """Words wrap."""
        return True

    def heightForWidth(self, width: int) -> int:
        """High enough for the words, and for an unsteady hand."""
        space = QRect(0, 0, max(width - self._lead() - theme.M, 1), 10_000)
        words = self.fontMetrics().boundingRect(space, _WRAP, self.text())
        return max(theme.BUTTON_HEIGHT, words.height() + theme.M)

    def sizeHint(self) -> QSize:
        """In one line, if there is room."""
        width = self._lead() + self.fontMetrics().horizontalAdvance(self.text()) + theme.L
        return QSize(width, self.heightForWidth(width))

    def minimumSizeHint(self) -> QSize:
        """As narrow as its longest word."""
        metrics = self.fontMetrics()
        longest = max(metrics.horizontalAdvance(word) for word in self.text().split())
        return QSize(self._lead() + longest + theme.L, theme.BUTTON_HEIGHT)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Up and down go from one to the other."""
        if event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self.focusNextPrevChild(event.key() == Qt.Key.Key_Down)
            return
        super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        palette, role = self.palette(), QPalette.ColorRole
        line = palette.color(role.Accent if self.isChecked() else role.Mid)
        card = draw_card(painter, self, line)
        side = self._side()
        mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        left = card.right() - theme.M - side if mirrored else card.left() + theme.M
        box = QRectF(left, card.center().y() - side / 2, side, side)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(box)
        painter.setPen(palette.color(role.ButtonText))
        painter.setFont(self.font())
        before, after = self._lead() - theme.FOCUS_WIDTH, theme.S
        if mirrored:
            before, after = after, before
        painter.drawText(card.adjusted(before, 0, -after, 0), _WRAP_MIDDLE, self.text())
        if self.isChecked():
            painter.setPen(QPen(palette.color(role.ButtonText), 4))
            hook = ((0.2, 0.55), (0.42, 0.78), (0.8, 0.25))
            painter.drawPolyline(
                QPolygonF([QPointF(box.x() + x * side, box.y() + y * side) for x, y in hook])
            )
        if self.hasFocus():
            draw_focus(painter, QRectF(self.rect()), palette)

    def _side(self) -> int:
        return self.fontMetrics().capHeight() + theme.S

    def _lead(self) -> int:
        return theme.FOCUS_WIDTH + 2 * theme.M + self._side()


_WRAP = int(Qt.TextFlag.TextWordWrap)
_WRAP_MIDDLE = _WRAP | int(Qt.AlignmentFlag.AlignVCenter) | int(Qt.AlignmentFlag.AlignLeft)
