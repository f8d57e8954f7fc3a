"""Questionnaire scores in the documents: the same in all of them, and nobody else's."""

from __future__ import annotations

import csv
import io
import json
import re
from datetime import date
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

import pytest

from tests.records import made
from tests.ui.axe import check
from tests.ui.fhir_json import must_be_valid
from tests.ui.reading_documents import pdf_text, pdf_words
from tests.ui.test_report_page import NEEDS_BROWSER, _overlap, _pairs
from tracker.records.figures import SessionFigures, record_of
from tracker.records.notes import NoteBook
from tracker.records.questionnaires import Score, add_score, scores_of
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import save_summary
from ui.cli import main
from ui.documents.csv import scores_csv
from ui.documents.fhir import fhir_bundle
from ui.documents.html import html_document
from ui.documents.paragraph import paragraph
from ui.documents.pdf import pdf_document

#: Person, questionnaire, day, score, least, most.
Read = list[tuple[str, str, str, float, float, float]]

TYPED = (
    ("Wren", "Balance A", date(2026, 3, 1), 72.0, (0.0, 100.0)),
    ("Wren", "Balance A", date(2026, 4, 5), 47.5, (0.0, 100.0)),
    ("Wren", "=Steps", date(2026, 4, 5), -3.0, (-10.0, 10.0)),
    ("Finch", "Balance A", date(2026, 4, 5), 11.0, (0.0, 100.0)),
)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A reviewed folder with scores of two people."""
    book = NoteBook(tmp_path / "clinic", "kim")
    for person, name, day, score, ends in TYPED:
        add_score(book, person, name, day, score, ends)
    return tmp_path / "clinic"


@pytest.fixture
def scores(folder: Path) -> list[Score]:
    return scores_of(NoteBook(folder, "kim"))


def records(count: int = 1) -> list[SessionFigures]:
    other = made.without(
        made.finished(), session_id="20260405-093000-gh78", started_at="2026-04-05T09:30:00+01:00"
    )
    return [record_of(made.finished()), record_of(other)][:count]


WANTED: Read = sorted(
    (person, name, day.isoformat(), score, *ends)
    for person, name, day, score, ends in TYPED
    if person == "Wren"
)


def from_csv(content: bytes) -> Read:
    found = []
    for row in csv.DictReader(io.StringIO(content.decode("utf-8-sig"))):
        numbers = [float(row[k]) for k in ("score", "least possible", "most possible")]
        name = row["questionnaire"].removeprefix("'")
        found.append((row["person"], name, row["day"], *numbers))
    return sorted(found)  # type: ignore[arg-type]


def from_fhir(text: str) -> Read:
    found = []
    resources = [e["resource"] for e in json.loads(text)["entry"]]
    people = {
        f"urn:uuid:{r['id']}": r["identifier"][0]["value"]
        for r in resources
        if r["resourceType"] == "Patient"
    }
    for r in resources:
        code = r.get("code", {}).get("coding", [{}])[0].get("code")
        if code == "questionnaire_score" and r["status"] == "final":
            ends = [c["valueQuantity"]["value"] for c in r["component"]]
            found.append(
                (
                    people[r["subject"]["reference"]],
                    r["code"]["text"],
                    r["effectiveDateTime"],
                    r["valueQuantity"]["value"],
                    *ends,
                )
            )
    return sorted(found)


class _Cells(HTMLParser):
    """Rows of the tables of a page."""

    def __init__(self) -> None:
        super().__init__()
        self.rows: list[list[str]] = []
        self._inside = False

    def handle_starttag(self, tag: str, attrs: Any) -> None:  # noqa: ARG002
        if tag == "tr":
            self.rows.append([])
        self._inside = tag in ("td", "th")
        if self._inside:
            self.rows[-1].append("")

    def handle_endtag(self, tag: str) -> None:  # noqa: ARG002
        self._inside = False

    def handle_data(self, data: str) -> None:
        if self._inside:
            self.rows[-1][-1] += data


def from_html(text: str) -> Read:
    cells = _Cells()
    cells.feed(text)
    rows = [r for r in cells.rows if len(r) == 7 and re.fullmatch(r"\d{4}-\d\d-\d\d", r[2])]
    ends = [[float(v) for v in r[4].split(" to ")] for r in rows]
    found = [(r[1], r[0], r[2], float(r[3]), *e) for r, e in zip(rows, ends, strict=True)]
    return sorted(found)  # type: ignore[arg-type]


def from_pdf(data: bytes) -> Read:
    number = r"(-?\d+(?:\.\d+)?)"
    row = rf"(Balance A|=Steps) (\w+) (\d{{4}}-\d\d-\d\d) {number} {number} to {number}"
    found = re.findall(row, pdf_text(data))
    return sorted((p, n, d, *(float(v) for v in rest)) for n, p, d, *rest in found)  # type: ignore[misc]


@pytest.mark.usefixtures("qapp")
@pytest.mark.parametrize("count", [1, 2])
def test_each_document_has_the_scores_of_its_people_and_no_others(
    scores: list[Score], count: int
) -> None:
    whose = records(count)
    assert from_csv(scores_csv(whose, scores)) == WANTED
    assert from_fhir(fhir_bundle(whose, scores)) == WANTED
    assert from_html(html_document(whose, "A4", scores)) == WANTED
    assert from_pdf(pdf_document(whose, "a4", scores)) == WANTED
    assert "Finch" not in html_document(whose, "A4", scores)
    told = paragraph(whose[0], scores)
    assert "Balance A (0 to 100): 72 on 2026-03-01, 47.5 on 2026-04-05: 24.5 lower" in told


def test_without_scores_nothing_is_said_of_them(scores: list[Score]) -> None:
    alone = [record_of(made.unwell())]
    assert alone[0].person_id == "P-07"
    assert html_document(alone, "A4", scores) == html_document(alone)
    assert fhir_bundle(alone, scores) == fhir_bundle(alone)
    assert from_csv(scores_csv(alone, scores)) == []
    assert paragraph(alone[0], scores) == paragraph(alone[0])


def test_the_bundle_stays_valid_and_makes_no_doubles(scores: list[Score]) -> None:
    text = fhir_bundle(records(2), scores)
    must_be_valid(text)
    entries = json.loads(text)["entry"]
    urls = [e["request"]["url"] for e in entries]
    assert len(set(urls)) == len(urls)
    own = [e for e in entries if "questionnaire_score" in json.dumps(e)]
    assert len(own) == 3
    # The same score has the same id, with whatever session it is sent.
    alone = json.loads(fhir_bundle(records(1), scores))["entry"]
    assert [e for e in alone if e in own] == own
    systems = {c["system"] for e in own for c in e["resource"]["code"]["coding"]}
    assert systems == {"urn:turnpost:codes"}
    for e in own:
        subject = e["resource"]["subject"]["reference"]
        assert subject in {x["fullUrl"] for x in entries}


@pytest.mark.usefixtures("qapp")
def test_a_score_that_was_taken_back_is_in_no_document_and_an_error_in_fhir(folder: Path) -> None:
    book = NoteBook(folder, "kim")
    lost = scores_of(book, ["Wren"])[-1]
    sent = {e["resource"]["id"] for e in json.loads(fhir_bundle(records(), [lost]))["entry"]}
    book.withdraw(lost.id)
    left = scores_of(book, also_withdrawn=True)
    assert len(left) == len(TYPED)
    wanted = [row for row in WANTED if row[2:4] != (lost.day.isoformat(), lost.score)]
    assert len(wanted) == 2
    assert from_csv(scores_csv(records(), left)) == wanted
    assert from_html(html_document(records(), "A4", left)) == wanted
    assert from_pdf(pdf_document(records(), "a4", left)) == wanted
    assert "47.5" not in paragraph(records()[0], left)
    resources = [e["resource"] for e in json.loads(fhir_bundle(records(), left))["entry"]]
    wrong = [r for r in resources if r.get("status") == "entered-in-error"]
    # Under the id that it had when it was sent, so that it takes its place.
    assert len(wrong) == 1 and wrong[0]["id"] in sent
    # What was wrong, and who entered it, is not told once more.
    told = {"valueQuantity", "component", "performer", "effectiveDateTime"}
    assert not told & wrong[0].keys() and "text" not in wrong[0]["code"]
    assert from_fhir(fhir_bundle(records(), left)) == wanted


def test_numbers_stay_numbers_and_typed_text_is_no_formula(scores: list[Score]) -> None:
    rows = list(csv.DictReader(io.StringIO(scores_csv(records(), scores).decode("utf-8-sig"))))
    steps, first, second = rows
    assert steps["questionnaire"] == "'=Steps" and steps["score"] == "-3"
    assert first["above the first"] == "" and second["above the first"] == "-24.5"
    assert second["entered by"] == "kim"


@NEEDS_BROWSER
@pytest.mark.parametrize("count", [1, 2])
def test_the_page_with_scores_passes_an_accessibility_checker(
    scores: list[Score], count: int, tmp_path: Path
) -> None:
    assert check(html_document(records(count), "A4", scores), tmp_path)["violations"] == []


@pytest.mark.usefixtures("qapp")
@pytest.mark.parametrize("count", [1, 2])
def test_no_word_of_the_pdf_is_over_another(scores: list[Score], count: int) -> None:
    words = pdf_words(pdf_document(records(count), "a4", scores))
    assert len(words) > 100
    assert not [(a.text, b.text) for a, b in _pairs(words) if _overlap(a, b)]


def test_the_command_takes_them_from_the_reviewed_folder(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    session = tmp_path / "session"
    session.mkdir()
    save_summary(session / SUMMARY_NAME, made.finished())
    out = tmp_path / "scores.csv"
    words = ["report", str(session), "--scores-csv", str(out)]
    assert main(words) == 2
    assert "needs --notes" in capsys.readouterr().err and not out.exists()
    assert main([*words, "--notes", str(tmp_path / "nowhere")]) == 2
    assert "no such folder" in capsys.readouterr().err and not out.exists()
    assert main([*words, "--notes", str(folder), "--text"]) == 0
    assert from_csv(out.read_bytes()) == WANTED
    assert "Questionnaires: =Steps" in capsys.readouterr().out
