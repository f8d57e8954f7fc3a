"""Documents from the desk: of one person's sessions, and of one session."""

from __future__ import annotations

import csv
import io
import json
import re
import threading
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog
from pytestqt.qtbot import QtBot

from tests.handover.made import PERSON, everything, write_session
from tests.ui.reading_documents import pdf_text
from tests.ui.test_desk import look
from tests.ui.test_exchange import by_keys
from tracker.records.notes import NoteBook
from tracker.records.questionnaires import add_score
from ui import theme, words
from ui.desk.report_button import KINDS, Reporting
from ui.desk.window import DeskWindow
from ui.settings import Settings

Open = Callable[..., DeskWindow]


@pytest.fixture
def clinic(tmp_path: Path) -> Path:
    folder = tmp_path / "clinic"
    for number, day in enumerate(("2026-11-20", "2026-11-21")):
        write_session(folder, day, number)
    return folder


@pytest.fixture
def desk(qtbot: QtBot, clinic: Path, tmp_path: Path) -> Iterator[Open]:
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    made: list[DeskWindow] = []

    def build(percent: int = 100) -> DeskWindow:
        theme.apply(app, "light")
        settings = Settings(tmp_path / "window.ini")
        settings.text_percent = percent
        window = DeskWindow(clinic, settings)
        window.resize(1366, 768)
        qtbot.addWidget(window)
        made.append(window)
        with qtbot.waitActive(window):
            window.show()
            window.activateWindow()
        qtbot.waitUntil(lambda: window.found is not None, timeout=60_000)
        QTest.keyClick(window.people, Qt.Key.Key_Home)
        return window

    yield build
    for window in made:
        window.close()


def done(report: Reporting, qtbot: QtBot) -> str:
    qtbot.waitUntil(lambda: report._job is None, timeout=30_000)
    QApplication.processEvents()
    return report.said.text().replace("\u200b", "")


