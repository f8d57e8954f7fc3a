"""How large the screen is: an outline that is made to fit a card held against it."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from ui import theme, words
from ui.geometry import PX_MM_RANGE, ScreenGeometry
from ui.screen import geometry_of, screen_key
from ui.session.flow import Director
from ui.settings import Settings
from ui.widgets.basic import Button, Words, draw_focus
from ui.widgets.flow import FlowRow

#: A card of ISO/IEC 7810, size ID-1, and the radius of its corners, in mm.
CARD_MM = (85.60, 53.98)
CORNER_MM = 3.18
#: What one press of a key adds to the width, in pixels, and with Shift or a page key.
STEP_PX, LEAP_PX = 1, 10


class CardOutline(QWidget):
    """The outline of a card; its upper left corner stays where it is when it grows."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.px_per_mm = 96 / 25.4
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(words.say("screen.outline"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def minimumSizeHint(self) -> QSize:
        """Room for the upper corners, and for the words in the smallest window."""
        return QSize(420, 120)

    def step(self, pixels: int) -> None:
        """Make it wider by some pixels (narrower below 0)."""
        low, high = PX_MM_RANGE
        width = round(self.px_per_mm * CARD_MM[0]) + pixels
        self.px_per_mm = min(max(width / CARD_MM[0], low), high)
        self.setAccessibleDescription(words.say("screen.width", mm=words.number(width)))
        self.update()
        self.changed.emit()

    def outline(self) -> QRectF:
        """Where the card is drawn."""
        size = [side * self.px_per_mm for side in CARD_MM]
        # From the middle of a usual card's room, so that only two sides move.
        return QRectF(max(self.width() / 2 - 190.0, 8.0), 8.0, *size)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows change the size; with Shift, and page keys, in leaps."""
        leap = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
        by = LEAP_PX if leap else STEP_PX
        keys = {
            Qt.Key.Key_Right: by,
            Qt.Key.Key_Up: by,
            Qt.Key.Key_Left: -by,
            Qt.Key.Key_Down: -by,
            Qt.Key.Key_PageUp: LEAP_PX,
            Qt.Key.Key_PageDown: -LEAP_PX,
        }
        pixels = keys.get(Qt.Key(event.key()))
        if pixels is None:
            super().keyPressEvent(event)
        else:
            self.step(pixels)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it: a thin line whose outer edge is the card's."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        palette = self.palette()
        box = self.outline()
        corner = CORNER_MM * self.px_per_mm
        painter.setBrush(palette.color(QPalette.ColorRole.Base))
        painter.setPen(QPen(palette.color(QPalette.ColorRole.WindowText), 2))
        painter.drawRoundedRect(box.adjusted(1, 1, -1, -1), corner, corner)
        if self.hasFocus():
            draw_focus(painter, QRectF(self.rect()), palette)


class ScreenPage(QWidget):
    """The outline, and the keys that change it."""

    def __init__(self, director: Director, settings: Settings) -> None:
        super().__init__()
        self._director, self._settings = director, settings
        self.card = CardOutline()
        column = QVBoxLayout(self)
        column.setContentsMargins(theme.L, theme.S, theme.L, theme.L)
        column.addWidget(Words(words.say("screen.title"), "lead", bold=True))
        column.addWidget(Words(words.say("screen.how")))
        column.addWidget(self.card, 1)
        holder = QWidget()
        row = FlowRow(holder)
        row.setContentsMargins(0, 0, 0, 0)
        self.fits = Button(words.say("screen.fits"), "main")
        self.fits.clicked.connect(self._keep)
        self.smaller = Button("−", "plain", words.say("screen.smaller"))
        self.larger = Button("+", "plain", words.say("screen.larger"))
        for button, by in ((self.smaller, -STEP_PX), (self.larger, STEP_PX)):
            button.setAutoRepeat(True)
            button.clicked.connect(lambda _=False, by=by: self.card.step(by))
        self.forget = Button(words.say("screen.forget"))
        self.forget.clicked.connect(self._forget)
        self.back = Button(words.say("tools.back"))
        self.back.clicked.connect(lambda: director.stop())
        for button in (self.fits, self.smaller, self.larger, self.forget, self.back):
            row.addWidget(button)
        column.addWidget(holder)

    def enter(self) -> None:
        """The page comes to the front: as large as the screen is taken to be now."""
        self.card.px_per_mm = geometry_of(self.screen(), self._settings).px_per_mm
        self.card.update()
        self.card.setFocus()
        self.refresh()

    def refresh(self) -> None:
        """Offer to forget what was measured, where something was."""
        known = self._settings.screen_px_mm(screen_key(self.screen())) is not None
        if self.forget.isHidden() == known:
            self.forget.setVisible(known)

    def _keep(self) -> None:
        self._settings.set_screen_px_mm(screen_key(self.screen()), self.card.px_per_mm)
        self._director.stop()

    def _forget(self) -> None:
        self._settings.set_screen_px_mm(screen_key(self.screen()), None)
        self.enter()


def say_screen(geometry: ScreenGeometry) -> str:
    """What is known of the screen, in words."""
    cm = words.number(geometry.width_mm / 10, 1)
    return words.say(f"screen.known.{geometry.source}", cm=cm)
