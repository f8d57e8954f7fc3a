"""The window with the real measuring process, journal and files."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
from pytestqt.qtbot import QtBot

from tests.ui.test_planned import plan_of
from tests.vision.clip_files import write_clip
from tests.vision.fakes import EndlessSource
from tracker.plan.gate import QUESTIONS
from tracker.plan.model import Entry
from tracker.practice.tasks import AskGate, Prepare, ShowToday
from tracker.session.journal import read_journal
from tracker.session.trace import load_trace
from tracker.vision.messages import ClipSource, LazyFactory
from ui import wiring
from ui.app import Window
from ui.ports import CameraChoice, ServiceLike
from ui.session.flow import Phase
from ui.settings import Settings

pytestmark = pytest.mark.alone

ROOT = Path(__file__).parents[2]
MIDDLE = [0.0, -60.0, 600.0]


@pytest.fixture
def clip(tmp_path: Path) -> Path:
    """A clip of eight seconds with a stage log of a short set-up and three repetitions."""
    path = write_clip(tmp_path / "short.mp4", n=255)
    looks = [[100.0, -60.0, 600.0], [-100.0, -60.0, 600.0], [0.0, 0.0, 600.0]]
    steps: list[dict[str, Any]] = [
        {"from_s": 0, "to_s": 0.6, "step": "rest", "target_mm": MIDDLE},
        *(
            {"from_s": 0.6 + 0.4 * k, "to_s": 1.0 + 0.4 * k, "step": "look", "target_mm": look}
            for k, look in enumerate(looks)
        ),
        {
            "from_s": 1.8,
            "to_s": 8.2,
            "step": "exercise",
            "exercise": "turns-on-target",
            "entry_id": "e1",
            "tempo_bpm": 60,
            "target_mm": MIDDLE,
        },
    ]
    log = {"camera": {"vertical_fov_deg": 50}, "steps": steps}
    path.with_name("short.stage.json").write_text(json.dumps(log), encoding="utf-8")
    return path


def plain_service(source: Any, profile: Any) -> ServiceLike:
    from tracker.vision.service import Service

    return Service(ClipSource(source), LazyFactory("tests.ui.plain_measurer:make"))


@pytest.fixture
def window(
    qtbot: QtBot, clip: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[Window]:
    monkeypatch.setattr(wiring, "make_service", plain_service)
    plan = wiring.clip_plan(clip)
    settings = Settings(tmp_path / "window.ini")
    settings.first_step = ""
    made = Window(wiring.make_world(), clip=plan, demo_clip=lambda: plan, settings=settings)
    qtbot.addWidget(made)
    made.resize(1366, 768)
    made.show()
    yield made
    made.close()


def test_a_clip_runs_to_its_files(qtbot: QtBot, window: Window, private_data_folder: Path) -> None:
    window.director.start()
    qtbot.waitUntil(lambda: window.director.phase == Phase.exercise, timeout=20_000)
    qtbot.waitUntil(lambda: window.director.phase == Phase.summary, timeout=30_000)
    saved = window.director.saved
    assert saved is not None, window.director.save_error
    assert saved.folder.parent == private_data_folder / "sessions"
    names = {p.name for p in saved.folder.iterdir()}
    assert names == {"journal.jsonl", "summary.json", "trace.csv", "stage.json"}
    summary = json.loads(saved.summary_path.read_text(encoding="utf-8"))
    assert summary["ended"] == "finished"
    done = summary["exercises"][0]["done"]
    assert done["repetitions"] == 3 and done["measured_fraction"] > 0.95
    assert summary["exercises"][0]["prescribed"]["repetitions"] == 3
    assert all(p.stat().st_mode & 0o077 == 0 for p in saved.folder.iterdir())


def test_closing_in_the_middle_ends_the_child_and_saves(qtbot: QtBot, window: Window) -> None:
    window.director.start()
    qtbot.waitUntil(lambda: window.director.phase == Phase.exercise, timeout=20_000)
    qtbot.wait(800)
    begun_s = time.monotonic()
    window.close()
    assert time.monotonic() - begun_s < 4
    saved = window.director.saved
    assert saved is not None
    assert saved.summary["ended"] == "stopped"
    assert read_journal(saved.folder / "journal.jsonl").ended == "stopped"
    # The fixture that looks for left-over processes and threads does the rest.


def kill_the_measuring() -> None:
    children = Path(f"/proc/{os.getpid()}/task/{os.getpid()}/children").read_text().split()
    for child in children:
        if b"spawn_main" in Path(f"/proc/{child}/cmdline").read_bytes():
            os.kill(int(child), signal.SIGKILL)


def events_after_a_kill(qtbot: QtBot, window: Window) -> set[str]:
    """Kill the measuring in mid-exercise; the events of the session that goes on."""
    director = window.director
    director.start()
    qtbot.waitUntil(lambda: director.phase == Phase.exercise, timeout=20_000)
    qtbot.wait(500)
    newest_s = director.sample.time_s if director.sample else 0.0
    kill_the_measuring()
    qtbot.waitUntil(lambda: director.not_measured != "", timeout=10_000)
    assert director.phase == Phase.exercise
    qtbot.waitUntil(
        lambda: director.sample is not None and director.sample.time_s > newest_s + 1,
        timeout=20_000,
    )
    qtbot.waitUntil(lambda: director.not_measured == "", timeout=10_000)
    director.stop()
    qtbot.waitUntil(lambda: director.phase == Phase.summary, timeout=5_000)
    assert director.saved is not None
    return {e["code"] for e in director.saved.summary["exercises"][0]["events"]}


def test_a_killed_measuring_process_leaves_no_gap_in_a_clip(qtbot: QtBot, window: Window) -> None:
    assert "not_measured" not in events_after_a_kill(qtbot, window)
    assert longest_hole_s(window) < 0.05


def longest_hole_s(window: Window) -> float:
    """The longest time between two samples of the saved trace."""
    saved = window.director.saved
    assert saved is not None
    times = [s.time_s for s in load_trace(saved.folder / "trace.csv")]
    return max(b - a for a, b in pairwise(times))


def like_a_camera(source: Any, profile: Any) -> ServiceLike:
    from tracker.vision.service import Service

    return Service(EndlessSource(rate_hz=30.0), LazyFactory("tests.ui.plain_measurer:make"))


def test_a_killed_measuring_process_of_a_camera_does_not_end_the_session(
    qtbot: QtBot, window: Window
) -> None:
    window.director._world.make_service = like_a_camera
    events = events_after_a_kill(qtbot, window)
    hole_s = longest_hole_s(window)
    # A process that is quick to come back leaves no half second without a sample.
    assert 0.1 < hole_s < 3.0
    assert ("not_measured" in events) == (hole_s >= 0.5), hole_s


def test_a_planned_session_keeps_one_clock(
    qtbot: QtBot, window: Window, monkeypatch: pytest.MonkeyPatch, private_data_folder: Path
) -> None:
    """Questions before the camera, a set-up and a set with it: all on the session's clock."""
    for name, value in (("READ_S", 0.1), ("REST_S", 0.5), ("LOOK_S", 0.2)):
        monkeypatch.setattr(f"ui.session.asked_setup.{name}", value)
    for name in ("TURN_S", "NOD_S"):
        monkeypatch.setattr(f"ui.session.asked_setup.{name}", 0.5)
    director = window.director
    director.clip = None
    director._world.make_service = like_a_camera
    director._world.cameras = lambda: [CameraChoice(0, "Camera")]
    director.start_plan(
        plan_of(Entry(entry_id="tilts", exercise="turns-together", repetitions=2), rest_s=0)
    )
    qtbot.waitUntil(lambda: isinstance(director.task, AskGate), timeout=5_000)
    qtbot.wait(700)
    director.answer(dict.fromkeys(QUESTIONS, False))
    director.answer({"dizziness": 0})
    assert isinstance(director.task, ShowToday)
    director.answer(True)
    assert isinstance(director.task, Prepare)
    director.in_place()
    qtbot.waitUntil(lambda: director.sample is not None, timeout=20_000)
    director.begin_setup()
    qtbot.waitUntil(lambda: director.phase == Phase.countdown, timeout=20_000)
    assert director.now_s > 4.0
    qtbot.waitUntil(lambda: director.phase == Phase.exercise, timeout=10_000)
    qtbot.waitUntil(lambda: director.phase == Phase.asking, timeout=20_000)
    director.stop()
    qtbot.waitUntil(lambda: director.phase == Phase.summary, timeout=5_000)
    saved = director.saved
    assert saved is not None, director.save_error
    (done,) = saved.summary["exercises"]
    assert done["done"]["repetitions"] == 2
    assert done["done"]["measured_fraction"] > 0.9
    times = [s.time_s for s in load_trace(saved.folder / "trace.csv")]
    assert times == sorted(times) and times[0] > 0.7
    assert saved.folder.parent == private_data_folder / "sessions"


def test_the_window_is_not_held_up_by_saving(qtbot: QtBot, window: Window) -> None:
    director = window.director
    director.start()
    qtbot.waitUntil(lambda: director.phase == Phase.exercise, timeout=20_000)
    qtbot.wait(500)
    # The thread's own time: other work on the machine is not the window's.
    begun_s = time.thread_time()
    director.stop()
    assert time.thread_time() - begun_s < 0.05
    qtbot.waitUntil(lambda: director.phase == Phase.summary, timeout=5_000)


def test_the_window_needs_no_vision_library() -> None:
    code = (
        "import sys, ui.app, ui.wiring, ui.sounds.sound\n"
        "import tracker.vision.service\n"
        "heavy = {'cv2', 'mediapipe', 'scipy', 'matplotlib'} & set(sys.modules)\n"
        "print(sorted(heavy))"
    )
    found = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True
    )
    assert found.stdout.strip() == "[]"
