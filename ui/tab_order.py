"""The way of the Tab key: through a window as it is laid out, and never out of sight.

Qt goes in the order in which widgets were made. What is made later, as the names of cameras
are, would come last wherever it stands; and what comes into a page that was scrolled on would
take the keys where nobody sees it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QGridLayout,
    QLayout,
    QScrollArea,
    QSplitter,
    QTabWidget,
    QWidget,
)

from ui import theme
from ui.widgets.flow import FlowRow


def step(window: QWidget, *, forward: bool) -> bool:
    """Give the keys to what comes next in a window; for its ``focusNextPrevChild``.

    Returns
    -------
    bool
        False where nothing takes the keys.
    """
    whole = list(laid_out(window, _is_shown))
    if not any(_takes_keys(w) for w in whole):
        return False
    found = _next(whole, forward=forward)
    reason = Qt.FocusReason
    found.setFocus(reason.TabFocusReason if forward else reason.BacktabFocusReason)
    bring_into_sight(found)
    return True


def bring_into_sight(widget: QWidget) -> None:
    """Scroll whatever holds a widget until it is seen."""
    parent = widget.parentWidget()
    while parent is not None:
        if isinstance(parent, QScrollArea) and parent.widget() is not None:
            # Of a field Qt itself would show no more than its cursor. The top comes last, as
            # that of what is higher than the view has to be seen.
            corner = widget.mapTo(parent.widget(), QPoint(0, 0))
            # Room around it only where there is some: it would push the other end out of sight.
            spare = (parent.viewport().height() - widget.height()) // 2
            for y in (corner.y() + widget.height(), corner.y()):
                parent.ensureVisible(corner.x(), y, 0, max(min(theme.L, spare), 0))
        parent = parent.parentWidget()


def _next(whole: list[QWidget], *, forward: bool) -> QWidget:
    """What comes after the one that has the keys, or before it; one of them takes the keys."""
    now = QApplication.focusWidget()
    at = whole.index(now) if now in whole else -1 if forward else len(whole)
    # What has the keys may itself be beyond Tab's way: a page, or one of several choices.
    after, before = whole[at + 1 :], whole[: max(at, 0)]
    ahead = after + before if forward else before[::-1] + after[::-1]
    return next((w for w in ahead if _takes_keys(w)), now or whole[0])


def _takes_keys(widget: QWidget) -> bool:
    tab = bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus)
    return tab and widget.isVisible() and widget.isEnabled() and widget.focusProxy() is None


def _is_shown(widget: QWidget) -> bool:
    return widget.isVisible()


def laid_out(
    widget: QWidget, within: Callable[[QWidget], bool] = lambda _: True
) -> Iterator[QWidget]:
    """Everything within a widget in the order of its layouts; what no layout holds comes last.

    ``within`` says of a part whether to look into it: most of a window's pages are not shown.
    """
    inner = [*_held(widget)]
    seen = set(inner)
    inner += [
        child
        for child in widget.children()
        if isinstance(child, QWidget) and not child.isWindow() and child not in seen
    ]
    for child in inner:
        yield child
        # A list has parts of its own, which are nobody's stops.
        if not isinstance(child, QAbstractItemView) and within(child):
            yield from laid_out(child, within)


def _held(widget: QWidget) -> Iterator[QWidget]:
    """What a widget holds, in the order in which it shows it."""
    if isinstance(widget, QScrollArea) and widget.widget() is not None:
        yield widget.viewport()
    elif isinstance(widget, QSplitter):
        yield from (widget.widget(k) for k in range(widget.count()))
    elif isinstance(widget, QTabWidget):
        yield widget.tabBar()
    layout = widget.layout()
    if layout is not None:
        yield from _of_layout(layout)


def _of_layout(layout: QLayout) -> Iterator[QWidget]:
    for part in _parts(layout):
        if isinstance(part, QLayout):
            yield from _of_layout(part)
        else:
            yield part


def _parts(layout: QLayout) -> list[QWidget | QLayout]:
    """Widgets and inner layouts of a layout, as one reads them.

    Found by what the widget and the layout have for children. ``itemAt`` is not asked: PySide6
    keeps what it gives as long as the layout, though Qt frees the item as soon as its widget goes;
    what Qt then makes in that place in memory would be taken for the item.
    """
    if isinstance(layout, FlowRow):
        return [*layout.as_read()]
    holder = layout.parentWidget()
    children = [*(holder.children() if holder is not None else ()), *layout.children()]
    placed = [
        (k, child)
        for child in children
        if isinstance(child, QWidget | QLayout) and (k := layout.indexOf(child)) >= 0
    ]
    if isinstance(layout, QGridLayout):
        return [p for _, p in sorted(placed, key=lambda f: layout.getItemPosition(f[0])[:2])]
    return [part for _, part in sorted(placed, key=lambda found: found[0])]
