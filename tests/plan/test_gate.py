"""The gate: who may practise today, who sits, who calls whom."""

from __future__ import annotations

import pytest

from tests.plan.examples import TEXT, changed
from tracker.plan.files import parse_plan
from tracker.plan.gate import CALL, EMERGENCY, QUESTIONS, SPIN, judge_answers
from tracker.session.summary_file import ENDED

CLEARED = parse_plan(TEXT)
ALL_NO: dict[str, bool | None] = dict.fromkeys(QUESTIONS, False)


def test_nothing_new_opens_the_gate() -> None:
    gate = judge_answers(ALL_NO, CLEARED)
    assert gate.outcome == "go" and gate.open and gate.ended is None


@pytest.mark.parametrize(
    "clearance",
    [[], [{"item": "a"}], [{"item": "a", "cleared": True}, {"item": "b", "cleared": False}]],
)
def test_without_clearance_there_is_seated_work_only(clearance: list[object]) -> None:
    gate = judge_answers(ALL_NO, parse_plan(changed("clearance", clearance)))
    assert gate.outcome == "seated_only" and gate.open


@pytest.mark.parametrize("question", EMERGENCY)
def test_a_red_flag_ends_it(question: str) -> None:
    # Even when nothing else has been answered, or something milder was too.
    for rest in ({}, ALL_NO, {CALL[0]: True, SPIN: True}):
        gate = judge_answers({**rest, question: True}, CLEARED)
        assert gate.outcome == "emergency" and not gate.open
        assert gate.because == (question,) and question in gate.put_first
        assert gate.ended == "red_flag"


@pytest.mark.parametrize("question", CALL)
def test_these_call_the_therapist(question: str) -> None:
    gate = judge_answers({**ALL_NO, question: True, SPIN: True}, CLEARED)
    assert gate.outcome == "call_therapist" and not gate.open
    assert gate.put_first == (question, SPIN)


def test_a_spin_on_moving_stops_and_is_put_first() -> None:
    gate = judge_answers({**ALL_NO, SPIN: True}, CLEARED)
    assert (gate.outcome, gate.open, gate.put_first) == ("sit_and_stop", False, (SPIN,))
    assert gate.ended in ENDED


@pytest.mark.parametrize("question", QUESTIONS)
def test_silence_is_no_no(question: str) -> None:
    for answers in (
        {**ALL_NO, question: None},
        {k: v for k, v in ALL_NO.items() if k != question},
    ):
        gate = judge_answers(answers, CLEARED)
        assert gate.outcome == "ask" and not gate.open and gate.because == (question,)


def test_the_emergency_list_is_all_there() -> None:
    assert len(set(QUESTIONS)) == len(EMERGENCY) + len(CALL) + 1 == 13
