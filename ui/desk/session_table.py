"""The sessions of one person, the newest first."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHeaderView

from tracker.records.rows import SessionRow
from ui import words
from ui.desk import trade
from ui.desk.session_words import ended_words
from ui.desk.small import as_tip
from ui.desk.table import Index, Table
from ui.desk.table_model import RowsModel

#: Roles that are answered with the words of a row.
SHOWN = frozenset(
    int(role)
    for role in (
        Qt.ItemDataRole.DisplayRole,
        Qt.ItemDataRole.ToolTipRole,
        Qt.ItemDataRole.AccessibleTextRole,
    )
)


class SessionModel(RowsModel):
    """Sessions, the newest first."""

    columns = ("when", "ended", "done", "dizzy", "doubt", "notes")
    heads = "desk.scol"

    def __init__(self) -> None:
        super().__init__()
        self.rows: list[SessionRow] = []
        self.notes: dict[str, int] = {}
        self._cells: dict[int, list[str]] = {}

    def show(self, rows: Sequence[SessionRow], notes: dict[str, int]) -> None:
        """Show others."""
        self.beginResetModel()
        self.rows, self.notes = list(reversed(rows)), notes
        self._cells.clear()
        self.endResetModel()

    def data(self, index: Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        """Words."""
        if not index.isValid():
            return None
        if role not in SHOWN:
            return None
        cells = self._cells_of(index.row())
        if role == Qt.ItemDataRole.DisplayRole:
            return cells[index.column()]
        if role == Qt.ItemDataRole.ToolTipRole:
            return as_tip(cells[index.column()])
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return ", ".join(c for c in cells if c) if index.column() == 0 else None
        return None

    def _cells_of(self, row: int) -> list[str]:
        """The words of a row: worked out once, or a long list would not scroll smoothly."""
        if row not in self._cells:
            self._cells[row] = session_cells(self.rows[row], self.notes)
        return self._cells[row]


def note_key(row: SessionRow) -> str:
    """What notes know a session by."""
    return row.session_id or row.place


def session_cells(row: SessionRow, notes: dict[str, int]) -> list[str]:
    """What stands in the columns of a session."""
    clock = (row.started_at or "")[11:16]
    doubts = dict.fromkeys(d for s in row.sets for d in s.doubts("on_target"))
    count = notes.get(note_key(row), 0)
    scores = (row.before, row.after)
    asked = [words.say("desk.not_asked") if v is None else words.number(v) for v in scores]
    return [
        f"{trade.day(row.day)} {clock}".strip(),
        ended_words(row),
        trade.listed(trade.exercise(s.exercise, s.form) for s in row.sets)
        or words.say("desk.nothing_done"),
        words.say("desk.dizzy", before=asked[0], after=asked[1]),
        trade.listed(trade.flag(d) for d in doubts),
        words.say("desk.notes_count", count=count) if count else "",
    ]


class SessionTable(Table):
    """Sessions by date; Enter opens one."""

    chosen = Signal(object)
    stretching = (2, 4)
    shares = (0.26, 0.25, 0.28, 0.21, 0.40, 0.15)

    def __init__(self) -> None:
        super().__init__(words.say("desk.sessions"))
        self.sessions = SessionModel()
        self.setModel(self.sessions)
        self.opened.connect(lambda row: self.chosen.emit(self.sessions.rows[row]))
        self.set_percent(100)

    def show_rows(
        self, rows: Sequence[SessionRow], notes: dict[str, int], *, again: bool = False
    ) -> None:
        """Show sessions; of the same person the one that was chosen stays chosen."""
        at = self.currentIndex().row()
        was = self.sessions.rows[at].place if again and at >= 0 else None
        self.sessions.show(rows, notes)
        self.arrange()
        places = [r.place for r in self.sessions.rows] if was is not None else []
        self.choose_again(places.index(was) if was in places else None)

    def arrange(self) -> None:
        """One line a session; two where they don't fit side by side."""
        lines = 2.4 if self.fit_columns() else 1.7
        line = self.fontMetrics().height()
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.verticalHeader().setDefaultSectionSize(round(lines * line))
