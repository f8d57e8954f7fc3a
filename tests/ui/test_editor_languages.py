"""The plan editor and the patient's sheet in every language: nothing is cut."""

from __future__ import annotations

import re
from collections import Counter
from datetime import date
from itertools import product
from pathlib import Path
from typing import Any

import pypdfium2
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QTextLayout, QTextOption
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.ui.editing import OpenEditor
from tests.ui.painted import painted_by
from tests.ui.test_desk import look
from tests.ui.test_every_page import editor_pages
from tests.ui.test_languages import TRANSLATED
from tracker.plan.files import save_plan
from tracker.plan.findings import Finding
from tracker.plan.starter import SEATED_ID, seated_starter, starter_plan
from tracker.practice.tasks import Over
from ui import words
from ui.cards import card_of
from ui.documents.sheet import sheet_of
from ui.documents.sheet_html import sheet_html
from ui.documents.sheet_pdf import sheet_pdf
from ui.editor.inputs import Tick
from ui.editor.telling import told

DAY = date(2026, 11, 20)


@pytest.mark.slow
@pytest.mark.parametrize(("code", "percent"), list(product(TRANSLATED, (100, 200))))
def test_nothing_of_the_editor_is_cut(
    open_editor: OpenEditor,
    spoken: Any,
    code: str,
    percent: int,
) -> None:
    spoken(code)
    window = open_editor(percent=percent)
    faults = []
    for name in editor_pages(window):
        slug = re.sub(r"[^a-z0-9]", "", name)
        faults += [f"{name}: {fault}" for fault in look(window, f"{code}-editor-{slug}-{percent}")]
        for button in window.editing.entry_buttons.values():
            foot = button.mapTo(window, button.rect().bottomLeft()).y()
            # While something is asked, above all of it, there is no room for the last ones.
            if button.isVisible() and not window.bar.isVisible() and foot >= window.height():
                faults.append(f"{name}: button {button.text()!r} reaches below the window")
    assert not faults


def test_a_tick_stands_in_front_of_its_words_in_arabic_too(qtbot: QtBot, spoken: Any) -> None:
    for code, in_front in (("de", True), ("ar", False)):
        spoken(code)
        tick = Tick(words.say("exchange.keep"))
        qtbot.addWidget(tick)
        # Wider than its words, as in a form.
        tick.resize(2 * tick.sizeHint().width(), tick.sizeHint().height())
        painted = painted_by(tick)
        text = painted.runs[0].box
        box = next(s.box for s in painted.shapes if s.fill is not None)
        assert (box.right() < text.left()) is in_front, code
        assert (box.left() > text.right()) is not in_front, code
        gap = text.left() - box.right() if in_front else box.left() - text.right()
        assert 0 < gap < tick.fontMetrics().height(), code


@pytest.mark.parametrize("code", TRANSLATED)
def test_the_buttons_below_a_long_plan_stay_in_a_laptops_window(
    open_editor: OpenEditor, spoken: Any, tmp_path: Path, code: str
) -> None:
    """Its file, its notes and the minutes of the guideline need a second line above."""
    spoken(code)
    path = tmp_path / "plan.json"
    save_plan(path, starter_plan())
    window = open_editor(path, percent=200, size=(1366, 768))
    for _ in range(5):
        QApplication.processEvents()
    for name, button in window.editing.entry_buttons.items():
        foot = button.mapTo(window, QPoint(0, button.height())).y()
        assert foot <= window.height(), name


# --- the patient's sheet ---


@pytest.mark.parametrize("code", TRANSLATED)
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_the_sheet_is_in_the_language_and_reads_its_way(
    spoken: Any,
    code: str,
    paper: str,
) -> None:
    spoken(code)
    sheet = sheet_of(seated_starter(), DAY)
    page = sheet_html(sheet, paper)
    assert f'lang="{code}" dir="{"rtl" if code == "ar" else "ltr"}"' in page
    shown = re.sub(r"<[^>]*>", " ", page[page.index("<main>") :])
    assert words.say("how.near-far.paper") in shown and words.say("gate.chest_pain") in shown
    if code == "ar":
        # The plan's ID stays as it is.
        assert not re.search(r"[A-Za-z]{3}", shown.replace(SEATED_ID, ""))
    file = pypdfium2.PdfDocument(sheet_pdf(sheet, paper))
    try:
        text = file[0].get_textpage()
        ends = [text.get_rect(k) for k in range(text.count_rects())]
    finally:
        file.close()
    # Most lines begin at the same edge.
    lefts = Counter(round(left / 3) for left, _, _, _ in ends)
    rights = Counter(round(right / 3) for _, _, right, _ in ends)
    at_right = max(rights.values()) > max(lefts.values())
    assert at_right == (code == "ar")


def places_of(part: str, text: str) -> list[float]:
    """Where the signs of a part stand on a line that is read from the right."""
    layout = QTextLayout(text)
    option = QTextOption()
    option.setTextDirection(Qt.LayoutDirection.RightToLeft)
    layout.setTextOption(option)
    layout.beginLayout()
    line = layout.createLine()
    line.setLineWidth(10_000)
    layout.endLayout()
    start = text.index(part)
    # Before its first sign the cursor has two places; PySide gives each with an index.
    return [line.cursorToX(start + k)[0] for k in range(1, len(part))]


def test_a_telephone_number_keeps_its_order_among_arabic_words(spoken: Any) -> None:
    spoken("ar")
    number = "+44 20 7946 0018"
    plan = seated_starter().model_copy(update={"emergency_number": number})
    over = Over(ended="red_flag", because=("chest_pain",))
    for text in (sheet_of(plan, DAY).emergency.title, card_of(over, plan).title):
        places = places_of(number, text)
        assert places == sorted(places), text
    page = pypdfium2.PdfDocument(sheet_pdf(sheet_of(plan, DAY)))[0].get_textpage()
    found = [page.search(group).get_next() for group in ("44", "7946", "0018")]
    lefts = [page.get_charbox(at[0])[0] for at in found if at is not None]
    assert len(lefts) == 3 and lefts == sorted(lefts)


@pytest.mark.parametrize(
    ("finding", "part"),
    [
        (Finding.of(("starts_on",), "date_parsing"), "2026-01-31"),
        (Finding.of(("starts_on",), "date_from_datetime_parsing"), "2026-01-31"),
        (Finding.of(("starts_on",), "date_type"), "2026-01-31"),
        (Finding.of(("stages", 0), "empty_stage", name="2-on-foot"), "2-on-foot"),
    ],
)
def test_days_and_names_in_findings_keep_their_order_among_arabic_words(
    spoken: Any, finding: Finding, part: str
) -> None:
    spoken("ar")
    text = told(finding)
    places = places_of(part, text)
    assert places == sorted(places), text
