"""What a plan asks for next by its weeks: the coming step of each entry's ladder.

What it opens by a condition is in :mod:`tracker.records.conditions`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from tracker.plan.asked import week_of
from tracker.plan.model import Plan, Rung
from tracker.records.conditions import Standing


@dataclass(frozen=True, slots=True)
class Step:
    """The next step of an entry's ladder; ``day`` is its first, None in a plan without one."""

    entry_id: str
    exercise: str
    rung: Rung
    day: date | None


def steps_of(plan: Plan | None, today: date, conditions: Sequence[Standing] = ()) -> list[Step]:
    """The next step of each open entry that has one, in the plan's order.

    ``conditions`` are how those of the plan stand: what one of them still closes, or what is not
    known to be open since nobody has practised it, is not what comes next.
    """
    if plan is None:
        return []
    closed = {name for s in conditions if not s.is_open for name in s.entries}
    week, found = week_of(plan, today), []
    for entry in plan.entries:
        if entry.entry_id in closed:
            continue
        coming = [r for r in entry.ladder if r.from_week > week]
        if coming:
            rung = min(coming, key=lambda r: r.from_week)
            day = plan.starts_on and plan.starts_on + timedelta(weeks=rung.from_week - 1)
            found.append(Step(entry.entry_id, entry.exercise, rung, day))
    return found
