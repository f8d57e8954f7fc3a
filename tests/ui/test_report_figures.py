"""Every figure reads the same from CSV, HTML, FHIR and the PDF's text."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from functools import partial
from typing import Any
from urllib.parse import parse_qs

import pytest

from tests.records import made
from tests.ui import reading_documents as reading
from tests.ui.fhir_json import must_be_valid
from tracker.records.figure import shown_with_error
from tracker.records.figures import SessionFigures, record_of
from tracker.records.marks import with_marks
from tracker.records.notes import Note
from tracker.session.said import NOT_ANSWERED
from tracker.session.weekly import QUESTIONS
from ui.documents.csv import sessions_csv
from ui.documents.fhir import fhir_bundle
from ui.documents.html import html_document
from ui.documents.pdf import pdf_document

#: Fonts need Qt's application; without this one a PDF would make its own, without a screen.
with_qt = pytest.mark.usefixtures("qapp")

KINDS: dict[str, tuple[Callable[..., Any], Callable[..., reading.Read]]] = {
    "csv": (sessions_csv, reading.from_csv),
    "html": (html_document, reading.from_html),
    "fhir": (fhir_bundle, reading.from_fhir),
    # The one page has no figures of exercises but those at a glance (test_report_one_page.py).
    "pdf": (partial(pdf_document, details=True), reading.from_pdf),
}


def expected(record: SessionFigures, kind: str) -> reading.Read:
    out: reading.Read = {
        (where, f.key): None if f.value is None else shown_with_error(f)
        for where, f in reading.places(record)
    }
    if kind == "fhir":
        # What a session asks for as a whole has no place in a Bundle.
        out.pop(("session", "exercises_done.asked"), None)
    return out


@with_qt
@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("name", ["finished", "unseen", "unwell", "varied", "hands"])
def test_every_figure_reads_the_same(name: str, kind: str) -> None:
    record = record_of(made.EXAMPLES[name]())
    make, read = KINDS[kind]
    found, wanted = read(make([record]), record), expected(record, kind)
    assert len(wanted) > 30
    assert found == wanted


@with_qt
@pytest.mark.parametrize("kind", KINDS)
def test_what_was_marked_not_valid_reads_the_same(kind: str) -> None:
    plain = record_of(made.finished())
    where = {"session": plain.stable_id, "set_number": 0, "author": "kim", "at": "2026-03-02"}
    notes = [Note(id=str(n), kind="not_valid", repetition=n, **where) for n in (3, 5)]
    (record,) = with_marks([plain], notes)
    make, read = KINDS[kind]
    found, wanted = read(make([record]), record), expected(record, kind)
    assert wanted["1", "not_valid"] == "2"
    assert found == wanted


WEEKS: dict[str, dict[str, Any]] = {
    "fell": {"falls": "once", "hurt": False, "medicines_changed": True, "reasons": {}},
    "passed over": {
        **dict.fromkeys(QUESTIONS),
        "reasons": dict.fromkeys(QUESTIONS, NOT_ANSWERED),
    },
}


@with_qt
@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("week", WEEKS)
def test_the_answers_of_the_week_read_the_same(week: str, kind: str) -> None:
    record = record_of(made.without(made.finished(), weekly=WEEKS[week]))
    make, read = KINDS[kind]
    found, wanted = read(make([record]), record), expected(record, kind)
    assert {("session", "falls"), ("session", "medicines_changed")} <= set(wanted)
    assert found == wanted


def test_passed_over_is_declined_in_fhir() -> None:
    record = record_of(made.without(made.finished(), weekly=WEEKS["passed over"]))
    entries = json.loads(fhir_bundle([record]))["entry"]
    ids = [e["resource"].get("identifier", [{}]) for e in entries]
    (falls,) = [
        e["resource"]
        for e, i in zip(entries, ids, strict=True)
        if isinstance(i, list) and i[0].get("value", "").endswith("session/falls")
    ]
    assert falls["dataAbsentReason"]["coding"][0]["code"] == "asked-declined"
    assert falls["category"][0]["coding"][0]["code"] == "survey"
    must_be_valid(fhir_bundle([record]))


@pytest.mark.parametrize("kind", ["csv", "fhir"])
def test_hostile_text_changes_no_figure(kind: str) -> None:
    record = record_of(made.nasty())
    make, read = KINDS[kind]
    assert read(make([record]), record) == expected(record, kind)


@with_qt
@pytest.mark.parametrize("kind", KINDS)
def test_shoulders_hands_and_what_was_changed_stand_in_each(kind: str) -> None:
    """They are in the one list, so they can't be left out of a document and stay unnoticed."""
    record = record_of(made.hands())
    make, read = KINDS[kind]
    found = read(make([record]), record)
    told = {key for (_, key), value in found.items() if value is not None}
    assert told >= {
        "body_direction",
        "throw_height_mm",
        "body_arm",
        "arm",
        "vergence_change_deg",
        "hand_cycles",
        "counted_from",
        "tempo_bpm.planned",
        "amplitude_deg.planned",
        "call_changes",
        "marks",
        "baseline",
    }
    near = next(e for e in record.exercises if e.exercise == "near-far")
    cycles = near.find("hand_cycles")
    assert cycles is not None and cycles.value == 6


