"""Whatever a summary holds: either documents, or one line that names the place."""

from __future__ import annotations

import copy
import json
from functools import cache
from typing import Any

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.records import made
from tests.ui.reading_documents import parsed_html
from tracker.errors import InputError
from tracker.records.figures import SessionFigures, record_of
from tracker.session.summary_file import Summary
from ui.documents.csv import repetitions_csv, sessions_csv
from ui.documents.fhir import fhir_bundle
from ui.documents.html import html_document
from ui.documents.paragraph import paragraph

VALUES = st.one_of(
    st.none(),
    st.booleans(),
    st.integers(-(10**6), 10**6),
    st.floats(),
    st.text(max_size=40),
    st.sampled_from(made.NASTY),
    st.just([]),
    st.just({}),
    st.lists(st.floats(), max_size=3),
    st.dictionaries(st.text(max_size=8), st.integers(), max_size=2),
)


@cache
def content(name: str) -> Any:
    week = {"falls": "once", "hurt": True, "medicines_changed": None}
    weekly = {**week, "reasons": {"medicines_changed": "not answered"}}
    return json.loads(made.EXAMPLES[name]().model_dump_json()) | {"weekly": weekly}


def places(value: Any, way: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    """The way to every value inside."""
    if isinstance(value, dict):
        inside = list(value.items())
    elif isinstance(value, list):
        inside = list(enumerate(value[:2]))
    else:
        inside = []
    return [w for k, v in inside for w in ((*way, k), *places(v, (*way, k)))]


def record_or_none(summary: Summary) -> SessionFigures | None:
    """The figures, or None where one line says what is wrong."""
    try:
        return record_of(summary)
    except InputError as error:
        said = str(error)
    assert "not a usable summary" in said and "\n" not in said
    return None


@settings(deadline=None, max_examples=150, suppress_health_check=[HealthCheck.too_slow])
@given(st.data())
def test_any_damage_gives_documents_or_one_line(data: st.DataObject) -> None:
    changed = copy.deepcopy(content(data.draw(st.sampled_from(["finished", "varied"]))))
    for _ in range(data.draw(st.integers(1, 3))):
        way = data.draw(st.sampled_from(places(changed)))
        place = changed
        for step in way[:-1]:
            place = place[step]
        place[way[-1]] = data.draw(VALUES)
    try:
        summary = Summary.model_validate(changed)
    except ValueError:
        return
    record = record_or_none(summary)
    if record is None:
        return
    parsed_html(html_document([record]))
    assert json.loads(fhir_bundle([record]))["entry"]
    sessions_csv([record]).decode("utf-8-sig")
    repetitions_csv([record]).decode("utf-8-sig")
    assert paragraph(record).encode("utf-8")
