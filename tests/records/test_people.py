"""Sessions by person, the plan that fits, and the day up to which practice is counted."""

from __future__ import annotations

import os
from datetime import date, timedelta
from pathlib import Path

import pytest

from tests.practice.person import SEATED, plan_of
from tests.records.rows import START, row
from tracker.plan.files import save_plan
from tracker.plan.model import HandOver, Plan
from tracker.records.index import Records, read_folder
from tracker.records.people import (
    NO_NAME,
    PlanTaken,
    count_to,
    people_of,
    plans_for,
    plans_in_force,
)


def records(*rows: object, plans: tuple[Plan, ...] = ()) -> Records:
    named = [(f"{k}.json", p) for k, p in enumerate(plans)]
    return Records(Path(), list(rows), named, [], 0, 0, True)  # type: ignore[arg-type]


TODAY = START + timedelta(days=30)


def plan(name: str, person: str | None, starts: int = 0) -> Plan:
    day = START + timedelta(days=starts)
    return plan_of(SEATED, plan_id=name, person=person, starts_on=day.isoformat())


def test_people_are_apart_and_who_needs_a_look_comes_first() -> None:
    found = people_of(
        records(
            row(0, person="calm"),
            row(0, person="ill", ended="red_flag", put_first=("chest_pain",)),
            row(1, person=None),
        ),
        START + timedelta(days=1),
    )
    assert [p.name for p in found] == ["ill", NO_NAME, "calm"]
    assert found[0].last_day == START


def test_the_plan_is_that_of_the_newest_session() -> None:
    old, new, other = plan("old", "P-1"), plan("new", "P-1", 7), plan("other", "P-2", 9)
    rows = [row(0, plan_id="old"), row(8, plan_id="new")]
    assert plans_for(rows, "P-1", [old, new, other], TODAY)[0] is new
    assert plans_for(rows[:1], "P-1", [old, new, other], TODAY)[0] is old
    # A plan that is for somebody else is not taken, even under the same name.
    assert plans_for([row(0, plan_id="other")], "P-1", [other], TODAY) == []
    # A plan for a person with no session yet under it is better than none.
    assert plans_for([row(0, plan_id="lost")], "P-1", [old, new], TODAY)[0] is new


def test_a_session_dated_after_today_decides_no_plan() -> None:
    """A clock that was wrong for one day would bring back what was put away long ago."""
    plans = (plan("old", "P-1"), plan("new", "P-1", 7))
    rows = [row(0, plan_id="old"), row(8, plan_id="new"), row(400, plan_id="old")]
    everything = records(*rows, plans=plans)
    for k, taken in ((29, "new"), (399, "old")):
        today = START + timedelta(days=k)
        (person,) = people_of(everything, today)
        assert person.plan is not None and person.plan.plan_id == taken
        assert plans_in_force(everything, today) == {"P-1": PlanTaken(person.plan)}
    # Where nothing else is there it is better than nothing.
    assert plans_for(rows[2:], "P-1", list(plans), TODAY)[0] is plans[0]


def test_of_plans_of_one_id_the_persons_own_then_the_newest_file_is_taken() -> None:
    own = plan("p", "P-1").model_copy(update={"rest_s": 20.0})
    template = plan("p", None, 7)
    newer = own.model_copy(update={"rest_s": 40.0})
    rows = [row(0, plan_id="p")]
    for plans in ([own, template], [template, own]):
        assert plans_for(rows, "P-1", plans, TODAY)[0] is own
    assert plans_for(rows, "P-1", [own, newer], TODAY)[0] is newer
    assert plans_for(rows, "P-1", [newer, own], TODAY)[0] is own
    assert plans_for([], "P-1", [own, newer], TODAY)[0] is newer

    def told(*plans: Plan) -> list[str]:
        (person,) = people_of(records(*rows, plans=plans), START + timedelta(days=1))
        return [r.text for r in person.reasons if "plan files" in r.text]

    assert told(own, newer) == [
        "2 plan files differ and start on the same day: the newest file is taken"
    ]
    # The same one twice, or one that has the better of the other, is nothing to look at.
    assert told(own, own.model_copy()) == [] and told(own, template) == []


def with_key(of: Plan) -> Plan:
    return of.model_copy(update={"hand_over": HandOver(plain=True)})


