"""Practice that no camera saw: what is put down, and what it does not say."""

from __future__ import annotations

from datetime import date

import pytest

from tests.practice.person import SEATED, STAND, WALK, plan_of
from tracker.plan.model import Plan
from tracker.plan.unlocking import history_of
from tracker.practice.reported import reported_entries, write_reported
from tracker.records.adherence import adherence_of, bouts_by_day
from tracker.records.attention import Kind, reasons_of
from tracker.records.conditions import history_from_rows
from tracker.records.figures import record_of
from tracker.records.rows import row_of
from tracker.records.series import series_of
from tracker.session.engine import Engine
from tracker.session.flags import REPORTED, Flag
from tracker.session.journal import MemoryJournal
from tracker.session.live import SessionInfo
from tracker.session.projections import session_record
from tracker.session.summary import summarise
from tracker.session.summary_file import Summary


def told(plan: Plan, *notes: str) -> Summary:
    """Summary of what somebody says to have done of a plan."""
    journal = MemoryJournal()
    about = SessionInfo(
        session_id="s1",
        started_at="2026-11-26T09:00:00+00:00",
        plan_id=plan.plan_id,
        person=plan.person,
        notes=notes or (REPORTED,),
    )
    engine = Engine(journal, about=about)
    write_reported(engine, reported_entries(plan, [], None), week=1)
    engine.finish("finished")
    return summarise(session_record(journal.content()))


@pytest.fixture
def plan() -> Plan:
    return plan_of(SEATED, STAND, WALK)


def test_all_of_today_is_put_down_and_nothing_is_measured(plan: Plan) -> None:
    summary = told(plan)
    assert [e.entry_id for e in summary.exercises] == [e.entry_id for e in plan.entries]
    for found in summary.exercises:
        assert found.done.repetitions is None and found.done.measured_fraction is None
        assert found.done.held_s is None and found.done.reason
        assert [f.flag for f in found.quality] == [REPORTED]
    assert REPORTED in {f.flag for f in summary.quality}
    assert summary.ended == "finished" and summary.symptoms is None


def test_without_its_note_no_repetition_would_be_a_count(plan: Plan) -> None:
    assert told(plan, "no_setup").exercises[0].done.repetitions == 0


def test_it_is_a_bout_that_was_reported(plan: Plan) -> None:
    row = row_of(told(plan), "s1")
    (bouts,) = bouts_by_day([row]).values()
    assert (bouts.measured, bouts.reported) == (0, 1) and row.day == date(2026, 11, 26)


def test_it_is_no_doubt_about_the_figures_and_no_low_share(plan: Plan) -> None:
    summary = told(plan)
    rows = [row_of(summary, f"s{k}") for k in range(3)]
    found = reasons_of(rows, adherence_of(rows, plan, date(2026, 11, 26)), series_of(rows))
    assert Kind.doubt not in {r.kind for r in found}
    assert not [s for s in series_of(rows) if s.figure == "measured"]
    # As it was written once, with a share and a flag.
    done = summary.exercises[0].done.model_copy(update={"measured_fraction": 0.0})
    low = Flag(flag="little_measured", reason="0 % of the time")
    old = [
        e.model_copy(update={"done": done, "quality": [*e.quality, low]}) for e in summary.exercises
    ]
    rows = [row_of(summary.model_copy(update={"exercises": old}), f"s{k}") for k in range(3)]
    found = reasons_of(rows, adherence_of(rows, plan, date(2026, 11, 26)), series_of(rows))
    assert Kind.doubt not in {r.kind for r in found}
    assert not [s for s in series_of(rows) if s.figure == "measured"]
    record = record_of(summary)
    assert not record.alert and record.exercises[0].find("events").value is None


def test_it_speaks_neither_for_nor_against_a_condition(plan: Plan) -> None:
    summary = told(plan)
    assert not history_of(plan, plan.entries[0].entry_id, [summary])
    assert not history_from_rows(plan, plan.entries[0].entry_id, [row_of(summary, "s1")])
    other = summary.model_copy(update={"quality": []})
    assert history_of(plan, plan.entries[0].entry_id, [other])


def test_without_the_clearance_only_seated_work_is_put_down() -> None:
    plan = plan_of(SEATED, STAND, WALK, cleared=False)
    assert [e.exercise for e in reported_entries(plan, [], None)] == ["turns-on-target"]
    stages = [{"stage_id": s, "name": s} for s in ("sitting", "standing")]
    both = ({**SEATED, "stage": "sitting"}, {**STAND, "stage": "standing"})
    staged = plan_of(*both, cleared=False, stages=stages)
    assert [e.exercise for e in reported_entries(staged, [], None)] == ["turns-on-target"]
    staged = plan_of(*both, stages=stages)
    assert [e.exercise for e in reported_entries(staged, [], None)] == ["stand"]


def test_what_is_still_locked_is_not_put_down() -> None:
    lock = {"condition": "As agreed.", "met_on": None}
    plan = plan_of(SEATED, {**STAND, "unlock_after": lock})
    assert [e.exercise for e in reported_entries(plan, [], None)] == ["turns-on-target"]
