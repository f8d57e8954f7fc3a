"""A row of a form: its label, its field, what is usual, and what is wrong with it."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QEvent, QObject, QPoint, QRectF, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QVBoxLayout, QWidget

from tracker.plan.draft import UNSET, Data, value_at
from ui import theme, words
from ui.desk.small import desk_words, small_button
from ui.editor.inputs import AreaInput, ChoiceInput, LineInput, Tick
from ui.editor.pairs import PairInput, TempoInput
from ui.editor.rows import Row
from ui.widgets.basic import Button, Rule, draw_focus

#: Lines for an ID or a number to call: twice as wide as the labels at most.
_SHORT = ("person", "plan_id", "entry_id", "stage_id", "emergency_number")
#: Fields whose empty line is no value at all; any other is then an empty text.
_LEFT_OUT = ("person", "emergency_number")
Input = LineInput | AreaInput | ChoiceInput | Tick | PairInput | TempoInput


def _input_of(row: Row) -> Input | None:
    empty: Any = UNSET if row.kind != "text" or row.path[-1] in _LEFT_OUT else ""
    match row.kind:
        case "text" | "number" | "day":
            return LineInput(row.kind, empty, row.step)
        case "area":
            return AreaInput()
        case "choice":
            return ChoiceInput(row.default)
        case "tick":
            return Tick(row.label, UNSET if row.path[-1] == "clear" else False, row.said)
        case "member":
            return Tick(row.label, False, row.said)
        case "pair":
            return PairInput(row.step)
        case "tempo":
            return TempoInput(row.choices, row.step)
    return None


class RowView(QWidget):
    """A row: its label, what it is edited with, what is usual, and what is wrong."""

    edited = Signal(object, object)
    acted = Signal(str, object)

    def __init__(self, row: Row) -> None:
        super().__init__()
        self.row = row
        self._short = False
        self.label = desk_words(row.label, bold=row.kind == "note")
        self.input = _input_of(row)
        self.text = desk_words(soft=row.kind != "note", bold=row.strong)
        self.fault = desk_words(bold=True)
        self.fault.setForegroundRole(QPalette.ColorRole.BrightText)
        self.fault_line = Rule(self.fault)
        self.act: Button | None = None
        line = QHBoxLayout()
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(theme.M)
        if self.input is not None:
            stretches = row.kind in ("text", "area")
            line.addWidget(self.input, 1 if stretches else 0)
        if row.act:
            self.act = small_button(row.act_text)
            self.act.clicked.connect(lambda: self.acted.emit(row.act, row.path))
            line.addWidget(self.act)
        # What is usual stands behind a short field, and below a long one.
        self._beside = row.kind in ("number", "day", "choice")
        self._line = QBoxLayout(QBoxLayout.Direction.TopToBottom)
        self._line.setSpacing(theme.S // 2)
        self._line.addLayout(line)
        self._line.setAlignment(line, Qt.AlignmentFlag.AlignTop)
        self._line.addWidget(self.text, 1)
        if row.kind not in ("text", "area"):
            line.addStretch(1)
        inside = QVBoxLayout()
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(theme.S // 2)
        inside.addLayout(self._line)
        inside.addWidget(self.fault_line)
        self._columns = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        edge = theme.FOCUS_WIDTH
        self._columns.setContentsMargins(edge, edge, edge, edge)
        self._columns.setSpacing(theme.M)
        self._columns.addWidget(self.label, 0, Qt.AlignmentFlag.AlignTop)
        self._columns.addLayout(inside, 1)
        # A tick has its words in itself, and words alone need no column of labels.
        self.label.setVisible(bool(row.label) and row.kind not in ("tick", "member"))
        self._indent = row.kind in ("tick", "member")
        if row.kind not in ("note", "button"):
            # As high as the words within the field.
            self.label.setContentsMargins(0, theme.S, 0, 0)
            if self._beside:
                self.text.setContentsMargins(0, theme.S, 0, 0)
        if row.path and row.path[-1] in _SHORT and isinstance(self.input, LineInput):
            line.setStretchFactor(self.input, 3)
            line.addStretch(1)
            self._short = True
        self._connect()
        self.show_found([], [])

    def _connect(self) -> None:
        found = self.input
        if found is None:
            return
        if isinstance(found, PairInput | TempoInput):
            found.name(self.row.said)
        else:
            found.setAccessibleName(self.row.said)
        found.edited.connect(lambda value: self.edited.emit(self.row, value))
        for part in self.framed():
            part.installEventFilter(self)

    def framed(self) -> list[QWidget]:
        """What gets a frame, and a ring while it has the keys."""
        found = self.input
        if isinstance(found, Tick):
            return []
        if isinstance(found, PairInput):
            return list(found.ends)
        if isinstance(found, TempoInput):
            return [found.way, *found.pair.ends]
        return [] if found is None else [found]

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Draw the ring anew when the keys come or go."""
        if event.type() in (QEvent.Type.FocusIn, QEvent.Type.FocusOut):
            self.update()
        return False

    def paintEvent(self, event: QPaintEvent) -> None:
        """Frames and the ring."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        palette = self.palette()
        for part in self.framed():
            if not part.isVisibleTo(self):
                continue
            box = QRectF(part.rect()).translated(part.mapTo(self, QPoint(0, 0)).toPointF())
            edge = theme.FOCUS_WIDTH
            if part.hasFocus():
                draw_focus(painter, box.adjusted(-edge, -edge, edge, edge), palette)
            else:
                painter.setBrush(palette.base())
                painter.setPen(QPen(palette.color(QPalette.ColorRole.Mid), 2))
                painter.drawRoundedRect(box.adjusted(-2, -2, 2, 2), 4, 4)

    def show_row(self, row: Row, data: Data) -> None:
        """Show the same field with other words, and its value."""
        self.row = row
        found = self.input
        if found is None:
            return
        if isinstance(found, ChoiceInput):
            found.set_choices(row.choices)
        value = value_at(data, row.path)
        if row.kind == "member":
            value = isinstance(value, list) and row.member in value
        found.show_value(value)

    def show_text(self, text: str) -> None:
        """What is said below the field."""
        if self.text.text() != text:
            self.text.setText(text)
        self.text.setVisible(bool(text))

    def show_found(self, faults: Sequence[str], remarks: Sequence[str]) -> None:
        """What is wrong with it and what to know, beside it and for a screen reader."""
        said = [words.say("edit.fault", text=t) for t in faults]
        known = [words.say("edit.remark", text=t) for t in remarks]
        self.fault.setText("\n".join(said))
        self.fault_line.setVisible(bool(said))
        text = "\n".join([*([self.row.text] if self.row.text else []), *known])
        self.show_text(text)
        description = " ".join([*said, text])
        for part in [*self.framed(), *([self.input] if isinstance(self.input, Tick) else [])]:
            part.setAccessibleDescription(description)

    def set_width(self, label_px: int, *, narrow: bool) -> None:
        """Label beside the field, or above it."""
        way = QBoxLayout.Direction
        self._columns.setDirection(way.TopToBottom if narrow else way.LeftToRight)
        self.label.setMinimumWidth(0 if narrow else label_px)
        self.label.setMaximumWidth(16_777_215 if narrow else label_px)
        beside = self._beside and not narrow
        self._line.setDirection(way.LeftToRight if beside else way.TopToBottom)
        self._line.setSpacing(theme.M if beside else theme.S // 2)
        if self._short and self.input is not None:
            self.input.setMaximumWidth(2 * label_px)
        edge = theme.FOCUS_WIDTH
        bare = self.label.isHidden() and self._indent and not narrow
        self._columns.setContentsMargins(edge + (label_px + theme.M) * bare, edge, edge, edge)

    def take_keys(self) -> bool:
        """Give the keys to what is edited; whether there is anything."""
        parts: list[QWidget] = self.framed()
        if isinstance(self.input, Tick):
            parts = [self.input]
        parts = [p for p in parts if not p.isHidden()] or ([self.act] if self.act else [])
        if parts:
            parts[0].setFocus(Qt.FocusReason.OtherFocusReason)
        return bool(parts)
