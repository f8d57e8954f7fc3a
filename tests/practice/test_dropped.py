"""After a sudden drop of the head: what is asked, what ends, what is kept."""

from __future__ import annotations

from typing import Any

import pytest

from tests.practice.person import Person
from tests.ui.patient import STAND, TURNS, plan_of
from tracker.plan.gate import EMERGENCY, QUESTIONS, SPIN
from tracker.practice.conductor import Conductor
from tracker.practice.dropped import WELL_S
from tracker.practice.flow import SCORE_AFTER_S
from tracker.practice.tasks import AskAfterSet, AskGate, AskScores, AskWell, DoSet, Over, Settle
from tracker.records.figures import record_of
from tracker.records.rows import row_of
from tracker.session.projections import session_record
from tracker.session.stage import Step
from tracker.session.summary import summarise
from tracker.session.summary_file import Summary

PLAN = plan_of(STAND, TURNS)
NONE = dict.fromkeys(QUESTIONS, False)


def in_a_set(person: Person) -> Conductor:
    conductor = person.practise(PLAN, until=DoSet)
    now_s = conductor.now_s
    values = {"from_s": now_s, "to_s": now_s + 10.0, "step": "exercise", "exercise": "stand"}
    conductor.begin_set(Step.model_validate(values))
    return conductor


def kept(person: Person) -> dict[str, Any]:
    return summarise(session_record(person.journal.content())).model_dump()


@pytest.mark.parametrize("answer", ["fine", "not_well"])
def test_a_drop_that_was_seen_ends_the_session_whatever_is_answered(answer: str) -> None:
    person = Person()
    conductor = in_a_set(person)
    conductor.dropped(conductor.now_s + 2.0, seen=True)
    assert isinstance(conductor.task, AskWell)
    conductor.advance(conductor.now_s + 7.0)
    conductor.answer(answer)
    if answer == "not_well":
        conductor.answer(NONE)
    assert conductor.task == Over(ended="possible_fall", because=(answer,))
    found = kept(person)
    assert found["ended"] == "possible_fall"
    told = {"value": answer, "reason": None, "seconds": 7.0, "seen": True}
    assert found["after_drop"] == told
    # No more of the set is asked for while one answers.
    assert found["exercises"][0]["done"]["duration_s"] == pytest.approx(2.0)


def test_no_answer_is_kept_as_none() -> None:
    person = Person()
    conductor = in_a_set(person)
    conductor.dropped(conductor.now_s, seen=True)
    conductor.advance(conductor.now_s + WELL_S - 0.1)
    assert isinstance(conductor.task, AskWell)
    conductor.advance(conductor.now_s + 0.2)
    assert conductor.task == Over(ended="possible_fall", because=("no_answer",))
    told = {"value": None, "reason": "no_answer", "seconds": None, "seen": True}
    assert kept(person)["after_drop"] == told


def test_a_session_that_breaks_off_while_nobody_answers_says_so() -> None:
    person = Person()
    conductor = in_a_set(person)
    conductor.dropped(conductor.now_s, seen=True)
    found = kept(person)
    assert found["ended"] == "interrupted" and found["after_drop"]["reason"] == "no_answer"


@pytest.mark.parametrize("just_over", [True, False])
def test_the_time_for_an_answer_begins_when_it_is_asked(just_over: bool) -> None:
    conductor = in_a_set(Person())
    ended_s = conductor.now_s + 3.0
    if just_over:
        conductor.end_set(ended_s)
        assert isinstance(conductor.task, AskAfterSet)
        ended_s += 1.3
    conductor.dropped(ended_s, seen=True)
    assert isinstance(conductor.task, AskWell)
    assert conductor.task.until_s == pytest.approx(ended_s + WELL_S)


@pytest.mark.parametrize("leave", ["stop", "close", "unwell"])
def test_who_leaves_or_feels_unwell_has_still_dropped(leave: str) -> None:
    person = Person()
    conductor = in_a_set(person)
    conductor.dropped(conductor.now_s, seen=False)
    if leave == "unwell":
        conductor.unwell()
        assert isinstance(conductor.task, AskGate) and conductor.task.because == "unwell"
        conductor.answer(NONE | {"chest_pain": True})
        because: tuple[str, ...] = ("not_well", "chest_pain")
    else:
        conductor.stop("stopped", shown=leave == "stop")
        because = ("closed_unsaid",)
    assert conductor.task == Over(ended="possible_fall", because=because)
    found = kept(person)
    assert found["ended"] == "possible_fall" and found["ended_because"] == list(because)
    told = found["after_drop"]
    answers = {"unwell": ("not_well", None)}
    assert (told["value"], told["reason"]) == answers.get(leave, (None, "closed_unsaid"))
    row = row_of(summarise(session_record(person.journal.content())), "a")
    assert row.after_drop == because[0], "the index tells it, too"


