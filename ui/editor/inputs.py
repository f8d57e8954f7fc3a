"""What a field is edited with. Each shows a value of the plan's data and hands over another one.

What is typed is taken over when the field is left or Enter is pressed, as one step. It is
taken over however wrong it is, so that the plan's own rules can say what is wrong with it.
"""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite
from typing import Any

from PySide6.QtCore import QEvent, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QKeyEvent,
    QKeySequence,
    QPainter,
    QPaintEvent,
    QPen,
    QWheelEvent,
)
from PySide6.QtWidgets import QComboBox, QLineEdit, QPlainTextEdit

from tracker.plan.draft import UNSET
from ui import theme
from ui.widgets.basic import Button, draw_focus

#: What undo and redo of the whole window answer to, in place of a field's own.
_STEPS = (QKeySequence.StandardKey.Undo, QKeySequence.StandardKey.Redo)


def shown(value: Any) -> str:
    """A value as it is typed."""
    if value is UNSET or value is None:
        return ""
    if isinstance(value, float) and value.is_integer():
        return str(int(value))
    return str(value)


def number_of(text: str) -> Any:
    """A typed number; nothing is ``UNSET``, and what is none stays as it was typed."""
    text = text.strip()
    if not text:
        return UNSET
    try:
        return int(text)
    except ValueError:
        pass
    try:
        found = float(text.replace(",", "."))
    except ValueError:
        return text
    return found if isfinite(found) else text


def is_step_key(event: QEvent) -> bool:
    """Whether a key belongs to the window's undo and redo."""
    key = event.type() == QEvent.Type.ShortcutOverride
    return key and isinstance(event, QKeyEvent) and any(event.matches(k) for k in _STEPS)


class LineInput(QLineEdit):
    """One line: words, a number (arrow keys change it), or a day.

    Parameters
    ----------
    kind
        ``text``, ``number`` or ``day``.
    empty
        What an empty line stands for.
    step
        By how much the arrow keys change a number.
    """

    edited = Signal(object)

    def __init__(self, kind: str = "text", empty: Any = UNSET, step: float = 1.0) -> None:
        super().__init__()
        self.kind, self._empty, self._step = kind, empty, step
        self._was = ""
        self.setFrame(False)
        self.editingFinished.connect(self.commit)

    def show_value(self, value: Any) -> None:
        """Show a value, unless something else is being typed."""
        if not self.pending:
            self.setText(shown(value))
            self._was = self.text()

    @property
    def pending(self) -> bool:
        """Whether something is typed that has not been taken over."""
        return self.text() != self._was

    def commit(self) -> None:
        """Take over what is typed."""
        if self.pending:
            self._was = self.text()
            self.edited.emit(self.value)

    def revert(self) -> None:
        """Back to what stood there."""
        self.setText(self._was)

    @property
    def value(self) -> Any:
        """What is typed, as a value."""
        if self.kind == "number":
            return number_of(self.text())
        return self.text().strip() or self._empty

    def event(self, event: QEvent) -> bool:
        """Leave undo and redo to the window."""
        if is_step_key(event):
            event.ignore()
            return False
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Up and down change a number."""
        steps = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}
        found = self.value
        if self.kind == "number" and event.key() in steps and isinstance(found, int | float):
            changed = found + steps[Qt.Key(event.key())] * self._step
            self.setText(shown(round(changed, 4)))
            self.commit()
            return
        super().keyPressEvent(event)

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self.setFont(theme.font("desk", percent))
        metrics = self.fontMetrics()
        self.setMinimumHeight(metrics.height() + theme.M)
        if self.kind != "text":
            self.setFixedWidth(metrics.averageCharWidth() * 14 + theme.M)


class AreaInput(QPlainTextEdit):
    """A few lines of words; Tab leaves it."""

    edited = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self._was = ""
        self.setTabChangesFocus(True)
        self.setUndoRedoEnabled(False)
        self.setFrameShape(QPlainTextEdit.Shape.NoFrame)

    def show_value(self, value: Any) -> None:
        """Show a value, unless something else is being typed."""
        if not self.pending and shown(value) != self._was:
            self.setPlainText(shown(value))
            self._was = self.toPlainText()

    @property
    def pending(self) -> bool:
        """Whether something is typed that has not been taken over."""
        return self.toPlainText() != self._was

    def commit(self) -> None:
        """Take over what is typed."""
        if self.pending:
            self._was = self.toPlainText()
            self.edited.emit(self._was.strip())

    def revert(self) -> None:
        """Back to what stood there."""
        self.setPlainText(self._was)

    def event(self, event: QEvent) -> bool:
        """Leave undo and redo to the window."""
        if is_step_key(event):
            event.ignore()
            return False
        return super().event(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Who leaves it has finished."""
        super().focusOutEvent(event)
        self.commit()

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self.setFont(theme.font("desk", percent))
        self.setFixedHeight(3 * self.fontMetrics().lineSpacing() + theme.M)


