"""Pauses, marks and events of a session on its trace, in the cursor's words and in the list."""

from __future__ import annotations

import itertools
import json
from dataclasses import replace
from datetime import datetime
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.records import made
from tests.records.acted import acted
from tests.records.clinic import FIRST_DAY, PATIENTS, ZONE, Form, Practising
from tests.records.clinic import plan_for as plan_of_patient
from tests.records.rows import row
from tests.ui.pictures import keep
from tests.ui.test_desk import Open, choose, folder, open_desk  # noqa: F401 - fixtures
from tracker.exercises.catalogue import CATALOGUE
from tracker.practice.conductor import Conductor
from tracker.practice.tasks import DoSet, Task
from tracker.records.notes import NoteBook
from tracker.session.engine import Engine
from tracker.session.journal import FileJournal
from tracker.session.live import SessionInfo
from tracker.session.saving import save_session
from tracker.session.stage import Step
from tracker.session.summary_file import ExerciseSummary
from ui import words
from ui.desk.moments import gaps_of, lines_of, told_at
from ui.desk.session_data import SessionView, SetView, Span, lines_for
from ui.desk.session_page import SessionPage
from ui.desk.trace_paint import labels_of, lanes_of
from ui.desk.trace_view import TraceView
from ui.desk.window import DeskWindow

pytestmark = pytest.mark.timeout(300)

HERON = PATIENTS[0]
PART_S, PAUSE_S = 8.0, 3.0
#: Seconds after the beginning of the first exercise; the last lies after the second part.
MARKS_S = (4.0, 9.5, 14.0, 19.5)


class Pausing(Practising):
    """Somebody who pauses the first exercise after eight seconds, while moments are marked."""

    begun_s = float("nan")

    def _do(self, conductor: Conductor, task: Task) -> None:
        first = isinstance(task, DoSet) and self.sets == 0
        if not first or task.asked is None:
            super()._do(conductor, task)
            return
        self.sets, self.begun_s = 1, conductor.now_s
        asked = task.asked.step_values
        for start_s in (self.begun_s, self.begun_s + PART_S + PAUSE_S):
            # A little longer, and cut where the pause begins.
            target_mm, _, samples = acted(asked, PART_S + 2.0, self.form, self.head, self.rng)
            values = {"from_s": start_s, "to_s": start_s + PART_S, "target_mm": target_mm}
            step = Step.model_validate({"step": "exercise", **values, **asked})
            conductor.begin_set(step)
            for made_s in samples:
                if made_s.time_s < PART_S:
                    self.engine.feed(replace(made_s, time_s=made_s.time_s + start_s))
            if start_s == self.begun_s:
                rest = {"from_s": step.to_s, "to_s": step.to_s + PAUSE_S, "step": "rest"}
                conductor._begin(Step.model_validate(rest))
        conductor.end_set(step.to_s)


def write_session(root: Path, **form: float) -> Path:
    plan = plan_of_patient(HERON, 10.0)
    home = root / "heron"
    target = home / "paused"
    target.mkdir(parents=True)
    (home / "plan.json").write_text(plan.model_dump_json(exclude_none=True), encoding="utf-8")
    started = datetime.combine(FIRST_DAY, datetime.min.time(), ZONE).isoformat()
    about = SessionInfo(
        session_id="paused", person="heron", plan_id=plan.plan_id, started_at=started
    )
    person = Pausing(
        form=Form(**{"away_left": 0.6, **form}), rng=np.random.default_rng(3), set_s=10.0
    )
    with FileJournal(target / "journal.jsonl") as kept:
        person.engine = Engine(kept, about=about)
        person.go_on(Conductor(plan, person.engine))
        for after_s in MARKS_S:
            kept.append({"kind": "mark", "name": "marked", "time_s": person.begun_s + after_s})
    save_session(target)
    return root


@pytest.fixture
def desk(open_desk: Open, qtbot: QtBot, tmp_path: Path) -> DeskWindow:  # noqa: F811
    window = open_desk(write_session(tmp_path / "one"))
    choose(window, "heron")
    person = window.person_page.person
    assert person is not None
    window.open_session(person.rows[-1].place)
    qtbot.waitUntil(lambda: not window.session_page.busy, timeout=30_000)
    return window