def test_what_was_handed_out_is_no_other_plan(tmp_path: Path) -> None:
    own = plan("p", "P-1").model_copy(update={"rest_s": 20.0})
    changed = own.model_copy(update={"rest_s": 40.0})

    def found(*files: tuple[str, Plan]) -> tuple[Plan | None, list[str]]:
        rows = [row(0, plan_id="p")]
        read = Records(Path(), rows, list(files), [], 0, 0, complete=True)
        (person,) = people_of(read, START + timedelta(days=1))
        said = [r.text for r in person.reasons if "plan files" in r.text or "handed" in r.text]
        return person.plan, said

    # Under the name that is offered; once the plan or the copy has been changed, that is told.
    copy = ("wren/for-patient-plan.json", with_key(own))
    differs = ["the plan taken differs from the one handed out: for-patient-plan.json"]
    for files in ([("wren/plan.json", own), copy],):
        assert found(*files) == found(*reversed(files)) == (own, [])
    for files in ([("wren/plan.json", changed), copy],):
        assert found(*files) == found(*reversed(files)) == (changed, differs)
    # Under another name: the same but for the keys, whichever was written first.
    for files in ([("a.json", own), ("b.json", with_key(own))],):
        assert found(*files) == found(*reversed(files)) == (own, [])
    # Where the copy is all that is here it is the plan; another one stays another one.
    assert found(copy) == (with_key(own), [])
    other, told = found(("a.json", own), ("b.json", with_key(changed)))
    assert other == with_key(changed) and len(told) == 1


def test_who_goes_back_to_what_was_before_has_the_newest_plan() -> None:
    one = plan("p", "P-1").model_copy(update={"rest_s": 20.0})
    two, again = one.model_copy(update={"rest_s": 40.0}), one.model_copy()
    (person,) = people_of(
        records(row(0, plan_id="p"), plans=(one, two, again)), START + timedelta(days=1)
    )
    assert person.plan is again
    # So where all have keys; but a copy with keys of a plan without does not make it newer.
    for files, taken in (
        ((with_key(one), with_key(two), with_key(one)), 2),
        ((one, two, with_key(one)), 1),
    ):
        (person,) = people_of(records(row(0, plan_id="p"), plans=files), START + timedelta(days=1))
        assert person.plan is files[taken]


def test_plans_stand_in_the_order_in_which_they_were_written(tmp_path: Path) -> None:
    for k, name in enumerate(("b", "c", "a")):
        path = tmp_path / f"{name}.json"
        save_plan(path, plan(name, "P-1"))
        os.utime(path, (k, k))
    assert [place for place, _ in read_folder(tmp_path).plans] == ["b.json", "c.json", "a.json"]


@pytest.mark.parametrize(
    ("today", "counted"),
    [
        (date(2026, 3, 12), date(2026, 3, 12)),
        (date(2026, 3, 14), date(2026, 3, 13)),
        (date(2026, 3, 19), date(2026, 3, 18)),
        (date(2026, 3, 20), date(2026, 3, 12)),
        (date(2027, 1, 1), date(2026, 3, 12)),
    ],
)
def test_practice_is_counted_up_to_a_day_that_the_folder_can_know(
    today: date, counted: date
) -> None:
    assert count_to([row(0), row(10)], today) == counted


def test_sessions_from_the_future_do_not_move_the_count() -> None:
    assert count_to([row(0), row(400)], START + timedelta(days=1)) == START


def test_somebody_elses_practice_today_is_nobodys_missed_day() -> None:
    today = START + timedelta(days=6)
    every_day = plan("p", "P-1")
    done = [row(k, person="P-1", plan_id="p") for k in range(6)]
    other = row(6, 20, person="P-2")
    alone, _ = (
        next(p for p in people_of(records(*rows, plans=(every_day,)), today) if p.name == "P-1")
        for rows in ([*done, other], done)
    )
    assert alone.adherence.to_day == today - timedelta(days=1)
    assert alone.adherence.length_days == 6


def test_sessions_dated_after_today_are_said() -> None:
    """A clock that was wrong puts them at the end of every trend."""
    rows = records(*(row(k) for k in (0, 1, 40)))

    def told(day: int) -> list[tuple[str, date | None]]:
        (person,) = people_of(rows, START + timedelta(days=day))
        return [(r.text, r.day) for r in person.reasons if "after today" in r.text]

    text = "sessions dated after today: 1; was that computer's clock right?"
    assert told(2) == [(text, START + timedelta(days=40))]
    # Where the patient lives it may be tomorrow already.
    assert told(39) == []
