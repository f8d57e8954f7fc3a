"""Turning points: exact counts over hundreds of made-up sets, amplitudes, peak speeds."""

from __future__ import annotations

import itertools
from math import isnan, nan

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.signal import find_peaks

from tests.motion.movements import (
    Movement,
    hesitating_set,
    random_set,
    still_set,
    turning,
)
from tests.motion.stands import Path
from tracker.motion import reading
from tracker.motion.reading import peak_speed
from tracker.motion.turning import Turn, TurningFinder, TurningRule

SIDES = ("right", "left")


def find(times: np.ndarray, values: np.ndarray, rule: TurningRule | None = None) -> list[Turn]:
    finder = TurningFinder(SIDES, rule)
    turns = [t for a, b in zip(times, values, strict=True) for t in finder.feed(a, b)]
    return turns + finder.finish()


def sine(f_hz: float, amplitude: float, rate_hz: float, cycles: int = 20) -> Movement:
    moving = np.arange(0, cycles / f_hz, 1 / rate_hz)
    values = np.concatenate([amplitude * np.sin(2 * np.pi * f_hz * moving), np.zeros(5)])
    return Movement(np.arange(len(values)) / rate_hz, values, 2 * cycles)


# Other numbers than those that the thresholds were chosen on (0 to 1499).
@settings(max_examples=400, deadline=None)
@given(st.integers(10_000, 10_000_000))
def test_sets_are_counted_exactly(number: int) -> None:
    move = random_set(np.random.default_rng(number))
    assert len(find(move.times_s, move.values_deg)) // 2 == move.turns // 2


@settings(max_examples=200, deadline=None)
@given(st.integers(10_000, 10_000_000))
def test_hesitations_are_no_turns(number: int) -> None:
    move = hesitating_set(np.random.default_rng(number))
    assert len(find(move.times_s, move.values_deg)) == move.turns


@settings(max_examples=200, deadline=None)
@given(st.integers(10_000, 10_000_000))
def test_tremor_drift_and_talking_are_no_turns(number: int) -> None:
    move = still_set(np.random.default_rng(number))
    assert find(move.times_s, move.values_deg) == []


@pytest.mark.parametrize("f_hz", [0.15, 0.5, 1.0, 2.0, 2.5])
@pytest.mark.parametrize("rate_hz", [15, 30, 60])
@pytest.mark.parametrize("amplitude", [5, 20, 45])
def test_clean_sines_agree_with_find_peaks(f_hz: float, rate_hz: float, amplitude: float) -> None:
    move = sine(f_hz, amplitude, rate_hz, cycles=10)
    turns = find(move.times_s, move.values_deg)
    highs, _ = find_peaks(move.values_deg, prominence=0.7 * amplitude)
    lows, _ = find_peaks(-move.values_deg, prominence=0.7 * amplitude)
    assert len(turns) == move.turns == len(highs) + len(lows)
    peaks = np.sort(np.concatenate([move.times_s[highs], move.times_s[lows]]))
    assert np.abs(peaks - [t.peak_s for t in turns]).max() <= 1.0 / rate_hz


def test_better_than_find_peaks_on_dirty_signals() -> None:
    """With its prominence set as ours begins, find_peaks counts hesitations and noise."""
    ours = theirs = 0
    for number in range(20_000, 20_100):
        move = hesitating_set(np.random.default_rng(number))
        ours += len(find(move.times_s, move.values_deg)) != move.turns
        peaks = [len(find_peaks(s * move.values_deg, prominence=5.5)[0]) for s in (1, -1)]
        theirs += sum(peaks) != move.turns
    assert ours == 0
    assert theirs > 50


