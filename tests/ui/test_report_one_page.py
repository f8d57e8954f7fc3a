"""The one page to file: a session of a usual length on one page, in letters that can be read."""

from __future__ import annotations

import json
from datetime import date
from typing import Any

import pypdfium2 as pdfium
import pytest

from tests.records import made
from tests.ui import reading_documents as reading
from tests.ui.reading_documents import pdf_text, pdf_words
from tests.ui.test_report_page import _overlap, _pairs
from tracker.records.figures import SessionFigures, record_of
from tracker.records.questionnaires import Score
from ui.documents.html import html_document
from ui.documents.page import page_of
from ui.documents.pdf import PAPERS, pdf_document

#: Fonts need Qt's application.
pytestmark = pytest.mark.usefixtures("qapp")
#: Smallest letters of print that is to be read by everybody (common practice).
LEAST_POINTS = 9.0


def _exercises() -> list[dict[str, Any]]:
    found = [*made.finished().exercises, *made.varied().exercises, *made.hands().exercises[1:]]
    return [json.loads(e.model_dump_json()) for e in found]


def of_length(count: int, **changes: Any) -> SessionFigures:
    """A session of so many exercises, each another one while there are enough."""
    known = _exercises()
    chosen = [known[k % len(known)] | {"entry_id": f"e{k}"} for k in range(count)]
    return record_of(made.without(made.finished(), exercises=chosen, **changes))


def sizes(data: bytes) -> set[float]:
    """Heights of all letters as they stand on paper, in points."""
    found = set()
    for page in pdfium.PdfDocument(data):
        text = page.get_textpage()
        for k in range(text.count_chars()):
            if not chr(pdfium.raw.FPDFText_GetUnicode(text, k)).isspace():
                matrix = pdfium.raw.FS_MATRIX()
                assert pdfium.raw.FPDFText_GetMatrix(text, k, matrix)
                found.add(round(abs(pdfium.raw.FPDFText_GetFontSize(text, k) * matrix.d), 1))
    return found


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("count", [1, 2, 6, 8, 11])
def test_a_usual_session_is_one_page_that_can_be_read(count: int, paper: str) -> None:
    """Six to eight exercises are usual; nothing is clipped, nothing lies over another."""
    record = of_length(count)
    data = pdf_document([record], paper)
    assert len(pdfium.PdfDocument(data)) == 1
    assert min(sizes(data)) >= LEAST_POINTS
    found, (width, height) = pdf_words(data), PAPERS[paper]
    assert len(found) > 100
    assert all(w.left >= 32 and w.right <= width - 32 for w in found)
    assert all(w.bottom >= 34 and w.top <= height - 32 for w in found)
    assert [pair for pair in _pairs(found) if _overlap(*pair)] == []


def test_the_sizes_are_those_on_paper() -> None:
    """The measuring can fail: the pages with all figures are set in smaller letters."""
    assert min(sizes(pdf_document([of_length(4)], details=True))) < LEAST_POINTS


@pytest.mark.parametrize("count", [1, 8])
def test_what_stands_on_it_is_what_the_html_has(count: int) -> None:
    record = of_length(count)
    text = pdf_text(pdf_document([record]))
    page = page_of(record)
    assert page.glance is not None and len(page.glance.rows) == count
    html = reading.parsed_html(html_document([record]))
    (table,) = (t for name, t in html.tables.items() if name == page.glance.caption)
    for row in page.glance.rows:
        cells = list(table[row.head].values())
        assert " ".join(" ".join([row.head, *cells]).split()) in text
    for fact in (page.ended, *page.facts):
        assert html.facts["session"][fact.label] == fact.text
        assert f"{fact.label}: {fact.text}" in text
    for line in (*page.warnings, *page.limits, *page.left_out):
        assert line in text
    # What is not here is said, with where it is.
    assert "Not on this page: the figures and turns of each exercise. The HTML report" in text


def test_what_finds_no_room_is_left_out_in_order_and_said() -> None:
    """Many exercises with doubts: set-up and chart go first, then the rest; no word is cut."""
    doubts = [{"flag": f, "reason": "as it was made for this test"} for f in ("dark", "no_setup")]
    known = [e | {"quality": doubts} for e in _exercises()]
    record = record_of(made.without(made.finished(), exercises=known))
    data = pdf_document([record])
    text = pdf_text(data)
    assert len(pdfium.PdfDocument(data)) == 1 and min(sizes(data)) >= LEAST_POINTS
    (told,) = text.split("Not on this page: ")[1:]
    assert told.index("the set-up") < told.index("the chart of symptoms")
    assert "Camera's vertical field of view" not in text and "Read first" not in text
    assert "further remarks on what to trust less" in told and "more Records" not in text
    html = html_document([record])
    assert "Camera&#x27;s vertical field of view" in html and html.count("as it was made") >= 28


def test_of_a_session_beyond_every_length_the_page_names_how_much_is_missing() -> None:
    record = of_length(40)
    data = pdf_document([record])
    text = pdf_text(data)
    assert len(pdfium.PdfDocument(data)) == 1
    (told,) = text.split("Not on this page: ")[1:]
    missing = int(told.split(" more exercises")[0].split()[-1])
    shown = sum(f" {k}. " in text for k in range(1, 41))
    assert 5 < shown == 40 - missing


def test_questionnaires_stand_on_it() -> None:
    about = ("a", "kim", "2026-03-01T10:00:00+01:00", "Wren", "Balance A", date(2026, 3, 1))
    text = pdf_text(pdf_document([of_length(6)], "a4", [Score(*about, 41.0, 0.0, 100.0)]))
    assert "Balance A" in text and "41" in text
