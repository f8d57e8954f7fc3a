"""Pages of a planned session: what leads a set, the ways out, the day at a glance."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import Any

import pytest
from PySide6.QtCore import Qt

from tests.ui.fakes import FakeWorld, Make, answer_fit, seen
from tests.ui.patient import (
    ENTER,
    EYES,
    SPACE,
    STAND,
    TURNS,
    WALK,
    Person,
    day_ago,
    plan_of,
    through_the_set,
    turned,
    week_ago,
)
from tests.ui.test_window import cut_in, to_exercise
from tracker.plan.asked import asked_of
from tracker.plan.model import Entry, Unlock
from tracker.plan.starter import seated_starter
from tracker.practice.tasks import (
    AskGate,
    AskOpen,
    AskReader,
    AskScores,
    AskSinceLast,
    AskSupport,
    DoSet,
    Over,
    Prepare,
    Rest,
    Settle,
    ShowToday,
)
from tracker.vision.messages import FitFailed
from ui.cards import card_of
from ui.ports import NoBeats
from ui.session.flow import Phase
from ui.session.twice import TWICE_S
from ui.widgets.basic import Button, Rule, Words

UNWELL = "I feel unwell (U)"
Begin = Callable[..., Person]
SHAKE = Entry(
    entry_id="shake", exercise="stand-head-shake", repetitions=10, tempo_bpm=40, eyes="closed"
)


def said(person: Person) -> str:
    """All words on the page."""
    page = person.window.stack.currentWidget()
    return "\n".join(w.text() for w in page.findChildren(Words) if w.isVisible())


def offered(person: Person) -> list[str]:
    page = person.window.stack.currentWidget()
    return [b.text() for b in page.findChildren(Button) if b.isVisible()]


def after_a_set(person: Person) -> None:
    """From the end of a set to the rest before the next."""
    person.answer_set()
    person.wait(11)
    person.press("1", ENTER)
    assert isinstance(person.director.task, Settle)
    person.choose("I feel as usual again")


# --- what leads a set ---


def silent(begin: Begin, *entries: Entry) -> Person:
    person = begin(plan_of(*entries))
    person.director._world.beats = NoBeats()
    person.begin_day()
    assert isinstance(person.director.task, AskReader)
    return person


def test_with_a_reader_alone_no_beats_are_promised(begin: Begin) -> None:
    person = silent(begin, SHAKE)
    assert "can't play a sound" in said(person)
    person.choose("Yes")  # somebody reads
    person.choose("Yes")  # the helper is there
    assert isinstance(person.director.task, Prepare)
    assert "beats" not in said(person)
    assert "No sound plays" in said(person) and "even pace" in said(person)


def test_with_sound_the_beats_are_announced(begin: Begin) -> None:
    person = begin(plan_of(SHAKE))
    person.begin_day()
    person.choose("Yes")
    person.choose("Yes")
    assert "Slow beats lead you in" in said(person) and "No sound" not in said(person)


def test_a_sound_that_was_not_heard_promises_nothing_either(begin: Begin) -> None:
    person = begin(plan_of(STAND))
    person.begin_day()
    person.choose("No")
    assert "can't play a sound" not in said(person)
    person.choose("Yes")
    person.choose("Yes")
    assert isinstance(person.director.task, Prepare) and "beats" not in said(person)


# --- since when something is new ---


@pytest.mark.parametrize(
    ("been_here", "asked"),
    [
        ("never", "Did any of this start or happen not long ago?"),
        ("nothing begun", "Did any of this start or happen not long ago?"),
        ("practised", "Is any of this new since last time?"),
    ],
)
def test_nobody_is_asked_about_a_last_time_that_never_was(
    begin: Begin, fake: FakeWorld, been_here: str, asked: str
) -> None:
    """The program's own rule; its words, since a wrong one would still be a question."""
    fake.history.append(week_ago("another plan"))
    if been_here != "never":
        fake.history.append(week_ago("p1"))
    if been_here == "nothing begun":
        fake.history[-1].exercises.clear()
    person = begin(plan_of(TURNS))
    page: Any = person.window.pages["gate"]
    assert person.window.stack.currentWidget() is page and page.question.text() == asked
    person.press("u", ENTER)
    assert page.question.text() == "Is any of this new just now?"


# --- a set-up that could not be kept ---


