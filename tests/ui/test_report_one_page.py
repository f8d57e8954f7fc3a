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
from tracker.records import terms
from tracker.records.figures import SessionFigures, record_of
from tracker.records.questionnaires import Score
from ui.documents.html import html_document
from ui.documents.page import NOTHING_FIRST, page_of
from ui.documents.pdf import PAPERS, pdf_document
from ui.documents.pdf_page import FEW, LEFT_OUT
from ui.documents.pdf_text import LEAST_TIGHT

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
@pytest.mark.parametrize("count", [1, 2, 6, 8, 9])
def test_a_usual_session_is_one_page_that_can_be_read(count: int, paper: str) -> None:
    """Six to eight exercises are usual; nothing is clipped, nothing lies over another."""
    record = of_length(count)
    data = pdf_document([record], paper)
    assert len(pdfium.PdfDocument(data)) == 1
    can_be_read(data, paper)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("count", [11, 12])
def test_twelve_exercises_are_one_page_with_a_tighter_table(count: int, paper: str) -> None:
    """Nothing is smaller than 8 pt, and only the table is below 9; every exercise is there."""
    record = of_length(count)
    data = pdf_document([record], paper)
    assert len(pdfium.PdfDocument(data)) == 1
    can_be_read(data, paper, LEAST_TIGHT)
    assert sizes(data) == {LEAST_TIGHT, *sizes(pdf_document([of_length(2)], paper))}
    # What there is no room for then is named, and nothing else is missing.
    (told,) = " ".join(pdf_text(data).split()).split("Not on this page: ")[1:]
    assert "the set-up" in told
    for words in set(LEFT_OUT.values()) - {LEFT_OUT["setup"], LEFT_OUT["chart"]}:
        assert words not in told
    page, text = page_of(record), "".join(pdf_text(data).split())
    assert page.glance is not None and len(page.glance.rows) == count
    for row in page.glance.rows:
        for cell in (row.head, *(c.text for c in row.cells[:6])):
            assert "".join(cell.split()) in text


def can_be_read(data: bytes, paper: str, least: float = LEAST_POINTS) -> None:
    assert min(sizes(data)) >= least
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
    assert "Not on this page: the figures and turns of each exercise. A report with all" in text


def test_what_finds_no_room_is_left_out_in_order_and_said() -> None:
    """Exercises with many doubts: set-up and chart go first, then the rest; no word is cut."""
    doubts = [{"flag": f, "reason": "as it was made for this test"} for f in ("dark", "no_setup")]
    known = [e | {"quality": doubts} for e in _exercises()[:8]]
    record = record_of(made.without(made.finished(), exercises=known))
    data = pdf_document([record])
    text = pdf_text(data)
    assert len(pdfium.PdfDocument(data)) == 1 and min(sizes(data)) >= LEAST_POINTS
    (told,) = text.split("Not on this page: ")[1:]
    assert told.index("the set-up") < told.index("the chart of symptoms")
    assert "A report with all figures has them" in told
    assert "Camera's vertical field of view" not in text and "Read first" not in text
    assert "further remarks on what to trust less" in told
    # Of the remarks those of the most weight stay, though the others came first.
    kept = text.split("What to trust less")[1].split("The exercises")[0]
    assert kept.count("no set-up: as it was made") == FEW and "dark" not in kept
    html = html_document([record])
    assert "Camera&#x27;s vertical field of view" in html and html.count("as it was made") >= 16


#: Why something was not begun, and the words for it.
WHY = {"high_start": "score too high at the start", "session_ended": "session ended before it"}


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("count", [9, 11, 12, 16, 40])
def test_of_a_long_session_no_exercise_and_no_reason_is_lost(count: int, paper: str) -> None:
    """The last exercise is where a session was broken off; what did not begin says why."""
    nods = {"exercise": "nods", "entry_id": "x"}
    left = [
        nods | {"entry_id": f"x{k}", "reasons": [why]} for k, why in enumerate(WHY) for _ in "ab"
    ]
    record = of_length(count, not_done=left, ended="stopped")
    data = pdf_document([record], paper)
    text = pdf_text(data)
    page = page_of(record)
    assert page.glance is not None and len(page.glance.rows) == count
    for row in page.glance.rows:
        # A line may end at a hyphen.
        assert "".join(row.head.split()) in "".join(text.split())
    assert "Not begun" in text and all(words in text for words in WHY.values())
    assert len(pdfium.PdfDocument(data)) in {16: (2,), 40: (4,)}.get(count, (1, 2))
    can_be_read(data, paper, LEAST_TIGHT if 9 < count < 16 else LEAST_POINTS)


# --- what is noticed ---


def with_events(**counts: int) -> SessionFigures:
    """A session whose second exercise has events, so many of each code."""
    exercises = [json.loads(e.model_dump_json()) for e in made.finished().exercises]
    exercises[1]["events"] = [
        {"code": code, "start_s": 1.0, "end_s": 2.0, "said_at_s": None}
        for code, n in counts.items()
        for _ in range(n)
    ]
    return record_of(made.without(made.finished(), exercises=exercises))


def test_the_grave_is_named_before_the_frequent() -> None:
    counts = {"too_slow": 9, "too_small": 8, "eyes_opened": 1, "left_picture": 1}
    record = with_events(**counts, possible_fall=1, steadied=2)
    page = page_of(record)
    assert page.glance is not None and page.glance_short is not None
    grave = "possible fall 1; held on 2; left the picture 1; eyes opened 1"
    whole, short = (t.rows[1].cells[-1].text for t in (page.glance, page.glance_short))
    assert whole == f"{grave}; slower than the beat 9; amplitude too small 8"
    assert short == f"{grave}; 2 more kinds"
    # What there is room for is named whole on the page.
    text = pdf_text(pdf_document([record]))
    assert all(f"{what} {n}" in text for what, n in (("too small", 8), ("eyes opened", 1)))
    less = with_events(too_slow=9, too_small=8, too_fast=7)
    glance = page_of(less).glance_short
    assert glance is not None
    assert glance.rows[1].cells[-1].text.endswith("amplitude too small 8; 1 more kinds")


@pytest.mark.parametrize("code", terms.EVENTS_FIRST)
def test_what_is_grave_is_to_be_looked_at_first(code: str) -> None:
    assert page_of(with_events(too_slow=9)).calm == NOTHING_FIRST
    record = with_events(too_slow=9, **{code: 2})
    (line,) = record.alert
    assert terms.EVENTS[code] in line.lower() and ": 2" in line
    assert page_of(record).calm == "" and line in pdf_text(pdf_document([record]))


def test_questionnaires_stand_on_it() -> None:
    about = ("a", "kim", "2026-03-01T10:00:00+01:00", "Wren", "Balance A", date(2026, 3, 1))
    text = pdf_text(pdf_document([of_length(6)], "a4", [Score(*about, 41.0, 0.0, 100.0)]))
    assert "Balance A" in text and "41" in text
