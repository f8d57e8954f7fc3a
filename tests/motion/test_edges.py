"""What the limits of counting mean, one at a time, on movements that lie close to them.

The limits themselves are this project's own choice (see where each is defined); here it is held
that each does what its words say.
"""

from __future__ import annotations

from collections.abc import Callable
from math import isnan, nan

import numpy as np
import pytest

from tracker.motion.away import BENDING_DOWN, STANDING_UP, AwayFinder, AwayRule
from tracker.motion.reading import peak_speed
from tracker.motion.smoothing import RunningMean
from tracker.motion.speed import SpeedEstimator
from tracker.motion.turning import Turn, TurningFinder, TurningRule
from tracker.sample import Sample

RATE_HZ = 30.0


def ways(rule: AwayRule, *points: tuple[float, float]) -> list[Turn]:
    """Turns of a height that goes straight from point to point (s, mm); NaN is not seen."""
    finder = AwayFinder(rule)
    at_s, at_mm = zip(*points, strict=True)
    out: list[Turn] = []
    for t in np.arange(0.0, at_s[-1], 1.0 / RATE_HZ):
        out += finder.feed(float(t), float(np.interp(t, at_s, at_mm)))
    return out + finder.finish()


def turns_of(path: Callable[[float], float], to_s: float, rate_hz: float = RATE_HZ) -> list[Turn]:
    finder = TurningFinder(("right", "left"))
    out: list[Turn] = []
    for t in np.arange(0.0, to_s, 1.0 / rate_hz):
        out += finder.feed(float(t), path(float(t)))
    return out + finder.finish()


# --- the running mean ---


def test_the_mean_holds_both_ends_of_its_span() -> None:
    mean = RunningMean(0.2)
    assert [mean.feed(t, v) for t, v in ((0.0, 0.0), (0.1, 3.0), (0.2, 6.0))][-1] == pytest.approx(
        (0.1, 3.0)
    )
    # And no more than the span.
    assert mean.feed(0.3, 9.0) == pytest.approx((0.2, 6.0))


# --- away from home and back ---


def test_home_follows_slowly_so_that_leaning_first_takes_nothing_from_a_stand() -> None:
    leaning = ways(
        STANDING_UP, (0, 0), (1, 0), (1.5, 35), (4, 35), (5, 168), (6, 168), (7, 0), (9, 0)
    )
    assert [t.side for t in leaning] == ["up", "down"]


#: Stands for a while, then sits down.
SITS = ((6.0, 0.0), (7.0, -400.0), (9.0, -400.0))


def test_who_begins_standing_and_sits_down_for_most_of_a_second_stands_up_from_there() -> None:
    found = ways(STANDING_UP, (0, 0), (2, 0), (2.4, -400), (3.3, -400), (3.8, 0), *SITS)
    assert [t.side for t in found] == ["up", "down"]
    # A trunk that bends forward before it rises is down for less time.
    dip = ways(STANDING_UP, (0, 0), (2, 0), (2.3, -260), (2.5, -260), (2.8, 0), *SITS)
    assert dip == []


def test_who_comes_all_the_way_back_misses_nothing_of_it() -> None:
    (bend,) = ways(BENDING_DOWN, (0, 0), (1, 0), (2, -400), (3, 0), (5, 0))
    assert bend.short_mm == pytest.approx(0.0, abs=0.1)
    (bend,) = ways(BENDING_DOWN, (0, 0), (1, 0), (2, -400), (3, -90), (6, -90))
    assert bend.short_mm == pytest.approx(90.0, abs=3.0)


def test_a_face_that_is_lost_after_the_way_back_takes_nothing_from_what_was_seen() -> None:
    # Back by half and more, then a little down again and out of sight.
    seen = ((0.0, 0.0), (1.0, 0.0), (2.0, -400.0), (2.8, -120.0), (3.2, -190.0))
    finder, found = AwayFinder(BENDING_DOWN), []
    at_s, at_mm = zip(*seen, strict=True)
    for t in np.arange(0.0, 3.2, 1.0 / RATE_HZ):
        found += finder.feed(float(t), float(np.interp(t, at_s, at_mm)))
    for t in np.arange(4.2, 6.5, 1.0 / RATE_HZ):
        found += finder.feed(float(t), 0.0)
    (bend,) = found + finder.finish()
    assert bend.amplitude_mm == pytest.approx(400.0, rel=0.08)


