"""Errors of single turns: noise, biases, and what the pictures that were had can't carry."""

from __future__ import annotations

from math import isnan

import numpy as np
import pytest
from scipy.stats import norm

from tests.session.drawn_turns import WAYS, drawn, told
from tracker.motion.drawn import K, Uncertainty, with_beats
from tracker.motion.smoothing import RunningMean, means_of
from tracker.motion.turning import TurningRule
from tracker.motion.uncertainty import LEAST_SAMPLES, Errors, errors_of, noise_of

HEAD = TurningRule()


def uneven(rng: np.random.Generator, rate_hz: float, lasts_s: float) -> np.ndarray:
    times = np.arange(0.0, lasts_s, 1.0 / rate_hz)
    times += rng.uniform(0.0, 0.5 / rate_hz, len(times))
    return times[rng.random(len(times)) > 0.05]


@pytest.mark.parametrize("rate_hz", [15, 30, 60])
@pytest.mark.parametrize("noise", [0.05, 0.3])
def test_the_noise_of_a_sample_is_found_beneath_a_movement(rate_hz: float, noise: float) -> None:
    """White noise of a known size; the movement is a sine, which is smooth."""
    for number in range(5):
        rng = np.random.default_rng(number)
        times = uneven(rng, rate_hz, 30.0)
        still = noise * rng.standard_normal(len(times))
        assert noise_of(times, still) == pytest.approx(noise, rel=0.2)
        moved = still + 18.0 * np.sin(2 * np.pi * 0.5 * times)
        assert noise_of(times, moved) == pytest.approx(noise, rel=0.2)


def test_the_noise_of_what_rests_and_jumps_is_that_of_its_rests() -> None:
    rng = np.random.default_rng(4)
    times = uneven(rng, 30, 30.0)
    values = np.where(np.floor(times) % 2 == 0, 8.0, -8.0) + 0.3 * rng.standard_normal(len(times))
    assert noise_of(times, values, at_rest=True) == pytest.approx(0.3, rel=0.25)


def test_of_a_few_samples_nothing_is_known() -> None:
    assert isnan(noise_of(np.arange(13.0), np.zeros(13)))
    assert errors_of(np.arange(13.0), np.zeros(13), [], HEAD) is None


@pytest.mark.parametrize("rate_hz", [15, 30, 60])
def test_the_bias_of_the_peak_speed_is_that_of_the_cubic(rate_hz: float) -> None:
    """A cubic through the middle of half a cosine is 0.3 % too slow, of a way of least jerk 0.7 %.

    From the least-squares cubic itself, evenly sampled; ``peak_speed`` says 0.6 % at most of a
    sine.
    """
    rng = np.random.default_rng(8)
    _, times, yaw = drawn(rng, rate_hz, 0.02, f_hz=0.5)
    turns, _ = told(times, yaw)
    errors = errors_of(times, yaw, turns, HEAD)
    assert errors is not None
    assert -0.008 < errors.speed_bias < -0.002
    # Half of what they differ by, over root 3.
    assert errors.speed_form == pytest.approx(0.002 / np.sqrt(3), abs=0.0012)


def test_more_noise_and_fewer_pictures_make_errors_larger() -> None:
    sizes = {}
    for rate_hz in (15, 60):
        for noise in (0.05, 0.4):
            _, times, yaw = drawn(np.random.default_rng(3), rate_hz, noise, f_hz=0.7)
            turns, _ = told(times, yaw)
            errors = errors_of(times, yaw, turns, HEAD)
            assert errors is not None
            sizes[rate_hz, noise] = (errors.level.std(), errors.speed.std())
    for k in (0, 1):
        assert sizes[60, 0.4][k] > 2 * sizes[60, 0.05][k]
    # Of an end the parabola's window is as long at any rate; of the speed there are fewer.
    assert sizes[15, 0.4][1] > 1.5 * sizes[60, 0.4][1]


