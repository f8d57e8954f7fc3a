"""After a sudden drop of the head: one question, to be read from where one stands or lies."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent

from tracker.session.said import DROP_ANSWERS
from ui import words
from ui.widgets.basic import Button, Page, Words

#: A key for each answer: figures, for no word of the question begins with them in any language.
KEYS = tuple(enumerate(DROP_ANSWERS, 1))


class WellPage(Page):
    """Asks whether all is well; ``answered`` brings ``fine`` or ``not_well``.

    Nothing has the keys at first: a hand that comes down on Enter or Space says nothing.
    """

    answered = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.question = Words(words.say("cue.possible_fall"), "ask")
        self.how = Words(words.say("ask.well.how"), "title")
        self.body.addWidget(self.question)
        self.body.addWidget(self.how)
        self.body.addStretch(1)
        self.options: dict[str, Button] = {}
        for key, answer in KEYS:
            button = Button(words.say(f"ask.well.{answer}", key=words.number(key)))
            button.role = "lead"
            button.clicked.connect(lambda _=False, a=answer: self.answered.emit(a))
            self.buttons.addWidget(button)
            self.options[answer] = button

    def ask(self, task: object) -> None:
        """Ask it: the words are always the same."""

    def enter(self) -> None:
        """The page has the keys, and no answer."""
        self.scroll.verticalScrollBar().setValue(0)
        self.setFocus()

    def refresh(self) -> None:
        """Nothing on it changes: no seconds run."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """One key for each answer, from the row of figures or the block of them."""
        text = event.text()
        # Figures of any script: a keyboard may write its own.
        answer = dict(KEYS).get(int(text)) if text.isdecimal() else None
        plain = not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if answer is None or not plain or event.isAutoRepeat() or self._held:
            super().keyPressEvent(event)
            return
        self.answered.emit(answer)
