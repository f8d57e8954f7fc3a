"""A table that is read by rows: arrow keys, and Enter to open one."""

# ruff: noqa: N802 - the names and arguments are Qt's

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QTableView

from ui import theme

Index = QModelIndex | QPersistentModelIndex


class Table(QTableView):
    """A table that is read by rows; it keeps room for a good part of them."""

    opened = Signal(int)

    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setWordWrap(True)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().hide()
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setDefaultAlignment(
            Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        )
        self.percent = 100
        self.doubleClicked.connect(lambda index: self.opened.emit(index.row()))

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self.percent = percent
        self.setFont(theme.font("desk", percent))
        self.horizontalHeader().setFont(theme.font("desk", percent))
        self.setMinimumHeight(10 * self.fontMetrics().height())
        self.arrange()

    def sizeHint(self) -> QSize:
        """A good part of the rows; a page that is higher than the screen asks for no more."""
        return QSize(400, self.minimumHeight())

    def arrange(self) -> None:
        """Give rows and columns their sizes."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter opens the row."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.opened.emit(self.currentIndex().row())
            return
        super().keyPressEvent(event)
