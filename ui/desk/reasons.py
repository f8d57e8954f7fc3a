"""The lines on top of a person's page: why to look, each with its session to open."""

# ruff: noqa: N802 - the names are Qt's

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QVBoxLayout, QWidget

from tracker.records.attention import Reason
from ui import theme, words
from ui.desk import trade
from ui.desk.small import desk_words, small_button
from ui.desk.text import dated
from ui.widgets.basic import Button, Rule

#: A button stands beside a reason where so many letters of it find room in a line; else below.
LETTERS_BESIDE = 40


class Reasons(QWidget):
    """All of them."""

    opened = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(theme.S // 2)
        self._percent = 100
        self._shown: list[Reason] | None = None

    def set_percent(self, percent: int) -> None:
        """Draw at another text size."""
        self._percent = percent
        if self._shown is not None:
            shown, self._shown = self._shown, None
            self.show_reasons(shown)

    def show_reasons(self, reasons: list[Reason]) -> None:
        """Show somebody's reasons."""
        if reasons == self._shown:
            return
        self._shown = list(reasons)
        while (item := self._column.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for reason in reasons:
            self._column.addWidget(self._line(reason))
        if not reasons:
            nothing = desk_words(words.say("desk.nothing_first"))
            nothing.set_percent(self._percent)
            self._column.addWidget(nothing)

    def _line(self, reason: Reason) -> QWidget:
        line = _Line(reason, self._percent)
        place = reason.place
        if line.button is not None and place is not None:
            line.button.clicked.connect(lambda: self.opened.emit(place))
        return Rule(line) if reason.first else line


class _Line(QWidget):
    """A reason, and the button of its session beside it or below."""

    def __init__(self, reason: Reason, percent: int) -> None:
        super().__init__()
        first = reason.first
        self.word = desk_words(words.say("desk.first" if first else "desk.then"), bold=True)
        self.word.setWordWrap(False)
        self.text = desk_words(trade.shown(dated(reason)), bold=first)
        self.button: Button | None = None
        if reason.place is not None:
            day = words.say("desk.show_name", day=trade.day(reason.day))
            self.button = small_button(words.say("desk.show"), day)
        for part in (self.word, self.text, self.button):
            if part is not None:
                part.set_percent(percent)
        self._told = QHBoxLayout()
        self._told.setSpacing(theme.S)
        self._told.addWidget(self.word)
        self._told.addWidget(self.text, 1)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(theme.S)
        self._row.addLayout(self._told, 1)
        if self.button is not None:
            self._row.addWidget(self.button)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width may have room for the button beside the words, or no longer."""
        super().resizeEvent(event)
        if self.button is None:
            return
        taken = self.word.sizeHint().width() + self.button.sizeHint().width() + 2 * theme.S
        letters = (self.width() - taken) / max(self.text.fontMetrics().averageCharWidth(), 1)
        way, flag = QBoxLayout.Direction, Qt.AlignmentFlag
        beside = letters >= LETTERS_BESIDE
        self._row.setDirection(way.LeftToRight if beside else way.TopToBottom)
        self._row.setAlignment(self.button, flag.AlignVCenter if beside else flag.AlignLeading)
        # Beside a button all of it stands in one line; over one the word begins the first.
        self._told.setAlignment(self.word, flag.AlignVCenter if beside else flag.AlignTop)
