"""The symptom rules: what goes on, what waits, what ends the day."""

from __future__ import annotations

import pytest

from tracker.plan.model import SymptomRules
from tracker.plan.symptoms import Start, judge_set, judge_start

USUAL = SymptomRules()
BASELINE = SymptomRules(high_start="baseline", baseline_rise_most=2)


def test_the_defaults_are_the_leaflets() -> None:
    assert (USUAL.score_most, USUAL.settle_minutes_most) == (5, 5.0)


@pytest.mark.parametrize("score", [0, 3, 5])
def test_an_ordinary_start_has_the_rules_limit(score: int) -> None:
    assert judge_start(USUAL, {"dizziness": score}) == Start(5)
    assert judge_start(BASELINE, {"dizziness": score}) == Start(5)


def test_a_high_start_is_seated_or_the_therapists_rise() -> None:
    assert judge_start(USUAL, {"dizziness": 6}) == Start(6, seated_only=True)
    assert judge_start(BASELINE, {"dizziness": 6}) == Start(8)
    assert judge_start(BASELINE, {"dizziness": 9}) == Start(10)


def test_every_score_that_is_asked_counts() -> None:
    rules = SymptomRules(also_ask=["nausea", "unsteadiness"])
    scores = {"dizziness": 2, "nausea": 7, "unsteadiness": 1}
    assert judge_start(rules, scores).seated_only
    assert judge_start(rules, {"dizziness": 2, "nausea": None, "unsteadiness": 1}).limit is None
    assert judge_start(USUAL, scores) == Start(5)  # not asked for: not counted


@pytest.mark.parametrize(
    ("score", "settled", "minutes", "outcome"),
    [
        (5, True, 1.0, "go_on"),
        (5, True, 5.0, "go_on"),
        (5, False, 1.0, "wait"),
        (6, True, 0.2, "end_today"),
        (2, False, 5.1, "end_today"),
        (2, True, 5.1, "end_today"),
        (None, True, 1.0, "ask"),
    ],
)
def test_after_a_set(score: int | None, settled: bool, minutes: float, outcome: str) -> None:
    assert judge_set(USUAL, Start(5), {"dizziness": score}, settled, minutes).outcome == outcome


def test_a_high_start_may_not_get_worse_while_seated() -> None:
    start = judge_start(USUAL, {"dizziness": 6})
    assert judge_set(USUAL, start, {"dizziness": 6}, True, 1.0).outcome == "go_on"
    assert judge_set(USUAL, start, {"dizziness": 7}, True, 1.0).reason == "score_above"


def test_without_a_start_score_nothing_is_judged() -> None:
    start = judge_start(USUAL, {})
    assert judge_set(USUAL, start, {"dizziness": 1}, True, 1.0).outcome == "ask"
