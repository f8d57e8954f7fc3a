"""The row of a trace."""

from __future__ import annotations

from math import isnan

import pytest

from tracker.sample import TEXT_COLUMNS, TRACE_COLUMNS, Sample


def test_columns_begin_as_the_plan_lists_them() -> None:
    plan = (
        "time_s, head_yaw_deg, head_pitch_deg, head_roll_deg, head_x_mm, head_y_mm, head_z_mm, "
        "neck_x_mm, neck_y_mm, neck_z_mm, head_yaw_speed_deg_s, head_pitch_speed_deg_s, "
        "eye_yaw_deg, eye_pitch_deg, vergence_deg, gaze_yaw_deg, gaze_pitch_deg, target_yaw_deg, "
        "target_pitch_deg, eye_open, face_height_px, light, quality, step"
    )
    assert TRACE_COLUMNS[:24] == tuple(plan.split(", "))


def test_what_is_not_measured_is_nan_never_zero() -> None:
    sample = Sample(1.5)
    for name in TRACE_COLUMNS:
        if name != "time_s" and name not in TEXT_COLUMNS:
            assert isnan(getattr(sample, name)), name


def test_samples_do_not_change() -> None:
    with pytest.raises(AttributeError):
        Sample(0.0).time_s = 1.0  # type: ignore[misc]
