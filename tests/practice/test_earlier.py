"""What earlier sessions mean for today's: what is asked of the day before, and once."""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.practice.person import ALL_NO, SEATED, Person, done_ids, plan_of, refused
from tracker.exercises.catalogue import CATALOGUE, NOT_MEASURED
from tracker.plan.gate import SPIN
from tracker.plan.starter import TRY_ID
from tracker.practice.conductor import Conductor
from tracker.practice.earlier import Earlier, earlier_of
from tracker.practice.history import load_history
from tracker.practice.tasks import (
    AskAfterSet,
    AskDayOver,
    AskGate,
    AskSinceLast,
    DoSet,
    Over,
    Task,
    Wait,
)
from tracker.records.figures import record_of
from tracker.session.saving import SUMMARY_NAME
from tracker.session.stage import Step
from tracker.session.summary_file import Summary, save_summary
from ui.documents.fhir import fhir_bundle

DAY = date(2026, 3, 2)
PLAN = plan_of(SEATED)
NEAR = plan_of({"exercise": "near-far", "note": "Why."}, SEATED)


def session(
    day: int, history: Sequence[Summary] = (), *, plan: Any = PLAN, **answers: Any
) -> tuple[Person, Summary]:
    """A session so many days after the first; several on one day follow each other."""
    today = DAY + timedelta(days=day)
    person = Person(**answers)
    person.practise(plan, history=history, today=today)
    found = person.summary.model_copy(update={"started_at": f"{today}T09:00:00+01:00"})
    return person, found


def since_last(summary: Summary) -> Any:
    return (summary.gate or {})["since_last"]


def test_the_day_before_is_asked_about_once_and_no_morning_before_it_has_come() -> None:
    history: list[Summary] = []
    asked = []
    # Three bouts on the first day, two on the second, one after a day of rest.
    for day in (0, 0, 0, 1, 1, 3):
        person, found = session(day, history)
        history.append(found)
        asked.append("AskSinceLast" in person.kinds())
        wanted = {"rest_of_day": 1, "next_morning": 0} if asked[-1] else None
        assert since_last(found) == wanted
    assert asked == [False, False, False, True, False, True]


ENDED: list[tuple[dict[str, Any], str]] = [
    ({"after": {"dizziness": 6}}, "symptom_rule"),
    ({"settle_s": None}, "symptom_rule"),
    ({"gate": {**ALL_NO, "chest_pain": True}}, "red_flag"),
    ({"gate": {**ALL_NO, "neck_pain": True}}, "red_flag"),
    ({"gate": {**ALL_NO, SPIN: True}}, "stopped_unwell"),
    ({"in_set": Conductor.unwell}, "stopped_unwell"),
    ({"in_set": lambda c: c.dropped(c.now_s + 2.0, seen=True)}, "possible_fall"),
]


@pytest.mark.parametrize(("answers", "ended"), ENDED)
def test_what_was_all_for_today_stays_so_until_the_next_day(
    answers: dict[str, Any], ended: str
) -> None:
    _, first = session(0, **answers)
    assert first.ended == ended
    again, refused_one = session(0, [first])
    # Who comes back may need help now: that is asked first, and nothing else.
    assert again.kinds() == ["AskGate", "AskDayOver", "Over"]
    assert (refused_one.ended, refused_one.ended_because) == ("stopped", ["day_is_over"])
    assert done_ids(refused_one) == []
    need, _ = session(0, [first], gate={**ALL_NO, "blackout": True})
    assert need.tasks[-1] == Over(ended="red_flag", because=("blackout",))
    # Another plan makes no other day of it.
    _, of_other = session(0, [first], plan=plan_of(SEATED, plan_id="another"))
    assert of_other.ended_because == ["day_is_over"]
    _, next_day = session(1, [first, refused_one])
    assert next_day.ended == "finished" and done_ids(next_day)


@pytest.mark.parametrize("plan_id", [None, TRY_ID])
@pytest.mark.parametrize("named", [True, False])
def test_a_try_and_practice_outside_a_plan_end_the_day_too(
    plan_id: str | None, named: bool
) -> None:
    """Outside a plan nobody is named: it may have been the person of this one."""
    _, first = session(0, settle_s=None)
    of = {"plan_id": plan_id, "person": first.person if named else None}
    _, again = session(0, [first.model_copy(update=of)])
    assert again.ended_because == ["day_is_over"]


