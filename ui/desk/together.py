"""Beginning a baseline from the desk: the program opens beside it, with the person's plan."""

from __future__ import annotations

import sys
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QProcess

from tracker.records.index import Records
from tracker.records.people import Person
from tracker.session.files import open_data_folder
from tracker.session.lock import LOCK_NAME, OnlyCopy


def plan_path(person: Person, records: Records) -> Path | None:
    """File of the person's own plan; None where there is none.

    A session of a plan that is nobody's would be nobody's too.
    """
    plan = person.plan
    if plan is None or plan.person != person.name:
        return None
    place = next((p for p, known in records.plans if known is plan), None)
    return None if place is None else records.folder / place


def new_session_folder(folder: Path, person: Person, now: datetime) -> Path:
    """A folder for the session, below the one that the desk shows."""
    return folder / f"baseline-{person.name}-{now:%Y%m%d-%H%M%S}"


def call(plan: Path, out: Path) -> tuple[str, ...]:
    """How the program is called, as a process of its own: it has cameras, the desk has none."""
    frozen = getattr(sys, "frozen", False)
    program = (sys.executable,) if frozen else (sys.executable, "-P", "-m", "ui.cli")
    return (*program, "practise", "--plan", str(plan), "--baseline", "--out", str(out))


def is_open() -> bool:
    """Whether the program's window is open already; there may be one, and a second says so only."""
    only = OnlyCopy(open_data_folder() / LOCK_NAME)
    try:
        return not only.mine
    finally:
        only.close()


def start(words: tuple[str, ...]) -> bool:
    """Start it; whether it could be started. It goes on when the desk is closed."""
    program, *arguments = words
    started = QProcess.startDetached(program, arguments)
    return bool(started[0] if isinstance(started, tuple) else started)
