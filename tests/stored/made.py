"""Everything that the program writes on a computer, by the code that writes it."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from calibration.mark import MarkFound
from tests.handover.made import plan_with, write_session
from tests.session.synthetic import steps, turns_samples
from tests.test_spoilt_files import nobody
from tracker.handover import crypt, keys, sent
from tracker.lens import Lens
from tracker.records.index import read_folder
from tracker.records.notes import NoteBook
from tracker.session.engine import Engine
from tracker.session.files import data_folder, make_private_folder, whole_file
from tracker.session.journal import FileJournal
from tracker.session.live import SessionInfo
from tracker.session.lock import LOCK_NAME, OnlyCopy
from tracker.session.saving import JOURNAL_NAME, MOVED_NAME, save_session
from ui import wiring
from ui.plan_in_use import keep_plan_in_use
from ui.ports import CameraChoice
from ui.settings import Settings
from ui.setup.lens_store import keep_lens, keep_mark

CAMERA = CameraChoice(0, "Camera of the lid", "usb-1")
DAYS = ("2026-11-03", "2026-11-20", "2026-11-24")
BROKEN_OFF = "20261125-101500-abcd"
MARK = MarkFound(20.0, 20.5, 0.3, 1500.0, 600.0, "2026-11-24")


def record(folder: Path, *, save: bool) -> FileJournal:
    """A short session in a folder, with its journal still open."""
    journal = FileJournal(folder / JOURNAL_NAME)
    engine = Engine(journal, about=SessionInfo(session_id=folder.name))
    for step in steps(to_s=8.0):
        engine.begin(step)
    for sample in turns_samples(to_s=8.0):
        engine.feed(sample)
    if save:
        engine.finish()
    journal.finish()
    if save:
        save_session(folder)
    return journal


@cache
def _locked_key() -> tuple[str, bytes]:
    """A clinic's key: to lock one takes a second, and ten on a busy machine."""
    identity, public = crypt.new_identity()
    return public, crypt.lock(identity, "three or four words")


def half_written(path: Path) -> None:
    """What a kill leaves of a file that was being written."""
    before = set(path.parent.iterdir())
    with whole_file(path):
        made = (set(path.parent.iterdir()) - before).pop()
    path.rename(made)


def sessions(data: Path) -> None:
    """Three sessions, one that broke off, and one that was saved in another folder."""
    for day in DAYS:
        write_session(data, day)
    record(data / "sessions" / BROKEN_OFF, save=False).close()
    moved = data / "sessions" / "20261126-101500-abcd"
    record(moved, save=False).close()
    (moved / JOURNAL_NAME).rename(moved / MOVED_NAME)


def everything() -> Path:
    """One of all that the program writes; gives the data folder."""
    data = make_private_folder(data_folder())
    OnlyCopy(data / LOCK_NAME).close()
    sessions(data)
    record(data / "baseline-P-07-20261110-090000", save=True).close()
    record(data / "handed-over-P-08-ab12" / "20261112-090000-ab00", save=True).close()
    wiring.keep_profile(nobody(), CAMERA, "varifocal-left")
    half_written(data / "cameras.json")
    half_written(data / "profiles" / "0123456789ab_none_usual.npz")
    keep_lens("0123456789ab", Lens(44.0, "paper", 1.2, 640 / 480))
    keep_mark("0123456789ab_none_usual", MARK)
    keep_plan_in_use(plan_with(plain=True))
    keep_plan_in_use(plan_with(plain=True, person="P-09"), new=True)
    sent.remember(plan_with(plain=True), [p.name for p in (data / "sessions").iterdir()], data)
    settings = Settings(data / "window.ini")
    settings.text_percent = 150
    settings.sync()
    keys._keep(*_locked_key())
    for folder in (data, data / "sessions"):
        NoteBook(folder, "kim").add("note", "s1", "Looked at the clock.")
        NoteBook(folder, "kim").path.with_name("kim.sent.jsonl").write_text("{}\n")
        read_folder(folder)
    (data / "window.ini.lock").write_text("1\n")
    (data / "sessions" / ".20261127-090000-ab00.abcd_123" / "whole").mkdir(parents=True)
    return data
