"""Drawing a trace: lines over time, and what lies behind and above them."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPalette, QPen, QPolygonF

from ui import theme, words
from ui.desk import trade
from ui.desk.moments import all_marks_of, doubts_of, events_of, gaps_of, repetitions_of
from ui.desk.session_data import HOLE_S, Array, SessionView, SetView, Span
from ui.desk.trace_key import band_colour, pattern_of

#: Bars of events that go on at once lie above each other.
LANES, LANE_PX = 3, 6
#: Names of events stand in so many rows above the bars.
LABEL_ROWS = 2
_STYLES = (Qt.PenStyle.SolidLine, Qt.PenStyle.DashLine, Qt.PenStyle.DotLine)


@dataclass(frozen=True)
class TracePainter:
    """A set of a session, drawn from one time to another into a box.

    Lines differ by stroke (solid, dashed, dotted) and not by colour alone.
    """

    view: SessionView
    shown: SetView
    box: QRectF
    from_s: float
    to_s: float
    cursor_s: float
    not_valid: frozenset[int]
    scale: tuple[float, float]
    colours: QPalette

    def draw(self, painter: QPainter) -> None:
        """Draw everything, cursor included."""
        self._draw_spans(painter)
        low, high = self.scale
        self._draw_axis(painter, low, high)
        painter.setClipRect(self.box)
        self._draw_lines(painter, low, high)
        painter.setClipping(False)
        x = self._x(self.cursor_s)
        painter.setPen(QPen(self.colours.color(QPalette.ColorRole.WindowText), 1.5))
        if self.box.left() <= x <= self.box.right():
            painter.drawLine(QPointF(x, self.box.top()), QPointF(x, self.box.bottom()))

    def _x(self, time_s: float) -> float:
        share = (time_s - self.from_s) / (self.to_s - self.from_s)
        return self.box.left() + share * self.box.width()

    @property
    def _times(self) -> Array:
        return self.view.times_s

    def _draw_spans(self, painter: QPainter) -> None:
        role = QPalette.ColorRole
        band = band_colour(self.colours)
        for span in repetitions_of(self.shown):
            part = self._part(span)
            if part is None:
                continue
            if span.number is not None and span.number % 2:
                painter.fillRect(part, band)
            if span.number in self.not_valid:
                painter.fillRect(part, pattern_of("not_valid", self.colours))
            painter.setPen(self.colours.color(role.PlaceholderText))
            if part.width() > painter.fontMetrics().horizontalAdvance(span.text):
                low = part.adjusted(0, part.height() - painter.fontMetrics().height(), 0, 0)
                painter.drawText(low, Qt.AlignmentFlag.AlignCenter, span.text)
        for span in self.view.breaks:
            part = self._part(span)
            if part is not None:
                painter.fillRect(part, pattern_of("pause", self.colours))
                self._name_break(painter, part, words.say(f"desk.{span.text}"))
        for span in gaps_of(self.view, self.shown):
            part = self._part(span)
            if part is not None:
                painter.fillRect(part, pattern_of("gap", self.colours))
        for span in doubts_of(self.view, self.shown):
            part = self._part(span)
            if part is not None:
                # Along the foot alone: the lines above it are measured.
                foot = part.adjusted(0, part.height() - 0.5 * painter.fontMetrics().height(), 0, 0)
                painter.fillRect(foot, pattern_of("doubt", self.colours))
        self._draw_events(painter)
        self._draw_marks(painter)

    def _name_break(self, painter: QPainter, part: QRectF, text: str) -> None:
        """Its word in the middle, on paper of its own, where there is room."""
        role = QPalette.ColorRole
        metrics = painter.fontMetrics()
        size = QRectF(0, 0, metrics.horizontalAdvance(text) + 2 * theme.S, metrics.height())
        if size.width() <= part.width():
            size.moveCenter(part.center())
            painter.fillRect(size, self.colours.color(role.Base))
            painter.setPen(self.colours.color(role.WindowText))
            painter.drawText(size, Qt.AlignmentFlag.AlignCenter, text)

    def _draw_marks(self, painter: QPainter) -> None:
        """A pole with a pennant: no other thing has its shape."""
        ink, box = self.colours.color(QPalette.ColorRole.WindowText), self.box
        high = 0.55 * painter.fontMetrics().height()
        for time_s in all_marks_of(self.view.summary):
            if not self.from_s <= time_s <= self.to_s:
                continue
            # On whole pixels, or it would be a grey blur.
            x = round(self._x(time_s))
            painter.setPen(QPen(ink, 2.0, Qt.PenStyle.DashDotLine))
            painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()))
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(ink)
            # Away from the nearer edge, so that it is whole.
            way = 1.0 if x < box.center().x() else -1.0
            tip = QPointF(x + 1.4 * way * high, box.top() + high / 2)
            top, foot = QPointF(x, box.top()), QPointF(x, box.top() + high)
            painter.drawPolygon(QPolygonF([top, tip, foot]))
        painter.setBrush(Qt.BrushStyle.NoBrush)

    def _draw_events(self, painter: QPainter) -> None:
        """A bar above the lines each, and their names."""
        box = self.box
        metrics, role = painter.fontMetrics(), QPalette.ColorRole
        named: list[tuple[float, str]] = []
        spans = sorted(events_of(self.shown), key=lambda s: s.from_s)
        for span, lane in zip(spans, lanes_of(spans), strict=True):
            part = self._part(span)
            if part is None:
                continue
            top = box.top() - 6 - LANE_PX * lane
            bar = QRectF(part.left(), top, max(part.width(), 3.0), LANE_PX - 2)
            painter.fillRect(bar, self.colours.color(role.Accent))
            named.append((bar.left(), trade.event(span.text)))
        painter.setPen(self.colours.color(role.WindowText))
        for label in labels_of(named, metrics.horizontalAdvance, (box.left(), box.right())):
            foot = box.top() - 5 - LANE_PX * LANES - label.row * metrics.height()
            painter.drawText(QPointF(label.left, foot), label.text)

    def _part(self, span: Span) -> QRectF | None:
        """The box of a span, as far as it is in sight."""
        box = self.box
        if span.to_s < self.from_s or span.from_s > self.to_s:
            return None
        left = max(self._x(span.from_s), box.left())
        right = min(self._x(span.to_s), box.right())
        return QRectF(left, box.top(), right - left, box.height())

    def _draw_axis(self, painter: QPainter, low: float, high: float) -> None:
        box = self.box
        role = QPalette.ColorRole
        metrics = painter.fontMetrics()
        thin = QPen(self.colours.color(role.Mid), 0.6)
        ink = self.colours.color(role.WindowText)
        step = _nice((high - low) * metrics.height() * 1.4 / max(box.height(), 1))
        for k in range(math.ceil(low / step), math.floor(high / step) + 1):
            y = box.bottom() - (k * step - low) / (high - low) * box.height()
            painter.setPen(thin)
            painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y))
            painter.setPen(ink)
            left = QRectF(0, y - metrics.height() / 2, box.left() - 6, metrics.height())
            right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            painter.drawText(left, right, words.number(k * step))
        wide = metrics.horizontalAdvance("0000.0") * 1.6
        step = _nice((self.to_s - self.from_s) * wide / max(box.width(), 1))
        for k in range(math.ceil(self.from_s / step), math.floor(self.to_s / step) + 1):
            x = self._x(k * step)
            painter.setPen(thin)
            painter.drawLine(QPointF(x, box.bottom()), QPointF(x, box.bottom() + 5))
            painter.setPen(ink)
            text = words.say("desk.at", time=words.number(k * step, 0 if step >= 1 else 1))
            # What stands at the very end is moved in, or its unit would be cut.
            most = box.right() + theme.M - metrics.horizontalAdvance(text) / 2
            below = QRectF(min(x, most) - wide / 2, box.bottom() + 5, wide, metrics.height())
            painter.drawText(below, Qt.AlignmentFlag.AlignCenter, text)

    def _draw_lines(self, painter: QPainter, low: float, high: float) -> None:
        box = self.box
        if not len(self._times):
            return
        near = (self._times >= self.from_s - 1.0) & (self._times <= self.to_s + 1.0)
        x = box.left() + (self._times[near] - self.from_s) / (self.to_s - self.from_s) * box.width()
        for k, column in enumerate(self.shown.columns.values()):
            values = self.view.columns[column][near]
            y = box.bottom() - (values - low) / (high - low) * box.height()
            painter.setPen(line_pen(self.colours, k))
            for part in _unbroken(x, y, self._times[near]):
                painter.drawPolyline(part)


def scale_of(view: SessionView, shown: SetView) -> tuple[float, float] | None:
    """Lowest and highest value of a set's lines with some room; None where there is no value."""
    inside = (view.times_s >= shown.from_s) & (view.times_s <= shown.to_s)
    parts = [view.columns[c][inside] for c in shown.columns.values()] if len(inside) else []
    found = np.concatenate(parts) if parts else np.zeros(0)
    found = found[np.isfinite(found)]
    if not len(found):
        return None
    low, high = float(found.min()), float(found.max())
    room = max(0.08 * (high - low), 1.0)
    return low - room, high + room


