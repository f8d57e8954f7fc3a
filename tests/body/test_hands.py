"""Throws from hand to hand and the arm of a bend, from made-up wrists (logic only)."""

from __future__ import annotations

from dataclasses import replace
from math import nan

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.body.made_up import RATE_HZ, tosses
from tests.body.test_shoulders import judged
from tracker.exercises.counters import CHANNELS, Counter
from tracker.exercises.hands import throw_height_mm
from tracker.motion.turning import Turn
from tracker.sample import Sample

NUMBERS = st.integers(0, 10_000_000)
TIMES = np.arange(0.0, 20.0, 1.0 / RATE_HZ)


def wrists(right: np.ndarray, left: np.ndarray, **more: float) -> list[Sample]:
    """Both wrists seen, heights in mm above the eyes."""
    return [
        Sample(
            float(t),
            body_seen=1.0,
            wrist_right_x_mm=200.0,
            wrist_right_y_mm=float(r),
            wrist_left_x_mm=-200.0,
            wrist_left_y_mm=float(w),
            **more,
        )
        for t, r, w in zip(TIMES, right, left, strict=False)
    ]


def counted(samples: list[Sample]) -> list[Turn]:
    counter = Counter(CHANNELS["hand_throw"])
    for sample in samples:
        counter.feed(sample)
    counter.finish()
    assert counter.repetitions == len(counter.turns)
    return counter.turns


@settings(max_examples=200, deadline=None)
@given(NUMBERS, st.sampled_from([-450.0, -400.0, -600.0]))
def test_throws_are_counted_each(number: int, floor_mm: float) -> None:
    samples, there = tosses(np.random.default_rng(number), floor_mm=floor_mm)
    turns = counted(samples)
    assert len(turns) == there
    sides = [t.side for t in turns]
    assert sides == [("right", "left")[(k + (sides[0] == "left")) % 2] for k in range(there)]


@pytest.mark.parametrize("every", [3, 4])
@pytest.mark.parametrize("number", [1, 2, 3])
def test_throws_are_counted_where_the_hands_are_seldom_looked_at(number: int, every: int) -> None:
    # Every 200 or 270 ms: a slow machine, and that must not read as "nothing done".
    samples, there = tosses(np.random.default_rng(number))
    assert len(counted(samples[::every])) == there


@settings(max_examples=60, deadline=None)
@given(NUMBERS, st.booleans())
def test_low_throws_are_told_from_high_ones(number: int, high: bool) -> None:
    samples, there = tosses(np.random.default_rng(number), high=high)
    found = judged(samples, "hand-toss")
    assert found.done.repetitions == there
    assert ("throw_low" in {e.code for e in found.events}) == (not high)


def with_head(
    samples: list[Sample], turns: list[Turn], nod_deg: float, turn_deg: float, late_s: float = 0.0
) -> list[Sample]:
    """A head that nods with each throw, or turns towards the hand that catches, a little late."""
    rng = np.random.default_rng(5)
    made = []
    for s in samples:
        pitch = yaw = 0.0
        for t in turns:
            u = (s.time_s - late_s - t.start_s) / (t.peak_s + 0.5 - t.start_s)
            pitch += nod_deg * float(np.sin(np.pi * np.clip(u, 0, 1)) ** 2)
            side = 1.0 if t.side == "right" else -1.0
            # From the hand that throws to the one that catches, and so back with the next.
            if u >= 0:
                yaw = turn_deg * side * (1.0 - 2.0 * min(u, 1.0))
        e = rng.normal(0, 0.4, 2)
        made.append(
            replace(s, head_yaw_deg=yaw + float(e[0]), head_pitch_deg=pitch - 8.0 + float(e[1]))
        )
    return made


@pytest.mark.parametrize("number", range(3))
@pytest.mark.parametrize(
    ("nod_deg", "turn_deg", "told"),
    [(12.0, 0.0, "followed"), (0.0, 8.0, "followed"), (0.0, 0.0, "stayed"), (1.0, 0.5, "stayed")],
)
def test_whether_the_head_goes_along_with_the_throws(
    number: int, nod_deg: float, turn_deg: float, told: str
) -> None:
    samples, there = tosses(np.random.default_rng(number))
    found = judged(with_head(samples, counted(samples), nod_deg, turn_deg, 0.1), "hand-toss")
    assert found.body is not None
    # In quick throws a nod of 1.1 s runs into the next; the last throw flies on beyond the end.
    assert found.body["head_follows"][told] >= 0.8 * there
    assert found.body["eyes_follow"]["value"] is None and found.body["eyes_follow"]["reason"]


