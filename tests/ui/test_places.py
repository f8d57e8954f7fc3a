"""What stands where: ways out in one corner, words as wide as the page, choices that wrap."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QColor, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from tests.ui.fakes import FakeWorld, Make
from tests.ui.test_every_page import HIGH, high_contrast, walk_planned
from ui import motion, theme, words
from ui.pages.meant import MeantPage
from ui.widgets.basic import Button, Page
from ui.widgets.choices import OneOf
from ui.widgets.flow import FlowRow


@pytest.fixture
def holder(qtbot: QtBot) -> QWidget:
    made = QWidget()
    qtbot.addWidget(made)
    return made


def row_of(holder: QWidget, width: int, *texts: str, apart: int) -> list[Button]:
    row, buttons = FlowRow(holder), [Button(t) for t in texts]
    for button in buttons:
        row.addWidget(button)
    row.set_apart(*buttons[len(buttons) - apart :])
    holder.resize(width, 400)
    holder.show()
    row.setGeometry(QRect(0, 0, width, 400))
    return buttons


def test_what_stands_apart_ends_the_row(holder: QWidget) -> None:
    first, leave, end = row_of(holder, 1000, "Go on", "Unwell", "End", apart=2)
    assert first.x() == 0 and end.geometry().right() == 999
    assert leave.geometry().right() < end.x() and first.y() == leave.y() == end.y()


def test_what_has_no_room_beside_the_rest_has_a_row_of_its_own(holder: QWidget) -> None:
    first, leave, end = row_of(holder, 360, "Something long", "Unwell", "End", apart=2)
    assert first.y() < leave.y() == end.y() and end.geometry().right() == 359


def test_a_row_is_as_high_as_its_words_are_now(holder: QWidget) -> None:
    """Heights are remembered; whatever changes what is needed makes them be asked anew."""
    first, second = row_of(holder, 400, "One", "Two", apart=0)
    row = holder.layout()
    one_line = row.heightForWidth(400)
    first.setText("Words that fill a row of this width")
    assert row.heightForWidth(400) > one_line
    second.hide()
    assert row.heightForWidth(400) == one_line
    second.show()
    first.setText("One")
    assert row.heightForWidth(400) == one_line
    for button in (first, second):
        button.set_percent(200)
    larger = row.heightForWidth(400)
    assert larger > one_line
    row.addWidget(Button("Three in a row of its own"))
    QApplication.processEvents()
    assert row.heightForWidth(400) > larger
    row.takeAt(2).widget().deleteLater()
    assert row.heightForWidth(400) == larger


def test_the_ways_out_stand_in_one_place_on_every_page(make: Make, fake: FakeWorld) -> None:
    """One place in a session; outside, where there is nothing to end, one at the edge.

    The page that asks whether it is meant has no ways out: they are its answers.
    """
    window = make()
    places: dict[tuple[str, bool], set[tuple[int, int]]] = {}
    pages = set()
    for _ in walk_planned(window, fake):
        page = window.stack.currentWidget()
        if not isinstance(page, Page) or isinstance(page, MeantPage):
            continue
        shown = {b.text(): b for b in page.findChildren(Button) if b.isVisible()}
        ways = [text for key in ("ask.unwell", "ask.end") if (text := words.say(key)) in shown]
        for text in ways:
            corner = shown[text].mapTo(window, QPoint(0, 0))
            places.setdefault((text, len(ways) == 2), set()).add(corner.toTuple())
            pages.add(page)
    assert {both for _, both in places} == {True, False} and len(pages) >= 5
    assert all(len(found) == 1 for found in places.values()), places


def test_words_after_a_set_away_from_the_screen_are_as_wide_as_the_page(
    make: Make, fake: FakeWorld
) -> None:
    """A line of before that was only hidden would keep them as narrow as a word."""
    window = make()
    looked = 0
    for name in walk_planned(window, fake):
        if name in ("over", "wait", "rest"):
            page = window.pages["task"]
            width = page.column.width() - theme.M
            assert page.title.width() == width, name
            looked += 1
    assert looked == 3


def test_the_time_that_is_left_is_large(make: Make, fake: FakeWorld) -> None:
    window = make()
    for name in walk_planned(window, fake):
        if name == "settle":
            page = window.pages["task"]
            assert page.far.isVisible() and ":" in page.far.figure.text()
            assert page.far.figure.fontMetrics().capHeight() > 72
            break


def test_a_choice_that_is_too_narrow_wraps(qtbot: QtBot) -> None:
    choice = OneOf("Turn your head, eyes on the target")
    qtbot.addWidget(choice)
    choice.set_percent(200)
    whole = choice.sizeHint()
    narrow = whole.width() - 100
    assert choice.minimumSizeHint().width() <= narrow
    assert choice.heightForWidth(narrow) > whole.height()
    assert choice.heightForWidth(whole.width()) <= whole.height() + 1


def test_a_palette_of_high_contrast_keeps_no_doubtful_role() -> None:
    role = QPalette.ColorRole
    for ink, ground, chosen in HIGH.values():
        made = theme.high_contrast_palette(high_contrast(ink, ground, chosen))
        for which in (role.Mid, role.Accent, role.BrightText, role.PlaceholderText):
            assert made.color(which) == QColor(ink)
        assert theme.contrast(made.color(role.Link).name(), ground) >= theme.SHAPES_LEAST
        pale = theme.high_contrast_palette(high_contrast(ink, ground, ground))
        assert pale.color(role.Link) == QColor(ink)


def test_a_sentence_from_below_stands_by_itself() -> None:
    assert words.sentence("the face was not seen; do it again").startswith("The face")
    assert words.sentence("Done.") == "Done." and words.sentence("") == ""


def test_drawings_follow_the_system_while_the_program_is_open(
    make: Make, fake: FakeWorld, monkeypatch: pytest.MonkeyPatch
) -> None:
    wants = False
    monkeypatch.setattr(motion, "system_wants_still", lambda: wants)
    window = make()
    picture = window.pages["choose"].movement.picture
    assert not picture.still
    wants = True
    hints = QGuiApplication.styleHints().accessibility()
    hints.motionPreferenceChanged.emit(Qt.MotionPreference.ReducedMotion)
    assert picture.still
