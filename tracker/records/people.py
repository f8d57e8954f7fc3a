"""People by pseudonym: their sessions, plan, practice, and what needs eyes first."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from pathlib import PurePosixPath

from tracker.plan.model import Plan
from tracker.practice.tries import is_quiet_try
from tracker.records.adherence import Adherence, adherence_of
from tracker.records.attention import Kind, Reason, reasons_of, reasons_of_each, urgency
from tracker.records.conditions import Standing, conditions_of
from tracker.records.gaze_minutes import GazeMinutes, gaze_minutes
from tracker.records.index import Records, without_collecting
from tracker.records.places import clean
from tracker.records.rows import SessionRow
from tracker.records.series import Series, series_of
from tracker.records.steps import Step, steps_of

#: A folder whose newest session is older than this was handed over, not synced: practice
#: is counted up to that session, since what came after it can't be in it (own choice).
STILL_SYNCED_DAYS = 7

#: The name of the sessions that have none: no pseudonym is empty.
NO_NAME = ""

#: How the file of a plan begins that is handed out to a patient: a copy, with the clinic's keys.
HANDED_OUT = "for-patient-"


@dataclass(frozen=True, slots=True)
class Person:
    """One person; or the sessions without a pseudonym, which may be of many (``nameless``).

    Of these nothing is told across sessions: no practice, trends or conditions, and no plan.

    Attributes
    ----------
    name
        The pseudonym; :data:`NO_NAME` of the nameless.
    rows
        Their sessions, oldest first.
    plan
        The plan at hand, None if there is none in the folder.
    reasons
        What needs eyes first, the gravest first.
    conditions
        How the conditions of the plan stand.
    steps
        What the plan asks for next by its weeks.
    """

    name: str
    rows: list[SessionRow]
    plan: Plan | None
    adherence: Adherence
    reasons: list[Reason]
    conditions: list[Standing]
    steps: Sequence[Step] = ()

    @property
    def nameless(self) -> bool:
        """Whether these are the sessions without a pseudonym."""
        return self.name == NO_NAME

    @property
    def affected_side(self) -> str:
        """``right``, ``left``, ``both`` or ``unknown``, by the plan."""
        return "unknown" if self.plan is None else self.plan.affected_side

    @property
    def last_day(self) -> date | None:
        """Day of the last session, practised or not."""
        return max((r.day for r in self.rows if r.day), default=None)

    @property
    def gaze(self) -> GazeMinutes | None:
        """Minutes a day of gaze stabilisation in the days that practice is counted over."""
        if self.nameless:
            return None
        return gaze_minutes(self.rows, self.adherence.from_day, self.adherence.to_day)

    @property
    def baseline_day(self) -> date | None:
        """Day of the newest baseline in which something was practised; None where there is none."""
        if self.nameless:
            return None
        days = [r.day for r in self.rows if r.baseline and r.is_bout]
        return max((d for d in days if d is not None), default=None)

    def series(self) -> list[Series]:
        """Every figure over the sessions."""
        return self.series_over(self.rows)

    def series_over(self, rows: Sequence[SessionRow]) -> list[Series]:
        """Every figure over some of the sessions; none of the nameless."""
        return [] if self.nameless else series_of(rows)


def people_of(records: Records, today: date) -> list[Person]:
    """Everybody in a folder, in the order of what needs eyes first."""
    groups: dict[str, list[SessionRow]] = {}
    for row in records.rows:
        if _says_nothing(row):
            continue
        groups.setdefault(name_of(row), []).append(row)
    to_day = count_to(records.rows, today)
    plans, copies = without_copies(records.plans), handed_out(records.plans)
    with without_collecting():
        people = [
            _person(name, rows, plans, to_day, today, copies) for name, rows in groups.items()
        ]
    return sorted(people, key=lambda p: urgency(p.reasons, p.adherence.share, p.name))


def name_of(row: SessionRow) -> str:
    """The pseudonym, as documents have it; nobody's where nothing of it would be seen."""
    return clean(row.person or "", None) or NO_NAME


