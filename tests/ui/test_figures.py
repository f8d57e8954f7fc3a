"""The drawn movements: one for every exercise, slow, whole, and still when that is wanted."""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from tests.ui.fakes import FakeWorld, Make, Voice, seen
from tests.ui.patient import SHOULDERS, TURNS, Person, plan_of
from tests.ui.test_window import pixels, to_choose
from tracker.exercises.catalogue import CATALOGUE
from tracker.practice.tasks import Prepare
from ui import motion, theme, words
from ui.figures.model import MOST_A_SECOND, Key, Movement, Pose
from ui.figures.movements import MOVEMENTS
from ui.figures.paint import VIEWS, paint
from ui.figures.places import PLACES
from ui.session.flow import Dose, Phase
from ui.settings import Settings
from ui.widgets.moving import MovementPicture

SIDE, MARGIN = 160, 20


def drawn(view: str, pose: Pose, movement: Movement) -> Any:
    """What is drawn of one view, with a margin around it."""
    palette = theme.palette_of(theme.LIGHT)
    whole = SIDE + 2 * MARGIN
    image = QImage(whole, whole, QImage.Format.Format_RGB32)
    image.fill(palette.window().color())
    painter = QPainter(image)
    paint(painter, QRectF(MARGIN, MARGIN, SIDE, SIDE), view, pose, movement, palette)
    painter.end()
    return pixels(image)


# --- the data ---


@pytest.mark.parametrize("exercise", sorted(CATALOGUE))
def test_every_exercise_has_a_slow_movement(exercise: str) -> None:
    movement = MOVEMENTS[exercise]
    assert set(movement.views) <= set(VIEWS) and set(movement.arrows) <= set(movement.views)
    if len(movement.views) > 1:
        assert all(words.has(f"figure.view.{v}") for v in movement.views)
    assert movement.a_second <= MOST_A_SECOND
    assert all(k.hold_s >= 0.5 and k.move_s >= 0.5 for k in movement.keys)
    assert len(movement.stills()) == (2 if movement.moves else 1)


def test_nothing_is_drawn_that_is_no_exercise() -> None:
    assert set(MOVEMENTS) == set(CATALOGUE)


def test_a_movement_goes_gently_and_holds() -> None:
    movement = Movement(("front",), (Key(Pose(yaw=10), 2.0, 1.0), Key(Pose(yaw=-10), 2.0, 1.0)))
    yaws = [movement.pose_at(t)[0].yaw for t in (0.0, 0.1, 1.0, 2.0, 2.9, 4.0, 5.5, 6.0)]
    assert yaws == pytest.approx([-10, -9.88, 0, 10, 10, 0, -10, -10], abs=0.01)
    assert movement.pose_at(2.25)[1] == pytest.approx(0.75)
    assert movement.pose_at(1.0)[1] == 0.0


@pytest.mark.parametrize("exercise", sorted({**MOVEMENTS, **PLACES}))
@pytest.mark.gui
def test_the_drawing_is_whole_and_never_flashes(qapp: Any, exercise: str) -> None:
    movement = {**MOVEMENTS, **PLACES}[exercise]
    for view in movement.views:
        before = None
        for k in range(24):
            pose, _ = movement.pose_at(k * movement.period_s / 24)
            picture = drawn(view, pose, movement)
            ink = (picture != picture[0, 0]).any(axis=2)
            assert ink.mean() > 0.02
            inner = ink[MARGIN - 1 : -MARGIN + 1, MARGIN - 1 : -MARGIN + 1]
            assert ink.sum() == inner.sum(), f"{view} is cut"
            if before is not None:
                # A picture that turned light or dark as a whole would be a flash.
                assert abs(picture.mean() - before.mean()) < 255 * 0.03
            before = picture


@pytest.mark.parametrize("exercise", sorted(k for k, m in MOVEMENTS.items() if m.moves))
@pytest.mark.gui
def test_the_two_moments_of_a_still_drawing_differ(qapp: Any, exercise: str) -> None:
    movement = MOVEMENTS[exercise]
    one, other = (drawn(movement.views[0], p, movement) for p in movement.stills())
    assert (one != other).any(axis=2).sum() > 20


def test_shut_eyes_are_drawn_shut() -> None:
    movement = MOVEMENTS["stand-head-shake"].with_eyes_shut()
    assert {k.pose.lids for k in movement.keys} == {0.0}


# --- the widget ---


class Clock:
    now_s = 0.0

    def __call__(self) -> float:
        return self.now_s


def picture_of(qtbot: QtBot, exercise: str) -> tuple[MovementPicture, Clock]:
    picture, clock = MovementPicture(), Clock()
    qtbot.addWidget(picture)
    picture.clock = clock
    picture.show_exercise(exercise)
    picture.show()
    qtbot.waitExposed(picture)
    return picture, clock


