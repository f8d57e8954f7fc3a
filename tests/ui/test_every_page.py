"""Every page, one after the other: contrast, sizes, focus order, names, keys.

Contrast is taken from the picture that is drawn, not from the palette alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor, QFontInfo, QKeySequence, QPalette
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QLineEdit,
    QListWidget,
    QPlainTextEdit,
    QWidget,
)

from tests.ui.editing import OpenEditor
from tests.ui.fakes import FakeWorld, Make, feed, seen
from tests.ui.patient import ENTER, STAND, TURNS, WALK, Person, plan_of, week_ago
from tests.ui.test_desk import look
from tests.ui.test_handover import walk as walk_handover
from tests.ui.test_stored import walk as walk_stored
from tests.ui.test_tools import walk as walk_tools
from tests.ui.test_window import pixels
from tests.ui.test_window import walk as walk_alone
from tracker.plan.draft import data_of
from tracker.plan.starter import starter_plan
from tracker.practice.tasks import AskAfterSet, AskWell, DoSet, Prepare
from ui import theme, words
from ui.app import Window
from ui.editor.rows import PLAN, SAFETY, SYMPTOMS
from ui.editor.window import EditorWindow
from ui.keys import KEYS, PAGE_KEYS
from ui.ports import Baseline
from ui.session.first import OVERVIEW, STEPS
from ui.session.flow import Phase
from ui.session.leaving import UNSEEN_S
from ui.widgets.basic import Button, Page, Words
from ui.widgets.choices import Stepper
from ui.widgets.field import TargetField
from ui.widgets.moving import MovementPicture
from ui.widgets.outline import HeadOutline
from ui.widgets.picture import Picture
from ui.widgets.posts import Posts
from ui.widgets.scale import Scale
from ui.widgets.share_board import ShareBoard

#: WCAG 2.2, 1.4.6 and 1.4.11.
WORDS_LEAST, SHAPES_LEAST = 7.0, 3.0
#: Least size of words at 100 %, and of what is pressed (44: WCAG 2.2, 2.5.5; the rest is
#: the program's own drawing language).
TEXT_PX, TARGET_PX = 20, 44


def walk_planned(window: Window, fake: FakeWorld) -> Iterator[str]:
    """A planned session, with a set before the screen, one standing, and one away from it."""
    window.pages["welcome"].offer(plan_of(TURNS, STAND, WALK))
    person = Person(window, fake)
    person.settle()
    yield "welcome with a plan"
    person.press("u")
    assert window.covering() == "meant"
    yield "unwell, if it is meant"
    person.press(Qt.Key.Key_Escape)
    window.expect_baseline(Baseline())
    yield "welcome before a baseline"
    window.expect_baseline(None)
    person.choose("Practise my plan")
    yield "gate"
    person.none_of_these()
    yield "scores"
    person.press("1", ENTER)
    yield "today"
    person.choose("Begin")
    assert isinstance(person.director.task, Prepare)
    yield "prepare"
    person.choose("I am in place")
    person.set_up()
    person.measured(3.2, seen)
    yield "set"
    window.director.set_done()
    person.settle()
    assert isinstance(person.director.task, AskAfterSet)
    yield "after a set"
    person.answer_set()
    yield "wait"
    person.press(Qt.Key.Key_Escape)
    assert window.covering() == "leave"
    yield "all for today"
    person.press(ENTER)
    person.wait(11)
    person.press("1", ENTER)
    yield "settle"
    person.choose("I feel as usual again")
    yield "rest"
    person.choose("Go on now")
    yield "sound asked"
    person.choose("Yes")
    yield "support"
    person.choose("Yes")
    yield "prepare standing"
    person.choose("Not this one")
    while not isinstance(person.director.task, Prepare):
        person.choose("Yes")
    person.choose("I am in place")
    person.wait(10.5)
    assert isinstance(person.director.task, DoSet)
    yield "set away from the screen"
    person.director.conductor.dropped(person.director.now_s, seen=False)
    person.director._follow_task()
    person.wait(UNSEEN_S)
    assert isinstance(person.director.task, AskWell)
    yield "asked if well"
    person.press("1")
    person.press("u")
    yield "unwell"
    person.none_of_these()
    yield "over"
    person.choose("Show what I did")
    yield "summary of a plan"
    person.director.again()
    person.settle()
    person.choose("I practised without the laptop")
    yield "practice told"
    person.choose("Take it back")


def walk_weekly(window: Window, fake: FakeWorld) -> Iterator[str]:
    """The questions of the week."""
    fake.history.append(week_ago("p1"))
    window.pages["welcome"].offer(plan_of(TURNS))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.none_of_these()
    yield "falls"
    person.choose("Yes, once")
    yield "hurt"
    person.choose("No")
    yield "medicines"
    person.director.end_today()
    person.director.again()
    fake.history.clear()


def walk_first(window: Window, fake: FakeWorld) -> Iterator[str]:
    for step in (*STEPS, OVERVIEW):
        window.director.open_first(step)
        if step == "camera":
            feed(fake.service, window.director, 0.5, seen)
        yield f"first: {step}"
        window.director.leave_first()
    window.open_sound()
    yield "sound"
    window.close_sound()
    window.switch_help()
    yield "help"
    while window.pages["help"].read_on.isVisible():
        window.pages["help"].page_down()
        QApplication.processEvents()
    yield "help, its end"
    window.switch_help()


def walk_shared(window: Window, fake: FakeWorld) -> Iterator[str]:
    """The pages of a set in the layout for a call."""
    window.switch_sharing()
    for name in walk_alone(window, fake):
        yield f"call: {name}"
    window.director.again()
    window.director.stop()
    window.pages["welcome"].offer(plan_of(TURNS, STAND))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.none_of_these()
    person.press("1", ENTER)
    yield "call: today"
    person.choose("Begin")
    person.press(Qt.Key.Key_F6)
    yield "call: between sets"
    window.director.stop()
    window.director.again()
    window.switch_sharing()


WALKS = {
    "alone": walk_alone,
    "tools": walk_tools,
    "planned": walk_planned,
    "weekly": walk_weekly,
    "first": walk_first,
    "handover": walk_handover,
    "stored": walk_stored,
    "call": walk_shared,
}


def pages(window: Window, fake: FakeWorld, which: str) -> Iterator[str]:
    for name in WALKS[which](window, fake):
        for _ in range(3):
            window.refresh()
            QApplication.processEvents()
        yield name


def seen_part(window: Window, widget: QWidget) -> bool:
    """Whether a widget lies in what is shown of the window: not scrolled away, not covered."""
    if not widget.isVisible() or not widget.width() or not widget.height():
        return False
    page = window.stack.currentWidget()
    if isinstance(page, Page) and page.scroll.isAncestorOf(widget):
        top = widget.mapTo(page.scroll.viewport(), QPoint(0, 0)).y()
        # What stands in a row with a line that the edge would cut is covered with it.
        return top >= page.fold.above_px and top + widget.height() <= page.fold.below_px
    return True


def luminances(image: Any) -> Any:
    """Relative luminance of each pixel of a picture (blue, green, red)."""
    parts = image.astype(float) / 255
    linear = np.where(parts <= 0.04045, parts / 12.92, ((parts + 0.055) / 1.055) ** 2.4)
    return linear @ np.array([0.0722, 0.7152, 0.2126])


def contrast_of(picture: Any) -> float:
    """Contrast of the ink furthest from the commonest colour of a picture."""
    found = luminances(picture)
    values, counts = np.unique(np.round(found, 4), return_counts=True)
    ground = values[counts.argmax()]
    # A few pixels may be anything; the strokes of words are more.
    low, high = np.quantile(found, 0.004), np.quantile(found, 0.996)
    return float(max((high + 0.05) / (ground + 0.05), (ground + 0.05) / (low + 0.05)))


def part_of(picture: Any, window: QWidget, widget: QWidget) -> Any:
    ratio = picture.shape[1] / window.width()
    at = widget.mapTo(window, QPoint(0, 0))
    box = [at.x(), at.y(), at.x() + widget.width(), at.y() + widget.height()]
    left, top, right, bottom = (round(v * ratio) for v in box)
    return picture[max(top, 0) : bottom, max(left, 0) : right]


def words_seen(picture: Any, window: Window) -> list[tuple[Words | Button, Any]]:
    """What bears words and is in sight, each with its part of the window's picture."""
    return [
        (widget, part_of(picture, window, widget))
        for widget in [*window.findChildren(Words), *window.findChildren(Button)]
        if seen_part(window, widget) and widget.text().strip()
    ]


