"""Qt's application, and the windows that a command opens."""

from __future__ import annotations

import ctypes
import os
import sys
from collections.abc import Callable
from pathlib import Path

import PySide6
from PySide6.QtCore import QSettings, Qt, QTimer
from PySide6.QtGui import QGuiApplication, QIcon
from PySide6.QtWidgets import QApplication, QWidget

from tracker.collector import collect_by_hand, collect_what_is_due, spare_what_stays
from tracker.errors import RunError
from tracker.session.files import open_data_folder
from ui import theme, words
from ui.app import Window
from ui.languages import language_of, speak
from ui.ports import ClipPlan
from ui.reserve import keep_constants_alive
from ui.screen import bring_back
from ui.settings import Settings
from ui.start import has_screen
from ui.x_screen import answers

#: The timer that looks for garbage, and its spacing.
COLLECTOR, COLLECT_EVERY_MS = "collector", 500
PICTURES = Path(__file__).parent / "pictures"


def make_app() -> QApplication:
    """Qt's application with our name and icon.

    Raises
    ------
    RunError
        If no window can be opened: Qt would end the program by a crash.
    """
    keep_constants_alive()
    _remember_no_folders()
    app = QApplication.instance()
    if not isinstance(app, QApplication):
        _must_show_windows()
        app = QApplication(["turnpost"])
    _collect_in_this_thread(app)
    app.setApplicationName("turnpost")
    app.setApplicationDisplayName(words.say("program"))
    app.setDesktopFileName("turnpost")
    app.setWindowIcon(QIcon(str(PICTURES / "turnpost.svg")))
    return app


def _must_show_windows() -> None:
    """Say what is missing where Qt would end the program at once, with advice that leads astray.

    Asked of X on Linux alone: whether Wayland, or another platform that is named, shows windows
    is left to Qt.

    Raises
    ------
    RunError
        If no window can be opened.
    """
    platform = os.environ.get("QT_QPA_PLATFORM", "").partition(":")[0]
    if sys.platform != "linux" or platform not in ("", "xcb"):
        return
    display = os.environ.get("DISPLAY")
    if not display and (platform or not has_screen()):
        raise RunError("there is no screen to open a window on; start from a desktop")
    if display and (platform or not os.environ.get("WAYLAND_DISPLAY")):
        _must_load(Path(PySide6.__file__).parent / "Qt" / "plugins" / "platforms" / "libqxcb.so")
        if not answers(display):
            why = f"no window can be opened: the screen {display} can't be reached"
            raise RunError(f"{why}; start from a desktop")


def _must_load(plugin: Path) -> None:
    if not plugin.exists():
        return
    try:
        ctypes.CDLL(str(plugin))
    except OSError as error:
        why = f"no window can be opened: {error}"
        raise RunError(f"{why}; 'turnpost doctor' says what to do") from error


def _remember_no_folders() -> None:
    """Keep Qt from writing down the folders that a file was chosen in, which may bear names.

    Its own dialog puts them into a file that all users may read and all Qt programs share, where
    nobody looks for them. Within a run it still knows the last one.
    """
    native, own = QSettings.Format.NativeFormat, QSettings.Scope.UserScope
    QSettings.setPath(native, own, os.devnull)


def _collect_in_this_thread(app: QApplication) -> None:
    """Windows that are no longer used die in the thread that draws, and in no other."""
    if app.findChild(QTimer, COLLECTOR) is None:
        collect_by_hand()
        timer = QTimer(app, objectName=COLLECTOR)
        timer.timeout.connect(collect_what_is_due)
        timer.start(COLLECT_EVERY_MS)


def user_settings() -> Settings:
    """The settings in the user's data folder."""
    return Settings(open_data_folder() / "window.ini")


def start_app() -> tuple[QApplication, Settings]:
    """Qt's application in the colours and the language that the user has chosen."""
    app = make_app()
    settings = user_settings()
    theme.apply(app, settings.colours)
    _follow_system(app, settings)
    speak(app, language_of(settings.language))
    return app, settings


