"""A therapist's marks in what is told of sessions: how many repetitions are not valid, and which.

The measured figures stay as they are: whether a repetition counts is for whoever reads them.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from tracker.records import units as u
from tracker.records.figure import Making, shown
from tracker.records.figures import ExerciseFigures, SessionFigures
from tracker.records.notes import Note
from tracker.records.rows import SessionRow
from tracker.records.series import Series

#: The measure, and the key in a row of a repetition.
NOT_VALID = "not_valid"


def with_marks(records: Sequence[SessionFigures], notes: Iterable[Note]) -> list[SessionFigures]:
    """Sessions with the marks on their repetitions.

    Parameters
    ----------
    records
        What is told of sessions. One without an ID stays as it is: notes know it by the place
        of its file alone.
    notes
        Notes that hold, of all authors.

    Returns
    -------
    list of SessionFigures
        A set with marks has their number as a figure of its dose, and each repetition says
        whether it is marked (``not_valid``).
    """
    marked: dict[tuple[str, int], set[int]] = {}
    for note in notes:
        if note.kind == "not_valid" and note.set_number is not None and note.repetition is not None:
            marked.setdefault((note.session, note.set_number), set()).add(note.repetition)
    return [
        replace(
            record,
            exercises=tuple(
                _marked(e, marked.get((record.session_id or "", k), set()))
                for k, e in enumerate(record.exercises)
            ),
        )
        for record in records
    ]


#: Marked repetitions of the sets of an exercise in a session: by its place, exercise and form.
MarkedSets = dict[tuple[str, str, str], int]


def marked_sets(rows: Iterable[SessionRow], notes: Iterable[Note]) -> MarkedSets:
    """How many repetitions are marked as not valid, by place, exercise and form; only where any."""
    marked: dict[str, set[tuple[int, int]]] = {}
    for note in notes:
        if note.kind == "not_valid" and note.set_number is not None and note.repetition is not None:
            marked.setdefault(note.session, set()).add((note.set_number, note.repetition))
    found: MarkedSets = {}
    for row in rows if marked else ():
        for number, _ in marked.get(row.session_id or row.place, ()):
            if 0 <= number < len(row.sets):
                done = row.sets[number]
                key = (row.place, done.exercise, done.form)
                found[key] = found.get(key, 0) + 1
    return found


def marked_in(series: Series, marked: MarkedSets) -> int:
    """How many repetitions are marked in the sessions of a trend; none of a whole session."""
    places = dict.fromkeys(p.place for p in series.points)
    return sum(marked.get((place, series.exercise, series.form), 0) for place in places)


def trend_marks_told(where: str, count: float) -> str:
    """The name of an exercise, and that its trends have marked repetitions in them, or nothing."""
    if not count:
        return where
    # Whether a trend has them in its ends depends on the figure and on what else there is.
    return f"{where} (repetitions marked not valid by the therapist in these sessions: {count:.0f})"


def marks_told(found: ExerciseFigures) -> str:
    """That repetitions of a set are marked, which, and what it means for its figures; or nothing.

    Whoever shows a figure of such a set without the mark beside it adds this.
    """
    count = found.find(NOT_VALID)
    if count is None:
        return ""
    numbers = [f"{row['repetition']:g}" for row in found.repetitions if row.get(NOT_VALID)]
    which = f" (number {', '.join(numbers)})" if numbers else ""
    return (
        f"Repetitions marked not valid by the therapist: {shown(count)}{which}. "
        "The figures of this set are as they were measured and include them."
    )


def _marked(found: ExerciseFigures, numbers: set[int]) -> ExerciseFigures:
    rows = tuple({**row, NOT_VALID: row["repetition"] in numbers} for row in found.repetitions)
    if not numbers:
        return replace(found, repetitions=rows)
    make = Making("dose", NOT_VALID, "Repetitions marked not valid", u.COUNT, "reported")
    figures = list(found.figures)
    # Beside what was counted; they are in that number.
    at = [k for k, f in enumerate(figures) if f.group == "dose"]
    figures.insert(at[-1] + 1 if at else 0, make.of(float(len(numbers))))
    return replace(found, figures=tuple(figures), repetitions=rows)
