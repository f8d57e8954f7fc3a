"""What is spoken in a planned session, and when; what leads where there is no voice."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise
from math import isfinite, pi, sin
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent

from tests.ui.fakes import SIZE, FakeWorld, ScreenReader, Voice, seen, turning
from tests.ui.patient import ENTER, SPACE, STAND, TURNS, WALK, Person, plan_of, turned
from tests.ui.test_planned_pages import after_a_set, offered, said
from tests.ui.test_window import cut_in
from tracker.plan.model import Entry
from tracker.practice.tasks import (
    AskAfterSet,
    AskGate,
    AskReader,
    AskSound,
    AskWell,
    CountDown,
    DoSet,
    Prepare,
    Rest,
)
from tracker.sample import Sample
from tracker.vision.messages import Measured
from ui import screen_reader, words
from ui.ports import NoBeats, NoVoice
from ui.session.flow import Phase

Begin = Callable[..., Person]
SIX = TURNS.model_copy(update={"repetitions": 6})
SHUT = Entry(entry_id="shut", exercise="turns-together", eyes="closed", repetitions=3)
SHAKE = Entry(entry_id="shake", exercise="stand-head-shake", seconds=30, tempo_bpm=40)


@pytest.fixture
def voice(fake: FakeWorld) -> Voice:
    fake.voice = voice = Voice()
    voice.clock = lambda: fake.service.time_s if fake.services else 0.0
    return voice


def still(time_s: float) -> Sample:
    return turning(time_s, 1e9)


def into_set(person: Person) -> None:
    person.begin_day()
    while not isinstance(person.director.task, Prepare):
        person.choose("Yes")
    person.choose("I am in place")
    person.set_up()
    person.measured(10.3, still)
    assert isinstance(person.director.task, DoSet)


def falling_from(fell_s: float) -> Callable[[float], Sample]:
    def make(time_s: float) -> Sample:
        down_mm = -900.0 * min(max((time_s - fell_s) / 0.4, 0.0), 1.0)
        return replace(still(time_s), head_y_mm=down_mm, neck_y_mm=down_mm)

    return make


# --- which words, and when ---


def test_seated_the_place_the_start_two_left_and_the_end_are_spoken(
    begin: Begin, voice: Voice
) -> None:
    person = begin(plan_of(SIX, WALK))
    assert voice.prepared >= 1
    person.begin_day()
    name = words.say("exercise.turns-on-target")
    assert voice.texts == [f"{name}. {words.say('ask.place.arm', cm='75')}"]
    person.choose("I am in place")
    person.set_up()
    assert voice.texts[-1] == "It begins in 3 seconds."
    voice.spoken.clear()
    start_s = person.fake.service.time_s
    person.measured(3.2, seen)
    assert voice.texts == ["Begin now."]
    assert voice.spoken[0][0] == pytest.approx(start_s + 3.0, abs=0.1)
    assert person.fake.beats.sounding is not None  # the voice comes with the beats
    began_s = person.fake.service.time_s
    turned(person, 14.0)
    assert isinstance(person.director.task, AskAfterSet)
    (two_s, two), (end_s, end) = voice.spoken[1:]
    assert two == "Only two more." and end == "And stop. This one is done."
    # A repetition takes two seconds.
    assert two_s == pytest.approx(began_s + 8.0, abs=0.6)
    assert end_s == pytest.approx(began_s + 12.0, abs=0.6)
    voice.spoken.clear()
    after_a_set(person)
    assert isinstance(person.director.task, Rest)
    assert voice.texts == ["Now rest for a while."]


def test_a_timed_set_standing_is_led_by_the_voice(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(STAND))
    into_set(person)
    assert voice.texts[-2:] == ["Stand firm. It begins in 10 seconds.", "Begin now."]
    began_s = voice.spoken[-1][0]
    voice.spoken.clear()
    person.measured(10.5, still)
    (half_s, half), (end_s, end) = voice.spoken
    assert half == "Half the time is over."
    assert half_s == pytest.approx(began_s + 5.0, abs=0.2)
    assert end == "And stop. This one is done. Come to the screen once you feel steady."
    assert end_s == pytest.approx(began_s + 10.0, abs=0.2)
    # Whoever hears the beats alone hears the end, too.
    assert (person.fake.beats.sounding or (0.0,))[0] == 180.0


def test_eyes_that_are_shut_are_told_when_to_shut_and_to_open(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(SHUT))
    person.begin_day()
    person.choose("Yes")
    person.choose("I am in place")
    person.set_up()
    assert voice.texts[-1] == "Shut your eyes."
    person.measured(3.2, seen)
    person.press(Qt.Key.Key_Escape)
    assert voice.texts[-2:] == ["Begin now.", "Stopped. Open your eyes."]


def test_a_cue_is_spoken_at_the_turn_at_which_the_engine_says_it(
    begin: Begin, voice: Voice
) -> None:
    person = begin(plan_of(TURNS.model_copy(update={"repetitions": 20})))
    person.get_in_place(1)
    person.measured(3.2, seen)
    voice.spoken.clear()
    start_s = person.fake.service.time_s
    # Small turns, then eyes that leave the target.
    person.measured(8.0, lambda t: turning(t, start_s, 7.0))
    person.measured(8.0, lambda t: replace(turning(t, start_s), gaze_yaw_deg=12.0))
    journal = person.fake.recordings[-1].journal.content().records
    told = [r for r in journal if r["kind"] == "said"]
    assert {r["code"] for r in told} >= {"too_small", "gaze_off_target"}
    for (spoken_s, text), row in zip(voice.spoken, told, strict=True):
        assert text == words.say(f"cue.{row['code']}") + "."
        # The engine dates what it says a moment ahead: its own look-ahead.
        assert abs(spoken_s - row["time_s"]) <= 0.1


def test_a_cue_that_comes_late_is_not_about_now_any_more(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(TURNS.model_copy(update={"repetitions": 20})))
    person.get_in_place(1)
    person.measured(3.2, seen)
    voice.spoken.clear()
    service, start_s = person.fake.service, person.fake.service.time_s
    # The machine stood still for a while, then all news comes at once.
    service.news += [Measured(turning(start_s + k / 30, start_s, 7.0)) for k in range(1, 360)]
    service.time_s += 12.0
    person.settle()
    told = person.fake.recordings[-1].journal.content().of("said")
    assert told and service.time_s - told[-1]["time_s"] > 1.0
    assert voice.texts == []


def test_unwell_stops_what_is_heard_and_says_so(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(TURNS))
    person.get_in_place(1)
    person.measured(3.2, seen)
    turned(person, 1.0)
    person.press("u")
    assert isinstance(person.director.task, AskGate)
    assert voice.texts[-1] == "Stopped. Sit down if you can."
    assert person.fake.beats.sounding is None


def test_a_pause_says_nothing_and_a_cue_from_before_it_is_not_said_after(
    begin: Begin, voice: Voice
) -> None:
    person = begin(plan_of(STAND.model_copy(update={"seconds": 30})))
    into_set(person)
    person.measured(2.0, still)
    voice.spoken.clear()
    person.press(SPACE)
    assert person.director.phase == Phase.paused
    person.measured(20.0, seen)
    assert voice.texts == []
    person.press(SPACE)
    # The way back to the place is as long as at the beginning.
    person.measured(10.3, still)
    assert voice.texts == ["Stand firm. It begins in 10 seconds.", "Begin now."]


def test_closing_the_window_lets_the_voice_go(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(TURNS))
    person.window.close()
    assert voice.closed


# --- one at a time ---


def test_a_graver_word_replaces_and_a_lesser_one_is_left_out(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(SIX))
    person.get_in_place(1)
    person.measured(3.2, seen)
    # "Begin now" doesn't end, as far as anybody knows: neither cues nor "two more" cut in.
    voice.lasts = voice.speaking = True
    person.director._speaking._rank = (3, 0)  # type: ignore[union-attr]
    voice.spoken.clear()
    start_s = person.fake.service.time_s
    person.measured(14.0, lambda t: turning(t, start_s, 7.0))
    assert isinstance(person.director.task, AskAfterSet)
    # Only the end did; nothing was kept for later.
    assert voice.texts == ["And stop. This one is done."]
    voice.speaking = False
    person.wait(3)
    assert voice.texts == ["And stop. This one is done."]


def test_what_is_left_out_for_a_moment_is_said_while_it_still_holds(
    begin: Begin, voice: Voice
) -> None:
    person = begin(plan_of(STAND))
    into_set(person)
    voice.lasts = voice.speaking = True
    voice.spoken.clear()
    person.measured(5.5, still)  # half of it over, while "Begin now" is said
    assert voice.texts == []
    voice.speaking = False
    person.measured(0.2, still)
    assert voice.texts == ["Half the time is over."]


def test_half_way_is_not_said_long_after_it(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(STAND))
    into_set(person)
    voice.lasts = voice.speaking = True
    voice.spoken.clear()
    person.measured(7.6, still)
    voice.speaking = False
    person.measured(1.0, still)
    assert voice.texts == []


def test_half_way_through_bends_the_other_arm_is_asked_for(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(Entry(entry_id="reach", exercise="floor-reach", repetitions=2)))
    person.get_in_place(0)
    person.measured(3.2, seen)
    up = {"head_yaw_deg": 0.0, "eye_open": 1.0, "body_seen": 1.0}
    person.measured(4.0, lambda t: seen(t, head_y_mm=0.0, **up))
    voice.spoken.clear()
    start_s = person.fake.service.time_s

    def bending(t: float) -> Sample:
        # A bend each eight seconds: one to lay it down and one to fetch it are a repetition.
        down = max(0.0, sin(pi * (t - start_s) / 4.0))
        return seen(t, head_y_mm=-450.0 * down, **up)

    person.measured(17.0, bending)
    assert voice.texts == ["That is half. Now with the other arm."]
    assert voice.spoken[0][0] == pytest.approx(start_s + 14.0, abs=2.0)
    # Said again after a pause it would have them change back.
    person.press(SPACE, SPACE)
    voice.spoken.clear()
    person.measured(3.2, lambda t: seen(t, head_y_mm=0.0, **up))
    start_s = person.fake.service.time_s
    person.measured(7.0, bending)
    assert "That is half. Now with the other arm." not in voice.texts
    voice.spoken.clear()
    person.measured(10.0, bending)
    assert voice.texts == ["And stop. This one is done."]


def test_words_about_a_place_end_with_its_page(begin: Begin, voice: Voice) -> None:
    voice.lasts = True
    person = begin(plan_of(TURNS, SIX))
    person.begin_day()
    assert voice.speaking
    person.choose("Not this one")
    # The next place is spoken in place of the first, which nobody goes to.
    assert len(voice.texts) == 2 and voice.speaking
    person.choose("Not this one")
    assert not voice.speaking


# --- a possible fall ---


@pytest.mark.parametrize("sounds", ["voice", "beats", "silence"])
def test_a_sudden_drop_stops_the_beats_and_the_voice_asks(
    begin: Begin, voice: Voice, sounds: str
) -> None:
    person = begin(plan_of(SHAKE))
    person.director.sounds = sounds
    into_set(person)
    assert person.fake.beats.sounding is not None
    voice.lasts = True
    voice.spoken.clear()
    fell_s = person.fake.service.time_s + 2.0
    person.measured(4.0, falling_from(fell_s))
    assert isinstance(person.director.task, AskWell)
    assert person.fake.beats.sounding is None
    asked_s, asked = voice.spoken[-1]
    assert asked.startswith("Are you all right?") and "Nobody has been called" in asked
    journal = person.fake.recordings[-1].journal.content().records
    (told_s,) = [
        r["time_s"] for r in journal if r["kind"] == "said" and r["code"] == "possible_fall"
    ]
    assert isfinite(told_s) and asked_s - told_s <= 0.1
    person.wait(20)
    assert voice.texts[-1] == asked and voice.speaking


def test_a_seated_fall_is_asked_about_in_silence_too(begin: Begin, voice: Voice) -> None:
    reach = Entry(entry_id="reach", exercise="sit-to-stand", repetitions=5)
    person = begin(plan_of(reach))
    person.director.sounds = "silence"
    person.begin_day()
    while not isinstance(person.director.task, Prepare):
        person.choose("Yes")
    by_ear = person.director.by_ear
    person.choose("I am in place")
    person.set_up()
    while isinstance(person.director.task, CountDown):
        person.measured(1.0, still)
    fell_s = person.fake.service.time_s + 2.0
    person.measured(4.0, falling_from(fell_s))
    if not isinstance(person.director.task, AskWell):
        pytest.fail(f"no fall was noticed (by ear: {by_ear})")
    assert voice.texts[-1].startswith("Are you all right?")


# --- what the person chose, and what is lacking ---


@pytest.mark.parametrize(("sounds", "beats"), [("beats", True), ("silence", False)])
def test_seated_the_voice_is_quiet_if_so_chosen(
    begin: Begin, voice: Voice, sounds: str, beats: bool
) -> None:
    person = begin(plan_of(SIX, WALK))
    person.director.sounds = sounds
    person.get_in_place(1)
    person.measured(3.2, seen)
    assert (person.fake.beats.sounding is not None) == beats
    start_s = person.fake.service.time_s
    person.measured(14.0, lambda t: turning(t, start_s, 7.0))
    after_a_set(person)
    assert isinstance(person.director.task, Rest)
    assert voice.texts == []
    assert (person.fake.beats.started > 0) == beats


def test_with_shut_eyes_silence_is_refused_and_that_is_said(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(SHUT))
    person.director.sounds = "silence"
    person.begin_day()
    assert isinstance(person.director.task, AskSound)
    person.choose("Yes")
    assert "led by sound all the same" in said(person)
    assert "A voice tells you when to begin" in said(person)
    person.choose("I am in place")
    person.set_up()
    assert person.fake.beats.sounding is not None
    person.measured(3.2, seen)
    assert person.fake.beats.sounding is not None
    assert voice.texts[-2:] == ["Shut your eyes.", "Begin now."]


def test_without_sound_and_without_a_reader_shut_eyes_are_not_offered(
    begin: Begin, voice: Voice
) -> None:
    voice.usable = False
    person = begin(plan_of(SHUT))
    person.director._world.beats = NoBeats()
    person.begin_day()
    assert isinstance(person.director.task, AskReader)
    person.choose("No")
    assert person.director.saved is not None
    (left,) = person.director.saved.summary["not_done"]
    assert left["reasons"] == ["no_voice"]


@pytest.mark.parametrize("lack", ["no_engine", "no_language"])
def test_a_missing_voice_is_said_once_and_the_beats_lead(
    begin: Begin, fake: FakeWorld, lack: str
) -> None:
    fake.voice = NoVoice(lack)
    person = begin(plan_of(STAND, TURNS))
    shown = []

    def look() -> None:
        shown.append(words.say(f"voice.lack.{lack}") in said(person))

    person.none_of_these()
    person.press("0", ENTER)
    look()
    person.choose("Begin")
    look()
    assert "Hear the voice" not in offered(person)
    person.choose("Yes")
    person.choose("Yes")
    look()
    assert shown == [True, False, False]
    assert "Slow beats lead you in" in said(person) and "A voice" not in said(person)
    person.choose("I am in place")
    person.set_up()
    assert (fake.beats.sounding or (0.0,))[0] == 60.0


def test_a_helper_who_reads_is_not_talked_over(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(STAND))
    person.begin_day()
    person.choose("No")  # nothing was heard
    person.choose("Yes")  # somebody reads
    person.choose("Yes")
    assert "No sound plays" in said(person)
    started = person.fake.beats.started
    person.choose("I am in place")
    person.set_up()
    person.measured(10.3, still)
    person.measured(11.0, still)
    assert isinstance(person.director.task, AskAfterSet)
    assert voice.texts == [] and person.fake.beats.started == started


def test_the_question_of_sound_lets_one_hear_the_voice(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(STAND))
    person.begin_day()
    assert person.fake.beats.sounding is not None and voice.texts == []
    person.choose("Hear the voice")
    assert voice.texts == [words.say("say.test")]
    assert person.fake.beats.sounding is None
    assert isinstance(person.director.task, AskSound)


# --- a screen reader ---


def test_a_screen_reader_says_it_and_the_voice_is_quiet(begin: Begin, voice: Voice) -> None:
    reader = begin_with_reader(begin, SIX)
    person, listener = reader
    person.get_in_place(1)
    person.measured(3.2, seen)
    turned(person, 14.0)
    assert voice.texts == []
    told = [text for text, _ in listener.announced]
    assert told[-3:] == ["Begin now.", "Only two more.", "And stop. This one is done."]
    assert dict(listener.announced)["Begin now."] is True
    assert dict(listener.announced)["Only two more."] is False


def test_with_shut_eyes_the_voice_speaks_beside_a_screen_reader(begin: Begin, voice: Voice) -> None:
    person, listener = begin_with_reader(begin, SHUT)
    person.begin_day()
    person.choose("Yes")
    person.choose("I am in place")
    person.set_up()
    person.measured(3.2, seen)
    assert voice.texts[-2:] == ["Shut your eyes.", "Begin now."]
    assert "Begin now." not in [text for text, _ in listener.announced]


def begin_with_reader(begin: Begin, *entries: Entry) -> tuple[Person, ScreenReader]:
    person = begin(plan_of(*entries))
    listener = person.fake.screen_reader
    listener.running = True
    return person, listener


# --- the page of the sound ---


def test_the_sound_is_chosen_by_keyboard_and_remembered(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(TURNS))
    window = person.window
    person.begin_day()
    person.press_keys(Qt.Key.Key_M, Qt.KeyboardModifier.ControlModifier)
    page: Any = window.pages["sound"]
    assert window.stack.currentWidget() is page
    person.choose("Let me hear it")
    assert voice.texts[-1] == words.say("say.test")
    person.find("Voice and beats")
    person.press(Qt.Key.Key_Down)
    assert window.settings.sounds == person.director.sounds == "beats"
    started = person.fake.beats.started
    person.choose("Let me hear it")
    assert person.fake.beats.started == started + 1
    person.find("Beats only")
    person.press(Qt.Key.Key_Down)
    assert window.settings.sounds == "silence" and not page.hear.isEnabled()
    assert person.fake.beats.sounding is None
    person.press(Qt.Key.Key_Escape)
    # Back to where it was, and nothing was stopped.
    assert isinstance(person.director.task, Prepare)
    assert window.stack.currentWidget() is window.pages["task"]


def test_nothing_covers_a_set_and_what_comes_uncovers_itself(begin: Begin, voice: Voice) -> None:
    assert voice.usable
    person = begin(plan_of(TURNS))
    window = person.window
    person.get_in_place(1)
    person.measured(3.2, seen)
    assert not window.header.sounding.isEnabled()
    window.open_sound()
    assert window.stack.currentWidget() is window.pages["practice"]
    turned(person, 8.0)
    person.answer_set()
    window.open_sound()
    assert window.stack.currentWidget() is window.pages["sound"]
    person.wait(11)
    assert window.stack.currentWidget() is window.pages["scores"]


@pytest.mark.parametrize(
    ("setting", "kept"), [("voice", "voice"), ("silence", "silence"), ("loud", "voice")]
)
def test_a_choice_that_makes_no_sense_is_the_voice(begin: Begin, setting: str, kept: str) -> None:
    settings = begin(plan_of(TURNS)).window.settings
    settings.sounds = setting
    assert settings.sounds == kept


def test_gravity_is_in_the_order_of_the_engine() -> None:
    from tracker.exercises.events import PRIORITY
    from ui.sounds.speaking import Grave, rank_of_cue

    ranks = [rank_of_cue(code) for code in PRIORITY]
    assert all(a > b for a, b in pairwise(ranks))
    assert (Grave.note, 0) < min(ranks) and max(ranks) < (Grave.edge, 0)


@pytest.mark.parametrize("can", [True, False])
def test_where_nothing_can_sound_no_sound_is_promised(begin: Begin, can: bool) -> None:
    person = begin(plan_of(TURNS))
    if not can:
        person.director._world.beats = NoBeats()
    person.window.open_sound()
    told = person.window.pages["sound"].always.text()
    assert told == words.say("sound.always" if can else "sound.always.none")


@pytest.mark.parametrize("lack", ["", "no_language"])
@pytest.mark.parametrize("percent", [100, 200])
def test_nothing_is_cut_where_one_chooses_and_hears(
    begin: Begin, fake: FakeWorld, percent: int, lack: str
) -> None:
    fake.voice = NoVoice(lack) if lack else Voice()
    person = begin(plan_of(SHUT), percent=percent)
    person.director.sounds = "silence"
    faults: list[str] = []

    def look(name: str) -> None:
        person.settle()
        assert person.window.size().toTuple() == SIZE, f"{name} made the window larger"
        faults.extend(f"{name}: {fault}" for fault in cut_in(person.window))

    person.window.open_sound()
    look("sound")
    promised = words.say("sound.fall") in said(person)
    assert promised == (not lack)
    person.window.close_sound()
    person.begin_day()
    look("question")
    person.choose("Yes")
    look("place")
    assert not faults


# --- what a screen reader is told ---


def test_an_announcement_reaches_qt_from_the_window_in_use(
    begin: Begin, monkeypatch: pytest.MonkeyPatch
) -> None:
    person = begin(plan_of(TURNS))
    told: list[QAccessibleAnnouncementEvent] = []
    reader = screen_reader.QtScreenReader()
    with monkeypatch.context() as patched:
        patched.setattr(screen_reader, "_tell", told.append)
        reader.announce("Begin now.", at_once=True)
        reader.announce("Only two more.", at_once=False)
    polite = QAccessible.AnnouncementPoliteness
    found = [(e.message(), e.politeness(), e.object()) for e in told]
    assert found == [
        ("Begin now.", polite.Assertive, person.window),
        ("Only two more.", polite.Polite, person.window),
    ]
    reader.announce("And Qt takes it.", at_once=False)
