"""Columns of a trace and fields of a summary all stand in the dictionaries of DEVELOPERS.md."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tracker.sample import TRACE_COLUMNS
from tracker.session.summary_file import Done, EventRow, ExerciseSummary, Summary

TEXT = Path(__file__).parents[2].joinpath("DEVELOPERS.md").read_text("utf-8")


def names_in(section: str) -> set[str]:
    """What stands in backticks in the tables of a section."""
    part = TEXT.split(f"\n## {section}\n")[1].split("\n## ")[0]
    rows = [line for line in part.splitlines() if line.startswith("|")]
    return set(re.findall(r"`([\w.]+)`", "\n".join(rows)))


@pytest.mark.parametrize("model", [Summary, ExerciseSummary, Done, EventRow])
def test_every_field_of_a_summary_is_told(model: type) -> None:
    fields = set(model.model_fields)  # type: ignore[attr-defined]
    missing = fields - names_in("Data dictionary: the summary") - {"reason"}
    assert len(fields) >= 5 and not missing, missing


def test_every_column_of_a_trace_is_told() -> None:
    told = names_in("Data dictionary: the trace")
    sides = re.compile(r"_(right|left)_[xyz]_mm$")
    missing = {c for c in TRACE_COLUMNS if not sides.search(c)} - told
    assert not missing, missing
    for part in ("shoulder", "elbow", "wrist"):
        assert f"{part}_right_x_mm" in told and f"{part}_right_x_mm" in TRACE_COLUMNS
