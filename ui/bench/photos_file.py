"""A file of landmarks and labels of photos: which of its photos can be used, and why the rest not.

It holds ``landmarks`` ``(n, 478, 3)``, x and y as shares of the picture's width and height and z
in shares of its width, ``truth_yaw_pitch_roll_deg`` ``(n, 3)``, ``image_size`` ``(n, 2)`` height
and width in pixels, and, for comparison, ``matrix`` ``(n, 4, 4)``, the library's own
transformation. Whatever else it holds is not read.
"""

from __future__ import annotations

import tokenize
import zipfile
import zlib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from tracker.errors import InputError, system_reason
from tracker.inputs import open_file

Array = NDArray[np.float64]
Mask = NDArray[np.bool_]
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
MAX_UNPACKED_BYTES = 1_000_000_000
#: What each of the arrays has for one photo.
_SHAPES = {"landmarks": (478, 3), "truth_yaw_pitch_roll_deg": (3,), "image_size": (2,)}
_MATRIX = {"matrix": (4, 4)}
#: Landmarks so many pictures outside their picture, and pictures of so many pixels a side, are
#: none (own choice: far beyond all that there are).
MOST_OUTSIDE, MOST_PX = 100.0, 1e6
#: A face must be so wide and high, as a share of the picture (own choice: far below all faces).
LEAST_WIDE = 1e-6
#: A transformation's axes may be so far from upright to each other, and from one length, as a
#: share of that length squared (own choice: far above rounding).
MOST_SKEWED = 0.01
#: So many of the photos that are left out are named (own choice).
NAMED = 5


@dataclass(frozen=True, slots=True)
class Photos:
    """The photos that can be used.

    Attributes
    ----------
    landmarks, truth_deg, sizes
        ``(n, 478, 3)``, ``(n, 3)`` yaw, pitch, roll, and ``(n, 2)`` height and width.
    matrix
        ``(n, 4, 4)``, or None where the file has none.
    left_out
        Why others are left out, a line for each reason, with how many and which.
    """

    landmarks: Array
    truth_deg: Array
    sizes: Array
    matrix: Array | None
    left_out: tuple[str, ...]


def read_photos(path: Path) -> Photos:
    """Read a file and leave out the photos that can't be used.

    Raises
    ------
    InputError
        If the file can't be read, is none of this kind, or no photo of it can be used.
    """
    held = _arrays(path)
    count = _count_of(path, held)
    usable = np.ones(count, dtype=bool)
    left_out = []
    for reason, spoilt in _faults(held):
        found = spoilt & usable
        if found.any():
            left_out.append(_named(reason, found))
            usable &= ~found
    if not usable.any():
        raise InputError(f"{path}: no photo can be used: {'; '.join(left_out)}")
    kept = {name: array[usable] for name, array in held.items()}
    landmarks, truth, sizes = (kept[name] for name in _SHAPES)
    return Photos(landmarks, truth, sizes, kept.get("matrix"), tuple(left_out))


def _arrays(path: Path) -> dict[str, Array]:
    """The arrays that are used, as far as there are such; of numbers all."""
    try:
        with open_file(path) as content:
            with zipfile.ZipFile(content) as packed:
                # What it unpacks to is bounded, whatever its own size.
                if sum(part.file_size for part in packed.infolist()) > MAX_UNPACKED_BYTES:
                    raise InputError(f"{path}: too large for landmarks of photos")
            content.seek(0)
            with np.load(content, allow_pickle=False) as file:
                names = [n for n in (*_SHAPES, *_MATRIX) if n in file.files]
                return {name: _numbers(path, name, file[name]) for name in names}
    except OSError as error:
        raise InputError(f"{path}: can't be read ({system_reason(error)})") from error
    except _DAMAGED as error:
        raise InputError(f"{path}: is no file of landmarks of photos") from error


def _numbers(path: Path, name: str, found: object) -> Array:
    array = np.asarray(found)
    if array.dtype.kind not in "fiu":
        raise InputError(f"{path}: {name} holds no numbers")
    if array.size * np.dtype(np.float64).itemsize > MAX_UNPACKED_BYTES:
        raise InputError(f"{path}: too large for landmarks of photos")
    with np.errstate(all="ignore"):
        return array.astype(np.float64)


def _count_of(path: Path, held: Mapping[str, Array]) -> int:
    """How many photos there are, by all arrays alike."""
    count = None
    for name, shape in (_SHAPES | _MATRIX).items():
        if name not in held:
            if name in _SHAPES:
                raise InputError(f"{path}: has no {name}")
            continue
        has = held[name].shape
        if has[1:] != shape or not has:
            wanted = ", ".join(map(str, ("n", *shape)))
            raise InputError(f"{path}: {name} is of shape {has}, not ({wanted})")
        count = has[0] if count is None else count
        if has[0] != count:
            raise InputError(f"{path}: landmarks are of {count} photos, {name} of {has[0]}")
    if not count:
        raise InputError(f"{path}: holds no photo")
    return count


def _faults(held: Mapping[str, Array]) -> Iterator[tuple[str, Mask]]:
    """What can be wrong with a photo, and with which it is; each of all, some with several."""
    landmarks, sizes = held["landmarks"], held["image_size"]
    for name, array in held.items():
        axes = tuple(range(1, array.ndim))
        yield f"{name} holds something that is no number", ~np.isfinite(array).all(axis=axes)
    yield "the picture is smaller than a pixel", ~(sizes >= 1.0).all(axis=1)
    yield "no picture is so large", ~(sizes < MOST_PX).all(axis=1)
    far = ~(np.abs(landmarks) < MOST_OUTSIDE).all(axis=(1, 2))
    yield "the landmarks lie far outside the picture", far
    points = np.where(far[:, None, None], 0.0, landmarks[:, :468])
    yield "the landmarks lie in a line or a point", _are_in_a_line(points)
    if "matrix" in held:
        yield "matrix is no rotation", ~_are_rotations(held["matrix"][:, :3, :3])


def _are_in_a_line(points: Array) -> Mask:
    middle = points.mean(axis=1, keepdims=True)
    return np.asarray(np.linalg.matrix_rank(points - middle, tol=LEAST_WIDE) < 2)


def _are_rotations(matrices: Array) -> Mask:
    """Whether matrices turn and at most make larger or smaller."""
    finite = np.isfinite(matrices).all(axis=(1, 2))
    with np.errstate(all="ignore"):
        squares = matrices @ matrices.transpose(0, 2, 1)
        size = np.trace(squares, axis1=1, axis2=2) / 3.0
        off = np.abs(squares - size[:, None, None] * np.eye(3)).max(axis=(1, 2))
        upright = (off <= MOST_SKEWED * size) & np.isfinite(size) & (size > 0)
    usable = finite & upright
    right_handed = np.zeros(len(matrices), dtype=bool)
    scaled = matrices[usable] / np.sqrt(size[usable])[:, None, None]
    right_handed[usable] = np.linalg.det(scaled) > 0
    return right_handed


def _named(reason: str, which: Mask) -> str:
    """A reason with how many photos it leaves out, and their numbers from 1 on."""
    numbers = np.flatnonzero(which) + 1
    first = ", ".join(map(str, numbers[:NAMED]))
    more = f" and {len(numbers) - NAMED} more" if len(numbers) > NAMED else ""
    return f"{reason} ({len(numbers)}: photo {first}{more}, counted from 1)"
