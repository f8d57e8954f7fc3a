"""The lines under a name in the list of people."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

from tests.records.rows import START, row
from tracker.plan.gate import EMERGENCY
from tracker.records import telling
from tracker.records.index import Records
from tracker.records.people import Person, people_of
from tracker.records.rows import SessionRow
from ui.desk.people_list import lines_of
from ui.desk.text import list_lines


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


def test_it_is_named_behind_a_recent_reason_and_not_only_counted() -> None:
    """Whatever comes first of the recent ones, the gravest of the older ones is named."""
    weeks = [row(k) for k in range(1, 56)]
    for recent in ({"not_settled": True}, {"weekly": {"medicines_changed": True}}):
        person, _ = person_of([row(0, **FLAG), *weeks, row(56, **recent)])
        why = lines_of(person)[0]
        assert "; older: 2 Mar 2026: answered yes: " in why, why
