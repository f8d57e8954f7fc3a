"""Each gate, permission, unlock and symptom rule: what it refuses, and what it lets through."""

from __future__ import annotations

from typing import Any

import pytest

from tests.practice.person import (
    ALL_NO,
    SEATED,
    SHUT,
    STAND,
    WALK,
    Person,
    done_ids,
    plan_of,
    refused,
    sessions,
)
from tracker.errors import InputError
from tracker.plan.gate import CALL, EMERGENCY, QUESTIONS, SPIN
from tracker.practice.conductor import Conductor
from tracker.practice.tasks import (
    NO_CAMERA,
    AskAfterSet,
    AskGate,
    AskOpen,
    AskScores,
    AskSupport,
    CountDown,
    DoSet,
    Over,
    Prepare,
    Rest,
    Settle,
    ShowToday,
    Wait,
)
from tracker.session.stage import Step

NODS = {"exercise": "nods-on-target"}
AFTER_TURNS = {"condition": "Calm.", "after": "turns-on-target", "sessions": 2, "rise_most": 1}


def practised(*entries: dict[str, Any], options: Any = None, **answers: Any) -> Person:
    person = Person(**answers)
    person.practise(plan_of(*entries), **(options or {}))
    return person


# --- the order ---


def test_a_session_goes_from_the_first_question_to_the_end() -> None:
    person = practised(SEATED, NODS)
    one_set = ["Prepare", "CountDown", "DoSet", "AskAfterSet", "Wait", "AskScores", "Settle"]
    before = ["AskGate", "AskScores", "ShowToday"]
    assert person.kinds() == [*before, *one_set, "Rest", *one_set, "Over"]
    summary = person.summary
    assert (summary.ended, summary.not_done) == ("finished", [])
    assert done_ids(summary) == ["turns-on-target", "nods-on-target"]
    assert (summary.plan_id, summary.person) == ("plan-7", "P-07")
    assert summary.gate is not None and summary.gate["answers"] == ALL_NO
    assert summary.symptoms is not None and summary.symptoms["settled_minutes"] == 1.0
    first = summary.exercises[0]
    assert first.clarity["value"] == "clear"
    assert first.symptoms == summary.symptoms
    assert first.prescribed["repetitions"] == 20


def test_times_are_kept() -> None:
    person = practised(SEATED, NODS)
    by_kind = {type(t): t for t in person.tasks}
    first = next(t for t in person.tasks if isinstance(t, Wait))
    # 3 s to count down, 20 s of a set, 10 s to the score; 60 s to settle, 30 s of rest.
    assert first.until_s == pytest.approx(33.0)
    rest = by_kind[Rest]
    assert isinstance(rest, Rest)
    assert rest.until_s == pytest.approx(23.0 + 60.0 + 30.0) and rest.next_id == "nods-on-target"


def test_nobody_waits_after_the_last_entry_or_for_one_that_is_refused() -> None:
    plan = plan_of(SEATED, STAND, cleared=False)
    person = Person()
    person.practise(plan)
    assert "Rest" not in person.kinds()


def test_the_rest_pose_is_taken_anew_for_standing_and_after_it() -> None:
    person = practised(SEATED, NODS, STAND, {"exercise": "turns-together"})
    poses = [t.rest_pose for t in person.tasks if isinstance(t, Prepare)]
    assert poses == [True, False, True, True]


def test_from_another_seat_the_rest_pose_is_taken_anew() -> None:
    # The plan's own seat is at 75 cm; a fingertip that comes from afar needs 100 cm.
    far, near = {"exercise": "near-far"}, {"exercise": "eyes-side-to-side"}
    person = practised(far, {"exercise": "turns-x2"}, near, WALK, {"exercise": "near-hold"})
    asked = [t for t in person.tasks if isinstance(t, Prepare)]
    assert [t.rest_pose for t in asked if t.asked and t.asked.exercise.id != "walk"] == [
        True,
        True,
        False,
        True,
    ]
    assert [t.chair_mm for t in asked] == [None, 1000.0, 750.0, 750.0, 750.0]


