"""What the far end of a call sees of a set: texts that hold long enough to come through.

Pure. A video call thins out pictures and details; what is larger and stays longer is
still read there.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass, fields, replace
from math import isfinite
from typing import Any, Generic, TypeVar

from tracker.motion.turning import Turn
from tracker.session.live import LiveState
from ui import words
from ui.theme import TEXT_STEPS, size_px

#: Shares of the window's height: capital letters of words, and figures of values (both
#: the project's own demand for a call at 360 lines; checked by reading encoded pictures).
WORDS_SHARE, VALUES_SHARE = 0.022, 0.037
#: Each text stays at least this long.
HOLD_S = 1.0
#: Height of a capital against the size of its type, for the usual faces (common practice).
CAPITAL = 0.7
#: Text sizes beyond those that can be chosen, and how wide for its height a window has to be
#: for them (screens are 1.6 and more).
_HIGH_STEPS = (225, 250, 275, 300, 325, 350)
_WIDE = 1.5

_NONE = ("", "", "")


@dataclass(frozen=True, slots=True)
class Board:
    """The texts of the sharing layout; empty where there is nothing to say."""

    count: str = ""
    goal: str = ""
    first: tuple[str, str, str] = ("", "", "")
    second: tuple[str, str, str] = ("", "", "")
    tempo: str = ""
    asked: str = ""
    cue: str = ""
    name: str = ""
    symptoms: str = ""
    remedy: str = ""

    def in_words(self) -> str:
        """All of it as one text."""
        parts = (f"{self.count} {self.goal}", *(" ".join(s) for s in (self.first, self.second)))
        return ". ".join(
            p.strip()
            for p in (
                *parts,
                self.name,
                self.tempo,
                self.asked,
                self.cue,
                self.remedy,
                self.symptoms,
            )
            if p.strip()
        )


Shown = TypeVar("Shown")


class Held(Generic[Shown]):
    """Lets each part of what is shown stand for at least :data:`HOLD_S`, then shows the newest.

    What moves all the while, as a target or a bead on its way, is no part to be read: that is
    left out here.

    Parameters
    ----------
    first
        What is shown before anything comes; it need not stand.
    apart
        Names of parts that don't wait.
    """

    def __init__(self, first: Shown, apart: Collection[str] = ()) -> None:
        self.shown = first
        self._apart = apart
        self._since_s: dict[str, float] = {}

    def offer(self, newest: Shown, now_s: float) -> Shown:
        """Take the newest; gives what to show.

        ``now_s`` is on any clock that never goes back.
        """
        changed = {}
        for part in fields(newest):  # type: ignore[arg-type]
            name = part.name
            new, old = getattr(newest, name), getattr(self.shown, name)
            stood_s = now_s - self._since_s.get(name, -HOLD_S)
            if new != old and (stood_s >= HOLD_S - 1e-9 or name in self._apart):
                changed[name] = new
                self._since_s[name] = now_s
        if changed:
            self.shown = replace(self.shown, **changed)  # type: ignore[type-var]
        return self.shown


class Sides:
    """Remembers the last turn to each side."""

    def __init__(self) -> None:
        self._turns: dict[str, Turn] = {}
        self._last: int | None = None

    def take(self, turn: Turn | None) -> None:
        """Take the last turn."""
        if turn is not None and turn.index != self._last:
            self._last = turn.index
            self._turns[turn.side] = turn

    def texts(self) -> tuple[tuple[str, str, str], tuple[str, str, str]]:
        """Name, degrees and speed of the first side and the second (right and left, up and down).

        On the screen the first one stands at the right, as in a mirror.
        """
        vertical = bool({"up", "down"} & set(self._turns))
        names = ("up", "down") if vertical else ("right", "left")
        first, second = (_side_texts(n, self._turns.get(n)) for n in names)
        return first, second


def _side_texts(name: str, turn: Turn | None) -> tuple[str, str, str]:
    degrees = _figure("share.degrees", None if turn is None else turn.reached_deg)
    speed = _figure("share.speed", None if turn is None else turn.peak_speed_deg_s)
    return words.say(f"share.{name}"), degrees, speed


def _figure(key: str, value: float | None) -> str:
    if value is None or not isfinite(value):
        return "–"
    return words.say(key, value=words.number(value))


def board_of(
    live: LiveState | None,
    sides: Sides,
    *,
    counted: bool,
    name: str = "",
    time: str = "",
    cue: str = "",
    scores: tuple[str, Mapping[str, int]] | None = None,
) -> Board:
    """Texts of a set as it stands.

    Parameters
    ----------
    live
        The engine's state, None before a set.
    sides
        The last turns.
    counted
        Whether the camera counts this exercise.
    name
        What is done.
    time
        What is left of a timed set.
    cue
        What is said to the patient now.
    scores
        When the symptoms were asked last (``before`` or ``after``), and the scores.
    """
    count = goal = tempo = asked = ""
    if live is not None and counted:
        count = words.number(live.repetitions)
        goal = words.say("share.done")
        if live.goal_repetitions is not None:
            goal = words.say("share.of", goal=words.number(live.goal_repetitions))
        sides.take(live.last_turn)
    if live is not None:
        tempo = _tempo(live.tempo_bpm)
        asked = _asked(live)
    if time:
        count, goal = (count, words.say("share.left_s", time=time)) if count else (time, "")
    first, second = sides.texts() if counted else (_NONE, _NONE)
    symptoms = symptom_words(scores)
    return Board(count, goal, first, second, tempo, asked, cue, name, symptoms)


def _tempo(tempo_bpm: float | None) -> str:
    if tempo_bpm is None or not isfinite(tempo_bpm):
        return ""
    return words.say("share.tempo_now", tempo=words.number(tempo_bpm))


def _asked(live: LiveState) -> str:
    parts = []
    if live.goal_amplitude_range_deg is not None:
        low, high = (words.number(v) for v in live.goal_amplitude_range_deg)
        # The sign of degrees is lost in a call.
        parts.append(words.say("call.amplitude", low=low, high=high))
    if live.goal_tempo_bpm is not None:
        parts.append(words.say("share.tempo", tempo=words.number(live.goal_tempo_bpm)))
    return words.say("share.asked", what=words.row_of(parts)) if parts else ""


def symptom_words(scores: tuple[str, Mapping[str, Any]] | None) -> str:
    """The symptom scores as a line."""
    if scores is None:
        return words.say("share.no_scores")
    when, given = scores
    parts = [
        words.say(f"share.score.{name}", value=words.number(value))
        for name, value in given.items()
        if value is not None and words.has(f"share.score.{name}")
    ]
    if not parts:
        return words.say("share.no_scores")
    key = "share.before" if when == "before" else "share.after"
    return words.say(key, scores=words.row_of(parts))


def text_percent(width_px: float, height_px: float, chosen: int) -> int:
    """Text size at which all words of a window are large enough, at least the one chosen.

    In a high window it is larger than any that can be chosen; in one that is narrow as well
    such letters would be cut.
    """
    steps = [*TEXT_STEPS, *(_HIGH_STEPS if width_px >= _WIDE * height_px else ())]
    for percent in steps:
        large = size_px("body", percent) * CAPITAL >= WORDS_SHARE * height_px
        if percent >= chosen and large:
            return percent
    return steps[-1]
