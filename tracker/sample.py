"""What was measured at one moment: the row of a trace."""

from __future__ import annotations

from dataclasses import dataclass, fields
from math import nan

#: Why a sample (or a part of it) holds no measurement. Keys, not words: the
#: user interface has the words.
REASONS = (
    "no_face",
    "too_dark",
    "too_far",
    "turned_too_far",
    "covered",
    "blurred",
    "gap",
    "eyes_shut",
    "eyes_unlike",
    "eyes_unlike_around",
    "gaze_beside",
    "beyond_setup",
    "varifocal",
    "no_setup",
    "no_body",
)

#: Nothing was measured of a person's set-up. Beside a measured head: a usual face stands in for
#: one, and the eyes can't be read.
NO_SETUP = "no_setup"

#: Lowest and highest eye-in-head yaw, and pitch, in degrees, that a set-up taught.
Reach = tuple[tuple[float, float], tuple[float, float]]


@dataclass(frozen=True, slots=True)
class Sample:
    """One measured moment, in the axes, signs and units of the rest frame.

    Angles are degrees (yaw + to the patient's right, pitch + up, roll + right
    ear down), positions millimetres (x right, y up, z forward) relative to
    rest. A value that was not measured is NaN, never 0. ``eye_*`` is the mean
    of the eyes in use, relative to the head; ``gaze_*`` and ``target_*`` are
    directions in the rest frame from the current mid-point of the eyes.
    ``eye_open`` runs from 0 (shut) to 1 (open), ``light`` is the face's mean
    luminance from 0 to 1, ``quality`` from 0 to 1 how alike and
    how sharp the face is against the set-up. ``step`` names the step of
    the stage log; ``reason`` says why something is missing, or is empty.

    The body is looked at only where an exercise needs it, and not in every frame:
    ``body_seen`` is NaN where it was not looked for, 0 where it was not found, else how
    sure its shoulders are (0 to 1). ``shoulder_*`` are places from the point about which
    the head turns, ``elbow_*`` and ``wrist_*`` from the mid-point of the eyes
    (:mod:`tracker.body`).
    """

    time_s: float
    head_yaw_deg: float = nan
    head_pitch_deg: float = nan
    head_roll_deg: float = nan
    head_x_mm: float = nan
    head_y_mm: float = nan
    head_z_mm: float = nan
    neck_x_mm: float = nan
    neck_y_mm: float = nan
    neck_z_mm: float = nan
    head_yaw_speed_deg_s: float = nan
    head_pitch_speed_deg_s: float = nan
    eye_yaw_deg: float = nan
    eye_pitch_deg: float = nan
    vergence_deg: float = nan
    gaze_yaw_deg: float = nan
    gaze_pitch_deg: float = nan
    target_yaw_deg: float = nan
    target_pitch_deg: float = nan
    eye_open: float = nan
    face_height_px: float = nan
    light: float = nan
    quality: float = nan
    step: str = ""
    reason: str = ""
    body_seen: float = nan
    shoulder_right_x_mm: float = nan
    shoulder_right_y_mm: float = nan
    shoulder_left_x_mm: float = nan
    shoulder_left_y_mm: float = nan
    elbow_right_x_mm: float = nan
    elbow_right_y_mm: float = nan
    elbow_left_x_mm: float = nan
    elbow_left_y_mm: float = nan
    wrist_right_x_mm: float = nan
    wrist_right_y_mm: float = nan
    wrist_left_x_mm: float = nan
    wrist_left_y_mm: float = nan


#: The columns of a trace, in file order.
TRACE_COLUMNS: tuple[str, ...] = tuple(f.name for f in fields(Sample))
TEXT_COLUMNS = frozenset({"step", "reason"})
