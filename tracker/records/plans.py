"""Which plan a session was practised under, from the files of plans that are at hand.

A summary names its plan by an ID alone: neither the plan nor a mark of its content stands in
it. So a file is taken by that ID, and said to be the plan as it stands in the file now; where it
doesn't fit what was practised, that is said too.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from tracker.plan.asked import Asked, asked_of, week_of
from tracker.plan.model import Plan
from tracker.records.figure import Figure, Value
from tracker.records.figures import ExerciseFigures, SessionFigures, day_of

#: Dose of an entry -> key of what was asked of the person.
_DOSES = {"repetitions": "repetitions.asked", "seconds": "duration.asked"}
#: Tempo and range of an entry -> measure, and keys of what the plan had, the first that is there:
#: a call may have changed it for a set, and a small screen lowered it, which changes no plan.
_RANGES = {
    "tempo_bpm": ("tempo_bpm", ("tempo_bpm.planned", "tempo_bpm.asked")),
    "amplitude_deg": (
        "amplitude_deg",
        ("amplitude_deg.planned", "wanted_amplitude", "amplitude_deg.asked"),
    ),
}


@dataclass(frozen=True, slots=True)
class PlanAtHand:
    """The plan of a session as it stands in a file now.

    Attributes
    ----------
    week
        Week of the plan on the session's day, for its ladders.
    unlike
        Entries of the session that the file hasn't got, or has with another dose, tempo or range.
    others
        How many more files of the same plan differ from it.
    """

    plan: Plan
    week: int
    unlike: tuple[str, ...] = ()
    others: int = 0


def with_plans(
    records: Sequence[SessionFigures], plans: Sequence[tuple[str, Plan]]
) -> list[SessionFigures]:
    """Sessions with their plans.

    Parameters
    ----------
    plans
        Files of plans with their places, the one that was written last comes last; copies that
        were handed out count, since those are practised from.

    Returns
    -------
    list of SessionFigures
        One whose plan is not among the files stays as it is. Of several files the one that fits
        what was practised best is taken, then the person's own before a template of nobody's,
        then the newest.
    """
    return [replace(r, plan=_plan_of(r, [p for _, p in plans])) for r in records]


def _plan_of(record: SessionFigures, plans: Sequence[Plan]) -> PlanAtHand | None:
    fitting = [
        p for p in plans if p.plan_id == record.plan_id and p.person in (None, record.person_id)
    ]
    if not fitting:
        return None
    rated = [(len(_unlike(record, p)), p.person is None, -k) for k, p in enumerate(fitting)]
    best = fitting[rated.index(min(rated))]
    # To whom sessions are handed over is no part of what is practised.
    contents = {p.model_copy(update={"hand_over": None}).model_dump_json() for p in fitting}
    return PlanAtHand(best, _week(record, best), tuple(_unlike(record, best)), len(contents) - 1)


def _week(record: SessionFigures, plan: Plan) -> int:
    day = day_of(record)
    return 1 if day is None else week_of(plan, day)


def _unlike(record: SessionFigures, plan: Plan) -> list[str]:
    week = _week(record, plan)
    found = {e.entry_id: asked_of(e, week) for e in plan.entries}
    unlike = [e.entry_id for e in record.exercises if e.entry_id and not _is_as_asked(e, found)]
    unlike += [left.entry_id for left in record.left_out if left.entry_id not in found]
    return list(dict.fromkeys(unlike))


def _is_as_asked(exercise: ExerciseFigures, found: dict[str, Asked]) -> bool:
    asked = found.get(exercise.entry_id or "")
    if asked is None or asked.exercise.id != exercise.exercise:
        return False
    if any(_number(exercise.find(k)) != getattr(asked, name) for name, k in _DOSES.items()):
        return False
    return all(
        _span(_planned(exercise, keys)) == _span(getattr(asked, name))
        for name, (measure, keys) in _RANGES.items()
        # Of what isn't read in an exercise, or was only told of, nobody knows what was asked.
        if any(f.measure == measure for f in exercise.figures)
    )


def _planned(exercise: ExerciseFigures, keys: Sequence[str]) -> Value:
    """What the plan had; None where it left it to the patient."""
    found = next((f for f in map(exercise.find, keys) if f is not None), None)
    return None if found is None else found.value


def _span(value: Value) -> Value:
    return (value, value) if isinstance(value, float) else value


def _number(figure: Figure | None) -> float | None:
    return figure.value if figure is not None and isinstance(figure.value, float) else None
