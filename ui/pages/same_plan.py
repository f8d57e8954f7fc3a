"""The words of a plan, to be compared with those that the therapist reads out."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtWidgets import QGridLayout, QWidget

from tracker.handover.fingerprint import WORDS
from ui import theme, words
from ui.widgets.basic import Button, Page, Rule, Words

#: Words stand in so many columns, read one column after the other.
COLUMNS = 2


class SamePlanPage(Page):
    """Eight words, and what the therapist says to them."""

    def __init__(self, answered: Callable[[bool | None], object]) -> None:
        super().__init__()
        self.labels = [Words(role="lead", bold=True) for _ in range(WORDS)]
        table = QWidget()
        grid = QGridLayout(table)
        grid.setContentsMargins(theme.M, theme.S, 0, theme.S)
        grid.setVerticalSpacing(theme.S)
        rows = WORDS // COLUMNS
        for k, label in enumerate(self.labels):
            grid.addWidget(label, k % rows, k // rows)
        self.body.addWidget(Words(words.say("same.title"), "title"))
        self.body.addWidget(Words(words.say("same.ask"), "lead"))
        self.body.addWidget(table)
        self.body.addWidget(Rule(Words(words.say("same.why"), bold=True)))
        self.way = Words()
        self.body.addWidget(self.way)
        self.body.addStretch(1)
        self.yes = Button(words.say("same.yes"), "main")
        self.no = Button(words.say("same.no"))
        self.later = Button(words.say("same.later"))
        for button, answer in ((self.yes, True), (self.no, False), (self.later, None)):
            button.clicked.connect(lambda _=False, answer=answer: answered(answer))
            self.buttons.addWidget(button)

    def enter(self) -> None:
        """The page comes to the front; a stray key must not say that words were compared."""
        super().enter()
        self.later.setFocus()

    def show_words(self, found: Sequence[str], way: str) -> None:
        """Show the words of a plan, and how it hands over (words of that, or empty)."""
        for number, (label, word) in enumerate(zip(self.labels, found, strict=True), 1):
            label.setText(words.say("same.word", number=number, word=word))
        self.way.setText(way)
        self.way.setVisible(bool(way))
