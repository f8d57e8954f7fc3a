"""A made-up patient before the window: presses keys, moves, lets time pass."""

from __future__ import annotations

import math
from collections.abc import Callable
from datetime import date, timedelta
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from tests.ui.fakes import FakeWorld, answer_fit, feed, seen, turning
from tracker.plan.model import Entry, Plan, SymptomRules
from tracker.practice.tasks import AskAfterSet, AskGate, CountDown, DoSet, ShowToday
from tracker.sample import Sample
from tracker.session.summary_file import Summary
from ui import words
from ui.app import Window
from ui.session.flow import Phase

ENTER, SPACE, TAB = Qt.Key.Key_Return, Qt.Key.Key_Space, Qt.Key.Key_Tab


def plan_of(*entries: Entry, **more: Any) -> Plan:
    values = {"format": "turnpost-plan", "format_version": 1, "plan_id": "p1", "person": "Wren"}
    rules = SymptomRules()
    return Plan.model_validate(
        {
            **values,
            "rest_s": 5,
            "symptom_rules": rules.model_dump(),
            "clearance": [{"item": "seen by a clinician", "cleared": True}],
            "entries": [e.model_dump(exclude_unset=True) for e in entries],
            **more,
        }
    )


TURNS = Entry(entry_id="turns", exercise="turns-on-target", repetitions=3)
EYES = Entry(entry_id="eyes", exercise="eyes-side-to-side", repetitions=3)
WALK = Entry(entry_id="walk", exercise="walk")
STAND = Entry(entry_id="stand", exercise="stand", seconds=10)
SHOULDERS = Entry(entry_id="shoulders", exercise="shoulders-back", repetitions=3)


#: Turns that were done in an earlier session.
DONE = {
    "exercise": "turns-on-target",
    "entry_id": "turns",
    "prescribed": {"posture": "sitting"},
    "done": {"repetitions": 3, "turns": 6, "duration_s": 9.0, "measured_fraction": 1.0},
    **dict.fromkeys(("head", "eyes", "gaze", "stillness", "symptoms")),
    **{k: {"value": None} for k in ("clarity", "eyes_closed_fraction", "sway")},
    **{k: [] for k in ("events", "repetitions_list", "quality", "not_measured")},
}


def earlier(plan_id: str, **more: Any) -> Summary:
    """A finished session of a plan, of no day, in which one exercise was done."""
    return Summary.model_validate(
        {
            "format": "turnpost-session",
            "format_version": 1,
            "session_id": "s0",
            "program_version": "0",
            "ended": "finished",
            "duration_s": 60.0,
            "plan_id": plan_id,
            "setup": {},
            "exercises": [DONE],
            **dict.fromkeys(("person", "started_at", "gate", "symptoms")),
            **more,
        }
    )


def week_ago(plan_id: str) -> Summary:
    """A session of a plan so long ago that the questions of the week are due."""
    day = date.today() - timedelta(days=7)
    return earlier(plan_id, person="Wren", started_at=f"{day}T09:00:00")


def day_ago(plan_id: str) -> Summary:
    """A session of a plan on the day before."""
    return earlier(plan_id, started_at=f"{date.today() - timedelta(days=1)}T09:00:00")


class Person:
    """Somebody before the window: presses keys, moves, lets time pass."""

    def __init__(self, window: Window, fake: FakeWorld) -> None:
        self.window, self.fake, self.director = window, fake, window.director
        self.time_s = 0.0
        self.director.clock = lambda: self.time_s

    def press(self, *keys: Qt.Key | str) -> None:
        for key in keys:
            focus = QApplication.focusWidget() or self.window
            if isinstance(key, str):
                QTest.keyClicks(focus, key)
            else:
                QTest.keyClick(focus, key)
            self.settle()

    def press_keys(self, key: Qt.Key, modifier: Qt.KeyboardModifier) -> None:
        """A key with another one held."""
        QTest.keyClick(QApplication.focusWidget() or self.window, key, modifier)
        self.settle()

    def settle(self) -> None:
        self.director.tick()
        self.window.refresh()
        for _ in range(4):
            QApplication.processEvents()

    def wait(self, seconds: float) -> None:
        """Time passes, with a measuring or without."""
        for _ in range(math.ceil(seconds / 0.25 - 1e-6)):
            if self.fake.services and not self.fake.service.stopped:
                self.fake.service.time_s += 0.25
            self.time_s += 0.25
            self.director.tick()
        self.settle()

    def measured(
        self, seconds: float, make: Callable[[float], Sample], rate_hz: float = 30
    ) -> None:
        service = self.fake.service

        def timed(time_s: float) -> Sample:
            # The clock on the wall goes as the measuring's does.
            self.time_s += 1 / rate_hz
            return make(time_s)

        feed(service, self.director, service.time_s + seconds, timed, rate_hz)
        self.settle()

    def resize(self, size: tuple[int, int]) -> None:
        """Another window in a set: that pauses if it moves the target, and one goes on."""
        self.window.resize(*size)
        self.settle()
        self.director.tick()
        if self.director.paused_by_move:
            self.press(SPACE)
            self.measured(3.2, seen)

    def find(self, text: str) -> QWidget:
        """The button with these words, in English, reached by Tab as a person would."""
        page = self.window.stack.currentWidget()
        named = {words.say(k) for k, english in words.WORDS.items() if english == text}
        for _ in range(40):
            focus = QApplication.focusWidget()
            if focus is not None and getattr(focus, "text", lambda: "")() in (text, *named):
                return focus
            QTest.keyClick(focus or page, TAB)
        raise AssertionError(f"{text!r} can't be reached by Tab")

    def choose(self, text: str) -> None:
        self.find(text)
        self.press(ENTER)

    def answer_set(self) -> None:
        """The questions after a set, each with its first answer."""
        while isinstance(self.director.task, AskAfterSet):
            while self.director.came_unseen:
                self.wait(0.25)
            self.answer_one()

    def answer_one(self) -> None:
        """The question that is asked, with its first answer."""
        page: Any = self.window.pages["task"]
        self.choose(page.card.options[0].text)

    def none_of_these(self) -> None:
        while isinstance(self.director.task, AskGate):
            self.choose("None of these")

    def begin_day(self, score: int = 0) -> None:
        """Nothing is new, this is the score, and what comes today is read."""
        self.none_of_these()
        self.press(str(score), ENTER)
        assert isinstance(self.director.task, ShowToday)
        self.choose("Begin")

    def get_in_place(self, score: int) -> None:
        """The day is begun, and the set-up is gone through."""
        self.begin_day(score)
        self.choose("I am in place")
        self.set_up()

    def set_up(self) -> None:
        """From "I am in place" through the camera and the set-up."""
        assert self.director.phase == Phase.camera
        self.measured(0.5, seen)
        page: Any = self.window.pages["camera"]
        self.choose(page.next.text())
        assert self.director.phase == Phase.setup
        while self.director.phase == Phase.setup:
            # What is fitted is made up; all that is seen of it goes through the engine.
            self.measured(1.0, seen, rate_hz=6)
        answer_fit(self.fake.service, self.director)
        self.settle()


def turned(person: Person, seconds: float) -> None:
    start_s = person.fake.service.time_s
    person.measured(seconds, lambda t: turning(t, start_s))


def through_the_set(person: Person) -> None:
    """The countdown and three turns."""
    assert isinstance(person.director.task, CountDown)
    person.measured(3.2, seen)
    assert isinstance(person.director.task, DoSet)
    assert person.director.phase == Phase.exercise
    turned(person, 8.0)
