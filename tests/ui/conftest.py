"""A window that only the test drives, before a world of stand-ins."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.ui import pictures
from tests.ui.editing import OpenEditor
from tests.ui.fakes import PLAN, SIZE, FakeWorld, Make, Voice
from tests.ui.marked import Marked
from tests.ui.patient import Person
from tracker.plan.model import Plan
from ui import theme
from ui.app import Window
from ui.editor.window import EditorWindow
from ui.languages import hush, speak
from ui.ports import ClipPlan
from ui.settings import Settings


@pytest.fixture(autouse=True, scope="session")
def pictures_wanted(request: pytest.FixtureRequest) -> None:
    """Keep pictures of the pages where a call asks for them."""
    kept: str | None = request.config.getoption("--pictures")
    pictures.folder = None if kept is None else Path(kept)


@pytest.fixture
def fake(tmp_path: Path) -> FakeWorld:
    return FakeWorld(tmp_path / "sessions")


@pytest.fixture
def voice(fake: FakeWorld) -> Voice:
    """The world's voice, which only remembers what it said."""
    fake.voice = voice = Voice()
    return voice


@pytest.fixture
def make(qtbot: QtBot, fake: FakeWorld, tmp_path: Path) -> Iterator[Make]:
    """Make a window that only the test drives."""
    app = QApplication.instance()
    assert isinstance(app, QApplication)

    def build(
        clip: ClipPlan | None = None,
        percent: int = 100,
        colours: str = "light",
        *,
        first: str | None = "",
        language: str = "",
    ) -> Window:
        theme.apply(app, colours)
        if language:
            speak(app, language)
        settings = Settings(tmp_path / "window.ini")
        settings.text_percent, settings.colours = percent, colours
        if first is not None:
            # Most tests are of somebody who has been here before.
            settings.first_step = first
        if language:
            settings.language = language
        window = Window(fake.world(), clip=clip, demo_clip=lambda: PLAN, settings=settings)
        window._timer.stop()
        window.resize(*SIZE)
        qtbot.addWidget(window)
        with qtbot.waitActive(window):
            window.show()
            window.activateWindow()
        return window

    locale = QLocale()
    yield build
    theme.apply(app, "light")
    hush(app)
    QLocale.setDefault(locale)
    app.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


@pytest.fixture
def spoken(qapp: QApplication) -> Iterator[Any]:
    """Speak a language in a test; what was spoken before comes back."""
    locale = QLocale()
    yield lambda code: speak(qapp, code)
    hush(qapp)
    QLocale.setDefault(locale)
    qapp.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


@pytest.fixture
def marked(qapp: QApplication) -> Iterator[None]:
    """Speak the language of marks."""
    translator = Marked()
    qapp.installTranslator(translator)
    yield
    qapp.removeTranslator(translator)


@pytest.fixture
def begin(make: Make, fake: FakeWorld) -> Callable[..., Person]:
    def build(plan: Plan, *, percent: int = 100) -> Person:
        window = make(percent=percent)
        window.pages["welcome"].offer(plan)
        person = Person(window, fake)
        person.settle()
        person.choose("Practise my plan")
        return person

    return build


@pytest.fixture
def open_editor(qtbot: QtBot, tmp_path: Path) -> Iterator[OpenEditor]:
    """Open plan editors; at the end they close without asking."""
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    made: list[EditorWindow] = []

    def build(
        path: Path | None = None,
        *,
        percent: int = 100,
        colours: str = "light",
        size: tuple[int, int] = SIZE,
    ) -> EditorWindow:
        theme.apply(app, colours)
        settings = Settings(tmp_path / "window.ini")
        settings.text_percent, settings.colours = percent, colours
        window = EditorWindow(settings, date(2026, 11, 26))
        window.files.folder = tmp_path
        window.resize(*size)
        qtbot.addWidget(window)
        made.append(window)
        with qtbot.waitActive(window):
            window.show()
            window.activateWindow()
        if path is not None:
            window.files.open(path)
        return window

    yield build
    for window in made:
        window._closing = True
        window.close()
    theme.apply(app, "light")
