"""How often somebody practised, against the plan: bouts a day and days a week.

A bout is a session in which something was practised. Bouts that the camera saw
something of, and those that it did not see (reported by the person, or practised out of
its sight), are counted apart.
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
    """Bouts of one day: seen by the camera, and not seen (most of them reported)."""

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
    began, plans
        The day from which on bouts were asked, also before the window, and by which plans; None
        and empty with no plan.
    counted, asked
        The bouts of the share: done, and asked for by the plan of each day. Of a day that
        is not over no more is asked than was done.
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
    counted: int = 0
    asked: float = 0.0
    began: date | None = None
    plans: tuple[Plan, ...] = ()

    def asked_on(self, day: date) -> int:
        """Bouts asked for on a day, by the plan that held then; 0 before the first one."""
        if self.began is None or day < self.began:
            return 0
        return _plan_on(self.plans, day).bouts_a_day

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
    rows: Sequence[SessionRow],
    plan: Plan | None,
    to_day: date,
    window_days: int = WINDOW_DAYS,
    *,
    earlier: Sequence[Plan] = (),
    today: date | None = None,
) -> Adherence:
    """Practice in the days up to one day.

    The window begins no earlier than the first plan, or without one the first session:
    nobody has missed what was not asked yet.

    Parameters
    ----------
    rows
        Sessions of one person.
    plan
        The present plan.
    to_day
        The last day counted.
    earlier
        Other plans of the person; each holds from its start to the next one's.
    today
        The day that is not over yet.
    """
    days = bouts_by_day(rows)
    starts = [d for d in (row.day for row in rows) if d is not None]
    plans = [] if plan is None else [*earlier, plan]
    begins = [p.starts_on for p in plans if p.starts_on is not None]
    began = min(begins) if plan is not None and plan.starts_on else min(starts, default=None)
    if began is None or began > to_day:
        from_day = None
    else:
        from_day = max(began, to_day - timedelta(days=window_days - 1))
    inside = {} if from_day is None else {d: b for d, b in days.items() if from_day <= d <= to_day}
    counted, asked = 0, 0.0
    if plan is not None and from_day is not None:
        counted, asked = _against(plans, inside, from_day, to_day, today)
    share = min(1.0, counted / asked) if asked else None
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
        counted=counted,
        asked=asked,
        began=None if plan is None else began,
        plans=tuple(plans),
    )


def _against(
    plans: Sequence[Plan], done: dict[date, Bouts], from_day: date, to_day: date, today: date | None
) -> tuple[int, float]:
    """Bouts done and asked for from one day to another; the last of ``plans`` is the present."""
    counted, asked = 0, 0.0
    for k in range((to_day - from_day).days + 1):
        day = from_day + timedelta(days=k)
        plan = _plan_on(plans, day)
        did = min(done.get(day, Bouts()).all, plan.bouts_a_day)
        a_day = plan.bouts_a_day * plan.days_a_week / 7.0
        counted += did
        asked += min(a_day, did) if day == today else a_day
    return counted, asked


def _plan_on(plans: Sequence[Plan], day: date) -> Plan:
    """The plan that held on a day: the one that began last; else the present one."""
    begun = [p for p in plans if p.starts_on is not None and p.starts_on <= day]
    # Of two that begin on one day the later in the list: the present one stands last.
    return max(enumerate(begun), key=lambda e: (e[1].starts_on, e[0]))[1] if begun else plans[-1]
