"""The target with what is read beside it: count, how far, how fast.

Everything lies within two degrees around the target, at every text size and from every
seat, so that reading it does not pull the eyes away. It changes at turning points only and
holds in between; nothing in it follows the head.

The count grows with the text and with the window as far as two degrees let it. From 75 cm
they have room for 72 px on a 96-dpi screen, whose digits are a degree high: 60 minutes of
arc, where an eye of a quarter of full sharpness, as one without its reading glasses, reads
20. It has 72 px everywhere: on coarser screens and from nearer seats its corners then lie
beyond the two degrees, and its middle within them. Degrees and
tempo stand here only in the text size that was chosen: letters too small to be read would
draw the eyes to them for nothing. The pins say the same, and the page after the set has
the figures.

The drawing
    *Target*: a disc with a ring of the paper's colour in it that is half a degree
    across and has one notch; the notch is seen sharp only when looked at.
    *Bow*: an arc over the target. Its middle is rest, its ends are 30 degrees to
    each side (vertical exercises: a shorter bow standing at the right). A thick
    part marks what was asked, a pin how far the last turn went on each side.
    *Bead*: at the end of the bow to which the beat asks to go; it holds there.
    *Count*: large, under the target (of two that lie apart: where it is not cut). Left
    and right of the target the degrees of the last turn to that side, above it the
    tempo, with an arrow up or down where it is off the beat. The countdown stands where
    the count will be.
"""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

import math
from dataclasses import dataclass
from math import hypot

from PySide6.QtCore import QPointF, QRectF, QSize, QSizeF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from tracker.targets import Backdrop
from ui import theme, words
from ui.geometry import Point, length_mm, offset_mm
from ui.widgets.backdrop import BackdropPaint
from ui.widgets.field_text import draw_beside, draw_tight, tempo_arrow
from ui.widgets.placing import (
    CountSizes,
    count_place_moving,
    count_places,
    share_beside,
    share_under,
)

#: Size of the ring in the target, degrees: the detail that a look is held by.
DETAIL_DEG = 0.5
#: Size of the whole target against its detail.
_DISC = 1.8
#: What is read lies no farther than this from the middle of the target, degrees.
AROUND_DEG = 2.0
#: The count has at least so many px, and grows with a field that is higher than this (own choice:
#: the field of a window of 1366 by 768 is about as high).
COUNT_PX, GROWS_FROM_PX = 72.0, 480.0
#: Room kept free around a target at the field's edge.
EDGE_MM = 12.0
#: Amplitude at the ends of the bow.
BOW_END_DEG = 30.0
#: The bow reaches from its middle this far to each side, and less where it stands at the
#: right, as the count is under the target.
_BOW_SPAN, _BOW_SPAN_UPRIGHT = 80.0, 42.0
#: The bead lies so far beyond the bow's end.
_BEAD_AT = 10.0
#: Half the length of the pins on it, radius of the bead, and what a rim may take.
_PIN_PX, _BEAD_PX, _RIM_PX = 8.0, 8.0, 3.0
#: Room between the target and its count.
_GAP_PX = 4.0


@dataclass(frozen=True, slots=True)
class FieldState:
    """What the field shows; None where there is nothing (drawn as a dash, never as 0)."""

    count: int | None = None
    goal: int | None = None
    first_deg: float | None = None
    second_deg: float | None = None
    asked_deg: tuple[float, float] | None = None
    tempo_bpm: float | None = None
    asked_bpm: float | None = None
    side: int = 0
    vertical: bool = False
    measured: bool = True
    bow: bool = True
    moving: bool = False