def test_what_only_the_patient_knows_is_asked_where_it_belongs() -> None:
    person = practised(SEATED, SHUT, STAND, WALK)
    asked = {t.entry_id: t.questions for t in person.tasks if isinstance(t, AskAfterSet)}
    assert asked == {
        "turns-on-target": ("clarity",),
        "stand": ("steadied",),
        "walk": ("own_count",),
    }
    walk = person.summary.exercises[-1]
    assert walk.done.repetitions is None
    assert walk.own_count == {"value": 10, "reason": None}
    assert person.summary.exercises[0].own_count is None


def test_a_rest_is_cut_short_by_a_yes_alone_and_that_is_marked() -> None:
    person = Person()
    conductor = person.practise(plan_of(SEATED, NODS), until=Rest)
    until_s = conductor.task.until_s
    conductor.advance(until_s - 20.0)
    conductor.answer(False)
    assert isinstance(conductor.task, Rest)
    conductor.answer(True)
    assert isinstance(conductor.task, Prepare) and conductor.now_s == until_s - 20.0
    marks = [r for r in person.journal.content().of("mark") if r["name"] == "rest_ended"]
    assert [(m["time_s"], m["left_s"]) for m in marks] == [(until_s - 20.0, 20.0)]


def test_a_rest_that_was_cut_short_does_not_come_again_for_the_next_entry() -> None:
    person = Person(support=False)
    conductor = person.practise(plan_of(SEATED, STAND, NODS), until=Rest)
    conductor.answer(True)
    person.tasks.clear()
    person.go_on(conductor)
    assert "Rest" not in person.kinds()
    assert done_ids(person.summary) == ["turns-on-target", "nods-on-target"]


def test_a_rest_that_is_sat_out_is_not_marked_as_cut_short() -> None:
    person = practised(SEATED, NODS)
    assert not [r for r in person.journal.content().of("mark") if r["name"] == "rest_ended"]


def test_what_leads_a_set_is_told_when_getting_into_place() -> None:
    for sound, reader, voice in ((True, None, "sound"), (False, True, "reader")):
        person = practised(SEATED, STAND, sound=sound, reader=reader)
        assert [t.voice for t in person.tasks if isinstance(t, Prepare)] == ["", voice]


# --- today at a glance ---


def glance(person: Person) -> dict[str, tuple[str, ...]]:
    (task,) = (t for t in person.tasks if isinstance(t, ShowToday))
    return dict(task.entries)


def test_the_day_is_shown_before_it_begins_with_what_waits_and_why() -> None:
    person = Person()
    plan = plan_of(SEATED, {**STAND, "unlock_after": AFTER_TURNS}, WALK, cleared=False)
    person.practise(plan, absent={"walk": "moving_target"})
    assert glance(person) == {
        "turns-on-target": (),
        "stand": ("locked", "not_cleared"),
        "walk": ("not_cleared", "moving_target"),
    }
    # What was said beforehand is what came of it.
    assert refused(person.summary) == {k: list(v) for k, v in glance(person).items() if v}


def test_what_an_answer_can_still_change_does_not_wait() -> None:
    assert glance(practised(STAND, SHUT, support=False)) == {"stand": (), "turns-together": ()}


def test_an_entry_that_may_open_is_shown_and_a_no_still_leaves_it_locked() -> None:
    plan = plan_of(SEATED, {**STAND, "unlock_after": AFTER_TURNS})
    person = Person(open=False)
    conductor = person.practise(plan, history=sessions(plan, 2))
    assert glance(person) == {"turns-on-target": (), "stand": ()}
    kinds = person.kinds()
    # Nothing is asked, nor rested, for what stays locked.
    assert kinds[kinds.index("AskOpen") + 1] == "Over" and "Rest" not in kinds
    assert refused(person.summary) == {"stand": ["locked"]}
    assert list(conductor.not_done) == [("stand", ("locked",))]


def test_nothing_is_shown_where_nobody_is() -> None:
    person = practised(SEATED, options={"attended": False})
    assert "ShowToday" not in person.kinds()


# --- unwell ---


def test_who_stops_while_being_asked_has_still_felt_unwell() -> None:
    person = Person()
    conductor = person.practise(plan_of(SEATED), until=Prepare)
    conductor.unwell()
    assert isinstance(conductor.task, AskGate)
    conductor.stop()
    assert person.summary.ended == "stopped_unwell"


# --- the gate ---


