"""The therapist's desk: people in their order, one of them, a session, by mouse and by key."""

from __future__ import annotations

import itertools
import re
import shutil
import threading
import time
from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QDate, QPoint, Qt, QTimer
from PySide6.QtGui import QPalette
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QComboBox, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from tests.records.clinic import FIRST_DAY, LAST_DAY, TODAY
from tests.records.test_folder import write
from tests.ui.legible import short_of_room
from tests.ui.pictures import keep
from tracker.handover.container import MAGIC
from tracker.records import telling
from tracker.records.figure import shown_with_unit
from tracker.records.figures import record_of
from tracker.records.index import Records, read_folder
from tracker.records.notes import FOLDER_NAME, Note, NoteBook
from tracker.session.summary_file import load_summary
from ui import theme
from ui.cli import main
from ui.desk import reading
from ui.desk import window as desk_window
from ui.desk.notes_panel import note_words
from ui.desk.people_list import lines_of
from ui.desk.trend_table import Heading, TrendRow
from ui.desk.window import DeskWindow
from ui.settings import Settings
from ui.widgets.basic import Button, Words

pytestmark = pytest.mark.timeout(300)

Open = Callable[..., DeskWindow]


@pytest.fixture
def folder(tmp_path: Path, small_clinic: Path) -> Path:
    """The small clinic, to write the first notes into."""
    without = shutil.ignore_patterns(FOLDER_NAME)
    return Path(shutil.copytree(small_clinic, tmp_path / "clinic", ignore=without))


@pytest.fixture
def open_desk(qtbot: QtBot, folder: Path, tmp_path: Path) -> Iterator[Open]:
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    made: list[DeskWindow] = []

    def build(
        where: Path = folder,
        *,
        percent: int = 100,
        size: tuple[int, int] = (1366, 768),
        wait: bool = True,
    ) -> DeskWindow:
        theme.apply(app, "light")
        settings = Settings(tmp_path / "window.ini")
        settings.text_percent = percent
        window = DeskWindow(where, settings, TODAY)
        window.resize(*size)
        qtbot.addWidget(window)
        made.append(window)
        with qtbot.waitActive(window):
            window.show()
            window.activateWindow()
        if wait:
            qtbot.waitUntil(lambda: window.found is not None, timeout=60_000)
        return window

    yield build
    for window in made:
        window.leaving.drop()


def choose(window: DeskWindow, name: str) -> None:
    names = [p.name for p in window.people.people.people]
    window.people.setCurrentIndex(window.people.people.index(names.index(name)))
    QApplication.processEvents()


def open_last(window: DeskWindow, qtbot: QtBot, name: str) -> None:
    choose(window, name)
    person = window.person_page.person
    assert person is not None
    window.open_session(person.rows[-1].place)
    qtbot.waitUntil(lambda: not window.session_page.busy, timeout=30_000)
    QApplication.processEvents()


def shown_words(widget: QWidget) -> str:
    return "\n".join(w.text() for w in widget.findChildren(Words) if w.isVisible())


def trend(window: DeskWindow, figure: str) -> TrendRow:
    rows = window.person_page.trends.trends.rows
    return next(r for r in rows if isinstance(r, TrendRow) and telling.figure(r.series) == figure)


