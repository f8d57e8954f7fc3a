"""The keys, how to give a score, and what to do when unwell."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout

from ui import theme, words
from ui.keys import KEYS, PAGE_KEYS, Key
from ui.widgets.basic import Button, Page, Rule, Words


def say_key(sequence: str) -> str:
    """A key as it is called on the keyboards of the language."""
    first, plus, rest = sequence.partition("+")
    named = f"help.name.{first}"
    return words.apart((words.say(named) if words.has(named) else first) + plus + rest)


class HelpPage(Page):
    """One page to read; it lies over that from which it was asked for.

    Parameters
    ----------
    leave
        Goes back to where one came from.
    """

    def __init__(self, leave: Callable[[], object]) -> None:
        super().__init__()
        self._leave = leave
        self.body.addWidget(Words(words.say("help.title"), "title"))
        # What is needed in a hurry comes first.
        self.body.addWidget(Words(words.say("help.unwell"), "lead", bold=True))
        self.body.addWidget(Rule(Words(words.say("help.unwell.how"), bold=True)))
        self.body.addWidget(Words(words.say("caution.help")))
        self.body.addWidget(Words(words.say("help.scores"), "lead", bold=True))
        how = f"{words.say('score.how')} {words.say('help.scores.enter')}"
        self.body.addWidget(Words(how))
        self.table = QGridLayout()
        self.table.setHorizontalSpacing(theme.L)
        self.table.setVerticalSpacing(theme.S)
        self.table.setColumnStretch(1, 1)
        self._add("always", (k for k in KEYS if not k.live_only and not k.call_only))
        self._add("set", (k for k in KEYS if k.live_only and not k.picture_too))
        self._add("picture", (k for k in KEYS if k.picture_too))
        self._add("page", PAGE_KEYS)
        self._add("call", (k for k in KEYS if k.call_only))
        self.body.addLayout(self.table)
        self.body.addStretch(1)
        self.back = Button(words.say("help.back"), "main")
        self.back.clicked.connect(leave)
        self.buttons.addWidget(self.back)

    def step_back(self) -> bool:
        """Back to the page below, which may lie over another itself."""
        self._leave()
        return True

    def _add(self, group: str, keys: Iterable[Key]) -> None:
        """Add rows below their heading; keys of one action stand beside it once."""
        table = self.table
        table.addWidget(
            Words(words.say(f"help.group.{group}"), "lead", bold=True), table.rowCount(), 0, 1, 2
        )
        by_action: dict[str, list[str]] = {}
        for key in keys:
            by_action.setdefault(key.action, []).append(key.sequence)
        top = Qt.AlignmentFlag.AlignTop
        for action, sequences in by_action.items():
            row = table.rowCount()
            for k, sequence in enumerate(sequences):
                name = Words(say_key(sequence), bold=True)
                name.setWordWrap(False)
                table.addWidget(name, row + k, 0, top)
            does = Words(words.say(f"help.key.{action}"))
            table.addWidget(does, row, 1, len(sequences), 1)
        if words.has(f"help.note.{group}"):
            note = Words(words.say(f"help.note.{group}"), soft=True)
            table.addWidget(note, table.rowCount(), 0, 1, 2)