class TargetField(QWidget):
    """The part of the window in which targets are drawn."""

    def __init__(self) -> None:
        super().__init__()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(words.say("field.name"))
        self.px_per_mm = 96 / 25.4
        self.distance_mm = 600.0
        self.target_percent = 100
        self.text_percent = 100
        #: Whether degrees and tempo stand beside the target, or elsewhere.
        self.figures = True
        self.offsets: list[Point] = []
        self.active = 0
        self.hint, self._hint_large = "", False
        self.state = FieldState()
        self.backdrop: Backdrop | None = None
        self._sway: float | None = None
        self._shift_deg = 0.0
        self._bars = BackdropPaint()

    def minimumSizeHint(self) -> QSize:
        """Room for the field around one target."""
        return QSize(320, 120)

    def px_of(self, angle_deg: float) -> float:
        """Pixels of a thing near the middle that is seen at an angle."""
        return length_mm(angle_deg, self.distance_mm) * self.px_per_mm

    def show_targets(self, offsets: list[Point], active: int = 0) -> None:
        """Draw targets at offsets (mm right and up of the middle); ``active`` is the asked one."""
        if (offsets, active) != (self.offsets, self.active):
            self.offsets, self.active = offsets, active
            self.update()

    def show_backdrop(self, backdrop: Backdrop | None, shift_deg: float = 0.0) -> None:
        """Draw what moves behind the target, moved so far to the right; or nothing."""
        if (backdrop, shift_deg) != (self.backdrop, self._shift_deg):
            self.backdrop, self._shift_deg = backdrop, shift_deg
            self.update()

    def show_sway(self, sway: float | None) -> None:
        """Let the bead go to and fro (-1 to 1) in place of holding at a side, or hold again."""
        if sway != self._sway:
            self._sway = sway
            self.update()

    def show_state(self, state: FieldState) -> None:
        """Draw the figures; nothing happens while they are the same."""
        if state == self.state:
            return
        self.state = state
        self.setAccessibleDescription(self.in_words())
        self.update()

    def show_hint(self, hint: str, *, large: bool = False) -> None:
        """A word under the target, for a set-up without figures; ``large`` as the count is."""
        if (hint, large) != (self.hint, self._hint_large):
            self.hint, self._hint_large = hint, large
            self.update()

    def in_words(self) -> str:
        """The figures as a sentence."""
        s = self.state
        if s.count is None:
            return ""
        count, tempo = s.count, _figure(s.tempo_bpm)
        first, second = _figure(s.first_deg), _figure(s.second_deg)
        if s.vertical:
            return words.say("field.text_up", count=count, up=first, down=second, tempo=tempo)
        return words.say("field.text", count=count, right=first, left=second, tempo=tempo)

    def centre_px(self, offset: Point) -> QPointF:
        """Where an offset lies in the widget."""
        middle = QRectF(self.rect()).center()
        return QPointF(
            middle.x() + offset[0] * self.px_per_mm, middle.y() - offset[1] * self.px_per_mm
        )

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.backdrop is not None:
            self._draw_backdrop(painter, self.backdrop)
        if self.state.count is not None:
            self._draw_counts(painter)
        for k, offset in enumerate(self.offsets):
            painter.save()
            painter.translate(self.centre_px(offset))
            if self.state.count is not None:
                if self.state.bow:
                    if self.figures and self.bow_px() == self._wished_bow_px():
                        self._draw_figures(painter)
                    self._draw_bow(painter)
            elif self.hint and k == self.active:
                self._draw_hint(painter)
            self._draw_target(painter, asked=k == self.active)
            painter.restore()

    # --- parts ---

    def _colour(self, role: QPalette.ColorRole) -> QColor:
        return self.palette().color(role)

    def _draw_backdrop(self, painter: QPainter, backdrop: Backdrop) -> None:
        role = QPalette.ColorRole
        radius = min(self.px_of(2 * backdrop.radius_deg) / 2, self.height() / 2, self.width() / 2)
        at = QRectF(self.rect()).center()
        period, shift = self.px_of(backdrop.period_deg), self.px_of(self._shift_deg)
        colours = self._colour(role.Window), self._colour(role.WindowText), backdrop.contrast
        self._bars.draw(painter, at, radius, period, shift, colours)

    def _draw_target(self, painter: QPainter, *, asked: bool) -> None:
        role = QPalette.ColorRole
        detail = self.px_of(DETAIL_DEG) * self.target_percent / 100
        radius = detail * _DISC / 2
        ink, paper = self._colour(role.WindowText), self._colour(role.Window)
        painter.setBrush(ink if asked else paper)
        line = max(2.0 if asked else theme.LINE, detail * 0.08)
        painter.setPen(QPen(ink if asked else self._colour(role.Mid), line))
        painter.drawEllipse(QPointF(0, 0), radius, radius)
        if not asked:
            return
        stroke = max(1.5, detail * 0.13)
        ring = detail / 2 - stroke / 2
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(paper, stroke, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
        box = QRectF(-ring, -ring, 2 * ring, 2 * ring)
        notch = 50.0
        painter.drawArc(box, round((notch / 2) * 16), round((360 - notch) * 16))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(paper)
        painter.drawEllipse(QPointF(0, 0), stroke * 1.1, stroke * 1.1)

    def bow_px(self) -> float:
        """Radius of the bow: as wished, or less where the field is too low for it."""
        room = self.height() / 2 - _PIN_PX - _RIM_PX
        return min(self._wished_bow_px(), max(room, 2 * self.disc_px()))

    def _wished_bow_px(self) -> float:
        """So that pins and bead end where nothing is read any more."""
        return self.bow_reach_px() - _PIN_PX - _RIM_PX

    def bow_reach_px(self) -> float:
        """How far from the target anything may be read."""
        return offset_mm(AROUND_DEG, self.distance_mm) * self.px_per_mm

    def disc_px(self) -> float:
        """Radius of the target."""
        return self.px_of(DETAIL_DEG) * _DISC / 2 * self.target_percent / 100

    def _bow_angle(self, amplitude_deg: float) -> float:
        """Angle on the bow, clockwise from 12 o'clock, of an amplitude to the right."""
        share = max(-1.0, min(1.0, amplitude_deg / BOW_END_DEG))
        return share * self._span()

    def _span(self) -> float:
        """How far the bow reaches from its middle to each side."""
        return _BOW_SPAN_UPRIGHT if self.state.vertical else _BOW_SPAN

    def _draw_bow(self, painter: QPainter) -> None:
        role, s = QPalette.ColorRole, self.state
        painter.save()
        if s.vertical:
            painter.rotate(90)
        radius = self.bow_px()
        box = QRectF(-radius, -radius, 2 * radius, 2 * radius)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        thin = QPen(self._colour(role.Mid), 3)
        thin.setCapStyle(Qt.PenCapStyle.FlatCap)
        painter.setPen(thin)
        span = self._span()
        painter.drawArc(box, round((90 - span) * 16), round(2 * span * 16))
        if s.asked_deg is not None:
            thick = QPen(self._colour(role.Highlight), 10)
            thick.setCapStyle(Qt.PenCapStyle.FlatCap)
            painter.setPen(thick)
            low, high = (self._bow_angle(v) for v in _wide_enough(s.asked_deg))
            painter.drawArc(box, round((90 - high) * 16), round((high - low) * 16))
            painter.drawArc(box, round((90 + low) * 16), round((high - low) * 16))
        for amplitude, sign in ((s.first_deg, 1), (s.second_deg, -1)):
            if amplitude is not None:
                self._draw_pin(painter, radius, sign * self._bow_angle(amplitude))
        if s.side:
            self._draw_bead(painter, radius, s.side if self._sway is None else self._sway)
        painter.restore()

    def _draw_pin(self, painter: QPainter, radius: float, clockwise: float) -> None:
        painter.save()
        painter.rotate(clockwise)
        painter.setPen(QPen(self._colour(QPalette.ColorRole.WindowText), 4))
        painter.drawLine(QPointF(0, -radius - _PIN_PX), QPointF(0, -radius + _PIN_PX))
        painter.restore()

    def _draw_bead(self, painter: QPainter, radius: float, side: float) -> None:
        angle = math.radians(side * (self._span() + _BEAD_AT))
        at = QPointF(radius * math.sin(angle), -radius * math.cos(angle))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._colour(QPalette.ColorRole.Accent))
        painter.drawEllipse(at, _BEAD_PX, _BEAD_PX)

    def _ink(self) -> QColor:
        role = QPalette.ColorRole
        return self._colour(role.WindowText if self.state.measured else role.PlaceholderText)

    def _count_sizes(self) -> CountSizes:
        """How large the count may be, for as many digits as it comes to in this set."""
        s, wished = self.state, QFontMetricsF(self._wished_font())
        digits = max(len(str(n)) for n in (s.count or 0, s.goal or 0, 10))
        wide = wished.horizontalAdvance(words.number(int("8" * digits)))
        whole = QSizeF(wide, wished.capHeight())
        room = 0.42 * self.height()
        if s.bow:
            room = self.height() / 2 - self.disc_px() - 2 * _GAP_PX
        low = min(max(room, 12.0) / whole.height(), 1.0)
        away, reach = self.disc_px() + _GAP_PX, self.bow_reach_px()
        under = share_under(whole, away, reach, right=self._free_right())
        least = COUNT_PX / (theme.size_px("count", self.text_percent) * self._grown())
        under, beside = (max(s, least) for s in (under, share_beside(whole, away, reach)))
        return CountSizes(whole * min(low, under), whole * min(low, beside))

    def _free_right(self) -> float:
        """Room for the count to the right of its target's middle."""
        if self.state.bow and self.state.vertical:
            bead = math.cos(math.radians(self._span() + _BEAD_AT)) * self.bow_px()
            return bead - _BEAD_PX - _GAP_PX
        return EDGE_MM * self.px_per_mm if self.state.moving else math.inf

    def _wished_font(self) -> QFont:
        font = theme.font("count", self.text_percent, bold=True)
        font.setPointSizeF(font.pointSizeF() * self._grown())
        return font

    def _grown(self) -> float:
        """How much larger the count may be in a large window."""
        return max(1.0, self.height() / GROWS_FROM_PX)

    def _font_of(self, capital_px: float) -> QFont:
        """The count's type with digits of a height."""
        font = self._wished_font()
        share = capital_px / QFontMetricsF(font).capHeight()
        font.setPointSizeF(font.pointSizeF() * share)
        return font

    def count_boxes(self) -> list[QRectF]:
        """Where the count is drawn: a box at each target."""
        sizes = self._count_sizes()
        targets = [self.centre_px(offset) for offset in self.offsets]
        radius = self.disc_px()
        if self.state.bow:
            # Over the target and beside it stand other figures.
            size = sizes.under
            left = -max(size.width() / 2, size.width() - self._free_right())
            return [QRectF(at + QPointF(left, radius + _GAP_PX), size) for at in targets]
        # Round digits reach a little beyond a capital's height.
        over = 0.05 * sizes.under.height()
        free = QRectF(self.rect()).adjusted(0, over, 0, -over)
        if self.state.moving:
            up = self.state.vertical
            return [count_place_moving(at, free, radius, sizes, _GAP_PX, up=up) for at in targets]
        return count_places(targets, free, radius, sizes, _GAP_PX)

    def _draw_counts(self, painter: QPainter) -> None:
        painter.setPen(self._ink())
        text = words.number(self.state.count or 0)
        for box in self.count_boxes():
            at = QPointF(box.center().x(), box.top())
            draw_tight(painter, self._font_of(box.height()), text, at, above=False)

    def _draw_figures(self, painter: QPainter) -> None:
        s = self.state
        disc = self.disc_px()
        painter.setPen(self._ink())
        small = theme.font("small", self.text_percent, bold=True)
        metrics = QFontMetricsF(small)
        free = self.bow_px() - _PIN_PX - _RIM_PX
        high, room = metrics.capHeight(), disc + _GAP_PX
        # One that is missing must not let the other in: what is drawn keeps its place.
        beside = hypot(room + metrics.horizontalAdvance(f"{words.number(28)}°"), high / 2) <= free
        for value, sign in ((s.first_deg, 1), (s.second_deg, -1)):
            # Dashes beside the target would say nothing, and draw the eyes away from it.
            if beside and value is not None and not s.vertical:
                draw_beside(painter, small, f"{words.number(value)}°", room, sign)
        widest = metrics.horizontalAdvance(f"{words.number(128)} ▲")
        if s.tempo_bpm is not None and hypot(widest / 2, disc + 8 + high) <= free:
            tempo = f"{words.number(s.tempo_bpm)}{tempo_arrow(s.tempo_bpm, s.asked_bpm)}"
            draw_tight(painter, small, tempo, QPointF(0, -disc - 8), above=True)

    def _draw_hint(self, painter: QPainter) -> None:
        painter.setPen(self._colour(QPalette.ColorRole.WindowText))
        below, font = self.disc_px() + theme.M, theme.font("lead", self.text_percent, bold=True)
        if self._hint_large:
            below = self.disc_px() + _GAP_PX
            font = self._font_of(self._count_sizes().under.height())
        draw_tight(painter, font, self.hint, QPointF(0, below), above=False)


def _wide_enough(asked: tuple[float, float]) -> tuple[float, float]:
    low, high = asked
    middle, half = (low + high) / 2, max((high - low) / 2, 1.0)
    return middle - half, middle + half


def _figure(value: float | None) -> str:
    return words.say("summary.not_measured") if value is None else words.number(value)
