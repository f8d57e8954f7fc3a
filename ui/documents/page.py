"""The page of a session: what stands where. HTML and PDF both draw exactly this.

No layout and no Qt here: titles, facts, tables and charts, in the order in which a
therapist asks: is something wrong, was it done, was it done rightly, how did the
symptoms answer, what can't be trusted.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence

from tracker.records import terms
from tracker.records.figure import (
    ASPECTS,
    SIDES,
    Figure,
    shown,
    shown_with_error,
    shown_with_unit,
)
from tracker.records.figures import ExerciseFigures, SessionFigures, flag_weight
from ui.documents.charts import amplitude_chart, symptom_chart
from ui.documents.overview import overview
from ui.documents.parts import Cell, Fact, Page, Row, Section, Table

#: Parts of a measure that stand side by side in a table; any other is told as a fact.
COLUMNS = ("asked", "all", "spread", *SIDES, "first_five", "last_five", "difference")
TABLE_GROUPS = ("dose", "movement", "gaze", "standing")
HEADS = {
    "asked": "Asked",
    "all": "Whole set",
    "spread": "Spread",
    "difference": "Last − first",
}
EVENT_PARTS = {"all": "Times", "total_time": "Time in all (s)", "said": "Said to the patient"}
NOTHING_LESS = "Nothing was noted besides the limits at the end."
NOTHING_FIRST = "Nothing in this session asks to be looked at first."


def page_of(record: SessionFigures, scores: Table | None = None) -> Page:
    """The page of a session, with the scores of questionnaires where it stands alone."""
    groups = ("session", "symptoms")
    return Page(
        title=record.person,
        when=record.when,
        origin=_origin(record),
        ended=Fact("Ended", record.ended_words),
        calm="" if record.alert else _calm(record),
        alert=record.alert,
        facts=tuple(fact(f) for f in record.figures if f.group in groups),
        warnings=tuple(_warnings(record)),
        glance=overview(record) if record.exercises else None,
        glance_short=overview(record, short=True) if record.exercises else None,
        left_out=tuple(f"{left.name} ({left.entry_id}): {left.why}" for left in record.left_out),
        begun_short=_begun_short(record),
        sections=tuple(_section(e, k) for k, e in enumerate(record.exercises, 1)),
        setup=tuple(fact(f) for f in record.figures if f.group == "setup"),
        limits=terms.LIMITS,
        chart=symptom_chart(record),
        scores=scores,
    )


def fact(figure: Figure) -> Fact:
    """A figure as a fact."""
    return Fact(figure.label, shown_with_unit(figure), figure.value is None)


def _calm(record: SessionFigures) -> str:
    """That nothing is to be read first, without more comfort than was asked for."""
    safety = record.find("safety")
    asked = safety is not None and safety.value is not None
    return NOTHING_FIRST if asked else f"{NOTHING_FIRST} The safety questions were not asked."


def _origin(record: SessionFigures) -> str:
    parts = [f"Session {record.session_id or 'without an ID (a lone check)'}"]
    parts += [f"plan {record.plan_id}"] if record.plan_id else []
    parts.append(f"Turnpost {record.program_version or '(version not recorded)'}")
    return ", ".join(parts)


def _warnings(record: SessionFigures) -> Iterable[str]:
    """What can't be trusted, of the session and of each exercise, the gravest first."""
    told = [(flag, flag) for flag in record.flags]
    told += [(flag, f"{e.name}: {flag}") for e in record.exercises for flag in e.flags]
    yield from (text for _, text in sorted(told, key=lambda pair: flag_weight(pair[0])))


def _begun_short(record: SessionFigures) -> str:
    """What was not begun in one line, by the reasons."""
    by_reason: dict[str, list[str]] = {}
    for left in record.left_out:
        by_reason.setdefault(left.why, []).append(left.name)
    return "; ".join(f"{', '.join(names)} ({why})" for why, names in by_reason.items())


