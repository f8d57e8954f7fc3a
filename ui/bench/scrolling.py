"""How long the desk's lists take to paint while they are scrolled."""

from __future__ import annotations

import time
from collections.abc import Iterator, Sequence
from datetime import timedelta
from pathlib import Path

from PySide6.QtWidgets import QAbstractItemView, QApplication

from tracker.errors import RunError
from tracker.records.index import Records
from tracker.records.people import Person, people_of
from tracker.records.rows import SessionRow, row_of
from ui.bench.review import FIRST, kept, real_summary
from ui.desk.people_list import PeopleList
from ui.desk.session_table import SessionTable
from ui.desk.trend_table import TrendTable, trend_rows
from ui.opening import make_app

PEOPLE, EACH = 20, 5000
#: Sessions whose trends are drawn: a year of two a day.
TRENDS = 730
#: Steps of a wheel through a list, of three lines each, beginning at so many places.
STEPS, PLACES = 12, 5
LINES = 3
#: Seconds that each step took, by the clock and of the processor.
Steps = list[tuple[float, float]]
#: Milliseconds in which 95 of 100 steps are painted: 30 pictures a second (common practice).
AIM_MS = 1000.0 / 30.0
SIZE = (1000, 600)
SHOWN_WITHIN_S = 30.0


def scrolling_table(people: int = PEOPLE, each: int = EACH) -> Iterator[str]:
    """Lines of the table: a list, how many rows, and milliseconds to paint a step of a wheel.

    The rows are those of a session with every shipped clip in it. What is measured is the painting
    by itself, to the end of the window's own picture, not what the screen takes after it.
    """
    app = make_app()
    row = row_of(real_summary(), "none")
    head = f"{'rows':>9} {'median':>8} {'95 %':>8} {'longest':>8} {'95 %, of CPU':>13}"
    yield f"{'scrolling, ms to paint a step':<31} {head}"
    known = [_sessions(row, f"P-{k:03d}", each) for k in range(people)]
    shown = [_person(rows[-100:]) for rows in known]
    for name, steps, count in (
        ("sessions of a person", _through_sessions(app, known), each),
        ("people", _through_people(app, shown), people),
        ("trends of a year", _through_trends(app, known[0][:TRENDS]), min(TRENDS, each)),
    ):
        by_clock, of_cpu = (sorted(1000 * s for s in part) for part in zip(*steps, strict=True))
        at = int(0.95 * (len(by_clock) - 1))
        middle, high, most = by_clock[len(by_clock) // 2], by_clock[at], by_clock[-1]
        yield (
            f"{name:<31} {count:>9} {middle:>8.1f} {high:>8.1f} {most:>8.1f} {of_cpu[at]:>13.1f}"
            f"  aim {AIM_MS:.0f} at 95 %: {kept(high <= AIM_MS)},"
            f" of CPU {kept(of_cpu[at] <= AIM_MS)}"
        )


def _sessions(row: SessionRow, person: str, count: int) -> list[SessionRow]:
    """Sessions of one person, two a day."""
    return [
        row._replace(
            place=f"{person}/{k}",
            session_id=f"{person}-{k}",
            person=person,
            started_at=(FIRST + timedelta(hours=12 * k)).isoformat(),
        )
        for k in range(count)
    ]


def _person(rows: list[SessionRow]) -> Person:
    (found,) = people_of(Records(Path(), rows, [], [], 0, 0, True), rows[-1].day or FIRST.date())
    return found


def _through_sessions(app: QApplication, known: Sequence[list[SessionRow]]) -> Steps:
    table = SessionTable()
    steps: Steps = []
    for rows in known:
        table.show_rows(rows, {})
        steps += _scrolled(app, table)
    table.close()
    return steps


def _through_people(app: QApplication, shown: Sequence[Person]) -> Steps:
    found = PeopleList()
    found.show_people(shown)
    steps = _scrolled(app, found)
    found.close()
    return steps


def _through_trends(app: QApplication, rows: list[SessionRow]) -> Steps:
    table = TrendTable()
    table.show_rows(trend_rows(_person(rows).series(), "left"))
    steps = _scrolled(app, table)
    table.close()
    return steps


def _scrolled(app: QApplication, view: QAbstractItemView) -> Steps:
    """The steps of a wheel through a list, from several places of it."""
    view.resize(*SIZE)
    view.show()
    _until_seen(app, view)
    bar, step = view.verticalScrollBar(), round(LINES * 1.7 * view.fontMetrics().height())
    took: Steps = []
    for place in range(PLACES):
        at = place * bar.maximum() // PLACES
        for k in range(STEPS):
            bar.setValue(at + k * step)
            start_s, start_cpu_s = time.perf_counter(), time.process_time()
            view.viewport().repaint()
            took.append((time.perf_counter() - start_s, time.process_time() - start_cpu_s))
    return took


def _until_seen(app: QApplication, view: QAbstractItemView) -> None:
    """Wait for the screen to take the window: nothing is painted before."""
    until_s = time.monotonic() + SHOWN_WITHIN_S
    while time.monotonic() < until_s:
        app.processEvents()
        window = view.windowHandle()
        if window is not None and window.isExposed():
            return
        time.sleep(0.01)
    raise RunError("the window was not shown, so that nothing could be measured")
