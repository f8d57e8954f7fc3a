"""Qt's engine for speech, by itself: looks for a voice, speaks, says when it is through."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QLocale, QObject, Signal, Slot

#: Qt's engine for tests: it speaks without a sound.
MOCK = "mock"


class Engine(QObject):
    """The engine in this process."""

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

    def open(self, engine: str, language: str, territory: str = "") -> None:
        """Look for an engine and a voice.

        Parameters
        ----------
        engine
            Its name, empty for the system's own.
        language
            Code of the language of the words.
        territory
            Locale of the person, whose way of speaking it is preferred.
        """
        from PySide6.QtTextToSpeech import QTextToSpeech

        self._language, self._territory = language, territory
        # A child is not deleted in the middle of its own signal.
        speech = QTextToSpeech(engine, self) if engine else QTextToSpeech(self)
        self._speech = speech
        if speech.engine() == MOCK and engine != MOCK:
            self._give_up("no_engine")
            return
        speech.stateChanged.connect(self._changed)
        self._changed()

    def _choose_voice(self) -> None:
        wanted, own = QLocale(self._language).language(), QLocale(self._territory).territory()
        there = [x for x in self._speech.availableLocales() if x.language() == wanted]
        if not there:
            self._give_up("no_language")
            return
        self._language = ""
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

    def say(self, text: str, number: int) -> None:
        """Say it in place of what is being said."""
        if self._speech is not None:
            self._speech.stop()
            self._number, self._began = number, False
            self._speech.say(text)

    def stop(self) -> None:
        """Be silent."""
        if self._speech is not None:
            self._speech.stop()

    def close(self) -> None:
        """Let it go."""
        if self._speech is not None:
            self._speech.stop()
            self._speech.deleteLater()
            self._speech = None
