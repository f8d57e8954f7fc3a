"""The page of a session: what stands where. HTML and PDF both draw exactly this.

No layout and no Qt here: titles, facts, tables and charts, in the order in which a
therapist asks: is something wrong, was it done, was it done rightly, how did the
symptoms answer, what can't be trusted.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from tracker.records import terms
from tracker.records.figure import ASPECTS, SIDES, Figure, shown, shown_with_unit
from tracker.records.figures import ExerciseFigures, SessionFigures
from ui.documents.charts import Chart, amplitude_chart, symptom_chart

#: Parts of a measure that stand side by side; any other has a row of its own.
COLUMNS = ("asked", "all", "spread", *SIDES, "first_five", "last_five")
HEADS = {"asked": "Asked", "all": "Whole set", "spread": "Spread"}
#: So many kinds of events stand in the overview; all stand with their exercise.
MOST_NOTICED = 2
NOTHING_FIRST = "Nothing in this session asks to be looked at first."


@dataclass(frozen=True, slots=True)
class Fact:
    """One thing in words; ``absent`` where it was not measured or not asked."""

    label: str
    text: str
    absent: bool = False


@dataclass(frozen=True, slots=True)
class Cell:
    """A cell of a table; empty where the question doesn't arise."""

    text: str
    absent: bool = False


@dataclass(frozen=True, slots=True)
class Row:
    """A row: its head, and its cells, or one cell across all columns."""

    head: str
    cells: tuple[Cell, ...]
    across: bool = False


@dataclass(frozen=True, slots=True)
class Table:
    """A table; ``corner`` is the head of its first column."""

    caption: str
    corner: str
    columns: tuple[str, ...]
    rows: tuple[Row, ...]


@dataclass(frozen=True, slots=True)
class Section:
    """One exercise."""

    title: str
    subtitle: str
    warnings: tuple[str, ...]
    tables: tuple[Table, ...]
    facts: tuple[Fact, ...]
    notes: tuple[str, ...]
    chart: Chart | None


@dataclass(frozen=True, slots=True)
class Page:
    """One session."""

    title: str
    when: str
    origin: str
    ended: Fact
    alert: tuple[str, ...]
    facts: tuple[Fact, ...]
    warnings: tuple[str, ...]
    glance: Table | None
    left_out: tuple[str, ...]
    sections: tuple[Section, ...]
    setup: tuple[Fact, ...]
    limits: tuple[str, ...]
    chart: Chart | None


def page_of(record: SessionFigures) -> Page:
    """The page of a session."""
    groups = ("session", "symptoms")
    return Page(
        title=record.person,
        when=record.when,
        origin=_origin(record),
        ended=Fact("Ended", record.ended_words),
        alert=record.alert,
        facts=tuple(fact(f) for f in record.figures if f.group in groups),
        warnings=tuple(_warnings(record)),
        glance=_glance(record) if len(record.exercises) > 1 else None,
        left_out=tuple(f"{left.name} ({left.entry_id}): {left.why}" for left in record.left_out),
        sections=tuple(_section(e, k) for k, e in enumerate(record.exercises, 1)),
        setup=tuple(fact(f) for f in record.figures if f.group == "setup"),
        limits=terms.LIMITS,
        chart=symptom_chart(record),
    )


def fact(figure: Figure) -> Fact:
    """A figure as a fact."""
    return Fact(figure.label, shown_with_unit(figure), figure.value is None)


def _origin(record: SessionFigures) -> str:
    parts = [f"Session {record.session_id or 'without an ID (a lone check)'}"]
    parts += [f"plan {record.plan_id}"] if record.plan_id else []
    parts.append(f"Turnpost {record.program_version or '(version not recorded)'}")
    return ", ".join(parts)


def _warnings(record: SessionFigures) -> Iterable[str]:
    """What can't be trusted, of the session and of each exercise."""
    yield from record.flags
    for exercise in record.exercises:
        yield from (f"{exercise.name}: {flag}" for flag in exercise.flags)


# --- all exercises at a glance ---


def _glance(record: SessionFigures) -> Table:
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
            _one(e.find("dizziness.after")),
            _one(e.find("measured")),
            _noticed(e),
        )
        rows.append(Row(f"{k}. {e.name}", cells))
    return Table("All exercises at a glance", "Exercise", columns, tuple(rows))


def _one(figure: Figure | None) -> Cell:
    if figure is None:
        return Cell("")
    return Cell(
        shown(figure) if figure.value is None else shown_with_unit(figure), not figure.value
    )


def _done(e: ExerciseFigures) -> Cell:
    """Repetitions and held time against what was asked."""
    parts = []
    for key, asked_key in (("repetitions", "repetitions.asked"), ("held", "duration.asked")):
        figure, asked = e.find(key), e.find(asked_key)
        if figure is not None and figure.value is not None:
            of = "" if asked is None else f" of {shown_with_unit(asked)}"
            parts.append(f"{'held ' if key == 'held' else ''}{shown_with_unit(figure)}{of}")
    own = e.find("own_count")
    if own is not None and own.value is not None:
        parts.append(f"{shown_with_unit(own)} by the patient's count")
    return Cell("; ".join(parts)) if parts else _one(e.find("repetitions"))


def _sides(e: ExerciseFigures) -> Cell:
    """How far to each side, and how far was asked."""
    for measure in ("amplitude_deg", "vergence_change_deg", "amplitude_mm"):
        whole = e.find(measure)
        if whole is None:
            continue
        if whole.value is None:
            return Cell(shown(whole), absent=True)
        sides = [f for s in SIDES if (f := e.find(f"{measure}.{s}")) is not None]
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


