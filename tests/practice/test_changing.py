"""Changes between the sets of a session: what they do, what they don't, and what is kept."""

from __future__ import annotations

from typing import Any

import pytest

from tests.practice.person import SEATED, STAND, WALK, Person, plan_of
from tracker.practice.changing import Changed
from tracker.practice.conductor import Conductor
from tracker.practice.tasks import (
    AskAfterSet,
    AskGate,
    AskScores,
    AskSound,
    AskSupport,
    CountDown,
    DoSet,
    Over,
    Prepare,
    Rest,
    Settle,
    ShowToday,
    Task,
    Wait,
)
from tracker.records.figure import shown_with_unit
from tracker.records.figures import record_of
from tracker.session.stage import Step

NODS = {"exercise": "nods-on-target"}


def at(task: type[Task], *entries: dict[str, Any], **more: Any) -> tuple[Person, Conductor]:
    person = Person()
    conductor = person.practise(plan_of(*entries, **more), until=task)
    assert isinstance(conductor.task, task)
    return person, conductor


def changed(found: Changed | str) -> Changed:
    assert isinstance(found, Changed), found
    return found


def coming(conductor: Conductor) -> str:
    assert conductor.coming is not None
    return conductor.coming.entry_id


def test_a_faster_tempo_is_asked_in_the_next_set_and_kept() -> None:
    person, conductor = at(Prepare, SEATED, NODS)
    first = changed(conductor.change("tempo", 1))
    assert (first.before, first.after) == (60.0, 65.0)
    task = conductor.task
    assert isinstance(task, Prepare) and task.asked is not None
    assert task.asked.tempo_bpm == 65.0
    person.go_on(conductor)
    turns, nods = person.summary.exercises
    assert turns.prescribed["tempo_bpm"] == 65.0 and nods.prescribed["tempo_bpm"] == 60.0
    assert turns.changed == {"tempo_bpm": [60.0, 65.0]} and nods.changed is None
    (row,) = person.summary.changes
    assert (row.entry_id, row.what, row.before, row.after) == (
        "turns-on-target",
        "tempo",
        60.0,
        65.0,
    )
    told = record_of(person.summary)
    found = {f.label: shown_with_unit(f) for f in told.exercises[0].figures}
    assert found["Tempo, asked"] == "65 beats/min"
    assert found["Tempo, in the plan, changed in the call"] == "60 beats/min"
    session = told.find("call_changes")
    assert session is not None and session.value == "turns-on-target: tempo 60 to 65"


def test_a_change_is_taken_back_step_by_step() -> None:
    person, conductor = at(Rest, SEATED, NODS, WALK)
    changed(conductor.change("tempo", -1))
    changed(conductor.change("amplitude", -1))
    changed(conductor.change("next"))
    assert coming(conductor) == "walk"
    for what in ("next", "amplitude", "tempo"):
        back = changed(conductor.change("undo"))
        assert back.undone and back.what == what
    assert conductor.change("undo") == "nothing_to_undo"
    asked = conductor.coming
    assert asked is not None and (asked.entry_id, asked.tempo_bpm) == ("nods-on-target", 60.0)
    person.go_on(conductor)
    assert [e.entry_id for e in person.summary.exercises] == [
        "turns-on-target",
        "nods-on-target",
        "walk",
    ]
    assert all(e.changed is None for e in person.summary.exercises)
    assert [c.undone for c in person.summary.changes] == [False] * 3 + [True] * 3


def test_another_entry_comes_first_and_the_others_after_it() -> None:
    person, conductor = at(Prepare, SEATED, NODS, WALK)
    assert changed(conductor.change("next")).after == "nods-on-target"
    assert changed(conductor.change("next")).after == "walk"
    assert changed(conductor.change("next")).after == "turns-on-target"
    changed(conductor.change("next"))
    person.go_on(conductor)
    assert [e.entry_id for e in person.summary.exercises] == [
        "nods-on-target",
        "turns-on-target",
        "walk",
    ]


def test_the_plan_at_a_glance_follows() -> None:
    _, conductor = at(ShowToday, SEATED, NODS)
    conductor.change("next")
    assert isinstance(conductor.task, ShowToday)
    assert [e for e, _ in conductor.task.entries] == ["nods-on-target", "turns-on-target"]


def test_a_rest_goes_on_as_long_as_before() -> None:
    _, conductor = at(Rest, SEATED, NODS, WALK)
    until_s = conductor.task.until_s
    conductor.change("next")
    assert isinstance(conductor.task, Rest)
    assert (conductor.task.until_s, conductor.task.next_id) == (until_s, "walk")


