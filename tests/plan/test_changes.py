"""What a therapist in a call may change of an entry, and what the plan refuses."""

from __future__ import annotations

from typing import Any

import pytest

from tests.practice.person import plan_of
from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.asked import asked_of
from tracker.plan.changes import PURSUIT_MOST_BPM, Shift, shifted, why_not
from tracker.plan.model import Plan

TURNS = {"exercise": "turns-on-target", "tempo_bpm": 60, "amplitude_deg": [15, 20]}
LIMIT = {"yaw": 24, "pitch": 12}


def plan(entry: dict[str, Any], **more: Any) -> Plan:
    return plan_of(entry, **{"neck_limit_deg": None, **more})


def most_steps(made: Plan, what: Any, way: int, week: int = 1) -> tuple[int, str]:
    """How many steps are allowed one way, and why no more."""
    entry, shift = made.entries[0], Shift()
    for count in range(100):
        why = why_not(made, entry, week, shift, what, way)
        if why:
            return count, why
        shift = shift.stepped(what, way)
    raise AssertionError("no end")


def test_the_tempo_goes_twenty_beats_each_way() -> None:
    assert most_steps(plan(TURNS), "tempo", 1) == (4, "fastest")
    assert most_steps(plan(TURNS), "tempo", -1) == (4, "slowest")


def test_the_weeks_of_the_plan_widen_it() -> None:
    ladder = {"ladder": [{"from_week": 3, "tempo_bpm": 90}]}
    assert most_steps(plan(TURNS | ladder), "tempo", 1) == (10, "fastest")
    # In the third week 90 is asked, and the first week's 60 may be gone back to.
    assert most_steps(plan(TURNS | ladder), "tempo", -1, week=3) == (10, "slowest")


def test_a_rising_tempo_moves_as_a_whole_and_keeps_within() -> None:
    made = plan(TURNS | {"tempo_bpm": [50, 80]})
    asked = shifted(asked_of(made.entries[0]), Shift(tempo=2))
    assert asked.tempo_bpm == (60.0, 90.0)
    assert most_steps(made, "tempo", 1) == (4, "fastest")
    assert most_steps(plan(TURNS | {"tempo_bpm": 20}), "tempo", -1) == (2, "slowest")


def test_what_the_eyes_follow_goes_no_faster_than_any_plan_may_ask() -> None:
    follow = {"exercise": "follow-slowly", "tempo_bpm": 30, "note": "asked for"}
    assert most_steps(plan(follow), "tempo", 1) == (2, "fastest")
    assert PURSUIT_MOST_BPM == 40.0


@pytest.mark.parametrize("entry", [TURNS | {"tempo_bpm": None}, {"exercise": "stand"}])
def test_where_no_beat_is_asked_there_is_none_to_change(entry: dict[str, Any]) -> None:
    assert most_steps(plan(entry), "tempo", 1) == (0, "own_pace")


def test_the_neck_limit_holds_whatever_the_plan_asks() -> None:
    made = plan(TURNS, neck_limit_deg=LIMIT)
    assert most_steps(made, "amplitude", 1) == (2, "neck_limit")
    wide = plan(TURNS, neck_limit_deg={"yaw": 60, "pitch": 40})
    assert most_steps(wide, "amplitude", 1) == (3, "largest")
    nods = {"exercise": "nods-on-target", "amplitude_deg": [8, 12]}
    assert most_steps(plan(nods, neck_limit_deg=LIMIT), "amplitude", 1) == (0, "neck_limit")


def test_without_a_neck_limit_nothing_grows_beyond_the_plan() -> None:
    assert most_steps(plan(TURNS), "amplitude", 1) == (0, "largest")
    ladder = {"ladder": [{"from_week": 4, "amplitude_deg": [18, 24]}]}
    assert most_steps(plan(TURNS | ladder), "amplitude", 1) == (2, "largest")


def test_smaller_goes_down_to_what_can_be_told() -> None:
    assert most_steps(plan(TURNS), "amplitude", -1) == (3, "smallest")
    small = TURNS | {"amplitude_deg": [6, 10]}
    assert most_steps(plan(small), "amplitude", -1) == (0, "smallest")


@pytest.mark.parametrize("exercise", ["stand", "eyes-side-to-side", "near-far"])
def test_where_no_degrees_are_asked_there_are_none(exercise: str) -> None:
    assert CATALOGUE[exercise].amplitude_deg is None
    assert most_steps(plan({"exercise": exercise}), "amplitude", 1) == (0, "no_amplitude")
