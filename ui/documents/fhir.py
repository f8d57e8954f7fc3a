"""A session as an HL7 FHIR R4 Bundle (plain JSON; hl7.org/fhir/R4).

One transaction of PUTs whose ids follow from the session's ID and the figure's key,
so that sending it twice makes no doubles. A person is there by pseudonym alone and is
made only where the server knows none with it, so that what a clinic added to theirs
stays; on one server a pseudonym must belong to one person. A session's plan is a CarePlan
with all of its entries, where a file of it is at hand, what was asked for a ServiceRequest an
exercise that was practised, what was measured an Observation a measure with its parts
as components, what the patient scored a QuestionnaireResponse. A score of a
questionnaire that the therapist entered is an Observation with its possible ends. Where
the therapist has marked repetitions as not valid, what was measured in the set is
``amended``, with their number as a component and which they are in a note; so is the session.

Codes are our own (system ``urn:turnpost:codes``: local, registered nowhere), but for
the time of an exercise, which also has its LOINC code as used by HL7's US Physical
Activity guide 1.0.0. No code was found for the other figures; a dizziness score from
0 to 10 has none that fits. No code system that needs a licence is used.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Sequence
from datetime import date

from tracker.records import terms
from tracker.records.figure import Figure, error_text, shown
from tracker.records.figures import ExerciseFigures, SessionFigures
from tracker.records.marks import NOT_VALID, marks_told
from tracker.records.over_time import OverTime
from tracker.records.people import PlanTaken
from tracker.records.questionnaires import Score
from ui.documents.fhir_asked import care_plan_of, person_plan_of, request_of
from ui.documents.fhir_parts import (
    ABSENT_CODES,
    ABSENT_EXTENSION,
    CODES,
    FIGURES,
    PERSON,
    UCUM,
    Resource,
    amount_of,
    category_of,
    code_of,
    component_of,
    id_of,
    quantity_of,
    subject_of,
    value_of,
    when_of,
)
from ui.documents.questionnaires import scores_for

#: Marks change no trend: whoever reads one learns of them beside it.
MARKED_IN_TREND = (
    "Some repetitions in these sessions were marked not valid by the therapist. The trend is as it "
    "was measured; they are in it where their session is one of those compared."
)


def fhir_bundle(
    records: Sequence[SessionFigures],
    scores: Sequence[Score] = (),
    people: str = PERSON,
    over_time: Sequence[OverTime] = (),
) -> str:
    """The Bundle of sessions, with their people's questionnaire scores and over_time, as JSON.

    ``people`` is the system that pseudonyms belong to: two practices on one server need two.
    """
    found: dict[str, Resource] = {}
    for record in records:
        for resource in _resources(record, people):
            found[resource["id"]] = resource
    for score in scores_for(records, scores):
        resource = _questionnaire(score)
        found[resource["id"]] = resource
    for one in over_time:
        found |= {r["id"]: r for r in (_patient(one.person_id, people), *_one_over_time(one))}
    return _transaction(found.values())


def score_bundle(score: Score, people: str = PERSON) -> str:
    """The Bundle of one questionnaire score, without any session, as JSON.

    It is for a server, which has its own knowledge of who sends: it does not name the
    author, who is known here by the login of this computer.
    """
    resource = _questionnaire(score)
    resource.pop("performer", None)
    return _transaction([_patient(score.person, people), resource])


def plan_bundle(person: str, taken: PlanTaken, people: str = PERSON) -> str:
    """The Bundle of a person's plan as it stands at the clinic, without any session, as JSON."""
    return _transaction([_patient(person, people), person_plan_of(person, taken, people)])


def _transaction(resources: Iterable[Resource]) -> str:
    bundle = {
        "resourceType": "Bundle",
        "type": "transaction",
        "entry": [
            {"fullUrl": f"urn:uuid:{r['id']}", "resource": r, "request": _how(r)} for r in resources
        ],
    }
    return json.dumps(bundle, indent=1, ensure_ascii=False, allow_nan=False) + "\n"


def _how(resource: Resource) -> Resource:
    """What the server is to do with a resource."""
    kind = resource["resourceType"]
    if kind != "Patient":
        return {"method": "PUT", "url": f"{kind}/{resource['id']}"}
    known = resource["identifier"][0]
    system = "".join(c if c in ":/" else _in_url(c) for c in known["system"])
    token = f"{system}|{_as_searched(known['value'])}"
    return {"method": "POST", "url": kind, "ifNoneExist": f"identifier={token}"}


def _as_searched(value: str) -> str:
    """A value in a search (hl7.org/fhir/R4/search.html, "Escaping"), with % where a URL has it."""
    escaped = "".join(f"\\{c}" if c in "\\$,|" else c for c in value)
    return "".join(_in_url(c) for c in escaped)


def _in_url(c: str) -> str:
    plain = c.isascii() and (c.isalnum() or c in "-._~")
    return c if plain else "".join(f"%{b:02X}" for b in c.encode("utf-8"))


