"""A session in a process of its own, in real time, for tests that kill it.

``python -m tests.session.writer DATA FROM_S TO_S``: samples of a made-up session from
``FROM_S`` on at once, then in real time up to ``TO_S``; then it ends and is saved.
After each sample that the engine has taken, its time goes to the standard output.
"""

from __future__ import annotations

import os
import sys
import time
from pathlib import Path

from tests.session.synthetic import steps, turns_samples
from tracker.session.engine import Engine
from tracker.session.journal import FileJournal
from tracker.session.live import SessionInfo
from tracker.session.saving import JOURNAL_NAME, save_session


def say(text: str) -> None:
    """Straight to the pipe: what is in a buffer would be lost with the process."""
    os.write(1, f"{text}\n".encode())


def write(data: Path, from_s: float, to_s: float) -> None:
    """Write one session."""
    folder = data / "sessions" / "killed"
    journal = FileJournal(folder / JOURNAL_NAME)
    engine = Engine(journal, about=SessionInfo(session_id="killed"))
    for step in steps(to_s=to_s):
        engine.begin(step)
    samples = turns_samples(to_s=to_s)
    say("ready")
    origin_s = time.perf_counter() - from_s
    for sample in samples:
        time.sleep(max(0.0, origin_s + sample.time_s - time.perf_counter()))
        engine.feed(sample)
        say(f"{sample.time_s:.4f}")
    engine.finish()
    journal.finish()
    say("saving")
    save_session(folder)
    journal.close()
    say("saved")


if __name__ == "__main__":
    write(Path(sys.argv[1]), float(sys.argv[2]), float(sys.argv[3]))
