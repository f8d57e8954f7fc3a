"""Taking in: all or nothing, never twice, never over what is there."""

from __future__ import annotations

import json
import os
import shutil
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.handover.made import (
    DAYS,
    everything,
    pair,
    patient,
    plan_with,
    session_id,
    write_session,
)
from tracker.errors import InputError, RunError
from tracker.handover import container, crypt
from tracker.handover import receive as receiving
from tracker.handover.keys import new_key, open_keys
from tracker.handover.receive import LEFT_S, needs_key, receive
from tracker.handover.sending import hand_over, offer_of
from tracker.records.index import read_folder

ROOT = Path(__file__).parents[2]
SECRETS = [pair(0)[0]]


@pytest.fixture
def file(private_data_folder: Path, tmp_path: Path) -> Path:
    """What a patient handed over: three sessions."""
    plan = plan_with(pair(0)[1], pair(1)[1])
    folders = patient(private_data_folder)
    hand_over(plan, folders, tmp_path / "from patient.age")
    return tmp_path / "from patient.age"


@pytest.fixture
def clinic(tmp_path: Path) -> Path:
    """A clinic's folder with a session of somebody else."""
    folder = tmp_path / "clinic"
    write_session(folder, "2026-11-01", 7, person="P-99")
    return folder


def repacked(file: Path, *, to: str | None = None, **changes: object) -> None:
    """Change what a file says, with its hashes right: a faulty or ill-meant program's."""
    head, contents = container.unpack(crypt.decrypt(file.read_bytes(), SECRETS))
    files = {
        key: changes.get(key[1].replace(".", "_"), content) for key, content in contents.items()
    }
    members = [
        container.member_of(s, n, c).model_dump()  # type: ignore[arg-type]
        for (s, n), c in files.items()
    ]
    new = container.Head.model_validate(head.model_dump() | {"members": members})
    if to is not None:
        new = new.model_copy(update={"person": to})
    file.write_bytes(crypt.encrypt(container.pack(new, list(files.values())), [pair(0)[1]]))  # type: ignore[arg-type]


def test_sessions_appear_together_and_the_desk_finds_them(
    file: Path, clinic: Path, private_data_folder: Path
) -> None:
    before = everything(clinic)
    assert needs_key(file)
    got = receive(file, clinic, SECRETS)
    ids = tuple(session_id(d) for d in DAYS)
    assert (got.person, got.new, got.known, got.other) == ("P-07", ids, (), ())
    assert got.encrypted and got.folder is not None and got.folder.parent == clinic
    for name in ids:
        for part in container.FILES:
            sent = private_data_folder / "sessions" / name / part
            assert (got.folder / name / part).read_bytes() == sent.read_bytes()
    after = everything(clinic)
    assert {k: after[k] for k in before} == before
    records = read_folder(clinic)
    assert not records.unread
    assert sorted(r.session_id for r in records.rows if r.person == "P-07") == sorted(ids)


def test_the_same_file_twice_changes_nothing(file: Path, clinic: Path) -> None:
    receive(file, clinic, SECRETS)
    before = everything(clinic)
    times = {p: p.stat().st_mtime_ns for p in clinic.rglob("*")}
    again = receive(file, clinic, [pair(1)[0]])
    assert again.new == () and len(again.known) == 3 and again.folder is None
    assert everything(clinic) == before
    assert {p: p.stat().st_mtime_ns for p in clinic.rglob("*")} == times


def test_sessions_that_were_moved_are_known_and_the_rest_is_taken_in(
    file: Path, clinic: Path, private_data_folder: Path, tmp_path: Path
) -> None:
    got = receive(file, clinic, SECRETS)
    assert got.folder is not None
    (clinic / "P-07" / "autumn").mkdir(parents=True)
    (got.folder / got.new[0]).rename(clinic / "P-07" / "autumn" / got.new[0])
    shutil.rmtree(got.folder / got.new[1])
    write_session(private_data_folder, "2026-11-23")
    plan = plan_with(pair(0)[1])
    hand_over(plan, offer_of(plan).all, tmp_path / "second")
    more = receive(tmp_path / "second", clinic, SECRETS)
    assert more.new == (got.new[1], session_id("2026-11-23"))
    assert more.known == (got.new[0], got.new[2])
    # And the first file once more brings nothing back to its old place.
    assert receive(file, clinic, SECRETS).new == ()


