"""Where a moving target is: against numpy and scipy, and against the geometry of a near screen."""

from __future__ import annotations

from math import radians, tan

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.interpolate import BPoly

from tracker.rotation import angles_from_direction, matrix_from_angles
from tracker.session.stage import Step
from tracker.targets import (
    PURSUIT_MOST_DEG_S,
    ROWS_MOST,
    Backdrop,
    Sweep,
    fitting_swing_deg,
    lowered,
    peak_speed_deg_s,
    pursuit_swing_deg,
    share_at,
    tempo_of_target,
    track_of,
    track_swing_deg,
)
from tracker.tempo import beats_until

TEMPI = pytest.mark.parametrize("tempo", [20.0, 60.0, 150.0, (40.0, 120.0)])


def test_the_first_way_is_the_only_polynomial_that_meets_rest_and_cosine() -> None:
    # Place, speed and acceleration at both ends, solved by scipy's Bernstein interpolation.
    solved = BPoly.from_derivatives([0.0, 1.0], [[0.0, 0.0, 0.0], [1.0, 0.0, -(np.pi**2)]])
    u = np.linspace(0.0, 1.0, 101)
    assert [share_at(v) for v in u] == pytest.approx(solved(u), abs=1e-12)


def test_from_the_first_side_on_it_is_a_cosine_with_one_way_a_beat() -> None:
    beats = np.linspace(1.0, 9.0, 400)
    assert [share_at(b) for b in beats] == pytest.approx(-np.cos(np.pi * beats), abs=1e-12)
    assert [round(share_at(b), 9) for b in (-1, 0, 1, 2, 3)] == [0, 0, 1, -1, 1]


@TEMPI
def test_place_speed_and_acceleration_have_no_jump(tempo: float | tuple[float, float]) -> None:
    sweep = Sweep(10.0, 600.0, tempo, 20.0)
    t = np.arange(-0.5, 20.0, 0.001)
    place = np.array([sweep.swing_deg * sweep.share(v) for v in t])
    speed = np.gradient(place, t)
    turned = np.gradient(speed, t)
    fastest = (max(tempo) if isinstance(tempo, tuple) else tempo) / 60.0
    assert np.abs(speed).max() <= sweep.peak_speed_deg_s * 1.01
    assert np.abs(turned).max() <= 1.1 * 10.0 * (np.pi * fastest) ** 2
    # A jump of the acceleration would show as a difference that does not shrink with the step.
    third = 10.0 * (np.pi * fastest) ** 3
    assert np.abs(np.diff(turned[2:-2])).max() < 6.0 * third * 0.001


def test_peak_speed_is_that_of_the_cosine() -> None:
    sweep = Sweep(11.0, 650.0, 60.0, 10.0)
    t = np.arange(0.0, 10.0, 0.0005)
    speed = np.gradient([11.0 * sweep.share(v) for v in t], t)
    assert np.abs(speed).max() == pytest.approx(peak_speed_deg_s(11.0, 60.0), rel=1e-3)


@pytest.mark.parametrize(("distance", "neck"), [(600.0, 100.0), (650.0, 90.0), (750.0, 110.0)])
def test_eyes_on_a_target_against_the_head_turn_twice_and_a_little_more(
    distance: float, neck: float
) -> None:
    # The eyes lie ``neck`` in front of the point about which the head turns.
    head = np.linspace(-10.0, 10.0, 21)
    in_head = []
    for h in head:
        eyes = np.array([neck * np.sin(radians(h)), 0.0, neck * (np.cos(radians(h)) - 1.0)])
        target = np.array([distance * tan(radians(-h)), 0.0, distance])
        away = matrix_from_angles(float(h), 0.0, 0.0).T @ (target - eyes)
        in_head.append(float(angles_from_direction(away)[0]))
    slope = np.polyfit(head, in_head, 1)[0]
    assert -slope == pytest.approx(2.0 + neck / distance, rel=0.02)


@TEMPI
def test_the_track_says_where_the_target_is_drawn(tempo: float | tuple[float, float]) -> None:
    sweep = Sweep(-11.0, 650.0, tempo, 30.0)
    track = track_of(sweep, 100.0, lambda o: (o, -60.0, 650.0))
    step = Step(from_s=100.0, to_s=130.0, step="exercise", target_track=track)
    times = np.linspace(100.0, 130.0, 1501)
    rows = np.array(track)
    placed = [step.target_at(float(t)) for t in times]
    assert all(p is not None for p in placed)
    x = np.array([p[0] for p in placed if p is not None])
    assert x == pytest.approx(np.interp(times, rows[:, 0], rows[:, 1]), abs=1e-6)
    drawn = np.array([sweep.offset_mm(float(t) - 100.0) for t in times])
    # Within an eighth of a degree (a tempo that rises has fewer rows a beat at its end).
    assert np.abs(x - drawn).max() < 650.0 * tan(radians(0.13))
    assert track_swing_deg(track) == pytest.approx(11.0, abs=0.05)


