"""Whether this is all for today: asked of who pressed the key for stopping between two sets."""

from __future__ import annotations

from collections.abc import Callable

from tracker.practice.tasks import AskGate, Settle
from ui import words
from ui.session.flow import Director
from ui.widgets.basic import Button, Page, Words, relabel
from ui.widgets.leave import end_button, unwell_button


class LeavePage(Page):
    """Lies over the page that it was pressed on; the safe answer has the keys.

    Parameters
    ----------
    director
        Ends the session.
    back
        Goes back to the page under this one, on which nothing was lost.
    """

    def __init__(self, director: Director, back: Callable[[], None]) -> None:
        super().__init__()
        self._director = director
        self.body.addWidget(Words(words.say("leave.title"), "title"))
        self.body.addWidget(Words(words.say("leave.how"), "lead"))
        self.body.addStretch(1)
        self.go_on = Button(words.say("leave.go_on"), "main")
        self.go_on.clicked.connect(back)
        self.unwell, self.end = unwell_button(), end_button()
        self.unwell.clicked.connect(director.unwell)
        self.end.clicked.connect(lambda: director.end_today())
        for button in (self.go_on, self.unwell, self.end):
            self.buttons.addWidget(button)
        self.buttons.set_apart(self.unwell, self.end)

    def enter(self) -> None:
        """To go on is offered where one practises: not to who may not yet, or rests."""
        resting = isinstance(self._director.task, AskGate | Settle)
        relabel(self.go_on, words.say("leave.back" if resting else "leave.go_on"))
        super().enter()
