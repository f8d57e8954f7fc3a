"""How a copy was installed, its entry in the menu, and what ``doctor`` says to a helper."""

from __future__ import annotations

import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tracker.errors import InputError, RunError
from ui import cli, desktop_entry, installed, start
from ui.sounds import voice_apart


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A person's data folder, and an installation of a kind that is not known."""
    command = start.tool(tmp_path / "prefix", "turnpost")
    command.parent.mkdir(parents=True)
    command.write_text("#!/bin/sh\n")
    command.chmod(0o755)
    monkeypatch.setattr(sys, "prefix", str(tmp_path / "prefix"))
    monkeypatch.setattr(sys, "platform", "linux")
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "share"))
    monkeypatch.setenv("TURNPOST_DATA", str(tmp_path / "data"))
    return tmp_path


def _files(folder: Path) -> list[str]:
    return sorted(p.relative_to(folder).as_posix() for p in folder.rglob("*") if p.is_file())


def _read_string(value: str) -> str:
    """A value of an entry, its escapes taken away, letter by letter as the specification has it."""
    letters, out = iter(value), ""
    for letter in letters:
        out += {"\\": "\\", "s": " ", "n": "\n"}[next(letters)] if letter == "\\" else letter
    return out


def _read_exec(value: str) -> str:
    """The one quoted word of an ``Exec`` line, as a desktop would start it."""
    text = _read_string(value)
    assert text[0] == text[-1] == '"'
    letters, out = iter(text[1:-1]), ""
    for letter in letters:
        assert letter not in '"`$'
        if letter == "\\":
            letter = next(letters)
            assert letter in '"`$\\'
        elif letter == "%":
            letter = next(letters)
            assert letter == "%"
        out += letter
    return out


AWKWARD = '/home/Jürgen W/50%u "x" `y` $HOME \\n it\'s;=#/turnpost'


@pytest.mark.parametrize("path", ["/usr/bin/turnpost", "/a folder/turnpost", AWKWARD])
def test_an_entry_starts_the_command_whatever_its_path_holds(path: str, tmp_path: Path) -> None:
    text = desktop_entry.entry(Path(path))
    head, *lines = text.splitlines()
    assert head == "[Desktop Entry]"
    values = dict(line.split("=", 1) for line in lines)
    assert _read_exec(values["Exec"]) == path
    assert _read_string(values["TryExec"]) == path
    assert values["Icon"] == "turnpost" and values["Type"] == "Application"
    checker = shutil.which("desktop-file-validate")
    if checker:
        file = tmp_path / "turnpost.desktop"
        file.write_text(text, "utf-8")
        done = subprocess.run([checker, file], capture_output=True, text=True, check=False)
        assert (done.returncode, done.stdout) == (0, "")


def test_a_path_of_two_lines_is_refused() -> None:
    with pytest.raises(InputError, match="install Turnpost elsewhere"):
        desktop_entry.entry(Path("/a\nExec=other/turnpost"))


def test_into_the_menu_and_out_of_it_again(home: Path, capsys: pytest.CaptureFixture[str]) -> None:
    session = home / "data" / "sessions" / "one" / "summary.json"
    session.parent.mkdir(parents=True)
    session.write_text("{}")
    other = home / "share" / "applications" / "another.desktop"
    other.parent.mkdir(parents=True)
    other.write_text("[Desktop Entry]\n")
    for _ in range(2):
        assert cli.main(["desktop", "--add"]) == 0
        assert _files(home / "share") == [
            "applications/another.desktop",
            "applications/turnpost.desktop",
            "icons/hicolor/scalable/apps/turnpost.svg",
        ]
    entry = desktop_entry.entry_path().read_text("utf-8")
    assert f'Exec="{start.tool(home / "prefix", "turnpost")}"' in entry
    capsys.readouterr()
    assert cli.main(["desktop", "--remove"]) == 0
    said = capsys.readouterr().out
    assert _files(home / "share") == ["applications/another.desktop"]
    assert session.exists() and str(home / "data") in said and "pip uninstall" in said
    assert cli.main(["desktop", "--remove"]) == 0
    assert "was not in the menu" in capsys.readouterr().out