@pytest.mark.parametrize("seen", [True, False])
@pytest.mark.parametrize("question", [EMERGENCY[0], "fall", SPIN, ""])
def test_who_is_not_well_is_asked_the_safety_questions(seen: bool, question: str) -> None:
    person = Person()
    conductor = in_a_set(person)
    conductor.dropped(conductor.now_s, seen=seen)
    conductor.answer("not_well")
    assert isinstance(conductor.task, AskGate) and conductor.task.because == "unwell"
    # Known from the first, whatever becomes of the questions.
    assert kept(person)["after_drop"]["value"] == "not_well"
    yes = (question,) if question else ()
    conductor.answer(NONE | dict.fromkeys(yes, True))
    assert conductor.task == Over(ended="possible_fall", because=("not_well", *yes))
    found = kept(person)
    assert found["ended"] == "possible_fall" and found["ended_because"] == ["not_well", *yes]
    assert found["gate"]["put_first"] == list(yes)
    assert [a["asked_because"] for a in found["gate"]["asked_again"]] == ["unwell"]


@pytest.mark.parametrize("leave", ["stop", "close", "unwell"])
def test_who_leaves_the_safety_questions_has_still_not_been_well(leave: str) -> None:
    person = Person()
    conductor = in_a_set(person)
    conductor.dropped(conductor.now_s, seen=True)
    conductor.answer("not_well")
    if leave == "unwell":
        conductor.unwell()
    else:
        conductor.stop("stopped", shown=leave == "stop")
    assert conductor.task == Over(ended="possible_fall", because=("not_well",))
    assert kept(person)["ended"] == "possible_fall"


def test_settling_counts_from_the_end_of_the_set_and_not_from_the_answer() -> None:
    person = Person()
    conductor = in_a_set(person)
    ended_s = conductor.now_s + 2.0
    conductor.dropped(ended_s, seen=False)
    conductor.advance(ended_s + 40.0)
    conductor.answer("fine")
    while not isinstance(conductor.task, AskScores):
        if isinstance(conductor.task, AskAfterSet):
            conductor.answer(None)
        conductor.advance(conductor.now_s + 0.1)
    # What is waited for after a set was over while the question stood there.
    assert conductor.now_s - ended_s < 40.0 + SCORE_AFTER_S / 2
    conductor.answer({"dizziness": 4})
    assert isinstance(conductor.task, Settle) and conductor.task.since_s == ended_s
    most_s = 60.0 * PLAN.symptom_rules.settle_minutes_most
    assert conductor.task.until_s == pytest.approx(ended_s + most_s)
    conductor.advance(ended_s + 90.0)
    conductor.answer(True)
    assert kept(person)["exercises"][0]["symptoms"]["settled_minutes"] == pytest.approx(1.5)


def test_who_was_lost_as_they_sat_down_and_is_fine_goes_on() -> None:
    person = Person()
    conductor = in_a_set(person)
    conductor.dropped(conductor.now_s, seen=False)
    conductor.answer("fine")
    assert isinstance(conductor.task, AskAfterSet)
    person.go_on(conductor)
    found = kept(person)
    assert found["ended"] == "finished" and found["after_drop"]["value"] == "fine"
    assert [e["exercise"] for e in found["exercises"]] == ["stand", "turns-on-target"]


def test_who_was_leaving_as_it_was_asked_and_is_fine_has_left() -> None:
    for answer, over in (
        ("fine", Over(ended="stopped")),
        (None, Over(ended="possible_fall", because=("no_answer",))),
    ):
        person = Person()
        conductor = in_a_set(person)
        conductor.dropped(conductor.now_s, seen=False, leaving=True)
        conductor.answer(answer)
        assert conductor.task == over
        assert kept(person)["after_drop"]["value"] == answer


@pytest.mark.parametrize("leaving", [False, True])
def test_nobody_is_fine_while_the_head_still_drops(
    monkeypatch: pytest.MonkeyPatch, leaving: bool
) -> None:
    """What is seen of it decides, however early one says to be fine."""
    person = Person()
    conductor = in_a_set(person)
    found: dict[str, Any] = {"dropping": True, "dropped": "lost"}
    monkeypatch.setattr(person.engine, "dropped", lambda _: found["dropped"])
    # However little there is of it yet.
    still = lambda _, *, at_all=False: at_all and found["dropping"]  # noqa: E731
    monkeypatch.setattr(person.engine, "dropping", still)
    conductor.dropped(conductor.now_s, seen=False, leaving=leaving)
    asked = conductor.task
    conductor.answer("fine")
    assert conductor.task is asked
    found.update(dropping=False, dropped="seen")
    conductor.answer("fine")
    assert conductor.task == Over(ended="possible_fall", because=("fine",))
    told = kept(person)["after_drop"]
    assert (told["value"], told["seen"]) == ("fine", True)


