"""The licences of a frozen folder: a text for each thing, or no folder."""

from __future__ import annotations

import shutil
import sys
from importlib import metadata
from pathlib import Path

import pytest

from tracker.errors import RunError
from tracker.vision.models import MODELS
from ui.packaging import build, licences
from ui.packaging.licences import Carried


class Dist(metadata.PathDistribution):
    """An installed library that a test makes up."""


def _installed(folder: Path, about: str, **files: str) -> Dist:
    place = folder / "thing-1.0.dist-info"
    place.mkdir(parents=True)
    (place / "METADATA").write_text(f"Metadata-Version: 2.4\nName: thing\nVersion: 1.0\n{about}\n")
    record = []
    for name, text in files.items():
        path = folder / name.replace("__", "/").replace("_dot_", ".")
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text)
        record.append(f"{path.relative_to(folder).as_posix()},,\n")
    (place / "RECORD").write_text("".join(record))
    return Dist(place)


def test_the_libraries_own_texts_are_taken(tmp_path: Path) -> None:
    dist = _installed(
        tmp_path,
        "License-Expression: MIT",
        thing__LICENSE="the text",
        thing__licences_dot_py="code",
        thing__main_dot_py="code",
    )
    found = licences.of_library(dist, tmp_path / "none")
    assert found.name == "thing 1.0" and found.licence == "MIT"
    assert found.texts == [tmp_path / "thing" / "LICENSE"]


def test_a_library_without_a_text_gets_those_that_its_licence_names(tmp_path: Path) -> None:
    dist = _installed(tmp_path, "License: LGPL-3.0-only OR GPL-3.0-only")
    common = tmp_path / "common"
    common.mkdir()
    (common / "LGPL-3").write_text("lesser")
    # The lesser one is written as an addition to the other.
    with pytest.raises(RunError, match=r"thing 1\.0.*GPL-3"):
        licences.of_library(dist, common)
    (common / "GPL-3").write_text("general")
    assert [p.name for p in licences.of_library(dist, common).texts] == ["LGPL-3", "GPL-3"]


@pytest.mark.parametrize("about", ["", "License: All rights reserved", "License: GPL-2.0-only"])
def test_what_nobody_knows_the_text_of_stops_the_build(about: str, tmp_path: Path) -> None:
    with pytest.raises(RunError, match="no licence text for thing"):
        licences.of_library(_installed(tmp_path, about), licences.COMMON_TEXTS)


def test_a_whole_text_in_place_of_a_word_is_not_the_licences_name(tmp_path: Path) -> None:
    about = (
        "License: Copyright of somebody\n  and more\n"
        "Classifier: License :: OSI Approved :: BSD License\n"
    )
    dist = _installed(tmp_path, about, thing__COPYING="the text")
    assert licences.of_library(dist, tmp_path).licence == "BSD License"


def test_all_that_turnpost_needs_here_is_found() -> None:
    names = {licences._plain(d.metadata["Name"]) for d in licences.distributions("numba")}
    assert names == {"numba", "llvmlite", "numpy"}
    # What is not installed belongs to another system.
    assert licences.distributions("no-such-thing-anywhere") == []


def test_every_installed_library_of_ours_has_a_licence(tmp_path: Path) -> None:
    common = tmp_path / "common"
    common.mkdir()
    for name in ("LGPL-3", "GPL-3", "Apache-2.0"):
        (common / name).write_text(name)
    needs = [licences._name_of(n) for n in build_requirements()]
    dists = licences.distributions(needs[0], needs[1:])
    found = {c.name.split()[0].lower(): c for c in (licences.of_library(d, common) for d in dists)}
    assert {"mediapipe", "numpy", "pyside6_essentials", "shiboken6", "scipy"} <= set(found)
    assert all(c.texts and c.licence for c in found.values())


def build_requirements() -> list[str]:
    import tomllib

    text = (build.ROOT / "pyproject.toml").read_text("utf-8")
    return list(tomllib.loads(text)["project"]["dependencies"])


@pytest.mark.skipif(shutil.which("dpkg-query") is None, reason="asks Debian's list of packages")
def test_a_library_of_the_system_brings_what_debian_says(tmp_path: Path) -> None:
    library = next(Path("/").glob("lib/*/libc.so.6"))
    (found,) = licences.of_system([library, library])
    assert found.name == "libc6 (system library)"
    assert found.texts == [Path("/usr/share/doc/libc6/copyright")]
    stray = tmp_path / "libstray.so.1"
    stray.touch()
    with pytest.raises(RunError, match="by hand"):
        list(licences.of_system([stray]))


def test_only_what_python_and_packages_have_not_is_the_systems(tmp_path: Path) -> None:
    own = Path(sys.prefix) / "lib" / "a.so"
    assert build.of_the_system([own, tmp_path / "b.so"]) == [tmp_path / "b.so"]


def test_texts_of_one_name_both_arrive(tmp_path: Path) -> None:
    for name in ("a", "b"):
        (tmp_path / name).mkdir()
        (tmp_path / name / "LICENSE").write_text(name)
    item = Carried("two texts 1.0", "MIT", [tmp_path / n / "LICENSE" for n in ("a", "b")])
    licences.collect([item], tmp_path / "out")
    place = tmp_path / "out" / "two-texts-1.0"
    assert sorted(p.read_text() for p in place.iterdir()) == ["a", "b"]
    assert "two texts 1.0  MIT" in (tmp_path / "out" / "LIST.txt").read_text()


@pytest.mark.skipif(sys.platform == "win32", reason="the stand-in is a shell script")
def test_a_frozen_program_that_does_not_start_is_no_build(tmp_path: Path) -> None:
    program = tmp_path / "turnpost"
    script = "#!/bin/sh\n[ $1 = clips ] && echo turns-good || echo turnpost 1.2.3\nexit {code}\n"
    program.write_text(script.format(code=0))
    program.chmod(0o755)
    assert build.try_out(tmp_path, "1.2.3") > 0
    with pytest.raises(RunError, match=r"asked for --version and said: turnpost 1\.2\.3"):
        build.try_out(tmp_path, "1.2.4")
    program.write_text(script.format(code=1))
    with pytest.raises(RunError, match="asked for --version"):
        build.try_out(tmp_path, "1.2.3")


@pytest.mark.parametrize("whole", [False, True])
def test_model_files_go_along_only_on_request(whole: bool, tmp_path: Path) -> None:
    build.add_models(tmp_path, whole)
    names = {p.name for p in (tmp_path / "models").iterdir()}
    assert names == {"README.txt", *((m.filename for m in MODELS.values()) if whole else ())}
    note = (tmp_path / "models" / "README.txt").read_text()
    assert all(m.sha256 in note for m in MODELS.values())
