"""Where the keys lie while something goes on by itself: a stray one must not end it."""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.ui.fakes import FakeWorld, Make, seen
from tests.ui.patient import ENTER, SPACE, Person, turned
from tests.ui.test_camera_lost import lose
from tests.ui.test_every_page import WALKS, pages
from tests.ui.test_window import to_exercise
from tracker.practice.tasks import CountDown, DoSet, Rest, Wait
from tracker.vision.messages import SourceState
from ui import words
from ui.app import Window
from ui.session.flow import Phase
from ui.widgets.basic import Button

_BY_ITSELF = {Phase.setup, Phase.fitting, Phase.countdown, Phase.exercise, Phase.saving}


def going_on(window: Window) -> str:
    """What goes on by itself now, whatever nobody presses; empty for nothing."""
    director = window.director
    task = director.task
    if window.covering() == "leave":
        # The keys are on the way back, which ends nothing (test_leaving).
        return ""
    if director.phase in _BY_ITSELF:
        return str(director.phase)
    if isinstance(task, CountDown | DoSet | Rest | Wait) and director.phase == Phase.asking:
        return type(task).__name__
    if director.mark is not None:
        return "mark"
    return "lens" if director.lens.watching else ""


def state_of(window: Window) -> tuple[Any, ...]:
    director = window.director
    return (director.phase, director.task, going_on(window), window.stack.currentWidget())


def stray_faults(window: Window) -> list[str]:
    """What Enter and Space do on a page on which something goes on."""
    what = going_on(window)
    until_said = window.director.until_said
    before, faults = state_of(window), []
    # Space is the pause of a set, by the table of the keys; "Done" the end of one until said.
    keys = [] if until_said else [ENTER] if what == "exercise" else [ENTER, SPACE]
    for key in keys if what else []:
        had = QApplication.focusWidget()
        if had is None:
            return [f"{what}: nothing has the keys"]
        QTest.keyClick(had, key)
        for _ in range(2):
            window.director.tick()
            window.refresh()
            QApplication.processEvents()
        if state_of(window) != before:
            name = had.text() if isinstance(had, Button) else type(had).__name__
            return [f"{what}: {key} on {name!r} leads to {window.director.phase}"]
    return faults


@pytest.mark.slow
def test_no_stray_key_ends_what_goes_on_by_itself(make: Make, fake: FakeWorld) -> None:
    faults: list[str] = []
    met: set[str] = set()
    window = make()
    for which in sorted(WALKS):
        for name in pages(window, fake, which):
            focus = QApplication.focusWidget()
            if focus is None or not focus.isVisible():
                faults.append(f"{which}, {name}: nothing in sight has the keys")
            what = going_on(window)
            met.add(what)
            faults += [f"{which}, {name}: {fault}" for fault in stray_faults(window)]
            if what and state_of(window)[2] != what:
                # The walk can't go on from elsewhere.
                break
        while window.director.phase != Phase.welcome:
            window.director.again()
            window.director.stop()
    assert not faults, "\n".join(faults)
    # Saving is over at once here: no walk comes to see it.
    by_itself = {"setup", "fitting", "countdown", "exercise"}
    assert met >= by_itself | {"", "mark", "lens", "Rest", "Wait", "DoSet"}


def test_the_set_up_is_not_ended_by_its_own_beginning_pressed_twice(
    make: Make, fake: FakeWorld
) -> None:
    person = Person(make(), fake)
    person.director.start()
    person.settle()
    person.measured(0.5, seen)
    person.choose("Start the set-up")
    assert person.director.phase == Phase.setup
    person.press(ENTER, SPACE)
    assert person.director.phase == Phase.setup
    # It can be left by the keys all the same: by its key, and by its button.
    assert isinstance(person.find(words.say("setup.stop")), Button)
    person.press(Qt.Key.Key_Escape)
    assert person.director.phase == Phase.welcome


def test_a_pause_gives_the_keys_to_what_goes_on_and_takes_them_back(
    make: Make, fake: FakeWorld
) -> None:
    window = make()
    to_exercise(window, fake)
    person = Person(window, fake)
    person.settle()
    page: Any = window.pages["practice"]
    assert QApplication.focusWidget() is page
    person.press(SPACE)
    assert person.director.phase == Phase.paused and page.pause.hasFocus()
    person.press(ENTER)
    assert person.director.phase == Phase.countdown and QApplication.focusWidget() is page
    person.press(ENTER)
    assert person.director.phase == Phase.countdown
    person.measured(3.2, seen)
    assert person.director.phase == Phase.exercise and QApplication.focusWidget() is page


def test_done_that_comes_into_a_set_takes_no_keys(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_exercise(window, fake)
    person = Person(window, fake)
    turned(person, 3.0)
    page: Any = window.pages["practice"]
    lose(person, SourceState.unplugged)
    person.wait(4.0)
    assert page.done.isVisible() and QApplication.focusWidget() is page
    person.press(ENTER)
    assert person.director.phase == Phase.exercise
