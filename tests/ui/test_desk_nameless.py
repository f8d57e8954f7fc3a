"""The desk keeps sessions without a pseudonym apart, and says what to do about them."""

from __future__ import annotations

from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from tests.handover.made import PERSON, plan_with, write_session
from tests.ui.test_desk_report import Open, desk  # noqa: F401 - a fixture
from tracker.plan.files import save_plan
from tracker.records.people import HANDED_OUT, NO_NAME
from ui import words
from ui.desk.window import DeskWindow
from ui.editor.window import EditorWindow

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


def begun(window: DeskWindow, qtbot: QtBot, name: str = NO_NAME) -> EditorWindow:
    """The editor, as the button of the page opens it."""
    chosen(window, name)
    window.person_page.plan.click()
    assert window.editor is not None
    qtbot.addWidget(window.editor)
    return window.editor


def offered(editor: EditorWindow) -> list[str]:
    files = editor.start.named_files
    return [files.itemText(k) for k in range(files.count())] if files.isVisible() else []


def test_the_button_leads_to_the_plans_that_these_sessions_name(
    desk: Open,  # noqa: F811
    qtbot: QtBot,
    clinic: Path,
) -> None:
    """A new plan would leave everybody with the one that has no pseudonym."""
    nobodys = plan_with(person=None)
    (clinic / "shared").mkdir()
    save_plan(clinic / "shared" / "home.json", nobodys)
    save_plan(clinic / "shared" / f"{HANDED_OUT}home.json", nobodys)
    save_plan(clinic / "other.json", nobodys.model_copy(update={"plan_id": "another"}))
    window = desk()
    editor = begun(window, qtbot)
    # Not somebody's own, nor a copy, nor one that none of the sessions names.
    assert offered(editor) == [str(Path("shared/home.json"))]
    assert (
        editor.focusWidget() is editor.start.from_named and not editor.start.from_last.isVisible()
    )
    editor.start.from_named.click()
    assert editor.document.path == clinic / "shared" / "home.json"
    assert editor.document.state.plan == nobodys
    editor = begun(window, qtbot, PERSON)
    assert offered(editor) == [] and editor.start.from_last.isVisible()


def test_of_several_plans_one_is_chosen(
    desk: Open,  # noqa: F811
    qtbot: QtBot,
    clinic: Path,
) -> None:
    for name, words_of in (("a.json", "one"), ("b.json", "two")):
        save_plan(clinic / name, plan_with(person=None).model_copy(update={"words": words_of}))
    editor = begun(desk(), qtbot)
    assert sorted(offered(editor)) == ["a.json", "b.json"]
    files = editor.start.named_files
    other = 1 - files.currentIndex()
    files.setCurrentIndex(other)
    files.activated.emit(other)
    name = files.currentText()
    editor.start.from_named.click()
    assert editor.document.path == clinic / name


def test_without_such_a_plan_it_begins_a_new_one(
    desk: Open,  # noqa: F811
    qtbot: QtBot,
) -> None:
    editor = begun(desk(), qtbot)
    assert offered(editor) == [] and editor.focusWidget() is editor.start.from_starter


def test_the_tab_stays_from_one_person_to_the_next(desk: Open) -> None:  # noqa: F811
    window = desk()
    page = window.person_page
    scores = page.tabs.indexOf(page.scores)
    chosen(window, PERSON)
    page.tabs.setCurrentIndex(scores)
    chosen(window, ODD)
    assert page.tabs.currentIndex() == scores
    # Of the nameless there are sessions alone; what was looked at before comes back after them.
    chosen(window, NO_NAME)
    assert page.tabs.currentWidget() is page.sessions
    page.tabs.setCurrentIndex(0)
    page.show_person(page.person)
    assert page.tabs.currentIndex() == 0
    chosen(window, PERSON)
    assert page.tabs.currentIndex() == scores
