"""What is read from two metres: one large figure, and how it is done in large words.

The figure is set in 144 px: about 27 mm high on a 96-dpi screen, which is 47 minutes of
arc at 2 m, where an eye of full sharpness reads 5. It changes once a second at most, and
its place keeps its width, so that nothing beside it moves.
"""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

import re
from math import ceil

from PySide6.QtCore import QEvent, QObject, QRect, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPalette, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from ui import theme, words
from ui.widgets.basic import Words

#: Sizes of the words, the largest that fits is taken.
_WORDS = ("title", "lead", "body")
#: A line for the figure is at least this high before a word comes under it.
_LEAST_PX = 90.0


def _ink_width(label: QWidget, text: str) -> float:
    """Width that a text takes with all its ink, which may reach beyond its advance."""
    metrics = QFontMetricsF(label.font())
    ink, advance = metrics.boundingRect(text), metrics.horizontalAdvance(text)
    # It is centred by its advance: what is over on one side is needed on both.
    return advance + 2 * max(-ink.left(), ink.right() - advance, 0.0)


class FarFigure(QWidget):
    """A large figure over a word that says what it is."""

    def __init__(self) -> None:
        super().__init__()
        self.figure = Words(role="far", bold=True, centred=True)
        self.caption = Words(role="lead", bold=True, centred=True)
        for label in (self.figure, self.caption):
            label.setWordWrap(False)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addStretch(1)
        column.addWidget(self.figure)
        column.addWidget(self.caption)
        column.addStretch(1)

    def show_figure(self, figure: str, caption: str, *, measured: bool = True) -> None:
        """Show it; what is not measured just now is drawn softly."""
        shown = (self.figure.text(), self.caption.text())
        role = QPalette.ColorRole.WindowText if measured else QPalette.ColorRole.PlaceholderText
        if self.figure.foregroundRole() != role:
            self.figure.setForegroundRole(role)
        if shown == (figure, caption):
            return
        self.figure.setText(figure)
        self.caption.setText(caption)
        self.keep_width()

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        for label in (self.figure, self.caption):
            label.set_percent(percent)
        self.keep_width()

    def fit(self, high: float, percent: int) -> None:
        """Take no more than a height: first the word under it goes, then the figure shrinks."""
        font = theme.font("far", percent, bold=True)
        whole, below = QFontMetricsF(font).height(), self.caption.fontMetrics().height()
        captioned = high - below >= _LEAST_PX
        if self.caption.isHidden() == captioned:
            self.caption.setVisible(captioned)
        room = high - (below if captioned else 0)
        font.setPointSizeF(font.pointSizeF() * min(max(room, 1.0) / whole, 1.0))
        if self.figure.font() != font:
            self.figure.setFont(font)
        self.keep_width()

    def keep_width(self) -> None:
        """As wide as the widest of all that comes: nothing beside it moves from one to the next."""
        for label in (self.figure, self.caption):
            # One line needs no room for the space at a break, which is as wide as a large digit.
            label.setContentsMargins(0, 0, 0, 0)
        digits = [words.number(k) for k in range(10)]
        texts = ("0:00", self.figure.text())
        # Digits of one script are not all as wide, nor those of two.
        forms = [re.sub(r"\d", digit, text) for text in texts for digit in digits]
        captions = (words.say("far.begins"), self.caption.text())
        wide = max(_ink_width(self.figure, f) for f in forms)
        below = max(_ink_width(self.caption, c) for c in captions)
        self.setFixedWidth(ceil(max(wide, below)) + theme.S)


class FarBoard(QWidget):
    """Lies over a field without a target, and fills it."""

    def __init__(self, over: QWidget) -> None:
        super().__init__(over)
        self._percent = 100
        self._fitted: tuple[object, ...] = ()
        self.figure = FarFigure()
        self.how = Words(role="title")
        self.how.setAlignment(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(theme.M, 0, theme.M, 0)
        self._row.setSpacing(theme.XL)
        self._row.addStretch(1)
        self._row.addWidget(self.figure)
        self._row.addWidget(self.how, 1000)
        self._row.addStretch(1)
        over.installEventFilter(self)
        self.hide()

    def minimumSizeHint(self) -> QSize:
        """It takes what its field has."""
        return QSize(1, 1)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Follow the field's size."""
        if event.type() == QEvent.Type.Resize and isinstance(watched, QWidget):
            self.setGeometry(QRect(watched.rect()))
        return False

    def show_set(self, figure: str, caption: str, how: str, *, measured: bool = True) -> None:
        """Show a set's figure and how it is done."""
        self.figure.show_figure(figure, caption, measured=measured)
        if self.how.text() != how:
            self.how.setText(how)
        if self.isHidden():
            self.setGeometry(QRect(self.parentWidget().rect()))
            self.show()
        self._fit()

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent, as far as there is room."""
        self._percent = percent
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another size may have room for larger words."""
        self._fit()

    def _looks(self) -> tuple[object, ...]:
        """Everything that the fit depends on, and what it has made."""
        figure, caption = self.figure.figure, self.figure.caption
        texts = (len(figure.text()), caption.text(), self.how.text())
        return (self.size(), self._percent, texts, figure.font(), caption.font(), self.how.font())

    def _fit(self) -> None:
        """The largest words that fit beside the figure; none where even small ones don't."""
        if self._looks() == self._fitted:
            return
        self.figure.fit(self.height(), self._percent)
        widest = round(theme.TEXT_WIDTH * (1 + (self._percent / 100 - 1) * 0.5))
        self.how.setMaximumWidth(widest)
        beside = self.width() - self.figure.width() - theme.XL * 3 - 2 * theme.M
        for role in _WORDS:
            self.how.role = role
            self.how.set_percent(self._percent)
            fits = self.how.heightForWidth(max(min(beside, widest), 1)) <= self.height()
            if fits:
                break
        self.how.setVisible(fits)
        self._fitted = self._looks()
