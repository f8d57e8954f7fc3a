"""What comes at the wrong moment is refused and changes nothing; answers in rare combinations."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from tests.practice.person import (
    SEATED,
    SHUT,
    STAND,
    WALK,
    Person,
    done_ids,
    plan_of,
    refused,
)
from tests.practice.test_from_clips import ASKED, CLIPS, alone, clip, run, staged
from tests.session.synthetic import steps
from tracker.errors import InputError
from tracker.plan.gate import QUESTIONS
from tracker.practice import scripted
from tracker.practice.matching import match_clips
from tracker.practice.reported import reported_entries
from tracker.practice.scripted import Answers, load_answers
from tracker.practice.tasks import (
    AskAfterSet,
    AskGate,
    AskOpen,
    AskReader,
    AskScores,
    AskSinceLast,
    AskSound,
    AskSupport,
    AskWeekly,
    CountDown,
    DoSet,
    Over,
    Rest,
    ShowToday,
)
from tracker.session.stage import Step

TWO = plan_of(SEATED, {**SEATED, "entry_id": "again"})
A_SET = {"from_s": 0.0, "to_s": 5.0, "step": "exercise", "exercise": "turns-on-target"}


# --- the wrong moment ---


def test_no_set_begins_or_is_refused_while_something_is_asked() -> None:
    person = Person()
    conductor = person.practise(TWO, until=ShowToday)
    before = person.journal.content().records
    with pytest.raises(ValueError, match="no set can begin at ShowToday"):
        conductor.begin_set(Step.model_validate(A_SET))
    with pytest.raises(ValueError, match="no set is to begin at ShowToday"):
        conductor.refuse_set("face_too_far")
    assert isinstance(conductor.task, ShowToday)
    assert person.journal.content().records == before


@pytest.mark.parametrize("until", [CountDown, DoSet])
def test_a_set_that_cannot_begin_is_passed_over_with_its_reason(until: type[Any]) -> None:
    person = Person()
    conductor = person.practise(TWO, until=until)
    conductor.refuse_set("face_too_far")
    person.tasks.clear()
    person.go_on(conductor)
    assert refused(person.summary) == {"turns-on-target": ["face_too_far"]}
    assert done_ids(person.summary) == ["again"]


def test_a_set_that_has_begun_is_not_refused_any_more() -> None:
    person = Person()
    conductor = person.practise(TWO, until=DoSet)
    now_s = conductor.now_s
    step = Step.model_validate({**A_SET, "from_s": now_s, "to_s": now_s + 5.0})
    conductor.begin_set(step)
    with pytest.raises(ValueError, match="no set is to begin"):
        conductor.refuse_set("face_too_far")
    assert conductor.set_begun


def test_who_feels_unwell_after_the_end_is_asked_nothing() -> None:
    person = Person()
    conductor = person.practise(TWO)
    over = conductor.task
    conductor.unwell()
    conductor.stop()
    assert conductor.task is over and isinstance(over, Over) and over.ended == "finished"


@pytest.mark.parametrize("count", [-1, 1.5, True, "10", 10**9])
def test_a_count_that_is_none_is_refused(count: Any) -> None:
    person = Person()
    conductor = person.practise(plan_of(WALK), until=AskAfterSet)
    with pytest.raises(ValueError, match="is no count"):
        conductor.answer({"own_count": count})
    assert isinstance(conductor.task, AskAfterSet)
    conductor.answer({"own_count": 0})
    person.go_on(conductor)
    assert person.summary.exercises[0].own_count == {"value": 0, "reason": None}


def test_nobody_alone_stands_without_the_clearance() -> None:
    standing = plan_of(STAND, cleared=False)
    assert reported_entries(standing, [], None) == []
    assert [e.entry_id for e in reported_entries(plan_of(STAND), [], None)] == ["stand"]


# --- clips ---


def test_a_clip_of_another_stage_is_refused_by_name() -> None:
    plan = plan_of(
        {**SEATED, "stage": "one"},
        {**STAND, "stage": "two"},
        stages=[{"stage_id": "one", "name": "One"}, {"stage_id": "two", "name": "Two"}],
    )
    with pytest.raises(InputError, match="'stand' is not in stage 'one'"):
        match_clips(plan, [staged("stand", entry_id="stand")], "one")


def test_a_rest_after_the_set_of_a_clip_is_no_part_of_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    plan = plan_of({**SEATED, **ASKED})
    known = [*steps(to_s=12.0), Step(from_s=12.0, to_s=22.0, step="rest")]
    monkeypatch.setitem(CLIPS, "good", (known, CLIPS["good"][1]))
    summary = run(plan, match_clips(plan, [clip("good")]), tmp_path / "s")
    assert summary.exercises[0].done.duration_s == pytest.approx(10.0, abs=0.1)
    assert summary.exercises[0].done.repetitions == alone("good").done.repetitions


def test_with_nobody_to_ask_a_symptom_that_was_not_settled_ends_nothing(tmp_path: Path) -> None:
    plan = plan_of({**SEATED, **ASKED}, {**SEATED, "entry_id": "again", **ASKED})
    answers = made(entries={"turns-on-target": {"scores_after": {"dizziness": 2}}})
    clips = match_clips(plan, [clip("good"), clip("glances")])
    summary = run(plan, clips, tmp_path / "s", answers)
    assert summary.ended == "finished" and done_ids(summary) == ["turns-on-target", "again"]
    first = summary.exercises[0].symptoms
    assert first is not None and first["settled_minutes"] is None


# --- answers from a file ---


def made(**fields: Any) -> Answers:
    data = {"format": "turnpost-answers", "format_version": 1, **fields}
    return Answers.model_validate(data)


def test_each_question_gets_its_own_answer() -> None:
    answers = made(
        gate=False,
        gate_again={QUESTIONS[0]: True},
        weekly={"falls": "none", "hurt": True},
        since_last={"rest_of_day": 4},
        scores_before={"dizziness": 1},
        open=["later"],
        sound=True,
        reader=False,
        entries={
            "stand": {"support": True, "steadied": True, "scores_after": {"dizziness": 5}},
        },
    )
    assert answers.to(AskGate(because="start")) == dict.fromkeys(QUESTIONS, False)
    assert answers.to(AskGate(because="unwell")) == {QUESTIONS[0]: True}
    assert answers.to(AskWeekly(question="hurt")) is True
    assert answers.to(AskWeekly(question="medicines_changed")) is None
    assert answers.to(AskSinceLast())["rest_of_day"] == 4
    assert answers.to(AskScores(when="before"))["dizziness"] == 1
    assert answers.to(AskScores(when="after", entry_id="stand"))["dizziness"] == 5
    assert answers.to(AskScores(when="after", entry_id="walk"))["dizziness"] is None
    assert answers.to(AskOpen(name="later")) is True
    assert answers.to(AskOpen(name="other")) is None
    assert (answers.to(AskSound()), answers.to(AskReader())) == (True, False)
    assert answers.to(AskSupport(entry_id="stand")) is True
    assert answers.to(AskSupport(entry_id="walk")) is None
    told = answers.to(AskAfterSet(entry_id="stand", questions=("steadied",)))
    assert told == dict.fromkeys(("clarity", "landed", "arm", "own_count")) | {"steadied": True}
    assert answers.to(Rest()) is None


def test_the_questions_are_known_by_name() -> None:
    for name in QUESTIONS:
        assert made(gate_again={name: True}).gate_again == {name: True}


def test_a_file_of_answers_has_bounds_and_names_what_the_plan_has(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    plan = plan_of(SEATED, SHUT)
    path = tmp_path / "a.json"
    data = {"format": "turnpost-answers", "format_version": 1, "open": ["turns-on-target"]}
    data["entries"] = {"turns-together": {}}
    path.write_text(json.dumps(data))
    assert load_answers(path, plan).open == ["turns-on-target"]
    monkeypatch.setattr(scripted, "MAX_FILE_BYTES", 10)
    with pytest.raises(InputError, match="too large"):
        load_answers(path, plan)
    with pytest.raises(InputError, match="can't be read"):
        load_answers(tmp_path / "none.json", plan)
