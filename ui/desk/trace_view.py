"""The trace of a session: lines over time, with repetitions, events, pauses and a cursor."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from math import nan

import numpy as np
from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPalette, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from ui import theme, words
from ui.desk.moments import marks_of, told_at
from ui.desk.session_data import Array, SessionView, SetView, nearest
from ui.desk.trace_paint import LABEL_ROWS, LANE_PX, LANES, TracePainter, scale_of
from ui.widgets.basic import draw_focus

#: Shortest stretch of time that fills the width.
LEAST_S = 0.5
NEAR_PX = 4.0


class TraceView(QWidget):
    """Shows one set of a session, and what lies around it when zoomed out."""

    moved = Signal()
    followed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(words.say("desk.trace"))
        self.setAccessibleDescription(words.say("desk.trace.how"))
        self._view: SessionView | None = None
        self._set: SetView | None = None
        self._scale = (-1.0, 1.0)
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
        return QSize(260, 8 * self.fontMetrics().height())

    # --- what is shown ---

    def show_set(self, view: SessionView | None, chosen: SetView | None) -> None:
        """Show a set."""
        self._view, self._set = view, chosen
        self.share_scale(None)
        self.show_all()
        self.cursor_s = self.from_s
        self.moved.emit()

    def share_scale(self, other: TraceView | None) -> None:
        """Draw values on a scale that holds those of another trace too; None: on one's own."""
        mine = self._own_scale()
        theirs = None if other is None else other._own_scale()
        known = [s for s in (mine, theirs) if s is not None] or [(-1.0, 1.0)]
        self._scale = (min(s[0] for s in known), max(s[1] for s in known))
        self.update()

    def _own_scale(self) -> tuple[float, float] | None:
        if self._set is None or self._view is None:
            return None
        return scale_of(self._view, self._set)

    def follow(self, other: TraceView) -> None:
        """Show the same stretch of time as another trace, each from the beginning of its set."""
        if self._set is None or other.shown is None:
            return
        by_s = self._set.from_s - other.shown.from_s
        wanted = (other.from_s + by_s, other.to_s + by_s, other.cursor_s + by_s)
        if wanted != (self.from_s, self.to_s, self.cursor_s):
            self.from_s, self.to_s, self.cursor_s = wanted
            self.update()
            self.followed.emit()

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
        k = nearest(self._times, self.cursor_s)
        columns = self._view.columns
        return [
            (n, nan if k is None else float(columns[c][k])) for n, c in self._set.columns.items()
        ]

    def told(self) -> list[str]:
        """What there is at the cursor, in words: repetition, events, pause, mark."""
        if self._set is None or self._view is None:
            return []
        # A mark is named as soon as the cursor's line touches its own.
        near_s = NEAR_PX / max(self._box.width(), 1.0) * (self.to_s - self.from_s)
        return told_at(self._view, self._set, self.cursor_s, near_s)

    @property
    def shown(self) -> SetView | None:
        """The set that is shown."""
        return self._set

    @property
    def view(self) -> SessionView | None:
        """The session that is shown."""
        return self._view

    @property
    def _times(self) -> Array:
        return np.zeros(0) if self._view is None else self._view.times_s

    @property
    def _whole(self) -> tuple[float, float]:
        ends = [] if self._set is None else [self._set.from_s, self._set.to_s]
        if len(self._times):
            ends += [float(self._times[0]), float(self._times[-1])]
        if self._set is not None and self._view is not None:
            ends += marks_of(self._view, self._set)
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
        return QRectF(self.rect()).adjusted(
            3.2 * line,
            (LABEL_ROWS + 0.2) * line + LANES * LANE_PX + theme.S,
            -theme.M,
            -1.6 * line,
        )

    def _time_at(self, x: float) -> float:
        box = self._box
        share = (x - box.left()) / max(box.width(), 1.0)
        return self.from_s + share * (self.to_s - self.from_s)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw everything."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self.font())
        box = self._box
        painter.fillRect(box, self.palette().color(QPalette.ColorRole.Base))
        if self._set is not None and self._view is not None:
            TracePainter(
                self._view,
                self._set,
                box,
                self.from_s,
                self.to_s,
                self.cursor_s,
                self.not_valid,
                self._scale,
                self.palette(),
            ).draw(painter)
        if self.hasFocus():
            draw_focus(painter, QRectF(self.rect()), self.palette())
