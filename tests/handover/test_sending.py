"""What goes into the file: new sessions of one person, nothing readable, nothing of the face."""

from __future__ import annotations

import json
import shutil
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
from tests.session.test_recovery import write_session as break_off
from tracker import inputs
from tracker.errors import InputError, RunError
from tracker.exercises.catalogue import CATALOGUE
from tracker.handover import container, crypt, sending, sent
from tracker.handover.receive import receive
from tracker.handover.sending import file_name, hand_over, hand_over_all, offer_of
from tracker.plan.model import Plan
from tracker.plan.starter import TRY_ID
from tracker.session.saving import MOVED_NAME, SUMMARY_NAME
from tracker.session.summary_file import load_summary, save_summary


@pytest.fixture
def plan() -> Plan:
    return plan_with(pair(0)[1], pair(1)[1])


def opened(path: Path) -> tuple[container.Head, container.Contents]:
    return container.unpack(crypt.decrypt(path.read_bytes(), [pair(0)[0]]))


def names(folders: tuple[Path, ...]) -> list[str]:
    return [f.name for f in folders]


def test_new_sessions_go_out_once_and_again_if_asked(
    private_data_folder: Path, tmp_path: Path, plan: Plan
) -> None:
    patient(private_data_folder)
    offer = offer_of(plan)
    assert names(offer.new) == [session_id(d) for d in DAYS] == names(offer.all)
    done = hand_over(plan, offer.new, tmp_path / "one.age", version="0.1.0")
    assert done.sessions == tuple(names(offer.new)) and done.encrypted and done.left == ()
    assert offer_of(plan).new == () and len(offer_of(plan).all) == 3
    later = write_session(private_data_folder, "2026-11-23")
    assert offer_of(plan).new == (later,)
    # Another clinic has got none of them yet.
    assert len(offer_of(plan_with(pair(2)[1])).new) == 4
    with pytest.raises(InputError, match="is there already"):
        hand_over(plan, offer.all, tmp_path / "one.age")
    with pytest.raises(InputError, match="no session to hand over"):
        hand_over(plan, (), tmp_path / "two.age")
    assert not (tmp_path / "two.age").exists()


def test_summary_trace_and_stage_log_go_and_nothing_else(
    private_data_folder: Path, tmp_path: Path, plan: Plan
) -> None:
    folders = patient(private_data_folder)
    hand_over(plan, folders, tmp_path / "f", version="0.1.0")
    head, contents = opened(tmp_path / "f")
    assert (head.person, head.plan_id, head.program_version) == ("P-07", "plan-7", "0.1.0")
    wanted = {(f.name, n) for f in folders for n in ("summary.json", "trace.csv", "stage.json")}
    assert set(contents) == wanted
    for (session, name), content in contents.items():
        assert content == (private_data_folder / "sessions" / session / name).read_bytes()
    whole = b"".join(contents.values()) + json.dumps(head.model_dump()).encode()
    assert b"shape of a face" not in whole and b"journal of the patient" not in whole


def test_nothing_can_be_read_in_the_file_nor_in_its_name(
    private_data_folder: Path, tmp_path: Path, plan: Plan
) -> None:
    folders = patient(private_data_folder)
    path = tmp_path / file_name(plan)
    hand_over(plan, folders, path)
    # The file, and what it would be if it were only squeezed and not encrypted.
    content = path.read_bytes().lower()
    inside = crypt.decrypt(path.read_bytes(), [pair(0)[0]]).lower()
    for word in ("p-07", "plan-7", "2026-11", "20261120", "turnpost", "summary", "time_s", "head_"):
        assert word.encode() not in content, word
    assert b"p-07" in inside and b"20261120" in inside
    for exercise in CATALOGUE:
        assert exercise.encode() not in content
    assert pair(0)[1].encode() not in content
    assert not any(part in path.name for part in ("P-07", "2026", "plan"))
    assert path.stat().st_mode & 0o077 == 0


