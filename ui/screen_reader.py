"""A screen reader that is running: what would be spoken goes to it, so that none talks over it."""

from __future__ import annotations

from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QApplication


class QtScreenReader:
    """Announcements through Qt (``ui.ports.ScreenReaderLike``)."""

    @property
    def running(self) -> bool:
        """Whether Qt has been asked for what is on the screen; some other tools do that too."""
        return QAccessible.isActive()

    def announce(self, text: str, *, at_once: bool) -> None:
        """Have it said by the window in use; no other is read."""
        window = QApplication.activeWindow()
        if window is None:
            return
        event = QAccessibleAnnouncementEvent(window, text)
        polite = QAccessible.AnnouncementPoliteness
        event.setPoliteness(polite.Assertive if at_once else polite.Polite)
        _tell(event)


def _tell(event: QAccessibleAnnouncementEvent) -> None:
    QAccessible.updateAccessibility(event)
