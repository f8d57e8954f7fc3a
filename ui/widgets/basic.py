"""Words, buttons and the frame of a page, in our drawing language."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRect, QRectF, QSize, Qt, QTimer
from PySide6.QtGui import (
    QColor,
    QKeyEvent,
    QPainter,
    QPaintEvent,
    QPalette,
    QPen,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QAbstractButton,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from ui import theme, words
from ui.widgets.flow import FlowRow
from ui.widgets.fold import Fold


class Words(QLabel):
    """A text in one of the four sizes; it wraps and grows with the text size."""

    def __init__(
        self,
        text: str = "",
        role: str = "body",
        *,
        bold: bool = False,
        soft: bool = False,
        centred: bool = False,
    ) -> None:
        super().__init__(text)
        self.role, self.bold = role, bold
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        if centred:
            self.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignVCenter)
        elif self.layoutDirection() == Qt.LayoutDirection.RightToLeft:
            # By itself Qt puts a figure or a path on the left, as it has no Arabic letters.
            flag = Qt.AlignmentFlag
            self.setAlignment(flag.AlignRight | flag.AlignAbsolute | flag.AlignVCenter)
        if soft:
            self.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.set_percent(100)

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self.setFont(theme.font(self.role, percent, bold=self.bold))
        if self.layoutDirection() == Qt.LayoutDirection.RightToLeft:
            # Where Qt breaks a line, it keeps the space at the right, and a line that is full
            # goes on at the left by as much: there it would be cut. Edges of letters come to it.
            space = self.fontMetrics().horizontalAdvance(" ")
            self.setContentsMargins(space + 2, 0, 0, 0)
        self.updateGeometry()


def keep_room(label: Words, texts: Sequence[str], width: int) -> None:
    """Give a label the height of its longest text: nothing moves when the text changes."""
    metrics = label.fontMetrics()
    flags = int(Qt.TextFlag.TextWordWrap)
    box = QRect(0, 0, max(width - label.contentsMargins().left(), 1), 10_000)
    heights = [metrics.boundingRect(box, flags, text).height() for text in texts]
    label.setFixedHeight(max([*heights, metrics.height()]) + 4)


_PRESSING = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space)


class Button(QPushButton):
    """A button with its own calm look: filled if it is the page's main action.

    ``main`` fills it with the colour of action, ``stop`` with that of attention. In a
    :class:`~ui.widgets.flow.FlowRow` that is narrower than its words, they wrap.
    """

    def __init__(self, text: str, kind: str = "plain", name: str = "") -> None:
        super().__init__(text)
        self.kind = kind
        self.role = "body"
        #: Other words that it may come to bear: it is as wide as the widest.
        self.others: tuple[str, ...] = ()
        #: Whether it leads out of a session: that works while its page takes no answer yet, too.
        self.way_out = False
        self.setAccessibleName(name or text)
        self.setAutoDefault(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
        self.set_percent(100)

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self.setFont(theme.font(self.role, percent, bold=True))
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        """Room for the words, and for an unsteady hand."""
        metrics = self.fontMetrics()
        lead = theme.M if self.kind == "small" else theme.L
        width = max(map(metrics.horizontalAdvance, (self.text(), *self.others))) + 2 * lead
        least = 44 if self.kind == "small" else theme.BUTTON_HEIGHT
        return QSize(max(width, least), max(least, metrics.height() + theme.M))

    def minimumSizeHint(self) -> QSize:
        """Never smaller than its words."""
        return self.sizeHint()

    #: Whether it is drawn in several lines where it is narrow.
    wraps = True

    def least_width(self) -> int:
        """Width in px that its longest word needs."""
        if not self.wraps:
            return self.sizeHint().width()
        metrics, lead = self.fontMetrics(), theme.M if self.kind == "small" else theme.L
        every = " ".join((self.text(), *self.others)).split()
        longest = max(map(metrics.horizontalAdvance, every), default=0)
        return min(longest + 2 * lead, self.sizeHint().width())

    def wrapped_size(self, width: int) -> QSize:
        """Its size where it can be no wider than ``width`` px."""
        size = self.sizeHint()
        # Its longest word needs no more than all of them.
        if size.width() <= width or size.width() <= (width := max(width, self.least_width())):
            return size
        edge = theme.FOCUS_WIDTH
        flags = int(Qt.TextFlag.TextWordWrap)
        room = QRect(0, 0, width - 2 * edge, 10_000)
        metrics = self.fontMetrics()
        needs = max(
            metrics.boundingRect(room, flags, text).height() for text in (self.text(), *self.others)
        )
        return QSize(width, max(size.height(), needs + theme.M))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """A key that is held presses once, and not what comes to stand under it."""
        if event.isAutoRepeat() and event.key() in _PRESSING:
            event.accept()
            return
        super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        palette = self.palette()
        edge = theme.FOCUS_WIDTH
        box = QRectF(self.rect()).adjusted(edge, edge, -edge, -edge)
        fill, ink, line = self._colours(palette)
        if self.isDown():
            fill = _mixed(fill, ink, 0.18)
        elif self.underMouse() and self.isEnabled():
            fill = _mixed(fill, ink, 0.08)
        painter.setBrush(fill)
        painter.setPen(QPen(line, theme.LINE))
        painter.drawRoundedRect(box, theme.CORNER, theme.CORNER)
        painter.setPen(ink)
        painter.setFont(self.font())
        how = int(Qt.AlignmentFlag.AlignCenter) | int(Qt.TextFlag.TextWordWrap)
        painter.drawText(box, how, self.text())
        if self.hasFocus():
            draw_focus(painter, QRectF(self.rect()), palette)

    def _colours(self, palette: QPalette) -> tuple[QColor, QColor, QColor]:
        role = QPalette.ColorRole
        if not self.isEnabled():
            return (
                palette.color(role.Window),
                palette.color(role.PlaceholderText),
                palette.color(role.Mid),
            )
        if self.kind == "main" or self.isChecked():
            fill = palette.color(role.Highlight)
            return fill, palette.color(role.HighlightedText), fill
        if self.kind == "stop":
            fill = palette.color(role.BrightText)
            return fill, palette.color(role.Window), fill
        return palette.color(role.Button), palette.color(role.ButtonText), palette.color(role.Mid)


def relabel(button: Button, text: str) -> None:
    """Give a button other words; nothing happens while they are the same."""
    if button.text() != text:
        button.setText(text)
        button.setAccessibleName(text)
        button.updateGeometry()


def _mixed(one: QColor, other: QColor, share: float) -> QColor:
    parts = (
        a + (b - a) * share for a, b in zip(one.getRgbF()[:3], other.getRgbF()[:3], strict=True)
    )
    return QColor.fromRgbF(*parts)


def draw_card(painter: QPainter, button: Button, line: QColor) -> QRectF:
    """The plain ground of a choice, with a heavier edge where it is chosen; gives its box."""
    edge = theme.FOCUS_WIDTH
    box = QRectF(button.rect()).adjusted(edge, edge, -edge, -edge)
    painter.setBrush(button.palette().color(QPalette.ColorRole.Button))
    painter.setPen(QPen(line, theme.LINE + button.isChecked()))
    painter.drawRoundedRect(box, theme.CORNER, theme.CORNER)
    return box


def draw_focus(painter: QPainter, rect: QRectF, palette: QPalette) -> None:
    """The ring around what has the keys."""
    width = theme.FOCUS_WIDTH
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(palette.color(QPalette.ColorRole.Link), width))
    half = width / 2
    corner = theme.CORNER + half
    painter.drawRoundedRect(rect.adjusted(half, half, -half, -half), corner, corner)


class _Shrinking(QWidget):
    """The inside of a scrolling page: as high as its words at the width they have."""

    def minimumSizeHint(self) -> QSize:
        """Let the words alone say how high; a narrower guess would make it too high."""
        return QSize(1, 1)


class Page(QWidget):
    """A page: a body in a readable width, and a row of buttons that always stays in sight."""

    def __init__(self) -> None:
        super().__init__()
        self.body = QVBoxLayout()
        self.body.setSpacing(theme.M)
        self.body.setContentsMargins(0, 0, theme.M, theme.M)
        inner = _Shrinking()
        column = QWidget()
        column.setLayout(self.body)
        row = QHBoxLayout(inner)
        row.setContentsMargins(theme.XL, theme.L, theme.XL, 0)
        row.addStretch(1)
        row.addWidget(column, 1000)
        row.addStretch(1)
        self.column = column
        self.scroll = QScrollArea()
        self.scroll.setWidget(inner)
        self.scroll.setWidgetResizable(True)
        self.scroll.setFrameShape(QFrame.Shape.NoFrame)
        self.scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.fold = Fold(self.scroll)
        self.buttons = FlowRow()
        self._foot = QWidget()
        self._foot_row = foot = QHBoxLayout(self._foot)
        self.read_on = Button(words.say("read_on"))
        self.read_on.clicked.connect(self.page_down)
        self.read_on.hide()
        holder = QWidget()
        holder.setLayout(self.buttons)
        self.buttons.addWidget(self.read_on)
        foot.addWidget(holder, 1000)
        foot.addStretch(1)
        bar = self.scroll.verticalScrollBar()
        bar.valueChanged.connect(self._look_below)
        bar.rangeChanged.connect(self._look_below)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addWidget(self.scroll, 1)
        outer.addWidget(self._foot)
        policy = self._foot.sizePolicy()
        policy.setVerticalPolicy(QSizePolicy.Policy.Minimum)
        self._foot.setSizePolicy(policy)
        self._holder = holder
        self._held: list[QAbstractButton] = []
        self._size_columns(100)

    def set_percent(self, percent: int) -> None:
        """Wider text needs wider columns."""
        self._size_columns(percent)

    def _size_columns(self, percent: int) -> None:
        wider = 1 + (percent / 100 - 1) * 0.5
        self.column.setMaximumWidth(round(theme.TEXT_WIDTH * wider))
        self._holder.setMaximumWidth(round(theme.FOOT_WIDTH * wider))
        self._place_foot()

    def _place_foot(self) -> None:
        """The buttons begin where the text does."""
        before = max((self.width() - self.column.maximumWidth()) // 2, theme.XL)
        mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        left, right = (theme.XL, before) if mirrored else (before, theme.XL)
        self._foot_row.setContentsMargins(left, theme.S, right, theme.L)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width has another middle."""
        super().resizeEvent(event)
        self._place_foot()

    def hold(self, *, on: bool) -> None:
        """Take no answer for a while, and be seen to; the ways out work all the same."""
        there = self.findChildren(QAbstractButton)
        if on:
            # Else the keys would go on to whatever comes next.
            self.setFocus()
            free = (b for b in there if b is not self.read_on and not _way_out(b))
            self._held = [b for b in free if b.isEnabled()]
        for button in self._held:
            if button in there:
                button.setEnabled(not on)
        if not on:
            self._held = []

    def body_width(self) -> int:
        """Width that the body has, with a bar to scroll it."""
        free = self.width() - 2 * theme.XL - theme.M - self.scroll.verticalScrollBar().width()
        return min(free, self.column.maximumWidth() - theme.M)

    def page_down(self) -> None:
        """Show what is below; a jump, not a glide."""
        bar = self.scroll.verticalScrollBar()
        bar.setValue(bar.value() + self._step_down())

    def _step_down(self) -> int:
        """To what is below the fold, with a little of what was above it."""
        return min(self.scroll.verticalScrollBar().pageStep() - theme.XL, self.fold.below_px)

    def _step_up(self) -> int:
        """To where what is above the fold is the last that is seen."""
        height = self.scroll.verticalScrollBar().pageStep()
        return min(height - theme.XL, height - self.fold.above_px)

    def _look_below(self) -> None:
        """Offer to read on while there is more below, unless only the offer has no room."""
        bar = self.scroll.verticalScrollBar()
        more = bar.value() < bar.maximum()
        if more and not self.read_on.isHidden():
            more = bar.maximum() > self.buttons.spared_without(self.read_on, self._holder.width())
        if self.read_on.isHidden() == more:
            had_keys = self.read_on.hasFocus()
            self.read_on.setVisible(more)
            # What changes while a layout is at work isn't laid out by it.
            QTimer.singleShot(0, self, self._settle)
            if had_keys:
                self.enter()

    def _settle(self) -> None:
        """Lay the buttons out; what was hidden while it was being shown is hidden at last.

        Qt would leave it in sight, and give it no keys.
        """
        if self.read_on.isHidden() and self.read_on.isVisible():
            self.read_on.show()
            self.read_on.hide()
        self.buttons.update()
        if not self.read_on.isHidden():
            # Only now is it known what room it takes.
            self._look_below()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Page keys move the page."""
        bar = self.scroll.verticalScrollBar()
        moves = {
            Qt.Key.Key_PageDown: bar.value() + self._step_down(),
            Qt.Key.Key_PageUp: bar.value() - self._step_up(),
            Qt.Key.Key_Home: bar.minimum(),
            Qt.Key.Key_End: bar.maximum(),
        }
        if event.key() in moves:
            bar.setValue(moves[Qt.Key(event.key())])
            return
        super().keyPressEvent(event)

    def enter(self) -> None:
        """The page comes to the front: the main button gets the keys."""
        self.scroll.verticalScrollBar().setValue(0)
        for button in self.findChildren(QAbstractButton):
            if isinstance(button, Button) and button.kind == "main" and button.isVisibleTo(self):
                button.setFocus()
                return

    def refresh(self) -> None:
        """Show the director's state."""


class Rule(QWidget):
    """A short line before a paragraph that must be read."""

    def __init__(self, inside: QWidget) -> None:
        super().__init__()
        row = QHBoxLayout(self)
        mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        row.setContentsMargins(0 if mirrored else theme.M, 0, theme.M if mirrored else 0, 0)
        row.addWidget(inside)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the line."""
        painter = QPainter(self)
        accent = self.palette().color(QPalette.ColorRole.Accent)
        mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        painter.fillRect(self.width() - 4 if mirrored else 0, 2, 4, self.height() - 4, accent)


def _way_out(button: QAbstractButton) -> bool:
    return isinstance(button, Button) and button.way_out
