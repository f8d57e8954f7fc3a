"""What a journal says: samples, turns, events, steps. Files come from here alone."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, fields, replace
from math import isfinite, nan
from typing import Any

from pydantic import ValidationError

from tracker.exercises.catalogue import CATALOGUE
from tracker.exercises.events import Event
from tracker.motion.turning import Turn
from tracker.sample import Sample
from tracker.session.at_target import gaze_error_at_target_deg
from tracker.session.beside import doubted_band, withheld_beside
from tracker.session.journal import JournalContent, sample_of, sample_record
from tracker.session.journal_head import Head
from tracker.session.journal_line import Record, is_number
from tracker.session.live import SessionInfo, setup_gaze_error_deg, was_set_up
from tracker.session.stage import Camera, GazeRead, StageLog, Step, is_judged
from tracker.session.unlike import believed


@dataclass(frozen=True, slots=True)
class SetupRecord:
    """A set-up that held from a time on: what it found, and notes on what limits it."""

    from_s: float
    found: dict[str, Any]
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class ExerciseRecord:
    """One exercise step as it was done, with what was measured in it."""

    number: int
    step: Step
    samples: list[Sample]
    turns: list[Turn]
    events: list[Event]
    answers: dict[str, Any]
    setup: SetupRecord | None = None


@dataclass(frozen=True, slots=True)
class SessionRecord:
    """A whole session, read back from its journal.

    ``damaged_head`` is what is known where the journal's first line is damaged.
    ``not_done`` holds the marks of entries that were not begun, ``changes`` those of what was
    changed between two sets, ``marks`` those of moments that somebody marked; ``setups`` is empty
    where one set-up, told with the session's beginning, holds for all of it.
    """

    about: SessionInfo
    steps: list[Step]
    samples: list[Sample]
    exercises: list[ExerciseRecord]
    answers: dict[str, Any]
    ended: str
    end_s: float
    damaged_lines: int
    damaged_head: Head | None = None
    setups: tuple[SetupRecord, ...] = ()
    not_done: tuple[Record, ...] = ()
    changes: tuple[Record, ...] = ()
    marks: tuple[Record, ...] = ()


def session_record(content: JournalContent) -> SessionRecord:
    """Everything that a journal holds, in order."""
    columns = content.columns
    samples = [s for r in content.of("sample") if (s := sample_of(r, columns)) is not None]
    samples = _once(sorted(samples, key=lambda s: s.time_s))
    end_s = _end_s(content, samples)
    # In a damaged journal lines may have changed places.
    begun = sorted(_begun(content), key=lambda b: b[1].from_s)
    numbered = _cut(begun, end_s)
    about = _about(content)
    setups = tuple(u for r in content.of("setup") if (u := _setup(r)) is not None)
    held = {number: _held_at(step, setups) for number, step in numbered}
    for number, step in numbered:
        if is_judged(step):
            setup = held[number]
            _believe(samples, step, about.setup if setup is None else setup.found)
    answers = content.of("answer")
    exercises = [
        ExerciseRecord(
            number,
            step,
            [s for s in samples if step.from_s <= s.time_s < step.to_s],
            [t for r in content.of("turn") if r.get("number") == number and (t := _turn(r))],
            [
                e
                for r in content.last_of_each("event")
                if r.get("number") == number and (e := _event(r, step.to_s))
            ],
            {str(r.get("about")): r.get("value") for r in answers if r.get("number") == number},
            held[number],
        )
        for number, step in numbered
        if is_judged(step)
    ]
    return SessionRecord(
        about=about,
        steps=[s for _, s in numbered],
        samples=samples,
        exercises=exercises,
        answers={str(r.get("about")): r.get("value") for r in answers if r.get("number") is None},
        ended=content.ended,
        end_s=end_s,
        damaged_lines=content.damaged_lines + len(content.of("step")) - len(begun),
        damaged_head=content.damaged_head,
        setups=setups,
        not_done=_named(content, "not_done"),
        changes=_named(content, "changed"),
        marks=_named(content, "marked"),
    )


def _once(samples: list[Sample]) -> list[Sample]:
    """Samples in order without the copies that a damaged journal may hold."""
    return [
        s
        for k, s in enumerate(samples)
        if not k
        or samples[k - 1].time_s != s.time_s
        or sample_record(samples[k - 1]) != sample_record(s)
    ]


def _believe(samples: list[Sample], step: Step, found: Mapping[str, Any]) -> None:
    """Withhold the eyes of an exercise where all of it tells that they are misread."""
    times = [s.time_s for s in samples]
    first, past = bisect_left(times, step.from_s), bisect_left(times, step.to_s)
    exercise = CATALOGUE[step.exercise or ""]
    by_eyes = exercise.channel.startswith("eye")
    own = believed(samples[first:past], counted_by_eyes=by_eyes)
    band = doubted_band(gaze_error_at_target_deg(step, exercise, found))
    samples[first:past] = withheld_beside(own, band)


def _named(content: JournalContent, name: str) -> tuple[Record, ...]:
    """The marks of a name."""
    return tuple(r for r in content.of("mark") if r.get("name") == name)


def stage_log_of(record: SessionRecord) -> StageLog:
    """Stage log of a session, as it was really gone through."""
    found = [record.about.setup, *(s.found for s in record.setups)]
    camera: dict[str, Any] = next((c for f in found if (c := f.get("camera"))), {})
    fov = camera.get("vertical_fov_deg")
    taken = camera.get("vertical_fov_source") == "default"
    known = isinstance(fov, int | float) and 5 < fov < 170 and not taken
    return StageLog(
        camera=Camera(vertical_fov_deg=fov if known else None),
        setup=_of_gaze(found),
        steps=list(record.steps),
    )


def _of_gaze(found: Sequence[Mapping[str, Any]]) -> GazeRead | None:
    """How well the gaze was read by the worst of some set-ups; None without one.

    What looks at marks on the wall have shown, and which set was done after which set-up, is left
    out: the summary has it.
    """
    errors = [setup_gaze_error_deg(f) for f in found if was_set_up(f)]
    if not errors:
        return None
    usable = all(isfinite(e) and 0 <= e <= 180 for e in errors)
    return GazeRead(calibration="fitted", gaze_error_deg=max(errors) if usable else None)


def _about(content: JournalContent) -> SessionInfo:
    heads = content.of("session")
    try:
        return SessionInfo.model_validate(heads[0].get("about") if heads else {})
    except ValidationError:
        return SessionInfo()


def _end_s(content: JournalContent, samples: list[Sample]) -> float:
    times = [s.time_s for s in samples[-1:]]
    for record in (*content.of("end"), *content.of("mark")):
        if is_number(record.get("time_s")):
            times.append(float(record["time_s"]))
    return max(times, default=nan)


def _begun(content: JournalContent) -> list[tuple[int, Step]]:
    """Steps that were begun; one of an exercise that nobody knows is damaged like any other."""
    steps: list[tuple[int, Step]] = []
    for record in content.of("step"):
        try:
            number, step = int(record["number"]), Step.model_validate(record["step"])
        except (KeyError, TypeError, ValueError):
            continue
        if not is_judged(step) or step.exercise in CATALOGUE:
            steps.append((number, step))
    return steps


def _cut(steps: list[tuple[int, Step]], end_s: float) -> list[tuple[int, Step]]:
    """The steps, each until the next one or the session's end, whichever came first."""
    out = []
    for k, (number, step) in enumerate(steps):
        to_s = step.to_s
        if k + 1 < len(steps):
            to_s = min(to_s, max(steps[k + 1][1].from_s, step.from_s))
        if isfinite(end_s):
            # One thousandth more: the last sample belongs to its step.
            to_s = min(to_s, max(end_s + 1e-3, step.from_s))
        if not isfinite(end_s) or step.from_s <= end_s:
            out.append((number, step.until(to_s)))
    return out


