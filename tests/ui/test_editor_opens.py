"""Whatever the plan editor can save, it can open and show again."""

from __future__ import annotations

import random
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.plan.examples import TEXT, changed
from tests.plan.made_up import made_up
from tracker.errors import InputError
from tracker.plan import arranging, draft
from tracker.plan.draft import UNSET, Data, editable_data, text_of
from tracker.plan.files import parse_data
from tracker.plan.model import MAX_ENTRIES, MAX_RUNGS, MAX_STAGES
from ui.editor.entry_form import entry_sections
from ui.editor.outline import outline_lines
from ui.editor.plan_form import plan_sections, safety_sections, stage_sections, symptom_sections
from ui.editor.rows import Row
from ui.editor.state import State
from ui.editor.steps import act_on, take_value

#: What can be typed into a field, by its kind.
TYPED: dict[str, tuple[Any, ...]] = {
    "text": ("", UNSET, "x y", "x" * 400),
    "area": ("", UNSET, "x" * 2500),
    "day": (UNSET, "soon", "2026-02-30"),
    "number": (UNSET, "many", -1, 10**6, 0.5),
    "pair": (UNSET, [10], ["ten", 5], [30, 20], [0, 1000]),
    "tempo": (UNSET, None, "", "fast", 1000, [], [60], ["slow", 90], [60, 9000]),
}


def shown(data: Data) -> Iterator[Row]:
    """Every row of every form; the outline is made too."""
    state = State.of(data, None, None)
    assert outline_lines(state)
    sections = [*plan_sections(state), *safety_sections(state), *symptom_sections(state)]
    for k in range(len(data.get("stages", []))):
        sections += stage_sections(state, k)
    for k in range(len(data.get("entries", []))):
        sections += entry_sections(state, k)
    for section in sections:
        yield from section.rows


def opened(data: Data) -> Data:
    found = editable_data(text_of(data))
    assert list(shown(found))
    return found


@given(st.integers(0, 2**32))
def test_whatever_is_typed_into_its_fields(seed: int) -> None:
    rng = random.Random(seed)
    data = made_up(seed)
    for _ in range(4):
        row = rng.choice([r for r in shown(data) if r.kind in TYPED])
        data = take_value(data, row, rng.choice(TYPED[row.kind]))
        again = opened(data)
        assert text_of(again) == text_of(data) or not draft.examine_draft(data).faults


def test_lists_that_have_become_too_long() -> None:
    data = draft.empty_data()
    for _ in range(MAX_STAGES + 1):
        data, _ = arranging.add_stage(data, "One more")
    for _ in range(MAX_ENTRIES + 1):
        data, _ = arranging.add_entry(data, "walk")
    for _ in range(MAX_RUNGS + 1):
        data, _ = act_on(data, "add_rung", ("entries", 0, "ladder"), None)  # type: ignore[arg-type]
    for _ in range(41):
        data, _ = act_on(data, "add_item", ("clearance",), None)  # type: ignore[arg-type]
    assert opened(data) == data
    # Not with something in them that no field stands for.
    for path, value in (
        (("entries", 100), 1),
        (("entries", 100, "colour"), "red"),
        (("entries", 100, "exercise"), "spin"),
        (("entries", 0, "ladder", 26, "eyes"), "open"),
    ):
        with pytest.raises(InputError):
            editable_data(text_of(draft.with_value(data, path, value)))


def test_a_stage_without_its_name_or_its_id_is_shown() -> None:
    data = parse_data(TEXT)[0]
    data, _ = arranging.add_stage(data, "One")
    for field in ("name", "stage_id"):
        lost = draft.with_value(data, ("stages", 0, field), UNSET)
        assert opened(lost) == lost


def test_an_unknown_exercise_is_refused_beside_a_fault_that_could_be_mended() -> None:
    data = parse_data(changed("entries.1.exercise", "spin"))[0]
    with pytest.raises(InputError, match="there is no exercise 'spin'"):
        editable_data(text_of({**data, "rest_s": "long"}))
