"""What is wrong with the texts that a window paints: cut, on each other, too small."""

from __future__ import annotations

import re
from collections.abc import Iterator

from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QRegion, QTextDocumentFragment
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractScrollArea,
    QLineEdit,
    QPlainTextEdit,
    QWidget,
)

from tests.ui.painted import Run, painted_by
from ui.widgets.basic import Words

#: A pixel at each edge is a letter's softness, not its shape.
SOFT_PX = 1.5


def shown(window: QWidget) -> Iterator[QWidget]:
    """What is in sight of a window, or a part of it is."""
    for widget in window.findChildren(QWidget):
        if widget.isVisible() and not widget.visibleRegion().isEmpty():
            yield widget


def scrolls(widget: QWidget) -> bool:
    """Whether what is not in sight of a widget can be brought there by scrolling up or down."""
    parent = widget.parentWidget()
    while parent is not None:
        if isinstance(parent, QAbstractScrollArea) and parent.viewport().isAncestorOf(widget):
            return True
        parent = parent.parentWidget()
    return isinstance(widget.parentWidget(), QAbstractItemView | QPlainTextEdit)


def cut(widget: QWidget, run: Run) -> str:
    """How a text is cut, or nothing."""
    room = QRectF(widget.rect())
    if run.clip is not None:
        room = room.intersected(run.clip)
    soft = QRectF(room).adjusted(-SOFT_PX, -SOFT_PX, SOFT_PX, SOFT_PX)
    box = run.box
    if isinstance(widget, QLineEdit):
        # What is longer than the field is reached by its cursor.
        return ""
    if box.left() < soft.left() or box.right() > soft.right():
        return f"is cut at its side by {_by(box, soft)}"
    if (box.top() < soft.top() or box.bottom() > soft.bottom()) and not scrolls(widget):
        return f"is cut above or below by {_by(box, soft)}"
    seen = widget.visibleRegion().boundingRect()
    if not scrolls(widget):
        allowed = QRectF(seen).adjusted(-SOFT_PX, -SOFT_PX, SOFT_PX, SOFT_PX)
        if not allowed.contains(box):
            return "reaches beyond what holds it"
    return ""


def _by(box: QRectF, room: QRectF) -> str:
    over = (
        room.left() - box.left(),
        room.top() - box.top(),
        box.right() - room.right(),
        box.bottom() - room.bottom(),
    )
    return f"{max(over):.1f} px"


def in_full_sight(widget: QWidget, box: QRectF) -> bool:
    """Whether all of a box is shown and nothing lies over it."""
    return QRegion(box.toAlignedRect()).subtracted(widget.visibleRegion()).isEmpty()


def runs_in(window: QWidget) -> Iterator[tuple[QWidget, Run]]:
    """Every text that a window paints, with the widget that does."""
    for widget in shown(window):
        for run in painted_by(widget).runs:
            if run.text.strip() and run.box.isValid():
                yield widget, run


def name_of(widget: QWidget, run: Run) -> str:
    """What a fault names: the widget's class and the text."""
    return f"{type(widget).__name__} {run.text!r}"


def corner(window: QWidget, widget: QWidget) -> QPointF:
    """Where a widget begins in its window."""
    return QPointF(widget.mapTo(window, QPoint(0, 0)))


def cut_texts(window: QWidget) -> list[str]:
    """Painted texts that are cut, shortened, or lie over each other."""
    faults: list[str] = []
    placed: list[tuple[QRectF, str]] = []
    for widget, run in runs_in(window):
        named = name_of(widget, run)
        if how := cut(widget, run):
            faults.append(f"{named} {how}")
        if run.text.rstrip().endswith("…") and not _told_in_full(widget, run):
            faults.append(f"{named} is shortened")
        if in_full_sight(widget, run.box):
            placed.append((run.box.translated(corner(window, widget)), named))
    return faults + _over_each_other(placed)


def _told_in_full(widget: QWidget, run: Run) -> bool:
    """Whether a line of a list that is shortened gives all of its words to pointer and reader."""
    view = widget.parentWidget()
    if not isinstance(view, QAbstractItemView):
        return False
    index, start = view.indexAt(run.box.center().toPoint()), run.text.rstrip(" …")
    role = Qt.ItemDataRole
    # Without words of its own a reader says what the model has, not what is painted.
    said = str(index.data(role.AccessibleTextRole) or index.data(role.DisplayRole) or "")
    tip = QTextDocumentFragment.fromHtml(str(index.data(role.ToolTipRole) or ""))
    # What stands before a word alone ("Then:") may be left out there.
    return start[len(start) // 2 :] in " ".join(tip.toPlainText().split()) and bool(said)


def _over_each_other(placed: list[tuple[QRectF, str]]) -> list[str]:
    faults = []
    inner = [(b.adjusted(SOFT_PX, SOFT_PX, -SOFT_PX, -SOFT_PX), n) for b, n in placed]
    for k, (box, named) in enumerate(inner):
        for other, also in inner[k + 1 :]:
            if box.intersects(other):
                faults.append(f"{named} and {also} lie over each other")
    return faults


def small_texts(window: QWidget, least_px: int) -> list[str]:
    """Painted texts below a size of type in pixels."""
    return [
        f"{name_of(widget, run)} is {run.size_px} px"
        for widget, run in runs_in(window)
        if run.size_px < least_px
    ]


def low_texts(window: QWidget, least_share: float) -> list[str]:
    """Painted texts with capitals below a share of the window's height."""
    least = least_share * window.height()
    return [
        f"{name_of(widget, run)} has capitals of {run.capital_px:.1f} px, not {least:.1f}"
        for widget, run in runs_in(window)
        if run.capital_px < least
    ]


def short_of_room(window: QWidget) -> Iterator[str]:
    """Labels in sight that need more height or width than they have: what each lacks."""
    for label in window.findChildren(Words):
        if not label.isVisible() or not label.text():
            continue
        needs = label.heightForWidth(label.width()) if label.wordWrap() else 0
        if needs > label.height() + 1:
            yield f"{label.text()!r} needs {needs} px of height, has {label.height()}"
        longest = max(re.split(r"[\s\u200b]+", label.text()), key=len)
        text = longest if label.wordWrap() else label.text()
        if label.fontMetrics().horizontalAdvance(text) > label.width() + 1:
            yield f"{text!r} is wider than its {label.width()} px"
