"""The person's own face as small textured patches in space, and its fit to a picture.

A template is cut from the picture of the head at rest: patches of skin and
features with a depth for each pixel. The pose in a later picture is the one
that makes the patches look alike again: direct alignment with the gradients
taken from the template (in the manner of Baker & Matthews 2004, Int J Comput
Vis 56:221), every patch freed of its own brightness and contrast. Each picture
is aligned afresh to the rest picture, so nothing drifts and nothing is smoothed.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.head.perspective import Array, Pinhole, Pose, pose_jacobian

#: A patch whose picture has less contrast than this (grey levels, standard
#: deviation) holds noise, not structure.
MIN_CONTRAST = 1.2
#: A patch seen more edge-on than this (cosine of the angle to the line of
#: sight) is left out: about 75 degrees.
MIN_COSINE = 0.26


@dataclass(frozen=True, slots=True)
class GreyCrop:
    """The face's part of a picture, grey, brought to a working size.

    Attributes
    ----------
    image
        ``(h, w)`` float32, 0 to 255.
    left_px, top_px
        Place of the crop's first pixel centre in the whole picture.
    scale
        Crop pixels for each pixel of the whole picture, at most 1.
    """

    image: NDArray[np.float32]
    left_px: float
    top_px: float
    scale: float

    def camera(self, whole: Pinhole) -> Pinhole:
        """The camera whose picture this crop is."""
        return Pinhole(
            whole.focal_px * self.scale,
            (whole.centre_x_px - self.left_px) * self.scale,
            (whole.centre_y_px - self.top_px) * self.scale,
        )


def sample_bilinear(
    image: NDArray[np.float32], points_px: Array
) -> tuple[NDArray[np.float32], NDArray[np.bool_]]:
    """Values of an image between its pixels.

    Parameters
    ----------
    image
        ``(h, w)``.
    points_px
        ``S + (2,)`` x and y.

    Returns
    -------
    values
        ``S``; the nearest edge's value outside.
    inside
        ``S``; whether the point lies within the image.
    """
    height, width = image.shape
    wanted_x = points_px[..., 0].astype(np.float32)
    wanted_y = points_px[..., 1].astype(np.float32)
    x = np.minimum(np.maximum(wanted_x, 0), np.float32(width - 1.001))
    y = np.minimum(np.maximum(wanted_y, 0), np.float32(height - 1.001))
    inside = (x == wanted_x) & (y == wanted_y)
    left, top = x.astype(np.int32), y.astype(np.int32)
    fx, fy = x - left, y - top
    index = top * width + left
    flat = image.ravel()
    a, b = flat.take(index), flat.take(index + 1)
    c, d = flat.take(index + width), flat.take(index + width + 1)
    upper = a + fx * (b - a)
    return upper + fy * (c + fx * (d - c) - upper), inside


def normalise_patches(values: NDArray[np.float32]) -> tuple[NDArray[np.float32], Array]:
    """Patches ``(k, p)`` with mean 0 and variance 1, and their contrasts ``(k,)``."""
    size = values.shape[1]
    centred = values - (values.sum(axis=1) / size)[:, None]
    contrast = np.sqrt(np.einsum("kp,kp->k", centred, centred) / size)
    return centred / np.maximum(contrast, 1e-3)[:, None], contrast.astype(np.float64)


@dataclass(frozen=True, slots=True)
class Template:
    """Patches of the head at rest.

    Body coordinates are camera axes with the origin between the eyeballs at
    rest, so the rest pose is (identity, rest position).

    Attributes
    ----------
    rest_mm
        ``(3,)`` rest position of the body's origin in camera coordinates.
    pixels_mm
        ``(k, p, 3)`` body position of every patch pixel.
    centres_mm
        ``(k, 3)`` their means.
    normals
        ``(k, 3)`` outward normals of the patches.
    values
        ``(k, p)`` normalised patches.
    gradients
        ``(k, p, 2)`` their change with a shift of one crop pixel, freed of what
        brightness and contrast take up.
    structure
        ``(k, 2, 2)`` products of the gradients: how well a shift can be seen.
    tangents_mm
        ``(k, 3, 2)`` change of the body position with one crop pixel at rest.
    """

    rest_mm: Array
    pixels_mm: NDArray[np.float32]
    centres_mm: Array
    normals: Array
    values: NDArray[np.float32]
    gradients: NDArray[np.float32]
    structure: Array
    tangents_mm: Array

    @staticmethod
    def cut(
        crop: GreyCrop, camera: Pinhole, rest_mm: Array, pixels_mm: Array, normals: Array
    ) -> Template:
        """Template from the rest picture and the body position of each patch pixel."""
        size = pixels_mm.shape[1]
        px = crop.camera(camera).project(pixels_mm + rest_mm)
        patches, contrast = normalise_patches(sample_bilinear(crop.image, px)[0])
        raw = np.stack(
            [
                sample_bilinear(crop.image, px + s)[0] - sample_bilinear(crop.image, px - s)[0]
                for s in (np.array([0.5, 0.0]), np.array([0.0, 0.5]))
            ],
            axis=-1,
        )
        raw = raw - raw.mean(axis=1, keepdims=True)
        along = np.einsum("kp,kpn->kn", patches, raw) / size
        gradients = raw - patches[:, :, None] * along[:, None, :]
        gradients /= np.maximum(contrast, 1e-3)[:, None, None]
        structure = np.einsum("kpi,kpj->kij", gradients, gradients)
        return Template(
            rest_mm,
            # Single precision: a crop pixel is known to a hundredth at best.
            pixels_mm.astype(np.float32),
            pixels_mm.mean(axis=1),
            normals,
            patches,
            gradients.astype(np.float32),
            structure,
            _tangents(px, pixels_mm),
        )


def _tangents(px: Array, pixels_mm: Array) -> Array:
    """Least-squares slope ``(k, 3, 2)`` of body positions by the pixels they are seen at."""
    u = px - px.mean(axis=1, keepdims=True)
    x = pixels_mm - pixels_mm.mean(axis=1, keepdims=True)
    spread = np.einsum("kpi,kpj->kij", u, u)
    return np.asarray(np.einsum("kpi,kpj->kij", x, u) @ np.linalg.inv(spread))


@dataclass(frozen=True, slots=True)
class PatchMatch:
    """What all patches say in one picture at one pose.

    Attributes
    ----------
    weight
        ``(k,)`` trust in each patch.
    pull
        ``(k, 2)`` gradients times the grey difference left.
    shift_by_pose
        ``(k, 2, 6)`` rest pixels by which a patch moves with a step of the pose.
    shift_by_depth
        ``(k, 2)`` the same for one millimetre farther along its ray at rest.
    misfit
        ``(k,)`` root mean square grey difference of the normalised patches.
    likeness
        Median correlation of the patches in use.
    share
        Share of the patches in use.
    good
        Share of all patches with a correlation above 0.6.
    """

    weight: Array
    pull: Array
    shift_by_pose: Array
    shift_by_depth: Array
    misfit: Array
    likeness: float
    share: float
    good: float


def match(template: Template, crop: GreyCrop, view: Pinhole, pose: Pose) -> PatchMatch:
    """Compare the patches with a picture at a pose.

    A step of the pose moves a patch in this picture; how far that is in pixels
    of the rest picture, where the gradients live, follows from the patch's
    tangent plane. (Gradients of the rest view taken as they stand would ignore
    that a turned patch slides as it moves in depth, and the fit would wander
    off at 30 degrees.)
    """
    count, size = template.values.shape
    flat = template.pixels_mm.reshape(-1, 3)
    seen = flat @ pose.rotation.T.astype(np.float32) + pose.position_mm.astype(np.float32)
    values, inside = sample_bilinear(crop.image, view.project(seen))
    patches, contrast = normalise_patches(values.reshape(count, size))
    residual = template.values - patches
    misfit = np.sqrt(np.einsum("kp,kp->k", residual, residual) / size).astype(float)
    turned = template.centres_mm @ pose.rotation.T
    in_camera = turned + pose.position_mm
    weight = _weights(template.normals @ pose.rotation.T, in_camera, misfit, contrast)
    weight *= inside.reshape(count, size).all(axis=1)

    by_pose = pose_jacobian(turned, in_camera, view.focal_px)
    by_place = by_pose[:, :, 3:] @ pose.rotation
    to_rest = _inverse_2x2(by_place @ template.tangents_mm)
    ray = template.centres_mm + template.rest_mm
    ray = ray / ray[:, 2:]
    used = weight > 0.05
    # Of two patches of unit variance: correlation = 1 - (mean square difference) / 2.
    agreement = 1.0 - 0.5 * misfit**2
    return PatchMatch(
        weight,
        np.einsum("kpi,kp->ki", template.gradients, residual).astype(float),
        to_rest @ by_pose,
        np.einsum("kij,kj->ki", to_rest @ by_place, ray),
        misfit,
        float(np.median(agreement[used])) if used.any() else 0.0,
        float(used.mean()),
        float((agreement > 0.6).mean()),
    )


def _inverse_2x2(m: Array) -> Array:
    """Inverses ``(k, 2, 2)``; a patch seen exactly edge-on gets a huge one and no weight."""
    a, b, c, d = m[:, 0, 0], m[:, 0, 1], m[:, 1, 0], m[:, 1, 1]
    determinant = a * d - b * c
    determinant = np.where(np.abs(determinant) < 1e-3, 1e-3, determinant)
    return np.stack([np.stack([d, -b], -1), np.stack([-c, a], -1)], -2) / determinant[:, None, None]


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
    template: Template, crop: GreyCrop, camera: Pinhole, start: Pose, *, rounds: int = 3
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
        Gauss-Newton steps at most; after three what is left is a few hundredths of a degree.
    """
    view = crop.camera(camera)
    pose = start
    likeness, good = 0.0, 0.0
    for _ in range(rounds):
        found = match(template, crop, view, pose)
        likeness, good = found.likeness, found.good
        if found.share * len(found.weight) < 12:
            break
        moves = found.shift_by_pose.reshape(-1, 6)
        weighted = (found.weight[:, None, None] * template.structure) @ found.shift_by_pose
        normal = moves.T @ weighted.reshape(-1, 6)
        gradient = moves.T @ (found.weight[:, None] * found.pull).reshape(-1)
        step = np.linalg.solve(normal + 1e-6 * np.diag(np.diag(normal)), gradient)
        pose = pose.moved(step)
        # The next step would be smaller still: a fiftieth of a degree and a fifth
        # of a millimetre are below the noise of any webcam.
        if np.abs(step[:3]).max() < 4e-4 and np.abs(step[3:]).max() < 0.2:
            break
    return Alignment(pose, likeness, good)


def _weights(normals: Array, in_camera: Array, misfit: Array, contrast: Array) -> Array:
    """Weight ``(k,)`` of each patch: seen from the front, with structure, and alike (Tukey)."""
    distance = np.sqrt(np.einsum("kj,kj->k", in_camera, in_camera))
    cosine = -np.einsum("kj,kj->k", normals, in_camera) / distance
    usable = (cosine > MIN_COSINE) & (contrast > MIN_CONTRAST)
    if not usable.any():
        return np.zeros(len(misfit))
    limit = 3.0 * max(float(np.median(misfit[usable])), 0.15)
    tukey = np.maximum(1.0 - (misfit / limit) ** 2, 0.0) ** 2
    return np.asarray(tukey * np.maximum(cosine, 0.0) * usable)
