"""The desk keeps sessions without a pseudonym apart, and says what to do about them."""

from __future__ import annotations

from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from tests.handover.made import PERSON, plan_with, write_session
from tests.ui.test_desk_report import Open, desk  # noqa: F401 - a fixture
from tracker.plan.files import save_plan
from tracker.records.people import NO_NAME
from ui import words
from ui.desk.window import DeskWindow

DAYS = ("2026-11-18", "2026-11-19", "2026-11-20", "2026-11-21")
ODD = "(no pseudonym)"


@pytest.fixture
def clinic(tmp_path: Path) -> Path:
    """Two people who left the pseudonym empty, one who is called as if, and one with a name."""
    folder = tmp_path / "clinic"
    for k, day in enumerate(DAYS):
        for n, person in enumerate((None, None, ODD, PERSON)):
            write_session(folder / str(n), day, 10 * n + k, person)
    save_plan(folder / "plan.json", plan_with())
    return folder


def chosen(window: DeskWindow, name: str) -> None:
    people = window.people.people.people
    row = next(k for k, p in enumerate(people) if p.name == name)
    window.people.setCurrentIndex(window.people.people.index(row))


def test_they_have_sessions_and_nothing_over_time(desk: Open, qtbot: QtBot) -> None:  # noqa: F811
    window = desk()
    page = window.person_page
    assert {p.name for p in window.people.people.people} == {NO_NAME, ODD, PERSON}
    for name in (ODD, PERSON):
        chosen(window, name)
        assert page.name.text() == name and page.trends.trends.rows
        assert page.strip.isVisible() and page.practice.isVisible()
        assert page.tabs.currentIndex() == 0 and len(page.sessions.sessions.rows) == 4
        window.open_session(page.sessions.sessions.rows[0].place)
        assert window.session_page.beside.count() == 4
        window.show_people()
    chosen(window, NO_NAME)
    assert page.name.text() == words.say("desk.nameless")
    assert page.about.text() == words.say("desk.nameless.what")
    assert not page.trends.trends.rows and not page.report.over_time()
    assert not page.strip.isVisible() and not page.practice.isVisible()
    assert page.gaze.isHidden() and page.conditions.isHidden() and not page.baseline.isEnabled()
    assert page.tabs.currentIndex() == 1 and len(page.sessions.sessions.rows) == 8
    assert not page.scores.add.isEnabled()
    assert page.scores.said.text() == words.say("scores.no_person")
    # None is held against another one, which may be somebody else's.
    window.open_session(page.sessions.sessions.rows[0].place)
    qtbot.waitUntil(lambda: not window.session_page.busy, timeout=30_000)
    assert window.session_page.beside.count() == 1
    assert words.say("desk.nameless") in window.session_page.title.text()
    window.show_people()
    chosen(window, PERSON)
    assert page.tabs.currentIndex() == 0 and page.strip.isVisible()
