"""A person over a span: practice against the plan, and the trend of each figure, once, in order.

What the desk shows of them and what every document says of them is taken from here.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from tracker.plan.guideline import gaze_minutes_a_day, quoted_minutes
from tracker.records import telling
from tracker.records import units as u
from tracker.records.adherence import Adherence
from tracker.records.figure import Figure, Making
from tracker.records.marks import MarkedSets, marked_in, marked_sets
from tracker.records.notes import Note
from tracker.records.people import Person
from tracker.records.places import clean
from tracker.records.rows import SessionRow
from tracker.records.series import Series
from tracker.records.trends import Change, Point

A_DAY = u.Unit("/d", "a day", 1)
DAYS_A_WEEK = u.Unit("d/wk", "days a week", 1)
DAYS = u.Unit("d", "days", 0)
#: What a plan asks for is whole.
A_DAY_ASKED = u.Unit("/d", "a day", 0)
DAYS_A_WEEK_ASKED = u.Unit("d/wk", "days a week", 0)
MINUTES_A_DAY = u.Unit("min/d", "min a day", 1)
MINUTES_A_DAY_ASKED = u.Unit("min/d", "min a day", 0)
NO_PLAN = "no plan at hand"
NO_FIGURE = "the guideline names no figure for this kind of loss"
NO_DAY = "no day to count yet"
WHOLE = "Whole session"


@dataclass(frozen=True, slots=True)
class End:
    """What stands at one end of a trend: a mean, or a single value that may be in doubt."""

    value: float | None
    doubtful: bool = False


@dataclass(frozen=True, slots=True)
class Trend:
    """One figure of one exercise over the sessions.

    Attributes
    ----------
    key
        What tells it from the others of a person.
    where
        The exercise in the trade's words, or :data:`WHOLE`.
    name
        The figure with its side.
    affected
        Whether it is of the affected side.
    first, last
        The two ends, see :func:`ends_of`.
    least
        The smallest difference that would be called a change.
    measured, sessions, left_out
        Sessions with a value, all, and those not measured well enough to be compared.
    verdict
        Whether it changed, in words.
    basis
        What the ends are: the means of which sessions, or single ones.
    marked
        Repetitions marked as not valid in all of its sessions, whether those are among the ones
        compared or not; without a value where no notes were read.
    from_day, to_day
        Its first day and its last; None where no session has a day.
    session_ids
        The sessions that went in, with a value or without, in their order.
    """

    key: str
    where: str
    name: str
    affected: bool
    first: Figure
    last: Figure
    least: Figure
    measured: Figure
    sessions: Figure
    left_out: Figure
    marked: Figure
    verdict: str
    basis: str
    from_day: date | None
    to_day: date | None
    session_ids: tuple[str, ...]

    @property
    def figures(self) -> tuple[Figure, ...]:
        """All that is measured and counted; ``marked`` is the therapist's."""
        return (self.first, self.last, self.least, self.measured, self.sessions, self.left_out)


@dataclass(frozen=True, slots=True)
class OverTime:
    """A person over a span.

    Attributes
    ----------
    person
        The pseudonym, cut for showing; ``person_id`` is the whole of it.
    from_day, to_day
        The days that practice is counted over; ``from_day`` is None where there is none yet.
    practice
        Bouts, measured and reported apart, done and asked.
    """

    person: str
    person_id: str
    from_day: date | None
    to_day: date
    practice: tuple[Figure, ...]
    trends: tuple[Trend, ...]


def over_time_to_tell(
    person: Person,
    series: Sequence[Series] | None = None,
    notes: Sequence[Note] | None = None,
) -> list[OverTime]:
    """A person over time for documents; none of those without a pseudonym.

    They may be many people, of whom a document, and above all a record system, would make one.
    """
    if person.nameless:
        return []
    return [over_time_from(person, person.series() if series is None else series, notes)]


def over_time_of(person: Person, rows: Sequence[SessionRow] | None = None) -> OverTime:
    """A person over time; of the trends only what ``rows`` hold, where they are given."""
    series = person.series_over(person.rows if rows is None else rows)
    return over_time_from(person, series)


def over_time_from(
    person: Person, series: Sequence[Series], notes: Sequence[Note] | None = None
) -> OverTime:
    """A person over time, with these trends; ``notes`` that hold, None where none were read."""
    marked = None if notes is None else marked_sets(person.rows, notes)
    found = person.adherence
    # Where a file lies is no name: another copy of the folder would give other ones.
    names = {r.place: r.session_id or r.place for r in person.rows}
    return OverTime(
        person=clean(person.name),
        person_id=person.name,
        from_day=found.from_day,
        to_day=found.to_day,
        practice=(*practice_figures(found), *gaze_figures(person)),
        trends=tuple(_trend(one, person.affected_side, names, marked) for one in series),
    )


