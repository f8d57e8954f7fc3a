"""What stands on the patient's printed sheet: words alone, for paper and for the web page.

On paper nobody asks before an exercise begins. So the sheet has only what the therapist
has opened: what waits for a condition, or for the clearance checklist, is named as coming
later, without its dose and its picture.
"""

from __future__ import annotations

from dataclasses import dataclass

from tracker.plan.asked import Asked, asked_of
from tracker.plan.gate import CALL, EMERGENCY, SPIN
from tracker.plan.model import Entry, Plan, Unlock
from tracker.plan.rules import is_cleared
from ui import words

#: A caution of nearly every exercise: the sheet says it once.
EVERYWHERE = "settle"


@dataclass(frozen=True, slots=True)
class Item:
    """An exercise: its pictures are those of ``exercise`` with its ``eyes``."""

    number: int
    exercise: str
    eyes: str
    name: str
    dose: str
    how: str
    support: str
    cares: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Part:
    """A stage, or all of a plan that has none."""

    title: str
    items: tuple[Item, ...]


@dataclass(frozen=True, slots=True)
class Listed:
    """A title and lines below it."""

    title: str
    lines: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Sheet:
    """The whole sheet.

    Attributes
    ----------
    often, mind
        How often, and what holds for every exercise.
    emergency, call, stop
        The signs that need help at once, a call, and an end for today.
    later
        What is in the plan and not open yet.
    foot
        Which plan it is, for each page.
    """

    title: str
    subtitle: str
    often: str
    mind: str
    words: str
    emergency: Listed
    call: Listed
    stop: Listed
    parts: tuple[Part, ...]
    later: Listed | None
    foot: str


def sheet_of(plan: Plan, week: int = 1) -> Sheet:
    """The sheet of a plan, as it stands in a week."""
    say = words.say
    parts, later = _parts(plan, week)
    person = plan.person or ""
    key = "sheet.for" if person else "sheet.for_nobody"
    return Sheet(
        title=say("sheet.title"),
        subtitle=say(key, person=person, week=week),
        often=_often(plan),
        mind=say(f"care.{EVERYWHERE}"),
        words=plan.words.strip(),
        emergency=_emergency(plan),
        call=Listed(say("sheet.call"), tuple(say(f"gate.{k}") for k in CALL)),
        stop=_stop(plan),
        parts=parts,
        later=Listed(say("sheet.later"), later) if later else None,
        foot=say("sheet.foot", plan=plan.plan_id, week=week),
    )


def _parts(plan: Plan, week: int) -> tuple[tuple[Part, ...], tuple[str, ...]]:
    """What is open, by stage, and the names of the rest."""
    parts: list[Part] = []
    later: list[str] = []
    number = 0
    whole = [("", words.say("sheet.exercises"), None)]
    stages = [(s.stage_id, words.told(s.name), s.unlock_after) for s in plan.stages] or whole
    for stage_id, title, unlock in stages:
        items = []
        for entry in plan.entries_of(stage_id) if stage_id else plan.entries:
            if _is_open(unlock) and _may_be_done(plan, entry):
                number += 1
                items.append(_item(number, asked_of(entry, week)))
            else:
                later.append(_name(asked_of(entry, week)))
        if items:
            parts.append(Part(title, tuple(items)))
    return tuple(parts), tuple(dict.fromkeys(later))


def _is_open(unlock: Unlock | None) -> bool:
    """Open from the start, or found met by the therapist."""
    return unlock is None or unlock.met_on is not None


def _may_be_done(plan: Plan, entry: Entry) -> bool:
    seated = asked_of(entry).posture == "sitting"
    return _is_open(entry.unlock_after) and (seated or is_cleared(plan))


def _item(number: int, asked: Asked) -> Item:
    exercise = asked.exercise
    return Item(
        number=number,
        exercise=exercise.id,
        eyes=asked.eyes,
        name=words.say(f"exercise.{exercise.id}"),
        dose=_dose(asked),
        how=words.say(f"exercise.{exercise.id}.how"),
        support=words.say(f"sheet.support.{asked.support}") if asked.support != "none" else "",
        cares=tuple(words.say(f"care.{k}") for k in exercise.cautions if k != EVERYWHERE),
    )


def _name(asked: Asked) -> str:
    name = words.say(f"exercise.{asked.exercise.id}")
    extra = [words.say("ask.dose.eyes_closed")] if asked.eyes == "closed" else []
    extra += [words.say("ask.dose.soft")] if asked.surface == "soft" else []
    return words.row_of([name, *extra])


def _dose(asked: Asked) -> str:
    """How many or how long, how fast, and what is special about it."""
    say = words.say
    parts = []
    if asked.seconds is not None:
        parts.append(say("ask.dose.seconds", count=words.number(asked.seconds)))
    elif asked.repetitions == 1:
        parts.append(say("ask.dose.once"))
    else:
        parts.append(say("ask.dose.repetitions", count=asked.repetitions))
    if asked.exercise.counted:
        parts.append(_tempo(asked.tempo_bpm))
    if asked.eyes == "closed":
        parts.append(say("ask.dose.eyes_closed"))
    if asked.surface == "soft":
        parts.append(say("ask.dose.soft"))
    return words.row_of(parts)


def _tempo(tempo: float | tuple[float, float] | None) -> str:
    if tempo is None:
        return words.say("sheet.own_pace")
    if isinstance(tempo, tuple):
        low, high = (words.number(t) for t in tempo)
        return words.say("sheet.tempo.changes", low=low, high=high)
    return words.say("sheet.tempo", tempo=words.number(tempo))


def _often(plan: Plan) -> str:
    say = words.say
    bouts = say("sheet.bouts.one" if plan.bouts_a_day == 1 else "sheet.bouts", n=plan.bouts_a_day)
    days = say("sheet.days.all" if plan.days_a_week == 7 else "sheet.days", n=plan.days_a_week)
    rest = say("sheet.rest", seconds=words.number(plan.rest_s)) if plan.rest_s else ""
    return say("sheet.often", bouts=bouts, days=days, rest=rest).strip()


def _emergency(plan: Plan) -> Listed:
    number = plan.emergency_number
    key = "sheet.emergency" if number else "sheet.emergency.no_number"
    title = words.say(key, number=words.apart(number or ""))
    return Listed(title, tuple(words.say(f"gate.{k}") for k in EMERGENCY))


def _stop(plan: Plan) -> Listed:
    rules = plan.symptom_rules
    minutes = words.number(rules.settle_minutes_most, int(rules.settle_minutes_most % 1 > 0))
    lines = (
        words.say("sheet.stop.score", most=rules.score_most),
        words.say("sheet.stop.settle", minutes=minutes),
        words.say("sheet.stop.spin", what=words.say(f"gate.{SPIN}")),
        words.say("sheet.stop.unwell"),
    )
    return Listed(words.say("sheet.stop"), lines)
