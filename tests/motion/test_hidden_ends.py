"""Turns whose ends lie in holes of the measuring are counted, and not said to be small or quick."""

from __future__ import annotations

from math import isfinite, isnan

import numpy as np
import pytest

from tracker.exercises.counters import channel_of
from tracker.exercises.watchers.base import Asked
from tracker.exercises.watchers.turns import Amplitude, Tempo
from tracker.motion.turning import Turn, TurningFinder, steps_s
from tracker.session import figures

HZ, SIZE_DEG, LASTS_S = 0.8, 18.0, 12.0


def turns_of(times: np.ndarray, kept: np.ndarray) -> list[Turn]:
    channel = channel_of("head_yaw")
    finder = TurningFinder(channel.sides, channel.rule)
    found: list[Turn] = []
    for time_s, yaw in zip(times[kept], yaws(times)[kept], strict=True):
        found += finder.feed(float(time_s), float(yaw))
    return found + finder.finish()


def yaws(times: np.ndarray) -> np.ndarray:
    return SIZE_DEG * np.sin(2 * np.pi * HZ * times)


def judged(turns: list[Turn]) -> list[str]:
    """Codes of what is told of turns that are just as asked."""
    asked = Asked((15.0, 20.0), 60.0 * 2 * HZ)
    watchers = [
        Amplitude("too_small"),
        Amplitude("too_large"),
        Tempo("too_slow"),
        Tempo("too_fast"),
    ]
    return [w.code for w in watchers for t in turns if w.turn(t, asked)]


@pytest.mark.parametrize("rate_hz", [15.0, 30.0, 60.0])
def test_ends_that_nobody_saw_have_no_size_and_no_time(rate_hz: float) -> None:
    times = np.arange(0.0, LASTS_S, 1.0 / rate_hz)
    # Beyond 10 degrees to the left nothing is measured.
    turns = turns_of(times, yaws(times) > -10.0)
    right, left = ([t for t in turns if t.side == s] for s in ("right", "left"))
    assert len(right) + len(left) == pytest.approx(2 * HZ * LASTS_S, abs=1)
    assert all(t.hidden and isnan(t.amplitude_deg) for t in left)
    assert all(t.amplitude_deg == pytest.approx(SIZE_DEG, rel=0.02) for t in right)
    known = [s for s in steps_s(turns) if isfinite(s)]
    assert len(known) == len(right) - 1
    assert known == pytest.approx([0.5 / HZ] * len(known), rel=0.03)
    assert figures.tempo(turns)["median"] == pytest.approx(120.0 * HZ, rel=0.02)
    assert judged(turns) == []


def test_seen_whole_the_same_turns_are_judged() -> None:
    times = np.arange(0.0, LASTS_S, 1 / 30)
    turns = turns_of(times, np.ones(len(times), bool))
    # The last one ends with the set, on its way.
    assert [t.hidden for t in turns] == [False] * (len(turns) - 1) + [True]
    assert judged(turns) == []
    small = Amplitude("too_small")
    asked = Asked((25.0, 30.0), 60.0 * 2 * HZ)
    assert any(small.turn(t, asked) for t in turns)


@pytest.mark.parametrize("rate_hz", [10.0, 15.0, 30.0])
def test_single_pictures_that_were_dropped_hide_nothing(rate_hz: float) -> None:
    times = np.arange(0.0, LASTS_S, 1.0 / rate_hz)
    for number in range(20):
        rng = np.random.default_rng(number)
        kept = np.ones(len(times), bool)
        kept[rng.integers(1, len(times) // 2, 8) * 2 - 1] = False
        assert not any(t.hidden for t in turns_of(times, kept)[:-1])


def test_where_most_ends_are_hidden_nothing_is_said_of_their_size() -> None:
    times = np.arange(0.0, LASTS_S, 1 / 30)
    turns = turns_of(times, np.abs(yaws(times)) < 12.0)
    assert len(turns) > 10 and all(t.hidden for t in turns)
    assert judged(turns) == [] and not any(isfinite(s) for s in steps_s(turns))
    found = figures.by_side(turns, lambda t: t.amplitude_deg, "not seen")
    assert found["median"] is None and found["reason"] == "not seen"


def test_a_long_hole_after_the_outermost_sample_hides_the_end_too() -> None:
    times = np.arange(0.0, LASTS_S, 1 / 30)
    slow = 18.0 * np.sin(2 * np.pi * 0.25 * times)
    channel = channel_of("head_yaw")
    finder = TurningFinder(channel.sides, channel.rule)
    turns: list[Turn] = []
    for time_s, yaw in zip(times[slow > -8.0], slow[slow > -8.0], strict=True):
        turns += finder.feed(float(time_s), float(yaw))
    turns += finder.finish()
    assert any(t.side == "left" for t in turns)
    assert all(t.hidden for t in turns if t.side == "left")
