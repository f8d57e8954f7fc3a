"""The voice itself: Qt's engine for tests, in the window's process and in one of its own."""

from __future__ import annotations

import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from itertools import pairwise
from statistics import median

import pytest
from PySide6.QtCore import QTimer
from pytestqt.qtbot import QtBot

from ui import words
from ui.ports import NoVoice
from ui.sounds import voice, voice_apart
from ui.sounds.engine import MOCK, Engine
from ui.sounds.voice import QtVoice, make_voice

#: Qt looks for a sound system that need not be there.
pytestmark = [pytest.mark.alone, pytest.mark.qt_log_ignore("pipewire", extend=True)]

Open = Callable[..., QtVoice]
#: Who waits for an engine that hangs stands still for longer than this; a busy machine
#: holds the window up for less.
WAITED_S = 0.4
#: The mock speaks a word in a tenth of a second.
LONG = "one two three four five " * 8


@pytest.fixture
def opened(qtbot: QtBot) -> Iterator[Open]:
    made = []

    def build(engine: str = MOCK, *, apart: bool = False) -> QtVoice:
        found = QtVoice(engine, apart=apart)
        made.append(found)
        assert not found.usable and found.lack == ""
        found.prepare()
        qtbot.waitUntil(lambda: found.usable or found.lack != "", timeout=15_000)
        return found

    yield build
    for each in made:
        each.close()


@pytest.fixture
def other(monkeypatch: pytest.MonkeyPatch) -> Callable[[str], None]:
    """Another program in place of the one that speaks."""
    return lambda code: monkeypatch.setattr(voice_apart, "CHILD", (sys.executable, "-c", code))


def longest_gap_s(qtbot: QtBot, until: Callable[[], bool]) -> float:
    """How long the window's loop stood still at most, until something holds."""
    times = [time.monotonic()]
    timer = QTimer()
    timer.timeout.connect(lambda: times.append(time.monotonic()))
    timer.start(5)
    qtbot.waitUntil(until, timeout=10_000)
    timer.stop()
    return max(b - a for a, b in pairwise([*times, time.monotonic()]))


@pytest.mark.parametrize("apart", [False, True])
def test_it_speaks_and_says_when_it_is_through(qtbot: QtBot, opened: Open, apart: bool) -> None:
    found = opened(apart=apart)
    assert found.usable and not found.speaking
    began_s = time.monotonic()
    found.say("three short words")
    assert found.speaking
    qtbot.waitUntil(lambda: not found.speaking, timeout=5000)
    # Through when the engine is, not when the longest time is over.
    assert 0.2 < time.monotonic() - began_s < 3.0


@pytest.mark.parametrize("apart", [False, True])
def test_saying_something_holds_the_window_up_for_less_than_50_ms(
    opened: Open, apart: bool
) -> None:
    found = opened(apart=apart)
    taken_s = []
    for _ in range(20):
        began_s = time.monotonic()
        found.say(LONG)
        taken_s.append(time.monotonic() - began_s)
    # Other work on the machine may hold up one of them.
    assert median(taken_s) < 0.05


def test_an_engine_that_never_answers_holds_nothing_up(
    qtbot: QtBot, other: Callable[[str], None], monkeypatch: pytest.MonkeyPatch
) -> None:
    other("import time; time.sleep(60)")
    monkeypatch.setattr(voice_apart, "_FOUND_MS", 700)
    found = QtVoice(MOCK, apart=True)
    began_s = time.monotonic()
    found.prepare()
    assert time.monotonic() - began_s < WAITED_S
    assert longest_gap_s(qtbot, lambda: found.lack != "") < WAITED_S
    assert found.lack == "no_engine" and not found.usable
    # The process is gone, too (no test may leave one behind).


READY = "import json, sys; print(json.dumps({'found': ''}), flush=True);"


def test_an_engine_that_hangs_while_it_speaks_is_given_up(
    qtbot: QtBot, other: Callable[[str], None], monkeypatch: pytest.MonkeyPatch, opened: Open
) -> None:
    other(READY + "import time; time.sleep(60)")
    monkeypatch.setattr(voice_apart, "_TAKEN_MS", 500)
    found = opened(apart=True)
    began_s = time.monotonic()
    found.say("hello")
    assert found.speaking and time.monotonic() - began_s < WAITED_S
    assert longest_gap_s(qtbot, lambda: found.lack != "") < WAITED_S
    assert found.lack == "failed" and not found.usable and not found.speaking


def test_an_engine_that_crashes_is_no_voice_any_more(
    qtbot: QtBot, other: Callable[[str], None], opened: Open
) -> None:
    other(READY + "sys.stdin.readline(); import os; os.abort()")
    found = opened(apart=True)
    found.say("hello")
    qtbot.waitUntil(lambda: found.lack == "failed", timeout=5000)
    found.say("again")
    assert not found.speaking


