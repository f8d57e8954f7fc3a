"""HTML and PDF as pages: grammar, accessibility, nothing clipped, nothing over another."""

from __future__ import annotations

import itertools
import json
import os
import re
from pathlib import Path

import pypdfium2 as pdfium
import pytest

from tests.records import made
from tests.ui import axe
from tests.ui.reading_documents import Word, parsed_html, pdf_text, pdf_words
from tracker.records import terms
from tracker.records.figures import SessionFigures, record_of
from tracker.session.summary_file import Summary
from ui import words
from ui.documents.html import DARK, LIGHT, html_document
from ui.documents.overview import sessions_overview
from ui.documents.page import NOTHING_FIRST, page_of
from ui.documents.pdf import PAPERS, pdf_document
from ui.documents.pdf_layout import Block, Group, paginate


def records(name: str) -> list[SessionFigures]:
    if name == "several":
        return [record_of(m()) for m in (made.finished, made.unseen, made.unwell)]
    return [record_of(made.EXAMPLES[name]())]


#: In CI a browser is brought along; without it these tests fail there.
NEEDS_BROWSER = pytest.mark.skipif(
    axe.browser() is None and not os.environ.get("CI"), reason="no Chromium on this machine"
)
#: Fonts need Qt's application; without this one a PDF would make its own, without a screen.
with_qt = pytest.mark.usefixtures("qapp")
ALL = [*made.EXAMPLES, "several"]


# --- HTML ---


@pytest.mark.parametrize("name", ALL)
def test_the_html_is_well_formed_and_in_order(name: str) -> None:
    html = parsed_html(html_document(records(name)))
    root = html.tree
    assert root.get("lang") == "en" and root.find("head/title").text
    levels = [int(n.tag[1]) for n in root.iter() if re.fullmatch("h[1-6]", str(n.tag))]
    assert levels[0] == 1 and levels.count(1) == 1
    assert all(b - a <= 1 for a, b in itertools.pairwise(levels))
    assert [n for n in root.iter() if n.tag in ("script", "link", "img", "iframe", "object")] == []
    assert not [n for n in root.iter() for a in n.attrib if a.startswith("on") or a == "src"]
    for table in root.iter("table"):
        assert table.find("caption").text
        heads = list(table.find("thead").iter("th"))
        assert heads and all(h.get("scope") == "col" for h in heads)
        for row in table.find("tbody").iter("tr"):
            assert row.find("th").get("scope") == "row"
            cells = list(row.iter("td"))
            assert sum(int(c.get("colspan", 1)) for c in cells) == len(heads) - 1
    for svg in root.iter("svg"):
        assert svg.get("role") == "img" and svg.find("title").text and svg.find("desc").text


def test_charts_say_in_words_what_they_show() -> None:
    html = html_document(records("finished"))
    assert "2 at the start, 4 after exercise 1, 3 after exercise 2, 2 after exercise 3" in html
    assert "44 turns (right and left), from 17.9 to 18.1°, asked 15.0 to 20.0°" in html
    assert html.count("<svg") == 3


def _luminance(colour: str) -> float:
    parts = [int(colour[k : k + 2], 16) / 255 for k in (1, 3, 5)]
    r, g, b = ((v / 12.92) if v <= 0.04045 else ((v + 0.055) / 1.055) ** 2.4 for v in parts)
    return 0.2126 * r + 0.7152 * g + 0.0722 * b


def _contrast(one: str, other: str) -> float:
    dark, light = sorted((_luminance(one), _luminance(other)))
    return (light + 0.05) / (dark + 0.05)


@pytest.mark.parametrize("colours", [LIGHT, DARK])
def test_colours_stand_out(colours: dict[str, str]) -> None:
    """WCAG 2.1: 4.5 for text, 3 for lines that carry meaning."""
    for text in ("ink", "soft", "warn"):
        assert _contrast(colours[text], colours["ground"]) >= 4.5
    assert _contrast(colours["ink"], colours["pale"]) >= 4.5
    assert _contrast(colours["line"], colours["ground"]) >= 3.0


def test_hostile_text_is_shown_and_not_run() -> None:
    text = html_document(records("nasty"))
    assert "<script" not in text and "&lt;script&gt;alert(1)&lt;/script&gt;" in text
    assert "x" * 130 not in text
    for mark in ("\u202e", "\u2066", "\x00", "\ud800"):
        assert mark not in text
    assert "שלום עולם" in text and "🙂" in text