def _says_nothing(row: SessionRow) -> bool:
    """Whether it is a nameless try of the program in which nothing happened."""
    return name_of(row) == NO_NAME and is_quiet_try(row.plan_id, row.ended, row.put_first)


def count_to(rows: Iterable[SessionRow], today: date) -> date:
    """The day up to which practice is counted: yesterday, or the folder's newest session.

    Today is not over yet, so it counts only where something was done today.
    """
    newest = max((d for d in (r.day for r in rows) if d is not None and d <= today), default=today)
    if (today - newest).days > STILL_SYNCED_DAYS:
        return newest
    return max(newest, today - timedelta(days=1))


def without_copies(plans: Sequence[tuple[str, Plan]]) -> list[Plan]:
    """Plans without the copies that were handed out, in their order.

    Such a copy is known by its name, whatever has become of the plan since, and by its content:
    all but the keys is that of another file. Where a copy is all there is, it is the plan. Of
    several that are alike the newest stays: who has gone back to what was before means that.
    """
    copies = {id(plan) for _, plan in handed_out(plans)}
    left = [plan for _, plan in plans if id(plan) not in copies]
    # The plan itself before its copy: it has no keys, or else was written later.
    kept: dict[tuple[str, str | None], list[tuple[Plan, Plan]]] = {}
    newest_first = left[::-1]
    for plan in sorted(newest_first, key=lambda p: p.hand_over is not None):
        alike, bare = kept.setdefault(_whose(plan), []), _bare(plan)
        if not any(bare == other for other, _ in alike):
            alike.append((bare, plan))
    own = {id(plan) for alike in kept.values() for _, plan in alike}
    return [plan for plan in left if id(plan) in own]


def handed_out(plans: Sequence[tuple[str, Plan]]) -> list[tuple[str, Plan]]:
    """Copies that were handed out, by their names, of plans that are here themselves."""
    copies = [PurePosixPath(path).name.startswith(HANDED_OUT) for path, _ in plans]
    here = {_whose(plan) for (_, plan), copy in zip(plans, copies, strict=True) if not copy}
    return [one for one, copy in zip(plans, copies, strict=True) if copy and _whose(one[1]) in here]


def plans_of_nobody(rows: Iterable[SessionRow], plans: Sequence[tuple[str, Plan]]) -> list[str]:
    """Files of plans without a pseudonym that sessions name, the newest first."""
    known = {r.plan_id for r in rows}
    copies = {path for path, _ in handed_out(plans)}
    return [
        path
        for path, plan in reversed(plans)
        if plan.plan_id in known and plan.person is None and path not in copies
    ]


def _bare(plan: Plan) -> Plan:
    return plan.model_copy(update={"hand_over": None})


def _whose(plan: Plan) -> tuple[str, str | None]:
    return plan.plan_id, plan.person


@dataclass(frozen=True, slots=True)
class PlanTaken:
    """The plan that is taken for a person's now, and what puts a doubt on that.

    Attributes
    ----------
    tied
        How many files differ between which only their age has decided; 0 where none do.
    not_handed_out
        How many copies that were handed out are of this plan and differ from it.
    """

    plan: Plan
    tied: int = 0
    not_handed_out: int = 0


def plans_in_force(records: Records, today: date) -> dict[str, PlanTaken]:
    """The plan of each person who has sessions here and a plan, by pseudonym: the one shown."""
    groups: dict[str, list[SessionRow]] = {}
    for row in records.rows:
        groups.setdefault(name_of(row), []).append(row)
    plans, copies = without_copies(records.plans), handed_out(records.plans)
    found = {}
    for name, of in groups.items():
        candidates = [] if name == NO_NAME else plans_for(of, name, plans, today)
        if candidates:
            plan = candidates[0]
            differ = _not_as_handed_out(plan, copies)
            found[name] = PlanTaken(plan, _tied(candidates, name), len(differ))
    return found


