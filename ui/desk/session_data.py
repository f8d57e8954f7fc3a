"""One session for the eye: its samples, repetitions, events and steps, read from its files."""

from __future__ import annotations

import contextlib
import itertools
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

from tracker.errors import InputError
from tracker.exercises.catalogue import CATALOGUE
from tracker.records.figures import SessionFigures, record_of
from tracker.sample import Sample
from tracker.session.journal import read_journal
from tracker.session.projections import session_record, stage_log_of
from tracker.session.saving import JOURNAL_NAME, STAGE_NAME, SUMMARY_NAME, TRACE_NAME
from tracker.session.stage import Step, is_judged, load_stage_log
from tracker.session.summary import summarise
from tracker.session.summary_file import ExerciseSummary, Summary, load_summary
from tracker.session.trace import load_trace

Array = NDArray[np.float64]

#: Lines of a kind of exercise: key of their name -> column. The first is drawn strongest.
_ANGLES = {
    axis: {
        "head": f"head_{axis}_deg",
        "gaze": f"gaze_{axis}_deg",
        "target": f"target_{axis}_deg",
    }
    for axis in ("yaw", "pitch")
}
_EYES = {
    axis: {"eye": f"eye_{axis}_deg", "head": f"head_{axis}_deg", "target": f"target_{axis}_deg"}
    for axis in ("yaw", "pitch")
}
_VERGENCE = {"vergence": "vergence_deg"}
#: Nothing is known between samples that are further apart (s; what a line bridges).
HOLE_S = 0.5
#: Read with every set: how far its samples are to be trusted.
QUALITY = {"quality", "light"}
_BODY = {"sideways": "neck_x_mm", "fore_aft": "neck_z_mm", "height": "neck_y_mm"}


@dataclass(frozen=True, slots=True)
class Span:
    """Something from one time to another; ``number`` is a repetition's."""

    from_s: float
    to_s: float
    text: str
    number: int | None = None


@dataclass(frozen=True, slots=True)
class SetView:
    """One exercise of the session."""

    number: int
    exercise: ExerciseSummary
    from_s: float
    to_s: float
    axis: str
    columns: dict[str, str]
    repetitions: list[dict[str, Any]]


def nearest(times_s: Array, time_s: float) -> int | None:
    """Number of the sample at a time; None where the nearest is too far away to tell of it."""
    if not len(times_s):
        return None
    k = int(np.argmin(np.abs(times_s - time_s)))
    return k if abs(float(times_s[k]) - time_s) <= HOLE_S else None


@dataclass(slots=True)
class SessionView:
    """A whole session.

    Attributes
    ----------
    times_s, columns
        Samples, of shape (N,) each; NaN where not measured. Empty with no trace.
    why_empty
        Why there are no samples.
    reasons
        Of each sample why something was not measured; empty where it was.
    breaks
        What lies between the sets: ``pause`` within one, else ``between``.
    record
        Everything that is told of the session, as in every document; None where a part of
        its summary is damaged.
    """

    summary: Summary
    sets: list[SetView]
    times_s: Array = field(default_factory=lambda: np.zeros(0))
    columns: dict[str, Array] = field(default_factory=dict)
    reasons: list[str] = field(default_factory=list)
    why_empty: str = ""
    breaks: list[Span] = field(default_factory=list)
    record: SessionFigures | None = None


def load_session(folder: Path, place: str) -> SessionView:
    """Read a session; without a trace there are only the repetitions of its summary.

    Raises
    ------
    InputError
        If its summary, or the journal of one that broke off, can't be read.
    """
    path = folder / place
    if path.name == JOURNAL_NAME:
        record = session_record(read_journal(path))
        return _view(summarise(record), record.samples, list(stage_log_of(record).steps), "")
    summary = load_summary(path)
    if path.name != SUMMARY_NAME:
        return _view(summary, [], [], "")
    samples: list[Sample] = []
    steps: list[Step] = []
    why = ""
    try:
        steps = list(load_stage_log(path.with_name(STAGE_NAME)).steps)
        samples = load_trace(path.with_name(TRACE_NAME))
    except InputError as error:
        gone = not path.with_name(TRACE_NAME).exists()
        why = "" if gone else str(error)
    return _view(summary, samples, steps, why)


def _view(summary: Summary, samples: list[Sample], steps: list[Step], why: str) -> SessionView:
    judged = sorted((s for s in steps if is_judged(s)), key=lambda s: s.from_s)
    sets = []
    for k, exercise in enumerate(summary.exercises):
        step = judged[k] if k < len(judged) else None
        rows = exercise.repetitions_list
        from_s = step.from_s if step else _first(rows, "start_s", 0.0)
        to_s = step.to_s if step else from_s + exercise.done.duration_s
        axis, columns = lines_for(exercise.exercise)
        sets.append(SetView(k, exercise, from_s, max(to_s, from_s + 1.0), axis, columns, rows))
    view = SessionView(summary, sets, why_empty=why)
    with contextlib.suppress(InputError):
        view.record = record_of(summary)
    view.times_s = np.array([s.time_s for s in samples])
    view.reasons = [s.reason for s in samples]
    names = {c for s in sets for c in s.columns.values()} | QUALITY
    view.columns = {n: np.array([getattr(s, n) for s in samples], dtype=float) for n in names}
    view.breaks = breaks_of(judged)
    return view


def lines_for(exercise_id: str) -> tuple[str, dict[str, str]]:
    """Axis and lines that show what an exercise is counted from."""
    exercise = CATALOGUE.get(exercise_id)
    channel = exercise.channel if exercise is not None else ""
    axis = "pitch" if channel.endswith("pitch") else "yaw"
    if channel == "eye_vergence":
        return "vergence", _VERGENCE
    if channel == "head_to_mark":
        return "yaw", _ANGLES["yaw"]
    if channel.startswith("eye"):
        return axis, _EYES[axis]
    if channel == "head_roll":
        return "roll", {"head": "head_roll_deg"}
    if channel.startswith("head_") and channel.endswith(("yaw", "pitch")):
        return axis, _ANGLES[axis]
    if exercise is not None and exercise.head_still:
        return axis, _ANGLES[axis]
    return "mm", _BODY


def breaks_of(steps: Sequence[Step]) -> list[Span]:
    """What lies between the sets of a session.

    Parameters
    ----------
    steps
        Steps of sets, in the order of time. Two of the same entry one after the other are one
        set that was paused, and what lies between them is its ``pause``; anything else is
        ``between``.
    """
    found = []
    for a, b in itertools.pairwise(steps):
        same = (a.exercise, a.entry_id) == (b.exercise, b.entry_id)
        kind: Literal["pause", "between"] = "pause" if same else "between"
        if b.from_s > a.to_s:
            found.append(Span(a.to_s, b.from_s, kind))
    return found


def _first(rows: list[dict[str, Any]], name: str, other: float) -> float:
    value = rows[0].get(name) if rows else None
    return float(value) if isinstance(value, int | float) else other
