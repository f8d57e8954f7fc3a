"""Head speed: against mathematics (2 pi f A), and the bias and noise that its text states."""

from __future__ import annotations

from math import isfinite, isnan, nan

import numpy as np
import pytest
from scipy.signal import savgol_coeffs

from tracker.motion.speed import LOOK_AHEAD_S, SpeedEstimator, angular_velocity
from tracker.rotation import matrix_from_angles
from tracker.sample import Sample


def estimate(samples: list[Sample]) -> list[Sample]:
    estimator = SpeedEstimator()
    out = [r for s in samples for r in estimator.feed(s)]
    return out + estimator.flush()


def head(t: float, yaw: float, pitch: float = 0.0, roll: float = 0.0) -> Sample:
    return Sample(t, head_yaw_deg=yaw, head_pitch_deg=pitch, head_roll_deg=roll)


def gain(rate_hz: float, f_hz: float) -> float:
    """Size of the estimated speeds against the true ones of a 20 degree sine."""
    t = np.arange(0, 6, 1 / rate_hz)
    out = estimate([head(a, 20 * np.sin(2 * np.pi * f_hz * a), 3, 1) for a in t])
    got = np.array([s.head_yaw_speed_deg_s for s in out])[8:-8]
    true = (2 * np.pi * f_hz * 20 * np.cos(2 * np.pi * f_hz * t))[8:-8]
    return float(got @ true / (true @ true))


@pytest.mark.parametrize(
    ("rate_hz", "biases"),
    [
        (15, (0.0, -0.4, -2.2, -6.1, -13.5)),
        (30, (0.0, 0.0, -0.2, -0.6, -1.4)),
        (60, (0.0, 0.0, -0.2, -0.6, -1.4)),
    ],
)
def test_bias_is_the_one_stated(rate_hz: float, biases: tuple[float, ...]) -> None:
    for f_hz, bias in zip((0.5, 1.0, 1.5, 2.0, 2.5), biases, strict=True):
        assert 100 * (gain(rate_hz, f_hz) - 1) == pytest.approx(bias, abs=0.1 + 0.02 * abs(bias))


@pytest.mark.parametrize(("rate_hz", "low", "high"), [(15, 7, 11), (30, 13, 19), (60, 9, 14)])
def test_noise_is_the_one_stated(rate_hz: float, low: float, high: float) -> None:
    rng = np.random.default_rng(3)
    for sigma in (0.1, 0.5):
        t = np.arange(0, 60, 1 / rate_hz)
        out = estimate([head(a, v) for a, v in zip(t, rng.normal(0, sigma, len(t)), strict=True)])
        noise = np.std([s.head_yaw_speed_deg_s for s in out][8:-8])
        assert low <= noise / sigma <= high


def test_even_samples_give_a_savitzky_golay_slope() -> None:
    t = np.arange(7) / 30
    yaw = np.random.default_rng(0).normal(0, 0.01, 7)
    expected = savgol_coeffs(7, 3, deriv=1, delta=1 / 30, use="dot") @ yaw
    got, _ = angular_velocity(t, matrix_from_angles(yaw, np.zeros(7)), 3)
    assert got == pytest.approx(expected, rel=1e-6, abs=1e-6)


def test_steady_turn_across_half_a_circle_has_no_jump() -> None:
    t = np.arange(0, 4, 1 / 30)
    out = estimate([head(a, (60 * a + 100 + 180) % 360 - 180) for a in t])
    assert [s.head_yaw_speed_deg_s for s in out] == pytest.approx([60.0] * len(t), abs=1e-6)


def test_pitch_rate_is_about_the_yawed_right_axis() -> None:
    t = np.arange(0, 1, 1 / 30)
    out = estimate([head(a, 35, 40 * a) for a in t])
    assert out[15].head_pitch_speed_deg_s == pytest.approx(40, abs=1e-6)
    assert out[15].head_yaw_speed_deg_s == pytest.approx(0, abs=1e-6)


def test_uneven_times_are_allowed_for() -> None:
    rng = np.random.default_rng(5)
    t = np.cumsum(rng.uniform(0.02, 0.06, 200))
    out = estimate([head(a, 20 * np.sin(2 * np.pi * 0.5 * a)) for a in t])
    true = 20 * np.pi * np.cos(np.pi * t)
    got = np.array([s.head_yaw_speed_deg_s for s in out])
    assert np.abs(got - true)[5:-5].max() < 0.02 * 20 * np.pi


def test_looks_no_further_ahead_than_stated() -> None:
    estimator = SpeedEstimator()
    given: dict[float, float] = {}
    for k in range(60):
        for ready in estimator.feed(head(k / 30, k)):
            given[ready.time_s] = k / 30
    delays = [now - then for then, now in given.items()]
    assert max(delays) <= LOOK_AHEAD_S + 1 / 30 + 1e-6


def test_holes_are_not_fitted_across() -> None:
    before = [head(k / 30, 10.0) for k in range(10)]
    after = [head(1 + k / 30, 60.0) for k in range(10)]
    out = estimate(before + after)
    assert np.abs([s.head_yaw_speed_deg_s for s in out]).max() < 1e-6


def test_unmeasured_samples_stay_unmeasured_and_are_bridged() -> None:
    samples = [head(k / 30, 2.0 * k) for k in range(20)]
    samples[9] = Sample(9 / 30, reason="no_face")
    out = estimate(samples)
    assert isnan(out[9].head_yaw_speed_deg_s)
    assert out[10].head_yaw_speed_deg_s == pytest.approx(60, abs=1e-6)


def test_too_few_samples_give_nothing() -> None:
    assert all(isnan(v) for v in angular_velocity(np.array([0, 0.1]), np.stack([np.eye(3)] * 2), 0))
    assert isnan(estimate([head(0.0, 1.0)])[0].head_yaw_speed_deg_s)
    assert isnan(estimate([head(0.0, nan)] * 1)[0].head_yaw_speed_deg_s)


def test_fifteen_frames_a_second_still_have_five_samples() -> None:
    out = estimate([head(k / 15, k * k * 0.1) for k in range(20)])
    assert all(isfinite(s.head_yaw_speed_deg_s) for s in out[1:])
    assert out[10].head_yaw_speed_deg_s == pytest.approx(2 * 10 * 0.1 * 15, rel=1e-6)


def test_speeds_of_a_trace_win() -> None:
    samples = [
        Sample(k / 30, head_yaw_deg=k, head_pitch_deg=0.0, head_yaw_speed_deg_s=7.0)
        for k in range(20)
    ]
    assert {s.head_yaw_speed_deg_s for s in estimate(samples)} == {7.0}
