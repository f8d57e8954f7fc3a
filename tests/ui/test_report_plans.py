"""A session's plan in FHIR: all of its entries from the file at hand, else what is known of it."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from pytestqt.qtbot import QtBot

from tests.handover.made import plan_with
from tests.practice.person import STAND, WALK, plan_of
from tests.records import made
from tests.ui.fhir_json import must_be_valid
from tests.ui.test_desk_report import Open, clinic, desk, done  # noqa: F401 - fixtures
from tests.ui.test_report_command import saved
from tracker.plan.files import save_plan
from tracker.plan.model import Plan, Rung
from tracker.records.figures import SessionFigures, record_of
from tracker.records.index import read_folder
from tracker.records.plans import with_plans
from ui.cli import main
from ui.documents.fhir import fhir_bundle

DOSE = {"tempo_bpm": 60.0, "repetitions": 20}
#: The plan of ``made.finished``, and two entries that the session doesn't know.
ENTRIES: tuple[dict[str, Any], ...] = (
    {"exercise": "turns-on-target", "entry_id": "turns", "amplitude_deg": [15, 20], **DOSE},
    {"exercise": "eyes-side-to-side", "entry_id": "jumps", **DOSE, "note": "warm-up"},
    {**STAND, "entry_id": "corner", "seconds": 45},
    made.NODS,
)
LATER = (
    {**WALK, "entry_id": "stroll", "stage": "later", "seconds": 90},
    {"exercise": "nods-on-target", "entry_id": "far", "stage": "later", "repetitions": 7},
)


def whole(**changes: Any) -> Plan:
    entries = [{**e, "stage": "first"} for e in ENTRIES] + [dict(e) for e in LATER]
    stages = [
        {"stage_id": "first", "name": "To begin with"},
        {
            "stage_id": "later",
            "name": "On the way",
            "unlock_after": {"condition": "Steady at the sink."},
        },
    ]
    often = {"bouts_a_day": 3, "days_a_week": 5}
    about = {"person": "Wren", "words": "Dear W., be patient", "stages": stages, **often, **changes}
    return plan_of(*entries, **about)


def plan_in(text: str | bytes) -> dict[str, Any]:
    must_be_valid(text)
    found = [e["resource"] for e in json.loads(text)["entry"]]
    (plan,) = [r for r in found if r["resourceType"] == "CarePlan"]
    requests = [r for r in found if r["resourceType"] == "ServiceRequest"]
    for request in requests:
        assert request["basedOn"] == [{"reference": f"urn:uuid:{plan['id']}"}]
    assert isinstance(plan, dict)
    return plan


def told(plan: dict[str, Any]) -> dict[str, dict[str, Any]]:
    """Entry -> what is told of it."""
    details = [a["detail"] for a in plan["activity"]]
    return {d["description"].split("; ")[0]: d for d in details}


def notes(plan: dict[str, Any]) -> str:
    return " ".join(n["text"] for n in plan["note"])


def bundle(*plans: Plan) -> str:
    named = [(f"p{k}.json", p) for k, p in enumerate(plans)]
    return fhir_bundle(with_plans([record_of(made.finished())], named))


def test_every_entry_is_there_with_dose_and_days() -> None:
    text = bundle(whole())
    plan, entries = plan_in(text), told(plan_in(text))
    assert list(entries) == ["turns", "jumps", "corner", "nods", "stroll", "far"]
    doses = {k: (d["quantity"]["value"], d["quantity"]["unit"]) for k, d in entries.items()}
    assert doses["turns"] == doses["jumps"] == (20, "1")
    assert doses["corner"] == (45, "s") and doses["stroll"] == (90, "s")
    assert doses["far"] == (7, "1") and doses["nods"][0] > 0
    for entry in entries.values():
        # 3 a day on 5 days: a week's sum in figures, and the whole of it in words.
        repeat = entry["scheduledTiming"]["repeat"]
        assert repeat == {"frequency": 15, "period": 1, "periodUnit": "wk"}
        assert entry["scheduledTiming"]["code"]["text"] == "3 times a day on 5 days a week"
    assert "stage: On the way" in entries["far"]["description"]
    assert "Steady at the sink." in entries["stroll"]["description"]
    states = {k: (d["status"], d["statusReason"]["text"]) for k, d in entries.items()}
    assert states["turns"] == ("in-progress", "begun in this session")
    assert states["nods"][0] == "unknown"
    assert states["nods"][1].startswith("not begun in this session: ")
    assert states["far"] == ("unknown", "no part of this session")
    assert plan["status"] == "unknown" and plan["period"] == {"start": "2026-01-05"}
    assert "as it stands in its file now" in notes(plan) and "otherwise" not in notes(plan)
    # What the therapist wrote to the patient, and beside an entry, stays there.
    assert "be patient" not in text and "warm-up" not in text


def test_on_all_seven_days_the_figures_say_a_day() -> None:
    entries = told(plan_in(bundle(whole(days_a_week=7))))
    repeat = entries["turns"]["scheduledTiming"]["repeat"]
    assert repeat == {"frequency": 3, "period": 1, "periodUnit": "d"}


def test_without_a_file_it_says_what_is_not_known() -> None:
    other = whole(plan_id="plan-of-another")
    foreign = whole(person="Robin")
    for plans in ((), (other,), (foreign,)):
        plan = plan_in(bundle(*plans))
        entries = told(plan)
        assert list(entries) == ["turns", "jumps", "corner", "nods"]
        assert all("scheduledTiming" not in d and "quantity" not in d for d in entries.values())
        assert "holds no copy of it" in notes(plan) and "not known from it" in notes(plan)
    assert "Repetitions, asked: 20" in told(plan_in(bundle()))["turns"]["description"]


@pytest.mark.parametrize("ended", ["red_flag", "stopped", "interrupted"])
def test_a_session_that_ended_at_the_safety_questions_is_valid_and_says_so(ended: str) -> None:
    asked = made.without(made.finished(), exercises=[], not_done=[], ended=ended)
    plan = plan_in(fhir_bundle([record_of(asked)]))
    assert "activity" not in plan
    assert "ended before any entry was begun" in notes(plan)
    assert "which were due is not known" in notes(plan)
    # Nothing was begun: so no word of what was.
    assert "that were begun" not in notes(plan)
    known = plan_in(fhir_bundle(with_plans([record_of(asked)], [("p.json", whole())])))
    states = {d["statusReason"]["text"] for d in told(known).values()}
    assert len(told(known)) == 6 and states == {"the session ended before the exercises"}
    assert "The session ended before the exercises" in notes(known)


def test_what_was_begun_without_a_dose_has_no_loose_end() -> None:
    content = json.loads(made.finished().model_dump_json())
    first, *rest = content["exercises"]
    first["prescribed"] = {}
    first["entry_id"] = "turns\u202e\u200b"
    bare = made.without(made.finished(), exercises=[first, *rest])
    plan = plan_in(fhir_bundle([record_of(bare)]))
    assert plan["activity"][0]["detail"]["description"] == "turns"
    assert all(not d["description"].endswith("; ") for d in told(plan).values())


def test_a_file_that_was_changed_since_says_so() -> None:
    more = [
        e.model_copy(update={"repetitions": 30}) if e.entry_id == "turns" else e
        for e in whole().entries
        if e.entry_id != "nods"
    ]
    changed = whole().model_copy(update={"entries": more})
    plan = plan_in(bundle(changed))
    assert told(plan)["turns"]["quantity"]["value"] == 30
    assert "Practised otherwise than the file has it" in notes(plan)
    assert "turns, nods. The requests tell" in notes(plan)
    # Of two files the one that fits what was practised is taken, though it is the older one.
    both = plan_in(bundle(whole(), changed))
    assert told(both)["turns"]["quantity"]["value"] == 20 and "otherwise" not in notes(both)
    assert "Other files of this plan differ from it: 1" in notes(both)


def with_entry(entry_id: str, **changes: Any) -> Plan:
    """The plan with one entry changed."""
    entries = [
        e.model_copy(update=changes) if e.entry_id == entry_id else e for e in whole().entries
    ]
    return whole().model_copy(update={"entries": entries})


@pytest.mark.parametrize(
    "changes",
    [
        {"tempo_bpm": 90.0},
        {"tempo_bpm": (60.0, 80.0)},
        {"tempo_bpm": None},
        {"amplitude_deg": (10.0, 20.0)},
        {"ladder": [Rung(from_week=2, tempo_bpm=80.0)]},
    ],
)
def test_another_tempo_or_range_is_a_changed_file_too(changes: dict[str, Any]) -> None:
    told_of = notes(plan_in(bundle(with_entry("turns", **changes))))
    assert "Practised otherwise than the file has it" in told_of and ": turns. " in told_of


def after_changes_in_a_call() -> SessionFigures:
    content = json.loads(made.finished().model_dump_json())
    turns = content["exercises"][0]
    turns["prescribed"] |= {"tempo_bpm": 55.0, "amplitude_deg": [13, 18]}
    turns["changed"] = {"tempo_bpm": [60.0, 55.0], "amplitude_deg": [[15, 20], [13, 18]]}
    return record_of(made.without(made.finished(), exercises=content["exercises"]))


def after_a_small_screen() -> SessionFigures:
    content = json.loads(made.finished().model_dump_json())
    turns = content["exercises"][0]
    turns["prescribed"] |= {
        "amplitude_deg": [8.6, 11.4],
        "target": {"motion": "steps", "swing_deg": 10.0, "wanted_amplitude_deg": [15, 20]},
    }
    return record_of(made.without(made.finished(), exercises=content["exercises"]))


@pytest.mark.parametrize("made_so", [after_changes_in_a_call, after_a_small_screen])
def test_what_a_call_or_a_screen_has_changed_is_no_changed_file(
    made_so: Callable[[], SessionFigures],
) -> None:
    (record,) = with_plans([made_so()], [("p.json", whole())])
    assert record.plan is not None and record.plan.unlike == ()
    # And it is noticed still where the file has been given what was asked in the call.
    changes = {"tempo_bpm": 55.0, "amplitude_deg": (13.0, 18.0)}
    (other,) = with_plans([made_so()], [("p.json", with_entry("turns", **changes))])
    assert other.plan is not None and other.plan.unlike == ("turns",)


def test_a_try_without_a_plan_has_none() -> None:
    record = record_of(made.without(made.finished(), plan_id=None))
    kinds = [e["resource"]["resourceType"] for e in json.loads(fhir_bundle([record]))["entry"]]
    assert "CarePlan" not in kinds and "ServiceRequest" in kinds


def test_the_command_and_what_is_sent_take_it_from_the_folder(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("TURNPOST_CACHE", str(tmp_path / "cache"))
    root = tmp_path / "clinic"
    saved(root / "wren" / "one", made.finished())
    save_plan(root / "wren" / "plan.json", whole())
    out = tmp_path / "out.json"
    asked = ["report", str(root / "wren" / "one"), "--fhir", str(out)]
    assert main([*asked, "--trends", str(root)]) == 0
    assert len(plan_in(out.read_text("utf-8"))["activity"]) == 6
    assert main(asked) == 0
    assert len(plan_in(out.read_text("utf-8"))["activity"]) == 4
    assert read_folder(root).plans == [("wren/plan.json", whole())]


def test_the_desk_takes_it_from_its_folder(
    desk: Open,  # noqa: F811
    qtbot: QtBot,
    tmp_path: Path,
    clinic: Path,  # noqa: F811
) -> None:
    save_plan(clinic / "plan.json", plan_with())
    window = desk()
    person = window.person_page.person
    assert person is not None
    window.open_session(person.rows[0].place)
    qtbot.waitUntil(lambda: not window.session_page.busy, timeout=30_000)
    for number, report in enumerate((window.session_page.report, window.person_page.report)):
        path = tmp_path / f"desk-{number}.json"
        report.make("fhir", path)
        done(report, qtbot)
        found = [e["resource"] for e in json.loads(path.read_text("utf-8"))["entry"]]
        plans = [r for r in found if r["resourceType"] == "CarePlan"]
        assert len(plans) == number + 1
        for plan in plans:
            assert list(told(plan)) == [e.entry_id for e in plan_with().entries]
