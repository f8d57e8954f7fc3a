"""The voice itself: Qt's engine for tests, in the window's thread and in one of its own."""

from __future__ import annotations

import subprocess
import sys
import time
from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QThread
from pytestqt.qtbot import QtBot

from ui import voice, words
from ui.ports import NoVoice
from ui.voice import MOCK, QtVoice, make_voice

#: Qt looks for a sound system that need not be there.
pytestmark = pytest.mark.qt_log_ignore("pipewire", extend=True)

Open = Callable[..., QtVoice]
#: The mock speaks a word in a tenth of a second.
LONG = "one two three four five six seven eight nine ten"


@pytest.fixture
def opened(qtbot: QtBot) -> Iterator[Open]:
    made = []

    def build(engine: str = MOCK, *, apart: bool = False) -> QtVoice:
        found = QtVoice(engine, apart=apart)
        made.append(found)
        assert not found.usable and found.lack == ""
        found.prepare()
        qtbot.waitUntil(lambda: found.usable or found.lack != "", timeout=5000)
        return found

    yield build
    for each in made:
        each.close()


@pytest.fixture
def heard(monkeypatch: pytest.MonkeyPatch) -> list[tuple[str, bool]]:
    """What the engine is given, and whether that happens in the window's thread."""
    given: list[tuple[str, bool]] = []

    class Noting(voice._Engine):
        def speak(self, text: str) -> None:
            given.append((text, QThread.isMainThread()))
            super().speak(text)

    monkeypatch.setattr(voice, "_Engine", Noting)
    return given


@pytest.mark.parametrize("apart", [False, True])
def test_it_speaks_and_says_when_it_is_through(qtbot: QtBot, opened: Open, apart: bool) -> None:
    found = opened(apart=apart)
    assert found.usable and not found.speaking
    began_s = time.monotonic()
    found.say("three short words")
    assert found.speaking
    qtbot.waitUntil(lambda: not found.speaking, timeout=5000)
    # Through when the engine is, not when the longest time is over.
    assert 0.2 < time.monotonic() - began_s < 1.5


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
    assert max(taken_s) < 0.05


def test_an_engine_that_waits_holds_up_its_own_thread_alone(
    qtbot: QtBot, opened: Open, monkeypatch: pytest.MonkeyPatch
) -> None:
    began: list[float] = []

    class Slow(voice._Engine):
        def speak(self, text: str) -> None:  # noqa: ARG002
            began.append(time.monotonic())
            time.sleep(0.5)

    monkeypatch.setattr(voice, "_Engine", Slow)
    found = opened(apart=True)
    asked_s = time.monotonic()
    found.say("slow")
    assert time.monotonic() - asked_s < 0.05
    qtbot.waitUntil(lambda: bool(began))
    assert time.monotonic() - began[0] < 0.4


@pytest.mark.parametrize("apart", [False, True])
def test_what_is_new_replaces_what_is_being_said(
    qtbot: QtBot, opened: Open, heard: list[tuple[str, bool]], apart: bool
) -> None:
    found = opened(apart=apart)
    found.say(LONG)
    qtbot.wait(200)
    began_s = time.monotonic()
    found.say("stop now")
    # The end of the first is not taken for that of the second.
    qtbot.wait(60)
    assert found.speaking
    qtbot.waitUntil(lambda: not found.speaking, timeout=5000)
    assert time.monotonic() - began_s < 0.8  # the first alone would have taken that long
    assert heard == [(LONG, not apart), ("stop now", not apart)]


def test_being_silent_ends_it(qtbot: QtBot, opened: Open) -> None:
    found = opened()
    found.say(LONG)
    found.stop()
    assert not found.speaking
    engine = found._engine
    assert engine is not None and engine._speech.state().name == "Ready"
    qtbot.wait(50)


def test_without_a_voice_for_the_language_it_says_so(
    opened: Open, monkeypatch: pytest.MonkeyPatch, heard: list[tuple[str, bool]]
) -> None:
    monkeypatch.setitem(words.WORDS, "voice.language", "es")
    found = opened()
    assert not found.usable and found.lack == "no_language"
    found.say("nothing")
    assert heard == [] and not found.speaking
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
    class Mute(voice._Engine):
        def speak(self, text: str) -> None:
            pass

    monkeypatch.setattr(voice, "_Engine", Mute)
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
        "import sys, ui.app, ui.voice, ui.screen_reader\n"
        "ui.voice.has_sound_device = lambda: True\n"
        "ui.voice.make_voice()\n"
        "sys.exit('PySide6.QtTextToSpeech' in sys.modules)"
    )
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
