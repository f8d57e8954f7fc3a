"""Whether drawn movements move: the person's own choice, else what the system asks for."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication


def system_wants_still() -> bool:
    """Whether the system is set to reduced motion."""
    hints = QGuiApplication.styleHints()
    return hints.accessibility().motionPreference() == Qt.MotionPreference.ReducedMotion


def is_still(choice: str) -> bool:
    """Whether nothing may move, by a choice of ``ui.settings.MOTIONS``."""
    return choice == "still" or (choice != "moving" and system_wants_still())
