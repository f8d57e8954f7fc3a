"""What the program remembers: a spoilt file keeps nobody from starting."""

from __future__ import annotations

import errno
import os
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QByteArray

from tests.ui.fakes import Make
from ui.settings import Settings
from ui.settings_file import make_harmless

#: Every value that is asked for by name.
NAMES = tuple(n for n, found in vars(Settings).items() if isinstance(found, property))
#: Values that no version ever wrote.
ODD = (
    *("inf", "-inf", "nan", "1e400", "-1", "9" * 5000, "100.5", "", "@Invalid()"),
    *("a, b, c", "@Variant(x)", "@ByteArray(x)", "\\x0", "/dev/zero", "/", "x" * 5000, "²;²;left"),
)


def spoilt(folder: Path, value: str, *names: str) -> Settings:
    path = folder / "window.ini"
    lines = [f"{name}={value}" for name in names]
    text = "\n".join(("[General]", *lines, "[screens]", f"s={value}", ""))
    path.write_text(text, encoding="utf-8")
    return Settings(path)


@pytest.mark.parametrize("value", ODD, ids=lambda v: v[:12])
def test_every_value_can_be_read_whatever_the_file_holds(tmp_path: Path, value: str) -> None:
    settings = spoilt(tmp_path, value, *NAMES)
    for name in NAMES:
        getattr(settings, name)
    assert settings.screen_px_mm("s") is None
    assert settings.text_percent == 100 and settings.mark is None


@pytest.mark.parametrize("value", ["\\x0", "/dev/zero", "/", "x" * 5000], ids=lambda v: v[:12])
def test_a_name_that_no_plan_can_have_counts_as_no_plan(tmp_path: Path, value: str) -> None:
    assert spoilt(tmp_path, value, "plan").plan is None


@pytest.mark.parametrize(
    "packed",
    [
        r"@Variant(\0\0\0\x4d\0\0\0\0\x1\x44)",
        r"a, @DataStream(\0\0\0\x4d)",
        r"\x40Variant(\0\0\0\x4d\0)",
        r"\100Variant(\0\0\0\x4d\0)",
        r'@"Var"iant(\0\0\0\x4d\0)',
        "@Vari\\\nant(\\0)",
        # What Qt undoes besides: letters that it doesn't know, numbers of more than 16 bits, a
        # line that goes on after a lone return.
        r"@V\zariant(\0\0\0\x41\0\0\0\0\x1\x44)",
        r"\x10040Variant(\0\0\0\x4d\0)",
        r"\200100Variant(\0\0\0\x4d\0)",
        r"@Vari\%ant(\0\0\0\x4d\0)",
        "@Vari\\\rant(\\0\\0\\0\\x4d\\0)",
        r"\z@Variant(\0\0\0\x4d\0)",
        'x, "@Variant(\\0\\0\\0\\x4d\\0)"',
        "@ByteArray(x), @Variant(\\0\\0\\0\\x4d\\0)",
        '"\n@Variant(\\0\\0\\0\\x4d\\0)"',
    ],
)
def test_a_packed_value_never_reaches_qt_which_crashes_over_it(tmp_path: Path, packed: str) -> None:
    settings = spoilt(tmp_path, packed, "camera")
    assert settings.camera in ("", "camera")
    text = (tmp_path / "window.ini").read_text(encoding="utf-8")
    assert "ariant" not in text and "Stream" not in text and "[screens]" in text


def test_half_a_sign_lets_no_packed_value_begin(tmp_path: Path) -> None:
    """Qt's decoder holds the half back and gives nothing for it."""
    path = tmp_path / "window.ini"
    packed = b"\xc2" + "".join(f"\\x{ord(c):x}" for c in "@Variant(").encode() + rb"\0\0\0\x4d\0)"
    path.write_bytes(b"[General]\ncamera=" + packed + b"\ntext_percent=150\n")
    settings = Settings(path)
    assert settings.camera == "" and settings.text_percent == 150
    assert b"\xc2" not in path.read_bytes()


def test_a_camera_whose_name_begins_with_an_at_sign_is_known_again(tmp_path: Path) -> None:
    settings = Settings(tmp_path / "window.ini")
    settings.camera = "@home cam"
    settings.sync()
    assert Settings(tmp_path / "window.ini").camera == "@home cam"


def test_whatever_this_program_keeps_is_plain_enough(tmp_path: Path) -> None:
    path = tmp_path / "window.ini"
    settings, bare = Settings(path), QByteArray(b"\x01\xd9 ab\x000")
    kept: dict[str, Any] = {
        "text_percent": 150,
        "camera": "K\u00e4m\u05d0ra, two; \\\\?\\usb#vid&\U0001f4f7 5\x1f @home",
        "plan": tmp_path / "kim@home" / "@work" / '"a"; b=c.json',
        "mark": (150, 40, "left"),
        "words_refused": ("0a", "1b"),
        "window": QByteArray(bytes(range(256))),
        "language": "",
    }
    for name, value in kept.items():
        setattr(settings, name, value)
    settings.set_screen_px_mm("DP/1 \u00e4", 3.5)
    settings.sync()
    before = path.read_bytes()
    again = Settings(path)
    assert path.read_bytes() == before
    assert {name: getattr(again, name) for name in kept} == kept
    assert again.screen_px_mm("DP/1 \u00e4") == 3.5
    again.window = bare
    again.sync()
    assert Settings(path).window == bare


