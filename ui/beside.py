"""The windows that are opened beside the patient's: the therapist's desk and the plan editor."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFileDialog, QWidget

from tracker.session.files import data_folder
from ui import words
from ui.settings import Settings

if TYPE_CHECKING:
    from ui.desk.window import BeginHere


class Beside:
    """What stands beside a window, one of each kind at most.

    Parameters
    ----------
    window
        The window that they were opened from.
    settings
        What is remembered.
    begin_here
        Begins a baseline in that window, for the desk.
    """

    def __init__(self, window: QWidget, settings: Settings, begin_here: BeginHere) -> None:
        self._window, self._settings, self._begin_here = window, settings, begin_here
        self.desk: QWidget | None = None
        self.editor: QWidget | None = None

    def open_desk(self) -> None:
        """Ask for a folder of sessions, and open the therapist's desk."""
        if _shown_again(self.desk):
            return
        title = words.say("tools.review.folder")
        folder = QFileDialog.getExistingDirectory(self._window, title, str(data_folder()))
        if folder:
            # Its plots take half a second to load, which a patient need not wait for.
            from ui.desk.opening import show_desk

            self.desk = show_desk(Path(folder), self._settings, begin_here=self._begin_here)

    def open_editor(self) -> None:
        """Open the plan editor."""
        if _shown_again(self.editor):
            return
        from ui.editor.opening import show_editor

        self.editor = show_editor(self._settings)

    def close_all(self) -> bool:
        """Close them; False where one stays open, as the editor while a plan is not saved."""
        for window in (self.editor, self.desk):
            if window is not None and not window.close():
                # Its question may lie behind the other window.
                window.raise_()
                window.activateWindow()
                return False
        return True


def _shown_again(window: QWidget | None) -> bool:
    """Bring a window that is open to the front."""
    if window is None or not window.isVisible():
        return False
    window.activateWindow()
    window.raise_()
    return True
