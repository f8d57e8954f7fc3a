"""The screen a window is on: how to know it again, and how large it is."""

from __future__ import annotations

import hashlib

from PySide6.QtGui import QScreen

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
