"""A walk through the therapist's desk: people, one of them, sessions, files, what can't be read."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.ui.test_desk import choose, open_last
from tests.ui.test_desk_scores import type_in
from ui.desk.window import DeskWindow


def spoil_one(folder: Path) -> None:
    """A session that can't be read."""
    bad = folder / "wren" / "broken"
    bad.mkdir()
    (bad / "summary.json").write_text('{"half')


def walk_desk(window: DeskWindow, qtbot: QtBot) -> Iterator[str]:
    """Every page of the desk, each settled."""
    for name in _walk(window, qtbot):
        for _ in range(3):
            QApplication.processEvents()
        yield name


def _walk(window: DeskWindow, qtbot: QtBot) -> Iterator[str]:
    page = window.person_page
    for name in ("robin", "finch", "plover", "teal"):
        choose(window, name)
        for k in range(page.tabs.count()):
            page.tabs.setCurrentIndex(k)
            yield f"{name}, {page.tabs.tabText(k)}"
    page.tabs.setCurrentWidget(page.scores)
    for score in ("60", "47.5", "nothing"):
        type_in(page.scores, "Balance A", score, "0", "100")
        yield f"a score of {score}"
    page.tabs.setCurrentIndex(0)
    window.switch_faults()
    yield "what can't be read"
    window.switch_faults()
    for name in ("robin", "finch", "teal"):
        open_last(window, qtbot, name)
        session = window.session_page
        for k in range(session.lists.count()):
            session.lists.setCurrentIndex(k)
            yield f"a session of {name}, {session.lists.tabText(k)}"
    session.beside.setCurrentIndex(1)
    qtbot.waitUntil(lambda: not session.busy, timeout=30_000)
    yield "two sessions"
    window.show_exchange()
    yield "files"
    window.exchange.key.make.click()
    yield "a passphrase is asked"
    window.show_people()
    yield "people again"
