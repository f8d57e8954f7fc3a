"""Repetitions that a therapist has marked as not valid are said in documents, beside the set."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path

import pytest

from tests.records import made
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
    # What was measured stays as it is, and a record system gets nothing of it.
    without = written(clinic, tmp_path / "without")
    assert found["fhir"] == without["fhir"]
    assert not [k for k in KINDS if b"not valid" in without[k]]


def test_only_what_is_marked_has_a_figure() -> None:
    record = record_of(made.finished())
    (same,) = with_marks([record], [])
    assert [e.figures for e in same.exercises] == [e.figures for e in record.exercises]
    assert not any(row["not_valid"] for e in same.exercises for row in e.repetitions)
    assert json.loads(fhir_bundle([same])) == json.loads(fhir_bundle([record]))
