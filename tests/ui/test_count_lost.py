"""A seated set whose camera goes: the person counts, or it pauses where that is safer."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from PySide6.QtCore import Qt

from tests.ui.fakes import SIZE, FakeWorld, Voice, seen, turning
from tests.ui.patient import ENTER, TURNS, Person, plan_of, turned
from tests.ui.pictures import keep
from tests.ui.test_camera_lost import GONE, back, in_set, lose, still, told_to_count
from tests.ui.test_planned_pages import after_a_set
from tests.ui.test_window import cut_in
from tracker.exercises.catalogue import CATALOGUE, needs_body
from tracker.plan.model import Entry, Plan
from tracker.practice.tasks import AskAfterSet, DoSet, Wait
from tracker.records.rows import row_of
from tracker.session.flags import COUNT_LOST
from tracker.session.projections import session_record
from tracker.session.summary import summarise
from tracker.vision.messages import SourceState
from ui import words
from ui.app import SMALLEST
from ui.reading import session_rows
from ui.session.flow import Phase
from ui.session.lost import LOST_S

Begin = Callable[..., Person]
SEAT_MM = plan_of(TURNS).seat_distance_mm
#: All whose body is watched while one sits, and one where only the head is.
WATCHED = sorted(e for e in CATALOGUE if needs_body(e))
BENDS = "floor-reach"
#: The keys are out of reach there.
FAR = sorted(e.id for e in CATALOGUE.values() if (e.seat_mm or 0.0) > SEAT_MM)
GOING_ON = [e for e in WATCHED if e not in FAR] + ["turns-on-target"]
GONE_NOW = SourceState.unplugged


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
    lose(person, GONE_NOW, LOST_S - 0.5)
    assert not page.done.isVisible() and words.say("lost.count") not in page.remedy.text()
    person.wait(1.5)
    assert person.director.phase == Phase.exercise and isinstance(person.director.task, DoSet)
    told_to_count(person, voice, GONE_NOW)
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
    lose(person, GONE_NOW, 4.0)
    person.choose("Done")
    person.choose("Clear")
    count = person.window.pages["task"].count
    # A count that nobody gave is none: steps begin at what the camera had counted.
    assert count.isVisible() and count.chosen is None and count.shown.text() == "?"
    person.press(Qt.Key.Key_Up)
    assert count.chosen == counted
    for _ in range(12 - counted):
        person.press(Qt.Key.Key_Up)
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
    lose(person, GONE_NOW, 4.0)
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
        lose(person, SourceState.silent, LOST_S - 0.5)
        back(person)
    assert not practice_page(person).done.isVisible() and not person.director.count_lost


def test_once_it_counts_again_that_is_said(begin: Begin, voice: Voice) -> None:
    person = seated(begin, "shoulders-back")
    page = practice_page(person)
    lose(person, GONE_NOW, 4.0)
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
    lose(person, GONE_NOW, 4.0)
    back(person)
    person.wait(0.5)
    assert voice.texts == []


def test_a_timed_set_ends_by_its_time(begin: Begin) -> None:
    person = seated(begin, "shoulders-back", repetitions=None, seconds=30)
    lose(person, GONE_NOW, 4.0)
    page = practice_page(person)
    assert person.director.phase == Phase.exercise and not page.done.isVisible()
    assert page.remedy.text() == words.say("trouble.unplugged.do")
    person.wait(30.0)
    assert isinstance(person.director.task, Wait)


# --- bends ---


def test_what_is_done_further_back() -> None:
    assert FAR == [BENDS, "hand-toss", "near-far", "near-hold"]


@pytest.mark.parametrize(
    ("exercise", "state"), [*((BENDS, s) for s in GONE), ("near-far", GONE_NOW)]
)
def test_bends_to_the_floor_and_what_is_out_of_reach_pause(
    begin: Begin, voice: Voice, exercise: str, state: SourceState
) -> None:
    person = seated(begin, exercise)
    voice.spoken.clear()
    lose(person, state, LOST_S + 1.0)
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


# --- what the count can't say any more ---


def turning_on(person: Person, seconds: float, start_s: float) -> None:
    person.measured(seconds, lambda t: turning(t, start_s))


def lost_and_back(person: Person, seen_s: float, gone_s: float) -> float:
    """Turns at the beat's pace, with a gap in the middle; gives when they began."""
    start_s = person.fake.service.time_s
    turning_on(person, seen_s, start_s)
    lose(person, GONE_NOW, gone_s)
    assert person.director.count_lost
    back(person)
    return start_s


