"""The part of a summary that was asked, not measured: gate, scores, clarity, support.

What nobody has answered is null, with the reason; it is never taken for a no or a 0.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from tracker.exercises.watchers.falls import NOT_TO_ITS_END, PossibleFall
from tracker.session.flags import FROM_CLIPS
from tracker.session.journal_line import is_number
from tracker.session.projections import ExerciseRecord, SessionRecord

NOT_ASKED = "not asked"
NOT_ANSWERED = "not answered"
#: Symptoms that a plan may have asked for beside dizziness.
ALSO_ASKED = ("nausea", "unsteadiness")
#: Sessions outside any plan that had to be ended, which hold back what is new of this one.
ENDED_OUTSIDE = "ended_outside"
#: The person has said that the therapist lets them go on, on a day that was over.
ALLOWED_TODAY = "allowed_today"
#: How the person was after a sudden drop of the head.
AFTER_DROP = "after_drop"
DROP_ANSWERS = ("fine", "not_well")
#: Stands as the reason where they have not said.
NO_ANSWER = "no_answer"
#: The same where somebody left the question, or closed the window.
CLOSED = "closed_unsaid"
#: The same where nobody was there to be asked: in a clip.
UNASKED = "not_asked"
NOT_SETTLED = "not back to usual in the time that the plan allows"

Answers = Mapping[str, Any]


def gate_of(record: SessionRecord) -> dict[str, Any] | None:
    """What was asked before the session, and again within it; None for a lone check.

    ``since_last_reasons`` has, by name, why a score of ``since_last`` is null. ``put_first`` is
    what the therapist should read first, of all times it was asked.
    """
    found = record.answers.get("gate")
    asked = [a for a in found if isinstance(a, dict)] if isinstance(found, list) else []
    if not asked:
        return record.about.gate
    reason = None if None not in asked[0].get("answers", {}).values() else NOT_ASKED
    return {
        **asked[0],
        "reason": reason,
        "put_first": _once([q for a in asked for q in a.get("put_first", [])]),
        "asked_again": asked[1:],
        "since_last": record.answers.get("since_last"),
        **_why_unsaid(record),
    }


def _why_unsaid(record: SessionRecord) -> dict[str, Any]:
    """Why scores of the time since the last session are missing: nobody was there, or left out."""
    found = record.answers.get("since_last")
    if not isinstance(found, Mapping):
        return {}
    why = NOT_ASKED if FROM_CLIPS in record.about.notes else NOT_ANSWERED
    return {"since_last_reasons": {name: why for name, score in found.items() if score is None}}


def clarity_of(answers: Answers) -> dict[str, Any]:
    """Whether the target was said to be clear; ``stopped_set`` if seeing double ended the set."""
    stopped = {"stopped_set": True} if answers.get("stopped_double") is True else {}
    return {**answer_of(answers, "clarity"), **stopped}


def answer_of(answers: Answers, about: str) -> dict[str, Any]:
    """One answer, null with the reason where there is none."""
    value = answers.get(about)
    return {"value": value, "reason": NOT_ASKED if value is None else None}


def after_drop_of(record: SessionRecord) -> dict[str, Any] | None:
    """What was answered after a sudden drop of the head; None where there was none.

    Returns
    -------
    dict or None
        ``value`` (``fine``, ``not_well``, or null with ``reason`` ``no_answer``,
        ``closed_unsaid`` where somebody closed the question, or ``not_asked`` where nobody was
        there), ``seconds`` until the answer, and ``seen``: whether the head was seen to stay
        down, or was only lost while it dropped. After several drops that to the last.
    """
    found = record.answers.get(AFTER_DROP)
    if not isinstance(found, Mapping):
        drops = [e for x in record.exercises for e in x.events if e.code == PossibleFall.code]
        seen = any(e.reason not in NOT_TO_ITS_END for e in drops)
        unasked = {"value": None, "reason": UNASKED, "seconds": None, "seen": seen}
        return unasked if drops else None
    return _drop_answer(found)


def after_drop_in(answers: Answers) -> dict[str, Any] | None:
    """The same for one set; None where nothing was asked after it."""
    found = answers.get(AFTER_DROP)
    return _drop_answer(found) if isinstance(found, Mapping) else None


def _drop_answer(found: Mapping[str, Any]) -> dict[str, Any]:
    value = found.get("answer")
    value = value if value in DROP_ANSWERS else None
    unsaid = CLOSED if found.get("closed") is True else NO_ANSWER
    seconds = found.get("seconds")
    return {
        "value": value,
        "reason": unsaid if value is None else None,
        "seconds": seconds if value is not None and is_number(seconds) else None,
        "seen": found.get("seen") is True,
    }


def symptoms_of_set(record: ExerciseRecord, session: SessionRecord) -> dict[str, Any] | None:
    """Scores of one set; ``before`` is the score at the session's start."""
    after = record.answers.get("scores_after")
    if after is None:
        return None
    before = session.answers.get("scores_before") or {}
    return _symptoms(before, after, [record.answers])


