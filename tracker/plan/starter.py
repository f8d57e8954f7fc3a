"""The starter plan: the home programme in stages, each opening after a calm one before.

Its figures are the catalogue's (with their sources) and common practice; a
therapist is meant to change it for the person.
"""

from __future__ import annotations

import uuid
from collections.abc import Sequence
from functools import cache

from tracker.exercises.catalogue import CATALOGUE, Eyes, Surface
from tracker.plan.asked import Asked, asked_of, least_support
from tracker.plan.model import (
    FORMAT,
    FORMAT_VERSION,
    ClearanceItem,
    Entry,
    Plan,
    Stage,
    SymptomRules,
    Unlock,
)

#: Stage -> its name, and its exercises with the eyes and the surface.
_STAGES: dict[str, tuple[str, tuple[tuple[str, Eyes, Surface], ...]]] = {
    "eyes-and-head": (
        "Eyes and head, sitting",
        (
            ("eyes-up-down", "open", "firm"),
            ("eyes-side-to-side", "open", "firm"),
            ("nods-on-target", "open", "firm"),
            ("turns-on-target", "open", "firm"),
            ("nods-together", "open", "firm"),
            ("turns-together", "open", "firm"),
            ("near-far", "open", "firm"),
        ),
    ),
    "body-sitting": (
        "Body, sitting",
        (
            ("shoulders-back", "open", "firm"),
            ("shoulders-forward", "open", "firm"),
            ("floor-reach", "open", "firm"),
            ("hand-toss", "open", "firm"),
        ),
    ),
    "firm-floor": (
        "Standing, firm floor",
        (
            ("sit-to-stand", "open", "firm"),
            ("stand", "open", "firm"),
            ("stand", "closed", "firm"),
            ("ankle-sway", "open", "firm"),
        ),
    ),
    "soft-surface": (
        "Standing, soft surface",
        (
            ("stand", "open", "soft"),
            ("stand", "closed", "soft"),
            ("stand-head-shake", "open", "soft"),
            ("stand-head-shake", "closed", "soft"),
            ("weight-shift", "open", "soft"),
            ("weight-shift", "closed", "soft"),
        ),
    ),
    "walking": (
        "Walking",
        (
            ("walk", "open", "firm"),
            ("stairs", "open", "firm"),
            ("partner-turns", "open", "firm"),
        ),
    ),
}

#: Slow first and quicker within the set (beats a minute): the eyes up and down, and what
#: goes along with the head. Common practice, up to the catalogue's usual tempo.
_RISING = ("eyes-up-down", "nods-together", "turns-together")
_RISING_BPM = (40.0, 60.0)

#: Move on when a group brings on no symptoms: a GP clinic's handout of the
#: Cawthorne-Cooksey set (2013). Three sessions in a row: common practice.
_CALM_SESSIONS = 3

#: Common practice, in our own words; the clinic puts in its own.
_CLEARANCE = (
    "I have examined this person for this programme.",
    "The neck may be turned and nodded as far as this plan asks.",
    "Dizziness on changes of position has been looked into.",
    "This person may stand and walk at home with the support named.",
    "This person knows when to stop and whom to call.",
)


#: ID of the built-in starter on a chair, and its stages.
SEATED_ID = "starter-seated"
#: Plan of the half minute in which the program is tried out: no practice.
TRY_ID = "first-try"
_SEATED = ("eyes-and-head", "body-sitting")


#: IDs and names of the starter's stages.
STAGE_NAMES: dict[str, str] = {stage_id: name for stage_id, (name, _) in _STAGES.items()}


def starter_plan(stage_ids: Sequence[str] = tuple(_STAGES)) -> Plan:
    """A new starter plan with an ID of its own, with some of the stages or all of them."""
    return _plan(f"starter-{uuid.uuid4().hex[:8]}", tuple(stage_ids))


def seated_starter() -> Plan:
    """The built-in starter on a chair: its ID stays, so that what was done with it counts."""
    return _plan(SEATED_ID, _SEATED)


