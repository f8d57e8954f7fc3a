"""The notes on a session, and a field to write one."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QScrollArea, QVBoxLayout, QWidget

from tracker.errors import TurnpostError
from tracker.records.notes import MAX_TEXT, Note, NoteBook
from ui import theme, words
from ui.desk.small import desk_words, small_button


class NotesPanel(QWidget):
    """Notes of all authors; one's own can be added and withdrawn."""

    changed = Signal()

    def __init__(self, book: NoteBook) -> None:
        super().__init__()
        self.book, self.session = book, ""
        #: Folder and session -> what was typed there and not added yet.
        self._typed: dict[tuple[Path, str], str] = {}
        self._at = (book.folder, "")
        self.notes = desk_words()
        self.notes.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.note = QLineEdit()
        self.note.setAccessibleName(words.say("desk.note.text"))
        self.note.setPlaceholderText(words.say("desk.note.text"))
        self.note.setMaxLength(MAX_TEXT)
        self.add = small_button(words.say("desk.note.add"))
        self.undo = small_button(words.say("desk.note.undo"))
        scroll = QScrollArea()
        scroll.setWidget(self.notes)
        scroll.setWidgetResizable(True)
        scroll.setAccessibleName(words.say("desk.notes"))
        row = QHBoxLayout()
        row.addWidget(self.add)
        row.addWidget(self.undo)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(desk_words(words.say("desk.notes"), bold=True))
        column.addWidget(scroll, 1)
        column.addWidget(self.note)
        column.addLayout(row)
        self.add.clicked.connect(self.add_note)
        self.note.returnPressed.connect(self.add_note)
        self.undo.clicked.connect(self.undo_note)

    def set_percent(self, percent: int) -> None:
        """The words of what Qt draws."""
        self.note.setFont(theme.font("desk", percent))

    def show_session(self, session: str) -> None:
        """Show the notes on a session; what was typed on another one waits for it."""
        self._typed[self._at] = self.note.text()
        self.session = session
        self._at = (self.book.folder, session)
        self.note.setText(self._typed.pop(self._at, ""))
        self._show()

    def own(self) -> list[Note]:
        """Notes on this session, oldest first."""
        return [n for n in self.book.notes() if n.session == self.session]

    def marked(self, set_number: int) -> set[int]:
        """Repetitions of a set that are marked as not valid."""
        return {
            n.repetition
            for n in self.own()
            if n.kind == "not_valid" and n.set_number == set_number and n.repetition is not None
        }

    def add_note(self) -> None:
        """Write the note that was typed."""
        text = self.note.text().strip()
        if text and self._write(lambda: self.book.add("note", self.session, text)):
            self.note.clear()

    def mark(self, set_number: int, repetition: int) -> None:
        """Mark a repetition as not valid; what was typed says why."""
        text = self.note.text()
        if repetition not in self.marked(set_number) and self._write(
            lambda: self.book.add(
                "not_valid", self.session, text, set_number=set_number, repetition=repetition
            )
        ):
            self.note.clear()

    def undo_note(self) -> None:
        """Withdraw one's own last note on this session."""
        if self.session:
            self._write(lambda: self.book.undo(self.session))

    def _show(self, fault: str = "") -> None:
        """Show the notes, and why one could not be saved."""
        lines = [fault] if fault else []
        lines += [note_words(n) for n in reversed(self.own())]
        lines = lines or [words.say("desk.note.none")]
        self.notes.setText("\n".join([*lines, "", words.say("desk.note.kept")]))

    def _write(self, what: Callable[[], object]) -> bool:
        try:
            what()
        except TurnpostError as error:
            self._show(words.say("desk.note.failed", why=str(error)))
            return False
        self._show()
        self.changed.emit()
        return True


def note_words(note: Note) -> str:
    """A note as it is shown."""
    text = note.text
    if note.kind == "not_valid":
        text = words.say("desk.note.invalid", number=note.repetition, text=note.text).strip()
    return words.say("desk.note", author=note.author, day=note.at[:10], text=text)
