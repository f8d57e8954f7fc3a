"""What is true of the people of the invented clinic after eight weeks, by their forms alone.

It was written down from ``clinic.py``, and from nothing that the review says of it.
"""

from __future__ import annotations

from dataclasses import dataclass

#: Weeks of the clinic, and those that are enough for the questions: the first, with which the
#: last sessions are compared, and the four over which practice is counted, in which finch's
#: medicines changed, too. Of the others the days remain on which the questions of the week come,
#: or they would come on other days from then on.
WEEKS = 8
WEEKS_ENOUGH = (1, 5, 6, 7, 8)


@dataclass(frozen=True)
class Truth:
    """What is so on the day after the last one, by the forms of the people alone.

    Attributes
    ----------
    call_first
        Who needs a call, the one who fell before the one who stopped unwell.
    practised_least
        Who, with the bouts of the last four weeks: done, and asked.
    gaze_fell
        Whose gaze leaves the target more than at first, and where the head is then.
    rising
        Whose dizziness rises, from about what to what.
    medicines
        Who told of other medicines, and how many weeks had begun.
    condition_met
        Who keeps the eyes on the target, clear, as the plan's condition asks.
    not_trusted
        Whose figures can't be trusted, and why.
    scores_fell, scores_rose
        Whose questionnaire score is lower at the end, and whose is higher.
    """

    call_first: tuple[str, ...]
    practised_least: tuple[str, int, int]
    gaze_fell: dict[str, str]
    rising: dict[str, tuple[float, float]]
    medicines: tuple[str, int]
    condition_met: tuple[str, ...]
    not_trusted: dict[str, str]
    scores_fell: tuple[str, ...]
    scores_rose: tuple[str, ...]


TRUTH = Truth(
    # robin_week: one fall in the last days. finch: unwell in a set of the very last session.
    call_first=("robin", "finch"),
    # _few: a bout on every fourth day, 7 in 28 days, of two a day.
    practised_least=("wren", 7, 56),
    # teal: away_left grows from 0.1 to 0.9 of the turns, away_right stays.
    gaze_fell={"teal": "left"},
    # finch: before is 1 in the first half, then 3 and 4.
    rising={"finch": (1.0, 4.0)},
    # finch_week: told as the second half begins.
    medicines=("finch", 5),
    # heron: away 0 on both sides and clear since two thirds of the time. All others are away at
    # times (robin .2, finch .15, teal and wren .1 and more; each glance is half a second, so that
    # a set of twelve seconds has room for one of .1), or not measured (plover).
    condition_met=("heron",),
    # plover: light 0.08 of 1, and half the pictures or more without a face.
    not_trusted={"plover": "dark"},
    scores_fell=("heron",),
    scores_rose=("finch",),
)
