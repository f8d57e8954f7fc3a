"""A disk that is full, read-only, slow to come or gone: the session goes on, nothing is lost."""

from __future__ import annotations

import errno
import os
import shutil
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from tests.session.synthetic import steps, turns_samples
from tracker.errors import InputError, RunError, system_reason
from tracker.session import journal as journal_module
from tracker.session.engine import Engine
from tracker.session.files import write_atomically
from tracker.session.journal import FileJournal, read_journal
from tracker.session.live import SessionInfo
from tracker.session.recovery import interrupted_sessions
from tracker.session.saving import JOURNAL_NAME, MOVED_NAME, save_session
from ui.wiring import Recording

ROOT = Path(__file__).parents[2]
HEAD = {"kind": "session", "format": "turnpost-journal", "format_version": 1, "about": {}}


def mark(k: int) -> dict[str, Any]:
    return {"kind": "mark", "name": f"m{k}", "time_s": float(k)}


def until(reached: Callable[[], object], limit_s: float = 10.0) -> None:
    end_s = time.monotonic() + limit_s
    while not reached():
        assert time.monotonic() < end_s
        time.sleep(0.02)


class Disk:
    """The journal's own calls of the system, some of which fail with an error number."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.error = 0
        self.takes = 10**9
        self._write, self._fsync = os.write, os.fsync
        monkeypatch.setattr(journal_module.os, "write", self.write)
        monkeypatch.setattr(journal_module.os, "fsync", self.fsync)

    def write(self, handle: int, data: bytes) -> int:
        if self.error and self.takes <= 0:
            raise OSError(self.error, os.strerror(self.error))
        if self.error:
            data = bytes(data)[: self.takes]  # a disk that fills up takes a part
        done = self._write(handle, data)
        self.takes -= done
        return done

    def fsync(self, handle: int) -> None:
        self._fsync(handle)


@pytest.fixture
def disk(monkeypatch: pytest.MonkeyPatch) -> Disk:
    return Disk(monkeypatch)


@pytest.mark.parametrize("number", [errno.ENOSPC, errno.EROFS, errno.EIO])
def test_what_the_disk_refuses_is_written_when_it_takes_it_again(
    tmp_path: Path, disk: Disk, number: int
) -> None:
    """A write call that fails stands in for a full, read-only or broken disk."""
    with FileJournal(tmp_path / "j") as journal:
        journal.append(HEAD)
        journal.append(mark(0))
        until(lambda: (tmp_path / "j").stat().st_size > 0)
        before = (tmp_path / "j").read_bytes()
        disk.takes, disk.error = 17, number
        for k in range(1, 40):
            journal.append(mark(k))
        until(lambda: journal.fault)
        assert journal.fault == system_reason(OSError(number, ""))
        assert (tmp_path / "j").read_bytes()[: len(before)] == before, "what was there is unharmed"
        assert len(read_journal(tmp_path / "j").of("mark")) == 1
        disk.error = 0
        until(lambda: not journal.fault)
    content = read_journal(tmp_path / "j")
    assert [r["name"] for r in content.of("mark")] == [f"m{k}" for k in range(40)]
    assert content.damaged_lines == 0


@pytest.mark.skipif(sys.platform == "win32", reason="folders can't be written through there")
def test_the_name_of_a_new_journal_and_of_its_folder_are_put_on_disk(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """By what the system is asked for: a power cut can't be had here."""
    synced: set[tuple[int, int]] = set()
    real = os.fsync

    def fsync(handle: int) -> None:
        found = os.fstat(handle)
        synced.add((found.st_dev, found.st_ino))
        real(handle)

    monkeypatch.setattr(os, "fsync", fsync)
    path = tmp_path / "sessions" / "a" / "j"
    with FileJournal(path) as journal:
        journal.append(HEAD)
        until(lambda: path.exists() and path.stat().st_size > 0)
    for one in (path, path.parent, path.parent.parent):
        assert (one.stat().st_dev, one.stat().st_ino) in synced, one


@pytest.mark.parametrize(
    "odd",
    [{"x": object()}, {"x": 1j}, {(1, 2): 3}, {"x": np.array([1.0])}],
    ids=["object", "complex", "key", "array"],
)
def test_a_record_that_can_not_be_written_costs_no_other(
    tmp_path: Path, odd: dict[Any, Any]
) -> None:
    with FileJournal(tmp_path / "j") as journal:
        journal.append(HEAD)
        journal.append({"kind": "setup", "from_s": 0.0, "found": odd, "notes": []})
        until(lambda: journal.fault)
        assert journal.fault == "a record could not be written" and journal.lost == 1
        journal.append(mark(1))
        until(lambda: not journal.fault)
    assert not journal.fault
    content = read_journal(tmp_path / "j")
    assert [r["name"] for r in content.of("mark")] == ["m1"]
    assert content.damaged_lines == 1, "so that the summary says that something is missing"