@pytest.mark.parametrize(("seen_s", "gone_s"), [(6.5, 5.0), (6.5, 10.0), (2.5, 14.0)])
def test_nobody_does_more_than_is_asked_for(
    begin: Begin, fake: FakeWorld, voice: Voice, seen_s: float, gone_s: float
) -> None:
    # Twelve at 60 beats a minute are 24 s, two beats each. The head turns all the while.
    person = seated(begin, "turns-on-target", tempo_bpm=60.0)
    start_s = lost_and_back(person, seen_s, gone_s)
    while isinstance(person.director.task, DoSet) and fake.service.time_s < start_s + 40.0:
        turning_on(person, 0.5, start_s)
    done = (fake.service.time_s - start_s) / 2.0
    assert 10.0 <= done <= 12.0 + 0.25
    # The camera has seen far fewer, and nothing was said from its count.
    assert fake.recordings[-1].repetitions <= 12 - gone_s / 2.0 + 0.5
    assert words.say("say.two_left") not in voice.texts
    assert isinstance(person.director.task, AskAfterSet)
    assert "own_count" in person.director.task.questions


def test_two_more_is_never_said_of_a_count_with_a_gap(
    begin: Begin, fake: FakeWorld, voice: Voice
) -> None:
    # A head ahead of its beat: the camera comes to ten of twelve before the gap's share ends it.
    person = seated(begin, "turns-on-target", tempo_bpm=40.0)
    start_s = lost_and_back(person, 6.5, 2.25)
    while isinstance(person.director.task, DoSet) and fake.service.time_s < start_s + 40.0:
        turning_on(person, 0.5, start_s)
    assert fake.recordings[-1].repetitions == 11
    assert isinstance(person.director.task, AskAfterSet)
    assert words.say("say.two_left") not in voice.texts


def test_without_a_gap_two_more_is_said(begin: Begin, fake: FakeWorld, voice: Voice) -> None:
    person = seated(begin, "turns-on-target", tempo_bpm=60.0)
    turning_on(person, 23.0, fake.service.time_s)
    assert words.say("say.two_left") in voice.texts


def test_time_in_a_pause_is_no_time_to_practise(begin: Begin, fake: FakeWorld) -> None:
    person = seated(begin, "turns-on-target", tempo_bpm=60.0)
    turning_on(person, 4.5, fake.service.time_s)
    lose(person, GONE_NOW, 4.0)
    person.press(Qt.Key.Key_Space)
    assert person.director.phase == Phase.paused
    person.wait(60.0)
    back(person)
    person.press(Qt.Key.Key_Space)
    person.measured(4.0, still)
    assert isinstance(person.director.task, DoSet) and person.director.phase == Phase.exercise


def test_while_it_is_gone_the_beat_alone_comes_to_the_end(begin: Begin) -> None:
    person = seated(begin, "turns-on-target", tempo_bpm=60.0)
    lose(person, GONE_NOW, 20.0)
    assert isinstance(person.director.task, DoSet)
    person.wait(4.0)
    assert isinstance(person.director.task, AskAfterSet)


def test_no_count_stands_at_the_target_any_more(begin: Begin) -> None:
    person = seated(begin, "turns-on-target", tempo_bpm=60.0)
    page = practice_page(person)
    turning_on(person, 2.0, person.fake.service.time_s)
    assert (page.field.state.count, page.field.state.goal) == (1, 12)
    lost_and_back(person, 4.0, 4.0)
    turning_on(person, 3.0, 0.0)
    assert (page.field.state.count, page.field.state.goal) == (None, None)


