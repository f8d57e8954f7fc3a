"""What is said of several things that could be: one at a time, the graver first, none later.

Nothing waits to be said. What comes while something is being said takes its place if it
is at least as grave, else it is left out: the screen shows it anyway.
"""

from __future__ import annotations

from enum import IntEnum

from tracker.exercises.events import PRIORITY
from ui import words
from ui.ports import ScreenReaderLike, VoiceLike


class Grave(IntEnum):
    """How grave something is."""

    place = 0
    note = 1
    cue = 2
    edge = 3
    stop = 4
    fall = 5


Rank = tuple[int, int]


def rank_of_cue(code: str) -> Rank:
    """Rank of a cue, as the engine orders them."""
    at = PRIORITY.index(code) if code in PRIORITY else len(PRIORITY)
    return Grave.cue, -at


class Speaking:
    """Says one thing at a time, by the voice or through a screen reader.

    Parameters
    ----------
    voice, screen_reader
        What can say it.
    """

    def __init__(self, voice: VoiceLike, screen_reader: ScreenReaderLike) -> None:
        self._voice, self._reader = voice, screen_reader
        self._rank: Rank = (-1, 0)

    def say(
        self, rank: Rank, keys: tuple[str, ...], *, aloud: bool, eyes_shut: bool, **values: object
    ) -> bool:
        """Say the words for some keys; gives whether it is said.

        Parameters
        ----------
        rank
            How grave it is.
        keys
            Keys of the words.
        aloud
            Whether the voice may say it.
        eyes_shut
            Whether the person's eyes are shut: then the voice speaks, also beside a
            screen reader, which follows what is looked at.
        """
        text = " ".join(_sentence(words.say(key, **values)) for key in keys)
        if self._reader.running and not eyes_shut:
            self._reader.announce(text, at_once=rank >= (Grave.edge, 0))
            return True
        if not aloud or not self._voice.usable:
            return False
        if self._voice.speaking and rank < self._rank:
            return False
        self._rank = rank
        self._voice.say(text)
        return True

    def hush(self, least: int = Grave.fall) -> None:
        """Break off what is being said, unless it is graver than ``least``."""
        if self._voice.speaking and self._rank[0] <= least:
            self._voice.stop()


def _sentence(text: str) -> str:
    """A title has no stop, and a voice makes no pause without one."""
    return f"{text}." if text[-1:].isalnum() else text