def plans_for(
    rows: Sequence[SessionRow], name: str, plans: Sequence[Plan], today: date
) -> list[Plan]:
    """All that could be the plan of a person, the one that is taken first.

    It is the plan of the newest session that has one here; else the person's newest plan. A
    session that is dated after today is no newest one: its computer's clock was wrong.

    Of several the person's own comes before a template of nobody's, then the one that starts
    last, then the one that stands last: ``plans`` are in the order in which they were written.
    """
    own = [p for p in reversed(plans) if p.person in (None, name)]
    newest_first = rows[::-1]
    for row in sorted(newest_first, key=lambda r: _is_to_come(r, today)):
        found = [p for p in own if p.plan_id == row.plan_id]
        if found:
            break
    else:
        found = [p for p in own if p.person == name]
    return sorted(found, key=lambda p: _rank(p, name), reverse=True)


def _rank(plan: Plan, name: str) -> tuple[bool, date]:
    return plan.person == name, plan.starts_on or date.min


def _tied(candidates: Sequence[Plan], name: str) -> int:
    """How many plans that differ only the age of their files has decided between; or 0."""
    first = candidates[:1]
    tied = [p for p in candidates if _rank(p, name) == _rank(first[0], name)]
    return 0 if all(p == first[0] for p in tied) else len(tied)


def _unlike(candidates: Sequence[Plan], name: str) -> list[Reason]:
    tied = _tied(candidates, name)
    text = f"{tied} plan files differ and start on the same day: the newest file is taken"
    return [Reason(Kind.doubt, text)] if tied else []


def _not_as_handed_out(plan: Plan, copies: Sequence[tuple[str, Plan]]) -> list[str]:
    """Copies of a plan that somebody has in hand with another content, by their files' names."""
    alike = [(path, p) for path, p in copies if _whose(p) == _whose(plan)]
    return [clean(PurePosixPath(path).name) for path, p in alike if _bare(p) != _bare(plan)]


def _not_handed_out(plan: Plan | None, copies: Sequence[tuple[str, Plan]]) -> list[Reason]:
    """Said where somebody has another plan in hand than the one that is taken here."""
    differ = [] if plan is None else _not_as_handed_out(plan, copies)
    return [
        Reason(Kind.doubt, f"the plan taken differs from the one handed out: {n}") for n in differ
    ]


def _is_to_come(row: SessionRow, today: date) -> bool:
    # A day's grace: it may be tomorrow already where the patient lives.
    return row.day is not None and row.day > today + timedelta(days=1)


def _to_come(rows: Sequence[SessionRow], today: date) -> list[Reason]:
    """Said of sessions that are dated after today: they lie wrongly in time, wherever that is."""
    days = [r.day for r in rows if r.day is not None and _is_to_come(r, today)]
    if not days:
        return []
    text = f"sessions dated after today: {len(days)}; was that computer's clock right?"
    return [Reason(Kind.doubt, text, max(days))]


def _person(
    name: str,
    rows: list[SessionRow],
    plans: Sequence[Plan],
    to_day: date,
    today: date,
    copies: Sequence[tuple[str, Plan]] = (),
) -> Person:
    if name == NO_NAME:
        nothing = Adherence(None, to_day, {}, None, None, 0, 0, 0, None)
        return Person(name, rows, None, nothing, reasons_of_each(rows, to_day), [])
    candidates = plans_for(rows, name, plans, today)
    plan = candidates[0] if candidates else None
    if to_day == today and not any(r.day == today for r in rows):
        # That somebody else has practised today makes it nobody's missed day.
        to_day = today - timedelta(days=1)
    known = {r.plan_id for r in rows}
    earlier = [
        p
        for p in plans
        if p is not plan and (p.person == name or (p.person is None and p.plan_id in known))
    ]
    adherence = adherence_of(rows, plan, to_day, earlier=earlier, today=today)
    series = series_of(rows, lambda name: name == "on_target")
    conditions = conditions_of(plan, rows, today)
    reasons = reasons_of(rows, adherence, series, conditions)
    of_plan = [*_unlike(candidates, name), *_not_handed_out(plan, copies), *_to_come(rows, today)]
    reasons = sorted([*reasons, *of_plan], key=lambda r: r.order)
    return Person(
        name, rows, plan, adherence, reasons, conditions, steps_of(plan, today, conditions)
    )
