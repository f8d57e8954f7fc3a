"""A person over a span, as a part of a page: practice, and the trends of each exercise."""

from __future__ import annotations

from dataclasses import dataclass

from tracker.records.figure import shown, shown_with_unit
from tracker.records.marks import trend_marks_told
from tracker.records.over_time import OverTime, Trend
from ui.documents.parts import Cell, Fact, Row, Table

COLUMNS = ("At first", "Lately", "Least told", "Change", "Compared", "Sessions measured")


@dataclass(frozen=True, slots=True)
class OverTimePart:
    """What stands of a person over time: HTML and PDF both draw exactly this.

    ``tables`` stand under the names of their exercises.
    """

    title: str
    span: str
    practice: tuple[Fact, ...]
    tables: tuple[tuple[str, Table], ...]


def part_of(one: OverTime) -> OverTimePart:
    """What stands where."""
    counted = f"Practice up to {one.to_day.isoformat()}"
    if one.from_day is not None:
        counted = f"Practice from {one.from_day.isoformat()} to {one.to_day.isoformat()}"
    facts = tuple(Fact(f.label, shown_with_unit(f), f.value is None) for f in one.practice)
    # Of an exercise all trends have the same sets, so the same marks.
    places = {t.where: t.marked.value for t in one.trends}
    tables = tuple(
        (
            trend_marks_told(where, marked if isinstance(marked, float) else 0.0),
            Table(
                f"Trends of {where}: {one.person}",
                "Figure",
                COLUMNS,
                tuple(_row(t) for t in one.trends if t.where == where),
            ),
        )
        for where, marked in places.items()
    )
    return OverTimePart(f"{one.person} over time", counted, facts, tables)


def _row(trend: Trend) -> Row:
    ends = [
        Cell(shown(f) if f.value is None else shown_with_unit(f), f.value is None)
        for f in (trend.first, trend.last, trend.least)
    ]
    if trend.first.value is None:
        ends[0] = Cell("")
    if trend.least.value is None:
        ends[2] = Cell("")
    sessions = f"{shown(trend.measured)} of {shown(trend.sessions)}"
    sessions += f", {shown(trend.left_out)} left out"
    name = f"{trend.name} (affected side)" if trend.affected else trend.name
    return Row(name, (*ends, Cell(trend.verdict), Cell(trend.basis), Cell(sessions)))
