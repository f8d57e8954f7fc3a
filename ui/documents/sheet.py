"""What stands on the patient's printed sheet: words alone, for paper and for the web page.

On paper nobody asks before an exercise begins. So the sheet has only what the therapist
has opened: what waits for a condition, or for the clearance checklist, is named as coming
later, without its dose and its picture.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from tracker.plan.asked import Asked, asked_of
from tracker.plan.gate import CALL, EMERGENCY, SPIN
from tracker.plan.model import Entry, Plan, Unlock
from tracker.plan.rules import is_cleared
from tracker.plan.starter import needs_no_clearance
from tracker.plan.unlocking import found_met
from ui import words
from ui.manner import care_keys, form_of, how_of, is_drawn_so, other_posture, wall_words

#: A caution of nearly every exercise: the sheet says it once.
EVERYWHERE = "settle"
#: What has to move on the screen: paper can't stand in for it.
ON_SCREEN = ("against", "sweep", "background")
#: The highest score that there is.
WORST = 10


@dataclass(frozen=True, slots=True)
class Item:
    """An exercise: its pictures are those of ``exercise`` with its ``eyes``.

    It is not ``drawn`` where the pictures would show another posture or floor.
    """

    number: int
    exercise: str
    eyes: str
    drawn: bool
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
    often, mind, neck
        How often, what holds for every exercise, and how far the head may go; the last is
        empty where no limit is set.
    emergency, call, stop
        The signs that need help at once, a call, and an end for today.
    screen
        What is open and can't be done from paper.
    later
        What is in the plan and not open yet.
    foot
        Which plan it is, for each page.
    """

    title: str
    subtitle: str
    often: str
    mind: str
    neck: str
    words: str
    emergency: Listed
    call: Listed
    stop: Listed
    parts: tuple[Part, ...]
    screen: Listed | None
    later: Listed | None
    foot: str


def sheet_of(plan: Plan, today: date, week: int = 1) -> Sheet:
    """The sheet of a plan, as it stands on a day and in a week."""
    say = words.say
    parts, screen, later = _parts(plan, today, week)
    person = plan.person or ""
    key = "sheet.for" if person else "sheet.for_nobody"
    return Sheet(
        title=say("sheet.title"),
        subtitle=say(key, person=person, week=week),
        often=_often(plan),
        mind=say(f"care.{EVERYWHERE}"),
        neck=_neck(plan),
        words=plan.words.strip(),
        emergency=_emergency(plan),
        call=Listed(say("sheet.call"), tuple(say(f"gate.{k}") for k in CALL)),
        stop=_stop(plan),
        parts=parts,
        screen=Listed(say("sheet.screen"), screen) if screen else None,
        later=Listed(say("sheet.later"), later) if later else None,
        foot=say("sheet.foot", plan=plan.plan_id, week=week),
    )


def _parts(
    plan: Plan, today: date, week: int
) -> tuple[tuple[Part, ...], tuple[str, ...], tuple[str, ...]]:
    """What is open, by stage; the names of what needs the screen, and of the rest."""
    parts: list[Part] = []
    screen: list[str] = []
    later: list[str] = []
    number = 0
    whole = [("", words.say("sheet.exercises"), None)]
    stages = [(s.stage_id, words.told(s.name), s.unlock_after) for s in plan.stages] or whole
    for stage_id, title, unlock in stages:
        items = []
        for entry in plan.entries_of(stage_id) if stage_id else plan.entries:
            asked = asked_of(entry, week)
            if not _is_open(unlock, today) or not _may_be_done(plan, entry, asked, today):
                later.append(_name(asked))
            elif asked.exercise.target in ON_SCREEN:
                screen.append(_name(asked))
            else:
                number += 1
                items.append(_item(number, asked))
        if items:
            parts.append(Part(title, tuple(items)))
    return tuple(parts), tuple(dict.fromkeys(screen)), tuple(dict.fromkeys(later))


def _is_open(unlock: Unlock | None, today: date) -> bool:
    """Open from the start, or found met by the therapist."""
    return unlock is None or found_met(unlock, today)


def _may_be_done(plan: Plan, entry: Entry, asked: Asked, today: date) -> bool:
    is_open = _is_open(entry.unlock_after, today)
    return is_open and (is_cleared(plan) or needs_no_clearance(asked))


def _item(number: int, asked: Asked) -> Item:
    exercise = asked.exercise
    return Item(
        number=number,
        exercise=exercise.id,
        eyes=asked.eyes,
        drawn=is_drawn_so(asked),
        name=words.say(f"exercise.{exercise.id}"),
        dose=_dose(asked),
        how=" ".join([*wall_words(asked).splitlines(), how_of(asked, paper=True)]),
        support=words.say(f"sheet.support.{asked.support}") if asked.support != "none" else "",
        cares=tuple(words.say(f"care.{k}") for k in care_keys(asked) if k != EVERYWHERE),
    )


def _name(asked: Asked) -> str:
    name = words.say(f"exercise.{asked.exercise.id}")
    return words.row_of([name, *other_posture(asked), *form_of(asked)])


def _dose(asked: Asked) -> str:
    """Sitting or standing, how many or how long, how fast, how far, and what is special."""
    say = words.say
    chair = asked.exercise.channel == "head_rise"
    parts = [say("sheet.posture.chair" if chair else f"sheet.posture.{asked.posture}")]
    if asked.seconds is not None:
        parts.append(say("ask.dose.seconds", count=words.number(asked.seconds)))
    elif asked.repetitions == 1:
        parts.append(say("ask.dose.once"))
    else:
        parts.append(say("ask.dose.repetitions", count=asked.repetitions))
    if asked.exercise.counted:
        parts.append(_tempo(asked.tempo_bpm))
    if asked.amplitude_deg is not None:
        most = asked.amplitude_deg[1]
        key = "sheet.range.nod" if asked.exercise.channel == "head_pitch" else "sheet.range"
        parts.append(say(key, most=_degrees(most)))
    return words.row_of([*parts, *form_of(asked)])


def _degrees(value: float) -> str:
    return words.number(value, int(value % 1 > 0))


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


def _neck(plan: Plan) -> str:
    limit = plan.neck_limit_deg
    if limit is None:
        return ""
    return words.say("sheet.neck", turn=_degrees(limit.yaw), nod=_degrees(limit.pitch))


def _stop(plan: Plan) -> Listed:
    rules = plan.symptom_rules
    minutes = words.number(rules.settle_minutes_most, int(rules.settle_minutes_most % 1 > 0))
    # Above the end of the scale there is nothing.
    kind = "score" if rules.score_most < WORST else "worst"
    lines = (
        *(
            words.say(f"sheet.stop.{kind}.{symptom}", most=rules.score_most)
            for symptom in ("dizziness", *rules.also_ask)
        ),
        words.say("sheet.stop.settle", minutes=minutes),
        words.say("sheet.stop.spin", what=words.say(f"gate.{SPIN}")),
        words.say("sheet.stop.unwell"),
    )
    return Listed(words.say("sheet.stop"), lines)