def test_the_parts_of_a_paused_set_are_numbered_and_list_all(desk: DeskWindow) -> None:
    page = desk.session_page
    names = [page.sets.itemText(k) for k in range(page.sets.count())]
    assert names[:2] == ["x1 viewing, yaw (1 of 2)", "x1 viewing, yaw (2 of 2)"]
    assert names[2] == "Quiet stance in a corner"
    texts = [page.what.item(k).text() for k in range(page.what.count())]
    assert sum("⚑ Marked while it went on" in t for t in texts) == 1
    assert sum("⚑ Marked outside the exercise" in t for t in texts) == 1
    assert sum("Paused for 3.0 s" in t for t in texts) == 1
    assert any("! gaze off target" in t for t in texts)
    page.sets.setCurrentIndex(1)
    texts = [page.what.item(k).text() for k in range(page.what.count())]
    assert "Paused for 3.0 s" in texts[0] and "⚑ Marked outside the exercise" in texts[-1]
    assert sum("⚑" in t for t in texts) == 2


def test_the_list_takes_the_cursor_to_a_mark_by_keys(desk: DeskWindow) -> None:
    page = desk.session_page
    pane, trace = page.panes[0], page.panes[0].trace
    start_s = page.sets.itemData(0).from_s
    page.what.setFocus()
    rows = [k for k in range(page.what.count()) if "⚑" in page.what.item(k).text()]
    for _ in range(rows[0] + 2):
        if page.what.currentRow() < rows[0]:
            QTest.keyClick(page.what, Qt.Key.Key_Down)
    assert page.what.currentRow() == rows[0]
    assert trace.cursor_s == pytest.approx(start_s + 4.0, abs=1e-3)
    assert f"⚑ marked at {start_s + 4.0:.1f} s" in pane.values.text()
    assert f"⚑ marked at {start_s + 4.0:.1f} s" in trace.accessibleName()
    # A sample beside it the words stay, a second away they don't.
    trace.step(1)
    assert "⚑" in pane.values.text()
    trace.go_to(trace.cursor_s + 1.0)
    assert "⚑" not in pane.values.text()


def test_the_cursor_says_pause_and_break(desk: DeskWindow) -> None:
    page = desk.session_page
    pane, trace = page.panes[0], page.panes[0].trace
    start_s = page.sets.itemData(0).from_s
    trace.zoom(4.0)
    trace.go_to(start_s + PART_S + 1.0)
    assert "paused" in pane.values.text()
    trace.go_to(start_s + 2 * PART_S + PAUSE_S + 1.0)
    assert "between exercises" in pane.values.text()
    trace.go_to(start_s + 1.0)
    assert "paused" not in pane.values.text() and "between" not in pane.values.text()


def grey(desk: DeskWindow) -> QImage:
    """The trace without its colours."""
    return (
        desk.session_page.panes[0]
        .trace.grab()
        .toImage()
        .convertToFormat(QImage.Format.Format_Grayscale8)
    )


def test_a_mark_and_a_pause_are_seen_without_colour(desk: DeskWindow) -> None:
    trace = desk.session_page.panes[0].trace
    start_s = desk.session_page.sets.itemData(0).from_s
    trace.zoom(1.6)
    QApplication.processEvents()
    keep(desk, "pages/desk-marks")
    box = trace._box
    seconds = trace.to_s - trace.from_s

    def column(image: QImage, time_s: float) -> list[int]:
        x = round(box.left() + (time_s - trace.from_s) / seconds * box.width())
        top, bottom = round(box.top()) + 2, round(box.bottom()) - 2
        assert image.width() == trace.width()
        return [image.pixelColor(QPoint(x, y)).lightness() for y in range(top, bottom)]

    image = grey(desk)
    at_mark = column(image, start_s + MARKS_S[0])
    dark = sum(value < 120 for value in at_mark)
    assert dark > 0.5 * len(at_mark)
    # Where nothing was marked only the lines are dark.
    assert sum(v < 120 for v in column(image, start_s + 2.0)) < 0.3 * len(at_mark)
    # The pause has a pattern, the exercise beside it has not.
    assert len(set(column(image, start_s + PART_S + 0.4))) > 1


def test_an_older_summary_without_marks_opens(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
    tmp_path: Path,
) -> None:
    root = write_session(tmp_path / "one")
    path = root / "heron" / "paused" / "summary.json"
    data = json.loads(path.read_text())
    assert [round(m["time_s"], 1) for m in data.pop("marks")]
    path.write_text(json.dumps(data))
    window = open_desk(root)
    choose(window, "heron")
    person = window.person_page.person
    assert person is not None
    window.open_session(person.rows[-1].place)
    qtbot.waitUntil(lambda: not window.session_page.busy, timeout=30_000)
    page = window.session_page
    assert page.what.count() > 3
    assert not any("⚑" in page.what.item(k).text() for k in range(page.what.count()))


