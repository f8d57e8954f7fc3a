"""The review as text, without Qt."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tracker.records import telling
from tracker.records.attention import Reason
from tracker.records.index import Records
from tracker.records.marks import marked_in, marked_sets, trend_marks_told
from tracker.records.notes import Note
from tracker.records.people import Person
from tracker.records.questionnaires import Score, courses_of
from tracker.records.series import Series
from ui.documents.questionnaires import course_line

NAMELESS = "Sessions without a pseudonym"
#: What is said of them, and what to do.
APART = (
    "they may be of several people, so each stands by itself, without practice, trends and "
    "conditions; give each person a plan of their own, with a pseudonym: what is practised with it "
    "from then on has a name"
)


def _name(person: Person) -> str:
    return NAMELESS if person.nameless else person.name


def list_lines(records: Records, people: list[Person]) -> Iterator[str]:
    """People by what needs eyes first, then what was left out."""
    sessions = len(records.rows)
    if not people:
        yield f"No sessions were found in {records.folder}."
    else:
        named = sum(not p.nameless for p in people)
        yield f"{named} people, {sessions} sessions; who needs a look comes first."
    for person in people:
        yield ""
        yield f"{_name(person)}  (last session {telling.day(person.last_day)})"
        for reason in person.reasons:
            yield f"  {reason_line(reason)}"
        if not person.reasons:
            yield "  nothing that needs a look first"
        if person.nameless:
            yield f"  {APART}"
            continue
        yield f"  Practice: {telling.practice(person.adherence)}"
        yield from _gaze_line(person)
    if records.unread:
        yield ""
        not_read = sum(u.not_read for u in records.unread)
        told = f" {not_read} could not be read; these come first" if not_read else ""
        yield f"Left out:{told}"
        for unread in records.unread:
            yield f"  {unread.path}: {unread.why}"


def _gaze_line(person: Person) -> Iterator[str]:
    """Minutes of gaze stabilisation, if there is anything to say."""
    if text := telling.gaze(person.gaze, person.plan):
        yield f"  {text[:1].upper()}{text[1:]}"


def reason_line(reason: Reason) -> str:
    """A reason with its day, and how often it was so."""
    mark = "! " if reason.first else "- "
    return mark + dated(reason)


def dated(reason: Reason) -> str:
    """A reason's words after its day, and before both that it is older."""
    which = "the last" if reason.day == reason.last_day else "the gravest"
    often = f" ({reason.times} sessions, {which} one shown)" if reason.times > 1 else ""
    when = f"{telling.day(reason.day)}: " if reason.day else ""
    return f"{'older: ' if reason.older else ''}{when}{reason.text}{often}"


def person_lines(
    person: Person, scores: Sequence[Score] = (), notes: Sequence[Note] = ()
) -> Iterator[str]:
    """One person: what to look at, practice, questionnaires, trends, sessions."""
    side = person.affected_side
    if person.nameless:
        yield NAMELESS
        yield f"  {APART}"
        yield from (f"  {reason_line(r)}" for r in person.reasons)
        yield from _session_lines(person)
        return
    yield f"{person.name}, affected side: {'not known' if side == 'unknown' else side}"
    if person.baseline_day is not None:
        yield f"  Baseline, taken together in the clinic: {telling.day(person.baseline_day)}"
    for reason in person.reasons:
        yield f"  {reason_line(reason)}"
    yield f"  Practice: {telling.practice(person.adherence)}"
    yield from _gaze_line(person)
    for standing in person.conditions:
        yield f"  Condition: {telling.condition(standing)}"
    for step in person.steps:
        yield f"  Next: {telling.step(step)}"
    for course in courses_of(scores):
        yield f"  Questionnaire: {course_line(course)}"
    at, marked = None, marked_sets(person.rows, notes)
    for series in person.series():
        where = (series.exercise, series.form)
        if where != at:
            at = where
            yield ""
            name = telling.exercise(*where) if series.exercise else "Whole session"
            yield trend_marks_told(name, marked_in(series, marked))
        yield f"  {trend_line(series, side)}"
    yield from _session_lines(person)


def _session_lines(person: Person) -> Iterator[str]:
    yield ""
    yield "Sessions, the newest first"
    for row in reversed(person.rows):
        sets = telling.listed(telling.exercise(s.exercise, s.form) for s in row.sets)
        ended = ("baseline, " if row.baseline else "") + telling.ended(row.ended)
        yield f"  {telling.day(row.day)}: {ended}; {sets or 'nothing practised'}"


def trend_line(series: Series, affected_side: str) -> str:
    """A figure, its first and last sessions, and whether that is a change."""
    change = series.change
    name = telling.figure(series)
    if series.side and series.side == affected_side:
        name += " (affected)"
    measured = sum(p.value is not None for p in series.points)
    shown = f"{measured} of {len(series.points)} sessions measured"
    if change.first is None or change.last is None:
        only = [p.value for p in series.points if p.value is not None]
        last = telling.value(series.spec, only[-1] if only else None)
        return f"{name}: {last}; {telling.verdict(series, change)} ({shown})"
    first = telling.value(series.spec, change.first, unit=False)
    last = telling.value(series.spec, change.last)
    text = f"{name}: {first} -> {last}: {telling.verdict(series, change)}"
    if change.left_out:
        text += f" ({change.left_out} of {len(series.points)} sessions left out)"
    return text
