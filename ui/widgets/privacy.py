"""What becomes of pictures and results, and beside it the way to what is stored."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QBoxLayout

from ui import theme, words
from ui.widgets.basic import Button, Words


class PrivacyRow(QBoxLayout):
    """The sentence on privacy, and its button beside it, or below it where words are large."""

    def __init__(self, show_stored: Callable[[], object]) -> None:
        super().__init__(QBoxLayout.Direction.LeftToRight)
        self.said = Words(words.say("privacy"), soft=True)
        self.stored = Button(words.say("stored.open"))
        self.stored.clicked.connect(lambda: show_stored())
        self.setSpacing(theme.M)
        self.addWidget(self.said, 1)
        self.addWidget(self.stored, 0, Qt.AlignmentFlag.AlignLeft)

    def set_percent(self, percent: int) -> None:
        """Large words leave no room for a button beside them."""
        way = QBoxLayout.Direction
        self.setDirection(way.LeftToRight if percent <= 125 else way.TopToBottom)
