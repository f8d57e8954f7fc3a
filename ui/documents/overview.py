"""At a glance: the exercises of a session, and the sessions of a document."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from tracker.records.figure import SIDES, Figure, shown, shown_with_unit
from tracker.records.figures import ExerciseFigures, SessionFigures
from tracker.records.marks import NOT_VALID
from tracker.records.terms import EVENTS_FIRST
from tracker.session.said import ALSO_ASKED
from ui.documents.parts import Cell, Row, Table

#: So many kinds of events stand in the short overview, and every grave one.
MOST_NOTICED = 2


def overview(record: SessionFigures, *, short: bool = False) -> Table:
    """The table of all exercises; a ``short`` one does not name all kinds of events.

    Uncertainties stand with the figures of each exercise, not here.
    """
    columns = (
        "Done",
        "Amplitude",
        "Gaze on target",
        "Target looked",
        "Dizziness after",
        "Measured",
        "Noticed",
    )
    rows = []
    for k, e in enumerate(record.exercises, 1):
        cells = (
            _done(e),
            _sides(e),
            _one(e.find("on_target")),
            _one(e.find("clarity")),
            _scores(e, "after"),
            _one(e.find("measured")),
            _noticed(e, short=short),
        )
        rows.append(Row(f"{k}. {e.name}", cells))
    return Table("All exercises at a glance", "Exercise", columns, tuple(rows))


def _one(figure: Figure | None) -> Cell:
    if figure is None:
        return Cell("")
    return Cell(
        shown(figure) if figure.value is None else shown_with_unit(figure), figure.value is None
    )


def _scores(found: ExerciseFigures | SessionFigures, when: str) -> Cell:
    """The score of dizziness, and with its name each that was asked beside it."""
    first = _one(found.find(f"dizziness.{when}"))
    more = [f for name in ALSO_ASKED if (f := found.find(f"{name}.{when}")) is not None]
    told = [f"{f.name.lower()} {_one(f).text}" for f in more]
    absent = first.absent and all(f.value is None for f in more)
    return Cell("; ".join([first.text, *told]), absent)


def _done(e: ExerciseFigures) -> Cell:
    """Repetitions and held time against what was asked."""
    parts = []
    for key, asked_key in (("repetitions", "repetitions.asked"), ("held", "duration.asked")):
        figure, asked = e.find(key), e.find(asked_key)
        if figure is not None and figure.value is not None:
            of = "" if asked is None else f" of {shown_with_unit(asked)}"
            parts.append(f"{'held ' if key == 'held' else ''}{shown_with_unit(figure)}{of}")
    marked = e.find(NOT_VALID)
    if marked is not None:
        parts.append(f"{shown(marked)} marked not valid")
    own = e.find("own_count")
    if own is not None and own.value is not None:
        parts.append(f"{shown_with_unit(own)} by the patient's count")
    return Cell("; ".join(parts)) if parts else _one(e.find("repetitions"))


def _sides(e: ExerciseFigures) -> Cell:
    """How far to each side, and how far was asked."""
    for measure in ("amplitude_deg", "vergence_change_deg", "amplitude_mm", "swing_mm"):
        whole = e.find(measure)
        if whole is None:
            continue
        if whole.value is None:
            return Cell(shown(whole), absent=True)
        sides = [f for s in SIDES if (f := e.find(f"{measure}.{s}")) is not None]
        whole, *sides = (replace(f, error=None) for f in (whole, *sides))
        asked = e.find(f"{measure}.asked")
        told = [f"{f.side} {shown_with_unit(f)}{_beside(f, asked)}" for f in sides]
        told = told or [shown_with_unit(whole)]
        return Cell(", ".join([*told, *([f"asked {shown_with_unit(asked)}"] if asked else [])]))
    return Cell("")


def _beside(figure: Figure, asked: Figure | None) -> str:
    """Whether a figure lies below or above the range that was asked for."""
    span = None if asked is None else asked.value
    if not isinstance(figure.value, float) or not isinstance(span, tuple):
        return ""
    value = float(shown(figure))
    return " (below)" if value < span[0] else (" (above)" if value > span[1] else "")


def _noticed(e: ExerciseFigures, *, short: bool) -> Cell:
    """What was noticed, and how often: the grave first, then the frequent."""
    total = e.find("events")
    found = [f for f in e.figures if f.group == "events" and f.aspect == "all" and f is not total]
    if not found:
        return _one(total) if total is not None and total.value is None else Cell("nothing")
    found.sort(key=_weight)
    grave = sum(_weight(f)[0] < len(EVENTS_FIRST) for f in found)
    told = found[: max(MOST_NOTICED, grave)] if short else found
    parts = [f"{f.name.lower()} {shown(f)}{answered(e, f)}" for f in told]
    more = len(found) - len(told)
    return Cell("; ".join([*parts, *([f"{more} more kinds"] if more > 0 else [])]))


def answered(e: ExerciseFigures, event: Figure) -> str:
    """What was said after an event of which the person was asked, to stand behind it."""
    said = e.find(f"{event.measure}.answer")
    return "" if said is None else f" ({shown(said)})"


def _weight(figure: Figure) -> tuple[int, float]:
    code = figure.measure.removeprefix("event.")
    place = EVENTS_FIRST.index(code) if code in EVENTS_FIRST else len(EVENTS_FIRST)
    return place, -figure.value if isinstance(figure.value, float) else 0.0


def sessions_overview(records: Sequence[SessionFigures]) -> Table:
    """The table of all sessions: how each ended, and what to read first."""
    keys = ("exercises_done", "dizziness.before", "dizziness.after", "dizziness.settled")
    columns = (
        "Person",
        "Ended",
        "Exercises",
        "Dizziness before",
        "Dizziness after",
        "Time to settle",
        "Read first",
    )
    rows = []
    for k, r in enumerate(records, 1):
        asked = r.find("exercises_done.asked")
        figures = [_one(r.find(key)) for key in keys]
        figures[1:3] = [_scores(r, when) for when in ("before", "after")]
        if asked is not None:
            figures[0] = Cell(f"{figures[0].text} of {shown(asked)}")
        first = Cell("; ".join(r.alert) or "nothing")
        cells = (Cell(r.person), Cell(r.ended_words), *figures, first)
        rows.append(Row(f"{k}. {r.when}", cells))
    return Table("All sessions at a glance", "Session", columns, tuple(rows))
