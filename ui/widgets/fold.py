"""Where a page that scrolls ends: between two lines, never in the middle of one.

What reaches over the lower edge of the page, or over the upper one, is covered until it is
scrolled to. Lines are those of the texts; anything else is a line as a whole, unless it is so tall
that a page without it would say too little.
"""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, Qt, QTimer
from PySide6.QtGui import QTextLayout, QTextOption
from PySide6.QtWidgets import QAbstractButton, QAbstractScrollArea, QLabel, QScrollArea, QWidget

#: A letter's box is larger than its ink: so much of it may lie beyond the edge (px).
SOFT_PX = 1
#: No more of the page is covered than this, and nothing taller is a line (own choice).
MOST = 0.4

Span = tuple[int, int]


class Fold(QObject):
    """Covers half lines at both edges of a scrolling page.

    Parameters
    ----------
    scroll
        The page; its widget holds what is read.
    """

    def __init__(self, scroll: QScrollArea) -> None:
        super().__init__(scroll)
        self._scroll = scroll
        self._covers = [QWidget(scroll.viewport()) for _ in range(2)]
        for cover in self._covers:
            cover.setAutoFillBackground(True)
            cover.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
            cover.hide()
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self.look)
        bar = scroll.verticalScrollBar()
        bar.valueChanged.connect(self.look)
        bar.rangeChanged.connect(self._later.start)
        for watched in (scroll.viewport(), scroll.widget()):
            watched.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """What is laid out anew has its lines elsewhere."""
        if event.type() in (QEvent.Type.Resize, QEvent.Type.LayoutRequest, QEvent.Type.Show):
            self._later.start()
        return super().eventFilter(watched, event)

    @property
    def below_px(self) -> int:
        """How far down the page goes before its lower fold."""
        return self._edges()[1]

    @property
    def above_px(self) -> int:
        """Where it begins."""
        return self._edges()[0]

    def look(self) -> None:
        """Cover what reaches over the edges now."""
        above, below = self._edges()
        height, width = self._height, self._scroll.viewport().width()
        tops = QRect(0, 0, width, above), QRect(0, below, width, height - below)
        for cover, box in zip(self._covers, tops, strict=True):
            if cover.geometry() != box:
                cover.setGeometry(box)
            cover.setVisible(box.height() > 0)
            cover.raise_()

    @property
    def _height(self) -> int:
        return self._scroll.viewport().height()

    def _edges(self) -> Span:
        height = self._height
        bar = self._scroll.verticalScrollBar()
        most = round(MOST * height)
        spans = [s for s in self._lines() if s[1] > 0 and s[0] < height and s[1] - s[0] <= most]
        above, below = 0, height
        if bar.value() > bar.minimum():
            above = _first_free(spans, 0)
        if bar.value() < bar.maximum():
            # From below, the same is seen upside down.
            below = -_first_free([(-b, -a) for a, b in spans], -height)
        return above if above <= most else 0, below if height - below <= most else height

    def _lines(self) -> Iterator[Span]:
        """Top and bottom of every line, in the page's pixels."""
        viewport = self._scroll.viewport()
        for widget in _told_by(self._scroll.widget()):
            top = widget.mapTo(viewport, QPoint(0, 0)).y()
            for a, b in _lines_of(widget):
                yield top + a, top + b


def _first_free(spans: list[Span], edge: int) -> int:
    """The first place from an edge on that no span reaches over."""
    at = edge
    while over := [b for a, b in spans if a + SOFT_PX < at < b - SOFT_PX]:
        at = max(over)
    return at


def _told_by(holder: QWidget) -> Iterator[QWidget]:
    """What is read, pressed or looked at in a holder, each by itself."""
    for child in holder.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly):
        if child.isHidden():
            continue
        whole = isinstance(child, QLabel | QAbstractButton | QAbstractScrollArea)
        if whole or child.layout() is None:
            yield child
        else:
            yield from _told_by(child)


def _lines_of(widget: QWidget) -> Iterator[Span]:
    """Its lines, or all of it as one."""
    if not isinstance(widget, QLabel) or not widget.text() or not widget.wordWrap():
        yield 0, widget.height()
        return
    room = widget.contentsRect()
    # A text's own lines are parted by another sign there.
    layout = QTextLayout(widget.text().replace("\n", "\u2028"), widget.font())
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WordWrap)
    layout.setTextOption(option)
    heights = []
    layout.beginLayout()
    # Letters of another font than the chosen one may make a line higher.
    while (line := layout.createLine()).isValid():
        line.setLineWidth(room.width())
        heights.append(line.height() + max(line.leading(), 0.0))
    layout.endLayout()
    top = room.top() + (room.height() - sum(heights)) / 2
    for height in heights:
        yield round(top), round(top + height)
        top += height
