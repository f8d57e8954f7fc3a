"""Hand-overs that are too large, hold no key, or meet what is already there."""

from __future__ import annotations

from pathlib import Path

import pyrage
import pytest

from tests.handover.made import DAYS, everything, pair, patient, plan_with, session_id
from tracker import inputs
from tracker.errors import InputError, RunError
from tracker.handover import container, crypt, receive, sending, sent
from tracker.handover.sending import hand_over, hand_over_all
from tracker.session.saving import SUMMARY_NAME

SECRETS = [pair(0)[0]]


def test_a_locked_file_without_exactly_one_key_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    # What the passphrase opens; to lock each for real takes seconds by design.
    for text in ("", "# a remark\n", f"{SECRETS[0]}\n{pair(1)[0]}\n"):
        monkeypatch.setattr(pyrage.passphrase, "decrypt", lambda *_, t=text: t.encode())
        with pytest.raises(InputError, match="does not hold one key"):
            crypt.unlock(b"locked", "a long passphrase")
    one = f"# made today\n{SECRETS[0]}\n"
    monkeypatch.setattr(pyrage.passphrase, "decrypt", lambda *_: one.encode())
    assert crypt.unlock(b"locked", "a long passphrase") == SECRETS[0]


def test_a_file_that_is_too_large_is_refused_unread(
    private_data_folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = tmp_path / "a.age"
    hand_over(plan_with(pair(0)[1]), patient(private_data_folder), file)
    monkeypatch.setattr(receive, "MAX_FILE", file.stat().st_size - 1)
    with pytest.raises(InputError, match="too large for a hand-over"):
        receive.receive(file, tmp_path / "clinic", SECRETS)
    assert everything(tmp_path / "clinic") == {}
    monkeypatch.setattr(receive, "MAX_FILE", file.stat().st_size)
    assert len(receive.receive(file, tmp_path / "clinic", SECRETS).new) == len(DAYS)


def test_a_folder_of_the_same_name_is_left_alone(private_data_folder: Path, tmp_path: Path) -> None:
    """What was taken in before may have been moved away since, and its folder be of use."""
    clinic, file = tmp_path / "clinic", tmp_path / "a.age"
    hand_over(plan_with(pair(0)[1]), patient(private_data_folder), file)
    first = receive.receive(file, clinic, SECRETS).folder
    assert first is not None
    for name in (session_id(d) for d in DAYS):
        for path in (first / name).iterdir():
            path.unlink()
        (first / name).rmdir()
    (first / "own.txt").write_text("mine")
    again = receive.receive(file, clinic, SECRETS).folder
    assert again is not None and again != first and again.parent == clinic
    assert [p.name for p in first.iterdir()] == ["own.txt"]
    assert sorted(p.name for p in again.iterdir()) == sorted(session_id(d) for d in DAYS)


def test_a_summary_too_large_to_hand_over_is_named(
    private_data_folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    folders = patient(private_data_folder)
    least = min((f / SUMMARY_NAME).stat().st_size for f in folders)
    monkeypatch.setattr(container, "MAX_MEMBER", least - 1)
    with pytest.raises(InputError, match=f"{SUMMARY_NAME}: is too large to hand over"):
        hand_over(plan_with(pair(0)[1]), folders, tmp_path / "a.age")
    assert not (tmp_path / "a.age").exists()


def test_a_summary_that_cannot_be_read_is_named(
    private_data_folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    folders = patient(private_data_folder)
    read = inputs.read_bytes

    def spoilt(path: Path, most: int) -> bytes:
        if path.name == SUMMARY_NAME:
            raise OSError(5, "Input/output error")
        return read(path, most)

    monkeypatch.setattr(sending, "read_bytes", spoilt)
    with pytest.raises((InputError, RunError), match=SUMMARY_NAME):
        sending._files_of(folders[0])


def test_a_first_file_that_fails_is_told_as_it_is(
    private_data_folder: Path, tmp_path: Path
) -> None:
    folders = patient(private_data_folder)
    (tmp_path / "a.age").write_bytes(b"")
    with pytest.raises(InputError, match="is there already") as told:
        hand_over_all(plan_with(pair(0)[1]), folders, tmp_path / "a.age")
    assert "made before" not in str(told.value)


def test_a_record_that_is_too_large_counts_as_none(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    plan = plan_with(pair(0)[1])
    sent.remember(plan, ["a"], tmp_path)
    assert list(sent.record(tmp_path).values()) == [["a"]]
    monkeypatch.setattr(sent, "MAX_RECORD", 10)
    assert sent.record(tmp_path) == {}
