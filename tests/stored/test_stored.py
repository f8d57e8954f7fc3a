"""All that is stored is found, copied and deleted, and nothing else is touched."""

from __future__ import annotations

import errno
import os
import shutil
import subprocess
import sys
import tempfile
import zipfile
from datetime import datetime
from pathlib import Path

import pytest

from calibration.profile_file import about_profile
from tests.handover.made import everything as files_of
from tests.stored import made
from tracker.errors import InputError, RunError
from tracker.handover import sent
from tracker.records.index import cache_folder, index_path, read_folder
from tracker.session import recovery
from tracker.session.lock import LOCK_NAME
from tracker.session.recovery import interrupted_sessions
from tracker.stored import copy
from tracker.stored.copy import NEVER, READ_ME, save_copy
from tracker.stored.delete import IN_USE, delete, finish
from tracker.stored.look import DELETED, SESSIONS, Kind, Stored, what_is_stored
from tracker.stored.readers import Readers

ROOT = Path(__file__).parents[2]
OWN_DAYS = ["2026-11-03", "2026-11-20", "2026-11-24", "2026-11-26"]
RECEIVED_DAYS = ["2026-11-10", "2026-11-12"]


def look() -> Stored:
    return what_is_stored(about=about_profile)


def files_below(folder: Path) -> set[Path]:
    return {p for p in folder.rglob("*") if not p.is_dir() or p.is_symlink()}


@pytest.fixture
def data() -> Path:
    made.sessions(folder := made.make_private_folder(made.data_folder()))
    return folder


# --- what is found ---


def test_every_kind_that_the_program_writes_is_found_and_nothing_remains() -> None:
    data = made.everything()
    stored = look()
    assert {i.kind for i in stored.items} == set(Kind) and not stored.others
    held = {p for i in stored.items for p in files_below(i.path) | ({i.path} - {data})}
    everything = files_below(data) | files_below(cache_folder())
    # The lock holds nothing; it is that of the program that is open.
    assert everything - held == {data / LOCK_NAME}
    assert sum(i.size_bytes for i in stored.items) == sum(
        p.stat().st_size for p in everything - {data / LOCK_NAME}
    )
    done = delete(stored, stored.items)
    assert not done.left and done.gone == stored.items
    assert [p.name for p in data.iterdir()] == [LOCK_NAME]
    assert not list(cache_folder().rglob("*.json"))
    told = Readers.own if sys.platform == "linux" else Readers.unknown
    assert look() == Stored(data.resolve(), (), (), readers=told)


def test_sessions_have_their_day_and_faces_their_glasses_and_camera() -> None:
    made.everything()
    stored = look()

    def days(kind: Kind) -> list[str]:
        return sorted(f"{i.at:%Y-%m-%d}" for i in stored.of(kind))

    assert days(Kind.sessions) == OWN_DAYS
    # Those of other people are no part of what "all your sessions" means.
    assert days(Kind.received) == RECEIVED_DAYS
    assert not set(stored.of(Kind.received)) & set(stored.meant(SESSIONS))
    (broken,) = stored.of(Kind.broken_off)
    assert broken.path.name == made.BROKEN_OFF and broken.at == datetime(2026, 11, 25, 10, 15)
    (face,) = stored.of(Kind.faces)
    assert (face.camera, face.worn) == (made.CAMERA.name, "varifocal-left")
    assert abs((datetime.now() - face.at).total_seconds()) < 600
    # What can't be read is found all the same.
    face.path.write_bytes(b"no longer a face")
    (face,) = look().of(Kind.faces)
    assert (face.camera, face.worn) == ("", "varifocal-left")


def test_what_the_program_did_not_write_is_named_and_stays(data: Path, tmp_path: Path) -> None:
    foreign = tmp_path / "foreign"
    foreign.mkdir()
    (foreign / "journal.jsonl").write_text("somebody else's")
    (data / "letter.txt").write_text("dear")
    (data / ".cache.settings").write_text("another program's")
    (data / "sessions" / "photos").mkdir()
    (data / "sessions" / "photos" / "cat.png").write_text("cat")
    (data / "sessions" / "20261101-090000-ab00").symlink_to(foreign)
    (data / "profiles").symlink_to(foreign)
    (data / "models").mkdir()
    (data / "models" / "face.task").write_text("model")
    stored = look()
    assert {p.relative_to(data).as_posix() for p in stored.others} == {
        ".cache.settings",
        "letter.txt",
        "sessions/20261101-090000-ab00",
        "sessions/photos",
    }
    assert [p.name for p in stored.elsewhere] == ["profiles"]
    assert len(stored.of(*SESSIONS)) == 5
    assert not delete(stored, stored.items).left
    assert files_of(foreign) == {"journal.jsonl": b"somebody else's"}
    left = {p.relative_to(data).as_posix() for p in files_below(data)}
    assert left == {
        ".cache.settings",
        "letter.txt",
        "models/face.task",
        "profiles",
        "sessions/20261101-090000-ab00",
        "sessions/photos/cat.png",
    }