def test_a_moment_that_stands_twice_changes_nothing() -> None:
    _, times, yaw = drawn(np.random.default_rng(3), 30, 0.1, f_hz=0.7)
    turns, _ = told(times, yaw)
    twice, again = np.repeat(times, 2), np.column_stack([yaw, yaw + 5.0]).ravel()
    once, more = errors_of(times, yaw, turns, HEAD), errors_of(twice, again, turns, HEAD)
    assert once is not None and more is not None
    assert np.array_equal(once.level, more.level) and np.array_equal(once.speed, more.speed)


def test_samples_a_turn_are_those_that_were_had() -> None:
    _, times, yaw = drawn(np.random.default_rng(1), 10, 0.1, f_hz=2.0)
    turns, _ = told(times, yaw)
    errors = errors_of(times, yaw, turns, HEAD)
    assert errors is not None
    # 2 Hz are four turns a second.
    assert errors.samples_a_turn == pytest.approx(2.5, rel=0.25)
    assert errors.samples_a_turn < LEAST_SAMPLES


def test_the_parts_add_as_the_guide_says() -> None:
    """JCGM 100:2008: squares add (5.1.2), a bias that is left in widens the interval (F.2.4.5)."""
    assert Uncertainty(3.0, 4.0).expanded == pytest.approx(K * 5.0)
    assert Uncertainty(3.0, 4.0, -1.5).expanded == pytest.approx(K * 5.0 + 1.5)


def test_both_ways_are_as_steep_as_is_said() -> None:
    u = np.linspace(0, 1, 100_001)
    for way, steepest in WAYS:
        assert np.gradient(way(u), u).max() == pytest.approx(steepest, rel=1e-4)


def test_past_an_end_that_was_not_seen_the_beats_are_shared_out() -> None:
    """As :func:`~tracker.motion.turning.steps_s` has them: four seconds for two, 30 a minute."""
    none = np.empty(0)
    late = np.array([0.0, 0.0, 0.0, 0.4, 0.0])
    errors = Errors(none, 0.0, 0.0, np.zeros(3), late, none, 0.0, 0.0, 30.0)
    beats = with_beats(np.array([0.0, 1.0, np.nan, 5.0, 6.0]), errors)
    np.testing.assert_allclose(beats.values, [np.nan, 60.0, np.nan, 30.0, 60.0])
    # Read .4 s late, each of the two steps before is .2 too long, and the one after .4 too short.
    np.testing.assert_allclose(beats.off, [np.nan, 0.0, np.nan, 30.0 - 60 / 1.8, 60.0 - 60 / 1.4])


@pytest.mark.parametrize(("span_s", "least_s"), [(0.2, 0.0), (0.2, 0.1), (0.5, 0.25)])
def test_a_whole_signal_is_averaged_as_its_samples_are(span_s: float, least_s: float) -> None:
    rng = np.random.default_rng(7)
    times = np.cumsum(rng.uniform(0.01, 0.12, 400))
    times[200:] += 3.0
    values = rng.standard_normal(400)
    mean = RunningMean(span_s, least_s=least_s)
    one_by_one = [m for t, v in zip(times, values, strict=True) if (m := mean.feed(t, v))]
    at_once = np.stack(means_of(times, values, span_s, least_s=least_s), axis=1)
    assert len(at_once) < 400 or not least_s
    np.testing.assert_allclose(at_once, np.array(one_by_one), atol=1e-9)
    assert means_of(np.zeros(0), np.zeros(0), span_s)[0].shape == (0,)


def test_the_largest_of_ten_lies_as_far_out_as_is_said() -> None:
    """1.54 standard deviations: the mean of an order statistic, by its density (arithmetic)."""
    x = np.linspace(-10.0, 10.0, 20_001)
    found = np.trapezoid(x * 10.0 * norm.cdf(x) ** 9 * norm.pdf(x), x)
    assert found == pytest.approx(1.54, abs=0.005)
    # Six samples go into a mean of 0.2 s at 30 a second.
    assert found / 6**0.5 == pytest.approx(0.63, abs=0.005)
