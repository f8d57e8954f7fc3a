"""Any key is a stop, for as long as something moves that may make one ill."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent


class AnyKey(QObject):
    """Takes every key press of the program while it is on.

    Parameters
    ----------
    stop, unwell
        What a key does; ``U`` says that one is unwell, as everywhere.
    """

    def __init__(self, stop: Callable[[], None], unwell: Callable[[], None]) -> None:
        super().__init__()
        self._stop, self._unwell = stop, unwell
        self._on = False

    def switch(self, *, on: bool) -> None:
        """Take the keys, or leave them where they belong."""
        app = QCoreApplication.instance()
        if on == self._on or app is None:
            return
        self._on = on
        if on:
            app.installEventFilter(self)
        else:
            app.removeEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let no shortcut and no button have a key before the stop has it."""
        if event.type() == QEvent.Type.ShortcutOverride:
            event.accept()
            return True
        if event.type() != QEvent.Type.KeyPress or not isinstance(event, QKeyEvent):
            return False
        self.switch(on=False)
        (self._unwell if event.key() == Qt.Key.Key_U else self._stop)()
        return True