def test_it_begins_with_a_pause_and_then_moves(qtbot: QtBot) -> None:
    picture, clock = picture_of(qtbot, "turns-on-target")
    first = picture.panels()
    clock.now_s = 1.0
    assert picture.panels() == first
    clock.now_s = 2.5
    assert picture.panels() != first
    assert [view for view, _ in first] == ["front", "above"]


def test_it_draws_only_while_something_moves_and_is_seen(qtbot: QtBot) -> None:
    picture, clock = picture_of(qtbot, "turns-on-target")
    clock.now_s = 2.5
    picture._begin()
    assert picture._timer.isActive() and picture._timer.interval() == 50
    picture.set_still(True)
    assert not picture._timer.isActive() and not picture.moves
    assert "does not move" in picture.accessibleDescription()
    picture.set_still(False)
    assert picture._timer.isActive()
    picture.hide()
    assert not picture._timer.isActive()
    picture.show()
    picture.show_exercise("stand")
    assert not picture._timer.isActive()


def test_a_screen_reader_hears_what_is_drawn(qtbot: QtBot) -> None:
    picture, _ = picture_of(qtbot, "head-tilts")
    assert picture.accessibleName() == "Drawing: Tilt your head"
    text = picture.accessibleDescription()
    assert words.say("exercise.head-tilts.how") in text and "moves slowly" in text


def test_it_is_small_and_grows_little(qtbot: QtBot) -> None:
    picture, _ = picture_of(qtbot, "turns-on-target")
    assert picture.side_px == 160
    picture.set_percent(200)
    assert picture.side_px == 190


# --- in the program ---


@pytest.mark.parametrize("entry", [TURNS, SHOULDERS])
def test_it_is_shown_before_a_set(make: Make, fake: FakeWorld, entry: Any) -> None:
    window = make()
    window.pages["welcome"].offer(plan_of(entry))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    box = window.pages["task"].movement
    assert not box.isVisible()
    person.begin_day()
    assert isinstance(person.director.task, Prepare)
    assert box.isVisible() and box.picture.movement == MOVEMENTS[entry.exercise]


def test_one_key_holds_it_still_and_is_remembered(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_choose(window, fake)
    page = window.pages["choose"]
    assert page.movement.picture.moves
    QTest.keyClick(window, Qt.Key.Key_S)
    assert not page.movement.picture.moves and window.settings.motion == "still"
    assert not window.pages["task"].movement.picture.moves
    assert page.movement.hold.text() == "Let it move (S)"
    again = make()
    assert again.pages["choose"].movement.picture.still
    again.pages["choose"].movement.hold.click()
    assert not again.pages["choose"].movement.picture.still


def test_the_key_works_where_a_drawing_is_in_sight_and_is_said(
    make: Make, fake: FakeWorld, voice: Voice
) -> None:
    window = make()
    person = Person(window, fake)
    to_choose(window, fake)
    person.press("s")
    assert window.settings.motion == "still" and voice.texts[-1] == words.say("figure.stills")
    person.press("s")
    assert window.settings.motion == "moving" and voice.texts[-1] == words.say("figure.moves")
    window.director.start_exercise(Dose("turns-on-target", 12, 60.0))
    person.measured(4.0, seen)
    assert window.director.phase == Phase.exercise
    voice.spoken.clear()
    person.press("s")
    assert window.settings.motion == "moving" and not voice.texts


def test_another_exercise_is_another_drawing(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_choose(window, fake)
    page = window.pages["choose"]
    page.choice._group.button(1).click()
    assert page.movement.picture.movement == MOVEMENTS["eyes-side-to-side"]


@pytest.mark.parametrize(
    ("choice", "still"), [("system", True), ("still", True), ("moving", False), ("pink", True)]
)
def test_the_systems_wish_for_less_motion_holds_unless_one_asks(
    monkeypatch: pytest.MonkeyPatch, choice: str, still: bool
) -> None:
    monkeypatch.setattr(motion, "system_wants_still", lambda: True)
    assert motion.is_still(choice) == still


def test_without_such_a_wish_it_moves(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(motion, "system_wants_still", lambda: False)
    assert not motion.is_still("system") and motion.is_still("still")


@pytest.mark.gui
def test_the_system_is_asked(qapp: Any) -> None:
    assert motion.system_wants_still() in (True, False)


def test_a_choice_that_makes_no_sense_is_the_systems(tmp_path: Any) -> None:
    path = tmp_path / "w.ini"
    path.write_text("[General]\nmotion=wild\n", encoding="utf-8")
    assert Settings(path).motion == "system"
