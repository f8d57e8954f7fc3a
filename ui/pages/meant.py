"""Whether somebody really feels unwell: asked where nothing goes on, as a key may go astray."""

from __future__ import annotations

from collections.abc import Callable

from ui import words
from ui.session.flow import Director
from ui.widgets.basic import Button, Page, Words


class MeantPage(Page):
    """Lies over the page that it was pressed on; who feels unwell has the keys.

    Parameters
    ----------
    director
        Has the safety questions come.
    back
        Goes back to the page under this one, on which nothing has changed.
    """

    def __init__(self, director: Director, back: Callable[[], None]) -> None:
        super().__init__()
        self.body.addWidget(Words(words.say("meant.title"), "title"))
        self.body.addWidget(Words(words.say("meant.how"), "lead"))
        self.body.addStretch(1)
        self.unwell = Button(words.say("ask.unwell"), "main", words.say("ask.unwell_name"))
        self.unwell.clicked.connect(lambda: director.unwell(meant=True))
        self.back = Button(words.say("meant.back"))
        self.back.clicked.connect(back)
        for button in (self.unwell, self.back):
            self.buttons.addWidget(button)
