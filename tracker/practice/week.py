"""Whether it is time for the questions of the week, by the summaries of earlier sessions."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from tracker.plan.starter import TRY_ID
from tracker.session.said import NOT_ASKED
from tracker.session.summary_file import Summary
from tracker.session.weekly import FELL

#: Once a week (common practice).
EVERY_DAYS = 7
_Dated = tuple[date, Summary]


@dataclass(frozen=True, slots=True)
class Week:
    """What the last week says.

    Attributes
    ----------
    due, medicines_due
        Whether it is time to ask about falls, and about medicines.
    fall_told
        Whether the safety questions have heard of a fall since falls were asked about last
        and within the week, so that the therapist was to be called then.
    fall_open
        Whether a fall was told when falls were asked about last, and nobody was told yet
        to call the therapist for it: the session ended before.
    """

    due: bool = False
    medicines_due: bool = False
    fall_told: bool = False
    fall_open: bool = False

    def stops(self, falls: object) -> bool:
        """Whether an answer about falls is a reason to call the therapist now.

        More than one fall always is: at most one of them was heard of before.
        """
        return falls in FELL and not (falls == "once" and self.fall_told)


def dated_before(history: Sequence[Summary], today: date) -> list[tuple[date, Summary]]:
    """Sessions of plans up to a day, with theirs: no tries, and none without a day or ahead.

    What is outside any plan names nobody, and may have been anybody's.
    """
    real = [s for s in history if s.plan_id not in (None, TRY_ID)]
    dated = [(day, s) for s in real if (day := day_of(s)) is not None and day <= today]
    # Sorting is stable: sessions of one day stay in their order.
    return sorted(dated, key=lambda d: d[0])


def week_before(history: Sequence[Summary], today: date) -> Week:
    """The week before a day.

    Parameters
    ----------
    history
        Summaries of the person's earlier sessions, of whatever plan, oldest first.
    today
        The day on the person's calendar.

    Notes
    -----
    Seven days count from the last time that somebody was asked, answered or not, and
    before there was one from the first session of a plan in which anything was begun: with the
    therapist, before it, falls and medicines were talked about (common practice), and "changed"
    needs a day since when.
    Sessions dated ahead, by a clock that was wrong, count for nothing; nor does a try of
    the program, which must not take the place of a session in which falls are asked about,
    nor practice outside a plan: a fall that was told there may be another's, and whoever tells
    of one here is to be stopped once too often rather than not at all.
    """
    past = dated_before(history, today)
    return Week(
        due=_is_due(past, today, "falls"),
        medicines_due=_is_due(past, today, "medicines_changed"),
        fall_told=_heard_of(past, today),
        fall_open=_left_open(past),
    )


def _is_due(past: Sequence[_Dated], today: date, question: str) -> bool:
    asked = [day for day, s in past if _was_asked(s, question)]
    since = max(asked) if asked else min(_practised(past), default=None)
    return since is not None and (today - since).days >= EVERY_DAYS


def _practised(past: Sequence[_Dated]) -> list[date]:
    return [day for day, s in past if s.anything_begun]


def _heard_of(past: Sequence[_Dated], today: date) -> bool:
    """Whether the safety questions heard of a fall that was not asked about since."""
    since = past[_last_asked(past) + 1 :]
    # A fall of seven days ago belongs to the week before: that one ends with its last question.
    return any(_told_a_fall(s) for day, s in since if (today - day).days < EVERY_DAYS)


def _left_open(past: Sequence[_Dated]) -> bool:
    last = _last_asked(past)
    if last < 0:
        return False
    day, summary = past[last]
    week = Week(fall_told=_heard_of(past[:last], day))
    told = (summary.weekly or {}).get("falls")
    stopped = week.stops(told if isinstance(told, str) else None)
    return stopped and not any(_told_a_fall(s) for _, s in past[last:])


def _last_asked(past: Sequence[_Dated]) -> int:
    """Place of the last session that asked about falls; -1 without one."""
    return max((k for k, (_, s) in enumerate(past) if _was_asked(s, "falls")), default=-1)


def day_of(summary: Summary) -> date | None:
    """The day on which a session began; None where it is not known."""
    return date_of(summary.started_at)


def date_of(started_at: object) -> date | None:
    """The day of a time in ISO 8601, as it stands there; None where it is none."""
    try:
        return date.fromisoformat(started_at[:10] if isinstance(started_at, str) else "")
    except ValueError:
        return None


def _was_asked(summary: Summary, question: str) -> bool:
    weekly = summary.weekly
    if weekly is None:
        return False
    reasons = weekly.get("reasons")
    why = reasons.get(question) if isinstance(reasons, Mapping) else None
    return bool(why != NOT_ASKED)


def _told_a_fall(summary: Summary) -> bool:
    first = (summary.gate or {}).get("put_first")
    return isinstance(first, list) and "fall" in first
