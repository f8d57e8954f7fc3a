"""A made-up person who goes through a session: answers, gets into place, does the sets."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from math import isfinite
from typing import Any

from tests.plan.examples import TEXT
from tracker.plan.files import parse_plan
from tracker.plan.gate import QUESTIONS
from tracker.plan.model import Plan
from tracker.practice.conductor import Conductor
from tracker.practice.tasks import (
    AskAfterSet,
    AskDayOver,
    AskGate,
    AskOpen,
    AskReader,
    AskScores,
    AskSinceLast,
    AskSound,
    AskSupport,
    AskWeekly,
    DoSet,
    Over,
    Prepare,
    Settle,
    ShowToday,
    Task,
)
from tracker.sample import Sample
from tracker.session.engine import Engine
from tracker.session.journal import MemoryJournal
from tracker.session.live import SessionInfo
from tracker.session.projections import session_record
from tracker.session.stage import Step
from tracker.session.summary import summarise
from tracker.session.summary_file import Summary

SET_S = 20.0
ALL_NO = dict.fromkeys(QUESTIONS, False)


def plan_of(*entries: dict[str, Any], cleared: bool = True, **fields: Any) -> Plan:
    """A plan; an entry is its exercise and what else it says, its ID the exercise's."""
    data = json.loads(TEXT)
    data |= {"clearance": [{"item": "Examined.", "cleared": cleared}], **fields}
    data["entries"] = [{"entry_id": e["exercise"], **e} for e in entries]
    return parse_plan(json.dumps(data))


SEATED = {"exercise": "turns-on-target"}
SHUT = {"exercise": "turns-together", "eyes": "closed"}
STAND = {"exercise": "stand"}
WALK = {"exercise": "walk"}


@dataclass
class Person:
    """Their answers; a list is used up one by one, its last answer stays."""

    gate: Any = field(default_factory=lambda: dict(ALL_NO))
    weekly: dict[str, Any] = field(
        default_factory=lambda: {"falls": "none", "hurt": False, "medicines_changed": False}
    )
    before: Any = field(default_factory=lambda: {"dizziness": 2})
    after: Any = field(default_factory=lambda: {"dizziness": 3})
    settle_s: float | None = 60.0
    sound: Any = True
    reader: Any = False
    support: Any = True
    #: Whether the therapist has said that it may go on, on a day that was over.
    allowed: Any = False
    clarity: Any = "clear"
    arm: Any = "left"
    open: Any = True
    ready: Any = True
    #: What the camera sees of a set.
    moves: Callable[[Step], Iterable[Sample]] = lambda _: ()
    #: What happens in a set, in place of its end.
    in_set: Callable[[Conductor], None] | None = None
    tasks: list[Task] = field(default_factory=list)

    def practise(self, plan: Plan, until: type[Task] = Over, **options: Any) -> Conductor:
        """Go on until a kind of task comes; the journal is in ``self.journal``."""
        self.journal = MemoryJournal()
        about = SessionInfo(person=plan.person, plan_id=plan.plan_id, started_at="2026-01-01")
        self.engine = Engine(self.journal, about=about)
        conductor = Conductor(plan, self.engine, **options)
        return self.go_on(conductor, until)

    def go_on(self, conductor: Conductor, until: type[Task] = Over) -> Conductor:
        """Do task after task."""
        while True:
            self.tasks.append(conductor.task)
            if isinstance(conductor.task, until | Over):
                return conductor
            if len(self.tasks) > 300:
                raise AssertionError(f"no end: {self.tasks[-3:]}")
            self._do(conductor, conductor.task)
            if not isinstance(conductor.task, Over):
                self.engine.advance(conductor.now_s)

    def _do(self, conductor: Conductor, task: Task) -> None:
        match task:
            case DoSet(asked=asked) if asked is not None:
                values = {"from_s": conductor.now_s, "to_s": conductor.now_s + SET_S}
                step = Step.model_validate({**values, "step": "exercise", **asked.step_values})
                conductor.begin_set(step)
                for sample in self.moves(step):
                    self.engine.feed(sample)
                if self.in_set is not None:
                    self.in_set(conductor)
                else:
                    conductor.end_set(step.to_s)
            case Settle(since_s=since_s, until_s=until_s):
                wanted_s = until_s if self.settle_s is None else since_s + self.settle_s
                conductor.advance(wanted_s)
                if isinstance(conductor.task, Settle):
                    conductor.answer(True)
            case Task(until_s=until_s) if isfinite(until_s):
                conductor.advance(until_s)
            case _:
                conductor.answer(self._answer(task))

    def _answer(self, task: Task) -> Any:
        match task:
            case AskGate():
                return _next(self.gate)
            case AskDayOver():
                return _next(self.allowed)
            case AskWeekly(question=question):
                return self.weekly[question]
            case AskSinceLast():
                return {"rest_of_day": 1, "next_morning": 0}
            case AskScores(when="before"):
                return _next(self.before)
            case AskScores():
                return _next(self.after)
            case AskOpen():
                return _next(self.open)
            case AskSound():
                return _next(self.sound)
            case AskReader():
                return _next(self.reader)
            case AskSupport():
                return _next(self.support)
            case AskAfterSet(questions=questions):
                answers = {"clarity": self.clarity, "steadied": False, "own_count": 10}
                answers |= {"arm": self.arm, "landed": "beside"}
                return {q: answers[q] for q in questions}
            case ShowToday():
                return True
            case Prepare():
                return _next(self.ready)
        raise AssertionError(f"nobody told what to do at {task}")

    @property
    def summary(self) -> Summary:
        """From the journal alone, and as it would be read from a file."""
        made = summarise(session_record(self.journal.content()))
        return Summary.model_validate_json(made.model_dump_json())

    def kinds(self) -> list[str]:
        """What was asked for, in order."""
        return [type(t).__name__ for t in self.tasks]


def _next(answers: Any) -> Any:
    if not isinstance(answers, list):
        return answers
    return answers.pop(0) if len(answers) > 1 else answers[0]


def done_ids(summary: Summary) -> list[str | None]:
    return [e.entry_id for e in summary.exercises]


def refused(summary: Summary) -> dict[str, list[str]]:
    return {e.entry_id: e.reasons for e in summary.not_done}


def sessions(plan: Plan, count: int, **answers: Any) -> Sequence[Summary]:
    """So many earlier sessions."""
    found = []
    for _ in range(count):
        person = Person(open=False, **answers)
        person.practise(plan, history=found)
        found.append(person.summary)
    return found
