"""Nausea and unsteadiness, where a plan has them asked, are told wherever dizziness is.

Questions, answers and rules are those of the plan's format; the words are our own.
"""

from __future__ import annotations

import csv
import io
import json
from functools import cache
from pathlib import Path

import pytest

from tests.practice.person import SEATED, Person, plan_of
from tests.records.rows import START, row
from tracker.records.adherence import adherence_of
from tracker.records.attention import Kind, reasons_of
from tracker.records.figures import record_of
from tracker.records.index import Records
from tracker.records.over_time import over_time_of
from tracker.records.people import people_of
from tracker.records.rows import Shapes, pack, row_of, unpack
from tracker.records.series import series_of
from tracker.session.summary_file import Summary
from ui.documents.csv import sessions_csv, trends_csv
from ui.documents.fhir import fhir_bundle
from ui.documents.html import html_document

BEFORE = {"dizziness": 1, "nausea": 5, "unsteadiness": 2}
AFTER = {"dizziness": 2, "nausea": 7, "unsteadiness": 3}
#: As the plan has them asked -> before and after.
ALSO = {"nausea": (5.0, 7.0), "unsteadiness": (2.0, 3.0)}


@cache
def practised() -> Summary:
    rules = {"also_ask": list(ALSO), "score_most": 9, "baseline_rise_most": 9}
    person = Person(before=[BEFORE], after=[AFTER])
    person.practise(plan_of(SEATED, person="Wren", symptom_rules=rules))
    return person.summary.model_copy(update={"started_at": "2026-03-02T09:00:00+01:00"})


def test_a_row_keeps_them_for_session_and_set() -> None:
    found = row_of(practised(), "a/summary.json")
    wanted = {f"{n}_before": before for n, (before, _) in ALSO.items()}
    wanted |= {f"{n}_after": after for n, (_, after) in ALSO.items()}
    assert found.also == wanted
    assert {k: v for k, v in found.sets[0].figures.items() if k in wanted} == wanted
    shapes: Shapes = {}
    kept = json.loads(json.dumps(pack(found, shapes)))
    assert unpack(found.place, kept, list(shapes)) == found


def test_where_no_plan_asks_for_them_there_is_nothing_of_them() -> None:
    assert not [s for s in series_of([row(k) for k in range(3)]) if s.figure.startswith("naus")]


@pytest.mark.parametrize("symptom", sorted(ALSO))
def test_what_rises_is_a_reason_and_a_trend_as_dizziness_is(symptom: str) -> None:
    scores = [1, 1, 1, 1, 2, 4, 5, 5, 5, 5]
    rows = [row(k, also={f"{symptom}_before": float(s)}) for k, s in enumerate(scores)]
    series = series_of(rows)
    (trend,) = [s for s in series if s.figure == f"{symptom}_before"]
    assert trend.change.verdict == "rose"
    found = reasons_of(rows, adherence_of(rows, None, rows[-1].day or START), series)
    (reason,) = [r for r in found if r.kind == Kind.rising]
    assert reason.text == f"{symptom} before rose from 1.2 to 4.8 of 10"
    # Beside dizziness that rises it has a line of its own.
    both = [r._replace(before=float(s)) for r, s in zip(rows, scores, strict=True)]
    found = reasons_of(both, adherence_of(both, None, both[-1].day or START), series_of(both))
    told = [r.text.split(" before")[0] for r in found if r.kind == Kind.rising]
    assert told == ["dizziness", symptom]


def test_every_document_has_them_where_dizziness_stands() -> None:
    record = record_of(practised())
    (cells,) = csv.DictReader(io.StringIO(sessions_csv([record]).decode("utf-8-sig")))
    for name, scores in ALSO.items():
        for when, value in zip(("before", "after"), scores, strict=True):
            columns = [h for h in cells if h.startswith(f"{name.capitalize()}, {when}")]
            assert [cells[h] for h in columns] == [f"{value:.0f}"], when
    page = html_document([record, record])
    # At a glance of both sessions, and of the exercises of each.
    assert "1 of 10; nausea 5 of 10; unsteadiness 2 of 10" in page
    assert page.count("2 of 10; nausea 7 of 10; unsteadiness 3 of 10") == 4
    entries = [e["resource"] for e in json.loads(fhir_bundle([record]))["entry"]]
    answers = [e for e in entries if e["resourceType"] == "QuestionnaireResponse"]
    told = {
        item["linkId"]: item["answer"][0].get("valueInteger")
        for item in answers[-1]["item"]
        if "answer" in item
    }
    assert told["nausea.after"] == 7 and told["unsteadiness.before"] == 2
    rows = [row_of(practised(), "a/summary.json")]
    (person,) = people_of(Records(Path(), rows, [], [], 0, 0, complete=True), START)
    table = trends_csv([over_time_of(person)]).decode("utf-8-sig")
    figures = {r["figure"]: r["lately"] for r in csv.DictReader(io.StringIO(table))}
    assert figures["nausea after"] == "7.0" and figures["unsteadiness before"] == "2.0"