def test_a_program_that_is_not_there_is_no_engine(
    qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, opened: Open
) -> None:
    monkeypatch.setattr(voice_apart, "CHILD", ("/nowhere/at-all",))
    assert opened(apart=True).lack == "no_engine"


def test_closing_while_it_hangs_does_not_wait_for_it(
    other: Callable[[str], None], opened: Open
) -> None:
    other(READY + "import time; time.sleep(60)")
    found = opened(apart=True)
    began_s = time.monotonic()
    found.close()
    assert time.monotonic() - began_s < 2.0


@pytest.mark.parametrize("apart", [False, True])
def test_what_is_new_replaces_what_is_being_said(qtbot: QtBot, opened: Open, apart: bool) -> None:
    found = opened(apart=apart)
    found.say(LONG)
    qtbot.wait(200)
    began_s = time.monotonic()
    found.say("stop now")
    # The end of the first is not taken for that of the second.
    qtbot.wait(60)
    assert found.speaking
    qtbot.waitUntil(lambda: not found.speaking, timeout=5000)
    assert time.monotonic() - began_s < 2.5  # the first alone would have taken 3.8


def test_an_end_that_is_told_late_is_not_that_of_the_next(qtbot: QtBot) -> None:
    class Late:
        """Tells of its states when it likes to, as an engine that waits for a daemon."""

        def __init__(self) -> None:
            self.name = "Ready"

        def state(self) -> Late:
            return self

        def stop(self) -> None: ...

        def say(self, text: str) -> None: ...

    engine, late, over = Engine(), Late(), []
    engine._speech = late
    engine.said.connect(over.append)
    steps = []
    for number in (1, 2):
        engine.say("words", number)
        # The end of what was said before comes only now.
        for late.name in ("Ready", "Speaking"):
            engine._changed()
        steps.append(list(over))
    late.name = "Ready"
    engine._changed()
    assert steps == [[], []] and over == [2]
    qtbot.wait(1)


def test_being_silent_ends_it(qtbot: QtBot, opened: Open) -> None:
    found = opened()
    found.say(LONG)
    found.stop()
    assert not found.speaking
    engine = found._engine
    assert isinstance(engine, Engine) and engine._speech.state().name == "Ready"
    qtbot.wait(50)


@pytest.mark.parametrize("apart", [False, True])
def test_without_a_voice_for_the_language_it_says_so(
    opened: Open, monkeypatch: pytest.MonkeyPatch, apart: bool
) -> None:
    monkeypatch.setitem(words.WORDS, "voice.language", "es")
    found = opened(apart=apart)
    assert not found.usable and found.lack == "no_language"
    found.say("nothing")
    assert not found.speaking
    assert words.has(f"voice.lack.{found.lack}")


@pytest.mark.qt_log_ignore("text-to-speech", "engine", extend=True)
@pytest.mark.parametrize("apart", [False, True])
def test_without_an_engine_it_says_so(opened: Open, apart: bool) -> None:
    found = opened("no-such-engine", apart=apart)
    assert not found.usable and found.lack == "no_engine"


def test_the_engine_for_tests_is_never_taken_for_a_voice(
    qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    from PySide6 import QtTextToSpeech

    engine = QtTextToSpeech.QTextToSpeech
    monkeypatch.setattr(
        QtTextToSpeech, "QTextToSpeech", lambda parent: engine(MOCK, parent), raising=True
    )
    found = QtVoice(apart=False)
    found.prepare()
    qtbot.waitUntil(lambda: found.lack != "")
    assert found.lack == "no_engine" and not found.usable


def test_an_engine_that_never_says_that_it_is_through_is_believed_so_long(
    opened: Open, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(Engine, "say", lambda *_: None)
    monkeypatch.setattr(voice, "_BEFORE_IT_SPEAKS_S", 0.1)
    monkeypatch.setattr(voice, "_LETTERS_A_SECOND", 100.0)
    found = opened()
    found.say("hello")
    assert found.speaking
    time.sleep(0.3)
    assert not found.speaking


def test_there_is_no_voice_without_a_sound_device(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(voice, "has_sound_device", lambda: False)
    assert make_voice() == NoVoice()
    monkeypatch.setattr(voice, "has_sound_device", lambda: True)
    assert isinstance(make_voice(), QtVoice)


def test_nothing_of_it_is_loaded_before_it_is_needed() -> None:
    code = (
        "import sys, ui.app, ui.sounds.voice, ui.screen_reader\n"
        "ui.sounds.voice.has_sound_device = lambda: True\n"
        "ui.sounds.voice.make_voice()\n"
        "sys.exit('PySide6.QtTextToSpeech' in sys.modules)"
    )
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
