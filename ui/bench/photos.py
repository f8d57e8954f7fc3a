"""``turnpost bench photos FILE``: head angles of single photos, of people with no set-up.

The file holds landmarks and labels alone, no pictures: ``landmarks`` ``(n, 478, 3)``, x
and y as shares of the picture's width and height and z in shares of its width,
``truth_yaw_pitch_roll_deg`` ``(n, 3)``, ``image_size`` ``(n, 2)`` height and width in
pixels, and, for comparison, ``matrix`` ``(n, 4, 4)``, the library's own transformation.

Labels of photos are themselves fitted to pictures, and err. How much of an error is theirs
shows the row of a regression that is taught the very labels it is judged by, on other
photos of the same file: how much this one regression leaves. Another might leave less.
"""

from __future__ import annotations

import tokenize
import zipfile
import zlib
from collections.abc import Iterable
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from tracker.errors import InputError, system_reason
from tracker.head.facing import facing_of_landmarks
from tracker.head.shape import FaceShape, generic_shape
from tracker.inputs import open_file
from tracker.rotation import angles_from_matrix
from tracker.vision.models import canonical_face_triangles, canonical_face_vertices_cm

Array = NDArray[np.float64]
#: What reading damaged arrays raises; a header that is never closed fails in the tokenizer.
_DAMAGED = (
    ValueError,
    TypeError,
    EOFError,
    MemoryError,
    RuntimeError,
    tokenize.TokenError,
    zipfile.BadZipFile,
    zlib.error,
)
#: Photos within these angles are counted: the envelope of the accuracy statement.
MOST_DEG = np.array([45.0, 35.0, 35.0])
MAX_UNPACKED_BYTES = 1_000_000_000
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
    landmarks, truth, sizes, matrix = _read(path)
    counted = (np.abs(truth) < MOST_DEG).all(axis=1)
    if not counted.any():
        raise InputError(f"{path}: no photo lies within 45, 35 and 35 degrees")
    shape = generic_shape(canonical_face_vertices_cm(), canonical_face_triangles())
    yield (
        f"{path.name}: {counted.sum()} of {len(truth)} photos within yaw 45, pitch 35, roll 35 "
        "degrees; no set-up; mean absolute error in degrees, slope, bias"
    )
    yield f"{'':18}{'yaw':>21}{'pitch':>21}{'roll':>21}"
    rows = [("program", _facing(shape, landmarks[counted], sizes[counted]))]
    if matrix is not None:
        turned = _LIBRARY @ matrix[counted, :3, :3] @ _LIBRARY
        rows.append(("library's matrix", _angles(turned)))
    if counted.sum() >= MIN_TAUGHT:
        taught = _taught(landmarks[counted], truth[counted], sizes[counted])
        rows.append(("taught the labels", taught))
    for name, read in rows:
        parts = (_row(read[:, k], truth[counted, k]) for k in range(3))
        yield f"{name:18}" + "".join(f"{part:>21}" for part in parts)


def _row(read: Array, true: Array) -> str:
    off = read - true
    slope = float(np.polyfit(true, read, 1)[0]) if np.ptp(true) > 1.0 else float("nan")
    return f"{np.abs(off).mean():.2f} {slope:.3f} {off.mean():+.2f}"


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
        parts = parts / parts[others].std(axis=0)
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


def _read(path: Path) -> tuple[Array, Array, Array, Array | None]:
    try:
        with open_file(path) as content:
            with zipfile.ZipFile(content) as packed:
                # What it unpacks to is bounded, whatever its own size.
                if sum(part.file_size for part in packed.infolist()) > MAX_UNPACKED_BYTES:
                    raise InputError(f"{path}: too large for landmarks of photos")
            content.seek(0)
            with np.load(content, allow_pickle=False) as file:
                held = {name: np.asarray(file[name], dtype=np.float64) for name in file.files}
    except OSError as error:
        raise InputError(f"{path}: can't be read ({system_reason(error)})") from error
    except _DAMAGED as error:
        raise InputError(f"{path}: is no file of landmarks of photos") from error
    wanted = {"landmarks": (478, 3), "truth_yaw_pitch_roll_deg": (3,), "image_size": (2,)}
    count = len(held.get("landmarks", ()))
    for name, shape in wanted.items():
        if name not in held or held[name].shape != (count, *shape) or not count:
            raise InputError(f"{path}: {name} is missing or is not of shape (n, {shape})")
        if not np.isfinite(held[name]).all():
            raise InputError(f"{path}: {name} holds something that is no number")
    matrix = held.get("matrix")
    if matrix is not None and matrix.shape != (count, 4, 4):
        raise InputError(f"{path}: matrix is not of shape (n, 4, 4)")
    return held["landmarks"], held["truth_yaw_pitch_roll_deg"], held["image_size"], matrix