# --- deleting ---


def test_one_session_goes_with_what_tells_of_it_elsewhere(data: Path) -> None:
    plan = made.plan_with(plain=True)
    folders = sorted((data / "sessions").iterdir())
    sent.remember(plan, [f.name for f in folders], data)
    for folder in (data, data / "sessions", data.parent):
        read_folder(folder)
        assert index_path(folder).is_file()
    stored = look()
    one = next(i for i in stored.of(Kind.sessions) if i.path == folders[0].resolve())
    assert delete(stored, [one]).gone == (one,)
    assert sorted((data / "sessions").iterdir()) == folders[1:]
    assert sent.record(data)[sent.receiver(plan)] == [f.name for f in folders[1:]]
    assert not any(one.path.name in p.read_text() for p in cache_folder().rglob("*.json"))
    # Renamed by hand it was handed over by its own name, and that goes with it, too.
    renamed = folders[1].rename(folders[1].with_name("first 20261120-090000"))
    stored = look()
    assert not delete(stored, [i for i in stored.items if i.path == renamed.resolve()]).left
    assert sent.record(data)[sent.receiver(plan)] == [f.name for f in folders[2:]]


def test_with_a_copy_that_was_made_by_hand_the_session_is_not_forgotten(data: Path) -> None:
    """Else it would be offered once more as one that nobody has got."""
    plan = made.plan_with(plain=True)
    first, *_ = sorted((data / "sessions").iterdir())
    copy = first.with_name("my copy 20261120-090000")
    shutil.copytree(first, copy)
    sent.remember(plan, [first.name], data)
    stored = look()
    for path, record in ((copy, {sent.receiver(plan): [first.name]}), (first, {})):
        assert len(delete(stored, [i for i in stored.items if i.path == path.resolve()]).gone) == 1
        assert sent.record(data) == record
        stored = look()


def test_a_session_that_is_being_recorded_stays(data: Path) -> None:
    journal = made.record(data / "sessions" / "20261127-090000-ab00", save=False)
    try:
        stored = look()
        done = delete(stored, stored.items)
        assert done.left == ((journal.path.parent.resolve(), IN_USE),)
        assert journal.path.is_file()
        with pytest.raises(InputError, match="nothing to copy"):
            save_copy(look(), data.parent / "copy.zip")
    finally:
        journal.close()
    assert not delete(look(), look().items).left and not (data / "sessions").exists()


def test_a_kill_in_the_middle_leaves_no_half_session(data: Path) -> None:
    """Killed after the first file of the first folder is gone."""
    code = (
        "import os\n"
        "from pathlib import Path\n"
        "from tracker.stored.delete import delete\n"
        "from tracker.stored.look import what_is_stored\n"
        "stored = what_is_stored()\n"
        "unlink = os.unlink\n"
        "def once(path, *a, **k):\n"
        "    unlink(path, *a, **k)\n"
        "    os._exit(9)\n"
        "os.unlink = once\n"
        "delete(stored, stored.items)\n"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, check=False)
    assert done.returncode == 9
    # It is in no place where a session is looked for, neither whole nor in part.
    stored = look()
    assert {i.kind for i in stored.items} == {Kind.remains}
    assert not interrupted_sessions() and not read_folder(data).rows
    assert len(files_below(data)) > 5
    finish(data)
    assert not list(data.glob(f"{DELETED}*")) and not look().items


