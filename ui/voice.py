"""The voice, through Qt's own text to speech: what the system brings, nothing from a network.

Nothing is imported for it at the start; the engine is looked for when it may be needed
first. On Linux it lives in a thread of its own, because its calls wait for the answer of
a daemon, which may first have to be started; elsewhere the engines answer later by
themselves and belong into the window's thread.
"""

from __future__ import annotations

import sys
import time
from typing import Any

from PySide6.QtCore import QLocale, QObject, QThread, Signal, Slot

from ui import words
from ui.ports import NoVoice, VoiceLike
from ui.sound import has_sound_device

#: An engine that doesn't say when it is through is taken to be so after this long
#: (common practice: people speak 12 to 15 letters a second, so this is slow).
_LETTERS_A_SECOND, _BEFORE_IT_SPEAKS_S = 8.0, 2.0
#: How long its thread may take to end before it is made to.
_PATIENCE_MS = 1000
#: Qt's engine for tests: it speaks without a sound.
MOCK = "mock"


class _Engine(QObject):
    """The engine itself, in whatever thread it lives."""

    #: What is lacking; empty once it can speak.
    found = Signal(str)
    #: Number of an utterance that is over.
    said = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self._speech: Any = None
        self._language = ""
        self._number = 0
        self._began = False

    @Slot(str, str)
    def open(self, engine: str, language: str) -> None:
        """Look for an engine and a voice."""
        from PySide6.QtTextToSpeech import QTextToSpeech

        self._language = language
        # A child is not deleted in the middle of its own signal.
        speech = QTextToSpeech(engine, self) if engine else QTextToSpeech(self)
        self._speech = speech
        if speech.engine() == MOCK and engine != MOCK:
            self._give_up("no_engine")
            return
        speech.stateChanged.connect(self._changed)
        self._changed()

    def _choose_voice(self) -> None:
        wanted, own = QLocale(self._language).language(), QLocale().territory()
        there = [x for x in self._speech.availableLocales() if x.language() == wanted]
        if not there:
            self._give_up("no_language")
            return
        self._language = ""
        # As it is spoken where the person lives, if it is.
        self._speech.setLocale(next((x for x in there if x.territory() == own), there[0]))
        self.found.emit("")

    def _give_up(self, lack: str) -> None:
        speech, self._speech = self._speech, None
        speech.deleteLater()
        self.found.emit(lack)

    @Slot()
    def _changed(self) -> None:
        """The engine has got ready, speaks, is through, or has failed."""
        if self._speech is None:
            return
        state = self._speech.state().name
        if state == "Error":
            self._give_up("no_engine" if self._language else "failed")
        elif state == "Ready" and self._language:
            self._choose_voice()
        elif state == "Ready" and self._began:
            self.said.emit(self._number)
        self._began = state == "Speaking"

    @Slot(str, int)
    def say(self, text: str, number: int) -> None:
        """Say it in place of what is being said."""
        if self._speech is not None:
            self._speech.stop()
            self._number, self._began = number, False
            self.speak(text)

    def speak(self, text: str) -> None:
        """Give it to the engine; for tests, as a slot that is overridden runs in another thread."""
        self._speech.say(text)

    @Slot()
    def stop(self) -> None:
        """Be silent."""
        if self._speech is not None:
            self._speech.stop()

    @Slot()
    def close(self) -> None:
        """Let it go, and its thread with it."""
        if self._speech is not None:
            self._speech.stop()
            self._speech.deleteLater()
            self._speech = None
        self.thread().quit()


class QtVoice(QObject):
    """Speaks through Qt (``ui.ports.VoiceLike``).

    Parameters
    ----------
    engine
        Name of Qt's engine, empty for the system's own.
    apart
        Whether the engine lives in a thread of its own; None for where that helps.
    """

    _open = Signal(str, str)
    _say = Signal(str, int)
    _silence = Signal()
    _end = Signal()

    def __init__(self, engine: str = "", *, apart: bool | None = None) -> None:
        super().__init__()
        self._name = engine
        self._apart = sys.platform.startswith("linux") if apart is None else apart
        self._engine: _Engine | None = None
        self._thread: QThread | None = None
        self._lack: str | None = None
        self._number = 0
        self._until_s = 0.0

    @property
    def usable(self) -> bool:
        """Whether it can speak now."""
        return self._lack == ""

    @property
    def lack(self) -> str:
        """Why it can't speak; empty if it can, and while that is not known."""
        return self._lack or ""

    @property
    def speaking(self) -> bool:
        """Whether something is being said."""
        return time.monotonic() < self._until_s

    def prepare(self) -> None:
        """Look for an engine, once."""
        if self._engine is not None:
            return
        engine = self._engine = _Engine()
        if self._apart:
            self._thread = QThread()
            engine.moveToThread(self._thread)
            self._end.connect(engine.close)
            self._thread.start()
        self._open.connect(engine.open)
        self._say.connect(engine.say)
        self._silence.connect(engine.stop)
        engine.found.connect(self._found)
        engine.said.connect(self._said)
        self._open.emit(self._name, words.say("voice.language"))

    def say(self, text: str) -> None:
        """Say this now, in place of what is being said."""
        if not self.usable:
            return
        self._number += 1
        self._until_s = time.monotonic() + _BEFORE_IT_SPEAKS_S + len(text) / _LETTERS_A_SECOND
        self._say.emit(text, self._number)

    def stop(self) -> None:
        """Be silent."""
        self._until_s = 0.0
        self._silence.emit()

    def close(self) -> None:
        """Let the engine go; one whose daemon hangs is not waited for."""
        self.stop()
        self._lack = "failed"
        thread, self._thread = self._thread, None
        if thread is None:
            return
        self._end.emit()
        if not thread.wait(_PATIENCE_MS):
            thread.terminate()
            thread.wait()

    @Slot(str)
    def _found(self, lack: str) -> None:
        self._lack = lack
        if lack:
            self._until_s = 0.0

    @Slot(int)
    def _said(self, number: int) -> None:
        if number == self._number:
            self._until_s = 0.0


def make_voice() -> VoiceLike:
    """The system's voice; none where there is no sound device, and that is said elsewhere."""
    return QtVoice() if has_sound_device() else NoVoice()
