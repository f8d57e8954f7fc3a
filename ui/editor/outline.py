"""The outline of a plan: its pages, stages and entries, each with what is wrong with it."""

# ruff: noqa: N802 - the names and arguments are Qt's

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import (
    QItemSelectionModel,
    QModelIndex,
    QPersistentModelIndex,
    QRect,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QDragLeaveEvent, QDragMoveEvent, QDropEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QListWidget,
    QListWidgetItem,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
)

from tracker.plan.arranging import entries_in_order
from ui import theme, words
from ui.editor.entry_form import dose_line
from ui.editor.rows import PLAN, SAFETY, SYMPTOMS, Item, item_of
from ui.editor.state import State

_INDENT_ROLE = Qt.ItemDataRole.UserRole
Index = QModelIndex | QPersistentModelIndex
_FIXED = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
_MOVABLE = _FIXED | Qt.ItemFlag.ItemIsDragEnabled
#: Of the line that shows where something goes, in pixels.
GAP_WIDTH = 4
#: An entry stands this far behind its stage, in heights of its letters.
INDENT = 0.8


@dataclass(frozen=True, slots=True)
class Line:
    """A line of the outline."""

    item: Item
    text: str
    indent: int = 0
    bold: bool = False


def outline_lines(state: State) -> list[Line]:
    """Everything that can be chosen, in its order."""
    wrong = Counter(item_of(f.path) for f in state.draft.faults)

    def line(item: Item, text: str, more: str = "", indent: int = 0) -> Line:
        if wrong[item]:
            text = words.say("edit.line.fault", text=text)
        text = f"{text}\n{more}" if more else text
        return Line(item, text, indent, bold=item[0] not in ("entry",))

    lines = [
        line(PLAN, words.say("edit.page.plan")),
        line(SAFETY, words.say("edit.page.safety")),
        line(SYMPTOMS, words.say("edit.page.symptoms")),
    ]
    shown = set()
    stages = state.data.get("stages", [])

    def stage_line(s: int) -> Line:
        name = words.say("edit.line.stage", number=s + 1, name=str(stages[s].get("name", "")))
        return line(("stage", s), name, state.short_standing(("stages", s)))

    for number, (s, k) in enumerate(entries_in_order(state.data), 1):
        for missing in range(len(stages) if s is None else s + 1):
            if missing not in shown:
                shown.add(missing)
                lines.append(stage_line(missing))
        entry = state.data["entries"][k]
        text = words.say("edit.line.entry", number=number, name=str(entry.get("entry_id", "")))
        more = [dose_line(entry), state.short_standing(("entries", k))]
        lines.append(line(("entry", k), text, " · ".join(m for m in more if m), 1))
    lines += [stage_line(s) for s in range(len(stages)) if s not in shown]
    return lines


class _Indented(QStyledItemDelegate):
    """Draws a line behind its indent, wherever it breaks."""

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """The line's ground over the whole width, its words behind the indent."""
        room = self._room(option, index)
        if room and option.state & QStyle.StateFlag.State_Selected:
            painter.fillRect(option.rect, option.palette.highlight())
        super().paint(painter, self._narrower(option, room), index)

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """As high as the words in the width that is left to them."""
        return super().sizeHint(self._narrower(option, self._room(option, index)), index)

    @staticmethod
    def _room(option: QStyleOptionViewItem, index: Index) -> int:
        return round(INDENT * option.fontMetrics.height()) * int(index.data(_INDENT_ROLE) or 0)

    @staticmethod
    def _narrower(option: QStyleOptionViewItem, room: int) -> QStyleOptionViewItem:
        made = QStyleOptionViewItem(option)
        from_right = option.direction == Qt.LayoutDirection.RightToLeft
        made.rect = option.rect.adjusted(
            0 if from_right else room, 0, -room if from_right else 0, 0
        )
        return made


