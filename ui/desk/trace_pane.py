"""A trace with its title, its key and the values at the cursor."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from math import isfinite

from PySide6.QtCore import QPointF, QSize, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from ui import theme, words
from ui.desk.session_data import SessionView, SetView
from ui.desk.trace_key import KINDS, KeyPart, kinds_in
from ui.desk.trace_paint import line_pen
from ui.desk.trace_view import TraceView
from ui.widgets.basic import Button, Words
from ui.widgets.flow import FlowRow


class _Stroke(QWidget):
    """A piece of a line, as it is drawn."""

    def __init__(self, number: int) -> None:
        super().__init__()
        self._number = number
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Preferred)

    def sizeHint(self) -> QSize:
        """A short piece."""
        return QSize(36, 12)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setPen(line_pen(self.palette(), self._number))
        y = self.height() / 2
        painter.drawLine(QPointF(2, y), QPointF(self.width() - 2, y))


class TracePane(QWidget):
    """One session's trace."""

    resized = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.trace = TraceView()
        self.title = Words(role="desk", bold=True)
        self.values = Words(role="desk")
        self.axis = Words(role="desk", soft=True)
        self._strokes = [_Stroke(k) for k in range(3)]
        self._names = [Words(role="desk") for _ in range(3)]
        self._pairs: list[QWidget] = []
        self.closer = Button("+", "small", words.say("desk.zoom_in"))
        self.wider = Button("−", "small", words.say("desk.zoom_out"))
        self.closer.clicked.connect(lambda: self.trace.zoom(0.5))
        self.wider.clicked.connect(lambda: self.trace.zoom(2.0))
        self.trace.moved.connect(self._say_values)
        self.trace.followed.connect(self._say_values)
        key = QWidget()
        row = FlowRow(key)
        row.setContentsMargins(0, 0, 0, 0)
        for stroke, name in zip(self._strokes, self._names, strict=True):
            pair = QWidget()
            inside = QHBoxLayout(pair)
            inside.setContentsMargins(0, 0, 0, 0)
            name.setWordWrap(False)
            inside.addWidget(stroke)
            inside.addWidget(name)
            row.addWidget(pair)
            self._pairs.append(pair)
        self.axis.setWordWrap(False)
        row.addWidget(self.axis)
        self.key = [KeyPart(kind) for kind in KINDS]
        for part in self.key:
            row.addWidget(part)
        #: What stands above and below the lines, and needs as much room as in another pane.
        self.around: tuple[QWidget, ...] = (self.title, key, self.values)
        foot = QHBoxLayout()
        foot.addWidget(self.values, 1)
        foot.addWidget(self.closer)
        foot.addWidget(self.wider)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.S // 2)
        column.addWidget(self.title)
        column.addWidget(self.trace, 1)
        column.addWidget(key)
        column.addLayout(foot)

    def show_set(self, title: str, view: SessionView | None, chosen: SetView | None) -> None:
        """Show a set of a session, or only a title while it is read."""
        self.say_title(title)
        columns = [] if chosen is None else list(chosen.columns)
        for k, (stroke, name) in enumerate(zip(self._strokes, self._names, strict=True)):
            stroke.setVisible(k < len(columns))
            name.setVisible(k < len(columns))
            if k < len(columns):
                name.setText(words.say(f"desk.line.{columns[k]}"))
        self.axis.setText("" if chosen is None else words.say(f"desk.axis.{chosen.axis}"))
        self.trace.show_set(view, chosen)
        self.show_not_valid(frozenset())

    def show_not_valid(self, marked: frozenset[int]) -> None:
        """Repetitions that were marked; the key tells of what there is."""
        trace = self.trace
        trace.not_valid = marked
        known = trace.view is not None and trace.shown is not None
        there = kinds_in(trace.view, trace.shown, marked) if known else []
        for part in self.key:
            part.setVisible(part.kind in there)
        # Names that were set while their row was out of sight would keep the width of others.
        for pair in self._pairs:
            layout = pair.layout()
            if layout is not None:
                layout.invalidate()
            pair.updateGeometry()
        trace.update()

    def say_title(self, title: str) -> None:
        """What stands above the lines; nothing takes no room."""
        self.title.setText(title)
        self.title.setVisible(bool(title))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Words take other heights at another width."""
        super().resizeEvent(event)
        self.resized.emit()

    def _say_values(self) -> None:
        """Say where the cursor is, and what is there."""
        trace = self.trace
        parts = [words.say("desk.at", time=words.number(trace.cursor_s, 2))]
        for key, value in trace.values():
            line = words.say(f"desk.line.{key}")
            if isfinite(value):
                # Without the sign that a rounded 0 may have.
                shown = words.number(round(value, 1) + 0.0, 1)
                parts.append(words.say("desk.line.value", line=line, value=shown))
            else:
                parts.append(words.say("desk.line.none", line=line))
        parts += trace.told()
        text = words.row_of(parts)
        self.values.setText(text)
        # Of two traces one has to be told from the other without seeing them.
        title = "" if self.title.isHidden() else self.title.text()
        named = words.row_of([p for p in (words.say("desk.trace"), title) if p])
        trace.setAccessibleName(f"{named}: {text}")
