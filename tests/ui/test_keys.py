"""The keys: the page that lists them, and the README's table of them."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

import ui
from tests.ui.editing import OpenEditor
from tests.ui.fakes import FakeWorld, Make
from tests.ui.patient import ENTER, TURNS, Person, plan_of
from tests.ui.test_desk import Open, folder, open_desk  # noqa: F401 - fixtures
from tests.ui.test_window import to_exercise
from ui import words
from ui.app import Window
from ui.keys import KEYS, PAGE_KEYS, Key
from ui.pages.help import HelpPage
from ui.session.flow import Phase
from ui.session.twice import TWICE_S
from ui.widgets.basic import Words

README = Path(ui.__file__).parent.parent / "README.md"
#: As the README, which is English, calls them.
CALLED = {"PgDown": "Page Down", "PgUp": "Page Up"}
F1, ESC = Qt.Key.Key_F1, Qt.Key.Key_Escape


def part() -> str:
    """The README's part on keys."""
    found = re.search(r"^## Keys\n(.*?)^## ", README.read_text("utf-8"), re.M | re.S)
    assert found
    return found[1]


def paragraph(beginning: str) -> set[str]:
    """The keys that a paragraph of it names."""
    (found,) = [p for p in part().split("\n\n") if p.strip().startswith(beginning)]
    return set(re.findall(r"`([^`]+)`", found))


def page_of(window: Window) -> HelpPage:
    page = window.pages["help"]
    assert isinstance(page, HelpPage)
    return page


def own_keys(window: QWidget) -> set[str]:
    found = {s.key().toString(QKeySequence.SequenceFormat.PortableText) for s in shortcuts(window)}
    return {"Delete" if key == "Del" else key for key in found}


def shortcuts(window: QWidget) -> list[QShortcut]:
    return window.findChildren(QShortcut)


def where(key: Key) -> str:
    """Where a key works, as the README calls it."""
    if key in PAGE_KEYS:
        return "any page"
    if key.picture_too:
        return "where you can see yourself"
    if key.live_only:
        return "while a set goes on"
    return "call, between two sets" if key.call_only else "whole program"


def test_the_readme_lists_every_key_once_with_what_it_does() -> None:
    wanted = {
        CALLED.get(k.sequence, k.sequence): (words.WORDS[f"help.key.{k.action}"], where(k))
        for k in (*KEYS, *PAGE_KEYS)
    }
    rows = [line.strip("| ").split(" | ") for line in part().splitlines() if line.startswith("| `")]
    found = [(key, (does, at)) for keys, does, at in rows for key in re.findall(r"`([^`]+)`", keys)]
    assert len(found) == len(wanted)
    assert dict(found) == wanted


def test_what_esc_does_between_sets_is_said_where_keys_are_looked_up() -> None:
    note = words.WORDS["help.note.always"]
    assert isinstance(note, str)
    for said in (note.replace("Esc", "`Esc`"), " ".join(part().split())):
        assert "`Esc` asks first if that is all for today" in said
        assert "for two seconds" in said and TWICE_S == 2.0


def test_the_readme_names_the_keys_of_the_editor(open_editor: OpenEditor) -> None:
    assert paragraph("The plan editor") == own_keys(open_editor())


def test_the_readme_names_the_keys_of_the_desk(open_desk: Open) -> None:  # noqa: F811
    assert paragraph("The therapist's desk") == own_keys(open_desk())


