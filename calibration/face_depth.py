"""Fit the depth of a person's face over a slow turn and nod.

The generic face is the wrong depth for nearly everybody, and a wrong depth
reads 20 degrees as 17 or as 22. Poses of some dozens of set-up frames and one
change of depth for each patch are fitted together so that all patches look
alike in all frames: a photometric bundle adjustment (in the manner of Engel,
Koltun & Cremers 2018, IEEE TPAMI 40:611), with a prior that keeps neighbours
together and allows a flatter or a deeper face.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from calibration.face_surface import Surface
from tracker.head.alignment import match
from tracker.head.crop import GreyCrop
from tracker.head.perspective import Array, Pinhole, Pose
from tracker.head.template import Template

#: Prior of the depth change: smooth part and its reach, independent part, and
#: the share by which the whole relief may be flatter or deeper (this project's own choice of how
#: far a face may differ from the mean one; not taken from measurements of faces).
SMOOTH_MM, REACH, INDEPENDENT_MM, RELIEF_SHARE = 5.0, 0.25, 1.0, 0.3
#: Firmness with which the mean depth is held, per mm^2 and patch (this project's own choice: the
#: mean and the distance can't be told apart, so that it has to be held by far more than the rest).
MEAN_PIN = 10.0
#: Standard deviation of a normalised patch pixel that agrees (this project's own choice: it is the
#: weight of the pictures against the priors above).
PIXEL_SPREAD = 0.25


@dataclass(frozen=True, slots=True)
class DepthFit:
    """A personal template, its change of depth, the frames' poses, and the misfit left."""

    template: Template
    change_mm: Array
    poses: list[Pose]
    misfit: float


def body_pixels(surface: Surface, change_mm: Array, view: Pinhole, rest_mm: Array) -> Array:
    """Body positions ``(k, p, 3)`` of patch pixels after a change of depth ``(k,)``."""
    rays = view.rays(surface.pixels_px)
    return rays * (surface.depth_mm + change_mm[:, None])[..., None] - rest_mm


def fit_depth(
    surface: Surface,
    look: Template,
    view: Pinhole,
    camera: Pinhole,
    frames: Sequence[tuple[GreyCrop, Pose]],
    *,
    change_mm: Array | None = None,
    rounds: int = 30,
) -> DepthFit:
    """Fit patch depths and frame poses together.

    Parameters
    ----------
    surface
        Patches on the rest picture with generic depths.
    look
        What the patches look like; where they lie in space is fitted.
    view, camera
        The camera of the rest picture's crop, and of the whole picture.
    frames
        Crops of the set-up with a first pose each (rest pose = identity).
    change_mm
        ``(k,)`` first change of depth; none when left out.
    rounds
        Gauss-Newton steps (this project's own choice).
    """
    count = len(surface.depth_mm)
    change = np.zeros(count) if change_mm is None else change_mm
    # A face moved to or from the camera as a whole can't be told from a shift of
    # every frame's position, so the mean stays where the generic face has it.
    stiffness = np.linalg.inv(_prior(surface, view)) + MEAN_PIN / count
    poses = [start for _, start in frames]
    misfit = np.inf
    for _ in range(rounds):
        pixels = body_pixels(surface, change, view, look.rest_mm)
        template = look.laid_at(pixels, surface.pixels_px)
        blocks = [
            _frame_terms(template, crop, camera, pose)
            for (crop, _), pose in zip(frames, poses, strict=True)
        ]
        misfit = float(np.mean([b.misfit for b in blocks]))
        steps, depth_step = _solve(blocks, stiffness, change)
        poses = [pose.moved(step) for pose, step in zip(poses, steps, strict=True)]
        change = change + depth_step
        if np.abs(depth_step).max() < 0.02:
            break
    pixels = body_pixels(surface, change, view, look.rest_mm)
    return DepthFit(look.laid_at(pixels, surface.pixels_px), change, poses, misfit)


@dataclass(frozen=True, slots=True)
class _Terms:
    """Normal equations of one frame: pose by pose, pose by depth, depth by depth."""

    pose_pose: Array
    pose_depth: Array
    depth_depth: Array
    pose_left: Array
    depth_left: Array
    misfit: float


def _frame_terms(template: Template, crop: GreyCrop, camera: Pinhole, pose: Pose) -> _Terms:
    found = match(template, crop, crop.camera(camera), pose)
    weight = found.weight / PIXEL_SPREAD**2
    weighted = weight[:, None, None] * found.structure
    moves = np.concatenate([found.shift_by_pose, found.shift_by_depth[:, :, None]], axis=2)
    square = moves.transpose(0, 2, 1) @ weighted @ moves
    left = np.einsum("kia,ki->ka", moves, weight[:, None] * found.pull)
    seen = found.weight > 0.05
    return _Terms(
        square[:, :6, :6].sum(axis=0),
        square[:, :6, 6].T,
        square[:, 6, 6],
        left[:, :6].sum(axis=0),
        left[:, 6],
        float(np.median(found.misfit[seen])) if seen.any() else 1.0,
    )


def _prior(surface: Surface, view: Pinhole) -> Array:
    """Covariance ``(k, k)`` in mm^2 of the depth change of the patches."""
    centres = surface.pixels_px.mean(axis=1)
    depth = surface.depth_mm.mean(axis=1)
    in_mm = centres * float(np.median(depth)) / view.focal_px
    apart = ((in_mm[:, None] - in_mm[None]) ** 2).sum(axis=-1)
    reach_mm = REACH * 63.0
    relief = depth - depth.mean()
    return np.asarray(
        SMOOTH_MM**2 * np.exp(-0.5 * apart / reach_mm**2)
        + INDEPENDENT_MM**2 * np.eye(len(depth))
        + RELIEF_SHARE**2 * np.outer(relief, relief)
    )


def _solve(blocks: list[_Terms], stiffness: Array, change: Array) -> tuple[list[Array], Array]:
    """Steps of all poses and depths, the poses eliminated first (Schur complement)."""
    left_side = stiffness + np.diag(np.sum([b.depth_depth for b in blocks], axis=0))
    right_side = np.sum([b.depth_left for b in blocks], axis=0) - stiffness @ change
    inverses: list[Array] = []
    for b in blocks:
        damped = b.pose_pose + np.diag(1e-6 * np.diag(b.pose_pose) + 1e-9)
        inverse = np.linalg.inv(damped)
        inverses.append(inverse)
        left_side = left_side - b.pose_depth.T @ inverse @ b.pose_depth
        right_side = right_side - b.pose_depth.T @ inverse @ b.pose_left
    depth_step = np.linalg.solve(left_side, right_side)
    steps: list[Array] = [
        inverse @ (b.pose_left - b.pose_depth @ depth_step)
        for b, inverse in zip(blocks, inverses, strict=True)
    ]
    return steps, depth_step