@pytest.fixture
def full_disk(fake: FakeWorld, monkeypatch: pytest.MonkeyPatch) -> None:
    def keep(*_: Any) -> None:
        raise OSError(28, "No space left on device", "/home/somebody/profile.npz")

    monkeypatch.setattr(fake, "_keep", keep)


@pytest.mark.usefixtures("full_disk")
def test_a_set_up_that_was_not_kept_is_said_at_the_end(begin: Begin) -> None:
    person = begin(plan_of(TURNS))
    person.get_in_place(1)
    assert "kept" not in said(person)
    through_the_set(person)
    after_a_set(person)
    assert person.director.phase == Phase.summary
    assert "could not be kept (the disk is full)" in said(person)
    assert "/home" not in said(person)


@pytest.mark.usefixtures("full_disk")
def test_a_set_up_that_was_not_kept_is_said_once(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_exercise(window, fake)
    kept: Any = window.pages["summary"].kept  # type: ignore[attr-defined]
    window.director.stop()
    window.refresh()
    assert kept.isVisible()
    window.director.again()
    assert window.director.phase == Phase.choose
    window.director.start_exercise(replace(window.director.dose or _no_dose()))
    window.director.stop()
    window.refresh()
    assert window.director.phase == Phase.summary and not kept.isVisible()


def _no_dose() -> Any:
    from ui.session.flow import Dose

    return Dose("turns-on-target", 3, 60.0)


def test_of_a_set_up_that_was_kept_nothing_is_said(begin: Begin) -> None:
    person = begin(plan_of(TURNS))
    person.get_in_place(1)
    person.director.end_today()
    person.settle()
    assert person.director.phase == Phase.summary
    assert "could not be kept" not in said(person)


# --- the ways out ---


def pages_before_the_set_up(person: Person) -> Iterator[None]:
    """Each page from the safety questions to the camera, one after another."""
    yield
    person.none_of_these()
    yield
    person.press("1", ENTER)
    yield
    person.choose("Begin")
    yield
    person.choose("I am in place")
    person.measured(0.5, seen)
    yield


def test_every_page_of_a_session_offers_to_say_one_is_unwell(begin: Begin) -> None:
    person = begin(plan_of(TURNS, STAND, WALK))
    seen_at: list[str] = []

    def look() -> None:
        task, phase = person.director.task, person.director.phase
        name = type(task).__name__ if phase == Phase.asking else str(phase)
        seen_at.append(name)
        person.settle()
        assert UNWELL in offered(person), name
        # By Tab, too, without the key.
        person.find(UNWELL)
        person.window.stack.currentWidget().enter()  # type: ignore[attr-defined]

    for _ in pages_before_the_set_up(person):
        look()
    page: Any = person.window.pages["camera"]
    person.choose(page.next.text())
    look()
    while person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    look()
    person.fake.service.news.append(FitFailed("Not seen."))
    person.director.tick()
    look()
    person.choose("Repeat the set-up")
    person.director.tick()
    while person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    answer_fit(person.fake.service, person.director)
    look()
    person.measured(3.2, seen)
    look()
    person.press(SPACE)
    look()
    person.press(SPACE)
    person.measured(3.2, seen)
    turned(person, 8.0)
    look()
    person.choose("Clear")
    look()
    person.wait(11)
    look()
    person.press("1", ENTER)
    look()
    person.choose("I feel as usual again")
    look()
    person.choose("Go on now")
    look()
    person.choose("Yes")
    look()
    person.choose("No")
    person.choose("Yes")  # who reads
    person.choose("Yes")
    person.choose("I am in place")
    person.wait(10.5)
    look()
    expected = """AskGate AskScores ShowToday Prepare camera setup fitting setup_failed countdown
        exercise paused AskAfterSet Wait AskScores Settle Rest AskSound AskSupport DoSet"""
    assert seen_at == expected.split()


@pytest.mark.parametrize("where", ["gate", "scores", "camera", "setup", "fitting", "failed"])
def test_unwell_by_button_asks_and_ends(begin: Begin, where: str) -> None:
    person = begin(plan_of(TURNS))
    if where != "gate":
        person.none_of_these()
    if where not in ("gate", "scores"):
        person.press("1", ENTER)
        person.choose("Begin")
        person.choose("I am in place")
        person.measured(0.5, seen)
    if where in ("setup", "fitting", "failed"):
        page: Any = person.window.pages["camera"]
        person.choose(page.next.text())
        person.measured(5.0, seen)
    while where in ("fitting", "failed") and person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    if where == "failed":
        person.fake.service.news.append(FitFailed("Not seen."))
        person.settle()
    person.choose(UNWELL)
    # Where nothing moves, and no set was begun, it is asked once whether it is meant.
    still = where in ("gate", "scores", "camera")
    assert person.window.covering() == ("meant" if still else "")
    if still:
        person.choose(UNWELL)
    task = person.director.task
    assert isinstance(task, AskGate) and task.because == "unwell"
    person.none_of_these()
    assert isinstance(person.director.task, Over) and not person.director.camera_on
    person.choose("Show what I did")
    assert person.director.saved is not None
    assert person.director.saved.summary["ended"] == "stopped_unwell"


@pytest.mark.parametrize("where", ["gate", "scores", "since last"])
def test_one_may_end_for_today_while_being_asked(begin: Begin, fake: FakeWorld, where: str) -> None:
    if where == "since last":
        fake.history.append(day_ago("p1"))
    person = begin(plan_of(TURNS))
    if where != "gate":
        person.none_of_these()
        wanted = AskSinceLast if where == "since last" else AskScores
        assert isinstance(person.director.task, wanted)
    person.choose("End for today")
    assert person.director.phase == Phase.summary
    assert person.director.saved is not None
    assert person.director.saved.summary["ended"] == "stopped"


@pytest.mark.parametrize("back", ["esc", "button"])
def test_a_stray_key_before_the_first_set_or_after_a_good_session_closes_no_day(
    begin: Begin, fake: FakeWorld, back: str
) -> None:
    """The therapist would be told of somebody unwell, and nothing could be practised today."""

    def stray() -> None:
        task, page = person.director.task, person.window.stack.currentWidget()
        person.press("u")
        assert person.window.covering() == "meant" and not cut_in(person.window)
        person.press(Qt.Key.Key_Escape) if back == "esc" else person.choose(
            "Pressed by mistake: go back"
        )
        assert person.director.task is task and person.window.stack.currentWidget() is page
        person.wait(TWICE_S)

    person = begin(plan_of(TURNS, EYES))
    for _ in pages_before_the_set_up(person):
        stray()
    page: Any = person.window.pages["camera"]
    person.choose(page.next.text())
    while person.director.phase == Phase.setup:
        person.measured(1.0, seen)
    answer_fit(fake.service, person.director)
    person.settle()
    person.measured(3.2, seen)
    turned(person, 8.0)
    person.answer_set()
    person.director.end_today()
    person.settle()
    assert person.director.phase == Phase.summary
    stray()
    assert len(fake.recordings) == 1
    assert person.director.saved is not None
    assert person.director.saved.summary["ended"] == "stopped"


def test_after_a_set_it_is_not_asked_whether_it_is_meant(begin: Begin) -> None:
    person = begin(plan_of(TURNS, EYES))
    person.get_in_place(1)
    person.measured(3.2, seen)
    turned(person, 8.0)
    person.answer_set()
    person.press("u")
    task = person.director.task
    assert isinstance(task, AskGate) and task.because == "unwell"


def test_a_hand_that_shakes_does_not_pass_over_the_questions(begin: Begin) -> None:
    person = begin(plan_of(TURNS))
    person.begin_day()
    person.press("u", "u")
    assert isinstance(person.director.task, Prepare) and person.window.covering() == "meant"
    person.wait(2.0)
    person.press("u", "u")
    assert isinstance(person.director.task, AskGate)
    person.wait(2.0)
    person.press("u")
    assert isinstance(person.director.task, Over)


def test_a_key_held_down_acts_once(make: Make) -> None:
    window = make()
    repeats = {s.key().toString(): s.autoRepeat() for s, _ in window._shortcuts}
    assert not repeats["U"] and not repeats["Esc"] and repeats["Ctrl++"]


def test_one_may_end_for_today_from_within_a_set(begin: Begin) -> None:
    person = begin(plan_of(WALK, TURNS))
    person.begin_day()
    for answer in ("Yes", "Yes", "Yes", "I am in place"):
        person.choose(answer)
    person.wait(15.0)
    assert isinstance(person.director.task, DoSet)
    person.choose("End for today")
    assert person.director.phase == Phase.summary
    assert person.director.saved is not None
    summary = person.director.saved.summary
    assert summary["ended"] == "stopped"
    assert [e["entry_id"] for e in summary["exercises"]] == ["walk"]


# --- the day at a glance ---


def test_the_day_is_shown_with_doses_what_waits_and_the_therapists_words(begin: Begin) -> None:
    later = Unlock(condition="Steady.", after="stand", sessions=3, rise_most=0)
    tandem = Entry(entry_id="tandem", exercise="stand-tandem", seconds=20, unlock_after=later)
    moving = Entry(entry_id="x2", exercise="turns-x2", repetitions=10, posture="standing")
    person = begin(plan_of(TURNS, STAND, SHAKE, tandem, moving, words="Go slowly this week."))
    person.none_of_these()
    person.press("1", ENTER)
    assert isinstance(person.director.task, ShowToday)
    text = said(person)
    assert "From your therapist: Go slowly this week." in text
    coming, waits = text.split("Not today:")
    assert "1.  Turn your head, eyes on the target: 3 times" in coming
    assert "2.  Stand in the corner: 10 seconds" in coming
    assert "3.  Stand and turn your head: 10 times, eyes closed" in coming
    assert "4." not in coming
    assert "Stand heel to toe: This one comes later." in waits
    assert "Head and target move apart: The screen can show this one only while" in waits


@pytest.mark.parametrize(
    ("exercise", "seat_mm", "told"),
    [
        # Words and figure agree where a screen at arm's length is about as far.
        ("turns-on-target", 750.0, "at arm's length from the screen, about 75 cm"),
        ("turns-on-target", 600.0, "at arm's length from the screen, about 60 cm"),
        ("turns-on-target", 500.0, "Sit on a firm chair, about 50 cm"),
        ("turns-on-target", 900.0, "Sit on a firm chair, about 90 cm"),
        # An arm held out, or a body bent down, needs room before the camera.
        ("near-far", 750.0, "further back for this one, on a firm chair, about 100 cm"),
        ("floor-reach", 750.0, "further back for this one, on a firm chair, about 90 cm"),
        ("hand-toss", 750.0, "further back for this one, on a firm chair, about 90 cm"),
        # Who sits far already stays there.
        ("floor-reach", 1200.0, "Sit on a firm chair, about 120 cm"),
    ],
)
def test_one_is_told_how_far_from_the_screen_to_sit(
    exercise: str, seat_mm: float, told: str
) -> None:
    plan = plan_of(Entry(entry_id="e", exercise=exercise, repetitions=3), seat_distance_mm=seat_mm)
    card = card_of(Prepare(asked=asked_of(plan.entries[0])), plan)
    assert [told in line for line in card.lines].count(True) == 1


@pytest.mark.parametrize("eyes", ["open", "closed"])
@pytest.mark.parametrize("exercise", ["stand", "stand-head-shake", "weight-shift", "ankle-sway"])
def test_a_mark_is_looked_at_until_the_eyes_are_to_be_shut(exercise: str, eyes: str) -> None:
    plan = plan_of(Entry.model_validate({"entry_id": "e", "exercise": exercise, "eyes": eyes}))
    card = card_of(Prepare(asked=asked_of(plan.entries[0])), plan)
    assert any("look at a mark on the wall" in line.lower() for line in card.lines)
    assert any("Until it begins" in line for line in card.lines) == (eyes == "closed")


HELP = "Call for emergency help now: 112. Do not practise today."


@pytest.mark.parametrize(
    ("ended", "because", "first"),
    [
        ("red_flag", "chest_pain", HELP),
        ("stopped_unwell", "chest_pain", HELP),
        ("red_flag", "neck_pain", "Do not practise today. Call your therapist first."),
        ("red_flag", "positional_spin", "That is all for today"),
        ("stopped_unwell", None, "That is all for today"),
        ("possible_fall", "no_answer", "The number for help: 112"),
        ("possible_fall", "not_well", "The number for help: 112"),
        ("possible_fall", "fine", "That is all for today"),
        ("possible_fall", "chest_pain", HELP),
    ],
)
def test_whom_to_call_is_the_title_of_an_end(ended: str, because: str | None, first: str) -> None:
    plan = plan_of(TURNS, emergency_number="112")
    card = card_of(Over(ended=ended, because=() if because is None else (because,)), plan)
    assert card.title == first
    assert first not in card.lines


@pytest.mark.parametrize(("seconds", "long"), [(10, "a minute"), (600, "10 minutes")])
def test_the_day_says_how_long_it_takes(begin: Begin, seconds: int, long: str) -> None:
    person = begin(plan_of(Entry(entry_id="stand", exercise="stand", seconds=seconds)))
    person.none_of_these()
    person.press("1", ENTER)
    assert f"Exercises and rests take about {long}." in said(person)


def test_a_day_with_nothing_to_do_says_so(begin: Begin) -> None:
    person = begin(
        plan_of(Entry(entry_id="x2", exercise="turns-x2", repetitions=10, posture="standing"))
    )
    person.none_of_these()
    person.press("1", ENTER)
    assert "Nothing in your plan can be done today." in said(person)
    person.choose("Go on")
    assert person.director.phase == Phase.summary


def test_what_is_passed_over_on_the_way_is_said_on_the_next_page_once(begin: Begin) -> None:
    moving = Entry(entry_id="x2", exercise="turns-x2", repetitions=10, posture="standing")
    person = begin(plan_of(moving, STAND, TURNS, EYES))
    person.begin_day()
    # The glance has said this one already.
    assert "Left out" not in said(person)
    person.choose("Yes")
    assert isinstance(person.director.task, AskSupport)
    person.choose("No")
    assert isinstance(person.director.task, Prepare)
    assert "Left out today: Stand in the corner." in said(person)
    person.choose("Not this one")
    assert isinstance(person.director.task, Prepare) and "Left out" not in said(person)


def test_what_the_patient_has_declined_is_not_held_against_them(
    begin: Begin, fake: FakeWorld
) -> None:
    met = Unlock(condition="Steady.", after=None, met_on="2026-01-01")
    person = begin(
        plan_of(Entry(entry_id="new", exercise="stand", seconds=10, unlock_after=met), TURNS, EYES)
    )
    person.begin_day()
    assert isinstance(person.director.task, AskOpen)
    person.choose("No")
    assert isinstance(person.director.task, Prepare) and "Left out" not in said(person)
    person.choose("Not this one")
    assert isinstance(person.director.task, Prepare) and "Left out" not in said(person)


# --- getting into place, and the rest ---


def test_the_bar_marks_cautions_alone_and_they_stand_under_the_task(begin: Begin) -> None:
    person = begin(plan_of(TURNS))
    person.begin_day()
    page: Any = person.window.pages["task"]
    assert isinstance(person.director.task, Prepare) and page.card.cares
    bars = [r for r in page.findChildren(Rule) if r.isVisible()]
    marked = [w.text() for bar in bars for w in bar.findChildren(Words)]
    assert marked == list(page.card.cares)
    order = [w.text() for w in page.findChildren(Words) if w.text() in (*marked, *page.card.lines)]
    heights = {w.text(): w.mapTo(page, w.rect().topLeft()).y() for w in page.findChildren(Words)}
    by_height = sorted(order, key=lambda text: heights[text])
    assert by_height == [*page.card.lines[:2], *marked, *page.card.lines[2:]]


def test_a_rest_can_be_cut_short(begin: Begin) -> None:
    person = begin(plan_of(TURNS, EYES, rest_s=60))
    person.get_in_place(1)
    through_the_set(person)
    after_a_set(person)
    assert isinstance(person.director.task, Rest)
    person.wait(10)
    # Enter once more after an answer must not take the rest away.
    person.press(ENTER, SPACE)
    assert isinstance(person.director.task, Rest)
    person.choose("Go on now")
    assert isinstance(person.director.task, Prepare)
    assert person.director.entry is not None and person.director.entry.entry_id == "eyes"


# --- the built-in starter ---


def test_the_seated_starter_is_on_the_first_page_and_its_history_counts(
    make: Make, fake: FakeWorld
) -> None:
    window = make()
    person = Person(window, fake)
    person.settle()
    person.choose("Seated starter")
    assert "only if your therapist" in said(person)
    fake.history.append(day_ago(seated_starter().plan_id))
    person.choose("Practise the starter")
    plan = person.director.plan
    assert plan is not None and plan == seated_starter()
    person.none_of_these()
    # It was done before: how that went is asked.
    assert isinstance(person.director.task, AskSinceLast)


def test_a_plan_of_ones_own_takes_the_place_of_the_starter(make: Make, fake: FakeWorld) -> None:
    window = make()
    person = Person(window, fake)
    person.settle()
    person.choose("Seated starter")
    window.pages["welcome"].offer(plan_of(TURNS))
    person.settle()
    assert "Practise my plan" in offered(person)
    assert not {"Seated starter", "Practise the starter"} & set(offered(person))