@NEEDS_BROWSER
@pytest.mark.slow
@pytest.mark.parametrize("dark", [False, True])
@pytest.mark.parametrize("name", ["several", "nasty"])
def test_the_html_passes_an_accessibility_checker(name: str, dark: bool, tmp_path: Path) -> None:
    found = axe.check(html_document(records(name)), tmp_path, dark=dark)
    assert found["dark"] is dark
    assert found["violations"] == []
    # The rules that matter here were really run.
    assert {"color-contrast", "heading-order", "svg-img-alt", "html-has-lang"} <= set(
        found["passes"]
    )


@NEEDS_BROWSER
@pytest.mark.slow
def test_the_checker_finds_what_is_wrong(tmp_path: Path) -> None:
    html = html_document(records("unwell")).replace(LIGHT["soft"], "#cccccc")
    html = html.replace("<h3>", "<h5>").replace("</h3>", "</h5>").replace(' lang="en"', "")
    ids = {v["id"] for v in axe.check(html, tmp_path)["violations"]}
    assert {"color-contrast", "heading-order", "html-has-lang"} <= ids


# --- PDF ---


@with_qt
@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("details", [False, True])
@pytest.mark.parametrize("name", ALL)
def test_no_word_is_clipped_or_over_another(name: str, details: bool, paper: str) -> None:
    found = pdf_words(pdf_document(records(name), paper, details=details))
    width, height = PAPERS[paper]
    assert len(found) > 150
    for w in found:
        assert w.left >= 32 and w.right <= width - 32, w
        assert w.bottom >= 34 and w.top <= height - 32, w
    assert [pair for pair in _pairs(found) if _overlap(*pair)] == []


def _pairs(words: list[Word]) -> list[tuple[Word, Word]]:
    """Words of one page whose boxes are near each other in height."""
    ordered = sorted(words, key=lambda w: (w.page, w.bottom))
    out = []
    for k, one in enumerate(ordered):
        for other in itertools.islice(ordered, k + 1, None):
            if other.page != one.page or other.bottom > one.top:
                break
            out.append((one, other))
    return out


def _overlap(a: Word, b: Word) -> bool:
    across = min(a.right, b.right) - max(a.left, b.left)
    up = min(a.top, b.top) - max(a.bottom, b.bottom)
    return across > 0.4 and up > 0.4


def test_the_overlap_check_finds_an_overlap() -> None:
    one = Word(0, "one", 10, 10, 40, 20)
    assert _pairs([one, Word(0, "two", 35, 15, 60, 25)]) and _overlap(
        one, Word(0, "two", 35, 15, 60, 25)
    )
    assert not _overlap(one, Word(0, "three", 41, 10, 60, 20))


@with_qt
@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", ["finished", "unseen", "unwell", "varied", "several"])
def test_all_words_of_the_page_are_in_the_pdf(name: str, paper: str) -> None:
    text = pdf_text(pdf_document(records(name), paper, details=True))
    for record in records(name):
        page = page_of(record)
        facts = (page.ended, *page.facts, *page.setup, *(f for s in page.sections for f in s.facts))
        lines = [page.title, page.when, page.origin, *page.alert, *page.warnings, *page.left_out]
        lines += [f"{f.label}: {f.text}" for f in facts]
        lines += [n for s in page.sections for n in (s.title, s.subtitle, *s.notes)]
        lines += [i.text for c in [page.chart, *(s.chart for s in page.sections)] if c
                  for i in c.items if hasattr(i, "text")]  # fmt: skip
        for line in (*lines, *terms.LIMITS):
            assert " ".join(line.split()) in text


@with_qt
@pytest.mark.parametrize("name", ["unseen", "unwell", "one exercise"])
@pytest.mark.parametrize("paper", PAPERS)
def test_a_short_session_is_one_page_of_the_right_size(name: str, paper: str) -> None:
    # With all its uncertainties, and why some are not known, a second one begins another page.
    some = json.loads(made.finished().model_dump_json())["exercises"][:1]
    short = record_of(made.without(made.finished(), exercises=some))
    document = pdfium.PdfDocument(
        pdf_document([short] if name == "one exercise" else records(name), paper, details=True)
    )
    assert len(document) == 1
    assert document[0].get_size() == pytest.approx(PAPERS[paper], abs=0.6)


@with_qt
def test_each_session_begins_a_page_and_every_page_says_whose_it_is() -> None:
    several = records("several")
    document = pdfium.PdfDocument(pdf_document(several, details=True))
    texts = [" ".join(p.get_textpage().get_text_range().split()) for p in document]
    assert len(texts) == 5 and texts[0].endswith("3 practice sessions Page 1 of 5")
    for k, text in enumerate(texts[1:], 2):
        assert re.search(rf"(Wren|P-07), \d .*2026.* Page {k} of 5$", text)
    starts = [t for t in texts if "Practice session, " in t]
    assert len(starts) == len(several)


