"""The half-minute try at the end of the first steps: a plan with one gentle entry."""

from __future__ import annotations

from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.changes import AMPLITUDE_LEAST_DEG, neck_limit_deg
from tracker.plan.model import Entry, Plan
from tracker.plan.starter import TRY_ID, seated_starter

_EXERCISE = "turns-on-target"
#: Half a minute, slower than the exercise's usual tempo and with small turns: a try is no
#: training (common practice).
_SECONDS, _TEMPO_BPM, _AMPLITUDE_DEG = 30, 40, (8.0, 15.0)
#: From the least to the most that is asked for, so that it can be met (own choice).
_WIDE_DEG = 4.0


def try_plan(at_hand: Plan | None = None) -> Plan | None:
    """The plan of the try; safety questions, scores and set-up come as with any plan.

    Parameters
    ----------
    at_hand
        The plan at hand: the try isn't somebody else's, and keeps to that plan's emergency
        number, symptom rules and neck limit.

    Returns
    -------
    Plan or None
        None where turns within the neck limit are too small to be told from unrest.
    """
    plan = at_hand or seated_starter()
    limit = neck_limit_deg(plan, CATALOGUE[_EXERCISE])
    least, most = _AMPLITUDE_DEG
    if limit is not None:
        most = min(most, limit)
        least = min(least, most - _WIDE_DEG)
    if least < AMPLITUDE_LEAST_DEG:
        return None
    entry = Entry(
        entry_id="try",
        exercise=_EXERCISE,
        seconds=_SECONDS,
        tempo_bpm=_TEMPO_BPM,
        amplitude_deg=(least, most),
    )
    values = {
        "plan_id": TRY_ID,
        "person": plan.person,
        "emergency_number": plan.emergency_number,
        "symptom_rules": plan.symptom_rules,
        "neck_limit_deg": plan.neck_limit_deg,
        "entries": [entry],
        "stages": [],
        "bouts_a_day": 1,
    }
    return seated_starter().model_copy(update=values)
