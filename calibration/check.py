"""How well the gaze is read on targets that the fit has not seen."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import isfinite

import numpy as np

from calibration.gaze_fit import SETTLE_S
from calibration.parts import is_held_out, on_wall
from tracker.measure import measure
from tracker.profile import Profile
from tracker.rotation import angle_between_deg, direction_from_angles
from tracker.sample import Sample
from tracker.session.stage import Step
from tracker.vision.observer import Observation


@dataclass(frozen=True, slots=True)
class GazeCheck:
    """What the held-out looks of a set-up showed.

    Attributes
    ----------
    error_deg
        Median angle between the line of sight and the target, NaN without a frame.
    frames, looks
        On how many frames, of how many looks, it rests.
    """

    error_deg: float
    frames: int
    looks: int


@dataclass(frozen=True, slots=True)
class HeadReach:
    """How far the head went in the moving part of a set-up, in degrees; NaN where unknown.

    Attributes
    ----------
    right, left
        In the slow turn.
    up, down
        In the slow nod.
    """

    right: float
    left: float
    up: float
    down: float


#: The steps in which the head moves.
MOVING = ("turn_slowly", "nod_slowly")
#: Below this quality of the moving part of a set-up too little of the face is told. On
#: rendered heads (17 set-ups: dim, coarsely filmed, with glasses, and none of these) the
#: slow turn was read 0.4 to 1.8 degrees off under it (median 1.1), 0.1 to 0.7 above (0.3).
COARSE = 0.92
#: Frames looked at, evenly spread: enough for a median (this project's own choice).
_LOOKED_AT = 60


def check_gaze(
    profile: Profile,
    observations: Sequence[Observation],
    steps: Sequence[Step],
    *,
    wall: bool = False,
) -> GazeCheck | None:
    """Error of the gaze on the held-out looks; None where a set-up has none.

    At a mark on the wall what is off in its place, as measured with a tape, is in the error.

    Parameters
    ----------
    profile
        The person as fitted.
    observations
        Those of the set-up.
    steps
        Its steps, with their targets in the rest frame.
    wall
        Whether to check at the marks on the wall, or else at the screen.
    """
    looks = [s for s in steps if is_held_out(s) and (on_wall(s) is not None) == wall]
    if not looks:
        return None
    errors: list[float] = []
    seen = 0
    for look in looks:
        settled = [o for o in observations if look.from_s + SETTLE_S <= o.time_s < look.to_s]
        found = [e for o in settled if isfinite(e := _off(o, look, profile))]
        errors += found
        seen += bool(found)
    return GazeCheck(float(np.median(errors)) if errors else float("nan"), len(errors), seen)


def moving_samples(
    profile: Profile, observations: Sequence[Observation], steps: Sequence[Step]
) -> list[tuple[str, Sample]]:
    """Some samples of the slow turn and nod, evenly spread, each with its step's name.

    Parameters
    ----------
    profile
        The person as fitted.
    observations
        Those of the set-up.
    steps
        Its steps; without a moving one there are none.
    """
    seen = [
        (step.step, o)
        for step in steps
        if step.step in MOVING
        for o in observations
        if step.from_s <= o.time_s < step.to_s
    ]
    every = max(1, len(seen) // _LOOKED_AT)
    return [(name, measure(o, profile)) for name, o in seen[::every] if o.face is not None]


def is_coarse(moving: Sequence[tuple[str, Sample]]) -> bool:
    """Whether the pictures keep too little of the face while it moves.

    A film of few bits, or a camera that wipes noise away in a dim room, keeps old skin in
    its place while the head turns; glasses mirror the room. The face at rest then no longer
    lies alike on the moving one, and its turns are read wrongly.

    Parameters
    ----------
    moving
        As :func:`moving_samples` gives them; without any nothing is said.
    """
    quality = [sample.quality for _, sample in moving]
    return bool(quality) and float(np.median(quality)) < COARSE


def head_reach(moving: Sequence[tuple[str, Sample]]) -> HeadReach:
    """How far the head went to each side in the slow turn and nod.

    Parameters
    ----------
    moving
        As :func:`moving_samples` gives them: some four a second, so that the end of a turn
        of 20 degrees in 8 seconds is missed by a tenth of a degree at most.
    """
    turn = [s.head_yaw_deg for name, s in moving if name == "turn_slowly"]
    nod = [s.head_pitch_deg for name, s in moving if name == "nod_slowly"]
    return HeadReach(*_ends(turn), *_ends(nod))


def _ends(angles_deg: Sequence[float]) -> tuple[float, float]:
    """Farthest to the plus side and to the minus side, both counted from 0."""
    known = [a for a in angles_deg if isfinite(a)]
    if not known:
        return float("nan"), float("nan")
    return max(max(known), 0.0), max(-min(known), 0.0)


def _off(observation: Observation, look: Step, profile: Profile) -> float:
    sample = measure(observation, profile)
    target = look.target_at(observation.time_s)
    here = np.array([sample.head_x_mm, sample.head_y_mm, sample.head_z_mm])
    gaze = (sample.gaze_yaw_deg, sample.gaze_pitch_deg)
    if target is None or not np.isfinite([*here, *gaze]).all():
        return float("nan")
    ahead = np.asarray(target) - here
    return float(angle_between_deg(direction_from_angles(*gaze), ahead / np.linalg.norm(ahead)))
