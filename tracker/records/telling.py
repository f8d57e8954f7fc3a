"""The review's lines for the therapist, in plain English; the same on screen and in a terminal."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date
from typing import Any

from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.guideline import gaze_minutes_a_day, quoted_minutes
from tracker.plan.model import Plan
from tracker.plan.starter import TRY_ID
from tracker.plan.telling import rung_words
from tracker.records import terms
from tracker.records.adherence import Adherence
from tracker.records.conditions import Standing
from tracker.records.figure import number_text
from tracker.records.gaze_minutes import GazeMinutes
from tracker.records.series import Series
from tracker.records.steps import Step
from tracker.records.trends import SPECS, Change, Spec
from tracker.records.units import PERCENT

NOT_MEASURED = "not measured"
MEDICINES_CHANGED = "said that medicines have changed"

_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def question(key: str) -> str:
    """A safety question that was answered with yes."""
    return terms.word(terms.BECAUSE, key)


def fell(weekly: Mapping[str, Any]) -> str:
    """A fall of which the person has told, and whether it hurt them."""
    often = terms.word(terms.FALLS, str(weekly.get("falls")))
    hurt = weekly.get("hurt")
    after = "" if hurt is None else ", and was hurt" if hurt else ", not hurt"
    return f"told of falls in the last week: {often}{after}"


def after_drop(key: str) -> str:
    """What was said after a sudden drop of the head."""
    return terms.word(terms.AFTER_DROP, key)


def ended(key: str) -> str:
    """How a session ended."""
    return terms.word(terms.ENDED, key)


def outside(plan_id: str | None, text: str) -> str:
    """What is told of a session, with the words that it was none of a plan if it was none."""
    if plan_id is None:
        return f"outside any plan: {text}"
    return f"in a try of the program: {text}" if plan_id == TRY_ID else text


def flag(key: str) -> str:
    """What limits figures."""
    return terms.word(terms.FLAGS, key)


def event(code: str) -> str:
    """Something noticed."""
    return terms.word(terms.EVENTS, code)


def reason(key: str) -> str:
    """Why something was not measured."""
    return terms.word(terms.REASONS, key)


def exercise(key: str, form: str = "") -> str:
    """An exercise in the words of the trade, short; with what is not as usual."""
    known = CATALOGUE.get(key)
    name = key
    if known is not None:
        name, _, manner = known.therapist.partition(":")
        name = name if manner else name.split(",")[0].split(" (")[0]
    return f"{name}, {form}" if form else name


def day(value: date | None, this_year: int | None = None) -> str:
    """A day: "5 Mar 2026", without the year where it is this one."""
    if value is None:
        return "day not known"
    short = f"{value.day} {_MONTHS[value.month - 1]}"
    return short if value.year == this_year else f"{short} {value.year}"


def listed(parts: Iterable[str]) -> str:
    """Words one after the other."""
    return ", ".join(parts)


def value(spec: Spec, found: float | None, *, unit: bool = True) -> str:
    """A figure as every document writes it; "not measured" for None, which is no 0."""
    if found is None:
        return NOT_MEASURED
    text = number_text(found * spec.scale, spec.unit.decimals)
    if not (unit and spec.unit.shown):
        return text
    return f"{text}{' ' if spec.unit.spaced else ''}{spec.unit.shown}"


def figure(series: Series) -> str:
    """Name of a series: its figure and its side."""
    name = SPECS[series.figure].words
    return f"{name}, {series.side}" if series.side else name


def verdict(series: Series, change: Change) -> str:
    """First against last in words."""
    text = _verdict(series, change)
    if change.since is not None:
        text += f" since the baseline of {day(change.since)}"
    return _with_dose(text, change)


def bare_verdict(series: Series, change: Change) -> str:
    """The same in short, where what was compared and the smallest change are told beside it."""
    text = _verdict(series, change)
    if change.verdict == "no_change":
        answers = f"{change.count} answers tell little"
        text = answers if change.limit == "answers" else called(change.verdict, change.limit)
    return _with_dose(text, change)


def _with_dose(text: str, change: Change) -> str:
    return f"{text} (another dose was asked)" if change.asked_other else text


def least_told(series: Series, change: Change) -> str:
    """The smallest difference that would be called a change; empty where there is none."""
    least = least_of(series, change)
    return "" if least is None else value(series.spec, least)


def least_of(series: Series, change: Change) -> float | None:
    """The smallest difference that would be called a change; of shares no more than all."""
    if change.least is None or series.spec.unit is not PERCENT:
        return change.least
    return min(change.least, 1.0)


def _verdict(series: Series, change: Change) -> str:
    if change.verdict == "too_few":
        return "too few measured sessions to compare"
    if change.verdict == "unlike":
        return "not compared: judged by different limits"
    if change.verdict == "no_change":
        least = least_told(series, change)
        if change.limit == "error":
            return f"no change beyond error and spread ({least})"
        if change.limit == "answers":
            return f"{change.count} answers tell no change below {least}"
        return f"too uneven to tell a change below {least}"
    return change.verdict


#: Why no change is told, in short.
NO_CHANGE = {"error": "no change", "uneven": "too uneven to tell"}


def called(verdict: str, limit: str) -> str:
    """What a difference is called (``tracker.differing``), in short."""
    return NO_CHANGE.get(limit, "no change") if verdict == "no_change" else verdict


def rose(series: Series, change: Change) -> str:
    """A score that rises."""
    spec = series.spec
    first, last = (value(spec, v, unit=False) for v in (change.first, change.last))
    return f"{spec.words} rose from {first} to {last} of 10"


def gaze_fell(series: Series, change: Change, *, both: bool) -> str:
    """A gaze that is less on the target than it was."""
    first, last = (value(series.spec, v, unit=False) for v in (change.first, change.last))
    where = f" with the head to the {series.side}" if series.side else ""
    also = ", less so to the other side" if both else ""
    name = exercise(series.exercise, series.form)
    return f"gaze on target fell from {first} to {last} %{where}{also} ({name})"


def low_practice(found: Adherence) -> str:
    """Practice below what was asked."""
    assert found.share is not None and found.bouts_asked is not None
    text = f"practised {found.counted} of {found.asked:.0f} bouts in {found.length_days} days"
    beyond = found.measured + found.reported - found.counted
    return f"{text}, and {beyond} beyond a day's dose" if beyond else text


def opening(standing: Standing, remark: str = "") -> str:
    """A condition of the plan and what it opens."""
    what = standing.opens
    if standing.exercise:
        # An entry's ID says little; it tells two of one exercise apart.
        apart = "" if what == standing.exercise else what
        what = exercise(standing.exercise, apart)
    return f"{standing.words.rstrip(' .')} (opens {what}{remark})"


def condition(standing: Standing, *, most: int | None = None) -> str:
    """How a condition of the plan stands, and why; ``most`` reasons of many."""
    met = "met" if standing.condition.met else "not met"
    because = standing.condition.because
    why = listed(because[:most])
    if most is not None and len(because) > most:
        why += f" and {len(because) - most} more"
    done = ", practised already" if standing.practised else ""
    if standing.condition.met and not (standing.practised or standing.in_closed):
        # Nothing opens by itself; whether the yes was said already isn't known before practice.
        why = f"opens only with the patient's yes; {why}"
    return f"{opening(standing, done)}: {met}; {why}"


def step(found: Step) -> str:
    """What a plan asks for next by its weeks, and from when on."""
    apart = "" if found.entry_id == found.exercise else found.entry_id
    when = f"({day(found.day)})" if found.day else "(the plan has no first day)"
    what = exercise(found.exercise, apart)
    return f"{what}: from week {found.rung.from_week} on {when}: {rung_words(found.rung)}"


def gaze(found: GazeMinutes | None, plan: Plan | None) -> str:
    """Minutes of gaze stabilisation in one line; empty where none is asked for and none was done.

    The guideline's figure stands there as quoted (``plan.guideline``).
    """
    planned = 0.0 if plan is None else gaze_minutes_a_day(plan)
    if found is None or not (planned or found.measured or found.reported):
        return ""
    text = (
        f"gaze stabilisation: {found.measured:.1f} minutes a day measured, "
        f"{found.reported:.1f} told of"
    )
    if plan is None:
        return text
    text += f"; planned {planned:.0f}"
    least, most = quoted_minutes(plan)
    if least is None:
        return text
    if most is None:
        return f"{text}; guideline, as quoted: {least:.0f} or more"
    return f"{text}; guideline, as quoted: {least:.0f} to {most:.0f}"


def practice(found: Adherence) -> str:
    """Practice in one line."""
    if found.length_days == 0:
        return "no day to count yet"
    bouts, days = found.bouts_a_day, found.days_a_week
    a_day = "no bouts" if bouts is None else f"{bouts:.1f} bouts a day"
    text = f"{a_day} on {days:.1f} days a week in the last {found.length_days} days"
    if found.length_days == 1:
        text = f"{a_day} on the one day counted"
    text += f" ({found.measured} measured, {found.reported} not seen by the camera)"
    if found.share is None:
        return f"{text}; no plan at hand to compare with"
    asked = f"{found.bouts_asked} a day on {found.days_asked} days"
    return f"{text}; asked: {asked}; done {100 * found.share:.0f} %"