def _section(e: ExerciseFigures, number: int) -> Section:
    name = f"{number}. {e.name}"
    in_table = _side_by_side(e.figures)
    tables = [t for t in (_matrix(name, in_table), _events(name, e.figures)) if t is not None]
    # The total stands as a fact; each kind of event has a row.
    kinds = [f for f in e.figures if f.group == "events" and f.aspect in EVENT_PARTS]
    kinds = [f for f in kinds if f.measure != "events"]
    unmeasured = f"Not measured in this exercise: {'; '.join(e.unmeasured)}."
    return Section(
        title=name,
        subtitle=e.label if e.title == e.name else f"{e.title} [{e.label}]",
        warnings=e.flags,
        tables=tuple(tables),
        facts=tuple(fact(f) for f in e.figures if f not in in_table and f not in kinds),
        notes=(*_notes(in_table), *([unmeasured] if e.unmeasured else [])),
        chart=amplitude_chart(e),
    )


def _side_by_side(figures: Sequence[Figure]) -> list[Figure]:
    """Figures of measures that have several parts to set side by side."""
    inside = [f for f in figures if f.group in TABLE_GROUPS and f.aspect in COLUMNS]
    parts = Counter(f.measure for f in inside)
    return [f for f in inside if parts[f.measure] > 1]


def _columns(figures: Sequence[Figure]) -> list[str]:
    """Columns in which something has a value; a note says why another isn't there."""
    valued = {f.aspect for f in figures if f.value is not None}
    return [c for c in COLUMNS if c in valued or c == "all"]


def _measures(figures: Sequence[Figure]) -> list[dict[str, Figure]]:
    """Each measure with its parts."""
    names = dict.fromkeys(f.measure for f in figures)
    return [{f.aspect: f for f in figures if f.measure == name} for name in names]


def _matrix(name: str, figures: Sequence[Figure]) -> Table | None:
    """Measures in rows, their parts in columns."""
    columns = _columns(figures)
    rows = tuple(_row(parts, columns) for parts in _measures(figures))
    heads = tuple(HEADS.get(c, ASPECTS[c].capitalize()) for c in columns)
    return Table(f"Figures of {name}", "Figure", heads, rows) if rows else None


def _row(parts: dict[str, Figure], columns: Sequence[str]) -> Row:
    first = next(iter(parts.values()))
    head = f"{first.name} ({first.unit.shown})" if first.unit.shown else first.name
    if _is_across(parts):
        return Row(head, (Cell(shown_with_unit(first), absent=True),), across=True)
    return Row(head, tuple(_cell(parts.get(c)) for c in columns))


def _cell(figure: Figure | None) -> Cell:
    return Cell("") if figure is None else Cell(shown_with_error(figure), figure.value is None)


def _is_across(parts: dict[str, Figure]) -> bool:
    """Whether all of a measure is missing for one reason, said once across the table."""
    found = list(parts.values())
    return all(f.value is None for f in found) and len({f.reason for f in found}) == 1


def _notes(figures: Sequence[Figure]) -> list[str]:
    """Why columns and cells are missing, those of the same words together."""
    columns = _columns(figures)
    measures = [parts for parts in _measures(figures) if not _is_across(parts)]
    whole: dict[str, list[str]] = {}
    for aspect in (c for c in COLUMNS if c not in columns):
        inside = [parts[aspect] for parts in measures if aspect in parts]
        if inside:
            why = "; ".join(dict.fromkeys(f"{shown(f)} ({f.reason})" for f in inside))
            whole.setdefault(why, []).append(ASPECTS[aspect])
    notes = [f"{' and '.join(names).capitalize()}: {why}." for why, names in whole.items()]
    return notes + [note for parts in measures for note in _cell_notes(parts, columns)]


def _cell_notes(parts: dict[str, Figure], columns: Sequence[str]) -> Iterable[str]:
    together: dict[str, list[str]] = {}
    for aspect, f in parts.items():
        if f.value is None and aspect in columns:
            part = ASPECTS[aspect] or "whole set"
            together.setdefault(f"{shown(f)} ({f.reason})", []).append(part)
    for text, names in together.items():
        yield f"{next(iter(parts.values())).name}, {' and '.join(names)}: {text}."


def _events(name: str, figures: Sequence[Figure]) -> Table | None:
    """What was noticed: how often, how long, how often said."""
    rows = [
        Row(parts["all"].name, tuple(_cell(parts.get(a)) for a in EVENT_PARTS))
        for parts in _measures([f for f in figures if f.group == "events"])
        if parts["all"].measure != "events"
    ]
    columns = tuple(EVENT_PARTS.values())
    return Table(f"Noticed in {name}", "Noticed", columns, tuple(rows)) if rows else None
