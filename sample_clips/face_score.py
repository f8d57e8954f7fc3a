"""What lids and mouth do in a scenario: blinks, shut and lowered lids, talking, over time."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np

from sample_clips.scenario import Scenario
from sample_clips.target_score import smooth

#: Begin and end of something in seconds.
Span = tuple[float, float]


def blinks_of(
    scenario: Scenario, steps: Sequence[dict[str, Any]], exercise_s: Span, rng: np.random.Generator
) -> list[Span]:
    """Blinks by lot, none where the eyes are asked for something else.

    Parameters
    ----------
    scenario
        Says whether there are any.
    steps
        Of the stage log: after a new place to look at nobody blinks at once.
    exercise_s
        Begin of the exercise, to which the spans of the scenario refer, and its end.
    rng
        The lot.
    """
    found: list[Span] = []
    if not scenario.blinks:
        return found
    start_s, end_s = exercise_s
    spans = [(g.at_s, g.lasts_s) for g in scenario.glances]
    spans += [(s.at_s, s.lasts_s) for s in (*scenario.shut, *scenario.opens)]
    now = 1.2
    while now < end_s - 1:
        lasts = rng.uniform(0.18, 0.3)
        free = all(
            now + lasts < start_s + at - 0.3 or now > start_s + at + long + 0.3
            for at, long in spans
        )
        looking = any(s["step"] == "look" and 0.0 <= now - s["from_s"] < 0.5 for s in steps)
        if free and not looking:
            found.append((round(now, 3), round(now + lasts, 3)))
        now += rng.uniform(3.0, 6.0)
    return found


def shut_at(t: float, scenario: Scenario, blinks: Sequence[Span], exercise_s: Span) -> float:
    """How far the lids are closed, 0 to 1."""
    start_s, end_s = exercise_s
    closed = 0.0
    for start, end in blinks:
        u = (t - start) / (end - start)
        if 0 <= u < 1:
            closed = max(closed, min(1.0, u / 0.35) if u < 0.55 else (1 - u) / 0.45)
    for span in scenario.shut:
        start = start_s + span.at_s
        closed = max(
            closed,
            smooth((t - start) / 0.12) * (1 - smooth((t - start - span.lasts_s) / 0.15)),
        )
    if scenario.eyes == "closed" and t > start_s:
        closed = max(closed, _shut_as_asked(t, scenario, start_s, end_s))
    return closed


def _shut_as_asked(t: float, scenario: Scenario, start_s: float, end_s: float) -> float:
    """Shut from soon after the start to the end, but for looks in between."""
    shut = smooth((t - start_s - 0.3) / 0.15) * (1 - smooth((t - end_s) / 0.15))
    for span in scenario.opens:
        start = start_s + span.at_s
        shut -= smooth((t - start) / 0.12) - smooth((t - start - span.lasts_s) / 0.15)
    return float(max(shut, 0.0))


def sunk(t: float, scenario: Scenario, start_s: float) -> float:
    """How much lower the lids hang than in the set-up."""
    return scenario.lids_sink * smooth((t - start_s) / 0.5)


def jaw_at(t: float, scenario: Scenario, start_s: float) -> float:
    """How far the mouth is open: about four syllables a second while talking."""
    opened = 0.0
    for span in scenario.talks:
        u = t - start_s - span.at_s
        edges = smooth(u / 0.2) * (1 - smooth((u - span.lasts_s + 0.2) / 0.2))
        syllables = 0.5 - 0.5 * np.cos(2 * np.pi * 4.0 * u)
        opened += 0.35 * edges * syllables * (0.7 + 0.3 * np.sin(3.7 * u))
    return float(opened)