@dataclass
class Label:
    """The name above a bar, or above several of one kind; ``row`` 0 is the lowest.

    Without ``room`` for a count it stays the name of one bar.
    """

    left: float
    row: int
    name: str
    room: bool = True
    count: int = 1

    @property
    def text(self) -> str:
        """The name, and of how many bars it is."""
        if self.count == 1:
            return self.name
        return words.say("desk.event.times", what=self.name, count=self.count)


def labels_of(
    bars: Sequence[tuple[float, str]], width: Callable[[str], float], edges: tuple[float, float]
) -> list[Label]:
    """Names of bars that lie close together, none over another.

    A bar without room for its name in either row is counted with the last one of its kind before
    it that has room for a count; where there is none, it gets none (the cursor and the list tell
    it).

    Parameters
    ----------
    bars
        Left edge and name of each, from left to right.
    width
        Of a text, as it is drawn.
    edges
        Where the drawing begins and ends.
    """
    free, labels = [edges[0]] * LABEL_ROWS, []
    for at, name in bars:
        # Room for a count is kept where there is any, as bars to come may be counted with it.
        counted = width(words.say("desk.event.times", what=name, count=99))
        for wide in (counted, width(name)):
            left = min(at, edges[1] - wide)
            row = next((k for k, from_x in enumerate(free) if from_x <= left), None)
            if row is not None:
                labels.append(Label(left, row, name, room=wide == counted))
                free[row] = left + wide + theme.S
                break
        else:
            alike = (found for found in reversed(labels) if found.name == name and found.room)
            counting = next(alike, None)
            if counting is not None:
                counting.count += 1
    return labels


