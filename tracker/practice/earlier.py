"""What earlier sessions of the person mean for today's: what is asked, what is not repeated."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date

from tracker.exercises.catalogue import CATALOGUE
from tracker.practice.day import Day
from tracker.practice.week import Week, dated_before, week_before
from tracker.session.summary_file import Summary

#: Why a session ends before anything is done: an earlier one of today had to be ended.
DAY_IS_OVER = "day_is_over"


@dataclass(frozen=True, slots=True)
class Earlier:
    """What earlier sessions say; without any, nothing.

    Attributes
    ----------
    week
        What the last week says.
    ask_since_last
        Whether it is time to ask how a day of practice went on, and the morning after it.
    doubled
        Exercises in near work that were seen double in today.
    day
        Whether all is over for today; :func:`earlier_of` leaves that to ``practice.day``.
    lengths_mm
        Exercise, posture and length (``distance``, ``spacing``) -> what it was the last time
        that the exercise was done with marks on a wall.
    """

    week: Week = field(default_factory=Week)
    ask_since_last: bool = False
    doubled: frozenset[str] = frozenset()
    day: Day = field(default_factory=Day)
    lengths_mm: Mapping[tuple[str, str, str], float] = field(default_factory=dict)


def earlier_of(history: Sequence[Summary], today: date) -> Earlier:
    """What earlier sessions mean on a day.

    Parameters
    ----------
    history
        Summaries of the person's earlier sessions, of whatever plan, oldest first.
    today
        The day on the person's calendar.

    Notes
    -----
    The rest of a day can be told of once it is over, and so can the morning after it: both
    are asked about in the first session of a later day, once, answered or not, whatever was
    practised in that one; a day on which nothing was begun has no rest of a day of practice.
    Sessions without a day, of a day to come, outside any plan, or that only tried the program out
    count for nothing.
    """
    dated = dated_before(history, today)
    practised = max((d for d, s in dated if d < today and s.anything_begun), default=None)
    since = [s for d, s in dated if practised is not None and d > practised]
    of_today = [s for d, s in dated if d == today]
    return Earlier(
        week=week_before(history, today),
        ask_since_last=practised is not None and not any(map(_asked_since, since)),
        doubled=frozenset(
            e.exercise
            for s in of_today
            for e in s.exercises
            if _is_near(e.exercise) and e.clarity.get("value") == "double"
        ),
        lengths_mm=_lengths_mm([s for _, s in dated]),
    )


def _lengths_mm(sessions: Sequence[Summary]) -> dict[tuple[str, str, str], float]:
    """The lengths of marks on a wall, each as the newest session has it; oldest first."""
    found = {}
    for done in (e for s in sessions for e in s.exercises):
        wall, posture = done.prescribed.get("wall"), done.prescribed.get("posture")
        if not isinstance(wall, Mapping) or not isinstance(posture, str):
            continue
        for length in ("distance", "spacing"):
            value = wall.get(f"{length}_mm")
            if isinstance(value, int | float) and not isinstance(value, bool):
                found[done.exercise, posture, length] = float(value)
    return found


def _asked_since(summary: Summary) -> bool:
    return isinstance((summary.gate or {}).get("since_last"), Mapping)


def _is_near(exercise_id: str) -> bool:
    exercise = CATALOGUE.get(exercise_id)
    return exercise is not None and exercise.near_work
