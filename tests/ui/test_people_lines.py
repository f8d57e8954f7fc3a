"""The lines under a name in the list of people, and the numbers in the chart of dizziness."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from tests.records import made
from tests.records.rows import START, row
from tests.ui.painted import painted_by
from tracker.plan.gate import EMERGENCY
from tracker.records import telling
from tracker.records.figures import record_of
from tracker.records.index import Records
from tracker.records.people import Person, people_of
from tracker.records.rows import SessionRow
from ui.desk.people_list import PeopleList, lines_of
from ui.desk.text import list_lines
from ui.documents.charts import Label, Line, Mark, symptom_chart


def person_of(rows: list[SessionRow]) -> tuple[Person, Records]:

    records = Records(Path("clinic"), rows, [], [], 0, 0, complete=True)
    (person,) = people_of(records, rows[-1].day or START + timedelta(days=60))
    return person, records


FLAG = {"ended": "red_flag", "put_first": (EMERGENCY[0],), "sets": ()}


def test_an_older_red_flag_stands_in_the_list_with_its_day() -> None:
    weeks = [row(k) for k in range(1, 56)]
    asked = telling.question(EMERGENCY[0])
    person, records = person_of([row(0, **FLAG), *weeks])
    assert lines_of(person)[0] == f"See: older: 2 Mar 2026: answered yes: {asked}"
    assert f"  - older: 2 Mar 2026: answered yes: {asked}" in list(list_lines(records, [person]))


def test_it_is_named_beside_recent_reasons_and_not_only_counted() -> None:
    weeks = [row(k) for k in range(1, 56)]
    asked = f"older: 2 Mar 2026: answered yes: {telling.question(EMERGENCY[0])}"
    person, _ = person_of([row(0, **FLAG), *weeks, row(56, not_settled=True)])
    assert lines_of(person)[0].startswith("Urgent: symptoms did not settle")
    assert lines_of(person)[0].endswith(f"; {asked}")
    # It stands before what can wait, in the line and on the page.
    person, _ = person_of([row(0, **FLAG), *weeks, row(56, weekly={"medicines_changed": True})])
    assert lines_of(person)[0] == f"See: {asked} (and 1 more)"
    assert [r.older for r in person.reasons] == [True, False]


@pytest.mark.parametrize("width", [230, 300, 340, 500, 1200])
@pytest.mark.parametrize("percent", [100, 200])
def test_how_many_more_there_are_is_never_what_is_cut(
    qtbot: QtBot, width: int, percent: int
) -> None:
    rows = [row(k, weekly={"falls": "more", "hurt": True}) for k in range(3)]
    rows.append(row(3, **FLAG))
    rows.append(row(4, ended="stopped_unwell", weekly={"medicines_changed": True}))
    person, _ = person_of(rows)
    shown = PeopleList()
    qtbot.addWidget(shown)
    shown.set_percent(percent)
    shown.setMinimumWidth(0)
    shown.resize(width, 400)
    shown.show_people([person])
    shown.show()
    qtbot.waitExposed(shown)
    told = [run.text for run in painted_by(shown.viewport()).runs]
    count = len(person.reasons) - 2
    assert count > 1 and lines_of(person)[0].endswith(f" (and {count} more)")
    assert sum(text.endswith(f"(and {count} more)") for text in told) == 1, told


def test_a_number_in_the_chart_is_struck_by_no_line() -> None:
    record = record_of(made.finished())
    for score in range(11):
        figures = tuple(
            replace(f, value=float(score)) if f.key == "dizziness.before" else f
            for f in record.figures
        )
        chart = symptom_chart(replace(record, figures=figures))
        assert chart is not None
        across = [i.y1 for i in chart.items if isinstance(i, Line) and i.dashed and i.y1 == i.y2]
        words = [i for i in chart.items if isinstance(i, Label)]
        number = next(i for i in words if i.anchor == "middle" and i.text == f"{score}")
        mark = next(i for i in chart.items if isinstance(i, Mark))
        # Digits stand .7 of their size above the base line (from memory of most typefaces).
        top = number.y - 0.7 * number.size
        assert not [y for y in across if top - 0.3 < y < number.y + 0.3], score
        heading = next(i for i in words if i.text.startswith("Dizziness"))
        assert top > heading.y, score
        assert number.y < mark.y - 2 or top > mark.y + 2, score
