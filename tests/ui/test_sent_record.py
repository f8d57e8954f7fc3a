"""The record of what was sent, where several authors have written of one session."""

from __future__ import annotations

from pathlib import Path

import pytest

from tracker.errors import RunError
from tracker.records.appended import append_line
from ui.posting.record import FORMAT, FORMAT_VERSION, Sent, SentRecord

ADDRESS = "https://server.example/fhir"


def wrote(folder: Path, author: str, at: str, marks: str = "", why: str = "") -> None:
    """A line, as :meth:`SentRecord.add` writes it, of another time."""
    head = {"format": FORMAT, "format_version": FORMAT_VERSION, "author": author}
    line = {
        "at": at,
        "kind": "not_sent" if why else "sent",
        "to": ADDRESS,
        "session": "s-1",
        "summary": "digest",
        "marks": marks,
        "why": why,
    }
    append_line(SentRecord(folder, author).path, head, line)


def known(folder: Path) -> Sent:
    found = [SentRecord(folder, author).of(ADDRESS) for author in ("kim", "lee")]
    assert found[0] == found[1]
    return found[0]


@pytest.mark.parametrize(("first", "second"), [("kim", "lee"), ("lee", "kim")])
def test_the_last_sending_counts_whosever_name_comes_last(
    first: str, second: str, tmp_path: Path
) -> None:
    """Else marks of one author would go again with every call, or never."""
    wrote(tmp_path, first, "2026-11-20T22:30:00+01:00", why="not reached")
    wrote(tmp_path, first, "2026-11-20T23:30:00+01:00", "one mark")
    # 22:45 in another zone is a quarter of an hour later, though its letters come first.
    wrote(tmp_path, second, "2026-11-20T22:45:00+00:00", "none")
    wrote(tmp_path, second, "2026-11-20T22:50:00+00:00", why="bad unit")
    sent = known(tmp_path)
    assert sent.marks == {"digest": "none"} and sent.why == {"digest": "bad unit"}
    wrote(tmp_path, first, "2026-11-21T09:00:00+01:00", "two marks")
    sent = known(tmp_path)
    assert sent.marks == {"digest": "two marks"} and sent.why == {}
    assert sent.failed == {"digest": 2} and sent.tried == {"s-1"}


@pytest.mark.parametrize(("first", "second"), [("kim", "lee"), ("lee", "kim")])
def test_a_line_whose_time_can_not_be_read_is_no_last_word(
    first: str, second: str, tmp_path: Path
) -> None:
    wrote(tmp_path, first, "2026-11-20T22:30:00+01:00", "one mark")
    wrote(tmp_path, second, "some day", "none")
    assert known(tmp_path).marks == {"digest": "one mark"}


def test_a_full_record_says_that_it_must_be_moved(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Room on the disk, or a right, would change nothing."""
    record = SentRecord(tmp_path, "kim")
    record.add(ADDRESS, "s-1", "digest")
    size = record.path.stat().st_size
    monkeypatch.setattr("tracker.records.appended.MAX_FILE_BYTES", size + 20)
    with pytest.raises(RunError, match="move it elsewhere and send again"):
        record.add(ADDRESS, "s-2", "another digest")
    assert record.path.stat().st_size == size
    record.path.unlink()
    record.add(ADDRESS, "s-2", "digest")
