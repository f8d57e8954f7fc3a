"""A window that is moved, or gets another size, in the middle of a set-up or a set."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.ui.fakes import FakeWorld, Make, Voice, seen
from tests.ui.patient import SPACE, STAND, TURNS, Person, plan_of, turned
from tests.ui.test_camera_lost import back, lose
from tests.ui.test_camera_lost_alone import in_setup
from tests.ui.test_window import cut_in
from tracker.vision.messages import SourceState
from ui import words
from ui.app import Window
from ui.geometry import MOVED_MM, FieldPlace
from ui.session.flow import Dose, Phase
from ui.session.moved import RESTS_S

Begin = Callable[..., Person]
LONGER = TURNS.model_copy(update={"repetitions": 12})
CTRL = Qt.KeyboardModifier.ControlModifier


def move(window: Window) -> None:
    window.move(window.pos() + QPoint(160, 60))


def enlarge(window: Window) -> None:
    window.resize(window.width() + 240, window.height() + 120)


def full(window: Window) -> None:
    # The X server of the tests has nobody who would carry out F11.
    window.setGeometry(window.screen().geometry())


WAYS = pytest.mark.parametrize("way", [move, enlarge, full])


def middle_mm(person: Person) -> tuple[float, float]:
    """Where the middle of the field is, right of and above the camera."""
    window = person.window
    field = window._field()
    middle = field.mapToGlobal(field.rect().center()) - window.screen().geometry().topLeft()
    return window.fields.geometry().to_mm((middle.x(), middle.y()))


def act(person: Person, qtbot: QtBot, way: Callable[[Window], None]) -> None:
    """Change the window, and wait until the system has done it."""
    before = person.window.fields.place_of(person.window._field())
    way(person.window)

    def changed() -> None:
        QApplication.processEvents()
        assert person.window.fields.place_of(person.window._field()).moved_from(before)

    qtbot.waitUntil(changed, timeout=5000)


def in_set(begin: Begin, **more: Any) -> Person:
    person = begin(plan_of(LONGER), **more)
    person.get_in_place(2)
    person.measured(3.2, seen)
    turned(person, 2.0)
    assert person.director.phase == Phase.exercise
    return person


def text_keys(person: Person) -> None:
    for key in (Qt.Key.Key_Plus, Qt.Key.Key_Minus, Qt.Key.Key_0):
        person.press_keys(key, CTRL)


def sizing(person: Person) -> list[bool]:
    return [b.isEnabled() for b in person.window.header.sizing]


# --- a set ---


@WAYS
def test_a_set_pauses_and_goes_on_with_the_new_place(
    begin: Begin, voice: Voice, qtbot: QtBot, way: Callable[[Window], None]
) -> None:
    person = in_set(begin)
    director, page = person.director, person.window.pages["practice"]
    assert director.asked is not None
    was, done = director.asked.step.target_mm, director.live.repetitions
    act(person, qtbot, way)
    person.measured(0.2, seen)
    assert director.phase == Phase.paused
    assert page.cue.text() == words.say("moved.set") == voice.texts[-1]
    assert not cut_in(person.window)
    person.press(SPACE)
    person.measured(3.2, seen)
    assert director.phase == Phase.exercise and director.asked is not None
    now = director.asked.step.target_mm
    to_rest = director._map.to_rest
    assert now == pytest.approx(to_rest(middle_mm(person)), abs=0.5) and now != pytest.approx(
        was, abs=2.0
    )
    # What was done before counts on, and another pause says nothing of the window.
    assert director.live.repetitions == done
    turned(person, 1.0)
    person.press(SPACE)
    assert page.cue.text() == words.say("practice.paused")


def test_so_does_a_set_outside_a_plan(make: Make, fake: FakeWorld, qtbot: QtBot) -> None:
    person = Person(make(), fake)
    person.director.start()
    person.settle()
    person.set_up()
    person.director.start_exercise(Dose("turns-on-target", 12, 60.0))
    person.measured(3.2, seen)
    turned(person, 2.0)
    act(person, qtbot, move)
    person.measured(0.2, seen)
    assert person.director.phase == Phase.paused and person.director.paused_by_move


def test_a_tiny_shift_is_none(begin: Begin) -> None:
    person = in_set(begin)
    px = int((MOVED_MM - 0.5) * person.window.fields.geometry().px_per_mm)
    person.window.move(person.window.pos() + QPoint(px, 0))
    turned(person, 1.0)
    assert person.director.phase == Phase.exercise
    place = FieldPlace(("a", 0, 0), 0.0, 0.0, 100.0, 50.0)
    assert not FieldPlace(("a", 9, 0), 2.9, 0.0, 102.9, 50.0).moved_from(place)
    assert FieldPlace(("a", 9, 0), 3.0, 0.0, 103.0, 50.0).moved_from(place)
    # On another screen the camera is elsewhere.
    assert FieldPlace(("b", 9, 0), 0.0, 0.0, 100.0, 50.0).moved_from(place)
    # A page that is laid out anew in a window that stays is none of this.
    assert not FieldPlace(("a", 0, 0), 0.0, 0.0, 100.0, 40.0).moved_from(place)


def test_a_set_without_a_target_just_goes_on(begin: Begin, voice: Voice, qtbot: QtBot) -> None:
    person = begin(plan_of(STAND))
    person.begin_day(2)
    for _ in range(4):
        if person.director.phase == Phase.camera:
            break
        name = type(person.director.task).__name__
        person.choose({"AskSupport": "Yes", "AskSound": "Yes"}.get(name, "I am in place"))
    person.set_up()
    person.measured(11.0, seen)
    assert person.director.phase == Phase.exercise and not person.director.target_coming
    before = person.window.pos()
    move(person.window)
    qtbot.waitUntil(lambda: person.window.pos() != before, timeout=5000)
    person.measured(1.0, seen)
    assert person.director.phase == Phase.exercise


def test_text_keeps_its_size_in_a_set_and_not_in_a_pause(begin: Begin) -> None:
    person = in_set(begin)
    percent = person.window.appearance.percent
    text_keys(person)
    assert person.window.appearance.percent == percent and sizing(person) == [False, False]
    person.press(SPACE)
    assert sizing(person) == [True, True]
    person.press_keys(Qt.Key.Key_Plus, CTRL)
    assert person.window.appearance.percent > percent


# --- a set-up ---


@WAYS
def test_a_set_up_waits_until_the_window_rests_and_begins_again(
    make: Make, fake: FakeWorld, voice: Voice, qtbot: QtBot, way: Callable[[Window], None]
) -> None:
    person = in_setup(make, fake)
    director, page = person.director, person.window.pages["setup"]
    person.measured(8.0, seen)
    voice.spoken.clear()
    act(person, qtbot, way)
    person.measured(0.2, seen)
    assert director.setup_waits and director.phase == Phase.setup
    assert page.line.text() == words.say("moved.setup")
    assert page.message.text() == words.say("moved.setup_again") and page.message.isVisible()
    assert not cut_in(person.window) and len(voice.texts) == 1
    assert voice.texts[0].startswith(words.say("moved.setup"))
    person.measured(RESTS_S, seen)
    assert not director.setup_waits and director.setup_part[0] == 1
    begun_s = min(a.step.from_s for a in director._asked)
    assert begun_s > fake.service.time_s
    while director.phase == Phase.setup:
        person.measured(1.0, seen)
    steps = fake.service.fit_steps
    assert steps is not None and steps[0].from_s == begun_s
    assert steps[0].model_extra["screen_mm"] == pytest.approx(middle_mm(person), abs=0.5)


def test_a_set_up_waits_as_long_as_the_window_is_dragged(
    make: Make, fake: FakeWorld, qtbot: QtBot
) -> None:
    person = in_setup(make, fake)
    for _ in range(4):
        act(person, qtbot, move)
        person.measured(0.7 * RESTS_S, seen)
        assert person.director.setup_waits
    person.measured(RESTS_S, seen)
    assert not person.director.setup_waits


@pytest.mark.parametrize(
    ("language", "size"), [("ar", (960, 600)), ("es", (1366, 768)), ("de", (960, 600))]
)
def test_a_page_that_lays_itself_out_begins_nothing_again(
    make: Make, fake: FakeWorld, language: str, size: tuple[int, int]
) -> None:
    window = make(language=language, percent=200)
    window.resize(*size)
    person = Person(window, fake)
    person.settle()
    person.director.start()
    person.settle()
    person.measured(0.5, seen)
    person.director.begin_setup()
    person.settle()
    for _ in range(60):
        if person.director.phase != Phase.setup:
            break
        person.measured(1.0, seen)
        assert not person.director.setup_moved
        stood, now = person.director._stood, window.fields.place_of(window.fields.setup)
        # Nor does its target lie elsewhere than where it was asked for.
        assert stood is not None
        assert abs(stood.bottom_mm - now.bottom_mm) < MOVED_MM
        assert abs(stood.top_mm - now.top_mm) < MOVED_MM
    assert person.director.phase == Phase.fitting


def test_a_camera_that_goes_meanwhile_is_waited_for(
    make: Make, fake: FakeWorld, qtbot: QtBot
) -> None:
    person = in_setup(make, fake)
    act(person, qtbot, move)
    lose(person, SourceState.unplugged, 4.0)
    assert person.director.setup_waits and not person.director.setup_moved
    back(person)
    person.measured(0.5, seen)
    assert person.director.phase == Phase.setup and not person.director.setup_waits


def test_text_keeps_its_size_in_a_set_up(make: Make, fake: FakeWorld) -> None:
    person = in_setup(make, fake)
    percent = person.window.appearance.percent
    text_keys(person)
    assert person.window.appearance.percent == percent and sizing(person) == [False, False]
    person.press(Qt.Key.Key_Escape)
    assert sizing(person) == [True, True]
