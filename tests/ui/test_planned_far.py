"""What is read from two metres in a planned session, and the count that is never cut."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QApplication

from tests.ui.fakes import FakeWorld, Make, Voice, seen, turning
from tests.ui.patient import (
    SPACE,
    STAND,
    TURNS,
    WALK,
    Person,
    plan_of,
    turned,
)
from tracker.plan.model import Entry
from tracker.practice.tasks import (
    AskAfterSet,
    CountDown,
    DoSet,
    Prepare,
    Wait,
)
from tracker.sample import Sample
from ui import theme
from ui.session.set_clock import SetClock

Begin = Callable[..., Person]
NODS = Entry(entry_id="nods", exercise="nods-together", repetitions=5, tempo_bpm=40)


# --- what is read from afar ---


def in_place_standing(person: Person) -> None:
    person.begin_day()
    person.choose("Yes")
    person.choose("Yes")
    person.choose("I am in place")
    person.set_up()
    assert isinstance(person.director.task, CountDown)


def still(time_s: float) -> Sample:
    return turning(time_s, 1e9)


def test_who_stands_reads_the_time_left_and_what_to_do_from_afar(begin: Begin) -> None:
    person = begin(plan_of(STAND))
    in_place_standing(person)
    board: Any = person.window.pages["practice"].board  # type: ignore[attr-defined]
    person.measured(3.1, seen)
    assert board.isVisible()
    assert (board.figure.figure.text(), board.figure.caption.text()) == ("7", "until it begins")
    person.measured(7.2, still)
    assert isinstance(person.director.task, DoSet)
    person.measured(2.5, still)
    assert (board.figure.figure.text(), board.figure.caption.text()) == ("0:08", "left")
    assert "Look at a mark on the wall, as high as your eyes" in board.how.text()
    assert board.figure.figure.font().pointSizeF() >= theme.font("count", 100).pointSizeF()
    assert theme.size_px("far", 100) >= 72
    assert board.how.font().pointSizeF() >= theme.font("title", 100).pointSizeF()
    person.press(SPACE)
    person.measured(5.0, still)
    assert board.figure.figure.text() == "0:08"


def test_the_figure_changes_once_a_second_and_moves_nothing(begin: Begin) -> None:
    person = begin(plan_of(STAND))
    in_place_standing(person)
    board: Any = person.window.pages["practice"].board  # type: ignore[attr-defined]
    texts, places = [], set()
    for _ in range(60):
        person.measured(0.2, still)
        texts.append(board.figure.figure.text())
        places.add((board.how.x(), board.figure.x(), board.figure.width()))
    assert len(places) == 1
    changes = sum(a != b for a, b in pairwise(texts))
    # Twelve seconds: ten of the countdown, two of the set.
    assert changes <= 12


@pytest.mark.parametrize("size", [(1366, 768), (960, 600)])
def test_the_largest_text_cuts_neither_the_figure_nor_the_way_out(
    make: Make, fake: FakeWorld, size: tuple[int, int]
) -> None:
    window = make(percent=200)
    window.resize(*size)
    window.pages["welcome"].offer(plan_of(STAND))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    in_place_standing(person)
    person.measured(3.0, seen)
    page: Any = window.pages["practice"]
    figure = page.board.figure.figure
    assert figure.fontMetrics().height() <= page.board.height()
    assert figure.font().pointSizeF() >= theme.font("count", 100).pointSizeF()
    how = page.board.how
    assert how.isHidden() or how.heightForWidth(how.width()) <= page.board.height()
    assert how.isHidden() == (size == (960, 600))
    foot = page.unwell.mapTo(window, page.unwell.rect().bottomLeft()).y()
    assert page.unwell.isVisible() and foot <= window.height()


def test_a_count_is_large_where_no_target_is(begin: Begin) -> None:
    person = begin(plan_of(NODS))
    person.get_in_place(1)
    person.measured(3.2, seen)
    start_s = person.fake.service.time_s

    def nodding(time_s: float) -> Sample:
        turn = turning(time_s, start_s)
        pitch = turn.head_yaw_deg
        return replace(
            turn, head_yaw_deg=0.0, head_pitch_deg=pitch, eye_yaw_deg=0.0, gaze_pitch_deg=pitch
        )

    person.measured(5.2, nodding)
    board: Any = person.window.pages["practice"].board  # type: ignore[attr-defined]
    assert (board.figure.figure.text(), board.figure.caption.text()) == ("2", "of 5")
    ink = QPalette.ColorRole.WindowText
    assert board.figure.figure.foregroundRole() == ink
    person.measured(2.0, lambda t: Sample(t, reason="no_face", light=0.4))
    # A count that is not being measured doesn't look like one that is.
    assert board.figure.figure.foregroundRole() != ink


def test_a_target_is_left_alone(begin: Begin) -> None:
    person = begin(plan_of(TURNS))
    person.get_in_place(1)
    board: Any = person.window.pages["practice"].board  # type: ignore[attr-defined]
    assert not board.isVisible()
    person.measured(3.2, seen)
    turned(person, 2.0)
    assert not board.isVisible()


def walking(begin: Begin, entry: Entry) -> Person:
    person = begin(plan_of(entry))
    person.begin_day()
    while not isinstance(person.director.task, Prepare):
        person.choose("Yes")  # the sound, without a voice who reads, the helper
    person.choose("I am in place")
    person.wait(10.2)
    assert isinstance(person.director.task, DoSet)
    return person


def test_an_unwatched_set_shows_its_time_calmly(begin: Begin) -> None:
    person = walking(begin, WALK)
    far: Any = person.window.pages["task"].far  # type: ignore[attr-defined]
    texts = []
    for _ in range(12):
        person.wait(0.25)
        texts.append(far.figure.text())
    assert far.isVisible() and far.caption.text() == "so far"
    # Three seconds.
    assert texts == sorted(texts) and texts[0] == "0:00" and len(set(texts)) in (3, 4)
    person.choose("Done")
    assert isinstance(person.director.task, AskAfterSet) and not far.isVisible()


def test_an_unwatched_set_of_a_time_ends_by_itself(begin: Begin, fake: FakeWorld) -> None:
    fake.voice = Voice()
    person = walking(begin, Entry(entry_id="walk", exercise="walk", seconds=20))
    far: Any = person.window.pages["task"].far  # type: ignore[attr-defined]
    person.wait(5)
    assert far.caption.text() == "left" and far.figure.text() in ("0:15", "0:16")
    person.wait(16)
    assert isinstance(person.director.task, Wait)
    tempo, _ = person.fake.beats.sounding or (0.0, 0.0)
    assert tempo == 180.0


def test_a_set_clock_leaves_pauses_out() -> None:
    clock = SetClock(10.0)
    assert (clock.ran_s(5.0), clock.left_s(5.0)) == (0.0, 10.0)
    clock.go(5.0)
    clock.hold(8.0)
    assert (clock.ran_s(50.0), clock.left_s(50.0)) == (3.0, 7.0)
    clock.go(60.0)
    assert (clock.ran_s(64.0), clock.left_s(64.0), clock.left_s(99.0)) == (7.0, 3.0, 0.0)


# --- the count at targets that lie apart ---


@pytest.mark.parametrize("size", [(1366, 768), (1920, 1080), (960, 600)])
@pytest.mark.parametrize("percent", [100, 200])
def test_the_count_at_the_upper_and_lower_target_is_never_cut(
    make: Make, fake: FakeWorld, percent: int, size: tuple[int, int]
) -> None:
    window = make(percent=percent)
    window.resize(*size)
    for _ in range(4):
        QApplication.processEvents()
    window.pages["welcome"].offer(
        plan_of(Entry(entry_id="up", exercise="eyes-up-down", repetitions=12, tempo_bpm=60))
    )
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.get_in_place(1)
    person.measured(3.3, seen)
    person.measured(1.0, seen)
    field = window.fields.practice
    boxes = field.count_boxes()
    assert field.state.count is not None and len(boxes) == len(field.offsets) == 2
    for box, offset in zip(boxes, field.offsets, strict=True):
        assert field.rect().toRectF().contains(box)
        away = box.center() - field.centre_px(offset)
        limit = field.px_of(2.0 * 2) / 2
        if percent == 100:
            assert (away.x() ** 2 + away.y() ** 2) ** 0.5 <= limit
    if size != (960, 600):
        # Smaller, the two targets themselves come together.
        assert not boxes[0].intersects(boxes[1])
    if percent == 100:
        assert boxes[0].center().y() > field.centre_px(field.offsets[0]).y()