@pytest.mark.parametrize("question", QUESTIONS)
def test_each_yes_at_the_gate_ends_the_session(question: str) -> None:
    person = practised(SEATED, gate=ALL_NO | {question: True})
    summary = person.summary
    assert person.kinds() == ["AskGate", "Over"]
    assert summary.ended == ("stopped_unwell" if question == SPIN else "red_flag")
    assert summary.exercises == [] and summary.ended_because == [question]
    assert summary.gate is not None and summary.gate["put_first"] == [question]
    outcome = {**dict.fromkeys(EMERGENCY, "emergency"), **dict.fromkeys(CALL, "call_therapist")}
    assert summary.gate["outcome"] == outcome.get(question, "sit_and_stop")


def test_all_no_lets_through_and_an_open_question_is_asked_again() -> None:
    half = {k: v for k, v in ALL_NO.items() if k not in ("fall", SPIN)}
    person = practised(SEATED, gate=[half, None, {"fall": False}, {SPIN: False}])
    asked = [t.questions for t in person.tasks if isinstance(t, AskGate)]
    assert asked == [QUESTIONS, ("fall", SPIN), ("fall", SPIN), (SPIN,)]
    assert done_ids(person.summary) == ["turns-on-target"]


def test_an_unticked_clearance_leaves_seated_work() -> None:
    for cleared, not_done in ((False, {"stand": ["not_cleared"]}), (True, {})):
        person = Person()
        person.practise(plan_of(SEATED, STAND, cleared=cleared))
        assert refused(person.summary) == not_done
        assert done_ids(person.summary)[0] == "turns-on-target"


# --- scores ---


def test_nothing_begins_without_a_score() -> None:
    person = practised(SEATED, before=[None, {}, {"dizziness": 0}])
    asked = ["AskGate", "AskScores", "AskScores", "AskScores", "ShowToday", "Prepare"]
    assert person.kinds()[:6] == asked


def test_every_score_that_the_plan_asks_for_is_needed() -> None:
    plan = plan_of(SEATED, symptom_rules={"also_ask": ["nausea"]})
    person = Person(
        before=[{"dizziness": 2}, {"dizziness": 2, "nausea": 1}],
        after=[{"nausea": 1}, {"dizziness": 2, "nausea": 4}],
    )
    person.practise(plan)
    assert [t.names for t in person.tasks if isinstance(t, AskScores)] == [
        ("dizziness", "nausea")
    ] * 4
    symptoms = person.summary.symptoms
    assert symptoms is not None and symptoms["nausea"] == {"before": 1, "after": 4}


@pytest.mark.parametrize(("before", "stands"), [(5, True), (6, False)])
def test_a_high_start_leaves_seated_work(before: int, stands: bool) -> None:
    person = practised(SEATED, STAND, before={"dizziness": before}, after={"dizziness": before})
    assert refused(person.summary) == ({} if stands else {"stand": ["high_start"]})


@pytest.mark.parametrize(("after", "ended"), [(8, "finished"), (9, "symptom_rule")])
def test_the_baseline_rule_lets_a_high_start_stand(after: int, ended: str) -> None:
    rules = {"high_start": "baseline", "baseline_rise_most": 2}
    person = Person(before={"dizziness": 6}, after={"dizziness": after})
    person.practise(plan_of(STAND, symptom_rules=rules))
    assert done_ids(person.summary) == ["stand"]
    assert person.summary.ended == ended


@pytest.mark.parametrize(
    ("after", "settle_s", "because"),
    [
        (5, 299.0, []),
        (6, 60.0, ["score_above"]),
        (5, None, ["not_settled"]),
        (10, None, ["score_above"]),
    ],
)
def test_the_symptom_rules_end_the_day(
    after: int, settle_s: float | None, because: list[str]
) -> None:
    person = practised(SEATED, NODS, after={"dizziness": after}, settle_s=settle_s)
    summary = person.summary
    assert summary.ended_because == because
    if not because:
        assert summary.ended == "finished" and len(summary.exercises) == 2
        return
    assert summary.ended == "symptom_rule"
    assert done_ids(summary) == ["turns-on-target"]
    assert refused(summary) == {"nods-on-target": ["session_ended"]}
    symptoms = summary.exercises[0].symptoms
    assert symptoms is not None and symptoms["after"] == after
    assert symptoms["settled_minutes"] is None and symptoms["reasons"]["settled_minutes"]


