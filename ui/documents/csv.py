"""Tables for spreadsheets: a row a session, repetition, questionnaire score, or trend.

UTF-8 with a byte-order mark, so that spreadsheets read all letters; commas between
cells and points in numbers (RFC 4180). Where numbers have a decimal comma, a spreadsheet
would take 1.5 for a day or for text and put a whole row into one cell: with ``comma``
cells are set apart by semicolons and numbers have commas, as such a spreadsheet writes
them itself. A line ``sep=`` is not used: it is no standard, and others read it as data.
What was not measured is an empty cell, never 0, and stands with its reason in a column
of words. Text that a spreadsheet would take for a formula gets an apostrophe before it.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Iterator, Mapping, Sequence

from tracker.records.figure import Figure, error_text, number_text, shown
from tracker.records.figures import ExerciseFigures, SessionFigures
from tracker.records.marks import NOT_VALID
from tracker.records.over_time import OverTime
from tracker.records.questionnaires import Score
from ui.documents.questionnaires import SCORE_HEADS, score_rows

#: A cell that begins so is a formula to some spreadsheet.
FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠")
#: What stands behind the head of a figure in the column of its uncertainty.
UNCERTAINTY = ", uncertainty with k = 2"
#: Head of the column that says why numbers of a repetition aren't told.
WITHHELD = "withheld because"
TURN_NUMBERS = {
    "peak_s": 2,
    "time_s": 2,
    "amplitude_deg": 1,
    "peak_speed_deg_s": 0,
    "amplitude_mm": 0,
    "swing_mm": 0,
    "peak_speed_mm_s": 0,
    "short_mm": 0,
}


#: Texts that a spreadsheet may take for a number or a day, in the languages of the program: those
#: of digits and what stands between them, a number with its power of ten, a month with digits.
_MONTHS = "jan|feb|mar|m[äa]r|apr|abr|may|mai|jun|jul|aug|ago|sep|oct|okt|nov|dec|dez|ene|dic"
_OTHER_THING = re.compile(
    rf"\W*\d[\d\s.,:/_-]*(e[+-]?\d+)?\W*$|\d*[\s./-]*({_MONTHS})[a-zäé]*[\s./-]*\d*$",
    re.IGNORECASE,
)


class _Number(str):
    """A cell that is a number; written with the decimal sign that is asked for."""

    __slots__ = ()


def sessions_csv(records: Sequence[SessionFigures], *, comma: bool = False) -> bytes:
    """One row a session; a column for each figure that any of them has."""
    return _file([dict(_session(r)) for r in records], comma=comma)


def repetitions_csv(records: Sequence[SessionFigures], *, comma: bool = False) -> bytes:
    """One row a repetition, with its two turns side by side.

    Whether it is marked as not valid stands there where the notes were looked at.
    """
    rows = [dict(row) for r in records for e in r.exercises for row in _repetitions(r, e)]
    return _file(rows or [dict.fromkeys(_repetition_heads(), "")], comma=comma)


def scores_csv(
    records: Sequence[SessionFigures], scores: Sequence[Score], *, comma: bool = False
) -> bytes:
    """One row a questionnaire score of the people whose sessions these are."""
    # Only what was typed as text: a number below 0 is no formula.
    typed = ("person", "questionnaire", "entered by")
    rows = [
        {k: _typed(k, v) if k in typed else v if k == "day" else _Number(v) for k, v in row.items()}
        for row in score_rows(records, scores)
    ]
    return _file(rows or [dict.fromkeys(SCORE_HEADS, "")], comma=comma)


def _typed(head: str, text: str) -> str:
    return named("person", text) if head == "person" else safe(text)


def trends_csv(over_time: Sequence[OverTime], *, comma: bool = False) -> bytes:
    """One row a figure of a person over a span; those of practice stand under "lately"."""
    rows = [dict(row) for one in over_time for row in _trends(one)]
    return _file(rows or [dict.fromkeys(TREND_HEADS, "")], comma=comma)


def _file(rows: Sequence[Mapping[str, str]], *, comma: bool) -> bytes:
    heads = list(dict.fromkeys(h for row in rows for h in row))
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n", delimiter=";" if comma else ",")
    writer.writerow(heads)
    for row in rows:
        if any(row.values()):
            writer.writerow([_written(row.get(h, ""), comma=comma) for h in heads])
    return b"\xef\xbb\xbf" + out.getvalue().encode("utf-8")


def _written(cell: str, *, comma: bool) -> str:
    return cell.replace(".", ",") if comma and isinstance(cell, _Number) else cell


def safe(text: str) -> str:
    """Text that no spreadsheet takes for a formula."""
    return f"'{text}" if text.startswith(FORMULA_STARTS) else text


# --- sessions ---


def _session(r: SessionFigures) -> Iterator[tuple[str, str]]:
    yield from _whose(r)
    yield "ended", safe(r.ended_words)
    yield "read first", safe("; ".join(r.alert))
    yield from _cells("", r.figures)
    yield "trust less", safe("; ".join(r.flags))
    yield "not measured or not asked", safe(_missing(r.figures))
    for e in r.exercises:
        yield from _cells(f"{e.label}: ", e.figures)
        yield safe(f"{e.label}: trust less"), safe("; ".join(e.flags))
        yield safe(f"{e.label}: not measured or not asked"), safe(_missing(e.figures))
    yield "not begun", safe("; ".join(f"{x.entry_id}: {x.why}" for x in r.left_out))


def named(kind: str, text: str) -> str:
    """A pseudonym or an ID, behind a word where a spreadsheet would make another thing of it.

    007 would become 7, 1-2 a day and 3E5 a number; an apostrophe would stay to be seen.
    """
    return f"{kind} {text}" if _OTHER_THING.match(text) else safe(text)


def _whose(r: SessionFigures) -> Iterator[tuple[str, str]]:
    yield "person", named("person", r.person_id or "")
    yield "session", safe(r.session_id or "")
    yield "started at", r.started or ""
    yield "plan", named("plan", r.plan_id or "")
    # By itself a version such as 1.2.0 would be taken for a day.
    yield "program version", f"Turnpost {r.program_version}" if r.program_version else ""


def _cells(prefix: str, figures: Iterable[Figure]) -> Iterator[tuple[str, str]]:
    for f in figures:
        for part, text in figure_cells(f):
            yield safe(f"{prefix}{head_of(f)}{part}"), text


def head_of(figure: Figure) -> str:
    """Head of a figure's column: what it is, and its unit."""
    return f"{figure.label} ({figure.unit.shown})" if figure.unit.shown else figure.label


