"""A hand that is held up stops, and hands at work don't: made-up keypoints (logic only)."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from math import nan

import numpy as np
import pytest

from tracker.body.raised import HELD_AT_WORK_S, HELD_S, RaisedHand, raised_side
from tracker.sample import Sample

#: Wrist and elbow of one arm, right and up from the eyes, in mm; x is outwards.
Arm = tuple[float, float, float, float]
Path = Callable[[float], Arm]
Every = tuple[float, float]
#: Height of a shoulder.
SHOULDER_MM = -220.0

HANGING: Arm = (240.0, -600.0, 220.0, -420.0)
#: As rendered bodies were read that hold a hand up (tests/vision/test_body.py draws them).
UP: Arm = (400.0, -80.0, 375.0, -310.0)
LOW_UP: Arm = (340.0, -176.0, 320.0, -395.0)
#: And as those that do something else.
SCRATCH: Arm = (158.0, 60.0, 355.0, -90.0)
GLASSES: Arm = (150.0, -160.0, 310.0, -370.0)
CHEEK: Arm = (140.0, -170.0, 215.0, -410.0)
THUMB_AHEAD: Arm = (96.0, -366.0, 129.0, -373.0)
THUMB_ASIDE: Arm = (500.0, -250.0, 320.0, -240.0)
ARM_ASIDE: Arm = (660.0, -180.0, 410.0, -200.0)
THROW: Arm = (285.0, 100.0, 320.0, -165.0)

#: A look every so often while the hands are down, and while one is up.
EVERY_S = {"in a body set": (1 / 15, 1 / 15), "seldom": (0.4, 0.12)}
RATES = pytest.mark.parametrize("every", EVERY_S.values(), ids=EVERY_S.keys())


def sample_of(time_s: float, right: Arm | None, left: Arm | None = HANGING) -> Sample:
    values: dict[str, float] = {"body_seen": 1.0}
    for name, arm, way in (("right", right, 1.0), ("left", left, -1.0)):
        x, y, elbow_x, elbow_y = (nan,) * 4 if arm is None else arm
        values |= {f"wrist_{name}_x_mm": way * x, f"wrist_{name}_y_mm": y}
        values |= {f"elbow_{name}_x_mm": way * elbow_x, f"elbow_{name}_y_mm": elbow_y}
    return Sample(time_s, **values)


def mirrored(sample: Sample) -> Sample:
    swapped = {"body_seen": sample.body_seen}
    for part in ("wrist", "elbow"):
        for one, other in (("right", "left"), ("left", "right")):
            swapped[f"{part}_{one}_x_mm"] = -getattr(sample, f"{part}_{other}_x_mm")
            swapped[f"{part}_{one}_y_mm"] = getattr(sample, f"{part}_{other}_y_mm")
    return Sample(sample.time_s, **swapped)


def between(a: Arm, b: Arm, share: float) -> Arm:
    s = min(max(share, 0.0), 1.0)
    return tuple(p + s * (q - p) for p, q in zip(a, b, strict=True))  # type: ignore[return-value]


def lifted(to: Arm, from_s: float, for_s: float, takes_s: float = 0.5) -> Path:
    """An arm that goes up at a time, stays so long, and comes down."""

    def at(t: float) -> Arm:
        up, down = (t - from_s) / takes_s, (t - from_s - takes_s - for_s) / takes_s
        return between(HANGING, to, min(up, 1.0 - down))

    return at


def fired(samples: Iterable[Sample], held_s: float = HELD_S) -> float | None:
    """When it stops; None if never."""
    watch = RaisedHand(held_s)
    return next((s.time_s for s in samples if watch.take(s)), None)


def filmed(
    right: Path, every: Every, rng: np.random.Generator | None = None, to_s: float = 9.0
) -> list[Sample]:
    samples, t = [], 0.05
    while t < to_s:
        arm = right(t)
        if rng is not None:
            arm = tuple(v + e for v, e in zip(arm, rng.normal(0.0, 6.0, 4), strict=True))  # type: ignore[assignment]
        samples.append(sample_of(t, arm))
        # Most frames of a set are not looked at for a body.
        samples.append(Sample(t + 0.03, head_yaw_deg=0.0))
        t += every[int(arm[1] > SHOULDER_MM)]
    return samples


@RATES
@pytest.mark.parametrize("to", [UP, LOW_UP, (400.0, 155.0, 392.0, -100.0)])
def test_a_hand_held_up_stops_within_two_seconds(to: Arm, every: Every) -> None:
    found = filmed(lifted(to, 3.0, 4.0), every)
    at_s = fired(found)
    assert at_s is not None and 3.0 + HELD_S <= at_s <= 5.0
    assert fired([mirrored(s) for s in found]) == at_s


@RATES
def test_hundreds_of_made_up_hands_all_stop(every: Every) -> None:
    rng = np.random.default_rng(11)
    for _ in range(150):
        x, y = rng.uniform(230, 480), rng.uniform(-150, 200)
        rises = rng.uniform(170, 260)
        to = (x, y, x + rng.uniform(-0.3, 0.3) * rises, y - rises)
        path = lifted(to, rng.uniform(1, 3), rng.uniform(2.2, 4.0), rng.uniform(0.3, 1.0))
        samples = filmed(path, every, rng)
        if rng.random() < 0.3:
            # One look in eight finds no arm.
            samples = [s if rng.random() > 0.12 else _unseen(s) for s in samples]
        assert fired(samples) is not None


def _unseen(sample: Sample) -> Sample:
    return Sample(sample.time_s, body_seen=0.0) if sample.body_seen == 1.0 else sample


@RATES
@pytest.mark.parametrize(
    "to", [SCRATCH, GLASSES, CHEEK, THUMB_AHEAD, THUMB_ASIDE, ARM_ASIDE, HANGING]
)
def test_hands_elsewhere_stop_nothing_however_long(to: Arm, every: Every) -> None:
    rng = np.random.default_rng(3)
    assert fired(filmed(lifted(to, 2.0, 8.0), every, rng)) is None
    assert raised_side(sample_of(0.0, to)) == ""


@RATES
def test_hundreds_of_other_movements_stop_nothing(every: Every) -> None:
    rng = np.random.default_rng(5)
    for k in range(250):
        kind = k % 5
        at, far = float(rng.uniform(1, 3)), float(rng.uniform(0.7, 1.3))
        if kind == 0:  # a wipe of the brow, a push at the glasses: up and down within the second
            path = lifted(UP if rng.random() < 0.5 else GLASSES, at, 0.3, 0.3)
        elif kind == 1:  # an arm that circles
            path = _circling(at, far, float(rng.uniform(0.8, 3.0)))
        elif kind == 2:  # a wave of the hand
            path = _waving(float(rng.uniform(1.0, 2.5)))
        elif kind == 3:  # throws, each on its way for less than the second
            path = _throwing(at, float(rng.uniform(0.8, 1.8)))
        else:  # a thumb that is carried from side to side
            path = _carrying(float(rng.uniform(1.5, 5.0)))
        assert fired(filmed(path, every, rng)) is None, kind


def _circling(at: float, far: float, takes_s: float) -> Path:
    def path(t: float) -> Arm:
        turn = 2 * np.pi * (t - at) / takes_s
        elbow = (250 + 90 * far * np.sin(turn), -330 + 120 * far * np.cos(turn))
        return (elbow[0] + 220 * np.sin(turn), elbow[1] + 220 * np.cos(turn), *elbow)

    return path


def _waving(rate_hz: float) -> Path:
    def path(t: float) -> Arm:
        lean = 1.0 * np.sin(2 * np.pi * rate_hz * t)
        return (375 + 230 * np.sin(lean), -310 + 230 * np.cos(lean), 375.0, -310.0)

    return path


def _throwing(at: float, each_s: float) -> Path:
    def path(t: float) -> Arm:
        if t < at:
            return HANGING
        return between(HANGING, THROW, float(np.sin(np.pi * ((t - at) % each_s) / each_s)) ** 2)

    return path


def _carrying(takes_s: float) -> Path:
    def path(t: float) -> Arm:
        return between(THUMB_AHEAD, THUMB_ASIDE, 0.5 - 0.5 * np.cos(2 * np.pi * t / takes_s))

    return path


def test_both_hands_up_are_hands_at_work() -> None:
    samples = [sample_of(t, UP, UP) for t in np.arange(0.0, 6.0, 0.1)]
    assert fired(samples) is None


def test_a_hand_below_the_picture_is_down() -> None:
    low = [sample_of(t, UP, None) for t in np.arange(0.0, 3.0, 0.1)]
    assert fired(low) == pytest.approx(HELD_S, abs=0.11)


@RATES
def test_where_hands_work_it_takes_longer(every: Every) -> None:
    found = filmed(lifted(UP, 2.0, 1.4, 0.3), every)
    assert fired(found) is not None and fired(found, HELD_AT_WORK_S) is None
    longer = fired(filmed(lifted(UP, 2.0, 4.0, 0.3), every), HELD_AT_WORK_S)
    assert longer is not None and 2.0 + HELD_AT_WORK_S <= longer <= 5.0


def test_what_is_not_seen_for_long_begins_anew() -> None:
    first = [sample_of(t, UP) for t in (0.0, 0.2, 0.4, 0.6, 0.8)]
    late = [sample_of(t, UP) for t in (2.4, 2.6, 2.8, 3.0, 3.2)]
    assert fired([*first, *late]) is None
    assert fired([*first, *late, sample_of(3.4, UP)]) == 3.4


def test_a_few_looks_are_not_enough() -> None:
    assert fired([sample_of(t, UP) for t in (0.0, 0.4, 0.8, 1.2)]) is None


def test_a_set_begins_anew() -> None:
    watch = RaisedHand()
    assert not any(watch.take(sample_of(t, UP)) for t in (0.0, 0.3, 0.6, 0.9))
    watch.begin()
    assert not watch.take(sample_of(1.2, UP))