def test_one_high_score_ends_the_day_while_the_other_is_open() -> None:
    plan = plan_of(SEATED, symptom_rules={"also_ask": ["nausea"]})
    person = Person(before={"dizziness": 0, "nausea": 0}, after={"dizziness": 9})
    person.practise(plan)
    assert person.summary.ended == "symptom_rule"


def test_who_has_not_settled_is_waited_for() -> None:
    person = Person()
    conductor = person.practise(plan_of(SEATED, NODS), until=Settle)
    conductor.answer(False)
    assert isinstance(conductor.task, Settle)
    conductor.advance(conductor.now_s + 100.0)
    conductor.answer(True)
    assert isinstance(conductor.task, Rest)


# --- support and voice ---


@pytest.mark.parametrize("entry", [STAND, WALK])
def test_support_is_confirmed_or_it_does_not_begin(entry: dict[str, Any]) -> None:
    name = entry["exercise"]
    for answer, begins in ((True, True), (False, False), (None, False)):
        summary = practised(SEATED, entry, support=answer).summary
        assert (name in done_ids(summary)) is begins
        assert ("support_not_confirmed" in refused(summary).get(name, [])) is not begins
    done, seated = practised(entry, SEATED).summary.exercises
    assert done.support is not None and done.support["confirmed"] is True
    assert seated.support is not None and seated.support["confirmed"] is None


def test_support_is_asked_each_time_and_never_for_seated_work() -> None:
    again = {**STAND, "entry_id": "again"}
    person = practised(SEATED, STAND, again, support=[True, False])
    assert person.kinds().count("AskSupport") == 2
    assert refused(person.summary) == {"again": ["support_not_confirmed"]}


@pytest.mark.parametrize(
    ("sound", "reader", "begins"),
    [(True, None, True), (False, True, True), (False, False, False), (None, None, False)],
)
def test_shut_eyes_and_standing_need_a_voice(sound: Any, reader: Any, begins: bool) -> None:
    summary = practised(SEATED, SHUT, STAND, sound=sound, reader=reader).summary
    assert done_ids(summary) == ["turns-on-target", *(["turns-together", "stand"] * begins)]
    assert refused(summary) == (
        {} if begins else {"turns-together": ["no_voice"], "stand": ["no_voice", *NOT_SAID]}
    )


NOT_SAID = ["support_not_confirmed"]


def test_a_voice_that_was_heard_is_not_asked_about_again() -> None:
    assert practised(SHUT, STAND).kinds().count("AskSound") == 1
    assert "AskSound" not in practised(SEATED).kinds()


# --- what opens ---

LATER = {**NODS, "unlock_after": AFTER_TURNS}


@pytest.mark.parametrize(
    ("before", "says", "begins", "asked"),
    [(2, True, True, 1), (2, False, False, 1), (1, True, False, 0), (0, True, False, 0)],
)
def test_an_entry_opens_when_figures_and_patient_say_yes(
    before: int, says: bool, begins: bool, asked: int
) -> None:
    plan = plan_of(SEATED, LATER)
    person = Person(open=says)
    person.practise(plan, history=sessions(plan, before))
    assert ("nods-on-target" in done_ids(person.summary)) is begins
    assert refused(person.summary) == ({} if begins else {"nods-on-target": ["locked"]})
    assert person.kinds().count("AskOpen") == asked
    assert person.summary.opened == (["nods-on-target"] if begins else [])


def test_a_rise_of_the_scores_keeps_it_shut() -> None:
    plan = plan_of(SEATED, LATER)
    person = Person()
    person.practise(plan, history=sessions(plan, 2, after={"dizziness": 4}))
    assert refused(person.summary) == {"nods-on-target": ["locked"]}


def test_an_entry_that_was_not_done_opens_nothing() -> None:
    plan = plan_of(SEATED, LATER)
    person = Person()
    person.practise(plan, history=sessions(plan, 2, ready=False))
    assert refused(person.summary) == {"nods-on-target": ["locked"]}


