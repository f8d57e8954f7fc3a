"""The profile of a person as a file: numbers alone, in one folder of the user's own.

A zip of plain arrays (numpy's ``npz``, never pickles) with a JSON header. It holds the
look and the shape of the face, so it stays on this machine: no summary, no session and
no hand-over ever carries it.
"""

from __future__ import annotations

import io
import json
import tokenize
import zipfile
import zlib
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np

from tracker.errors import InputError, system_reason
from tracker.eyes.in_use import EYES
from tracker.eyes.model import EyeModel, GazeModel
from tracker.eyes.openness import LidRange
from tracker.eyes.regression import Ridge
from tracker.head.perspective import Array, Pinhole
from tracker.head.shape import FaceShape
from tracker.head.template import Template
from tracker.inputs import open_file, read_input
from tracker.lens import SOURCES
from tracker.profile import Profile, RestFrame
from tracker.session.files import write_atomically

FORMAT, FORMAT_VERSION = "turnpost-profile", 2
#: What a profile unpacks to is some megabytes (this project's own choice: far above that, and what
#: a computer has room for).
MAX_UNPACKED_BYTES = 100_000_000
#: Its header takes some hundred bytes (this project's own choice: far above that).
MAX_HEADER_BYTES = 100_000

#: Every array of a profile with its shape; the same letter is the same number, 0 any.
_ARRAYS: dict[str, tuple[int | str, ...]] = {
    "shape.points_mm": (468, 3),
    "shape.triangles": (0, 3),
    "template.rest_mm": (3,),
    "template.pixels_mm": ("k", "p", 3),
    "template.centres_mm": ("k", 3),
    "template.normals": ("k", 3),
    "template.values": ("k", "p"),
    "template.gradients": ("k", "p", 2),
    "template.tangents_mm": ("k", 3, 2),
    "eyes_mm": (2, 3),
    "rest.axes": (3, 3),
    "rest.turned": (3, 3),
    "rest.origin_mm": (3,),
    "rest.neck_mm": (3,),
}
_KINDS = ("rectified", "cornered")
_RIDGE: dict[str, tuple[int | str, ...]] = {
    "mean": ("e",),
    "weights": ("e", 2),
    "offset": (2,),
    "basis": (0, "e"),
    "usual": (),
}
#: What reading damaged or hostile bytes raises: arrays that claim to be vast, headers
#: nested without end or never closed, members that are locked or packed in an unknown way.
_DAMAGED = (
    ValueError,
    TypeError,
    KeyError,
    EOFError,
    AttributeError,
    MemoryError,
    RuntimeError,
    tokenize.TokenError,
    zipfile.BadZipFile,
    zlib.error,
)
_FLOAT32 = ("template.values", "template.gradients")


@dataclass(frozen=True, slots=True)
class KeptProfile:
    """A profile with what it belongs to (camera, glasses, when it was made)."""

    profile: Profile
    about: dict[str, Any]


def save_profile(path: Path, profile: Profile, about: dict[str, Any]) -> None:
    """Write a profile, whole or not at all.

    Parameters
    ----------
    path
        The file; only its owner can read it.
    profile
        The person.
    about
        What it belongs to, as JSON takes it.
    """
    gaze = profile.gaze
    header = {
        "format": FORMAT,
        "format_version": FORMAT_VERSION,
        "about": about,
        "width_px": profile.width_px,
        "height_px": profile.height_px,
        "vertical_fov_deg": profile.vertical_fov_deg,
        "eyes": profile.eyes,
        "fov_source": profile.fov_source,
        "fov_error_deg": profile.fov_error_deg,
        "lens": [profile.camera.focal_px, profile.camera.centre_x_px, profile.camera.centre_y_px],
        "lids": [profile.lids.open_ratio, profile.lids.shut_ratio],
        "gaze_error_deg": None if gaze is None else gaze.error_deg,
    }
    names = [*_ARRAYS, *(() if gaze is None else _gaze_arrays(len(gaze.eyes)))]
    arrays = {name: _at(profile, name) for name in names}
    content = io.BytesIO()
    text = np.frombuffer(json.dumps(header, allow_nan=True).encode(), np.uint8)
    np.savez(content, header=text, **arrays)
    write_atomically(path, content.getvalue())


def load_profile(path: Path) -> KeptProfile:
    """Read a profile.

    Raises
    ------
    InputError
        If it can't be read, is damaged or none, or was written by a newer version; the
        file stays as it is.
    """
    content = io.BytesIO(read_input(path, MAX_UNPACKED_BYTES, "the profile of a person"))
    try:
        with zipfile.ZipFile(content) as packed:
            if sum(part.file_size for part in packed.infolist()) > MAX_UNPACKED_BYTES:
                raise InputError(f"{path}: too large for the profile of a person")
        with np.load(content, allow_pickle=False) as file:
            held = {name: file[name] for name in file.files}
        header = json.loads(held.pop("header").tobytes().decode())
    except OSError as error:
        raise InputError(f"{path}: can't be read ({system_reason(error)})") from error
    except _DAMAGED as error:
        raise InputError(f"{path}: is no profile of a person, or it is damaged") from error
    if not isinstance(header, dict) or header.get("format") != FORMAT:
        raise InputError(f"{path}: is no profile of a person")
    if header.get("format_version") == 1:
        raise InputError(f"{path}: is from an earlier version of this program; do the set-up again")
    if header.get("format_version") != FORMAT_VERSION:
        raise InputError(f"{path}: was written by another version of this program; update it")
    try:
        return KeptProfile(_profile(header, held), dict(header["about"]))
    except (AttributeError, KeyError, TypeError, ValueError, OverflowError) as error:
        raise InputError(f"{path}: is damaged; do the set-up again") from error


