"""The person's own template: how the patches of the face look, and how deep they lie.

One picture gives the first look, and the depths are fitted with it. Then the look
is the mean of many pictures, and the depths are fitted again: the noise of one
picture, and what a film's compression made of it, would else be taken for skin
(on a rendered nod in dim light, filmed coarsely, pitch was 2.3 degrees off with
one look, 1.3 with two; .30 and .24 without a film's compression).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from calibration.face_depth import body_pixels, fit_depth
from calibration.face_surface import Surface
from tracker.errors import InputError
from tracker.head.alignment import align
from tracker.head.crop import GreyCrop
from tracker.head.perspective import Array, Pinhole, Pose, vector_of_rotation
from tracker.head.template import Template

#: Frames that the depth of the face is fitted on (this project's own choice: it bounds how
#: long the fit takes).
DEPTH_FRAMES = 48
#: Depth is told by how a face shifts in itself as it turns. Pictures of a still head tell
#: nothing of it, and the wander of their poses reads as a face that is flat: on a rendered head
#: filmed still for a second the fit took nine tenths of the relief away, and 6 cm aside then
#: read as 8 degrees of yaw. So this many pictures have to be turned so far from rest: far beyond
#: that wander (.3 degrees) and short of any set-up's turn (this project's own choice).
TURNED_LEAST_DEG, TURNED_LEAST = 8.0, 8
#: The look is averaged over at most 60 pictures in which the head is this near to rest
#: and the patches are this much alike: sixty leave an eighth of the noise, and within
#: 6 degrees the skin hardly looks different (arithmetic for the number; the rest is this project's
#: own choice).
AVERAGE_MOST, AVERAGE_WITHIN_DEG, AVERAGE_ALIKE = 60, 6.0, 0.5
#: A film repeats a still picture, its noise with it: the mean is taken over pictures of
#: a moving head where there are so many of them (this project's own choice).
AVERAGE_LEAST = 8
#: Fewer textured places than this can't carry six degrees of freedom and a person's depth (this
#: project's own choice).
MIN_PATCHES = 30


@dataclass(frozen=True, slots=True)
class View:
    """One picture of the set-up.

    Attributes
    ----------
    crop
        The face.
    pose
        From rest, as far as it is known.
    moving
        Whether the head was asked to move.
    """

    crop: GreyCrop
    pose: Pose
    moving: bool


def own_template(
    surface: Surface,
    rest_crop: GreyCrop,
    camera: Pinhole,
    rest_mm: Array,
    views: Sequence[View],
) -> Template:
    """Template of a person from the rest picture and the set-up's other pictures.

    Where the head did not turn in them the depths stay those of the generic face.

    Parameters
    ----------
    surface
        Patches on the rest picture with generic depths.
    rest_crop, camera, rest_mm
        The rest picture, the camera, and the rest position of the body's origin.
    views
        All pictures of the set-up in the order of time.

    Raises
    ------
    InputError
        When the face shows too little structure.
    """
    if len(surface.depth_mm) < MIN_PATCHES:
        raise InputError("the face is too dark or too blurred to be measured; more light helps")
    view = rest_crop.camera(camera)
    pixels = body_pixels(surface, np.zeros(len(surface.depth_mm)), view, rest_mm)
    look = Template.cut(rest_crop, camera, rest_mm, pixels, surface.normals)
    picked = [(v.crop, v.pose) for v in _spread(views, DEPTH_FRAMES)]
    if not _turned(look, camera, picked):
        return _averaged(look, camera, views)
    first = fit_depth(surface, look, view, camera, picked)
    frames = [(crop, pose) for (crop, _), pose in zip(picked, first.poses, strict=True)]
    look = _averaged(first.template, camera, views)
    second = fit_depth(surface, look, view, camera, frames, change_mm=first.change_mm)
    return _averaged(second.template, camera, views)


def _turned(look: Template, camera: Pinhole, frames: Sequence[tuple[GreyCrop, Pose]]) -> bool:
    """Whether the head turned or nodded far enough to tell its depth."""
    angles = [_angle_deg(align(look, crop, camera, pose).pose) for crop, pose in frames]
    return sum(angle >= TURNED_LEAST_DEG for angle in angles) >= TURNED_LEAST


def _angle_deg(pose: Pose) -> float:
    """How far a head is turned from rest, in any direction."""
    return float(np.degrees(np.linalg.norm(vector_of_rotation(pose.rotation))))


def _averaged(template: Template, camera: Pinhole, views: Sequence[View]) -> Template:
    """The template with the mean look of the pictures in which the head is near its rest."""
    moving = _near_rest(template, camera, [v for v in views if v.moving])
    near = moving if len(moving) >= AVERAGE_LEAST else _near_rest(template, camera, views[::3])
    return template.averaged(near, camera) if near else template


def _near_rest(
    template: Template, camera: Pinhole, views: Sequence[View]
) -> list[tuple[GreyCrop, Pose]]:
    """Well-aligned pictures near rest, each with its pose, evenly spread over the set-up."""
    near = []
    for view in views:
        found = align(template, view.crop, camera, view.pose)
        if _angle_deg(found.pose) < AVERAGE_WITHIN_DEG and found.likeness > AVERAGE_ALIKE:
            near.append((view.crop, found.pose))
    picks = np.linspace(0, len(near) - 1, min(len(near), AVERAGE_MOST)).astype(int)
    return [near[k] for k in picks]


def _spread(views: Sequence[View], count: int) -> list[View]:
    """Pictures for the depth: two thirds of a moving head, evenly spread over time."""
    moving = [k for k, v in enumerate(views) if v.moving]
    still = [k for k, v in enumerate(views) if not v.moving]
    share = min(len(moving), (2 * count) // 3)
    picks = [
        group[i]
        for group, n in ((moving, share), (still, min(len(still), count - share)))
        for i in np.linspace(0, len(group) - 1, n).astype(int)
    ]
    return [views[k] for k in sorted(picks)]