def lost_then(rest_mm: float, *after: tuple[float, float]) -> list[Turn]:
    """A bend whose face is lost on its way down by 600 mm/s, and that is seen again at a depth."""
    finder = AwayFinder(BENDING_DOWN)
    out: list[Turn] = []
    down = [(float(t), 0.0) for t in np.arange(0.0, 1.0, 1.0 / RATE_HZ)]
    down += [(1.0 + float(s), -600.0 * float(s)) for s in np.arange(0.0, 0.3, 1.0 / RATE_HZ)]
    at_s, at_mm = zip((2.5, -rest_mm), *after, strict=True)
    later = [
        (float(t), float(np.interp(t, at_s, at_mm)))
        for t in np.arange(2.5, at_s[-1], 1.0 / RATE_HZ)
    ]
    for t, height in down + later:
        out += finder.feed(t, height)
    return out + finder.finish()


def test_half_way_up_is_a_third_of_the_depth_that_the_speed_told() -> None:
    """Lost at 180 mm with 600 mm/s: 360 mm deep at least (0.3 s to stop)."""
    again = ((4.5, -200.0), (5.5, -560.0), (6.5, 0.0), (9.0, 0.0))
    assert len(lost_then(200.0, *again)) == 2
    deep = ((4.5, -270.0), (5.5, -690.0), (6.5, 0.0), (9.0, 0.0))
    assert len(lost_then(270.0, *deep)) == 1


# --- turning points ---


def test_a_tremble_after_a_long_hold_counts_only_once_the_demand_has_shrunk() -> None:
    """Three usual turns without an extreme, and two more until the floor is reached.

    Turns of 40 degrees a second apart demand 16; 3.6 turns after the last extreme that was
    told it is 11.
    """

    def path(wobble_s: float) -> Callable[[float], float]:
        def yaw(t: float) -> float:
            if t < 8.0:
                return -20.0 * float(np.cos(np.pi * t))
            return -20.0 + 8.0 * float(np.exp(-(((t - 8.0 - wobble_s) / 0.12) ** 2)))

        return yaw

    early, late = (turns_of(path(s), 16.0) for s in (2.6, 3.9))
    assert len(late) > len(early)
    assert max(t.peak_s for t in early) <= 8.1


@pytest.mark.parametrize("shift_s", [0.0, 0.02, 0.04])
@pytest.mark.parametrize("rate_hz", [20.0, 25.0, 30.0])
def test_an_extreme_lies_between_the_pictures_where_it_was(shift_s: float, rate_hz: float) -> None:
    """A sine's extremes are known exactly."""
    found = turns_of(lambda t: 20.0 * float(np.sin(np.pi * (t - shift_s))), 12.0, rate_hz)[2:-1]
    truth = [shift_s + 0.5 + k for k in range(2, 2 + len(found))]
    assert [t.peak_s for t in found] == pytest.approx(truth, abs=0.006)
    assert [t.amplitude_deg for t in found] == pytest.approx([20.0] * len(found), rel=0.01)


@pytest.mark.parametrize("turns_a_minute", [120, 180, 240])
def test_quick_turns_are_read_as_far_as_they_went(turns_a_minute: int) -> None:
    """Down to a quarter of a second from side to side, within 3 %."""
    w = np.pi * turns_a_minute / 60.0
    found = turns_of(lambda t: 12.0 * float(np.sin(w * t)), 8.0, 60.0)[3:-1]
    assert len(found) > 8
    assert [t.amplitude_deg for t in found] == pytest.approx([12.0] * len(found), rel=0.03)


# --- the peak speed ---


@pytest.mark.parametrize("at", [0.2, 0.35, 0.5, 0.65, 0.8])
def test_the_speed_of_a_lopsided_turn_is_that_of_its_quickest_moment(at: float) -> None:
    """On a cubic the fit is exact, so the truth is its derivative where that is largest."""
    t = np.linspace(0.0, 1.0, 31)
    wide = max(at, 1.0 - at) * 1.05
    way = 30.0 * (t - ((t - at) ** 3 + at**3) / (3.0 * wide**2))
    assert peak_speed(t, way) == pytest.approx(30.0, rel=1e-6)
    assert peak_speed(t + 100.0, way) == pytest.approx(30.0, rel=1e-6)
    assert peak_speed(t, 7.0 - 2.0 * way) == pytest.approx(60.0, rel=1e-6)