def _held_at(step: Step, setups: Sequence[SetupRecord]) -> SetupRecord | None:
    """The set-up that held when a step began; None for that of the session."""
    before = [u for u in setups if u.from_s <= step.from_s]
    return max(before, key=lambda u: u.from_s, default=None)


def _setup(record: Record) -> SetupRecord | None:
    try:
        notes = tuple(str(n) for n in record["notes"])
        return SetupRecord(float(record["from_s"]), dict(record["found"]), notes)
    except (KeyError, TypeError, ValueError):
        return None


def _turn(record: Record) -> Turn | None:
    values = _values(Turn, record)
    return None if values is None else Turn(**values)


def _event(record: Record, to_s: float) -> Event | None:
    values = _values(Event, record)
    if values is None:
        return None
    event = Event(**values)
    # A journal that broke off holds no end; the event lasted to the end at least.
    return event if isfinite(event.end_s) else replace(event, end_s=to_s)


def _values(kind: type[Turn] | type[Event], record: Record) -> dict[str, Any] | None:
    """A record's values by the fields' names; None where a damaged one holds other things."""
    # A reason is left out where there is none; whatever else is missing spoils the record.
    values = {f.name: record.get(f.name, "" if f.name == "reason" else ()) for f in fields(kind)}
    for f in fields(kind):
        if f.type == "str":
            fits = isinstance(values[f.name], str)
        elif values[f.name] is None:
            values[f.name], fits = nan, True
        else:
            fits = is_number(values[f.name])
        if not fits:
            return None
    return values
