"""The notes on a session, and a field to write one."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLineEdit, QScrollArea, QVBoxLayout, QWidget

from tracker.errors import TurnpostError
from tracker.records.notes import MAX_TEXT, Note, NoteBook
from ui import theme, words
from ui.desk.small import desk_words, row_of, small_button


class NotesPanel(QWidget):
    """Notes of all authors; one's own can be added and withdrawn."""

    changed = Signal()

    def __init__(self, book: NoteBook) -> None:
        super().__init__()
        self.book, self.session = book, ""
        #: Folder and session -> what was typed there and not added yet.
        self._typed: dict[tuple[Path, str], str] = {}
        self._at = (book.folder, "")
        #: What was typed before and came back, until somebody types on.
        self._came_back = ""
        self._older: Note | None = None
        self.notes = desk_words()
        self.notes.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.note = QLineEdit()
        self.note.setAccessibleName(words.say("desk.note.text"))
        self.note.setPlaceholderText(words.say("desk.note.text"))
        self.note.setMaxLength(MAX_TEXT)
        self.add = small_button(words.say("desk.note.add"))
        self.undo = small_button(words.say("desk.note.undo"))
        self.sure = small_button(words.say("desk.note.sure"))
        self.sure.hide()
        self._scroll = scroll = QScrollArea()
        scroll.setWidget(self.notes)
        scroll.setWidgetResizable(True)
        scroll.setAccessibleName(words.say("desk.notes"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(desk_words(words.say("desk.notes"), bold=True))
        column.addWidget(scroll, 1)
        column.addWidget(self.note)
        column.addWidget(row_of([self.add, self.undo]))
        column.addWidget(self.sure)
        self.add.clicked.connect(self.add_note)
        self.note.returnPressed.connect(self.add_note)
        self.undo.clicked.connect(self.undo_note)
        self.sure.clicked.connect(self.undo_older)
        self.note.textEdited.connect(self._typed_on)

    def set_percent(self, percent: int) -> None:
        """The words of what Qt draws."""
        self.note.setFont(theme.font("desk", percent))

    def show_session(self, session: str) -> None:
        """Show the notes on a session; what was typed on another one waits for it."""
        self._typed[self._at] = self.note.text()
        self.session = session
        self._at = (self.book.folder, session)
        self._came_back = self._typed.pop(self._at, "")
        self.note.setText(self._came_back)
        self._show()

    def drafts(self) -> dict[tuple[Path, str], str]:
        """Folder and session -> what was typed there and not added, the one shown first."""
        found = {self._at: self.note.text(), **self._typed}
        return {at: text.strip() for at, text in found.items() if text.strip()}

    def _typed_on(self) -> None:
        self._came_back = ""

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
            self._came_back = ""

    def mark(self, set_number: int, repetition: int) -> None:
        """Mark a repetition as not valid; what was typed says why.

        What was typed before for something else, and came back, does not.
        """
        text = "" if self._came_back else self.note.text()
        if repetition in self.marked(set_number):
            return
        written = self._write(
            lambda: self.book.add(
                "not_valid", self.session, text, set_number=set_number, repetition=repetition
            )
        )
        if written and not self._came_back:
            self.note.clear()

    def undo_note(self) -> None:
        """Withdraw one's own last note on this session.

        One of before notes had a writer may be of another computer with the same login: it is
        asked about. Where there is nothing to withdraw, that is said.
        """
        if not self.session:
            return
        undone: list[Note | None] = []
        if not self._write(lambda: undone.append(self.book.undo(self.session))) or undone[0]:
            return
        older = self.book.last_without_writer(self.session)
        if older is None:
            self._show(words.say("desk.note.no_undo"))
            return
        self._show(words.say("desk.note.older", note=note_words(older)))
        self._older = older
        self.sure.show()

    def undo_older(self) -> None:
        """Withdraw the note that was asked about."""
        older = self._older
        if older is not None:
            self._write(lambda: self.book.withdraw(older.id))

    def _show(self, fault: str = "") -> None:
        """Show the notes, and before them what is to be said; what was asked is taken back."""
        self._older = None
        self.sure.hide()
        lines = [fault] if fault else []
        lines += [note_words(n) for n in reversed(self.own())]
        lines = lines or [words.say("desk.note.none")]
        self.notes.setText("\n".join([*lines, "", words.say("desk.note.kept")]))
        self._scroll.verticalScrollBar().setValue(0)

    def _write(self, what: Callable[[], object]) -> bool:
        try:
            what()
        except TurnpostError as error:
            self._show(words.say("desk.note.failed", why=words.told(str(error))))
            return False
        self._show()
        self.changed.emit()
        return True


def note_words(note: Note) -> str:
    """A note as it is shown."""
    text = note.text
    if note.kind == "not_valid":
        text = words.say("desk.note.invalid", number=note.repetition)
        if note.text:
            text = words.say("desk.figure", name=text, value=words.apart(note.text))
    else:
        text = words.apart(text)
    author, day = words.apart(note.author), words.apart(note.at[:10])
    return words.say("desk.note", author=author, day=day, text=text)
