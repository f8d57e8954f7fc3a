"""What the limits of the watchers and the hands mean, each by a movement close to it.

The limits are this project's own choice or common practice, as said where each is defined.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import isnan, nan

import numpy as np
import pytest

from tracker.exercises.hands import (
    GRAVITY_MM_S2,
    ArmsOfBends,
    a_hand_is_seen,
    arm_of_bend,
    is_throw,
    throw_height_mm,
)
from tracker.exercises.order import order_of
from tracker.exercises.watchers import (
    Change,
    ChinDown,
    EyesClosed,
    GazeOffTarget,
    HeadMoved,
    PossibleFall,
    Watcher,
    off_target_limit_deg,
)
from tracker.motion.turning import Turn
from tracker.sample import Sample


def changes(watcher: Watcher, samples: Iterable[Sample]) -> list[Change]:
    return [change for sample in samples for change in watcher.feed(sample)]


def gaze(points: list[tuple[float, float]], rate_hz: float = 50.0) -> list[Sample]:
    """A gaze that goes straight from point to point (s, deg off the target)."""
    at_s, at_deg = zip(*points, strict=True)
    return [
        Sample(
            float(t),
            gaze_yaw_deg=float(np.interp(t, at_s, at_deg)),
            gaze_pitch_deg=0.0,
            target_yaw_deg=0.0,
            target_pitch_deg=0.0,
            eye_open=0.9,
        )
        for t in np.arange(0.0, at_s[-1], 1.0 / rate_hz)
    ]


# --- the gaze ---


def test_looking_back_for_more_than_a_tenth_of_a_second_ends_a_glance() -> None:
    for back_s, glances in ((0.06, 1), (0.14, 2)):
        points = [(0, 0), (2, 0), (2.001, 9), (3, 9), (3.001, 0), (3 + back_s, 0)]
        points += [(3.001 + back_s, 9), (4, 9), (4.001, 0), (6, 0)]
        began = [c for c in changes(GazeOffTarget(), gaze(points)) if c.began]
        assert len(began) == glances


def test_a_slow_loss_is_dated_back_to_half_of_the_limit() -> None:
    points = [(0, 0), (4, 0), (4.8, 8), (6, 8)]
    (began,) = changes(GazeOffTarget(), gaze(points))
    # 10 degrees a second: 2.5 of them after a quarter of a second.
    assert began.began and began.time_s == pytest.approx(4.25, abs=0.03)


@pytest.mark.parametrize(("offset", "off", "found"), [(3.2, 7.5, True), (1.9, 6.6, False)])
def test_a_drift_of_two_degrees_is_learnt_and_no_more(
    offset: float, off: float, found: bool
) -> None:
    points = [(0, offset), (80, offset), (80.001, off), (82, off)]
    assert bool(changes(GazeOffTarget(), gaze(points, 25.0))) == found


def test_a_drift_is_learnt_within_some_ten_seconds() -> None:
    """After 12 of them 1 - exp(-1.2), that is 70 %, of 1.8 degrees."""
    points = [(0, 1.8), (12, 1.8), (12.001, 6.1), (14, 6.1)]
    assert changes(GazeOffTarget(), gaze(points, 25.0)) == []
    # After three seconds only a quarter.
    points = [(0, 1.8), (3, 1.8), (3.001, 6.1), (5, 6.1)]
    assert len(changes(GazeOffTarget(), gaze(points, 25.0))) == 1


# --- the head ---


def test_time_between_pictures_that_are_far_apart_is_not_all_seen() -> None:
    """At five pictures a second each step counts for 0.15 s, so five make the 0.7 s."""

    def down(count: int) -> list[Sample]:
        pitches = [0.0] * 10 + [-15.0] * count + [0.0] * 10
        return [Sample(0.2 * k, head_pitch_deg=p) for k, p in enumerate(pitches)]

    assert changes(ChinDown(), down(5)) == []
    assert [c.began for c in changes(ChinDown(), down(7))] == [True, False]


def test_nothing_ends_that_has_not_begun() -> None:
    """One picture beyond the limit, then a head that stays a little aside."""
    yaw = [0.0] * 30 + [2.2] * 5 + [2.85] + [2.2] * 150
    made = [
        Sample(k / 30, head_yaw_deg=y, head_pitch_deg=0.0, head_roll_deg=0.0)
        for k, y in enumerate(yaw)
    ]
    assert changes(HeadMoved(), made) == []


# --- falls ---


@pytest.mark.parametrize("between_mm", [-40.0, -460.0])
def test_a_fall_has_to_be_seen_on_its_way_but_one_place_is_enough(between_mm: float) -> None:
    """Two heights alone could be two faces; 40 mm from either is neither."""

    def fallen(way: list[float]) -> list[bool]:
        heights = [0.0] * 20 + way + [-500.0] * 20
        made = [Sample(0.1 * k, head_y_mm=h) for k, h in enumerate(heights)]
        return [c.began for c in changes(PossibleFall(), made)]

    assert fallen([between_mm]) == [True]
    assert fallen([-10.0]) == fallen([-490.0]) == []


# --- hands ---


def hands(times: Iterable[float], right: Iterable[float], left: float = -300.0) -> list[Sample]:
    return [
        Sample(
            float(t),
            wrist_right_x_mm=150.0,
            wrist_right_y_mm=float(h),
            wrist_left_x_mm=-150.0,
            wrist_left_y_mm=left,
        )
        for t, h in zip(times, right, strict=True)
    ]


def turn(start_s: float, peak_s: float, side: str = "right", lasts_on_s: float = 0.2) -> Turn:
    end_s = peak_s + lasts_on_s
    return Turn(0, side, start_s, peak_s, end_s, nan, 200.0, nan, swing_mm=200.0)


def test_a_throw_goes_as_high_as_its_quickest_moment_says() -> None:
    """Free flight: height plus the speed squared over twice the gravity (mechanics)."""
    made = hands([9.8, 9.9, 10.0], [-200.0, -100.0, -80.0])
    rises = (100.0 / 0.1) ** 2 / (2 * GRAVITY_MM_S2)
    assert throw_height_mm(made, turn(9.8, 10.0)) == pytest.approx(-100.0 + rises)


def test_places_far_apart_tell_no_speed_and_the_hands_own_top_is_left() -> None:
    made = hands([9.6, 9.8, 10.0], [-400.0, -200.0, -80.0])
    assert throw_height_mm(made, turn(9.6, 10.0)) == -80.0


def test_the_hand_is_looked_at_until_a_tenth_of_a_second_after_its_extreme_or_the_end() -> None:
    made = hands([9.0, 9.95, 10.08, 10.15, 10.25], [-90.0, -10.0, 5.0, 40.0, 90.0])
    for lasts_on_s, top, step in ((0.05, 5.0, (15.0, 0.13)), (0.2, 40.0, (35.0, 0.07))):
        rises = (step[0] / step[1]) ** 2 / (2 * GRAVITY_MM_S2)
        height_mm = throw_height_mm(made, turn(9.0, 10.0, lasts_on_s=lasts_on_s))
        assert height_mm == pytest.approx(top + rises)
    assert isnan(throw_height_mm(made, turn(20.0, 21.0)))


@pytest.mark.parametrize("seen", ["right", "left"])
def test_one_hand_is_enough_to_have_seen_hands(seen: str) -> None:
    heights = {"wrist_right_y_mm": -300.0, "wrist_left_y_mm": -300.0}
    assert a_hand_is_seen(Sample(0.0, **heights, **{f"wrist_{seen}_x_mm": 100.0}))
    assert not a_hand_is_seen(Sample(0.0, **heights))
    assert not a_hand_is_seen(Sample(0.0, wrist_right_x_mm=100.0, wrist_right_y_mm=0.0))


def test_the_arm_of_a_bend_late_in_a_long_set_is_told() -> None:
    arms = ArmsOfBends()
    for sample in hands(np.arange(90.0, 101.0, 0.2), [-500.0] * 55):
        arms.feed(sample)
    arms.take(turn(99.0, 101.0))
    # What was seen half a minute before says nothing of this one.
    arms.feed(Sample(140.0, wrist_right_y_mm=0.0, wrist_left_y_mm=0.0))
    arms.take(turn(98.0, 101.0))
    assert arms.arms == ["right", None]


def test_hands_that_are_level_tell_no_arm() -> None:
    level = hands([1.0, 1.2], [-300.0, -400.0])
    assert arm_of_bend(level, turn(1.0, 2.0)) is None
    apart = hands([1.0, 1.2], [-300.0, -430.0])
    assert arm_of_bend(apart, turn(1.0, 2.0)) == "right"


# --- eyes and head to a mark ---


@pytest.mark.parametrize(
    ("lead_s", "order"),
    [
        (0.13, "eyes_first"),
        (0.07, "together"),
        (-0.07, "together"),
        (-0.13, "head_first"),
        (nan, "not_told"),
    ],
)
def test_three_pictures_of_a_usual_camera_make_an_order(lead_s: float, order: str) -> None:
    assert order_of(lead_s) == order


@pytest.mark.parametrize("axis", ["yaw", "pitch"])
def test_a_drift_is_taken_off_in_its_own_direction(axis: str) -> None:
    """1.9 degrees to one side: 6.6 there are 4.7 away from it, and 4.6 on the other are 6.5."""
    for off, found in ((6.6, 0), (-4.6, 1)):
        made = [
            Sample(
                s.time_s,
                target_yaw_deg=0.0,
                target_pitch_deg=0.0,
                eye_open=0.9,
                **{"gaze_yaw_deg": 0.0, "gaze_pitch_deg": 0.0, f"gaze_{axis}_deg": s.gaze_yaw_deg},
            )
            for s in gaze([(0, 1.9), (80, 1.9), (80.001, off), (82, off)], 25.0)
        ]
        assert len(changes(GazeOffTarget(), made)) == found


def test_an_openness_that_is_missing_for_a_moment_ends_nothing() -> None:
    def lids(missing_s: float) -> list[bool]:
        made = [
            Sample(10.0 + k / 30, eye_open=nan if 2.0 <= k / 30 < 2.0 + missing_s else 0.05)
            for k in range(150)
        ]
        return [c.began for c in changes(EyesClosed(), made)]

    assert lids(0.3) == [True]
    assert lids(0.8) == [True, False, True]


@pytest.mark.parametrize("axis", ["yaw", "pitch"])
def test_a_drift_is_against_the_target_wherever_that_is(axis: str) -> None:
    def drifted(off: float) -> list[Change]:
        made = [
            Sample(
                s.time_s,
                eye_open=0.9,
                **{"gaze_yaw_deg": 0.0, "gaze_pitch_deg": 0.0, f"gaze_{axis}_deg": at},
                **{"target_yaw_deg": 0.0, "target_pitch_deg": 0.0, f"target_{axis}_deg": -10.0},
            )
            for s in gaze([(0, -8.1), (80, -8.1), (80.001, off - 10.0), (82, off - 10.0)], 25.0)
            for at in (s.gaze_yaw_deg,)
        ]
        return changes(GazeOffTarget(), made)

    assert drifted(6.6) == []
    assert len(drifted(-4.6)) == 1


def test_a_blink_while_the_gaze_is_off_ends_nothing() -> None:
    def glance(shut_s: float) -> list[bool]:
        made = [
            Sample(
                s.time_s,
                gaze_yaw_deg=nan if 4.0 <= s.time_s < 4.0 + shut_s else s.gaze_yaw_deg,
                gaze_pitch_deg=0.0,
                target_yaw_deg=0.0,
                target_pitch_deg=0.0,
            )
            for s in gaze([(0, 0), (3, 0), (3.001, 9), (6, 9), (6.001, 0), (8, 0)])
        ]
        return [c.began for c in changes(GazeOffTarget(), made)]

    assert glance(0.3) == [True, False]
    assert glance(0.8) == [True, False, True, False]


@pytest.mark.parametrize(("own_mm", "thrown"), [(70.0, False), (90.0, True)])
def test_a_hand_throws_that_rises_by_two_fifths_of_the_way_itself(
    own_mm: float, thrown: bool
) -> None:
    made = hands([9.0, 9.5, 10.0], [-300.0, -300.0, -300.0 + own_mm])
    assert is_throw(made, turn(9.0, 10.0)) is thrown
    assert not is_throw(made, turn(20.0, 21.0))


@pytest.mark.parametrize(
    ("error_deg", "limit_deg"), [(nan, 5.0), (0.7, 5.0), (1.25, 5.0), (1.7, 6.8), (2.1, None)]
)
def test_a_gaze_that_is_read_worse_gets_four_times_its_error(
    error_deg: float, limit_deg: float | None
) -> None:
    assert off_target_limit_deg(error_deg) == pytest.approx(limit_deg)


def test_a_head_that_moved_and_is_not_still_again_has_not_stopped() -> None:
    def yaw(t: float) -> float:
        return 5.0 + 1.5 * float(np.sin(2 * np.pi * t)) if 3.0 <= t < 9.0 else 0.0

    made = [
        Sample(k / 30, head_yaw_deg=yaw(k / 30), head_pitch_deg=0.0, head_roll_deg=0.0)
        for k in range(360)
    ]
    began, ended = changes(HeadMoved(), made)
    assert began.began and began.time_s == pytest.approx(3.0, abs=0.1)
    assert not ended.began and ended.time_s == pytest.approx(9.0, abs=0.1)
