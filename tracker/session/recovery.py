"""Sessions that broke off: a journal without a summary. Finds them and saves what they hold.

A session that a running program is writing is never touched: its journal is
locked by the writer (see ``tracker.session.lock``).
"""

from __future__ import annotations

import contextlib
import os
import time
from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tracker.errors import InputError, RunError, system_reason
from tracker.exercises.catalogue import CATALOGUE
from tracker.exercises.counters import channel_of
from tracker.inputs import must_be_ordinary, open_file
from tracker.session.files import data_folder
from tracker.session.journal import JournalContent, NewerJournalError, read_journal
from tracker.session.live import is_of_the_sample
from tracker.session.lock import BINARY, lock
from tracker.session.saving import (
    FILE_NAMES,
    JOURNAL_NAME,
    MOVED_NAME,
    SUMMARY_NAME,
    save_session,
)
from tracker.session.summary_file import Summary

#: Where the system knows no locks, a journal that was written to so lately is in use:
#: a writer writes twice a second while it measures.
IN_USE_S = 60.0


@dataclass(frozen=True, slots=True)
class Interrupted:
    """A session that broke off.

    Attributes
    ----------
    folder
        Its folder.
    started_at
        ISO 8601 with offset, empty where not known; of a damaged one by its folder's name.
    repetitions
        Counted up to where it broke off.
    damaged
        Its beginning is: whose it is can't be told, and it counts for no plan.
    unsure
        Nor can be told whether it is a demo's, or of a newer version: it holds no marks of that.
    newer
        A newer version of this program wrote it: nothing else is known, and only that can save it.
    """

    folder: Path
    started_at: str
    repetitions: int
    newer: bool = False
    damaged: bool = False
    unsure: bool = False


def interrupted_sessions(data: Path | None = None, *, newer: bool = False) -> list[Interrupted]:
    """Sessions in the data folder that broke off and can be saved, the newest first.

    Journals that are in use, hold nothing, can't be read or are of a sample clip are left
    alone; so are those of a newer version, which are named with ``newer``.
    """
    found = []
    for folder in folders_in((data or data_folder()) / "sessions"):
        with contextlib.suppress(InputError, OSError):
            if not _is_interrupted(folder):
                continue
            with _held(folder / JOURNAL_NAME) as free:
                if free and (one := _one_of(folder)) is not None and (newer or not one.newer):
                    found.append(one)
    return sorted(found, key=lambda i: (i.started_at, i.folder.name), reverse=True)


def _one_of(folder: Path) -> Interrupted | None:
    """What a journal holds; None where it is no patient's."""
    try:
        content = read_journal(folder / JOURNAL_NAME, without="sample")
    except NewerJournalError:
        return Interrupted(folder, "", 0, newer=True)
    head = content.damaged_head
    if _is_of_the_sample(content) or (head is not None and head.demo):
        return None
    return Interrupted(
        folder,
        _started_at(content),
        _repetitions(content),
        damaged=head is not None,
        unsure=head is not None and not head.marked,
    )


def moved_sessions(data: Path | None = None) -> list[Path]:
    """Folders in the data folder whose sessions were saved in another place."""
    folders = folders_in((data or data_folder()) / "sessions")
    return [f for f in folders if (f / MOVED_NAME).exists() and not (f / SUMMARY_NAME).exists()]


def save_interrupted(session: Interrupted) -> Summary:
    """Write the files of a session that broke off, from its journal.

    Raises
    ------
    InputError
        If its journal can't be read.
    RunError
        If it is in use, or a file can't be written; the journal stays as it is.
    """
    journal = session.folder / JOURNAL_NAME
    try:
        with _held(journal) as free:
            if not free:
                raise RunError(f"{session.folder}: is in use by another window; close that first")
            _clear_away(session.folder)
            return save_session(session.folder)
    except OSError as error:
        raise InputError(f"{journal}: can't be read ({system_reason(error)})") from error


def folders_in(sessions: Path) -> list[Path]:
    """Folders of sessions in the folder of all of them; none where that is not there."""
    try:
        return [p for p in sessions.iterdir() if p.is_dir() and not p.is_symlink()]
    except OSError:
        return []


def _is_interrupted(folder: Path) -> bool:
    return (folder / JOURNAL_NAME).is_file() and not (folder / SUMMARY_NAME).exists()


def _clear_away(folder: Path) -> None:
    """Take away what a program that was killed while it wrote a file left of it."""
    for name in FILE_NAMES:
        for left in folder.glob(f".{name}.*"):
            # Where nothing can be taken away nothing can be saved either, and that is said.
            with contextlib.suppress(OSError):
                left.unlink()


def is_in_use(folder: Path) -> bool:
    """Whether the session in a folder is being recorded now."""
    try:
        with _held(folder / JOURNAL_NAME) as free:
            return not free
    except FileNotFoundError:
        # Without a journal nobody records there.
        return False
    except OSError:
        # What can't be looked at may be in use.
        return True


def written_just_now(mtime_s: float) -> bool:
    """Whether a file was written to so lately that somebody may still be at it.

    Clocks differ a little, so a time that lies as little ahead counts too. One farther ahead
    doesn't: a clock was set back, and till it has caught up could take years.
    """
    return abs(time.time() - mtime_s) < IN_USE_S


@contextmanager
def _held(journal: Path) -> Iterator[bool]:
    """Hold a journal's lock meanwhile; False if somebody is writing it."""
    try:
        handle = os.open(journal, os.O_RDWR | BINARY)
    except OSError:
        # What can only be read was recorded all the same.
        with open_file(journal) as file:
            handle = os.dup(file.fileno())
    try:
        must_be_ordinary(handle)
        got = lock(handle)
        if got is None:
            got = not written_just_now(os.fstat(handle).st_mtime)
        yield got
    finally:
        os.close(handle)


def _is_of_the_sample(content: JournalContent) -> bool:
    """Whether a sample clip was the camera: a demo that was killed is nobody's session."""
    about = content.of("session")[0].get("about")
    setup = about.get("setup") if isinstance(about, dict) else None
    return isinstance(setup, dict) and is_of_the_sample(setup)


def _started_at(content: JournalContent) -> str:
    about = content.of("session")[0].get("about")
    return str(about.get("started_at") or "") if isinstance(about, dict) else ""


def _repetitions(content: JournalContent) -> int:
    turns = Counter(str(r.get("number")) for r in content.of("turn"))
    done = {str(r.get("number")): r.get("step") for r in content.of("step")}
    return sum(n // _turns_each(done.get(number)) for number, n in turns.items())


def _turns_each(step: Any) -> int:
    """How many turns are a repetition in the exercise of a step's record."""
    exercise = CATALOGUE.get(str(step.get("exercise"))) if isinstance(step, dict) else None
    return channel_of("" if exercise is None else exercise.channel).turns_each
