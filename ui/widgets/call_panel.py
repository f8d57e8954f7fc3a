"""The panel of a call between two sets: what comes next, and what can be changed of it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QVBoxLayout, QWidget

from tracker.plan.asked import Asked
from ui import theme, words
from ui.cards import dose_words
from ui.widgets.basic import Button, Words
from ui.widgets.flow import FlowRow

#: In the order in which they stand.
ACTIONS = ("slower", "faster", "smaller", "larger", "other_next", "take_back", "mark")


class CallPanel(QWidget):
    """Shows what comes next, and a button for each key of a call.

    Parameters
    ----------
    actions
        What each button of :data:`ACTIONS` does.
    answer
        Takes whether the therapist asks for a change, where that has to be said first.
    """

    def __init__(
        self, actions: dict[str, Callable[[], None]], answer: Callable[[bool], None]
    ) -> None:
        super().__init__()
        self.title, self.coming, self.note = Words(bold=True), Words(), Words(bold=True)
        self.title.setText(words.say("call.title"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, theme.M, 0, 0)
        column.setSpacing(theme.S)
        for label in (self.title, self.coming, self.note):
            column.addWidget(label)
        self._row = row = QWidget()
        flow = FlowRow(row)
        self.buttons: dict[str, Button] = {}
        for name in ACTIONS:
            button = Button(words.say(f"call.{name}"))
            button.clicked.connect(lambda _=False, act=actions[name]: act())
            flow.addWidget(button)
            self.buttons[name] = button
        column.addWidget(row)
        self.question = Words(words.say("call.ask"), bold=True)
        self.no, self.yes = Button(words.say("call.ask.no")), Button(words.say("call.ask.yes"))
        self.no.clicked.connect(lambda: answer(False))
        self.yes.clicked.connect(lambda: answer(True))
        self._answers = QWidget()
        choices = FlowRow(self._answers)
        for choice in (self.no, self.yes):
            choices.addWidget(choice)
        for part in (self.question, self._answers):
            part.hide()
            column.addWidget(part)

    def set_percent(self, percent: int) -> None:
        """Size of its words."""
        for part in (
            *(self.title, self.coming, self.note, self.question),
            *(self.no, self.yes, *self.buttons.values()),
        ):
            part.set_percent(percent)

    def show_question(self, *, on: bool) -> bool:
        """Ask, in place of the buttons, whether the therapist wants it; true if that is new."""
        new = on and self.question.isHidden()
        for part, shown in ((self._row, not on), (self.question, on), (self._answers, on)):
            if part.isHidden() == shown:
                part.setVisible(shown)
        return new

    def show_coming(self, asked: Asked, note: str) -> None:
        """Show what comes next as it stands now, and what was just changed."""
        name = words.say(f"exercise.{asked.exercise.id}")
        text = words.say("call.coming", name=name, what=coming_words(asked))
        for label, new in ((self.coming, text), (self.note, note)):
            if label.text() != new:
                label.setText(new)
        self.note.setVisible(bool(note))


def coming_words(asked: Asked) -> str:
    """Dose, tempo and amplitude of what comes next."""
    text = dose_words(asked)
    if asked.amplitude_deg is not None:
        low, high = (words.number(end) for end in asked.amplitude_deg)
        text += "   ·   " + words.say("call.amplitude", low=low, high=high)
    return text
