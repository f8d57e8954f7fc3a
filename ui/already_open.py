"""What a second copy of the program shows: that there is one already.

It does not open beside the first: two windows would want the same camera, and a
person who pressed an icon twice would not know which of them counts.
"""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from ui import theme, words
from ui.widgets.basic import Button, Page, Words

SIZE = (720, 320)


class AlreadyOpen(QWidget):
    """A calm note with one button."""

    def __init__(self) -> None:
        super().__init__()
        self.setWindowTitle(words.say("program"))
        self.resize(*SIZE)
        page = self.page = Page()
        page.body.addWidget(Words(words.say("second.title"), "title"))
        page.body.addWidget(Words(words.say("second.what"), "lead"))
        page.body.addStretch(1)
        self.leave = Button(words.say("second.close"), "main")
        self.leave.clicked.connect(self.close)
        page.buttons.addWidget(self.leave)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, theme.M, 0, 0)
        column.addWidget(page)
        self.leave.setFocus()