@pytest.mark.parametrize("again", [{}, {"neck_pain": True}])
def test_the_therapist_s_word_of_today_lets_it_go_on_after_the_safety_questions(
    again: dict[str, bool],
) -> None:
    """Said twice, kept and told; this project's own choice."""
    _, first = session(0, after={"dizziness": 6})
    gate = [dict(ALL_NO), {**ALL_NO, **again}]
    person, found = session(0, [first], allowed=True, gate=gate)
    assert person.kinds()[:4] == ["AskGate", "AskDayOver", "AskDayOver", "AskGate"]
    assert [t.sure for t in person.tasks if isinstance(t, AskDayOver)] == [False, True]
    assert found.allowed_today is True and not first.allowed_today
    assert found.ended == ("red_flag" if again else "finished")
    assert bool(done_ids(found)) is not bool(again)
    told = [f.value for f in record_of(found).figures if f.measure == "allowed_today"]
    assert told == ["went on, as the therapist had said today"]
    # Who takes it back, or leaves, does not go on.
    person, found = session(0, [first], allowed=[True, False, False])
    assert person.kinds() == ["AskGate", *["AskDayOver"] * 3, "Over"]
    assert found.ended_because == ["day_is_over"] and not found.allowed_today
    person = Person()
    left = person.practise(PLAN, until=AskDayOver, history=[first], today=DAY)
    left.stop()
    assert left.task == Over(ended="stopped", because=("day_is_over",))


def test_after_an_emergency_only_another_day_lets_it_go_on() -> None:
    for question, final in (("chest_pain", True), ("neck_pain", False)):
        _, first = session(0, gate={**ALL_NO, question: True})
        person = Person()
        conductor = person.practise(PLAN, until=AskDayOver, history=[first], today=DAY)
        task = conductor.task
        assert isinstance(task, AskDayOver) and task.final is final
        if final:
            with pytest.raises(ValueError, match="an emergency"):
                conductor.answer(True)
        conductor.answer(not final)
        assert isinstance(conductor.task, Over) is final


def test_what_ended_well_or_is_still_to_come_ends_no_day() -> None:
    _, well = session(0)
    stopped = well.model_copy(update={"ended": "stopped"})
    broken = well.model_copy(update={"ended": "interrupted"})
    badly = well.model_copy(update={"ended": "stopped_unwell"})
    ahead = badly.model_copy(update={"started_at": f"{DAY + timedelta(days=1)}T09:00:00"})
    theirs = badly.model_copy(update={"person": "somebody else"})
    for last in (well, stopped, broken, ahead, theirs):
        assert done_ids(session(0, [last])[1])


@pytest.mark.parametrize(("allowed", "kinds"), [(True, ["AskGate"]), (False, ["Over"])])
def test_the_therapist_beside_the_person_is_asked_once(allowed: bool, kinds: list[str]) -> None:
    """Nobody else has to say it twice; but a button alone is no therapist's word."""
    _, badly = session(0, after={"dizziness": 6})
    person = Person(allowed=allowed)
    person.practise(PLAN, history=[badly], today=DAY, supervised=True)
    assert person.kinds()[:3] == ["AskGate", "AskDayOver", *kinds]
    assert person.summary.allowed_today is bool(done_ids(person.summary)) is allowed


def test_after_an_emergency_no_therapist_beside_lets_it_go_on() -> None:
    """The button that says so is on the page of tools, for whoever presses it."""
    _, emergency = session(0, gate={**ALL_NO, "chest_pain": True})
    person = Person()
    person.practise(PLAN, history=[emergency], today=DAY, supervised=True)
    (asked,) = [t for t in person.tasks if isinstance(t, AskDayOver)]
    assert asked.final and person.summary.ended_because == ["day_is_over"]


def test_a_day_on_which_nothing_was_begun_has_no_rest_to_ask_about() -> None:
    _, first = session(0)
    nothing = first.model_copy(update={"exercises": []})
    assert not earlier_of([nothing], DAY + timedelta(days=1)).ask_since_last
    assert earlier_of([first, nothing], DAY + timedelta(days=1)).ask_since_last


def test_a_day_that_was_told_of_is_not_asked_about_again_the_day_after_next() -> None:
    """Who answers and then leaves, before anything is begun, has told of it."""
    _, first = session(0)
    asked, left = session(1, [first], gate=[dict(ALL_NO)], before={"dizziness": 2}, ready=False)
    assert "AskSinceLast" in asked.kinds() and not left.anything_begun
    assert not earlier_of([first, left], DAY + timedelta(days=2)).ask_since_last
    _, again = session(2, [first, left])
    assert earlier_of([first, left, again], DAY + timedelta(days=3)).ask_since_last


def test_a_session_that_ended_before_the_question_leaves_it_to_the_next() -> None:
    _, first = session(0)
    ended, stopped = session(1, [first], gate={"fall": True})
    assert "AskSinceLast" not in ended.kinds()
    assert earlier_of([first, stopped], DAY + timedelta(days=1)).ask_since_last


