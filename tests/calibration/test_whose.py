"""A face that comes into view elsewhere shows that it is the patient's before it is measured."""

from __future__ import annotations

from math import isfinite

import numpy as np
import pytest

from calibration.whose import Whose
from tracker.sample import Sample
from tracker.vision.landmarks import Face
from tracker.vision.observer import Observation


def seen(whose: Whose, time_s: float, x: float, quality: float, yaw_deg: float = 3.0) -> bool:
    """Whether a face of 120 pixels at a place is measured."""
    points = np.full((478, 2), [x, 200.0])
    points[10, 1], points[152, 1] = 140.0, 260.0
    face = Face(points, np.zeros(478), (0.0, 0.0))
    observation = Observation(time_s, 640, 480, face, None, 0.5, 1)
    sample = Sample(time_s, head_yaw_deg=yaw_deg, head_pitch_deg=0.0, quality=quality)
    out = whose.take(observation, sample)
    if not isfinite(out.head_yaw_deg):
        assert out.reason == "covered" and out.quality == 0.0
        return False
    assert out is sample
    return True


@pytest.fixture
def whose() -> Whose:
    made = Whose()
    assert seen(made, 0.0, 320.0, 0.95)
    return made


def test_another_head_elsewhere_is_not_measured_until_ones_own_is_back(whose: Whose) -> None:
    for k in range(60):
        assert not seen(whose, 1.2 + k / 30, 560.0, 0.53)
    assert seen(whose, 3.3, 320.0, 0.9)
    assert seen(whose, 3.4, 320.0, 0.5)


def test_ones_own_head_elsewhere_is_measured(whose: Whose) -> None:
    assert seen(whose, 1.2, 560.0, 0.75)
    assert seen(whose, 1.3, 560.0, 0.5)


@pytest.mark.parametrize(("after_s", "x"), [(0.1, 560.0), (1.2, 340.0)])
def test_who_was_hardly_gone_or_has_not_moved_shows_nothing(
    whose: Whose, after_s: float, x: float
) -> None:
    assert seen(whose, after_s, x, 0.4)


def test_how_alike_a_head_is_that_is_turned_far_tells_nothing(whose: Whose) -> None:
    assert seen(whose, 1.2, 560.0, 0.4, yaw_deg=38.0)
    assert not seen(whose, 1.3, 560.0, 0.4, yaw_deg=5.0)


def test_in_poor_pictures_nothing_is_told_by_it() -> None:
    whose = Whose()
    assert seen(whose, 0.0, 320.0, 0.6)
    assert seen(whose, 1.2, 560.0, 0.35)
