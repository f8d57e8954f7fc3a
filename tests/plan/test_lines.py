"""Lines of fields in a JSON text."""

from __future__ import annotations

import json
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from tests.plan.examples import TEXT
from tracker.plan.lines import MAX_DEPTH, field_name, index_lines


def test_lines_are_those_one_counts() -> None:
    index = index_lines(TEXT)
    rows = TEXT.splitlines()
    assert '"entry_id": "corner"' in rows[index.line_of(("entries", 2, "entry_id")) - 1]
    assert rows[index.line_of(("entries", 1)) - 1].strip() == "{"
    line = index.line_of(("entries", 0, "ladder", 1, "amplitude_deg", 1))
    assert line == 20 and '"ladder"' in rows[line - 1]
    assert index.line_of(("neck_limit_deg", "yaw")) == 10


def test_what_is_missing_stands_at_what_is_around_it() -> None:
    index = index_lines(TEXT)
    assert index.line_of(("entries", 2, "seconds")) == index.line_of(("entries", 2))
    assert index.line_of(("nothing", 3)) == 1


def test_strings_with_brackets_quotes_and_line_ends_confuse_nothing() -> None:
    index = index_lines('{"a": "x\\"}],:{\\\\",\n"b": [1,\n "]",\n {"c\\n\\u00e9": 2}]}')
    assert index.line_of(("b",)) == 2
    assert index.line_of(("b", 1)) == 3
    assert index.lines["b", 2, "c\né"] == 4


def test_names_that_stand_twice_are_found() -> None:
    index = index_lines('{"a": 1,\n "b": {"a": 2},\n "a": 3}')
    assert index.repeated == [("a",)]
    assert index.line_of(("a",)) == 3


def test_a_deep_text_is_not_gone_through() -> None:
    deep = "[" * 400 + "]" * 400
    assert index_lines("[" * MAX_DEPTH + "]" * MAX_DEPTH).too_deep is None
    assert index_lines(deep).too_deep == (0,) * MAX_DEPTH


def test_a_field_reads_as_one_says_it() -> None:
    assert field_name(("entries", 2, "tempo_bpm", 0)) == "entries[2].tempo_bpm[0]"
    assert field_name(()) == "the file"


values = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(), inner, max_size=4),
    max_leaves=12,
)


def paths(value: Any, at: tuple[str | int, ...] = ()) -> set[tuple[str | int, ...]]:
    members: list[tuple[str | int, Any]] = []
    if isinstance(value, dict):
        members = list(value.items())
    elif isinstance(value, list):
        members = list(enumerate(value))
    return {at}.union(*(paths(v, (*at, k)) for k, v in members)) if members else {at}


@given(values)
def test_every_field_of_any_json_has_a_line(value: Any) -> None:
    text = json.dumps(value, indent=1)
    index = index_lines(text)
    if index.too_deep is None:
        assert set(index.lines) == paths(value)
        assert not index.repeated
        assert max(index.lines.values()) <= len(text.splitlines())
