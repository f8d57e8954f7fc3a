"""What follows from the measured columns of a sample and the step: gaze, target, speeds.

A column that is already filled (a trace's) always wins.
"""

from __future__ import annotations

from dataclasses import replace
from math import isfinite, nan
from typing import Any

import numpy as np

from tracker.rotation import (
    angle_between_deg,
    angles_from_direction,
    direction_from_angles,
    matrix_from_angles,
)
from tracker.sample import TEXT_COLUMNS, TRACE_COLUMNS, Reach, Sample
from tracker.session.stage import Step

#: Decimals kept: far below any error of measuring, and short enough that a trace,
#: written and read again, holds exactly the numbers that were judged.
TIME_DECIMALS = 6
DECIMALS = 4


def rounded(sample: Sample) -> Sample:
    """Sample with the decimals that are kept; what isn't finite becomes NaN."""
    values: dict[str, Any] = {}
    for name in TRACE_COLUMNS:
        value = getattr(sample, name)
        if name not in TEXT_COLUMNS:
            value = float(value)
            places = TIME_DECIMALS if name == "time_s" else DECIMALS
            # Adding 0 turns -0 into 0, which a file can't tell apart.
            value = round(value, places) + 0.0 if isfinite(value) else nan
        values[name] = value
    return Sample(**values)


#: Eyes asked to go farther than the set-up taught by more than this are not believed:
#: beyond it a reading stays behind (measured on a rendered head: by 3 degrees at 4 beyond).
BEYOND_DEG = 1.0
BEYOND = "beyond_setup"
#: Why the eyes are not read when they look unlike those of the set-up.
UNLIKE = "eyes_unlike"
#: And why, where they look so again and again, they are not believed in between.
UNLIKE_AROUND = "eyes_unlike_around"
#: Why the line of sight is not believed where it rests a little beside its target.
BESIDE = "gaze_beside"
#: Why the line of sight is withheld in nods behind bi- or varifocal lenses.
VARIFOCAL = "varifocal"
#: Reasons for which a line of sight is withheld although the eyes were read: a trace that says so
#: is judged again without it.
WITHHELD = frozenset({BEYOND, UNLIKE_AROUND, BESIDE, VARIFOCAL})


def completed(
    sample: Sample, step: Step | None, reach: Reach | None = None, *, withhold: str = ""
) -> Sample:
    """Sample with its step, target and line of sight.

    Where the target asks the eyes to go beyond ``reach`` the line of sight is not
    measured: what was never seen in the set-up can only be guessed. Where in an exercise
    eyes are read beyond it though nothing asks them to, the reading stays (they did leave
    the target, and farther than it says) and the sample is marked. ``withhold`` is a reason
    not to believe it at all.
    """
    sample = _filled(sample, step)
    if withhold and isfinite(sample.gaze_yaw_deg):
        return replace(sample, gaze_yaw_deg=nan, gaze_pitch_deg=nan, reason=withhold)
    if reach is not None and isfinite(sample.gaze_yaw_deg) and _asks_beyond(sample, reach):
        return replace(sample, gaze_yaw_deg=nan, gaze_pitch_deg=nan, reason=BEYOND)
    if reach is not None and sample.reason == UNLIKE and _asks_beyond(sample, reach):
        # Nothing of the set-up could look like them: no sign of another light or of other lids.
        return replace(sample, reason=BEYOND)
    eye = (sample.eye_yaw_deg, sample.eye_pitch_deg)
    judged = sample.step == "exercise" and not sample.reason
    if reach is not None and judged and _is_beyond(eye, reach):
        return replace(sample, reason=BEYOND)
    return sample


def _asks_beyond(sample: Sample, reach: Reach) -> bool:
    return _is_beyond(target_in_head(sample), reach)


def _is_beyond(eye_deg: tuple[float, float], reach: Reach) -> bool:
    """Whether a yaw and pitch of the eyes in the head lie clearly outside what was taught."""
    return any(
        not low - BEYOND_DEG <= angle <= high + BEYOND_DEG
        for angle, (low, high) in zip(eye_deg, reach, strict=True)
        if isfinite(angle)
    )


def target_in_head(sample: Sample) -> tuple[float, float]:
    """Yaw and pitch that eyes on the target would have in the head; NaN where unknown."""
    head = (sample.head_yaw_deg, sample.head_pitch_deg)
    target = (sample.target_yaw_deg, sample.target_pitch_deg)
    if not _all_finite(head + target):
        return nan, nan
    roll = sample.head_roll_deg if isfinite(sample.head_roll_deg) else 0.0
    rotation = matrix_from_angles(*head, roll)
    angles = angles_from_direction(rotation.T @ direction_from_angles(*target))
    return float(angles[0]), float(angles[1])


def _filled(sample: Sample, step: Step | None) -> Sample:
    changes: dict[str, Any] = {}
    if step is not None and not sample.step:
        changes["step"] = step.step
    if step is not None and not (
        isfinite(sample.target_yaw_deg) or isfinite(sample.target_pitch_deg)
    ):
        changes |= _target(sample, step)
    head = (sample.head_yaw_deg, sample.head_pitch_deg, sample.head_roll_deg)
    eye = (sample.eye_yaw_deg, sample.eye_pitch_deg)
    gaze = (sample.gaze_yaw_deg, sample.gaze_pitch_deg)
    if _all_finite(head):
        rotation = matrix_from_angles(*head)
        unread = not any(isfinite(g) for g in gaze)
        if _all_finite(eye) and unread and sample.reason not in WITHHELD:
            angles = angles_from_direction(rotation @ direction_from_angles(*eye))
            changes |= {"gaze_yaw_deg": float(angles[0]), "gaze_pitch_deg": float(angles[1])}
        elif _all_finite(gaze) and not any(isfinite(e) for e in eye):
            angles = angles_from_direction(rotation.T @ direction_from_angles(*gaze))
            changes |= {"eye_yaw_deg": float(angles[0]), "eye_pitch_deg": float(angles[1])}
    return replace(sample, **changes) if changes else sample


def _target(sample: Sample, step: Step) -> dict[str, float]:
    """Direction of the step's target from where the eyes are now."""
    target = step.target_at(sample.time_s)
    here = (sample.head_x_mm, sample.head_y_mm, sample.head_z_mm)
    if target is None or not _all_finite(here):
        return {}
    angles = angles_from_direction(np.asarray(target) - np.asarray(here))
    return {"target_yaw_deg": float(angles[0]), "target_pitch_deg": float(angles[1])}


def gaze_error_deg(sample: Sample) -> float:
    """True angle between the line of sight and the target, NaN where unknown."""
    angles = (
        sample.gaze_yaw_deg,
        sample.gaze_pitch_deg,
        sample.target_yaw_deg,
        sample.target_pitch_deg,
    )
    if not _all_finite(angles):
        return nan
    return float(
        angle_between_deg(direction_from_angles(*angles[:2]), direction_from_angles(*angles[2:]))
    )


def _all_finite(values: tuple[float, ...]) -> bool:
    return all(isfinite(v) for v in values)