def test_the_speed_is_read_within_the_turn_alone() -> None:
    """A turn that is quickest at one end is not read beyond it."""
    t = np.linspace(0.0, 1.0, 31)
    # Slows down all the way: the cubic's steepest place lies 0.6 s before the turn.
    way = 30.0 * (t - ((t + 0.6) ** 3 - 0.6**3) / (3.0 * 1.7**2))
    inside = [30.0 * (1.0 - ((s + 0.6) / 1.7) ** 2) for s in (0.0, 0.12)]
    assert inside[1] <= peak_speed(t, way) <= inside[0]


def test_a_pause_before_and_after_a_turn_changes_no_speed() -> None:
    t = np.linspace(0.0, 3.0, 91)
    way = 15.0 * (1.0 - np.cos(np.pi * np.clip(t - 1.0, 0.0, 1.0)))
    # Half a cosine over a second: 30 degrees with pi / 2 times its mean speed at most.
    assert peak_speed(t[:62], way[:62]) == pytest.approx(15.0 * np.pi, rel=0.02)


def test_too_little_and_a_hole_in_the_middle_tell_no_speed() -> None:
    t = np.linspace(0.0, 1.0, 31)
    way = 15.0 * (1.0 - np.cos(np.pi * t))
    assert isnan(peak_speed(t[:3], way[:3]))
    assert isnan(peak_speed(t, np.zeros_like(t)))
    hole = (t < 0.3) | (t > 0.65)
    assert isnan(peak_speed(t[hole], way[hole]))
    assert peak_speed(np.array([0.0, 0.1, 0.2, 0.3]), np.array([0.0, 3.0, 6.0, 9.0])) > 25.0


def test_no_turn_is_changed_once_it_was_told() -> None:
    turn = Turn(0, "right", 0.0, 1.0, 1.2, 10.0, 20.0, nan)
    with pytest.raises(AttributeError):
        turn.peak_s = 2.0  # type: ignore[misc]


def test_the_usual_time_of_a_turn_is_its_own_however_late_in_the_set() -> None:
    """Two turns late in a session, then a small one: after three usual turns it counts."""

    def yaw(t: float) -> float:
        if t < 102.0:
            return -20.0 * float(np.cos(np.pi * max(t - 100.0, 0.0)))
        return -20.0 + 8.0 * float(np.clip(t - 102.2, 0.0, 1.0) * (t < 107.5))

    finder, found = TurningFinder(("right", "left")), []
    for t in np.arange(99.0, 110.0, 1.0 / RATE_HZ):
        found += finder.feed(float(t), yaw(float(t)))
    found += finder.finish()
    assert [t.side for t in found] == ["right", "left", "right"]
    assert found[-1].amplitude_deg == pytest.approx(-12.0, abs=0.5)


def test_a_bend_below_the_picture_may_be_over_in_less_than_a_second() -> None:
    finder, found = AwayFinder(BENDING_DOWN), []
    rows = [(float(t), 0.0) for t in np.arange(0.0, 1.0, 1.0 / RATE_HZ)]
    rows += [(1.0 + float(s), -600.0 * float(s)) for s in np.arange(0.0, 0.3, 1.0 / RATE_HZ)]
    rows += [(float(t), 0.0) for t in np.arange(1.9, 4.0, 1.0 / RATE_HZ)]
    for t, height in rows:
        found += finder.feed(t, height)
    (bend,) = found + finder.finish()
    assert bend.side == "down" and isnan(bend.amplitude_mm)


def test_a_speed_that_came_with_a_sample_is_left_alone() -> None:
    estimator, out = SpeedEstimator(), []
    for k in range(30):
        known = {"head_pitch_speed_deg_s": 7.0} if k < 15 else {"head_yaw_speed_deg_s": 8.0}
        out += estimator.feed(
            Sample(k / 30, head_yaw_deg=float(k), head_pitch_deg=0.0, head_roll_deg=0.0, **known)
        )
    out += estimator.flush()
    assert [s.head_pitch_speed_deg_s for s in out[:15]] == [7.0] * 15
    assert all(isnan(s.head_yaw_speed_deg_s) for s in out[:15])
    assert [s.head_yaw_speed_deg_s for s in out[15:]] == [8.0] * 15


def test_no_rule_is_changed_for_all_who_share_it() -> None:
    with pytest.raises(AttributeError):
        TurningRule().floor = 1.0  # type: ignore[misc]