# --- two sessions, and what was not measured ---


def test_two_sessions_are_zoomed_together_and_drawn_on_one_scale(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
    tmp_path: Path,
) -> None:
    root = write_session(tmp_path / "one")
    write_session(tmp_path / "two", amplitude_deg=30.0)
    (tmp_path / "two" / "heron" / "paused").rename(root / "heron" / "larger")
    summary = root / "heron" / "larger" / "summary.json"
    data = json.loads(summary.read_text()) | {"session_id": "larger"}
    summary.write_text(json.dumps(data))
    window = open_desk(root)
    choose(window, "heron")
    person = window.person_page.person
    assert person is not None and len(person.rows) == 2
    window.open_session(next(r.place for r in person.rows if "paused" in r.place))
    page = window.session_page
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    above, below = (pane.trace for pane in page.panes)
    alone = above._scale
    page.beside.setCurrentIndex(1)
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    assert above._scale == below._scale and above._scale[1] > alone[1] + 5
    above.go_to(above.from_s + 3.0)
    above.zoom(0.5)
    for mine, its in ((above.from_s, below.from_s), (above.cursor_s, below.cursor_s)):
        assert mine - above.shown.from_s == pytest.approx(its - below.shown.from_s)
    assert below.to_s - below.from_s == pytest.approx(above.to_s - above.from_s)
    assert f"{below.cursor_s:.2f} s" in page.panes[1].values.text()
    below.zoom(0.5)
    assert above.to_s - above.from_s == pytest.approx(below.to_s - below.from_s)
    page.beside.setCurrentIndex(0)
    assert above._scale == alone


def test_stretches_without_measuring_and_in_the_dark_are_listed_with_the_reason(
    open_desk: Open,  # noqa: F811
    qtbot: QtBot,
    tmp_path: Path,
) -> None:
    root = write_session(tmp_path / "one", light=0.1, lost=0.3)
    window = open_desk(root)
    choose(window, "heron")
    person = window.person_page.person
    assert person is not None
    window.open_session(person.rows[-1].place)
    page = window.session_page
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    texts = [page.what.item(k).text() for k in range(page.what.count())]
    assert any("stretch not measured (no face in the picture), " in t for t in texts)
    # Once is enough.
    assert not any("▨" in t for t in texts)
    dark = [t for t in texts if "? In doubt for" in t]
    assert dark and all(t.endswith(": dark") for t in dark)
    # What lies after the part has nothing to do with it.
    assert all(float(t.split("In doubt for ")[1].split(" s")[0]) < PART_S for t in dark)
    trace, values = page.panes[0].trace, page.panes[0].values
    start_s = page.sets.itemData(0).from_s
    trace.go_to(start_s + 0.5)
    assert "head not measured" in values.text() and "no face in the picture" in values.text()
    trace.go_to(start_s + 3.0)
    assert "dark" in values.text() and "not measured" not in values.text()


def test_a_gap_that_no_event_tells_of_is_listed_by_itself() -> None:
    times = np.arange(0.0, 10.0, 0.1)
    head = np.where((times > 4) & (times < 6), np.nan, 1.0)
    columns = {
        "head_yaw_deg": head,
        "quality": np.where(times > 8, 0.4, 0.9),
        "light": np.full(len(times), 0.5),
    }
    summary = made.finished()
    exercise = summary.exercises[0].model_copy(update={"events": [], "repetitions_list": []})
    shown = SetView(0, exercise, 0.0, 10.0, "yaw", {"head": "head_yaw_deg"}, [])
    view = SessionView(summary, [shown], times, columns)
    view.reasons = ["turned_too_far" if np.isnan(h) else "" for h in head]
    texts = [line.text for line in lines_of(view, shown, frozenset())]
    assert texts == [
        "▨ Not measured for 1.9 s: head turned too far",
        "? In doubt for 1.8 s: the face was hard to follow",
    ]


def test_events_at_once_lie_in_lanes() -> None:
    spans = [
        Span(0, 10, "a"),
        Span(2, 4, "b"),
        Span(3, 5, "c"),
        Span(4.5, 6, "d"),
        Span(4.6, 5, "e"),
    ]
    assert lanes_of(spans) == [0, 1, 2, 1, 2]