def symptoms_of(session: SessionRecord) -> dict[str, Any] | None:
    """Scores of the session: at its start, after its last set, and the longest time to settle.

    None where no score was asked for at all (a lone check).
    """
    before = session.answers.get("scores_before")
    sets = [e.answers for e in session.exercises if "scores_after" in e.answers]
    if before is None and not sets:
        return None
    return _symptoms(before or {}, sets[-1]["scores_after"] if sets else {}, sets)


def _symptoms(before: Answers, after: Answers, sets: Sequence[Answers]) -> dict[str, Any]:
    """Dizziness, and what else was asked apart."""
    minutes = [a["settled_minutes"] for a in sets if "settled_minutes" in a]
    worst = None if not minutes or None in minutes else max(minutes)
    out: dict[str, Any] = {
        "before": before.get("dizziness"),
        "after": after.get("dizziness"),
        "settled_minutes": worst,
        "reasons": {},
    }
    out["reasons"] = {k: NOT_ASKED for k in ("before", "after") if out[k] is None}
    if worst is None:
        out["reasons"]["settled_minutes"] = NOT_SETTLED if minutes else NOT_ASKED
    for name in sorted({*before, *after} - {"dizziness"}):
        out[name] = {"before": before.get(name), "after": after.get(name)}
    return out


def not_done_rows(record: SessionRecord) -> list[dict[str, Any]]:
    """Entries that were not begun, with the reasons as keys."""
    return [
        {
            "entry_id": r.get("entry_id"),
            "exercise": r.get("exercise"),
            "reasons": [str(k) for k in r.get("reasons", ())],
        }
        for r in record.not_done
    ]


def changed_of(answers: Answers) -> dict[str, Any] | None:
    """What a therapist had changed of a set: name -> what the plan asks for, what was asked."""
    found = answers.get("changed")
    if not isinstance(found, Mapping):
        return None
    return {str(k): list(v) for k, v in found.items() if isinstance(v, list | tuple)}


def change_rows(record: SessionRecord) -> list[dict[str, Any]]:
    """What was changed between sets, in the order of time."""
    return [
        {
            "time_s": round(float(r["time_s"]), 3),
            "entry_id": str(r.get("entry_id")),
            "what": str(r.get("what")),
            "before": r.get("before"),
            "after": r.get("after"),
            "undone": r.get("undone") is True,
            "confirmed": r.get("confirmed") is True,
        }
        for r in record.changes
        if is_number(r.get("time_s"))
    ]


def mark_rows(record: SessionRecord) -> list[dict[str, Any]]:
    """Moments that were marked."""
    return [
        {
            "time_s": round(float(r["time_s"]), 3),
            "entry_id": None if r.get("entry_id") is None else str(r["entry_id"]),
        }
        for r in record.marks
        if is_number(r.get("time_s"))
    ]


def agreed_of(record: SessionRecord) -> list[str]:
    """Stages and entries that the patient has said yes to."""
    found = record.answers.get("opened", [])
    return [str(n) for n in found] if isinstance(found, list) else []


def ended_outside_rows(record: SessionRecord) -> list[dict[str, Any]]:
    """Sessions outside any plan that had to be ended: when each began, and how it ended."""
    found = record.answers.get(ENDED_OUTSIDE, [])
    return [
        {
            "started_at": None if r.get("started_at") is None else str(r["started_at"]),
            "ended": ended,
        }
        for r in (found if isinstance(found, list) else [])
        if isinstance(r, Mapping) and isinstance(ended := r.get("ended"), str)
    ]


def _once(keys: Sequence[str]) -> list[str]:
    return list(dict.fromkeys(keys))
