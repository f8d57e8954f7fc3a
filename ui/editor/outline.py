"""The outline of a plan: its pages, stages and entries, each with what is wrong with it."""

# ruff: noqa: N802 - the names and arguments are Qt's

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

from PySide6.QtCore import QItemSelectionModel, QSize, Qt, Signal
from PySide6.QtWidgets import QListWidget, QListWidgetItem

from tracker.plan.arranging import entries_in_order
from ui import theme, words
from ui.editor.entry_form import dose_line
from ui.editor.rows import PLAN, SAFETY, SYMPTOMS, Item, item_of
from ui.editor.state import State

#: An entry stands a little to the right of its stage.
INDENT = "   "


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


class Outline(QListWidget):
    """The list; arrows choose, Alt with arrows moves, Delete removes."""

    picked = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(words.say("edit.outline"))
        self.setWordWrap(True)
        self.setSpacing(2)
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
            room = INDENT * line.indent
            text = room + line.text.replace("\n", f"\n{room}")
            if item.text() != text:
                item.setText(text)
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

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self._percent = percent
        self.setFont(theme.font("desk", percent))
        self.setMinimumWidth(round(260 + 140 * (percent / 100 - 1)))
        self.show_lines(self.lines, self.chosen)
        self.setMinimumHeight(5 * self.fontMetrics().height())

    def sizeHint(self) -> QSize:
        """A third of the window."""
        return QSize(340, 300)