@pytest.mark.parametrize("word", ["--add", "--remove"])
def test_an_entry_of_somebody_else_is_left_alone(
    word: str, home: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = desktop_entry.entry_path()
    path.parent.mkdir(parents=True)
    path.write_text("[Desktop Entry]\nName=Turnpost\n")
    assert cli.main(["desktop", word]) == 2
    assert "was not made by Turnpost" in capsys.readouterr().err
    assert _files(home / "share") == ["applications/turnpost.desktop"]
    assert path.read_text() == "[Desktop Entry]\nName=Turnpost\n"


def test_where_nothing_can_be_written(home: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (home / "share").write_text("a file")
    assert cli.main(["desktop", "--add"]) == 2
    said = capsys.readouterr().err
    assert said.count("\n") == 1 and str(home / "share") in said


def test_a_call_must_say_which(home: Path) -> None:
    assert cli.main(["desktop"]) == 2
    assert cli.main(["desktop", "--add", "--remove"]) == 2
    assert _files(home / "share") == []


def test_without_a_command_or_on_another_system(
    home: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    start.tool(home / "prefix", "turnpost").unlink()
    assert cli.main(["desktop", "--add"]) == 1
    monkeypatch.setattr(sys, "platform", "darwin")
    assert cli.main(["desktop", "--add"]) == 2
    assert "is for Linux" in capsys.readouterr().err
    assert _files(home / "share") == []


def test_a_relative_place_is_passed_over(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", "share")
    monkeypatch.setenv("HOME", str(tmp_path))
    assert desktop_entry.data_home() == tmp_path / ".local" / "share"


@pytest.mark.parametrize(
    ("mark", "way"),
    [
        ("pipx_metadata.json", "pipx"),
        ("uv-receipt.toml", "uv"),
        ("turnpost.json", "checkout"),
        ("pyvenv.cfg", "pip"),
    ],
)
def test_how_it_was_installed_is_known(mark: str, way: str, home: Path) -> None:
    (home / "prefix" / mark).touch()
    assert installed.way() == way
    assert installed.own_command() == start.tool(home / "prefix", "turnpost")
    assert installed.models_beside() is None


def test_a_frozen_program_is_its_own_command(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "frozen", True, raising=False)
    monkeypatch.setattr(sys, "executable", str(home / "Turnpost" / "turnpost"))
    assert installed.way() == "folder"
    assert installed.own_command() == home / "Turnpost" / "turnpost"
    assert installed.models_beside() == home / "Turnpost" / "models"
    assert voice_apart.child() == (str(home / "Turnpost" / "turnpost"), voice_apart.VOICE_WORD)


def test_the_frozen_program_is_the_voice_or_the_command_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    from ui.packaging import frozen
    from ui.sounds import voice_child

    spoke = []
    monkeypatch.setattr(voice_child, "main", lambda *words: spoke.append(words) or 3)
    monkeypatch.setattr(sys, "argv", ["turnpost", voice_apart.VOICE_WORD, "mock", "en", "GB"])
    assert frozen.main() == 3 and spoke == [("mock", "en", "GB")]
    monkeypatch.setattr(sys, "argv", ["turnpost", "clips", "list"])
    assert frozen.main() == 0 and "turns-good" in capsys.readouterr().out


def test_what_is_missing_can_be_read_out(
    home: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    from tracker.vision import models
    from ui.commands import doctor

    (home / "prefix" / "pipx_metadata.json").touch()
    monkeypatch.setattr(doctor, "has_screen", lambda: True)

    def gone(name: str) -> bytes:
        reason = "its sha256 differs" if name == "hand" else "is missing"
        raise RunError(f"the model file {name}: {reason}")

    monkeypatch.setattr(models, "load_model", gone)
    assert cli.main(["doctor"]) == 1
    _, table, said = capsys.readouterr().out.split("\n\n")
    lines = said.splitlines()
    assert [x for x in lines if x[3:5] == ". "] == [
        "  1. the file that finds the face is missing: face_landmarker.task",
        "  2. the file that finds the shoulders is missing: pose_landmarker_full.task",
        "  3. the file that finds the hands is not the right one: hand_landmarker.task",
    ]
    # One remedy for the three, of the way in which this copy was installed.
    remedies = [x for x in lines if x.startswith("  - ")]
    assert len(remedies) == 1 and "pipx reinstall turnpost" in remedies[0]
    assert str(home / "data" / "models") in remedies[0]
    assert "(pipx) on " in said and table.count("MISSING") == 3


def test_a_nearly_full_disk_is_said(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from ui.commands import doctor

    assert doctor.data_folder().state == "good"
    usage = shutil.disk_usage(home)
    monkeypatch.setattr(doctor.shutil, "disk_usage", lambda _: usage._replace(free=150_000_000))
    found = doctor.data_folder()
    assert found.state == "bad" and "150 MB are free" in found.what
    assert not (home / "data").exists()
