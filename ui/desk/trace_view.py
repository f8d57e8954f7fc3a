"""The trace of a session: lines over time, with repetitions, events, pauses and a cursor."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPalette,
    QPen,
    QPolygonF,
    QWheelEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from tracker.records import telling
from ui import theme, words
from ui.desk.session_data import Array, SessionView, SetView, Span, events_of, repetitions_of
from ui.widgets.basic import draw_focus

#: Shortest stretch of time that fills the width.
LEAST_S = 0.5
_STYLES = (Qt.PenStyle.SolidLine, Qt.PenStyle.DashLine, Qt.PenStyle.DotLine)


class TraceView(QWidget):
    """Draws one set of a session, and what lies around it when zoomed out.

    Lines differ by stroke (solid, dashed, dotted) and not by colour alone.
    """

    moved = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(words.say("desk.trace"))
        self.setAccessibleDescription(words.say("desk.trace.how"))
        self._view: SessionView | None = None
        self._set: SetView | None = None
        self.not_valid: frozenset[int] = frozenset()
        self.from_s, self.to_s, self.cursor_s = 0.0, 1.0, 0.0
        self._drag: tuple[float, float, float] | None = None
        self.set_percent(100)

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self.setFont(theme.font("desk", percent))
        self.update()

    def sizeHint(self) -> QSize:
        """Wide."""
        return QSize(600, 14 * self.fontMetrics().height())

    def minimumSizeHint(self) -> QSize:
        """High enough for the lines and what is written around them."""
        return QSize(260, 9 * self.fontMetrics().height())

    # --- what is shown ---

    def show_set(self, view: SessionView | None, chosen: SetView | None) -> None:
        """Show a set."""
        self._view, self._set = view, chosen
        self.show_all()
        self.cursor_s = self.from_s
        self.moved.emit()

    def show_all(self) -> None:
        """The whole set."""
        if self._set is not None:
            self.from_s, self.to_s = self._set.from_s, self._set.to_s
        self.update()
        self.moved.emit()

    def zoom(self, factor: float, about_s: float | None = None) -> None:
        """Closer with a factor below 1; the time stays where it is."""
        at = self.cursor_s if about_s is None else about_s
        if not self.from_s <= at <= self.to_s:
            at = (self.from_s + self.to_s) / 2
        longest = self._whole[1] - self._whole[0]
        length = min(max((self.to_s - self.from_s) * factor, LEAST_S), longest)
        share = (at - self.from_s) / (self.to_s - self.from_s)
        self._look_at(at - share * length, length)

    def pan(self, by_s: float) -> None:
        """Earlier or later."""
        self._look_at(self.from_s + by_s, self.to_s - self.from_s)

    def go_to(self, time_s: float) -> None:
        """Put the cursor somewhere and keep it in sight."""
        low, high = self._whole
        self.cursor_s = min(max(time_s, low), high)
        length = self.to_s - self.from_s
        if not self.from_s <= self.cursor_s <= self.to_s:
            self._look_at(self.cursor_s - length / 2, length)
        self.update()
        self.moved.emit()

    def step(self, samples: int) -> None:
        """The cursor so many samples on."""
        times = self._times
        if not len(times):
            self.go_to(self.cursor_s + 0.1 * samples)
            return
        at = int(np.argmin(np.abs(times - self.cursor_s))) + samples
        self.go_to(float(times[min(max(at, 0), len(times) - 1)]))

    def values(self) -> list[tuple[str, float]]:
        """Names and values of the lines at the cursor, NaN where not measured."""
        if self._set is None or self._view is None or not len(self._times):
            return []
        k = int(np.argmin(np.abs(self._times - self.cursor_s)))
        return [(n, float(self._view.columns[c][k])) for n, c in self._set.columns.items()]

    @property
    def shown(self) -> SetView | None:
        """The set that is shown."""
        return self._set

    @property
    def _times(self) -> Array:
        return np.zeros(0) if self._view is None else self._view.times_s

    @property
    def _whole(self) -> tuple[float, float]:
        ends = [] if self._set is None else [self._set.from_s, self._set.to_s]
        if len(self._times):
            ends += [float(self._times[0]), float(self._times[-1])]
        return (min(ends), max(ends)) if ends else (0.0, 1.0)

    def _look_at(self, from_s: float, length: float) -> None:
        low, high = self._whole
        from_s = min(max(from_s, low), max(high - length, low))
        self.from_s, self.to_s = from_s, from_s + length
        self.update()
        self.moved.emit()

    # --- keys and mouse ---

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move the cursor, zoom, pan."""
        key, shift = event.key(), bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        length = self.to_s - self.from_s
        actions = {
            Qt.Key.Key_Plus: lambda: self.zoom(0.5),
            Qt.Key.Key_Equal: lambda: self.zoom(0.5),
            Qt.Key.Key_Minus: lambda: self.zoom(2.0),
            Qt.Key.Key_Home: self.show_all,
            Qt.Key.Key_PageDown: lambda: self.pan(0.8 * length),
            Qt.Key.Key_PageUp: lambda: self.pan(-0.8 * length),
        }
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            sign = 1 if key == Qt.Key.Key_Right else -1
            if shift:
                self.go_to(self.cursor_s + sign)
            else:
                self.step(sign)
        elif key in actions:
            actions[Qt.Key(key)]()
        else:
            super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Zoom about the mouse."""
        self.zoom(0.8 if event.angleDelta().y() > 0 else 1.25, self._time_at(event.position().x()))
        event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Begin to pull the picture along."""
        self._drag = (event.position().x(), self.from_s, self.to_s - self.from_s)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Pull, or put the cursor under the mouse."""
        x = event.position().x()
        if self._drag is not None and event.buttons():
            start_x, from_s, length = self._drag
            self._look_at(from_s - (x - start_x) / max(self._box.width(), 1) * length, length)
            return
        self.cursor_s = min(max(self._time_at(x), self.from_s), self.to_s)
        self.update()
        self.moved.emit()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        self._drag = None

    # --- drawing ---

    @property
    def _box(self) -> QRectF:
        line = self.fontMetrics().height()
        return QRectF(self.rect()).adjusted(3.2 * line, 2.4 * line, -theme.M, -1.6 * line)

    def _time_at(self, x: float) -> float:
        box = self._box
        share = (x - box.left()) / max(box.width(), 1.0)
        return self.from_s + share * (self.to_s - self.from_s)

    def _x(self, time_s: float) -> float:
        box = self._box
        return box.left() + (time_s - self.from_s) / (self.to_s - self.from_s) * box.width()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw everything."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self.font())
        palette, role = self.palette(), QPalette.ColorRole
        box = self._box
        painter.fillRect(box, palette.color(role.Base))
        if self._set is not None and self._view is not None:
            self._draw_spans(painter, box)
            low, high = self._range()
            self._draw_axis(painter, box, low, high)
            painter.setClipRect(box)
            self._draw_lines(painter, box, low, high)
            painter.setClipping(False)
            x = self._x(self.cursor_s)
            painter.setPen(QPen(palette.color(role.WindowText), 1.5))
            if box.left() <= x <= box.right():
                painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()))
        if self.hasFocus():
            draw_focus(painter, QRectF(self.rect()), palette)

    def _range(self) -> tuple[float, float]:
        """Lowest and highest value of the set's lines, the same however it is zoomed."""
        assert self._set is not None and self._view is not None
        inside = (self._times >= self._set.from_s) & (self._times <= self._set.to_s)
        parts = [self._view.columns[c][inside] for c in self._set.columns.values()]
        found = np.concatenate(parts) if parts and len(self._times) else np.zeros(0)
        found = found[np.isfinite(found)]
        if not len(found):
            return -1.0, 1.0
        low, high = float(found.min()), float(found.max())
        room = max(0.08 * (high - low), 1.0)
        return low - room, high + room

    def _draw_spans(self, painter: QPainter, box: QRectF) -> None:
        assert self._set is not None and self._view is not None
        role = QPalette.ColorRole
        line = QColor(self.palette().color(role.Mid))
        band = QColor(line)
        band.setAlphaF(0.16)
        for span in repetitions_of(self._set):
            part = self._part(span, box)
            if part is None:
                continue
            if span.number is not None and span.number % 2:
                painter.fillRect(part, band)
            if span.number in self.not_valid:
                hatched = QBrush(self.palette().color(role.Accent), Qt.BrushStyle.BDiagPattern)
                painter.fillRect(part, hatched)
            painter.setPen(self.palette().color(role.PlaceholderText))
            if part.width() > painter.fontMetrics().horizontalAdvance(span.text):
                low = part.adjusted(0, part.height() - painter.fontMetrics().height(), 0, 0)
                painter.drawText(low, Qt.AlignmentFlag.AlignCenter, span.text)
        for span in self._view.pauses:
            part = self._part(span, box)
            if part is not None:
                painter.fillRect(part, QBrush(line, Qt.BrushStyle.Dense7Pattern))
        for span in self._unseen():
            part = self._part(span, box)
            if part is not None:
                painter.fillRect(part, QBrush(line, Qt.BrushStyle.FDiagPattern))
        self._draw_events(painter, box)

    def _draw_events(self, painter: QPainter, box: QRectF) -> None:
        """A bar above the lines, with its name where there is room."""
        assert self._set is not None
        metrics, role = painter.fontMetrics(), QPalette.ColorRole
        free_from = box.left()
        for span in sorted(events_of(self._set), key=lambda s: s.from_s):
            part = self._part(span, box)
            if part is None:
                continue
            bar = QRectF(part.left(), box.top() - 7, max(part.width(), 3.0), 5)
            painter.fillRect(bar, self.palette().color(role.Accent))
            text = telling.event(span.text)
            left = max(part.left(), box.left())
            if left >= free_from and left + metrics.horizontalAdvance(text) <= box.right():
                painter.setPen(self.palette().color(role.WindowText))
                painter.drawText(QPointF(left, box.top() - 10), text)
                free_from = left + metrics.horizontalAdvance(text) + theme.S

    def _unseen(self) -> list[Span]:
        """Stretches of the set in which the first line was not measured."""
        assert self._set is not None and self._view is not None
        if not len(self._times):
            return []
        inside = (self._times >= self._set.from_s) & (self._times <= self._set.to_s)
        times = self._times[inside]
        first = next(iter(self._set.columns.values()))
        missing = ~np.isfinite(self._view.columns[first][inside])
        edges = np.flatnonzero(np.diff(np.concatenate([[0], missing.astype(int), [0]])))
        return [
            Span(float(times[a]), float(times[min(b, len(times) - 1)]), "")
            for a, b in zip(edges[::2], edges[1::2], strict=True)
        ]

    def _part(self, span: Span, box: QRectF) -> QRectF | None:
        """The box of a span, as far as it is in sight."""
        if span.to_s < self.from_s or span.from_s > self.to_s:
            return None
        left = max(self._x(span.from_s), box.left())
        right = min(self._x(span.to_s), box.right())
        return QRectF(left, box.top(), right - left, box.height())

    def _draw_axis(self, painter: QPainter, box: QRectF, low: float, high: float) -> None:
        role = QPalette.ColorRole
        metrics = painter.fontMetrics()
        thin = QPen(self.palette().color(role.Mid), 0.6)
        ink = self.palette().color(role.WindowText)
        step = _nice((high - low) * metrics.height() * 1.8 / max(box.height(), 1))
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
            below = QRectF(x - wide / 2, box.bottom() + 5, wide, metrics.height())
            text = words.number(k * step, 0 if step >= 1 else 1)
            painter.drawText(below, Qt.AlignmentFlag.AlignCenter, f"{text} s")

    def _draw_lines(self, painter: QPainter, box: QRectF, low: float, high: float) -> None:
        assert self._set is not None and self._view is not None
        if not len(self._times):
            return
        near = (self._times >= self.from_s - 1.0) & (self._times <= self.to_s + 1.0)
        x = box.left() + (self._times[near] - self.from_s) / (self.to_s - self.from_s) * box.width()
        for k, column in enumerate(self._set.columns.values()):
            values = self._view.columns[column][near]
            y = box.bottom() - (values - low) / (high - low) * box.height()
            painter.setPen(line_pen(self.palette(), k))
            for part in _unbroken(x, y, self._times[near]):
                painter.drawPolyline(part)


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
    joins = good[1:] & good[:-1] & (np.diff(times) < 0.5)
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
