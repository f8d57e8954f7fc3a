"""Stands, bends and sways: exact counts over hundreds of made-up sets, and their figures."""

from __future__ import annotations

from math import isnan, nan

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from scipy.signal import find_peaks

from tests.motion.stands import Path, bends, sitting, standing_still, stands, sways
from tracker.exercises.counters import CHANNELS, Counter
from tracker.motion.turning import Turn
from tracker.sample import Sample

#: Other numbers than those that the thresholds were chosen on (0 to 399).
NUMBERS = st.integers(10_000, 10_000_000)
COLUMN = {
    "head_rise": "head_y_mm",
    "head_reach": "head_y_mm",
    "neck_fore_aft": "neck_z_mm",
    "neck_sideways": "neck_x_mm",
}


def count(channel: str, times: np.ndarray, values: np.ndarray) -> list[Turn]:
    counter = Counter(CHANNELS[channel])
    for t, v in zip(times, values, strict=True):
        counter.feed(Sample(float(t), **{COLUMN[channel]: float(v)}))
    counter.finish()
    assert counter.repetitions == len(counter.turns) // 2
    return counter.turns


@settings(max_examples=200, deadline=None)
@given(NUMBERS, st.booleans())
def test_stands_are_counted_exactly(number: int, hesitate: bool) -> None:
    times, heights, there = stands(np.random.default_rng(number), hesitate)
    turns = count("head_rise", times, heights)
    assert len(turns) == 2 * there
    assert [t.side for t in turns] == ["up", "down"] * there


@settings(max_examples=100, deadline=None)
@given(NUMBERS, st.sampled_from(["head_rise", "head_reach"]))
def test_sitting_about_is_neither_a_stand_nor_a_bend(number: int, channel: str) -> None:
    assert count(channel, *sitting(np.random.default_rng(number))) == []


@settings(max_examples=200, deadline=None)
@given(NUMBERS)
def test_bends_are_counted_in_and_out_of_the_picture(number: int) -> None:
    times, heights, there = bends(np.random.default_rng(number))
    turns = count("head_reach", times, heights)
    assert len(turns) == there
    assert {t.side for t in turns} <= {"down"}


@settings(max_examples=200, deadline=None)
@given(NUMBERS, st.sampled_from(["neck_fore_aft", "neck_sideways"]))
def test_sways_are_counted_exactly(number: int, channel: str) -> None:
    floor = CHANNELS[channel].rule.floor  # type: ignore[union-attr]
    times, places, there = sways(np.random.default_rng(number), floor)
    assert len(count(channel, times, places)) // 2 == there // 2


@settings(max_examples=150, deadline=None)
@given(NUMBERS, st.sampled_from([("neck_fore_aft", 6.1), ("neck_sideways", 11.0)]))
@example(9_289_931, ("neck_fore_aft", 6.1))  # a slow drift of 36 mm there and back
@example(9_289_931, ("neck_sideways", 11.0))
def test_ordinary_sway_is_not_counted(number: int, case: tuple[str, float]) -> None:
    """RMS of young adults, estimated from open data: fore-aft on the floor, sideways on foam."""
    channel, rms = case
    assert count(channel, *standing_still(np.random.default_rng(number), rms)) == []


@pytest.mark.parametrize("rate_hz", [15, 30, 60])
@pytest.mark.parametrize("channel", ["head_rise", "neck_fore_aft", "neck_sideways"])
def test_clean_sets_agree_with_find_peaks(channel: str, rate_hz: int) -> None:
    path, rise = Path().wait(1.0), channel == "head_rise"
    for _ in range(8):
        path.go(380 if rise else 60, 1.2).wait(0.6).go(0 if rise else -60, 1.2).wait(0.6)
    times, values = path.wait(1.0).sampled(rate_hz)
    peaks, _ = find_peaks(values, prominence=50)
    turns = count(channel, times, values)
    highs = [t for t in turns if t.side in ("up", "forward", "right")]
    assert len(highs) == len(peaks) == 8
    # find_peaks names the middle of a plateau; ours is reached at its start.
    assert np.abs(times[peaks] - [t.peak_s for t in highs]).max() < 0.6


