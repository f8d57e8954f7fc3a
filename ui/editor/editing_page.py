"""Outline, form and findings: where a plan is edited."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QListWidget, QSplitter, QVBoxLayout, QWidget

from tracker.plan import arranging, draft
from tracker.plan.findings import Finding
from tracker.plan.lines import Path, field_name
from ui import theme, words
from ui.desk.small import desk_words, small_button
from ui.editor.baseline import TAKE, take_over
from ui.editor.document import Document
from ui.editor.dropping import dropped
from ui.editor.entry_form import entry_sections
from ui.editor.form import Form
from ui.editor.frames import Ring
from ui.editor.outline import Outline, outline_lines
from ui.editor.plan_form import (
    plan_sections,
    safety_sections,
    stage_sections,
    symptom_sections,
)
from ui.editor.rows import PLAN, SAFETY, SYMPTOMS, Item, Row, Section, findings_of, item_of, row_of
from ui.editor.steps import act_on, take_value
from ui.editor.telling import told
from ui.widgets.flow import FlowRow

#: What is on the plan's own pages.
_PAGES = {PLAN: plan_sections, SAFETY: safety_sections, SYMPTOMS: symptom_sections}
#: Kind of an item -> the list that it is in, and the field with its ID.
_OWN_IDS = {"entry": ("entries", "entry_id"), "stage": ("stages", "stage_id")}
#: So many lines of what is wrong are in sight; with large text fewer.
FINDINGS, FINDINGS_LARGE = 4, 3
#: Width of the outline, and of a laptop's window.
OUTLINE_PX, WIDE_PX = 360, 1366


class EditingPage(QWidget):
    """The outline on the left, the form of what is chosen on the right, findings below it.

    Parameters
    ----------
    document
        What is edited.
    """

    refreshed = Signal()
    catalogue_wanted = Signal()

    def __init__(self, document: Document) -> None:
        super().__init__()
        self.document = document
        self._item: Item = PLAN
        self._percent, self._outline_px = 100, OUTLINE_PX
        self.outline, self.form = Outline(), Form()
        self.findings = QListWidget()
        self.findings.setAccessibleName(words.say("edit.findings"))
        self.findings.setWordWrap(True)
        # By lines one that is higher than the list could never be read to its end.
        self.findings.setVerticalScrollMode(QListWidget.ScrollMode.ScrollPerPixel)
        self.found: list[Finding] = []
        # What a step changes is drawn after the step: the field that has just been left
        # must not go while Qt still gives the keys away.
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.timeout.connect(self.refresh)
        self._arrange()
        self._connect()

    def _arrange(self) -> None:
        self.entry_buttons = {
            name: small_button(words.say(f"edit.{name}"), words.say(f"edit.{name}.name"))
            for name in ("add", "add_stage", "copy", "up", "down", "remove")
        }
        left = QWidget()
        column = QVBoxLayout(left)
        # Towards the window's side alone; Qt does not turn margins with the language.
        sides = (theme.M, 0) if not words.from_right() else (0, theme.M)
        column.setContentsMargins(sides[0], 0, sides[1], theme.S)
        column.setSpacing(theme.S)
        column.addWidget(Ring(self.outline), 1)
        below = QWidget()
        row = FlowRow()
        below.setLayout(row)
        for button in self.entry_buttons.values():
            row.addWidget(button)
        column.addWidget(below)
        right = QWidget()
        second = QVBoxLayout(right)
        second.setContentsMargins(sides[1], 0, sides[0], theme.S)
        second.addWidget(self.form, 1)
        self.findings_title = desk_words(words.say("edit.findings"), bold=True)
        second.addWidget(self.findings_title)
        second.addWidget(Ring(self.findings))
        split = QSplitter(Qt.Orientation.Horizontal)
        split.addWidget(left)
        split.addWidget(right)
        split.setStretchFactor(0, 1)
        split.setStretchFactor(1, 3)
        split.setChildrenCollapsible(False)
        split.setSizes([OUTLINE_PX, WIDE_PX - OUTLINE_PX])
        self._split = split
        split.splitterMoved.connect(lambda *_: self._fit_findings())
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(split)

    def _connect(self) -> None:
        self.document.changed.connect(self._refresh_soon)
        self.document.stack.cleanChanged.connect(self._refresh_soon)
        self.outline.picked.connect(self.choose)
        self.outline.can_drop = lambda item, gap: self._dropped(item, gap) is not None
        # Not before Qt has done with the mouse.
        self.outline.dropped.connect(self.drop, Qt.ConnectionType.QueuedConnection)
        self.form.edited.connect(self._edited)
        self.form.acted.connect(self._acted)
        for signal in (self.findings.itemActivated, self.findings.itemClicked):
            signal.connect(lambda _item: self.go_to_finding(self.findings.currentRow()))
        actions: dict[str, Callable[[], object]] = {
            "add": self.catalogue_wanted.emit,
            "copy": self.copy_entry,
            "up": lambda: self.move_chosen(-1),
            "down": lambda: self.move_chosen(1),
            "remove": self.remove,
            "add_stage": self.add_stage,
        }
        for name, button in self.entry_buttons.items():
            button.clicked.connect(lambda _=False, name=name: actions[name]())
        delete = QShortcut(QKeySequence("Delete"), self.outline)
        delete.setContext(Qt.ShortcutContext.WidgetShortcut)
        delete.activated.connect(self.remove)

    def _refresh_soon(self) -> None:
        self._soon.start(0)

    def set_percent(self, percent: int) -> None:
        """The findings' own words."""
        self._percent = percent
        self._fit_outline()
        self.findings.setFont(theme.font("desk", percent))
        self._fit_findings()

    def _fit_outline(self) -> None:
        """Large words need a wider outline, or its buttons would stand in too many rows."""
        wide = round(OUTLINE_PX * max(1.0, self._percent / 150))
        if wide == self._outline_px:
            return
        self._outline_px, split = wide, self._split
        # What a wide window has beyond that is the form's then: its lines are long.
        split.setStretchFactor(0, 1 if wide == OUTLINE_PX else 0)
        split.setSizes([wide, max(split.width(), WIDE_PX) - wide])

    # --- what is edited ---

    @property
    def chosen_name(self) -> str | None:
        """ID of the entry or the stage that is chosen."""
        kind, k = self._item
        data = self.document.data
        if kind == "entry":
            return str(data["entries"][k]["entry_id"])
        return str(data["stages"][k]["stage_id"]) if kind == "stage" else None

    def commit(self) -> None:
        """Take over what is being typed."""
        self.form.commit()

    def choose(self, item: Item) -> None:
        """Show the form of an item."""
        self.commit()
        if item != self._item:
            self._item = item
            self.refresh()
            self.form.verticalScrollBar().setValue(0)

    def sections(self, item: Item | None = None) -> list[Section]:
        """What is asked of an item; of the one that is chosen where none is named."""
        state, (kind, k) = self.document.state, item or self._item
        if kind == "entry":
            return entry_sections(state, k)
        if kind == "stage":
            return stage_sections(state, k)
        return _PAGES[(kind, k)](state)

    def _edited(self, row: Row, value: object) -> None:
        data = take_value(self.document.data, row, value)
        text = words.say("edit.step.value", what=row.said)
        self.document.do(data, text, (self._item, row.path))

    def _acted(self, act: str, path: Path) -> None:
        self.commit()
        if act == TAKE:
            data, to = take_over(self.document.state, path)
        else:
            data, to = act_on(self.document.data, act, path, self.document.today)
        self.document.do(data, words.say(f"edit.step.{act}"), (self._item, to))
        self.refresh()
        self.form.focus_path(to)

    def show_baseline(self) -> None:
        """Show what the baseline offers for all entries, with the keys at the button for all."""
        self.choose(PLAN)
        self.refresh()
        self.form.focus_act(TAKE)

    def _do_to_list(
        self, data: draft.Data, key: str, item: Item, before: Item | None = None
    ) -> None:
        # What is moved has another number before and after.
        place, old = (item, None), (before or self._item, None)
        self.document.do(data, words.say(f"edit.step.{key}"), place, old)
        self._item = item
        self.refresh()

    def add_entry(self, exercise_id: str) -> None:
        """Put an exercise behind the entry that is chosen, or at the end of the stage."""
        kind, k = self._item
        data = self.document.data
        after = k if kind == "entry" else None
        if kind == "stage":
            inside = [n for s, n in arranging.entries_in_order(data) if s == k]
            after = inside[-1] if inside else None
        made, at = arranging.add_entry(data, exercise_id, after)
        if kind == "stage" and after is None:
            stage_id = data["stages"][k].get("stage_id", draft.UNSET)
            made = draft.with_value(made, ("entries", at, "stage"), stage_id)
        self._do_to_list(made, "add", ("entry", at))

    def copy_entry(self) -> None:
        """The chosen entry once more."""
        self.commit()
        kind, k = self._item
        if kind == "entry":
            made, at = arranging.copy_entry(self.document.data, k)
            self._do_to_list(made, "copy", ("entry", at))

    def add_stage(self) -> None:
        """One more stage."""
        self.commit()
        name = words.say("edit.stage.new")
        made, at = arranging.add_stage(self.document.data, name)
        self._do_to_list(made, "add_stage", ("stage", at))
        self.form.focus_first()

    def move_chosen(self, by: int) -> None:
        """The chosen entry, or stage, one up or down."""
        self.commit()
        kind, k = self._item
        data = self.document.data
        if kind == "entry":
            made, at = arranging.move_entry(data, k, by)
        elif kind == "stage":
            made, at = arranging.move_stage(data, k, by)
        else:
            return
        self._do_to_list(made, "move", (kind, at))

    def _dropped(self, item: Item, gap: int) -> tuple[draft.Data, Item] | None:
        return dropped(self.document.data, self.outline.lines, item, gap)

    def drop(self, item: Item, gap: int) -> None:
        """An entry, or a stage, to before the line of a number."""
        self.commit()
        made = self._dropped(item, gap)
        if made is not None:
            self._do_to_list(made[0], "move", made[1], item)

    def remove(self) -> None:
        """The chosen entry, or stage; undo brings it back."""
        self.commit()
        kind, k = self._item
        if kind not in ("entry", "stage"):
            return
        data = self.document.data
        made = (
            arranging.remove_entry(data, k) if kind == "entry" else arranging.remove_stage(data, k)
        )
        left = len(made.get("entries" if kind == "entry" else "stages", []))
        self._do_to_list(made, "remove", (kind, min(k, left - 1)) if left else PLAN)

    def undo(self) -> None:
        """Forget what is being typed, else take the last step back."""
        if self.form.pending:
            self.form.revert()
            return
        if self.document.stack.canUndo():
            self.document.stack.undo()
            self._show_place()

    def redo(self) -> None:
        """Take the step again."""
        if self.document.stack.canRedo():
            self.document.stack.redo()
            self._show_place()

    def _show_place(self) -> None:
        """Show where a step was taken back."""
        item, path = self.document.place
        had_outline = self.outline.hasFocus()
        self._item = item
        self.refresh()
        if path is not None and not had_outline and self._item == item:
            self.form.focus_path(path)

    # --- what is shown ---

    def switch_side(self) -> None:
        """From the outline to the form and back."""
        if self.outline.hasFocus():
            self.form.focus_first()
        else:
            self.outline.setFocus()

    def go_to_finding(self, number: int) -> None:
        """Show the field of a finding."""
        self.commit()
        self.refresh()
        if not 0 <= number < len(self.found):
            return
        finding = self.found[number]
        item = item_of(finding.path)
        if item is None:
            self.entry_buttons["add"].setFocus()
            return
        self._item = item
        self.refresh()
        self.form.focus_path(finding.path)

    def refresh(self) -> None:
        """Draw the plan as it is now."""
        self._soon.stop()
        state = self.document.state
        lines = outline_lines(state)
        if self._item not in [line.item for line in lines]:
            self._item = PLAN
        self.outline.show_lines(lines, self._item)
        sections = self.sections()
        self.form.show_sections(sections, state.data)
        self.found = [*state.draft.faults, *state.draft.remarks]
        rows = [r for s in sections for r in s.rows]
        # Why a note is asked for stands at its field already.
        known = [r for r in state.draft.remarks if r.path[-1] != "note"]
        self.form.show_found(
            findings_of(rows, self._item, state.draft.faults), findings_of(rows, self._item, known)
        )
        self._show_findings(len(state.draft.faults))
        kind = self._item[0]
        self.entry_buttons["copy"].setEnabled(kind == "entry")
        for name in ("up", "down", "remove"):
            self.entry_buttons[name].setEnabled(kind in ("entry", "stage"))
        self.refreshed.emit()

    def _show_findings(self, faults: int) -> None:
        texts = []
        for k, finding in enumerate(self.found):
            key = "edit.finding.fault" if k < faults else "edit.finding.remark"
            texts.append(words.say(key, field=self._place(finding), text=told(finding)))
        if texts != [self.findings.item(k).text() for k in range(self.findings.count())]:
            self.findings.clear()
            self.findings.addItems(texts)
        self.findings.setVisible(bool(texts))
        self.findings_title.setVisible(bool(texts))
        self._fit_findings()

    def _place(self, finding: Finding) -> str:
        """The field of a finding as the form calls it, and the entry or stage that it is in."""
        path = finding.path
        item = item_of(path)
        if item is None:
            return words.say("edit.finding.entries")
        # Two parts say which entry or stage, and no field of it.
        whole = item[0] in _OWN_IDS and len(path) == 2
        field = "" if whole else _called(path, self.sections(item))
        if item[0] not in _OWN_IDS:
            return field or field_name(path)
        part, own = _OWN_IDS[item[0]]
        place = words.apart(str(self.document.data[part][item[1]].get(own, "")))
        return words.say("edit.finding.in", place=place, field=field) if field else place

    def _fit_findings(self) -> None:
        """As high as its words, but at most so many lines; the rest is scrolled to."""
        lines = FINDINGS if self._percent <= 125 else FINDINGS_LARGE
        most = lines * (self.findings.fontMetrics().lineSpacing() + 2)
        self.findings.doItemsLayout()
        rows = (self.findings.item(k) for k in range(self.findings.count()))
        high = sum(self.findings.visualItemRect(row).height() for row in rows)
        self.findings.setFixedHeight(min(high, most) + theme.S)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The findings break in other places."""
        super().resizeEvent(event)
        self._fit_findings()


def _called(path: Path, sections: Sequence[Section]) -> str:
    """What a form calls a field; of a part without a label the title that it stands under."""
    rows = [(r, s.title) for s in sections for r in s.rows]
    k = row_of(path, [r for r, _ in rows])
    return "" if k is None else rows[k][0].said or rows[k][1]
