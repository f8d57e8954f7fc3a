"""What a plan asks for, in FHIR: a ServiceRequest for each exercise that was practised."""

from __future__ import annotations

from tracker.records.figure import shown_with_unit
from tracker.records.figures import ExerciseFigures, SessionFigures
from ui.documents.fhir_parts import (
    CODES,
    FIGURES,
    Resource,
    code_of,
    id_of,
    quantity_of,
    subject_of,
    when_of,
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
    if dose is not None:
        out["quantityQuantity"] = quantity_of(dose)
    if asked:
        out["orderDetail"] = [
            {**code_of(f.key, f.label), "text": f"{f.label}: {shown_with_unit(f)}"} for f in asked
        ]
    return out