def _resources(r: SessionFigures, people: str) -> Iterator[Resource]:
    if r.person_id:
        yield _patient(r.person_id, people)
    members: list[Resource] = []
    if r.plan_id:
        yield care_plan_of(r)
    for where, figures, e in _parts(r):
        request = request_of(r, e) if e is not None else None
        if request is not None:
            yield request
        for measure in dict.fromkeys(f.measure for f in figures if _is_observed(f)):
            parts = [f for f in figures if f.measure == measure and _is_observed(f)]
            members.append(_observation(r, where, parts, e, request))
        scores = [f for f in figures if f.group == "symptoms"]
        if scores:
            members.append(_answers(r, where, scores, e))
    yield from members
    yield _session(r, members)


def _patient(person: str, people: str) -> Resource:
    return {
        "resourceType": "Patient",
        "id": id_of("person", person),
        "identifier": [{"system": people, "value": person}],
    }


def _parts(
    r: SessionFigures,
) -> Iterator[tuple[str, Sequence[Figure], ExerciseFigures | None]]:
    """The session's own figures, then those of each exercise."""
    yield "session", [f for f in r.figures if f.origin != "asked"], None
    for e in r.exercises:
        yield f"exercise:{e.label}", e.figures, e


def _is_observed(figure: Figure) -> bool:
    # A mark is a part of what it is about: by itself it would stay where it was taken back.
    return figure.origin != "asked" and figure.group != "symptoms" and figure.measure != NOT_VALID


# --- what was measured ---


def _observation(
    r: SessionFigures,
    where: str,
    parts: Sequence[Figure],
    e: ExerciseFigures | None,
    request: Resource | None,
) -> Resource:
    first = parts[0]
    whole = next((f for f in parts if f.aspect == "all"), None)
    name = first.name if e is None else f"{e.name}: {first.name}"
    code = code_of(first.measure, first.name, loinc=e is not None)
    out: Resource = {
        "resourceType": "Observation",
        "id": id_of("observation", r.stable_id, where, first.measure),
        "identifier": [{"system": FIGURES, "value": f"{r.stable_id}/{where}/{first.measure}"}],
        "status": "final",
        "category": [category_of("survey" if first.origin == "reported" else "therapy")],
        "code": {**code, "text": name},
        "subject": subject_of(r),
        **when_of("effectiveDateTime", r),
        "device": {"display": f"Turnpost {r.program_version}".strip()},
    }
    if request is not None:
        out["basedOn"] = [{"reference": f"urn:uuid:{request['id']}"}]
    if whole is not None:
        out |= value_of(whole)
    components = [component_of(f) for f in parts if f is not whole]
    # R4 has no place for it beside a value that every server would keep.
    components += [_uncertainty(f) for f in parts if error_text(f)]
    marked = None if e is None or first.origin != "measured" else e.find(NOT_VALID)
    if e is not None and marked is not None:
        out |= _amended([marks_told(e)])
        components.append(component_of(marked))
    return out | ({"component": components} if components else {})


def _amended(marks: Sequence[str]) -> Resource:
    """What an Observation says where repetitions behind it were marked not valid afterwards.

    R4 has ``amended`` for what became known once it was final, updates and new information
    included (hl7.org/fhir/R4/valueset-observation-status.html), and ``note`` for what is to be
    said of unreliable values (hl7.org/fhir/R4/observation-definitions.html, Observation.note).
    ``entered-in-error`` would withdraw the whole set, and ``dataAbsentReason`` has a value
    missing: both would say more than the therapist has, who has marked single repetitions.
    """
    return {"status": "amended", "note": [{"text": mark} for mark in marks]}


# --- what the patient said ---


def _answers(
    r: SessionFigures, where: str, scores: Sequence[Figure], e: ExerciseFigures | None
) -> Resource:
    return {
        "resourceType": "QuestionnaireResponse",
        "id": id_of("answers", r.stable_id, where),
        "identifier": {"system": FIGURES, "value": f"{r.stable_id}/{where}/symptoms"},
        "questionnaire": "urn:turnpost:questionnaire:symptoms",
        "status": "completed",
        "subject": subject_of(r),
        **when_of("authored", r),
        "item": [
            {
                "linkId": f.key,
                "text": f.label if e is None else f"{e.name}: {f.label}",
                **_answer(f),
            }
            for f in scores
        ],
    }


def _answer(figure: Figure) -> Resource:
    if isinstance(figure.value, float):
        if figure.unit.decimals == 0:
            return {"answer": [{"valueInteger": round(figure.value)}]}
        return {"answer": [{"valueQuantity": quantity_of(figure)}]}
    if absent := ABSENT_CODES.get(figure.reason or ""):
        return {"extension": [{"url": ABSENT_EXTENSION, "valueCode": absent}]}
    return {"answer": [{"valueString": shown(figure)}]}


# --- what the therapist entered ---


