"""The rules for symptom scores: how high, and how soon settled. Their figures are the plan's."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from tracker.plan.model import SymptomRules

#: Scores by what was asked (dizziness, nausea, unsteadiness); None while not answered.
Scores = Mapping[str, int | None]


@dataclass(frozen=True, slots=True)
class Start:
    """What the scores before a session allow.

    Attributes
    ----------
    limit
        Most score after a set; None while nobody has answered.
    seated_only
        Whether only seated entries are offered.
    """

    limit: int | None
    seated_only: bool = False


@dataclass(frozen=True, slots=True)
class Verdict:
    """What follows after a set: go on, wait, end for today, or ask (not answered yet)."""

    outcome: Literal["go_on", "wait", "end_today", "ask"]
    reason: str = ""


def judge_start(rules: SymptomRules, before: Scores) -> Start:
    """Limit for a session that begins with some scores; the worst of them counts.

    Who starts above the rule's score either stays on seated work and may not get
    worse, or has the therapist's rise above the start.
    """
    worst = _worst(rules, before)
    if worst is None:
        return Start(None)
    if worst <= rules.score_most:
        return Start(rules.score_most)
    if rules.high_start == "baseline" and rules.baseline_rise_most is not None:
        return Start(min(10, worst + rules.baseline_rise_most))
    return Start(worst, seated_only=True)


def judge_set(
    rules: SymptomRules, start: Start, after: Scores, settled: bool, minutes_since: float
) -> Verdict:
    """What follows from the scores 10 s after a set.

    Parameters
    ----------
    settled
        Whether the patient has said to be back to usual.
    minutes_since
        Since the set ended; when settled, how long that took.
    """
    if start.limit is None:
        return Verdict("ask", "not_answered")
    if any(s is not None and s > start.limit for s in after.values()):
        # Too high is too high, even while another score is open.
        return Verdict("end_today", "score_above")
    if _worst(rules, after) is None:
        return Verdict("ask", "not_answered")
    if minutes_since > rules.settle_minutes_most:
        return Verdict("end_today", "not_settled")
    return Verdict("go_on") if settled else Verdict("wait", "settling")


def _worst(rules: SymptomRules, scores: Scores) -> int | None:
    """The highest score, None while one that is asked for is missing."""
    asked = [scores.get(name) for name in ("dizziness", *rules.also_ask)]
    known = [s for s in asked if s is not None]
    return max(known) if len(known) == len(asked) else None
