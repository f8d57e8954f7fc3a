"""The screen a window is on: how to know it again, how large it is, and the window's place."""

from __future__ import annotations

import hashlib

from PySide6.QtCore import QByteArray, Qt
from PySide6.QtGui import QGuiApplication, QScreen
from PySide6.QtWidgets import QWidget

from ui.geometry import ScreenGeometry, screen_geometry
from ui.settings import Settings


def screen_key(screen: QScreen) -> str:
    """Short key of a screen at a resolution: another scaling is another measure."""
    size = screen.geometry().size()
    told = (
        screen.name(),
        screen.manufacturer(),
        screen.model(),
        screen.serialNumber(),
        f"{size.width()}x{size.height()}",
        f"{screen.devicePixelRatio():.3f}",
    )
    return hashlib.sha256("|".join(told).encode()).hexdigest()[:12]


def geometry_of(screen: QScreen, settings: Settings) -> ScreenGeometry:
    """Size and density of a screen: as measured, else as it says, else assumed."""
    size, physical = screen.geometry().size(), screen.physicalSize()
    return screen_geometry(
        (size.width(), size.height()),
        (physical.width(), physical.height()),
        settings.screen_px_mm(screen_key(screen)),
    )


def bring_back(window: QWidget, place: QByteArray | None) -> None:
    """Put a window where it was last time, if that is on a screen; else make it large."""
    if place is not None and window.restoreGeometry(place) and _is_visible_somewhere(window):
        return
    available = window.screen().availableGeometry()
    window.resize(min(1366, available.width()), min(768, available.height()))
    window.move(available.topLeft())
    window.setWindowState(Qt.WindowState.WindowMaximized)


def _is_visible_somewhere(window: QWidget) -> bool:
    middle = window.frameGeometry().center()
    return any(s.availableGeometry().contains(middle) for s in QGuiApplication.screens())
