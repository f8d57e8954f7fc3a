"""The strip at the top: the program's name, whether the camera is on, text size, sound."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from ui import theme, words
from ui.widgets.basic import Button, Words


class CameraMark(QWidget):
    """Says at all times whether a camera is on: by a filled or an empty ring, and in words."""

    def __init__(self) -> None:
        super().__init__()
        self._key = "camera_off"
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
        self.updateGeometry()
        self.update()

    @property
    def text(self) -> str:
        """The words shown."""
        return words.say(self._key)

    def sizeHint(self) -> QSize:
        """Room for ring and words."""
        metrics = QFontMetrics(self.font())
        high = metrics.height()
        return QSize(metrics.horizontalAdvance(self.text) + high + theme.S, high + theme.S)

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
        painter.drawEllipse(QPointF(radius + 3, self.height() / 2), radius, radius)
        painter.setPen(self.palette().color(role.WindowText))
        left = metrics.height()
        painter.drawText(
            self.rect().adjusted(left, 0, 0, 0),
            Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft,
            self.text,
        )


class Header(QWidget):
    """Name, camera mark, sound, text size, light or dark."""

    sound = Signal()
    smaller = Signal()
    larger = Signal()
    colours = Signal()

    def __init__(self) -> None:
        super().__init__()
        row = QHBoxLayout(self)
        row.setContentsMargins(theme.L, theme.S, theme.L, theme.S)
        row.setSpacing(theme.M)
        name = Words(words.say("program"), "small", bold=True)
        name.setWordWrap(False)
        self.mark = CameraMark()
        row.addWidget(name)
        row.addSpacing(theme.M)
        row.addWidget(self.mark)
        row.addStretch(1)
        self.buttons: list[Button] = []
        for text, key, signal in (
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

    def let_sound(self, on: bool) -> None:
        """Whether the sound can be chosen now."""
        if self.buttons[0].isEnabled() != on:
            self.buttons[0].setEnabled(on)
