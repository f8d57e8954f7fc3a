"""Shared memory: none stays behind, whoever is killed when."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from multiprocessing import resource_tracker
from multiprocessing.shared_memory import SharedMemory
from pathlib import Path
from typing import Any

import pytest

from tests.vision.fakes import EndlessSource, make
from tracker.errors import RunError
from tracker.vision import blocks
from tracker.vision.blocks import PREFIX, SHOWN_IN, OwnBlock, join
from tracker.vision.preview import Preview
from tracker.vision.service import Service

ROOT = Path(__file__).parents[2]
shown = pytest.mark.skipif(not SHOWN_IN.is_dir(), reason="shared memory is not shown as files")


def exists(name: str) -> bool:
    return (SHOWN_IN / name).exists()


def run(code: str, **options: Any) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, "-c", code],
        cwd=ROOT,
        env=os.environ | {"PYTHONPATH": str(ROOT)},
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        **options,
    )


def test_the_owner_takes_it_away_and_may_do_so_twice() -> None:
    block = OwnBlock(100)
    assert block.memory.name.startswith(f"{PREFIX}{os.getpid()}-") and len(block.memory.name) < 30
    other = join(block.memory.name)
    other.buf[3] = 7
    assert block.memory.buf[3] == 7
    name = block.memory.name
    block.take_away()
    block.take_away()
    other.close()
    with pytest.raises(FileNotFoundError):
        SharedMemory(name=name)


@shown
def test_an_exit_without_a_word_leaves_nothing() -> None:
    code = (
        "from tracker.vision.preview import Preview\n"
        "block = Preview()\n"
        "print(block.name, flush=True)\n"
        "raise SystemExit(3)"
    )
    program = run(code)
    out, err = program.communicate(timeout=30)
    assert program.returncode == 3 and err == ""
    assert not exists(out.strip())


@shown
def test_what_a_killed_program_leaves_the_next_takes_away(monkeypatch: pytest.MonkeyPatch) -> None:
    """Killed with its whole group, so that Python's tracker can't clear up either."""
    code = (
        "import time\n"
        "from tracker.vision.preview import Preview\n"
        "block = Preview()\n"
        "print(block.name, flush=True)\n"
        "time.sleep(60)"
    )
    program = run(code, start_new_session=True)
    assert program.stdout is not None
    name = program.stdout.readline().strip()
    monkeypatch.setattr(blocks, "YOUNG_S", 0.0)
    Preview().unlink()
    assert exists(name), "its owner lives"
    os.killpg(program.pid, signal.SIGKILL)
    program.communicate()
    assert exists(name), "else this test shows nothing"
    monkeypatch.setattr(blocks, "YOUNG_S", 1000.0)
    Preview().unlink()
    assert exists(name), "too young to be judged"
    monkeypatch.setattr(blocks, "YOUNG_S", 0.0)
    Preview().unlink()
    assert not exists(name)


def test_joining_does_not_make_python_track_it(monkeypatch: pytest.MonkeyPatch) -> None:
    told: list[Any] = []
    block = OwnBlock(100)
    monkeypatch.setattr(resource_tracker, "register", lambda *a: told.append(a))
    join(block.memory.name).close()
    assert told == []
    block.take_away()


def test_a_service_that_cannot_start_leaves_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    made: list[str] = []
    create = Preview.__init__

    def noted(self: Preview, name: str | None = None) -> None:
        create(self, name)
        made.append(self.name)

    def fail(*_: Any) -> None:
        raise OSError("no more processes")

    monkeypatch.setattr(Preview, "__init__", noted)
    monkeypatch.setattr("tracker.vision.service.Child", fail)
    with pytest.raises(OSError, match="no more"):
        Service(EndlessSource(), make).start()
    with pytest.raises(FileNotFoundError):
        SharedMemory(name=made[0])


@shown
@pytest.mark.parametrize("wait_s", [0.0, 0.15, 0.3, 0.6])
def test_a_child_killed_at_any_moment_leaves_nothing(wait_s: float) -> None:
    service = Service(EndlessSource(), make, keep_spare=False)
    service.start()
    assert service._block is not None and service._child is not None
    name = service._block.name
    time.sleep(wait_s)
    os.kill(service._child.pid, signal.SIGKILL)
    service.poll()
    service.stop()
    assert not exists(name)


@shown
def test_where_there_is_too_little_memory_it_is_refused_and_nothing_stays() -> None:
    # Else whoever writes a picture into it would be killed by the system.
    room = os.statvfs(SHOWN_IN)
    if not room.f_blocks:
        pytest.skip("this system sets no limit to it")
    own = f"{PREFIX}{os.getpid()}-*"
    before = set(SHOWN_IN.glob(own))
    # More than there could ever be: refused at once, before any of it is taken.
    with pytest.raises(RunError, match="too little memory for pictures"):
        OwnBlock(room.f_blocks * room.f_frsize + 100_000_000)
    assert set(SHOWN_IN.glob(own)) == before


@shown
def test_its_memory_is_there_from_the_beginning() -> None:
    block = OwnBlock(3_000_000)
    try:
        assert (SHOWN_IN / block.memory.name).stat().st_blocks * 512 >= 3_000_000
    finally:
        block.take_away()
