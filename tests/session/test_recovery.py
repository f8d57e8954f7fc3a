"""Sessions that broke off: found, saved whole, and never taken from who is writing them."""

from __future__ import annotations

import errno
import json
import os
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest

from tests.session.synthetic import steps, turns_samples
from tracker.errors import InputError, RunError
from tracker.session import lock as lock_module
from tracker.session import recovery
from tracker.session.engine import Engine
from tracker.session.journal import FileJournal
from tracker.session.live import SAMPLE_CLIP, SessionInfo
from tracker.session.lock import OnlyCopy
from tracker.session.recovery import interrupted_sessions, save_interrupted
from tracker.session.saving import JOURNAL_NAME, save_session
from tracker.session.stage import load_stage_log

ROOT = Path(__file__).parents[2]


def write_session(data: Path, name: str, *, until_s: float = 13.2, ended: str = "") -> Path:
    """A session in the data folder that broke off (or ended without a summary)."""
    path = data / "sessions" / name / JOURNAL_NAME
    started = f"2026-03-0{len(name)}T10:00:00+01:00"
    with FileJournal(path) as journal:
        engine = Engine(journal, about=SessionInfo(session_id=name, started_at=started))
        for step in steps():
            engine.begin(step)
        for sample in turns_samples(to_s=until_s):
            engine.feed(sample)
        if ended:
            engine.finish(ended)
    return path.parent


def test_a_session_that_broke_off_is_found_and_saved(tmp_path: Path) -> None:
    folder = write_session(tmp_path, "a")
    (found,) = interrupted_sessions(tmp_path)
    assert found.folder == folder and found.repetitions == 5
    assert found.started_at == "2026-03-01T10:00:00+01:00"
    summary = save_interrupted(found)
    assert summary.ended == "interrupted"
    assert summary.exercises[0].done.repetitions == 5
    on_disk = json.loads((folder / "summary.json").read_text(encoding="utf-8"))
    assert on_disk["session_id"] == "a"
    assert {p.name for p in folder.iterdir()} == {
        JOURNAL_NAME,
        "summary.json",
        "trace.csv",
        "stage.json",
    }
    assert interrupted_sessions(tmp_path) == []


@pytest.mark.parametrize("how", ["swapped", "twice", "all twice"])
def test_steps_that_lie_out_of_order_keep_no_session_from_being_saved(
    tmp_path: Path, how: str
) -> None:
    folder = write_session(tmp_path, "a")
    path = folder / JOURNAL_NAME
    lines = path.read_bytes().splitlines(keepends=True)
    at = [k for k, line in enumerate(lines) if line.startswith(b'{"kind":"step"')]
    assert len(at) == 2
    if how == "swapped":
        lines[at[0]], lines[at[1]] = lines[at[1]], lines[at[0]]
    else:
        lines += lines[1:] if how == "all twice" else [lines[k] for k in at]
    path.write_bytes(b"".join(lines))
    whole = save_session(write_session(tmp_path / "whole", "a"))
    (found,) = interrupted_sessions(tmp_path)
    assert found.repetitions == 5
    summary = save_interrupted(found)
    assert len(summary.exercises) == 1 and summary.exercises == whole.exercises
    steps_told = load_stage_log(folder / "stage.json").steps
    assert [s.step for s in steps_told] == ["rest", "exercise"]