def faint(shown: list[tuple[Words | Button, Any]]) -> list[str]:
    """Words that don't stand out."""
    contrasts = [(widget.text(), contrast_of(part)) for widget, part in shown]
    return [f"{text!r} has {found:.1f}:1" for text, found in contrasts if found < WORDS_LEAST]


@pytest.mark.slow
@pytest.mark.parametrize("colours", ["light", "dark"])
@pytest.mark.parametrize("which", sorted(WALKS))
def test_every_page_can_be_read_and_reached(
    make: Make, fake: FakeWorld, which: str, colours: str
) -> None:
    """Contrast as it is drawn; in one of the schemes sizes, names and the way of the keys, too."""
    window = make(colours=colours)
    faults = []
    looked = 0
    for name in pages(window, fake, which):
        picture = pixels(window.grab().toImage())
        shown = words_seen(picture, window)
        looked += len(shown)
        faults += [f"{name}: {fault}" for fault in faint(shown)]
        for widget in window.findChildren(QWidget):
            if isinstance(widget, MovementPicture | HeadOutline) and seen_part(window, widget):
                found = contrast_of(part_of(picture, window, widget))
                if found < SHAPES_LEAST:
                    faults.append(f"{name}: {widget.accessibleName()!r} has {found:.1f}:1")
        if colours == "light":
            others = [*too_small(window), *nameless(window), *out_of_reach(window)]
            faults += [f"{name}: {fault}" for fault in others]
    assert looked > 20
    assert not faults


