"""What a set is said to have been once it is over: the figures that stood beside its target.

Beside the target there is room for little, and eyes that are busy read less. Who has large
text finds here what was left out there.
"""

from __future__ import annotations

from math import isfinite

from tracker.motion.turning import Turn
from tracker.session.figures import tempo
from tracker.session.flags import LOW_MEASURED
from tracker.session.live import LiveState
from ui import words

#: Channels whose turns are told in degrees: those that have a bow over the target.
_TURNS = {"head_yaw": ("turns", "right", "left"), "head_pitch": ("nods", "up", "down")}


class SetTold:
    """Follows a set and tells it in a few short sentences.

    Parameters
    ----------
    channel
        What is counted in the exercise.
    """

    def __init__(self, channel: str = "") -> None:
        self._channel = channel
        self._turns: dict[str, Turn] = {}
        self._all: list[Turn] = []
        self._ran_s = self._seen_s = 0.0

    def take(self, live: LiveState, ran_s: float, *, measured: bool) -> None:
        """Take the state of the set as it goes on.

        Parameters
        ----------
        ran_s
            How long the set has gone on, s, pauses left out.
        measured
            Whether what is counted is measured now.
        """
        self._seen_s += max(ran_s - self._ran_s, 0.0) if measured else 0.0
        self._ran_s = max(ran_s, self._ran_s)
        turn = live.last_turn
        if turn is not None and (not self._all or turn.peak_s != self._all[-1].peak_s):
            self._turns[turn.side] = turn
            self._all.append(turn)

    def lines(self, repetitions: int, goal: int | None) -> tuple[str, ...]:
        """The set in words: what was counted, the last turn to each side, the usual tempo.

        None where so little was measured that a summary doubts its figures: the count would
        be taken for what was done.
        """
        if self._seen_s < LOW_MEASURED * self._ran_s or self._ran_s <= 0.0:
            return ()
        key = "ask.did" if goal is None else "ask.did.of"
        count, of = words.number(repetitions), "" if goal is None else words.number(goal)
        found = [words.say(key, count=count, goal=of)]
        if self._channel in _TURNS:
            name, *sides = _TURNS[self._channel]
            first, second = (self._degrees(side) for side in sides)
            if first and second:
                found.append(words.say(f"ask.did.{name}", first=first, second=second))
            elif first or second:
                # To the other side it did not go past the middle, or nobody knows how far.
                side = sides[0] if first else sides[1]
                found.append(words.say(f"ask.did.{side}", degrees=first or second))
        tempo_bpm = tempo(self._all)["median"]
        if tempo_bpm is not None:
            found.append(words.say("ask.did.tempo", tempo=words.number(tempo_bpm)))
        return (" ".join(found),)

    def _degrees(self, side: str) -> str:
        turn = self._turns.get(side)
        known = turn is not None and isfinite(turn.reached_deg)
        return words.number(turn.reached_deg) if turn is not None and known else ""