def about_profile(path: Path) -> dict[str, Any]:
    """What a profile belongs to, without reading the person; nothing where it can't be read."""
    try:
        with open_file(path) as content:
            with zipfile.ZipFile(content) as packed:
                if packed.getinfo("header.npy").file_size > MAX_HEADER_BYTES:
                    return {}
            content.seek(0)
            with np.load(content, allow_pickle=False) as file:
                header = json.loads(file["header"].tobytes().decode())
        return dict(header["about"])
    except (OSError, RecursionError, *_DAMAGED):
        return {}


def _at(profile: Profile, name: str) -> Any:
    value: Any = profile
    for part in name.split("."):
        value = value[int(part)] if part.isdigit() else getattr(value, part)
    return value


def _gaze_arrays(eyes: int) -> dict[str, tuple[int | str, ...]]:
    """The arrays of a gaze model of one eye or two."""
    ridges = {
        f"gaze.eyes.{eye}.{kind}.{part}": shape
        for eye in range(eyes)
        for kind in _KINDS
        for part, shape in _RIDGE.items()
    }
    return {**ridges, "gaze.reach_deg": (2, 2), "gaze.turned": (3, 3)}


def _profile(header: dict[str, Any], held: dict[str, Any]) -> Profile:
    """Profile of a header and its arrays; ValueError where they don't fit each other."""
    with_gaze = header["gaze_error_deg"] is not None
    eyes = str(header.get("eyes", "both"))
    if eyes not in EYES:
        raise ValueError("no such eye")
    seeing = len(EYES[eyes])
    arrays = _checked({**_ARRAYS, **(_gaze_arrays(seeing) if with_gaze else {})}, held)
    focal, x, y = (float(v) for v in header["lens"])
    opened, shut = (float(v) for v in header["lids"])
    fov = header["vertical_fov_deg"]
    if not np.isfinite([focal, x, y, opened, shut]).all() or focal <= 0 or opened <= shut:
        raise ValueError("lens or lids make no sense")
    if not (0 < header["width_px"] <= 10_000 and 0 < header["height_px"] <= 10_000):
        raise ValueError("no picture has this size")
    if fov is not None and not 5.0 <= float(fov) <= 170.0:
        raise ValueError("no camera has this field of view")
    part = {name: arrays[name] for name in arrays}
    fov_error = header.get("fov_error_deg")
    if fov_error is not None and not 0.0 <= float(fov_error) <= 90.0:
        raise ValueError("no field of view is known like this")
    fov_source = str(header.get("fov_source", "stated"))
    if fov_source not in SOURCES:
        raise ValueError("no such source of a field of view")
    template = Template(*(part[n] for n in _ARRAYS if n.startswith("template.")))
    gaze = None
    if with_gaze:
        error_deg = float(header["gaze_error_deg"])
        models = tuple(_eye(part, eye) for eye in range(seeing))
        gaze = GazeModel(models, part["gaze.reach_deg"], error_deg, part["gaze.turned"])
    return Profile(
        int(header["width_px"]),
        int(header["height_px"]),
        None if fov is None else float(fov),
        Pinhole(focal, x, y),
        FaceShape(part["shape.points_mm"], part["shape.triangles"].astype(np.int64)),
        template,
        part["eyes_mm"],
        RestFrame(*(part[f"rest.{n}"] for n in ("axes", "turned", "origin_mm", "neck_mm"))),
        LidRange(opened, shut),
        gaze,
        fov_source,
        None if fov_error is None else float(fov_error),
        eyes,
    )


def _eye(part: dict[str, Array], eye: int) -> EyeModel:
    """One eye's two regressions."""

    def ridge(kind: str) -> Ridge:
        usual = float(part[f"gaze.eyes.{eye}.{kind}.usual"].item())
        if usual <= 0.0:
            raise ValueError("nothing is usual")
        mean, weights, offset, basis = (
            part[f"gaze.eyes.{eye}.{kind}.{n}"] for n in ("mean", "weights", "offset", "basis")
        )
        return Ridge(mean, weights, offset, basis, usual)

    return EyeModel(*(ridge(kind) for kind in _KINDS))


def _checked(wanted: dict[str, tuple[int | str, ...]], held: dict[str, Any]) -> dict[str, Array]:
    """The arrays, each of its shape and of finite numbers."""
    sizes: dict[str, int] = {}
    out: dict[str, Array] = {}
    for name, shape in wanted.items():
        array = held[name]
        if array.dtype.kind not in "fiu" or array.ndim != len(shape):
            raise ValueError(name)
        for asked, size in zip(shape, array.shape, strict=True):
            if isinstance(asked, str):
                asked = sizes.setdefault(asked, size)
            if asked and asked != size:
                raise ValueError(name)
        if not np.isfinite(array).all():
            raise ValueError(name)
        kind = np.float32 if name in _FLOAT32 else np.float64
        out[name] = np.ascontiguousarray(array, dtype=kind)
    triangles = out["shape.triangles"]
    if len(triangles) and not (triangles.min() >= 0 and triangles.max() < 468):
        raise ValueError("shape.triangles")
    return out
