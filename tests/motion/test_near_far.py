"""A fingertip near and far, counted from how far the eyes turn in."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tracker.exercises.counters import CHANNELS, Counter
from tracker.motion.turning import Turn
from tracker.sample import Sample


def vergence_deg(apart_mm: float, distance_mm: np.ndarray) -> np.ndarray:
    """Symmetric vergence: 2 atan of half the eyes' distance by that of the target."""
    return np.degrees(2 * np.arctan(apart_mm / 2 / distance_mm))


def near_and_far(rng: np.random.Generator, noise_deg: float) -> tuple[np.ndarray, np.ndarray, int]:
    """Times, vergence as it would be measured, and how often the tip came near."""
    rate = float(rng.choice([15, 30, 60]))
    far, near = rng.uniform(550, 700), rng.uniform(260, 330)
    apart, cycles = rng.uniform(56, 72), int(rng.integers(4, 9))
    steps, level = [(rng.uniform(0.5, 2.0), far)], far
    for _ in range(cycles):
        for end in (near, far):
            steps += [(rng.uniform(1.0, 3.5), end * rng.uniform(0.96, 1.04))]
            steps += [(rng.uniform(0.0, 1.5), steps[-1][1])]
    distances: list[np.ndarray] = []
    for lasts, end in steps:
        share = np.arange(max(1, round(lasts * rate))) / max(1, round(lasts * rate))
        distances.append(level + (end - level) * (0.5 - 0.5 * np.cos(np.pi * share)))
        level = end
    true = vergence_deg(apart, np.concatenate(distances))
    times = np.arange(len(true)) / rate
    drift = 0.4 * np.sin(0.2 * times + rng.uniform(0, 6.28)) + rng.uniform(-2, 2)
    read = true + drift + rng.normal(0.0, noise_deg, len(true))
    # Blinks leave holes.
    for at in np.arange(2.0, times[-1], rng.uniform(3, 6)):
        read[(times >= at) & (times < at + 0.25)] = np.nan
    return times, read, cycles


def count(times: np.ndarray, values: np.ndarray) -> list[Turn]:
    counter = Counter(CHANNELS["eye_vergence"])
    for t, v in zip(times, values, strict=True):
        counter.feed(Sample(float(t), vergence_deg=float(v), eye_open=1.0))
    counter.finish()
    return counter.turns


#: The spread of single readings was .4 to .9 degrees on rendered heads.
@settings(max_examples=300, deadline=None)
@given(st.integers(10_000, 10_000_000), st.sampled_from([0.4, 0.7, 1.0]))
def test_it_is_counted_exactly_and_the_right_way(number: int, noise_deg: float) -> None:
    times, values, cycles = near_and_far(np.random.default_rng(number), noise_deg)
    turns = count(times, values)
    assert [t.side for t in turns] == ["near", "far"] * cycles


@settings(max_examples=100, deadline=None)
@given(st.integers(10_000, 10_000_000))
def test_eyes_on_a_still_tip_count_nothing(number: int) -> None:
    rng = np.random.default_rng(number)
    times = np.arange(0.0, 40.0, 1 / 30)
    drift = rng.uniform(0.2, 0.5) * np.sin(rng.uniform(0.1, 0.5) * times)
    assert count(times, 9.0 + drift + rng.normal(0.0, 0.9, len(times))) == []


def test_the_change_is_that_of_the_geometry() -> None:
    """12.0 degrees at 30 cm and 6.0 at 60 cm for eyes 63 mm apart (plain geometry)."""
    times = np.arange(0.0, 24.0, 1 / 30)
    distance = 450 + 150 * np.cos(2 * np.pi * times / 6.0)
    values = vergence_deg(63.0, distance)
    assert values.max() == pytest.approx(12.0, abs=0.05)
    assert values.min() == pytest.approx(6.0, abs=0.05)
    turns = count(times, values)
    assert len(turns) >= 6
    # Smoothing over half a second takes some per cent of a way that lasts three.
    assert [t.swing_deg for t in turns[1:]] == pytest.approx([6.0] * len(turns[1:]), abs=0.3)