def test_the_answer_to_the_last_drop_stays_that_of_the_session(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Though one before it comes out later as seen, and was answered otherwise."""
    person = Person()
    conductor = two_drops(person)
    monkeypatch.setattr(person.engine, "dropped", lambda n: "seen" if 0 in n else "")
    conductor.answer("not_well")
    conductor.answer(NONE)
    found = kept(person)
    assert (found["after_drop"]["value"], found["after_drop"]["seen"]) == ("not_well", False)
    told = [(e["after_drop"]["value"], e["after_drop"]["seen"]) for e in found["exercises"]]
    assert told == [("fine", True), ("not_well", False)]


def test_who_is_not_well_need_not_wait_for_it(monkeypatch: pytest.MonkeyPatch) -> None:
    person = Person()
    conductor = in_a_set(person)
    monkeypatch.setattr(person.engine, "dropping", lambda _, **__: True)
    conductor.dropped(conductor.now_s, seen=False)
    conductor.answer("not_well")
    assert isinstance(conductor.task, AskGate)


@pytest.mark.parametrize("how", ["stopped", "finished"])
def test_a_drop_that_comes_out_after_the_answer_ends_the_session_with_it(
    monkeypatch: pytest.MonkeyPatch, how: str
) -> None:
    """The summary does not say "not seen to its end" of what the camera saw to stay down."""
    person = Person()
    conductor = in_a_set(person)
    conductor.dropped(conductor.now_s, seen=False)
    conductor.answer("fine")
    assert isinstance(conductor.task, AskAfterSet)
    monkeypatch.setattr(person.engine, "dropped", lambda n: "seen" if 0 in n else "")
    conductor.stop() if how == "stopped" else person.go_on(conductor)
    assert conductor.task == Over(ended="possible_fall", because=("fine",))
    found = kept(person)
    assert found["ended"] == "possible_fall"
    first, *others = found["exercises"]
    assert found["after_drop"]["seen"] is first["after_drop"]["seen"] is True
    assert all(e["after_drop"] is None for e in others)


def two_drops(person: Person) -> Conductor:
    """A drop in each of two sets, the second of which is asked about."""
    conductor = in_a_set(person)
    conductor.dropped(conductor.now_s + 2.0, seen=False)
    conductor.answer("fine")
    person.go_on(conductor, until=DoSet)
    from_s = conductor.now_s
    values = {"from_s": from_s, "to_s": from_s + 10.0, "step": "exercise"}
    conductor.begin_set(Step.model_validate(values | {"exercise": "turns-on-target"}))
    conductor.dropped(from_s + 2.0, seen=False)
    return conductor


def test_the_answer_stands_beside_the_set_that_it_is_of() -> None:
    """The camera saw a drop in the first set alone; the second was asked about by the place."""
    person = Person()
    conductor = two_drops(person)
    conductor.answer("not_well")
    conductor.answer(NONE)
    found = kept(person)
    told = [e["after_drop"]["value"] for e in found["exercises"]]
    assert (told, found["after_drop"]["value"]) == (["fine", "not_well"], "not_well")
    fall = {"code": "possible_fall", "start_s": 3.0, "end_s": 4.0, "said_at_s": 3.1}
    found["exercises"][0]["events"] = [fall]
    first, second = record_of(Summary.model_validate(found)).exercises
    answer = first.find("event.possible_fall.answer")
    assert answer is not None and answer.value == "said to be all right"
    assert second.find("event.possible_fall.answer") is None


@pytest.mark.parametrize("answer", ["not_well", None])
def test_who_was_lost_and_is_not_fine_does_not_go_on(answer: str | None) -> None:
    conductor = in_a_set(Person())
    conductor.dropped(conductor.now_s, seen=False)
    conductor.answer(answer)
    if answer is not None:
        conductor.answer(NONE)
    assert conductor.task == Over(ended="possible_fall", because=(answer or "no_answer",))


def test_nothing_else_is_an_answer_and_only_in_a_set_is_it_asked() -> None:
    conductor = in_a_set(Person())
    conductor.dropped(conductor.now_s, seen=True)
    for wrong in ("yes", True, 1):
        with pytest.raises(ValueError, match="none of fine, not_well"):
            conductor.answer(wrong)
    with pytest.raises(ValueError, match="no set"):
        conductor.dropped(conductor.now_s, seen=True)


def test_where_it_was_not_asked_nothing_is_told() -> None:
    person = Person()
    person.practise(PLAN)
    assert kept(person)["after_drop"] is None
