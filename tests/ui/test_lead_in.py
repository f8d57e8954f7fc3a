"""The countdown to a seated set is seen at its target, and heard as the person chose."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from PySide6.QtCore import Qt

from tests.ui.fakes import FakeWorld, Make, ScreenReader, Voice, seen, turning
from tests.ui.patient import TURNS, Person, plan_of
from tests.ui.pictures import keep
from tests.ui.test_small import to_the_set
from tests.ui.test_window import to_choose
from tracker.plan.model import Entry
from tracker.practice.tasks import CountDown, DoSet
from ui import words
from ui.session.flow import Dose, Phase

Begin = Callable[..., Person]
SLOW_BPM = 60.0
HELD = Entry(entry_id="held", exercise="shoulders-back", repetitions=5)


def to_countdown(begin: Begin, sounds: str = "voice") -> Person:
    """Somebody whose seated set is counted down to, from its first moment on."""
    person = begin(plan_of(TURNS))
    person.director.sounds = sounds
    person.get_in_place(0)
    assert isinstance(person.director.task, CountDown)
    return person


def soon() -> str:
    return words.say("say.soon", seconds=words.number(3))


def test_the_voice_says_when_it_begins_and_slow_beats_lead_in(
    begin: Begin, voice: Voice, fake: FakeWorld
) -> None:
    person = to_countdown(begin)
    assert voice.texts[-1] == soon()
    tempo, seconds = fake.beats.sounding or (0.0, 0.0)
    assert tempo == SLOW_BPM and seconds == pytest.approx(3.0, abs=0.1)
    person.measured(3.2, seen)
    assert voice.texts[-2:] == [soon(), words.say("say.begin")]


def test_who_chose_beats_hears_beats_alone(begin: Begin, voice: Voice, fake: FakeWorld) -> None:
    to_countdown(begin, "beats")
    assert voice.texts == [] and (fake.beats.sounding or (0.0,))[0] == SLOW_BPM


def test_who_chose_silence_hears_nothing_and_reads_the_number(
    begin: Begin, voice: Voice, fake: FakeWorld
) -> None:
    person = to_countdown(begin, "silence")
    page = person.window.pages["practice"]
    read = [page.field.hint]
    for _ in range(29):
        person.measured(0.1, seen)
        if page.field.hint != read[-1]:
            read.append(page.field.hint)
    assert read == [words.number(k) for k in (3, 2, 1)]
    assert words.number(1) in page.cue.text()
    assert voice.texts == [] and fake.beats.started == 0
    person.measured(0.4, seen)
    assert isinstance(person.director.task, DoSet) and page.field.hint == ""


@pytest.mark.parametrize("percent", [100, 200])
def test_the_number_stands_where_the_count_will_be(
    make: Make, fake: FakeWorld, percent: int
) -> None:
    person = to_the_set(make, fake, TURNS, percent)
    person.press(Qt.Key.Key_Space)
    person.press(Qt.Key.Key_Space)
    assert person.director.phase == Phase.countdown
    field: Any = person.window.fields.practice
    counting = field.grab().toImage()
    keep(person.window, f"pages/countdown-{percent}")
    person.measured(3.2, seen)
    (box,) = field.count_boxes()
    ground = counting.pixelColor(2, 2)
    inked = [
        (x, y)
        for x in range(int(box.left()), int(box.right()))
        for y in range(int(box.top()), int(box.bottom()))
        if counting.pixelColor(x, y) != ground
    ]
    # As high as the count, and nothing under it.
    assert max(y for _, y in inked) - min(y for _, y in inked) >= 0.9 * box.height() - 2
    below = int(box.bottom()) + 3
    assert all(counting.pixelColor(x, below) == ground for x in range(field.width()))


def test_after_a_pause_it_leads_in_again(begin: Begin, voice: Voice, fake: FakeWorld) -> None:
    person = to_countdown(begin)
    person.measured(4.0, lambda t: turning(t, 1e9))
    person.press(Qt.Key.Key_Space)
    assert person.director.phase == Phase.paused
    voice.spoken.clear()
    person.press(Qt.Key.Key_Space)
    assert voice.texts == [soon()]
    assert (fake.beats.sounding or (0.0,))[0] == SLOW_BPM
    person.measured(3.2, seen)
    assert voice.texts == [soon(), words.say("say.begin")]


def test_outside_a_plan_it_leads_in_too(make: Make, fake: FakeWorld, voice: Voice) -> None:
    window = make()
    to_choose(window, fake)
    voice.spoken.clear()
    window.director.start_exercise(Dose("turns-on-target", 12, 60.0))
    assert voice.texts == [soon()]
    assert (fake.beats.sounding or (0.0,))[0] == SLOW_BPM
    window.director.stop()
    assert fake.beats.sounding is None


def test_a_screen_reader_is_told(begin: Begin, voice: Voice, fake: FakeWorld) -> None:
    fake.screen_reader = reader = ScreenReader(running=True)
    to_countdown(begin)
    assert (soon(), True) in reader.announced and voice.texts == []


def test_without_a_target_the_large_figure_counts(begin: Begin, voice: Voice) -> None:
    person = begin(plan_of(HELD))
    person.get_in_place(0)
    page = person.window.pages["practice"]
    assert voice.texts[-1] == soon()
    assert page.board.figure.figure.text() == words.number(3) and page.field.hint == ""
