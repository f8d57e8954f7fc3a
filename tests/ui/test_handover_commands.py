"""``turnpost keys``, ``plan keys``, ``plan words``, ``handover``, ``receive``: the whole way."""

from __future__ import annotations

import io
import json
from collections.abc import Callable
from pathlib import Path

import jsonschema
import pytest

from tests.handover import reference
from tests.handover.made import PERSON, everything, pair, patient, write_session
from tests.handover.test_container import head_of
from tests.plan.examples import TEXT
from tracker.handover import container, crypt
from tracker.handover.fingerprint import plan_words
from tracker.handover.sending import session_of
from tracker.plan.files import load_plan
from ui.cli import main
from ui.plan_check import PlanCheck
from ui.plan_in_use import keep_plan_in_use
from ui.settings import Settings

PASSPHRASE = "three plain words"
Type = Callable[[str], None]


@pytest.fixture(autouse=True)
def little_work(monkeypatch: pytest.MonkeyPatch) -> None:
    """Keys that open at once."""
    monkeypatch.setattr(crypt, "lock", reference.lock_quickly)


@pytest.fixture
def typed(monkeypatch: pytest.MonkeyPatch) -> Type:
    """What comes in by a pipe."""

    def lines(text: str) -> None:
        monkeypatch.setattr("sys.stdin", io.StringIO(text))

    return lines


@pytest.fixture
def bare(tmp_path: Path) -> Path:
    path = tmp_path / "bare.json"
    path.write_text(TEXT)
    return path


def test_from_the_key_to_the_clinics_folder(
    bare: Path,
    tmp_path: Path,
    private_data_folder: Path,
    typed: Type,
    capsys: pytest.CaptureFixture[str],
) -> None:
    plan, file, clinic = tmp_path / "plan.json", tmp_path / "f.age", tmp_path / "clinic"
    typed(f"{PASSPHRASE}\n")
    assert main(["keys", "new"]) == 0
    name = capsys.readouterr().out.split(":")[0]
    assert main(["keys", "list"]) == 0 and name in capsys.readouterr().out
    assert main(["keys", "backup", "--to", str(tmp_path / "safe")]) == 0
    assert main(["plan", "keys", str(bare), "--out", str(plan), "--key", pair()[1]]) == 0
    said = capsys.readouterr().out
    words = " ".join(plan_words(load_plan(plan)))
    assert f"opens them: {name}, on this computer" in said and f"words: {words}" in said
    assert "not on this computer" in said
    assert main(["plan", "words", str(plan)]) == 0
    assert capsys.readouterr().out == f"{words}\n"
    assert main(["plan", "show", str(plan)]) == 0
    assert "hand-over: encrypted, to 2 keys" in capsys.readouterr().out
    patient(private_data_folder)
    assert main(["handover", "--plan", str(plan), "--to", str(file)]) == 0
    assert "3 sessions, encrypted" in capsys.readouterr().out
    for secret in (private_data_folder / "keys").iterdir():
        secret.unlink()
    typed(f"{PASSPHRASE}\n")
    assert main(["receive", str(file), "--into", str(clinic)]) == 2
    assert "bring in a backup" in capsys.readouterr().err and not clinic.exists()
    typed(f"{PASSPHRASE}\n")
    assert main(["keys", "import", str(tmp_path / "safe")]) == 0
    for wanted in (f"{PERSON}: 3 new", "nothing new"):
        typed(f"{PASSPHRASE}\n")
        assert main(["receive", str(file), "--into", str(clinic)]) == 0
        assert wanted in capsys.readouterr().out
    typed("another passphrase\n")
    assert main(["receive", str(file), "--into", str(clinic)]) == 2
    assert "not the passphrase" in capsys.readouterr().err