def _follow_system(app: QApplication, settings: Settings) -> None:
    """Take other colours when the system does, while the program is open."""
    hints = QGuiApplication.styleHints()
    for changed in (hints.colorSchemeChanged, hints.accessibility().contrastPreferenceChanged):
        changed.connect(lambda _: theme.apply(app, settings.colours))


def open_note() -> tuple[QApplication, QWidget]:
    """Show that the program is open already."""
    from ui.already_open import AlreadyOpen

    app, _settings = start_app()
    note = AlreadyOpen()
    note.show()
    return app, note


def open_window(
    *,
    clip: ClipPlan | None = None,
    plan: Path | None = None,
    begin: Callable[[Window], object] = lambda _: None,
) -> tuple[QApplication, Window]:
    """Make the program's real window and show it.

    Parameters
    ----------
    clip, plan
        As for :class:`~ui.app.Window`.
    begin
        Is done with the window once it is shown; not with one that takes its place when
        another language is chosen.
    """
    app, settings = start_app()
    window = _Opener(app, settings, clip).open(plan)
    begin(window)
    _shown[:] = [window]
    return app, window


class _Opener:
    """Makes the program's window, and makes it anew when another language is chosen in it."""

    def __init__(self, app: QApplication, settings: Settings, clip: ClipPlan | None) -> None:
        self._app, self._settings, self._clip = app, settings, clip

    def open(self, plan: Path | None, *, sharing: bool = False) -> Window:
        """Show a window; ``sharing``: in the layout for a call."""
        from ui.pages.stored import StoredPage
        from ui.screen_reader import QtScreenReader
        from ui.sounds.sound import make_beats
        from ui.sounds.voice import make_voice
        from ui.wiring import clip_plan, demo_clip, make_world

        window = Window(
            make_world(make_beats(), make_voice(), QtScreenReader()),
            clip=self._clip,
            demo_clip=lambda: clip_plan(demo_clip()),
            settings=self._settings,
            plan=plan,
        )
        # Later, so that what was pressed is not taken away while it is being pressed.
        window.other_language.connect(
            lambda code: self._speak_in(window, code), Qt.ConnectionType.QueuedConnection
        )
        stored = window.pages["stored"]
        assert isinstance(stored, StoredPage)
        stored.anew.connect(lambda: self._begin_anew(window), Qt.ConnectionType.QueuedConnection)
        if sharing:
            # Before it is seen: what a call must not show is never there.
            window.switch_sharing()
        bring_back(window, window.settings.window)
        window.show()
        # Once it is seen: it takes some hundredths of a second.
        QTimer.singleShot(0, spare_what_stays)
        return window

    def _speak_in(self, old: Window, code: str) -> None:
        """The same window anew: every word in it was made when it was."""
        quits = self._app.quitOnLastWindowClosed()
        self._app.setQuitOnLastWindowClosed(False)
        try:
            if not old.close():
                # A plan is not saved yet: the language stays until that is answered.
                old.refresh()
                return
            self._settings.language = code
            self._settings.sync()
            asks = old.director.recovering.unanswered
            baseline = old.director.baseline
            old.deleteLater()
            speak(self._app, language_of(code))
            # The plan that was opened last is remembered, and one that was refused is not.
            new = self.open(None, sharing=old.director.sharing)
            _shown[:] = [new]
            new.expect_baseline(baseline)
            if asks:
                new.director.look_for_interrupted()
            new.show_language()
        finally:
            self._app.setQuitOnLastWindowClosed(quits)

    def _begin_anew(self, old: Window) -> None:
        """All is deleted: a window as on the first day."""
        quits = self._app.quitOnLastWindowClosed()
        self._app.setQuitOnLastWindowClosed(False)
        try:
            if not old.close():
                # A plan is not saved yet; the page stays, and its button.
                return
            old.deleteLater()
            self._settings.remember()
            theme.apply(self._app, self._settings.colours)
            speak(self._app, language_of(self._settings.language))
            _shown[:] = [self.open(None)]
        finally:
            self._app.setQuitOnLastWindowClosed(quits)


#: Holds the window that took another one's place.
_shown: list[Window] = []