@pytest.mark.parametrize("order", ["as written", "another"])
def test_a_session_is_known_by_its_own_id_whatever_its_folder_is_called(
    file: Path, clinic: Path, tmp_path: Path, order: str
) -> None:
    got = receive(file, clinic, SECRETS)
    assert got.folder is not None
    first, second, third = got.new
    # One is renamed, one is copied under a name, and one takes the name of another one.
    (got.folder / first).rename(got.folder / "Monday, with the new glasses")
    (got.folder / second).rename(clinic / first)
    (got.folder / third).rename(got.folder / "turnpost-x")
    got.folder.rename(clinic / "Mr W")
    if order == "another":
        path = clinic / "Mr W" / "turnpost-x" / "summary.json"
        data = json.loads(path.read_text("utf-8"))
        path.write_text(json.dumps(dict(reversed(data.items()))), "utf-8")
    before = everything(clinic)
    renamed = tmp_path / "a copy of (1).age"
    shutil.copy(file, renamed)
    for again in (file, renamed):
        more = receive(again, clinic, SECRETS)
        assert more.new == () and more.folder is None
        # What was written anew has the same ID, and other bytes: it is left as it is.
        assert more.other == ((third,) if order == "another" else ())
        assert set(more.known) | set(more.other) == {first, second, third}
        assert everything(clinic) == before
    records = read_folder(clinic)
    assert not records.unread
    assert sorted(r.session_id or "" for r in records.rows if r.person == "P-07") == [
        first,
        second,
        third,
    ]


def test_one_that_has_the_folder_of_another_is_taken_in(file: Path, clinic: Path) -> None:
    own = write_session(clinic, "2026-11-02", 8, person="P-99")
    own.rename(clinic / session_id(DAYS[0]))
    got = receive(file, clinic, SECRETS)
    assert got.new == tuple(session_id(d) for d in DAYS) and not got.other


def test_one_that_broke_off_is_known_by_its_journal(file: Path, clinic: Path) -> None:
    about = {"about": {"session_id": session_id(DAYS[2])}}
    head = {"kind": "session", "format": "turnpost-journal", "format_version": 1, **about}
    (clinic / "renamed").mkdir()
    (clinic / "renamed" / "journal.jsonl").write_text(json.dumps(head) + "\n", "utf-8")
    got = receive(file, clinic, SECRETS)
    assert got.other == (session_id(DAYS[2]),) and len(got.new) == 2


def test_what_is_there_with_other_content_stays_as_it_is(file: Path, clinic: Path) -> None:
    own = clinic / "by hand" / session_id(DAYS[1])
    own.mkdir(parents=True)
    (own / "summary.json").write_text("another version")
    got = receive(file, clinic, SECRETS)
    assert got.other == (own.name,) and len(got.new) == 2
    assert (own / "summary.json").read_text() == "another version"


@pytest.mark.parametrize("number", [2, 3])
def test_a_wrong_key_changes_nothing(file: Path, clinic: Path, number: int) -> None:
    before = everything(clinic)
    with pytest.raises(crypt.WrongKeyError, match=r"from patient.age.*another clinic"):
        receive(file, clinic, [pair(number)[0]])
    with pytest.raises(crypt.WrongKeyError):
        receive(file, clinic)
    assert everything(clinic) == before


