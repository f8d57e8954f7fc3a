"""Opening the plan editor as a window of its own."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from ui.editor.window import EditorWindow
from ui.opening import start_app
from ui.settings import Settings


def open_editor(path: Path | None = None) -> tuple[QApplication, EditorWindow]:
    """Make the window and show it, with a plan or with the ways to begin one."""
    app, settings = start_app()
    window = show_editor(settings)
    if path is not None:
        window.files.open(path)
    return app, window


def show_editor(settings: Settings) -> EditorWindow:
    """Show the editor beside a window that is open already."""
    window = EditorWindow(settings)
    available = window.screen().availableGeometry()
    window.resize(min(1366, available.width()), min(768, available.height()))
    window.setWindowState(Qt.WindowState.WindowMaximized)
    window.show()
    return window