def figure_cells(figure: Figure) -> Iterator[tuple[str, str]]:
    """Cells of a figure with what goes behind the head; a range has two."""
    value = figure.value
    if isinstance(value, tuple):
        for part, end in zip((", least", ", most"), value, strict=True):
            yield part, _Number(number_text(end, figure.unit.decimals))
    elif value is None:
        yield "", ""
    else:
        yield "", safe(shown(figure)) if isinstance(value, str) else _Number(shown(figure))
        error = error_text(figure)
        if error:
            yield UNCERTAINTY, _Number(error)


def _missing(figures: Iterable[Figure]) -> str:
    together: dict[str, list[str]] = {}
    for f in figures:
        if f.value is None:
            together.setdefault(f.reason or "", []).append(f.label)
    return "; ".join(f"{' + '.join(names)}: {why}" for why, names in together.items())


# --- repetitions ---


def _repetition_heads() -> list[str]:
    heads = ["person", "session", "started at", "plan", "program version"]
    heads += ["exercise", "repetition", "start (s)", "end (s)"]
    for k in (1, 2):
        heads.append(f"turn {k} side")
        heads += [f"turn {k} {_turn_head(n)}" for n in TURN_NUMBERS]
    return [*heads, WITHHELD]


def _turn_head(name: str) -> str:
    """``peak_speed_deg_s`` -> ``peak speed (deg/s)``."""
    for tail, unit in (("_deg_s", "deg/s"), ("_mm_s", "mm/s"), ("_deg", "deg"), ("_mm", "mm")):
        if name.endswith(tail):
            return f"{name[: -len(tail)].replace('_', ' ')} ({unit})"
    return f"{name.removesuffix('_s').replace('_', ' ')} (s)"


def _repetitions(r: SessionFigures, e: ExerciseFigures) -> Iterator[Iterator[tuple[str, str]]]:
    for row in e.repetitions:
        yield _repetition(r, e, row)


def _repetition(
    r: SessionFigures, e: ExerciseFigures, row: Mapping[str, object]
) -> Iterator[tuple[str, str]]:
    yield from _whose(r)
    yield "exercise", safe(e.label)
    yield "repetition", _number(row["repetition"], 0)
    if NOT_VALID in row:
        yield "marked not valid", "yes" if row[NOT_VALID] else ""
    yield "start (s)", _number(row["start_s"], 2)
    yield "end (s)", _number(row["end_s"], 2)
    turns = row["turns"]
    assert isinstance(turns, list)
    for k in (1, 2):
        turn = turns[k - 1] if k <= len(turns) else {}
        yield f"turn {k} side", safe(turn.get("side") or "")
        for name, decimals in TURN_NUMBERS.items():
            yield f"turn {k} {_turn_head(name)}", _number(turn.get(name), decimals)
    yield WITHHELD, safe(str(row["reason"] or ""))


def _number(value: object, decimals: int) -> str:
    return _Number(number_text(value, decimals)) if isinstance(value, float) else ""


# --- a person over a span ---


TREND_HEADS = (
    *("person", "from", "to", "exercise", "figure", "affected side", "unit"),
    *("at first", "lately", "smallest change told", "change", "compared"),
    *(
        "sessions measured",
        "sessions",
        "sessions left out",
        "repetitions marked not valid",
        "not known because",
    ),
)


def _trends(one: OverTime) -> Iterator[dict[str, str]]:
    days = ["" if d is None else d.isoformat() for d in (one.from_day, one.to_day)]
    for f in one.practice:
        ((_, cell),) = figure_cells(f)
        own = ("practice", f.label, "", f.unit.shown, "", cell, "", "", "", "", "", "", "")
        yield _trend_row(one, days, (*own, "" if f.value is not None else f.reason or ""))
    for t in one.trends:
        ((_, first),), ((_, last),), ((_, least),), *counts = map(figure_cells, t.figures)
        whole = [cell for count in counts for _, cell in count]
        whole += [cell for _, cell in figure_cells(t.marked)]
        days = ["" if d is None else d.isoformat() for d in (t.from_day, t.to_day)]
        affected = "yes" if t.affected else ""
        name, unit = safe(t.name), t.first.unit.shown
        own = (safe(t.where), name, affected, unit, first, last, least, t.verdict, t.basis)
        yield _trend_row(one, days, (*own, *whole, ""))


def _trend_row(one: OverTime, days: Sequence[str], own: Sequence[str]) -> dict[str, str]:
    return dict(zip(TREND_HEADS, (named("person", one.person_id), *days, *own), strict=True))
