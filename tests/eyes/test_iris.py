"""The irises' height between the corners of the eyes, on made-up landmarks."""

from __future__ import annotations

import numpy as np
import pytest

from tracker.eyes.iris import PER_CORNERS, PER_HEAD, iris_pitch_deg

CORNERS = {33: (100, 200), 133: (130, 200), 362: (170, 200), 263: (200, 200)}


def points(right_px: float, left_px: float) -> np.ndarray:
    """Eyes 30 px wide whose irises are so far below the line of their corners."""
    found = np.zeros((478, 2))
    for number, place in CORNERS.items():
        found[number] = place
    found[468], found[473] = (115, 200 + right_px), (186, 200 + left_px)
    return found


def test_an_iris_that_goes_down_is_a_look_down() -> None:
    assert iris_pitch_deg(points(0, 0), 0.0) == 0.0
    assert iris_pitch_deg(points(0.75, 0.75), 0.0) == pytest.approx(PER_CORNERS * 0.75 / 30)
    assert iris_pitch_deg(points(0, 0), 10.0) == pytest.approx(10 * PER_HEAD)


def test_only_the_eyes_in_use_count() -> None:
    made = points(0.6, 3.0)
    assert iris_pitch_deg(made, 0.0, (0,)) == pytest.approx(PER_CORNERS * 0.6 / 30)
    assert iris_pitch_deg(made, 0.0) == pytest.approx(PER_CORNERS * 1.8 / 30)


def test_a_tilted_or_nearer_head_changes_nothing() -> None:
    made = points(0.75, 0.9)
    angle = np.radians(20)
    turn = np.array([[np.cos(angle), -np.sin(angle)], [np.sin(angle), np.cos(angle)]])
    tilted = 1.7 * made @ turn.T + [40, -10]
    assert iris_pitch_deg(tilted, 3.0) == pytest.approx(iris_pitch_deg(made, 3.0))
