"""The voice, through Qt's own text to speech: what the system brings, nothing from a network.

Nothing is imported for it at the start; the engine is looked for when it may be needed
first. On Linux it lives in a process of its own: its calls wait for the answers of a
daemon and hold Python meanwhile, so that a thread would not help (tried with a daemon
that never answers: the whole window stood still). Elsewhere the engines answer later by
themselves.
"""

from __future__ import annotations

import sys
import time

from PySide6.QtCore import QLocale, QObject

from ui import words
from ui.ports import NoVoice, VoiceLike
from ui.sounds.engine import Engine
from ui.sounds.sound import has_sound_device
from ui.sounds.voice_apart import EngineApart

#: An engine that doesn't say when it is through is taken to be so after this long
#: (common practice: people speak 12 to 15 letters a second, so this is slow).
_LETTERS_A_SECOND, _BEFORE_IT_SPEAKS_S = 8.0, 2.0


class QtVoice(QObject):
    """Speaks through Qt (``ui.ports.VoiceLike``).

    Parameters
    ----------
    engine
        Name of Qt's engine, empty for the system's own.
    apart
        Whether it lives in a process of its own; None for where that helps.
    """

    def __init__(self, engine: str = "", *, apart: bool | None = None) -> None:
        super().__init__()
        self._name = engine
        self._apart = sys.platform.startswith("linux") if apart is None else apart
        self._engine: Engine | EngineApart | None = None
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
        engine = self._engine = EngineApart() if self._apart else Engine()
        engine.found.connect(self._found)
        engine.said.connect(self._said)
        engine.open(self._name, words.say("voice.language"), QLocale().name())

    def say(self, text: str) -> None:
        """Say this now, in place of what is being said."""
        if not self.usable or self._engine is None:
            return
        self._number += 1
        self._until_s = time.monotonic() + _BEFORE_IT_SPEAKS_S + len(text) / _LETTERS_A_SECOND
        self._engine.say(text, self._number)

    def stop(self) -> None:
        """Be silent."""
        self._until_s = 0.0
        if self._engine is not None:
            self._engine.stop()

    def close(self) -> None:
        """Let the engine go; one that hangs is not waited for."""
        self._until_s, self._lack = 0.0, "failed"
        if self._engine is not None:
            self._engine.close()

    def _found(self, lack: str) -> None:
        self._lack = lack
        if lack:
            self._until_s = 0.0

    def _said(self, number: int) -> None:
        if number == self._number:
            self._until_s = 0.0


def make_voice() -> VoiceLike:
    """The system's voice; none where there is no sound device, and that is said elsewhere."""
    return QtVoice() if has_sound_device() else NoVoice()
