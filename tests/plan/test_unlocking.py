"""Conditions: met or not met, and never opened by figures or by the patient alone."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from tests.plan.examples import TEXT
from tests.records import made
from tests.session.synthetic import steps, turns_samples
from tracker.plan.files import parse_plan
from tracker.plan.model import Plan, Unlock
from tracker.plan.starter import starter_plan
from tracker.plan.unlocking import SessionFigures, figures_of, history_of, judge_condition, opens
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.summary import summarise
from tracker.session.summary_file import Summary

GOOD = SessionFigures(rise=0, settle_minutes=1.0, on_target=0.95, measured=0.9, clear=True)


def unlock(**figures: Any) -> Unlock:
    return Unlock(condition="Calm.", after="turns", **figures)


def test_both_have_to_say_yes() -> None:
    asked = unlock(sessions=2, rise_most=0)
    assert opens(asked, [GOOD, GOOD], patient_agrees=True)
    assert not opens(asked, [GOOD, GOOD], patient_agrees=False)
    assert not opens(asked, [GOOD], patient_agrees=True)
    assert opens(None, [], patient_agrees=False)  # nothing was asked for


@pytest.mark.parametrize(
    ("changed", "eased"),
    [
        (None, False),
        ({"tempo_bpm": [60.0, 55.0]}, True),
        ({"tempo_bpm": [60.0, 65.0]}, False),
        ({"tempo_bpm": [[60.0, 80.0], [55.0, 75.0]]}, True),
        ({"amplitude_deg": [[15.0, 20.0], [13.0, 18.0]]}, True),
        ({"amplitude_deg": [[15.0, 20.0], [17.0, 22.0]]}, False),
        ({"tempo_bpm": [60.0, 65.0], "amplitude_deg": [[15.0, 20.0], [13.0, 18.0]]}, True),
    ],
)
def test_what_was_made_easier_opens_nothing(changed: dict[str, Any] | None, eased: bool) -> None:
    summary = made.finished()
    sets = [e.model_copy(update={"changed": changed}) for e in summary.exercises]
    figures = figures_of(summary.model_copy(update={"exercises": sets}), sets)
    assert figures.eased == eased
    asked = unlock(measured_least=0.0)
    found = judge_condition(asked, [figures])
    assert found.met != eased
    assert ("made easier" in found.because[0]) == eased


def test_words_alone_wait_for_the_therapist() -> None:
    words = Unlock(condition="When I say so.")
    assert not opens(words, [GOOD] * 9, patient_agrees=True)
    said = Unlock(condition="When I say so.", met_on=date(2026, 1, 9))
    assert opens(said, [], patient_agrees=True)
    assert not opens(said, [], patient_agrees=False)


@pytest.mark.parametrize(
    ("figures", "bad"),
    [
        ({"rise_most": 1}, {"rise": 2}),
        ({"settle_minutes_most": 2}, {"settle_minutes": 3.0}),
        ({"on_target_least": 0.9}, {"on_target": 0.8}),
        ({"measured_least": 0.8}, {"measured": 0.5}),
        ({"clear": True}, {"clear": False}),
    ],
)
def test_each_figure_refuses_and_lets_through(figures: dict[str, Any], bad: dict[str, Any]) -> None:
    values = {f: getattr(GOOD, f) for f in GOOD.__slots__}
    asked = unlock(sessions=2, **figures)
    assert judge_condition(asked, [GOOD, GOOD]).met
    worse = judge_condition(asked, [GOOD, SessionFigures(**{**values, **bad})])
    assert not worse.met and "session 2 of the last 2" in worse.because[0]
    # What was not measured is not met; an old bad session is past.
    unknown = SessionFigures(**{**values, **dict.fromkeys(bad)})
    assert not judge_condition(asked, [GOOD, unknown]).met
    assert judge_condition(asked, [unknown, GOOD, GOOD]).met


def session(plan: Plan, entries: list[tuple[str, str]], **symptoms: Any) -> Summary:
    """A session in which some entries were done, with the same scores for each."""
    found = summarise(run_samples(turns_samples(to_s=12.0), steps(to_s=12.0), SessionInfo()))
    one = found.exercises[0]
    rows = [
        one.model_copy(update={"entry_id": e, "exercise": x, "symptoms": symptoms or None})
        for e, x in entries
    ]
    return found.model_copy(update={"plan_id": plan.plan_id, "exercises": rows})


def test_figures_come_from_the_summaries_of_the_entry() -> None:
    plan = parse_plan(TEXT)
    mine = session(plan, [("turns", "turns-on-target")], before=2, after=3, settled_minutes=1.5)
    other_entry = session(plan, [("nods", "nods-together")], before=2, after=9)
    other_plan = mine.model_copy(update={"plan_id": "another"})
    history = history_of(plan, "turns", [mine, other_entry, other_plan])
    assert len(history) == 1
    assert (history[0].rise, history[0].settle_minutes, history[0].clear) == (1, 1.5, None)
    assert history[0].on_target is not None and history[0].on_target > 0.9
    unasked = history_of(plan, "turns", [session(plan, [("turns", "turns-on-target")])])
    assert unasked[0].rise is None  # a score that nobody gave is unknown, not 0


def test_getting_better_is_no_rise() -> None:
    plan = parse_plan(TEXT)
    better = session(plan, [("turns", "turns-on-target")], before=4, after=1)
    assert history_of(plan, "turns", [better])[0].rise == 0


def test_a_stage_counts_when_all_of_it_was_done() -> None:
    plan = starter_plan()
    rows = [(e.entry_id, e.exercise) for e in plan.entries_of("eyes-and-head")]
    whole = session(plan, rows, before=1, after=1)
    part = session(plan, rows[:-1], before=1, after=1)
    assert len(history_of(plan, "eyes-and-head", [whole, part])) == 1
    asked = plan.stages[1].unlock_after
    assert opens(asked, history_of(plan, "eyes-and-head", [whole] * 3), patient_agrees=True)
    assert not opens(asked, history_of(plan, "eyes-and-head", [whole] * 2), patient_agrees=True)
    worse = session(plan, rows, before=1, after=2)
    calm = history_of(plan, "eyes-and-head", [whole, whole, worse])
    assert not opens(asked, calm, patient_agrees=True)


def test_entries_that_open_later_are_not_needed_for_a_stage() -> None:
    plan = starter_plan()
    rows = [
        (e.entry_id, e.exercise) for e in plan.entries_of("firm-floor") if e.unlock_after is None
    ]
    assert len(rows) == 3
    assert len(history_of(plan, "firm-floor", [session(plan, rows, before=0, after=0)])) == 1
