"""The ways of the house: pinned libraries, one OpenCV, and a conftest that holds its word."""

from __future__ import annotations

import os
import re
import subprocess
import sys
import tomllib
from importlib import metadata
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))


def test_mediapipe_is_the_one_that_sends_nothing() -> None:
    # Later ones send usage figures to their maker: DEVELOPERS.md.
    assert metadata.version("mediapipe") == "0.10.31"
    assert "mediapipe==0.10.31" in PROJECT["project"]["dependencies"]


def test_there_is_one_opencv() -> None:
    found = {d.metadata["Name"].lower().replace("_", "-") for d in metadata.distributions()}
    assert {name for name in found if "opencv" in name} == {"opencv-python"}


def test_every_folder_of_the_program_is_packed() -> None:
    packed = set(PROJECT["tool"]["hatch"]["build"]["targets"]["wheel"]["packages"])
    assert packed == {"tracker", "calibration", "ui", "sample_clips"}
    assert packed == set(PROJECT["tool"]["importlinter"]["root_packages"])


def _pytest_on(folder: Path, test: str, *words: str, **environment: str) -> tuple[int, str]:
    """Run a test file under our conftest in a folder of its own."""
    (folder / "conftest.py").write_text((ROOT / "tests" / "conftest.py").read_text("utf-8"))
    (folder / "test_it.py").write_text(test)
    (folder / "pytest.ini").write_text(
        "[pytest]\ngui_tests_at_least = 1\ntestpaths = .\nmarkers = gui: x\n"
        "qt_log_level_fail = WARNING\nqt_api = pyside6\n"
    )
    kept = {k: v for k, v in os.environ.items() if not k.startswith(("PYTEST", "COV"))}
    done = subprocess.run(
        [sys.executable, "-m", "pytest", "-p", "no:cacheprovider", "-q", *words],
        cwd=folder,
        env={**kept, **environment},
        capture_output=True,
        text=True,
        check=False,
    )
    return done.returncode, done.stdout + done.stderr


def test_a_thread_left_running_fails(tmp_path: Path) -> None:
    test = (
        "import threading, time\n"
        "def test_it():\n"
        "    kind = {'name': 'slowcoach', 'daemon': True}\n"
        "    threading.Thread(target=time.sleep, args=(30,), **kind).start()\n"
    )
    code, output = _pytest_on(tmp_path, test, "test_it.py")
    assert code == 1 and "left running: thread slowcoach" in output


@pytest.mark.skipif(sys.platform != "linux", reason="other processes are seen on Linux only")
def test_a_process_left_running_fails(tmp_path: Path) -> None:
    test = (
        "import subprocess\n"
        "kept = []\n"
        "def test_it():\n"
        "    kept.append(subprocess.Popen(['sleep', '8']))\n"
    )
    code, output = _pytest_on(tmp_path, test, "test_it.py")
    assert code == 1 and "left running: process" in output and "sleep 8" in output


def test_what_ends_by_itself_is_no_fault(tmp_path: Path) -> None:
    test = (
        "import subprocess, threading, time\n"
        "from multiprocessing import shared_memory\n"
        "kept = []\n"
        "def test_it():\n"
        "    threading.Thread(target=time.sleep, args=(0.3,)).start()\n"
        "    kept.append(subprocess.Popen(['sleep', '0.3']))\n"
        "    memory = shared_memory.SharedMemory(create=True, size=10)\n"
        "    memory.close()\n"
        "    memory.unlink()\n"
    )
    code, output = _pytest_on(tmp_path, test, "test_it.py")
    assert code == 0, output


GUI_TEST = "def test_it(qapp):\n    assert qapp.platformName() not in ('offscreen', 'minimal')\n"


@pytest.mark.skipif(sys.platform != "linux", reason="elsewhere there is always a screen")
@pytest.mark.parametrize(
    ("platform", "display", "says"),
    [("offscreen", ":0", "platform without a screen"), ("", "", "there is no display")],
)
def test_a_window_that_can_not_open_fails(
    platform: str, display: str, says: str, tmp_path: Path
) -> None:
    code, output = _pytest_on(
        tmp_path, GUI_TEST, QT_QPA_PLATFORM=platform, DISPLAY=display, WAYLAND_DISPLAY=""
    )
    assert code == 1 and says in output and "skipped" not in output


def test_a_skipped_window_fails(tmp_path: Path) -> None:
    test = "import pytest\n@pytest.mark.gui\ndef test_it():\n    pytest.skip('no mood')\n"
    code, output = _pytest_on(tmp_path, test, DISPLAY=":0", QT_QPA_PLATFORM="xcb")
    assert code == 1 and "must not be skipped" in output


def test_missing_windows_fail_a_full_run_alone(tmp_path: Path) -> None:
    test = "def test_it():\n    pass\ndef test_other():\n    pass\n"
    code, output = _pytest_on(tmp_path, test)
    assert code == 1 and "only 0 tests with a window passed, 1 must" in output
    for words in (["test_it.py"], ["-k", "other"], ["test_it.py::test_it"]):
        code, output = _pytest_on(tmp_path, test, *words)
        assert code == 0, output


@pytest.mark.gui
def test_windows_are_counted(tmp_path: Path) -> None:
    code, output = _pytest_on(tmp_path, GUI_TEST)
    assert code == 0 and "tests with a window that passed: 1" in output, output


@pytest.mark.gui
def test_a_warning_of_qt_fails(tmp_path: Path) -> None:
    test = (
        "from PySide6 import QtCore\ndef test_it(qapp):\n    QtCore.qWarning('something is odd')\n"
    )
    code, output = _pytest_on(tmp_path, test, "test_it.py")
    assert code == 1 and "something is odd" in output


def test_what_is_said_to_hold_a_hazard_exists() -> None:
    text = (ROOT / "DEVELOPERS.md").read_text("utf-8")
    named = re.findall(r"`(tests/[\w/]+\.py)(?:::(\w+))?`", text)
    assert len(named) > 20
    for file, test in named:
        assert (ROOT / file).exists(), file
        assert not test or f"def {test}(" in (ROOT / file).read_text("utf-8"), (file, test)
