"""What a plan asks for next by its weeks: the coming step of each entry's ladder.

What it opens by a condition is in :mod:`tracker.records.conditions`.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from tracker.plan.asked import week_of
from tracker.plan.model import Plan, Rung


@dataclass(frozen=True, slots=True)
class Step:
    """The next step of an entry's ladder; ``day`` is its first, None in a plan without one."""

    entry_id: str
    exercise: str
    rung: Rung
    day: date | None


def steps_of(plan: Plan | None, today: date) -> list[Step]:
    """The next step of each entry that has one, in the plan's order."""
    if plan is None:
        return []
    week, found = week_of(plan, today), []
    for entry in plan.entries:
        coming = [r for r in entry.ladder if r.from_week > week]
        if coming:
            rung = min(coming, key=lambda r: r.from_week)
            day = plan.starts_on and plan.starts_on + timedelta(weeks=rung.from_week - 1)
            found.append(Step(entry.entry_id, entry.exercise, rung, day))
    return found
