"""Which entry of a plan is meant, and which week it is."""

from __future__ import annotations

import json
from datetime import date
from typing import Any

import pytest

from tests.plan.examples import TEXT
from tracker.errors import InputError
from tracker.plan.asked import find_entry, week_of
from tracker.plan.files import parse_plan
from tracker.plan.model import Plan


def plan(**changes: Any) -> Plan:
    return parse_plan(json.dumps({**json.loads(TEXT), **changes}))


def test_the_one_entry_for_an_exercise_need_not_be_named() -> None:
    assert find_entry(plan(), "stand").entry_id == "corner"
    assert find_entry(plan(), "stand", "corner").entry_id == "corner"


def test_of_several_one_is_named() -> None:
    assert find_entry(plan(), "turns-on-target", "turns-free").seconds == 45
    with pytest.raises(InputError, match="name one of turns, turns-free"):
        find_entry(plan(), "turns-on-target")


@pytest.mark.parametrize(
    ("exercise", "entry", "says"),
    [
        ("walk", None, "has no entry for 'walk'; it has: turns-on-target, stand, nods-together"),
        ("turns-on-target", "corner", "no entry 'corner' for 'turns-on-target'; it has: turns, "),
        ("stand", "walk", "no entry 'walk' for 'stand'; it has: corner"),
    ],
)
def test_one_that_is_not_there_is_refused_with_those_that_are(
    exercise: str, entry: str | None, says: str
) -> None:
    with pytest.raises(InputError, match=says) as told:
        find_entry(plan(), exercise, entry)
    assert "plan 'plan-7'" in str(told.value)


@pytest.mark.parametrize(
    ("day", "week"), [("2026-01-04", 1), ("2026-01-05", 1), ("2026-01-11", 1), ("2026-01-12", 2)]
)
def test_weeks_are_counted_from_the_start(day: str, week: int) -> None:
    assert week_of(plan(), date.fromisoformat(day)) == week
    assert week_of(plan(starts_on=None), date.fromisoformat(day)) == 1
