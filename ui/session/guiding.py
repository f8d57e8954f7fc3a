"""A guided exercise spoken through: which line is now, and when the next one may come.

Nothing is measured here, and nobody is hurried: a line stays until it has been said to its end
and the time to do it is over, and says itself that one begins when ready. The helper can have it
said again, or go on.
"""

from __future__ import annotations

from math import inf

from tracker.exercises.catalogue import Guide
from tracker.exercises.catalogue.model import READ_S


class Guiding:
    """Goes through the lines of one set; it stands while the set does.

    Parameters
    ----------
    guide
        The lines.
    repetitions
        How often the middle ones come.
    """

    def __init__(self, guide: Guide, repetitions: int) -> None:
        self._lines = guide.lines(repetitions)
        self._at = 0
        self._said_s = inf
        #: Whether the line is to be said now.
        self.to_say = True

    @property
    def key(self) -> str:
        """Key of the words of the line that is now."""
        return f"guide.{self._lines[self._at][0]}"

    @property
    def at_end(self) -> bool:
        """Whether it is the last one."""
        return self._at + 1 == len(self._lines)

    def said(self, ran_s: float, *, spoken: bool) -> None:
        """The line has begun to be said, or to be read where no voice says it."""
        self.to_say = False
        self._said_s = ran_s if spoken else ran_s + READ_S

    def take(self, ran_s: float, *, speaking: bool) -> None:
        """Time goes on.

        Parameters
        ----------
        ran_s
            How long the set has gone on.
        speaking
            Whether something is still being said.
        """
        if speaking and not self.to_say:
            # The time to do it begins when it has been said.
            self._said_s = max(self._said_s, ran_s)
        if not self.to_say and ran_s - self._said_s >= self._lines[self._at][1]:
            self.go_on()

    def again(self) -> None:
        """Say the line once more; its time begins anew."""
        self.to_say = True

    def go_on(self) -> None:
        """The next line, sooner than by itself; after the last there is none."""
        if not self.at_end:
            self._at += 1
            self.to_say = True