class ChoiceInput(QComboBox):
    """One of some values; the wheel doesn't change it while one scrolls past."""

    edited = Signal(object)

    def __init__(self, default: Any = None) -> None:
        super().__init__()
        self._default = default
        self._choices: list[tuple[Any, str]] = []
        self._value: Any = UNSET
        # As wide as there is room; the words of the list are never cut.
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.activated.connect(self._take)

    pending = False

    def commit(self) -> None:
        """A choice is taken over at once."""

    def revert(self) -> None:
        """There is nothing half done."""

    def set_choices(self, choices: Sequence[tuple[Any, str]]) -> None:
        """Offer other values."""
        if list(choices) == self._choices:
            return
        self._choices = list(choices)
        self.clear()
        self.addItems([text for _, text in choices])
        longest = max((len(text) for _, text in choices), default=4)
        self.setMinimumContentsLength(min(longest, 34))
        self.show_value(self._value)

    def show_value(self, value: Any) -> None:
        """Show a value; where it is left out, what then holds."""
        self._value = value
        values = [v for v, _ in self._choices]
        if value is None or value is UNSET:
            value = UNSET if UNSET in values else self._default
        # 1 is not true here.
        same = (k for k, v in enumerate(values) if v is value or (v == value and v is not UNSET))
        self.setCurrentIndex(next(same, -1))

    def _take(self, index: int) -> None:
        value = self._choices[index][0]
        before = self._value
        self.show_value(before)
        if index != self.currentIndex():
            self.edited.emit(value)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Let the page scroll."""
        event.ignore()

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self.setFont(theme.font("desk", percent))
        self.setMinimumHeight(self.fontMetrics().height() + theme.M)


class Tick(Button):
    """Yes or no: a box in front of its words, with a tick in it when it is yes."""

    edited = Signal(object)
    wraps = False

    def __init__(self, text: str, no: Any = False, name: str = "") -> None:
        super().__init__(text, "small", name)
        self.role = "desk"
        self._no = no
        self.setCheckable(True)
        self.clicked.connect(lambda on: self.edited.emit(True if on else self._no))

    pending = False

    def commit(self) -> None:
        """It is taken over at once."""

    def revert(self) -> None:
        """There is nothing half done."""

    def show_value(self, value: Any) -> None:
        """Show it."""
        self.setChecked(value is True)

    def sizeHint(self) -> QSize:
        """Room for box and words."""
        metrics = self.fontMetrics()
        width = metrics.horizontalAdvance(self.text()) + metrics.height() + theme.M + theme.L
        return QSize(width, max(44, metrics.height() + theme.M))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        palette = self.palette()
        side = self.fontMetrics().ascent()
        box = QRectF(theme.S, (self.height() - side) / 2, side, side)
        at = box.right() + theme.S
        rest = QRectF(at, 0, self.width() - at, self.height())
        if self.layoutDirection() == Qt.LayoutDirection.RightToLeft:
            # In front of its words where one reads from the right, too.
            box.moveRight(self.width() - theme.S)
            rest.moveLeft(0)
        painter.setBrush(palette.base())
        painter.setPen(QPen(palette.windowText().color(), 2))
        painter.drawRoundedRect(box, 3, 3)
        if self.isChecked():
            painter.setPen(QPen(palette.highlight().color(), theme.LINE))
            left, middle, right = box.left() + 3, box.left() + side * 0.42, box.right() - 2
            painter.drawLine(int(left), int(box.center().y()), int(middle), int(box.bottom() - 3))
            painter.drawLine(int(middle), int(box.bottom() - 3), int(right), int(box.top() + 3))
        painter.setPen(palette.windowText().color())
        painter.setFont(self.font())
        painter.drawText(
            rest, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, self.text()
        )
        if self.hasFocus():
            draw_focus(painter, QRectF(self.rect()), palette)
