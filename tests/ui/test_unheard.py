"""A cue that nobody could hear or see is not said, and comes again while it lasts."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

import pytest
from PySide6.QtCore import Qt

from tests.ui.fakes import FakeWorld, Make, Voice, seen
from tests.ui.patient import Person, plan_of
from tracker.exercises.events import Cue
from tracker.plan.model import Entry
from tracker.practice.tasks import AskReader, DoSet, Prepare
from tracker.sample import Sample
from tracker.session.projections import session_record
from tracker.session.summary import summarise
from ui import words
from ui.ports import NoVoice, VoiceLike

SHUT = Entry(entry_id="shut", exercise="turns-together", eyes="closed", repetitions=30)
OPEN = Entry(entry_id="open", exercise="turns-on-target", repetitions=30)


def into_set(make: Make, fake: FakeWorld, entry: Entry, voice: VoiceLike) -> Person:
    fake.voice = voice
    window = make()
    window.pages["welcome"].offer(plan_of(entry))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.begin_day(2)
    while not isinstance(person.director.task, Prepare):
        person.choose("No" if isinstance(person.director.task, AskReader) else "Yes")
    person.choose("I am in place")
    person.set_up()
    # Who stands is counted down to for longer.
    person.measured(10.5 if entry is STANDS else 4.0, seen)
    assert isinstance(person.director.task, DoSet)
    return person


def small(start_s: float, *, eye_open: float) -> Callable[[float], Sample]:
    """Turns that are far too small, from a time on."""

    def made(time_s: float) -> Sample:
        yaw = 5.0 * math.sin(math.pi * (time_s - start_s))
        rest: dict[str, Any] = dict.fromkeys(
            ("head_pitch_deg", "head_roll_deg", "head_x_mm", "head_y_mm", "head_z_mm"), 0.0
        )
        eyes = {"eye_yaw_deg": 0.0, "eye_pitch_deg": 0.0, "eye_open": eye_open}
        return seen(time_s, head_yaw_deg=yaw, neck_x_mm=0.0, neck_y_mm=0.0, **rest, **eyes)

    return made


def events(fake: FakeWorld) -> list[Any]:
    summary = summarise(session_record(fake.recordings[-1].journal.content()))
    return [e for e in summary.exercises[0].events if e.code == "too_small"]


def practise(person: Person, seconds: float, *, eye_open: float) -> None:
    person.measured(
        seconds, small(4.0 * round(person.fake.service.time_s / 4.0), eye_open=eye_open)
    )


def test_with_shut_eyes_and_no_voice_nothing_counts_as_said(make: Make, fake: FakeWorld) -> None:
    person = into_set(make, fake, SHUT, NoVoice())
    assert person.director.led == "beats"
    practise(person, 12.0, eye_open=0.0)
    person.press(Qt.Key.Key_Escape)
    found = events(fake)
    assert found and all(e.said_at_s is None for e in found)
    assert not fake.recordings[-1].journal.content().of("said")


def test_with_open_eyes_it_is_shown_and_that_counts(make: Make, fake: FakeWorld) -> None:
    person = into_set(make, fake, OPEN, NoVoice())
    practise(person, 12.0, eye_open=1.0)
    person.press(Qt.Key.Key_Escape)
    assert any(e.said_at_s is not None for e in events(fake))


STANDS = Entry(entry_id="stands", exercise="stand-head-shake", seconds=60, tempo_bpm=40)


def cues(fake: FakeWorld) -> list[Any]:
    summary = summarise(session_record(fake.recordings[-1].journal.content()))
    return list(summary.exercises[0].events)


@pytest.mark.parametrize("speaks", [True, False])
def test_of_who_is_not_before_the_screen_what_is_not_spoken_is_not_said(
    make: Make, fake: FakeWorld, speaks: bool
) -> None:
    voice = Voice() if speaks else NoVoice()
    person = into_set(make, fake, STANDS, voice)
    person.measured(10.0, seen)
    person.measured(5.0, lambda t: Sample(t, reason="no_face"))
    person.press(Qt.Key.Key_Escape)
    journal = fake.recordings[-1].journal.content()
    told = [f"cue.{r['code']}" for r in journal.of("said")]
    assert cues(fake) and bool(told) is speaks
    assert all((e.said_at_s is not None) is speaks for e in cues(fake))
    if speaks:
        spoken = " ".join(voice.texts)
        assert all(words.say(key) in spoken for key in told)


def test_a_voice_that_is_busy_says_it_later_and_then_it_counts(make: Make, fake: FakeWorld) -> None:
    voice = Voice(lasts=True)
    voice.clock = lambda: fake.service.time_s if fake.services else 0.0
    person = into_set(make, fake, SHUT, voice)
    assert person.director.led == "voice" and voice.speaking
    text = words.say("cue.too_small")
    practise(person, 8.0, eye_open=0.0)
    assert text not in " ".join(voice.texts)
    assert events(fake) and all(e.said_at_s is None for e in events(fake))
    voice.speaking = voice.lasts = False
    free_s = fake.service.time_s
    practise(person, 6.0, eye_open=0.0)
    said = [at for at, spoken in voice.spoken if text in spoken]
    assert said and said[0] > free_s
    told = [e.said_at_s for e in events(fake) if e.said_at_s is not None]
    # What is measured is looked at a fraction of a second later.
    assert told[0] == pytest.approx(said[0], abs=0.2)


def test_what_is_to_be_said_at_once_is_tried_again_while_it_lasts(
    make: Make, fake: FakeWorld
) -> None:
    heard: list[Cue] = []
    person = into_set(make, fake, SHUT, NoVoice())
    deaf = True

    def tell(cue: Cue) -> bool:
        if not deaf:
            heard.append(cue)
        return not deaf

    fake.recordings[-1].tell_by(tell)
    person.measured(4.0, lambda t: Sample(t, reason="no_face"))
    assert not fake.recordings[-1].journal.content().of("said")
    deaf = False
    person.measured(0.5, lambda t: Sample(t, reason="no_face"))
    assert len(heard) == 1
    person.measured(2.0, seen)
    codes = [r["code"] for r in fake.recordings[-1].journal.content().of("said")]
    assert codes[0] == heard[0].code


def test_what_is_over_before_it_could_be_said_is_not_said(make: Make, fake: FakeWorld) -> None:
    person = into_set(make, fake, SHUT, NoVoice())
    person.measured(4.0, lambda t: Sample(t, reason="no_face"))
    practise(person, 3.0, eye_open=0.0)
    heard: list[Cue] = []
    fake.recordings[-1].tell_by(lambda cue: not heard.append(cue))
    practise(person, 0.5, eye_open=0.0)
    assert not heard
