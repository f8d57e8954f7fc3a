"""What is packed: a wheel with all that the program needs and nothing else, and its source."""

from __future__ import annotations

import subprocess
import sys
import tarfile
import zipfile
from email import message_from_bytes
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
PACKAGES = ("calibration", "sample_clips", "tracker", "ui")
#: What a wheel holds besides Python files.
CLIP = {".mp4", ".stage.json", ".truth.csv", ".events.json"}
#: All of it, so that nobody packs a large file unawares.
MOST_MB = 5


def _build(target: str, folder: Path) -> Path:
    command = [sys.executable, "-m", "hatchling", "build", "-t", target, "-d", str(folder)]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    (made,) = folder.iterdir()
    return made


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return _build("wheel", tmp_path_factory.mktemp("wheel"))


def _names(wheel: Path) -> set[str]:
    with zipfile.ZipFile(wheel) as file:
        return {name for name in file.namelist() if ".dist-info/" not in name}


def _ours(pattern: str) -> set[str]:
    found = (p for package in PACKAGES for p in (ROOT / package).rglob(pattern))
    return {p.relative_to(ROOT).as_posix() for p in found}


def test_the_wheel_has_every_module_and_no_test(wheel: Path) -> None:
    modules = {n for n in _names(wheel) if n.endswith(".py")}
    assert modules == {n for n in _ours("*.py") if not n.startswith("ui/packaging/")}
    assert {n.partition("/")[0] for n in _names(wheel)} == set(PACKAGES)


def test_the_wheel_has_icon_clips_and_translations_and_nothing_else(wheel: Path) -> None:
    others = {n for n in _names(wheel) if not n.endswith(".py")}
    clips = {p.stem for p in (ROOT / "sample_clips" / "clips").glob("*.mp4")}
    translations = _ours("*.qm")
    assert "turns-good" in clips and "ui/translations/turnpost_de.qm" in translations
    assert others == {
        "ui/pictures/turnpost.svg",
        *translations,
        *(f"sample_clips/clips/{name}{part}" for name in clips for part in CLIP),
        *(n for n in _ours("*.json") if n.startswith("sample_clips/scenarios/")),
    }
    assert wheel.stat().st_size < MOST_MB * 1e6


def test_the_wheel_says_what_it_is(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as file:
        about = {n.split(".dist-info/")[1]: n for n in file.namelist() if ".dist-info/" in n}
        said = message_from_bytes(file.read(about["METADATA"]))
        entries = file.read(about["entry_points.txt"]).decode()
    assert {"licenses/LICENSE", "licenses/NOTICE", "RECORD"} <= set(about)
    assert said["License-Expression"] == "MIT"
    assert set(said["Requires-Python"].split(",")) == {">=3.11", "<3.14"}
    assert "mediapipe==0.10.31" in said.get_all("Requires-Dist", [])
    assert entries.split("\n")[:2] == ["[console_scripts]", "turnpost = ui.cli:main"]


def test_the_wheel_works_without_the_checkout(wheel: Path, tmp_path: Path) -> None:
    folder, elsewhere = tmp_path / "site", tmp_path / "elsewhere"
    elsewhere.mkdir()
    with zipfile.ZipFile(wheel) as file:
        file.extractall(folder)
    code = (
        f"import sys; sys.path.insert(0, {str(folder)!r})\n"
        "from ui import cli, desktop_entry\n"
        "from ui.wiring import clip_plan, demo_clip\n"
        "print(cli.__file__)\n"
        "assert desktop_entry.PICTURE.is_file() and clip_plan(demo_clip())\n"
        "for words in (['clips', 'list'], ['schema', 'plan'], ['plan', 'show']):\n"
        "    assert cli.main(words) == 0, words\n"
    )
    done = subprocess.run(
        [sys.executable, "-I", "-c", code],
        cwd=elsewhere,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout.splitlines()[0] == str(folder / "ui" / "cli.py")
    assert list(elsewhere.iterdir()) == []


def test_the_source_has_all_that_builds_and_tests_it(tmp_path: Path) -> None:
    with tarfile.open(_build("sdist", tmp_path)) as file:
        names = {n.partition("/")[2] for n in file.getnames()}
    wanted = {"pyproject.toml", "README.md", "DEVELOPERS.md", "CHANGELOG.md", "LICENSE", "NOTICE"}
    assert wanted | _ours("*.py") | {"ui/packaging/turnpost.spec", "tests/conftest.py"} <= names
    assert not {n for n in names if "__pycache__" in n or n.startswith((".venv", "dist", "build/"))}
