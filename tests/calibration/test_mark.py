"""The check by a mark on the wall, on heads that turn about a known point."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import atan, atan2, cos, degrees, radians, sin

import numpy as np
import pytest

from calibration.mark import MarkCheck, expected_yaw_deg
from tracker.errors import InputError
from tracker.sample import Sample

NECK_MM = 95.0


def at(time_s: float, yaw_deg: float, read_deg: float | None = None, away: float = 0.0) -> Sample:
    """A head turned about a point behind the eyes, read as ``read_deg``."""
    yaw = radians(yaw_deg)
    x, z = NECK_MM * sin(yaw), NECK_MM * (cos(yaw) - 1.0) + away
    return Sample(
        time_s,
        head_yaw_deg=yaw_deg if read_deg is None else read_deg,
        head_x_mm=x,
        head_y_mm=0.0,
        head_z_mm=z,
    )


def go(
    check: MarkCheck, turn_deg: float, read: Callable[[float], float], ahead_deg: float = 0.0
) -> None:
    """Hold ahead, turn, hold, turn back, hold; 30 samples a second with a little tremor."""
    rng = np.random.default_rng(1)
    way = [(0.0, 2.0), (turn_deg, 2.5), (0.0, 2.5)]
    time_s, yaw = 0.0, 0.0
    for goal, seconds in way:
        for _ in range(round(seconds * 30)):
            yaw += (goal - yaw) * 0.12
            time_s += 1 / 30
            trembling = yaw + ahead_deg + float(rng.normal(0, 0.1))
            check.take(at(time_s, trembling, read(trembling)))


@pytest.mark.parametrize("offset_mm", [400.0, -500.0, 900.0])
def test_a_true_reading_has_no_error(offset_mm: float) -> None:
    check = MarkCheck(1500.0, offset_mm)
    # The nose's line goes through the point that the head turns about.
    turn = degrees(atan(offset_mm / (1500.0 + NECK_MM)))
    go(check, turn, lambda yaw: yaw)
    found = check.found()
    assert found.expected_deg == pytest.approx(turn, abs=0.1)
    assert found.error_deg == pytest.approx(0.0, abs=0.15)
    assert 0.5 < found.expected_error_deg < 1.0


def test_a_reading_that_is_five_percent_too_large_shows() -> None:
    check = MarkCheck(1500.0, 700.0)
    turn = degrees(atan(700.0 / (1500.0 + NECK_MM)))
    go(check, turn, lambda yaw: 1.05 * yaw)
    assert check.found().error_deg == pytest.approx(0.05 * turn, abs=0.2)


def test_where_straight_ahead_lies_in_the_rest_frame_does_not_matter() -> None:
    check = MarkCheck(1500.0, 700.0)
    turn = degrees(atan(700.0 / (1500.0 + NECK_MM)))
    go(check, turn, lambda yaw: yaw, ahead_deg=6.0)
    assert check.found().error_deg == pytest.approx(0.0, abs=0.25)


def test_the_two_ways_to_the_expected_turn_agree() -> None:
    for yaw in np.linspace(-40, 40, 17):
        moved = at(0.0, float(yaw))
        offset = (1200.0 + NECK_MM) * np.tan(radians(yaw))
        by_eyes = expected_yaw_deg(1200.0, offset, moved.head_x_mm, moved.head_z_mm)
        assert by_eyes == pytest.approx(degrees(atan2(offset, 1200.0 + NECK_MM)), abs=1e-9)
        assert by_eyes == pytest.approx(yaw, abs=1e-9)


def test_each_part_waits_for_its_hold() -> None:
    check = MarkCheck(1500.0, 600.0)
    for k in range(60):
        # A head that never rests.
        check.take(at(k / 30, 8.0 * sin(k / 4)))
    assert check.stage == "ahead"
    for k in range(60, 100):
        check.take(at(k / 30, 0.0))
    assert check.stage == "mark"
    for k in range(100, 160):
        # The wrong side, held.
        check.take(at(k / 30, -20.0))
    assert check.stage == "mark"
    for k in range(160, 200):
        check.take(at(k / 30, 19.0))
    assert check.stage == "back"
    with pytest.raises(RuntimeError):
        check.found()


def test_what_is_not_measured_says_why_and_counts_for_nothing() -> None:
    check = MarkCheck(1500.0, 600.0)
    for k in range(60):
        sample = at(k / 30, 0.0)
        if k % 15 == 14:
            sample = replace(sample, head_yaw_deg=float("nan"), reason="no_face")
        check.take(sample)
        assert (check.reason == "no_face") == (k % 15 == 14)
    assert check.stage == "ahead"


def test_it_gives_up_after_a_minute() -> None:
    check = MarkCheck(1500.0, 600.0)
    for k in range(70):
        check.take(at(float(k), 0.0))
    assert check.stage == "gave_up" and check.over


@pytest.mark.parametrize(("offset_mm", "word"), [(50.0, "out"), (3000.0, "in"), (0.0, "out")])
def test_a_mark_in_a_bad_place_is_refused(offset_mm: float, word: str) -> None:
    with pytest.raises(InputError, match=f"farther {word}"):
        MarkCheck(1500.0, offset_mm)
