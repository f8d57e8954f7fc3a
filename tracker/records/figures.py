"""Everything that is told of a session, once, in order, for whoever shows it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime
from typing import TYPE_CHECKING, Any

from tracker.errors import InputError
from tracker.exercises.catalogue import CATALOGUE, NOT_MEASURED
from tracker.exercises.watchers.falls import PossibleFall
from tracker.records import telling, terms
from tracker.records import units as u
from tracker.records.figure import Figure
from tracker.records.identity import content_id
from tracker.records.of_exercise import exercise_figures, repetition_rows
from tracker.records.of_session import put_first, session_figures
from tracker.records.places import Place, clean
from tracker.session.flags import REPORTED
from tracker.session.summary_file import Summary
from tracker.session.weekly import FELL

if TYPE_CHECKING:
    from tracker.records.plans import PlanAtHand
#: Key of the figure that says how often a possible fall was seen.
FALL = f"event.{PossibleFall.code}"


@dataclass(frozen=True, slots=True)
class ExerciseFigures:
    """One exercise: what it was, its figures, and what limits them.

    Attributes
    ----------
    name
        Its short name in the trade's words; ``title`` is the whole of it.
    label
        What tells it from the others of the session: its ID, with the plan's entry.
    flags
        What limits the figures, in words.
    unmeasured
        What the camera doesn't measure in this exercise, in words.
    repetitions
        One row a repetition (see :func:`~tracker.records.of_exercise.repetition_rows`).
    """

    exercise: str
    entry_id: str | None
    label: str
    name: str
    title: str
    figures: tuple[Figure, ...]
    flags: tuple[str, ...]
    unmeasured: tuple[str, ...]
    repetitions: tuple[dict[str, Any], ...]

    def find(self, key: str) -> Figure | None:
        """The figure of a key."""
        return next((f for f in self.figures if f.key == key), None)


@dataclass(frozen=True, slots=True)
class LeftOut:
    """An entry of the plan that was not begun."""

    entry_id: str
    name: str
    why: str


@dataclass(frozen=True, slots=True)
class SessionFigures:
    """A session as it is told.

    Attributes
    ----------
    stable_id
        The session's ID; for a lone check, which has none, one made from its content.
    person_id
        The pseudonym whole, for files; ``person`` is cut for showing.
    started
        When it began, as written in the summary (ISO 8601), or None; ``when`` is the
        same for people.
    alert
        What is to be read first; empty if nothing is.
    plan
        The whole plan, where a file of it is at hand (:func:`~tracker.records.plans.with_plans`).
    """

    stable_id: str
    session_id: str | None
    person_id: str | None
    person: str
    plan_id: str | None
    started: str | None
    when: str
    program_version: str
    ended: str
    ended_words: str
    alert: tuple[str, ...]
    figures: tuple[Figure, ...]
    exercises: tuple[ExerciseFigures, ...]
    left_out: tuple[LeftOut, ...]
    flags: tuple[str, ...]
    plan: PlanAtHand | None = None

    def find(self, key: str) -> Figure | None:
        """The session's figure of a key."""
        return next((f for f in self.figures if f.key == key), None)


def record_of(summary: Summary) -> SessionFigures:
    """Everything that is told of a session.

    Raises
    ------
    InputError
        If a part of the summary is damaged; the message names the place.
    """
    place = Place(summary.model_dump())
    differ = any(place.at("setup").at("differs").rows())
    found = [_exercise(p, own_setup=differ) for p in place.at("exercises").rows()]
    exercises = tuple(_with_answer(tuple(_labelled(found)), place))
    session_id = place.at("session_id").text()
    person = place.at("person").text()
    ended = str(place.at("ended").text())
    return SessionFigures(
        stable_id=summary.session_id or content_id(summary),
        session_id=session_id,
        person_id=clean(summary.person or "", None) or None,
        person=person or "no person named",
        plan_id=place.at("plan_id").text(),
        started=_iso(place.at("started_at")),
        when=_when(place.at("started_at")),
        program_version=place.at("program_version").text() or "",
        ended=ended,
        ended_words=_ended_words(place, ended),
        alert=tuple(_alert(place, ended, exercises)),
        figures=tuple(session_figures(place)),
        exercises=exercises,
        left_out=tuple(_left_out(p) for p in place.at("not_done").rows()),
        flags=tuple(flag_words(p) for p in place.at("quality").rows()),
    )