def high_contrast(ink: str, ground: str, chosen: str) -> QPalette:
    """A system's palette of high contrast: the roles that such systems set, and no more."""
    role, palette = QPalette.ColorRole, QPalette(QColor("#efefef"))
    for which, colour in (
        *((r, ink) for r in (role.WindowText, role.Text, role.ButtonText)),
        *((r, ground) for r in (role.Window, role.Base, role.Button, role.HighlightedText)),
        (role.Highlight, chosen),
    ):
        palette.setColor(which, QColor(colour))
    # Left as they were: these would be lost on a light ground, and on a dark one.
    palette.setColor(role.BrightText, QColor("#ffffff"))
    palette.setColor(role.Link, QColor("#0000ff"))
    return palette


HIGH = {"dark": ("#ffffff", "#000000", "#1aebff"), "light": ("#000000", "#ffffff", "#37006e")}


@pytest.mark.slow
@pytest.mark.parametrize("ground", sorted(HIGH))
@pytest.mark.parametrize("which", ["alone", "planned", "call"])
def test_all_stands_out_in_the_systems_high_contrast(
    make: Make, fake: FakeWorld, monkeypatch: pytest.MonkeyPatch, which: str, ground: str
) -> None:
    monkeypatch.setattr(theme, "wants_high_contrast", lambda: True)
    monkeypatch.setattr(theme, "system_palette", lambda _app: high_contrast(*HIGH[ground]))
    window = make()
    assert window.palette().color(QPalette.ColorRole.Window) == QColor(HIGH[ground][1])
    faults, looked = [], 0
    for name in pages(window, fake, which):
        picture = pixels(window.grab().toImage())
        shown = words_seen(picture, window)
        looked += len(shown)
        faults += [f"{name}: {fault}" for fault in faint(shown)]
        for widget, part in shown:
            if widget.hasFocus() and isinstance(widget, Button):
                ring = contrast_of(part[: theme.FOCUS_WIDTH])
                if ring < SHAPES_LEAST:
                    faults.append(f"{name}: the ring of {widget.text()!r} has {ring:.1f}:1")
    assert looked > 20
    assert not faults


def too_small(window: QWidget, least_px: int = TEXT_PX) -> list[str]:
    """Words below their least size, and what is pressed."""
    faults = []
    for widget in [*window.findChildren(Words), *window.findChildren(Button)]:
        if widget.isVisible() and widget.text().strip():
            found = QFontInfo(widget.font()).pixelSize()
            if found < least_px:
                faults.append(f"{widget.text()!r} is {found} px")
    for widget in window.findChildren(QAbstractButton):
        if widget.isVisible() and min(widget.width(), widget.height()) < TARGET_PX:
            faults.append(f"{widget.accessibleName()!r} is {widget.size().toTuple()}")
    return faults


