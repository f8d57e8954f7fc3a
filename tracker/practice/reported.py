"""Practice that no camera saw: what a plan asks for today, put down as done because one says so."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from tracker.plan.asked import asked_of
from tracker.plan.model import Entry, Plan
from tracker.plan.rules import is_cleared
from tracker.plan.starter import needs_no_clearance
from tracker.practice.asking import Recorder
from tracker.practice.today import Openings, entries_of_today
from tracker.session.stage import Step
from tracker.session.summary_file import Summary


def reported_entries(
    plan: Plan, history: Sequence[Summary], day: date | None, week: int = 1
) -> list[Entry]:
    """Entries that somebody does who practises the plan by themselves: those that are open.

    Without the clearance that is what the seated starter has, as in a session that is
    watched; then it is the furthest stage that has any.

    Parameters
    ----------
    history
        Earlier sessions with the plan, oldest first; they say what has opened.
    day
        The day on the person's calendar, as for :func:`tracker.plan.unlocking.found_met`.
    week
        Week of the plan, for its ladders.
    """
    openings = Openings(plan, history, day)
    stages = [s.stage_id for s in plan.stages if openings.is_open(s.stage_id)]
    furthest_first: list[str | None] = [*reversed(stages)] or [None]
    cleared = is_cleared(plan)
    for stage_id in furthest_first:
        today = [e for e in entries_of_today(plan, stage_id) if openings.entry_is_open(e)]
        allowed = [e for e in today if cleared or needs_no_clearance(asked_of(e, week))]
        if allowed:
            return allowed
    return []


def write_reported(recorder: Recorder, entries: Sequence[Entry], week: int) -> None:
    """Put a step without length down for each entry: when it was done, nobody has measured.

    Parameters
    ----------
    recorder
        Of a session that carries the note :data:`tracker.session.flags.REPORTED`.
    week
        Week of the plan, for its ladders.
    """
    for entry in entries:
        asked = asked_of(entry, week)
        known = {"from_s": 0.0, "to_s": 0.0, "step": "exercise", **asked.step_values}
        recorder.begin(Step.model_validate(known))