def test_an_entry_that_comes_first_is_asked_all_that_it_needs() -> None:
    """Standing was never confirmed, so the change goes round nothing."""
    person, conductor = at(Prepare, SEATED, STAND)
    conductor.change("next")
    assert isinstance(conductor.task, AskSound)
    person.support = False
    person.go_on(conductor)
    assert [e.entry_id for e in person.summary.exercises] == ["turns-on-target"]
    assert [r.entry_id for r in person.summary.not_done] == ["stand"]


def test_who_is_asked_for_a_support_may_still_go_to_another() -> None:
    person, conductor = at(AskSupport, STAND, SEATED)
    assert changed(conductor.change("next")).after == "turns-on-target"
    assert isinstance(conductor.task, Prepare)
    assert changed(conductor.change("undo")).after == "stand"
    assert isinstance(conductor.task, AskSupport)
    person.go_on(conductor)
    assert [e.entry_id for e in person.summary.exercises] == ["stand", "turns-on-target"]


def test_what_can_not_be_done_today_is_never_put_first() -> None:
    _, conductor = at(Prepare, SEATED, {**STAND, "exercise": "stand"}, cleared=False)
    assert conductor.change("next") == "only_one"
    assert coming(conductor) == "turns-on-target"


@pytest.mark.parametrize(
    "task", [AskGate, AskScores, CountDown, DoSet, AskAfterSet, Wait, Settle, Over]
)
def test_nothing_changes_within_a_set_nor_while_something_is_asked(task: type[Task]) -> None:
    person, conductor = at(task, SEATED, STAND)
    before = conductor.task
    for what in ("tempo", "amplitude", "next", "undo"):
        assert conductor.change(what, -1) == "not_now"  # type: ignore[arg-type]
    assert conductor.task is before
    assert person.summary.changes == []


def test_once_a_set_has_begun_what_was_before_it_stays() -> None:
    person, conductor = at(Prepare, SEATED, NODS)
    conductor.change("tempo", 1)
    person.go_on(conductor, until=Rest)
    assert conductor.change("undo") == "nothing_to_undo"


def test_the_neck_limit_is_never_passed() -> None:
    limit = {"neck_limit_deg": {"yaw": 21, "pitch": 21}}
    _, conductor = at(Prepare, {**SEATED, "amplitude_deg": [15, 20]}, **limit)
    assert conductor.change("amplitude", 1) == "neck_limit"
    assert changed(conductor.change("amplitude", -1)).after == (13.0, 18.0)
    assert changed(conductor.change("amplitude", 1)).after == (15.0, 20.0)


def test_a_session_that_breaks_off_in_a_changed_set_says_so() -> None:
    person, conductor = at(Prepare, SEATED, NODS)
    changed(conductor.change("tempo", -1))
    conductor.answer(True)
    assert isinstance(conductor.task, CountDown) and conductor.task.asked is not None
    conductor.advance(conductor.task.until_s)
    assert isinstance(conductor.task, DoSet)
    values = conductor.task.asked.step_values if conductor.task.asked is not None else {}
    now_s = conductor.now_s
    step = {"from_s": now_s, "to_s": now_s + 20.0, "step": "exercise", **values}
    conductor.begin_set(Step.model_validate(step))
    # Nothing more reaches the journal.
    answers = [r for r in person.journal.content().of("answer") if r["about"] == "changed"]
    assert [r["value"] for r in answers] == [{"tempo_bpm": [60.0, 55.0]}]


def test_what_cannot_be_done_today_is_not_what_is_changed() -> None:
    locked = {"exercise": "turns-together", "unlock_after": {"condition": "When I say so."}}
    person, conductor = at(ShowToday, locked, SEATED, NODS)
    assert coming(conductor) == "turns-on-target"
    assert changed(conductor.change("tempo", 1)).asked.entry_id == "turns-on-target"
    assert changed(conductor.change("next")).before == "turns-on-target"
    assert coming(conductor) == "nods-on-target"
    changed(conductor.change("undo"))
    assert coming(conductor) == "turns-on-target"
    person.go_on(conductor)
    assert person.summary.exercises[0].changed == {"tempo_bpm": [60.0, 65.0]}
    assert [n.entry_id for n in person.summary.not_done] == ["turns-together"]


def test_what_is_gone_does_not_jam_the_taking_back() -> None:
    _, conductor = at(Prepare, SEATED, NODS, WALK)
    changed(conductor.change("tempo", 1))
    changed(conductor.change("next"))
    changed(conductor.change("tempo", 1))
    assert coming(conductor) == "nods-on-target"
    conductor.answer(False)
    assert coming(conductor) == "turns-on-target"
    back = changed(conductor.change("undo"))
    assert (back.what, back.asked.entry_id, back.after) == ("tempo", "turns-on-target", 60.0)
    assert conductor.change("undo") == "nothing_to_undo"
