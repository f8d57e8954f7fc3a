"""What the desk shows of a session is what CSV, PDF, FHIR and HTML say: read back from all five."""

from __future__ import annotations

import csv
import io
import json
import re
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from pytestqt.qtbot import QtBot

from tests.records import made
from tests.ui import reading_documents as reading
from tests.ui.test_desk import folder, open_desk  # noqa: F401 - fixtures
from tests.ui.test_report_figures import KINDS, expected
from tests.ui.test_report_scores import from_csv, from_fhir, from_html
from tracker.records.figures import SessionFigures, record_of
from tracker.records.marks import with_marks
from tracker.records.notes import NoteBook
from tracker.records.questionnaires import Score, add_score, scores_of
from tracker.session.flags import _NOTES
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import Summary, load_summary, save_summary
from ui.desk.session_page import SessionPage
from ui.desk.window import DeskWindow
from ui.documents.csv import scores_csv, sessions_csv
from ui.documents.fhir import fhir_bundle
from ui.documents.html import html_document
from ui.documents.pdf import pdf_document

Open = Callable[..., DeskWindow]

#: A baseline in the clinic, under a coarse picture, in a week with a fall and other medicines.
WEEK = {"falls": "once", "hurt": True, "medicines_changed": True, "reasons": {}}
COARSE = "coarse_picture"
NEWER = {
    "falls": "one fall",
    "hurt": "yes",
    "medicines_changed": "yes",
    "baseline": "taken together in the clinic",
}
TYPED = ((date(2026, 3, 1), 72.0), (date(2026, 4, 5), 47.5))


def told() -> Summary:
    coarse = _NOTES[COARSE].model_dump()
    found = made.finished().model_dump()
    found |= {"weekly": WEEK, "baseline": True, "quality": [*found["quality"], coarse]}
    for exercise in found["exercises"]:
        exercise["quality"].append(coarse)
    return Summary.model_validate(found)


@pytest.fixture
def desk(open_desk: Open, tmp_path: Path, qtbot: QtBot) -> DeskWindow:  # noqa: F811
    root = tmp_path / "told"
    (root / "one").mkdir(parents=True)
    save_summary(root / "one" / SUMMARY_NAME, told())
    for day, score in TYPED:
        add_score(NoteBook(root, "kim"), "Wren", "Balance A", day, score, (0.0, 100.0))
    window = open_desk(root)
    window.open_session("one/summary.json")
    qtbot.waitUntil(lambda: not window.session_page.busy, timeout=30_000)
    return window


def record_in(window: DeskWindow) -> SessionFigures:
    return record_of(load_summary(window.session_page.folder / "one" / SUMMARY_NAME))


def from_screen(page: SessionPage, record: SessionFigures) -> reading.Read:
    """The lines under Figures, set by set, split by what is known of their names alone."""
    out: reading.Read = {}
    for k, exercise in enumerate(record.exercises):
        page.sets.setCurrentIndex(k)
        lines = [page.figures.item(n).text() for n in range(page.figures.count())]
        figures = [(str(k + 1), f) for f in exercise.figures]
        figures += [("session", f) for f in record.figures]
        assert len(lines) == len(figures)
        for line, (where, figure) in zip(lines, figures, strict=True):
            name, text = line[: len(figure.label)], line[len(figure.label) :]
            assert name == figure.label and text.startswith(": ")
            found = reading.without_unit(text[2:], figure)
            assert out.setdefault((where, figure.key), found) == found
    return out


def test_every_figure_on_the_screen_is_that_of_each_document(desk: DeskWindow) -> None:
    page, record = desk.session_page, record_in(desk)
    seen = from_screen(page, record)
    assert len(seen) > 60
    assert {k: seen["session", k] for k in NEWER} == NEWER
    scores = scores_of(page.notes.book)
    for kind, (make, read) in KINDS.items():
        there = read(
            make([record]) if kind == "csv" else _with_scores(kind, record, scores), record
        )
        wanted = expected(record, kind)
        assert there == {k: seen[k] for k in wanted}, kind
        assert set(seen) - set(wanted) <= {("session", "exercises_done.asked")}