@pytest.mark.parametrize("odd", ["pipe", "packed"])
def test_in_a_folder_that_can_only_be_read_qt_is_given_no_such_file(
    tmp_path: Path, odd: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Refused ways of changing it stand in for the folder: rights don't bind the administrator."""

    def refused(*_: object, **_more: object) -> None:
        raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))

    path = tmp_path / "window.ini"
    if odd == "packed":
        path.write_text("[General]\ntext_percent=150\ncamera=@Variant(\\0)\n")
    elif hasattr(os, "mkfifo"):
        os.mkfifo(path)
    else:
        pytest.skip("there are no pipes with names here")
    monkeypatch.setattr(Path, "unlink", refused)
    monkeypatch.setattr("tracker.session.files.tempfile.mkstemp", refused)
    given = make_harmless(path)
    # Qt, which would crash or wait over the other, is asked for this one alone.
    assert given != path and not given.exists()
    monkeypatch.setattr("ui.settings.make_harmless", lambda _: given)
    settings = Settings(path)
    assert settings.text_percent == 100
    settings.text_percent = 200
    settings.sync()
    assert settings.text_percent == 200


@pytest.mark.parametrize("kind", ["pipe", "device", "large"])
def test_what_can_not_be_a_file_of_settings_is_not_waited_for(tmp_path: Path, kind: str) -> None:
    path = tmp_path / "window.ini"
    if kind == "large":
        path.write_bytes(b"[General]\ntext_percent=150\nx=" + b"x" * 1_000_000)
    elif not hasattr(os, "mkfifo"):
        pytest.skip("there are no pipes with names here")
    elif kind == "pipe":
        os.mkfifo(path)
    else:
        path.symlink_to("/dev/zero")
    done = subprocess.run([sys.executable, "-c", CHANGED, str(path)], timeout=30, check=False)
    assert done.returncode == 0
    assert path.is_file() and path.stat().st_size < 1000
    assert Settings(path).text_percent == 200


#: In a process of its own: what Qt waits for in C++ no limit of time ends.
CHANGED = """
import sys
from pathlib import Path
from ui.settings import Settings
from ui.settings_file import make_harmless
settings = Settings(Path(sys.argv[1]))
assert settings.text_percent == 100
settings.text_percent = 200
settings.sync()
"""


def test_a_lock_that_a_kill_has_left_is_not_waited_for(tmp_path: Path) -> None:
    lock = tmp_path / "window.ini.lock"
    for moved_s in (-60.0, 3600.0):
        lock.write_text("1\n")
        at = time.time() + moved_s
        os.utime(lock, (at, at))
        Settings(tmp_path / "window.ini")
        assert not lock.exists()
    lock.write_text("1\n")
    Settings(tmp_path / "window.ini")
    assert lock.exists(), "one of this moment may be another program's"
    lock.write_text("")
    Settings(tmp_path / "window.ini")
    assert not lock.exists(), "an empty one names no program"


def test_a_plan_on_a_stick_that_is_not_plugged_in_stays_remembered(tmp_path: Path) -> None:
    gone = tmp_path / "stick" / "plan.json"
    assert spoilt(tmp_path, str(gone), "plan").plan == gone


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="there are no pipes with names here")
def test_a_pipe_counts_as_no_plan(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "plan.json")
    assert spoilt(tmp_path, str(tmp_path / "plan.json"), "plan").plan is None


@pytest.mark.parametrize("value", ["inf", "\\x0", "/dev/zero"])
def test_the_window_opens_whatever_the_file_holds(make: Make, tmp_path: Path, value: str) -> None:
    spoilt(tmp_path, value, *(n for n in NAMES if n not in ("text_percent", "colours", "language")))
    window = make(first=None)
    assert window.isVisible() and window.director.plan is None


@pytest.mark.skipif(os.name != "posix", reason="permissions of another kind there")
def test_nobody_else_reads_the_file(tmp_path: Path) -> None:
    path = tmp_path / "window.ini"
    for before in (None, 0o644):
        if before is not None:
            path.chmod(before)
        settings = Settings(path)
        settings.text_percent = 150
        settings.sync()
        assert path.stat().st_mode & 0o777 == 0o600
        assert Settings(path).text_percent == 150


CHOOSES = """
import sys
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog
from ui.opening import make_app
app = make_app()
def choose():
    dialog = app.activeModalWidget()
    if dialog is None:
        QTimer.singleShot(50, choose)
    else:
        QTest.keyClick(dialog, Qt.Key.Key_Return)
QTimer.singleShot(50, choose)
option = QFileDialog.Option.DontUseNativeDialog
print(QFileDialog.getSaveFileName(None, "", sys.argv[1], options=option)[0])
"""


@pytest.mark.gui
@pytest.mark.skipif(sys.platform != "linux", reason="Qt writes it elsewhere on other systems")
def test_no_folder_that_a_file_was_chosen_in_is_written_down(tmp_path: Path) -> None:
    chosen, home = tmp_path / "M. Rossi", tmp_path / "home"
    chosen.mkdir()
    home.mkdir()
    env = os.environ | {"HOME": str(home), "XDG_CONFIG_HOME": str(home / "config")}
    env["PYTHONPATH"] = str(Path(__file__).parents[2])
    done = subprocess.run(
        [sys.executable, "-c", CHOOSES, str(chosen / "sessions.zip")],
        env=env,
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )
    assert done.stdout.strip() == str(chosen / "sessions.zip")
    written = [p for p in home.rglob("*") if p.is_file()]
    assert not [p for p in written if b"Rossi" in p.read_bytes()]
