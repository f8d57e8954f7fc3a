"""Who can read what is stored is looked at, not taken for granted."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.stored import made
from tracker.stored import readers
from tracker.stored.look import Kind, what_is_stored
from tracker.stored.readers import Readers, who_can_read
from ui.stored import readers_of_folder

pytestmark = pytest.mark.skipif(os.name != "posix", reason="these rights are POSIX's")


@pytest.fixture
def open_place() -> Iterator[Path]:
    """A folder that everybody can come to, unlike those of the tests."""
    folder = Path(tempfile.mkdtemp(dir="/var/tmp"))
    folder.chmod(0o755)
    try:
        yield folder
    finally:
        shutil.rmtree(folder)


def file_in(folder: Path, mode: int) -> Path:
    path = folder / "sessions" / "s" / "summary.json"
    path.parent.mkdir(parents=True, exist_ok=True)
    for above in (path.parent, path.parent.parent):
        above.chmod(0o755)
    path.write_text("{}")
    path.chmod(mode)
    return path


@pytest.mark.parametrize(
    ("mode", "found"),
    [(0o600, "own"), (0o640, "others"), (0o604, "others"), (0o644, "others"), (0o622, "own")],
)
def test_the_file_s_own_rights_count_where_anybody_can_come(
    open_place: Path, mode: int, found: str
) -> None:
    path = file_in(open_place, mode)
    assert who_can_read([path]) == found
    assert who_can_read([open_place / "sessions"]) == found


@pytest.mark.parametrize("closed", ["", "sessions", "sessions/s"])
def test_one_closed_folder_on_the_way_keeps_others_out(open_place: Path, closed: str) -> None:
    path = file_in(open_place, 0o644)
    (open_place / closed).chmod(0o700)
    assert who_can_read([path]) == who_can_read([open_place / "sessions"]) == Readers.own


def test_one_file_of_many_is_enough(open_place: Path) -> None:
    file_in(open_place, 0o600)
    other = open_place / "sessions" / "s" / "trace.csv"
    other.write_text("")
    other.chmod(0o644)
    assert who_can_read([open_place / "sessions"]) == Readers.others


@pytest.mark.skipif(os.name != "posix" or os.geteuid() != 0, reason="only root gives files away")
def test_what_belongs_to_somebody_else_is_theirs(open_place: Path) -> None:
    path = file_in(open_place, 0o600)
    os.chown(path, 12345, -1)
    assert who_can_read([path]) == Readers.others


@pytest.fixture(autouse=True)
def rights_tell_all(monkeypatch: pytest.MonkeyPatch) -> None:
    """As on Linux, wherever this runs."""
    monkeypatch.setattr(readers, "_rights_tell_all", lambda: True)


def test_what_is_gone_is_read_by_nobody(open_place: Path) -> None:
    (open_place / "link").symlink_to(open_place / "nothing")
    assert who_can_read([open_place / "link", open_place / "gone" / "file"]) == Readers.own


@pytest.mark.parametrize(("mode", "found"), [(0o600, "own"), (0o644, "others")])
def test_a_link_is_judged_by_where_it_leads(
    open_place: Path, tmp_path: Path, mode: int, found: str
) -> None:
    path = file_in(open_place, mode)
    closed = tmp_path / "data"
    closed.mkdir(mode=0o700)
    for target in (path, path.parent, open_place):
        (closed / "in").mkdir(exist_ok=True)
        link = closed / "in" / "link"
        link.symlink_to(target)
        assert who_can_read([link]) == who_can_read([closed]) == found, target
        link.unlink()
    # Links that lead round end.
    (path.parent / "trace.csv").symlink_to(open_place)
    (closed / "round").symlink_to(closed)
    assert who_can_read([open_place, closed]) == found


def test_what_lies_elsewhere_is_looked_at_there(
    open_place: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    data = tmp_path / "data"
    monkeypatch.setenv("TURNPOST_DATA", str(data))
    data.mkdir(mode=0o700)
    path = file_in(open_place, 0o600)
    (data / "sessions").symlink_to(open_place / "sessions")
    assert what_is_stored().elsewhere and what_is_stored().readers == Readers.own
    assert readers_of_folder() == Readers.own
    path.chmod(0o644)
    assert what_is_stored().readers == readers_of_folder() == Readers.others


def test_where_rights_do_not_tell_all_nothing_is_told_as_safe(
    open_place: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.undo()
    path = file_in(open_place, 0o600)
    monkeypatch.setattr(readers.sys, "platform", "darwin")
    assert who_can_read([path]) == Readers.unknown
    path.chmod(0o644)
    assert who_can_read([path]) == Readers.others


def test_what_the_program_writes_is_the_owner_s_even_in_an_open_place(
    open_place: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("TURNPOST_DATA", str(open_place / "data"))
    (open_place / "data").mkdir(mode=0o755)
    made.everything()
    found = what_is_stored()
    # Notes are written beside sessions where others may be meant to read them.
    kinds = (Kind.received, Kind.faces, Kind.plans, Kind.handed_over, Kind.settings, Kind.keys)
    assert who_can_read(i.path for i in found.of(*kinds)) == Readers.own
    assert who_can_read(i.path for i in found.of(Kind.notes)) == found.readers == Readers.others


def test_another_system_or_a_refusal_is_not_told_as_safe(
    open_place: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = file_in(open_place, 0o600)

    def refuse(*_: object) -> bool:
        raise PermissionError(13, "no")

    with monkeypatch.context() as patch:
        patch.setattr(readers, "_lets_others", refuse)
        assert who_can_read([path]) == Readers.unknown
    monkeypatch.setattr(readers.os, "name", "nt")
    assert who_can_read([path]) == Readers.unknown