@pytest.mark.skipif(sys.platform == "win32", reason="rights are those of Unix")
def test_one_on_a_disk_that_can_only_be_read_is_found(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A refused way of opening stands in for the disk: rights don't bind the administrator."""
    folder = write_session(tmp_path, "a")
    real = os.open

    def opened(path: Any, flags: int, *more: Any) -> int:
        if Path(path).name == JOURNAL_NAME and flags & (os.O_RDWR | os.O_WRONLY):
            raise OSError(errno.EROFS, os.strerror(errno.EROFS))
        return real(path, flags, *more)

    monkeypatch.setattr(os, "open", opened)
    assert [i.folder for i in interrupted_sessions(tmp_path)] == [folder]
    assert not recovery.is_in_use(folder)


@pytest.mark.skipif(sys.platform == "win32", reason="there are no pipes with names here")
@pytest.mark.parametrize("kind", ["pipe", "folder"])
def test_what_only_bears_a_journal_s_name_is_not_waited_for(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, kind: str
) -> None:
    """Nor does it count as let go: it can't be looked at."""
    path = tmp_path / JOURNAL_NAME
    os.mkfifo(path) if kind == "pipe" else path.mkdir()
    assert recovery.is_in_use(tmp_path)
    real = os.open

    def opened(path: Any, flags: int, *more: Any) -> int:
        if flags & (os.O_RDWR | os.O_WRONLY):
            raise OSError(errno.EROFS, os.strerror(errno.EROFS))
        return real(path, flags | os.O_NONBLOCK, *more)

    monkeypatch.setattr(os, "open", opened)
    assert recovery.is_in_use(tmp_path)


def test_what_a_kill_has_left_in_a_folder_without_the_right_is_no_fault_of_the_journal(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Refused ways of changing it stand in for the folder: rights don't bind the administrator."""
    folder = write_session(tmp_path, "a")
    (folder / ".trace.csv.abc").write_text("half")
    (found,) = interrupted_sessions(tmp_path)

    def refused(*_: object, **_more: object) -> None:
        raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))

    monkeypatch.setattr(Path, "unlink", refused)
    monkeypatch.setattr("tracker.session.files.tempfile.mkstemp", refused)
    with pytest.raises(InputError, match=r"can't be written \(this account has no right to it\)"):
        save_interrupted(found)


def test_all_of_several_are_found_the_newest_first(tmp_path: Path) -> None:
    for name in ("a", "bbb", "cc"):
        write_session(tmp_path, name)
    save_session(write_session(tmp_path, "dddd", ended="finished"))
    assert [i.folder.name for i in interrupted_sessions(tmp_path)] == ["bbb", "cc", "a"]


def test_one_that_ended_but_was_not_saved_keeps_how_it_ended(tmp_path: Path) -> None:
    write_session(tmp_path, "a", until_s=22.0, ended="stopped")
    (found,) = interrupted_sessions(tmp_path)
    assert save_interrupted(found).ended == "stopped"


@pytest.mark.parametrize("left", [0.5, 0.37, 0.9])
def test_a_journal_cut_anywhere_gives_what_it_holds(tmp_path: Path, left: float) -> None:
    path = write_session(tmp_path, "a") / JOURNAL_NAME
    data = path.read_bytes()
    cut = int(len(data) * left)
    if b"\n" in data[cut - 1 : cut + 1]:
        # Not between two lines, nor at the end of one that is whole.
        cut -= 3
    path.write_bytes(data[:cut])
    turns = sum(1 for line in data[:cut].split(b"\n")[:-1] if b'"kind":"turn"' in line)
    (found,) = interrupted_sessions(tmp_path)
    assert found.repetitions == turns // 2
    summary = save_interrupted(found)
    assert summary.exercises[0].done.repetitions == turns // 2
    assert [f.flag for f in summary.quality] == ["journal_damaged"]


def test_an_exercise_that_nobody_knows_loses_nothing_else(tmp_path: Path) -> None:
    path = write_session(tmp_path, "a") / JOURNAL_NAME
    data = path.read_bytes()
    assert data.count(b'"turns-on-target"') == 1
    path.write_bytes(data.replace(b'"turns-on-target"', b'"tubns-on-target"'))
    (found,) = interrupted_sessions(tmp_path)
    summary = save_interrupted(found)
    assert [f.flag for f in summary.quality] == ["journal_damaged"]
    assert summary.exercises == []
    trace = (found.folder / "trace.csv").read_text(encoding="utf-8")
    assert len(trace.splitlines()) > 300


