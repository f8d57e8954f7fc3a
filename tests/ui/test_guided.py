"""Walking, stairs and turns with a partner, spoken through: what is said when, and what isn't."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from math import nan

import pytest
from PySide6.QtCore import Qt

from tests.ui.fakes import Voice
from tests.ui.patient import WALK, Person, plan_of
from tests.ui.test_planned_pages import offered, said
from tracker.exercises.catalogue import CATALOGUE, GUIDED
from tracker.exercises.catalogue.model import READ_S
from tracker.plan.asked import asked_of
from tracker.plan.model import Entry
from tracker.practice.tasks import AskAfterSet, AskReader, AskSound, DoSet, Over, Prepare
from ui import words
from ui.session.guiding import Guiding
from ui.words import WORDS

Begin = Callable[..., Person]
STAIRS = Entry(entry_id="stairs", exercise="stairs", repetitions=2)
PARTNER = Entry(entry_id="partner", exercise="partner-turns", repetitions=2)
GUIDES = {e.id: e.guide for e in CATALOGUE.values() if e.guide is not None}


def in_the_set(person: Person, answers: int = 2) -> None:
    """The sound and the helper are there, and the set begins."""
    voice = person.fake.voice
    if isinstance(voice, Voice):
        voice.clock = lambda: person.director.now_s
    person.begin_day()
    for _ in range(answers):
        person.choose("Yes")
    assert isinstance(person.director.task, Prepare)
    person.choose("I am in place")
    person.wait(10.2)
    assert isinstance(person.director.task, DoSet)


def heard(voice: Voice) -> list[str]:
    """Keys of the guide's lines that were spoken."""
    texts = {words.say(k): k.removeprefix("guide.") for k in WORDS if k.startswith("guide.")}
    return [texts[t] for t in voice.texts if t in texts]


def test_what_is_guided_is_spoken_through_and_every_line_has_its_words() -> None:
    assert set(GUIDES) == {e.id for e in CATALOGUE.values() if e.channel == GUIDED}
    for guide in GUIDES.values():
        keys = [key for key, _ in guide.lines(2)]
        assert keys[0] == "stop" and keys[1] == "count" and keys[-1] == "over"
        assert keys[2].endswith(".stand")
        assert all(f"guide.{key}" in WORDS for key in keys)
        assert [s for _, s in guide.each] == [s for _, s in guide.each if s >= 5.0]


@pytest.mark.parametrize("exercise", GUIDES)
@pytest.mark.parametrize("repetitions", [1, 3, 10])
def test_its_length_is_told_as_long_as_its_lines_take_where_no_voice_says_them(
    exercise: str, repetitions: int
) -> None:
    """The lines are gone through by the clock here; what is told beforehand is worked out."""
    asked = asked_of(Entry(entry_id="a", exercise=exercise, repetitions=repetitions))
    guiding, ran_s = Guiding(GUIDES[exercise], repetitions), 0.0
    while not guiding.at_end or guiding.to_say:
        if guiding.to_say:
            guiding.said(ran_s, spoken=False)
        guiding.take(ran_s, speaking=False)
        ran_s += 0.1
    # The last line is to be read as well.
    assert asked.about_s == pytest.approx(
        ran_s + READ_S, abs=2.0 + 0.1 * len(GUIDES[exercise].lines(repetitions))
    )


def test_to_stop_the_helper_stays_before_any_key_is_named() -> None:
    before, named, after = words.say("guide.stop").partition("Escape")
    assert named and "Your helper stays and helps you sit down" in before
    assert "can wait" in after


@pytest.mark.parametrize("entry", [WALK, STAIRS, PARTNER], ids=lambda e: e.entry_id)
def test_each_line_comes_in_its_turn_and_after_its_time(
    begin: Begin, voice: Voice, entry: Entry
) -> None:
    person = begin(plan_of(entry))
    in_the_set(person)
    person.wait(110.0)
    guide = GUIDES[entry.exercise]
    lines = guide.lines(entry.repetitions or 1)
    assert heard(voice) == [key for key, _ in lines]
    times = [t for t, text in voice.spoken if text in {words.say(f"guide.{k}") for k, _ in lines}]
    gaps = [b - a for a, b in pairwise(times)]
    assert gaps == pytest.approx([s for _, s in lines[:-1]], abs=0.6)
    # Nobody is thrown out: it lasts until somebody says that it is done.
    assert isinstance(person.director.task, DoSet)
    assert words.say("guide.over") in said(person)