def test_a_record_that_goes_round_in_a_circle_costs_no_other(tmp_path: Path) -> None:
    circle: dict[str, Any] = {"kind": "setup"}
    circle["found"] = circle
    with FileJournal(tmp_path / "j") as journal:
        for record in (HEAD, circle, mark(1)):
            journal.append(record)
    assert [r["kind"] for r in read_journal(tmp_path / "j").records] == ["session", "mark"]


def test_numbers_that_json_has_no_form_for_become_null_or_plain(tmp_path: Path) -> None:
    odd = [float("nan"), float("inf"), np.float32(1.5), np.int64(3), np.bool_(True)]
    odd += [np.float64("nan"), (1, float("-inf"))]
    with FileJournal(tmp_path / "j") as journal:
        journal.append(HEAD)
        journal.append({"kind": "setup", "found": {"deep": [{"er": odd}]}})
    assert not journal.lost
    (setup,) = read_journal(tmp_path / "j").of("setup")
    assert setup["found"]["deep"][0]["er"] == [None, None, 1.5, 3, True, None, [1, None]]


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no such device here")
def test_a_full_device_is_said_and_its_journal_can_be_saved_elsewhere(tmp_path: Path) -> None:
    """The device that is always full stands in for the file."""
    (tmp_path / "j").symlink_to("/dev/full")
    with FileJournal(tmp_path / "j") as journal:
        journal.append(HEAD)
        journal.append(mark(1))
        until(lambda: journal.fault)
        assert journal.fault == "the disk is full"
        journal.rescue(tmp_path / "other")
    assert len(read_journal(tmp_path / "other").of("mark")) == 1


FULL_DISK = """
import resource, sys, time
from pathlib import Path
from tests.session.test_bad_disk import fed
from tracker.errors import RunError
from tracker.session.journal import FileJournal
folder, size = Path(sys.argv[1]), int(sys.argv[2])
hard = resource.getrlimit(resource.RLIMIT_FSIZE)[1]
journal = FileJournal(folder / "journal.jsonl")
resource.setrlimit(resource.RLIMIT_FSIZE, (size, hard))
fed(journal)
journal.finish()
assert journal.fault, "nothing was refused"
try:
    journal.rescue(folder / "other.jsonl")
except RunError:
    assert not list(folder.glob("*other*")), "a half-written file"
else:
    raise AssertionError("a full disk took it")
resource.setrlimit(resource.RLIMIT_FSIZE, (hard, hard))
journal.rescue(folder / "other.jsonl")
journal.finish()
assert not journal.fault
journal.close()
"""


def fed(journal: Any) -> None:
    """A session of ten repetitions into a journal."""
    engine = Engine(journal, about=SessionInfo(session_id="s"))
    for step in steps():
        engine.begin(step)
    for sample in turns_samples():
        engine.feed(sample)
    engine.finish()


