"""The half-minute try at the end of the first steps: a plan with one gentle entry."""

from __future__ import annotations

from tracker.plan.model import Entry, Plan
from tracker.plan.starter import TRY_ID, seated_starter

#: Half a minute, slower than the exercise's usual tempo and with small turns: a try is no
#: training (common practice).
_SECONDS, _TEMPO_BPM, _AMPLITUDE_DEG = 30, 40, (8.0, 15.0)


def try_plan(person: str | None = None) -> Plan:
    """The plan of the try; safety questions, scores and set-up come as with any plan.

    Parameters
    ----------
    person
        Pseudonym of the plan at hand, so that the try isn't somebody else's.
    """
    entry = Entry(
        entry_id="try",
        exercise="turns-on-target",
        seconds=_SECONDS,
        tempo_bpm=_TEMPO_BPM,
        amplitude_deg=_AMPLITUDE_DEG,
    )
    values = {
        "plan_id": TRY_ID,
        "person": person,
        "entries": [entry],
        "stages": [],
        "bouts_a_day": 1,
    }
    return seated_starter().model_copy(update=values)