def test_figures_of_a_stand() -> None:
    path = Path().wait(1.0).go(400, 1.5).wait(1.0).go(0, 2.0).wait(1.5)
    up, down = count("head_rise", *path.sampled(30))
    assert (up.side, down.side) == ("up", "down")
    assert up.swing_mm == pytest.approx(400, abs=2)
    assert up.short_mm == 0 and down.short_mm == pytest.approx(0, abs=15)
    # From 5 to 95 % of the way a minimum-jerk rise takes 0.62 of its time.
    assert up.peak_s - up.start_s == pytest.approx(0.62 * 1.5, abs=0.08)
    assert down.peak_s - down.start_s == pytest.approx(0.62 * 2.0, abs=0.1)
    assert up.start_s == pytest.approx(1.0 + 0.19 * 1.5, abs=0.08)
    assert up.peak_speed_mm_s == pytest.approx(1.875 * 400 / 1.5, rel=0.06)
    assert isnan(up.amplitude_deg) and isnan(up.peak_speed_deg_s)


def test_a_stand_counts_once_seated_again_and_waits_for_nothing() -> None:
    path = Path().wait(1.0).go(400, 1.2).wait(0.5).go(0, 1.2).wait(3.0)
    counter = Counter(CHANNELS["head_rise"])
    done_s = nan
    for t, y in zip(*path.sampled(30), strict=True):
        counter.feed(Sample(float(t), head_y_mm=float(y)))
        if counter.repetitions and isnan(done_s):
            done_s = float(t)
    assert 3.5 < done_s < 4.4  # seated at 3.9 s, nearly so at 3.7


@pytest.mark.parametrize(("share", "there"), [(0.85, 1), (0.4, 4)])
def test_who_never_sits_fully_is_counted_and_told_apart(share: float, there: int) -> None:
    """Down to a level above the seat: a small dip is no end of a stand, half the way is."""
    path = Path().wait(1.0).go(400, 1.2).wait(0.5)
    for _ in range(3):
        path.go(share * 400, 1.0).wait(0.3).go(400, 1.0).wait(0.3)
    turns = count("head_rise", *path.go(0, 1.2).wait(1.0).sampled(30))
    assert len(turns) == 2 * there
    short = [t.short_mm for t in turns if t.side == "down"]
    assert short[:-1] == pytest.approx([160] * (there - 1), abs=5)
    assert short[-1] < 15


def test_half_the_height_is_a_stand_that_falls_short() -> None:
    path = Path().wait(1.0)
    for height in (400, 400, 200, 400):
        path.go(height, 1.2).wait(0.4).go(0, 1.2).wait(0.8)
    ups = [t for t in count("head_rise", *path.sampled(30)) if t.side == "up"]
    assert [t.short_mm for t in ups] == pytest.approx([0, 0, 200, 0], abs=5)


def test_who_begins_standing_has_not_stood_up_by_sitting_down() -> None:
    path = Path().wait(1.0).go(-400, 1.5).wait(2.0)
    for _ in range(2):
        path.go(0, 1.5).wait(0.5).go(-400, 1.5).wait(1.0)
    assert len(count("head_rise", *path.sampled(30))) == 4


def test_a_face_that_is_lost_without_going_down_is_no_bend() -> None:
    times, heights = Path().wait(12.0).sampled(30)
    for level in (0.0, -60.0, -150.0):
        lost = np.where((times > 3) & (times < 6), np.nan, level * np.clip(times - 1, 0, 1))
        assert count("head_reach", times, lost) == []
    assert len(heights) == len(times)


def test_not_fully_up_between_two_bends() -> None:
    path = Path().wait(1.0)
    for up in (0.0, -150.0, 0.0):
        path.go(-500, 1.5).wait(1.0).go(up, 1.5).wait(0.6)
    turns = count("head_reach", *path.wait(1.0).sampled(30))
    assert [t.short_mm for t in turns] == pytest.approx([0, 150, 0], abs=15)
    assert turns[0].swing_mm == pytest.approx(500, abs=5)


@pytest.mark.parametrize(("up", "stays_s", "short"), [(-250, 1.9, 250), (-250, 0.8, None)])
def test_half_up_between_two_bends_out_of_the_picture(
    up: float, stays_s: float, short: float | None
) -> None:
    """How deep the bends were isn't known: only who stays there is up as far as they go."""
    path = Path().wait(1.0).go(-500, 1.5).wait(1.0).go(up, 1.5).wait(stays_s)
    path.go(-500, 1.5).wait(1.0).go(0, 1.5).wait(1.0)
    times, heights = path.sampled(20)
    turns = count("head_reach", times, np.where(heights < -290, nan, heights))
    found = [t.short_mm for t in turns]
    assert found == pytest.approx([0.0] if short is None else [short, 0.0], abs=15)


