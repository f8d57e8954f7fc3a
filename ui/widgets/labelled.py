"""Controls with their names beside them, or above them where there is no room beside."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QWidget

from ui import theme
from ui.widgets.basic import Words


class Labelled(QWidget):
    """Names and controls in two columns, or in one.

    Parameters
    ----------
    controls
        From top to bottom; each is called by its accessible name.
    """

    def __init__(self, *controls: QWidget) -> None:
        super().__init__()
        self._rows = [(Words(c.accessibleName()), c) for c in controls]
        self._above: bool | None = None
        self._grid = grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(theme.L)
        grid.setVerticalSpacing(theme.S)
        for label, _ in self._rows:
            label.setWordWrap(False)
        grid.setColumnStretch(2, 1)
        self._arrange(above=False)

    def show_row(self, control: QWidget, *, on: bool) -> None:
        """Show a control with its name, or neither."""
        for label, its in self._rows:
            if its is control:
                for part in (label, control):
                    if part.isHidden() == on:
                        part.setVisible(on)

    def minimumSizeHint(self) -> QSize:
        """As wide as the widest name or control."""
        parts = [p for row in self._rows for p in row if not p.isHidden()]
        width = max((p.minimumSizeHint().width() for p in parts), default=0)
        return QSize(width, self._grid.minimumSize().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width may have room for both."""
        super().resizeEvent(event)
        self._fit()

    def event(self, event: QEvent) -> bool:
        """Larger text needs more room."""
        if event.type() == QEvent.Type.LayoutRequest:
            self._fit()
        return super().event(event)

    def _fit(self) -> None:
        names, controls = zip(*self._rows, strict=True)
        widest = sum(max(p.sizeHint().width() for p in parts) for parts in (names, controls))
        self._arrange(above=widest + theme.L > self.width())

    def _arrange(self, *, above: bool) -> None:
        if above == self._above:
            return
        self._above = above
        for k, (label, control) in enumerate(self._rows):
            for part in (label, control):
                self._grid.removeWidget(part)
            self._grid.addWidget(label, 2 * k, 0, Qt.AlignmentFlag.AlignVCenter)
            place = (2 * k + 1, 0) if above else (2 * k, 1)
            self._grid.addWidget(control, *place, Qt.AlignmentFlag.AlignLeft)