def practice_figures(found: Adherence) -> Iterator[Figure]:
    """Practice against the plan, all that is told of it in numbers."""

    def one(measure: str, name: str, unit: u.Unit = u.COUNT) -> Making:
        return Making("practice", measure, name, unit)

    def number(value: float | None) -> float | None:
        return None if value is None or not found.length_days else float(value)

    yield one("practice_days", "Days counted", DAYS).of(float(found.length_days))
    yield one("bouts_measured", "Bouts measured").of(float(found.measured))
    reported = one("bouts_reported", "Bouts not seen by the camera")
    yield reported.of(float(found.reported), origin="reported")
    yield one("bouts_a_day", "Bouts on a day with practice", A_DAY).of(
        number(found.bouts_a_day), "no practice"
    )
    yield one("days_a_week", "Days with practice", DAYS_A_WEEK).of(
        number(found.days_a_week), NO_DAY
    )
    why = NO_PLAN if found.bouts_asked is None else NO_DAY
    asked = number(found.asked) if found.share is not None else None
    yield one("bouts_asked_a_day", "Bouts asked", A_DAY_ASKED).of(
        _float(found.bouts_asked), NO_PLAN, origin="asked"
    )
    yield one("days_asked_a_week", "Days asked", DAYS_A_WEEK_ASKED).of(
        _float(found.days_asked), NO_PLAN, origin="asked"
    )
    done = number(found.counted) if found.share is not None else None
    yield one("bouts_counted", "Bouts done of those asked").of(done, why)
    yield one("bouts_asked", "Bouts asked in these days").of(asked, why, origin="asked")
    share = None if found.share is None else 100.0 * found.share
    yield one("practice_share", "Done of what was asked", u.PERCENT).of(share, why)


def gaze_figures(person: Person) -> Iterator[Figure]:
    """Minutes a day of gaze stabilisation; the guideline's figure as others quote it."""

    def one(measure: str, name: str, unit: u.Unit = MINUTES_A_DAY_ASKED) -> Making:
        return Making("practice", measure, name, unit)

    done, plan = person.gaze, person.plan
    yield one("gaze_measured", "Gaze stabilisation measured", MINUTES_A_DAY).of(
        None if done is None else done.measured, NO_DAY
    )
    yield one("gaze_reported", "Gaze stabilisation told of", MINUTES_A_DAY).of(
        None if done is None else done.reported, NO_DAY, origin="reported"
    )
    yield one("gaze_planned", "Gaze stabilisation planned").of(
        None if plan is None else float(round(gaze_minutes_a_day(plan))), NO_PLAN, origin="asked"
    )
    least, most = (None, None) if plan is None else quoted_minutes(plan)
    why = NO_PLAN if plan is None else NO_FIGURE
    yield one("gaze_quoted_least", "Guideline as quoted, at least").of(least, why, origin="asked")
    if most is not None:
        yield one("gaze_quoted_most", "Guideline as quoted, at most").of(most, origin="asked")


def _float(value: int | None) -> float | None:
    return None if value is None else float(value)


def ends_of(series: Series, change: Change) -> tuple[End | None, End]:
    """The two ends of a trend: means, or single sessions where there are too few for a mean.

    The first is None where there is but one value, or none.
    """
    if change.first is not None:
        return End(change.first), End(change.last)
    known = [p for p in series.points if p.value is not None]
    if not known:
        return None, End(None)
    first = _single(known[0]) if len(known) > 1 else None
    return first, _single(known[-1])


def _single(point: Point) -> End:
    return End(point.value, bool(point.doubts))


def _trend(
    series: Series, affected_side: str, names: Mapping[str, str], marked: MarkedSets | None
) -> Trend:
    change = series.change
    spec = series.spec
    first, last = ends_of(series, change)
    days = [p.day for p in series.points if p.day is not None]

    def end(name: str, words: str, value: float | None, why: str) -> Figure:
        scaled = None if value is None else value * spec.scale
        return Making("trend", f"trend.{name}", words, spec.unit).of(scaled, why)

    def count(name: str, words: str, value: int) -> Figure:
        return Making("trend", f"trend.{name}", words, u.COUNT).of(float(value))

    least = telling.least_of(series, change)
    side = f".{series.side}" if series.side else ""
    return Trend(
        key="/".join((series.exercise or "session", series.form, f"{series.figure}{side}")),
        where=telling.exercise(series.exercise, series.form) if series.exercise else WHOLE,
        name=telling.figure(series),
        affected=bool(series.side) and series.side == affected_side,
        first=end("first", "At first", None if first is None else first.value, "one value or none"),
        last=end("last", "Lately", last.value, telling.NOT_MEASURED),
        least=end("least", "Smallest change that would be called one", least, "not compared"),
        measured=count("measured", "Sessions with a value", len(_known(series))),
        sessions=count("sessions", "Sessions", len(series.points)),
        left_out=count("left_out", "Sessions left out", change.left_out),
        marked=Making("trend", "trend.marked", "Repetitions marked not valid", u.COUNT).of(
            None if marked is None else float(marked_in(series, marked)),
            "no notes read",
            origin="reported",
        ),
        verdict=telling.bare_verdict(series, change),
        basis=_basis(change, first, last),
        from_day=min(days, default=None),
        to_day=max(days, default=None),
        session_ids=tuple(names.get(p.place, p.place) for p in series.points),
    )


def _known(series: Series) -> list[Point]:
    return [p for p in series.points if p.value is not None]


def _basis(change: Change, first: End | None, last: End) -> str:
    if change.first is not None:
        start = f"first {change.count}"
        if change.since is not None:
            start = f"baseline of {telling.day(change.since)}"
        return f"{start}, last {change.count}"
    doubts = [n for n, end in (("first", first), ("last", last)) if end and end.doubtful]
    single = "single sessions" if last.value is not None else "no session"
    return f"{single}, in doubt: {' and '.join(doubts)}" if doubts else single
