"""How often somebody practised, against the plan: bouts a day and days a week.

A bout is a session in which something was practised. Bouts that the camera saw
something of, and those that only the person says were done, are counted apart.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from tracker.plan.model import Plan
from tracker.records.rows import SessionRow

#: Four weeks, as long as a person is usually between two visits (common practice).
WINDOW_DAYS = 28
#: Below this share of the bouts asked for it is put before the therapist (own choice).
LOW_SHARE = 0.6
#: So many days without practice are said (own choice: more than a weekend).
LONG_PAUSE_DAYS = 4


@dataclass(frozen=True, slots=True)
class Bouts:
    """Bouts of one day: seen by the camera, and only reported."""

    measured: int = 0
    reported: int = 0

    @property
    def all(self) -> int:
        """Both."""
        return self.measured + self.reported


@dataclass(frozen=True, slots=True)
class Adherence:
    """Practice from one day to another, both counted in.

    Attributes
    ----------
    days
        Bouts of every day that has some, also before the window.
    bouts_asked, days_asked
        A day and a week, by the plan; None with no plan at hand.
    share
        Bouts done of those asked for, 0 to 1; what is done on a day beyond what was asked
        makes up for no other day. None with no plan.
    """

    from_day: date | None
    to_day: date
    days: dict[date, Bouts]
    bouts_asked: int | None
    days_asked: int | None
    measured: int
    reported: int
    days_practised: int
    share: float | None

    @property
    def length_days(self) -> int:
        """Days of the window."""
        return 0 if self.from_day is None else (self.to_day - self.from_day).days + 1

    @property
    def days_a_week(self) -> float | None:
        """Days with practice in a week."""
        return 7.0 * self.days_practised / self.length_days if self.length_days else None

    @property
    def bouts_a_day(self) -> float | None:
        """Bouts on a day with practice."""
        done = self.measured + self.reported
        return done / self.days_practised if self.days_practised else None

    @property
    def last_day(self) -> date | None:
        """The last day with practice."""
        return max(self.days, default=None)


def bouts_by_day(rows: Sequence[SessionRow]) -> dict[date, Bouts]:
    """Bouts of each day that has some."""
    days: dict[date, Bouts] = {}
    for row in rows:
        if not row.is_bout or row.day is None:
            continue
        had = days.get(row.day, Bouts())
        seen = int(row.was_measured)
        days[row.day] = Bouts(had.measured + seen, had.reported + 1 - seen)
    return days


def adherence_of(
    rows: Sequence[SessionRow], plan: Plan | None, to_day: date, window_days: int = WINDOW_DAYS
) -> Adherence:
    """Practice in the days up to one day.

    The window begins no earlier than the plan, or without one the first session: nobody
    has missed what was not asked yet.
    """
    days = bouts_by_day(rows)
    starts = [d for d in (row.day for row in rows) if d is not None]
    began = plan.starts_on if plan is not None and plan.starts_on else min(starts, default=None)
    if began is None or began > to_day:
        from_day = None
    else:
        from_day = max(began, to_day - timedelta(days=window_days - 1))
    inside = {} if from_day is None else {d: b for d, b in days.items() if from_day <= d <= to_day}
    length = 0 if from_day is None else (to_day - from_day).days + 1
    share = None
    if plan is not None and length:
        asked = plan.bouts_a_day * plan.days_a_week * length / 7.0
        share = min(1.0, sum(min(b.all, plan.bouts_a_day) for b in inside.values()) / asked)
    return Adherence(
        from_day=from_day,
        to_day=to_day,
        days=days,
        bouts_asked=None if plan is None else plan.bouts_a_day,
        days_asked=None if plan is None else plan.days_a_week,
        measured=sum(b.measured for b in inside.values()),
        reported=sum(b.reported for b in inside.values()),
        days_practised=len(inside),
        share=share,
    )
