"""A cue is said at the next turning point that is told after its event was decided.

A turning point is told once the head has come back from it far enough to be sure of it
(:mod:`tracker.motion.turning`). When each cue should come is worked out here anew, from the
times of turns and events alone; and the turns are held against the movement that was made up.
"""

from __future__ import annotations

from math import inf, isfinite

import numpy as np
import pytest

from tests.session.synthetic import FROM_S, steps, turns_samples
from tracker.exercises.events import (
    AT_ONCE,
    CUE_SPACING_S,
    CUE_STALE_S,
    PRIORITY,
    SAID_AGAIN,
    Event,
)
from tracker.motion.speed import LOOK_AHEAD_S
from tracker.session.engine import Engine
from tracker.session.journal import MemoryJournal
from tracker.session.live import SessionInfo

#: Turns a minute: slow ones, those of the usual beat, and quick ones.
TEMPI = (36.0, 60.0, 90.0)
LASTS_S = 42.0


def made_set(tempo: float, rate_hz: float, number: int) -> tuple[list[float], list[Event]]:
    """Times at which turns were told, and the events, of a set in which much goes wrong."""
    rng = np.random.default_rng(number)
    starts = np.cumsum(rng.uniform(0.9, 5.0, 12)) + FROM_S + 1.0
    glances = [(t, t + rng.uniform(0.6, 1.4), rng.choice([-9.0, 8.0])) for t in starts]
    shut = [(t + 0.4, t + 1.6) for t in rng.uniform(8.0, LASTS_S - 4.0, 2)]
    samples = turns_samples(
        rate_hz=rate_hz,
        f_hz=tempo / 120.0,
        amplitude=float(rng.choice([7.0, 18.0])),
        to_s=LASTS_S,
        glances=glances,
        shut=shut,
        number=number,
    )
    engine = Engine(MemoryJournal(), about=SessionInfo())
    for step in steps(to_s=LASTS_S):
        engine.begin(step)
    told: list[float] = []
    for sample in samples:
        engine.feed(sample)
        for run in engine.runs:
            # Dated as the engine dates all it says: by the sample that it works on.
            told += [run._last_s + LOOK_AHEAD_S] * (len(run.counter.turns) - len(told))
    engine.advance(LASTS_S)
    engine.finish()
    (run,) = engine.runs
    # What was open at the end of the set is told with it.
    told += [LASTS_S + LOOK_AHEAD_S] * (len(run.counter.turns) - len(told))
    return told, list(run.events)


def when_said(told: list[float], events: list[Event]) -> list[float]:
    """When each event should be said: one at a time, the gravest first, infinity for never."""
    said = [e.decided_s if e.code in AT_ONCE else inf for e in events]
    at_once = sorted(t for t in said if isfinite(t))
    last_s = -inf
    for time_s in told:
        last_s = max([last_s, *(t for t in at_once if t <= time_s)])
        if time_s - last_s < CUE_SPACING_S:
            continue
        ready = [
            k
            for k, e in enumerate(events)
            if not isfinite(said[k])
            and e.decided_s <= time_s + 1e-9
            and not time_s - e.end_s > CUE_STALE_S
        ]
        if ready:
            best = min(ready, key=lambda k: (PRIORITY.index(events[k].code), events[k].start_s))
            said[best] = last_s = time_s
    return said


@pytest.mark.parametrize("rate_hz", [15.0, 30.0])
@pytest.mark.parametrize("tempo", TEMPI)
def test_every_cue_comes_at_the_next_turning_point(tempo: float, rate_hz: float) -> None:
    waited, next_one = [], 0
    for number in range(4):
        told, events = made_set(tempo, rate_hz, number)
        assert not {e.code for e in events} & SAID_AGAIN
        for event, expected in zip(events, when_said(told, events), strict=True):
            if event.decided_s > LASTS_S - 3.0:
                # What is told with the end of the set may be told a moment before it.
                continue
            if not isfinite(expected):
                assert not isfinite(event.said_at_s), event
                continue
            assert event.said_at_s == pytest.approx(expected, abs=1e-6), event
            if event.code not in AT_ONCE:
                first = min(t for t in told if t >= event.decided_s - 1e-9)
                next_one += event.said_at_s == pytest.approx(first, abs=1e-6)
                waited.append(event.said_at_s - event.decided_s)
    # Many have nothing before them, so that it is the very next one.
    assert len(waited) >= 20 and next_one >= len(waited) // 3


@pytest.mark.parametrize("rate_hz", [15.0, 30.0])
@pytest.mark.parametrize("tempo", TEMPI)
def test_turning_points_are_told_half_a_turn_later_at_most(tempo: float, rate_hz: float) -> None:
    """Against the times at which the made-up head was furthest; and a picture later."""
    turn_s = 60.0 / tempo
    told, _ = made_set(tempo, rate_hz, 1)
    true_s = FROM_S + turn_s * (np.arange(len(told)) + 0.5)
    late_s = np.array(told) - true_s
    assert len(told) >= (LASTS_S - FROM_S) / turn_s - 2
    assert late_s.min() > 0.0 and (late_s - LOOK_AHEAD_S).max() <= 0.5 * turn_s + 1.0 / rate_hz
