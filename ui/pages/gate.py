"""The safety questions: what is new is marked, or "none of these" is pressed."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QAbstractButton, QVBoxLayout

from tracker.plan.gate import CALL, EMERGENCY, SPIN
from tracker.practice.tasks import AskGate
from ui import theme, words
from ui.session.unwell import NOT_WELL
from ui.widgets.basic import Button, Page, Words
from ui.widgets.leave import end_button, unwell_button
from ui.widgets.marks import Mark

#: So many statements are read at a time: no scrolling at the usual text size.
_GROUPS: tuple[tuple[str, ...], ...] = (EMERGENCY[:4], EMERGENCY[4:], (*CALL, SPIN))


class GatePage(Page):
    """Goes through the questions of a task in small groups; ``answered`` brings the answers.

    Nothing is taken for a "no" that was not in sight: "none of these" can be pressed
    once the group has been seen to its end. What was marked in one group ends the
    questions there; the rest stays unanswered. ``unwell`` and ``ended`` leave without an
    answer.
    """

    answered = Signal(dict)
    unwell = Signal()
    ended = Signal()

    def __init__(self) -> None:
        super().__init__()
        #: Whether there was no last time that it could be new since.
        self.first_time: Callable[[], bool] = lambda: False
        self._percent = 100
        self._groups: list[tuple[str, ...]] = []
        self._at = 0
        self._answers: dict[str, bool] = {}
        self._marks: dict[str, Mark] = {}
        self.question = Words(role="title")
        self._column = QVBoxLayout()
        self._column.setSpacing(theme.S)
        self.body.addWidget(self.question)
        self.body.addWidget(Words(words.say("gate.how"), soft=True))
        self.body.addLayout(self._column)
        self.body.addStretch(1)
        self.none, self.some = (
            Button(words.say("gate.none")),
            Button(words.say("gate.some"), "main"),
        )
        self.back = Button(words.say("gate.back"))
        for button, then in (
            (self.none, self._none),
            (self.some, self._some),
            (self.back, self._back),
        ):
            button.clicked.connect(then)
            self.buttons.addWidget(button)
        self._leave = (unwell_button(), end_button())
        self.buttons.set_apart(*self._leave)
        for button, signal in zip(self._leave, (self.unwell, self.ended), strict=True):
            button.clicked.connect(signal)
            self.buttons.addWidget(button)
        bar = self.scroll.verticalScrollBar()
        bar.valueChanged.connect(self._look)
        bar.rangeChanged.connect(self._look)

    def set_percent(self, percent: int) -> None:
        """Statements that come later get the same text size."""
        super().set_percent(percent)
        self._percent = percent

    def ask(self, task: AskGate) -> None:
        """Begin with the first questions of a task."""
        groups = (tuple(q for q in group if q in task.questions) for group in _GROUPS)
        self._groups = [g for g in groups if g]
        self._at, self._answers = 0, {}
        unwell = task.because in NOT_WELL
        key = "gate.ask_first" if self.first_time() else "gate.ask"
        self.question.setText(words.say("gate.ask_unwell" if unwell else key))
        self._show()

    def enter(self) -> None:
        """The first statement gets the keys, so that a second Enter answers nothing."""
        self.scroll.verticalScrollBar().setValue(0)
        first: QAbstractButton = next(iter(self._marks.values()), self.none)
        first.setFocus()

    @property
    def marked(self) -> list[str]:
        """Questions that are marked now."""
        return [q for q, mark in self._marks.items() if mark.isChecked()]

    def _show(self) -> None:
        for mark in self._marks.values():
            mark.hide()
            mark.deleteLater()
        self._marks = {}
        for question in self._groups[self._at]:
            mark = Mark(words.say(f"gate.{question}"))
            mark.set_percent(self._percent)
            mark.toggled.connect(self._look)
            self._column.addWidget(mark)
            # What is not shown yet takes no keys: "none" would give them to a way out.
            mark.show()
            self._marks[question] = mark
        self.back.setVisible(self._at > 0)
        self._look()
        self.enter()

    def _look(self) -> None:
        """Either what is marked can be sent, or "none" once all has been in sight."""
        bar = self.scroll.verticalScrollBar()
        some = bool(self.marked)
        self.some.setVisible(some)
        self.none.setVisible(not some)
        self.none.setEnabled(bar.value() >= bar.maximum())

    def _none(self) -> None:
        if self.marked or not self._marks:
            return
        self._answers |= dict.fromkeys(self._groups[self._at], False)
        if self._at + 1 < len(self._groups):
            self._at += 1
            self._show()
        else:
            self.answered.emit(dict(self._answers))

    def _some(self) -> None:
        marked = self.marked
        if marked:
            self.answered.emit(self._answers | dict.fromkeys(marked, True))

    def _back(self) -> None:
        if self._at > 0:
            self._at -= 1
            for question in self._groups[self._at]:
                self._answers.pop(question, None)
            self._show()
