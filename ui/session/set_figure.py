"""The one figure of a set that is read from afar: a count, the time left, or the time so far."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, floor, isfinite

from tracker.plan.asked import Asked
from tracker.session.live import LiveState
from ui import words

#: Time left beside a target: in steps until the last seconds.
_BY_SECONDS, _STEP_S = 10, 5


@dataclass(frozen=True, slots=True)
class Large:
    """What is read from afar of a set: a figure, what it is, and how the set is done."""

    figure: str = ""
    caption: str = ""
    how: str = ""
    measured: bool = True


def set_figure(
    entry: Asked, *, repetitions: int | None, left_s: float, ran_s: float
) -> tuple[str, str]:
    """Figure and what it is, of a set that goes on.

    Parameters
    ----------
    repetitions
        Those done, None where the camera doesn't count.
    left_s, ran_s
        What is left of the set's time, and how long it has gone on.
    """
    count = repetitions if entry.exercise.counted else None
    if entry.seconds is not None:
        key = "far.left" if count is None else "far.left_done"
        return clock_words(ceil(left_s)), words.say(key, count=count)
    if count is None:
        return clock_words(floor(ran_s)), words.say("far.so_far")
    if entry.repetitions is None:
        return words.number(count), ""
    return words.number(count), words.say("far.of", goal=entry.repetitions)


def clock_words(seconds: int) -> str:
    """Minutes and seconds, in the language's digits."""
    minutes, rest = (words.number(part) for part in divmod(seconds, 60))
    return f"{minutes}:{rest.rjust(2, words.number(0))}"


def time_left(left_s: float) -> str:
    """What is left of a timed set: in steps of five seconds until the last ten.

    Figures that changed every second beside the target would pull the eyes away.
    """
    if not isfinite(left_s):
        return ""
    seconds = ceil(max(left_s, 0.0))
    if seconds > _BY_SECONDS:
        seconds = ceil(seconds / _STEP_S) * _STEP_S
    return words.say("ask.left", time=clock_words(seconds))


def _lowered(live: LiveState, entry: Asked | None) -> bool:
    """Whether less is asked than the plan wants, because the screen carries no more."""
    reach = live.goal_amplitude_range_deg
    wanted = None if entry is None else entry.amplitude_deg
    return reach is not None and wanted is not None and reach[1] < wanted[1] - 0.05


def asked_words(live: LiveState, entry: Asked | None) -> str:
    """What is asked of a set with a target: how often, how far, how fast."""
    tempo, less = live.goal_tempo_bpm, _lowered(live, entry)
    parts = []
    if live.goal_repetitions is not None:
        # What is done stands at the target: a count up here would pull the eyes away.
        parts.append(words.times(live.goal_repetitions))
    reach = live.goal_amplitude_range_deg
    if tempo is not None and reach is not None:
        low, high = (words.number(v) for v in reach)
        key = "practice.asked_less" if less else "practice.asked"
        parts.append(words.say(key, low=low, high=high, tempo=words.number(tempo)))
    elif tempo is not None:
        parts.append(words.say("practice.asked_tempo", tempo=words.number(tempo)))
    return "   ·   ".join(parts)