def _noticed(e: ExerciseFigures) -> Cell:
    """What was noticed most often, and how often."""
    total = e.find("events")
    found = [f for f in e.figures if f.group == "events" and f.aspect == "all" and f is not total]
    if not found:
        return _one(total) if total is not None and total.value is None else Cell("nothing")
    found.sort(key=lambda f: -f.value if isinstance(f.value, float) else 0.0)
    parts = [f"{f.name.lower()} {shown(f)}" for f in found[:MOST_NOTICED]]
    more = len(found) - MOST_NOTICED
    return Cell("; ".join([*parts, *([f"{more} more kinds"] if more > 0 else [])]))


# --- one exercise ---


def _section(e: ExerciseFigures, number: int) -> Section:
    in_table = [f for f in e.figures if f.group in ("dose", "movement", "gaze", "standing")]
    events = [f for f in e.figures if f.group == "events"]
    table, notes = _matrix(f"{number}. {e.name}", in_table)
    unmeasured = f"Not measured in this exercise: {'; '.join(e.unmeasured)}."
    return Section(
        title=f"{number}. {e.name}",
        subtitle=e.label if e.title == e.name else f"{e.title} [{e.label}]",
        warnings=e.flags,
        tables=(table, *_events(f"{number}. {e.name}", events)),
        facts=tuple(
            fact(f) for f in e.figures if f.group in ("answers", "symptoms") or f.key == "events"
        ),
        notes=(*notes, *([unmeasured] if e.unmeasured else [])),
        chart=amplitude_chart(e),
    )


def _matrix(name: str, figures: Sequence[Figure]) -> tuple[Table, list[str]]:
    """Measures in rows, their parts in columns, and notes on what is missing."""
    present = {f.aspect for f in figures}
    valued = {f.aspect for f in figures if f.value is not None}
    # A column in which nothing has a value says so in one note instead.
    columns = [c for c in COLUMNS if c in valued or c == "all"]
    hidden = [c for c in COLUMNS if c in present and c not in columns]
    rows: list[Row] = []
    measures = {
        m: {f.aspect: f for f in figures if f.measure == m}
        for m in dict.fromkeys(f.measure for f in figures)
    }
    told = {m for m, parts in measures.items() if _is_across(parts)}
    notes = _hidden_notes([f for f in figures if f.measure not in told], hidden)
    for measure, parts in measures.items():
        rows += _rows(parts, columns)
        if measure not in told:
            notes += _missing_notes(parts, columns)
    heads = tuple(HEADS.get(c, ASPECTS[c].capitalize()) for c in columns)
    return Table(f"Figures of {name}", "Figure", heads, tuple(rows)), notes


def _is_across(parts: dict[str, Figure]) -> bool:
    """Whether all of a measure is missing for one reason, said once across the table."""
    inside = [f for a, f in parts.items() if a in COLUMNS]
    return (
        bool(inside)
        and all(f.value is None for f in inside)
        and len({f.reason for f in inside}) == 1
    )


def _rows(parts: dict[str, Figure], columns: Sequence[str]) -> Iterable[Row]:
    inside = {a: f for a, f in parts.items() if a in COLUMNS}
    if inside:
        first = next(iter(inside.values()))
        if _is_across(parts):
            yield Row(_head(first), (Cell(shown_with_unit(first), absent=True),), across=True)
        else:
            yield Row(_head(first), tuple(_cell(inside.get(c)) for c in columns))
    for aspect, figure in parts.items():
        if aspect not in COLUMNS:
            cells = tuple(_cell(figure if c == "all" else None) for c in columns)
            yield Row(_head(figure, whole=True), cells)


def _cell(figure: Figure | None) -> Cell:
    return Cell("") if figure is None else Cell(shown(figure), figure.value is None)


def _head(figure: Figure, *, whole: bool = False) -> str:
    name = figure.label if whole else figure.name
    return f"{name} ({figure.unit.shown})" if figure.unit.shown else name


def _hidden_notes(figures: Sequence[Figure], hidden: Sequence[str]) -> list[str]:
    """Why columns are not there, those of the same words together."""
    together: dict[str, list[str]] = {}
    for aspect in hidden:
        inside = [f for f in figures if f.aspect == aspect]
        why = "; ".join(dict.fromkeys(f"{shown(f)} ({f.reason})" for f in inside))
        if why:
            together.setdefault(why, []).append(ASPECTS[aspect])
    return [f"{' and '.join(names).capitalize()}: {why}." for why, names in together.items()]


def _missing_notes(parts: dict[str, Figure], columns: Sequence[str]) -> Iterable[str]:
    """Why single cells of a measure are missing."""
    together: dict[str, list[str]] = {}
    for aspect, f in parts.items():
        if f.value is None and (aspect in columns or aspect not in COLUMNS):
            part = ASPECTS[aspect] or "whole set"
            together.setdefault(f"{shown(f)} ({f.reason})", []).append(part)
    for text, names in together.items():
        yield f"{next(iter(parts.values())).name}, {' and '.join(names)}: {text}."


def _events(name: str, figures: Sequence[Figure]) -> Iterable[Table]:
    """What was noticed: how often, how long, how often said."""
    codes = dict.fromkeys(f.measure for f in figures if f.measure != "events")
    rows = []
    for code in codes:
        parts = {f.aspect: f for f in figures if f.measure == code}
        cells = tuple(_cell(parts.get(a)) for a in ("all", "total_time", "said"))
        rows.append(Row(parts["all"].name, cells))
    if rows:
        columns = ("Times", "Time in all (s)", "Said to the patient")
        yield Table(f"Noticed in {name}", "Noticed", columns, tuple(rows))
