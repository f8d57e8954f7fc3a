"""How the parts of a set-up came out, from what was seen in them."""

from __future__ import annotations

from collections.abc import Sequence
from math import hypot, isfinite, nan

import numpy as np

from calibration.check import GazeCheck, HeadReach
from calibration.parts import STILL, PartFound, on_wall, part_of, parts_in
from tracker.measure import measure
from tracker.profile import Profile
from tracker.sample import Sample
from tracker.session.stage import Step
from tracker.vision.observer import Observation

#: Frames of a part that are measured, evenly spread: enough for a median and an extreme
#: (this project's own choice).
LOOKED_AT = 30
#: A look is seen if the face was there in so much of it (this project's own choice).
_LOOK_SEEN = 0.5


def seen_in(observations: Sequence[Observation], steps: Sequence[Step]) -> list[Observation]:
    """The observations that lie in some steps."""
    return [o for o in observations if any(s.from_s <= o.time_s < s.to_s for s in steps)]


def share_seen(observations: Sequence[Observation]) -> float:
    """Share of observations with a face; 0 of none."""
    return sum(o.face is not None for o in observations) / max(len(observations), 1)


def some_samples(profile: Profile, observations: Sequence[Observation]) -> list[Sample]:
    """Samples of some observations with a face, evenly spread."""
    faces = [o for o in observations if o.face is not None]
    every = max(1, len(faces) // LOOKED_AT)
    return [measure(o, profile) for o in faces[::every]]


def wander_deg(samples: Sequence[Sample]) -> float:
    """How far a head that should be still strayed from its middle; NaN without a sample."""
    rows = [(s.head_yaw_deg, s.head_pitch_deg) for s in samples if isfinite(s.head_yaw_deg)]
    if not rows:
        return nan
    yaw, pitch = (float(v) for v in np.median(rows, axis=0))
    return float(np.percentile([hypot(y - yaw, p - pitch) for y, p in rows], 95))


def find_parts(
    profile: Profile,
    observations: Sequence[Observation],
    steps: Sequence[Step],
    check: GazeCheck | None,
    reach: HeadReach,
) -> tuple[PartFound, ...]:
    """How each part of a set-up came out.

    Parameters
    ----------
    profile
        The person as fitted.
    observations
        Those of the set-up.
    steps
        Its steps.
    check, reach
        What was found on the looks that were kept from the fit, and in the moving parts.
    """
    ends = {"turn": (reach.right, reach.left), "nod": (reach.up, reach.down)}
    found = []
    for part in parts_in(steps):
        own = [s for s in steps if part_of(s) == part]
        seen = seen_in(observations, own)
        looked = [s for s in own if s.step == "look"]
        if part == "check":
            # The error is that of the screen; marks on the wall have a check of their own.
            looked = [s for s in looked if on_wall(s) is None]
        looks = [share_seen(seen_in(seen, [s])) for s in looked]
        error = nan
        if part == "looks" and profile.gaze is not None:
            error = profile.gaze.error_deg
        elif part == "check" and check is not None:
            error = check.error_deg
        plus, minus = ends.get(part, (nan, nan))
        found.append(
            PartFound(
                part,
                share_seen(seen),
                wander_deg(some_samples(profile, seen)) if part in STILL else nan,
                error,
                len(looks),
                sum(share >= _LOOK_SEEN for share in looks),
                plus,
                minus,
            )
        )
    return tuple(found)
