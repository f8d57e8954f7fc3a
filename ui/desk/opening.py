"""Opening the therapist's desk as a window of its own."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from ui.desk.window import BeginHere, DeskWindow
from ui.opening import start_app
from ui.settings import Settings


def open_desk(folder: Path, *, today: date | None = None) -> tuple[QApplication, DeskWindow]:
    """Make the window and show it."""
    app, settings = start_app()
    return app, show_desk(folder, settings, today=today)


def show_desk(
    folder: Path,
    settings: Settings,
    *,
    today: date | None = None,
    begin_here: BeginHere | None = None,
) -> DeskWindow:
    """Show the desk beside a window that is open already."""
    window = DeskWindow(folder, settings, today, begin_here)
    available = window.screen().availableGeometry()
    window.resize(min(1366, available.width()), min(768, available.height()))
    window.setWindowState(Qt.WindowState.WindowMaximized)
    window.show()
    return window