def test_marks_on_the_screen_are_those_of_each_document(desk: DeskWindow) -> None:
    page, record = desk.session_page, record_in(desk)
    page.sets.setCurrentIndex(0)
    for number in (3, 5):
        page.notes.mark(0, number)
    seen = re.findall(r"repetition (\d+) is not valid", page.notes.notes.text(), re.IGNORECASE)
    assert sorted(seen) == ["3", "5"]
    (marked,) = with_marks([record], page.notes.book.notes())
    for kind, (make, read) in KINDS.items():
        there = read(make([marked]), marked)
        assert there == expected(marked, kind), kind
        assert there["1", "not_valid"] == str(len(seen)), kind


def _with_scores(kind: str, record: SessionFigures, scores: list[Score]) -> Any:
    """As the desk makes it, with what was typed there."""
    if kind == "html":
        return html_document([record], "A4", scores)
    if kind == "pdf":
        return pdf_document([record], "a4", scores, details=True)
    return fhir_bundle([record], scores)


def test_what_limits_the_figures_stands_on_the_screen_and_in_each_document(
    desk: DeskWindow,
) -> None:
    page, record = desk.session_page, record_in(desk)
    why = _NOTES[COARSE].reason
    for k in range(len(record.exercises)):
        page.sets.setCurrentIndex(k)
        assert page.doubt.text().count(f"picture too coarse ({why})") == 1
    (row,) = desk.person_page.sessions.sessions.rows
    assert all(COARSE in done.doubts("repetitions") for done in row.sets)
    (line,) = csv.DictReader(io.StringIO(sessions_csv([record]).decode("utf-8-sig")))
    notes = json.dumps(json.loads(fhir_bundle([record])))
    texts = (
        *(value for name, value in line.items() if name.endswith("trust less")),
        notes,
        html_document([record]).replace("&#x27;", "'"),
        " ".join(reading.pdf_text(pdf_document([record])).split()),
    )
    assert len(texts) == 3 + 1 + len(record.exercises)
    assert all(f"picture too coarse: {why}" in text for text in texts)


def test_the_scores_on_the_screen_are_those_of_each_document(desk: DeskWindow) -> None:
    record, scores = record_in(desk), scores_of(desk.session_page.notes.book)
    desk.show_people()
    (row,) = desk.person_page.scores.table.scores.rows
    number = r"(\d+(?:\.\d+)?)"
    (name, least, most) = re.fullmatch(rf"(.+) \({number} to {number}\)", row.cells[0]).groups()  # type: ignore[union-attr]
    months = {"Mar": 3, "Apr": 4}
    seen = []
    for part in row.cells[4].split("; "):
        score, day, month, year = re.fullmatch(rf"{number}, (\d+) (\w+) (\d+)", part).groups()  # type: ignore[union-attr]
        when = date(int(year), months[month], int(day)).isoformat()
        seen.append(("Wren", name, when, float(score), float(least), float(most)))
    assert [(day, score) for _, _, day, score, _, _ in seen] == [
        (day.isoformat(), score) for day, score in TYPED
    ]
    assert from_csv(scores_csv([record], scores)) == seen
    assert from_fhir(fhir_bundle([record], scores)) == seen
    assert from_html(html_document([record], "A4", scores)) == seen
    text = reading.pdf_text(pdf_document([record], "a4", scores))
    told_of = re.findall(rf"(Balance A) Wren (\d{{4}}-\d\d-\d\d) {number} 0 to", text)
    assert [(n, d, float(s)) for n, d, s in told_of] == [(n, d, s) for _, n, d, s, _, _ in seen]


def test_a_changed_figure_is_noticed(desk: DeskWindow) -> None:
    """The comparison can fail: documents of another answer don't read as the screen."""
    page, record = desk.session_page, record_in(desk)
    seen = from_screen(page, record)
    other = record_of(made.without(told(), weekly=WEEK | {"falls": "more"}))
    for kind, (make, read) in KINDS.items():
        there = read(make([other]), other)
        assert {k for k in there if there[k] != seen[k]} == {("session", "falls")}, kind