def _exercise(place: Place, *, own_setup: bool) -> ExerciseFigures:
    key = place.at("exercise").text() or "?"
    entry_id = place.at("entry_id").text()
    title = exercise_title(key)
    limits = [p.text() or "" for p in place.at("not_measured").rows()]
    return ExerciseFigures(
        exercise=key,
        entry_id=entry_id,
        label=key if entry_id in (None, key) else f"{key} / {entry_id}",
        name=title.split(":")[0],
        title=title,
        figures=exercise_figures(place, own_setup=own_setup),
        flags=tuple(flag_words(p) for p in place.at("quality").rows()),
        unmeasured=tuple(NOT_MEASURED.get(k, k) for k in limits),
        repetitions=tuple(repetition_rows(place)),
    )


def _labelled(exercises: Sequence[ExerciseFigures]) -> Iterator[ExerciseFigures]:
    """Exercises whose labels differ: the second of the same gets a (2)."""
    seen: dict[str, int] = {}
    for e in exercises:
        seen[e.label] = seen.get(e.label, 0) + 1
        again = seen[e.label]
        yield e if again == 1 else replace(e, label=f"{e.label} ({again})")


def exercise_title(key: str) -> str:
    """An exercise in the trade's words; one that isn't in the catalogue by its ID."""
    found = CATALOGUE.get(key)
    return key if found is None else found.therapist


def flag_words(place: Place) -> str:
    """What limits the figures, and why."""
    key = place.at("flag").text() or "?"
    reason = place.at("reason").text()
    name = terms.word(terms.FLAGS, key)
    return f"{name}: {reason}" if reason else name


def flag_weight(words: str) -> int:
    """Place of what limits the figures among its like, the gravest first; the unknown is last."""
    names = list(terms.FLAGS.values())
    return next((k for k, n in enumerate(names) if words.split(": ")[0] == n), len(names))


def _left_out(place: Place) -> LeftOut:
    reasons = [terms.word(terms.NOT_DONE, p.text() or "?") for p in place.at("reasons").rows()]
    name = exercise_title(place.at("exercise").text() or "?").split(":")[0]
    return LeftOut(place.at("entry_id").text() or "?", name, clean("; ".join(reasons)))


def _ended_words(place: Place, ended: str) -> str:
    because = [terms.word(terms.BECAUSE, p.text() or "?") for p in place.at("ended_because").rows()]
    words = terms.word(terms.ENDED, ended)
    return clean(f"{words} ({'; '.join(because)})") if because else words


def _alert(place: Place, ended: str, exercises: Sequence[ExerciseFigures]) -> Iterator[str]:
    """What needs eyes first, one line a thing."""
    first = put_first(place)
    if first:
        yield clean(f"Answered yes: {'; '.join(first)}", 3 * 120)
    told = place.at("weekly")
    if told.at("falls").text() in FELL:
        hurt = told.at("hurt").truth()
        words = telling.fell({"falls": told.at("falls").text(), "hurt": hurt})
        yield clean(words[:1].upper() + words[1:])
    yield from _drops(place.at("after_drop"), exercises)
    for code in terms.EVENTS_FIRST[1:]:
        seen = [e for e in exercises if _count(e, f"event.{code}")]
        if seen:
            word, names = terms.word(terms.EVENTS, code), dict.fromkeys(e.name for e in seen)
            count = sum(_count(e, f"event.{code}") for e in seen)
            yield clean(f"{word[:1].upper()}{word[1:]}: {count:.0f} ({'; '.join(names)})")
    watched = [e for e in exercises if e.exercise in CATALOGUE and CATALOGUE[e.exercise].needs]
    told_of = any(f.at("flag").text() == REPORTED for f in place.at("quality").rows())
    if watched and not told_of and all(_count(e, "measured") == 0.0 for e in watched):
        yield "Nothing was measured in this session"
    settled = place.at("symptoms").at("reasons").at("settled_minutes").text() or ""
    if settled.startswith("not back"):
        yield "Symptoms did not settle in the time that the plan allows"
    if ended != "finished" and ended in terms.ENDED:
        last = f"; last exercise: {exercises[-1].name}" if exercises else ""
        yield f"Session {terms.word(terms.ENDED, ended)}{last}"


