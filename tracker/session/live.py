"""What the engine shows while it runs, and what it knows of the session from the start."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import isfinite, nan
from typing import Any, Literal

from pydantic import BaseModel, ConfigDict

from tracker.exercises.events import Cue
from tracker.motion.turning import Turn
from tracker.session.stage import Step

#: Name of the camera where a sample clip is in its place.
SAMPLE_CLIP = "sample clip"
#: Whether the head dropped suddenly: ``seen`` to stay down, ``lost`` if it left the picture.
Dropped = Literal["", "seen", "lost"]


def is_of_the_sample(setup: Mapping[str, Any]) -> bool:
    """Whether a set-up says that a sample clip was in the camera's place."""
    camera = setup.get("camera")
    return isinstance(camera, Mapping) and camera.get("name") == SAMPLE_CLIP


class SessionInfo(BaseModel):
    """What is known of a session when it begins; None where it doesn't apply.

    ``setup`` holds what the set-up found (``camera`` with its field of view, how that is
    known and its error; ``screen``, ``distance_mm``, ``glasses``, ``eyes``,
    ``calibration``, ``gaze_error_deg``, ``head_reach_deg``, ``check``, ``mark``,
    ``findings``), ``gate`` what was asked and answered before, ``table_group`` the age group
    and sex that the plan gives for the published tables of chair stands. ``baseline``: the
    therapist sits beside the person, and later sessions are to be compared with this one.
    """

    model_config = ConfigDict(extra="allow", frozen=True)

    session_id: str | None = None
    person: str | None = None
    plan_id: str | None = None
    started_at: str | None = None
    program_version: str = ""
    setup: dict[str, Any] = {}
    gate: dict[str, Any] | None = None
    table_group: dict[str, str | None] | None = None
    notes: tuple[str, ...] = ()
    baseline: bool = False


@dataclass(frozen=True, slots=True)
class LiveState:
    """How the session stands at ``time_s`` (NaN and None where unknown)."""

    time_s: float = nan
    step: Step | None = None
    elapsed_s: float = 0.0
    repetitions: int = 0
    goal_repetitions: int | None = None
    goal_amplitude_deg: float | None = None
    goal_amplitude_range_deg: tuple[float, float] | None = None
    goal_tempo_bpm: float | None = None
    last_turn: Turn | None = None
    turns: int = 0
    tempo_bpm: float | None = None
    cue: Cue | None = None
    measured: bool = False
    reason: str = ""
    gaze_error_deg: float = nan
    head_yaw_deg: float = nan
    head_pitch_deg: float = nan
    head_roll_deg: float = nan
    eye_yaw_deg: float = nan
    eye_pitch_deg: float = nan
    eye_open: float = nan
    light: float = nan
    face_height_px: float = nan


def check_found(check: Any) -> dict[str, Any]:
    """What a check of the gaze showed, as a summary says it; None where none was asked for."""
    if check is None:
        return {"gaze_error_deg": None, "frames": 0, "looks": 0, "reason": "not asked"}
    error = float(check.error_deg)
    return {
        "gaze_error_deg": round(error, 3) if isfinite(error) else None,
        "frames": check.frames,
        "looks": check.looks,
        "reason": None if isfinite(error) else "the eyes were not seen on the targets",
    }


def wall_found(report: Any) -> dict[str, Any]:
    """What a set-up has for marks on the wall: the camera's place, and its check there.

    ``camera_at_mm`` is where the camera is in the rest frame; ``wall_check`` is left out where
    nobody looked at the wall.
    """
    found: dict[str, Any] = {}
    rest = getattr(getattr(report, "profile", None), "rest", None)
    if rest is not None:
        found["camera_at_mm"] = [round(v, 1) for v in rest.camera_mm]
    check = getattr(report, "wall_check", None)
    if check is not None:
        found["wall_check"] = check_found(check)
    return found


def head_reach_found(reach: Any) -> dict[str, float | None] | None:
    """How far the head went to each side in a set-up, in degrees, as a summary says it."""
    if reach is None:
        return None
    ways = {side: float(getattr(reach, side)) for side in ("right", "left", "up", "down")}
    return {side: round(deg, 1) if isfinite(deg) else None for side, deg in ways.items()}


def mark_found(mark: Any) -> dict[str, Any]:
    """What the check by a mark on the wall showed, as a summary says it.

    ``error_deg`` is the head's turn as measured less that which the tape asks for; how
    well the patient pointed the nose is in it. ``made_on`` is the day of the check: that of
    a kept set-up was made then.
    """
    names = ("error_deg", "measured_deg", "expected_deg", "expected_error_deg")
    lengths = ("distance_mm", "offset_mm")
    if mark is None:
        return {**dict.fromkeys((*names, *lengths, "made_on")), "reason": "not asked"}
    angles = {n: round(float(getattr(mark, n)), 2) for n in names}
    typed = {n: round(float(getattr(mark, n))) for n in lengths}
    return {**angles, **typed, "made_on": mark.made_on or None, "reason": None}


def was_set_up(found: Mapping[str, Any]) -> bool:
    """Whether a set-up was measured, and no generic face stands in for one."""
    return found.get("calibration") in (True, "fitted")


def setup_gaze_error_deg(found: Mapping[str, Any]) -> float:
    """Error of the gaze that a set-up measured: the larger of its own and of its check.

    NaN where it measured none.
    """
    errors = (_number(found.get("gaze_error_deg")), check_error_deg(found.get("check")))
    return max((e for e in errors if isfinite(e)), default=nan)


def check_error_deg(check: object) -> float:
    """Error of the gaze that a check showed; NaN where there was none."""
    return _number(check.get("gaze_error_deg")) if isinstance(check, Mapping) else nan


def _number(value: object) -> float:
    return float(value) if isinstance(value, int | float) else nan
