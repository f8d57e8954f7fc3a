"""What is spoken outside a planned session: in the set-up, and with a single exercise."""

from __future__ import annotations

from itertools import pairwise

import pytest

from tests.ui.fakes import PLAN, FakeWorld, Make, Voice, answer_fit, feed, seen, turning
from tests.ui.patient import STAND, Person, plan_of
from tests.ui.test_window import to_choose, to_exercise
from tracker.practice.tasks import Prepare
from ui import words
from ui.session.flow import Dose, Phase

pytestmark = pytest.mark.alone


@pytest.fixture
def voice(fake: FakeWorld) -> Voice:
    fake.voice = voice = Voice()
    voice.clock = lambda: fake.service.time_s if fake.services else 0.0
    return voice


def in_the_set_up(make: Make, fake: FakeWorld) -> Person:
    """In front of the camera, with the set-up begun."""
    person = Person(make(), fake)
    person.director.start()
    feed(fake.service, person.director, 0.5, seen)
    person.director.begin_setup()
    return person


def test_the_set_up_says_what_to_do_and_where_to_turn(
    make: Make, fake: FakeWorld, voice: Voice
) -> None:
    person = in_the_set_up(make, fake)
    assert voice.prepared
    while person.director.phase == Phase.setup:
        feed(fake.service, person.director, fake.service.time_s + 0.5, seen)
    steps = [words.say(f"setup.{s}") for s in ("rest", "look", "turn_slowly", "nod_slowly")]
    assert [t for t in voice.texts if t in steps] == steps
    turns = [words.say(f"setup.turn_slowly.{q}") + "." for q in ("plus", "back", "minus", "back")]
    nods = [words.say(f"setup.nod_slowly.{q}") + "." for q in ("plus", "back", "minus", "back")]
    assert [t for t in voice.texts if t not in steps] == turns + nods
    # What to do is said before it is to be done.
    at = {text: time_s for time_s, text in voice.spoken}
    for step, first in (("turn_slowly", turns[0]), ("nod_slowly", nods[0])):
        assert at[words.say(f"setup.{step}")] <= at[first]
    for (one_s, _), (other_s, _) in pairwise(voice.spoken):
        assert other_s >= one_s


def test_a_hint_does_not_cut_short_what_to_do(make: Make, fake: FakeWorld, voice: Voice) -> None:
    voice.lasts = True
    person = in_the_set_up(make, fake)
    while person.director.phase == Phase.setup:
        feed(fake.service, person.director, fake.service.time_s + 0.5, seen)
    assert words.say("setup.turn_slowly") in voice.texts
    assert words.say("setup.turn_slowly.plus") + "." not in voice.texts


def test_a_repeated_set_up_is_spoken_again(make: Make, fake: FakeWorld, voice: Voice) -> None:
    window = make()
    to_choose(window, fake)
    voice.spoken.clear()
    window.director.begin_setup()
    for _ in range(3):
        feed(fake.service, window.director, fake.service.time_s + 0.5, seen)
    assert voice.texts[0] == words.say("setup.rest")


@pytest.mark.parametrize("sounds", ["beats", "silence"])
def test_who_wants_no_voice_hears_none(
    make: Make, fake: FakeWorld, voice: Voice, sounds: str
) -> None:
    window = make()
    window.director.sounds = sounds
    to_exercise(window, fake)
    window.director.stop()
    assert voice.texts == []


def test_standing_the_set_up_is_led_by_the_voice_all_the_same(
    make: Make, fake: FakeWorld, voice: Voice
) -> None:
    window = make()
    window.pages["welcome"].offer(plan_of(STAND))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.director.sounds = "silence"
    person.begin_day()
    while not isinstance(person.director.task, Prepare):
        person.choose("Yes")
    person.choose("I am in place")
    voice.spoken.clear()
    person.set_up()
    assert words.say("setup.turn_slowly") in voice.texts


def test_an_exercise_alone_says_begin_two_left_and_the_end(
    make: Make, fake: FakeWorld, voice: Voice
) -> None:
    window = make()
    to_choose(window, fake)
    voice.spoken.clear()
    director = window.director
    director.start_exercise(Dose("turns-on-target", 6, 60.0))
    feed(fake.service, director, fake.service.time_s + 3.05, seen)
    assert voice.texts == ["It begins in 3 seconds.", "Begin now."]
    began_s = fake.service.time_s
    feed(fake.service, director, began_s + 14.0, lambda t: turning(t, began_s, 18.0))
    assert director.phase == Phase.summary
    said = [t for t in voice.texts if not any(t.startswith(c) for c in ("A little",))]
    assert said[1:] == ["Begin now.", "Only two more.", "And stop. This one is done."]
    at = {text: time_s for time_s, text in voice.spoken}
    assert at["Only two more."] == pytest.approx(began_s + 8.0, abs=0.6)


def test_a_cue_of_an_exercise_alone_is_spoken(make: Make, fake: FakeWorld, voice: Voice) -> None:
    window = make()
    start_s = to_exercise(window, fake)
    feed(fake.service, window.director, start_s + 8.0, lambda t: turning(t, start_s, 8.0))
    assert "A little bigger." in voice.texts
    window.director.stop()
    assert voice.texts[-1] == "Stopped."


def test_the_sample_clip_speaks_nothing(make: Make, fake: FakeWorld, voice: Voice) -> None:
    window = make(PLAN)
    director = window.director
    director.start()
    feed(fake.service, director, 9.2, seen)
    answer_fit(fake.service, director)
    feed(fake.service, director, 16.0, lambda t: turning(t, 9.0, 8.0))
    assert voice.texts == [] and not voice.prepared
