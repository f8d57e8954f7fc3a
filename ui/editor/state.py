"""What the forms are made from: the plan's data, what it comes to, and the sessions at hand."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from tracker.plan.draft import Data, Draft, examine_draft, value_at
from tracker.plan.guideline import MINUTES_A_DAY, gaze_minutes_a_day, guideline_said
from tracker.plan.lines import Path
from tracker.plan.model import Plan, Unlock
from tracker.plan.rules import STAGE_MINUTES, minutes_of
from tracker.plan.unlocking import Condition, judge_condition
from tracker.records.conditions import history_from_rows
from tracker.records.rows import SessionRow
from ui import words
from ui.desk import trade
from ui.editor.telling import told


@dataclass(frozen=True, slots=True)
class State:
    """A draft at one moment.

    Attributes
    ----------
    data
        The plan's data.
    draft
        What it comes to.
    rows
        The person's sessions, oldest first; None where none are at hand.
    today
        The day on the user's calendar, as for :func:`tracker.plan.unlocking.found_met`.
    """

    data: Data
    draft: Draft
    rows: Sequence[SessionRow] | None
    today: date | None

    @classmethod
    def of(cls, data: Data, rows: Sequence[SessionRow] | None, today: date | None) -> State:
        """Examine a draft."""
        return cls(data, examine_draft(data), rows, today)

    @property
    def plan(self) -> Plan | None:
        """The plan, None while it has faults."""
        return self.draft.plan

    @property
    def minutes(self) -> str:
        """Minutes a day of gaze stabilisation, and the guideline's figure as quoted."""
        if self.plan is None:
            return words.say("edit.not_yet")
        return words.say(
            "edit.minutes.said",
            minutes=f"{gaze_minutes_a_day(self.plan):.0f}",
            guideline=told(guideline_said(self.plan)),
        )

    @property
    def short_minutes(self) -> str:
        """The same in one short line."""
        if self.plan is None:
            return ""
        least, most = MINUTES_A_DAY.get(self.plan.kind_of_loss, (None, None))
        figure = words.say("edit.minutes.none") if least is None else f"{least:g}"
        if most is not None:
            figure = words.say("edit.from_to", low=f"{least:g}", high=f"{most:g}")
        minutes = f"{gaze_minutes_a_day(self.plan):.0f}"
        return words.say("edit.minutes.short", minutes=minutes, figure=figure)

    def stage_minutes(self, index: int) -> str:
        """About how long a stage takes."""
        if self.plan is None:
            return words.say("edit.not_yet")
        entries = self.plan.entries_of(self.plan.stages[index].stage_id)
        return words.say(
            "edit.stage.takes.said",
            minutes=f"{minutes_of(self.plan, entries):.0f}",
            most=f"{STAGE_MINUTES:g}",
        )

    def condition(self, at: Path) -> Condition | None:
        """How the condition of an entry or a stage stands; None where that can't be said."""
        plan = self.plan
        unlock = None if plan is None else _unlock_of(plan, at)
        if plan is None or unlock is None or (self.rows is None and unlock.met_on is None):
            return None
        # What the therapist has found met is met whatever the sessions say.
        own = [r for r in self.rows or [] if r.plan_id == plan.plan_id]
        history = [] if unlock.after is None else history_from_rows(plan, unlock.after, own)
        return judge_condition(unlock, history, self.today)

    def standing(self, at: Path) -> str:
        """The same in words, with what it rests on."""
        found = self.condition(at)
        if found is not None:
            key = "edit.standing.met" if found.met else "edit.standing.not_met"
            return words.say(key, why=trade.all_of(found.because))
        if self.rows is None:
            return words.say("edit.standing.no_sessions")
        return words.say("edit.not_yet")

    def short_standing(self, at: Path) -> str:
        """The same in two words, for the outline; empty where there is no condition."""
        if not isinstance(value_at(self.data, (*at, "unlock_after")), dict):
            return ""
        found = self.condition(at)
        if found is None:
            return words.say("edit.short.condition")
        return words.say("edit.short.met" if found.met else "edit.short.not_met")


def _unlock_of(plan: Plan, at: Path) -> Unlock | None:
    part, index = at[0], int(at[1])
    items = plan.stages if part == "stages" else plan.entries
    return items[index].unlock_after
