"""The same person at another time: a kept profile, with the rest taken anew.

The shape and the look of the face and the way the eyes are read stay; where the head is
at rest and how the axes lie is measured afresh, over a short look and a slow turn. That
it is the same person, in light that the kept pictures still fit, is not believed but
seen: in how alike the patches are, and in looks at targets.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from calibration.axes import make_rest_frame
from calibration.check import GazeCheck
from calibration.placing import on_screen, placed
from tracker.errors import InputError
from tracker.exercises.watchers.gaze import ERRORS_APART, OFF_TARGET_MOST_DEG
from tracker.head.alignment import Alignment, align
from tracker.head.perspective import Array
from tracker.head.shape import pose_of_landmarks
from tracker.measure import rest_pose
from tracker.profile import Profile
from tracker.rotation import angles_from_direction
from tracker.session.derive import BEYOND_DEG
from tracker.session.stage import Step
from tracker.vision.observer import Observation

#: Share of the patches that have to agree well: else the kept pictures are not those of this
#: face in this light. On rendered heads .99 and more for the same person in the same light,
#: from another place too; .82 at most for others, .78 in a light from the other side.
LEAST_GOOD = 0.9
#: Nearer or farther than the kept set-up by more than this, the pictures are too coarse or
#: too fine for each other, and the perspective is another (this project's own choice).
NEAREST, FARTHEST = 0.75, 1.35
#: Frames of a still face that the rest needs (this project's own choice).
LEAST_FRAMES = 20
#: A kept gaze model that reads the targets worse than this is given up: no verdict on the
#: gaze could rest on it. On a rendered person it read .4 degrees off from another place, 2.4
#: in another light, other people's eyes 1.4 and more.
MOST_CHECK_DEG = OFF_TARGET_MOST_DEG / ERRORS_APART
#: What to do, said with every reason.
_DO = "do the whole set-up"


def rest_anew(
    kept: Profile, observations: Sequence[Observation], steps: Sequence[Step]
) -> tuple[Profile, list[Step]]:
    """The kept profile with the rest frame of now, and the steps with their targets in it.

    Parameters
    ----------
    kept
        The profile.
    observations
        Those of the short set-up.
    steps
        Its steps: rest and looks, and a slow turn where there is one.

    Raises
    ------
    InputError
        If it doesn't fit: another picture size, another face or light, another place.
    """
    if not observations or (observations[0].width_px, observations[0].height_px) != (
        kept.width_px,
        kept.height_px,
    ):
        raise InputError(f"this is another camera than that of the kept set-up; {_DO}")
    still = _aligned(kept, observations, [s for s in steps if s.step in ("rest", "look")])
    if len(still) < LEAST_FRAMES:
        raise InputError(f"the face was not seen for long enough; {_DO}")
    if float(np.median([a.good for a in still])) < LEAST_GOOD:
        raise InputError(f"the kept set-up does not fit this face or this light; {_DO}")
    turn = _aligned(kept, observations, [s for s in steps if s.step == "turn_slowly"])
    ahead = next((p for s in steps if (p := on_screen(s)) is not None), None)
    before = kept.rest
    found = make_rest_frame(
        [a.pose for a in still],
        [a.pose for a in turn],
        [],
        ahead,
        kept.eyes_mm[0] - kept.eyes_mm[1],
    )
    away = float(found.origin_mm[2] / before.origin_mm[2])
    if not NEAREST <= away <= FARTHEST:
        near = "nearer to" if away < 1 else "farther from"
        raise InputError(f"you sit much {near} the camera than in the kept set-up; {_DO}")
    since = found.turned @ before.turned.T
    axes = found.axes if ahead is not None else _facing(found.axes, since @ before.axes)
    rest = replace(found, axes=axes, neck_mm=since @ before.neck_mm)
    gaze = kept.gaze
    if gaze is not None:
        # The eyes were learnt in the axes of then, which have turned with the head.
        gaze = replace(gaze, turned=axes.T @ since @ before.axes @ gaze.turned)
    return replace(kept, rest=rest, gaze=gaze), [placed(s, rest) for s in steps]


def reads_marks(kept: Profile, marks: Sequence[tuple[float, float, float]]) -> bool:
    """Whether a kept set-up has taught the eyes to look at marks on a wall.

    Parameters
    ----------
    marks
        Of each how far right of the camera and above it, and how far from the eyes, in mm;
        the person is taken to sit before the camera as then.
    """
    if kept.gaze is None:
        return False
    right, up, _ = kept.rest.camera_mm
    for aside, above, away in marks:
        angles = angles_from_direction(np.array([right + aside, up + above, away]))
        for angle, (low, high) in zip(angles, kept.gaze.reach, strict=True):
            if not low - BEYOND_DEG <= float(angle) <= high + BEYOND_DEG:
                return False
    return True


def still_reads(check: GazeCheck | None) -> bool:
    """Whether a kept gaze model reads the looks of now well enough."""
    return check is not None and check.error_deg <= MOST_CHECK_DEG


def _facing(axes: Array, before: Array) -> Array:
    """Axes that keep their up, and face where the axes of before do, moved with the head.

    Where no target's place on the screen is known, a turn alone doesn't tell what is ahead.
    """
    up = axes[:, 1]
    right = before[:, 0] - (before[:, 0] @ up) * up
    right = right / np.linalg.norm(right)
    return np.stack([right, up, np.cross(up, right)], axis=1)


def _aligned(
    kept: Profile, observations: Sequence[Observation], steps: Sequence[Step]
) -> list[Alignment]:
    """Alignments of the observations in some steps with the kept patches."""
    out = []
    for o in observations:
        if o.face is None or o.crop is None:
            continue
        if not any(s.from_s <= o.time_s < s.to_s for s in steps):
            continue
        start, _ = pose_of_landmarks(kept.shape, o.face.points_px, kept.camera, rest_pose(kept))
        out.append(align(kept.template, o.crop, kept.camera, start))
    return out
