"""What a plan asks for, in FHIR: a CarePlan, and a ServiceRequest for what was practised.

The CarePlan has every entry of the plan where a file of it is at hand, and says that it is as
the file stands now. Else it has what the summary names: what was begun, and what was due that
day and not begun; what the summary hasn't got is said in a note, never filled in. Where the session
ended before its exercises a summary names no entry, and the CarePlan has none. A person's
plan as it stands at the clinic is a CarePlan of its own (``person_plan_of``), for a server that
keeps it.
What the therapist wrote to the patient or beside an entry is not told.
"""

from __future__ import annotations

from collections.abc import Iterator

from tracker.plan.asked import Asked, asked_of
from tracker.plan.model import Entry, Plan, Unlock
from tracker.plan.telling import asked_words, rung_words
from tracker.records.figure import shown_with_unit
from tracker.records.figures import ExerciseFigures, SessionFigures, exercise_title
from tracker.records.people import PlanTaken
from tracker.records.places import clean
from tracker.records.plans import PlanAtHand
from ui.documents.fhir_parts import (
    CODES,
    FIGURES,
    PLANS,
    UCUM,
    Resource,
    code_of,
    id_of,
    quantity_of,
    subject_of,
    when_of,
)

NO_COPY = "The session's file names its plan and holds no copy of it."
ENTRIES_KNOWN = (
    "These are the entries that were begun, and those due in the session that were not; the "
    "entries of other stages, the doses of what was not begun, and days are not known from it."
)
NONE_KNOWN = (
    "The session ended before any entry was begun, and which were due is not known from it."
)

AS_IT_STANDS = (
    "The plan as it stands in the clinic's folder. Doses and tempos are those of its first week; "
    "what a later week asks for stands with each exercise. Sessions have a CarePlan of their own, "
    "with what became of each entry."
)


def request_of(r: SessionFigures, e: ExerciseFigures) -> Resource:
    """What the plan asked for; without a plan the exercise's usual dose, as a proposal."""
    asked = [f for f in e.figures if f.origin == "asked"]
    dose = next((f for f in asked if f.measure in ("repetitions", "duration")), None)
    out: Resource = {
        "resourceType": "ServiceRequest",
        "id": id_of("request", r.stable_id, e.label),
        "identifier": [{"system": FIGURES, "value": f"{r.stable_id}/{e.label}"}],
        "status": "completed",
        "intent": "order" if r.plan_id else "proposal",
        "code": {
            "coding": [{"system": CODES, "code": e.exercise, "display": e.name}],
            "text": e.title,
        },
        "subject": subject_of(r),
        **when_of("occurrenceDateTime", r),
    }
    if r.plan_id:
        out["basedOn"] = [{"reference": f"urn:uuid:{_plan_id(r)}"}]
    if dose is not None:
        out["quantityQuantity"] = quantity_of(dose)
    if asked:
        out["orderDetail"] = [
            {**code_of(f.key, f.label), "text": f"{f.label}: {shown_with_unit(f)}"} for f in asked
        ]
    return out


def care_plan_of(r: SessionFigures) -> Resource:
    """The plan of a session, one CarePlan a session, so that a later plan changes no earlier one.

    Whether it is in force is known neither from a summary nor from a file, so its status is
    ``unknown``; the status of an entry is of this session alone
    (hl7.org/fhir/R4/valueset-care-plan-activity-status.html).
    """
    out: Resource = {
        "resourceType": "CarePlan",
        "id": _plan_id(r),
        "identifier": [{"system": PLANS, "value": f"{r.plan_id}/{r.stable_id}"}],
        "status": "unknown",
        "intent": "plan",
        "title": f"Plan {r.plan_id}",
        "subject": subject_of(r),
    }
    if r.plan is None:
        activities = list(_from_summary(r))
        notes = [f"{NO_COPY} {ENTRIES_KNOWN if activities else NONE_KNOWN}"]
    else:
        activities = [_activity(r, e, r.plan) for e in r.plan.plan.entries]
        notes = list(_about_file(r.plan))
        if _ended_before(r):
            notes.append("The session ended before the exercises.")
        if r.plan.plan.starts_on is not None:
            out["period"] = {"start": r.plan.plan.starts_on.isoformat()}
    if activities:
        # An empty array is no FHIR (hl7.org/fhir/R4/json.html).
        out["activity"] = activities
    return out | {"note": [{"text": n} for n in notes]}


def person_plan_of(person: str, taken: PlanTaken, people: str) -> Resource:
    """A person's plan as it stands at the clinic, apart from any session; one CarePlan a person.

    ``people`` is the system of the pseudonym: what two practices call alike are two people.

    Its id stays when the plan is changed or another takes its place, so that a server that has it
    keeps one, and its versions; which plan it is says its title. It hangs on no day: the steps
    of a ladder stand in words.
    """
    plan = taken.plan
    out: Resource = {
        "resourceType": "CarePlan",
        "id": person_plan_id(person, people),
        "identifier": [{"system": PLANS, "value": f"of-person/{people}|{person}"}],
        "status": "unknown",
        "intent": "plan",
        "title": f"Plan {plan.plan_id} as it stands at the clinic",
        "subject": {"reference": f"urn:uuid:{id_of('person', person)}"},
        "activity": [_planned(e, plan) for e in plan.entries],
        "note": [{"text": n} for n in (AS_IT_STANDS, *_doubts(taken))],
    }
    if plan.starts_on is not None:
        out["period"] = {"start": plan.starts_on.isoformat()}
    return out


