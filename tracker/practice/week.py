"""Whether it is time for the questions of the week, by the summaries of earlier sessions."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from tracker.plan.starter import TRY_ID
from tracker.session.said import NOT_ASKED
from tracker.session.summary import Summary

EVERY_DAYS = 7


@dataclass(frozen=True, slots=True)
class Week:
    """What the last week says.

    Attributes
    ----------
    due
        Whether the questions of the week are to be asked.
    fall_told
        Whether the safety questions have heard of a fall within the week, so that the
        therapist was to be called then.
    """

    due: bool = False
    fall_told: bool = False


def week_before(history: Sequence[Summary], today: date) -> Week:
    """The week before a day.

    Parameters
    ----------
    history
        Summaries of the person's earlier sessions, of whatever plan.
    today
        The day on the person's calendar.

    Notes
    -----
    Seven days count from the last time that somebody was asked, answered or not, and
    before there was one from the first session: with the therapist, before it, falls and
    medicines were talked about (common practice), and "changed" needs a day since when.
    Sessions dated ahead, by a clock that was wrong, count for nothing; nor does a try of
    the program, which must not take the place of a session in which falls are asked about.
    """
    real = [s for s in history if s.plan_id != TRY_ID]
    days = [(day, s) for s in real if (day := _day(s)) is not None and day <= today]
    asked = [day for day, s in days if _was_asked(s)]
    since = max(asked) if asked else min((day for day, _ in days), default=None)
    return Week(
        due=since is not None and (today - since).days >= EVERY_DAYS,
        fall_told=any(_told_a_fall(s) for day, s in days if (today - day).days <= EVERY_DAYS),
    )


def _day(summary: Summary) -> date | None:
    try:
        return date.fromisoformat((summary.started_at or "")[:10])
    except ValueError:
        return None


def _was_asked(summary: Summary) -> bool:
    weekly = summary.weekly
    if weekly is None:
        return False
    reasons = weekly.get("reasons")
    why = reasons.get("falls") if isinstance(reasons, Mapping) else None
    return bool(why != NOT_ASKED)


def _told_a_fall(summary: Summary) -> bool:
    first = (summary.gate or {}).get("put_first")
    return isinstance(first, list) and "fall" in first
