"""What is asked before a session and behind "I feel unwell", and what follows from it.

The program finds out nothing and names no illness: it keeps people from
practising on a day on which somebody should look at them first. The lists are
those of clinics' leaflets for people with dizziness; which answer leads where is
common practice. Words belong to the user interface.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from tracker.plan.model import Plan
from tracker.plan.rules import is_cleared

Outcome = Literal["go", "seated_only", "sit_and_stop", "call_therapist", "emergency", "ask"]

#: New since last time: no session, call for emergency help.
EMERGENCY: tuple[str, ...] = (
    "severe_headache",
    "double_vision",
    "slurred_speech",
    "weak_or_numb",
    "cannot_stand",
    "blackout",
    "chest_pain",
    "hearing_loss",
)
#: No session, call the therapist.
CALL: tuple[str, ...] = ("neck_pain", "tingling_arm", "fall", "unlike_usual")
#: A short spin on bending, looking up or tilting: hold on, sit, stop.
SPIN = "positional_spin"
QUESTIONS: tuple[str, ...] = (*EMERGENCY, *CALL, SPIN)


@dataclass(frozen=True, slots=True)
class Gate:
    """What follows from the answers.

    Attributes
    ----------
    outcome
        ``go``, ``seated_only`` (the clearance checklist isn't ticked: only what the seated
        starter has), one of the three that end the session, or ``ask``: something wasn't
        answered yet.
    because
        The questions answered with yes, or not answered (``ask``).
    put_first
        What the therapist reads first.
    """

    outcome: Outcome
    because: tuple[str, ...] = ()
    put_first: tuple[str, ...] = ()

    @property
    def open(self) -> bool:
        """Whether there is a session."""
        return self.outcome in ("go", "seated_only")

    @property
    def ended(self) -> str | None:
        """What the summary says of a session that this ended; None if it goes on."""
        if self.outcome in ("emergency", "call_therapist"):
            return "red_flag"
        return "stopped_unwell" if self.outcome == "sit_and_stop" else None


def judge_answers(answers: Mapping[str, bool | None], plan: Plan) -> Gate:
    """The gate of a session; a yes counts even while other questions are open.

    Parameters
    ----------
    answers
        Question -> yes, no, or None while nobody has answered it; one that isn't
        there hasn't been answered.
    """
    yes = [q for q in QUESTIONS if answers.get(q)]
    first = tuple(yes)
    for outcome, questions in (("emergency", EMERGENCY), ("call_therapist", CALL)):
        because = tuple(q for q in yes if q in questions)
        if because:
            return Gate("emergency" if outcome == "emergency" else "call_therapist", because, first)
    if SPIN in yes:
        return Gate("sit_and_stop", (SPIN,), first)
    unanswered = tuple(q for q in QUESTIONS if answers.get(q) is None)
    if unanswered:
        return Gate("ask", unanswered)
    return Gate("go" if is_cleared(plan) else "seated_only")


def without_answers(plan: Plan) -> Gate:
    """What the plan alone allows where nobody was there to be asked: clips without a window.

    Never for a person who is there; those are asked until they have answered.
    """
    return Gate("go" if is_cleared(plan) else "seated_only")
