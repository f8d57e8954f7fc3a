"""From a patient: a file is taken in, with the clinic's passphrase if it is locked."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFileDialog

from tracker.errors import InputError, TurnpostError
from tracker.handover import crypt, keys
from tracker.handover.receive import Received, needs_key, receive
from ui import words
from ui.desk.exchange_work import Block, ExchangeWork
from ui.desk.small import small_button
from ui.widgets.paths import shown_path


class TakingIn(Block):
    """Takes in a file; once a passphrase was given, further ones need none.

    Parameters
    ----------
    work
        Shared with the other parts.
    folder
        Gives the clinic's folder.
    """

    taken = Signal()

    def __init__(self, work: ExchangeWork, folder: Callable[[], Path]) -> None:
        self.take = small_button(words.say("exchange.take"))
        super().__init__("exchange.in", [self.take], [])
        self._work, self._folder = work, folder
        #: Secret keys that a passphrase has opened, as long as the window is open.
        self._opened: list[str] = []
        #: Whether a file was dropped while another was taken in.
        self._missed = False
        self.take.clicked.connect(self._choose_file)

    def forget(self) -> None:
        """Ask for the passphrase again next time."""
        self._opened = []

    def take_in(self, path: Path) -> None:
        """Take in a file; asks for the passphrase if it is locked."""
        if self._work.busy:
            self._missed = True
            return
        self._missed = False
        self._work.say("")
        try:
            locked = needs_key(path)
            if locked and not keys.clinic_keys():
                keys.open_keys("")
            folder = self._folder()
            if not folder.is_dir():
                # Made anew it would lie where a share is missing, and be lost once it is back.
                raise InputError(words.say("exchange.no_folder", folder=shown_path(folder)))
        except TurnpostError as error:
            self._work.failed(error)
            return
        if locked and not self._opened:
            self._ask(path, folder)
            return
        opened = list(self._opened)
        self._work.start(
            lambda: receive(path, folder, opened),
            self._taken_in,
            # Another key may be behind another passphrase.
            lambda error: self._not_opened(error, path, folder),
        )

    def _ask(self, path: Path, folder: Path) -> None:
        def then(typed: str) -> None:
            self._work.start(
                lambda: _opened_and_received(typed, path, folder),
                self._opened_in,
                lambda error: self._not_opened(error, path, folder),
            )

        self._work.box.ask(words.say("exchange.pass.open"), then)

    def _not_opened(self, error: Exception, path: Path, folder: Path) -> None:
        self._work.failed(error)
        if self._missed:
            self._work.say(f"{self._work.said.text()}\n{words.say('exchange.missed')}")
        if isinstance(error, crypt.WrongPassphraseError | crypt.WrongKeyError):
            self.forget()
            self._ask(path, folder)

    def _opened_in(self, found: object) -> None:
        assert isinstance(found, tuple)
        self._opened, got = found
        self._taken_in(got)

    def _taken_in(self, got: object) -> None:
        assert isinstance(got, Received)
        who = got.person or words.say("exchange.nobody")
        lines = [words.say("exchange.taken", person=who, new=len(got.new), known=len(got.known))]
        if got.other:
            lines.append(words.say("exchange.other", names=", ".join(got.other)))
        if not got.encrypted:
            lines.append(words.say("exchange.was_plain"))
        if self._missed:
            lines.append(words.say("exchange.missed"))
        self._work.say("\n".join(lines))
        if got.new:
            self.taken.emit()

    def _choose_file(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self, words.say("exchange.take"), "", words.say("exchange.kinds")
        )
        if name:
            self.take_in(Path(name))


def _opened_and_received(passphrase: str, path: Path, folder: Path) -> tuple[list[str], Received]:
    opened = keys.open_keys(passphrase)
    return opened, receive(path, folder, opened)
