"""The desk in other languages: no English is left over but what people wrote themselves."""

from __future__ import annotations

import json
import re
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QDate, QPoint
from PySide6.QtWidgets import QApplication, QDateEdit, QScrollArea
from pytestqt.qtbot import QtBot

from tests.practice.person import SEATED, plan_of
from tests.records.rows import START, row
from tests.records.test_folder import write
from tests.ui.marked import shown_texts, unmarked
from tests.ui.painted import painted_by
from tests.ui.test_desk import choose, folder, open_desk, open_last  # noqa: F401 - fixtures
from tests.ui.test_desk_scores import type_in
from tests.ui.test_languages import TRANSLATED
from tracker.handover import container
from tracker.plan.model import Unlock
from tracker.plan.unlocking import SessionFigures, judge_condition
from tracker.records import telling
from tracker.records.adherence import adherence_of
from tracker.records.conditions import Standing
from tracker.records.figure import Figure
from tracker.records.folder import STILL_SHUT
from tracker.records.index import Records, read_folder
from tracker.records.notes import Note
from tracker.records.people import people_of
from tracker.records.units import BEATS, DEGREES
from tracker.session.flags import _NOTES
from tracker.session.summary_file import ENDED
from ui import words
from ui.desk import trade
from ui.desk.notes_panel import note_words
from ui.desk.people_list import lines_of
from ui.desk.small import show_as_day
from ui.desk.trade_words import TRADE

#: People, the plan's own words, and signs of units: nobody translates them.
_OWN = (
    "finch|wren|teal|plover|heron|robin|Eyes stay on the target in three sessions in a row|"
    "turns-together|turns-on-target|mm|cm|min"
)


@pytest.mark.usefixtures("marked")
def test_no_english_is_left_over(open_desk: Any, qtbot: QtBot) -> None:  # noqa: F811
    window = open_desk()
    left, looked = set(), 0
    for name in ("robin", "finch", "wren", "teal", "plover", "heron"):
        choose(window, name)
        texts = [*shown_texts(window), *lines_of(window.person_page.person)]
        tabs, scores = window.person_page.tabs, window.person_page.scores
        tabs.setCurrentWidget(scores)
        for score in ("7", "", "5"):
            type_in(scores, "finch", score, "0", "10")
            texts += [*shown_texts(window), *(c for r in scores.table.scores.rows for c in r.cells)]
        scores.undo.click()
        texts += shown_texts(window)
        tabs.setCurrentIndex(0)
        open_last(window, qtbot, name)
        page = window.session_page
        for k in range(page.lists.count()):
            page.lists.setCurrentIndex(k)
            texts += shown_texts(window)
        window.show_people()
        for text in texts:
            looked += bool(text)
            rest = unmarked(re.sub(rf"\b({_OWN})\b|[\w\u200b]*/[\w/\u200b-]*", "", text))
            if re.search(r"[A-Za-z]{2}", rest):
                left.add(f"{text!r}: {rest}")
    assert looked > 300
    assert not left, "\n".join(left)


def test_sentences_are_put_into_the_language_with_their_numbers(spoken: Any) -> None:
    spoken("de")
    assert trade.shown("practised 2 of 12 bouts in 6 days") == "2 von 12 Übungszeiten in 6 Tagen"
    assert trade.day(date(2026, 10, 3)) == "3. Okt. 2026"
    assert trade.shown("no change of mine") == "no change of mine"
    figure = Figure("tempo_bpm", "left", "movement", "Tempo", 59.64, BEATS, "measured")
    assert trade.line_of(figure) == "Tempo, links: 60 Schläge/min"
    turned = Figure("amplitude_deg", "all", "movement", "Amplitude", 17.62, DEGREES, "measured")
    assert trade.line_of(turned) == "Ausschlag: 17,6°"


@pytest.mark.parametrize(
    ("language", "told"),
    [
        ("en", "In one day: 50 % of bouts asked"),
        ("de", "An einem Tag: 50 % der vorgesehenen Übungszeiten"),
        ("es", "En un día: 50 % de las prácticas pedidas"),
        ("ar", "في يوم واحد: 50 % من التمرينات المطلوبة"),
    ],
)
def test_the_first_day_of_a_plan_is_one_day(spoken: Any, language: str, told: str) -> None:
    """Not "1 days", in the list and in the line above the trends."""
    spoken(language)
    plan = plan_of(SEATED, bouts_a_day=2, days_a_week=7, starts_on=START.isoformat())
    found = adherence_of([row(0)], plan, START)
    assert found.length_days == 1
    records = Records(Path(), [row(0)], [("plan.json", plan)], [], 0, 0, True)
    (person,) = people_of(records, START)
    assert lines_of(replace(person, adherence=found))[1] == told
    assert "{" not in trade.practice(found)
    assert ("one day counted" in trade.practice(found)) == (language == "en")