def test_bars_that_lie_close_together_are_all_named_or_counted() -> None:
    """Two rows of names; what finds no room is counted with its like, and nothing is covered."""
    bars = [(0.0, "off"), (40.0, "off"), (60.0, "off"), (90.0, "moved"), (480.0, "off")]

    def width(text: str) -> float:
        return 10.0 * len(text)

    found = labels_of(bars, width, (0.0, 500.0))
    told = [(label.left, label.row, label.text) for label in found]
    assert told == [(0.0, 0, "off"), (40.0, 1, "off ×2"), (90.0, 0, "moved"), (430.0, 0, "off")]
    for level in (0, 1):
        ends = [(x.left, x.left + width(x.text)) for x in found if x.row == level]
        assert all(a[1] <= b[0] for a, b in itertools.pairwise(ends))
        assert all(a >= 0.0 and b <= 500.0 for a, b in ends)
    # A kind whose first bar finds no room is not named after another.
    crowded = [(0.0, "off"), (1.0, "off"), (2.0, "moved")]
    assert {x.name for x in labels_of(crowded, width, (0.0, 500.0))} == {"off"}
    # At the end a bar has its bare name where a count has no room; none is counted with it.
    end = [(100.0, "a"), (100.0, "b"), (170.0, "off"), (171.0, "off"), (172.0, "off")]
    told = [(x.left, x.row, x.text) for x in labels_of(end, width, (0.0, 205.0))]
    assert told == [(100.0, 0, "a"), (100.0, 1, "b"), (170.0, 0, "off"), (171.0, 1, "off")]


def test_resizing_the_trends_keeps_no_more_charts_than_rows(open_desk: Open) -> None:  # noqa: F811
    """One picture a row, and another while it is chosen, whatever sizes it had before."""
    window = open_desk()
    choose(window, "finch")
    table = window.person_page.trends
    made = set()
    for width in range(1366, 1666, 25):
        window.resize(width, 768)
        QApplication.processEvents()
        table.viewport().grab()
        made |= {(row, known[0]) for row, known in table.charts.drawn.items()}
    rows = len(table.trends.rows)
    assert 0 < len(table.charts.drawn) <= 2 * rows < len(made)


@pytest.mark.parametrize(("size", "narrow"), [((1366, 768), True), ((1920, 1080), False)])
def test_the_words_of_the_trends_are_in_sight_with_large_text(
    open_desk: Open,  # noqa: F811
    size: tuple[int, int],
    narrow: bool,
) -> None:
    window = open_desk(percent=200, size=size)
    choose(window, "finch")
    for _ in range(3):
        QApplication.processEvents()
    table = window.person_page.trends
    header = table.horizontalHeader()
    ends = header.sectionPosition(3) + header.sectionSize(3)
    assert ends <= table.viewport().width() + 1
    row = next(
        k
        for k, r in enumerate(table.trends.rows)
        if "affected" in str(table.trends.index(k, 0).data())
    )
    lines = table.rowHeight(row) / table.fontMetrics().height()
    assert lines >= (2.0 if narrow else 1.0)


# --- what the lines are, and where they end ---


@pytest.mark.parametrize(
    ("exercise", "axis", "column"),
    [
        (next(e.id for e in CATALOGUE.values() if e.channel == "head_to_mark"), "yaw", "head_yaw"),
        (next(e.id for e in CATALOGUE.values() if e.channel == "eye_vergence"), "vergence", "verg"),
        ("turns-on-target", "yaw", "head_yaw"),
        ("eyes-side-to-side", "yaw", "eye_yaw"),
    ],
)
def test_the_first_line_is_what_is_counted(exercise: str, axis: str, column: str) -> None:
    shown, columns = lines_for(exercise)
    assert shown == axis and next(iter(columns.values())).startswith(column)
    # All of it has words.
    for key in (f"desk.axis.{axis}", *(f"desk.line.{name}" for name in columns)):
        assert key in words.WORDS


def made_view(times: list[float], repetitions: list[dict[str, Any]]) -> SessionView:
    """A set of ten seconds with one line, 1 everywhere."""
    found = made.finished()
    columns = {"head": "head_yaw_deg"}
    one = SetView(0, found.exercises[0], 0.0, 10.0, "yaw", columns, repetitions)
    view = SessionView(found.model_copy(update={"marks": []}), [one])
    view.times_s, view.reasons = np.array(times), [""] * len(times)
    names = ("head_yaw_deg", "quality", "light")
    view.columns = {n: np.ones(len(times)) for n in names}
    return view


