"""A page that scrolls ends between two lines, and reading on leaves none out."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QRegion
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from tests.ui.fakes import FakeWorld, Make
from tests.ui.painted import Run, painted_by
from tests.ui.patient import TURNS, plan_of
from tests.ui.test_every_page import walk_planned
from ui.app import Window
from ui.languages import CODES
from ui.widgets.basic import Button, Page, Words

#: What only says which way a text goes, and spaces.
MARKS = "\u2066\u2067\u2068\u2069 "
#: A soft edge of a letter is no line, nor is a sign below or above it: in Arabic those of one
#: line reach into the next.
SOFT_PX, SIGNS = 2.0, 0.15


def lines(page: Page) -> Iterator[tuple[Any, Run]]:
    """Every line of text in the part that scrolls, wherever it is."""
    for widget in page.scroll.widget().findChildren(QWidget):
        if isinstance(widget, Words | Button) and widget.isVisibleTo(page):
            for run in painted_by(widget).runs:
                if run.text.strip(MARKS):
                    yield widget, run


def cut(page: Page) -> list[str]:
    """Lines of which a part is in sight, from above or from below."""
    return [r.text for w, r in lines(page) if SIGNS < share(w, r) < 1 - SIGNS]


def share(widget: QWidget, run: Run) -> float:
    """How much of a line's height is in sight."""
    # Letters of another font may be higher than the room that their label gives them.
    whole = run.box.intersected(QRectF(widget.rect()))
    box = whole.adjusted(0, SOFT_PX, 0, -SOFT_PX).toAlignedRect()
    seen = widget.visibleRegion().intersected(QRegion(box)).boundingRect()
    return seen.height() / box.height()


def settled(window: Window) -> None:
    for _ in range(6):
        QApplication.processEvents()


def page_of(window: Window, name: str) -> Page:
    """A page that has more to read than fits."""
    if name == "help":
        window.switch_help()
    else:
        window.pages["welcome"].offer(plan_of(TURNS))
    settled(window)
    page = window.stack.currentWidget()
    assert isinstance(page, Page) and page is window.pages[name]
    return page


@pytest.mark.parametrize(("size", "percent"), [((1366, 768), 100), ((960, 600), 200)])
@pytest.mark.parametrize("language", ["en", "de", "es", "ar"])
@pytest.mark.parametrize("name", ["welcome", "help"])
def test_reading_on_shows_every_line_whole_and_none_in_part(
    make: Make, name: str, language: str, size: tuple[int, int], percent: int
) -> None:
    window = make(percent=percent, language="" if language == "en" else language)
    window.resize(*size)
    page = page_of(window, name)
    bar, seen, steps = page.scroll.verticalScrollBar(), set(), 0
    while True:
        assert not cut(page), f"at {bar.value()} of {bar.maximum()} px"
        seen |= {(id(w), r.text, r.box.top()) for w, r in lines(page) if share(w, r) >= 1 - SIGNS}
        if bar.value() == bar.maximum():
            break
        was = bar.value()
        page.page_down()
        settled(window)
        steps += 1
        # Where nothing more comes the button goes, and the page has its room.
        assert (bar.value() > was or bar.value() == bar.maximum()) and steps < 40
    assert {(id(w), r.text, r.box.top()) for w, r in lines(page)} == seen
    # And back by the keys, as whole.
    page.setFocus()
    while bar.value() > 0:
        was = bar.value()
        QTest.keyClick(page, Qt.Key.Key_PageUp)
        settled(window)
        assert bar.value() < was and not cut(page)


def test_wherever_a_wheel_leaves_it_no_line_is_cut(make: Make) -> None:
    window = make(percent=200)
    page = page_of(window, "help")
    bar = page.scroll.verticalScrollBar()
    for value in range(0, bar.maximum() + 1, 37):
        bar.setValue(value)
        settled(window)
        assert not cut(page), f"at {value} px"
        assert sum(share(w, r) == 1 for w, r in lines(page)) >= 3


@pytest.mark.parametrize("language", CODES)
def test_what_fits_without_the_button_that_reads_on_has_none(make: Make, language: str) -> None:
    """On a laptop, with a plan: all of the first page is in sight at once."""
    window = make(language=language)
    window.resize(1366, 768)
    page = page_of(window, "welcome")
    assert page.scroll.verticalScrollBar().maximum() == 0 and not page.read_on.isVisible()
    assert all(share(w, r) == 1 for w, r in lines(page))
    window.resize(1366, 560)
    settled(window)
    assert page.read_on.isVisible()
    window.resize(1366, 768)
    settled(window)
    assert not page.read_on.isVisible()


def test_no_page_of_a_planned_session_cuts_a_line_in_the_smallest_window(
    make: Make, fake: FakeWorld
) -> None:
    """The longest words, the largest text; a countdown is seen whole, too."""
    window = make(percent=200, language="de")
    window.resize(960, 600)
    faults = []
    for name in walk_planned(window, fake):
        settled(window)
        window.refresh()
        settled(window)
        page = window.stack.currentWidget()
        if isinstance(page, Page):
            faults += [f"{name}: {text!r}" for text in cut(page)]
    assert not faults
