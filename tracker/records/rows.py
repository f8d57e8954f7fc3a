"""What the review keeps of one session: a small row of its summary, quick to read again.

A figure that was not measured is None, never 0. Names of figures carry their unit; a
side follows after a dot (``amplitude_deg.right``).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime
from math import isfinite
from typing import Any, NamedTuple

from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.asked import length_s
from tracker.plan.starter import TRY_ID
from tracker.plan.unlocking import SessionFigures, figures_of
from tracker.records.identity import content_id
from tracker.session import weekly
from tracker.session.flags import COUNT_LOST, REPORTED
from tracker.session.said import ALSO_ASKED, CLOSED, DROP_ANSWERS, NO_ANSWER, NOT_SETTLED, UNASKED
from tracker.session.summary import NOTHING_SEEN
from tracker.session.summary_file import ExerciseSummary, Summary

Figures = dict[str, float | None]

#: What puts a doubt on all figures of a set, and what on those of the eyes alone.
DOUBTS = (
    *("little_measured", "dark", "low_frame_rate", "no_setup", "setup_failed", "setup_unknown"),
    *("coarse_picture", "far_turned"),
)
EYE_DOUBTS = ("gaze_not_fitted", "eyes_unlike", "gaze_beside", "beyond_setup")
#: What puts a doubt on the count alone.
COUNT_DOUBTS = (COUNT_LOST,)
#: Figures that rest on the eyes.
OF_THE_EYES = ("on_target", "gaze_error_deg")
#: Longer than any set of a day's practice: a file that says more is not believed. Seconds
#: (this project's own choice).
LONGEST_SET_S = 3600.0
#: An answer is as good in the dark; and how little was measured is known.
NEVER_IN_DOUBT = (
    *("clear", "dizziness_before", "dizziness_after", "measured"),
    *(f"{name}_{when}" for name in ALSO_ASKED for when in ("before", "after")),
)


def _is_counted_from_the_eyes(exercise: str) -> bool:
    known = CATALOGUE.get(exercise)
    return known is not None and known.channel.startswith(("eye", "gaze"))


class SetRow(NamedTuple):
    """One exercise of a session.

    Attributes
    ----------
    exercise, entry_id
        As in the summary.
    form
        How it differs from the usual form of the exercise ("eyes closed"); empty if not.
    figures
        Name -> value, None where not measured.
    asked
        Name -> what was asked: a number, or the least and the most.
    flags
        What limits the figures -> why.
    events
        Code -> how often.
    own_count
        What only the person has counted.
    rise, settle_minutes
        What a plan's condition asks of it (``plan.unlocking``): by how much the worst of
        the scores rose, and how long it took to settle.
    eased
        Whether it was made easier than the plan has it.
    gaze_measured_s, gaze_reported_s
        Seconds of gaze stabilisation that the camera saw, and that were told of.
    """

    exercise: str
    entry_id: str | None
    form: str
    figures: Figures
    asked: dict[str, Any]
    flags: dict[str, str]
    events: dict[str, int]
    own_count: float | None = None
    rise: int | None = None
    settle_minutes: float | None = None
    eased: bool = False
    gaze_measured_s: float = 0.0
    gaze_reported_s: float = 0.0

    def doubts(self, figure: str) -> tuple[str, ...]:
        """Flags for which a figure of this set is not to be compared."""
        if not self.flags:
            return ()
        name = figure.partition(".")[0]
        if name in NEVER_IN_DOUBT:
            return ()
        of_eyes = name in OF_THE_EYES or _is_counted_from_the_eyes(self.exercise)
        known = (
            *(COUNT_DOUBTS if name == "repetitions" else ()),
            *DOUBTS,
            *(EYE_DOUBTS if of_eyes else ()),
        )
        return tuple(f for f in known if f in self.flags)

    @property
    def was_measured(self) -> bool:
        """Whether the camera saw anything of it."""
        return (self.figures.get("measured") or 0.0) > 0.0


class SessionRow(NamedTuple):
    """One session; ``place`` is the path of its file below the folder that was opened.

    ``baseline``: it was done together in the clinic, for later ones to be compared with.
    ``weekly`` has what was answered of the questions of the week, by question. ``after_drop``
    is what was said after a sudden drop of the head (``fine``, ``not_well``, ``no_answer``,
    ``closed_unsaid``, ``not_asked``), empty where there was none. ``also`` has the scores of what
    was asked beside dizziness (``nausea_before``). ``ended_outside`` are sessions outside any
    plan that had to be ended: when each began, and how it ended. ``content_id`` tells one
    without an ID from others.
    """

    place: str
    session_id: str | None
    person: str | None
    plan_id: str | None
    started_at: str | None
    duration_s: float | None
    ended: str
    put_first: tuple[str, ...]
    before: float | None
    after: float | None
    settled_minutes: float | None
    not_settled: bool
    since_last: Figures
    weekly: dict[str, Any]
    flags: dict[str, str]
    sets: tuple[SetRow, ...]
    not_done: int = 0
    baseline: bool = False
    after_drop: str = ""
    also: Figures = {}  # noqa: RUF012
    ended_outside: tuple[tuple[str | None, str], ...] = ()
    content_id: str = ""

    @property
    def day(self) -> date | None:
        """The person's own calendar day on which it began."""
        try:
            return None if self.started_at is None else date.fromisoformat(self.started_at[:10])
        except ValueError:
            return None

    @property
    def order(self) -> tuple[float, str]:
        """Key by which sessions lie in time; those without a time come first."""
        try:
            return (datetime.fromisoformat(self.started_at or "").timestamp(), self.place)
        except (ValueError, OSError, OverflowError):
            day = self.day
            return (float(day.toordinal() - 719163) * 86400.0 if day else 0.0, self.place)

    @property
    def is_bout(self) -> bool:
        """Whether something was practised."""
        return bool(self.sets)

    @property
    def was_measured(self) -> bool:
        """Whether the camera saw anything of what was practised."""
        return any(s.was_measured for s in self.sets)


