"""Chair stands against the published tables, for the therapist only.

Both tables are of the whole test: a chair 43 cm (17 inches) high, arms crossed on the
chest all the time, as fast as is safe. The camera sees neither chair nor arms, so what is
said holds only if they were so. It is a comparison with a table, no finding. The tables are of
whole stands, so one that is told as not upright is none (this project's own reading).

Sources: US CDC STEADI, sheet "30-Second Chair Stand", below-average scores (a stand that is
more than half-way up at the end counts; any use of the hands makes the score 0); Bohannon
RW 2006, Percept Mot Skills 103:215 (five stands take longer than average above these times).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import isfinite
from statistics import median
from typing import Any, Literal, get_args

from tracker.exercises.watchers.turns import stood_up
from tracker.motion.turning import Turn
from tracker.sample import Sample

Sex = Literal["female", "male"]
AgeGroup = Literal["60-64", "65-69", "70-74", "75-79", "80-84", "85-89", "90-94"]
AGE_GROUPS: tuple[AgeGroup, ...] = get_args(AgeGroup)

STEADI = "US CDC STEADI, 30-second chair stand, below-average scores"
BOHANNON = "Bohannon RW 2006, Percept Mot Skills 103:215, time of five stands"
HOLDS_FOR = "a chair 43 cm high and arms crossed all the time; the camera sees neither"
#: Fewer stands in 30 s than this are below average (STEADI): age group -> women, men.
LEAST_STANDS: dict[str, tuple[int, int]] = {
    "60-64": (12, 14),
    "65-69": (11, 12),
    "70-74": (10, 12),
    "75-79": (10, 11),
    "80-84": (9, 10),
    "85-89": (8, 8),
    "90-94": (4, 7),
}
#: More seconds for five stands than this are worse than average (Bohannon): first age of
#: ten years -> seconds, for both sexes (2006).
MOST_SECONDS: dict[int, float] = {60: 11.4, 70: 12.6, 80: 14.8}
FIVE, THIRTY_S = "chair-stands-five", "chair-stands-30-s"
#: The test lasts 30 s; a frame's time may be missing (STEADI; the margin is this project's own
#: choice).
TEST_S, NEARLY_S = 30.0, 0.5
#: Where less was measured a stand may be missing (as the flag of a summary; common practice).
LEAST_MEASURED = 0.8
#: A stand counts at the end from half of its way up (STEADI); home is the median so long.
UP_SHARE, HOME_S = 0.5, 0.5


def against_table(
    exercise_id: str,
    turns: Sequence[Turn],
    samples: Sequence[Sample],
    span_s: float,
    measured_fraction: float,
    group: Mapping[str, Any] | None,
) -> dict[str, Any] | None:
    """A chair stand test against its table; None for every other exercise.

    Parameters
    ----------
    exercise_id, turns, samples, span_s, measured_fraction
        The set as it was done.
    group
        ``age_group`` and ``sex`` as the therapist's plan gives them; None where it doesn't.

    Returns
    -------
    dict or None
        ``value`` (stands, or seconds), ``limit``, ``below_average`` (null with a ``reason``
        where it can't be told), ``source`` and ``holds_for``.
    """
    if exercise_id not in (FIVE, THIRTY_S):
        return None
    age, sex = (group or {}).get("age_group"), (group or {}).get("sex")
    limit: float | None
    if exercise_id == THIRTY_S:
        value, reason = _stands(turns, samples, span_s)
        limit = LEAST_STANDS[age][sex == "male"] if age in LEAST_STANDS and sex else None
        below = None if value is None or limit is None else value < limit
    else:
        value, reason = _seconds_of_five(turns)
        limit = MOST_SECONDS.get(int(age[:2]) // 10 * 10) if age in LEAST_STANDS else None
        below = None if value is None or limit is None else value > limit
    if not reason and measured_fraction < LEAST_MEASURED:
        below, reason = None, "too little was measured: a stand may be missing"
    if not reason and limit is None:
        reason = _why_no_limit(exercise_id, age, sex)
    return {
        "value": value,
        "unit": "stands" if exercise_id == THIRTY_S else "s",
        "limit": limit,
        "below_average": below,
        "group": {"age_group": age, "sex": sex},
        "source": STEADI if exercise_id == THIRTY_S else BOHANNON,
        "holds_for": HOLDS_FOR,
        "reason": reason or None,
    }


def _why_no_limit(exercise_id: str, age: str | None, sex: str | None) -> str:
    if age is None or (sex is None and exercise_id == THIRTY_S):
        return "the plan gives no age group or sex for the table"
    return "the table ends before this age"


def _stands(
    turns: Sequence[Turn], samples: Sequence[Sample], span_s: float
) -> tuple[float | None, str]:
    """Stands in the half minute, the one that was more than half-way up at its end too."""
    if abs(span_s - TEST_S) > NEARLY_S:
        return None, "the test lasts 30 seconds, this set did not"
    done = sum(t.side == "up" and stood_up(t) for t in turns)
    return done + _still_up(turns, samples), ""


def _still_up(turns: Sequence[Turn], samples: Sequence[Sample]) -> bool:
    """Whether the set ended on the way up of a stand that no turn tells of yet."""
    up = [t for t in turns if t.side == "up" and stood_up(t)]
    ways = [t.swing_mm for t in up if isfinite(t.swing_mm)]
    rows = [(s.time_s, s.head_y_mm) for s in samples if isfinite(s.head_y_mm)]
    if not ways or not rows or turns[-1].side == "up":
        return False
    home = median(y for t, y in rows if t <= rows[0][0] + HOME_S)
    return rows[-1][1] - home > UP_SHARE * median(ways)


def _seconds_of_five(turns: Sequence[Turn]) -> tuple[float | None, str]:
    """From the first movement up to seated again after the fifth stand."""
    if len(turns) < 10:
        return None, "fewer than five stands"
    if not all(stood_up(t) for t in turns[:10] if t.side == "up"):
        return None, "not every stand was all the way up"
    return round(turns[9].peak_s - turns[0].start_s, 2), ""
