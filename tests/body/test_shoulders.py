"""Rolls of the shoulders from made-up landmarks: counts and ways (logic only)."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.body.made_up import RATE_HZ, Array, rolls, samples_of
from tests.session.synthetic import FROM_S, TO_S, steps
from tracker.exercises.counters import CHANNELS, Counter
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.stage import Step
from tracker.session.summary import summarise
from tracker.session.summary_file import ExerciseSummary

NUMBERS = st.integers(0, 10_000_000)
TIMES = np.arange(0.0, 30.0, 1.0 / RATE_HZ)


def counted(samples: list[Sample]) -> int:
    counter = Counter(CHANNELS["shoulder_lift"])
    for sample in samples:
        counter.feed(sample)
    counter.finish()
    return counter.repetitions


def judged(samples: list[Sample], exercise: str = "shoulders-back") -> ExerciseSummary:
    step = Step(
        from_s=samples[0].time_s, to_s=samples[-1].time_s + 0.1, step="exercise", exercise=exercise
    )
    return summarise(run_samples(samples, [step], SessionInfo())).exercises[0]


@settings(max_examples=200, deadline=None)
@given(NUMBERS, st.sampled_from([1.0, -1.0]), st.booleans())
def test_rolls_are_counted_exactly(number: int, way: float, hesitate: bool) -> None:
    samples, there = rolls(np.random.default_rng(number), way, hesitate)
    assert counted(samples) == there


def nothing(t: Array) -> Array:
    return np.zeros_like(t)


def breathing(t: Array) -> Array:
    """Shoulders of one who breathes deeply, as landmarks show it."""
    return 3.0 * np.sin(2 * np.pi * 0.25 * t)


def slumping(t: Array) -> Array:
    """Sinks slowly, by more than a roll in all."""
    return -0.8 * t


@settings(max_examples=60, deadline=None)
@given(NUMBERS, st.sampled_from([nothing, breathing, slumping]))
def test_breathing_and_sinking_are_no_rolls(number: int, move: Callable[[Array], Array]) -> None:
    assert counted(samples_of(TIMES, move, np.random.default_rng(number))) == 0


@settings(max_examples=40, deadline=None)
@given(NUMBERS)
def test_a_trunk_that_leans_to_the_sides_lifts_no_shoulders(number: int) -> None:
    samples = samples_of(
        TIMES, nothing, np.random.default_rng(number), tilt=lambda t: 40 * np.sin(2 * t)
    )
    assert counted(samples) == 0


@pytest.mark.parametrize(("way", "name"), [(1.0, "back"), (-1.0, "forward")])
def test_the_way_is_told_by_the_width(way: float, name: str) -> None:
    told = other = 0
    for number in range(30):
        samples, there = rolls(np.random.default_rng(number), way)
        found = judged(samples).body["direction"]  # type: ignore[index]
        told += found[name]
        other += found["forward" if name == "back" else "back"]
        assert found["back"] + found["forward"] + found["not_told"] == there
    # Small rolls drown in noise: then it is not told, and never told wrongly.
    assert told > 80 and other <= 0.01 * told


def test_straight_up_and_down_has_no_way() -> None:
    samples = samples_of(TIMES, lambda t: 15 - 15 * np.cos(2 * t), np.random.default_rng(1))
    found = judged(samples)
    assert found.done.repetitions == 9
    assert found.body is not None and found.body["direction"]["not_told"] == 9
    assert "about half" in found.body["note"]


def test_frames_in_which_nobody_looked_are_no_holes() -> None:
    rng = np.random.default_rng(5)
    times = np.arange(0.0, 20.0, 1 / 30)
    even = samples_of(
        times,
        lambda t: 15 - 15 * np.cos(2 * t),
        rng,
        looked=lambda t: np.arange(len(t)) % 2 == 0,
    )
    found = judged(even)
    assert found.done.repetitions == 6
    assert found.done.measured_fraction > 0.98
    assert [e.code for e in found.events] == []


def test_shoulders_out_of_the_picture_are_not_measured() -> None:
    """Who walks away in the middle: what was done before counts, the rest is no zero."""
    rng = np.random.default_rng(6)
    times = np.arange(0.0, 24.0, 1 / RATE_HZ)
    samples = samples_of(times, lambda t: 15 - 15 * np.cos(2 * t), rng, looked=lambda t: t < 12.6)
    gone = [
        s if s.time_s < 12.6 else Sample(s.time_s, reason="no_face", body_seen=0.0) for s in samples
    ]
    found = judged(gone)
    assert found.done.repetitions == 4
    assert found.done.measured_fraction == pytest.approx(12.6 / 24.1, abs=0.02)
    assert [(e.code, e.reason) for e in found.events] == [("not_measured", "no_face")]


def test_shoulders_never_seen_give_no_count_and_say_why() -> None:
    blank = [
        Sample(t, head_yaw_deg=0.0, head_pitch_deg=0.0, eye_open=1.0, body_seen=0.0)
        for t in np.arange(FROM_S, TO_S, 1 / 15)
    ]
    found = summarise(run_samples(blank, steps("shoulders-back"), SessionInfo())).exercises[0]
    assert found.done.repetitions is None and "never measured" in (found.done.reason or "")
    assert [(e.code, e.reason) for e in found.events] == [("not_measured", "no_body")]
