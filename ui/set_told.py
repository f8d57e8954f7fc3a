"""What a set is said to have been once it is over: the figures that stood beside its target.

Beside the target there is room for little, and eyes that are busy read less. Who has large
text finds here what was left out there.
"""

from __future__ import annotations

from math import isfinite

from tracker.motion.turning import Turn
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
        self._tempo_bpm: float | None = None

    def take(self, live: LiveState) -> None:
        """Take the state of the set as it goes on."""
        if live.last_turn is not None:
            self._turns[live.last_turn.side] = live.last_turn
        self._tempo_bpm = live.tempo_bpm or self._tempo_bpm

    def lines(self, repetitions: int, goal: int | None) -> tuple[str, ...]:
        """The set in words: what was counted, the last turn to each side, the tempo."""
        key = "ask.did" if goal is None else "ask.did.of"
        count, of = words.number(repetitions), "" if goal is None else words.number(goal)
        found = [words.say(key, count=count, goal=of)]
        if self._channel in _TURNS:
            name, *sides = _TURNS[self._channel]
            first, second = (self._degrees(side) for side in sides)
            if first and second:
                found.append(words.say(f"ask.did.{name}", first=first, second=second))
        if self._tempo_bpm is not None and isfinite(self._tempo_bpm):
            found.append(words.say("ask.did.tempo", tempo=words.number(self._tempo_bpm)))
        return (" ".join(found),)

    def _degrees(self, side: str) -> str:
        turn = self._turns.get(side)
        known = turn is not None and isfinite(turn.amplitude_deg)
        return words.number(turn.amplitude_deg) if turn is not None and known else ""
