"""Minutes a day of gaze stabilisation: what a plan comes to, and the guideline's figure.

Only head movement with the eyes on a target counts. The figure is as quoted by
others from the guideline; it rests on moderate to weak evidence there.
"""

from __future__ import annotations

from tracker.exercises.catalogue import CATALOGUE
from tracker.exercises.catalogue.sources import GUIDELINE
from tracker.plan.asked import asked_of
from tracker.plan.findings import LOSSES, Finding
from tracker.plan.model import Plan

#: Kind of loss -> least and, where one is named, most minutes a day: the guideline of 2022 as
#: quoted (``SOURCE``).
MINUTES_A_DAY: dict[str, tuple[float, float | None]] = {
    "acute": (12.0, None),
    "chronic": (20.0, None),
    "bilateral": (20.0, 40.0),
}
SOURCE = GUIDELINE


def gaze_minutes_a_day(plan: Plan, week: int = 1) -> float:
    """Planned minutes a day, rests left out, with every entry open."""
    sets = [asked_of(e, week) for e in plan.entries if CATALOGUE[e.exercise].gaze_minutes]
    return plan.bouts_a_day * sum(s.about_s for s in sets) / 60.0


def quoted_minutes(plan: Plan) -> tuple[float | None, float | None]:
    """Least and most minutes a day for the plan's kind of loss; None where none is named."""
    return MINUTES_A_DAY.get(plan.kind_of_loss, (None, None))


def guideline_words(plan: Plan) -> str:
    """The guideline's figure for the plan's kind of loss, in words."""
    return guideline_said(plan).text


def guideline_said(plan: Plan) -> Finding:
    """The same as a message, for whoever says it in another language."""
    least, most = quoted_minutes(plan)
    if least is None:
        return Finding((), "guideline_none")
    loss = LOSSES[plan.kind_of_loss]
    if most is None:
        return Finding.of((), "guideline_least", least=least, loss=loss, source=SOURCE)
    return Finding.of((), "guideline_range", least=least, most=most, loss=loss, source=SOURCE)
