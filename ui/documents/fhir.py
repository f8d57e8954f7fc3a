"""A session as an HL7 FHIR R4 Bundle (plain JSON; hl7.org/fhir/R4).

One transaction of PUTs whose ids follow from the session's ID and the figure's key,
so that sending it twice makes no doubles. A person is there by pseudonym alone and is
made only where the server knows none with it, so that what a clinic added to theirs
stays; on one server a pseudonym must belong to one person. What a plan asks for is a
ServiceRequest an exercise, what was measured an Observation a measure with its parts
as components, what the patient scored a QuestionnaireResponse. A score of a
questionnaire that the therapist entered is an Observation with its possible ends.

Codes are our own (system ``urn:turnpost:codes``: local, registered nowhere), but for
the time of an exercise, which also has its LOINC code as used by HL7's US Physical
Activity guide 1.0.0. No code was found for the other figures; a dizziness score from
0 to 10 has none that fits. No code system that needs a licence is used.
"""

from __future__ import annotations

import json
import uuid
from collections.abc import Iterable, Iterator, Sequence
from datetime import date, datetime
from typing import Any

from tracker.records import terms
from tracker.records.figure import NOT_ASKED, Figure, error_text, shown, shown_with_unit
from tracker.records.figures import ExerciseFigures, SessionFigures
from tracker.records.marks import NOT_VALID
from tracker.records.over_time import OverTime
from tracker.records.questionnaires import Score
from tracker.session.said import NOT_ANSWERED
from ui.documents.questionnaires import scores_for

CODES = "urn:turnpost:codes"
PERSON = "urn:turnpost:person"
FIGURES = "urn:turnpost:figure"
UCUM = "http://unitsofmeasure.org"
LOINC = "http://loinc.org"
#: Measure of an exercise -> LOINC code and name (hl7.org/fhir/us/physical-activity 1.0.0).
LOINC_CODES = {"duration": ("55411-3", "Exercise duration")}
ABSENT = "http://terminology.hl7.org/CodeSystem/data-absent-reason"
ABSENT_EXTENSION = "http://hl7.org/fhir/StructureDefinition/data-absent-reason"
CATEGORY = "http://terminology.hl7.org/CodeSystem/observation-category"
_NAMESPACE = uuid.uuid5(uuid.NAMESPACE_URL, "urn:turnpost:documents")

#: Reason of a figure without a value -> code of HL7's list of such reasons.
_ABSENT_CODES = {NOT_ASKED: "not-asked", NOT_ANSWERED: "asked-declined"}

Resource = dict[str, Any]


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


def _id(*parts: str) -> str:
    return str(uuid.uuid5(_NAMESPACE, json.dumps(parts)))


def _resources(r: SessionFigures, people: str) -> Iterator[Resource]:
    if r.person_id:
        yield _patient(r.person_id, people)
    members: list[Resource] = []
    for where, figures, e in _parts(r):
        request = _request(r, e) if e is not None else None
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
        "id": _id("person", person),
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
    # A therapist's mark is no observation of the session, and is not sent.
    return figure.origin != "asked" and figure.group != "symptoms" and figure.measure != NOT_VALID


# --- what was asked for ---