def test_that_another_key_may_have_another_passphrase_is_said(
    file: Path, clinic: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Which key opened is told apart; that a lock holds is tested with the keys, and takes long."""
    monkeypatch.setattr(crypt, "lock", lambda key, word: f"{word}\n{key}".encode())

    def unlock(locked: bytes, word: str) -> str:
        own, key = locked.decode().split("\n")
        if word != own:
            raise crypt.WrongPassphraseError("not this one")
        return key

    monkeypatch.setattr(crypt, "unlock", unlock)
    new_key("the passphrase of one")
    second = new_key("another one of later")
    opened = open_keys("the passphrase of one")
    with pytest.raises(crypt.WrongKeyError) as told:
        receive(file, clinic, opened)
    said = str(told.value)
    assert "opens 1 of the 2 keys" in said and "another passphrase" in said and second.name in said
    # Once all were tried, it is another clinic's.
    with pytest.raises(crypt.WrongKeyError, match="another clinic") as told:
        receive(file, clinic, [*opened, *open_keys("another one of later")])
    assert "passphrase" not in str(told.value)


@pytest.mark.parametrize("keep", [0.0, 0.001, 0.01, 0.2, 0.5, 0.9, 0.999])
def test_a_cut_file_changes_nothing_and_stays(file: Path, clinic: Path, keep: float) -> None:
    before = everything(clinic)
    content = file.read_bytes()
    cut = content[: int(len(content) * keep)]
    file.write_bytes(cut)
    with pytest.raises(InputError, match=r"from patient.age"):
        receive(file, clinic, SECRETS)
    assert everything(clinic) == before and file.read_bytes() == cut


@pytest.mark.parametrize("at", [5, 30, 80, 150, 300, 500, 2000, 9999, -1])
def test_a_flipped_byte_changes_nothing(file: Path, clinic: Path, at: int) -> None:
    before = everything(clinic)
    content = bytearray(file.read_bytes())
    content[at] ^= 0x10
    file.write_bytes(bytes(content))
    with pytest.raises(InputError, match=r"from patient.age"):
        receive(file, clinic, SECRETS)
    assert everything(clinic) == before


def test_other_files_are_told_apart(file: Path, clinic: Path, tmp_path: Path) -> None:
    other = tmp_path / "other"
    for content, said in (
        (b"", "not a hand-over"),
        (b'{"format": "turnpost-plan"}', "not a hand-over"),
        (crypt.encrypt(b"a letter", [pair(0)[1]]), "not a hand-over"),
        (b"age-encryption.org/v2\n-> new\n", "does not know; update it"),
        (b"age-encryption.org/v1", "cut or was changed"),
        (crypt.lock(SECRETS[0], "three plain words"), "another clinic"),
    ):
        other.write_bytes(content)
        with pytest.raises(InputError, match=said):
            receive(other, clinic, SECRETS)
    with pytest.raises(InputError, match="is a folder"):
        receive(tmp_path, clinic, SECRETS)
    with pytest.raises(InputError, match="can't be read"):
        receive(tmp_path / "none", clinic, SECRETS)


def test_one_bad_session_keeps_all_out(file: Path, clinic: Path) -> None:
    before = everything(clinic)
    repacked(file, summary_json=b'{"half')
    with pytest.raises(InputError, match=r"can't be used.*nothing was taken in"):
        receive(file, clinic, SECRETS)
    assert everything(clinic) == before


def test_a_summary_of_another_session_or_person_keeps_all_out(file: Path, clinic: Path) -> None:
    before = everything(clinic)
    content = file.read_bytes()
    repacked(file, to="P-08")
    with pytest.raises(InputError, match="another session or person"):
        receive(file, clinic, SECRETS)
    file.write_bytes(content)
    _, contents = container.unpack(crypt.decrypt(content, SECRETS))
    repacked(file, summary_json=next(iter(contents.values())))
    with pytest.raises(InputError, match="another session or person"):
        receive(file, clinic, SECRETS)
    assert everything(clinic) == before


def test_a_plain_file_is_taken_in_and_said_to_be_one(
    private_data_folder: Path, clinic: Path, tmp_path: Path
) -> None:
    hand_over(plan_with(plain=True), patient(private_data_folder), tmp_path / "plain")
    assert not needs_key(tmp_path / "plain")
    got = receive(tmp_path / "plain", clinic)
    assert len(got.new) == 3 and not got.encrypted


@pytest.mark.skipif(os.name != "posix", reason="other systems know no such rights")
@pytest.mark.parametrize(("mode", "wanted"), [(0o700, 0o600), (0o2770, 0o660), (0o755, 0o640)])
def test_colleagues_may_read_as_far_as_the_folder_lets_them(
    file: Path, clinic: Path, mode: int, wanted: int
) -> None:
    clinic.chmod(mode)
    got = receive(file, clinic, SECRETS)
    assert got.folder is not None
    files = [p for p in got.folder.rglob("*") if p.is_file()]
    assert len(files) == 9 and {p.stat().st_mode & 0o777 for p in files} == {wanted}
    assert got.folder.stat().st_mode & 0o777 == mode & 0o770


@pytest.mark.parametrize("member", [True, False])
def test_what_the_clinics_group_may_no_other_may(
    file: Path, clinic: Path, other_group: int, member: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    os.chown(clinic, -1, other_group)
    clinic.chmod(0o770)
    if not member:

        def refuse(*_: object) -> None:
            raise PermissionError(1, "Operation not permitted")

        monkeypatch.setattr(os, "chown", refuse)
    got = receive(file, clinic, SECRETS)
    assert got.folder is not None
    found = [p.stat() for p in (got.folder, *got.folder.rglob("*"))]
    assert {s.st_gid for s in found} == {other_group if member else os.getegid()}
    assert {s.st_mode & 0o070 for s in found} == ({0o070, 0o060} if member else {0})


def test_a_colleague_who_was_faster_leaves_no_double(
    file: Path, clinic: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = receiving._must_fit

    def slow(*args: object) -> None:
        monkeypatch.setattr(receiving, "_must_fit", real)
        receive(file, clinic, SECRETS)
        real(*args)  # type: ignore[arg-type]

    monkeypatch.setattr(receiving, "_must_fit", slow)
    with pytest.raises(InputError, match="somebody else has just taken it in"):
        receive(file, clinic, SECRETS)
    assert len(list(clinic.rglob("summary.json"))) == 4
    assert len(receive(file, clinic, SECRETS).known) == 3


# --- disks and kills ---


@pytest.mark.parametrize("after", range(0, 14, 3))
def test_a_full_disk_leaves_the_folder_as_it_was(
    file: Path, clinic: Path, monkeypatch: pytest.MonkeyPatch, after: int
) -> None:
    """The flush of the so-and-so-many-th file fails."""
    before, calls = everything(clinic), 0
    real = os.fsync

    def full(handle: int) -> None:
        nonlocal calls
        calls += 1
        if calls > after:
            raise OSError(28, "No space left on device")
        real(handle)

    monkeypatch.setattr("tracker.session.files.os.fsync", full)
    with pytest.raises(RunError, match=r"clinic: .*nothing was taken in.*the disk is full"):
        receive(file, clinic, SECRETS)
    assert everything(clinic) == before
    monkeypatch.undo()
    assert len(receive(file, clinic, SECRETS).new) == 3


def test_a_place_that_can_not_be_written_to_is_said(
    file: Path, tmp_path: Path, clinic: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "a file").write_text("")
    with pytest.raises(RunError, match="can't be made"):
        receive(file, tmp_path / "a file", SECRETS)

    def read_only(**_: object) -> str:
        raise OSError(30, "Read-only file system")

    monkeypatch.setattr("tracker.session.files.tempfile.mkdtemp", read_only)
    with pytest.raises(RunError, match=r"nothing was taken in.*only read"):
        receive(file, clinic, SECRETS)


KILLED = """
import os, signal, sys
from pathlib import Path
from tracker.handover.receive import receive
from tracker.session import files
left, real = int(sys.argv[3]), os.fsync
def dying(handle):
    global left
    left -= 1
    if left < 0:
        os.kill(os.getpid(), signal.SIGKILL)
    real(handle)
files.os.fsync = dying
receive(Path(sys.argv[1]), Path(sys.argv[2]), [sys.argv[4]])
"""


@pytest.mark.skipif(sys.platform == "win32", reason="no kill -9 there")
@pytest.mark.parametrize("after", [0, 1, 4, 9, 17, 18, 100])
def test_a_kill_leaves_the_folder_as_before_or_whole(file: Path, clinic: Path, after: int) -> None:
    before = everything(clinic)
    words = [sys.executable, "-c", KILLED, str(file), str(clinic), str(after), SECRETS[0]]
    done = subprocess.run(
        words, cwd=ROOT, env=os.environ | {"PYTHONPATH": str(ROOT)}, timeout=60, check=False
    )
    seen = {k: v for k, v in everything(clinic).items() if not k.startswith(".")}
    added = seen.keys() - before.keys()
    assert {k: seen[k] for k in before} == before
    if added:
        assert len(added) == 9
    else:
        assert done.returncode == -signal.SIGKILL
    # What the desk sees is one or the other, and the next try brings all.
    assert len(read_folder(clinic).rows) == 1 + len(added) // 3
    assert not read_folder(clinic).unread
    got = receive(file, clinic, SECRETS)
    assert len(got.new) + len(got.known) == 3
    assert len(read_folder(clinic).rows) == 4


def test_what_a_kill_left_is_cleared_away_after_a_day(file: Path, clinic: Path) -> None:
    old, new = clinic / ".handed-over-P-1.x", clinic / ".handed-over-P-2.y"
    for folder in (old, new):
        (folder / "whole").mkdir(parents=True)
    past = time.time() - LEFT_S - 60
    os.utime(old, (past, past))
    receive(file, clinic, SECRETS)
    assert not old.exists() and new.exists()


def test_a_summary_of_a_newer_program_is_said_to_be_one(file: Path, clinic: Path) -> None:
    _, contents = container.unpack(crypt.decrypt(file.read_bytes(), SECRETS))
    newer = json.loads(next(iter(contents.values()))) | {"format_version": 99}
    repacked(file, summary_json=json.dumps(newer).encode())
    with pytest.raises(InputError, match="newer version of this program"):
        receive(file, clinic, SECRETS)