def _questionnaire(score: Score) -> Resource:
    """The score of a questionnaire under its typed name; the code is local, as it may be any."""
    out: Resource = {
        "resourceType": "Observation",
        "id": id_of("questionnaire", score.id),
        "identifier": [{"system": FIGURES, "value": f"questionnaire/{score.id}"}],
        # A server that has got it learns so that it was taken back.
        "status": "entered-in-error" if score.withdrawn else "final",
        "category": [category_of("survey")],
        "code": code_of("questionnaire_score", "Questionnaire score"),
        "subject": {"reference": f"urn:uuid:{id_of('person', score.person)}"},
    }
    if score.withdrawn:
        # Its id is enough to take it back: what was wrong is not told once more.
        return out
    out["code"]["text"] = score.name
    ends = (("least", "Least possible", score.least), ("most", "Most possible", score.most))
    return out | {
        "effectiveDateTime": score.day.isoformat(),
        "performer": [{"display": score.author}],
        "valueQuantity": _bare_score(score.score),
        "component": [
            {
                "code": {**code_of(f"questionnaire_score.{key}", name), "text": name},
                "valueQuantity": _bare_score(value),
            }
            for key, name, value in ends
        ],
    }


def _bare_score(value: float) -> Resource:
    number = int(value) if value == int(value) else value
    return {"value": number, "unit": "score", "system": UCUM, "code": "{score}"}


# --- a person over a span ---


def _one_over_time(one: OverTime) -> Iterator[Resource]:
    """Practice as one Observation with all its figures, and one a trend.

    Their ids follow from person, figure and days, those of trends from their sessions, too: so
    a report of other days, or of some sessions only, stands beside it, and the same one twice
    makes no doubles.
    """
    practice = _over_days(one, "practice", (one.from_day, one.to_day))
    practice["code"] = {**code_of("practice", "Practice against the plan"), "text": "Practice"}
    practice["component"] = [component_of(f) for f in one.practice]
    yield practice
    for t in one.trends:
        out = _over_days(one, f"trend/{t.key}", (t.from_day, t.to_day), t.session_ids)
        side = ", affected side" if t.affected else ""
        code = code_of("trend", "Trend of a figure")
        out["code"] = {**code, "text": f"{t.where}: {t.name}{side}"}
        out["valueString"] = t.verdict
        out["note"] = [{"text": f"Compared: {t.basis}"}]
        out["component"] = [component_of(f) for f in t.figures]
        if t.marked.value:
            out["note"].append({"text": MARKED_IN_TREND})
            out["component"].append(component_of(t.marked))
        yield out


def _over_days(
    one: OverTime, what: str, days: tuple[date | None, date | None], sessions: Sequence[str] = ()
) -> Resource:
    period = {
        k: d.isoformat() for k, d in zip(("start", "end"), days, strict=True) if d is not None
    }
    made = id_of("over time", one.person_id, what, *period.values(), *sessions)
    out: Resource = {
        "resourceType": "Observation",
        "id": made,
        "identifier": [{"system": FIGURES, "value": f"over-time/{made}"}],
        "status": "final",
        "category": [category_of("therapy")],
        "code": {},
        "subject": {"reference": f"urn:uuid:{id_of('person', one.person_id)}"},
        "device": {"display": "Turnpost"},
    }
    return out | ({"effectivePeriod": period} if period else {})


def _uncertainty(figure: Figure) -> Resource:
    name = f"{figure.label}, expanded uncertainty (k = 2)"
    amount = amount_of(float(error_text(figure)), figure)
    return {
        "code": {**code_of(f"{figure.key}.uncertainty", name), "text": name},
        "valueQuantity": amount,
    }


# --- the session as a whole ---


def _session(r: SessionFigures, members: Iterable[Resource]) -> Resource:
    notes = [*r.alert, *(f"Trust less: {f}" for f in _flags(r)), *terms.LIMITS]
    notes += [f"Not begun: {left.name}: {left.why}" for left in r.left_out]
    marks = [f"{e.name}: {mark}" for e in r.exercises if (mark := marks_told(e))]
    notes = [*marks, *notes]
    found = [{"reference": f"urn:uuid:{m['id']}"} for m in members]
    return {
        "resourceType": "Observation",
        "id": id_of("session", r.stable_id),
        "identifier": [{"system": FIGURES, "value": r.stable_id}],
        "status": "amended" if marks else "final",
        "category": [category_of("therapy")],
        "code": {**code_of("session", "Practice session"), "text": "Practice session"},
        "subject": subject_of(r),
        **when_of("effectiveDateTime", r),
        "device": {"display": f"Turnpost {r.program_version}".strip()},
        "valueCodeableConcept": {
            "coding": [{"system": CODES, "code": f"ended.{r.ended}"}],
            "text": r.ended_words,
        },
        "note": [{"text": note} for note in notes if note],
        **({"hasMember": found} if found else {}),
    }


def _flags(r: SessionFigures) -> Iterator[str]:
    yield from r.flags
    for e in r.exercises:
        yield from (f"{e.name}: {flag}" for flag in e.flags)