def test_which_sessions(
    tmp_path: Path,
    bare: Path,
    private_data_folder: Path,
    capsys: pytest.CaptureFixture[str],
) -> None:
    plan = tmp_path / "plan.json"
    assert main(["plan", "keys", str(bare), "--out", str(plan), "--key", pair()[1]]) == 0
    hand_over = ["handover", "--plan", str(plan), "--to"]
    assert main([*hand_over, str(tmp_path / "0")]) == 2
    assert "no new session" in capsys.readouterr().err
    one, two, _ = [f.name for f in patient(private_data_folder)]
    assert main([*hand_over, str(tmp_path / "1"), "--session", one]) == 0
    assert main([*hand_over, str(tmp_path / "2")]) == 0
    assert "2: 2 sessions" in capsys.readouterr().out
    assert main([*hand_over, str(tmp_path / "3")]) == 2
    assert "all 3 went out before (--all)" in capsys.readouterr().err
    assert main([*hand_over, str(tmp_path / "3"), "--all"]) == 0
    assert main([*hand_over, str(tmp_path / "4"), "--session", two, "--session", "none"]) == 2
    assert "no session 'none'" in capsys.readouterr().err
    assert not (tmp_path / "4").exists()
    assert main([*hand_over, str(tmp_path / "3"), "--all"]) == 2
    assert "is there already" in capsys.readouterr().err


def test_a_session_is_named_by_its_id_before_the_name_of_a_folder(
    tmp_path: Path,
    bare: Path,
    private_data_folder: Path,
    capsys: pytest.CaptureFixture[str],
) -> None:
    plan = tmp_path / "plan.json"
    assert main(["plan", "keys", str(bare), "--out", str(plan), "--plain"]) == 0
    folders = sorted(patient(private_data_folder))
    one, two = (session_of(f) for f in folders[:2])
    # Two folders whose names were changed round.
    aside = folders[0].rename(folders[0].with_name("aside"))
    folders[1].rename(folders[0])
    aside.rename(folders[1])
    out = tmp_path / "f"
    for chosen in (one, two):
        assert main(["handover", "--plan", str(plan), "--to", str(out), "--session", chosen]) == 0
        assert main(["receive", str(out), "--into", str(tmp_path / chosen)]) == 0
        (got,) = (tmp_path / chosen).rglob("summary.json")
        assert json.loads(got.read_text("utf-8"))["session_id"] == chosen
        out.unlink()


def test_the_plan_opened_last_is_taken(
    tmp_path: Path, bare: Path, private_data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["handover", "--to", str(tmp_path / "f")]) == 2
    assert "name one with --plan" in capsys.readouterr().err
    plan = tmp_path / "plan.json"
    assert main(["plan", "keys", str(bare), "--out", str(plan), "--plain"]) == 0
    assert "readable for anybody" in capsys.readouterr().out
    patient(private_data_folder)
    keep_plan_in_use(load_plan(plan))
    assert main(["handover", "--to", str(tmp_path / "f")]) == 0
    assert "NOT encrypted" in capsys.readouterr().out
    before = everything(private_data_folder)
    assert main(["receive", str(tmp_path / "f"), "--into", str(tmp_path / "clinic")]) == 0
    said = capsys.readouterr().out
    assert "3 new" in said and "not encrypted" in said
    assert everything(private_data_folder) == before