def row_of(summary: Summary, place: str) -> SessionRow:
    """Row of a summary."""
    gate, symptoms = summary.gate or {}, summary.symptoms or {}
    reasons = symptoms.get("reasons")
    why = reasons.get("settled_minutes") if isinstance(reasons, Mapping) else None
    since = gate.get("since_last")
    return SessionRow(
        place=place,
        session_id=summary.session_id,
        person=summary.person,
        plan_id=summary.plan_id,
        started_at=summary.started_at,
        duration_s=summary.duration_s,
        ended=summary.ended,
        put_first=tuple(str(q) for q in weekly.names_of_yes(gate)),
        before=number(symptoms.get("before")),
        after=number(symptoms.get("after")),
        settled_minutes=number(symptoms.get("settled_minutes")),
        not_settled=_not_settled(summary, why),
        since_last=_scores(since),
        weekly=_weekly(summary.weekly),
        flags={f.flag: f.reason for f in summary.quality},
        # A try is no bout, and no figure of a trend; what was felt in it still counts.
        sets=()
        if summary.plan_id == TRY_ID
        else tuple(_set_of(e, figures_of(summary, [e])) for e in summary.exercises),
        not_done=len(summary.not_done),
        baseline=summary.baseline,
        after_drop=_after_drop(summary.after_drop),
        also=_also(symptoms),
        ended_outside=tuple((o.started_at, o.ended) for o in summary.ended_outside),
        content_id="" if summary.session_id else content_id(summary),
    )


#: Names of figures that stand together, once for all sets that have them.
Shapes = dict[tuple[str, ...], int]


def pack(row: SessionRow, shapes: Shapes) -> list[Any]:
    """Row as it is kept in the index, without its place; new shapes are added."""
    sets = []
    for done in row.sets:
        shape = shapes.setdefault(tuple(done.figures), len(shapes))
        sets.append([*done[:3], shape, list(done.figures.values()), *done[4:]])
    return [*row[1:_SETS], sets, *row[_SETS + 1 :]]


def unpack(place: str, data: Sequence[Any], shapes: Sequence[Sequence[str]]) -> SessionRow:
    """Row from the index.

    Raises
    ------
    TypeError, ValueError, IndexError
        If it is none.
    """
    values = list(data)
    values[_PUT_FIRST - 1] = tuple(values[_PUT_FIRST - 1])
    values[_SETS - 1] = tuple(
        SetRow(exercise, entry, form, dict(zip(shapes[shape], known, strict=True)), *rest)
        for exercise, entry, form, shape, known, *rest in values[_SETS - 1]
    )
    values[_OUTSIDE - 1] = tuple((began, ended) for began, ended in values[_OUTSIDE - 1])
    return SessionRow._make((place, *values))


