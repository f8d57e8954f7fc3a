"""Notes: only ever appended, one file an author, and undone by nobody else."""

from __future__ import annotations

import json
import os
from pathlib import Path

import pytest

from tracker.errors import InputError, RunError
from tracker.records import appended
from tracker.records.index import read_folder
from tracker.records.notes import NoteBook, author_of_system


def texts(book: NoteBook) -> list[str]:
    return [n.text for n in book.notes()]


def test_notes_and_marks_are_read_again(tmp_path: Path) -> None:
    book = NoteBook(tmp_path, "kim")
    book.add("note", "s1", "Looked at the clock.")
    book.add("not_valid", "s1", "sneezed", set_number=0, repetition=4)
    again = NoteBook(tmp_path, "kim").notes()
    assert [(n.kind, n.session, n.text, n.repetition) for n in again] == [
        ("note", "s1", "Looked at the clock.", None),
        ("not_valid", "s1", "sneezed", 4),
    ]


def test_nothing_that_was_written_is_ever_changed(tmp_path: Path) -> None:
    book = NoteBook(tmp_path, "kim")
    seen = b""
    for step in (
        lambda: book.add("note", "s1", "one"),
        lambda: book.add("note", "s1", "two"),
        lambda: book.undo(),
        lambda: book.add("note", "s1", "three"),
    ):
        step()
        now = book.path.read_bytes()
        assert now.startswith(seen) and len(now) > len(seen)
        seen = now
    assert texts(book) == ["one", "three"]


@pytest.mark.skipif(os.name != "posix", reason="rights are those of Unix")
@pytest.mark.parametrize(("folder", "file"), [(0o700, 0o600), (0o755, 0o640), (0o777, 0o660)])
def test_none_but_the_folders_group_may_read_notes(tmp_path: Path, folder: int, file: int) -> None:
    """As with sessions that were taken in: colleagues as far as the folder lets them, no others."""
    book = NoteBook(tmp_path, "kim")
    book.path.parent.mkdir(exist_ok=True)
    book.path.parent.chmod(folder)
    mask = os.umask(0)
    try:
        book.add("note", "s1", "one")
    finally:
        os.umask(mask)
    assert book.path.stat().st_mode & 0o777 == file


@pytest.mark.skipif(os.name != "posix", reason="rights are those of Unix")
@pytest.mark.parametrize("mask", [0o000, 0o022, 0o077])
@pytest.mark.parametrize(("above", "made"), [(0o700, 0o700), (0o755, 0o750), (0o2770, 0o2770)])
def test_the_folder_of_notes_lets_colleagues_in_and_nobody_else(
    tmp_path: Path, above: int, made: int, mask: int
) -> None:
    """Each colleague has a file of their own there; what is usual for new folders counts not."""
    clinic = tmp_path / "clinic"
    clinic.mkdir()
    clinic.chmod(above)
    before = os.umask(mask)
    try:
        book = NoteBook(clinic, "kim")
        book.add("note", "s1", "one")
    finally:
        os.umask(before)
    assert book.path.parent.stat().st_mode & 0o7777 == made
    assert book.path.stat().st_mode & 0o777 == 0o600 | (made & 0o060)


