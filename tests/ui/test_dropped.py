"""A sudden drop of the head, in the window: the question stands there, with a voice and without."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from tests.ui.fakes import FakeWorld, ScreenReader, Voice, turning
from tests.ui.patient import ENTER, SPACE, TURNS, Person, plan_of
from tests.ui.pictures import keep
from tests.ui.test_planned_voice import SHAKE, falling_from, into_set, still
from tests.ui.test_window import cut_in
from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.gate import EMERGENCY, SPIN
from tracker.plan.model import Entry
from tracker.practice.dropped import WELL_S
from tracker.practice.tasks import AskAfterSet, AskGate, AskWell, DoSet, Over, Prepare, Wait
from tracker.sample import Sample
from tracker.vision.messages import Measured
from ui import theme, words
from ui.cards import card_of
from ui.pages.well import WellPage
from ui.ports import NoVoice
from ui.session.leaving import UNSEEN_S
from ui.session.setup import OFFERED
from ui.session.twice import TWICE_S
from ui.widgets.basic import Words

Begin = Callable[..., Person]
Make = Callable[[float], Sample]


def fall(person: Person) -> WellPage:
    """The head drops, and the question has come."""
    person.measured(4.0, falling_from(person.fake.service.time_s + 2.0))
    while person.director.came_unseen:
        person.wait(0.25)
    page = person.window.stack.currentWidget()
    assert isinstance(page, WellPage), person.director.task
    return page


def stands_on(page: WellPage) -> list[Words]:
    """What is to be read on it, without scrolling."""
    seen = [w for w in page.findChildren(Words) if w.isVisible() and w.text()]
    assert page.scroll.verticalScrollBar().maximum() == 0
    return seen


# --- however it is led ---


@pytest.mark.parametrize("posture", ["standing", "sitting"])
@pytest.mark.parametrize("sounds", ["voice", "beats", "silence"])
@pytest.mark.parametrize("voice", ["there", "none", "gone"])
def test_the_question_stands_on_the_screen_large(
    begin: Begin, fake: FakeWorld, posture: str, sounds: str, voice: str
) -> None:
    """``gone``: it speaks at first, and dies in the set."""
    if voice != "none":
        fake.voice = Voice()
    else:
        assert isinstance(fake.world().voice, NoVoice)
    chair = Entry(entry_id="chair", exercise="sit-to-stand", repetitions=5)
    person = begin(plan_of(SHAKE if posture == "standing" else chair))
    person.director.sounds = sounds
    into_set(person)
    if isinstance(fake.voice, Voice):
        fake.voice.spoken.clear()
        fake.voice.usable = voice == "there"
    page = fall(person)
    assert page.question.text() == "Are you all right?"
    assert page.question in stands_on(page) and page.how in stands_on(page)
    # Larger than anything else that is read on a page.
    assert page.question.font().pointSizeF() > theme.font("title", 100).pointSizeF() * 1.5
    assert "Nobody has been called" in page.how.text()
    assert person.fake.beats.sounding is None
    if isinstance(fake.voice, Voice):
        asked = [t for t in fake.voice.texts if t.startswith("Are you all right?")]
        assert len(asked) == (1 if voice == "there" else 0)
    person.press("1")
    assert person.director.task == Over(ended="possible_fall", because=("fine",))


def test_it_is_the_same_in_a_call(begin: Begin, fake: FakeWorld) -> None:
    person = begin(plan_of(SHAKE))
    person.window.switch_sharing()
    into_set(person)
    page = fall(person)
    assert page.question in stands_on(page)
    person.press("2")
    person.none_of_these()
    assert person.director.task == Over(ended="possible_fall", because=("not_well",))


def test_a_helper_who_reads_hears_and_reads_it(begin: Begin, fake: FakeWorld) -> None:
    person = begin(plan_of(SHAKE))
    person.begin_day()
    person.choose("No")  # the sound is not heard
    while not isinstance(person.director.task, Prepare):
        person.choose("Yes")
    person.choose("I am in place")
    person.set_up()
    person.measured(10.3, still)
    assert person.director.led == "silence"
    assert fall(person).question.isVisible()


def test_a_screen_reader_says_it(begin: Begin, fake: FakeWorld) -> None:
    fake.screen_reader = reader = ScreenReader(running=True)
    person = begin(plan_of(SHAKE))
    into_set(person)
    fall(person)
    assert any(t.startswith("Are you all right?") and now for t, now in reader.announced)


def test_outside_a_plan_nothing_is_done_in_which_a_fall_is_looked_for() -> None:
    """There all is done on a chair, and nobody is asked anything: it may stay so only then."""
    for exercise in OFFERED:
        found = CATALOGUE[exercise]
        assert found.posture == "sitting"
        assert "possible_fall" not in {w.name for w in found.watchers}


# --- the answers ---


@pytest.mark.parametrize(
    ("key", "answer", "told"),
    [("1", "fine", "Sit down and rest"), ("2", "not_well", "lie down where you are safe")],
)
def test_one_key_answers_and_it_is_kept(
    begin: Begin, fake: FakeWorld, key: str, answer: str, told: str
) -> None:
    fake.voice = voice = Voice()
    person = begin(plan_of(SHAKE, emergency_number="112"))
    into_set(person)
    fall(person)
    person.wait(3.0)
    assert isinstance(person.director.task, AskWell)
    took_s = person.director.now_s - (person.director.task.until_s - WELL_S)
    person.press(key)
    if answer == "not_well":
        assert isinstance(person.director.task, AskGate)
        person.none_of_these()
    assert person.director.task == Over(ended="possible_fall", because=(answer,))
    page: Any = person.window.pages["task"]
    assert ("112" in page.card.title) is (answer == "not_well")
    lines = " ".join((page.card.title, *page.card.lines))
    assert told in lines and "get help now" in lines and "112" in lines
    # Nothing is sent: who reads that somebody sees it waits for help that does not come.
    assert "Nobody has been called" in lines and "call for help" in lines
    assert lines.index("call for help") < lines.index("when you hand over your sessions")
    assert "Nobody has been called" in voice.texts[-1] and "call for help" in voice.texts[-1]
    person.choose("Show what I did")
    saved = person.director.saved
    assert saved is not None and saved.summary["ended"] == "possible_fall"
    kept = saved.summary["after_drop"]
    assert kept["value"] == answer and kept["seconds"] == pytest.approx(took_s, abs=0.1)


@pytest.mark.parametrize("text", ["I am all right", "I am not well"])
def test_the_buttons_answer_too(begin: Begin, text: str) -> None:
    person = begin(plan_of(SHAKE))
    into_set(person)
    page = fall(person)
    (button,) = [b for b in page.options.values() if text in b.text()]
    button.click()
    person.settle()
    person.none_of_these()
    assert isinstance(person.director.task, Over)


def test_keys_pressed_by_chance_answer_nothing(begin: Begin) -> None:
    person = begin(plan_of(SHAKE))
    into_set(person)
    page = fall(person)
    assert QApplication.focusWidget() is page
    person.press(ENTER, SPACE, "3", "0", "x", ENTER)
    person.press_keys(Qt.Key.Key_1, Qt.KeyboardModifier.ControlModifier)
    person.press(Qt.Key.Key_F1)
    assert isinstance(person.director.task, AskWell)
    assert person.window.stack.currentWidget() is page


def test_no_answer_is_recorded_and_what_to_do_stays_to_be_read(
    begin: Begin, fake: FakeWorld
) -> None:
    fake.voice = voice = Voice()
    person = begin(plan_of(SHAKE))
    into_set(person)
    voice.spoken.clear()
    fall(person)
    person.wait(WELL_S + 1.0)
    assert person.director.task == Over(ended="possible_fall", because=("no_answer",))
    asked = [t for t in voice.texts if t.startswith("Are you all right?")]
    assert len(asked) == 3  # and again, twice
    assert "Nobody has answered" in voice.texts[-1] and "get help" in voice.texts[-1]
    person.wait(600.0)
    page: Any = person.window.pages["task"]
    assert person.window.stack.currentWidget() is page
    assert any("get help" in line for line in page.card.lines)
    person.choose("Show what I did")
    assert person.director.saved is not None
    kept = person.director.saved.summary["after_drop"]
    assert (kept["value"], kept["reason"]) == (None, "no_answer")


@pytest.mark.parametrize(("way", "answer"), [("u", "not_well"), ("esc", None), ("close", None)])
def test_leaving_it_leaves_a_possible_fall(begin: Begin, way: str, answer: str | None) -> None:
    person = begin(plan_of(SHAKE, TURNS))
    into_set(person)
    fall(person)
    if way == "close":
        person.window.close()
    else:
        # The key of the set before would still do nothing.
        person.wait(TWICE_S)
        person.press("u" if way == "u" else Qt.Key.Key_Escape)
        person.none_of_these()
        assert isinstance(person.director.task, Over)
        page: Any = person.window.pages["task"]
        lines = " ".join(page.card.lines)
        # Whoever pressed a key was there.
        assert ("closed the question without saying" in lines) is (way == "esc")
        assert "Nobody has been called" in lines and "Nobody has answered" not in lines
        person.choose("Show what I did")
    assert person.director.saved is not None
    assert person.director.saved.summary["ended"] == "possible_fall"
    kept = person.director.saved.summary["after_drop"]
    assert kept["value"] == answer
    assert kept["reason"] == (None if answer else "closed_unsaid")


@pytest.mark.parametrize("number", ["112", None])
@pytest.mark.parametrize("way", ["2", "u"])
def test_who_is_not_well_comes_by_the_safety_questions_to_the_number_for_help(
    begin: Begin, fake: FakeWorld, way: str, number: str | None
) -> None:
    fake.voice = voice = Voice()
    person = begin(plan_of(SHAKE, emergency_number=number))
    into_set(person)
    fall(person)
    person.press(way)
    assert isinstance(person.director.task, AskGate)
    person.choose(words.say(f"gate.{EMERGENCY[0]}"))
    person.choose("Yes, what I marked")
    over = Over(ended="possible_fall", because=("not_well", EMERGENCY[0]))
    assert person.director.task == over
    page: Any = person.window.pages["task"]
    line = page.title.text()
    assert page.card.lines == ()
    assert "Call for emergency help now" in line and "Call for emergency help" in voice.texts[-1]
    assert ("112" in line) is (number is not None) is ("112" in voice.texts[-1])
    keep(person.window, f"well/over-emergency-{number}")


@pytest.mark.parametrize(("yes", "told"), [("fall", "call_therapist"), (SPIN, "sit_and_stop")])
def test_a_graver_answer_takes_nothing_from_what_to_do_after_a_fall(yes: str, told: str) -> None:
    plan = plan_of(SHAKE, emergency_number="112")
    over = Over(ended="possible_fall", because=("not_well", yes))
    card = card_of(over, plan)
    lines = card.lines
    for key in ("over.not_well", "over.possible_fall", f"gate.outcome.{told}"):
        assert words.say(key) in lines
    assert "112" in card.title, "in sight without scrolling"
    assert (words.say("over.fall") in lines) is (yes == "fall")


@pytest.mark.parametrize("falls", [True, False])
def test_a_window_that_stood_still_asks_although_something_else_was_said_since(
    begin: Begin, falls: bool
) -> None:
    """Down and up again, then out of the picture: all of it comes at once."""
    person = begin(plan_of(SHAKE))
    into_set(person)
    service = person.fake.service
    began_s = service.time_s
    down = falling_from(began_s + 1.0)

    def moved(time_s: float) -> Sample:
        past_s = time_s - began_s
        if past_s > 4.0:
            return Sample(time_s, reason="no_face")
        return down(time_s) if falls and past_s < 2.5 else still(time_s)

    while service.time_s < began_s + 6.5:
        service.time_s += 1 / 30
        person.time_s += 1 / 30
        service.news.append(Measured(moved(service.time_s)))
    person.settle()
    (run,) = person.fake.recordings[-1].engine.runs
    assert run.cue is not None and run.cue.code == "not_measured"
    assert ("possible_fall" in {e.code for e in run.events}) is falls
    assert isinstance(person.director.task, AskWell) is falls


def hold_up(person: Person, seconds: float, make: Make) -> None:
    """Samples come while the window stands still."""
    service = person.fake.service
    until_s = service.time_s + seconds
    while service.time_s < until_s:
        service.time_s += 1 / 30
        person.time_s += 1 / 30
        service.news.append(Measured(make(service.time_s)))


@pytest.mark.parametrize("way", ["its end", "pause", "stop", "end for today"])
@pytest.mark.parametrize("how", ["seen", "lost", "none"])
def test_a_window_that_stood_still_asks_however_the_set_was_left_since(
    begin: Begin, way: str, how: str
) -> None:
    """The drop and what the set is left by come in the same hole."""
    person = begin(plan_of(SHAKE))
    into_set(person)
    person.measured(25.0, still)
    fell_s = person.fake.service.time_s + 1.0
    down = falling_from(fell_s)

    def moved(time_s: float) -> Sample:
        if how == "lost" and time_s > fell_s + 0.3:
            return Sample(time_s, reason="no_face")
        return still(time_s) if how == "none" else down(time_s)

    hold_up(person, 8.0 if way == "its end" else 2.5, moved)
    if way == "pause":
        person.press(SPACE)
    elif way != "its end":
        # What has come is taken; the window has not looked at it yet.
        while person.fake.service.news:
            person.director._take(person.fake.service.news.pop(0))
        assert isinstance(person.director.task, DoSet)
        person.director.stop_plan() if way == "stop" else person.director.end_today()
    person.settle()
    (run,) = person.fake.recordings[-1].engine.runs
    assert ("possible_fall" in {e.code for e in run.events}) is (how != "none")
    assert isinstance(person.director.task, AskWell) is (how != "none")
    if how == "none":
        return
    person.press("1")
    assert isinstance(person.director.task, AskWell), "nobody can have read it yet"
    person.wait(UNSEEN_S)
    person.press("1")
    if way == "end for today" and how == "lost":
        assert person.director.ended == "stopped" and person.director.conductor is None
        return
    over = isinstance(person.director.task, Over)
    assert over is (how == "seen")
    person.director.end_today()
    assert person.director.conductor is None or isinstance(person.director.task, Over)


# --- as the set ends ---


@pytest.mark.parametrize("way", ["its end", "stop", "pause"])
@pytest.mark.parametrize("how", ["stays down", "lost", "sits"])
def test_a_drop_that_the_end_of_the_set_cuts_off_is_asked_about(
    begin: Begin, fake: FakeWorld, way: str, how: str
) -> None:
    """It takes half a second more to be told from a bow, and the set is over meanwhile."""
    fake.voice = voice = Voice()
    person = begin(plan_of(SHAKE.model_copy(update={"seconds": 3})))
    into_set(person)
    service = person.fake.service
    now_s, step = service.time_s, person.fake.recordings[-1].live.step
    assert step is not None
    ends_s = step.to_s if way == "its end" else now_s + 1.5
    fell_s = ends_s - 0.25
    deep = 400.0 / 900.0 if how == "sits" else 1.0

    def moved(time_s: float) -> Sample:
        if how == "lost" and time_s > fell_s + 0.35:
            return Sample(time_s, reason="no_face")
        made = falling_from(fell_s)(time_s)
        return replace(made, head_y_mm=deep * made.head_y_mm, neck_y_mm=deep * made.neck_y_mm)

    person.measured(ends_s - now_s - 0.02, moved)
    assert isinstance(person.director.task, DoSet)
    if way == "stop":
        person.press(Qt.Key.Key_Escape)
        assert isinstance(person.director.task, AskAfterSet), "a stop is one at once"
    elif way == "pause":
        person.press(SPACE)
    person.measured(0.4, moved)
    assert isinstance(person.director.task, DoSet) is (way == "pause")
    voice.spoken.clear()
    person.measured(1.5, moved)
    assert isinstance(person.director.task, AskWell) is (how != "sits")
    if how == "sits":
        return
    assert any(t.startswith("Are you all right?") for t in voice.texts)
    # What was on its way to the question before is no answer to this one.
    page: Any = person.window.pages["well"]
    person.press("1")
    page.options["fine"].click()
    assert isinstance(person.director.task, AskWell)
    person.wait(UNSEEN_S)
    person.press("1")
    if how == "stays down":
        assert person.director.task == Over(ended="possible_fall", because=("fine",))
    else:
        # Asked once, and what comes after the set comes as ever.
        person.answer_set()
        person.measured(2.0, still)
        assert isinstance(person.director.task, Wait)
        person.director.end_today()
    person.choose("Show what I did") if how == "stays down" else None
    saved = person.director.saved
    assert saved is not None
    (done,) = saved.summary["exercises"]
    (event,) = [e for e in done["events"] if e["code"] == "possible_fall"]
    assert done["after_drop"]["value"] == "fine"
    assert event["start_s"] < event["end_s"] <= ends_s + 0.4


def test_a_drop_that_comes_out_over_the_safety_questions_takes_no_late_answer(
    begin: Begin,
) -> None:
    person = begin(plan_of(SHAKE))
    into_set(person)
    moved = falling_from(person.fake.service.time_s + 1.25)
    person.measured(1.5, moved)
    person.press(Qt.Key.Key_Escape)
    assert isinstance(person.director.task, AskAfterSet)
    person.director.answer({"clarity": "double"})
    person.settle()
    assert isinstance(person.director.task, AskGate)
    while isinstance(person.director.task, AskGate):
        person.measured(0.1, moved)
    person.press("1")
    assert isinstance(person.director.task, AskWell)
    person.wait(UNSEEN_S)
    person.press("1")
    assert person.director.task == Over(ended="possible_fall", because=("fine",))


@pytest.mark.parametrize("then", ["stays down", "lost"])
def test_who_ends_for_today_while_the_head_drops_is_asked(begin: Begin, then: str) -> None:
    """It is not decided yet, and the answer counts by what is seen of it until then."""
    person = begin(plan_of(SHAKE))
    into_set(person)
    fell_s = person.fake.service.time_s + 5.0
    person.measured(5.5, falling_from(fell_s))
    assert isinstance(person.director.task, DoSet)
    person.director.end_today()
    person.settle()
    assert isinstance(person.director.task, AskWell)
    asked_s = person.director.now_s
    # A second click on its way, or a key: nobody can have read it yet.
    page: Any = person.window.pages["well"]
    page.options["fine"].click()
    person.press("1")
    person.director.answer("fine")
    assert isinstance(person.director.task, AskWell)
    gone = lambda t: Sample(t, reason="no_face")  # noqa: E731
    person.measured(2.0, falling_from(fell_s) if then == "stays down" else gone)
    assert person.director.now_s - asked_s > UNSEEN_S
    person.press("1")
    records = person.fake.recordings[-1].journal.content().records
    kept = [r["value"] for r in records if r.get("about") == "after_drop"]
    assert kept[-1]["answer"] == "fine"
    assert kept[-1]["seen"] is (then == "stays down")
    over = Over(ended="possible_fall", because=("fine",))
    if then == "stays down":
        assert person.director.task == over
        return
    # The wish to leave holds: who is fine is not led on, and is not to say it a second time.
    assert person.director.task is None and person.director.saved is not None
    found = person.director.saved.summary
    assert (found["ended"], found["after_drop"]["value"]) == ("stopped", "fine")


# --- who drops out of the picture ---


def test_who_lets_themselves_drop_out_of_the_picture_and_is_fine_goes_on(begin: Begin) -> None:
    """Fast enough for the watcher of falls, and lost on the way: not seen to stay down."""
    person = begin(plan_of(Entry(entry_id="a", exercise="sit-to-stand", repetitions=20), TURNS))
    into_set(person)
    drops_s = person.fake.service.time_s + 3.0

    def dropping(time_s: float) -> Sample:
        past_s = time_s - drops_s
        if past_s > 0.25:
            return Sample(time_s, reason="no_face")
        height = 300.0 - 1700.0 * max(past_s, 0.0)
        return replace(turning(time_s, 1e9), head_y_mm=height, neck_y_mm=height, head_x_mm=0.0)

    person.measured(5.0, dropping)
    journal = person.fake.recordings[-1].journal.content().records
    assert "possible_fall" in [r["code"] for r in journal if r["kind"] == "said"]
    assert isinstance(person.director.task, AskWell)
    person.wait(UNSEEN_S)
    person.press("1")
    assert not isinstance(person.director.task, Over)
    person.answer_set()
    person.director.end_today()
    assert person.director.saved is not None
    found = person.director.saved.summary
    assert found["after_drop"]["seen"] is False and found["after_drop"]["value"] == "fine"
    assert found["ended"] == "stopped"


# --- who is out of the picture in stands from a chair ---


def test_who_is_not_seen_reads_the_question_until_they_are(begin: Begin, fake: FakeWorld) -> None:
    """Without a voice it was only on the disk."""
    person = begin(plan_of(Entry(entry_id="a", exercise="sit-to-stand", repetitions=20), TURNS))
    into_set(person)
    here = lambda t: replace(turning(t, 1e9), head_y_mm=0.0, head_x_mm=0.0)  # noqa: E731
    person.measured(2.0, here)
    board: Any = person.window.pages["practice"].board  # type: ignore[attr-defined]
    person.measured(10.0, lambda t: Sample(t, reason="no_face"))
    assert board.figure.caption.text() != words.say("cue.possible_fall")
    person.measured(8.0, lambda t: Sample(t, reason="no_face"))
    assert isinstance(person.director.task, DoSet)
    assert board.figure.caption.text() == "Are you all right?"
    assert "sit down on your chair" in board.how.text() and board.how.isVisible()
    person.measured(0.5, here)
    assert board.figure.caption.text() != "Are you all right?"


# --- how it looks ---


@pytest.mark.parametrize("size", [(1366, 768), (1920, 1080)])
@pytest.mark.parametrize("language", ["en", "de", "es", "ar"])
def test_it_is_read_whole_at_twice_the_size(
    make: Callable[..., Any], fake: FakeWorld, size: tuple[int, int], language: str
) -> None:
    window = make(percent=200, language="" if language == "en" else language)
    window.resize(*size)
    page = window.pages["well"]
    window.stack.setCurrentWidget(page)
    for _ in range(5):
        QApplication.processEvents()
    assert isinstance(page, WellPage)
    keep(window, f"well/{language}-{size[0]}")
    assert page.scroll.verticalScrollBar().maximum() == 0
    assert cut_in(window) == []