def test_people_stand_in_the_order_of_need_and_say_why(open_desk: Open) -> None:
    window = open_desk()
    model = window.people.people
    told = [
        str(model.index(k).data(Qt.ItemDataRole.AccessibleTextRole))
        for k in range(model.rowCount())
    ]
    assert [t.split(".")[0] for t in told] == ["robin", "finch", "wren", "teal", "plover", "heron"]
    assert "Urgent: told of falls in the last week: one fall, not hurt" in told[0]
    # Beside it what else comes first, by name and not as a number of others.
    assert "Urgent: stopped unwell; answered yes: " in told[1] and "positional spin" in told[1]
    # The share is of many days, so it doesn't stand in one line with the last of them.
    practice, last = lines_of(model.people[2])[1:]
    assert re.fullmatch(r"In 6 days: \d+ % of bouts asked", practice)
    assert last == f"Last session: {telling.day(model.people[2].last_day, LAST_DAY.year)}"
    assert "head to the left" in told[3] and "can't be trusted" in told[4]
    assert "See: condition met" in told[5]
    assert window.state.text() == f"People: 6, sessions: {sum(len(p.rows) for p in model.people)}"
    # The one that is chosen and comes first stays to be read: no mark of it covers the words.
    assert window.people.hasFocus()
    row = window.people.grab(window.people.visualRect(model.index(0))).toImage()
    accent = window.people.palette().color(QPalette.ColorRole.Accent).rgb()
    marked = sum(
        row.pixel(x, y) == accent for x in range(row.width()) for y in range(0, row.height(), 4)
    )
    assert 0 < marked < 0.02 * row.width() * row.height() / 4


def test_a_person_shows_reasons_practice_and_trends(open_desk: Open) -> None:
    window = open_desk()
    choose(window, "teal")
    text = shown_words(window.person_page)
    assert "head to the left" in text and "affected side: both" in text
    assert f"counted up to {telling.day(LAST_DAY)}" in text
    assert "0 not seen by the camera" in window.person_page.strip.accessibleName()
    assert trend(window, "gaze on target, left").cells[3] == "▼ fell"
    assert trend(window, "gaze on target, right").change.verdict == "no_change"
    assert not trend(window, "amplitude, left").affected
    choose(window, "finch")
    assert trend(window, "amplitude, left").affected
    # At the width of a usual laptop the chart of all sessions is in sight, too.
    table = window.person_page.trends
    ends = table.columnViewportPosition(4) + table.columnWidth(4)
    assert table.columnWidth(4) > 100 and ends <= table.viewport().width() + 1
    assert trend(window, "amplitude, left").cells[0].endswith("◄ affected side")


def test_what_was_not_measured_or_is_in_doubt_looks_like_it(open_desk: Open) -> None:
    window = open_desk()
    choose(window, "plover")
    row = trend(window, "amplitude")
    assert row.cells[2].endswith("?") or row.cells[2] == telling.NOT_MEASURED
    assert "too few to compare" in row.cells[3] and "left out" in row.cells[3]
    assert f"of {len(row.series.points)} sessions measured" in row.chart_words
    model = window.person_page.trends.trends
    said = model.index(model.rows.index(row), 0).data(Qt.ItemDataRole.AccessibleTextRole)
    assert "in doubt" in said


@pytest.mark.parametrize("size", [(1366, 768), (1920, 1080)])
def test_what_signs_mean_stands_where_they_are_seen(
    open_desk: Open, qtbot: QtBot, size: tuple[int, int]
) -> None:
    """No tooltip needed: dots, lozenges and bands in the trends, bands and bars in the trace."""
    window = open_desk(size=size)
    choose(window, "finch")
    page = window.person_page
    key = page.key
    assert key.visibleRegion().boundingRect().height() == key.height() > 0
    assert all(sign in key.text() for sign in "●◆○┆") and "grey: asked for" in key.text()
    inside = key.mapTo(page.tabs, key.rect().topLeft()).y()
    assert inside < page.trends.mapTo(page.tabs, page.trends.rect().topLeft()).y()
    open_last(window, qtbot, "plover")
    pane = window.session_page.panes[0]
    there = {part.kind for part in pane.key if part.isVisible()}
    assert {"repetition", "gap", "doubt"} <= there and not {"mark", "pause"} & there
    pane.show_not_valid(frozenset({1}))
    assert {part.kind for part in pane.key if part.isVisible()} == there | {"not_valid"}