def test_a_session_that_had_to_be_ended_opens_nothing() -> None:
    plan = plan_of(SEATED, {**STAND}, LATER)
    calm = list(sessions(plan, 1))
    for ending in ("stopped_unwell", "possible_fall"):
        bad = Person()
        conductor = bad.practise(plan, until=AskSupport, history=calm)
        # The turns went well; the session ends while standing up.
        assert done_ids(bad.summary) == ["turns-on-target"]
        conductor.stop(ending)
        later = Person()
        later.practise(plan, history=[*calm, bad.summary])
        assert refused(later.summary) == {"nods-on-target": ["locked"]}
    ended_well = Person()
    ended_well.practise(plan, until=AskSupport, history=calm).stop("stopped")
    later = Person()
    later.practise(plan, history=[*calm, ended_well.summary])
    assert refused(later.summary) == {}


def test_a_set_that_was_broken_off_takes_no_score_from_another() -> None:
    nods = {**NODS, "unlock_after": {**AFTER_TURNS, "after": "stand", "sessions": 1}}
    plan = plan_of(SEATED, STAND, nods)
    person = Person()
    conductor = person.practise(plan, until=AskSupport)
    conductor.answer(True)
    person.go_on(conductor, DoSet)
    assert isinstance(conductor.task, DoSet) and conductor.task.asked is not None
    values = {"from_s": conductor.now_s, "to_s": conductor.now_s + 60.0, "step": "exercise"}
    conductor.begin_set(Step.model_validate(values | conductor.task.asked.step_values))
    person.engine.advance(conductor.now_s + 5.0)
    conductor.stop("stopped")
    assert done_ids(person.summary) == ["turns-on-target", "stand"]
    later = Person()
    later.practise(plan, history=[person.summary])
    assert refused(later.summary) == {"nods-on-target": ["locked"]}


@pytest.mark.parametrize(("nausea", "begins"), [(1, True), (2, False)])
def test_every_score_that_was_asked_may_keep_it_shut(nausea: int, begins: bool) -> None:
    plan = plan_of(SEATED, LATER, symptom_rules={"also_ask": ["nausea"]})
    scores = {"before": {"dizziness": 2, "nausea": 0}, "after": {"dizziness": 2, "nausea": nausea}}
    person = Person(**scores)
    person.practise(plan, history=sessions(plan, 2, **scores))
    assert ("nods-on-target" in done_ids(person.summary)) is begins


def test_who_has_said_yes_once_is_not_asked_again() -> None:
    plan = plan_of(SEATED, LATER)
    history = list(sessions(plan, 2))
    first = Person()
    first.practise(plan, history=history)
    second = Person(open=False)
    second.practise(plan, history=[*history, first.summary])
    assert "AskOpen" not in second.kinds()
    assert len(second.summary.exercises) == 2


def staged() -> Any:
    return plan_of(
        {**SEATED, "stage": "one"},
        {**NODS, "stage": "two"},
        stages=[
            {"stage_id": "one", "name": "One"},
            {"stage_id": "two", "name": "Two", "unlock_after": AFTER_TURNS | {"after": "one"}},
        ],
    )


@pytest.mark.parametrize(
    ("before", "says", "done"),
    [(0, True, "turns-on-target"), (2, False, "turns-on-target"), (2, True, "nods-on-target")],
)
def test_the_furthest_open_stage_is_practised(before: int, says: bool, done: str) -> None:
    person = Person(open=says)
    person.practise(staged(), history=sessions(staged(), before))
    assert done_ids(person.summary) == [done]
    assert person.summary.not_done == []


def test_a_stage_that_is_named_stays_locked_until_it_opens() -> None:
    person = Person()
    person.practise(staged(), stage_id="two")
    assert refused(person.summary) == {"nods-on-target": ["locked"]}
    person = Person()
    person.practise(staged(), stage_id="two", history=sessions(staged(), 2))
    assert done_ids(person.summary) == ["nods-on-target"]
    with pytest.raises(InputError, match="no stage 'three'; it has: one, two"):
        Person().practise(staged(), stage_id="three")


# --- stopping ---


def in_a_set(*entries: dict[str, Any], **answers: Any) -> tuple[Person, Conductor]:
    person = Person(**answers)
    conductor = person.practise(plan_of(*entries), until=DoSet)
    assert isinstance(conductor.task, DoSet) and conductor.task.asked is not None
    values = {"from_s": conductor.now_s, "to_s": conductor.now_s + 60.0, "step": "exercise"}
    conductor.begin_set(Step.model_validate(values | conductor.task.asked.step_values))
    person.engine.advance(conductor.now_s + 5.0)
    return person, conductor