def test_what_is_left_out_is_not_asked_again_and_told_as_not_answered() -> None:
    _, first = session(0)
    person = Person()
    today = DAY + timedelta(days=1)
    conductor = person.practise(PLAN, until=AskSinceLast, history=[first], today=today)
    assert isinstance(conductor.task, AskSinceLast)
    conductor.answer({"rest_of_day": 2})
    person.tasks.clear()
    person.go_on(conductor)
    found = person.summary.model_copy(update={"started_at": f"{today}T09:00:00"})
    assert since_last(found) == {"rest_of_day": 2, "next_morning": None}
    assert not earlier_of([first, found], today).ask_since_last
    told = {
        f.aspect: (f.value, f.reason) for f in record_of(found).figures if f.measure == "since_last"
    }
    assert told["rest_of_day"][0] == 2.0
    assert told["next_morning"] == (None, "not answered")
    # A record system learns it as of a fall that was not told (HL7's list of such reasons).
    entries = [e["resource"] for e in json.loads(fhir_bundle([record_of(found)]))["entry"]]
    items = [i for e in entries if e["resourceType"] == "QuestionnaireResponse" for i in e["item"]]
    (left_out,) = [i for i in items if i["linkId"] == "since_last.next_morning"]
    assert left_out["extension"][0]["valueCode"] == "asked-declined" and "answer" not in left_out


def test_another_plan_of_the_same_person_asks_about_the_last_one(tmp_path: Path) -> None:
    _, found = session(0)
    other = found.model_copy(update={"plan_id": "the-plan-before"})
    stranger = found.model_copy(update={"person": "somebody else"})
    for kept, wanted in ((other, True), (stranger, False)):
        folder = tmp_path / str(kept.person) / "one"
        folder.mkdir(parents=True)
        save_summary(folder / SUMMARY_NAME, kept)
        history, _ = load_history(folder.parent, PLAN)
        person, _ = session(1, history)
        assert ("AskSinceLast" in person.kinds()) is wanted


def test_a_folder_that_was_copied_by_hand_is_one_session(tmp_path: Path) -> None:
    _, found = session(0)
    kept = found.model_copy(update={"session_id": "one"})
    for name, one in (("one", kept), ("one - copy", kept), ("two", found), ("three", found)):
        (tmp_path / name).mkdir()
        save_summary(tmp_path / name / SUMMARY_NAME, one)
    # Two without an ID stay two: nobody knows that they are one.
    assert found.session_id is None and len(load_history(tmp_path, PLAN)[0]) == 3


def test_a_try_a_day_to_come_and_an_unknown_day_ask_nothing() -> None:
    _, found = session(0)
    for odd in ({"plan_id": TRY_ID}, {"started_at": None}, {"started_at": "2126-03-02T09:00:00"}):
        assert earlier_of([found.model_copy(update=odd)], DAY + timedelta(days=1)) == Earlier()
    a_try = PLAN.model_copy(update={"plan_id": TRY_ID})
    person, _ = session(1, [found], plan=a_try)
    assert "AskSinceLast" not in person.kinds()


# --- double in near work ---


def in_the_set(until: type[Task] = DoSet, **options: Any) -> tuple[Person, Any]:
    person = Person()
    return person, person.practise(NEAR, until=until, **options)


def begin_set(conductor: Any) -> None:
    asked = conductor.task.asked
    values = {"from_s": conductor.now_s, "to_s": conductor.now_s + 60.0, "step": "exercise"}
    conductor.begin_set(Step.model_validate(values | asked.step_values))


def test_double_told_in_the_set_is_kept_and_not_asked_again() -> None:
    person, conductor = in_the_set(today=DAY)
    begin_set(conductor)
    conductor.saw_double()
    conductor.end_set(conductor.now_s + 5.0)
    # Nothing else is to be asked of this set: the score comes.
    assert isinstance(conductor.task, Wait) and conductor.task.saw_double
    person.tasks.clear()
    person.go_on(conductor)
    assert "AskGate" not in person.kinds()
    near, turns = person.summary.exercises
    assert near.clarity == {"value": "double", "reason": None, "stopped_set": True}
    assert turns.clarity == {"value": "clear", "reason": None}
    told = [
        (f.measure, f.value)
        for f in record_of(person.summary).exercises[0].figures
        if f.measure in ("clarity", "stopped_double")
    ]
    assert told == [("clarity", "double"), ("stopped_double", "yes")]


def test_a_set_that_ends_by_itself_asks_how_it_looked() -> None:
    person, conductor = in_the_set(today=DAY)
    begin_set(conductor)
    conductor.end_set(conductor.now_s + 5.0)
    assert conductor.task == AskAfterSet(entry_id="near-far", questions=("clarity",))
    conductor.answer({"clarity": "clear"})
    assert isinstance(conductor.task, Wait) and not conductor.task.saw_double
    person.tasks.clear()
    person.go_on(conductor)
    assert "stopped_set" not in person.summary.exercises[0].clarity


