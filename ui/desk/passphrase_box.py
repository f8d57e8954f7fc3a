"""A place to type a passphrase: shown while one is asked for, empty again at once."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from ui import theme, words
from ui.desk.small import desk_words, small_button

#: Far longer than any passphrase.
MAX_LETTERS = 500


class PassphraseBox(QWidget):
    """Asks for a passphrase, twice for a new one; Return goes on."""

    def __init__(self) -> None:
        super().__init__()
        self._then: Callable[[str], None] | None = None
        self.prompt = desk_words(bold=True)
        self.first, self.second = QLineEdit(), QLineEdit()
        self.second.setAccessibleName(words.say("exchange.pass.again"))
        self.second.setPlaceholderText(words.say("exchange.pass.again"))
        for field in (self.first, self.second):
            field.setEchoMode(QLineEdit.EchoMode.Password)
            field.setMaxLength(MAX_LETTERS)
            field.setInputMethodHints(Qt.InputMethodHint.ImhSensitiveData)
            field.setMinimumHeight(44)
        self.why = desk_words()
        self.ok = small_button(words.say("exchange.pass.ok"))
        self.cancel = small_button(words.say("exchange.pass.cancel"))
        row = QHBoxLayout()
        for part in (self.first, self.second):
            row.addWidget(part, 1)
        row.addWidget(self.ok)
        row.addWidget(self.cancel)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, theme.S)
        column.addWidget(self.prompt)
        column.addLayout(row)
        column.addWidget(self.why)
        self.first.returnPressed.connect(self._first_typed)
        self.second.returnPressed.connect(self._go_on)
        self.ok.clicked.connect(self._go_on)
        self.cancel.clicked.connect(self.leave)
        self.hide()

    def set_percent(self, percent: int) -> None:
        """The words of what Qt draws."""
        for field in (self.first, self.second):
            field.setFont(theme.font("desk", percent))

    def ask(self, prompt: str, then: Callable[[str], None], *, twice: bool = False) -> None:
        """Ask for one, and hand it on."""
        self._then = then
        self.prompt.setText(prompt)
        self.first.setAccessibleName(prompt)
        self.second.setVisible(twice)
        self._say("")
        self.clear()
        self.show()
        self.first.setFocus()

    def leave(self) -> None:
        """Nobody is asked any more."""
        self._then = None
        self.clear()
        self.hide()

    def clear(self) -> None:
        """Forget what was typed."""
        self.first.clear()
        self.second.clear()

    def _first_typed(self) -> None:
        if self.second.isVisible():
            self.second.setFocus()
        else:
            self._go_on()

    def _go_on(self) -> None:
        typed, then = self.first.text(), self._then
        if then is None or not typed:
            return
        if not self.second.isHidden() and self.second.text() != typed:
            self._say(words.say("exchange.pass.differ"))
            self.second.clear()
            self.second.setFocus()
            return
        self.leave()
        then(typed)

    def _say(self, text: str) -> None:
        self.why.setText(text)
        self.why.setVisible(bool(text))
