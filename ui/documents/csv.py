"""Tables for spreadsheets: one row a session, a repetition, or a questionnaire score.

UTF-8 with a byte-order mark, so that spreadsheets read all letters; commas between
cells and points in numbers (where a decimal comma is usual, the spreadsheet's import
asks for both). What was not measured is an empty cell, never 0, and stands with its
reason in a column of words. Text that a spreadsheet would take for a formula gets an
apostrophe before it.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Iterator, Mapping, Sequence

from tracker.records.figure import Figure, number_text, shown
from tracker.records.figures import ExerciseFigures, SessionFigures
from tracker.records.questionnaires import Score
from ui.documents.questionnaires import SCORE_HEADS, score_rows

#: A cell that begins so is a formula to some spreadsheet.
FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠")
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


def sessions_csv(records: Sequence[SessionFigures]) -> bytes:
    """One row a session; a column for each figure that any of them has."""
    return _file([dict(_session(r)) for r in records])


def repetitions_csv(records: Sequence[SessionFigures]) -> bytes:
    """One row a repetition, with its two turns side by side."""
    rows = [dict(row) for r in records for e in r.exercises for row in _repetitions(r, e)]
    return _file(rows or [dict.fromkeys(_repetition_heads(), "")])


def scores_csv(records: Sequence[SessionFigures], scores: Sequence[Score]) -> bytes:
    """One row a questionnaire score of the people whose sessions these are."""
    # Only what was typed as text: a number below 0 is no formula.
    typed = ("person", "questionnaire", "entered by")
    rows = [
        {k: safe(v) if k in typed else v for k, v in row.items()}
        for row in score_rows(records, scores)
    ]
    return _file(rows or [dict.fromkeys(SCORE_HEADS, "")])


def _file(rows: Sequence[Mapping[str, str]]) -> bytes:
    heads = list(dict.fromkeys(h for row in rows for h in row))
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(heads)
    for row in rows:
        if any(row.values()):
            writer.writerow([row.get(h, "") for h in heads])
    return b"\xef\xbb\xbf" + out.getvalue().encode("utf-8")


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


def _whose(r: SessionFigures) -> Iterator[tuple[str, str]]:
    yield "person", safe(r.person_id or "")
    yield "session", safe(r.session_id or "")
    yield "started at", r.started or ""
    yield "plan", safe(r.plan_id or "")
    yield "program version", safe(r.program_version)


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
            yield part, number_text(end, figure.unit.decimals)
    elif value is None:
        yield "", ""
    else:
        yield "", safe(shown(figure)) if isinstance(value, str) else shown(figure)


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
    return heads


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
    yield "start (s)", _number(row["start_s"], 2)
    yield "end (s)", _number(row["end_s"], 2)
    turns = row["turns"]
    assert isinstance(turns, list)
    for k in (1, 2):
        turn = turns[k - 1] if k <= len(turns) else {}
        yield f"turn {k} side", safe(turn.get("side") or "")
        for name, decimals in TURN_NUMBERS.items():
            yield f"turn {k} {_turn_head(name)}", _number(turn.get(name), decimals)


def _number(value: object, decimals: int) -> str:
    return number_text(value, decimals) if isinstance(value, float) else ""
