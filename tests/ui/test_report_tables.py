"""The tables as a spreadsheet reads them: where numbers have a point, and where a comma.

How a spreadsheet takes a cell for a number or a day was written from memory of two common ones;
no spreadsheet was run.
"""

from __future__ import annotations

import csv
import io
import re
from datetime import date

import pytest

from tests.records import made
from tracker.records.figure import shown
from tracker.records.figures import SessionFigures, record_of
from tracker.records.questionnaires import Score
from ui.documents.csv import repetitions_csv, scores_csv, sessions_csv

Cell = float | date | str


def as_spreadsheet(data: bytes, *, comma: bool) -> list[list[Cell]]:
    """Rows as a double click opens them: the system's own separator, numbers and days."""
    text = io.StringIO(data.decode("utf-8-sig"), newline="")
    rows = csv.reader(text, delimiter=";" if comma else ",")
    return [[taken(cell, comma=comma) for cell in row] for row in rows]


def taken(cell: str, *, comma: bool) -> Cell:
    """What a cell is taken for."""
    sign, thousands = (",", ".") if comma else (".", ",")
    whole = rf"\d{{1,3}}(?:{re.escape(thousands)}\d{{3}})+|\d+"
    if re.fullmatch(rf"-?(?:{whole})(?:{re.escape(sign)}\d+)?", cell):
        return float(cell.replace(thousands, "").replace(sign, "."))
    if comma and (found := re.fullmatch(r"(\d{1,2})\.(\d{1,2})(?:\.(\d{1,4}))?", cell)):
        day, month, year = int(found[1]), int(found[2]), int(found[3] or 2026)
        if 1 <= day <= 31 and 1 <= month <= 12:
            return date(max(year, 1), month, min(day, 28))
    return cell


def test_what_a_spreadsheet_with_a_comma_would_do_to_points() -> None:
    """The trouble itself: 1.5 becomes a day, 12.35 words, and 1.250 a thousand."""
    assert taken("1.5", comma=True) == date(2026, 5, 1)
    assert taken("95.2", comma=True) == "95.2" and taken("1.250", comma=True) == 1250.0
    (heads, *_) = as_spreadsheet(sessions_csv([record_of(made.finished())]), comma=True)
    # All of a row in one cell, or in as many as have a semicolon in their words.
    assert len(heads) < 5


@pytest.mark.parametrize("comma", [False, True])
@pytest.mark.parametrize("name", ["finished", "varied", "hands", "unseen"])
def test_every_number_is_a_number_in_such_a_spreadsheet(name: str, comma: bool) -> None:
    record = record_of(made.EXAMPLES[name]())
    heads, row = as_spreadsheet(sessions_csv([record], comma=comma), comma=comma)
    cells = dict(zip(map(str, heads), row, strict=True))
    seen = 0
    for prefix, figures in _figures(record):
        for f in figures:
            unit = f" ({f.unit.shown})" if f.unit.shown else ""
            head = f"{prefix}{f.label}{unit}"
            if isinstance(f.value, float):
                assert cells[head] == float(shown(f)), head
                seen += 1
            elif isinstance(f.value, tuple):
                ends = (cells[f"{head}, least"], cells[f"{head}, most"])
                assert all(isinstance(end, float) for end in ends)
            elif f.value is None:
                assert cells[head] == ""
    assert seen > 10
    assert not [c for c in cells.values() if isinstance(c, date)]


def _figures(record: SessionFigures) -> list[tuple[str, tuple[object, ...]]]:
    own = [(f"{e.label}: ", e.figures) for e in record.exercises]
    return [("", tuple(record.figures)), *own]  # type: ignore[list-item]


@pytest.mark.parametrize("comma", [False, True])
def test_repetitions_are_numbers_too(comma: bool) -> None:
    record = record_of(made.finished())
    heads, *rows = as_spreadsheet(repetitions_csv([record], comma=comma), comma=comma)
    numbers = [k for k, head in enumerate(heads) if re.search(r"\((?:s|deg)\)$", str(head))]
    assert len(numbers) >= 6 and len(rows) > 30
    first = record.exercises[0].repetitions[0]["turns"][0]["amplitude_deg"]
    at = heads.index("turn 1 amplitude (deg)")
    assert rows[0][at] == pytest.approx(first, abs=0.06)
    # Cells without a number are empty: of saccades the head's amplitude was not measured.
    kinds = {type(row[k]) for row in rows for k in numbers if row[k] != ""}
    assert kinds == {float}


@pytest.mark.parametrize("comma", [False, True])
def test_scores_and_days_stay_what_they_are(comma: bool) -> None:
    about = ("a", "kim", "2026-03-01T10:00:00+01:00", "Wren", "Balance 1.5", date(2026, 3, 1))
    scores = [Score(*about, 41.5, 0.0, 100.0)]
    data = scores_csv([record_of(made.finished())], scores, comma=comma)
    heads, row = as_spreadsheet(data, comma=comma)
    cells = dict(zip(map(str, heads), row, strict=True))
    assert (cells["score"], cells["least possible"], cells["most possible"]) == (41.5, 0.0, 100.0)
    # What somebody typed stays as it was typed.
    assert cells["questionnaire"] == "Balance 1.5" and cells["day"] == "2026-03-01"
