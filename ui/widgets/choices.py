"""Choosing: one of a few, and a number by two large buttons."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from ui import theme, words
from ui.widgets.basic import Button, Words, draw_card, draw_focus
from ui.widgets.flow import FlowRow


class OneOf(Button):
    """One of several choices: a ring in front of its words, filled when it is the one.

    In a column that is narrower than its words they wrap.
    """

    def __init__(self, text: str) -> None:
        super().__init__(text)
        self.setCheckable(True)
        # Else it would hold a column to its one line, in width and in height.
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def sizeHint(self) -> QSize:
        """Room for ring and words."""
        size = super().sizeHint()
        return QSize(size.width() + self.fontMetrics().height(), size.height())

    def minimumSizeHint(self) -> QSize:
        """Never narrower than its longest word."""
        return QSize(self.least_width(), self.sizeHint().height())

    def least_width(self) -> int:
        """Width in px that ring and longest word need."""
        longest = max(map(self.fontMetrics().horizontalAdvance, self.text().split()), default=0)
        room = 2 * theme.L + self.fontMetrics().height()
        return min(longest + room, self.sizeHint().width())

    def heightForWidth(self, width: int) -> int:
        """Height that its words need."""
        free = max(round(self._words_box(QRectF(0, 0, width, 100)).width()), 1)
        flags = int(Qt.TextFlag.TextWordWrap)
        needs = self.fontMetrics().boundingRect(QRect(0, 0, free, 10_000), flags, self.text())
        return max(self.sizeHint().height(), needs.height() + theme.M)

    def wrapped_size(self, width: int) -> QSize:
        """Its size where it can be no wider than ``width`` px."""
        size = self.sizeHint()
        if size.width() <= width:
            return size
        width = max(width, self.least_width())
        return QSize(width, self.heightForWidth(width))

    def _words_box(self, whole: QRectF) -> QRectF:
        """Where its words stand, beside the ring."""
        edge = theme.FOCUS_WIDTH
        box = whole.adjusted(edge, edge, -edge, -edge)
        before, after = theme.M + self.fontMetrics().capHeight() + theme.M, theme.S
        if self.layoutDirection() == Qt.LayoutDirection.RightToLeft:
            before, after = after, before
        return box.adjusted(before, 0, -after, 0)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        palette, role = self.palette(), QPalette.ColorRole
        line = palette.color(role.Highlight if self.isChecked() else role.Mid)
        box = draw_card(painter, self, line)
        radius = self.fontMetrics().capHeight() / 2
        mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        ring = box.left() + theme.M + radius
        if mirrored:
            ring = box.right() - theme.M - radius
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(
            QRectF(ring - radius, box.center().y() - radius, 2 * radius, 2 * radius)
        )
        if self.isChecked():
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(line))
            half = radius * 0.5
            painter.drawEllipse(QRectF(ring - half, box.center().y() - half, 2 * half, 2 * half))
        painter.setPen(palette.color(role.ButtonText))
        painter.setFont(self.font())
        how = int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft)
        how |= int(Qt.TextFlag.TextWordWrap)
        painter.drawText(self._words_box(QRectF(self.rect())), how, self.text())
        if self.hasFocus():
            draw_focus(painter, QRectF(self.rect()), palette)


class Choices(QWidget):
    """A column of choices, or a row of short ones, one of them chosen."""

    chosen = Signal(int)

    def __init__(self, name: str, *, across: bool = False) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._group = QButtonGroup(self)
        self._group.idClicked.connect(self.chosen)
        self._column = FlowRow(self) if across else QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(theme.S)
        self._percent = 100

    def set_percent(self, percent: int) -> None:
        """Choices that are made later get the same text size."""
        self._percent = percent

    def fill(self, texts: Sequence[str], current: int = 0) -> None:
        """Offer other choices."""
        for button in self._group.buttons():
            self._group.removeButton(button)
            button.hide()
            button.deleteLater()
        for k, text in enumerate(texts):
            button = OneOf(text)
            button.set_percent(self._percent)
            self._group.addButton(button, k)
            self._column.addWidget(button)
        self.choose(current)

    def choose(self, row: int) -> None:
        """Mark one as chosen."""
        button = self._group.button(row)
        if button is not None:
            button.setChecked(True)

    def take_keys(self) -> None:
        """The one chosen gets the keys."""
        button = self._group.checkedButton()
        if button is not None:
            button.setFocus()

    @property
    def row(self) -> int:
        """The one chosen, -1 for none."""
        return self._group.checkedId()


class Stepper(QWidget):
    """A number with a button to each side; arrow keys change it too."""

    changed = Signal(int)

    def __init__(
        self,
        name: str,
        values: Sequence[int],
        value: int,
        show: Callable[[int], str] = words.number,
    ) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._values, self._show = list(values), show
        self._longest = max((show(v) for v in values), key=len)
        self._value, self._unset = value, False
        less, more = words.say("choose.less", what=name), words.say("choose.more", what=name)
        self.less, self.more = Button("−", "plain", less), Button("+", "plain", more)
        self.shown = Words(role="lead", bold=True, centred=True)
        self.shown.setWordWrap(False)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.less)
        row.addWidget(self.shown)
        row.addWidget(self.more)
        self.less.clicked.connect(lambda: self.step(-1))
        self.more.clicked.connect(lambda: self.step(1))
        self.set_percent(100)
        self.set_value(value)

    def set_percent(self, percent: int) -> None:
        """Keep room for the longest value."""
        self.shown.set_percent(percent)
        wide = self.shown.fontMetrics().horizontalAdvance(self._longest)
        self.shown.setMinimumWidth(wide + 2 * theme.S)

    @property
    def value(self) -> int:
        """The number."""
        return self._value

    @property
    def chosen(self) -> int | None:
        """The number, None until one is chosen."""
        return None if self._unset else self._value

    def clear(self, first: int, in_words: str) -> None:
        """Let no number stand there; the first step, either way, goes to ``first``.

        ``in_words`` is what a screen reader says meanwhile.
        """
        self.set_value(first)
        self._unset = True
        self.shown.setText(words.say("choose.none_yet"))
        self.shown.setAccessibleName(f"{self.accessibleName()}: {in_words}")

    def offer(self, values: Sequence[int], value: int) -> None:
        """Other numbers, none longer than those it was made with; and one of them."""
        self._values = list(values)
        self.set_value(value)

    def set_value(self, value: int) -> None:
        """Set it to the nearest that there is."""
        self._unset = False
        self._value = min(self._values, key=lambda v: abs(v - value))
        self.shown.setText(self._show(self._value))
        self.shown.setAccessibleName(f"{self.accessibleName()}: {self.shown.text()}")
        self.changed.emit(self._value)

    def step(self, steps: int) -> None:
        """Up or down."""
        if self._unset:
            self.set_value(self._value)
            return
        at = self._values.index(self._value) + steps
        self.set_value(self._values[min(max(at, 0), len(self._values) - 1)])

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Up and down arrows change the number."""
        if event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self.step(1 if event.key() == Qt.Key.Key_Up else -1)
            return
        super().keyPressEvent(event)