def lanes_of(spans: Sequence[Span]) -> list[int]:
    """Lanes for events in the order of their beginnings, so that none hides another.

    Where more go on at once than there are lanes, the last one has the rest.
    """
    free_from = [float("-inf")] * LANES
    lanes = []
    for span in spans:
        lane = next((k for k, t in enumerate(free_from) if t <= span.from_s), LANES - 1)
        free_from[lane] = max(free_from[lane], span.to_s)
        lanes.append(lane)
    return lanes


def line_pen(palette: QPalette, number: int) -> QPen:
    """How the n-th line is drawn: strong and solid, then dashed, then dotted."""
    role = QPalette.ColorRole
    colours = (role.Highlight, role.BrightText, role.WindowText)
    pen = QPen(palette.color(colours[number % 3]), 2.2 - 0.3 * (number % 3))
    pen.setStyle(_STYLES[number % 3])
    return pen


def _unbroken(x: Array, y: Array, times: Array) -> Sequence[QPolygonF]:
    """Stretches without a hole, thinned where there are many samples to a pixel."""
    good = np.isfinite(y)
    joins = good[1:] & good[:-1] & (np.diff(times) <= HOLE_S)
    starts = np.flatnonzero(np.concatenate([[True], ~joins]))
    parts = []
    for a, b in zip(starts, [*starts[1:], len(x)], strict=True):
        if not good[a] or b - a < 2:
            continue
        keep = slice(a, b, max(1, (b - a) // 4000))
        points = [QPointF(p, q) for p, q in zip(x[keep], y[keep], strict=True)]
        parts.append(QPolygonF(points))
    return parts


def _nice(rough: float) -> float:
    """The next of 1, 2, 5 times a power of ten."""
    power = 10.0 ** math.floor(math.log10(max(rough, 1e-6)))
    return next(m * power for m in (1, 2, 5, 10) if m * power >= rough * 0.999)
