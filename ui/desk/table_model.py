"""What the models of the desk's tables share: a row a thing, and named columns."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, ClassVar

from PySide6.QtCore import QAbstractTableModel, Qt

from ui import words
from ui.desk.table import Index


class RowsModel(QAbstractTableModel):
    """Rows under columns that are named by keys; what stands in a cell the table's own model says.

    Attributes
    ----------
    columns
        Keys of the columns, in order.
    heads
        What stands before such a key among the words.
    rows
        What is shown, a row each.
    """

    columns: ClassVar[tuple[str, ...]] = ()
    heads: ClassVar[str] = ""
    rows: Sequence[Any] = ()

    def rowCount(self, parent: Index | None = None) -> int:
        """How many."""
        return 0 if parent is not None and parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index | None = None) -> int:
        """How many."""
        return len(self.columns)

    def headerData(
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = int(Qt.ItemDataRole.DisplayRole),
    ) -> Any:
        """Names of the columns."""
        if orientation != Qt.Orientation.Horizontal or role != Qt.ItemDataRole.DisplayRole:
            return None
        return words.say(f"{self.heads}.{self.columns[section]}")
