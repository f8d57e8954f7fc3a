"""The plan that is edited: its data, its steps, its file."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from pathlib import Path as FilePath

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoCommand, QUndoStack

from tracker.inputs import read_bytes
from tracker.outputs import PLAN as A_PLAN
from tracker.outputs import must_harm_nothing
from tracker.plan.draft import Data, editable_data, empty_data, text_of
from tracker.plan.files import MAX_FILE_BYTES, format_plan, read_text
from tracker.plan.lines import Path
from tracker.records.rows import SessionRow
from tracker.session.files import write_atomically
from ui.editor.rows import PLAN, Item
from ui.editor.state import State

#: Item and field.
Place = tuple[Item, Path | None]


class _Step(QUndoCommand):
    """One step: the data before and after it, and where it was done, as called before and after."""

    def __init__(
        self, document: Document, data: Data, text: str, place: Place, before: Place
    ) -> None:
        super().__init__(text)
        self._document = document
        self._before, self._place_before = document.data, before
        self._after, self._place_after = data, place

    def undo(self) -> None:
        """Back."""
        self._document._set(self._before, self._place_before)

    def redo(self) -> None:
        """Forth."""
        self._document._set(self._after, self._place_after)


class Document(QObject):
    """A plan being edited.

    Attributes
    ----------
    path
        Its file; None while it has none.
    place
        Item and field of the last step, to be shown after an undo or a redo.
    """

    changed = Signal()

    def __init__(self, today: date | None = None) -> None:
        super().__init__()
        self._today = today
        self.data: Data = empty_data()
        self.path: FilePath | None = None
        self.place: Place = (PLAN, None)
        self.stack = QUndoStack(self)
        #: What this window has written itself: that may be replaced without asking.
        self._written: dict[FilePath, bytes] = {}
        #: What each file held when it was last opened or saved here.
        self._known: dict[FilePath, bytes] = {}
        #: Files that hold this very plan, because it came from there or was saved there.
        self._own: set[FilePath] = set()
        self._state: State | None = None
        self._sessions: tuple[str | None, Sequence[SessionRow]] | None = None

    @property
    def today(self) -> date:
        """The day on the user's calendar."""
        return self._today or date.today()

    @property
    def rows(self) -> Sequence[SessionRow] | None:
        """Sessions of the plan's person, oldest first; None where none are at hand.

        A plan without a pseudonym is that of the person that the window was opened for.
        """
        if self._sessions is None:
            return None
        person, rows = self._sessions
        return rows if self.data.get("person") in (None, person) else None

    @property
    def state(self) -> State:
        """The draft and what it comes to."""
        if self._state is None:
            self._state = State.of(self.data, self.rows, self.today)
        return self._state

    @property
    def dirty(self) -> bool:
        """Whether there is something that no file has."""
        return not self.stack.isClean()

    def do(self, data: Data, text: str, place: Place, before: Place | None = None) -> None:
        """Take a step, named by ``text``; none where nothing changes.

        Parameters
        ----------
        place
            Where it is done; to be shown after a redo.
        before
            To be shown after an undo, where it isn't the same place.
        """
        if data is not self.data:
            self.stack.push(_Step(self, data, text, place, before or place))

    def _set(self, data: Data, place: Place) -> None:
        self.data, self.place, self._state = data, place, None
        self.changed.emit()

    # --- where it comes from ---

    def know_sessions(self, person: str | None, rows: Sequence[SessionRow]) -> None:
        """The sessions of one person are at hand; plans of others are not judged by them."""
        self._sessions, self._state = (person, rows), None

    def begin(self, data: Data, path: FilePath | None = None) -> None:
        """Begin with a plan; the steps of the one before are gone."""
        self.path = path
        self._own = set() if path is None else {path.absolute()}
        self.stack.clear()
        self._set(data, (PLAN, None))

    def open(self, path: FilePath) -> None:
        """Open a file, also one that is not finished.

        Raises
        ------
        InputError
            If it is no plan, or can't be put right here; the plan that is open stays.
        """
        # Before it is read: what changes in between is a change.
        known = _bytes_of(path)
        self.begin(editable_data(read_text(path), str(path)), path)
        self._known[path.absolute()] = known

    # --- where it goes ---

    def is_foreign(self, path: FilePath) -> bool:
        """Whether a file is there that this window has not written itself.

        Also when it has been changed by somebody else since.
        """
        try:
            return read_bytes(path, MAX_FILE_BYTES) != self._written.get(path.absolute())
        except FileNotFoundError:
            return False
        except OSError:
            return path.exists()

    def is_changed_since(self, path: FilePath) -> bool:
        """Whether somebody else has changed a file since it was opened or saved here."""
        known = self._known.get(path.absolute())
        return known is not None and path.exists() and _bytes_of(path) != known

    def must_harm_nothing(self, path: FilePath) -> None:
        """Refuse a place where something else is lost; a plan only gives way to itself.

        Raises
        ------
        InputError
            As :func:`tracker.outputs.must_harm_nothing`.
        """
        must_harm_nothing(path, replaces=A_PLAN if path.absolute() in self._own else "")

    def save(self, path: FilePath) -> None:
        """Write the plan, whole or not at all; nobody can practise one that has faults.

        Raises
        ------
        InputError
            If it can't be written there.
        RunError
            If writing fails half-way. Nothing of the file or of the steps is lost.
        """
        plan = self.state.plan
        text = text_of(self.data) if plan is None else format_plan(plan)
        self.must_harm_nothing(path)
        write_atomically(path, text)
        self._written[path.absolute()] = self._known[path.absolute()] = text.encode("utf-8")
        self.path = path
        self._own.add(path.absolute())
        self.stack.setClean()
        self.changed.emit()


def _bytes_of(path: FilePath) -> bytes:
    """What a file holds; nothing where it can't be read."""
    try:
        return read_bytes(path, MAX_FILE_BYTES)
    except OSError:
        return b""