@pytest.mark.parametrize("ended", ["stopped", "possible_fall"])
def test_stop_stops_and_keeps_what_was_done(ended: str) -> None:
    person, conductor = in_a_set(SEATED, NODS)
    conductor.stop(ended)
    assert conductor.task == Over(ended=ended)
    assert person.summary.ended == ended
    assert done_ids(person.summary) == ["turns-on-target"]
    assert refused(person.summary) == {"nods-on-target": ["session_ended"]}
    conductor.stop("stopped_unwell")
    assert conductor.task == Over(ended=ended)


@pytest.mark.parametrize(
    ("answers", "ended", "because"),
    [
        (ALL_NO, "stopped_unwell", ["unwell"]),
        (ALL_NO | {"chest_pain": True}, "red_flag", ["chest_pain"]),
        (ALL_NO | {SPIN: True}, "stopped_unwell", [SPIN]),
    ],
)
def test_feeling_unwell_asks_the_questions_again_and_ends(
    answers: dict[str, bool], ended: str, because: list[str]
) -> None:
    person, conductor = in_a_set(SEATED, NODS)
    conductor.unwell()
    assert isinstance(conductor.task, AskGate) and conductor.task.because == "unwell"
    conductor.answer(answers)
    summary = person.summary
    assert (summary.ended, summary.ended_because) == (ended, because)
    assert summary.gate is not None
    assert summary.gate["outcome"] == "go"
    assert [a["asked_because"] for a in summary.gate["asked_again"]] == ["unwell"]
    assert summary.gate["put_first"] == [b for b in because if b != "unwell"]


def test_who_stops_while_asked_has_stopped() -> None:
    person, conductor = in_a_set(SEATED)
    conductor.unwell()
    conductor.unwell()
    assert person.summary.ended == "stopped_unwell"


def test_seeing_double_leads_to_the_questions_unless_it_was_near_work() -> None:
    for entry, again in ((SEATED, ["double"]), ({"exercise": "near-far"}, [])):
        person = practised(entry, clarity="double")
        gate = person.summary.gate
        assert gate is not None and person.summary.ended == "finished"
        assert person.summary.exercises[0].clarity["value"] == "double"
        assert [a["asked_because"] for a in gate["asked_again"]] == again
    yes = ALL_NO | {"double_vision": True}
    assert practised(SEATED, clarity="double", gate=[ALL_NO, yes]).summary.ended == "red_flag"


def test_who_is_not_in_place_skips_the_entry() -> None:
    summary = practised(SEATED, NODS, ready=[False, True]).summary
    assert refused(summary) == {"turns-on-target": ["not_in_place"]}
    assert done_ids(summary) == ["nods-on-target"]


def test_who_has_no_camera_leaves_the_entry_out_and_that_is_why() -> None:
    summary = practised(SEATED, NODS, ready=[NO_CAMERA, True]).summary
    assert refused(summary) == {"turns-on-target": [NO_CAMERA]}
    assert done_ids(summary) == ["nods-on-target"]


# --- several sets ---


def test_the_same_exercise_twice_keeps_its_answers_apart() -> None:
    again = {**SEATED, "entry_id": "again", "repetitions": 5}
    summary = practised(SEATED, again, after=[{"dizziness": 4}, {"dizziness": 1}]).summary
    assert done_ids(summary) == ["turns-on-target", "again"]
    assert [(e.symptoms or {})["after"] for e in summary.exercises] == [4, 1]
    assert [e.prescribed["repetitions"] for e in summary.exercises] == [20, 5]


def test_a_pause_within_a_set_gives_both_parts_the_answers() -> None:
    person, conductor = in_a_set(SEATED)
    assert isinstance(conductor.task, DoSet) and conductor.task.asked is not None
    at_s = conductor.now_s
    person.engine.begin(Step(from_s=at_s + 10, to_s=at_s + 99, step="rest"))
    values = {"from_s": at_s + 20, "to_s": at_s + 80, "step": "exercise"}
    conductor.begin_set(Step.model_validate(values | conductor.task.asked.step_values))
    conductor.end_set(at_s + 30)
    person.go_on(conductor)
    first, second = person.summary.exercises
    assert (first.done.duration_s, second.done.duration_s) == (10.0, 10.0)
    assert first.clarity == second.clarity == {"value": "clear", "reason": None}
    assert first.symptoms == second.symptoms


