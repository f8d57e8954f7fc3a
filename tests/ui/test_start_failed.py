"""A start that fails says so in a window and on standard error; whoever uses an icon sees one."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, Qt, QTimer
from PySide6.QtWidgets import QApplication, QMessageBox

from tests.ui import pictures
from tracker.errors import RunError
from ui import cli, opening, start_failed, theme, words
from ui.commands import doctor
from ui.languages import hush
from ui.settings import Settings

#: Half a second at most until the note stands there.
EVERY_MS, MOST_TRIES = 50, 100


@pytest.fixture
def looked_at(qapp: QApplication) -> Iterator[list[str]]:
    """What notes say that come up; each is closed by its button."""
    found: list[str] = []
    tries = 0

    def look() -> None:
        nonlocal tries
        tries += 1
        note = QApplication.activeModalWidget()
        if isinstance(note, QMessageBox) and note.isVisible():
            found.append(f"{note.text()} {note.informativeText()}")
            note.buttons()[0].click()
            timer.stop()
        elif tries > MOST_TRIES:
            timer.stop()

    font, locale = qapp.font(), QLocale()
    timer = QTimer()
    timer.timeout.connect(look)
    timer.start(EVERY_MS)
    yield found
    timer.stop()
    hush(qapp)
    theme.apply(qapp, "light")
    qapp.setFont(font)
    QLocale.setDefault(locale)
    qapp.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def test_a_data_folder_that_is_a_file_is_told_in_a_window(
    looked_at: list[str],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    (tmp_path / "data").touch()
    monkeypatch.setenv("TURNPOST_DATA", str(tmp_path / "data"))
    assert cli.main([]) == 1
    assert "can't be made" in capsys.readouterr().err
    (told,) = looked_at
    assert words.say("not_open.title") in told and words.say("not_open.what") in told
    assert str(tmp_path / "data") in told


def test_what_nobody_foresaw_is_told_in_the_language_chosen(
    looked_at: list[str],
    private_data_folder: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    private_data_folder.mkdir(parents=True, exist_ok=True)
    settings = Settings(private_data_folder / "window.ini")
    settings.language = "de"
    settings.sync()

    def fail(**_: object) -> None:
        raise ZeroDivisionError("of a kind")

    monkeypatch.setattr("ui.opening.open_window", fail)
    assert cli.main(["open"]) == 1
    assert "ZeroDivisionError: of a kind" in capsys.readouterr().err
    (told,) = looked_at
    assert "konnte nicht starten" in told and "ZeroDivisionError: of a kind" in told


def test_without_a_screen_no_window_is_tried(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "data").touch()
    monkeypatch.setenv("TURNPOST_DATA", str(tmp_path / "data"))
    monkeypatch.setattr(start_failed, "has_screen", lambda: False)
    made: list[Exception] = []
    monkeypatch.setattr(start_failed, "note_of", made.append)
    assert cli.main([]) == 1
    assert "can't be made" in capsys.readouterr().err and not made


@pytest.mark.parametrize("code", ["en", "ar"])
@pytest.mark.parametrize("percent", [100, 200])
def test_the_note_fits_a_laptop(
    qapp: QApplication,
    looked_at: list[str],
    private_data_folder: Path,
    qtbot: Callable[..., None],
    code: str,
    percent: int,
) -> None:
    private_data_folder.mkdir(parents=True, exist_ok=True)
    settings = Settings(private_data_folder / "window.ini")
    settings.language, settings.text_percent = code, percent
    settings.sync()
    note = start_failed.note_of(RunError(f"{private_data_folder}: the folder can't be made (x)"))
    note.show()
    qapp.processEvents()
    pictures.keep(note, f"not-open-{code}-{percent}")
    assert note.width() <= 1366 and note.height() <= 768
    note.close()
    note.deleteLater()


NO_SCREEN = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
#: No machine has so many.
NOBODYS = ":54321"


ON_X = pytest.mark.skipif(sys.platform != "linux", reason="elsewhere there is always a screen")


def said(called: list[str], folder: Path, **screen: str) -> str:
    """What a command says that fails by itself: Qt would end with a signal."""
    env = {k: v for k, v in os.environ.items() if k not in NO_SCREEN} | screen
    root = Path(__file__).parents[2]
    ended = subprocess.run(
        [sys.executable, "-m", "ui.cli", *called],
        cwd=folder,
        env=env | {"TURNPOST_DATA": str(folder / "data"), "PYTHONPATH": str(root)},
        check=False,
        capture_output=True,
        text=True,
        timeout=60,
    )
    assert ended.returncode == 1
    (line,) = ended.stderr.splitlines()
    return line


@ON_X
@pytest.mark.parametrize(
    "called", [[], ["demo"], ["demo", "--auto"], ["review", "."], ["plan", "edit"]]
)
def test_without_a_screen_it_is_said_in_one_line(called: list[str], tmp_path: Path) -> None:
    wanted = "turnpost: there is no screen to open a window on; start from a desktop"
    assert said(called, tmp_path) == wanted


@ON_X
def test_a_screen_that_is_not_there_is_said_in_one_line(tmp_path: Path) -> None:
    line = said(["plan", "edit"], tmp_path, QT_QPA_PLATFORM="xcb")
    assert "there is no screen" in line
    for named in ({}, {"QT_QPA_PLATFORM": "xcb"}):
        line = said(["plan", "edit"], tmp_path, DISPLAY=NOBODYS, **named)
        assert f"the screen {NOBODYS} can't be reached" in line


@ON_X
def test_the_doctor_names_a_screen_that_does_not_answer(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("DISPLAY", NOBODYS)
    for name in NO_SCREEN[1:]:
        monkeypatch.delenv(name, raising=False)
    found = doctor.screen()
    assert found.state == "bad" and f"the screen {NOBODYS} can't be reached" in found.what


@ON_X
def test_what_a_window_lacks_is_named(monkeypatch: pytest.MonkeyPatch) -> None:
    def lacks(_: str) -> None:
        raise OSError("libxcb-cursor.so.0: cannot open shared object file")

    monkeypatch.setenv("DISPLAY", NOBODYS)
    for name in NO_SCREEN[1:]:
        monkeypatch.delenv(name, raising=False)
    with pytest.raises(RunError, match="can't be reached"):
        opening._must_show_windows()
    monkeypatch.setattr(opening.ctypes, "CDLL", lacks)
    with pytest.raises(RunError, match=r"libxcb-cursor\.so\.0.*'turnpost doctor'"):
        opening._must_show_windows()
    monkeypatch.setenv("WAYLAND_DISPLAY", "wayland-0")
    opening._must_show_windows()
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    opening._must_show_windows()
