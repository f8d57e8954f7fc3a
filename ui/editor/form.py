"""The form of the item that is chosen: sections of rows, each with its fault beside it."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QEvent, QObject, QPoint, QRectF, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QPen, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from tracker.plan.draft import UNSET, Data, value_at
from tracker.plan.lines import Path
from ui import theme, words
from ui.desk.small import desk_words, small_button
from ui.editor.frames import AsHighAsWords
from ui.editor.inputs import AreaInput, ChoiceInput, LineInput, PairInput, TempoInput, Tick
from ui.editor.rows import Row, Section, row_of
from ui.widgets.basic import Button, Rule, Words, draw_focus

#: Width of the column of labels at 100 %, and the least that a form gives to the fields.
LABEL_PX = 230
LEAST_PX = 330
#: Fields whose empty line is no value at all; any other is then an empty text.
#: Lines for an ID or a number to call, and how wide they are at most.
_SHORT = ("person", "plan_id", "entry_id", "stage_id", "emergency_number")
SHORT_PX = 460
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
            self.input.setMaximumWidth(SHORT_PX)
            line.addStretch(1)
        self._connect()
        self.show_faults([])
        self.show_text(row.text)

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
        self.show_text(row.text)
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
        self.text.setText(text)
        self.text.setVisible(bool(text))

    def show_faults(self, faults: Sequence[str]) -> None:
        """What is wrong with it, beside it and for a screen reader."""
        said = [words.say("edit.fault", text=t) for t in faults]
        self.fault.setText("\n".join(said))
        self.fault_line.setVisible(bool(said))
        description = " ".join([*said, self.row.text])
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


class Form(QScrollArea):
    """The sections of one item."""

    edited = Signal(object, object)
    acted = Signal(str, object)

    def __init__(self) -> None:
        super().__init__()
        self.views: list[RowView] = []
        self._titles: list[Words] = []
        self._shape: list[Any] = []
        self._percent = 100
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    def show_sections(self, sections: Sequence[Section], data: Data) -> None:
        """Show an item; what has the same shape is kept, with the keys where they are."""
        rows = [r for s in sections for r in s.rows]
        shape = [(s.title, tuple(r.shape for r in s.rows)) for s in sections]
        if shape != self._shape:
            self._shape = shape
            self._build(sections)
        for view, row in zip(self.views, rows, strict=True):
            view.show_row(row, data)

    def show_faults(self, said: dict[int, list[str]]) -> None:
        """What is wrong, by the number of the row."""
        for k, view in enumerate(self.views):
            view.show_faults(said.get(k, []))

    def _build(self, sections: Sequence[Section]) -> None:
        kept = self.focused_path()
        inner = AsHighAsWords()
        column = QVBoxLayout(inner)
        column.setContentsMargins(theme.M, theme.S, theme.M, theme.M)
        column.setSpacing(theme.S // 2)
        self.views, self._titles = [], []
        for k, section in enumerate(sections):
            title = Words(section.title, "body", bold=True)
            title.set_percent(self._percent)
            self._titles.append(title)
            if k:
                column.addSpacing(theme.M)
            column.addWidget(title)
            for row in section.rows:
                view = RowView(row)
                view.edited.connect(self.edited)
                view.acted.connect(self.acted)
                self.views.append(view)
                column.addWidget(view)
        column.addStretch(1)
        old = self.takeWidget()
        if old is not None:
            old.hide()
            old.deleteLater()
        self.setWidget(inner)
        for view in self.views:
            for part in view.findChildren(QWidget):
                change = getattr(part, "set_percent", None)
                if change is not None:
                    change(self._percent)
        self._fit()
        inner.show()
        if kept is not None:
            self.focus_path(kept)

    def set_percent(self, percent: int) -> None:
        """Rows that are made later get the same text size."""
        self._percent = percent
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Labels stand beside the fields where there is room."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        label = round(LABEL_PX * self._percent / 100)
        free = self.viewport().width() - label - 3 * theme.M
        narrow = free < LEAST_PX * (1 + (self._percent / 100 - 1) * 0.6)
        for view in self.views:
            view.set_width(label, narrow=narrow)

    # --- keys ---

    @property
    def pending(self) -> bool:
        """Whether something is typed that has not been taken over."""
        return any(v.input is not None and v.input.pending for v in self.views)

    def commit(self) -> None:
        """Take over what is typed."""
        for view in self.views:
            if view.input is not None and view.input.pending:
                view.input.commit()

    def revert(self) -> None:
        """Forget what is typed."""
        for view in self.views:
            if view.input is not None:
                view.input.revert()

    def focused_path(self) -> Path | None:
        """Field that has the keys."""
        for view in self.views:
            focused = view.focusWidget()
            if focused is not None and focused.hasFocus():
                return view.row.path
        return None

    def focus_path(self, path: Path) -> None:
        """Give the keys to a field, or to what is next to it."""
        k = row_of(path, [v.row for v in self.views])
        for view in self.views[k or 0 :]:
            if view.take_keys():
                self.ensureWidgetVisible(view, 0, theme.L)
                return

    def focus_first(self) -> None:
        """Give the keys to the first field."""
        for view in self.views:
            if view.take_keys():
                break
        self.verticalScrollBar().setValue(0)