# --- answers that make no sense ---


def test_a_wrong_answer_changes_nothing() -> None:
    person = Person()
    conductor = person.practise(plan_of(SEATED), until=AskScores)
    for wrong in ({"dizziness": 11}, {"dizziness": True}, {"dizziness": 2.5}, {"dizziness": -1}):
        with pytest.raises(ValueError, match="no score"):
            conductor.answer(wrong)
        assert isinstance(conductor.task, AskScores)
    person.go_on(conductor, AskAfterSet)
    with pytest.raises(ValueError, match="none of clear"):
        conductor.answer({"clarity": "fine"})
    with pytest.raises(ValueError, match="no set"):
        conductor.end_set(99.0)
    person.go_on(conductor)
    assert person.summary.ended == "finished"


def test_time_alone_ends_a_countdown() -> None:
    conductor = Person().practise(plan_of(SEATED), until=CountDown)
    with pytest.raises(ValueError, match="takes no answer"):
        conductor.answer(True)
    conductor.advance(conductor.now_s + 2.9)
    assert isinstance(conductor.task, CountDown)
    conductor.advance(conductor.now_s + 0.2)
    assert isinstance(conductor.task, DoSet)


# --- nobody there ---


def unattended(*entries: dict[str, Any], **answers: Any) -> Person:
    nobody: dict[str, Any] = dict.fromkeys(
        ("gate", "before", "after", "sound", "reader", "support", "clarity", "open")
    )
    return practised(*entries, options={"attended": False}, **(nobody | answers))


def test_what_nobody_could_answer_is_not_asked_and_refuses_nothing() -> None:
    summary = unattended(SEATED, SHUT, STAND, WALK).summary
    assert (summary.ended, summary.not_done) == ("finished", [])
    assert summary.gate is not None
    assert (summary.gate["outcome"], summary.gate["reason"]) == ("not_asked", "not asked")
    assert set(summary.gate["answers"].values()) == {None}
    assert summary.symptoms is not None and summary.symptoms["before"] is None
    assert set(summary.symptoms["reasons"].values()) == {"not asked"}
    assert summary.exercises[0].clarity == {"value": None, "reason": "not asked"}
    assert summary.exercises[2].support is not None
    assert summary.exercises[2].support["confirmed"] is None


@pytest.mark.parametrize(
    ("answers", "done"),
    [
        ({"gate": {"fall": True}}, []),
        ({"support": False}, ["turns-on-target"]),
        ({"sound": False, "reader": False}, ["turns-on-target"]),
        ({"sound": False}, ["turns-on-target", "stand"]),
        ({"before": {"dizziness": 6}}, ["turns-on-target"]),
        ({"after": {"dizziness": 6}}, ["turns-on-target"]),
        ({"after": {"dizziness": 5}}, ["turns-on-target", "stand"]),
    ],
)
def test_what_is_known_still_rules(answers: dict[str, Any], done: list[str]) -> None:
    assert done_ids(unattended(SEATED, STAND, **answers).summary) == done


def test_locks_and_clearance_hold_with_nobody_there() -> None:
    assert refused(unattended(SEATED, LATER).summary) == {"nods-on-target": ["locked"]}
    person = Person(gate=None)
    person.practise(plan_of(SEATED, STAND, cleared=False), attended=False)
    assert refused(person.summary) == {"stand": ["not_cleared"]}


def test_nobody_opens_a_stage() -> None:
    plan = plan_of(SEATED, LATER)
    person = Person(open=None)
    person.practise(plan, attended=False, history=sessions(plan, 2))
    assert any(isinstance(t, AskOpen) for t in person.tasks)
    assert refused(person.summary) == {"nods-on-target": ["locked"]}


def test_an_absent_clip_is_a_reason_and_asks_nothing() -> None:
    person = Person()
    person.practise(plan_of(SEATED, STAND), attended=False, absent={"stand": "no_clip"})
    assert refused(person.summary) == {"stand": ["no_clip"]}
    assert "AskSupport" not in person.kinds()
