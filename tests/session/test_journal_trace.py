"""Journal, trace and files: whole or not at all, and damage is put up with."""

from __future__ import annotations

from math import isnan
from pathlib import Path

import pytest

from tracker.errors import InputError, RunError
from tracker.sample import Sample
from tracker.session.engine import Engine
from tracker.session.files import session_folder, write_atomically
from tracker.session.journal import (
    NUMBER_COLUMNS,
    UNNAMED_COLUMNS,
    FileJournal,
    JournalContent,
    MemoryJournal,
    read_journal,
    sample_record,
)
from tracker.session.live import SessionInfo
from tracker.session.projections import session_record
from tracker.session.trace import parse_trace

HEAD = {"kind": "session", "format": "turnpost-journal", "format_version": 1, "about": {}}


def test_half_lines_and_foreign_bytes_are_passed_over(tmp_path: Path) -> None:
    path = tmp_path / "j"
    with FileJournal(path) as journal:
        journal.append(HEAD)
        journal.append({"kind": "mark", "name": "a", "time_s": 1.0})
    with path.open("ab") as file:
        file.write(b'\xff\xfe\n[1]\n{"kind":"mark","na')
    content = read_journal(path)
    assert len(content.of("mark")) == 1
    assert content.damaged_lines == 3
    assert content.ended == "interrupted"
    assert path.stat().st_mode & 0o077 == 0


@pytest.mark.parametrize("text", [b"", b"hello\n", b'{"kind":"session","format":"other"}\n'])
def test_what_is_no_journal_is_refused(tmp_path: Path, text: bytes) -> None:
    (tmp_path / "j").write_bytes(text)
    with pytest.raises(InputError):
        read_journal(tmp_path / "j")


def test_some_columns_and_a_mark_at_the_start_are_enough() -> None:
    samples = parse_trace("time_s,other,head_yaw_deg\n0.0,x,1.5\n0.1,y,\n", "t")
    assert samples[0] == Sample(0.0, head_yaw_deg=1.5) or samples[0].head_yaw_deg == 1.5
    assert isnan(samples[1].head_yaw_deg)


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("a,b\n1,2\n", "time_s"),
        ("time_s,head_yaw_deg\n0,abc\n", "line 2, head_yaw_deg"),
        ("time_s\n1\n1\n", "line 3, time_s"),
        ("time_s,time_s\n1,1\n", "twice"),
        ("time_s\n", "no rows"),
    ],
)
def test_bad_traces_name_the_place(text: str, place: str) -> None:
    with pytest.raises(InputError, match=place):
        parse_trace(text, "t")


def test_failed_writes_leave_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "f"
    write_atomically(path, "old")

    def full(handle: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("tracker.session.files.os.fsync", full)
    with pytest.raises(RunError):
        write_atomically(path, "new")
    assert path.read_text() == "old"
    assert [p.name for p in tmp_path.iterdir()] == ["f"]


def test_unwritable_places_and_escaping_names_are_refused(tmp_path: Path) -> None:
    with pytest.raises(InputError):
        write_atomically(tmp_path / "none" / "f", "x")
    with pytest.raises(InputError):
        session_folder("../x", tmp_path)


def test_a_journal_of_before_there_were_elbows_keeps_its_wrists() -> None:
    numbers = {name: float(k) for k, name in enumerate(UNNAMED_COLUMNS, 1)}
    row = {"kind": "sample", "v": [numbers[n] for n in UNNAMED_COLUMNS]}
    (sample,) = session_record(JournalContent([dict(HEAD), row])).samples
    assert {n: getattr(sample, n) for n in UNNAMED_COLUMNS} == numbers
    assert isnan(sample.elbow_right_x_mm)


@pytest.mark.parametrize("named", [True, False])
def test_every_column_of_now_is_read_back(named: bool) -> None:
    numbers = {name: float(k) for k, name in enumerate(NUMBER_COLUMNS, 1)}
    journal = MemoryJournal()
    Engine(journal, about=SessionInfo(session_id="s"))
    (head,) = journal.content().of("session")
    assert head["columns"] == list(NUMBER_COLUMNS)
    if not named:
        del head["columns"]
    (sample,) = session_record(JournalContent([head, sample_record(Sample(**numbers))])).samples
    assert {n: getattr(sample, n) for n in NUMBER_COLUMNS} == numbers


def test_columns_are_read_by_name_and_unknown_ones_passed_over() -> None:
    head = HEAD | {"columns": ["time_s", "of_later", "wrist_left_y_mm", "light"]}
    row = {"kind": "sample", "v": [2.0, 7.0, 30.0, 0.5]}
    (sample,) = session_record(JournalContent([head, row])).samples
    assert (sample.time_s, sample.wrist_left_y_mm, sample.light) == (2.0, 30.0, 0.5)
    assert isnan(sample.head_yaw_deg)