def test_reasons_of_several_sessions_are_put_into_it_one_by_one(spoken: Any) -> None:
    spoken("de")
    assert trade.shown(
        "Steady (opens turns): not met; "
        "session 1 of the last 2: share on target 85.6 %, asked at least 95 %, "
        "session 2 of the last 2: share on target 90 %, asked at least 95 %"
    ) == (
        "Steady (öffnet turns): nicht erfüllt; "
        "Sitzung 1 der letzten 2: Anteil auf dem Ziel 85,6 %, verlangt mindestens 95 %, "
        "Sitzung 2 der letzten 2: Anteil auf dem Ziel 90 %, verlangt mindestens 95 %"
    )


def test_in_english_nothing_is_touched(spoken: Any) -> None:
    spoken("en")
    for text in ("practised 1200 of 1300 bouts in 6 days", "3 Oct 2026: stopped unwell", ""):
        assert trade.shown(text) == text


def test_words_of_a_plan_are_no_sentences_of_ours(spoken: Any) -> None:
    spoken("de")
    for text in ("from sitting to standing", "walk up to the door", "3 to be safe"):
        assert trade.shown(text) == text


def test_codes_and_what_somebody_wrote_keep_their_numbers(spoken: Any) -> None:
    spoken("de")
    own = ("0042", "call 1200, then 0042", "room 3: 1200", "bed (1200)", "1200, by hand")
    for text in own:
        assert trade.shown(text) == text
    assert trade.shown("1200") == "1.200" and trade.shown("0.5") == "0,5"
    assert trade.shown("1200, 1300") == "1.200, 1.300"
    said = trade.shown("condition met: yes (opens stage 2)")
    assert said.startswith("Bedingung erfüllt: yes (")
    assert trade.shown("not asked: 1200").endswith("1.200")
    assert trade.shown("not asked, ward 7, 1200").endswith(", ward 7, 1200")


@pytest.mark.parametrize("code", TRANSLATED)
def test_every_known_text_is_found_again(spoken: Any, code: str) -> None:
    """A text with fields must not be taken for a shorter one."""
    spoken(code)
    same = ("{low} to {high}", "{number} ± {most}", "error", "no", "tempo")
    for text in TRADE:
        filled = re.sub(r"\{(\w+)\}", "7", text)
        assert trade.shown(filled) != filled or text in same


def test_a_figure_with_its_error_is_written_as_the_language_writes_numbers(spoken: Any) -> None:
    spoken("de")
    assert trade.shown("18.2 ± 0.4°") == "18,2 ± 0,4°"
    assert trade.shown("-0.3 ± 0.1°") == "-0,3 ± 0,1°"
    assert trade.shown("60 ± 1 beats/min").startswith("60 ± 1 ")
    assert "beats" not in trade.shown("60 ± 1 beats/min")


@pytest.mark.usefixtures("marked")
def test_why_a_condition_is_not_met_leaves_no_english() -> None:
    limits = {"rise_most": 0, "settle_minutes_most": 2, "clear": True}
    shares = {"on_target_least": 0.9, "measured_least": 0.855}
    unlock = Unlock(condition="Calm.", after="turns", sessions=1, **limits, **shares)
    bad = SessionFigures(1, 2.004, 0.8997, 0.8549, clear=False, eased=True)
    told = {
        why
        for ended in (*ENDED, "of another version")
        for figures in (replace(bad, ended=ended), SessionFigures(ended=ended))
        for why in judge_condition(unlock, [figures], None).because
    }
    later = Unlock(condition="Calm.", met_on=START + timedelta(days=9))
    told |= set(judge_condition(later, [], START).because)
    # Each kind of end with what it is called, and each limit missed and not known.
    assert len(told) == len(ENDED) - 2 + 1 + 4 + 4 + 2 + 1
    left = {
        text: rest for text in told if re.search("[A-Za-z]", rest := unmarked(trade.shown(text)))
    }
    assert not left


@pytest.mark.usefixtures("marked")
def test_the_figures_that_a_condition_is_met_with_leave_no_english() -> None:
    limits = {"rise_most": 1, "settle_minutes_most": 2, "clear": True}
    shares = {"on_target_least": 0.9, "measured_least": 0.855}
    unlock = Unlock(condition="Calm.", after="turns", sessions=2, **limits, **shares)
    first = SessionFigures(0, 0.5, 0.91, 0.8551, clear=True)
    last = SessionFigures(1, 1.5, 0.9512, 0.9, clear=True)
    found = judge_condition(unlock, [first, last], None)
    assert found.met and len(found.because) == 6
    whole = telling.condition(Standing("Calm.", "stage", found, False), most=None)
    for text in (*found.because, whole.partition("met; ")[2]):
        assert not re.search("[A-Za-z]", unmarked(trade.shown(text))), text


