"""A table that is read by rows: arrow keys, and Enter to open one."""

# ruff: noqa: N802 - the names and arguments are Qt's

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QStyle, QTableView

from ui import theme

Index = QModelIndex | QPersistentModelIndex


class Table(QTableView):
    """A table that is read by rows; it keeps room for a good part of them.

    Attributes
    ----------
    stretching
        Columns that take what the others leave.
    shares
        What each column gets of the width where the words of all would not fit side by side;
        what is beyond 1 is out of sight. The words are broken into lines then.
    """

    opened = Signal(int)
    stretching: tuple[int, ...] = ()
    shares: tuple[float, ...] = ()
    #: The same where so many lines' heights of width still carry all columns, words in two lines.
    squeezed: tuple[float, ...] = ()
    squeezed_from = 44.0

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
        self.setMinimumHeight(12 * self.fontMetrics().height())
        self.arrange()

    def sizeHint(self) -> QSize:
        """A good part of the rows; a page that is higher than the screen asks for no more."""
        return QSize(400, self.minimumHeight())

    def sizeHintForColumn(self, column: int) -> int:
        """With some air, or the words of one column would run into those of the next."""
        return super().sizeHintForColumn(column) + theme.S

    def arrange(self) -> None:
        """Give rows and columns their sizes."""

    def choose_again(self, row: int | None) -> None:
        """Have the keys on a row that was chosen before other rows were shown."""
        if row is not None:
            self.setCurrentIndex(self.model().index(row, 0))

    def fit_columns(self) -> bool:
        """Give the columns their widths; whether their words have to be broken into lines."""
        header = self.horizontalHeader()
        mode = QHeaderView.ResizeMode
        # Whether there is a scroll bar hangs on the rows' heights, and those on this width.
        bar = self.style().pixelMetric(QStyle.PixelMetric.PM_ScrollBarExtent, None, self)
        wide = self.width() - bar - 2 * self.frameWidth()
        narrow = sum(self._natural(c) for c in range(len(self.shares))) > wide
        squeezes = bool(self.squeezed) and wide >= self.squeezed_from * self.fontMetrics().height()
        shares = self.squeezed if squeezes else self.shares
        for column, share in enumerate(shares):
            stretches = mode.Stretch if column in self.stretching else mode.ResizeToContents
            header.setSectionResizeMode(column, mode.Fixed if narrow else stretches)
            if narrow:
                self.setColumnWidth(column, round(share * wide))
        return narrow

    def _natural(self, column: int) -> int:
        """Width of a column's words in one line; a stretching one can do with less."""
        line = self.fontMetrics().height()
        if column in self.stretching:
            return 6 * line
        return max(self.sizeHintForColumn(column), self.horizontalHeader().sectionSizeHint(column))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width has other columns."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.arrange()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter opens the row."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.opened.emit(self.currentIndex().row())
            return
        super().keyPressEvent(event)
