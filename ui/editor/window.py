"""The window of the plan editor."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from pathlib import Path

from PySide6.QtGui import QCloseEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from tracker.plan.draft import Data, data_of, empty_data
from tracker.plan.model import Plan
from tracker.plan.starter import starter_plan
from tracker.records.people import Person
from ui import tab_order, theme, words
from ui.appearance import Appearance
from ui.desk.head_row import head_row
from ui.desk.small import desk_words, small_button
from ui.editor.bar import Bar
from ui.editor.catalogue_page import CataloguePage
from ui.editor.document import Document
from ui.editor.editing_page import EditingPage
from ui.editor.files_part import FilesPart
from ui.editor.preview_page import PreviewPage
from ui.editor.start_page import StartPage
from ui.settings import Settings
from ui.widgets.moving import MovementBox
from ui.widgets.paths import shown_path

SMALLEST = (960, 600)
#: The buttons on top, and their keys.
TOOLS = {
    "new": "Ctrl+N",
    "open": "Ctrl+O",
    "save": "Ctrl+S",
    "save_as": "Ctrl+Shift+S",
    "undo": "Ctrl+Z",
    "redo": "Ctrl+Y",
    "show": "F5",
    "sheet": "Ctrl+P",
}


class EditorWindow(QWidget):
    """A start page, the plan itself, the catalogue, and what the patient will see.

    Parameters
    ----------
    settings
        Text size, colours and motion, as in the program.
    today
        The day; None for the real one.
    """

    def __init__(self, settings: Settings, today: date | None = None) -> None:
        super().__init__()
        self.settings = settings
        self.document = Document(today)
        self._person: str | None = None
        self._last: tuple[Plan, Path | None] | None = None
        self._closing = False
        self.setMinimumSize(*SMALLEST)
        self.bar = Bar()
        self.editing = EditingPage(self.document)
        self.files = FilesPart(
            self.document,
            self.bar,
            commit=self.editing.commit,
            to_fault=lambda: self.show_finding(0),
            opened=self.show_editing,
        )
        self.start, self.catalogue = StartPage(), CataloguePage()
        self.preview = PreviewPage(self.document)
        self.stack = QStackedWidget()
        self.state = desk_words()
        self.appearance = Appearance(self, settings)
        self._arrange()
        self._connect()
        self._make_keys()
        for box in self.findChildren(MovementBox):
            box.still_asked.connect(self.appearance.switch_still)
        self.appearance.hold_still()
        self.appearance.draw_text()
        self.show_start()

    # --- layout ---

    def _arrange(self) -> None:
        self.buttons = {name: small_button(words.say(f"edit.{name}")) for name in TOOLS}
        for name, key in TOOLS.items():
            self.buttons[name].setToolTip(key)
            self.buttons[name].setAccessibleDescription(key)
        tools = list(self.buttons.values())
        head = head_row(words.say("edit.title"), tools, (), self.appearance)
        line = QHBoxLayout()
        line.setContentsMargins(theme.M, 0, theme.M, 0)
        line.addWidget(self.state)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.S // 2)
        column.addLayout(head)
        column.addLayout(line)
        column.addWidget(self.bar)
        column.addWidget(self.stack, 1)
        for page in (self.start, self.editing, self.catalogue, self.preview):
            self.stack.addWidget(page)

    def _connect(self) -> None:
        self.actions_by_name: dict[str, Callable[[], object]] = {
            "new": lambda: self.files.leave(self._new),
            "open": self.files.ask_open,
            "save": lambda: self.if_editing(self.files.save),
            "save_as": lambda: self.if_editing(self.files.save_as),
            "undo": lambda: self.if_editing(self.editing.undo),
            "redo": lambda: self.if_editing(self.editing.redo),
            "show": lambda: self.if_editing(self.show_preview),
            "sheet": lambda: self.if_editing(self.files.ask_sheet),
        }
        for name, button in self.buttons.items():
            button.clicked.connect(lambda _=False, name=name: self.actions_by_name[name]())
        self.editing.refreshed.connect(self._show_state)
        self.editing.catalogue_wanted.connect(self.show_catalogue)
        self.start.starter.connect(lambda ids: self.begin(data_of(starter_plan(ids))))
        self.start.empty.connect(lambda: self.begin(empty_data()))
        self.start.file.connect(self.files.ask_open)
        self.start.last.connect(self._begin_last)
        self.start.named.connect(lambda path: self.files.open(self.files.folder / path))
        self.catalogue.added.connect(self._add)
        for page in (self.catalogue, self.preview):
            page.left.connect(self.show_editing)

    def _make_keys(self) -> None:
        editing = self.editing
        keys: dict[str, Callable[[], object]] = {
            **{key: self.actions_by_name[name] for name, key in TOOLS.items()},
            "Ctrl+Shift+Z": self.actions_by_name["redo"],
            "Ctrl+E": lambda: self.if_editing(self.show_catalogue),
            "Alt+Up": lambda: self.if_editing(lambda: editing.move_chosen(-1)),
            "Alt+Down": lambda: self.if_editing(lambda: editing.move_chosen(1)),
            "F6": lambda: self.if_editing(editing.switch_side),
            "F8": lambda: self.if_editing(lambda: editing.go_to_finding(0)),
            "Esc": self.back,
            "Ctrl++": lambda: self.appearance.step_text(1),
            "Ctrl+=": lambda: self.appearance.step_text(1),
            "Ctrl+-": lambda: self.appearance.step_text(-1),
            "Ctrl+0": lambda: self.appearance.set_text(100),
            "Ctrl+D": self.appearance.switch_colours,
            "Ctrl+Q": self.close,
        }
        for key, action in keys.items():
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setAutoRepeat(key in ("Alt+Up", "Alt+Down", "Ctrl+Z", "Ctrl+Y"))
            shortcut.activated.connect(action)
        for page in (self.catalogue, self.preview):
            still = QShortcut(QKeySequence("S"), page.movement)
            still.setContext(still.context().WindowShortcut)
            still.activated.connect(self.appearance.switch_still)

    def if_editing(self, action: Callable[[], object]) -> None:
        """Do something to the plan that is shown, and nothing where none is."""
        if self.stack.currentWidget() is self.editing:
            action()

    # --- beginning ---

    def open_for(
        self, person: Person, folder: Path, path: Path | None, nobodys: Sequence[Path] = ()
    ) -> None:
        """Begin for somebody of the desk.

        Parameters
        ----------
        person
            Whose plan it is; a new one gets the pseudonym.
        folder
            Where a new plan is put at first.
        path
            The file of the plan at hand.
        nobodys
            Below the folder, the plans without a pseudonym that sessions without one name.
        """
        self.files.folder = folder
        self._person = None if person.nameless else person.name
        # Those without a pseudonym may be of many people.
        rows = [] if self._person is None else person.rows
        self.document.know_sessions(self._person, rows)
        self._last = None if person.plan is None else (person.plan, path)
        self.start.offer_last(None if person.plan is None else person)
        self.start.offer_named(nobodys)
        self.start.enter()

    def begin(self, data: Data, path: Path | None = None) -> None:
        """Edit a plan; a new one is for the person that the window was opened for."""
        if path is None and self._person is not None and not data.get("person"):
            data = {**data, "person": self._person}
        self.document.begin(data, path)
        self.show_editing()

    def _new(self) -> None:
        """Nothing is open any more; choose how to begin."""
        self.document.begin(empty_data())
        self.show_start()

    def _begin_last(self) -> None:
        if self._last is not None:
            plan, path = self._last
            if path is None:
                self.begin(data_of(plan))
            else:
                # The file, not what was read when the window was opened: it may be newer.
                self.files.open(path)

    def show_baseline(self) -> None:
        """Go on from the last plan, at what the baseline offers for it."""
        self._begin_last()
        if self.stack.currentWidget() is self.editing:
            self.editing.show_baseline()

    def _add(self, exercise_id: str) -> None:
        self.editing.add_entry(exercise_id)
        self.show_editing()

    # --- pages ---

    def _show_page(self, page: QWidget) -> None:
        self.stack.setCurrentWidget(page)
        self.editing.refresh()

    def show_start(self) -> None:
        """The ways to begin."""
        self._show_page(self.start)
        self.start.enter()

    def show_editing(self) -> None:
        """The plan."""
        self._show_page(self.editing)
        self.editing.outline.setFocus()

    def show_catalogue(self) -> None:
        """Choose an exercise to add."""
        self.editing.commit()
        self._show_page(self.catalogue)
        self.catalogue.enter()

    def show_finding(self, number: int) -> None:
        """The field of a finding."""
        self._show_page(self.editing)
        self.editing.go_to_finding(number)

    def show_preview(self) -> None:
        """What the patient will see; where there are faults, the first of them."""
        self.editing.commit()
        plan = self.document.state.plan
        if plan is None:
            self.show_finding(0)
            return
        self.preview.show_plan(plan, self.editing.chosen_name)
        self._show_page(self.preview)
        self.preview.enter()

    def back(self) -> None:
        """From a question, or from a page beside the plan, back to it."""
        if not self.bar.isHidden():
            self.bar.close_bar()
        elif self.stack.currentWidget() in (self.catalogue, self.preview):
            self.show_editing()

    def _show_state(self) -> None:
        """Where the plan is saved, what is wrong with it, minutes against the guideline."""
        document, state = self.document, self.document.state
        started = self.stack.currentWidget() is not self.start
        editing = self.stack.currentWidget() is self.editing
        path = document.path
        name = words.say("edit.no_file") if path is None else shown_path(path)
        saved = "new" if path is None else "saved"
        saved = words.say(f"edit.state.{'changed' if document.dirty else saved}")
        faults, remarks = len(state.draft.faults), len(state.draft.remarks)
        if faults:
            found = words.say("edit.state.faults", count=faults)
        else:
            found = words.say("edit.state.remarks", count=remarks, minutes=state.short_minutes)
        text = words.say("edit.state", file=name, saved=saved, found=found)
        self.state.setText(text if started else words.say("edit.state.start"))
        self.state.setVisible(editing or not started)
        title = words.say("edit.title") if path is None else path.name
        self.setWindowTitle(f"{words.say('program')} - {title}[*]")
        self.setWindowModified(document.dirty)
        stack = document.stack
        for name, can, step in (
            ("undo", stack.canUndo(), stack.undoText()),
            ("redo", stack.canRedo(), stack.redoText()),
        ):
            self.buttons[name].setEnabled(can and editing)
            said = f"{TOOLS[name]}: {step}" if can else TOOLS[name]
            self.buttons[name].setAccessibleDescription(said)
            self.buttons[name].setToolTip(said)
        for name in ("save", "save_as", "show", "sheet"):
            self.buttons[name].setEnabled(editing)

    def focusNextPrevChild(self, forward: bool) -> bool:
        """Tab goes through the window as it is read."""
        return tab_order.step(self, forward=forward)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Ask before steps are lost."""
        if not self._closing:
            self.editing.commit()
            if self.document.dirty:
                event.ignore()
                self.files.leave(self._close_now)
                return
        self.settings.sync()
        super().closeEvent(event)

    def _close_now(self) -> None:
        self._closing = True
        self.close()
