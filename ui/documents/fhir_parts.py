"""Parts that the resources of a Bundle share: identifiers, codes, values, whose and when."""

from __future__ import annotations

import json
import uuid
from datetime import datetime
from typing import Any

from tracker.records.figure import NOT_ASKED, Figure, shown
from tracker.records.figures import SessionFigures
from tracker.session.said import NOT_ANSWERED

CODES = "urn:turnpost:codes"
PERSON = "urn:turnpost:person"
FIGURES = "urn:turnpost:figure"
#: A plan, by its ID and that of the session that was practised under it.
PLANS = "urn:turnpost:plan"
UCUM = "http://unitsofmeasure.org"
LOINC = "http://loinc.org"
#: Measure of an exercise -> LOINC code and name (hl7.org/fhir/us/physical-activity 1.0.0).
LOINC_CODES = {"duration": ("55411-3", "Exercise duration")}
ABSENT = "http://terminology.hl7.org/CodeSystem/data-absent-reason"
ABSENT_EXTENSION = "http://hl7.org/fhir/StructureDefinition/data-absent-reason"
CATEGORY = "http://terminology.hl7.org/CodeSystem/observation-category"
_NAMESPACE = uuid.uuid5(uuid.NAMESPACE_URL, "urn:turnpost:documents")

#: Reason of a figure without a value -> code of HL7's list of such reasons.
ABSENT_CODES = {NOT_ASKED: "not-asked", NOT_ANSWERED: "asked-declined"}

Resource = dict[str, Any]


def id_of(*parts: str) -> str:
    """The ID that follows from what it is of."""
    return str(uuid.uuid5(_NAMESPACE, json.dumps(parts)))


def value_of(figure: Figure) -> Resource:
    """A value, or why there is none."""
    if figure.value is None:
        code = ABSENT_CODES.get(figure.reason or "", "unknown")
        text = figure.reason or shown(figure)
        return {"dataAbsentReason": {"coding": [{"system": ABSENT, "code": code}], "text": text}}
    if isinstance(figure.value, str):
        return {"valueString": figure.value or "?"}
    if isinstance(figure.value, tuple):
        low, high = (amount_of(v, figure) for v in figure.value)
        return {"valueRange": {"low": low, "high": high}}
    return {"valueQuantity": quantity_of(figure)}


def quantity_of(figure: Figure) -> Resource:
    """A Quantity of a figure that is a number."""
    value = figure.value if isinstance(figure.value, float) else 0.0
    return amount_of(value, figure)


def amount_of(value: float, figure: Figure) -> Resource:
    """A Quantity in a figure's unit (UCUM), with its decimals."""
    unit = figure.unit
    number = round(value, unit.decimals) + 0.0
    return {
        "value": int(number) if unit.decimals == 0 else number,
        "unit": unit.shown or "1",
        "system": UCUM,
        "code": unit.ucum,
    }


def component_of(figure: Figure) -> Resource:
    """A figure as a part of an Observation."""
    return {
        "code": {**code_of(figure.key, figure.label), "text": figure.label},
        **value_of(figure),
    }


def code_of(code: str, display: str, *, loinc: bool = False) -> Resource:
    """A code of our own; with that of LOINC where it is asked for and there is one."""
    coding = [{"system": CODES, "code": code, "display": display}]
    if loinc and code in LOINC_CODES:
        number, name = LOINC_CODES[code]
        coding.append({"system": LOINC, "code": number, "display": name})
    return {"coding": coding}


def category_of(code: str) -> Resource:
    """A category of HL7's list of observations."""
    return {"coding": [{"system": CATEGORY, "code": code}]}


def subject_of(r: SessionFigures) -> Resource:
    """Whose session it is."""
    if not r.person_id:
        return {"display": "no person named"}
    return {"reference": f"urn:uuid:{id_of('person', r.person_id)}"}


def when_of(name: str, r: SessionFigures) -> Resource:
    """A FHIR dateTime; a time without its offset is none, so the day alone is given."""
    if r.started is None:
        return {}
    at = datetime.fromisoformat(r.started)
    with_time = len(r.started) > 10 and at.tzinfo is not None
    return {name: at.isoformat(timespec="seconds") if with_time else at.date().isoformat()}
