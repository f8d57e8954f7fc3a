"""What is asked once a week: falls, and whether medicines have changed; never which ones.

Yes, no and how often are all that is asked for: names of medicines would be health data
that nothing here needs.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, get_args

from tracker.session.projections import SessionRecord
from tracker.session.said import NOT_ANSWERED, NOT_ASKED

Question = Literal["falls", "hurt", "medicines_changed"]
#: In the order in which they are asked; ``hurt`` only of who fell.
QUESTIONS: tuple[Question, ...] = get_args(Question)
Falls = Literal["none", "once", "more"]
FALLS: tuple[str, ...] = get_args(Falls)
#: Answers that tell of a fall.
FELL = ("once", "more")

#: Passed over by the person, who may; unlike what nobody was there to answer.
NO_FALL = "no fall was told"

#: Stands in place of ``fall`` where no safety question was answered with yes.
TOLD_WEEKLY = "fall_weekly"


def usable(question: str, answer: Any) -> bool:
    """Whether an answer makes sense; None (not answered) always does."""
    if answer is None:
        return True
    if question == "falls":
        return isinstance(answer, str) and answer in FALLS
    return question in QUESTIONS and isinstance(answer, bool)


def weekly_of(record: SessionRecord) -> dict[str, Any] | None:
    """What was answered this week; None where it was not this session's turn.

    Returns
    -------
    dict or None
        ``falls`` (``none``, ``once``, ``more``), ``hurt`` and ``medicines_changed`` (yes or
        no), each null where there is no answer, and in ``reasons`` why there is none.
    """
    kept = record.answers.get("weekly")
    given = kept.get("answers") if isinstance(kept, Mapping) else None
    if not isinstance(kept, Mapping) or not isinstance(given, Mapping):
        return None
    found: dict[str, Any] = {q: given.get(q) for q in QUESTIONS}
    found = {q: v if usable(q, v) else None for q, v in found.items()}
    attended = kept.get("attended") is True
    why = {q: NOT_ANSWERED if attended and q in given else NOT_ASKED for q in QUESTIONS}
    if found["falls"] == "none":
        why["hurt"] = NO_FALL
    return {**found, "reasons": {q: why[q] for q in QUESTIONS if found[q] is None}}


def names_of_yes(gate: Any) -> list[Any]:
    """What a summary's gate puts first, where a fall was told in the question of the week too.

    Returns
    -------
    list
        ``put_first``, with :data:`TOLD_WEEKLY` in place of a ``fall`` that the safety questions
        themselves have not heard of.
    """
    if not isinstance(gate, Mapping) or not isinstance(gate.get("put_first"), list):
        return []
    again = gate.get("asked_again")
    times = [gate, *(again if isinstance(again, list) else [])]
    heard = [t.get("asked_because") for t in times if isinstance(t, Mapping) and _has_fall(t)]
    weekly_alone = bool(heard) and set(heard) == {"weekly"}
    return [TOLD_WEEKLY if weekly_alone and q == "fall" else q for q in gate["put_first"]]


def _has_fall(asked: Mapping[str, Any]) -> bool:
    answers = asked.get("answers")
    return isinstance(answers, Mapping) and answers.get("fall") is True
