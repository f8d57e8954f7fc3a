"""Whether a condition is met, and whether an entry or a stage opens. Nothing opens by itself."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_EVEN, Decimal
from typing import Any

from tracker.plan.model import Entry, Plan, Unlock
from tracker.plan.starter import TRY_ID
from tracker.session.flags import REPORTED
from tracker.session.summary_file import ExerciseSummary, Summary

#: So far ahead the day of the clinic that wrote it may be: another time zone, or a clock that is
#: a little wrong (own choice).
CALENDARS_APART = timedelta(days=1)
TO_COME = "the day has not come yet on which the therapist found it met"


@dataclass(frozen=True, slots=True)
class SessionFigures:
    """What one session says of an entry or a stage; None where not asked or not measured.

    ``ended`` is how the session ended; one that had to be ended meets no condition.
    ``eased``: a set was made easier than the plan has it, so that it says nothing of the plan.
    ``by_its_end``: not all was done that is asked for, or it was outside the plan; it counts
    because it had to be ended, and only that is held against it.
    """

    rise: int | None = None
    settle_minutes: float | None = None
    on_target: float | None = None
    measured: float | None = None
    clear: bool | None = None
    ended: str = "finished"
    eased: bool = False
    by_its_end: bool = False


@dataclass(frozen=True, slots=True)
class Condition:
    """Whether a condition is met, and the figures it rests on, for the therapist alone."""

    met: bool
    because: tuple[str, ...]


def found_met(unlock: Unlock, today: date | None) -> bool:
    """Whether the therapist has found a condition met: on a day that has come.

    Parameters
    ----------
    today
        The day on the calendar here; None where nobody knows it: then any day has come.
    """
    day = unlock.met_on
    return day is not None and (today is None or day <= today + CALENDARS_APART)


def judge_condition(
    unlock: Unlock | None, history: Sequence[SessionFigures], today: date | None
) -> Condition:
    """Whether a therapist's condition is met.

    Parameters
    ----------
    unlock
        The condition; None where there is none.
    history
        The sessions in which the entry or stage was done, oldest first. A figure that wasn't
        measured is not met.
    today
        As for :func:`found_met`.
    """
    if unlock is None:
        return Condition(True, ("nothing was asked for",))
    if found_met(unlock, today):
        return Condition(True, (f"the therapist found it met on {unlock.met_on}",))
    to_come = () if unlock.met_on is None else (f"{TO_COME} ({unlock.met_on})",)
    if not unlock.has_figures:
        words_only = ("it is in words only, and the therapist has not said so yet",)
        return Condition(False, to_come or words_only)
    needed = unlock.sessions or 1
    if len(history) < needed:
        return Condition(False, (*to_come, f"{len(history)} of {needed} sessions"))
    last = history[-needed:]
    missed = [
        f"session {k} of the last {needed}: {fault}"
        for k, figures in enumerate(last, 1)
        for fault in _faults(unlock, figures)
    ]
    if missed:
        return Condition(False, (*to_come, *missed))
    return Condition(True, (f"met in the last {needed} sessions", *_met_with(unlock, last)))


def opens(
    unlock: Unlock | None,
    history: Sequence[SessionFigures],
    today: date | None,
    patient_agrees: bool,
) -> bool:
    """Whether it opens: the condition is met and the patient says so; one alone isn't enough."""
    return unlock is None or (judge_condition(unlock, history, today).met and patient_agrees)


def entries_named(plan: Plan, name: str) -> list[Entry]:
    """Entries that the name of a stage or an entry stands for."""
    return plan.entries_of(name) or [e for e in plan.entries if e.entry_id == name]


def is_practised(plan: Plan, name: str, done: Iterable[str | None]) -> bool:
    """Whether anything of a stage, or an entry, is among the entries that were done."""
    return not {e.entry_id for e in entries_named(plan, name)}.isdisjoint(done)


def history_of(
    plan: Plan, name: str, summaries: Iterable[Summary], *, ended_badly: bool = False
) -> list[SessionFigures]:
    """Figures of the sessions in which an entry, or a whole stage, was done.

    Of a stage, every entry that is open from the start must have been done. With
    ``ended_badly`` sessions count, too, that had to be ended, whatever was done in them, of
    the plan, of none or in a try of the program: what has not been practised yet is not to
    begin upon them.
    """
    entries = entries_named(plan, name)
    all_ids = {e.entry_id for e in entries}
    needed = {e.entry_id for e in entries if e.unlock_after is None} or all_ids
    found = []
    for summary in summaries:
        if any(f.flag == REPORTED for f in summary.quality):
            # Nothing is known of it, neither for nor against.
            continue
        done = [e for e in summary.exercises if e.entry_id in all_ids]
        if summary.plan_id == plan.plan_id and needed <= {e.entry_id for e in done}:
            found.append(figures_of(summary, done))
        elif ended_badly and had_to_end(plan, summary.plan_id, summary.ended):
            found.append(SessionFigures(ended=summary.ended, by_its_end=True))
    return found


def had_to_end(plan: Plan, plan_id: str | None, ended: str) -> bool:
    """Whether a session of a plan, one outside any, or a try of the program had to be ended."""
    return ended in ENDED_BADLY and plan_id in (None, TRY_ID, plan.plan_id)


#: Ends after which nothing is built upon a session: somebody was not well, or may not be.
ENDED_BADLY = frozenset({"stopped_unwell", "symptom_rule", "red_flag", "possible_fall"})
#: Ends of a session that say nothing against it.
_FOR = ("finished", "stopped")
_AGAINST = {
    "stopped_unwell": "it was stopped unwell",
    "symptom_rule": "the symptom rule ended it",
    "red_flag": "a safety question ended it",
    "possible_fall": "it ended with a possible fall",
    "interrupted": "it broke off",
}


