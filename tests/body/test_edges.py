"""What is seen of a body, and from how much a way of rolling is told."""

from __future__ import annotations

import numpy as np
import pytest

from tracker.body.points import N_LANDMARKS, VISIBLE, BodyPoints
from tracker.body.raised import RaisedHand, raised_side
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


def test_a_width_that_changes_at_one_height_is_no_roll() -> None:
    def rolled(lift_mm: float) -> str | None:
        times = np.arange(-0.5, 2.5, 1 / 15)
        made = [
            Sample(
                float(t),
                shoulder_right_x_mm=180.0 + 20.0 * float(np.cos(np.pi * t)),
                shoulder_left_x_mm=-180.0 - 20.0 * float(np.cos(np.pi * t)),
                shoulder_right_y_mm=lift_mm * float(np.sin(np.pi * t)),
                shoulder_left_y_mm=lift_mm * float(np.sin(np.pi * t)),
            )
            for t in times
        ]
        return direction_of(made, 0.0, 2.0)

    assert (rolled(2.0), rolled(20.0)) == (None, "back")


def arm(time_s: float, lean_deg: float = 0.0) -> Sample:
    """The right forearm, 220 mm of it, up beside the head; the left hand hangs."""
    lean = np.radians(lean_deg)
    return Sample(
        time_s,
        body_seen=1.0,
        wrist_right_x_mm=300.0,
        wrist_right_y_mm=-80.0,
        elbow_right_x_mm=300.0 + 220.0 * float(np.sin(lean)),
        elbow_right_y_mm=-80.0 - 220.0 * float(np.cos(lean)),
        wrist_left_x_mm=-240.0,
        wrist_left_y_mm=-600.0,
        elbow_left_x_mm=-220.0,
        elbow_left_y_mm=-420.0,
    )


@pytest.mark.parametrize(
    ("lean_deg", "side"), [(0, "right"), (20, "right"), (-20, "right"), (30, ""), (-30, "")]
)
def test_a_forearm_that_leans_by_more_than_24_degrees_is_not_held_up(
    lean_deg: float, side: str
) -> None:
    assert raised_side(arm(0.0, lean_deg)) == side


def test_four_looks_are_too_few_to_stop_for_however_long_they_took() -> None:
    raised = RaisedHand()
    assert [raised.take(arm(0.4 * k)) for k in range(6)] == [False] * 4 + [True] * 2


def test_what_was_found_of_a_body_is_not_changed() -> None:
    body = BodyPoints(np.zeros((N_LANDMARKS, 2)), np.ones(N_LANDMARKS), 640, 480)
    with pytest.raises(AttributeError):
        body.width_px = 1  # type: ignore[misc]
