"""The clinic's key: made, copied to a safe place, brought in from there."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QStandardPaths, Signal
from PySide6.QtWidgets import QFileDialog

from tracker.handover import crypt, keys
from ui import words
from ui.desk.exchange_work import Block, ExchangeWork
from ui.desk.small import desk_words, small_button
from ui.widgets.paths import shown_path


class KeyKeeping(Block):
    """Which keys there are, and what can be done with them."""

    #: A key has come.
    came = Signal()

    def __init__(self, work: ExchangeWork) -> None:
        self.has = desk_words()
        self.make = small_button(words.say("exchange.key.make"))
        self.copy = small_button(words.say("exchange.key.copy"))
        self.bring = small_button(words.say("exchange.key.bring"))
        super().__init__("exchange.key", [self.make, self.copy, self.bring], [self.has])
        self._work = work
        self.make.clicked.connect(self._make)
        self.copy.clicked.connect(self._copy)
        self.bring.clicked.connect(self._choose)

    def show_keys(self) -> bool:
        """Say which keys there are; whether there is one."""
        found = keys.clinic_keys()
        names = ", ".join(k.name for k in found)
        self.has.setText(words.say(f"exchange.key.{'has' if found else 'none'}", names=names))
        self.copy.setVisible(bool(found))
        return bool(found)

    def _make(self) -> None:
        def then(typed: str) -> None:
            self._work.start(lambda: keys.new_key(typed), lambda key: self._here(key, "made"))

        self._work.say("")
        self._work.box.ask(words.say("exchange.pass.new"), then, twice=True)

    def _here(self, key: object, how: str) -> None:
        assert isinstance(key, keys.ClinicKey)
        self.came.emit()
        self._work.say(words.say(f"exchange.key.{how}", name=key.name))
        if how == "made":
            self.copy.setFocus()

    def _copy(self) -> None:
        """Ask where to copy the newest key."""
        key = keys.clinic_keys()[-1]
        documents = QStandardPaths.StandardLocation.DocumentsLocation
        start = Path(QStandardPaths.writableLocation(documents)) / key.path.name
        title, kinds = words.say("exchange.key.copy_where"), words.say("exchange.key.kinds")
        name, _ = QFileDialog.getSaveFileName(self, title, str(start), kinds)
        if name:
            to = Path(name)
            done = words.say("exchange.key.copied", path=shown_path(to))
            self._work.start(lambda: keys.back_up(key, to), lambda _: self._work.say(done))

    def _choose(self) -> None:
        title, kinds = words.say("exchange.key.which"), words.say("exchange.key.kinds")
        name, _ = QFileDialog.getOpenFileName(self, title, "", kinds)
        if name:
            self.bring_in(Path(name))

    def bring_in(self, path: Path) -> None:
        """Bring in a key from its copy."""

        def ask() -> None:
            self._work.box.ask(words.say("exchange.pass.brought"), then)

        def then(typed: str) -> None:
            self._work.start(
                lambda: keys.bring_in(path, typed), lambda key: self._here(key, "brought"), again
            )

        def again(error: Exception) -> None:
            self._work.failed(error)
            if isinstance(error, crypt.WrongPassphraseError):
                ask()

        self._work.say("")
        ask()
