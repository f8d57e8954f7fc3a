"""A set-up in which nothing, or not enough, was seen: said, and nothing made up."""

from __future__ import annotations

from math import isnan

import numpy as np
import pytest

from calibration.axes import still_pose
from calibration.fit import fit_profile
from calibration.measurer import make_measurer
from calibration.parts_found import wander_deg
from tests.calibration.conftest import SHAPE
from tracker.errors import InputError
from tracker.sample import Sample
from tracker.session.stage import Step


def test_a_set_up_without_a_face_says_so() -> None:
    with pytest.raises(InputError, match="not seen for long enough"):
        fit_profile([], [Step(from_s=0.0, to_s=2.0, step="rest")], SHAPE)


def test_a_still_head_that_nobody_saw_is_at_the_origin() -> None:
    found = still_pose([])
    np.testing.assert_array_equal(found.rotation, np.eye(3))
    np.testing.assert_array_equal(found.position_mm, np.zeros(3))


def test_how_far_a_head_strayed_is_not_known_without_a_look() -> None:
    assert isnan(wander_deg([]))
    assert isnan(wander_deg([Sample(0.0, reason="no_face")]))


def test_a_measurer_without_a_set_up_has_nothing_to_measure_again() -> None:
    measurer = make_measurer()
    try:
        assert measurer.remeasure() == []
        with pytest.raises(InputError, match="pictures of the other steps are gone"):
            measurer.fit_again([Step(from_s=0.0, to_s=2.0, step="rest")], "rest")
    finally:
        measurer.close()
