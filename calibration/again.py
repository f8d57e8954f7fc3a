"""One part of a set-up done again: whether it may take the place of the old one.

The other parts stay as they were seen. That holds only as long as the person sits as before;
and a new fit takes the place of the old one only where it is no worse.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite, nan

import numpy as np

from calibration.check import GazeCheck
from calibration.parts import STILL, part_of
from calibration.parts_found import seen_in, share_seen, some_samples
from calibration.report import SetupReport
from tracker.profile import Profile
from tracker.session.stage import Step
from tracker.vision.observer import Observation

#: Who sits farther than this from the place of the other parts, by the point about which the
#: head turns, or holds the still head so much otherwise, has moved the seat or sits another
#: way. A hand is some 80 mm broad; a head that is asked twice to be still comes back within a
#: degree or two (common practice).
MOVED_MM, MOVED_DEG = 50.0, 5.0
#: A part of which less than this was seen is no better than none (common practice).
LEAST_SEEN = 0.5
#: A gaze that is read worse by more than this on the same looks is worse; less is chance (the
#: error of two looks, by the frames that happen to be in them) (common practice).
WORSE_DEG = 0.3
#: A turn or nod that ends so much sooner, on the side where it ends first, teaches less (common
#: practice).
SHORTER_DEG = 2.0


def hindrance(old: Profile, observations: Sequence[Observation], steps: Sequence[Step]) -> str:
    """Why a part that was done again can't be put beside the others; empty where it can.

    Parameters
    ----------
    old
        The person as fitted before.
    observations
        Those of the part.
    steps
        Its new steps.
    """
    seen = seen_in(observations, steps)
    if share_seen(seen) < LEAST_SEEN:
        return "unseen"
    samples = [s for s in some_samples(old, seen) if isfinite(s.head_yaw_deg)]
    if not samples:
        return "unseen"
    neck = np.median([(s.neck_x_mm, s.neck_y_mm, s.neck_z_mm) for s in samples], axis=0)
    if np.linalg.norm(neck) > MOVED_MM:
        return "moved"
    still = all(part_of(s) in STILL for s in steps)
    held = np.median([(s.head_yaw_deg, s.head_pitch_deg, s.head_roll_deg) for s in samples], axis=0)
    return "moved" if still and np.abs(held).max() > MOVED_DEG else ""


def worse(old: SetupReport, new: SetupReport, part: str) -> str:
    """In what a set-up with one part done again is worse than before; empty where it isn't.

    Looks that were kept from the fit are the yardstick of the others. They themselves are none:
    what was seen on them last counts, better or not, for to choose the better one would be to
    praise oneself.
    """
    if part == "check":
        return ""
    if old.ok and not new.ok:
        return "eyes"
    if _read_worse(old.check, new.check) or _read_worse(old.wall_check, new.wall_check):
        return "eyes"
    if "coarse_picture" in new.findings and "coarse_picture" not in old.findings:
        return "coarse"
    if part in ("turn", "nod"):
        return "less_far" if _far(new, part) < _far(old, part) - SHORTER_DEG else ""
    return ""


def _read_worse(old: GazeCheck | None, new: GazeCheck | None) -> bool:
    """Whether the looks that were kept from the fit are read worse, or no longer at all."""
    if old is None or new is None or not isfinite(old.error_deg):
        return False
    # Eyes that are no longer believed at a point are read worse there, whatever the others show.
    return new.looks < old.looks or not new.error_deg <= old.error_deg + WORSE_DEG


def _far(report: SetupReport, part: str) -> float:
    """How far the head went in a turn or nod, in degrees, on the side where it went less far."""
    found = next((p for p in report.parts if p.part == part), None)
    return nan if found is None else min(found.plus_deg, found.minus_deg)
