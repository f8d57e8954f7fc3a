"""The starter: what it asks of a system, what it says, and that it does nothing twice."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import pytest

from ui import start

ROOT = Path(__file__).parents[2]


@pytest.fixture
def calls(monkeypatch: pytest.MonkeyPatch) -> list[list[str]]:
    """Record programs that would be run, and run none."""
    made: list[list[str]] = []

    def run(command: Sequence[str], **_: Any) -> subprocess.CompletedProcess[str]:
        made.append([str(word) for word in command])
        return subprocess.CompletedProcess(command, 0, stdout="", stderr="")

    monkeypatch.setattr(start.subprocess, "run", run)
    return made


def _system(monkeypatch: pytest.MonkeyPatch, debian: bool, root: bool) -> None:
    monkeypatch.setattr(start, "is_debian", lambda: debian)
    monkeypatch.setattr(start, "is_root", lambda: root)


def test_root_on_debian_installs(
    monkeypatch: pytest.MonkeyPatch, calls: list[list[str]], capsys: pytest.CaptureFixture[str]
) -> None:
    _system(monkeypatch, debian=True, root=True)
    start.install_packages(["libegl1", "libgl1", "libegl1"])
    assert [c[-1] for c in calls] == ["update", "libgl1"]
    assert calls[1][-5:] == ["install", "-y", "--no-install-recommends", "libegl1", "libgl1"]
    assert capsys.readouterr().out == "Installing system packages: libegl1 libgl1\n"


@pytest.mark.parametrize(
    ("debian", "says"),
    [
        (True, "sudo apt-get update && sudo apt-get install -y libegl1 libgl1"),
        (False, "what your system calls these: libegl1 libgl1"),
    ],
)
def test_others_are_told(
    debian: bool, says: str, monkeypatch: pytest.MonkeyPatch, calls: list[list[str]]
) -> None:
    _system(monkeypatch, debian=debian, root=not debian)
    with pytest.raises(start.SetupError) as caught:
        start.install_packages(["libegl1", "libgl1"])
    assert says in str(caught.value) and "\n" not in str(caught.value)
    assert calls == []


def test_nothing_missing_asks_for_nothing(
    monkeypatch: pytest.MonkeyPatch, calls: list[list[str]]
) -> None:
    _system(monkeypatch, debian=False, root=False)
    start.install_packages([])
    assert calls == []


def test_a_failing_apt_says_why(monkeypatch: pytest.MonkeyPatch) -> None:
    _system(monkeypatch, debian=True, root=True)

    def run(command: Sequence[str], **_: Any) -> subprocess.CompletedProcess[str]:
        out = "Reading package lists...\nE: Unable to locate package libegl1\nbye\n"
        return subprocess.CompletedProcess(command, 100, stdout=out, stderr="")

    monkeypatch.setattr(start.subprocess, "run", run)
    with pytest.raises(start.SetupError, match=r"libegl1: E: Unable to locate package libegl1$"):
        start.install_packages(["libegl1"])


@pytest.mark.skipif(sys.platform != "linux", reason="system libraries are asked for on Linux only")
def test_a_missing_library_is_found_by_loading(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(start.LIBRARIES, "libnot-there.so.1", "libnot-there1")
    assert start.missing_libraries() == ["libnot-there.so.1"]
    assert start.package_of("libnot-there.so.1") == "libnot-there1"
    assert start.package_of("libunheard-of.so.3") == "libunheard-of.so.3"


@pytest.mark.parametrize(
    ("message", "library"),
    [
        (
            "ImportError: libEGL.so.1: cannot open shared object file: No such file or directory",
            "libEGL.so.1",
        ),
        (
            "OSError: libglib-2.0.so.0: cannot open shared object file: No such file",
            "libglib-2.0.so.0",
        ),
        ("ModuleNotFoundError: No module named 'cv2'", None),
    ],
)
def test_the_loaders_message_is_understood(message: str, library: str | None) -> None:
    assert start.missing_in(message) == library


def test_the_check_of_loading_installs_what_turns_up(monkeypatch: pytest.MonkeyPatch) -> None:
    errors = ["x: libpulse.so.0: cannot open shared object file", ""]
    installed: list[str] = []

    def run(command: Sequence[str], **_: Any) -> subprocess.CompletedProcess[str]:
        error = errors.pop(0)
        return subprocess.CompletedProcess(command, int(bool(error)), stdout="", stderr=error)

    monkeypatch.setattr(start.subprocess, "run", run)
    monkeypatch.setattr(start, "install_packages", installed.extend)
    start.probe(Path("/nowhere"))
    assert installed == ["libpulse0"] and errors == []


@pytest.mark.parametrize(
    "errors",
    [
        ["libpulse.so.0: cannot open shared object file"] * 2,
        ["ImportError: this build is for another machine"],
    ],
)
def test_the_check_of_loading_gives_up(errors: list[str], monkeypatch: pytest.MonkeyPatch) -> None:
    left = list(errors)

    def run(command: Sequence[str], **_: Any) -> subprocess.CompletedProcess[str]:
        return subprocess.CompletedProcess(command, 1, stdout="", stderr=left.pop(0))

    monkeypatch.setattr(start.subprocess, "run", run)
    monkeypatch.setattr(start, "install_packages", lambda _: None)
    with pytest.raises(start.SetupError, match="don't load"):
        start.probe(Path("/nowhere"))
    assert left == []


def _ready(folder: Path, stage: str) -> None:
    python = start.tool(folder, "python")
    python.parent.mkdir(parents=True)
    python.touch()
    stamp = {"fingerprint": start.fingerprint(), "stage": stage}
    (folder / "turnpost.json").write_text(json.dumps(stamp))


@pytest.mark.parametrize(
    ("done", "covers"),
    [("run", {"run"}), ("render", {"run", "render"}), ("test", {"run", "render", "test"})],
)
def test_a_second_start_has_nothing_to_do(done: str, covers: set[str], tmp_path: Path) -> None:
    folder = tmp_path / "venv"
    assert not any(start.is_ready(folder, stage) for stage in start.EXTRAS)
    _ready(folder, done)
    assert {stage for stage in start.EXTRAS if start.is_ready(folder, stage)} == covers


@pytest.mark.parametrize("text", ["", "[]", "{}", "null", '{"stage": "odd", "fingerprint": ""}'])
def test_a_broken_stamp_means_not_ready(text: str, tmp_path: Path) -> None:
    _ready(tmp_path / "venv", "test")
    (tmp_path / "venv" / "turnpost.json").write_text(text)
    assert not start.is_ready(tmp_path / "venv", "run")


def test_changed_libraries_mean_not_ready(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    checkout = tmp_path / "checkout"
    checkout.mkdir()
    shutil.copy(ROOT / "pyproject.toml", checkout)
    monkeypatch.setattr(start, "ROOT", checkout)
    _ready(tmp_path / "venv", "run")
    assert start.is_ready(tmp_path / "venv", "run")
    with (checkout / "pyproject.toml").open("a") as file:
        file.write("\n")
    assert not start.is_ready(tmp_path / "venv", "run")


@pytest.mark.parametrize(
    ("words", "stage"),
    [
        ([], "run"),
        (["demo"], "run"),
        (["clips", "list"], "run"),
        (["clips", "render", "a"], "render"),
        (["test", "-k", "x"], "test"),
    ],
)
def test_only_what_a_command_needs(words: list[str], stage: str) -> None:
    assert start.stage_of(words) == stage


def test_a_foreign_folder_is_left_alone(tmp_path: Path, calls: list[list[str]]) -> None:
    (tmp_path / "letter.txt").touch()
    with pytest.raises(start.SetupError, match="in the way"):
        start.make_venv(tmp_path)
    assert calls == [] and (tmp_path / "letter.txt").exists()


@pytest.mark.skipif(sys.platform != "linux", reason="packages are asked for on Linux only")
@pytest.mark.parametrize("root", [True, False])
def test_everything_missing_is_asked_for_at_once(
    root: bool, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, calls: list[list[str]]
) -> None:
    _system(monkeypatch, debian=True, root=root)
    monkeypatch.setattr(start, "missing_libraries", lambda: ["libEGL.so.1"])
    monkeypatch.setattr(start.importlib.util, "find_spec", lambda _: None)
    monkeypatch.setattr(start, "pip_install", lambda *_: None)
    venv = f"python3.{sys.version_info[1]}-venv"
    folder = tmp_path / "venv"
    if root:
        _ready(folder, "run")
        (folder / "turnpost.json").unlink()
        start.tool(folder, "pip").touch()
        start.prepare(folder, "run", ["xvfb"])
        assert calls[1][-3:] == ["libegl1", "xvfb", venv]
        assert start.is_ready(folder, "run") and not start.is_ready(folder, "test")
    else:
        with pytest.raises(start.SetupError, match=f"install -y libegl1 xvfb {venv}'"):
            start.prepare(folder, "run", ["xvfb"])
        assert calls == [] and not folder.exists()


def test_another_python_is_looked_for(monkeypatch: pytest.MonkeyPatch) -> None:
    assert start.suitable_python() == sys.executable
    monkeypatch.setattr(start.sys, "version_info", (3, 9, 2, "final", 0))
    there = {"python3.12": "/usr/bin/python3.12", "python3.11": "/usr/bin/python3.11"}
    monkeypatch.setattr(start.shutil, "which", there.get)
    assert start.suitable_python() == "/usr/bin/python3.12"
    there.clear()
    with pytest.raises(start.SetupError, match=r"3\.11, 3\.12 or 3\.13, and this is 3\.9"):
        start.suitable_python()


def test_a_browser_is_brought_for_ci_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(start.sys, "platform", "linux")
    monkeypatch.setattr(start.shutil, "which", lambda _: None)
    monkeypatch.delenv("CI", raising=False)
    languages = ["tesseract-ocr-ara", "tesseract-ocr-deu", "tesseract-ocr-spa"]
    readers = ["tesseract-ocr", *languages]
    assert start.programs_for("test", ["test"]) == ["xvfb", *readers]
    monkeypatch.setenv("CI", "true")
    assert start.programs_for("test", ["test"]) == ["xvfb", *readers, "chromium"]
    assert start.programs_for("run", ["plan"]) == []
    monkeypatch.setattr(start.shutil, "which", lambda name: f"/usr/bin/{name}")
    for known, wanted in (("ara deu eng osd spa", []), ("eng osd", languages)):
        told = subprocess.CompletedProcess([], 0, stdout=known)
        monkeypatch.setattr(start.subprocess, "run", lambda *_a, told=told, **_k: told)
        assert start.programs_for("test", ["test"]) == wanted


@pytest.mark.parametrize(
    ("given", "locale"),
    [
        ({}, "C.UTF-8"),
        ({"LANG": "C"}, "C.UTF-8"),
        ({"LANG": "de_DE.UTF-8"}, None),
        ({"LC_ALL": "C", "LANG": "de_DE.UTF-8"}, "C.UTF-8"),
        ({"LC_CTYPE": "en_GB.utf8"}, None),
    ],
)
@pytest.mark.skipif(sys.platform != "linux", reason="only there Qt asks for it")
def test_the_locale_knows_more_than_ascii(
    given: dict[str, str], locale: str | None, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("LC_ALL", "LC_CTYPE", "LANG"):
        monkeypatch.delenv(name, raising=False)
    for name, value in given.items():
        monkeypatch.setenv(name, value)
    assert start.plain_environment().get("LC_ALL") == (locale or given.get("LC_ALL"))


def test_words_go_to_the_program_and_its_code_comes_back(tmp_path: Path) -> None:
    turnpost = start.tool(tmp_path, "turnpost")
    turnpost.parent.mkdir()
    turnpost.write_text(f'#!/bin/sh\nprintf "%s|" "$@" > {tmp_path}/words\nexit 5\n')
    turnpost.chmod(0o755)
    assert start.run_program(tmp_path, ["measure", "a clip.mp4"]) == 5
    assert (tmp_path / "words").read_text() == "measure|a clip.mp4|"


@pytest.mark.skipif(sys.platform != "linux", reason="virtual screens are for Linux")
@pytest.mark.parametrize("words", [["demo"], ["demo", "--auto"]])
def test_the_demo_without_a_screen_gets_a_virtual_one(
    words: list[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("DISPLAY", "WAYLAND_DISPLAY"):
        monkeypatch.delenv(name, raising=False)
    turnpost = start.tool(tmp_path, "turnpost")
    turnpost.parent.mkdir()
    turnpost.write_text(
        f'#!/bin/sh\necho "$@" > {tmp_path}/words\n'
        f"test -S /tmp/.X11-unix/X${{DISPLAY#:}} && echo $DISPLAY > {tmp_path}/display\n"
    )
    turnpost.chmod(0o755)
    assert start.run_program(tmp_path, words) == 0
    assert (tmp_path / "words").read_text() == "demo --auto\n"
    display = (tmp_path / "display").read_text().strip()
    assert not Path(f"/tmp/.X11-unix/X{display[1:]}").exists(), "the screen was left running"


def test_all_checks_run_and_one_failure_fails(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = start.tool(tmp_path, "x").parent
    folder.mkdir()
    for name in ("ruff", "mypy", "lint-imports", "pytest"):
        path = start.tool(tmp_path, name)
        path.write_text(f'#!/bin/sh\necho {name} "$@" >> {tmp_path}/ran\ntest {name} != mypy\n')
        path.chmod(0o755)
    assert start.run_checks(tmp_path, ["-k", "clips"]) == 1
    ran = (tmp_path / "ran").read_text().splitlines()
    assert [line.split()[0] for line in ran] == ["ruff", "ruff", "mypy", "lint-imports", "pytest"]
    assert ran[-1] == "pytest -k clips"
    assert capsys.readouterr().out.splitlines()[-1] == "Failed: mypy"
    start.tool(tmp_path, "mypy").write_text("#!/bin/sh\n")
    assert start.run_checks(tmp_path, []) == 0


def test_it_is_one_clear_line_when_it_fails(tmp_path: Path) -> None:
    (tmp_path / "letter.txt").touch()
    environment = {**os.environ, "TURNPOST_VENV": str(tmp_path)}
    done = subprocess.run(
        [sys.executable, ROOT / "ui" / "start.py", "doctor"],
        env=environment,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1 and done.stdout == ""
    assert done.stderr.splitlines() == [
        f"start.py: {tmp_path} is in the way: it is not a Python environment; move it away"
    ]


def test_only_the_standard_library_is_imported() -> None:
    code = (
        "import sys; sys.path.insert(0, '.'); import ui.start; "
        "print(*sorted({m.partition('.')[0] for m in sys.modules}))"
    )
    done = subprocess.run(
        [sys.executable, "-I", "-S", "-c", code],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    foreign = set(done.stdout.split()) - set(sys.stdlib_module_names) - {"ui", "__main__"}
    assert foreign == set()


@pytest.mark.skipif(os.name != "posix", reason="a shell runs it")
@pytest.mark.parametrize("code", [0, 3])
def test_ci_ends_with_what_it_does_not_run_and_with_the_tests_own_code(
    tmp_path: Path, code: int
) -> None:
    python = tmp_path / "python3"
    python.write_text(f"#!/bin/sh\necho tests: $*\nexit {code}\n")
    python.chmod(0o755)
    way = {"PATH": f"{tmp_path}{os.pathsep}{os.environ['PATH']}"}
    command = [str(ROOT / ".ci" / "run"), "a_word"]
    ended = subprocess.run(
        command, env=os.environ | way, check=False, capture_output=True, text=True
    )
    lines = ended.stdout.splitlines()
    assert ended.returncode == code and lines[0] == "tests: ui/start.py test a_word"
    assert lines[1].startswith("Not run here")
    assert all(any(word in line for line in lines[2:]) for word in ("coverage", "mutants", "bench"))