@with_qt
def test_a_reader_notices_a_changed_figure() -> None:
    """The comparison can fail: another summary's documents don't read the same."""
    record = record_of(made.finished())
    data = json.loads(made.finished().model_dump_json())
    data["exercises"][0]["head"]["amplitude_deg"]["by_side"]["left"]["median"] = 17.4
    other = record_of(made.finished().model_validate(data))
    for kind, (make, read) in KINDS.items():
        found, wanted = read(make([other]), other), expected(record, kind)
        differ = {k for k in wanted if found[k] != wanted[k]}
        assert differ == {("1", "amplitude_deg.left")}, kind


@with_qt
def test_unmeasured_has_its_reason_everywhere_and_is_never_zero() -> None:
    record = record_of(made.unseen())
    missing = [f for e in record.exercises for f in e.figures if f.value is None]
    assert len(missing) > 10
    html, csv = html_document([record]), sessions_csv([record]).decode("utf-8-sig")
    fhir = fhir_bundle([record])
    pdf = reading.pdf_text(pdf_document([record], details=True))
    for figure in missing:
        assert figure.reason is not None
        for text in (csv, fhir, html.replace("&#x27;", "'")):
            assert figure.reason in text, figure.key
        assert figure.reason in pdf, figure.key


@pytest.mark.parametrize("name", made.EXAMPLES)
def test_the_bundle_is_valid_fhir(name: str) -> None:
    record = record_of(made.EXAMPLES[name]())
    text = fhir_bundle([record])
    must_be_valid(text)
    entries = json.loads(text)["entry"]
    ids = [e["resource"]["id"] for e in entries]
    assert len(set(ids)) == len(ids)
    known = {e["fullUrl"] for e in entries}
    assert known == {f"urn:uuid:{i}" for i in ids}
    assert set(_references(entries)) <= known
    kinds = {e["resource"]["resourceType"] for e in entries}
    assert {"Patient", "ServiceRequest", "Observation", "QuestionnaireResponse"} <= kinds
    patient = next(e["resource"] for e in entries if e["resource"]["resourceType"] == "Patient")
    assert set(patient) == {"resourceType", "id", "identifier"}


def _references(value: Any) -> list[str]:
    if isinstance(value, dict):
        own = [value["reference"]] if "reference" in value else []
        return own + [r for v in value.values() for r in _references(v)]
    return [r for v in value for r in _references(v)] if isinstance(value, list) else []


def test_sending_a_bundle_twice_makes_no_doubles() -> None:
    records = [record_of(made.finished()), record_of(made.unwell())]
    both = json.loads(fhir_bundle(records))["entry"]
    assert json.loads(fhir_bundle(records))["entry"] == both
    alone = json.loads(fhir_bundle(records[:1]))["entry"]
    urls = [e["request"] for e in both]
    assert all(e["request"] in urls for e in alone)
    people = [u for u in urls if u["url"] == "Patient"]
    assert {u["ifNoneExist"] for u in people} == {
        "identifier=urn:turnpost:person|Wren",
        "identifier=urn:turnpost:person|P-07",
    }
    assert all(u["method"] == "PUT" and "/" in u["url"] for u in urls if u not in people)
    # Another session has nothing in common with it.
    other = [e["request"]["url"] for e in json.loads(fhir_bundle(records[1:]))["entry"]]
    assert {u["url"] for u in urls[: len(alone)]} & set(other) == {"Patient"}


@pytest.mark.parametrize("person", ["a|b", "a,b$c", "x&y=z#?", "Zoë 7", "50%", "back\\slash"])
def test_a_pseudonym_is_looked_for_as_it_is(person: str) -> None:
    """Whatever stands in it changes neither the search nor the URL that it is part of."""
    summary = made.finished().model_copy(update={"person": person})
    entries = json.loads(fhir_bundle([record_of(summary)]))["entry"]
    (search,) = (e["request"]["ifNoneExist"] for e in entries if "ifNoneExist" in e["request"])
    assert search.isascii() and not set(search) & set("&#? $,")
    ((name, (value,)),) = parse_qs(search).items()
    system, escaped = value.split("|", 1)
    assert (name, system) == ("identifier", "urn:turnpost:person")
    assert re.sub(r"\\([\\|,$])", r"\1", escaped) == person


def test_codes_are_local_but_for_the_documented_ones() -> None:
    entries = json.loads(fhir_bundle([record_of(made.finished())]))["entry"]
    systems: dict[str, set[str]] = {}

    def collect(value: Any) -> None:
        if isinstance(value, dict):
            if "system" in value and "code" in value:
                systems.setdefault(value["system"], set()).add(value["code"])
            for v in value.values():
                collect(v)
        elif isinstance(value, list):
            for v in value:
                collect(v)

    collect(entries)
    assert systems["http://loinc.org"] == {"55411-3"}
    known = {"deg", "deg/s", "%", "mm", "mm2", "s", "min", "/min", "1", "Hz", "cm"}
    assert systems["http://unitsofmeasure.org"] <= known
    assert set(systems) == {
        "urn:turnpost:codes",
        "http://loinc.org",
        "http://unitsofmeasure.org",
        "http://terminology.hl7.org/CodeSystem/data-absent-reason",
        "http://terminology.hl7.org/CodeSystem/observation-category",
    }


def test_not_asked_is_no_answer_in_fhir() -> None:
    entries = json.loads(fhir_bundle([record_of(made.unseen())]))["entry"]
    forms = [e["resource"] for e in entries if "item" in e["resource"]]
    items = [i for f in forms for i in f["item"]]
    assert items and all("answer" not in i for i in items)
    assert all(i["extension"][0]["valueCode"] == "not-asked" for i in items)
