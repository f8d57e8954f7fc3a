"""The clinic's keys: made, kept behind a passphrase, copied, brought in elsewhere."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from tests.handover import reference
from tests.handover.made import pair, plan_with
from tests.plan.examples import TEXT, changed
from tracker.errors import InputError, RunError
from tracker.handover import crypt, keys
from tracker.handover.keys import back_up, bring_in, clinic_keys, new_key, open_keys
from tracker.handover.preparing import readers, with_keys
from tracker.plan.files import parse_plan
from tracker.plan.rules import remarks

WORDS = "three plain words"


@pytest.fixture(autouse=True)
def little_work(monkeypatch: pytest.MonkeyPatch) -> None:
    """Keys that open at once; the real second of work is in test_crypt.py."""
    monkeypatch.setattr(crypt, "lock", reference.lock_quickly)


def test_a_key_is_made_copied_lost_and_brought_in_again(
    private_data_folder: Path, tmp_path: Path
) -> None:
    key = new_key(WORDS)
    assert clinic_keys() == [key] and key.path.parent == private_data_folder / "keys"
    assert key.path.stat().st_mode & 0o077 == 0
    (secret,) = open_keys(WORDS)
    assert crypt.public_of(secret) == key.public
    back_up(key, tmp_path / "safe.age")
    assert bring_in(tmp_path / "safe.age", WORDS) == key
    for path in (private_data_folder / "keys").iterdir():
        assert b"AGE-SECRET-KEY" not in path.read_bytes()
        path.unlink()
    with pytest.raises(InputError, match="no key on this computer"):
        open_keys(WORDS)
    with pytest.raises(InputError, match="not the passphrase"):
        bring_in(tmp_path / "safe.age", WORDS + "x")
    assert clinic_keys() == []
    assert bring_in(tmp_path / "safe.age", WORDS).public == key.public
    assert open_keys(WORDS) == [secret]


def test_old_keys_stay_and_a_passphrase_opens_its_own(private_data_folder: Path) -> None:
    first, second = new_key(WORDS), new_key("four other plain words")
    assert clinic_keys() == [first, second]
    assert [crypt.public_of(s) for s in open_keys(WORDS)] == [first.public]
    assert [crypt.public_of(s) for s in open_keys("four other plain words")] == [second.public]
    first.path.write_bytes(b"damaged")
    with pytest.raises(InputError, match="not the passphrase"):
        open_keys("neither of the two")
    assert len(open_keys("four other plain words")) == 1


def test_what_can_not_be_kept_or_copied_is_said(private_data_folder: Path, tmp_path: Path) -> None:
    for short in ("too short", " " * 10, "a b c d e f", "\t\u3000" * 8):
        with pytest.raises(InputError, match="10 letters or more"):
            new_key(short)
    assert clinic_keys() == [] and not (private_data_folder / "keys").exists()
    private_data_folder.mkdir()
    (private_data_folder / "keys").write_text("in the way")
    with pytest.raises(RunError, match="can't be made"):
        new_key(WORDS)
    (private_data_folder / "keys").unlink()
    key = new_key(WORDS)
    (tmp_path / "there").write_text("already")
    with pytest.raises(InputError, match="is there already"):
        back_up(key, tmp_path / "there")
    with pytest.raises(InputError, match="there is no folder"):
        back_up(key, tmp_path / "no" / "folder")
    assert (tmp_path / "there").read_text() == "already"


@pytest.mark.parametrize("content", [b"", b"age-encryption.org/v1\n", b"x" * 30_000])
def test_what_is_no_backup_is_refused(
    private_data_folder: Path, tmp_path: Path, content: bytes
) -> None:
    path = tmp_path / "backup"
    path.write_bytes(content)
    with pytest.raises(InputError, match=r"backup: (it is no key|too large)"):
        bring_in(path, WORDS)
    with pytest.raises(InputError, match="can't be read"):
        bring_in(tmp_path / "none", WORDS)
    assert clinic_keys() == []


def test_files_that_are_no_keys_are_passed_over(private_data_folder: Path) -> None:
    folder = private_data_folder / keys.FOLDER
    folder.mkdir(parents=True)
    (folder / "a.pub").write_bytes(b"\xff")
    (folder / "b.pub").write_text(pair()[1])
    (folder / "c.pub").write_text("age1no")
    (folder / "c.age").write_text("")
    assert clinic_keys() == []


def test_a_plan_gets_the_keys_of_this_computer_and_further_ones(private_data_folder: Path) -> None:
    plan = parse_plan(TEXT)
    with pytest.raises(InputError, match="no key on this computer"):
        with_keys(plan)
    key = new_key(WORDS)
    made = with_keys(plan, [pair()[1], key.public])
    assert made.hand_over is not None and made.hand_over.keys == [key.public, pair()[1]]
    assert made.model_copy(update={"hand_over": None}) == plan
    assert readers(made) == [(key.name, True), (f"clinic-{pair()[1][4:12]}", False)]
    # A colleague's key stays when the plan is handed out once more.
    assert with_keys(made) == made
    plain = with_keys(made, plain=True)
    assert readers(plain) == [] == readers(plan)
    assert plain.hand_over is not None and plain.hand_over.plain and not plain.hand_over.keys
    with pytest.raises(InputError, match="no public key"):
        with_keys(plan, ["age1no"])
    with pytest.raises(InputError, match="leave out"):
        with_keys(plan, [key.public], plain=True)


def test_a_stolen_key_is_taken_out_of_a_plan(private_data_folder: Path) -> None:
    stolen, here = new_key(WORDS), new_key(WORDS)
    plan = with_keys(parse_plan(TEXT), [pair()[1]])

    def left(**how: Any) -> list[str]:
        made = with_keys(plan, **how)
        assert made.hand_over is not None
        return made.hand_over.keys

    assert set(left()) == {stolen.public, here.public, pair()[1]}
    assert set(left(drop=[stolen.name])) == {here.public, pair()[1]}
    assert set(left(own_only=True)) == {stolen.public, here.public}
    assert left(own_only=True, drop=[stolen.public]) == [here.public]
    assert left(only=[here.name]) == [here.public]
    assert left(only=[pair(1)[1]]) == [pair(1)[1]]
    with pytest.raises(InputError, match="neither a public key nor one of these: clinic-"):
        left(drop=["clinic-none"])
    with pytest.raises(InputError, match="no key would be left"):
        left(only=[here.name], drop=[here.name])
    with pytest.raises(InputError, match="leave out"):
        left(plain=True, drop=[here.name])


def test_a_plan_without_a_pseudonym_gets_no_keys(private_data_folder: Path) -> None:
    new_key(WORDS)
    plan = parse_plan(TEXT).model_copy(update={"person": None})
    for plain in (False, True):
        with pytest.raises(InputError, match="no pseudonym"):
            with_keys(plan, plain=plain)
    said = [r for r in remarks(plan_with(pair()[1], person=None)) if r.path == ("person",)]
    assert said and not [r for r in remarks(plan_with(pair()[1])) if r.path == ("person",)]
    assert not [r for r in remarks(plan) if r.path == ("person",)]


def test_a_backup_puts_a_damaged_key_right(private_data_folder: Path, tmp_path: Path) -> None:
    key = new_key(WORDS)
    back_up(key, tmp_path / "safe")
    whole = key.path.read_bytes()
    for damaged in (b"damaged", b""):
        key.path.write_bytes(damaged)
        assert bring_in(tmp_path / "safe", WORDS) == key
        assert key.path.read_bytes() == whole and open_keys(WORDS)
    old = key.path.with_suffix(".old"), key.path.with_suffix(".old-2")
    assert [p.read_bytes() for p in old] == [b"damaged", b""]
    bring_in(tmp_path / "safe", WORDS)
    assert len(list(key.path.parent.iterdir())) == 4 and clinic_keys() == [key]


@pytest.mark.parametrize(
    ("way", "said"),
    [
        ({}, "line 74, hand_over: needs keys, or plain"),
        ({"keys": ["KEY"], "plain": True}, "nothing is handed over plain"),
        ({"keys": ["KEY", "KEY"]}, "stands there twice"),
        ({"keys": ["SPOILT"]}, "misspelt"),
        ({"keys": ["age1x"]}, "no public key"),
        ({"keys": ["KEY"], "to": "me"}, "not a field of a plan"),
        ({"plain": "yes"}, "must be true or false"),
    ],
)
def test_a_plan_that_hands_over_wrongly_is_refused(way: dict[str, object], said: str) -> None:
    public = pair()[1]
    spoilt = public[:-1] + ("q" if public[-1] != "q" else "p")
    names = {"KEY": public, "SPOILT": spoilt}
    if "keys" in way:
        way = way | {"keys": [names.get(k, k) for k in way["keys"]]}  # type: ignore[attr-defined]
    with pytest.raises(InputError, match=said):
        parse_plan(changed("hand_over", way))
    assert plan_with(public).hand_over is not None
