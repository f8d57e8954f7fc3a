"""The way of the keys through a window: what Tab comes to, in which order, and how it shows."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QDateEdit,
    QLineEdit,
    QWidget,
)

from tests.ui.contrast import luminances, ratio_of
from tests.ui.test_window import pixels

#: WCAG 2.2, 2.4.13: what shows the focus changes by 3:1, and is as much as a line of 2 px around.
RATIO, LINE_PX = 3.0, 2
#: The ring is drawn around the widget by what holds it.
AROUND_PX = 8
#: More than any page has.
MOST = 200


def press_tab(window: QWidget) -> QWidget | None:
    """Go on to the next control; day, month and year of a date are stops within one."""
    start = QApplication.focusWidget()
    for _ in range(4):
        QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Tab)
        now = QApplication.focusWidget()
        if now is not start or not isinstance(now, QDateEdit):
            break
    return now


def tabbed(window: QWidget) -> list[QWidget]:
    """What takes the keys, in Tab's order, once around, as long as it comes to something new."""
    found: list[QWidget] = []
    # What has the keys first may be a page, which is nobody's stop.
    for _ in range(MOST):
        now = press_tab(window)
        if now is None or now in found:
            break
        found.append(now)
    return found


def controls(window: QWidget) -> list[QWidget]:
    """What can be used now: buttons, fields, lists, and whatever else takes the keys."""
    found = []
    for widget in window.findChildren(QWidget):
        if not widget.isVisible() or not widget.isEnabled() or widget.focusProxy() is not None:
            continue
        used = isinstance(widget, QAbstractButton | QComboBox | QLineEdit | QAbstractSpinBox)
        inner = widget.objectName().startswith("qt_")
        if (used or widget.focusPolicy() & Qt.FocusPolicy.TabFocus) and not inner:
            found.append(widget)
    return found


def named(widget: QWidget) -> str:
    text = widget.text() if isinstance(widget, QAbstractButton) else widget.accessibleName()
    return f"{type(widget).__name__} {text!r}"


def left_out(window: QWidget, order: list[QWidget]) -> list[str]:
    """Controls that Tab does not come to."""
    faults = []
    for widget in controls(window):
        group = widget.group() if isinstance(widget, QAbstractButton) else None
        # Of choices that exclude each other one takes the keys; arrows reach the rest.
        same = [widget] if group is None or not group.exclusive() else group.buttons()
        if not any(w in order for w in same):
            faults.append(f"{named(widget)} can't be reached")
    return faults


def _view_of(widget: QWidget) -> QWidget | None:
    """The view of what scrolls a widget, if anything does."""
    parent = widget.parentWidget()
    while parent is not None:
        if isinstance(parent, QAbstractScrollArea) and parent.viewport().isAncestorOf(widget):
            return parent.viewport()
        parent = parent.parentWidget()
    return None


def _box(window: QWidget, widget: QWidget) -> QRect:
    return QRect(widget.mapTo(window, QPoint(0, 0)), widget.size())


def _boxes(window: QWidget, one: QWidget, other: QWidget) -> tuple[QRect, QRect]:
    """Where two widgets lie; what is scrolled away counts as within its view."""
    views = _view_of(one), _view_of(other)
    boxes = _box(window, one), _box(window, other)
    if views[0] is views[1]:
        return boxes
    first, second = (
        box if view is None or box.intersects(_box(window, view)) else _box(window, view)
        for box, view in zip(boxes, views, strict=True)
    )
    return first, second


def goes_back(window: QWidget, one: QWidget, other: QWidget) -> bool:
    """Whether a reader meets the second of two before the first."""
    a, b = _boxes(window, one, other)
    shared = min(a.bottom(), b.bottom()) - max(a.top(), b.top())
    from_right = window.layoutDirection() == Qt.LayoutDirection.RightToLeft
    if shared > 0.5 * min(a.height(), b.height()):
        return b.right() > a.right() if from_right else b.left() < a.left()
    # A column beside, all of it, is read after the one before it.
    beside = b.right() <= a.left() if from_right else b.left() >= a.right()
    return b.center().y() < a.center().y() and not beside


def out_of_order(window: QWidget, order: list[QWidget]) -> list[str]:
    """Steps of Tab against the way of reading, but for the one back to the beginning."""
    steps = [*pairwise(order), (order[-1], order[0])] if len(order) > 1 else []
    back = [(a, b) for a, b in steps if goes_back(window, a, b)]
    return [] if len(back) <= 1 else [f"{named(a)} -> {named(b)}" for a, b in back]


def _sight(widget: QWidget) -> QRect:
    """The part of a widget that all that holds it lets be seen, in its own pixels."""
    sight, inner, parent = widget.rect(), widget, widget.parentWidget()
    at = QPoint(0, 0)
    while parent is not None and not inner.isWindow():
        at += inner.pos()
        sight = sight.intersected(parent.rect().translated(-at))
        inner, parent = parent, parent.parentWidget()
    return sight


def unseen(window: QWidget, order: list[QWidget]) -> list[str]:
    """What has the keys and doesn't show it, or lies out of sight."""
    faults = []
    for widget in order:
        # By Tab, so that what scrolls brings it into sight.
        now = press_tab(window)
        if now is None:
            return [*faults, f"the keys are lost before {named(widget)}"]
        QApplication.processEvents()
        sight = _sight(now)
        room = (_view_of(now) or window).height()
        if min(now.height(), room) > sight.height() + 1:
            faults.append(f"{named(now)} is out of sight")
            continue
        box = sight.translated(now.mapTo(window, QPoint(0, 0)))
        around = box.adjusted(-AROUND_PX, -AROUND_PX, AROUND_PX, AROUND_PX)
        around = around.intersected(window.rect())
        with_keys = luminances(pixels(window.grab(around).toImage()))
        now.clearFocus()
        QApplication.processEvents()
        without = luminances(pixels(window.grab(around).toImage()))
        now.setFocus(Qt.FocusReason.OtherFocusReason)
        changed = int(np.count_nonzero(ratio_of(with_keys, without) >= RATIO))
        if changed < LINE_PX * 2 * (box.width() + box.height()) * 0.9:
            faults.append(
                f"{named(now)} of {box.size().toTuple()}: only {changed} px show the keys"
            )
    return faults


def focus_faults(window: QWidget) -> list[str]:
    """Everything that is wrong with the way of the keys through a window now."""
    before = QApplication.focusWidget()
    if before is None:
        return ["nothing has the keys"]
    order = tabbed(window)
    faults = left_out(window, order)
    if QApplication.focusWidget() is not order[0]:
        faults.append(f"Tab does not come around: {named(order[-1])} leads elsewhere")
    faults += out_of_order(window, order)
    order[0].setFocus()
    faults += unseen(window, order)
    before.setFocus()
    return faults