def _faults(unlock: Unlock, figures: SessionFigures) -> list[str]:
    found = []
    if figures.ended not in _FOR:
        found.append(_AGAINST.get(figures.ended or "", "how it ended is not known"))
    if figures.by_its_end:
        return found
    if figures.eased:
        found.append("a set was made easier than the plan has it")
    for words, value, most in (
        ("rise of the score", figures.rise, unlock.rise_most),
        ("minutes to settle", figures.settle_minutes, unlock.settle_minutes_most),
    ):
        if most is not None and (value is None or value > most):
            found.append(f"{words} {_missed(value, ROUND_CEILING)}, asked at most {most:g}")
    for words, value, least in (
        ("share on target", figures.on_target, unlock.on_target_least),
        ("share measured", figures.measured, unlock.measured_least),
    ):
        if least is not None and (value is None or value < least):
            share = _missed(None if value is None else _percent(value), ROUND_FLOOR, " %")
            found.append(f"{words} {share}, asked at least {float(_percent(least)):g} %")
    if unlock.clear and figures.clear is not True:
        found.append("target not said to be clear")
    return found


def _met_with(unlock: Unlock, last: Sequence[SessionFigures]) -> list[str]:
    """The figures that a condition is met with, one for each that was asked for."""
    found = []
    for words, values, most in (
        ("rise of the score", [f.rise for f in last], unlock.rise_most),
        ("minutes to settle", [f.settle_minutes for f in last], unlock.settle_minutes_most),
    ):
        if most is not None:
            found.append(f"{words} {_between(values, most=most)}, asked at most {most:g}")
    for words, values, least in (
        ("share on target", [f.on_target for f in last], unlock.on_target_least),
        ("share measured", [f.measured for f in last], unlock.measured_least),
    ):
        if least is not None:
            asked = _percent(least)
            shares = [None if v is None else _percent(v) for v in values]
            share = _between(shares, least=asked)
            found.append(f"{words} {share} %, asked at least {float(asked):g} %")
    return [*found, *(["target said to be clear"] if unlock.clear else [])]


def _between(
    values: Sequence[float | Decimal | None],
    *,
    least: Decimal | None = None,
    most: float | None = None,
) -> str:
    """Figures that meet a limit, from the lowest on; rounded, but never so as to miss it."""
    ends = []
    for value in (of(_exact(v) for v in values if v is not None) for of in (min, max)):
        rounded = value.quantize(Decimal("0.1"), ROUND_HALF_EVEN)
        if least is not None:
            rounded = max(rounded, least)
        if most is not None:
            rounded = min(rounded, _exact(most))
        ends.append(f"{float(rounded):g}")
    return ends[0] if ends[0] == ends[1] else " to ".join(ends)


def _missed(value: float | Decimal | None, away: str, unit: str = "") -> str:
    """A figure that missed a limit, rounded ``away`` from it, so that it never reads as met."""
    if value is None:
        return "not known"
    return f"{float(_exact(value).quantize(Decimal('0.1'), away)):g}{unit}"


def _percent(share: float) -> Decimal:
    return 100 * _exact(share)


def _exact(value: float | Decimal) -> Decimal:
    """A number as it is written: in binary 0.57 is a little less."""
    return Decimal(str(value))


def figures_of(summary: Summary, done: Sequence[ExerciseSummary]) -> SessionFigures:
    """The worst of what was done: a figure that one of them lacks is unknown."""
    # The session's scores stand for its sets only where none has scores of its own: a set
    # that was broken off must not take over the calm scores of another.
    own = any(e.symptoms is not None for e in summary.exercises)
    symptoms = [(e.symptoms if own else summary.symptoms) or {} for e in done]
    targets = [e.gaze["on_target_fraction"]["value"] for e in done if e.gaze is not None]
    said = [e.clarity.get("value") for e in done if e.gaze is not None]
    return SessionFigures(
        rise=_worst([_rise(s) for s in symptoms], max),
        settle_minutes=_worst([s.get("settled_minutes") for s in symptoms], max),
        on_target=_worst(targets, min),
        measured=_worst([e.done.measured_fraction for e in done], min),
        clear=all(v == "clear" for v in said) if said and None not in said else None,
        ended=summary.ended,
        eased=any(is_eased(e.changed) for e in done),
    )


def is_eased(changed: dict[str, Any] | None) -> bool:
    """Whether a set was asked with less than the plan asks for, in anything.

    Parameters
    ----------
    changed
        As in a summary: name -> what the plan asks for, what was asked.
    """
    given = (changed or {}).values()
    pairs = [p for p in given if isinstance(p, list | tuple) and len(p) == 2]
    return any(now < plan for p in pairs for plan, now in zip(*map(_ends, p), strict=False))


def _ends(value: Any) -> list[float]:
    """A figure, or the two of a range."""
    ends = value if isinstance(value, list | tuple) else [value]
    return [float(v) for v in ends if isinstance(v, int | float)]


def _rise(symptoms: dict[str, Any]) -> int | None:
    """The largest rise of what was asked; unknown if one of the scores is."""
    pairs = [symptoms, *(symptoms[k] for k in ("nausea", "unsteadiness") if k in symptoms)]
    rises = []
    for pair in pairs:
        before, after = pair.get("before"), pair.get("after")
        if not isinstance(before, int) or not isinstance(after, int):
            return None
        rises.append(max(after - before, 0))
    return max(rises)


def _worst(values: Sequence[Any], of: Any) -> Any:
    return of(values) if values and None not in values else None
