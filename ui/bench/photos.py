"""``turnpost bench photos FILE``: head angles of single photos, of people with no set-up.

The file (:mod:`ui.bench.photos_file`) holds landmarks and labels alone, no pictures.

Labels of photos are themselves fitted to pictures, and err. How much of an error is theirs
shows the row of a regression that is taught the very labels it is judged by, on other
photos of the same file: how much this one regression leaves. Another might leave less.
"""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from tracker.errors import InputError
from tracker.head.facing import facing_of_landmarks
from tracker.head.shape import FaceShape, generic_shape
from tracker.rotation import angles_from_matrix
from tracker.vision.models import canonical_face_triangles, canonical_face_vertices_cm
from ui.bench.photos_file import Photos, read_photos

Array = NDArray[np.float64]
Mask = NDArray[np.bool_]
#: Photos within these angles are counted: the envelope of the accuracy statement.
MOST_DEG = np.array([45.0, 35.0, 35.0])
#: The regression that is taught the labels: how many directions in which landmarks differ,
#: into how many parts the photos are dealt, how strongly it is held back, and its lot.
COMPONENTS, FOLDS, RIDGE, LOT = 30, 10, 10.0, 0
#: Fewer photos than this teach nothing.
MIN_TAUGHT = 10 * COMPONENTS
#: The library's axes (x to the face's left, y up, z to the camera) in camera axes.
_LIBRARY = np.diag([1.0, -1.0, -1.0])


def photos_table(path: Path) -> Iterable[str]:
    """Lines of the table.

    Raises
    ------
    InputError
        If the file can't be read or is none of this kind.
    """
    photos = read_photos(path)
    truth = photos.truth_deg
    counted = (np.abs(truth) < MOST_DEG).all(axis=1)
    if not counted.any():
        raise InputError(f"{path}: no photo lies within 45, 35 and 35 degrees")
    yield from (f"left out: {reason}" for reason in photos.left_out)
    yield (
        f"{path.name}: {counted.sum()} of {len(truth)} photos within yaw 45, pitch 35, roll 35 "
        "degrees; no set-up; mean absolute error in degrees, slope, bias"
    )
    yield f"{'':18}{'yaw':>21}{'pitch':>21}{'roll':>21}"
    for name, read in _rows(photos, counted):
        parts = (_row(read[:, k], truth[counted, k]) for k in range(3))
        yield f"{name:18}" + "".join(f"{part:>21}" for part in parts)


def _rows(photos: Photos, counted: Mask) -> Iterable[tuple[str, Array]]:
    """What reads the photos that are counted, and the angles ``(n, 3)`` that it reads."""
    landmarks, sizes = photos.landmarks[counted], photos.sizes[counted]
    shape = generic_shape(canonical_face_vertices_cm(), canonical_face_triangles())
    yield "program", _facing(shape, landmarks, sizes)
    if photos.matrix is not None:
        yield "library's matrix", _angles(_LIBRARY @ photos.matrix[counted, :3, :3] @ _LIBRARY)
    if len(landmarks) >= MIN_TAUGHT:
        yield "taught the labels", _taught(landmarks, photos.truth_deg[counted], sizes)


def _row(read: Array, true: Array) -> str:
    off = read - true
    # Labels that are all alike have no slope.
    slope = f"{np.polyfit(true, read, 1)[0]:.3f}" if np.ptp(true) > 1.0 else "-"
    return f"{np.abs(off).mean():.2f} {slope} {off.mean():+.2f}"


def _facing(shape: FaceShape, landmarks: Array, sizes: Array) -> Array:
    """Angles ``(n, 3)`` that the program reads."""
    turned = []
    for points, (height, width) in zip(landmarks, sizes, strict=True):
        seen = points * [width, height, width]
        turned.append(facing_of_landmarks(shape, seen[:, :2], seen[:, 2]))
    return _angles(np.stack(turned))


def _taught(landmarks: Array, truth: Array, sizes: Array) -> Array:
    """Angles ``(n, 3)`` that a ridge regression reads, taught the labels of the other photos.

    Not a way to measure: it shows how well this regression gets at these labels.
    """
    scale = np.column_stack([sizes[:, 1], sizes[:, 0], sizes[:, 1]])
    points = landmarks[:, :468] * scale[:, None]
    points = points - points.mean(axis=1, keepdims=True)
    points = (points / np.sqrt((points**2).sum(axis=(1, 2), keepdims=True))).reshape(len(truth), -1)
    read = np.empty_like(truth)
    for left_out in np.array_split(np.random.default_rng(LOT).permutation(len(truth)), FOLDS):
        others = np.setdiff1d(np.arange(len(truth)), left_out)
        middle = points[others].mean(axis=0)
        axes = np.linalg.svd(points[others] - middle, full_matrices=False)[2][:COMPONENTS]
        parts = (points - middle) @ axes.T
        spread = parts[others].std(axis=0)
        # Photos that are all alike differ in no direction.
        parts = parts / np.where(spread > 0, spread, 1.0)
        usual = truth[others].mean(axis=0)
        squares = parts[others].T @ parts[others] + RIDGE * np.eye(COMPONENTS)
        weights = np.linalg.solve(squares, parts[others].T @ (truth[others] - usual))
        read[left_out] = parts[left_out] @ weights + usual
    return read


def _angles(rotations: Array) -> Array:
    # Seen from a face that looks into the camera, right, up and forward are the
    # camera's left, up and back: minus its axes.
    axes = -np.eye(3)
    return np.array([angles_from_matrix(axes.T @ r @ axes) for r in rotations])
