"""What is practised today: a stage of the plan, and which of it is still locked."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from tracker.errors import InputError
from tracker.plan.model import Entry, Plan, Unlock
from tracker.plan.unlocking import (
    SessionFigures,
    had_to_end,
    history_of,
    is_practised,
    judge_condition,
    opens,
)
from tracker.session.summary_file import Summary


class Openings:
    """Which stages and entries of a plan are open, may open, or stay locked.

    Parameters
    ----------
    plan
        The plan.
    history
        Summaries of earlier sessions, oldest first; those outside any plan count, too, where
        they had to be ended.
    today
        The day on the person's calendar, as for :func:`tracker.plan.unlocking.found_met`.

    Attributes
    ----------
    agreed
        Stages and entries that the patient has said yes to.
    outside
        The sessions outside any plan that count so. The clinic does not see them: they name
        nobody.

    Notes
    -----
    A patient who has said yes to a stage or an entry, and has practised something of it, isn't
    asked again; the summaries carry it. The condition still has to be met. A session that had
    to be ended speaks against what is new, whatever was done in it, also after a yes; what is
    practised already is closed only by sessions in which its condition's entries were done.
    """

    def __init__(self, plan: Plan, history: Sequence[Summary], today: date | None) -> None:
        self._plan, self._today = plan, today
        self._history = list(history)
        own = [s for s in history if s.plan_id == plan.plan_id]
        self._done = {e.entry_id for s in own for e in s.exercises}
        self.outside = [
            s
            for s in history
            if s.plan_id != plan.plan_id
            and s.person is None
            and had_to_end(plan, s.plan_id, s.ended)
        ]
        said_yes = {n for s in own for n in s.opened}
        self.agreed: set[str] = {n for n in said_yes if is_practised(plan, n, self._done)}

    def may_open(self, name: str) -> bool:
        """Whether only the patient's yes is missing."""
        unlock = _unlock_of(self._plan, name)
        if unlock is None or name in self.agreed:
            return False
        return judge_condition(unlock, self._figures(name, unlock), self._today).met

    def is_open(self, name: str) -> bool:
        """Whether the condition is met and the patient has said yes, or neither is asked for."""
        unlock = _unlock_of(self._plan, name)
        return opens(unlock, self._figures(name, unlock), self._today, name in self.agreed)

    def entry_is_open(self, entry: Entry) -> bool:
        """Whether an entry and its stage are open."""
        return self.is_open(entry.entry_id) and (entry.stage is None or self.is_open(entry.stage))

    def entry_may_open(self, entry: Entry) -> bool:
        """Whether an entry is open, or its stage is and only the patient's yes is missing."""
        own = self.is_open(entry.entry_id) or self.may_open(entry.entry_id)
        return own and (entry.stage is None or self.is_open(entry.stage))

    def _figures(self, name: str, unlock: Unlock | None) -> list[SessionFigures]:
        if unlock is None or unlock.after is None:
            return []
        new = not is_practised(self._plan, name, self._done)
        return history_of(self._plan, unlock.after, self._history, ended_badly=new)


def stages_to_offer(plan: Plan, openings: Openings) -> list[str]:
    """Stages that are open or may open, the furthest first."""
    ids = [s.stage_id for s in plan.stages]
    return [i for i in reversed(ids) if openings.is_open(i) or openings.may_open(i)]


def entries_of_today(plan: Plan, stage_id: str | None) -> list[Entry]:
    """Entries of a stage in their order; of a plan without stages all of them.

    Raises
    ------
    InputError
        If the plan has no such stage.
    """
    if stage_id is None:
        return list(plan.entries)
    found = plan.entries_of(stage_id)
    if not found:
        has = [s.stage_id for s in plan.stages]
        known = f"it has: {', '.join(has)}" if has else "it has no stages"
        raise InputError(f"plan {plan.plan_id!r} has no stage {stage_id!r}; {known}")
    return found


def _unlock_of(plan: Plan, name: str) -> Unlock | None:
    for stage in plan.stages:
        if stage.stage_id == name:
            return stage.unlock_after
    return next((e.unlock_after for e in plan.entries if e.entry_id == name), None)