def test_where_samples_are_missing_there_is_a_gap_and_no_value(qtbot: QtBot) -> None:
    times = [k / 10 for k in range(100) if not 30 < k < 50]
    view = made_view(times, [])
    (gap,) = gaps_of(view, view.sets[0])
    assert (gap.from_s, gap.to_s) == (3.0, 5.0)
    trace = TraceView()
    qtbot.addWidget(trace)
    trace.show_set(view, view.sets[0])
    for time_s, known in ((2.0, True), (3.4, True), (4.0, False), (4.6, True)):
        trace.go_to(time_s)
        assert [np.isfinite(v) for _, v in trace.values()] == [known]


def test_a_damaged_repetition_moves_no_words_of_the_others() -> None:
    rows: list[dict[str, Any]] = [
        {"repetition": k, "start_s": 2.0 * k, "end_s": 2.0 * k + 1.0} for k in (1, 2, 3)
    ]
    rows[0]["start_s"] = None
    view = made_view([k / 10 for k in range(100)], rows)
    told = [ln for ln in lines_of(view, view.sets[0], frozenset({2})) if ln.number is not None]
    assert [ln.number for ln in told] == [2, 3]
    assert ["2" in told[0].text, "3" in told[1].text] == [True, True]
    assert told[0].text != words.say("desk.rep", number=2), "it is marked as not valid"
    assert told[1].text == words.say("desk.rep", number=3)


@pytest.mark.parametrize("said", ["fine", "no_answer"])
def test_a_possible_fall_is_listed_with_what_was_said_after_it(said: str) -> None:
    view = made_view([k / 10 for k in range(100)], [])
    fall = {"code": "possible_fall", "start_s": 3.0, "end_s": 4.0, "reason": "no_face"}
    events = type(view.sets[0].exercise).model_validate(
        view.sets[0].exercise.model_dump() | {"events": [fall | {"said_at_s": 3.1}]}
    )
    shown = replace(view.sets[0], exercise=events)
    value = said if said == "fine" else None
    drop = {"value": value, "reason": None if value else said, "seconds": 1.0, "seen": False}
    view.summary = view.summary.model_copy(update={"after_drop": drop})
    view.sets = [shown]
    answer = {"fine": "said to be all right", "no_answer": "did not answer"}[said]
    (line,) = [ln.text for ln in lines_of(view, shown, frozenset()) if "possible fall" in ln.text]
    assert "no face in the picture" in line and answer in line
    (hovered,) = [t for t in told_at(view, shown, 3.5, 0.1) if "possible fall" in t]
    assert answer in hovered


def test_beside_a_possible_fall_stands_what_was_said_of_its_own_set() -> None:
    """Another set was asked about last; in it the camera had seen nothing drop."""
    view = made_view([k / 10 for k in range(100)], [])
    fall = {"code": "possible_fall", "start_s": 3.0, "end_s": 4.0, "said_at_s": 3.1}
    drops = [
        {"value": value, "reason": None, "seconds": 1.0, "seen": False}
        for value in ("fine", "not_well")
    ]
    known = view.sets[0].exercise.model_dump()
    view.sets = [
        replace(
            view.sets[0],
            number=k,
            exercise=ExerciseSummary.model_validate(
                known | {"events": [fall][k:], "after_drop": drop}
            ),
        )
        for k, drop in enumerate(drops)
    ]
    view.summary = view.summary.model_copy(update={"after_drop": drops[1]})
    (told,) = [t for t in told_at(view, view.sets[0], 3.5, 0.1) if "possible fall" in t]
    assert "said to be all right" in told


@pytest.mark.parametrize("first_s", [10.0, 6.0])
def test_two_sessions_of_unlike_length_are_both_seen_whole(
    qtbot: QtBot, tmp_path: Path, first_s: float
) -> None:
    page = SessionPage(NoteBook(tmp_path, "tester"))
    qtbot.addWidget(page)
    for slot, length in enumerate((first_s, 16.0 - first_s)):
        view = made_view([k / 10 for k in range(100)], [])
        view.sets[0] = replace(view.sets[0], to_s=length)
        page.rows[slot], page.views[slot] = row(), view
        if slot == 0:
            page._offer_sets()
        page._show_set()
    for pane in page.panes:
        assert (pane.trace.from_s, pane.trace.to_s) == (0.0, 10.0)