@with_qt
def test_charts_are_vectors_and_text_is_text() -> None:
    page = pdfium.PdfDocument(pdf_document(records("finished"), details=True))[0]
    kinds = {o.type for o in page.get_objects()}
    assert pdfium.raw.FPDF_PAGEOBJ_IMAGE not in kinds
    assert {pdfium.raw.FPDF_PAGEOBJ_TEXT, pdfium.raw.FPDF_PAGEOBJ_PATH} <= kinds


# --- pages ---


def _block(height: float, needs: float = 0.0, again: Block | None = None) -> Block:
    return Block(height, lambda _p, _y: None, needs, again)


def test_groups_stay_together_and_long_ones_repeat_their_head() -> None:
    head = _block(10)
    long = Group((head, *(_block(30, again=head) for _ in range(5))))
    sheets = paginate([Group((_block(60),)), Group((_block(50),), gap=5), long], 0, 100)
    assert [[(b.height, y) for b, y in s] for s in sheets] == [
        [(60, 0)],
        [(50, 0), (10, 50), (30, 60)],
        [(10, 0), (30, 10), (30, 40), (30, 70)],
        [(10, 0), (30, 10)],
    ]


def test_a_chart_beside_text_keeps_its_room() -> None:
    beside = Group((_block(10), _block(0, needs=50), _block(5)))
    assert beside.height == 60
    sheets = paginate([Group((_block(60),)), beside, Group((_block(30),))], 0, 100)
    assert [[y for _, y in s] for s in sheets] == [[0], [0, 10, 10, 60]]


# --- what stands where ---


def test_the_overview_says_what_was_done_beside_what_was_asked() -> None:
    glance = page_of(records("finished")[0]).glance
    assert glance is not None
    rows = {r.head: dict(zip(glance.columns, r.cells, strict=True)) for r in glance.rows}
    turns = rows["1. x1 viewing, yaw"]
    assert turns["Done"].text == "22 of 20" and turns["Gaze on target"].text == "95 %"
    assert turns["Amplitude"].text == "right 18.0°, left 18.0°, asked 15.0 to 20.0°"
    assert turns["Noticed"].text == "gaze off target 2"
    assert list(rows.values())[2]["Done"].text == "held 44.0 s of 45.0 s"


def test_the_overview_says_which_side_was_out_of_the_range() -> None:
    data = json.loads(made.finished().model_dump_json())
    sides = data["exercises"][0]["head"]["amplitude_deg"]["by_side"]
    sides["right"]["median"], sides["left"]["median"] = 14.9, 20.1
    glance = page_of(record_of(Summary.model_validate(data))).glance
    assert glance is not None
    wanted = "right 14.9° (below), left 20.1° (above), asked 15.0 to 20.0°"
    assert glance.rows[0].cells[1].text == wanted


def test_nothing_measured_is_said_once_for_a_measure() -> None:
    (section,) = page_of(records("unseen")[0]).sections
    across = {r.head: r.cells[0].text for r in section.tables[0].rows if r.across}
    assert across["Gaze on target (%)"] == "not measured (the line of sight was not measured)"
    assert not [n for n in section.notes if "line of sight" in n]
    assert any("fewer than ten repetitions" in n for n in section.notes)


def test_calm_is_said_only_where_it_was_asked_for() -> None:
    assert page_of(records("finished")[0]).calm == NOTHING_FIRST
    assert page_of(records("unwell")[0]).calm == ""
    unasked = record_of(made.without(made.finished(), gate=None))
    assert page_of(unasked).calm.endswith("The safety questions were not asked.")


def test_several_sessions_stand_in_one_table_first() -> None:
    table = sessions_overview(records("several"))
    rows = [[c.text for c in r.cells] for r in table.rows]
    assert rows[0] == ["Wren", "finished", "3 of 4", "2 of 10", "2 of 10", "2.0 min", "nothing"]
    assert rows[1][-1] == "Nothing was measured in this session"
    assert rows[2][1].startswith("stopped unwell") and "positional spin" in rows[2][-1]
    html = parsed_html(html_document(records("several")))
    assert len(html.tables[table.caption]) == 3
    assert "All sessions" not in html_document(records("unwell"))


def test_every_reason_that_the_patient_is_told_has_the_therapists_words() -> None:
    keys = {k.removeprefix("reason.") for k in words.WORDS if k.startswith("reason.")}
    assert keys - {"other"} <= set(terms.REASONS)