@pytest.mark.parametrize("language", ["en", "de", "es", "ar"])
def test_the_page_lists_every_key_beside_what_it_does(make: Make, language: str) -> None:
    window = make(language=language)
    table = page_of(window).table
    rows: dict[int, str] = {}
    for k in range(table.count()):
        row, column, high, wide = table.getItemPosition(k)  # type: ignore[misc]
        widget = table.itemAt(k).widget()
        assert isinstance(widget, Words)
        if (column, wide) == (1, 1):
            rows |= dict.fromkeys(range(row, row + high), widget.text())
    beside: dict[str, str] = {}
    for k in range(table.count()):
        row, column, _, wide = table.getItemPosition(k)  # type: ignore[misc]
        widget = table.itemAt(k).widget()
        if (column, wide) == (0, 1):
            assert isinstance(widget, Words) and widget.text() not in beside
            beside[widget.text().strip("\u2066\u2069")] = rows[row]
    assert sorted(beside.values()) == sorted(
        words.say(f"help.key.{k.action}") for k in (*KEYS, *PAGE_KEYS)
    )
    # Keys without letters are called alike on all keyboards.
    for key in KEYS:
        if re.fullmatch(r"F\d+|[A-Z]|Esc", key.sequence):
            assert beside[key.sequence] == words.say(f"help.key.{key.action}")
    control = {"de": "Strg"}.get(language, "Ctrl")
    assert beside[f"{control}++"] == beside[f"{control}+="] == words.say("help.key.text_larger")


def test_each_key_stands_below_where_it_works(make: Make) -> None:
    table = page_of(make()).table
    below: dict[str, set[str]] = {}
    heading = ""
    for k in range(table.count()):
        _, column, _, wide = table.getItemPosition(k)  # type: ignore[misc]
        widget = table.itemAt(k).widget()
        assert isinstance(widget, Words)
        if (column, wide) == (0, 2):
            heading = widget.text()
        elif column == 0:
            below.setdefault(heading, set()).add(widget.text().strip("\u2066\u2069"))
    assert below["Where you can see yourself"] == {"P"}
    assert "D" in below["While a set goes on"] and "P" not in below["While a set goes on"]


@pytest.mark.parametrize("leave", [F1, ESC, ENTER])
def test_the_page_lies_over_another_and_goes_away(make: Make, leave: Qt.Key) -> None:
    window = make()
    under = window.stack.currentWidget()
    QTest.keyClick(window, F1)
    page = page_of(window)
    assert window.stack.currentWidget() is page
    assert page.back.hasFocus()
    QTest.keyClick(QApplication.focusWidget() or window, leave)
    assert window.stack.currentWidget() is under
    assert window.director.phase == Phase.welcome


def test_a_button_of_the_tools_opens_it_and_back_is_there_again(make: Make) -> None:
    window = make()
    window.director.open_tools()
    window.pages["tools"].help.click()
    assert window.stack.currentWidget() is page_of(window)
    page_of(window).back.click()
    assert window.stack.currentWidget() is window.pages["tools"]


def test_over_another_that_lies_over_a_page_it_goes_back_to_that(make: Make) -> None:
    window = make()
    window.open_sound()
    QTest.keyClick(window, F1)
    QTest.keyClick(window, ESC)
    assert window.stack.currentWidget() is window.pages["sound"]
    QTest.keyClick(window, ESC)
    assert window.stack.currentWidget() is window.pages["welcome"]


def test_what_goes_on_is_not_covered(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_exercise(window, fake)
    assert window.director.phase == Phase.exercise
    QTest.keyClick(window, F1)
    assert window.stack.currentWidget() is window.pages["practice"]
    QTest.keyClick(window, ESC)
    assert window.director.phase != Phase.exercise


def test_while_it_is_read_unwell_still_works(make: Make, fake: FakeWorld) -> None:
    window = make()
    window.pages["welcome"].offer(plan_of(TURNS))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.none_of_these()
    QTest.keyClick(window, F1)
    assert window.stack.currentWidget() is page_of(window)
    QTest.keyClick(window, Qt.Key.Key_U)
    # Before the first set it is asked once whether it is meant.
    assert window.covering() == "meant"
    person.settle()
    person.press(ENTER)
    assert window.stack.currentWidget() is window.pages["gate"] and window.director.asks_unwell


def test_a_score_half_given_is_still_there_after_it(make: Make, fake: FakeWorld) -> None:
    window = make()
    window.pages["welcome"].offer(plan_of(TURNS))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.none_of_these()
    person.press("4")
    person.press(F1)
    person.press(ESC)
    assert window.pages["scores"].scale.value == 4
    assert window.director.conductor is not None
