"""A plan's file: read, refused with line and field, written whole."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from tests.plan.examples import TEXT, changed
from tracker.errors import InputError
from tracker.plan.files import format_plan, load_plan, parse_plan, save_plan, schema
from tracker.plan.starter import starter_plan


def refusal(text: str) -> str:
    with pytest.raises(InputError) as caught:
        parse_plan(text, "p.json")
    message = str(caught.value)
    assert "\n" not in message and message.startswith("p.json: ")
    return message


def test_the_example_is_read() -> None:
    plan = parse_plan(TEXT)
    assert plan.person == "P-07"
    assert [e.entry_id for e in plan.entries] == ["turns", "turns-free", "corner", "nods"]
    assert plan.entries[0].tempo_bpm == (60, 90)
    assert plan.symptom_rules.score_most == 5
    assert plan.bouts_a_day == 3


def test_what_is_written_is_read_again(tmp_path: Path) -> None:
    for plan in (parse_plan(TEXT), starter_plan()):
        save_plan(tmp_path / "p.json", plan)
        again = load_plan(tmp_path / "p.json")
        assert again == plan
        # Left out stays left out: a null tempo is the patient's own pace.
        assert [e.model_fields_set for e in again.entries] == [
            e.model_fields_set for e in plan.entries
        ]


def test_a_byte_order_mark_is_no_fault(tmp_path: Path) -> None:
    (tmp_path / "p.json").write_bytes(b"\xef\xbb\xbf" + TEXT.encode())
    assert load_plan(tmp_path / "p.json").plan_id == "plan-7"


@pytest.mark.parametrize(
    ("field", "value", "says"),
    [
        ("plan_id", "../../etc", "plan_id: '../../etc' can't be used here"),
        ("bouts_a_day", "3", "bouts_a_day: must be a whole number"),
        ("bouts_a_day", 0, "bouts_a_day: must be 1 or more"),
        ("rest_s", 1e400, "not a JSON file (Infinity is no number of JSON)"),
        ("seat_distance_mm", 100, "seat_distance_mm: must be 400 or more"),
        ("starts_on", "5 January", "starts_on: must be a day as in 2026-01-31"),
        ("emergency_number", "call mum", "emergency_number: must be a telephone number"),
        ("kind_of_loss", "old", "kind_of_loss: must be 'acute', 'chronic', 'bilateral' or 'other'"),
        ("entries", [], "entries: must not be empty"),
        ("entries", {}, "entries: must be a list in [ ]"),
        ("entries.0", 3, "entries[0]: must be fields in { }"),
        ("entries.0.tempo_bpm", "fast", "entries[0].tempo_bpm: must be a number"),
        ("entries.0.tempo_bpm", [60, 500], "entries[0].tempo_bpm"),
        ("entries.0.tempo_bpm", 500, "entries[0].tempo_bpm: must be 240 or less"),
        ("entries.0.amplitude_deg", 15, "entries[0].amplitude_deg: must be a pair, [from, to]"),
        ("entries.0.amplitud_deg", [10, 15], "entries[0].amplitud_deg: is not a field of a plan"),
        ("entries.1.unlock_after", {}, "entries[1].unlock_after.condition: is missing"),
        ("symptom_rules", {"score_most": 11}, "symptom_rules.score_most: must be 10 or less"),
    ],
)
def test_a_wrong_value_names_its_line_and_field(field: str, value: Any, says: str) -> None:
    text = changed(field, value)
    message = refusal(text)
    assert says in message
    if "not a JSON file" in says:
        return
    # The line named is the one on which the field (or what is around it) stands.
    line = int(message.split("line ")[1].split(",")[0])
    row = text.splitlines()[line - 1]
    name = says.split(":")[0].split(".")[-1].split("[")[0]
    assert f'"{name}"' in row or row.strip() in ("3,", "{") or '"unlock_after"' in row, row


def test_odd_signs_in_a_name_stay_one_line() -> None:
    assert "perso?n: is not a field" in refusal(TEXT.replace('"person"', '"perso\u2028n"'))


def test_many_faults_give_the_first_line_and_a_number() -> None:
    text = TEXT.replace('"P-07"', "7").replace('"seconds": 45', '"seconds": "long"')
    assert refusal(text).startswith("p.json: line 5, person: must be a text in quotes (and 1 more)")


def test_a_slip_in_the_text_names_its_line() -> None:
    assert "line 3: not a JSON file" in refusal('{\n "format": "turnpost-plan",\n oops\n}')
    assert "NaN is no number" in refusal(TEXT.replace('"seconds": 45', '"seconds": NaN'))


def test_a_name_that_stands_twice_is_refused() -> None:
    text = TEXT.replace('"repetitions": 12,', '"repetitions": 12,\n      "repetitions": 99,')
    assert "line 18, entries[0].repetitions: stands there twice" in refusal(text)


def test_deep_large_and_foreign_files_are_refused(tmp_path: Path) -> None:
    assert "nested too deeply" in refusal("[" * 100_000)
    assert "line 1: nested too deeply" in refusal("[" * 50 + "]" * 50)
    path = tmp_path / "p.json"
    path.write_text(" " * 1_000_001)
    with pytest.raises(InputError, match="too large"):
        load_plan(path)
    path.write_bytes(b"\xff\xfe\x00")
    with pytest.raises(InputError, match="not a text file"):
        load_plan(path)
    with pytest.raises(InputError, match="can't be read"):
        load_plan(tmp_path / "none.json")
    assert "says format 'turnpost-session'" in refusal('{"format": "turnpost-session"}')
    assert "has no such format" in refusal("[1, 2]")


def test_a_newer_version_is_refused_kindly() -> None:
    assert "version 2, made by a newer Turnpost" in refusal(changed("format_version", 2))
    assert "format_version: must be 1" in refusal(changed("format_version", 0))


def test_examples_fit_the_schema() -> None:
    published = schema()
    jsonschema.Draft202012Validator.check_schema(published)
    check = jsonschema.Draft202012Validator(published)
    check.validate(json.loads(TEXT))
    check.validate(json.loads(format_plan(starter_plan())))
    for field, value in (("bouts_a_day", 0), ("entries.0.eyes", "shut"), ("colour", "red")):
        assert not check.is_valid(json.loads(changed(field, value)))


def test_every_default_of_the_schema_names_its_source() -> None:
    published = schema()
    free = {"affected_side", "kind_of_loss", "words", "symptom_rules", "clearance", "stages"}
    parts = {**published["properties"], **published["$defs"]["SymptomRules"]["properties"]}
    for name, field in parts.items():
        if field.get("default") is not None and name not in free:
            assert "Default: " in field["description"], name