def test_filters_by_exercise_days_and_change(open_desk: Open) -> None:
    window = open_desk()
    choose(window, "heron")
    page = window.person_page
    headings = [r.text for r in page.trends.trends.rows if isinstance(r, Heading)]
    assert headings == ["x1 viewing, yaw", "Quiet stance in a corner", "Whole session"]
    page.filters.exercise.setCurrentIndex(2)
    headings = [r.text for r in page.trends.trends.rows if isinstance(r, Heading)]
    assert headings == ["Quiet stance in a corner", "Whole session"]
    page.filters.show_all()
    day = FIRST_DAY
    page.filters.from_day.setDate(QDate(day.year, day.month, day.day))
    page.filters.to_day.setDate(QDate(day.year, day.month, day.day))
    assert {r.day for r in page.sessions.sessions.rows} == {FIRST_DAY}
    assert trend(window, "amplitude").change.verdict == "too_few"
    # Days the wrong way round leave out no more than the right way.
    last = QDate(LAST_DAY.year, LAST_DAY.month, LAST_DAY.day)
    page.filters.from_day.setDate(last)
    assert {r.day for r in page.sessions.sessions.rows} >= {FIRST_DAY, LAST_DAY}
    page.filters.show_all()
    page.filters.only_changed.setChecked(True)
    rows = [r for r in page.trends.trends.rows if isinstance(r, TrendRow)]
    assert rows and all(r.change.verdict in ("rose", "fell") for r in rows)


def test_a_session_opens_into_its_repetitions(open_desk: Open, qtbot: QtBot) -> None:
    window = open_desk()
    open_last(window, qtbot, "teal")
    page = window.session_page
    trace = page.panes[0].trace
    assert len(trace._times) > 100 and trace.shown is not None
    texts = [page.what.item(k).text() for k in range(page.what.count())]
    assert any(re.search(r"repetition 3, right 1\d\.\d°, left 1\d\.\d°", t) for t in texts)
    assert any("! gaze off target" in t for t in texts)
    # The figures are those of every document.
    made = record_of(load_summary(page.folder / page.rows[0].place))
    figures = [page.figures.item(k).text() for k in range(page.figures.count())]
    for figure in made.exercises[0].figures:
        assert f"{figure.label}: {shown_with_unit(figure)}" in figures
    # The cursor goes where the list says, and its values are those of the trace.
    row = next(k for k, t in enumerate(texts) if "repetition 2" in t)
    page.what.setCurrentRow(row)
    assert f"{trace.cursor_s:.2f} s" in page.panes[0].values.text()
    assert "repetition 2" in page.panes[0].values.text()
    values = dict(trace.values())
    assert set(values) == {"head", "gaze", "target"} and abs(values["head"]) < 20
    # Standing is shown in millimetres, and the list is that of the other exercise.
    page.sets.setCurrentIndex(1)
    assert dict(trace.values()).keys() == {"sideways", "fore_aft", "height"}
    assert page.panes[0].axis.text() == "millimetres" and trace.from_s > 10