@pytest.mark.skipif(sys.platform == "win32", reason="no such limit there")
@pytest.mark.parametrize("size", [0, 5000, 60_001])
def test_files_that_may_not_grow_lose_nothing(tmp_path: Path, size: int) -> None:
    """The system's limit on the size of files stands in for a full disk: real half writes."""
    done = subprocess.run(
        [sys.executable, "-c", FULL_DISK, str(tmp_path), str(size)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        env=os.environ | {"PYTHONPATH": str(ROOT)},
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "other.jsonl").read_bytes() == (tmp_path / "journal.jsonl").read_bytes()
    assert read_journal(tmp_path / "journal.jsonl").damaged_lines == 0
    assert save_session(tmp_path).exercises[0].done.repetitions == 10


def test_a_folder_that_cannot_be_made_does_not_keep_the_session_from_going_on(
    tmp_path: Path, private_data_folder: Path
) -> None:
    """A file in the place of the folder stands in for a disk that can't be written to.

    (Rights don't bind the administrator, as whom tests may run.)
    """
    private_data_folder.write_text("in the way")
    recording = Recording({})
    feed_recording(recording)
    until(lambda: recording.fault)
    with pytest.raises(RunError):
        recording.save()
    with pytest.raises(RunError):
        recording.save(private_data_folder)  # no place either
    saved = recording.save(tmp_path / "other")
    assert saved.summary["exercises"][0]["done"]["repetitions"] == 10
    assert saved.folder.parent == tmp_path / "other"
    assert private_data_folder.read_text() == "in the way"


def feed_recording(recording: Recording, until_s: float = 99.0, from_s: float = -1.0) -> None:
    for step in steps():
        if from_s <= step.from_s < until_s:
            recording.begin(step)
    for sample in turns_samples():
        if from_s <= sample.time_s < until_s:
            recording.feed(sample)
    if until_s >= 99.0:
        recording.finish("finished")


def test_a_folder_that_vanishes_is_said_and_all_is_saved_elsewhere(
    tmp_path: Path, private_data_folder: Path
) -> None:
    other_session = private_data_folder / "sessions" / "before"
    other_session.mkdir(parents=True)
    write_atomically(other_session / "summary.json", "{}")
    recording = Recording({})
    feed_recording(recording, until_s=10.0)
    until(lambda: (recording.folder / JOURNAL_NAME).stat().st_size > 1000)
    shutil.rmtree(recording.folder)
    feed_recording(recording, from_s=10.0)
    until(lambda: recording.fault)
    assert "gone" in recording.fault
    with pytest.raises(RunError, match="gone"):
        recording.save()
    saved = recording.save(tmp_path)
    assert saved.summary["exercises"][0]["done"]["repetitions"] == 10
    assert saved.summary["ended"] == "finished"
    assert (other_session / "summary.json").read_text() == "{}"


def test_room_for_the_journal_but_not_for_the_files(
    tmp_path: Path, private_data_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The last step of each whole write fails, as on a disk that has just filled up."""
    recording = Recording({})
    feed_recording(recording)
    replace = Path.replace

    def full(self: Path, target: Any) -> Any:
        if private_data_folder in self.parents:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        return replace(self, target)

    monkeypatch.setattr(Path, "replace", full)
    with pytest.raises(RunError, match="the disk is full"):
        recording.save()
    assert [p.name for p in recording.folder.iterdir()] == [JOURNAL_NAME]
    saved = recording.save(tmp_path)
    assert saved.summary["exercises"][0]["done"]["repetitions"] == 10
    # The first journal is kept, but is not offered as one that broke off.
    assert [p.name for p in recording.folder.iterdir()] == [MOVED_NAME]
    assert read_journal(recording.folder / MOVED_NAME).ended == "finished"


def test_what_was_saved_elsewhere_is_not_written_once_more_when_there_is_room(
    tmp_path: Path, private_data_folder: Path, disk: Disk
) -> None:
    """The window lets a session go that it still shows, long after it was saved."""
    recording = Recording({})
    feed_recording(recording, until_s=10.0)
    until(lambda: (recording.folder / JOURNAL_NAME).stat().st_size > 1000)
    disk.takes, disk.error = 17, errno.ENOSPC
    feed_recording(recording, from_s=10.0)
    with pytest.raises(RunError, match="the disk is full"):
        recording.save()
    saved = recording.save(tmp_path / "other")
    assert saved.summary["exercises"][0]["done"]["repetitions"] == 10
    disk.error = 0
    recording.close()
    assert [p.name for p in recording.folder.iterdir()] == [MOVED_NAME]
    assert interrupted_sessions(private_data_folder) == []


def test_too_much_to_keep_is_counted_as_lost(
    tmp_path: Path, disk: Disk, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(journal_module, "MAX_WAITING", 10)
    with FileJournal(tmp_path / "j") as journal:
        journal.append(HEAD)
        until(lambda: (tmp_path / "j").stat().st_size > 0)
        disk.takes, disk.error = 5, errno.ENOSPC
        for k in range(30):
            journal.append(mark(k))
        until(lambda: journal.lost)
        disk.error = 0
        journal.append(mark(99))
    content = read_journal(tmp_path / "j")
    assert journal.lost == 30
    assert [r["name"] for r in content.of("mark")] == ["m99"]
    assert content.damaged_lines == 1


def test_nobody_writes_a_journal_that_is_being_written(tmp_path: Path) -> None:
    with FileJournal(tmp_path / "j") as journal:
        with pytest.raises(RunError, match="in use"):
            FileJournal(tmp_path / "j")
        journal.append(HEAD)
    with FileJournal(tmp_path / "j"):
        pass
    with pytest.raises(InputError):
        journal.rescue(tmp_path / "none" / "j")
