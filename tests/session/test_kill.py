"""``kill -9`` at random moments of a session: it recovers, and loses a second at most.

``pytest tests/session/test_kill.py --kills 200 -s`` does more of it and prints figures.
"""

from __future__ import annotations

import json
import os
import random
import signal
import subprocess
import sys
import time
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import pytest

from tests.session.synthetic import steps, turns_samples
from tracker.session.engine import Engine
from tracker.session.journal import MemoryJournal, read_journal
from tracker.session.live import SessionInfo
from tracker.session.recovery import interrupted_sessions, save_interrupted
from tracker.session.saving import JOURNAL_NAME, STAGE_NAME, SUMMARY_NAME, TRACE_NAME
from tracker.session.summary_file import load_summary
from tracker.session.trace import load_trace

pytestmark = pytest.mark.alone

ROOT = Path(__file__).parents[2]
#: Own aim: at most a second is lost. A frame and the look-ahead of the speeds (0.1 s) come to it:
#: a sample is judged, and written, that much after it was taken.
LOST_S, LOOK_S = 1.0, 0.15
TO_S = 12.0
AT_ONCE = 10
OTHERS = (STAGE_NAME, TRACE_NAME)


@dataclass
class Killed:
    """A session that was killed, and how far it had come."""

    data: Path
    fed_s: float
    was_saving: bool


def start(data: Path, from_s: float) -> subprocess.Popen[bytes]:
    words = [sys.executable, "-m", "tests.session.writer", str(data), str(from_s), str(TO_S)]
    env = os.environ | {"PYTHONPATH": str(ROOT)}
    return subprocess.Popen(words, stdout=subprocess.PIPE, cwd=ROOT, env=env)


def kill_after(program: subprocess.Popen[bytes], data: Path, at: float) -> Killed:
    """Kill a writer at a time of the clock (a moment after it began to save if negative)."""
    assert program.stdout is not None
    said = b""
    if at < 0:
        while not said.endswith(b"saving\n"):
            said += program.stdout.readline()
        time.sleep(-at)
    else:
        time.sleep(max(0.0, at - time.perf_counter()))
    program.send_signal(signal.SIGKILL)
    program.wait()
    said += program.stdout.read()
    program.stdout.close()
    # What was being said at that moment may be half a line.
    words = said.decode().split("\n")[:-1]
    times = [float(w) for w in words if w[:1].isdigit()]
    return Killed(data, times[-1] if times else -1.0, "saving" in words)


def killed_sessions(folder: Path, count: int, saving: bool, rng: random.Random) -> list[Killed]:
    """Sessions that were killed, some at a time."""
    found: list[Killed] = []
    while len(found) < count:
        group = []
        for k in range(min(AT_ONCE, count - len(found))):
            data = folder / f"{'s' if saving else 'k'}{len(found) + k}"
            program = start(data, TO_S - 1.0 if saving else 0.0)
            group.append((program, data))
        for program, _ in group:
            assert program.stdout is not None
            assert program.stdout.readline() == b"ready\n"
        now_s = time.perf_counter()
        moments = [
            -rng.uniform(0.0, 0.06) if saving else now_s + rng.uniform(0.0, TO_S - 0.5)
            for _ in group
        ]
        order = sorted(zip(moments, group, strict=True), key=lambda m: m[0])
        found += [kill_after(program, data, at) for at, (program, data) in order]
    return found


def repetitions_by(time_s: float, *, ended: bool = False) -> int:
    """Repetitions that an undisturbed session has written down by a time (or by its end)."""
    journal = MemoryJournal()
    engine = Engine(journal, about=SessionInfo())
    for step in steps(to_s=TO_S):
        engine.begin(step)
    for sample in turns_samples(to_s=TO_S):
        if sample.time_s <= time_s:
            engine.feed(sample)
    if ended:
        engine.finish()
    return len(journal.content().of("turn")) // 2


def check(killed: Killed) -> float:
    """Recover a session; give the seconds that were lost."""
    folder = killed.data / "sessions" / "killed"
    if killed.was_saving and (folder / SUMMARY_NAME).exists():
        assert interrupted_sessions(killed.data) == []
        summary = load_summary(folder / SUMMARY_NAME)
        assert summary.ended == "finished"
    else:
        found = interrupted_sessions(killed.data)
        if not found:
            # Killed before even its head was on disk; then it can't be older than that.
            assert killed.fed_s < LOST_S + LOOK_S
            return max(killed.fed_s, 0.0)
        (session,) = found
        summary = save_interrupted(session)
        assert summary.ended == ("finished" if killed.was_saving else "interrupted")
    least = repetitions_by(killed.fed_s - LOST_S - LOOK_S)
    # Killed before anything was seen it has no count, and none can be missing.
    done = [e.done.repetitions or 0 for e in summary.exercises]
    most = repetitions_by(killed.fed_s + 0.1, ended=killed.fed_s > TO_S - 0.1)
    assert (most if killed.was_saving else least) <= sum(done) <= most
    assert {p.name for p in folder.iterdir()} == {JOURNAL_NAME, SUMMARY_NAME, *OTHERS}
    content = read_journal(folder / JOURNAL_NAME)
    assert content.damaged_lines <= 1
    for name in (SUMMARY_NAME, STAGE_NAME):
        json.loads((folder / name).read_text(encoding="utf-8"))
    if not content.of("sample"):
        return max(killed.fed_s, 0.0)
    lost_s = killed.fed_s - load_trace(folder / TRACE_NAME)[-1].time_s
    assert lost_s <= LOST_S + LOOK_S
    return max(lost_s, 0.0)


@pytest.mark.slow
@pytest.mark.timeout(3600)
@pytest.mark.skipif(sys.platform == "win32", reason="no kill -9 there")
@pytest.mark.parametrize("saving", [False, True], ids=["in the session", "while it is saved"])
def test_a_killed_session_recovers(
    tmp_path: Path, request: pytest.FixtureRequest, saving: bool
) -> None:
    count = request.config.getoption("--kills")
    seed = random.randrange(10**6)
    lost = [check(k) for k in killed_sessions(tmp_path, count, saving, random.Random(seed))]
    line = (
        f"seed {seed}: {len(lost)} of {count} recovered; lost at the median "
        f"{np.median(lost):.2f} s, at most {max(lost):.2f} s"
    )
    request.config.get_terminal_writer().line(line)
    assert len(lost) == count