def test_that_it_is_back_says_to_keep_counting(begin: Begin, voice: Voice) -> None:
    lost_and_back(seated(begin, "shoulders-back"), 2.0, 4.0)
    assert "Keep counting for yourself" in voice.texts[-1] and "Done" in voice.texts[-1]


@pytest.mark.parametrize("lost", [True, False])
def test_nothing_is_told_of_a_set_with_a_gap(begin: Begin, lost: bool) -> None:
    person = seated(begin, "turns-on-target", tempo_bpm=60.0)
    start_s = person.fake.service.time_s
    turning_on(person, 20.0, start_s)
    if lost:
        lose(person, GONE_NOW)
        # The set was measured for more than four fifths of its time.
        person.wait(2.5)
        back(person)
    person.director.set_done()
    told = " ".join(person.director.set_told)
    assert (told == "") is lost and lost is (words.say("ask.did.tempo", tempo=60) not in told)


def test_nothing_is_told_where_little_was_seen(begin: Begin) -> None:
    person = seated(begin, "turns-on-target", tempo_bpm=60.0)
    person.measured(6.0, seen)
    turning_on(person, 6.0, person.fake.service.time_s)
    person.director.set_done()
    assert person.director.set_told == ()


@pytest.mark.parametrize("percent", [100, 200])
def test_who_does_not_know_says_so(begin: Begin, fake: FakeWorld, percent: int) -> None:
    def sized(plan: Plan) -> Person:
        return begin(plan, percent=percent)

    person = seated(sized, "shoulders-back")
    lost_and_back(person, 2.0, 4.0)
    person.choose("Done")
    keep(person.window, f"pages/own-count-{percent}")
    assert not cut_in(person.window)
    person.choose("I don't know")
    assert isinstance(person.director.task, Wait)
    answers = fake.recordings[-1].journal.content().of("answer")
    assert [a["value"] for a in answers if a["about"] == "own_count"] == [None]


def test_a_count_that_nobody_chose_is_not_saved(begin: Begin, fake: FakeWorld) -> None:
    person = seated(begin, "shoulders-back")
    lost_and_back(person, 2.0, 4.0)
    person.choose("Done")
    person.choose("Go on")
    answers = fake.recordings[-1].journal.content().of("answer")
    assert [a["value"] for a in answers if a["about"] == "own_count"] == [None]


@pytest.mark.parametrize("lost", [True, False])
def test_the_count_of_such_a_set_is_in_doubt(begin: Begin, fake: FakeWorld, lost: bool) -> None:
    person = seated(begin, "turns-on-target", tempo_bpm=60.0)
    if lost:
        lost_and_back(person, 6.5, 4.0)
        # A step more of the same set, after a pause.
        person.press(Qt.Key.Key_Space, Qt.Key.Key_Space)
        person.measured(3.2, still)
    turning_on(person, 5.0, fake.service.time_s)
    person.director.set_done()
    content = fake.recordings[-1].journal.content()
    row = row_of(summarise(session_record(content)), "s")
    assert len(row.sets) == 1 + lost
    for done in row.sets:
        assert (COUNT_LOST in done.doubts("repetitions")) is lost
        assert COUNT_LOST not in done.doubts("amplitude_deg.right")


@pytest.mark.parametrize("size", [SIZE, SMALLEST])
@pytest.mark.parametrize("percent", [100, 200])
@pytest.mark.parametrize("exercise", ["shoulders-back", "turns-on-target"])
def test_it_all_stands_on_the_page(
    begin: Begin, size: tuple[int, int], percent: int, exercise: str
) -> None:
    def sized(plan: Plan) -> Person:
        return begin(plan, percent=percent)

    person = seated(sized, exercise)
    person.resize(size)
    lose(person, SourceState.busy, 4.0)
    page = practice_page(person)
    keep(person.window, f"pages/count-lost-{exercise}-{percent}-{size[0]}")
    assert not cut_in(person.window)
    assert page.remedy.height() >= page.remedy.heightForWidth(page.remedy.width())
    for button in (page.stop, page.unwell, page.done, page.pause):
        assert button.isVisible() and page.rect().contains(button.geometry())