def test_a_head_that_turns_the_other_way_does_not_go_along() -> None:
    samples, _ = tosses(np.random.default_rng(3))
    found = judged(with_head(samples, counted(samples), 0.0, -8.0), "hand-toss")
    assert found.body is not None and found.body["head_follows"]["followed"] == 0


def test_a_head_that_is_not_measured_is_neither() -> None:
    samples, there = tosses(np.random.default_rng(4))
    unseen = [replace(s, head_pitch_deg=nan) for s in samples]
    found = judged(unseen, "hand-toss")
    assert found.body is not None and found.done.repetitions == there
    follows = found.body["head_follows"]
    assert (follows["followed"], follows["stayed"], follows["not_told"]) == (0, 0, there)
    seldom = [s if k % 8 == 0 else replace(s, head_pitch_deg=nan) for k, s in enumerate(samples)]
    again = judged(seldom, "hand-toss").body
    assert again is not None and again["head_follows"]["stayed"] == 0


def test_a_throw_that_is_handed_back_low_counts_once() -> None:
    """Always the right hand throws; the left one gives it back without rising."""
    wave = np.sin(np.pi * np.clip((TIMES % 2.0) / 1.0, 0, 1)) ** 2
    turns = counted(wrists(-400 + 450 * wave, np.full(len(TIMES), -400.0)))
    assert [t.side for t in turns] == ["right"] * 10


@pytest.mark.parametrize("size", [0.0, 30.0])
def test_hands_that_rest_or_talk_throw_nothing(size: float) -> None:
    rng = np.random.default_rng(3)
    noise = rng.normal(0, 2, (2, len(TIMES)))
    right = -400 + size * np.sin(3.1 * TIMES) + noise[0]
    left = -400 + size * np.sin(2.3 * TIMES) + noise[1]
    assert counted(wrists(right, left)) == []


def test_both_hands_raised_together_are_no_throw() -> None:
    wave = 450 * np.sin(np.pi * np.clip((TIMES % 2.0) / 1.0, 0, 1)) ** 2
    assert counted(wrists(-400 + wave, -400 + wave)) == []


def test_hands_below_the_picture_are_not_measured_and_it_is_said() -> None:
    hidden = [
        Sample(
            float(t),
            head_yaw_deg=0.0,
            eye_open=1.0,
            body_seen=1.0,
            wrist_right_y_mm=-450.0,
            wrist_left_y_mm=-450.0,
        )
        for t in TIMES
    ]
    found = judged(hidden, "hand-toss")
    assert found.done.repetitions is None and found.done.measured_fraction == 0.0
    assert [(e.code, e.reason) for e in found.events] == [("not_measured", "no_body")]


def flight(speed_mm_s: float, release_mm: float) -> list[Sample]:
    """A hand that rises evenly and stops at once; seen often."""
    times = np.arange(0.0, 1.0, 1 / 15)
    heights = np.minimum(release_mm, release_mm + speed_mm_s * (times - 0.5))
    return [
        Sample(float(t), wrist_right_y_mm=float(h)) for t, h in zip(times, heights, strict=True)
    ]


def test_the_height_of_a_throw_is_that_of_a_free_flight() -> None:
    turn = Turn(0, "right", 0.0, 0.5, 0.6, nan, nan, nan)
    # Let go at -200 mm with 2 m/s it rises by 2000^2 / (2 * 9810) = 204 mm.
    found = throw_height_mm(flight(2000.0, -200.0), turn)
    # Between two places it goes on by 133 mm.
    assert 3.9 - 133.4 <= found <= 3.9 + 1e-6
    assert throw_height_mm(flight(500.0, -200.0), turn) < -150.0
    assert np.isnan(throw_height_mm([], turn))


@pytest.mark.parametrize(
    ("right", "left", "arm"),
    [(-400.0, -150.0, "right"), (-150.0, -400.0, "left"), (-300.0, -310.0, "not_seen")],
)
def test_the_arm_of_a_bend_is_the_lower_wrist(right: float, left: float, arm: str) -> None:
    bend = np.clip((TIMES - 3.0) / 1.5, 0, 1) - np.clip((TIMES - 6.0) / 1.5, 0, 1)
    samples = [
        Sample(
            float(t),
            head_y_mm=float(-500 * b),
            head_yaw_deg=0.0,
            eye_open=1.0,
            body_seen=1.0,
            wrist_right_x_mm=200.0,
            wrist_right_y_mm=right,
            wrist_left_x_mm=-200.0,
            wrist_left_y_mm=left,
        )
        for t, b in zip(TIMES, bend, strict=True)
    ]
    found = judged(samples, "floor-reach")
    assert found.body is not None
    assert {k: v for k, v in found.body["arm"].items() if k != "note" and v} == {arm: 1}
