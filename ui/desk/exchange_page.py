"""Files from and to patients, and the clinic's key: a page of the desk."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ui import background, theme, words
from ui.desk.exchange_in import TakingIn
from ui.desk.exchange_keys import KeyKeeping
from ui.desk.exchange_out import HandingOut
from ui.desk.exchange_work import ExchangeWork
from ui.desk.small import small_button
from ui.ports import Runner
from ui.settings import Settings
from ui.widgets.basic import Button, Words


class ExchangePage(QWidget):
    """Takes in, hands out, keeps the key.

    Parameters
    ----------
    folder
        Gives the clinic's folder.
    settings
        Remember whether the clinic has chosen files without a lock.
    run
        Starts what may take long.
    """

    left = Signal()

    def __init__(
        self, folder: Callable[[], Path], settings: Settings, run: Runner = background.run
    ) -> None:
        super().__init__()
        self._settings = settings
        self._from: QWidget = self
        self.work = ExchangeWork(run, self._changed)
        self.into = TakingIn(self.work, folder)
        self.out = HandingOut(self.work, folder, settings)
        self.key = KeyKeeping(self.work)
        self.key.came.connect(self._key_came)
        self.back = small_button(words.say("exchange.back"))
        self.back.clicked.connect(self.left)
        self._arrange()
        self.show_keys()

    def _arrange(self) -> None:
        head = QHBoxLayout()
        head.addWidget(Words(words.say("exchange.title"), "lead", bold=True), 1)
        head.addWidget(self.back)
        inner = QWidget()
        column = QVBoxLayout(inner)
        column.setContentsMargins(theme.M, 0, theme.M, theme.M)
        column.setSpacing(theme.S)
        column.addLayout(head)
        work = self.work
        for part in (work.box, work.said, work.plan_words, self.into, self.out, self.key):
            column.addWidget(part)
        column.addStretch(1)
        self.scroll = QScrollArea()
        self.scroll.setWidget(inner)
        self.scroll.setWidgetResizable(True)
        self.scroll.setFrameShape(QFrame.Shape.NoFrame)
        self.scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(self.scroll)

    def enter(self) -> None:
        """The page comes to the front."""
        self.show_keys()
        self.into.take.setFocus()

    def leave(self) -> None:
        """It goes: nothing stays half asked."""
        self.work.box.leave()
        self.out.ask_plain(False)

    def show_keys(self) -> None:
        """Offer what can be done with the keys that there are."""
        self.out.show_ways(self.key.show_keys())

    def _key_came(self) -> None:
        # Whoever has a key needs no files without a lock.
        self._settings.plain_files = False
        self.into.forget()
        self.show_keys()

    def _changed(self) -> None:
        """Something begins or has ended: buttons follow, and the keys stay where they were."""
        busy, focus = self.work.busy, QApplication.focusWidget()
        if busy:
            self._from = focus if isinstance(focus, Button) else self.into.take
        for block in (self.into, self.out, self.key):
            block.let(not busy)
        self.scroll.verticalScrollBar().setValue(0)
        if not busy and self.isVisible() and not self.isAncestorOf(QApplication.focusWidget()):
            (self._from if self._from.isVisibleTo(self) else self.into.take).setFocus()

    def close_jobs(self) -> None:
        """The window closes: what is being written is finished, what was opened forgotten."""
        self.work.close_jobs()
        self.into.forget()