_PUT_FIRST = SessionRow._fields.index("put_first")
_SETS = SessionRow._fields.index("sets")
_OUTSIDE = SessionRow._fields.index("ended_outside")


def number(value: Any) -> float | None:
    """A finite number, or None."""
    if isinstance(value, bool) or not isinstance(value, int | float) or not isfinite(value):
        return None
    return float(value)


def _not_settled(summary: Summary, why: Any) -> bool:
    told = why == NOT_SETTLED or "not_settled" in summary.ended_because
    return told or any(
        ((e.symptoms or {}).get("reasons") or {}).get("settled_minutes") == NOT_SETTLED
        for e in summary.exercises
    )


def _set_of(found: ExerciseSummary, unlock: SessionFigures) -> SetRow:
    movement = found.head or found.eyes or found.body or {}
    done, gaze, symptoms = found.done, found.gaze or {}, found.symptoms or {}
    clarity = found.clarity.get("value")
    counted = done.repetitions is not None or done.reason == NOTHING_SEEN
    figures: Figures = {
        **({"repetitions": number(done.repetitions)} if counted else {}),
        **_sides(movement, "amplitude_deg"),
        **_sides(movement, "vergence_change_deg", sides=False),
        **_sides(movement, "amplitude_mm"),
        **_sides(movement, "peak_speed_deg_s"),
        **_sides(movement, "swing_mm"),
        **_sides(movement, "peak_speed_mm_s"),
        **_sides(movement, "tempo_bpm", sides=False),
    }
    if found.gaze is not None:
        figures |= _gaze(gaze)
        figures["clear"] = None if clarity is None else float(clarity == "clear")
    if found.stillness is not None:
        figures["still_deg"] = number(found.stillness.get("median_deg"))
    if done.held_s is not None:
        figures["held_s"] = number(done.held_s)
    if found.sway.get("reason") is None or _stands(found):
        figures["sway_mm"] = number(found.sway.get("value"))
    figures["dizziness_before"] = number(symptoms.get("before"))
    figures["dizziness_after"] = number(symptoms.get("after"))
    figures |= _also(symptoms)
    if not any(f.flag == REPORTED for f in found.quality):
        figures["measured"] = number(done.measured_fraction)
    events: dict[str, int] = {}
    for event in found.events:
        events[event.code] = events.get(event.code, 0) + 1
    gaze_measured_s, gaze_reported_s = _gaze_seconds(found)
    return SetRow(
        exercise=found.exercise,
        entry_id=found.entry_id,
        form=form_of(found.exercise, found.prescribed),
        figures=figures,
        asked=_asked(found.prescribed),
        flags={f.flag: f.reason for f in found.quality},
        events=events,
        own_count=number((found.own_count or {}).get("value")),
        rise=unlock.rise,
        settle_minutes=number(unlock.settle_minutes),
        eased=unlock.eased,
        gaze_measured_s=gaze_measured_s,
        gaze_reported_s=gaze_reported_s,
    )


def _also(symptoms: Mapping[str, Any]) -> Figures:
    """Scores of what was asked beside dizziness, in those plans that have it asked."""
    return {
        f"{name}_{when}": number(found.get(when))
        for name in ALSO_ASKED
        if isinstance(found := symptoms.get(name), Mapping)
        for when in ("before", "after")
    }


def _gaze_seconds(found: ExerciseSummary) -> tuple[float, float]:
    """Seconds of gaze stabilisation: measured, and told of (about as long as the dose takes)."""
    exercise = CATALOGUE.get(found.exercise)
    if exercise is None or not exercise.gaze_minutes:
        return 0.0, 0.0
    if not any(f.flag == REPORTED for f in found.quality):
        seen = number(found.done.measured_fraction) or 0.0
        return min(max(found.done.duration_s * seen, 0.0), LONGEST_SET_S), 0.0
    tempo = found.prescribed.get("tempo_bpm")
    ends = [number(t) or 0.0 for t in (tempo if isinstance(tempo, list) else (tempo, tempo))]
    pair = (ends[0], ends[1]) if len(ends) == 2 and min(ends) > 0.0 else None
    count, seconds = (number(found.prescribed.get(k)) for k in ("repetitions", "seconds"))
    told_s = length_s(int(count or 0.0), seconds, pair, exercise)
    return 0.0, min(max(told_s, 0.0), LONGEST_SET_S)


