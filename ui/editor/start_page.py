"""Where a plan begins: stages of the starter, the person's last plan, nothing, or a file.

For sessions without a pseudonym the plans that they name are offered, to be given one.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from tracker.plan.starter import STAGE_NAMES
from tracker.records.people import Person
from ui import theme, words
from ui.desk.small import desk_words, small_button
from ui.editor.inputs import ChoiceInput, Tick
from ui.widgets.basic import Button, Page, Words, relabel
from ui.widgets.flow import FlowRow


class StartPage(Page):
    """The ways to begin."""

    starter = Signal(list)
    last = Signal()
    named = Signal(object)
    empty = Signal()
    file = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.from_last = small_button("")
        self.last_words = desk_words()
        self._file = Path()
        self.from_named = small_button(words.say("edit.start.named"))
        self.named_files = ChoiceInput()
        self.named_files.setAccessibleName(words.say("edit.start.named.which"))
        self.from_empty = small_button(words.say("edit.start.empty"))
        self.from_file = small_button(words.say("edit.start.file"))
        self.from_starter = small_button(words.say("edit.start.starter"))
        self.stages = {s: Tick(words.told(name)) for s, name in STAGE_NAMES.items()}
        self.body.addWidget(Words(words.say("edit.start.title"), "lead", bold=True))
        self._last = self._part(self.from_last, self.last_words)
        how = desk_words(words.say("edit.start.named.how"))
        self._named = self._part(self.from_named, how, self.named_files)
        for tick in self.stages.values():
            tick.setChecked(True)
        starter_words = desk_words(words.say("edit.start.starter.how"))
        self._part(self.from_starter, starter_words, *self.stages.values())
        self._part(self.from_empty, desk_words(words.say("edit.start.empty.how")))
        self._part(self.from_file, desk_words(words.say("edit.start.file.how")))
        self.body.addStretch(1)
        self.from_last.clicked.connect(self.last)
        self.named_files.edited.connect(self._choose_named)
        self.from_named.clicked.connect(lambda: self.named.emit(self._file))
        self.from_empty.clicked.connect(self.empty)
        self.from_file.clicked.connect(self.file)
        self.from_starter.clicked.connect(self._begin)
        for stage in self.stages.values():
            stage.clicked.connect(self._look)
        self.offer_last(None)
        self.offer_named([])

    def _part(self, button: Button, text: Words, *inputs: QWidget) -> QWidget:
        part = QWidget()
        column = QVBoxLayout(part)
        column.setContentsMargins(0, 0, 0, theme.S)
        column.setSpacing(theme.S)
        column.addWidget(text)
        if inputs:
            row = FlowRow()
            for one in inputs:
                row.addWidget(one)
            column.addLayout(row)
        foot = FlowRow()
        foot.addWidget(button)
        column.addLayout(foot)
        self.body.addWidget(part)
        return part

    def offer_last(self, person: Person | None) -> None:
        """Offer somebody's last plan, or none."""
        self._last.setVisible(person is not None)
        if person is not None and person.plan is not None:
            relabel(self.from_last, words.say("edit.start.last", person=person.name))
            how = words.say("edit.start.last.how", plan=person.plan.plan_id)
            self.last_words.setText(how)

    def offer_named(self, files: Sequence[Path]) -> None:
        """Offer the plans without a pseudonym that sessions without one name, or none."""
        self._named.setVisible(bool(files))
        self.named_files.set_choices([(path, words.apart(str(path))) for path in files])
        if files:
            self._choose_named(files[0])

    def _choose_named(self, path: Path) -> None:
        self._file = path
        self.named_files.show_value(path)

    def _look(self) -> None:
        self.from_starter.setEnabled(any(t.isChecked() for t in self.stages.values()))

    def _begin(self) -> None:
        self.starter.emit([s for s, tick in self.stages.items() if tick.isChecked()])

    def enter(self) -> None:
        """The likeliest way gets the keys."""
        self.scroll.verticalScrollBar().setValue(0)
        ways = ((self._last, self.from_last), (self._named, self.from_named))
        likely = (button for part, button in ways if not part.isHidden())
        next(likely, self.from_starter).setFocus()