@pytest.mark.parametrize("member", [True, False])
def test_the_rights_of_the_clinics_group_are_given_to_no_other(
    tmp_path: Path, other_group: int, member: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What is made has the group of whoever makes it, unless the folder hands its own down."""
    clinic = tmp_path / "clinic"
    clinic.mkdir()
    os.chown(clinic, -1, other_group)
    clinic.chmod(0o770)
    if not member:

        def refuse(*_: object) -> None:
            raise PermissionError(1, "Operation not permitted")

        monkeypatch.setattr(os, "chown", refuse)
    book = NoteBook(clinic, "kim")
    book.add("note", "s1", "one")
    assert texts(book) == ["one"]
    wanted = (other_group, 0o770, 0o660) if member else (os.getegid(), 0o700, 0o600)
    folder, file = book.path.parent.stat(), book.path.stat()
    assert folder.st_gid == file.st_gid == wanted[0]
    assert (folder.st_mode & 0o777, file.st_mode & 0o777) == wanted[1:]


def test_undo_goes_back_one_by_one_and_ends(tmp_path: Path) -> None:
    book = NoteBook(tmp_path, "kim")
    for session, text in (("s1", "a"), ("s2", "b"), ("s1", "c")):
        book.add("note", session, text)
    undone = book.undo("s2")
    assert undone is not None and undone.text == "b"
    assert [book.undo().text, book.undo().text] == ["c", "a"]  # type: ignore[union-attr]
    assert book.undo() is None and texts(book) == []


def test_two_therapists_do_not_undo_each_other(tmp_path: Path) -> None:
    kim, lee = NoteBook(tmp_path, "kim"), NoteBook(tmp_path, "lee")
    kim.add("note", "s1", "from kim")
    lee.add("note", "s1", "from lee")
    assert kim.undo() is not None
    assert kim.undo() is None
    assert texts(lee) == texts(kim) == ["from lee"]
    # Not even with a line written by hand.
    again = kim.add("note", "s1", "again")
    with lee.path.open("a") as file:
        line = {"id": "x", "author": "kim", "kind": "withdrawn", "of": again.id}
        file.write(json.dumps(line) + "\n")
    assert "again" in texts(kim)


def test_the_same_login_on_two_computers_is_two_writers(tmp_path: Path) -> None:
    """Shared logins are usual in clinics (common practice); each file has one writer."""
    old = NoteBook(tmp_path, "clinic")
    old.add("note", "s1", "of before")
    old.add("note", "s1", "taken back before")
    old.undo()
    one, other = NoteBook(tmp_path, "clinic", "0a1b2c3d"), NoteBook(tmp_path, "clinic", "f00d0000")
    one.add("note", "s1", "from one")
    other.add("note", "s1", "from the other")
    assert one.path != other.path and {one.path, other.path, old.path} == set(
        one.folder.glob("*.jsonl")
    )
    assert {n.author for n in one.notes()} == {"clinic"}
    undone = one.undo()
    assert undone is not None and undone.text == "from one"
    assert one.undo() is None
    # A line that claims another writer is this file's own all the same.
    theirs = next(n for n in one.notes() if n.text == "from the other")
    with one.path.open("a") as file:
        line = {"id": "x", "kind": "withdrawn", "of": theirs.id, "writer": "f00d0000"}
        file.write(json.dumps(line) + "\n")
    assert sorted(texts(other)) == ["from the other", "of before"]
    with pytest.raises(InputError, match="can't name a file"):
        NoteBook(tmp_path, "clinic", "../x")


def test_what_names_no_writer_is_withdrawn_by_the_same_login_and_by_no_other(
    tmp_path: Path,
) -> None:
    old, lee = NoteBook(tmp_path, "clinic"), NoteBook(tmp_path, "lee", "f00d0000")
    for session, text in (("s1", "first"), ("s2", "elsewhere"), ("s1", "last")):
        old.add("note", session, text)
    one = NoteBook(tmp_path, "clinic", "0a1b2c3d")
    assert one.undo("s1") is None and lee.last_without_writer("s1") is None
    found = one.last_without_writer("s1")
    assert found is not None and found.text == "last"
    lee.withdraw(found.id)
    assert "last" in texts(one)
    one.withdraw(found.id)
    assert sorted(texts(one)) == sorted(texts(lee)) == ["elsewhere", "first"]


def test_a_line_that_was_cut_off_takes_nothing_with_it(tmp_path: Path) -> None:
    book = NoteBook(tmp_path, "kim")
    book.add("note", "s1", "one")
    with book.path.open("ab") as file:
        file.write(b'{"id": "half')
    book.add("note", "s1", "two")
    assert texts(book) == ["one", "two"]


def test_a_damaged_head_hides_no_note_once_another_is_added(tmp_path: Path) -> None:
    book = NoteBook(tmp_path, "kim")
    book.add("note", "s1", "one")
    content = book.path.read_bytes()
    book.path.write_bytes(content.replace(b'"format_version"', b'"format_verzion"', 1))
    book.add("note", "s1", "two")
    assert texts(book) == ["one", "two"]


def test_the_notes_of_a_newer_version_stay_as_they_are(tmp_path: Path) -> None:
    """Nobody of this version would ever see what was added there."""
    book = NoteBook(tmp_path, "kim")
    book.add("note", "s1", "one")
    newer = book.path.read_bytes().replace(b'"format_version": 1', b'"format_version": 9', 1)
    book.path.write_bytes(newer)
    with pytest.raises(RunError, match=r"not saved \(a newer version of this program wrote it"):
        book.add("note", "s1", "two")
    assert book.path.read_bytes() == newer


def test_notes_that_are_not_shown_are_named_with_their_reason(tmp_path: Path) -> None:
    """A colleague may have marked a repetition there, and the figures still hold it."""
    for author in ("ann", "kim", "lee"):
        NoteBook(tmp_path, author).add("note", "s1", "one")
    newer, foreign = (tmp_path / "notes" / f"{n}.notes.jsonl" for n in ("ann", "kim"))
    newer.write_bytes(newer.read_bytes().replace(b'"format_version": 1', b'"format_version": 9'))
    foreign.write_text('{"of": "somebody else"}\n', encoding="utf-8")
    (tmp_path / "notes" / "new.notes.jsonl").touch()
    assert [(u.path, u.why) for u in read_folder(tmp_path).unread] == [
        (
            "notes/ann.notes.jsonl",
            "can't be read (a newer version of this program wrote it)",
        ),
        ("notes/kim.notes.jsonl", "is no file of this program"),
    ]


def test_no_note_goes_where_it_could_not_be_read_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    book = NoteBook(tmp_path, "kim")
    book.add("note", "s1", "one")
    before = book.path.read_bytes()
    monkeypatch.setattr("tracker.records.appended.MAX_FILE_BYTES", len(before) + 20)
    with pytest.raises(RunError, match=r"not saved \(it is too large"):
        book.add("note", "s1", "two")
    assert book.path.read_bytes() == before and texts(book) == ["one"]


def test_copies_of_a_synced_folder_are_read_once(tmp_path: Path) -> None:
    book = NoteBook(tmp_path, "kim")
    book.add("note", "s1", "one")
    (book.folder / "kim (copy of laptop).notes.jsonl").write_bytes(book.path.read_bytes())
    (book.folder / "foreign.jsonl").write_text('{"format": "other"}\n{"kind": "note"}\n')
    (book.folder / "newer.jsonl").write_text(
        '{"format": "turnpost-notes", "format_version": 99}\n{"kind": "note", "id": "q"}\n'
    )
    assert texts(book) == ["one"]


def test_a_note_that_can_not_be_saved_is_said(tmp_path: Path) -> None:
    (tmp_path / "notes").write_text("a file where the folder should be")
    with pytest.raises(RunError, match="the note was not saved"):
        NoteBook(tmp_path, "kim").add("note", "s1", "one")


@pytest.mark.parametrize("name", ["", "../kim", "a b", ".hidden"])
def test_an_author_names_no_other_place(tmp_path: Path, name: str) -> None:
    with pytest.raises(InputError, match="can't name a file"):
        NoteBook(tmp_path, name)


def test_the_systems_name_always_serves(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    for name in ("Kim Müller", "DOMAIN\\kim", "...", "", "_kim", "-_ü"):
        monkeypatch.setattr("getpass.getuser", lambda name=name: name)
        NoteBook(tmp_path, author_of_system()).add("note", "s", "fine")


def test_two_logins_never_share_a_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    logins = ["سارة", "أحمد", "Ольга", "Müller", "Möller", "a" * 50 + "b", "a" * 50 + "c"]
    names = set()
    for login in logins:
        monkeypatch.setattr("getpass.getuser", lambda login=login: login)
        book = NoteBook(tmp_path, author_of_system())
        book.add("note", "s", login)
        names.add(book.author)
    assert len(names) == len(logins)
    undone = book.undo()
    assert undone is not None and undone.text == logins[-1] and book.undo() is None
    # The same login is the same author, whichever way its letters are written.
    for login in ("M\u00fcller", "Mu\u0308ller"):
        monkeypatch.setattr("getpass.getuser", lambda login=login: login)
        assert author_of_system() in names
    # What was written under a plain login stays one's own.
    monkeypatch.setattr("getpass.getuser", lambda: "DOMAIN\\kim.m")
    assert author_of_system() == "DOMAIN-kim.m"


@pytest.mark.parametrize("left", [b'{"format": "turnp', b"\x00\x00\x00", b"\n"])
def test_a_head_that_was_cut_off_costs_no_later_note(tmp_path: Path, left: bytes) -> None:
    book = NoteBook(tmp_path, "ann")
    book.path.parent.mkdir(parents=True, exist_ok=True)
    book.path.write_bytes(left)
    book.add("note", "s1", "first")
    book.add("note", "s1", "second")
    assert sorted(texts(NoteBook(tmp_path, "ann"))) == ["first", "second"]


def test_odd_lines_are_passed_over(tmp_path: Path) -> None:
    book = NoteBook(tmp_path, "ann")
    book.add("note", "s1", "kept")
    for odd in ({"id": ["x"]}, {"id": "y", "of": {}}, {"id": "z", "session": [1]}):
        line = {"kind": "note", "text": "odd", "at": "2026-01-01T00:00:00+00:00", **odd}
        with book.path.open("a", encoding="utf-8") as file:
            file.write(json.dumps(line) + "\n")
    assert texts(book) == ["kept"]


def test_an_added_note_reads_no_more_of_the_file_than_its_head(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    book = NoteBook(tmp_path, "kim")
    for k in range(20):
        book.add("note", "s1", f"The {k}th.")
    real, read = appended._decoded, []
    monkeypatch.setattr(appended, "_decoded", lambda row: read.append(row) or real(row))
    book.add("note", "s1", "One more.")
    assert len(read) == 1
    assert len(book.notes()) == 21