def _sides(movement: Mapping[str, Any], name: str, *, sides: bool = True) -> Figures:
    """Median of a figure, and by side."""
    figure = movement.get(name)
    if not isinstance(figure, Mapping):
        return {}
    out: Figures = {name: number(figure.get("median"))}
    by_side = figure.get("by_side")
    if sides and isinstance(by_side, Mapping):
        for side, part in by_side.items():
            if isinstance(part, Mapping):
                out[f"{name}.{side}"] = number(part.get("median"))
    return out


def _gaze(gaze: Mapping[str, Any]) -> Figures:
    out: Figures = {"on_target": _value(gaze.get("on_target_fraction"))}
    by_side = gaze.get("by_side")
    if isinstance(by_side, Mapping):
        for side, part in by_side.items():
            if isinstance(part, Mapping):
                out[f"on_target.{side}"] = _value(part.get("on_target_fraction"))
    out["on_target_within_deg"] = number(gaze.get("on_target_within_deg"))
    return out


def _value(figure: Any) -> float | None:
    return number(figure.get("value")) if isinstance(figure, Mapping) else None


def _asked(prescribed: Mapping[str, Any]) -> dict[str, Any]:
    """What was asked, under the names of the figures."""
    names = {
        "repetitions": "repetitions",
        "amplitude_deg": "amplitude_deg",
        "tempo_bpm": "tempo_bpm",
        "seconds": "held_s",
    }
    found = {n: _number_or_pair(prescribed.get(k)) for k, n in names.items()}
    target = prescribed.get("target")
    if found["amplitude_deg"] is None and isinstance(target, Mapping):
        # Where the eyes follow, the target's own way is what is asked.
        found["amplitude_deg"] = number(target.get("swing_deg"))
    return {n: v for n, v in found.items() if v is not None}


def _number_or_pair(value: Any) -> float | list[float] | None:
    if isinstance(value, list | tuple):
        pair = [n for n in map(number, value) if n is not None]
        return pair if len(pair) == len(value) == 2 else None
    return number(value)


def _weekly(found: Mapping[str, Any] | None) -> dict[str, Any]:
    """What was answered of the questions of the week."""
    given = {q: (found or {}).get(q) for q in weekly.QUESTIONS}
    return {q: v for q, v in given.items() if v is not None and weekly.usable(q, v)}


def _after_drop(found: Mapping[str, Any] | None) -> str:
    """What was said after a sudden drop of the head."""
    if found is None:
        return ""
    value = found.get("value")
    if value in DROP_ANSWERS:
        return str(value)
    reason = found.get("reason")
    return reason if reason in (CLOSED, UNASKED) else NO_ANSWER


def _scores(since: Any) -> Figures:
    """How it was after the session before."""
    if not isinstance(since, Mapping):
        return {}
    return {n: number(since.get(n)) for n in ("rest_of_day", "next_morning")}


def _stands(found: ExerciseSummary) -> bool:
    exercise = CATALOGUE.get(found.exercise)
    posture = found.prescribed.get("posture") or (exercise.posture if exercise else None)
    return posture == "standing" and exercise is not None and exercise.channel == "held"


def form_of(exercise_id: str, asked: Mapping[str, Any]) -> str:
    """What is not as usual in an exercise, so that unlike sets are not compared.

    Parameters
    ----------
    asked
        ``eyes``, ``posture``, ``surface``, ``head_shake``, ``wall``, of a step or of a plan's
        entry; what is missing is as usual.
    """
    usual = CATALOGUE.get(exercise_id)
    parts = []
    for name, words in (("eyes", "eyes {}"), ("posture", "{}"), ("surface", "{} surface")):
        value = asked.get(name)
        if isinstance(value, str) and usual is not None and value != getattr(usual, name):
            parts.append(words.format(value))
    if asked.get("head_shake") is True and usual is not None and not usual.head_shake:
        parts.append("head shake")
    if asked.get("wall"):
        parts.append("marks on the wall")
    return ", ".join(parts)
