"""The folder that is reviewed, in one line: of a long path the end is shown, which tells most."""

# ruff: noqa: N802 - the names are Qt's

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSizePolicy

from ui import words
from ui.desk.small import as_tip
from ui.widgets.basic import Words
from ui.widgets.paths import short_path


class FolderName(Words):
    """One line, whatever the path; all of it to pointer and screen reader."""

    def __init__(self) -> None:
        self._path = ""
        super().__init__("", "desk", soft=True)
        self.setWordWrap(False)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)

    def show_folder(self, folder: Path) -> None:
        """Show another folder."""
        self._path = short_path(folder)
        self.setAccessibleName(self._path)
        self.setToolTip(as_tip(self._path))
        self._fit()

    def set_percent(self, percent: int) -> None:
        """Another text size has room for another part of it."""
        super().set_percent(percent)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """So has another width."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        room = self.contentsRect().width() - 2
        shown = self.fontMetrics().elidedText(self._path, Qt.TextElideMode.ElideLeft, room)
        if words.apart(shown) != self.text():
            self.setText(words.apart(shown))
