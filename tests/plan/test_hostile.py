"""Whatever stands in a file, reading it gives a plan or one plain line."""

from __future__ import annotations

import json
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from tests.plan.examples import TEXT
from tracker.errors import InputError
from tracker.plan.files import format_plan, parse_plan
from tracker.plan.rules import remarks
from tracker.plan.starter import starter_plan
from tracker.plan.telling import plan_lines

odd = st.recursive(
    st.none()
    | st.booleans()
    | st.integers()
    | st.sampled_from([10**400, -1, 0, 1e308, "", "turns", "walk", "closed", "soft", "2026-02-30"])
    | st.floats(allow_nan=False, allow_infinity=False)
    | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=4), inner),
    max_leaves=5,
)


def places(value: Any, at: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    members = value.items() if isinstance(value, dict) else enumerate(value)
    found = []
    for key, inner in members:
        found.append((*at, key))
        if isinstance(inner, dict | list):
            found += places(inner, (*at, key))
    return found


EXAMPLES = [json.loads(TEXT), json.loads(format_plan(starter_plan()))]
PLACES = [(k, p) for k, example in enumerate(EXAMPLES) for p in places(example)]


def tell(text: str) -> None:
    try:
        plan = parse_plan(text, "p.json")
    except InputError as error:
        message = str(error)
        assert message.startswith("p.json: ") and len(message.splitlines()) == 1
        return
    # What is let through can be shown, written and read again.
    assert plan_lines(plan, 3) and remarks(plan) is not None
    assert parse_plan(format_plan(plan)) == plan


@given(st.sampled_from(PLACES), odd)
def test_any_value_in_any_place(place: tuple[int, tuple[Any, ...]], value: Any) -> None:
    number, path = place
    data = json.loads(json.dumps(EXAMPLES[number]))
    at = data
    for key in path[:-1]:
        at = at[key]
    at[path[-1]] = value
    tell(json.dumps(data))


@given(st.sampled_from(PLACES))
def test_anything_left_out(place: tuple[int, tuple[Any, ...]]) -> None:
    number, path = place
    data = json.loads(json.dumps(EXAMPLES[number]))
    at = data
    for key in path[:-1]:
        at = at[key]
    del at[path[-1]]
    tell(json.dumps(data))


@given(st.integers(0, len(TEXT)), st.integers(0, 6), st.text(max_size=3))
def test_any_slip_of_the_keyboard(at: int, lost: int, typed: str) -> None:
    tell(TEXT[:at] + typed + TEXT[at + lost :])


@given(st.text())
def test_any_text(text: str) -> None:
    tell(text)
