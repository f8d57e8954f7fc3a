"""The one figure of a set that is read from afar: a count, the time left, or the time so far."""

from __future__ import annotations

from math import ceil, floor, isfinite

from tracker.plan.asked import Asked
from ui import words

#: Time left beside a target: in steps until the last seconds.
_BY_SECONDS, _STEP_S = 10, 5


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
