"""The form of the item that is chosen: sections of rows, each with its fault beside it."""

# ruff: noqa: N802 - Qt's names

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from tracker.plan.draft import Data
from tracker.plan.findings import Finding
from tracker.plan.lines import Path
from ui import theme
from ui.editor.frames import AsHighAsWords
from ui.editor.row_view import RowView
from ui.editor.rows import Section, row_of
from ui.editor.telling import told
from ui.widgets.basic import Words

#: Width of the column of labels at 100 %, and the least that a form gives to the fields.
LABEL_PX = 230
LEAST_PX = 330


class Form(QScrollArea):
    """The sections of one item."""

    edited = Signal(object, object)
    acted = Signal(str, object)

    def __init__(self) -> None:
        super().__init__()
        self.views: list[RowView] = []
        self._titles: list[Words] = []
        self._shape: list[Any] = []
        self._percent = 100
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    def show_sections(self, sections: Sequence[Section], data: Data) -> None:
        """Show an item; what has the same shape is kept, with the keys where they are."""
        rows = [r for s in sections for r in s.rows]
        shape = [(s.title, tuple(r.shape for r in s.rows)) for s in sections]
        if shape != self._shape:
            self._shape = shape
            self._build(sections)
        for view, row in zip(self.views, rows, strict=True):
            view.show_row(row, data)

    def show_found(
        self, faults: dict[int, list[Finding]], remarks: dict[int, list[Finding]]
    ) -> None:
        """What is wrong and what to know, by the number of the row."""
        for k, view in enumerate(self.views):
            view.show_found(
                [told(f) for f in faults.get(k, [])], [told(f) for f in remarks.get(k, [])]
            )

    def _build(self, sections: Sequence[Section]) -> None:
        kept = self.focused_path()
        inner = AsHighAsWords()
        column = QVBoxLayout(inner)
        column.setContentsMargins(theme.M, theme.S, theme.M, theme.M)
        column.setSpacing(theme.S // 2)
        self.views, self._titles = [], []
        for k, section in enumerate(sections):
            title = Words(section.title, "body", bold=True)
            title.set_percent(self._percent)
            self._titles.append(title)
            if k:
                column.addSpacing(theme.M)
            column.addWidget(title)
            for row in section.rows:
                view = RowView(row)
                view.edited.connect(self.edited)
                view.acted.connect(self.acted)
                self.views.append(view)
                column.addWidget(view)
        column.addStretch(1)
        old = self.takeWidget()
        if old is not None:
            old.hide()
            old.deleteLater()
        self.setWidget(inner)
        for view in self.views:
            for part in view.findChildren(QWidget):
                change = getattr(part, "set_percent", None)
                if change is not None:
                    change(self._percent)
        self._fit()
        inner.show()
        if kept is not None:
            self.focus_path(kept)

    def set_percent(self, percent: int) -> None:
        """Rows that are made later get the same text size."""
        self._percent = percent
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Labels stand beside the fields where there is room."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        label = round(LABEL_PX * self._percent / 100)
        free = self.viewport().width() - label - 3 * theme.M
        narrow = free < LEAST_PX * (1 + (self._percent / 100 - 1) * 0.6)
        for view in self.views:
            view.set_width(label, narrow=narrow)

    # --- keys ---

    @property
    def pending(self) -> bool:
        """Whether something is typed that has not been taken over."""
        return any(v.input is not None and v.input.pending for v in self.views)

    def commit(self) -> None:
        """Take over what is typed."""
        for view in self.views:
            if view.input is not None and view.input.pending:
                view.input.commit()

    def revert(self) -> None:
        """Forget what is typed."""
        for view in self.views:
            if view.input is not None:
                view.input.revert()

    def focused_path(self) -> Path | None:
        """Field that has the keys."""
        for view in self.views:
            focused = view.focusWidget()
            if focused is not None and focused.hasFocus():
                return view.row.path
        return None

    def focus_path(self, path: Path) -> None:
        """Give the keys to a field, or to what is next to it."""
        k = row_of(path, [v.row for v in self.views])
        for view in self.views[k or 0 :]:
            if view.take_keys():
                self.ensureWidgetVisible(view, 0, theme.L)
                return

    def focus_act(self, act: str) -> None:
        """Give the keys to a button, with the note above it in sight."""
        k = next((k for k, view in enumerate(self.views) if view.row.act == act), None)
        if k is not None:
            self.views[k].take_keys()
            rows = self.views[max(k - 1, 0) : k + 1]
            # A form that was just made has no heights yet.
            QTimer.singleShot(0, rows[0], lambda: self._see(rows))

    def _see(self, views: Sequence[RowView]) -> None:
        """Scroll to some rows, above all to the first."""
        for view in reversed(views):
            self.ensureWidgetVisible(view, 0, theme.L)

    def focus_first(self) -> None:
        """Give the keys to the first field."""
        for view in self.views:
            if view.take_keys():
                break
        self.verticalScrollBar().setValue(0)
