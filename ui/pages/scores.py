"""The symptom scores, one on a page: 0 to 10."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout

from tracker.practice.tasks import AskScores
from ui import words
from ui.widgets.basic import Button, Page, Words
from ui.widgets.leave import end_button, unwell_button
from ui.widgets.scale import Scale


class ScoresPage(Page):
    """Asks for the scores of a task; ``answered`` brings them all, by name.

    ``unwell`` and ``ended`` leave without an answer.
    """

    answered = Signal(dict)
    unwell = Signal()
    ended = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._names: tuple[str, ...] = ()
        self._found: dict[str, int | None] = {}
        self.question = Words(role="title")
        self.scale = Scale()
        self.how = Words(words.say("score.how"), soft=True)
        self.body.addWidget(self.question)
        self.body.addWidget(self.scale)
        self.body.addLayout(self._ends())
        self.body.addWidget(self.how)
        self.body.addStretch(1)
        self.done = Button(words.say("score.done"), "main")
        self.buttons.addWidget(self.done)
        self.leave_out = Button(words.say("score.leave_out"))
        self.leave_out.clicked.connect(lambda: self._go_on(None))
        self.buttons.addWidget(self.leave_out)
        for button, signal in ((unwell_button(), self.unwell), (end_button(), self.ended)):
            button.clicked.connect(signal)
            self.buttons.addWidget(button)
            self.buttons.set_apart(button)
        self.scale.changed.connect(lambda _: self.done.setEnabled(True))
        self.scale.confirmed.connect(self._take)
        self.done.clicked.connect(self._take)

    def ask(self, task: AskScores) -> None:
        """Begin with the first of a task's scores; what is long past may be left out."""
        self._names, self._found = task.names, {}
        self.leave_out.setVisible(task.when == "since_last")
        self._show()

    def enter(self) -> None:
        """The scale gets the keys: a chosen number comes before the button."""
        self.scroll.verticalScrollBar().setValue(0)
        self.scale.take_keys()

    def _ends(self) -> QHBoxLayout:
        row = QHBoxLayout()
        least, most = Words(words.say("score.least")), Words(words.say("score.most"))
        most.setAlignment(Qt.AlignmentFlag.AlignTrailing)
        row.addWidget(least)
        row.addWidget(most)
        return row

    def _show(self) -> None:
        name = self._names[len(self._found)]
        self.question.setText(words.say(f"score.{name}"))
        self.scale.setAccessibleName(self.question.text())
        self.scale.clear()
        self.done.setEnabled(False)
        self.enter()

    def _take(self) -> None:
        if self.scale.value is not None:
            self._go_on(self.scale.value)

    def _go_on(self, value: int | None) -> None:
        """Keep an answer, or that there is none, and ask for the next."""
        if len(self._found) == len(self._names):
            return
        self._found[self._names[len(self._found)]] = value
        if len(self._found) < len(self._names):
            self._show()
        else:
            self.done.setEnabled(False)
            self.answered.emit(dict(self._found))
