"""The conditions of a plan stand at the desk as they stand at the patient's."""

from __future__ import annotations

from typing import Any

import pytest

from tests.practice.person import SEATED, STAND, Person, plan_of, sessions
from tests.records.rows import row, set_row
from tracker.plan.starter import starter_plan
from tracker.plan.unlocking import history_of
from tracker.records.conditions import conditions_of, history_from_rows
from tracker.records.rows import row_of

UNLOCK = {"condition": "Clear twice.", "after": "turns-on-target", "sessions": 2, "clear": True}
PLAN = plan_of(
    SEATED, STAND, {"exercise": "turns-together", "unlock_after": UNLOCK}, plan_id="plan-7"
)


@pytest.mark.parametrize(
    "answers",
    [
        {},
        {"clarity": "blurred"},
        {"clarity": None},
        {"after": {"dizziness": 5}},
        {"settle_s": None},
        {"before": {"dizziness": 1}, "after": {"dizziness": 4}},
    ],
)
def test_rows_give_the_same_figures_as_summaries(answers: dict[str, Any]) -> None:
    summaries = sessions(PLAN, 2, **answers)
    rows = [row_of(s, f"{k}/summary.json") for k, s in enumerate(summaries)]
    for name in ("turns-on-target", "stand", "turns-together"):
        assert history_from_rows(PLAN, name, rows) == history_of(PLAN, name, summaries)


def test_a_session_that_was_ended_says_so_in_both() -> None:
    person = Person(after={"dizziness": 9})
    person.practise(PLAN)
    made = person.summary
    (found,) = history_from_rows(PLAN, "turns-on-target", [row_of(made, "a")])
    assert found.ended == "symptom_rule"
    assert [found] == history_of(PLAN, "turns-on-target", [made])


def clear(day: int, value: float | None, **changes: Any) -> Any:
    figures = {"on_target": 0.9, "clear": value}
    return row(day, sets=(set_row(figures, entry_id="turns-on-target"),), **changes)


def test_met_and_not_met() -> None:
    (two,) = conditions_of(PLAN, [clear(0, 0.0), clear(1, 1.0), clear(2, 1.0)], None)
    assert two.condition.met and two.opens == "turns-together" and not two.practised
    for rows in (
        [clear(0, 1.0)],
        [clear(0, 1.0), clear(1, 0.0)],
        [clear(0, 1.0), clear(1, None)],
        [clear(0, 1.0), clear(1, 1.0, ended="stopped_unwell")],
        [clear(0, 1.0), clear(1, 1.0, plan_id="another")],
    ):
        (found,) = conditions_of(PLAN, rows, None)
        assert not found.condition.met and found.condition.because
    assert conditions_of(None, [], None) == []


def test_a_stage_that_opens_later_has_its_condition_too() -> None:
    plan = starter_plan()
    first, later = plan.stages[0], plan.stages[1]
    assert first.unlock_after is None and later.unlock_after is not None
    names = {found.opens for found in conditions_of(plan, [], None)}
    assert later.name in names and first.name not in names
    entry = plan.entries_of(later.stage_id)[0]
    begun = row(0, plan_id=plan.plan_id, sets=(set_row(entry_id=entry.entry_id),))
    for rows, practised in (([], False), ([begun], True)):
        (stage,) = [c for c in conditions_of(plan, rows, None) if c.opens == later.name]
        assert stage.practised is practised and not stage.condition.met


def test_an_eased_set_is_told_by_rows_too() -> None:
    (summary,) = sessions(PLAN, 1)
    slower = {"changed": {"tempo_bpm": [60.0, 50.0]}}
    sets = [e.model_copy(update=slower) for e in summary.exercises]
    eased = summary.model_copy(update={"exercises": sets})
    (found,) = history_from_rows(PLAN, "turns-on-target", [row_of(eased, "a.json")])
    assert found.eased and [found] == history_of(PLAN, "turns-on-target", [eased])