def test_sides_amplitudes_and_order() -> None:
    move = turning(np.array([20.0, -15, 20, -15, 20, -15]), np.full(6, 1.0), 30)
    turns = find(move.times_s, move.values_deg)
    assert [t.side for t in turns] == ["right", "left"] * 3
    assert [t.index for t in turns] == list(range(6))
    assert [t.amplitude_deg for t in turns] == pytest.approx([20, 15] * 3, rel=0.01)
    for a, b in itertools.pairwise(turns):
        assert a.start_s < a.peak_s < a.end_s
        assert a.peak_s <= b.start_s < b.peak_s


def test_there_and_back_on_one_side_is_a_repetition() -> None:
    move = turning(np.array([30.0, 0, 30, 0, 30]), np.full(5, 1.0), 30)
    assert len(find(move.times_s, move.values_deg)) == 6


@pytest.mark.parametrize(("amplitude", "count"), [(2.2, 0), (3.5, 10)])
def test_smallest_movement_that_counts(amplitude: float, count: int) -> None:
    move = sine(0.5, amplitude, 30, cycles=5)
    assert len(find(move.times_s, move.values_deg)) == count


@pytest.mark.parametrize(("share", "extra"), [(0.3, 0), (0.6, 2)])
def test_way_back_that_counts(share: float, extra: int) -> None:
    back = share * 40
    levels = np.array([20.0, -20, 20, -20, 20, -20, back / 2, -back / 2, 20, -20])
    move = turning(levels, np.full(len(levels), 0.8), 30)
    assert len(find(move.times_s, move.values_deg)) == 8 + extra


def test_last_extreme_counts_only_a_full_swing_away() -> None:
    move = sine(0.5, 20, 30, cycles=3)
    full = move.times_s <= 5.5  # ends at the last low, nothing comes back from it
    half = move.times_s <= 5.0  # ends on the way down, at 0
    assert len(find(move.times_s[full], move.values_deg[full])) == 6
    assert len(find(move.times_s[half], move.values_deg[half])) == 5


@pytest.mark.parametrize(("hole_s", "same"), [(0.4, True), (1.6, False)])
def test_short_holes_are_bridged_and_long_ones_are_not(hole_s: float, same: bool) -> None:
    move = sine(0.5, 20, 30, cycles=6)
    values = move.values_deg.copy()
    values[(move.times_s > 5.3) & (move.times_s < 5.3 + hole_s)] = nan
    assert (len(find(move.times_s, values)) == 12) == same


def test_movement_that_becomes_small_is_found_again() -> None:
    large = [20.0, -20] * 5
    small = [6.0, -6] * 10
    move = turning(np.array(large + small), np.full(30, 1.0), 30)
    late = [t for t in find(move.times_s, move.values_deg) if t.peak_s > move.times_s[-1] - 8]
    assert len(late) >= 6


@pytest.mark.parametrize(
    ("rate_hz", "f_hz", "sigma", "most"),
    [(30, f, s, 0.04) for f in (0.5, 1.0, 1.5, 2.0) for s in (0.0, 0.1, 0.5)]
    + [(60, f, s, 0.04) for f in (0.5, 1.0, 2.0) for s in (0.0, 0.5)]
    + [(15, f, s, 0.08) for f in (0.5, 1.0) for s in (0.0, 0.1, 0.5)],
)
def test_peak_speed_is_two_pi_f_a(rate_hz: float, f_hz: float, sigma: float, most: float) -> None:
    rng = np.random.default_rng(int(100 * f_hz + rate_hz))
    move = sine(f_hz, 20, rate_hz)
    turns = find(move.times_s, move.values_deg + rng.normal(0, sigma, len(move.times_s)))
    speed = np.median([t.peak_speed_deg_s for t in turns[1:]])
    assert speed == pytest.approx(2 * np.pi * f_hz * 20, rel=most)
    assert np.median([t.amplitude_deg for t in turns]) == pytest.approx(20, rel=0.03)


