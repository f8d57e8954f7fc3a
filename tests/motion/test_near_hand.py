"""A hand that comes near and goes out again: made-up keypoints (logic only)."""

from __future__ import annotations

from math import cos, isfinite, pi

import numpy as np
import pytest

from tests.body.test_raised import HANGING, sample_of
from tests.session.test_engine import near_far_session
from tracker.exercises.near_hand import NOT_LOOKED_FOR, NOT_SEEN, near_hand
from tracker.records.figure import shown_with_unit
from tracker.records.of_body import hand_figures
from tracker.records.places import Place
from tracker.sample import Sample

#: As a rendered arm was read: near the face, and held out.
NEAR = (20.0, -210.0, -115.0, -462.0)
OUT = (25.0, -335.0, -160.0, -320.0)


def moved(share: float) -> tuple[float, float, float, float]:
    """The arm that carries the fingertip: 0 held out, 1 near."""
    return tuple(o + share * (n - o) for n, o in zip(NEAR, OUT, strict=True))  # type: ignore[return-value]


def cycles_of(
    rng: np.random.Generator, count: int, every_s: float, *, seen: float = 1.0
) -> list[Sample]:
    """So many cycles, slow or quick, uneven, with pauses at the ends."""
    spans, now = [], 1.0
    for _ in range(count):
        takes = float(rng.uniform(2.5, 7.0))
        spans.append((now, takes))
        now += takes + float(rng.uniform(0, 1.5))
    samples = []
    for t in np.arange(0.0, now + 1.0, every_s):
        share = sum(0.5 - 0.5 * cos(2 * pi * (t - a) / b) for a, b in spans if a <= t < a + b)
        arm = tuple(v + rng.normal(0, 8.0) for v in moved(float(share)))
        right = arm if rng.random() < seen else None
        samples.append(sample_of(float(t), right, HANGING))  # type: ignore[arg-type]
    return samples


@pytest.mark.parametrize("every_s", [1 / 15, 0.12, 0.2])
def test_a_hundred_sets_are_counted(every_s: float) -> None:
    """Exactly where the arm is looked at as usual, within one where seldom."""
    rng = np.random.default_rng(7)
    for _ in range(100):
        count = int(rng.integers(3, 12))
        found = near_hand(cycles_of(rng, count, every_s, seen=0.85))
        assert found.cycles is not None and found.side == "right"
        assert abs(found.cycles - count) <= (every_s > 0.15)


def test_a_hand_that_is_held_or_trembles_does_nothing() -> None:
    rng = np.random.default_rng(2)
    for share in (0.0, 0.5, 1.0):
        samples = [
            sample_of(t, tuple(v + rng.normal(0, 12.0) for v in moved(share)), HANGING)  # type: ignore[arg-type]
            for t in np.arange(0.0, 30.0, 1 / 15)
        ]
        assert near_hand(samples).cycles == 0


def test_small_ways_are_no_cycles() -> None:
    """The finger goes a third of its way to and fro."""
    samples = [
        sample_of(t, moved(0.5 + 0.16 * cos(2 * pi * t / 4)), HANGING)
        for t in np.arange(0.0, 30.0, 1 / 15)
    ]
    assert near_hand(samples).cycles == 0


def test_an_arm_that_is_seldom_seen_tells_nothing() -> None:
    found = near_hand(cycles_of(np.random.default_rng(3), 5, 1 / 15, seen=0.4))
    assert found.cycles is None and found.reason == NOT_SEEN
    blind = near_hand([Sample(k / 30, head_yaw_deg=0.0) for k in range(300)])
    assert blind.cycles is None and blind.reason == NOT_LOOKED_FOR


def told(summary: object) -> dict[str, str]:
    place = Place({"hand": summary})
    return {f.label: shown_with_unit(f) for f in hand_figures(place)}


def test_the_summary_says_what_it_was_counted_from() -> None:
    def vergence(t: float) -> float:
        return 9.0 - 3.0 * cos(2 * pi * (t - 2.0) / 6.0)

    (alone,) = near_far_session(vergence).exercises
    assert alone.hand is not None and alone.hand["cycles"] is None
    assert told(alone.hand) == {
        "Near and far by the hand": f"not measured ({NOT_LOOKED_FOR})",
        "Counted from": "how far the eyes turn in",
    }
    assert isfinite(alone.done.repetitions or 0) and alone.done.repetitions
    assert told(
        alone.hand | {"cycles": 9, "counted_from": ["vergence", "hand"], "reason": None}
    ) == {
        "Near and far by the hand": "9",
        "Counted from": "how far the eyes turn in and the arm that carries the fingertip",
    }
    assert told(None) == {}
