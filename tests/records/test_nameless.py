"""Sessions without a pseudonym may be of several people: nothing is told across them."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path

import pytest

from tests.practice.person import SEATED, plan_of
from tests.records import made
from tests.records.rows import START, row, rows_with, set_row
from tests.records.test_people import records
from tests.ui.test_report_command import saved
from tracker.practice.tries import TRY_ID
from tracker.records.attention import Kind
from tracker.records.figures import record_of
from tracker.records.over_time import over_time_of, over_time_to_tell
from tracker.records.people import NO_NAME, Person, people_of
from tracker.records.plans import with_plans
from tracker.records.rows import SessionRow
from ui.cli import main
from ui.desk.text import NAMELESS, list_lines, person_lines

#: What a person's own pseudonym may be, whatever the nameless are called.
ODD = ("(no pseudonym)", NAMELESS)
TODAY = START + timedelta(days=60)


def by_name(*rows: SessionRow, today: date = TODAY) -> dict[str, Person]:
    plan = plan_of(SEATED, plan_id="plan-7", person=None, starts_on=START.isoformat())
    return {p.name: p for p in people_of(records(*rows, plans=(plan,)), today)}


def fallen(person: str | None) -> list[SessionRow]:
    """Sessions whose gaze falls and whose score rises: six before, six after."""
    shares = [0.9, 0.91, 0.9, 0.92, 0.9, 0.91, 0.4, 0.41, 0.4, 0.42, 0.4, 0.41]
    rows = rows_with("on_target", shares)
    return [
        r._replace(person=person, before=1.0 if k < 6 else 7.0, after=1.0 if k < 6 else 8.0)
        for k, r in enumerate(rows)
    ]


def test_a_change_is_called_of_a_person_and_not_of_the_nameless() -> None:
    """The same rows under a name have all of it: so what is missing is missing on purpose."""
    known = by_name(*fallen("P-1"))["P-1"]
    kinds = {r.kind for r in known.reasons}
    assert {Kind.rising, Kind.practice, Kind.gaze} <= kinds
    assert known.adherence.share is not None and known.series() and known.plan is not None
    for person in (None, "", "  ", "\t", "\u200b", "\u202e\u2066 "):
        (nobody,) = by_name(*fallen(person)).values()
        assert nobody.nameless and len(nobody.rows) == 12
        assert nobody.reasons == [] and nobody.conditions == [] and nobody.series() == []
        assert nobody.plan is None and nobody.gaze is None and nobody.baseline_day is None
        assert nobody.adherence.share is None and nobody.adherence.days == {}
        assert over_time_to_tell(nobody) == [] and over_time_of(nobody).trends == ()


@pytest.mark.parametrize("written", ["P-1 ", "\u200bP-1", "P-1\u202e"])
def test_what_is_not_seen_of_a_pseudonym_makes_nobody_else(written: str) -> None:
    """As in documents, so that one who is one there has one plan and one course here."""
    rows = fallen("P-1")
    mixed = [r._replace(person=written) if k % 2 else r for k, r in enumerate(rows)]
    found = by_name(*mixed)
    assert list(found) == ["P-1"] and len(found["P-1"].rows) == 12
    own = plan_of(SEATED, plan_id=made.finished().plan_id, person="P-1")
    record = record_of(made.without(made.finished(), person=written))
    assert record.person_id == "P-1"
    (told,) = with_plans([record], [("p.json", own)])
    assert told.plan is not None and told.plan.plan == own


def test_a_quiet_try_of_nobody_is_left_out_however_nobody_is_written() -> None:
    quiet = row(0, plan_id=TRY_ID, ended="stopped")
    for person in (None, "", "\u200b"):
        assert by_name(quiet._replace(person=person)) == {}
    assert set(by_name(quiet)) == {"P-1"}


@pytest.mark.parametrize("name", ODD)
def test_somebody_who_is_called_so_has_trends_of_their_own(name: str) -> None:
    found = by_name(*fallen(name), *(r._replace(place=f"x/{r.place}") for r in fallen(None)))
    assert set(found) == {name, NO_NAME}
    assert not found[name].nameless and len(found[name].rows) == 12
    assert Kind.gaze in {r.kind for r in found[name].reasons}
    (one,) = over_time_to_tell(found[name])
    assert one.person_id == name and one.trends


def test_each_of_the_nameless_has_its_own_reasons() -> None:
    grave = {"ended": "red_flag", "put_first": ("chest_pain",)}
    dark = set_row({"on_target": 0.8}, flags={"dark": "too little light"})
    found = by_name(
        row(40, person=None, **grave),
        row(50, person=None, ended="stopped_unwell"),
        row(51, person=None, **grave),
        row(52, person=None, sets=(dark,)),
        row(53, person=None, sets=(dark,)),
    )[NO_NAME]
    told = [(r.kind, r.day, r.times, r.older) for r in found.reasons]
    assert told == [
        (Kind.red_flag, START + timedelta(days=51), 1, False),
        (Kind.red_flag, START + timedelta(days=40), 1, False),
        (Kind.unwell, START + timedelta(days=50), 1, False),
        # What can wait is one line, and counts sessions, not a person's.
        (Kind.doubt, START + timedelta(days=53), 2, False),
    ]


def test_another_session_makes_none_of_the_nameless_old_but_the_calendar_does() -> None:
    """Else each would have its own line first for good."""
    grave = {"ended": "red_flag", "put_first": ("chest_pain",)}
    hurt = {"weekly": {"falls": "more", "hurt": True}}
    harmless = {"weekly": {"falls": "once", "hurt": False}}
    old = [
        row(k, person=None, **(grave if k < 5 else hurt if k < 8 else harmless)) for k in range(10)
    ]
    old.append(row(11, person=None, weekly={"medicines_changed": True}))
    rows = [*old, row(40, person=None), row(59, person=None)]

    def told(to_day: int) -> list[tuple[Kind, int, int, bool]]:
        found = by_name(*rows, today=START + timedelta(days=to_day))[NO_NAME]
        return [(r.kind, (r.day - START).days, r.times, r.older) for r in found.reasons if r.day]

    # The last day that is counted is the newest session's: 28 days before it are recent.
    assert told(60) == [(Kind.red_flag, 4, 5, True), (Kind.fell, 7, 3, True)]
    rows = [*old, row(27, person=None)]
    # On day 27 the first is 28 days ago, counted with both ends: nothing is older.
    assert not any(aged for *_, aged in told(27))
    assert [day for kind, day, *_ in told(27) if kind == Kind.red_flag] == [4, 3, 2, 1, 0]
    # A day later one of them is: by the calendar, with no session since.
    assert (Kind.red_flag, 0, 1, True) in told(29)
    assert [d for k, d, _, aged in told(29) if k == Kind.red_flag and not aged] == [4, 3, 2, 1]


def test_the_text_says_what_to_do_and_shows_each_session() -> None:
    people = by_name(*fallen(None))
    listed = list(list_lines(records(*fallen(None)), list(people.values())))
    lines = list(person_lines(people[NO_NAME]))
    for text in ("\n".join(listed), "\n".join(lines)):
        assert NAMELESS in text and "give each person a plan of their own, with a pseudonym" in text
        assert "Practice: " not in text and "->" not in text
    # Nobody knows how many people they are.
    assert listed[0].startswith("0 people, 12 sessions")
    sessions = lines[lines.index("Sessions, the newest first") + 1 :]
    assert len(sessions) == 12


def test_the_command_finds_both(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    plain = made.finished()
    for name, person in (("a", None), ("b", " "), ("c", "(no pseudonym)")):
        changes = {"person": person, "session_id": f"s-{name}"}
        saved(tmp_path / "clinic" / name, plain.model_copy(update=changes))
    ask = ["review", str(tmp_path / "clinic"), "--text", "--person"]
    assert main([*ask, "(no pseudonym)"]) == 0
    assert "affected side" in capsys.readouterr().out
    assert main([*ask, NAMELESS]) == 0
    assert "a plan of their own, with a pseudonym" in capsys.readouterr().out
    assert main([*ask, "P-1"]) == 2
    assert f"it has: {NAMELESS}, (no pseudonym)" in capsys.readouterr().err