def test_double_can_be_told_only_in_a_set() -> None:
    _, conductor = in_the_set(until=AskGate)
    with pytest.raises(ValueError, match="there is no set"):
        conductor.saw_double()


@pytest.mark.parametrize(
    ("said", "days", "exercises"),
    [
        ("double", 0, ["turns-on-target"]),
        ("clear", 0, ["near-far", "turns-on-target"]),
        ("double", 1, ["near-far", "turns-on-target"]),
    ],
)
def test_near_work_seen_double_in_is_not_done_again_on_that_day(
    said: str, days: int, exercises: list[str]
) -> None:
    clarity = said
    person = Person(clarity=clarity)
    only_near = plan_of({"exercise": "near-far", "note": "Why."})
    person.practise(only_near, today=DAY)
    found = person.summary.model_copy(update={"started_at": f"{DAY}T09:00:00", "plan_id": "old"})
    again = Person()
    again.practise(NEAR, history=[found], today=DAY + timedelta(days=days))
    assert done_ids(again.summary) == exercises
    wanted = {} if len(exercises) == 2 else {"near-far": ["saw_double"]}
    assert refused(again.summary) == wanted


def test_a_second_entry_of_it_in_the_same_session_is_passed_over() -> None:
    twice = plan_of(
        {"exercise": "near-far", "note": "Why."},
        {"exercise": "near-far", "note": "Why.", "entry_id": "again"},
    )
    for said, left in (("double", {"again": ["saw_double"]}), ("blurred", {})):
        person = Person(clarity=said)
        person.practise(twice, today=DAY)
        assert refused(person.summary) == left


def test_double_on_a_far_target_is_asked_about_and_refuses_no_near_work() -> None:
    person = Person(clarity="double")
    person.practise(PLAN, today=DAY)
    found = person.summary.model_copy(update={"started_at": f"{DAY}T09:00:00"})
    assert [t.because for t in person.tasks if isinstance(t, AskGate)] == ["start", "double"]
    assert earlier_of([found], DAY).doubled == frozenset()


# --- what is asked after a set ---

CLARITY_ASKED = {
    "eyes-up-down": ("clarity",),
    "eyes-side-to-side": ("clarity",),
    "turns-on-target": ("clarity",),
    "follow-slowly": ("clarity",),
    "eyes-then-head": ("clarity",),
    "thumb-together": ("clarity",),
    "near-hold": ("clarity",),
    "remembered-target": ("landed", "clarity"),
    # No target is looked at.
    "turns-together": (),
    "head-tilts": (),
    "shoulders-back": (),
    "sit-to-stand": (),
    # Who stands for a time, or sways, may have held on.
    "stand": ("steadied",),
    "ankle-sway": ("steadied",),
    "weight-shift": ("steadied",),
}


@pytest.mark.parametrize("exercise", CLARITY_ASKED)
def test_what_only_the_patient_knows_of_each_is_asked(exercise: str) -> None:
    """As the programme has it: clarity after every set with a target, holding on in standing."""
    person = Person(reader=True)
    person.practise(plan_of({"exercise": exercise, "note": "Why."}), today=DAY)
    assert done_ids(person.summary) == [exercise]
    asked = [t.questions for t in person.tasks if isinstance(t, AskAfterSet)]
    assert asked == ([CLARITY_ASKED[exercise]] if CLARITY_ASKED[exercise] else [])


def test_what_the_catalogue_says_is_asked_is_asked() -> None:
    ways = {
        "blur_of_target": "clarity",
        "double_image": "clarity",
        "gaze_eyes_shut": "landed",
        "steadied": "steadied",
    }
    claimed = {k for k, text in NOT_MEASURED.items() if "asked" in text} - {"arm"}
    assert claimed == set(ways)
    for exercise in CATALOGUE.values():
        person = Person(reader=True)
        entry = {"exercise": exercise.id, "note": "Why."}
        person.practise(plan_of(entry), today=DAY)
        asked = {q for t in person.tasks if isinstance(t, AskAfterSet) for q in t.questions}
        wanted = {ways[k] for k in exercise.not_measured if k in ways}
        assert wanted <= asked, exercise.id


def test_where_shut_eyes_pointed_is_kept_and_told() -> None:
    person = Person()
    person.practise(plan_of({"exercise": "remembered-target"}), today=DAY)
    (found,) = person.summary.exercises
    assert found.landed == {"value": "beside", "reason": None}
    figures = record_of(person.summary).exercises[0].figures
    (told,) = [f for f in figures if f.measure == "landed"]
    assert told.value == "beside the target"
    assert [f.value for f in figures if f.measure == "clarity"] == ["clear"]
