"""What is named as an input is opened in one place: no pipe holds a reader up, no device fills it.

The bound of time below is our own choice: a reader that waits for a pipe waits without end.
"""

from __future__ import annotations

import ast
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from calibration.profile_file import load_profile
from tracker import inputs
from tracker.errors import InputError
from tracker.handover import keys, receive, sent
from tracker.plan.files import load_plan
from tracker.plan.starter import starter_plan
from tracker.practice.scripted import load_answers
from tracker.records.appended import append_line, read_lines
from tracker.records.index import read_folder
from tracker.session.journal import read_journal
from tracker.session.stage import load_stage_log
from tracker.session.summary_file import load_summary
from tracker.session.trace import load_trace

ROOT = Path(__file__).parents[1]

needs_pipes = pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="there are no named pipes here")
needs_devices = pytest.mark.skipif(not Path("/dev/zero").exists(), reason="there is no such device")

READERS: dict[str, Callable[[Path], object]] = {
    "plan": load_plan,
    "answers": lambda path: load_answers(path, starter_plan()),
    "summary": load_summary,
    "stage log": load_stage_log,
    "trace": load_trace,
    "journal": read_journal,
    "profile": load_profile,
    "hand-over": receive.needs_key,
    "key": lambda path: keys.bring_in(path, "four words will do"),
}


@needs_pipes
@pytest.mark.timeout(20)
@pytest.mark.parametrize("name", READERS)
def test_no_reader_waits_for_a_pipe(tmp_path: Path, name: str) -> None:
    os.mkfifo(tmp_path / "in")
    with pytest.raises(InputError, match="not an ordinary file"):
        READERS[name](tmp_path / "in")


@needs_devices
@pytest.mark.timeout(20)
@pytest.mark.parametrize("name", READERS)
def test_no_reader_takes_what_a_device_gives(name: str) -> None:
    with pytest.raises(InputError, match="not an ordinary file"):
        READERS[name](Path("/dev/zero"))


@pytest.mark.parametrize("name", READERS)
def test_a_name_that_no_file_can_have_is_an_input_that_can_not_be_read(name: str) -> None:
    for path in ("\0", "x" * 5000):
        with pytest.raises(InputError):
            READERS[name](Path(path))


@needs_pipes
@pytest.mark.timeout(20)
def test_what_counts_as_nothing_when_it_is_spoilt_does_so_when_it_is_a_pipe(
    tmp_path: Path, private_data_folder: Path
) -> None:
    (tmp_path / sent.RECORD).unlink(missing_ok=True)
    os.mkfifo(tmp_path / sent.RECORD)
    assert sent.record(tmp_path) == {}
    os.mkfifo(tmp_path / "notes.jsonl")
    assert read_lines(tmp_path / "notes.jsonl", "f", 1, lambda _: True) == []
    with pytest.raises(OSError, match="not an ordinary file"):
        append_line(tmp_path / "notes.jsonl", {"format": "f"}, {"a": 1})
    folder = private_data_folder / keys.FOLDER
    folder.mkdir(parents=True)
    os.mkfifo(folder / "clinic-x.pub")
    (folder / "clinic-x.age").touch()
    assert keys.clinic_keys() == []


@needs_pipes
@pytest.mark.timeout(20)
def test_links_to_pipes_and_devices_in_a_reviewed_folder_are_said_and_passed_over(
    tmp_path: Path,
) -> None:
    os.mkfifo(tmp_path / "pipe")
    for name, target in (("a", tmp_path / "pipe"), ("b", Path("/dev/zero"))):
        (tmp_path / name).mkdir()
        (tmp_path / name / "summary.json").symlink_to(target)
    (tmp_path / "other.json").symlink_to(tmp_path / "pipe")
    (tmp_path / "c").mkdir()
    (tmp_path / "c" / "journal.jsonl").symlink_to(tmp_path / "pipe")
    os.utime(tmp_path / "pipe", (0.0, 0.0))  # else its journal would be one of just now
    found = {one.path: one.why for one in read_folder(tmp_path).unread}
    assert {path.partition("/")[0] for path in found} == {"a", "b", "c", "other.json"}
    assert all("not an ordinary file" in why for why in found.values()), found


def test_what_grows_while_it_is_read_stays_within_the_bound(tmp_path: Path) -> None:
    file = tmp_path / "in"
    file.write_bytes(b"12345")
    assert inputs.read_bytes(file, 5) == b"12345"
    with pytest.raises(inputs.TooLargeError):
        inputs.read_bytes(file, 4)
    if Path("/proc/self/status").exists():
        # Its size is 0, and yet it holds something.
        with pytest.raises(inputs.TooLargeError):
            inputs.read_bytes(Path("/proc/self/status"), 5)


@needs_pipes
@pytest.mark.parametrize("command", [["plan", "check"], ["plan", "words"], ["report", "--text"]])
def test_the_command_line_says_it_in_one_line(tmp_path: Path, command: list[str]) -> None:
    os.mkfifo(tmp_path / "in.json")
    done = subprocess.run(
        [sys.executable, "-m", "ui.cli", *command, str(tmp_path / "in.json")],
        capture_output=True,
        text=True,
        timeout=60,
        cwd=ROOT,
        check=False,
    )
    assert done.returncode == 2 and "not an ordinary file" in done.stderr, done.stderr
    assert done.stderr.count("\n") == 1


#: Modules that open something for reading themselves, and why they may.
ELSEWHERE = {
    "tracker/vision/cameras.py": "what the system says of its cameras",
    "ui/bench/live.py": "what the system says of its processes",
    "ui/commands/doctor.py": "what the system says of its sound",
    "ui/desktop_entry.py": "a picture of our own",
    "ui/posting/address.py": "a token may come out of a pipe, so that it lies in no file",
    "ui/start.py": "runs before anything is installed",
    "ui/translating.py": "what a tool of Qt's has written just now",
}


def opens(module: Path) -> bool:
    """Whether a module calls what reads a file by its name."""
    for call in ast.walk(ast.parse(module.read_text(encoding="utf-8"))):
        if not isinstance(call, ast.Call):
            continue
        name = call.func.attr if isinstance(call.func, ast.Attribute) else ""
        modes = [a.value for a in call.args if isinstance(a, ast.Constant)]
        bare = isinstance(call.func, ast.Name) and call.func.id == "open"
        if bare or name in ("read_text", "read_bytes") or (name == "open" and "rb" in modes):
            return True
    return False


def test_nobody_else_opens_what_was_named() -> None:
    modules = [
        p.relative_to(ROOT).as_posix()
        for part in ("tracker", "calibration", "ui")
        for p in sorted((ROOT / part).rglob("*.py"))
        if "packaging" not in p.parts and opens(p)
    ]
    assert set(modules) <= set(ELSEWHERE)
    assert set(ELSEWHERE) <= set(modules), "no longer true of all of them"