def _request(r: SessionFigures, e: ExerciseFigures) -> Resource:
    """What the plan asked for; without a plan the exercise's usual dose, as a proposal."""
    asked = [f for f in e.figures if f.origin == "asked"]
    dose = next((f for f in asked if f.measure in ("repetitions", "duration")), None)
    out: Resource = {
        "resourceType": "ServiceRequest",
        "id": _id("request", r.stable_id, e.label),
        "identifier": [{"system": FIGURES, "value": f"{r.stable_id}/{e.label}"}],
        "status": "completed",
        "intent": "order" if r.plan_id else "proposal",
        "code": {
            "coding": [{"system": CODES, "code": e.exercise, "display": e.name}],
            "text": e.title,
        },
        "subject": _subject(r),
        **_when("occurrenceDateTime", r),
    }
    if dose is not None:
        out["quantityQuantity"] = _quantity(dose)
    if asked:
        out["orderDetail"] = [
            {**_code(f.key, f.label), "text": f"{f.label}: {shown_with_unit(f)}"} for f in asked
        ]
    return out


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
    code = _code(first.measure, first.name, loinc=e is not None)
    out: Resource = {
        "resourceType": "Observation",
        "id": _id("observation", r.stable_id, where, first.measure),
        "identifier": [{"system": FIGURES, "value": f"{r.stable_id}/{where}/{first.measure}"}],
        "status": "final",
        "category": [_category("survey" if first.origin == "reported" else "therapy")],
        "code": {**code, "text": name},
        "subject": _subject(r),
        **_when("effectiveDateTime", r),
        "device": {"display": f"Turnpost {r.program_version}".strip()},
    }
    if request is not None:
        out["basedOn"] = [{"reference": f"urn:uuid:{request['id']}"}]
    if whole is not None:
        out |= _value(whole)
    components = [_component(f) for f in parts if f is not whole]
    # R4 has no place for it beside a value that every server would keep.
    components += [_uncertainty(f) for f in parts if error_text(f)]
    return out | ({"component": components} if components else {})


def _value(figure: Figure) -> Resource:
    """A value, or why there is none."""
    if figure.value is None:
        code = _ABSENT_CODES.get(figure.reason or "", "unknown")
        text = figure.reason or shown(figure)
        return {"dataAbsentReason": {"coding": [{"system": ABSENT, "code": code}], "text": text}}
    if isinstance(figure.value, str):
        return {"valueString": figure.value or "?"}
    if isinstance(figure.value, tuple):
        low, high = (_amount(v, figure) for v in figure.value)
        return {"valueRange": {"low": low, "high": high}}
    return {"valueQuantity": _quantity(figure)}


def _quantity(figure: Figure) -> Resource:
    value = figure.value if isinstance(figure.value, float) else 0.0
    return _amount(value, figure)


def _amount(value: float, figure: Figure) -> Resource:
    unit = figure.unit
    number = round(value, unit.decimals) + 0.0
    return {
        "value": int(number) if unit.decimals == 0 else number,
        "unit": unit.shown or "1",
        "system": UCUM,
        "code": unit.ucum,
    }


# --- what the patient said ---


