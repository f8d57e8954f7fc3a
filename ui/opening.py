"""Qt's application, and the windows that a command opens."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QApplication, QWidget

from tracker.session.files import data_folder, make_private_folder
from ui import theme, words
from ui.app import Window
from ui.ports import ClipPlan
from ui.reserve import keep_constants_alive
from ui.settings import Settings

PICTURES = Path(__file__).parent / "pictures"


def make_app() -> QApplication:
    """Qt's application with our name and icon."""
    keep_constants_alive()
    app = QApplication.instance()
    if not isinstance(app, QApplication):
        app = QApplication(["turnpost"])
    app.setApplicationName("turnpost")
    app.setApplicationDisplayName(words.say("program"))
    app.setDesktopFileName("turnpost")
    app.setWindowIcon(QIcon(str(PICTURES / "turnpost.svg")))
    return app


def user_settings() -> Settings:
    """The settings in the user's data folder."""
    return Settings(make_private_folder(data_folder()) / "window.ini")


def open_note() -> tuple[QApplication, QWidget]:
    """Show that the program is open already."""
    from ui.already_open import AlreadyOpen

    app = make_app()
    theme.apply(app, user_settings().colours)
    note = AlreadyOpen()
    note.show()
    return app, note


def open_window(
    *, clip: ClipPlan | None = None, plan: Path | None = None
) -> tuple[QApplication, Window]:
    """Make the program's real window and show it."""
    from ui.screen_reader import QtScreenReader
    from ui.sound import make_beats
    from ui.voice import make_voice
    from ui.wiring import clip_plan, demo_clip, make_world

    app = make_app()
    settings = user_settings()
    theme.apply(app, settings.colours)
    window = Window(
        make_world(make_beats(), make_voice(), QtScreenReader()),
        clip=clip,
        demo_clip=lambda: clip_plan(demo_clip()),
        settings=settings,
        plan=plan,
    )
    window.bring_back()
    window.show()
    return app, window
