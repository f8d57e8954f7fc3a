"""A planned session in the window, by keyboard alone, before a world of stand-ins."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest
from PySide6.QtCore import Qt

from tests.ui.fakes import SIZE, FakeWorld, seen, turning
from tests.ui.patient import (
    ENTER,
    EYES,
    SHOULDERS,
    SPACE,
    STAND,
    TURNS,
    WALK,
    Person,
    plan_of,
    through_the_set,
    turned,
)
from tests.ui.pictures import keep
from tests.ui.test_planned_pages import said
from tests.ui.test_window import cut_in
from tracker.plan.gate import QUESTIONS
from tracker.plan.model import Entry
from tracker.practice.tasks import (
    AskAfterSet,
    AskGate,
    AskReader,
    AskScores,
    AskSound,
    AskSupport,
    AskWell,
    CountDown,
    DoSet,
    Over,
    Prepare,
    Rest,
    Settle,
    ShowToday,
    Wait,
)
from tracker.sample import Sample
from ui import words
from ui.ports import NoBeats
from ui.session.flow import Phase
from ui.session.leaving import UNSEEN_S
from ui.session.twice import TWICE_S


def test_from_the_first_question_to_the_saved_summary(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(TURNS, WALK))
    director = person.director
    assert isinstance(director.task, AskGate) and not director.camera_on
    person.none_of_these()
    assert isinstance(director.task, AskScores)
    person.press("2", ENTER)
    assert isinstance(director.task, ShowToday)
    person.choose("Begin")
    assert isinstance(director.task, Prepare)
    assert not director.camera_on
    person.choose("I am in place")
    person.set_up()
    through_the_set(person)
    assert isinstance(director.task, AskAfterSet)
    person.choose("Blurred")
    assert isinstance(director.task, Wait)
    person.wait(11)
    assert isinstance(director.task, AskScores)
    person.press("4", ENTER)
    assert isinstance(director.task, Settle)
    person.wait(30)
    person.choose("I feel as usual again")
    assert isinstance(director.task, Rest)
    person.wait(6)
    assert isinstance(director.task, AskSound)
    assert person.fake.beats.sounding is not None
    person.choose("Yes")
    # No voice is here, and this is led by words.
    assert isinstance(director.task, AskReader)
    person.choose("Yes")
    assert isinstance(director.task, AskSupport)
    person.choose("Yes")
    assert isinstance(director.task, Prepare)
    person.choose("I am in place")
    person.wait(10.5)
    assert isinstance(director.task, DoSet)
    person.wait(20)
    person.choose("Done")
    assert isinstance(director.task, AskAfterSet)
    # No number stands there at first; steps begin at what was asked for.
    person.press(Qt.Key.Key_Up, Qt.Key.Key_Up)
    person.choose("Go on")
    person.wait(11)
    person.press("2", ENTER)
    person.choose("I feel as usual again")
    assert director.phase == Phase.summary
    assert director.saved is not None
    summary = director.saved.summary
    assert summary["ended"] == "finished" and summary["plan_id"] == "p1"
    assert summary["gate"]["outcome"] == "go"
    turns, walk = summary["exercises"]
    assert turns["done"]["repetitions"] == 3 and turns["done"]["measured_fraction"] > 0.9
    assert turns["clarity"]["value"] == "blurred"
    assert turns["symptoms"]["before"] == 2 and turns["symptoms"]["after"] == 4
    assert turns["setup"]["gaze_error_deg"] == 0.7
    assert walk["own_count"]["value"] == 2 and walk["done"]["repetitions"] is None
    assert walk["support"]["confirmed"] is True
    assert not director.camera_on and person.fake.service.stopped
    shown: Any = person.window.pages["summary"]
    assert words.times(3) in [row.value for row in shown._rows]


def test_a_red_flag_ends_it_with_the_number_of_the_clinic(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(TURNS, emergency_number="112"))
    person.find("A sudden bad headache")
    person.press(SPACE)
    person.choose("Yes, what I marked")
    assert isinstance(person.director.task, Over)
    page: Any = person.window.pages["task"]
    assert page.title.text() == "Call for emergency help now: 112. Do not practise today."
    assert not person.fake.services  # the camera was never opened
    person.choose("Show what I did")
    assert person.director.phase == Phase.summary
    assert person.director.saved is not None
    assert person.director.saved.summary["ended"] == "red_flag"
    assert person.director.saved.summary["exercises"] == []


def test_unwell_in_the_middle_of_a_set_stops_everything(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(TURNS, EYES))
    person.get_in_place(1)
    person.measured(3.2, seen)
    turned(person, 2.5)
    person.press("u")
    assert person.fake.beats.sounding is None
    assert isinstance(person.director.task, AskGate)
    person.none_of_these()
    assert isinstance(person.director.task, Over)
    assert person.director.task.ended == "stopped_unwell"
    assert not person.director.camera_on
    person.choose("Show what I did")
    assert person.director.saved is not None
    summary = person.director.saved.summary
    assert summary["ended"] == "stopped_unwell"
    assert summary["exercises"][0]["done"]["duration_s"] == pytest.approx(2.5, abs=0.3)
    assert [row["entry_id"] for row in summary["not_done"]] == ["eyes"]


def test_stop_ends_the_set_and_the_next_stop_asks(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(TURNS, EYES))
    person.get_in_place(1)
    person.measured(3.2, seen)
    turned(person, 2.5)
    person.press(Qt.Key.Key_Escape)
    assert isinstance(person.director.task, AskAfterSet)
    person.wait(TWICE_S)
    person.press(Qt.Key.Key_Escape)
    assert isinstance(person.director.task, AskAfterSet)
    person.choose("End for today")
    assert person.director.phase == Phase.summary
    assert person.director.saved is not None
    assert person.director.saved.summary["ended"] == "stopped"


@pytest.mark.parametrize("steps", range(7))
def test_a_stop_works_wherever_it_comes(begin: Callable[..., Person], steps: int) -> None:
    person = begin(plan_of(STAND, TURNS))
    moves: list[Callable[[], None]] = [
        person.none_of_these,
        lambda: person.press("0", ENTER),
        lambda: person.choose("Begin"),
        lambda: person.choose("Yes"),
        lambda: person.choose("Yes"),
        lambda: person.choose("I am in place"),
    ]
    for move in moves[:steps]:
        move()
    while person.director.phase != Phase.summary:
        before = (person.director.task, person.director.phase)
        person.wait(TWICE_S)
        person.press(Qt.Key.Key_Escape)
        if person.window.covering() == "leave":
            person.choose("End for today")
        if person.director.phase != Phase.summary and isinstance(person.director.task, Over):
            person.press(SPACE)
        assert (person.director.task, person.director.phase) != before
    assert person.director.saved is not None
    assert person.director.saved.summary["ended"] == "stopped"


def test_standing_without_support_is_passed_over_and_said(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(STAND))
    person.begin_day(0)
    if isinstance(person.director.task, AskSound):
        person.choose("Yes")
    assert isinstance(person.director.task, AskSupport)
    person.choose("No")
    assert person.director.phase == Phase.summary
    assert person.director.saved is not None
    (left,) = person.director.saved.summary["not_done"]
    assert left["reasons"] == ["support_not_confirmed"]
    assert not person.fake.services
    # Nothing was done, and that is said, with why.
    shown = said(person)
    assert words.say("summary.nothing_done") in shown
    assert words.say("refused.support_not_confirmed") in shown
    assert words.say("summary.finished_plan") not in shown


def test_without_a_camera_an_entry_can_be_left_out(
    begin: Callable[..., Person], fake: FakeWorld
) -> None:
    fake.cameras.clear()
    person = begin(plan_of(TURNS, WALK))
    person.begin_day(0)
    person.choose("I am in place")
    assert person.director.phase == Phase.camera and person.director.trouble is not None
    person.press(Qt.Key.Key_Escape)
    assert isinstance(person.director.task, Prepare)
    person.choose("Not this one")
    person.choose("Yes")  # the sound
    person.choose("Yes")  # who reads
    person.choose("Yes")  # the helper
    assert isinstance(person.director.task, Prepare)
    assert person.director.entry is not None and person.director.entry.entry_id == "walk"


def test_who_does_not_see_the_screen_hears_the_beginning_and_the_end(
    begin: Callable[..., Person],
) -> None:
    person = begin(plan_of(Entry(entry_id="stand", exercise="stand", seconds=10, eyes="open")))
    person.begin_day(0)
    person.choose("Yes")
    person.choose("Yes")
    person.choose("I am in place")
    person.set_up()
    assert isinstance(person.director.task, CountDown)
    tempo, lasts_s = person.fake.beats.sounding or (0.0, 0.0)
    assert tempo == 60.0 and lasts_s == pytest.approx(10.0, abs=0.5)
    person.measured(10.3, seen)
    assert isinstance(person.director.task, DoSet)
    person.measured(10.5, seen)
    assert isinstance(person.director.task, AskAfterSet)
    assert (person.fake.beats.sounding or (0.0,))[0] == 180.0


def test_who_has_stood_up_is_seen_again_before_the_set_up(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(TURNS, STAND))
    person.get_in_place(0)
    through_the_set(person)
    person.choose("Clear")
    person.wait(11)
    person.press("0", ENTER)
    person.choose("I feel as usual again")
    person.wait(6)
    person.choose("Yes")
    person.choose("Yes")
    first = person.fake.service
    person.choose("I am in place")
    assert first.stopped and person.director.phase == Phase.camera
    person.set_up()
    assert isinstance(person.director.task, CountDown)
    for _ in range(2):  # the countdown, and the ten seconds
        person.measured(10.3, lambda t: turning(t, 1e9))
    assert isinstance(person.director.task, AskAfterSet)
    person.director.end_today()
    assert person.director.saved is not None
    summary = person.director.saved.summary
    assert [e["entry_id"] for e in summary["exercises"]] == ["turns", "stand"]
    assert summary["exercises"][1]["done"]["held_s"] == pytest.approx(10.0, abs=0.5)


def test_an_answer_that_comes_as_the_time_is_up_answers_nothing_else(
    begin: Callable[..., Person],
) -> None:
    person = begin(plan_of(TURNS))
    person.get_in_place(1)
    through_the_set(person)
    person.choose("Clear")
    person.wait(11)
    person.press("1", ENTER)
    assert isinstance(person.director.task, Settle)
    person.fake.service.time_s += 400.0
    person.director.answer(True)
    assert isinstance(person.director.task, Over)
    assert person.director.task.ended == "symptom_rule"


def test_without_a_sound_device_nobody_is_asked_whether_it_was_heard(
    begin: Callable[..., Person],
) -> None:
    person = begin(plan_of(STAND))
    person.director._world.beats = NoBeats()
    person.begin_day(0)
    assert isinstance(person.director.task, AskReader)
    person.choose("No")
    assert person.director.saved is not None
    (left,) = person.director.saved.summary["not_done"]
    assert left["reasons"][0] == "no_voice"


def test_a_pause_keeps_the_count(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(TURNS))
    person.get_in_place(1)
    person.measured(3.2, seen)
    turned(person, 4.3)
    done = person.director.live
    assert done is not None and done.repetitions == 2
    person.press(SPACE)
    assert person.director.phase == Phase.paused
    person.measured(5.0, seen)
    person.press(SPACE)
    assert person.director.phase == Phase.countdown
    person.measured(3.2, seen)
    assert person.director.phase == Phase.exercise
    turned(person, 4.0)
    assert isinstance(person.director.task, AskAfterSet)


def test_shoulders_are_looked_for_in_their_set_alone(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(SHOULDERS, TURNS))
    person.get_in_place(1)
    service = person.fake.service
    # What finds them takes a moment to begin: it does so in the countdown.
    assert isinstance(person.director.task, CountDown) and service.body_on
    person.measured(3.2, seen)
    assert isinstance(person.director.task, DoSet) and service.body_on
    person.director.set_done()
    assert not service.body_on


def test_a_sudden_drop_of_the_head_stops_all_that_sounds(begin: Callable[..., Person]) -> None:
    shake = Entry(entry_id="shake", exercise="stand-head-shake", seconds=30, tempo_bpm=40)
    person = begin(plan_of(shake))
    person.begin_day(0)
    for _ in range(2):  # the sound is heard, the helper is there
        person.choose("Yes")
    person.choose("I am in place")
    person.set_up()
    person.measured(10.3, seen)
    assert isinstance(person.director.task, DoSet)
    fell_s = person.fake.service.time_s + 2.0

    def falling(t: float) -> Sample:
        down_mm = -900.0 * min(max((t - fell_s) / 0.4, 0.0), 1.0)
        return replace(turning(t, 1e9), head_y_mm=down_mm, neck_y_mm=down_mm)

    person.measured(4.0, falling)
    assert isinstance(person.director.task, AskWell)
    assert person.fake.beats.sounding is None
    person.wait(UNSEEN_S)
    person.press("2")
    assert isinstance(person.director.task, AskGate)
    person.none_of_these()
    assert isinstance(person.director.task, Over)
    assert person.fake.beats.sounding is None
    page: Any = person.window.pages["task"]
    assert any("help" in line for line in page.card.lines)
    person.choose("Show what I did")
    assert person.director.saved is not None
    assert person.director.saved.summary["ended"] == "possible_fall"


def test_closing_the_window_saves_what_was_done(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(TURNS))
    person.none_of_these()
    person.press("1", ENTER)
    person.window.close()
    assert person.director.saved is not None
    assert person.director.saved.summary["ended"] == "stopped"
    assert person.director.saved.summary["gate"]["answers"] == dict.fromkeys(QUESTIONS, False)


def test_nothing_is_cut_on_any_task(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(TURNS, STAND, WALK), percent=200)
    faults: list[str] = []
    shots = iter(range(100))

    def look(name: str) -> None:
        person.settle()
        keep(person.window, f"planned/200-{next(shots):02d}-{name}")
        assert person.window.size().toTuple() == SIZE, f"{name} made the window larger"
        faults.extend(f"{name}: {fault}" for fault in cut_in(person.window))

    person.none_of_these()
    person.press("1", ENTER)
    look("today")
    person.choose("Begin")
    look("prepare")
    person.choose("I am in place")
    person.set_up()
    look("countdown")
    person.measured(3.2, seen)
    turned(person, 2.5)
    look("set")
    turned(person, 6.5)
    look("clarity")
    person.choose("Clear")
    look("wait")
    # A key pressed while nothing is asked ends nothing.
    person.press(SPACE, ENTER)
    assert isinstance(person.director.task, Wait)
    person.wait(11)
    look("score")
    person.press("2", ENTER)
    look("settle")
    person.choose("I feel as usual again")
    look("rest")
    person.wait(6)
    look("sound")
    person.choose("Yes")
    look("support")
    person.choose("Yes")
    look("prepare-standing")
    person.choose("Not this one")
    look("reader")
    person.choose("Yes")
    look("helper")
    person.choose("Yes")
    person.choose("I am in place")
    person.wait(10.5)
    look("walk")
    person.choose("Done")
    look("count")
    person.press("u")
    look("unwell")
    person.none_of_these()
    look("over")
    person.choose("Show what I did")
    look("summary")
    assert not faults


def test_an_arm_that_was_not_seen_is_asked_for(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(Entry(entry_id="reach", exercise="floor-reach", repetitions=2)))
    person.get_in_place(0)
    person.measured(3.2, seen)
    assert isinstance(person.director.task, DoSet)
    person.measured(4.0, lambda t: seen(t, head_yaw_deg=0.0, head_y_mm=0.0, eye_open=1.0))
    start_s = person.fake.service.time_s

    def bending(t: float) -> Sample:
        down = max(0.0, math.sin(math.pi * (t - start_s) / 4.0))
        return seen(t, head_yaw_deg=0.0, head_y_mm=-450.0 * down, eye_open=1.0, body_seen=1.0)

    person.measured(32.0, bending)
    assert isinstance(person.director.task, AskAfterSet)
    assert person.director.task.questions == ("arm",)
    person.choose("Both, in turn")
    person.press(Qt.Key.Key_Escape)
    summary = person.fake.recordings[-1].save().summary
    assert summary["exercises"][0]["arm"] == {"value": "both", "reason": None}