def test_half_a_sign_in_a_damaged_journal_is_saved_as_a_question_mark(tmp_path: Path) -> None:
    path = write_session(tmp_path, "a") / JOURNAL_NAME
    data = path.read_bytes()
    assert data.count(b'"session_id":"a"') == 1
    path.write_bytes(data.replace(b'"session_id":"a"', b'"session_id":"a\\ud800"'))
    (found,) = interrupted_sessions(tmp_path)
    assert save_interrupted(found).exercises[0].done.repetitions == 5
    on_disk = json.loads((found.folder / "summary.json").read_text(encoding="utf-8"))
    assert on_disk["session_id"] == "a?"


def test_what_a_power_cut_leaves_at_the_end_is_passed_over(tmp_path: Path) -> None:
    path = write_session(tmp_path, "a") / JOURNAL_NAME
    with path.open("ab") as file:
        file.write(bytes(5000))
    (found,) = interrupted_sessions(tmp_path)
    assert save_interrupted(found).exercises[0].done.repetitions == 5


@pytest.mark.parametrize(
    "text",
    [
        b"",
        b'{"kind":"sess',
        b"hello\n",
        b'{"kind":"session","format":"turnpost-journal","format_version":99,"about":{}}\n',
    ],
)
def test_what_cannot_be_read_is_left_alone(tmp_path: Path, text: bytes) -> None:
    folder = tmp_path / "sessions" / "a"
    folder.mkdir(parents=True)
    (folder / JOURNAL_NAME).write_bytes(text)
    (tmp_path / "sessions" / "a file").write_text("x")
    assert interrupted_sessions(tmp_path) == []
    assert [(p.name, p.read_bytes()) for p in folder.iterdir()] == [(JOURNAL_NAME, text)]


@pytest.mark.parametrize("spoil", [b"\0", b'{"kind":', b"\xff\xfe"], ids=str)
def test_what_stands_after_a_damaged_first_line_is_saved(tmp_path: Path, spoil: bytes) -> None:
    name = "20260301-100000-ab12"
    path = write_session(tmp_path, "a").rename(tmp_path / "sessions" / name) / JOURNAL_NAME
    first, _, rest = path.read_bytes().partition(b"\n")
    path.write_bytes(spoil + first[len(spoil) :].replace(b'"session"', b'"sess') + b"\n" + rest)
    (found,) = interrupted_sessions(tmp_path)
    assert found.repetitions == 5 and found.started_at[:19] == "2026-03-01T10:00:00"
    summary = save_interrupted(found)
    assert summary.exercises[0].done.repetitions == 5 and summary.session_id == name
    assert summary.person is None
    assert [f.flag for f in summary.quality] == ["journal_damaged"]


def test_lines_of_something_else_are_no_session_whatever_stands_first(tmp_path: Path) -> None:
    folder = tmp_path / "sessions" / "a"
    folder.mkdir(parents=True)
    (folder / JOURNAL_NAME).write_bytes(b'x\n{"kind":"parcel"}\n')
    assert interrupted_sessions(tmp_path) == []


def test_one_of_a_newer_version_is_named_and_stays_as_it_is(tmp_path: Path) -> None:
    old = write_session(tmp_path, "a")
    path = write_session(tmp_path, "bb") / JOURNAL_NAME
    data = path.read_bytes().replace(b'_version":1', b'_version":2')
    path.write_bytes(data)
    assert [i.folder for i in interrupted_sessions(tmp_path)] == [old]
    found = {i.folder: i.newer for i in interrupted_sessions(tmp_path, newer=True)}
    assert found == {old: False, path.parent: True}
    assert path.read_bytes() == data and len(list(path.parent.iterdir())) == 1


def test_a_demo_that_was_killed_is_nobodys_session(tmp_path: Path) -> None:
    for name, camera in (("a", SAMPLE_CLIP), ("bb", "Camera in the lid")):
        about = SessionInfo(session_id=name, setup={"camera": {"name": camera}})
        with FileJournal(tmp_path / "sessions" / name / JOURNAL_NAME) as journal:
            Engine(journal, about=about).begin(steps()[0])
    assert [i.folder.name for i in interrupted_sessions(tmp_path, newer=True)] == ["bb"]


