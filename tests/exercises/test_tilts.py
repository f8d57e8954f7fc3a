"""Tilts of the head, told from turns: what counts, what is told, and when."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.stage import Step
from tracker.session.summary import summarise
from tracker.session.summary_file import ExerciseSummary

#: One way to a side and back to the other, and the rate of a usual camera.
CYCLE_S, RATE_HZ = 5.0, 30.0
Way = Callable[[float], float]


def wave(t: float) -> float:
    return float(np.sin(2 * np.pi * t / CYCLE_S))


def done(yaw: Way, roll: Way, cycles: float = 4) -> ExerciseSummary:
    """A set of head tilts, with the noise of a fair camera (0.2 degrees, as in the row tests)."""
    rng = np.random.default_rng(5)
    to_s = cycles * CYCLE_S
    made = [
        Sample(
            float(t),
            head_yaw_deg=yaw(float(t)) + rng.normal(0, 0.2),
            head_pitch_deg=rng.normal(0, 0.2),
            head_roll_deg=roll(float(t)) + rng.normal(0, 0.2),
            eye_open=1.0,
            quality=1.0,
        )
        for t in np.arange(0, to_s, 1 / RATE_HZ)
    ]
    step = Step(from_s=0.0, to_s=to_s, step="exercise", exercise="head-tilts")
    return summarise(run_samples(made, [step], SessionInfo())).exercises[0]


def codes(found: ExerciseSummary) -> list[str]:
    return [e.code for e in found.events]


def test_tilts_with_the_little_turning_that_goes_with_them_all_count() -> None:
    """A fifth of the tilt: three times what the drawn heads turn."""
    found = done(lambda t: 4.0 * wave(t), lambda t: 20.0 * wave(t))
    assert found.done.repetitions == 4 and codes(found) == []


@pytest.mark.parametrize("roll_deg", [0.0, 3.0, 10.0, 18.0])
def test_a_head_that_turns_is_not_counted_and_is_told(roll_deg: float) -> None:
    """Also where it tilts a little, or nearly as much as it turns."""
    found = done(lambda t: 22.0 * wave(t), lambda t: roll_deg * wave(t))
    assert not found.done.repetitions and codes(found) == ["head_turned"]
    (event,) = found.events
    # From the first way on; decided after one repetition, and said at that turning point.
    assert event.start_s == pytest.approx(0.0, abs=0.3)
    assert event.said_at_s is not None
    assert 0.5 * CYCLE_S < event.said_at_s < 1.5 * CYCLE_S
    turned = (event.said_at_s - 0.25 * CYCLE_S) % (0.5 * CYCLE_S)
    assert 0.0 < turned < 1.2, "on the way back from an extreme, not in the middle of a way"
    assert event.end_s == pytest.approx(4 * CYCLE_S, abs=0.1)


def test_half_a_tilt_counts_and_nothing_is_said_of_it() -> None:
    """More of a tilt than of a turn, between the two limits: no to and fro of cues."""
    found = done(lambda t: 17.0 * wave(t), lambda t: 20.0 * wave(t))
    assert found.done.repetitions == 4 and codes(found) == []


def test_one_look_aside_is_not_told() -> None:
    def yaw(t: float) -> float:
        return 25.0 * float(np.exp(-(((t - 8.0) / 0.5) ** 2)))

    found = done(yaw, lambda t: 0.0 if 6.0 < t < 10.0 else 20.0 * wave(t))
    assert codes(found) == []


@pytest.mark.parametrize(("second", "told"), [(12, False), (3, True)])
def test_turns_with_tilts_that_count_between_them_are_not_one_repetition(
    second: int, told: bool
) -> None:
    """Also where those tilts turn by more than lets off who was told; two in a row are one."""
    halves = [(0.25 + 0.5 * k) * CYCLE_S for k in (2, second)]

    def roll(t: float) -> float:
        for from_s in reversed(halves):
            if t >= from_s:
                # The head turns to the other side and stays tilted; from there it goes on.
                t = max(from_s, t - 0.5 * CYCLE_S)
        return 20.0 * wave(t)

    found = done(lambda t: 17.0 * wave(t), roll, cycles=9)
    assert codes(found) == (["head_turned"] if told else [])


def test_it_lasts_until_the_head_tilts_again_and_only_tilts_count() -> None:
    def turns(t: float) -> bool:
        return 2 * CYCLE_S <= t < 4 * CYCLE_S

    found = done(
        lambda t: (20.0 if turns(t) else 1.0) * wave(t),
        lambda t: (1.0 if turns(t) else 20.0) * wave(t),
        cycles=6,
    )
    assert found.done.repetitions == 4
    (event,) = found.events
    assert event.code == "head_turned"
    assert event.start_s == pytest.approx(2 * CYCLE_S, abs=0.4)
    assert event.end_s == pytest.approx(4.25 * CYCLE_S, abs=0.4)


def test_between_the_limits_it_goes_on_as_it_was() -> None:
    """Who was told to tilt, and does it half, is neither told anew nor let off."""

    def yaw(t: float) -> float:
        return (20.0 if t < 2 * CYCLE_S else 17.0) * wave(t)

    found = done(yaw, lambda t: (0.0 if t < 2 * CYCLE_S else 20.0) * wave(t), cycles=5)
    assert codes(found) == ["head_turned"]
    assert found.events[0].end_s == pytest.approx(5 * CYCLE_S, abs=0.1)
    assert found.done.repetitions == 3


def test_a_head_that_is_not_seen_has_not_turned() -> None:
    def yaw(t: float) -> float:
        return float("nan") if 3.0 < t < 12.0 else 1.0 * wave(t)

    found = done(yaw, lambda t: float("nan") if 3.0 < t < 12.0 else 20.0 * wave(t))
    assert "head_turned" not in codes(found)
