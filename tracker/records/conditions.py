"""How the conditions of a plan stand, by the sessions of a folder.

The same rules as at the patient's (``plan.unlocking``), from rows in place of summaries.
Nothing opens here: steps are taken by the therapist and the patient.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

from tracker.plan.model import Plan, Unlock
from tracker.plan.unlocking import (
    Condition,
    SessionFigures,
    entries_named,
    had_to_end,
    is_practised,
    judge_condition,
)
from tracker.records.rows import SessionRow, SetRow
from tracker.session.flags import REPORTED


@dataclass(frozen=True, slots=True)
class Standing:
    """A condition: its words, what it opens, whether it is met and why (not).

    ``practised`` is whether what it opens has been practised already; ``exercise`` that of the
    entry that it opens, empty where it opens a stage. ``entries`` are the IDs of all that stays
    closed while it is not open; ``in_closed`` is whether the stage of the entry is closed itself.
    """

    words: str
    opens: str
    condition: Condition
    practised: bool
    exercise: str = ""
    entries: frozenset[str] = frozenset()
    in_closed: bool = False

    @property
    def is_open(self) -> bool:
        """Whether it is met and the patient has said yes, as far as the rows tell.

        A yes without practice isn't in them.
        """
        return self.condition.met and self.practised


def conditions_of(
    plan: Plan | None, rows: Sequence[SessionRow], today: date | None
) -> list[Standing]:
    """Every condition of a plan, in its order, as it stands today; rows oldest first."""
    if plan is None:
        return []
    rows = _with_outside(rows)
    own = [r for r in rows if r.plan_id == plan.plan_id or had_to_end(plan, r.plan_id, r.ended)]
    done = {s.entry_id for r in own if r.plan_id for s in r.sets}
    found = []
    closed: set[str] = set()
    for stage in plan.stages:
        if stage.unlock_after is not None:
            inside = {e.entry_id for e in plan.entries_of(stage.stage_id)}
            practised = is_practised(plan, stage.stage_id, done)
            standing = _standing(plan, own, stage.unlock_after, stage.name, practised, today)
            found.append(replace(standing, entries=frozenset(inside)))
            closed |= set() if standing.is_open else inside
    for entry in plan.entries:
        if entry.unlock_after is not None:
            name, practised = entry.entry_id, is_practised(plan, entry.entry_id, done)
            standing = _standing(plan, own, entry.unlock_after, name, practised, today)
            of_entry = replace(standing, exercise=entry.exercise, in_closed=name in closed)
            found.append(replace(of_entry, entries=frozenset({name})))
    return found


def _with_outside(rows: Sequence[SessionRow]) -> list[SessionRow]:
    """Rows with those of sessions outside any plan that the person's own summaries tell of.

    Nothing else is known of them here: they name nobody.
    """
    told = {}
    for row in rows:
        for began, ended in row.ended_outside:
            told[began, ended] = row._replace(
                started_at=began, ended=ended, plan_id=None, sets=(), flags={}, ended_outside=()
            )
    return sorted([*rows, *told.values()], key=lambda r: r.order) if told else list(rows)


def _standing(
    plan: Plan,
    rows: Sequence[SessionRow],
    unlock: Unlock,
    opens: str,
    practised: bool,
    today: date | None,
) -> Standing:
    new = not practised
    after = unlock.after
    history = [] if after is None else history_from_rows(plan, after, rows, ended_badly=new)
    return Standing(unlock.condition, opens, judge_condition(unlock, history, today), practised)


def history_from_rows(
    plan: Plan, name: str, rows: Iterable[SessionRow], *, ended_badly: bool = False
) -> list[SessionFigures]:
    """Figures of the sessions in which an entry, or a whole stage, was done.

    As ``plan.unlocking.history_of`` gives them for summaries.
    """
    entries = entries_named(plan, name)
    all_ids = {e.entry_id for e in entries}
    needed = {e.entry_id for e in entries if e.unlock_after is None} or all_ids
    found = []
    for row in rows:
        if REPORTED in row.flags:
            continue
        done = [s for s in row.sets if s.entry_id in all_ids]
        if row.plan_id == plan.plan_id and needed <= {s.entry_id for s in done}:
            found.append(_figures(row, done))
        elif ended_badly and had_to_end(plan, row.plan_id, row.ended):
            found.append(SessionFigures(ended=row.ended, by_its_end=True))
    return found


def _figures(row: SessionRow, done: Sequence[SetRow]) -> SessionFigures:
    on_target = [s for s in done if "on_target" in s.figures]
    clear = [s.figures.get("clear") for s in on_target]
    return SessionFigures(
        rise=_worst([s.rise for s in done], max),
        settle_minutes=_worst([s.settle_minutes for s in done], max),
        on_target=_worst([s.figures["on_target"] for s in on_target], min),
        measured=_worst([s.figures.get("measured") for s in done], min),
        clear=None if not clear or None in clear else all(c == 1.0 for c in clear),
        ended=row.ended,
        eased=any(s.eased for s in done),
    )


def _worst(values: Sequence[Any], of: Callable[[Sequence[Any]], Any]) -> Any:
    return of(values) if values and None not in values else None