def test_what_limits_figures_is_known() -> None:
    for flag in _NOTES.values():
        assert flag.reason in TRADE.values(), flag.flag


def test_months_are_those_of_the_records() -> None:
    days = [telling.day(date(2026, month, 1)) for month in range(1, 13)]
    assert all(trade._DATED.fullmatch(day) for day in days)


def test_why_a_file_is_left_out_is_said_in_the_language(tmp_path: Path, spoken: Any) -> None:
    kept = write(tmp_path, "s1")
    other = json.loads(kept.read_text("utf-8")) | {"duration_s": 1.0}
    for name, content in (
        ("copy.json", kept.read_bytes()),
        ("other.json", json.dumps(other).encode()),
        ("mail.turnpost", container.MAGIC),
        ("foreign.json", b"{}"),
        ("half.json", b"{"),
    ):
        (tmp_path / name).write_bytes(content)
    (tmp_path / "s2").mkdir()
    (tmp_path / "s2" / "summary.json").write_bytes(b"{")
    unread = read_folder(tmp_path).unread
    assert len(unread) == 6
    for language in TRANSLATED:
        spoken(language)
        assert not [u.why for u in unread if words.told(u.why) == u.why], language
        # Where to go is named as its button has it.
        assert words.say("exchange.open") in words.told(STILL_SHUT), language


def test_the_largest_words_leave_the_trace_its_width(
    open_desk: Any,  # noqa: F811
    qtbot: QtBot,
    spoken: Any,
) -> None:
    # German has the longest buttons; a laptop's window at 200 %.
    spoken("de")
    window = open_desk(percent=200)
    open_last(window, qtbot, "teal")
    page, line = window.session_page, window.session_page.what.fontMetrics().height()
    assert all(a.horizontalScrollBar().maximum() == 0 for a in page.findChildren(QScrollArea))
    trace = page.panes[0].trace
    assert trace.width() > 0.9 * window.width() and trace.height() > 10 * line
    page.beside.setCurrentIndex(1)
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    QApplication.processEvents()
    for pane in page.panes:
        assert pane.trace.width() > 0.9 * window.width()
        # More than the line of 0 has its figure.
        lower = [r for r in painted_by(pane.trace).runs if r.box.right() < pane.trace._box.left()]
        assert len({r.text for r in lower}) >= 3, lower
    window.resize(1920, 1080)
    window.appearance.set_text(100)
    QApplication.processEvents()
    assert page.what.mapTo(page, QPoint()).x() > page.panes[0].mapTo(page, QPoint()).x()


def test_a_session_is_named_and_timed_in_the_order_of_arabic(
    open_desk: Any,  # noqa: F811
    qtbot: QtBot,
    spoken: Any,
) -> None:
    spoken("ar")
    window = open_desk()
    open_last(window, qtbot, "teal")
    page = window.session_page
    # A label goes by its first letter that is not set apart: Latin ones turned the whole line.
    assert page.title.text().startswith("\u2066teal\u2069")
    at = painted_by(page.panes[0].trace).runs
    seconds = [r.text for r in at if r.box.top() > page.panes[0].trace._box.bottom()]
    assert seconds and not [t for t in seconds if "s" in t], seconds


@pytest.mark.parametrize("kind", ["note", "not_valid"])
def test_what_a_therapist_wrote_turns_no_line_of_arabic(spoken: Any, kind: Any) -> None:
    """Name, day and words keep their own order; set apart they don't set that of the line."""
    spoken("ar")
    told = note_words(
        Note("1", "kim", "2026-09-24T10:00:00", kind, "s", "Seen in the clinic", 0, 3)
    )
    assert "\u2066kim\u2069" in told and "\u2066Seen in the clinic\u2069" in told
    around = re.sub("\u2066[^\u2069]*\u2069", "", told)
    assert not re.search("[A-Za-z]", around), around


def test_a_day_in_a_field_is_written_as_it_is_everywhere_else(qtbot: QtBot, spoken: Any) -> None:
    # Qt turned day and year in Arabic, and German had no stop after the day.
    for code in TRANSLATED:
        spoken(code)
        edit = QDateEdit(QDate(2026, 9, 24))
        qtbot.addWidget(edit)
        show_as_day(edit)
        assert edit.text() == trade.day(date(2026, 9, 24)), code