def _doubts(taken: PlanTaken) -> Iterator[str]:
    """What the desk says of it, too; but no names of files, which may hold anything."""
    if taken.tied:
        yield (
            f"In doubt: {taken.tied} plan files of the person differ and start on the same day; "
            "this is the newest file."
        )
    if taken.not_handed_out:
        yield (
            "In doubt: it differs from a copy that was handed out, so the patient may be "
            "practising from another one."
        )


def person_plan_id(person: str, people: str) -> str:
    """The ID of the CarePlan of a person's plan at the clinic, whichever that is."""
    return id_of("plan of a person", people, person)


def _planned(entry: Entry, plan: Plan) -> Resource:
    """An entry of a plan: its dose and days, and what changes with the weeks."""
    asked = asked_of(entry, 1)
    rungs = (f"from week {r.from_week}: {rung_words(r)}" for r in entry.ladder)
    parts = [entry.entry_id, *_opens(plan, entry), *asked_words(asked, plan), *rungs]
    words = clean("; ".join(parts), None)
    out = _detail(_exercise_code(entry.exercise), words, "unknown", "told by each session")
    out["detail"] |= {"scheduledTiming": _timing(plan), "quantity": _dose(asked)}
    return out


def _plan_id(r: SessionFigures) -> str:
    return id_of("plan", r.stable_id)


def _ended_before(r: SessionFigures) -> bool:
    """Whether a session ended before its entries were known, as at the safety questions."""
    return not r.exercises and not r.left_out


def _about_file(found: PlanAtHand) -> Iterator[str]:
    yield (
        f"The whole plan as it stands in its file now, in week {found.week} for its doses. The "
        "session names it by its ID alone, so it may have been changed since."
    )
    if found.unlike:
        yield (
            "Practised otherwise than the file has it, so it was changed since: "
            f"{clean(', '.join(found.unlike), None)}. The requests tell what was really asked."
        )
    if found.others:
        yield f"Other files of this plan differ from it: {found.others}"


def _from_summary(r: SessionFigures) -> Iterator[Resource]:
    """What the summary names of its plan."""
    for e in r.exercises:
        asked = [f"{f.label}: {shown_with_unit(f)}" for f in e.figures if f.origin == "asked"]
        parts = "; ".join([e.entry_id or e.exercise, *asked])
        yield _detail(_exercise_code(e.exercise), clean(parts, None), "in-progress", "begun")
    for left in r.left_out:
        code = {"text": left.name}
        yield _detail(
            code, clean(left.entry_id), "unknown", f"not begun in this session: {left.why}"
        )


def _activity(r: SessionFigures, entry: Entry, found: PlanAtHand) -> Resource:
    """An entry of the plan: its dose, its days, and what became of it in this session."""
    plan, asked = found.plan, asked_of(entry, found.week)
    why = {left.entry_id: left.why for left in r.left_out}
    if any(e.entry_id == entry.entry_id for e in r.exercises):
        state = ("in-progress", "begun in this session")
    elif entry.entry_id in why:
        state = ("unknown", f"not begun in this session: {why[entry.entry_id]}")
    elif _ended_before(r):
        state = ("unknown", "the session ended before the exercises")
    else:
        state = ("unknown", "no part of this session")
    parts = [entry.entry_id, *_opens(plan, entry), *asked_words(asked, plan)]
    out = _detail(_exercise_code(entry.exercise), clean("; ".join(parts), None), *state)
    out["detail"] |= {"scheduledTiming": _timing(plan), "quantity": _dose(asked)}
    return out


def _opens(plan: Plan, entry: Entry) -> Iterator[str]:
    """The stage of an entry, and what has to be met before it and its stage."""
    stage = next((s for s in plan.stages if s.stage_id == entry.stage), None)
    if stage is not None:
        yield f"stage: {stage.name}"
        yield from _condition(stage.unlock_after, "the stage opens")
    yield from _condition(entry.unlock_after, "opens")


def _condition(unlock: Unlock | None, opens: str) -> Iterator[str]:
    if unlock is not None:
        yield f"{opens} when the patient agrees and: {unlock.condition}"


def _exercise_code(exercise: str) -> Resource:
    title = exercise_title(exercise)
    coding = [{"system": CODES, "code": exercise, "display": title.split(":")[0]}]
    return {"coding": coding, "text": title}


def _detail(code: Resource, words: str, status: str, why: str) -> Resource:
    return {
        "detail": {
            "kind": "ServiceRequest",
            "code": code,
            "status": status,
            "statusReason": {"text": why},
            "description": words,
        }
    }


def _timing(plan: Plan) -> Resource:
    """How often. On fewer than seven days the figures give the sum of a week, the words all."""
    a_day, days = plan.bouts_a_day, plan.days_a_week
    often, unit = (a_day, "d") if days == 7 else (a_day * days, "wk")
    words = f"{a_day} times a day on {days} days a week"
    return {
        "repeat": {"frequency": often, "period": 1, "periodUnit": unit},
        "code": {"text": words},
    }


def _dose(asked: Asked) -> Resource:
    """Seconds of a set that is held or timed, else repetitions."""
    number, unit = (asked.repetitions or 0, "1") if asked.seconds is None else (asked.seconds, "s")
    return {"value": number, "unit": unit, "system": UCUM, "code": unit}