def test_the_trace_by_keys(open_desk: Open, qtbot: QtBot) -> None:
    window = open_desk()
    open_last(window, qtbot, "heron")
    trace = window.session_page.panes[0].trace
    trace.setFocus()
    whole = (trace.from_s, trace.to_s)
    times = trace._times[(trace._times >= trace.from_s)]
    for _ in range(5):
        QTest.keyClick(trace, Qt.Key.Key_Right)
    assert trace.cursor_s == pytest.approx(times[5])
    QTest.keyClick(trace, Qt.Key.Key_Left)
    assert trace.cursor_s == pytest.approx(times[4])
    QTest.keyClick(trace, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    assert trace.cursor_s == pytest.approx(times[4] + 1.0)
    at = trace.cursor_s
    QTest.keyClick(trace, Qt.Key.Key_Plus)
    assert trace.to_s - trace.from_s == pytest.approx((whole[1] - whole[0]) / 2)
    assert trace.from_s <= at <= trace.to_s
    QTest.keyClick(trace, Qt.Key.Key_PageDown)
    assert trace.from_s > whole[0]
    for _ in range(12):
        QTest.keyClick(trace, Qt.Key.Key_Plus)
    assert trace.to_s - trace.from_s == pytest.approx(0.5)
    QTest.keyClick(trace, Qt.Key.Key_Home)
    assert (trace.from_s, trace.to_s) == whole
    assert "head" in trace.accessibleName()
    QTest.keyClick(trace, Qt.Key.Key_Escape)
    assert window.stack.currentIndex() == 0 and window.people.hasFocus()


def test_a_session_without_practice_says_so_and_what_was_answered(
    open_desk: Open, qtbot: QtBot
) -> None:
    window = open_desk()
    choose(window, "robin")
    person = window.person_page.person
    assert person is not None and person.reasons[0].place is not None
    window.open_session(person.reasons[0].place)
    page = window.session_page
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    assert "Nothing was practised" in page.panes[0].title.text()
    assert page.lists.currentWidget() is page.figures
    told = [page.figures.item(k).text() for k in range(page.figures.count())]
    assert "Falls in the last week: one fall" in told and "Medicines changed: no" in told


def test_two_sessions_beside_each_other(open_desk: Open, qtbot: QtBot) -> None:
    window = open_desk()
    open_last(window, qtbot, "teal")
    page = window.session_page
    assert not page.panes[1].isVisible()
    page.beside.setCurrentIndex(1)
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    assert page.panes[1].isVisible() and page.traces.beside
    assert all("teal, 3 Oct 2026" in pane.title.text() for pane in page.panes)
    shown = page.panes[1].trace.shown
    assert shown is not None and shown.exercise.exercise == "turns-on-target"
    # Only the last session of the clinic is kept whole; the other one says so.
    assert "has only the summary" in page.panes[1].title.text()
    QApplication.processEvents()
    page.panes[1].grab()
    page.beside.setCurrentIndex(0)
    assert not page.panes[1].isVisible() and not page.panes[0].title.isVisible()


def test_why_a_session_can_not_be_read_stays_to_be_seen(
    open_desk: Open, qtbot: QtBot, folder: Path
) -> None:
    window = open_desk()
    open_last(window, qtbot, "teal")
    page, (first, second) = window.session_page, window.session_page.panes
    # The one before had a trace, above which nothing has to be said.
    assert not first.title.isVisible()
    person = window.person_page.person
    assert person is not None
    bad, good = person.rows[-2:]
    (folder / bad.place).write_text('{"half', encoding="utf-8")
    window.open_session(bad.place)
    assert first.title.isVisible() and "Reading the session" in first.title.text()
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    why = f"{bad.place}: "
    assert first.title.isVisible() and why in first.title.text()
    # Another one comes beside it and goes again.
    page.beside.setCurrentIndex(next(k for k in range(9) if page.beside.itemData(k) is good))
    assert second.title.isVisible() and "Reading the session" in second.title.text()
    assert all("teal, " in pane.title.text() for pane in page.panes)
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    assert why in first.title.text() and why not in second.title.text()
    assert second.trace.shown is None and "Reading" not in second.title.text()
    keep(window, "pages/desk-not-read")
    page.beside.setCurrentIndex(0)
    assert first.title.isVisible() and why in first.title.text()
    # So it is the other way round.
    window.open_session(good.place)
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    assert not first.title.isVisible() and first.trace.shown is not None
    page.beside.setCurrentIndex(next(k for k in range(9) if page.beside.itemData(k) is bad))
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    page.sets.setCurrentIndex(1)
    assert second.title.isVisible() and why in second.title.text()
    assert why not in first.title.text()


def test_what_is_still_read_for_a_session_that_was_put_away_is_not_shown(
    open_desk: Open, qtbot: QtBot
) -> None:
    window = open_desk()
    open_last(window, qtbot, "teal")
    page = window.session_page
    page.beside.setCurrentIndex(1)
    page.beside.setCurrentIndex(0)
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    assert page.views[1] is None and not page.panes[1].isVisible()


def test_notes_and_marks_stand_beside_what_was_measured(
    open_desk: Open, qtbot: QtBot, folder: Path
) -> None:
    window = open_desk()
    before = {p: p.read_bytes() for p in folder.rglob("*") if p.is_file()}
    open_last(window, qtbot, "heron")
    page, notes = window.session_page, window.session_page.notes
    QTest.keyClicks(notes.note, "Phone rang.")
    QTest.keyClick(notes.note, Qt.Key.Key_Return)
    assert "Phone rang." in notes.notes.text() and notes.note.text() == ""
    row = next(k for k in range(page.what.count()) if "repetition 2" in page.what.item(k).text())
    page.what.setCurrentRow(row)
    page.mark.click()
    assert "marked not valid" in page.what.item(row).text()
    assert page.panes[0].trace.not_valid == {2}
    page.mark.click()
    assert len(NoteBook(folder, "x").notes()) == 2
    notes.undo.click()
    assert "marked not valid" not in page.what.item(row).text()
    assert page.panes[0].trace.not_valid == frozenset()
    window.show_people()
    assert window.person_page.sessions.sessions.notes == {page.notes.session: 1}
    assert all(p.read_bytes() == content for p, content in before.items())


def test_a_note_that_can_not_be_saved_is_said_and_kept_in_the_field(
    open_desk: Open, qtbot: QtBot, folder: Path
) -> None:
    window = open_desk()
    (folder / "notes").write_text("in the way")
    open_last(window, qtbot, "heron")
    notes = window.session_page.notes
    notes.note.setText("Phone rang.")
    notes.add.click()
    assert "Not saved" in notes.notes.text() and notes.note.text() == "Phone rang."


def test_files_that_can_not_be_read_are_named_and_stop_nothing(
    open_desk: Open, folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    bad = folder / "wren" / "broken"
    bad.mkdir()
    (bad / "summary.json").write_text('{"half')
    # Before it by its name: neither hides it.
    one = next(p for p in folder.glob("heron/*/summary.json"))
    (folder / "a copy.json").write_bytes(one.read_bytes())
    (folder / "a.turnpost").write_bytes(MAGIC + b"x")
    window = open_desk()
    assert window.found is not None and len(window.found.people) == 6
    assert window.faults.isVisible()
    assert window.faults.text() == "Files left out: 3 (could not be read: 1)"
    assert main(["review", str(folder), "--text"]) == 0
    assert "\nLeft out: 1 could not be read; these come first\n  wren/" in capsys.readouterr().out
    window.faults.click()
    assert "wren/broken/summary.json" in window.fault_list.item(0).text()
    # What is to be done stands at the end of a line: nobody has to scroll sideways to it.
    assert window.fault_list.horizontalScrollBar().maximum() == 0
    window.appearance.set_text(200)
    QApplication.processEvents()
    assert window.fault_list.horizontalScrollBar().maximum() == 0
    line, item = window.fault_list.fontMetrics().height(), window.fault_list.item(1)
    assert window.fault_list.visualItemRect(item).height() >= 2 * line


def test_the_folder_is_followed_and_the_choice_stays(
    open_desk: Open, folder: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(desk_window, "LOOK_AGAIN_S", 0.2)
    window = open_desk()
    choose(window, "teal")
    write(folder, "owl/s1", "owl", "2026-10-02")
    qtbot.waitUntil(lambda: window.people.people.rowCount() == 7, timeout=30_000)
    person = window.person_page.person
    assert person is not None and person.name == "teal"
    shutil.rmtree(folder / "owl")
    qtbot.waitUntil(lambda: window.people.people.rowCount() == 6, timeout=30_000)


def slow_reading(monkeypatch: pytest.MonkeyPatch, wait_s: float) -> None:
    """Reading that takes its time between two files."""

    def slowly(folder: Path, **options: Callable[..., bool]) -> Records:
        real = options["stopped"]

        def stopped() -> bool:
            time.sleep(wait_s)
            return real()

        return read_folder(folder, **{**options, "stopped": stopped})  # type: ignore[arg-type]

    monkeypatch.setattr(reading, "read_folder", slowly)


def test_reading_is_shown_can_be_stopped_and_never_holds_the_window(
    open_desk: Open, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    # Were the window held, it would be for all of the reading: ten seconds.
    slow_reading(monkeypatch, 0.2)
    window = open_desk(wait=False)
    ticks: list[float] = []
    timer = QTimer()
    timer.timeout.connect(lambda: ticks.append(time.monotonic()))
    timer.start(20)
    qtbot.waitUntil(
        lambda: re.match(r"Reading ([3-9]|\d\d) of", window.state.text()) is not None,
        timeout=30_000,
    )
    assert window.progress.isVisible() and window.stop.isVisible()
    window.stop.click()
    qtbot.waitUntil(lambda: window.found is not None, timeout=30_000)
    timer.stop()
    assert max(b - a for a, b in itertools.pairwise(ticks)) < 3.0
    assert "only a part" in window.state.text() and window.go_on.isVisible()
    monkeypatch.setattr(reading, "read_folder", read_folder)
    window.go_on.click()
    qtbot.waitUntil(lambda: "People: 6" in window.state.text(), timeout=30_000)
    assert not window.go_on.isVisible()


def test_closing_while_it_reads_leaves_nothing_running(
    open_desk: Open, monkeypatch: pytest.MonkeyPatch
) -> None:
    slow_reading(monkeypatch, 0.3)
    window = open_desk(wait=False)
    window.close()
    assert not [t for t in threading.enumerate() if t.name == "turnpost-job"]


def test_an_empty_folder_says_so(open_desk: Open, tmp_path: Path) -> None:
    (tmp_path / "empty").mkdir()
    window = open_desk(tmp_path / "empty")
    assert "no sessions in this folder" in window.person_page.name.text()
    assert window.state.text() == "People: 0, sessions: 0"


def test_a_folder_that_goes_away_is_said(
    open_desk: Open, folder: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(desk_window, "LOOK_AGAIN_S", 0.2)
    window = open_desk()
    folder.rename(folder.with_name("elsewhere"))
    qtbot.waitUntil(lambda: "Not read" in window.state.text(), timeout=30_000)
    assert window.people.people.rowCount() == 6
    folder.with_name("elsewhere").rename(folder)
    qtbot.waitUntil(lambda: "Not read" not in window.state.text(), timeout=30_000)


def test_from_the_list_to_a_session_by_keys_alone(open_desk: Open, qtbot: QtBot) -> None:
    window = open_desk()
    assert window.people.hasFocus()
    QTest.keyClick(window.people, Qt.Key.Key_Down)
    person = window.person_page.person
    assert person is not None and person.name == "finch"
    reached = set()
    for _ in range(40):
        QTest.keyClick(window.focusWidget() or window, Qt.Key.Key_Tab)
        reached.add(window.focusWidget())
        if window.focusWidget() is window.person_page.tabs.tabBar():
            QTest.keyClick(window.person_page.tabs.tabBar(), Qt.Key.Key_Right)
        if window.focusWidget() is window.person_page.sessions:
            break
    assert window.person_page.filters.exercise in reached
    assert window.focusWidget() is window.person_page.sessions
    QTest.keyClick(window.person_page.sessions, Qt.Key.Key_Down)
    QTest.keyClick(window.person_page.sessions, Qt.Key.Key_Return)
    assert window.stack.currentWidget() is window.session_page
    qtbot.waitUntil(lambda: not window.session_page.busy, timeout=30_000)


@pytest.mark.parametrize("percent", [100, 200])
@pytest.mark.parametrize("size", [(1366, 768), (1920, 1080)])
def test_nothing_is_cut(open_desk: Open, qtbot: QtBot, percent: int, size: tuple[int, int]) -> None:
    window = open_desk(percent=percent, size=size)
    faults = []
    for name in ("finch", "plover", "teal"):
        choose(window, name)
        faults += look(window, f"{name}-{size[0]}-{percent}")
    open_last(window, qtbot, "finch")
    faults += look(window, f"session-{size[0]}-{percent}")
    assert not faults


def look(window: QWidget, name: str) -> list[str]:
    for _ in range(3):
        QApplication.processEvents()
    keep(window, f"pages/desk-{name}")
    faults = [f"{name}: {lacks}" for lacks in short_of_room(window)]
    for button in window.findChildren(Button):
        if button.isVisible() and button.width() < button.sizeHint().width():
            faults.append(f"{name}: button {button.text()!r} is too narrow")
    for widget in window.findChildren(QWidget):
        if isinstance(widget, Words | Button | QComboBox | QLineEdit) and widget.isVisible():
            left = widget.mapTo(window, widget.rect().topLeft()).x()
            right = widget.mapTo(window, widget.rect().bottomRight()).x()
            if left < 0 or right > window.width():
                faults.append(f"{name}: {widget} reaches beyond the window's side")
    return faults


def test_every_control_has_a_name_and_takes_the_keys(open_desk: Open, qtbot: QtBot) -> None:
    window = open_desk()
    choose(window, "finch")
    for _ in range(2):
        for widget in window.findChildren(QWidget):
            if not widget.isVisible() or widget.focusPolicy() == Qt.FocusPolicy.NoFocus:
                continue
            named = isinstance(widget, QAbstractButton | QComboBox | QLineEdit)
            if named and not widget.objectName().startswith("qt_"):
                words = widget.accessibleName() or getattr(widget, "text", lambda: "")()
                assert words, widget
        open_last(window, qtbot, "finch")


def test_text_grows_and_shrinks_by_keys(open_desk: Open) -> None:
    window = open_desk()
    size = window.people.font().pointSizeF()
    QTest.keyClick(window, Qt.Key.Key_Plus, Qt.KeyboardModifier.ControlModifier)
    assert window.settings.text_percent == 125
    assert window.people.font().pointSizeF() == pytest.approx(1.25 * size)
    assert window.person_page.trends.font().pointSizeF() == pytest.approx(1.25 * size)
    QTest.keyClick(window, Qt.Key.Key_0, Qt.KeyboardModifier.ControlModifier)
    assert window.settings.text_percent == 100


@pytest.mark.parametrize(
    ("percent", "size"), [(100, (1366, 768)), (200, (1366, 768)), (200, (1920, 1080))]
)
def test_the_minutes_do_not_push_the_trends_out_of_sight(
    open_desk: Open, percent: int, size: tuple[int, int]
) -> None:
    """With large text they stand below the trends; else they take one line above them."""
    window = open_desk(percent=percent, size=size)
    page = window.person_page

    def top() -> int:
        for _ in range(3):
            QApplication.processEvents()
        return page.trends.mapTo(page, QPoint(0, 0)).y()

    for name in ("finch", "heron"):
        choose(window, name)
        assert page.gaze.isVisible() and "minutes a day" in page.gaze.text()
        keep(window, f"desk-minutes-{name}-{percent}-{size[0]}")
        with_them = top()
        if percent == 100:
            seen = page.trends.viewport().visibleRegion().boundingRect().height()
            assert seen > 3 * page.trends.rowHeight(1)
            assert page.gaze.height() < 1.5 * page.gaze.fontMetrics().height()
        else:
            assert page.gaze.y() > page.tabs.y()
        page.gaze.hide()
        without = top()
        assert with_them - without == 0 if percent == 200 else 0 < with_them - without < 40


def test_why_a_repetition_is_not_valid_stands_behind_a_colon() -> None:
    told = {"session": "s", "author": "kim", "at": "2026-11-27T10:00", "repetition": 3}
    note = Note(id="a", kind="not_valid", set_number=0, text="phone rang", **told)
    assert note_words(note) == "kim, 2026-11-27: repetition 3 is not valid: phone rang"
    assert note_words(replace(note, text="")) == "kim, 2026-11-27: repetition 3 is not valid"
