"""A row of buttons that goes on in a second row where the first is full.

What leaves stands apart, at the end of the last row: in the same place on every page.
"""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLabel, QLayout, QLayoutItem, QWidget

from ui import theme


class FlowRow(QLayout):
    """Lays widgets out in reading order, row after row."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self._apart: set[QWidget] = set()
        self._kept: set[QWidget] = set()
        #: Heights at widths, until something changes: Qt asks for them many times over.
        self._heights: dict[int, int] = {}
        self.setContentsMargins(0, 0, 0, 0)

    def set_apart(self, *widgets: QWidget) -> None:
        """Have widgets stand together at the end of the last row; they come last in it."""
        self._apart.update(widgets)
        self.invalidate()

    def keep_room_for(self, *widgets: QWidget) -> None:
        """Keep the room that the rows of some widgets need, be they hidden for now or not.

        Nothing over them moves when one of these comes.
        """
        if set(widgets) != self._kept:
            self._kept = set(widgets)
            self.invalidate()

    def addItem(self, item: QLayoutItem) -> None:
        """Take one more."""
        self._items.append(item)
        self.invalidate()

    def count(self) -> int:
        """How many there are."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        """One of them."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        """Let one go."""
        self.invalidate()
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def as_read(self) -> list[QWidget]:
        """The widgets in it, what stands apart last."""
        return sorted((item.widget() for item in self._items), key=self._apart.__contains__)

    def expandingDirections(self) -> Qt.Orientation:
        """Needs no more than it needs."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        """The narrower, the higher."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Height of the rows at a width."""
        if width not in self._heights:
            now = self._place(QRect(0, 0, width, 0), move=False)
            self._heights[width] = max(now, self._kept_height(width))
        return self._heights[width]

    def spared_without(self, widget: QWidget, width: int) -> int:
        """By how much it would be lower at a width without a widget that is in it."""
        left = [i for i in self._shown() if i.widget() is not widget]
        return self.heightForWidth(width) - max(
            self._height_of(width, left), self._kept_height(width)
        )

    def _height_of(self, width: int, items: list[QLayoutItem]) -> int:
        rows = self._rows(width, items)
        return sum(max(size.height() for _, size in row) + theme.S for row in rows) - theme.S

    def invalidate(self) -> None:
        """Forget what was known of sizes; Qt calls it when a widget or its words change."""
        self._heights.clear()
        super().invalidate()

    def _kept_height(self, width: int) -> int:
        """Height of the rows of all that room is kept for, and of nothing else."""
        if not any(w.isHidden() for w in self._kept):
            return 0
        return self._height_of(width, [i for i in self._items if i.widget() in self._kept])

    def setGeometry(self, rect: QRect) -> None:
        """Place them."""
        super().setGeometry(rect)
        self._place(rect, move=True)

    def sizeHint(self) -> QSize:
        """Everything in one row."""
        sizes = [i.sizeHint() for i in self._shown()]
        width = sum(s.width() + theme.M for s in sizes)
        return QSize(width, max((s.height() for s in sizes), default=0))

    def minimumSize(self) -> QSize:
        """As wide as the widest that can't be narrower."""
        size = QSize()
        for item in self._shown():
            least = getattr(item.widget(), "least_width", None)
            needs = item.minimumSize()
            size = size.expandedTo(QSize(least(), needs.height()) if least else needs)
        return size

    def _shown(self) -> list[QLayoutItem]:
        return [i for i in self._items if not i.isEmpty()]

    def _place(self, rect: QRect, *, move: bool) -> int:
        parent = self.parentWidget()
        mirrored = parent is not None and parent.layoutDirection() == Qt.LayoutDirection.RightToLeft
        top, used = rect.y(), 0
        for row in self._rows(rect.width(), self._shown()):
            # The end is the same on every page, whatever stands before.
            gap = max(rect.width() - _width_of(row), 0)
            high = max(size.height() for _, size in row)
            x = rect.x()
            for item, size in row:
                if item.widget() in self._apart:
                    x, gap = x + gap, 0
                if move:
                    left = rect.x() + rect.right() + 1 - x - size.width() if mirrored else x
                    # Words stand at the middle of what they stand beside, as a button's own do.
                    words = isinstance(item.widget(), QLabel)
                    down = (high - size.height()) // 2 if words else 0
                    # An item by itself would hold a wrapped button to the height of one line.
                    (item.widget() or item).setGeometry(QRect(QPoint(left, top + down), size))
                x += size.width() + theme.M
            used = top + high - rect.y()
            top += high + theme.S
        return used

    def _rows(self, width: int, shown: list[QLayoutItem]) -> list[list[tuple[QLayoutItem, QSize]]]:
        """What stands in each row, with its size."""
        together = [(i, _size_in(i, width)) for i in shown if i.widget() not in self._apart]
        apart = [(i, _size_in(i, width)) for i in shown if i.widget() in self._apart]
        rows = _broken(together, width)
        last = rows[-1] if rows else []
        if apart and last and _width_of([*last, *apart]) <= width:
            return [*rows[:-1], [*last, *apart]]
        return [*rows, *_broken(apart, width)]


def _broken(
    items: list[tuple[QLayoutItem, QSize]], width: int
) -> list[list[tuple[QLayoutItem, QSize]]]:
    """Items in rows no wider than ``width`` px, if they can be."""
    rows: list[list[tuple[QLayoutItem, QSize]]] = []
    for item in items:
        if rows and _width_of([*rows[-1], item]) <= width:
            rows[-1].append(item)
        else:
            rows.append([item])
    return rows


def _width_of(row: list[tuple[QLayoutItem, QSize]]) -> int:
    return sum(size.width() for _, size in row) + theme.M * (len(row) - 1)


def _size_in(item: QLayoutItem, width: int) -> QSize:
    """An item's size in a row of ``width`` px; a button's words wrap where they have to."""
    wrapped = getattr(item.widget(), "wrapped_size", None)
    return wrapped(width) if wrapped is not None else item.sizeHint()