def test_a_bend_is_as_deep_as_it_was_seen_though_it_rested_when_it_was_lost_again() -> None:
    """Lost on the way down, seen at the bottom, lost there: the rest at 170 mm is half-way up."""
    path = Path().wait(1.0).go(-260, 1.2).wait(2.5).go(-170, 0.8).wait(2.5).go(-260, 0.8).wait(1.0)
    times, heights = path.go(0, 1.2).wait(1.5).sampled(20)
    down = (heights < -100) & (times < 2.8)
    at_the_bottom = (times > 3.8) & (times < 5.6)
    turns = count("head_reach", times, np.where(down | at_the_bottom, nan, heights))
    assert [t.short_mm for t in turns] == pytest.approx([170, 0], abs=15)


def test_who_pauses_half_way_up_out_of_a_bend_has_bent_once() -> None:
    path = Path().wait(1.0).go(-500, 1.5).wait(1.0).go(-250, 1.5).wait(2.5).go(0, 1.0).wait(2.0)
    (turn,) = out_of_the_picture(path, -290)
    assert turn.short_mm == pytest.approx(0, abs=15)


def out_of_the_picture(path: Path, lost_mm: float) -> list[Turn]:
    times, heights = path.sampled(20)
    return count("head_reach", times, np.where(heights < lost_mm, nan, heights))


@pytest.mark.parametrize("deep_s", [0.8, 1.5, 2.5])
@pytest.mark.parametrize(
    ("lost_mm", "lift_mm", "stays_s", "again"),
    [
        # Five sixths of the bend are left: that is no half-way up, whatever comes next.
        (-450, -415, 1.8, True),
        (-450, -415, 1.8, False),
        # Half-way up, and then all the way.
        (-290, -250, 2.0, False),
        (-290, -250, 6.0, False),
    ],
)
def test_who_is_fully_up_in_the_end_has_bent_once_and_fully(
    lost_mm: float, lift_mm: float, stays_s: float, again: bool, deep_s: float
) -> None:
    path = Path().wait(1.0).go(-500, deep_s).wait(1.0).go(lift_mm, 1.5).wait(stays_s)
    if again:
        path.go(-500, 0.8).wait(1.0)
    (turn,) = out_of_the_picture(path.go(0, 1.5).wait(2.0), lost_mm)
    assert turn.short_mm == pytest.approx(0, abs=15)


def test_a_shallow_bend_that_ends_below_the_picture_has_no_half_way_up() -> None:
    path = Path().wait(1.0).go(-330, 1.2).wait(1.0).go(-275, 0.6).wait(2.0).go(-330, 0.6).wait(1.0)
    assert len(out_of_the_picture(path.go(0, 1.2).wait(2.0), -290)) == 1


def half_way(rng: np.random.Generator, share: tuple[float, float], down_again: bool) -> list[Turn]:
    """A bend out of the picture, up by a share of it, a stay there, down again or not, and up."""

    def lasts_s() -> float:
        return float(rng.uniform(0.8, 2.2))

    deep_mm = rng.uniform(420, 600)
    lift_mm = -deep_mm * (1.0 - rng.uniform(*share))
    lost_mm = rng.uniform(lift_mm - 80, lift_mm - 15)
    path = Path().wait(1.0).go(-deep_mm, lasts_s()).wait(rng.uniform(0.3, 2))
    path.go(lift_mm, lasts_s()).wait(rng.uniform(1.8, 3))
    if down_again:
        path.go(-deep_mm, lasts_s()).wait(1.0)
    times, heights = path.go(0, lasts_s()).wait(1.5).sampled(20)
    noisy = heights + rng.normal(0, 2, len(times))
    return count("head_reach", times, np.where(heights < lost_mm, nan, noisy))


def test_half_way_up_is_told_from_pauses_and_slight_lifts() -> None:
    """Made-up ones of many sizes, as long as the face is lost just below where one stays."""
    rng = np.random.default_rng(20_000)
    halves = [[t.short_mm > 80 for t in half_way(rng, (0.45, 0.6), True)] for _ in range(60)]
    pauses = [[t.short_mm > 80 for t in half_way(rng, (0.45, 0.6), False)] for _ in range(60)]
    lifts = [[t.short_mm > 80 for t in half_way(rng, (0.05, 0.25), True)] for _ in range(60)]
    assert pauses == [[False]] * 60
    assert lifts.count([False]) >= 57
    assert halves.count([True, False]) >= 54


def test_out_of_the_picture_no_depth_is_made_up() -> None:
    times, heights = Path().wait(1.0).go(-500, 1.5).wait(1).go(0, 1.5).wait(1).sampled(30)
    (turn,) = count("head_reach", times, np.where(heights < -150, nan, heights))
    assert isnan(turn.swing_mm) and isnan(turn.peak_speed_mm_s)
    assert turn.short_mm < 20