def test_peak_speed_ignores_pauses() -> None:
    """A minimum-jerk turn of 30 degrees in 0.6 s peaks at 1.875 x 30 / 0.6 deg/s."""
    u = np.clip((np.arange(0, 3, 1 / 60) - 1.2) / 0.6, 0, 1)
    values = 30 * (10 * u**3 - 15 * u**4 + 6 * u**5)
    speed = peak_speed(np.arange(0, 3, 1 / 60), values)
    assert speed == pytest.approx(1.875 * 30 / 0.6, rel=0.03)


def quickest(path: Path) -> float:
    """A minimum-jerk way is 1.875 times as fast as its mean at most (Flash & Hogan 1985)."""
    return max(1.875 * abs(to - at) / lasts_s for _, lasts_s, at, to in path.pieces)


@pytest.mark.parametrize("rate_hz", [15, 30, 60])
@pytest.mark.parametrize("share", [0.35, 0.5, 0.65])
@pytest.mark.parametrize("pause_s", [0.2, 0.5, 2.0])
def test_a_pause_in_mid_turn_makes_it_no_slower(
    pause_s: float, share: float, rate_hz: float
) -> None:
    path = Path().go(40 * share, 0.6).wait(pause_s).go(40, 0.8)
    times, values = path.sampled(rate_hz)
    assert peak_speed(times, values) == pytest.approx(quickest(path), rel=0.03)
    assert peak_speed(times, 5 - values) == pytest.approx(quickest(path), rel=0.03)


def test_two_pauses_and_a_way_back_in_mid_turn_make_it_no_slower() -> None:
    for path in (
        Path().go(12, 0.7).wait(0.6).go(28, 0.6).wait(0.8).go(40, 0.7),
        Path().go(16, 0.6).go(9, 0.4).go(40, 0.9),
    ):
        assert peak_speed(*path.sampled(30)) == pytest.approx(quickest(path), rel=0.03)


def test_a_noisy_pause_in_mid_turn_is_told_as_well() -> None:
    rng = np.random.default_rng(31)
    errors = []
    for _ in range(200):
        share, pause_s = rng.uniform(0.35, 0.65), rng.uniform(0.3, 1.5)
        path = Path().go(30 * share, rng.uniform(0.5, 1.2)).wait(pause_s)
        path.go(30, rng.uniform(0.5, 1.2))
        times, values = path.sampled(30)
        speed = peak_speed(times, values + rng.normal(0, 0.3, len(times)))
        errors.append(speed / quickest(path) - 1)
    assert abs(np.median(errors)) < 0.03
    # The same cubic on shorter turns: a little above what noise does to a whole one.
    assert np.quantile(np.abs(errors), 0.95) < 0.12


@settings(max_examples=60, deadline=None)
@given(st.integers(10_000, 10_000_000))
def test_no_pause_is_found_in_mid_turn_where_there_is_none(number: int) -> None:
    """Turns of whole sets, with noise and drift, keep the figures of the cubic alone."""
    move = random_set(np.random.default_rng(number))
    speeds = [t.peak_speed_deg_s for t in find(move.times_s, move.values_deg)]
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(reading, "_stay", lambda *_: None)
        of_cubic = [t.peak_speed_deg_s for t in find(move.times_s, move.values_deg)]
    np.testing.assert_array_equal(speeds, of_cubic)


def test_peak_speed_of_too_little_is_not_measured() -> None:
    assert isnan(peak_speed(np.arange(3.0), np.arange(3.0)))
    assert isnan(peak_speed(np.arange(9.0), np.zeros(9)))


def test_eye_jumps_are_read_on_their_plateaus() -> None:
    t = np.arange(0, 20, 1 / 30)
    rng = np.random.default_rng(2)
    values = np.where(np.floor(t) % 2 == 0, 8.0, -8.0) + rng.normal(0, 0.6, len(t))
    turns = find(t, values, TurningRule(floor=4, first=4, plateau=True))
    assert len(turns) == 19 or len(turns) == 20
    assert [t.amplitude_deg for t in turns] == pytest.approx([8] * len(turns), abs=0.6)
    assert all(isnan(t.peak_speed_deg_s) for t in turns)
