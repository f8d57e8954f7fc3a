"""What is seen of a body, and from how much a way of rolling is told."""

from __future__ import annotations

import numpy as np
import pytest

from tracker.body.points import N_LANDMARKS, VISIBLE, BodyPoints
from tracker.body.rolls import direction_of
from tracker.sample import Sample


@pytest.mark.parametrize(
    ("x", "y", "sure", "seen"),
    [
        (0.0, 0.0, 1.0, True),
        (639.0, 479.0, VISIBLE, True),
        (320.0, 480.0, 1.0, False),
        (320.0, -1.0, 1.0, False),
        (640.0, 240.0, 1.0, False),
        (-1.0, 240.0, 1.0, False),
        (320.0, 240.0, VISIBLE - 0.01, False),
    ],
)
def test_a_landmark_is_seen_within_the_picture_alone(
    x: float, y: float, sure: float, seen: bool
) -> None:
    points = np.tile([x, y], (N_LANDMARKS, 1))
    body = BodyPoints(points, np.full(N_LANDMARKS, sure), 640, 480)
    assert body.seen(3) is seen


@pytest.mark.parametrize(("within", "way"), [(12, "back"), (6, None)])
def test_a_roll_of_few_looks_tells_no_way_whatever_lies_around_it(
    within: int, way: str | None
) -> None:
    """Wide on the way up and narrow on the way down is rolling back."""
    length_s = 2.0
    times = np.arange(-1.0, 3.0, length_s / within)
    angle = 2 * np.pi * times / length_s
    made = [
        Sample(
            float(t),
            shoulder_right_x_mm=180.0 + 20.0 * float(np.cos(a)),
            shoulder_left_x_mm=-180.0 - 20.0 * float(np.cos(a)),
            shoulder_right_y_mm=40.0 * float(np.sin(a)),
            shoulder_left_y_mm=40.0 * float(np.sin(a)),
        )
        for t, a in zip(times, angle, strict=True)
    ]
    assert direction_of(made, 0.0, length_s - 0.01) == way
