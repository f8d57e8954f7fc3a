"""A scale from 0 to 10: arrows, digits, or a click."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QWidget

from ui import theme, words
from ui.widgets.basic import Button

HIGHEST = 10
_MOVES = {
    Qt.Key.Key_Left: -1,
    Qt.Key.Key_Down: -1,
    Qt.Key.Key_Right: 1,
    Qt.Key.Key_Up: 1,
}


class Step(Button):
    """One number of the scale; it leaves all keys but space to the scale."""

    def __init__(self, value: int) -> None:
        name = words.say("score.value", value=words.number(value))
        super().__init__(words.number(value), "plain", name)
        self.setCheckable(True)
        # Enter goes on with what is chosen; it must not choose.
        self.setAutoDefault(False)
        self.toggled.connect(self._look)

    def _look(self, chosen: bool) -> None:
        self.kind = "main" if chosen else "plain"
        self.update()

    def sizeHint(self) -> QSize:
        """All eleven alike, in one row."""
        metrics = self.fontMetrics()
        width = metrics.horizontalAdvance(words.number(HIGHEST)) + 2 * theme.S + theme.M
        return QSize(max(width, theme.BUTTON_HEIGHT), max(72, metrics.height() + theme.L))

    def minimumSizeHint(self) -> QSize:
        """Where there is less room, all eleven give way alike."""
        metrics = self.fontMetrics()
        width = metrics.horizontalAdvance(words.number(HIGHEST)) + 3 * theme.FOCUS_WIDTH
        return QSize(max(width, theme.BUTTON_HEIGHT), self.sizeHint().height())

    def wrapped_size(self, width: int) -> QSize:
        """Its size where it can be no wider than ``width`` px."""
        return self.sizeHint().boundedTo(QSize(width, 10_000)).expandedTo(self.minimumSizeHint())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Space chooses; the rest is the scale's."""
        if event.key() == Qt.Key.Key_Space:
            super().keyPressEvent(event)
        else:
            event.ignore()


class Scale(QWidget):
    """Eleven numbers in a row, none chosen at first.

    Arrows move, Home and End go to the ends, a digit chooses itself, and 1 with 0
    right after it is 10. ``confirmed`` is sent by Enter once one is chosen.
    """

    changed = Signal(int)
    confirmed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._one_typed = False
        self._group = QButtonGroup(self)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(theme.S)
        for value in range(HIGHEST + 1):
            step = Step(value)
            self._group.addButton(step, value)
            row.addWidget(step)
        self._group.idToggled.connect(self._toggled)

    @property
    def value(self) -> int | None:
        """The number chosen, None while there is none."""
        chosen = self._group.checkedId()
        return chosen if chosen >= 0 else None

    def choose(self, value: int) -> None:
        """Choose a number, and give it the keys."""
        step = self._group.button(min(max(value, 0), HIGHEST))
        step.setChecked(True)
        step.setFocus()

    def clear(self) -> None:
        """Choose none."""
        self._one_typed = False
        self._group.setExclusive(False)
        for step in self._group.buttons():
            step.setChecked(False)
        self._group.setExclusive(True)

    def take_keys(self) -> None:
        """The first number, or the one chosen, gets the keys."""
        self._group.button(self.value or 0).setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows, digits, ends, Enter."""
        key, typed = event.key(), event.text()
        was_one, self._one_typed = self._one_typed, False
        if key in _MOVES:
            value, move = self.value, _MOVES[Qt.Key(key)]
            # Where one reads from the right, the larger numbers stand at the left.
            mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
            if mirrored and key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
                move = -move
            self.choose(0 if value is None else value + move)
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End):
            self.choose(0 if key == Qt.Key.Key_Home else HIGHEST)
        elif len(typed) == 1 and typed.isdecimal():
            # Digits of any script; a keyboard's own.
            digit = int(typed)
            self.choose(HIGHEST if was_one and digit == 0 else digit)
            self._one_typed = digit == 1
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.value is not None:
            if not event.isAutoRepeat():
                self.confirmed.emit()
        else:
            super().keyPressEvent(event)

    def _toggled(self, value: int, chosen: bool) -> None:
        if chosen:
            self.changed.emit(value)