def _answers(
    r: SessionFigures, where: str, scores: Sequence[Figure], e: ExerciseFigures | None
) -> Resource:
    return {
        "resourceType": "QuestionnaireResponse",
        "id": _id("answers", r.stable_id, where),
        "identifier": {"system": FIGURES, "value": f"{r.stable_id}/{where}/symptoms"},
        "questionnaire": "urn:turnpost:questionnaire:symptoms",
        "status": "completed",
        "subject": _subject(r),
        **_when("authored", r),
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
        return {"answer": [{"valueQuantity": _quantity(figure)}]}
    if absent := _ABSENT_CODES.get(figure.reason or ""):
        return {"extension": [{"url": ABSENT_EXTENSION, "valueCode": absent}]}
    return {"answer": [{"valueString": shown(figure)}]}


# --- what the therapist entered ---


def _questionnaire(score: Score) -> Resource:
    """The score of a questionnaire under its typed name; the code is local, as it may be any."""
    out: Resource = {
        "resourceType": "Observation",
        "id": _id("questionnaire", score.id),
        "identifier": [{"system": FIGURES, "value": f"questionnaire/{score.id}"}],
        # A server that has got it learns so that it was taken back.
        "status": "entered-in-error" if score.withdrawn else "final",
        "category": [_category("survey")],
        "code": _code("questionnaire_score", "Questionnaire score"),
        "subject": {"reference": f"urn:uuid:{_id('person', score.person)}"},
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
                "code": {**_code(f"questionnaire_score.{key}", name), "text": name},
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
    practice["code"] = {**_code("practice", "Practice against the plan"), "text": "Practice"}
    practice["component"] = [_component(f) for f in one.practice]
    yield practice
    for t in one.trends:
        out = _over_days(one, f"trend/{t.key}", (t.from_day, t.to_day), t.session_ids)
        side = ", affected side" if t.affected else ""
        code = _code("trend", "Trend of a figure")
        out["code"] = {**code, "text": f"{t.where}: {t.name}{side}"}
        out["valueString"] = t.verdict
        out["note"] = [{"text": f"Compared: {t.basis}"}]
        out["component"] = [_component(f) for f in t.figures]
        yield out


def _over_days(
    one: OverTime, what: str, days: tuple[date | None, date | None], sessions: Sequence[str] = ()
) -> Resource:
    period = {
        k: d.isoformat() for k, d in zip(("start", "end"), days, strict=True) if d is not None
    }
    made = _id("over time", one.person_id, what, *period.values(), *sessions)
    out: Resource = {
        "resourceType": "Observation",
        "id": made,
        "identifier": [{"system": FIGURES, "value": f"over-time/{made}"}],
        "status": "final",
        "category": [_category("therapy")],
        "code": {},
        "subject": {"reference": f"urn:uuid:{_id('person', one.person_id)}"},
        "device": {"display": "Turnpost"},
    }
    return out | ({"effectivePeriod": period} if period else {})


def _component(figure: Figure) -> Resource:
    return {
        "code": {**_code(figure.key, figure.label), "text": figure.label},
        **_value(figure),
    }


def _uncertainty(figure: Figure) -> Resource:
    name = f"{figure.label}, expanded uncertainty (k = 2)"
    amount = _amount(float(error_text(figure)), figure)
    return {
        "code": {**_code(f"{figure.key}.uncertainty", name), "text": name},
        "valueQuantity": amount,
    }


# --- the session as a whole ---


def _session(r: SessionFigures, members: Iterable[Resource]) -> Resource:
    notes = [*r.alert, *(f"Trust less: {f}" for f in _flags(r)), *terms.LIMITS]
    notes += [f"Not begun: {left.name}: {left.why}" for left in r.left_out]
    return {
        "resourceType": "Observation",
        "id": _id("session", r.stable_id),
        "identifier": [{"system": FIGURES, "value": r.stable_id}],
        "status": "final",
        "category": [_category("therapy")],
        "code": {**_code("session", "Practice session"), "text": "Practice session"},
        "subject": _subject(r),
        **_when("effectiveDateTime", r),
        "device": {"display": f"Turnpost {r.program_version}".strip()},
        "valueCodeableConcept": {
            "coding": [{"system": CODES, "code": f"ended.{r.ended}"}],
            "text": r.ended_words,
        },
        "note": [{"text": note} for note in notes if note],
        "hasMember": [{"reference": f"urn:uuid:{m['id']}"} for m in members],
    }


def _flags(r: SessionFigures) -> Iterator[str]:
    yield from r.flags
    for e in r.exercises:
        yield from (f"{e.name}: {flag}" for flag in e.flags)


# --- small parts ---


def _code(code: str, display: str, *, loinc: bool = False) -> Resource:
    coding = [{"system": CODES, "code": code, "display": display}]
    if loinc and code in LOINC_CODES:
        number, name = LOINC_CODES[code]
        coding.append({"system": LOINC, "code": number, "display": name})
    return {"coding": coding}


def _category(code: str) -> Resource:
    return {"coding": [{"system": CATEGORY, "code": code}]}


def _subject(r: SessionFigures) -> Resource:
    if not r.person_id:
        return {"display": "no person named"}
    return {"reference": f"urn:uuid:{_id('person', r.person_id)}"}


def _when(name: str, r: SessionFigures) -> Resource:
    """A FHIR dateTime; a time without its offset is none, so the day alone is given."""
    if r.started is None:
        return {}
    at = datetime.fromisoformat(r.started)
    with_time = len(r.started) > 10 and at.tzinfo is not None
    return {name: at.isoformat(timespec="seconds") if with_time else at.date().isoformat()}