def test_a_very_long_set_keeps_its_rows_few() -> None:
    sweep = Sweep(10.0, 650.0, 60.0, 600.0)
    assert ROWS_MOST * 0.9 < len(sweep.times_s()) <= ROWS_MOST + 1
    assert len(Sweep(10.0, 650.0, 60.0, 60.0).times_s()) == 961


def test_a_track_that_jumps_is_read_as_numpy_reads_it() -> None:
    rows = [(0.0, 80.0, 0.0, 600.0), (1.0, 80.0, 0.0, 600.0), (1.001, -80.0, 0.0, 600.0)]
    step = Step(from_s=0.0, to_s=2.0, step="exercise", target_track=rows)
    table = np.array(rows)
    for t in (-1.0, 0.0, 0.5, 1.0, 1.0004, 1.001, 5.0):
        found = step.target_at(t)
        assert found is not None
        assert found[0] == pytest.approx(np.interp(t, table[:, 0], table[:, 1]))


def test_a_step_that_is_cut_keeps_its_track_to_there() -> None:
    track = track_of(Sweep(10.0, 600.0, 60.0, 60.0), 5.0, lambda o: (o, 0.0, 600.0))
    step = Step(from_s=5.0, to_s=65.0, step="exercise", target_track=track)
    cut = step.until(11.0)
    assert cut.to_s == 11.0 and cut.target_track is not None
    assert len(cut.target_track) < 110
    for t in np.arange(5.0, 11.0, 0.037):
        assert cut.target_at(float(t)) == step.target_at(float(t))


def test_the_screen_carries_what_fits_and_no_more() -> None:
    # 344 mm of a laptop's width, 12 mm free at each edge, at 650 mm.
    assert fitting_swing_deg(17.5, 160.0, 650.0) == pytest.approx(np.degrees(np.arctan(160 / 650)))
    assert fitting_swing_deg(10.0, 160.0, 650.0) == 10.0
    assert fitting_swing_deg(10.0, -3.0, 650.0) == 0.0


def test_what_is_asked_of_the_head_is_lowered_with_the_target() -> None:
    assert lowered((15.0, 20.0), 14.0) == (12.0, 16.0)
    assert lowered((15.0, 20.0), 17.3) == (15.0, 20.0)
    assert lowered((8.0, 12.0), 30.0) == (8.0, 12.0)


@pytest.mark.parametrize("tempo", [10.0, 20.0, 38.0, 40.0, (20.0, 40.0)])
def test_a_target_to_follow_never_goes_faster_than_the_eyes_can(
    tempo: float | tuple[float, float],
) -> None:
    swing = pursuit_swing_deg(tempo)
    assert 6.0 < swing <= 10.0
    assert Sweep(swing, 600.0, tempo, 30.0).peak_speed_deg_s <= PURSUIT_MOST_DEG_S + 1e-9


def test_at_ones_own_pace_it_goes_slowly() -> None:
    assert tempo_of_target(None) == 24.0 and tempo_of_target(60.0) == 60.0
    assert beats_until(24.0, 2.5, 100.0) == 1.0


def test_the_background_moves_slowly_softly_and_comes_back() -> None:
    drop = Backdrop()
    for elapsed in np.arange(0.0, 31.0, 0.37):
        whole, _ = quad(drop.speed_at, 0.0, elapsed, limit=400, points=np.arange(0, elapsed, 1.0))
        assert drop.shift_deg(float(elapsed)) == pytest.approx(whole, abs=1e-3)
    t = np.arange(0.0, 40.0, 0.01)
    speed = np.array([drop.speed_at(float(v)) for v in t])
    assert np.abs(speed).max() == pytest.approx(drop.speed_deg_s, rel=1e-6)
    assert np.abs(np.diff(speed)).max() < 0.02
    assert drop.shift_deg(20.0) == pytest.approx(0.0, abs=1e-9)
    # A place is passed by fewer bars than the three a second that count as flashes.
    assert drop.speed_deg_s / drop.period_deg <= 0.5 and drop.contrast < 0.1
