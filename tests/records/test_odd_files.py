"""Summaries with any part spoilt: each is shown or named, and none stops the review."""

from __future__ import annotations

import contextlib
import copy
import json
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.records.rows import START
from tests.records.test_folder import real
from tracker.records.index import read_folder
from tracker.records.people import people_of
from ui.desk.text import list_lines, person_lines

ODD = (None, True, -1, 1e300, "x", "", [], {}, [1], [None, 2], {"median": "x"}, {"value": [1]})


def whole() -> dict[str, Any]:
    """A session with everything in it that the review reads."""
    data = json.loads(real().model_dump_json())
    data["gate"] = {"put_first": ["fall"], "since_last": {"rest_of_day": 3, "next_morning": 1}}
    data["weekly"] = {"falls": "once", "hurt": None, "medicines_changed": True, "reasons": {}}
    data["symptoms"] = {"before": 1, "after": 4, "settled_minutes": None, "reasons": {}}
    data["exercises"][0]["symptoms"] = copy.deepcopy(data["symptoms"])
    data["started_at"] = f"{START}T09:00:00+01:00"
    return data


def places(data: Any, at: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    """Every place in a JSON value, of a list only the first two."""
    found = [at] if at else []
    items = data.items() if isinstance(data, dict) else []
    if isinstance(data, list):
        items = enumerate(data[:2])
    for key, value in items:
        found += places(value, (*at, key))
    return found


def spoilt(data: dict[str, Any], at: tuple[Any, ...], value: Any) -> dict[str, Any]:
    made = copy.deepcopy(data)
    inside: Any = made
    for key in at[:-1]:
        inside = inside[key]
    inside[at[-1]] = value
    return made


WHOLE = whole()
PLACES = places(WHOLE)


@pytest.mark.parametrize("name", ["exercises", "gate", "weekly", "symptoms", "events"])
def test_there_is_something_to_spoil(name: str) -> None:
    assert any(name in at for at in PLACES) and len(PLACES) > 150


@settings(deadline=None)
@given(st.sampled_from(PLACES), st.sampled_from(ODD), st.sampled_from(PLACES), st.sampled_from(ODD))
def test_whatever_is_spoilt_the_rest_is_shown(
    at: tuple[Any, ...], value: Any, other: tuple[Any, ...], other_value: Any
) -> None:
    with TemporaryDirectory() as scratch:
        folder = Path(scratch)
        for k in range(7):
            data = {**WHOLE, "session_id": f"s{k}", "person": "P-1"}
            if k == 3:
                data = spoilt(data, at, value)
                # The second may lie in what the first has taken away.
                with contextlib.suppress(KeyError, IndexError, TypeError):
                    data = spoilt(data, other, other_value)
            (folder / f"s{k}").mkdir()
            (folder / f"s{k}" / "summary.json").write_text(json.dumps(data), encoding="utf-8")
        for _ in range(2):
            records = read_folder(folder)
            assert len(records.rows) + len(records.unread) == 7 and len(records.rows) >= 6
            people = people_of(records, START)
            lines = list(list_lines(records, people))
            assert len(lines) > 3
            for person in people:
                assert list(person_lines(person))