def test_no_data_folder_is_no_session(tmp_path: Path) -> None:
    assert interrupted_sessions(tmp_path / "none") == []


WRITER = """
import sys, time
from pathlib import Path
from tests.session.test_recovery import hold
hold(Path(sys.argv[1]))
"""


def hold(data: Path) -> None:
    """Write a session and keep it open, as a running program does."""
    path = data / "sessions" / "live" / JOURNAL_NAME
    journal = FileJournal(path)
    Engine(journal, about=SessionInfo(session_id="live"))
    while path.stat().st_size == 0:
        time.sleep(0.01)
    sys.stdout.write("open\n")
    sys.stdout.flush()
    time.sleep(60)


@pytest.fixture
def other_copy(tmp_path: Path) -> Any:
    """Another program that is writing a session."""
    program = subprocess.Popen(
        [sys.executable, "-c", WRITER, str(tmp_path)],
        stdout=subprocess.PIPE,
        text=True,
        cwd=ROOT,
        env=os.environ | {"PYTHONPATH": str(ROOT)},
    )
    assert program.stdout is not None
    try:
        assert program.stdout.readline() == "open\n"
        yield program
    finally:
        program.kill()
        program.wait()
        program.stdout.close()


def test_a_session_of_another_copy_is_not_touched_while_it_lives(
    tmp_path: Path, other_copy: subprocess.Popen[str]
) -> None:
    write_session(tmp_path, "a")
    assert [i.folder.name for i in interrupted_sessions(tmp_path)] == ["a"]
    live = recovery.Interrupted(tmp_path / "sessions" / "live", "", 0)
    with pytest.raises(RunError, match="in use"):
        save_interrupted(live)
    assert [p.name for p in live.folder.iterdir()] == [JOURNAL_NAME]
    other_copy.kill()
    other_copy.wait()
    assert {i.folder.name for i in interrupted_sessions(tmp_path)} == {"a", "live"}
    assert save_interrupted(live).ended == "interrupted"


def test_our_own_session_is_not_offered_to_ourselves(tmp_path: Path) -> None:
    path = tmp_path / "sessions" / "own" / JOURNAL_NAME
    with FileJournal(path) as journal:
        Engine(journal, about=SessionInfo(session_id="own"))
        journal.finish()
        assert interrupted_sessions(tmp_path) == []
    assert len(interrupted_sessions(tmp_path)) == 1


def test_without_locks_a_journal_that_was_just_written_is_in_use(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder = write_session(tmp_path, "a")
    monkeypatch.setattr(recovery, "lock", lambda _: None)
    assert interrupted_sessions(tmp_path) == []
    # The other one's clock may be a little ahead; one far ahead was set back since.
    for ahead_s, found in ((-2.0, 1), (-0.5, 0), (0.5, 0), (2.0, 1), (1e6, 1)):
        then_s = time.time() + ahead_s * recovery.IN_USE_S
        os.utime(folder / JOURNAL_NAME, (then_s, then_s))
        assert len(interrupted_sessions(tmp_path)) == found, ahead_s


def test_only_one_copy_has_the_lock_and_the_next_gets_it_after(tmp_path: Path) -> None:
    first = OnlyCopy(tmp_path / "open.lock")
    second = OnlyCopy(tmp_path / "open.lock")
    assert first.mine and not second.mine
    second.close()
    first.close()
    third = OnlyCopy(tmp_path / "open.lock")
    assert third.mine
    third.close()
    assert OnlyCopy(tmp_path / "none" / "open.lock").mine, "better two copies than none"


@pytest.mark.skipif(sys.platform == "win32", reason="locks are of another kind there")
def test_a_system_without_locks_says_so(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    import fcntl

    def none(*_: Any) -> None:
        raise OSError(95, "Operation not supported")

    monkeypatch.setattr(fcntl, "flock", none)
    with (tmp_path / "f").open("w") as file:
        assert lock_module.lock(file.fileno()) is None
    assert OnlyCopy(tmp_path / "f").mine