def test_the_name_of_a_camera_stays_at_home(
    private_data_folder: Path, tmp_path: Path, plan: Plan
) -> None:
    folder = write_session(private_data_folder, "2026-11-20")
    path = folder / "summary.json"
    before = json.loads(path.read_text())
    camera = {"name": "Somebody's phone", "vertical_fov_deg": 50.0}
    before["setup"]["camera"] = camera
    before["exercises"][0]["setup"] = {"camera": dict(camera)}
    path.write_text(json.dumps(before))
    hand_over(plan, [folder], tmp_path / "f")
    sent = opened(tmp_path / "f")[1][folder.name, "summary.json"]
    assert b"Somebody" not in sent
    after = json.loads(sent)
    assert after["setup"]["camera"] == camera | {"name": None}
    after["setup"]["camera"] = after["exercises"][0]["setup"]["camera"] = camera
    assert after == before
    assert json.loads(path.read_text()) == before


@pytest.mark.parametrize("content", [b"", b"[]", b'{"exercises": 3}', b"[" * 99_999, b"\xff"])
def test_what_is_no_summary_is_left_as_it_is(content: bytes) -> None:
    assert sending.nameless(content) == content


def test_only_the_plans_person_is_in_it(
    private_data_folder: Path, tmp_path: Path, plan: Plan
) -> None:
    patient(private_data_folder)
    other = write_session(private_data_folder, "2026-11-24", person="P-08")
    nobody = write_session(private_data_folder, "2026-11-25", person=None)
    broken = write_session(private_data_folder, "2026-11-26")
    (broken / "summary.json").write_text("{")
    offer = offer_of(plan)
    assert not {other.name, nobody.name, broken.name} & set(names(offer.all))
    assert len(offer.all) == 3
    assert len(offer.unread) == 1 and broken.name in offer.unread[0]
    # Nor, where there is no pseudonym, those of another plan.
    unnamed = plan_with(pair()[1], person=None)
    assert names(offer_of(unnamed).all) == [nobody.name]
    assert offer_of(unnamed.model_copy(update={"plan_id": "plan-8"})).all == ()


def test_a_plain_file_is_written_only_where_the_plan_says_so(
    private_data_folder: Path, tmp_path: Path
) -> None:
    folders = patient(private_data_folder)
    with pytest.raises(InputError, match="does not say to whom"):
        hand_over(plan_with(), folders, tmp_path / "f")
    assert not (tmp_path / "f").exists()
    plain = plan_with(plain=True)
    assert not hand_over(plain, folders, tmp_path / "f").encrypted
    assert container.unpack((tmp_path / "f").read_bytes())[0].person == "P-07"
    assert file_name(plain).endswith(".turnpost") and file_name(plan_with(pair()[1])).endswith(
        "age"
    )


def test_what_is_too_much_for_one_file_goes_into_the_next(
    private_data_folder: Path, tmp_path: Path, plan: Plan, monkeypatch: pytest.MonkeyPatch
) -> None:
    folders = patient(private_data_folder)
    each = sum((folders[0] / n).stat().st_size for n in container.FILES)
    monkeypatch.setattr(container, "MAX_TOTAL", int(2.2 * each))
    done = hand_over(plan, offer_of(plan).new, tmp_path / "one")
    assert len(done.sessions) == 2 and done.left == (folders[2],)
    done = hand_over(plan, offer_of(plan).new, tmp_path / "two")
    assert done.sessions == (folders[2].name,) and done.left == ()
    # Samples that alone are too large stay behind, and that is said.
    monkeypatch.setattr(container, "MAX_MEMBER", (folders[0] / "trace.csv").stat().st_size - 1)
    monkeypatch.setattr(container, "MAX_TOTAL", 10 * each)
    done = hand_over(plan, offer_of(plan).all, tmp_path / "three")
    assert len(done.without_trace) == 3
    assert {name for _, name in opened(tmp_path / "three")[1]} == {"summary.json", "stage.json"}


def test_several_files_hold_everything_once(
    private_data_folder: Path, tmp_path: Path, plan: Plan, monkeypatch: pytest.MonkeyPatch
) -> None:
    folders = patient(private_data_folder)
    hand_over(plan, folders, tmp_path / "before")
    monkeypatch.setattr(container, "MAX_SESSIONS", 1)
    (tmp_path / "f-2.age").write_bytes(b"somebody's")
    made = hand_over_all(plan, offer_of(plan).all, tmp_path / "f.age")
    assert [m.path.name for m in made] == ["f.age", "f-3.age", "f-4.age"]
    assert [s for m in made for s in m.sessions] == [f.name for f in folders]
    assert {s for m in made for s, _ in opened(m.path)[1]} == {f.name for f in folders}
    assert (tmp_path / "f-2.age").read_bytes() == b"somebody's"