def test_what_can_not_be_deleted_is_named(data: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    stored = look()
    stuck = stored.of(Kind.broken_off)[0].path
    rename = Path.rename

    def refuse(path: Path, to: Path) -> Path:
        if path == stuck:
            raise PermissionError(13, "Permission denied")
        return rename(path, to)

    # Undone as a whole, the data folder of the tests would go with it, and the user's be deleted.
    with monkeypatch.context() as patched:
        patched.setattr(Path, "rename", refuse)
        done = delete(stored, stored.items)
    assert done.left == ((stuck, "this account has no right to it"),)
    assert [i.path for i in look().items] == [stuck]
    # What has left its place and can't be taken apart is named, too.
    real = os.rmdir

    def keep(path: str, **more: int) -> None:
        if DELETED in os.fspath(path):
            raise OSError(16, "Device or resource busy")
        real(path, **more)

    monkeypatch.setattr(os, "rmdir", keep)
    done = delete(look(), look().items)
    assert done.left and all(DELETED in str(path) for path, _ in done.left)


def test_a_full_disk_has_room_for_a_deletion(data: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Nothing new is made before there is room: neither a folder nor a file."""
    folders = sorted((data / "sessions").iterdir())
    sent.remember(made.plan_with(plain=True), [f.name for f in folders], data)

    def full(*_: object, **__: object) -> None:
        if folders[0].exists() or list(data.glob(f"{DELETED}*")):
            raise OSError(28, "No space left on device")

    mkdir, mkstemp = os.mkdir, tempfile.mkstemp
    monkeypatch.setattr(os, "mkdir", lambda *a, **k: full() or mkdir(*a, **k))
    monkeypatch.setattr(tempfile, "mkstemp", lambda *a, **k: full() or mkstemp(*a, **k))
    stored = look()
    assert not delete(stored, stored.of(*SESSIONS)).left
    assert not sent.record(data) and not (data / "sessions").exists()


def test_a_link_that_came_in_between_is_not_followed(data: Path, tmp_path: Path) -> None:
    stored = look()
    elsewhere = tmp_path / "elsewhere"
    (data / "sessions").rename(elsewhere)
    (data / "sessions").symlink_to(elsewhere)
    before = files_of(elsewhere)
    done = delete(stored, stored.items)
    assert not done.gone and {why for _, why in done.left} == {"it lies behind a link"}
    assert files_of(elsewhere) == before


@pytest.mark.parametrize(
    "left", [".DS_Store", "._trace.csv", "Thumbs.db", "desktop.ini", ".directory", ".~lock.a.csv#"]
)
def test_a_session_whose_folder_was_looked_into_goes_as_any_other(
    data: Path, left: str, tmp_path: Path
) -> None:
    session = data / "sessions" / "20261103-090000-ab00"
    (session / left).write_bytes(b"x")
    stored = what_is_stored()
    assert not stored.others
    assert session.resolve() in {i.path for i in stored.of(Kind.sessions)}
    save_copy(stored, tmp_path / "copy.zip")
    with zipfile.ZipFile(tmp_path / "copy.zip") as packed:
        names = [Path(n).name for n in packed.namelist() if session.name in n]
    assert "summary.json" in names and left not in names
    done = delete(stored, stored.items)
    assert not done.left and not session.exists()


@pytest.mark.parametrize("foreign", ["letter to the GP.txt", "photos/cat.png", "link.txt"])
def test_a_session_that_holds_something_else_is_named_and_stays(
    data: Path, tmp_path: Path, foreign: str
) -> None:
    """Taken whole, its folder would take with it what the program did not put there."""
    (tmp_path / "mine.txt").write_text("mine")
    session = sorted((data / "sessions").iterdir())[0]
    placed = session / foreign
    placed.parent.mkdir(exist_ok=True)
    if foreign == "link.txt":
        placed.symlink_to(tmp_path / "mine.txt")
    else:
        placed.write_text("mine")
    stored = look()
    assert session.resolve() in stored.others
    before = {p: p.read_bytes() for p in files_below(session)}
    assert not delete(stored, stored.items).left
    assert {p: p.read_bytes() for p in files_below(session)} == before and len(before) > 2
    assert (tmp_path / "mine.txt").read_text() == "mine"


@pytest.mark.parametrize("name", ["holiday", "20261101-090000-ab00"])
def test_files_of_a_session_make_no_session_of_another_folder(data: Path, name: str) -> None:
    folder = data / "sessions" / name
    (folder / "deep").mkdir(parents=True)
    (folder / "trace.csv").write_text("mine")
    (folder / "deep" / "thesis.txt").write_text("mine")
    stored = look()
    assert folder.resolve() in stored.others
    delete(stored, stored.items)
    assert (folder / "deep" / "thesis.txt").read_text() == "mine"


def test_keys_and_faces_are_known_by_their_whole_name(data: Path) -> None:
    for place in ("keys/id_rsa.pub", "profiles/thesis.npz"):
        (data / place).parent.mkdir(exist_ok=True)
        (data / place).write_text("mine")
    stored = look()
    assert {p.name for p in stored.others} >= {"id_rsa.pub", "thesis.npz"}
    delete(stored, stored.items)
    assert (data / "keys/id_rsa.pub").exists() and (data / "profiles/thesis.npz").exists()


def test_with_a_face_go_its_remains() -> None:
    made.everything()
    stored = look()
    going = stored.meant({Kind.faces})
    assert {i.kind for i in going} == {Kind.faces, Kind.remains}
    delete(stored, going)
    assert not any("npz" in i.path.name for i in look().items)


def test_what_can_not_be_looked_at_may_be_in_use(
    data: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object) -> int:
        raise OSError(errno.EMFILE, "too many open files")

    stored = look()
    one = stored.of(Kind.sessions)[0]
    monkeypatch.setattr(recovery.os, "open", full)
    assert delete(stored, [one]).left == ((one.path, IN_USE),)
    monkeypatch.undo()
    assert one.path.exists()


# --- a copy ---


def test_a_copy_holds_all_of_it_and_says_that_anybody_can_read_it(tmp_path: Path) -> None:
    data = made.everything()
    stored = look()
    to = tmp_path / "copy.zip"
    copied = save_copy(stored, to)
    whole = {
        p.relative_to(data).as_posix(): p.read_bytes()
        for i in stored.items
        if i.kind not in NEVER
        for p in ({i.path} if i.path.is_file() else files_below(i.path))
    }
    with zipfile.ZipFile(to) as packed:
        held = {name: packed.read(name) for name in packed.namelist()}
    assert b"NOT encrypted" in held.pop(READ_ME)
    assert held == whole and copied.files == len(whole) > 20
    assert any(n.startswith("profiles/") for n in held)
    if os.name == "posix":
        assert to.stat().st_mode & 0o077 == 0
    save_copy(stored, to, {Kind.faces})
    with zipfile.ZipFile(to) as packed:
        assert [n.partition("/")[0] for n in packed.namelist()] == [READ_ME, "profiles"]


@pytest.mark.parametrize("inside", ["copy.zip", "sessions/copy.zip", "../data-of-turnpost/c.zip"])
def test_a_copy_is_not_put_where_it_would_be_deleted(data: Path, inside: str) -> None:
    with pytest.raises(InputError, match="deleted with it"):
        save_copy(look(), data / inside)


def test_a_copy_through_a_link_into_the_folder_is_refused(data: Path, tmp_path: Path) -> None:
    (tmp_path / "link").symlink_to(data)
    with pytest.raises(InputError, match="deleted with it"):
        save_copy(look(), tmp_path / "link" / "copy.zip")


def test_a_copy_appears_whole_or_not_at_all(data: Path, tmp_path: Path) -> None:
    stored = look()
    to = tmp_path / "out" / "copy.zip"
    to.parent.mkdir()
    to.write_text("before")
    lost = stored.of(Kind.sessions)[0].path
    read = copy.open_file

    def fail(path: Path) -> object:
        if path.parent == lost:
            raise PermissionError(13, "Permission denied")
        return read(path)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(copy, "open_file", fail)
        with pytest.raises(RunError, match="can't be read"):
            save_copy(stored, to)
    assert files_of(to.parent) == {"copy.zip": b"before"}
    with pytest.raises(InputError):
        save_copy(stored, tmp_path / "nowhere" / "copy.zip")


def test_an_empty_folder_holds_nothing(tmp_path: Path) -> None:
    stored = what_is_stored(tmp_path / "none")
    assert not stored.items and not stored.others
    assert not delete(stored, ()).left
    finish(tmp_path / "none")
    with pytest.raises(InputError, match="nothing to copy"):
        save_copy(stored, tmp_path / "copy.zip")
    assert not (tmp_path / "none").exists()


def test_a_record_that_is_damaged_keeps_nothing_from_being_deleted(data: Path) -> None:
    (data / sent.RECORD).write_text("{")
    stored = look()
    assert not delete(stored, stored.of(*SESSIONS)).left
    assert (data / sent.RECORD).read_text() == "{"
