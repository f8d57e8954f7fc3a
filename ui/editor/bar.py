"""A question in the window itself, with its answers: nothing pops up, nothing is hidden."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QVBoxLayout, QWidget

from ui import theme, words
from ui.desk.small import desk_words, small_button
from ui.editor.frames import Ring
from ui.editor.inputs import LineInput
from ui.widgets.basic import Button, Rule
from ui.widgets.flow import FlowRow

Answer = tuple[str, Callable[[], None]]


class Bar(QWidget):
    """Says something, asks something, or asks for the name of a file."""

    def __init__(self) -> None:
        super().__init__()
        self.said = desk_words(bold=True)
        self.path = LineInput()
        self.path.setAccessibleName(words.say("edit.file"))
        self.path.setFrame(True)
        self.path.returnPressed.connect(self._first)
        self.buttons: list[Button] = []
        self._row = FlowRow()
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, theme.S, 0, theme.S)
        column.setSpacing(theme.S)
        column.addWidget(self.said)
        column.addWidget(Ring(self.path))
        column.addLayout(self._row)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(theme.M, 0, theme.M, 0)
        outer.addWidget(Rule(inside))
        self._percent = 100
        self._back: QWidget | None = None
        self.hide()

    def set_percent(self, percent: int) -> None:
        """Buttons that come later get the same text size."""
        self._percent = percent

    def ask(self, text: str, answers: Sequence[Answer], path: Path | None = None) -> None:
        """Ask; every answer closes the bar first. With a path a file's name is asked for."""
        if self.isHidden():
            self._back = self.window().focusWidget()
        for button in self.buttons:
            self._row.removeWidget(button)
            button.hide()
            button.deleteLater()
        self.said.setText(text)
        self.said.setAccessibleName(text)
        self.path.setVisible(path is not None)
        if path is not None:
            self.path.setText(str(path))
            self.path.setAccessibleDescription(text)
        self.buttons = []
        for words_of, act in answers:
            button = small_button(words_of)
            button.set_percent(self._percent)
            # A screen reader says the question with whatever gets the keys.
            button.setAccessibleDescription(text)
            button.clicked.connect(lambda _=False, act=act: self._answer(act))
            self._row.addWidget(button)
            button.show()
            self.buttons.append(button)
        self.show()
        self.updateGeometry()
        if path is not None:
            self.path.setFocus()
            self.path.selectAll()
        elif self.buttons:
            self.buttons[0].setFocus(Qt.FocusReason.OtherFocusReason)

    def ask_path(
        self, text: str, verb: str, path: Path, act: Callable[[Path], None], *, opens: bool = False
    ) -> None:
        """Ask for a file to write, or to open."""

        def take() -> None:
            typed = self.path.text().strip()
            if typed:
                act(Path(typed).expanduser())

        def look() -> None:
            self.ask_path(text, verb, path, act, opens=opens)
            start = self.path.text()
            if opens:
                found, _ = QFileDialog.getOpenFileName(self, text, start, "*.json")
            else:
                # Whether a file may be replaced is asked here, not by the dialog.
                keep = QFileDialog.Option.DontConfirmOverwrite
                found, _ = QFileDialog.getSaveFileName(self, text, start, "", options=keep)
            if found:
                self.path.setText(found)

        answers = [
            (verb, take),
            (words.say("edit.look"), look),
            (words.say("edit.cancel"), lambda: None),
        ]
        self.ask(text, answers, path)

    def _first(self) -> None:
        if self.buttons:
            self.buttons[0].click()

    def _answer(self, act: Callable[[], None]) -> None:
        self.close_bar()
        act()

    def close_bar(self) -> None:
        """Nothing is asked any more; the keys go back to where they were."""
        if self.isHidden():
            return
        self.hide()
        back = self._back
        try:
            if back is not None and back.isVisible():
                back.setFocus()
        except RuntimeError:
            # What had the keys is gone.
            return
