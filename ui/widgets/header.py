"""The strip at the top: the program's name, whether the camera is on, text size, sound."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from PySide6.QtCore import QPointF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QFontMetrics, QPainter, QPaintEvent, QPalette, QPen, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from ui import theme, words
from ui.widgets.basic import Button, Words


class CameraMark(QWidget):
    """Says at all times whether a camera is on: by a filled or an empty ring, and in words."""

    def __init__(self) -> None:
        super().__init__()
        self._key = "camera_off"
        self._short = False
        self.role = "small"
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.set_percent(100)
        self.show_state("camera_off")

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self.setFont(theme.font("small", percent, bold=True))
        self.updateGeometry()

    def show_state(self, key: str) -> None:
        """Show one of ``camera_on``, ``camera_off``, ``clip_on``."""
        self._key = key
        self.setAccessibleName(words.say(key))
        self.setToolTip(words.say(key))
        self.updateGeometry()
        self.update()

    @property
    def text(self) -> str:
        """The words in full."""
        return words.say(self._key)

    @property
    def drawn(self) -> str:
        """The words that there is room for."""
        return words.say(f"{self._key}.short") if self._short else self.text

    def fit(self, width: int) -> bool:
        """Shorter words where those in full would be cut; whether they are in full."""
        short = self._width_of(self.text) > width
        if short != self._short:
            self._short = short
            self.updateGeometry()
            self.update()
        return not short

    def _width_of(self, text: str) -> int:
        metrics = QFontMetrics(self.font())
        return metrics.horizontalAdvance(text) + metrics.height() + theme.S

    def sizeHint(self) -> QSize:
        """Room for ring and words."""
        return QSize(self._width_of(self.drawn), QFontMetrics(self.font()).height() + theme.S)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        role = QPalette.ColorRole
        metrics = QFontMetrics(self.font())
        radius = metrics.capHeight() / 2
        on = self._key == "camera_on"
        accent = self.palette().color(role.Accent if on else role.Mid)
        painter.setPen(QPen(accent, 3))
        painter.setBrush(accent if on else Qt.BrushStyle.NoBrush)
        mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        ring = self.width() - radius - 3 if mirrored else radius + 3
        painter.drawEllipse(QPointF(ring, self.height() / 2), radius, radius)
        painter.setPen(self.palette().color(role.WindowText))
        room = metrics.height()
        painter.drawText(
            self.rect().adjusted(0 if mirrored else room, 0, -room if mirrored else 0, 0),
            Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft,
            self.drawn,
        )


class Header(QWidget):
    """Name, camera mark, call, sound, text size, light or dark."""

    call = Signal()
    sound = Signal()
    smaller = Signal()
    larger = Signal()
    colours = Signal()

    def __init__(self) -> None:
        super().__init__()
        row = self._row = QHBoxLayout(self)
        row.setContentsMargins(theme.L, theme.S, theme.L, theme.S)
        row.setSpacing(theme.M)
        self.name = Words(words.say("program"), "small", bold=True)
        self.name.setWordWrap(False)
        self.mark = CameraMark()
        row.addWidget(self.name)
        row.addWidget(self.mark)
        row.addStretch(1)
        #: Lies over the room that is free: nothing moves as it comes and goes.
        self.note = Words("", "small")
        self.note.setParent(self)
        self.note.setWordWrap(False)
        self.note.hide()
        self.buttons: list[Button] = []
        for text, key, signal in (
            (words.say("share.call"), "share.open", self.call),
            ("♪", "sound.open", self.sound),
            ("A −", "text_smaller", self.smaller),
            ("A +", "text_larger", self.larger),
            ("◐", "switch_colours", self.colours),
        ):
            button = Button(text, "small", words.say(key))
            button.setToolTip(words.say(key))
            button.clicked.connect(signal)
            row.addWidget(button)
            self.buttons.append(button)
        self.sharing, self.sounding, *self.sizing = self.buttons[:4]
        self.sharing.setCheckable(True)

    def minimumSizeHint(self) -> QSize:
        """The name gives way where it is narrow."""
        return QSize(1, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The name is there where there is room for it."""
        self.make_room()

    def make_room(self) -> None:
        """Leave the name out where the rest would be cut; then shorten the mark."""
        needs = sum(b.sizeHint().width() + theme.M for b in self.buttons) + 2 * theme.L
        edge = theme.L if self.mark.fit(self.width() - needs - theme.M) else theme.S
        self._row.setContentsMargins(edge, theme.S, edge, theme.S)
        needs += self.mark.sizeHint().width() + theme.M
        fits = needs + self.name.sizeHint().width() + theme.M <= self.width()
        if self.name.isHidden() == fits:
            self.name.setVisible(fits)

    def set_percent(self, percent: int) -> None:
        """Larger text leaves less room; the parts have their size already or get it after."""
        QTimer.singleShot(0, self, self.make_room)

    def show_note(self, text: str) -> None:
        """A short line, where there is room for all of it; empty for none."""
        self.note.setText(text)
        size, mark, button = self.note.sizeHint(), self.mark.geometry(), self.buttons[0].geometry()
        if self.layoutDirection() == Qt.LayoutDirection.RightToLeft:
            left, right = button.right() + theme.M, mark.left() - theme.M - size.width()
            at = right
        else:
            left, right = mark.right() + theme.M, button.left() - theme.M - size.width()
            at = left
        self.note.setGeometry(at, (self.height() - size.height()) // 2, size.width(), size.height())
        self.note.setVisible(bool(text) and left <= right)

    def let_sound(self, on: bool) -> None:
        """Whether the sound can be chosen now."""
        if self.sounding.isEnabled() != on:
            self.sounding.setEnabled(on)

    def let_text(self, on: bool) -> None:
        """Whether the text may have another size now."""
        for button in self.sizing:
            if button.isEnabled() != on:
                button.setEnabled(on)

    def let_share(self, on: bool, sharing: bool) -> None:
        """Whether the layout for a call can be chosen now, and whether it is."""
        if self.sharing.isEnabled() != on:
            self.sharing.setEnabled(on)
        if self.sharing.isChecked() != sharing:
            self.sharing.setChecked(sharing)