def test_files_made_before_a_fault_are_named(
    private_data_folder: Path, tmp_path: Path, plan: Plan, monkeypatch: pytest.MonkeyPatch
) -> None:
    folders = patient(private_data_folder)
    monkeypatch.setattr(container, "MAX_SESSIONS", 1)
    (folders[1] / "summary.json").unlink()
    with pytest.raises(InputError, match=r"has no summary.*made before, and to be sent: .*f\.age"):
        hand_over_all(plan, folders, tmp_path / "f.age")
    assert names(offer_of(plan).new) == [folders[2].name]


def test_a_folder_that_was_renamed_or_copied_by_hand_is_told_by_its_session(
    private_data_folder: Path, plan: Plan, tmp_path: Path
) -> None:
    first, second, third = patient(private_data_folder)
    renamed = first.rename(first.with_name("my first day"))
    shutil.copytree(second, second.with_name("a copy"))
    summary = load_summary(third / SUMMARY_NAME)
    save_summary(third / SUMMARY_NAME, summary.model_copy(update={"session_id": None}))
    offer = offer_of(plan)
    assert offer.new == offer.all == (renamed, second)
    # What can't be handed over is said, and not left out in silence.
    (why,) = offer.unread
    assert third.name in why and "no ID" in why
    done = hand_over(plan, offer.new, tmp_path / "f")
    assert done.sessions == (first.name, second.name)
    assert {s for s, _ in opened(tmp_path / "f")[1]} == {first.name, second.name}
    received = receive(tmp_path / "f", tmp_path / "clinic", [pair(0)[0]])
    assert received.new == (first.name, second.name)
    assert offer_of(plan).new == ()
    # Under its own name again it has gone already.
    renamed.rename(first)
    assert offer_of(plan).new == () and len(offer_of(plan).all) == 2


def test_what_does_not_go_is_counted(private_data_folder: Path, plan: Plan, tmp_path: Path) -> None:
    patient(private_data_folder)
    write_session(private_data_folder, "2026-11-24", person="P-08")
    gone = write_session(private_data_folder, "2026-11-25", person="P-08")
    hand_over(plan_with(pair(2)[1], person="P-08"), [gone], tmp_path / "other")
    break_off(private_data_folder, session_id("2026-11-26"))
    moved = private_data_folder / "sessions" / session_id("2026-11-27")
    moved.mkdir()
    (moved / MOVED_NAME).write_text("")
    offer = offer_of(plan)
    assert (offer.unsent, offer.broken_off, offer.elsewhere) == (1, 1, 1)
    # After a plan with another pseudonym what has not gone out yet does not vanish unsaid.
    assert offer_of(plan.model_copy(update={"person": "P-09"})).unsent == 4


def test_sessions_of_a_plan_that_the_clinic_does_not_know_are_asked_for(
    private_data_folder: Path, tmp_path: Path, plan: Plan
) -> None:
    patient(private_data_folder)
    other = plan.model_copy(update={"plan_id": "plan-8"})
    offer = offer_of(other)
    assert offer.new == () == offer.all and offer.foreign == (("plan-7", 3),)
    taken = offer_of(other, foreign=True)
    assert len(taken.new) == 3 and taken.foreign == ()
    # Once something of a plan has gone there, the rest may follow.
    hand_over(other, taken.new[:1], tmp_path / "one")
    assert len(offer_of(other).new) == 2 and offer_of(other).foreign == ()


