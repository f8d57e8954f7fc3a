"""A start that failed, told in a window: who starts from an icon sees no terminal.

It leans on as little as can be: what went wrong may be anything.
"""

from __future__ import annotations

import contextlib

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QMessageBox

from tracker.errors import TurnpostError
from tracker.session.files import data_folder
from ui import theme, words
from ui.languages import language_of, speak
from ui.settings import Settings
from ui.start import has_screen

#: Platforms of Qt on which nobody could close a window.
BLIND = ("offscreen", "minimal", "vnc")


def tell(error: Exception) -> None:
    """Show why the program could not open, and what to do; wait until that is closed.

    Where there is no screen nothing is done: the command line has said it.
    """
    if not has_screen():
        return
    # A failure of this note must not hide the one that it is about.
    with contextlib.suppress(Exception):
        note = note_of(error)
        if QGuiApplication.platformName() not in BLIND:
            note.exec()


def note_of(error: Exception) -> QMessageBox:
    """The note, in the chosen language as far as that is known."""
    from ui.opening import make_app

    app = make_app()
    language, percent = _chosen()
    speak(app, language)
    _enlarge(app, percent)
    note = QMessageBox(QMessageBox.Icon.Warning, words.say("program"), words.say("not_open.title"))
    note.setTextFormat(Qt.TextFormat.PlainText)
    note.setInformativeText("\n\n".join((words.say("not_open.what"), _reason(error))))
    button = note.addButton(words.say("second.close"), QMessageBox.ButtonRole.AcceptRole)
    note.setDefaultButton(button)
    return note


def _chosen() -> tuple[str, int]:
    """Language and text size in percent; the system's where the settings are out of reach."""
    with contextlib.suppress(Exception):
        settings = Settings(data_folder() / "window.ini")
        return language_of(settings.language), settings.text_percent
    return language_of(""), 100


def _enlarge(app: QApplication, percent: int) -> None:
    with contextlib.suppress(Exception):
        theme.apply(app, "system")
    app.setFont(theme.font("body", percent))


def _reason(error: Exception) -> str:
    from ui.cli import in_short

    if isinstance(error, OSError) and error.filename is not None:
        return in_short(f"{words.apart(str(error.filename))}: {words.failed(error)}")
    known = isinstance(error, TurnpostError | OSError)
    return in_short(words.failed(error) if known else f"{type(error).__name__}: {error}")
