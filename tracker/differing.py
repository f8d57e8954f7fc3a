"""When two means differ by more than chance: the one rule, for sessions and within a set.

Two things can make two means differ without anything having changed, and a difference has to be
larger than both: the measurement's error, which whoever asks knows, and the person's own spread
(:func:`by_spread`).
"""

from __future__ import annotations

from collections.abc import Sequence
from math import sqrt
from statistics import fmean
from typing import Literal

#: Student's t at 99.5 % by degrees of freedom; checked in the tests (arithmetic: they
#: work it out).
T_995 = {2: 9.9248, 3: 5.8409, 4: 4.6041, 5: 4.0321, 6: 3.7074, 7: 3.4995, 8: 3.3554}
#: From so many times the measurement's error on it is the person's spread alone that hides a
#: change (own choice).
UNEVEN = 2.0

Called = Literal["rose", "fell", "no_change"]


def by_spread(first: Sequence[float], last: Sequence[float]) -> float:
    """How large a difference of two means the person's own spread can make.

    Student's t for two independent means with the pooled spread inside both groups, two-sided at
    1 %: a person has dozens of such figures, and at 5 % one in twenty would be called by chance.

    Parameters
    ----------
    first, last
        Four to ten values in all, in one unit, which is that of the result.
    """
    freedom = len(first) + len(last) - 2
    spread = sqrt((_squares(first) + _squares(last)) / freedom)
    return T_995[freedom] * spread * sqrt(1.0 / len(first) + 1.0 / len(last))


def called(difference: float, own: float, error: float) -> Called:
    """What a difference is called: a change only beyond the spread's and the error's size."""
    if abs(difference) <= max(own, error):
        return "no_change"
    return "rose" if difference > 0 else "fell"


def too_uneven(own: float, error: float) -> bool:
    """Whether it is the person's spread alone that hides a change."""
    return own > UNEVEN * error


def _squares(values: Sequence[float]) -> float:
    middle = fmean(values)
    return sum((v - middle) ** 2 for v in values)
