"""``turnpost stored``: lists, copies and deletes without a window."""

from __future__ import annotations

import zipfile
from pathlib import Path
from types import SimpleNamespace

import pytest

from tests.stored import made
from tracker.session.files import data_folder
from tracker.session.lock import LOCK_NAME, OnlyCopy
from tracker.stored.look import DELETED, SESSIONS, Kind
from ui import cli, stored
from ui.commands.open import open_program

Captured = pytest.CaptureFixture[str]


def names() -> set[str]:
    return {i.path.name for i in stored.look().of(*SESSIONS)}


def test_all_is_listed(capsys: Captured) -> None:
    data = made.everything()
    (data / "letter.txt").write_text("dear")
    assert cli.main(["stored"]) == 0
    out = capsys.readouterr().out
    said = "readable by your account alone, and an administrator's; not encrypted unless the disk"
    assert out.startswith(f"{data}: {said}")
    for name in names():
        assert name in out
    assert "2026-11-03 to 2026-11-26" in out and f"{made.BROKEN_OFF}  broken off" in out
    assert f"varifocal-left, {made.CAMERA.name}" in out and "letter.txt" in out
    lines = out.splitlines()
    kinds = [line for line in lines if " kB  20" in line and line[:6].strip().isdigit()]
    assert len(kinds) == len(Kind)


def test_nothing_is_deleted_without_a_yes(capsys: Captured) -> None:
    made.everything()
    before = names()
    for what in ("sessions", "faces", "everything", made.BROKEN_OFF):
        assert cli.main(["stored", "--delete", what]) == 2
        assert "add --yes" in capsys.readouterr().err
    assert names() == before and stored.look().of(Kind.faces)


@pytest.mark.parametrize(
    ("what", "gone"),
    [("sessions", SESSIONS), ("faces", {Kind.faces}), ("everything", set(Kind))],
)
def test_what_is_named_is_deleted(what: str, gone: set[Kind], capsys: Captured) -> None:
    data = made.everything()
    assert cli.main(["stored", "--delete", what, "--yes"]) == 0
    assert "deleted for good: " in capsys.readouterr().out
    # The desk's index goes with the sessions that it tells of.
    index = {Kind.desk_index} if what == "sessions" else set()
    assert {i.kind for i in stored.look().items} == set(Kind) - gone - index
    assert bool(list(data.iterdir())) == (what != "everything")
    assert cli.main(["stored", "--delete", what, "--yes"]) == 0
    assert "nothing was deleted" in capsys.readouterr().out


def test_one_session_is_deleted_by_its_name(capsys: Captured) -> None:
    made.everything()
    before = names()
    assert cli.main(["stored", "--delete", made.BROKEN_OFF, "--yes"]) == 0
    assert names() == before - {made.BROKEN_OFF}
    for wrong in (made.BROKEN_OFF, "..", "../sessions", "models", "", "keys"):
        code = cli.main(["stored", "--delete", wrong, "--yes"])
        assert code == 2, wrong
    assert "is no session here" in capsys.readouterr().err
    assert names() == before - {made.BROKEN_OFF}


def test_nothing_is_deleted_while_the_program_is_open(capsys: Captured) -> None:
    data = made.everything()
    before = names()
    lock = OnlyCopy(data / LOCK_NAME)
    assert cli.main(["stored", "--delete", "everything", "--yes"]) == 1
    assert "Turnpost is open" in capsys.readouterr().err and names() == before
    lock.close()


def test_what_can_not_be_deleted_ends_with_a_failure(capsys: Captured) -> None:
    made.sessions(data := made.make_private_folder(data_folder()))
    journal = made.record(data / "sessions" / "20261127-090000-ab00", save=False)
    assert cli.main(["stored", "--delete", "sessions", "--yes"]) == 1
    out = capsys.readouterr().out
    assert "could not be deleted" in out and "is being recorded now" in out
    assert names() == {"20261127-090000-ab00"}
    journal.close()


def test_a_copy_is_written_first_and_never_over_something(tmp_path: Path, capsys: Captured) -> None:
    made.everything()
    to = tmp_path / "copy.zip"
    words = ["stored", "--export", str(to), "--only", "faces", "--delete", "faces", "--yes"]
    assert cli.main(words) == 0
    assert "NOT encrypted" in capsys.readouterr().out
    with zipfile.ZipFile(to) as packed:
        assert len(packed.namelist()) == 2
    assert not stored.look().of(Kind.faces)
    assert cli.main(["stored", "--export", str(to)]) == 2
    assert "is there already" in capsys.readouterr().err
    inside = data_folder() / "copy.zip"
    assert cli.main(["stored", "--export", str(inside), "--delete", "everything", "--yes"]) == 2
    assert names()


def test_a_copy_with_a_clinic_s_keys_says_so_before_it_is_made(
    tmp_path: Path, capsys: Captured, monkeypatch: pytest.MonkeyPatch
) -> None:
    made.everything()
    assert cli.main(["stored", "--export", str(tmp_path / "a.zip"), "--only", "faces"]) == 0
    assert "keys of a clinic" not in capsys.readouterr().out
    assert cli.main(["stored", "--export", str(tmp_path / "b.zip")]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert "will hold the keys of a clinic" in lines[0] and "NOT encrypted" in lines[1]
    with zipfile.ZipFile(tmp_path / "b.zip") as packed:
        assert any(n.startswith("keys/") for n in packed.namelist())
        assert b"a clinic's keys" in packed.read("read-me.txt")
    # Said before: of a copy that fails, too.
    monkeypatch.chdir(tmp_path)
    assert cli.main(["stored", "--export", "no/c.zip"]) == 2
    assert "will hold the keys of a clinic" in capsys.readouterr().out


@pytest.mark.parametrize("wrong", [["--yes"], ["--only", "faces"], ["--only", "keys"]])
def test_a_wrong_call_is_refused(wrong: list[str], capsys: Captured) -> None:
    assert cli.main(["stored", *wrong]) == 2
    assert capsys.readouterr().err.startswith("turnpost")


def test_an_empty_computer_has_nothing(capsys: Captured) -> None:
    assert cli.main(["stored"]) == 0
    assert "nothing is stored" in capsys.readouterr().out
    assert not data_folder().exists()


def test_a_deletion_that_broke_off_is_finished_at_the_next_start(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    data = data_folder()
    left = data / f"{DELETED}x" / "0"
    left.mkdir(parents=True)
    (left / "summary.json").write_text("{}")
    opened = []
    app = SimpleNamespace(exec=lambda: opened.append(not left.exists()) or 0)
    monkeypatch.setattr("ui.opening.open_window", lambda **_: (app, None))
    assert open_program() == 0 and opened == [True]
    assert [p.name for p in data.iterdir()] == [LOCK_NAME]
