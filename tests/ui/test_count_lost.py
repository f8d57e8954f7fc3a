"""A seated set whose camera goes: the person counts, or it pauses where that is safer."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from PySide6.QtCore import Qt

from tests.ui.fakes import SIZE, FakeWorld, Voice
from tests.ui.patient import ENTER, Person, plan_of, turned
from tests.ui.pictures import keep
from tests.ui.test_camera_lost import GONE, back, in_set, lose, still
from tests.ui.test_planned_pages import after_a_set
from tests.ui.test_window import cut_in
from tracker.exercises.catalogue import CATALOGUE, needs_body
from tracker.plan.model import Entry, Plan
from tracker.practice.tasks import AskAfterSet, DoSet, Wait
from tracker.vision.messages import SourceState
from ui import words
from ui.app import SMALLEST
from ui.reading import session_rows
from ui.session_flow import Phase
from ui.session_lost import LOST_S

Begin = Callable[..., Person]
#: All whose body is watched while one sits, and one where only the head is.
WATCHED = sorted(e for e in CATALOGUE if needs_body(e))
BENDS = "floor-reach"
GOING_ON = [e for e in WATCHED if e != BENDS] + ["turns-on-target"]
GONE_NOW = SourceState.unplugged


@pytest.fixture
def voice(fake: FakeWorld) -> Voice:
    fake.voice = voice = Voice()
    return voice


def seated(begin: Begin, exercise: str, **more: object) -> Person:
    return in_set(begin, **{"exercise": exercise, "repetitions": 12} | more)


def practice_page(person: Person) -> Any:
    return person.window.pages["practice"]


def test_what_is_watched_while_one_sits() -> None:
    # What stands or shuts the eyes is paused anyway (test_camera_lost).
    assert {CATALOGUE[e].posture for e in WATCHED} == {"sitting"} and BENDS in WATCHED


@pytest.mark.parametrize("exercise", GOING_ON)
def test_it_goes_on_and_the_person_counts(
    begin: Begin, fake: FakeWorld, voice: Voice, exercise: str
) -> None:
    person = seated(begin, exercise)
    page = practice_page(person)
    assert not page.done.isVisible()
    voice.spoken.clear()
    lose(person, GONE_NOW)
    person.wait(LOST_S - 0.5)
    assert not page.done.isVisible() and words.say("lost.count") not in page.remedy.text()
    person.wait(1.5)
    assert person.director.phase == Phase.exercise and isinstance(person.director.task, DoSet)
    assert page.done.isVisible() and page.remedy.isVisible()
    assert words.say("trouble.unplugged.do") in page.remedy.text()
    assert words.say("lost.count") in page.remedy.text()
    told = [t for t in voice.texts if words.say("lost.count") in t]
    assert len(told) == 1 and words.say("trouble.unplugged") in told[0]
    person.wait(3.0)
    person.choose("Done")
    task = person.director.task
    assert isinstance(task, AskAfterSet) and "own_count" in task.questions
    marks = fake.recordings[-1].journal.content().of("mark")
    assert [m["state"] for m in marks if m["name"] == "count_lost"] == ["unplugged"]


@pytest.mark.parametrize("seen_s", [0.0, 6.5])
def test_the_own_count_is_saved_beside_that_of_the_camera(
    begin: Begin, fake: FakeWorld, seen_s: float
) -> None:
    person = seated(begin, "turns-on-target")
    turned(person, seen_s)
    counted = fake.recordings[-1].repetitions
    assert counted == (3 if seen_s else 0)
    lose(person, GONE_NOW)
    person.wait(4.0)
    person.choose("Done")
    person.choose("Clear")
    count = person.window.pages["task"].count
    assert count.isVisible() and count.value == 12
    person.choose("Go on")
    assert isinstance(person.director.task, Wait)
    person.wait(11)
    person.press("0", ENTER)
    person.choose("I feel as usual again")
    saved = person.director.saved
    assert saved is not None
    (found,) = saved.summary["exercises"]
    assert found["own_count"]["value"] == 12 and (found["done"]["repetitions"] or 0) == counted
    (row,) = session_rows(saved.summary)
    own = words.say("summary.own_count", count=12)
    if found["done"]["repetitions"] is None:
        assert row.value == own
    else:
        assert row.value == words.row_of([words.times(counted), own])


def test_with_its_camera_no_count_is_asked_for(begin: Begin) -> None:
    person = seated(begin, "shoulders-back")
    person.press(Qt.Key.Key_Escape)
    assert not isinstance(person.director.task, AskAfterSet)


def test_the_next_set_is_counted_by_the_camera_again(begin: Begin) -> None:
    one, other = (
        Entry(entry_id=name, exercise=name, repetitions=12)
        for name in ("shoulders-back", "shoulders-forward")
    )
    person = begin(plan_of(one, other))
    person.get_in_place(0)
    person.measured(4.0, still)
    lose(person, GONE_NOW)
    person.wait(4.0)
    assert person.director.count_lost
    person.choose("Done")
    person.choose("Go on")
    back(person)
    after_a_set(person)
    person.wait(6)
    person.choose("I am in place")
    person.measured(4.0, still)
    assert isinstance(person.director.task, DoSet) and person.director.phase == Phase.exercise
    assert not person.director.count_lost and not practice_page(person).done.isVisible()
    person.press(Qt.Key.Key_Escape)
    assert isinstance(person.director.task, Wait)


def test_a_stutter_asks_for_nothing(begin: Begin) -> None:
    person = seated(begin, "shoulders-back")
    for _ in range(3):
        lose(person, SourceState.silent)
        person.wait(LOST_S - 0.5)
        back(person)
    assert not practice_page(person).done.isVisible() and not person.director.count_lost


def test_once_it_counts_again_that_is_said(begin: Begin, voice: Voice) -> None:
    person = seated(begin, "shoulders-back")
    page = practice_page(person)
    lose(person, GONE_NOW)
    person.wait(4.0)
    back(person)
    assert voice.texts[-1] == words.say("lost.again")
    assert page.cue.text() == words.say("lost.again") and not page.remedy.isVisible()
    person.measured(9.0, still)
    # What was missed stays missed: one may still say that it is done.
    assert page.cue.text() != words.say("lost.again") and page.done.isVisible()


def test_who_chose_silence_reads_it(begin: Begin, voice: Voice) -> None:
    person = seated(begin, "shoulders-back")
    person.director.sounds = "silence"
    voice.spoken.clear()
    lose(person, GONE_NOW)
    person.wait(4.0)
    back(person)
    person.wait(0.5)
    assert voice.texts == []


def test_a_timed_set_ends_by_its_time(begin: Begin) -> None:
    person = seated(begin, "shoulders-back", repetitions=None, seconds=30)
    lose(person, GONE_NOW)
    person.wait(4.0)
    page = practice_page(person)
    assert person.director.phase == Phase.exercise and not page.done.isVisible()
    assert page.remedy.text() == words.say("trouble.unplugged.do")
    person.wait(30.0)
    assert isinstance(person.director.task, Wait)


# --- bends ---


@pytest.mark.parametrize("state", GONE)
def test_bends_to_the_floor_pause(begin: Begin, voice: Voice, state: SourceState) -> None:
    person = seated(begin, BENDS)
    voice.spoken.clear()
    lose(person, state)
    person.wait(LOST_S + 1.0)
    assert person.director.phase == Phase.paused and person.director.paused_by_camera
    for key in ("lost.paused", f"trouble.{state}", f"trouble.{state}.do"):
        assert words.say(key) in voice.texts[-1]
    page = practice_page(person)
    assert words.say(f"trouble.{state}.do") in page.board.how.text()
    person.press(Qt.Key.Key_Space)
    assert person.director.phase == Phase.paused
    back(person)
    person.press(Qt.Key.Key_Space)
    person.measured(3.3, still)
    assert person.director.phase == Phase.exercise and not person.director.count_lost


@pytest.mark.parametrize("size", [SIZE, SMALLEST])
@pytest.mark.parametrize("percent", [100, 200])
@pytest.mark.parametrize("exercise", ["shoulders-back", "turns-on-target"])
def test_it_all_stands_on_the_page(
    begin: Begin, size: tuple[int, int], percent: int, exercise: str
) -> None:
    def sized(plan: Plan) -> Person:
        return begin(plan, percent=percent)

    person = seated(sized, exercise)
    person.window.resize(*size)
    person.settle()
    lose(person, SourceState.busy)
    person.wait(4.0)
    page = practice_page(person)
    keep(person.window, f"pages/count-lost-{exercise}-{percent}-{size[0]}")
    assert not cut_in(person.window)
    assert page.remedy.height() >= page.remedy.heightForWidth(page.remedy.width())
    for button in (page.stop, page.unwell, page.done, page.pause):
        assert button.isVisible() and page.rect().contains(button.geometry())