def nameless(window: QWidget) -> list[str]:
    """Controls and drawn things that a screen reader could say nothing of."""
    drawn = TargetField | Picture | Scale | MovementPicture | HeadOutline | ShareBoard
    drawn |= Stepper | Posts
    faults = []
    for widget in window.findChildren(QWidget):
        if not widget.isVisible():
            continue
        if isinstance(widget, QAbstractButton | drawn) and not widget.accessibleName():
            faults.append(f"{widget} has no name")
        if isinstance(widget, MovementPicture) and not widget.accessibleDescription():
            faults.append(f"{widget} is not described")
    return faults


def by_tab(window: QWidget) -> list[QWidget]:
    """What takes the keys, in Tab's order, once around."""
    start = QApplication.focusWidget()
    assert start is not None
    found = [start]
    for _ in range(120):
        QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Tab)
        now = QApplication.focusWidget()
        # A page that has the keys first is nobody's stop: Tab doesn't come back to it.
        if now is None or now in found:
            break
        found.append(now)
    return found


def out_of_reach(window: Window | EditorWindow) -> list[str]:
    """Buttons that Tab doesn't come to, and a foot that it goes through out of order."""
    before = QApplication.focusWidget()
    if before is None:
        return ["nothing has the keys"]
    order, faults = by_tab(window), []
    for widget in window.findChildren(Button):
        if not widget.isVisible() or not widget.isEnabled():
            continue
        group = widget.group()
        # Of choices that exclude each other one takes the keys; arrows reach the rest.
        reached = [widget] if group is None else list(group.buttons())
        if not any(w in order for w in reached):
            faults.append(f"{widget.text()!r} can't be reached")
    page = window.stack.currentWidget()
    if isinstance(page, Page):
        foot = [w for w in order if page._foot.isAncestorOf(w)]
        tops = [w.mapTo(window, QPoint(0, 0)) for w in foot]
        # From wherever Tab began, around once: one step back at most.
        if sum((b.y(), b.x()) < (a.y(), a.x()) for a, b in pairwise(tops)) > 1:
            faults.append(f"{[w.text() for w in foot]} is not in reading order")
    before.setFocus()
    return faults


# --- the plan editor, a window of its own ---

#: The therapist's windows are read at a table.
DESK_PX = 16


def walk_editor(window: EditorWindow) -> Iterator[str]:
    """Every page of the editor, every form, and its questions."""
    yield "start"
    window.begin(data_of(starter_plan()))
    outline, editing = window.editing.outline, window.editing
    for item in (PLAN, SAFETY, SYMPTOMS, ("stage", 1), ("entry", 3), ("entry", 13)):
        outline.choose(item)
        yield f"{item}"
    outline.choose(("entry", 3))
    editing._acted("add_rung", ("entries", 3, "ladder"))
    yield "a fault"
    editing.undo()
    window.files.save_as()
    yield "where to save"
    window.back()
    window.files.ask_sheet()
    yield "where to print"
    window.back()
    window.show_catalogue()
    yield "catalogue"
    window.back()
    window.show_preview()
    yield "preview"
    window.back()


def editor_pages(window: EditorWindow) -> Iterator[str]:
    for name in walk_editor(window):
        for _ in range(3):
            QApplication.processEvents()
        yield name


def in_sight(window: EditorWindow, widget: QWidget) -> bool:
    """Whether all of a widget is shown, not scrolled away."""
    return widget.isVisible() and widget.visibleRegion().boundingRect() == widget.rect()


