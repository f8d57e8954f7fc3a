"""After a sudden drop of the head: what is asked, what ends, what is kept."""

from __future__ import annotations

from typing import Any

import pytest

from tests.practice.person import Person
from tests.ui.patient import STAND, TURNS, plan_of
from tracker.practice.conductor import Conductor
from tracker.practice.flow import WELL_S
from tracker.practice.tasks import AskAfterSet, AskWell, DoSet, Over
from tracker.session.projections import session_record
from tracker.session.stage import Step
from tracker.session.summary import summarise

PLAN = plan_of(STAND, TURNS)


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


@pytest.mark.parametrize("leave", ["stop", "close", "unwell"])
def test_who_leaves_or_feels_unwell_has_still_dropped(leave: str) -> None:
    person = Person()
    conductor = in_a_set(person)
    conductor.dropped(conductor.now_s, seen=False)
    if leave == "unwell":
        conductor.unwell()
    else:
        conductor.stop("stopped", shown=leave == "stop")
    said = "not_well" if leave == "unwell" else None
    assert conductor.task == Over(ended="possible_fall", because=(said or "no_answer",))
    assert kept(person)["after_drop"]["value"] == said
    assert kept(person)["ended"] == "possible_fall"


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


@pytest.mark.parametrize("answer", ["not_well", None])
def test_who_was_lost_and_is_not_fine_does_not_go_on(answer: str | None) -> None:
    conductor = in_a_set(Person())
    conductor.dropped(conductor.now_s, seen=False)
    conductor.answer(answer)
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
