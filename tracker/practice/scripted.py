"""Answers written down beforehand, for a session with nobody before the screen.

What is left out, or null, is "not asked".
"""

from __future__ import annotations

from pathlib import Path
from typing import Annotated, Any, Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationError, model_validator

from tracker.errors import InputError
from tracker.inputs import read_input
from tracker.plan.gate import QUESTIONS
from tracker.plan.model import Plan
from tracker.practice.tasks import (
    MAX_COUNT,
    Arm,
    AskAfterSet,
    AskGate,
    AskOpen,
    AskReader,
    AskScores,
    AskSinceLast,
    AskSound,
    AskSupport,
    AskWall,
    AskWeekly,
    Clarity,
    Landed,
    Task,
)
from tracker.session.weekly import Falls

#: Keeps a foreign file from filling the memory (this project's own choice).
MAX_FILE_BYTES = 1_000_000

#: A number from 0 to 10 (common practice).
Score = Annotated[int, Field(ge=0, le=10)] | None
#: Question -> yes or no; false by itself is "no" to all of them.
GateAnswers = Literal[False] | dict[str, bool | None]


class _Part(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True, strict=True)


class Scores(_Part):
    """Symptom scores, 0 to 10."""

    dizziness: Score = None
    nausea: Score = None
    unsteadiness: Score = None


class SinceLast(_Part):
    """How the day of the session before went on, 0 to 10."""

    rest_of_day: Score = None
    next_morning: Score = None


class Weekly(_Part):
    """What is asked once a week, in a session in which it is asked."""

    falls: Falls | None = None
    hurt: bool | None = None
    medicines_changed: bool | None = None


class EntryAnswers(_Part):
    """What is answered around one entry."""

    support: bool | None = Field(None, description="The entry's support is in its place.")
    clarity: Clarity | None = None
    distance_mm: Annotated[float, Field(gt=0, le=10000, allow_inf_nan=False)] | None = Field(
        None, description="From the eyes to the wall, where the plan leaves it to the patient."
    )
    spacing_mm: Annotated[float, Field(gt=0, le=10000, allow_inf_nan=False)] | None = Field(
        None, description="From mark to mark on the wall, where the plan leaves it to the patient."
    )
    steadied: bool | None = None
    arm: Arm | None = Field(None, description="Asked where the camera could not tell it.")
    landed: Landed | None = Field(None, description="Of eyes that were shut, as they opened.")
    own_count: Annotated[int, Field(ge=0, le=MAX_COUNT)] | None = None
    scores_after: Scores = Scores()
    settled_minutes: Annotated[float, Field(ge=0, le=600, allow_inf_nan=False)] | None = Field(
        None, description="Minutes after the set until back to usual."
    )


class Answers(_Part):
    """The answers of one session."""

    format: Literal["turnpost-answers"]
    format_version: Literal[1]
    gate: GateAnswers = {}
    gate_again: GateAnswers = Field({}, description="When they are asked again within a session.")
    weekly: Weekly = Weekly()
    since_last: SinceLast = SinceLast()
    scores_before: Scores = Scores()
    open: list[str] = Field([], description="Stages and entries that the patient says yes to.")
    sound: bool | None = Field(None, description="The test sound was heard.")
    reader: bool | None = Field(None, description="A helper is here who reads aloud.")
    entries: dict[str, EntryAnswers] = {}

    @model_validator(mode="after")
    def _known_questions(self) -> Answers:
        for given in (self.gate, self.gate_again):
            for question in given or {}:
                if question not in QUESTIONS:
                    raise ValueError(f"{question!r} is none of {', '.join(QUESTIONS)}")
        return self

    def of(self, entry_id: str | None) -> EntryAnswers:
        """The answers around one entry."""
        return self.entries.get(entry_id or "", EntryAnswers())

    def to(self, task: Task) -> Any:
        """The answer to a task, None where there is none."""
        match task:
            case AskGate(because="start"):
                return _gate(self.gate)
            case AskGate():
                return _gate(self.gate_again)
            case AskWeekly(question=question):
                return self.weekly.model_dump()[question]
            case AskSinceLast():
                return self.since_last.model_dump()
            case AskScores(when="before"):
                return self.scores_before.model_dump()
            case AskScores(entry_id=entry_id):
                return self.of(entry_id).scores_after.model_dump()
            case AskOpen(name=name):
                return True if name in self.open else None
            case AskSound():
                return self.sound
            case AskReader():
                return self.reader
            case AskSupport(entry_id=entry_id):
                return self.of(entry_id).support
            case AskWall(asked=asked, length=length) if asked is not None:
                given = self.of(asked.entry_id)
                typed = {"distance": given.distance_mm, "spacing": given.spacing_mm}[length]
                fits = typed is not None and task.least_mm <= typed <= task.most_mm
                return typed if fits else None
            case AskAfterSet(entry_id=entry_id):
                questions = {"landed", "clarity", "steadied", "arm", "own_count"}
                return self.of(entry_id).model_dump(include=questions)
        return None


#: Nobody is there.
NO_ANSWERS = Answers(format="turnpost-answers", format_version=1)


def load_answers(path: Path, plan: Plan) -> Answers:
    """Read the answers to a session of a plan.

    Raises
    ------
    InputError
        If they can't be read, make no sense, or name what the plan doesn't have.
    """
    try:
        content = read_input(path, MAX_FILE_BYTES, "a file of answers")
        answers = Answers.model_validate_json(content)
    except ValidationError as error:
        first = error.errors(include_url=False)[0]
        where = ".".join(str(p) for p in first["loc"]) or "the file"
        message = first["msg"].removeprefix("Value error, ")
        raise InputError(f"{path}: not a usable file of answers: {where}: {message}") from error
    entries = {e.entry_id for e in plan.entries}
    names = entries | {s.stage_id for s in plan.stages}
    for named, known in ((answers.entries, entries), (answers.open, names)):
        for name in named:
            if name not in known:
                raise InputError(f"{path}: plan {plan.plan_id!r} has no {name!r}")
    return answers


def schema() -> dict[str, Any]:
    """JSON Schema of a file of answers."""
    return Answers.model_json_schema()


def _gate(given: GateAnswers) -> dict[str, bool | None]:
    return dict.fromkeys(QUESTIONS, False) if given is False else dict(given)
