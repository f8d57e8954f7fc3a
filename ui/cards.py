"""What a task of a planned session looks like: a title, a few lines, the answers to choose from.

Pure words and values; the page draws them.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import inf
from typing import Any

from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.asked import Asked, asked_of
from tracker.plan.gate import CALL, EMERGENCY, SPIN
from tracker.plan.model import Plan
from tracker.practice.tasks import (
    CLARITY,
    MAX_COUNT,
    AskAfterSet,
    AskOpen,
    AskReader,
    AskSound,
    AskSupport,
    DoSet,
    Over,
    Prepare,
    Rest,
    Settle,
    Task,
    Wait,
)
from ui import words


@dataclass(frozen=True, slots=True)
class Option:
    """A button and what it answers; ``act`` names a command in place of an answer."""

    text: str
    value: Any = None
    main: bool = False
    act: str = ""


@dataclass(frozen=True, slots=True)
class Card:
    """What is shown of a task.

    Attributes
    ----------
    title, lines
        What is said.
    options
        The answers, in their order.
    count
        Numbers to choose from, where a number is asked for.
    first
        The number that stands there at first: what was asked for.
    until_s
        When it is over by itself, on the session's clock.
    leave
        Whether one may say to be unwell, or end for today.
    """

    title: str
    lines: tuple[str, ...] = ()
    options: tuple[Option, ...] = ()
    count: range | None = None
    first: int = 0
    until_s: float = inf
    leave: bool = True


def card_of(task: Task, plan: Plan, *, setup_first: bool = False) -> Card:
    """Card of a task that has one (the safety questions and the scores have pages of their own).

    Parameters
    ----------
    task
        The task.
    plan
        The plan it comes from.
    setup_first
        Whether a set-up comes before the set.
    """
    match task:
        case AskOpen(name=name):
            how = words.say("ask.stage.how", name=_name_of(name, plan))
            return Card(words.say("ask.stage"), (how,), _yes_no())
        case AskSound():
            again = Option(words.say("ask.sound.again"), act="sound")
            return _asked("ask.sound", (*_yes_no(), again))
        case AskReader():
            return _asked("ask.reader", _yes_no())
        case AskSupport(support=support):
            lines = [
                words.say(f"ask.support.{support}.how"),
                words.say("ask.support.shoes"),
                words.say("ask.support.fall"),
            ]
            return Card(words.say(f"ask.support.{support}"), tuple(lines), _yes_no())
        case Prepare(asked=asked) if asked is not None:
            return _prepare(asked, setup_first)
        case DoSet(asked=asked) if asked is not None:
            lines = (words.say(f"exercise.{asked.exercise.id}.how"), dose_words(asked))
            return Card(
                words.say(f"exercise.{asked.exercise.id}"),
                (*lines, *_cares(asked)),
                (Option(words.say("ask.done"), main=True, act="done"),),
            )
        case Wait():
            return Card(words.say("ask.wait"), (words.say("ask.wait.how"),), until_s=task.until_s)
        case Settle():
            done = Option(words.say("ask.settle.done"), True, main=True)
            return Card(words.say("ask.settle"), (), (done,), until_s=task.until_s)
        case Rest(next_id=next_id):
            name = words.say("ask.rest.next", name=_name_of(next_id, plan))
            return Card(words.say("ask.rest"), (name,), until_s=task.until_s)
        case Over():
            return _over(task, plan)
    raise ValueError(f"{type(task).__name__} has a page of its own")


def after_set_card(task: AskAfterSet, question: str, plan: Plan) -> Card:
    """Card of one question after a set of a plan."""
    assert question in task.questions
    title = words.say(f"ask.{question}")
    if question == "clarity":
        options = tuple(Option(words.say(f"ask.clarity.{c}"), c) for c in CLARITY)
        return Card(title, (), options)
    if question == "steadied":
        return _asked("ask.steadied", _yes_no())
    go_on = Option(words.say("ask.go_on"), main=True, act="count")
    entry = next((e for e in plan.entries if e.entry_id == task.entry_id), None)
    first = 0 if entry is None else asked_of(entry).repetitions or 0
    return Card(title, (), (go_on,), count=range(MAX_COUNT + 1), first=first)


def dose_words(asked: Asked) -> str:
    """The dose in words: how many or how long, how fast, how."""
    parts = []
    if asked.repetitions is not None:
        key = "ask.dose.once" if asked.repetitions == 1 else "ask.dose.repetitions"
        parts.append(words.say(key, count=asked.repetitions))
    if asked.seconds is not None:
        parts.append(words.say("ask.dose.seconds", count=words.number(asked.seconds)))
    tempo = asked.tempo_bpm[0] if isinstance(asked.tempo_bpm, tuple) else asked.tempo_bpm
    if tempo is not None:
        parts.append(words.say("ask.dose.tempo", tempo=words.number(tempo)))
    if asked.eyes == "closed":
        parts.append(words.say("ask.dose.eyes_closed"))
    return "   ·   ".join(parts)


def _prepare(asked: Asked, setup_first: bool) -> Card:
    exercise = asked.exercise
    seen = "face" in exercise.needs
    place = f"ask.place.{asked.posture if seen else 'walking'}"
    lines = [
        words.say(f"exercise.{exercise.id}.how"),
        dose_words(asked),
        *_cares(asked),
        words.say_or(place, "ask.place.standing"),
    ]
    if asked.eyes == "closed" or asked.posture != "sitting":
        lines.append(words.say("ask.place.by_ear"))
    if seen and setup_first:
        lines.append(words.say("ask.place.setup"))
    ready = Option(words.say("ask.place.ready"), main=True, act="in_place")
    skip = Option(words.say("ask.place.skip"), False)
    return Card(words.say(f"exercise.{exercise.id}"), tuple(lines), (ready, skip))


def _cares(asked: Asked) -> tuple[str, ...]:
    return tuple(words.say(f"care.{key}") for key in asked.exercise.cautions)


def _over(task: Over, plan: Plan) -> Card:
    lines = [words.say(f"over.{task.ended}")] if words.has(f"over.{task.ended}") else []
    if set(task.because) & set(EMERGENCY):
        number = plan.emergency_number
        key = "gate.outcome.emergency" if number else "gate.outcome.emergency_no_number"
        lines = [words.say(key, number=number or "")]
    elif SPIN in task.because:
        lines = [words.say("gate.outcome.sit_and_stop")]
    elif set(task.because) & set(CALL):
        lines = [words.say("gate.outcome.call_therapist")]
    lines += [words.say(f"symptoms.{b}") for b in task.because if words.has(f"symptoms.{b}")]
    show = Option(words.say("over.to_summary"), True, main=True)
    return Card(words.say("over.title"), tuple(lines), (show,), leave=False)


def _asked(key: str, options: tuple[Option, ...]) -> Card:
    return Card(words.say(key), (words.say(f"{key}.how"),), options)


def _yes_no() -> tuple[Option, ...]:
    return Option(words.say("ask.yes"), True), Option(words.say("ask.no"), False)


def _name_of(name: str, plan: Plan) -> str:
    """Words for a stage or an entry."""
    for stage in plan.stages:
        if stage.stage_id == name:
            return stage.name
    for entry in plan.entries:
        if entry.entry_id == name and entry.exercise in CATALOGUE:
            return words.say(f"exercise.{entry.exercise}")
    return name
