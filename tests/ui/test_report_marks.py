"""Repetitions that a therapist has marked as not valid are said in documents, beside the set."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path
from typing import Any

import pytest

from tests.records import made
from tests.ui.fhir_json import must_be_valid
from tests.ui.reading_documents import pdf_text
from tracker.records.figures import record_of
from tracker.records.marks import with_marks
from tracker.records.notes import NoteBook
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import save_summary
from ui.cli import main
from ui.documents.fhir import fhir_bundle

KINDS = ("html", "pdf", "pdf-details", "csv", "repetitions-csv", "fhir")


@pytest.fixture
def clinic(tmp_path: Path) -> Path:
    """A session with three marks on its first set, two on one repetition, and one taken back."""
    place = tmp_path / "clinic" / "s1"
    place.mkdir(parents=True)
    summary = made.finished()
    save_summary(place / SUMMARY_NAME, summary)
    assert summary.session_id is not None
    kim, lee = NoteBook(tmp_path / "clinic", "kim"), NoteBook(tmp_path / "clinic", "lee")
    for book, repetition in ((kim, 3), (lee, 3), (kim, 5), (kim, 7)):
        where = {"set_number": 0, "repetition": repetition}
        book.add("not_valid", summary.session_id, "sneezed", **where)
    kim.undo()
    kim.add("note", summary.session_id, "tired")
    kim.add("not_valid", "another session", set_number=1, repetition=2)
    return tmp_path / "clinic"


def written(clinic: Path, out: Path, *more: str) -> dict[str, bytes]:
    out.mkdir()
    asked = [w for k in KINDS for w in (f"--{k}", str(out / k))]
    assert main(["report", str(clinic / "s1"), *asked, *more]) == 0
    return {k: (out / k).read_bytes() for k in KINDS}


@pytest.mark.usefixtures("qapp")
def test_the_number_stands_beside_the_set_and_the_table_says_which(
    clinic: Path, tmp_path: Path
) -> None:
    found = written(clinic, tmp_path / "with", "--notes", str(clinic))
    done = "22 of 20; 2 marked not valid"
    assert found["html"].decode().count("2 marked not valid") == 1
    assert done in found["html"].decode()
    assert "Repetitions marked not valid" in found["html"].decode()
    assert "2 marked not valid" in " ".join(pdf_text(found["pdf"]).split())
    assert "Repetitions marked not valid" in " ".join(pdf_text(found["pdf-details"]).split())
    (cells,) = csv.DictReader(io.StringIO(found["csv"].decode("utf-8-sig")))
    told = {head: cell for head, cell in cells.items() if head.endswith("marked not valid")}
    assert list(told.values()) == ["2"]
    rows = list(csv.DictReader(io.StringIO(found["repetitions-csv"].decode("utf-8-sig"))))
    first = rows[0]["exercise"]
    marked = [(r["exercise"], r["repetition"]) for r in rows if r["marked not valid"] == "yes"]
    assert marked == [(first, "3"), (first, "5")]
    # What was measured stays as it is.
    without = written(clinic, tmp_path / "without")
    assert not [k for k in KINDS if b"not valid" in without[k]]


def observations(text: bytes | str) -> dict[str, dict[str, Any]]:
    """Observations of a Bundle by their identifiers."""
    resources = [e["resource"] for e in json.loads(text)["entry"]]
    return {r["identifier"][0]["value"]: r for r in resources if r["resourceType"] == "Observation"}


@pytest.mark.usefixtures("qapp")
def test_a_record_system_learns_which_and_that_the_figures_include_them(
    clinic: Path, tmp_path: Path
) -> None:
    """R4: ``amended`` is for new information on what was final, ``note`` for unreliable values."""
    found = written(clinic, tmp_path / "with", "--notes", str(clinic))["fhir"]
    without = written(clinic, tmp_path / "without")["fhir"]
    must_be_valid(found)
    marked, plain = observations(found), observations(without)
    assert set(marked) == set(plain)
    assert {r["status"] for r in plain.values()} == {"final"}
    amended = {k for k, r in marked.items() if r["status"] == "amended"}
    record = record_of(made.finished())
    first = f"{record.stable_id}/exercise:{record.exercises[0].label}/"
    asked_of_person = {f"{first}{m}" for m in ("clarity", "support", "own_count")}
    of_set = {k for k in plain if k.startswith(first)} - asked_of_person
    assert len(of_set) > 5 and amended == {*of_set, record.stable_id}
    told = "Repetitions marked not valid by the therapist: 2 (number 3, 5). The figures of this"
    for key in amended:
        (note,) = [n["text"] for n in marked[key]["note"] if "not valid" in n["text"]]
        assert told in note and "sneezed" not in note
    for key in of_set:
        before, after = dict(plain[key]), dict(marked[key])
        (count,) = after["component"][len(before.get("component", [])) :]
        assert count["code"]["coding"][0]["code"] == "not_valid"
        assert count["valueQuantity"]["value"] == 2
        # Nothing was worked out anew, and no value is missing.
        values = ("valueQuantity", "valueString", "dataAbsentReason")
        assert [before.get(v) for v in values] == [after.get(v) for v in values]
    # Once the marks are taken back, the same resources are as before: nothing is left over.
    for author in ("kim", "lee"):
        book = NoteBook(clinic, author)
        while book.undo() is not None:
            pass
    again = written(clinic, tmp_path / "again", "--notes", str(clinic))["fhir"]
    assert again == without


def test_only_what_is_marked_has_a_figure() -> None:
    record = record_of(made.finished())
    (same,) = with_marks([record], [])
    assert [e.figures for e in same.exercises] == [e.figures for e in record.exercises]
    assert not any(row["not_valid"] for e in same.exercises for row in e.repetitions)
    assert json.loads(fhir_bundle([same])) == json.loads(fhir_bundle([record]))