def test_a_persons_report_by_keys(
    desk: Open, qtbot: QtBot, tmp_path: Path, clinic: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = everything(clinic)
    offered: list[str] = []

    def choose(_parent: object, _title: str, _start: str, kinds: str) -> tuple[str, str]:
        offered.extend(kinds.split(";;"))
        return str(tmp_path / "report"), offered[0]

    monkeypatch.setattr(QFileDialog, "getSaveFileName", choose)
    window = desk()
    by_keys(window, words.say("report.make"))
    said = done(window.person_page.report, qtbot)
    assert "of 2 sessions" in said and "report.pdf" in said
    assert len(offered) == len(KINDS)
    text = pdf_text((tmp_path / "report.pdf").read_bytes())
    assert PERSON in text
    assert everything(clinic) == before
    assert window.person_page.report.button.isEnabled()


@pytest.mark.parametrize("kind", sorted(KINDS))
def test_every_kind(desk: Open, qtbot: QtBot, tmp_path: Path, clinic: Path, kind: str) -> None:
    book = NoteBook(clinic, "kim")
    for score in (5, 6, 7):
        add_score(book, PERSON, "A", date(2026, 11, score), score, (0, 10))
    window = desk()
    report = window.person_page.report
    path = tmp_path / f"r{KINDS[kind]}"
    report.make(kind, path)
    assert "of 2 sessions" in done(report, qtbot)
    content = path.read_bytes()
    if kind in ("pdf", "pdf_details"):
        assert content.startswith(b"%PDF-")
    elif kind == "html":
        assert b"<html" in content.lower() and PERSON.encode() in content
    elif kind == "fhir":
        assert json.loads(content)["resourceType"] == "Bundle"
    else:
        rows = list(csv.reader(io.StringIO(content.decode("utf-8-sig"))))
        # A head, and a row for each of two sessions, three scores, or some repetitions.
        known = {"csv": 3, "scores_csv": 4}
        assert len(rows) == known[kind] if kind in known else len(rows) > 3


def test_marks_of_the_desk_are_in_its_documents(
    desk: Open, qtbot: QtBot, tmp_path: Path, clinic: Path
) -> None:
    window = desk()
    person = window.person_page.person
    assert person is not None
    session = person.rows[0]
    assert session.session_id is not None
    NoteBook(clinic, "kim").add("not_valid", session.session_id, set_number=0, repetition=2)
    window.open_session(session.place)
    qtbot.waitUntil(lambda: not window.session_page.busy, timeout=30_000)
    for page, name in ((window.person_page, "person.csv"), (window.session_page, "session.csv")):
        page.report.make("repetitions_csv", tmp_path / name)
        assert "No report" not in done(page.report, qtbot)
        rows = csv.DictReader(io.StringIO((tmp_path / name).read_text(encoding="utf-8-sig")))
        told = [(r["session"], r["repetition"]) for r in rows if r["marked not valid"]]
        assert told == [(session.session_id, "2")]


def test_of_one_session_alone(desk: Open, qtbot: QtBot, tmp_path: Path) -> None:
    window = desk()
    person = window.person_page.person
    assert person is not None
    window.open_session(person.rows[0].place)
    qtbot.waitUntil(lambda: not window.session_page.busy, timeout=30_000)
    report = window.session_page.report
    report.make("", tmp_path / "one.csv")
    assert "of 1 sessions" in done(report, qtbot)
    assert len((tmp_path / "one.csv").read_text(encoding="utf-8-sig").splitlines()) == 2
    # Another session begins with nothing said.
    window.open_session(person.rows[1].place)
    assert not report.said.isVisible()


def test_the_ending_overrules_the_kind_that_was_chosen(
    desk: Open, qtbot: QtBot, tmp_path: Path
) -> None:
    window = desk()
    report = window.person_page.report
    report.make("pdf", tmp_path / "r.html")
    done(report, qtbot)
    assert b"<html" in (tmp_path / "r.html").read_bytes().lower()
    report.make("repetitions_csv", tmp_path / "r.csv")
    done(report, qtbot)
    assert len((tmp_path / "r.csv").read_text(encoding="utf-8-sig").splitlines()) > 3


def test_tables_go_by_the_systems_decimal_sign(desk: Open, qtbot: QtBot, tmp_path: Path) -> None:
    window = desk()
    report = window.person_page.report
    assert report.comma == (QLocale.system().decimalPoint() == ",")
    for comma, cells, number in ((False, ",", r",\d+\.\d,"), (True, ";", r";\d+,\d;")):
        report.comma = comma
        report.make("csv", tmp_path / f"{comma}.csv")
        assert "of 2 sessions" in done(report, qtbot)
        text = (tmp_path / f"{comma}.csv").read_text(encoding="utf-8-sig")
        assert text.startswith(f"person{cells}session{cells}") and re.search(number, text)


def test_what_can_not_be_made_is_said_and_harms_nothing(
    desk: Open, qtbot: QtBot, tmp_path: Path, clinic: Path
) -> None:
    window = desk()
    report = window.person_page.report
    before = everything(clinic)
    report.make("pdf", tmp_path / "no" / "folder.pdf")
    assert "there is no folder" in done(report, qtbot)
    own = next(clinic.rglob("summary.json"))
    report.make("fhir", own)
    assert "what was measured or written" in done(report, qtbot)
    assert everything(clinic) == before
    own.write_text("{")
    report.make("pdf", tmp_path / "r.pdf")
    assert "No report" in done(report, qtbot) and not (tmp_path / "r.pdf").exists()


def test_no_file_is_written_over_unasked(
    desk: Open, qtbot: QtBot, tmp_path: Path, clinic: Path
) -> None:
    window = desk()
    report = window.person_page.report
    (tmp_path / "r.pdf").write_bytes(b"another report")
    report.make("pdf", tmp_path / "r")
    assert "is there already" in done(report, qtbot)
    assert (tmp_path / "r.pdf").read_bytes() == b"another report"
    # About this one the dialog has asked.
    report.make("pdf", tmp_path / "r.pdf")
    assert "of 2 sessions" in done(report, qtbot)
    before = everything(clinic)
    folder = next(clinic.rglob("trace.csv")).parent
    for kind, name in (("csv", "trace.csv"), ("fhir", "stage.json"), ("fhir", "Stage.json")):
        report.make(kind, folder / name)
        assert "what was measured or written" in done(report, qtbot)
    assert everything(clinic) == before


def test_making_it_does_not_hold_the_window_up(
    desk: Open, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    threads: list[threading.Thread] = []

    def slow(kind: str, paper: str, *, comma: bool) -> Callable[..., bytes]:
        def make(records: object, scores: object, courses: object) -> bytes:
            threads.append(threading.current_thread())
            raise ValueError("a fault of our own")

        return make

    monkeypatch.setattr("ui.desk.report_button.maker", slow)
    window = desk()
    report = window.person_page.report
    report.make("pdf", tmp_path / "r.pdf")
    assert "a fault of our own" in done(report, qtbot)
    assert threads and threads[0] is not threading.main_thread()
    assert report.button.isEnabled() and not (tmp_path / "r.pdf").exists()


def test_a_session_that_broke_off_is_left_out_and_said(
    qtbot: QtBot, clinic: Path, tmp_path: Path
) -> None:
    whole = sorted(clinic.rglob("summary.json"))
    broken = clinic / "x" / "journal.jsonl"
    report = Reporting(None, lambda: [*whole, broken])  # type: ignore[arg-type]
    qtbot.addWidget(report.button)
    qtbot.addWidget(report.said)
    report.make("csv", tmp_path / "r.csv")
    qtbot.waitUntil(lambda: report._job is not None and report._job.done, timeout=30_000)
    report.poll()
    assert "of 2 sessions" in report.said.text() and "not saved: 1" in report.said.text()
    report = Reporting(None, lambda: [broken])  # type: ignore[arg-type]
    qtbot.addWidget(report.button)
    qtbot.addWidget(report.said)
    report.make("csv", tmp_path / "none.csv")
    assert "no session is shown" in report.said.text() and not (tmp_path / "none.csv").exists()


@pytest.mark.parametrize("percent", [100, 200])
def test_nothing_is_cut(desk: Open, qtbot: QtBot, tmp_path: Path, percent: int) -> None:
    window = desk(percent)
    window.person_page.report.make("csv", tmp_path / "r.csv")
    done(window.person_page.report, qtbot)
    faults = look(window, f"report-{percent}")
    person = window.person_page.person
    assert person is not None
    window.open_session(person.rows[0].place)
    qtbot.waitUntil(lambda: not window.session_page.busy, timeout=30_000)
    window.session_page.report.make("csv", tmp_path / "s.csv")
    done(window.session_page.report, qtbot)
    faults += look(window, f"report-session-{percent}")
    assert not faults
