"""The fit of a person's face at rest to a picture.

The pose in a later picture is the one that makes the patches of the rest
picture look alike again: direct alignment with the slopes taken mostly from the
template (in the manner of Baker & Matthews 2004, Int J Comput Vis 56:221) and
partly from the picture, every patch freed of its own brightness and contrast.
Each picture is aligned afresh to the rest picture, so nothing drifts and nothing
is smoothed.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from tracker.head import patch_loops
from tracker.head.crop import GreyCrop
from tracker.head.patch_looks import compare
from tracker.head.perspective import Array, Pinhole, Pose
from tracker.head.template import Template

#: Correlation above which a patch agrees well (this project's own choice).
AGREES = 0.6


@dataclass(frozen=True, slots=True)
class PatchMatch:
    """What all patches say in one picture at one pose.

    Attributes
    ----------
    weight
        ``(k,)`` trust in each patch.
    pull
        ``(k, 2)`` slopes times the grey difference left.
    structure
        ``(k, 2, 2)`` products of the slopes: how well a shift can be seen.
    shift_by_pose
        ``(k, 2, 6)`` rest pixels by which a patch moves with a step of the pose.
    shift_by_depth
        ``(k, 2)`` the same for one millimetre farther along its ray at rest.
    misfit
        ``(k,)`` root mean square grey difference of the normalised patches.
    """

    weight: Array
    pull: Array
    structure: Array
    shift_by_pose: Array
    shift_by_depth: Array
    misfit: Array


def match(template: Template, crop: GreyCrop, view: Pinhole, pose: Pose) -> PatchMatch:
    """Compare the patches with a picture at a pose.

    A step of the pose moves a patch in this picture; how far that is in pixels
    of the rest picture, where the gradients live, follows from the patch's
    tangent plane. (Gradients of the rest view taken as they stand would ignore
    that a turned patch slides as it moves in depth, and the fit would wander
    off at 30 degrees.)
    """
    by_pose, by_depth, to_here, cosine = patch_loops.moves(
        template.centres_mm,
        template.normals,
        template.tangents_mm,
        template.rest_mm,
        pose.rotation,
        pose.position_mm,
        view.focal_px,
    )
    pull, structure, misfit, contrast = compare(
        crop.image,
        template.pixels_mm,
        template.values,
        template.gradients,
        to_here,
        pose.rotation,
        pose.position_mm,
        view.numbers,
    )
    return PatchMatch(
        patch_loops.weights(cosine, contrast, misfit), pull, structure, by_pose, by_depth, misfit
    )


@dataclass(frozen=True, slots=True)
class Alignment:
    """A fitted pose and how well the patches agree.

    Attributes
    ----------
    pose
        From body to camera coordinates.
    likeness
        Median correlation of the patches in use with the template, -1 to 1.
    good
        Share of all patches that agree well (correlation above 0.6), 0 to 1.
    """

    pose: Pose
    likeness: float
    good: float


def align(
    template: Template, crop: GreyCrop, camera: Pinhole, start: Pose, *, rounds: int = 20
) -> Alignment:
    """Pose of the head in a picture, from a start within about 3 pixels.

    Parameters
    ----------
    template
        Patches of the person at rest.
    crop
        The picture to look in.
    camera
        Camera of the whole picture.
    start
        First guess.
    rounds
        Steps of all patches at most. Three or four do; a head turned farther than in the
        set-up may need the rest (this project's own choice).
    """
    rotation, position_mm, weight, misfit = patch_loops.settle(
        crop.image,
        crop.camera(camera).numbers,
        (
            template.pixels_mm,
            template.values,
            template.gradients,
            template.centres_mm,
            template.normals,
            template.tangents_mm,
            template.rest_mm,
        ),
        np.ascontiguousarray(start.rotation, dtype=np.float64),
        np.ascontiguousarray(start.position_mm, dtype=np.float64),
        rounds,
    )
    used = weight > patch_loops.IN_USE
    if not used.any():
        return Alignment(start, 0.0, 0.0)
    # Of two patches of variance 1: correlation = 1 - (mean square difference) / 2.
    agreement = 1.0 - 0.5 * misfit**2
    return Alignment(
        Pose(rotation, position_mm),
        float(np.median(agreement[used])),
        float((agreement > AGREES).mean()),
    )