def test_nobody_is_hurried_by_a_slow_voice(begin: Begin, voice: Voice) -> None:
    """The time to do a thing begins when it has been said."""
    person = begin(plan_of(STAIRS))
    in_the_set(person)
    person.wait(0.5)
    voice.lasts = voice.speaking = True
    before = len(heard(voice))
    person.wait(30.0)
    assert len(heard(voice)) <= before + 1
    voice.speaking = voice.lasts = False
    at = len(heard(voice))
    person.wait(2.0)
    assert len(heard(voice)) == at
    person.wait(8.0)
    assert len(heard(voice)) > at


def test_a_line_is_said_again_on_request_and_its_time_begins_anew(
    begin: Begin, voice: Voice
) -> None:
    person = begin(plan_of(WALK))
    in_the_set(person)
    person.choose("Next step")
    person.choose("Next step")
    person.choose("Next step")
    person.wait(0.5)
    assert heard(voice)[-1] == "walk.forward"
    assert words.say("guide.walk.forward") in said(person)
    person.wait(18.0)
    person.choose("Say it again")
    person.wait(15.0)
    assert heard(voice)[-2:] == ["walk.forward", "walk.forward"]
    person.wait(7.0)
    assert heard(voice)[-1] == "walk.halt"


def test_a_key_stops_it_at_once_and_nothing_more_is_asked_for(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(WALK))
    in_the_set(person)
    person.wait(12.0)
    spoken = heard(voice)
    person.press(Qt.Key.Key_Escape)
    assert not isinstance(person.director.task, DoSet)
    assert voice.texts[-1].startswith(words.say("say.stopped").rstrip("."))
    person.wait(5.0)
    assert heard(voice) == spoken


def test_the_own_count_is_asked_and_nothing_counts_as_measured(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(STAIRS))
    in_the_set(person)
    person.wait(20.0)
    assert "count" in heard(voice)
    person.choose("Done")
    task = person.director.task
    assert isinstance(task, AskAfterSet) and task.questions[-1] == "own_count"
    while isinstance(person.director.task, AskAfterSet):
        if "own_count" in person.window.pages["task"]._left[:1]:  # type: ignore[attr-defined]
            person.press(Qt.Key.Key_Up, Qt.Key.Key_Up)
            person.choose("Go on")
        else:
            person.choose("No")
    person.wait(11.0)
    person.director.end_today()
    person.settle()
    assert person.director.saved is not None
    (done,) = person.director.saved.summary["exercises"]
    assert done["own_count"]["value"] is not None
    assert done["done"]["repetitions"] is None and done["done"]["reason"]
    assert done["not_measured"] == ["everything"]


def test_beats_alone_are_not_enough_and_without_a_reader_it_is_not_offered(begin: Begin) -> None:
    person = begin(plan_of(WALK))
    person.begin_day()
    assert isinstance(person.director.task, AskSound)
    person.choose("Yes")
    assert isinstance(person.director.task, AskReader)
    assert words.say("ask.reader.no_words") in said(person)
    person.choose("No")
    assert isinstance(person.director.task, Over) or person.director.saved is not None
    assert person.director.saved is not None
    (left_out,) = person.director.saved.summary["not_done"]
    assert left_out["entry_id"] == "walk" and left_out["reasons"][0] == "no_voice"


def test_who_reads_aloud_sees_each_line_with_time_to_read_it(begin: Begin) -> None:
    person = begin(plan_of(STAIRS))
    in_the_set(person, answers=3)
    assert words.say("guide.stop") in said(person)
    assert "Say it again" in offered(person)
    seen_lines = []
    for _ in range(60):
        person.wait(1.0)
        line = person.window.pages["task"]._lines[0].text()  # type: ignore[attr-defined]
        if line not in seen_lines[-1:]:
            seen_lines.append(line)
    keys = [key for key, _ in GUIDES["stairs"].lines(2)]
    assert seen_lines == [words.say(f"guide.{key}") for key in keys][: len(seen_lines)]
    assert len(seen_lines) >= 4


def test_time_alone_leads_on_and_the_end_stays() -> None:
    guiding = Guiding(GUIDES["walk"], 1)
    count = len(GUIDES["walk"].lines(1))
    seen, first_s = [guiding.key], nan
    for k in range(4000):
        ran_s = 0.1 * k
        if guiding.to_say:
            guiding.said(ran_s, spoken=False)
        guiding.take(ran_s, speaking=False)
        if guiding.key != seen[-1]:
            seen.append(guiding.key)
            first_s = ran_s if len(seen) == 2 else first_s
    assert first_s == pytest.approx(GUIDES["walk"].first[0][1] + READ_S, abs=0.2)
    assert len(seen) == count and guiding.at_end
    guiding.go_on()
    assert guiding.at_end