class Outline(QListWidget):
    """The list; arrows choose, Alt with arrows or the mouse moves, Delete removes.

    Nothing is moved here: where something is dropped is only said.

    Attributes
    ----------
    can_drop
        Whether an item may be dropped before the line of a number.
    """

    picked = Signal(object)
    dropped = Signal(object, int)

    def __init__(self) -> None:
        super().__init__()
        self.can_drop: Callable[[Item, int], bool] = lambda _item, _gap: False
        self._gap: int | None = None
        self.setDragDropMode(QListWidget.DragDropMode.DragDrop)
        # The line that shows where it goes is drawn here, thick enough to be seen.
        self.setDropIndicatorShown(False)
        self.setAccessibleName(words.say("edit.outline"))
        self.setWordWrap(True)
        self.setSpacing(2)
        self.setItemDelegate(_Indented(self))
        self.setVerticalScrollMode(QListWidget.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.lines: list[Line] = []
        self._percent = 100
        self.currentRowChanged.connect(self._say)

    def show_lines(self, lines: list[Line], chosen: Item) -> None:
        """Show a plan; what is chosen stays so, or what stands in its place does."""
        self.blockSignals(True)
        while self.count() > len(lines):
            self.takeItem(self.count() - 1)
        while self.count() < len(lines):
            self.addItem(QListWidgetItem())
        for k, line in enumerate(lines):
            item = self.item(k)
            item.setFlags(_MOVABLE if line.item[0] in ("entry", "stage") else _FIXED)
            if item.text() != line.text:
                item.setText(line.text)
            if item.data(_INDENT_ROLE) != line.indent:
                item.setData(_INDENT_ROLE, line.indent)
            item.setData(Qt.ItemDataRole.AccessibleTextRole, line.text.replace("\n", ". "))
            font = theme.font("desk", self._percent, bold=line.bold)
            if item.font() != font:
                item.setFont(font)
        self.lines = lines
        row = next((k for k, line in enumerate(lines) if line.item == chosen), 0)
        if self.currentRow() != row:
            self.setCurrentRow(row, QItemSelectionModel.SelectionFlag.ClearAndSelect)
        self.blockSignals(False)

    @property
    def chosen(self) -> Item:
        """What is chosen."""
        row = self.currentRow()
        return self.lines[row].item if 0 <= row < len(self.lines) else PLAN

    def choose(self, item: Item) -> None:
        """Choose something."""
        for k, line in enumerate(self.lines):
            if line.item == item:
                self.setCurrentRow(k)

    def _say(self, row: int) -> None:
        if 0 <= row < len(self.lines):
            self.picked.emit(self.lines[row].item)

    # --- by mouse ---

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        """Show where it would go; where it can't go the pointer says so."""
        # Qt scrolls here where the pointer comes to an edge.
        super().dragMoveEvent(event)
        gap = self._gap_at(event)
        self._show_gap(gap)
        if gap is None:
            event.ignore()
        else:
            event.setDropAction(Qt.DropAction.CopyAction)
            event.accept()

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:
        """It would go nowhere."""
        self._show_gap(None)
        super().dragLeaveEvent(event)

    def dropEvent(self, event: QDropEvent) -> None:
        """Say what goes where; Qt itself must move nothing, or a line would be lost."""
        gap = self._gap_at(event)
        self._show_gap(None)
        # Qt takes a line out of the list after a "move".
        event.setDropAction(Qt.DropAction.CopyAction)
        if gap is None:
            event.ignore()
            return
        event.accept()
        self.dropped.emit(self.chosen, gap)

    def _gap_at(self, event: QDropEvent) -> int | None:
        """Number of the line before which it would go; None where it can't."""
        if event.source() is not self:
            return None
        at = event.position().toPoint()
        row = self.indexAt(at).row()
        if row < 0:
            # In the room between two lines, or below all of them.
            under = (k for k in range(self.count()) if self._rect(k).top() > at.y())
            gap = next(under, self.count())
        else:
            gap = row + (at.y() > self._rect(row).center().y())
        return gap if self.can_drop(self.chosen, gap) else None

    def _rect(self, row: int) -> QRect:
        return self.visualItemRect(self.item(row))

    def _show_gap(self, gap: int | None) -> None:
        if gap != self._gap:
            self._gap = gap
            self.viewport().update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The lines, and where something would go."""
        super().paintEvent(event)
        if self._gap is None:
            return
        below = self._gap < self.count()
        box = self._rect(self._gap if below else self.count() - 1)
        y = box.top() if below else box.bottom()
        painter = QPainter(self.viewport())
        painter.fillRect(
            0, max(y - GAP_WIDTH // 2, 0), self.viewport().width(), GAP_WIDTH, self.palette().text()
        )

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self._percent = percent
        self.setFont(theme.font("desk", percent))
        self.setMinimumWidth(round(260 + 140 * (percent / 100 - 1)))
        self.show_lines(self.lines, self.chosen)
        # At twice the size five lines would push the buttons below out of a laptop's window.
        self.setMinimumHeight(round(500 / percent) * self.fontMetrics().height())

    def sizeHint(self) -> QSize:
        """A third of the window."""
        return QSize(340, 300)