def _drops(place: Place, exercises: Sequence[ExerciseFigures]) -> Iterator[str]:
    """What the camera saw of a fall and what was said after it: never one without the other."""
    falls = sum(_count(e, FALL) for e in exercises)
    said = place.at("value").text() or place.at("reason").text()
    words = "" if said is None else telling.after_drop(said)
    if falls:
        lost = said is not None and place.at("seen").truth() is False
        what = "Possible fall, lost on its way down" if lost else "Possible fall seen by the camera"
        yield clean(f"{what}: {falls:.0f}" + (f"; {words}" if words else ""))
    elif words:
        yield clean(f"After a sudden drop of the head: {words}")


def _with_answer(exercises: Sequence[ExerciseFigures], place: Place) -> Iterator[ExerciseFigures]:
    """A possible fall has what was said after it beside the event.

    Where no set has its own answer (an older summary, or nobody was asked), that of the session
    is to the last one.
    """
    drops = [p.at("after_drop") for p in place.at("exercises").rows()]
    if all(p.value is None for p in drops):
        last = max((k for k, e in enumerate(exercises) if e.find(FALL)), default=-1)
        drops = [place.at("after_drop") if k == last else p for k, p in enumerate(drops)]
    for e, drop in zip(exercises, drops, strict=True):
        event, said = e.find(FALL), drop.at("value").text() or drop.at("reason").text()
        if event is None or said is None:
            yield e
            continue
        words = clean(telling.after_drop(said))
        told = replace(event, aspect="answer", value=words, unit=u.WORDS, origin="reported")
        at = 1 + max(n for n, f in enumerate(e.figures) if f.measure == FALL)
        yield replace(e, figures=(*e.figures[:at], told, *e.figures[at:]))


def _count(exercise: ExerciseFigures, key: str) -> float:
    found = exercise.find(key)
    return found.value if found is not None and isinstance(found.value, float) else 0.0


# --- when and which ---


def _iso(place: Place) -> str | None:
    """The time as written, once it is known to be one."""
    text = place.value
    if text is None:
        return None
    if not isinstance(text, str) or len(text) > 40:
        raise place.wrong("should be a time")
    try:
        datetime.fromisoformat(text)
    except ValueError:
        raise place.wrong("should be a time, as 2026-03-01T09:30:00+01:00") from None
    return text


def _when(place: Place) -> str:
    text = _iso(place)
    if text is None:
        return "date not known"
    at = datetime.fromisoformat(text)
    day = f"{at.day} {at:%B} {at.year}"
    if len(text) <= 10:
        return day
    offset = f"{at:%z}"
    return f"{day}, {at:%H:%M}" + (f" (UTC{offset[:3]}:{offset[3:5]})" if offset else "")


def day_of(record: SessionFigures) -> date | None:
    """The day on which a session began, on the person's own calendar."""
    return None if record.started is None else datetime.fromisoformat(record.started).date()


def must_differ(records: Sequence[tuple[str, SessionFigures]]) -> None:
    """Refuse the same session twice, which would count double.

    Raises
    ------
    InputError
        If two of the named records are of one session.
    """
    seen: dict[str, str] = {}
    for name, record in records:
        if record.stable_id in seen:
            raise InputError(
                f"{name}: is the same session as {seen[record.stable_id]}; name each once"
            )
        seen[record.stable_id] = name