def test_an_unreadable_session_is_told_and_left_out(
    tmp_path: Path, bare: Path, private_data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    plan = tmp_path / "plan.json"
    assert main(["plan", "keys", str(bare), "--out", str(plan), "--plain"]) == 0
    patient(private_data_folder)
    (write_session(private_data_folder, "2026-11-24") / "summary.json").write_text("{")
    assert main(["handover", "--plan", str(plan), "--to", str(tmp_path / "f")]) == 0
    told = capsys.readouterr()
    assert "3 sessions" in told.out and "\nleft out: " in told.err


def test_what_was_not_compared_or_was_refused_is_told(
    tmp_path: Path, bare: Path, private_data_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    plan = tmp_path / "plan.json"
    assert main(["plan", "keys", str(bare), "--out", str(plan), "--key", pair()[1]]) == 0
    patient(private_data_folder)
    assert main(["handover", "--plan", str(plan), "--to", str(tmp_path / "1")]) == 0
    assert "were not compared" in capsys.readouterr().err
    check = PlanCheck(Settings(private_data_folder / "window.ini"))
    check.take(load_plan(plan))
    check.answer(True)
    check._settings.sync()
    assert main(["handover", "--plan", str(plan), "--to", str(tmp_path / "2"), "--all"]) == 0
    assert capsys.readouterr().err == ""
    check.answer(False)
    check._settings.sync()
    assert main(["handover", "--plan", str(plan), "--to", str(tmp_path / "3"), "--all"]) == 2
    assert "nothing is handed over" in capsys.readouterr().err
    assert not (tmp_path / "3").exists()


def test_other_plans_and_further_files(
    tmp_path: Path,
    bare: Path,
    private_data_folder: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    bare.write_text(TEXT.replace('"plan-7"', '"plan-8"'))
    plan = tmp_path / "plan.json"
    assert main(["plan", "keys", str(bare), "--out", str(plan), "--key", pair()[1]]) == 0
    patient(private_data_folder)
    write_session(private_data_folder, "2026-11-25", person="P-08")
    monkeypatch.setattr(container, "MAX_SESSIONS", 2)
    hand_over = ["handover", "--plan", str(plan), "--to"]
    assert main([*hand_over, str(tmp_path / "f")]) == 2
    told = capsys.readouterr().err
    assert "3 sessions of the plan plan-7" in told and "1 session of another pseudonym" in told
    assert main([*hand_over, str(tmp_path / "f"), "--other-plans"]) == 0
    out = capsys.readouterr().out
    assert "f: 2 sessions" in out and "f-2: 1 session," in out and (tmp_path / "f-2").exists()


def test_a_key_can_be_taken_out_of_a_plan(
    tmp_path: Path, bare: Path, typed: Type, capsys: pytest.CaptureFixture[str]
) -> None:
    typed(f"{PASSPHRASE}\n")
    assert main(["keys", "new"]) == 0
    stolen, kept = pair(0)[1], pair(1)[1]
    plan, out = tmp_path / "plan.json", tmp_path / "out.json"
    both = ["--key", stolen, "--key", kept]
    assert main(["plan", "keys", str(bare), "--out", str(plan), *both]) == 0
    name = f"clinic-{stolen[4:12]}"
    capsys.readouterr()
    assert main(["plan", "keys", str(plan), "--out", str(out), "--drop", name]) == 0
    assert name not in capsys.readouterr().out and len(keys_of(out)) == 2
    assert main(["plan", "keys", str(plan), "--out", str(plan), "--only", kept]) == 0
    assert keys_of(plan) == [kept]
    assert main(["plan", "keys", str(plan), "--out", str(plan), "--drop", name]) == 2
    assert main(["plan", "keys", str(plan), "--out", str(plan), "--only", kept, *both]) == 2


def keys_of(path: Path) -> list[str]:
    way = load_plan(path).hand_over
    assert way is not None
    return way.keys


def test_heads_fit_the_schema_that_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["schema", "handover"]) == 0
    check = jsonschema.Draft202012Validator(json.loads(capsys.readouterr().out))
    assert check.is_valid(head_of())
    assert not check.is_valid(head_of(more=1)) and not check.is_valid(head_of(person="A name"))
    assert not check.is_valid(head_of(members=[]))


def test_words_at_the_keyboard(
    monkeypatch: pytest.MonkeyPatch, typed: Type, capsys: pytest.CaptureFixture[str]
) -> None:
    answers: list[str] = []
    monkeypatch.setattr("getpass.getpass", lambda _prompt: answers.pop(0))

    class Keyboard(io.StringIO):
        def isatty(self) -> bool:
            return True

    monkeypatch.setattr("sys.stdin", Keyboard())
    answers[:] = [PASSPHRASE, PASSPHRASE + "x"]
    assert main(["keys", "new"]) == 2
    assert "not the same" in capsys.readouterr().err
    answers[:] = [PASSPHRASE, PASSPHRASE]
    assert main(["keys", "new"]) == 0
    typed("")
    assert main(["keys", "new"]) == 2
    assert "no passphrase" in capsys.readouterr().err
    assert main(["keys", "backup", "--to", "x", "--key", "other"]) == 2
    assert "this computer has: clinic-" in capsys.readouterr().err