@pytest.mark.slow
@pytest.mark.parametrize("colours", ["light", "dark"])
def test_words_of_the_editor_stand_out_as_they_are_drawn(
    open_editor: OpenEditor, colours: str
) -> None:
    window = open_editor(colours=colours)
    faults, looked = [], 0
    for name in editor_pages(window):
        picture = pixels(window.grab().toImage())
        for widget in [*window.findChildren(Words), *window.findChildren(Button)]:
            if not in_sight(window, widget) or not widget.text().strip():
                continue
            looked += 1
            part = part_of(picture, window, widget)
            if isinstance(widget, Words):
                # A few words in a wide label are less ink than the measure asks for.
                lines = widget.text().split("\n")
                wide = max(widget.fontMetrics().horizontalAdvance(t) for t in lines)
                part = part[:, : wide + 8]
            found = contrast_of(part)
            if found < WORDS_LEAST:
                faults.append(f"{name}: {widget.text()!r} has {found:.1f}:1")
    assert looked > 100
    assert not faults


@pytest.mark.slow
def test_sizes_names_and_keys_of_the_editor(open_editor: OpenEditor) -> None:
    window = open_editor()
    faults = []
    for name in editor_pages(window):
        found = [*too_small(window, DESK_PX), *nameless(window), *out_of_reach(window)]
        found += unnamed_fields(window)
        faults += [f"{name}: {fault}" for fault in found]
    assert not faults


def unnamed_fields(window: EditorWindow) -> list[str]:
    """Fields and lists that a screen reader could say nothing of, and those Tab skips."""
    order, faults = by_tab(window), []
    for widget in window.findChildren(QWidget):
        kinds = QLineEdit | QPlainTextEdit | QComboBox | QListWidget
        if not isinstance(widget, kinds) or not widget.isVisible():
            continue
        if not widget.accessibleName():
            faults.append(f"{widget} has no name")
        if widget not in order:
            faults.append(f"{widget.accessibleName()!r} can't be reached")
    return faults


@pytest.mark.slow
@pytest.mark.parametrize("percent", [100, 200])
@pytest.mark.parametrize("size", [(1366, 768), (1920, 1080)])
def test_nothing_of_the_editor_is_cut(
    open_editor: OpenEditor, percent: int, size: tuple[int, int]
) -> None:
    window = open_editor(percent=percent, size=size)
    faults = []
    for name in editor_pages(window):
        faults += look(window, f"editor-{re.sub(r'[^a-z0-9]', '', name)}-{size[0]}-{percent}")
    assert window.size().toTuple() == size
    assert not faults


def test_no_key_does_two_things_nor_takes_one_of_the_pages() -> None:
    taken = [QKeySequence(k.sequence).toString() for k in KEYS]
    assert len(taken) == len(set(taken))
    # Pages answer to these themselves: scores, choices, scrolling, the field of a card.
    own = {*"0123456789", "Return", "Enter", "Tab", "Up", "Down", "Left", "Right"}
    own |= {"PgUp", "PgDown", "Home", "End"}
    assert {k.sequence for k in PAGE_KEYS} <= own
    assert not own & set(taken)
    # Space presses what has the keys, but where a set goes on.
    assert [k.live_only for k in KEYS if k.sequence == "Space"] == [True]


@pytest.mark.parametrize("key", [k for k in KEYS if "(" not in k.action])
def test_keys_that_stand_on_a_button_are_those_of_the_table(key: Any) -> None:
    shown = {
        "stop": "practice.stop",
        "double": "practice.double",
        "pause": "practice.pause",
        "picture": "practice.picture_show",
        "unwell": "ask.unwell",
        "still": "figure.hold",
        "share": "share.open",
        "mark": "call.mark",
        "slower": "call.slower",
        "faster": "call.faster",
        "smaller": "call.smaller",
        "larger": "call.larger",
        "other_next": "call.other_next",
        "take_back": "call.take_back",
        "sound": "sound.open",
        "help": "help.open",
    }
    if key.action in shown:
        assert f"({key.sequence})" in words.say(shown[key.action])
    else:
        assert key.action in {
            "text_larger",
            "text_smaller",
            "text_normal",
            "colours",
            "full_screen",
            "quit",
        }


def test_the_walks_show_every_page(make: Make, fake: FakeWorld) -> None:
    window = make()
    shown = set()
    for which in WALKS:
        for _ in WALKS[which](window, fake):
            shown.add(window.stack.currentWidget())
        while window.director.phase != Phase.welcome:
            window.director.again()
            window.director.stop()
    missing = [n for n, p in window.pages.items() if p not in shown]
    assert not missing
    assert theme.LINE >= 3