@pytest.mark.parametrize(
    ("ended", "first", "goes"),
    [("finished", [], False), ("stopped", ["fall"], True), ("symptom_rule", [], True)],
)
def test_a_try_goes_out_only_with_what_the_therapist_should_read(
    private_data_folder: Path, tmp_path: Path, plan: Plan, ended: str, first: list[str], goes: bool
) -> None:
    def a_try(person: str | None, day: str) -> Path:
        folder = write_session(private_data_folder, day, person=person)
        summary = load_summary(folder / SUMMARY_NAME)
        told = {"plan_id": TRY_ID, "ended": ended, "gate": {"put_first": first}}
        save_summary(folder / SUMMARY_NAME, summary.model_copy(update=told))
        return folder

    mine = a_try(plan.person, "2026-11-23")
    assert offer_of(plan).new == ((mine,) if goes else ())
    # A try that names nobody may be anybody's: its owner is asked, and it goes once.
    nobodys, unnamed = a_try(None, "2026-11-24"), plan.model_copy(update={"person": None})
    offer = offer_of(unnamed)
    assert offer.new == () and offer.foreign == (((TRY_ID, 1),) if goes else ())
    if goes:
        hand_over(unnamed, offer_of(unnamed, foreign=True).new, tmp_path / "one")
        assert offer_of(unnamed).new == () == offer_of(unnamed).foreign
        a_try(None, "2026-11-25")
        assert offer_of(unnamed).foreign == ((TRY_ID, 1),)
        assert names(offer_of(unnamed).all) == [nobodys.name]


def test_clinics_without_keys_are_told_apart_by_their_plans(
    private_data_folder: Path, tmp_path: Path
) -> None:
    folders = patient(private_data_folder)
    plain = plan_with(plain=True)
    hand_over(plain, folders, tmp_path / "one")
    assert offer_of(plain).new == ()
    other = plain.model_copy(update={"plan_id": "plan-8"})
    assert offer_of(other).foreign == (("plan-7", 3),)


def test_a_trace_that_can_not_be_read_stays_behind(
    private_data_folder: Path, tmp_path: Path, plan: Plan, monkeypatch: pytest.MonkeyPatch
) -> None:
    folders = patient(private_data_folder)
    read = inputs.read_bytes

    def spoilt(path: Path, most: int) -> bytes:
        if path == folders[0] / "trace.csv":
            raise OSError(5, "Input/output error")
        return read(path, most)

    monkeypatch.setattr(sending, "read_bytes", spoilt)
    done = hand_over(plan, folders, tmp_path / "f")
    assert done.without_trace == (folders[0].name,) and len(done.sessions) == 3


def test_a_file_that_can_not_be_written_counts_as_nothing_handed_over(
    private_data_folder: Path, tmp_path: Path, plan: Plan
) -> None:
    folders = patient(private_data_folder)
    before = everything(private_data_folder)
    with pytest.raises(InputError, match="choose another place"):
        hand_over(plan, folders, tmp_path / "no" / "folder")
    assert everything(private_data_folder) == before
    assert len(offer_of(plan).new) == 3


def test_a_full_disk_leaves_no_half_file(
    private_data_folder: Path, tmp_path: Path, plan: Plan, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A flush that fails stands in for the disk."""
    folders = patient(private_data_folder)
    (tmp_path / "out").mkdir()

    def full(handle: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("tracker.session.files.os.fsync", full)
    with pytest.raises(RunError, match="the disk is full"):
        hand_over(plan, folders, tmp_path / "out" / "f")
    assert not list((tmp_path / "out").iterdir())
    monkeypatch.undo()
    assert not (tmp_path / "out" / "f").exists()


@pytest.mark.parametrize("record", ["", "{", "[]", '{"format": "x", "given": 3}', "[" * 99_999])
def test_a_damaged_record_means_that_all_goes_out_once_more(
    private_data_folder: Path, tmp_path: Path, plan: Plan, record: str
) -> None:
    folders = patient(private_data_folder)
    hand_over(plan, folders, tmp_path / "one")
    (private_data_folder / sent.RECORD).write_text(record)
    assert len(offer_of(plan).new) == 3
    hand_over(plan, folders, tmp_path / "two")
    assert offer_of(plan).new == ()


def test_the_record_of_a_newer_version_stays_as_it_is(tmp_path: Path) -> None:
    plan = plan_with(plain=True)
    sent.remember(plan, ["20261120-090000-ab00"], tmp_path)
    path = tmp_path / sent.RECORD
    newer = json.dumps(json.loads(path.read_text()) | {"format_version": 9, "more": {}})
    path.write_text(newer)
    assert sent.record(tmp_path)
    sent.remember(plan, ["20261121-090000-ab00"], tmp_path)
    with pytest.raises(InputError, match="newer version"):
        sent.forget(["20261120-090000-ab00"], tmp_path)
    assert path.read_text() == newer