def needs_no_clearance(asked: Asked) -> bool:
    """Whether something may be done before the clearance checklist is ticked.

    That is what the seated starter has, in its form, and no more of it: neither a larger
    dose nor a larger movement nor a faster beat. One's own pace is no beat.
    """
    known = _seated_asked().get(asked.exercise.id)
    if known is None or asked.head_shake:
        return False
    same = (asked.eyes, asked.posture) == (known.eyes, known.posture)
    return same and all(
        wanted is None or (most is not None and wanted <= most)
        for wanted, most in (
            (asked.repetitions, known.repetitions),
            # A dose in seconds is held to the time that the starter's takes.
            (asked.seconds, known.about_s),
            (_highest(asked.tempo_bpm), _highest(known.tempo_bpm)),
            (_highest(asked.amplitude_deg), _highest(known.amplitude_deg)),
        )
    )


@cache
def _seated_asked() -> dict[str, Asked]:
    return {e.exercise: asked_of(e) for e in seated_starter().entries}


def _highest(value: float | tuple[float, float] | None) -> float | None:
    return max(value) if isinstance(value, tuple) else value


def _plan(plan_id: str, stage_ids: tuple[str, ...]) -> Plan:
    stages, entries = [], []
    before: str | None = None
    for stage_id in stage_ids:
        name, rows = _STAGES[stage_id]
        stages.append(_stage(stage_id, name, before))
        for exercise, eyes, surface in rows:
            entries.append(_entry(stage_id, exercise, eyes, surface))
        before = stage_id
    return Plan(
        format=FORMAT,
        format_version=FORMAT_VERSION,
        plan_id=plan_id,
        person=None,
        starts_on=None,
        affected_side="unknown",
        kind_of_loss="other",
        words="",
        bouts_a_day=3,
        days_a_week=7,
        rest_s=30.0,
        seat_distance_mm=750.0,
        neck_limit_deg=None,
        emergency_number=None,
        symptom_rules=SymptomRules(
            score_most=5,
            settle_minutes_most=5.0,
            also_ask=[],
            high_start="seated_only",
            baseline_rise_most=None,
        ),
        clearance=[ClearanceItem(item=i, cleared=False) for i in _CLEARANCE],
        stages=stages,
        entries=entries,
    )


def _stage(stage_id: str, name: str, before: str | None) -> Stage:
    if before is None:
        return Stage(stage_id=stage_id, name=name)
    unlock = Unlock(
        condition=f"The stage before brought on no symptoms in {_CALM_SESSIONS} sessions in a row.",
        after=before,
        sessions=_CALM_SESSIONS,
        rise_most=0,
    )
    return Stage(stage_id=stage_id, name=name, unlock_after=unlock)


def _entry(stage_id: str, exercise_id: str, eyes: Eyes, surface: Surface) -> Entry:
    """An entry that leaves nothing to be looked up: all values are written out."""
    exercise = CATALOGUE[exercise_id]
    name = exercise_id + ("-soft" if exercise_id == "stand" and surface == "soft" else "")
    closed = eyes == "closed"
    values: dict[str, object] = {
        "entry_id": name + ("-eyes-closed" if closed else ""),
        "exercise": exercise_id,
        "stage": stage_id,
    }
    if exercise.dose_seconds is not None:
        values["seconds"] = exercise.dose_seconds
    else:
        values["repetitions"] = exercise.dose_repetitions
    if exercise.counted:
        values["tempo_bpm"] = _RISING_BPM if exercise_id in _RISING else exercise.tempo_bpm
    if exercise.amplitude_deg is not None:
        values["amplitude_deg"] = exercise.amplitude_deg
    values |= {"eyes": eyes, "posture": exercise.posture, "surface": surface}
    values["support"] = least_support(Entry.model_validate(values))
    if closed:
        values["unlock_after"] = Unlock(
            condition="Steady and at ease with the eyes open.", after=name, met_on=None
        )
    return Entry.model_validate({**values, "note": ""})
