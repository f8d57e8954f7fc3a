"""The person's own face at rest, as small textured patches in space."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from tracker.head.crop import GreyCrop, sample_bilinear
from tracker.head.patch_looks import steepness
from tracker.head.perspective import Array, Pinhole, Pose

#: Patches that are looked at to tell how sharp a picture is (this project's own choice: 0.25 ms
#: a picture).
LOOKED_AT = 12


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
        ``(k, p)`` patches of mean 0 and variance 1.
    gradients
        ``(k, p, 2)`` their change with a shift of one crop pixel, freed of what
        brightness and contrast take up.
    tangents_mm
        ``(k, 3, 2)`` change of the body position with one crop pixel at rest.
    """

    rest_mm: Array
    pixels_mm: Array
    centres_mm: Array
    normals: Array
    values: NDArray[np.float32]
    gradients: NDArray[np.float32]
    tangents_mm: Array

    @staticmethod
    def cut(
        crop: GreyCrop, camera: Pinhole, rest_mm: Array, pixels_mm: Array, normals: Array
    ) -> Template:
        """Template from the rest picture and the body position of each patch pixel."""
        px, image = crop.camera(camera).project(pixels_mm + rest_mm), crop.image
        slopes = np.stack(
            [
                sample_bilinear(image, px + s) - sample_bilinear(image, px - s)
                for s in (np.array([0.5, 0.0]), np.array([0.0, 0.5]))
            ],
            axis=-1,
        )
        return Template(
            rest_mm,
            np.ascontiguousarray(pixels_mm, dtype=np.float64),
            pixels_mm.mean(axis=1),
            np.ascontiguousarray(normals, dtype=np.float64),
            *_cleaned(sample_bilinear(image, px), slopes),
            _tangents(px, pixels_mm),
        )

    def laid_at(self, pixels_mm: Array, pixels_px: Array) -> Template:
        """The same look on patches elsewhere in space.

        Parameters
        ----------
        pixels_mm
            ``(k, p, 3)`` body positions.
        pixels_px
            ``(k, p, 2)`` where they are seen in the rest picture.
        """
        return replace(
            self,
            pixels_mm=np.ascontiguousarray(pixels_mm, dtype=np.float64),
            centres_mm=pixels_mm.mean(axis=1),
            tangents_mm=_tangents(pixels_px, pixels_mm),
        )

    def averaged(self, views: Sequence[tuple[GreyCrop, Pose]], camera: Pinhole) -> Template:
        """The same patches with the mean look of several pictures, each at its pose.

        One picture's noise, and what a film's compression made of it, would be taken
        for skin; of a mean little of it is left.
        """
        looks, slopes = [], []
        for crop, pose in views:
            patches, contrast = normalise_patches(self._seen(crop, pose, camera, 0.0))
            looks.append(patches)
            change = self._change(crop, pose, camera)
            slopes.append(change / np.maximum(contrast, 1e-3)[:, None, None])
        values, gradients = _cleaned(np.mean(looks, axis=0), np.mean(slopes, axis=0))
        return replace(self, values=values, gradients=gradients)

    def sharpness(self, crop: GreyCrop, pose: Pose, camera: Pinhole) -> float:
        """How steep a picture's patches are against those of the template: 1 alike, 0 flat.

        Sideways or upwards, whichever is less: a head that moves smears one of them. Each
        patch is freed of its own brightness and contrast, so that less light changes little;
        the noise of a dim picture makes it larger. Of the patches some, evenly spread.

        Parameters
        ----------
        crop, pose, camera
            The picture, and about where the head is in it: a few pixels off don't matter.
        """
        some = slice(None, None, max(1, len(self.values) // LOOKED_AT))
        steep = steepness(
            crop.image,
            self.pixels_mm[some],
            self.tangents_mm[some],
            pose.rotation,
            pose.position_mm,
            crop.camera(camera).numbers,
        )
        usual = np.sqrt((self.gradients[some] ** 2).mean(axis=1))
        return float(np.median(steep / np.maximum(usual, 1e-6), axis=0).min())

    def _change(self, crop: GreyCrop, pose: Pose, camera: Pinhole) -> Array:
        """Change ``(k, p, 2)`` of the grey values with a shift of one crop pixel at rest."""
        steps = [0.5 * self.tangents_mm[:, None, :, axis] for axis in (0, 1)]
        seen = [
            self._seen(crop, pose, camera, s) - self._seen(crop, pose, camera, -s) for s in steps
        ]
        return np.stack(seen, axis=-1)

    def _seen(
        self, crop: GreyCrop, pose: Pose, camera: Pinhole, aside_mm: Array | float
    ) -> NDArray[np.float32]:
        """Grey values ``(k, p)`` of the patch pixels, or of places beside them."""
        seen = pose.apply(self.pixels_mm + aside_mm)
        return sample_bilinear(crop.image, crop.camera(camera).project(seen))


def _cleaned(
    values: NDArray[np.float32], slopes: Array
) -> tuple[NDArray[np.float32], NDArray[np.float32]]:
    """Patches, and their slopes freed of what brightness and contrast take up.

    From grey values ``(k, p)`` and their change with a shift of one pixel ``(k, p, 2)``.
    """
    patches, contrast = normalise_patches(values)
    slopes = slopes - slopes.mean(axis=1, keepdims=True)
    along = np.einsum("kp,kpn->kn", patches, slopes) / patches.shape[1]
    gradients = slopes - patches[:, :, None] * along[:, None, :]
    gradients = gradients / np.maximum(contrast, 1e-3)[:, None, None]
    return patches.astype(np.float32), gradients.astype(np.float32)


def normalise_patches(values: NDArray[np.float32]) -> tuple[NDArray[np.float32], Array]:
    """Patches ``(k, p)`` with mean 0 and variance 1, and their contrasts ``(k,)``."""
    centred = values - values.mean(axis=1, keepdims=True)
    contrast = np.sqrt((centred**2).mean(axis=1))
    divisor: NDArray[np.float32] = np.maximum(contrast, 1e-3)
    return centred / divisor[:, None], contrast.astype(np.float64)


def _tangents(px: Array, pixels_mm: Array) -> Array:
    """Least-squares slope ``(k, 3, 2)`` of body positions by the pixels they are seen at."""
    u = px - px.mean(axis=1, keepdims=True)
    x = pixels_mm - pixels_mm.mean(axis=1, keepdims=True)
    spread = np.einsum("kpi,kpj->kij", u, u)
    return np.asarray(np.einsum("kpi,kpj->kij", x, u) @ np.linalg.inv(spread))
