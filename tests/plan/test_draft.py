"""Editing steps on a plan's data: what they change, what they keep, and that nothing is lost."""

from __future__ import annotations

import copy
import json
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.plan.examples import TEXT
from tests.plan.made_up import made_up
from tracker.errors import InputError
from tracker.exercises.catalogue import CATALOGUE
from tracker.plan import arranging, draft
from tracker.plan.draft import UNSET, data_of, examine_draft, text_of
from tracker.plan.files import format_plan, parse_plan
from tracker.plan.starter import STAGE_NAMES, starter_plan

SEEDS = st.integers(0, 2**32)


def example() -> dict[str, Any]:
    return data_of(parse_plan(TEXT))


@given(SEEDS)
def test_data_and_plan_are_one_and_the_same(seed: int) -> None:
    data = made_up(seed)
    plan = parse_plan(text_of(data))
    again = parse_plan(text_of(data_of(plan)))
    # Which fields were left out counts as well: null is another tempo than none given.
    assert again == plan and format_plan(again) == format_plan(plan)


@settings(deadline=None)
@given(SEEDS, st.integers(0, 2**32))
def test_no_step_changes_what_it_was_given(seed: int, choice: int) -> None:
    data = made_up(seed)
    before = copy.deepcopy(data)
    k = choice % len(data["entries"])
    steps = [
        arranging.add_entry(data, "turns-on-target", k)[0],
        arranging.copy_entry(data, k)[0],
        arranging.move_entry(data, k, 1)[0],
        arranging.move_entry(data, k, -1)[0],
        arranging.remove_entry(data, k),
        arranging.add_stage(data, "One more")[0],
        arranging.rename(data, ("entries", k, "entry_id"), "other"),
        draft.with_value(data, ("entries", k, "tempo_bpm"), [60, 90]),
        draft.with_value(data, ("neck_limit_deg", "yaw"), 20),
    ]
    if data.get("stages"):
        steps += [arranging.remove_stage(data, 0), draft.with_moved(data, ("stages", 0), 1)]
    assert data == before
    assert all(len(json.dumps(s)) > 10 for s in steps)


@given(SEEDS, st.integers(0, 20), st.sampled_from([-1, 1]))
def test_moving_keeps_every_entry_and_can_be_walked_back(seed: int, k: int, by: int) -> None:
    data = made_up(seed)
    k %= len(data["entries"])
    moved, at = arranging.move_entry(data, k, by)
    assert sorted(e["entry_id"] for e in moved["entries"]) == sorted(
        e["entry_id"] for e in data["entries"]
    )
    assert moved["entries"][at]["entry_id"] == data["entries"][k]["entry_id"]
    back, _ = arranging.move_entry(moved, at, -by)

    def order(d: dict[str, Any]) -> list[tuple[int | None, str]]:
        return [(s, d["entries"][n]["entry_id"]) for s, n in arranging.entries_in_order(d)]

    assert moved is data or order(back) == order(data)


#: The ID of a stage, also one that is there twice, or missing; what an entry says of its own.
STAGES = st.lists(st.sampled_from(["a", "b", None]), max_size=4)
OWN = st.lists(st.sampled_from(["a", "b", "gone", None]), min_size=1, max_size=5)


def unfinished(stages: list[str | None], own: list[str | None]) -> dict[str, Any]:
    """A plan in the midst of being written, whose stages need not have IDs of their own."""
    return {
        "stages": [{"name": "S"} | ({} if i is None else {"stage_id": i}) for i in stages],
        "entries": [
            {"entry_id": f"e{k}"} | ({} if i is None else {"stage": i}) for k, i in enumerate(own)
        ],
    }


@settings(deadline=None)
@given(STAGES, OWN)
def test_entries_stay_the_same_ones_whatever_their_stages_are_called(
    stages: list[str | None], own: list[str | None]
) -> None:
    data = unfinished(stages, own)
    names = [e["entry_id"] for e in data["entries"]]
    order = arranging.entries_in_order(data)
    assert sorted(k for _, k in order) == list(range(len(names)))
    for k, name in enumerate(names):
        places: list[tuple[int | None, int | None]] = [(s, n) for s, n in order if n != k]
        places += [(s, None) for s in range(len(stages))] or [(None, None)]
        made = [arranging.place_entry(data, k, *place) for place in places]
        made += [arranging.move_entry(data, k, by) for by in (-1, 1)]
        for moved, at in made:
            assert sorted(e["entry_id"] for e in moved["entries"]) == names
            assert moved["entries"][at]["entry_id"] == name
    for s in range(len(stages)):
        gone = arranging.remove_stage(data, s)
        assert [e["entry_id"] for e in gone["entries"]] == names


def test_a_value_is_set_left_out_and_made_where_its_part_is_missing() -> None:
    data = example()
    assert draft.with_value(data, ("rest_s",), 20)["rest_s"] == 20
    assert "words" not in draft.with_value(data, ("words",), UNSET)
    only = draft.with_value(data, ("neck_limit_deg", "yaw"), UNSET)
    assert only["neck_limit_deg"] == {"pitch": 20.0}
    assert [f.path for f in examine_draft(only).faults] == [("neck_limit_deg", "yaw")]
    none = draft.with_value(only, ("neck_limit_deg", "pitch"), UNSET)
    assert "neck_limit_deg" not in none
    assert draft.with_value(none, ("neck_limit_deg", "yaw"), 9)["neck_limit_deg"] == {"yaw": 9}
    assert draft.value_at(data, ("entries", 0, "ladder", 1, "amplitude_deg", 1)) == 25
    assert draft.value_at(data, ("entries", 9, "note")) is UNSET
    # The same value is no step; 1 is not true, nor is it 1.0 in a file.
    assert draft.with_value(data, ("person",), "P-07") is data
    assert draft.with_value(data, ("clearance", 0, "cleared"), 1) is not data


def test_an_added_entry_has_the_usual_dose_and_a_name_of_its_own() -> None:
    data = draft.empty_data()
    for name, exercise in CATALOGUE.items():
        made, k = arranging.add_entry(data, name)
        found = examine_draft(made)
        # Only what asks for a note first is not a plan at once.
        assert bool(found.faults) == exercise.off_by_default, name
        assert made["entries"][k]["entry_id"] == name
    twice, k = arranging.add_entry(arranging.add_entry(data, "walk")[0], "walk", 0)
    assert (k, twice["entries"][1]["entry_id"]) == (1, "walk-2")
    assert arranging.copy_entry(twice, 1)[0]["entries"][2]["entry_id"] == "walk-3"


def test_an_empty_plan_says_what_it_lacks_and_nothing_else() -> None:
    found = examine_draft(draft.empty_data())
    assert [(f.path, f.text) for f in found.faults] == [(("entries",), "must not be empty")]
    assert found.plan is None and found.remarks == ()


def test_an_entry_goes_over_the_border_of_its_stage() -> None:
    data = data_of(starter_plan(["firm-floor", "soft-surface"]))
    last = [k for s, k in arranging.entries_in_order(data) if s == 0][-1]
    moved, at = arranging.move_entry(data, last, 1)
    assert moved["entries"][at]["stage"] == "soft-surface"
    assert next(k for s, k in arranging.entries_in_order(moved) if s == 1) == at
    again, at = arranging.move_entry(moved, at, 1)
    assert [k for s, k in arranging.entries_in_order(again) if s == 1][1] == at
    # At the very end it stays.
    end = len(data["entries"]) - 1
    assert arranging.move_entry(data, end, 1) == (data, end)
    assert arranging.move_entry(data, 0, -1) == (data, 0)


def test_stages_take_entries_in_and_give_them_on() -> None:
    data = example()
    data, first = arranging.add_stage(data, "First")
    assert first == 0 and {e["stage"] for e in data["entries"]} == {"stage-1"}
    data, _ = arranging.add_stage(data, "Second")
    assert [f.text for f in examine_draft(data).faults] == ["no entry is in stage 'stage-2'"]
    data, _ = arranging.move_entry(data, 3, 1)
    assert examine_draft(data).faults == () and data["entries"][3]["stage"] == "stage-2"
    gone = arranging.remove_stage(data, 0)
    assert {e["stage"] for e in gone["entries"]} == {"stage-2"}
    none = arranging.remove_stage(gone, 0)
    assert all("stage" not in e for e in none["entries"]) and examine_draft(none).faults == ()


def test_what_a_stage_waited_for_its_entries_wait_for_when_it_is_gone() -> None:
    data = data_of(starter_plan(["eyes-and-head", "body-sitting", "firm-floor"]))
    data["stages"][2]["unlock_after"]["after"] = "eyes-and-head"
    gone = arranging.remove_stage(data, 2)
    assert examine_draft(gone).faults == ()
    sways = next(e for e in gone["entries"] if e["exercise"] == "ankle-sway")
    assert sways["unlock_after"] == data["stages"][2]["unlock_after"]
    # One that has a condition of its own keeps that one.
    own = next(e for e in gone["entries"] if e["entry_id"] == "stand-eyes-closed")
    assert own["unlock_after"]["after"] == "stand"
    # Where the figures can't be taken from any more, the words still hold it back.
    gone = arranging.remove_stage(data, 1)
    assert examine_draft(gone).faults == ()
    tosses = next(e for e in gone["entries"] if e["exercise"] == "hand-toss")
    assert tosses["stage"] == "eyes-and-head"
    condition = data["stages"][1]["unlock_after"]["condition"]
    assert tosses["unlock_after"] == {"condition": condition}


def test_what_was_found_of_one_person_holds_for_nobody_else() -> None:
    data = example()
    data["entries"][1]["unlock_after"]["met_on"] = "2026-01-20"
    other = arranging.for_person(data, "P-08")
    assert other["person"] == "P-08" and other["plan_id"] != data["plan_id"]
    assert not other["clearance"][0]["cleared"] and examine_draft(other).faults == ()
    assert "met_on" not in other["entries"][1]["unlock_after"]
    assert other["entries"][1]["unlock_after"]["sessions"] == 3
    # The first pseudonym of a plan drags nothing along; the same one is no step.
    unnamed = {**data, "person": None}
    assert arranging.for_person(unnamed, "P-07") == data
    assert arranging.for_person(data, "P-07") is data


def test_what_refers_to_a_name_goes_with_it() -> None:
    data = arranging.rename(example(), ("entries", 0, "entry_id"), "head")
    assert data["entries"][1]["unlock_after"]["after"] == "head"
    assert examine_draft(data).faults == ()
    # A name that is taken is a fault to be seen, and drags nothing with it.
    clash = arranging.rename(example(), ("entries", 0, "entry_id"), "nods")
    assert clash["entries"][1]["unlock_after"]["after"] == "turns"
    starter = data_of(starter_plan())
    renamed = arranging.rename(starter, ("stages", 0, "stage_id"), "begin")
    assert renamed["stages"][1]["unlock_after"]["after"] == "begin"
    assert examine_draft(renamed).faults == ()


def test_removing_what_a_condition_rests_on_is_told_at_the_condition() -> None:
    found = examine_draft(arranging.remove_entry(example(), 0)).faults
    assert [f.path for f in found] == [("entries", 0, "unlock_after", "after")]


def test_what_a_condition_may_rest_on() -> None:
    data = data_of(starter_plan(["eyes-and-head", "body-sitting"]))
    k = next(k for k, e in enumerate(data["entries"]) if e["exercise"] == "shoulders-forward")
    names = arranging.names_before(data, ("entries", k))
    assert names[0] == "eyes-and-head" and names[-1] == "shoulders-back"
    assert "body-sitting" not in names
    assert arranging.names_before(data, ("stages", 1)) == ["eyes-and-head"]


@pytest.mark.parametrize("stage", sorted(STAGE_NAMES))
def test_a_starter_of_one_stage_alone_is_sound(stage: str) -> None:
    assert examine_draft(data_of(starter_plan([stage]))).faults == ()


@given(SEEDS, st.sampled_from(sorted(draft.MENDABLE)), st.sampled_from(["x y", -1, True, []]))
def test_a_slip_in_a_field_is_kept_to_be_put_right(seed: int, field: str, value: Any) -> None:
    data = made_up(seed)
    path = next((p for p in paths_of(data) if p[-1] == field), None)
    if path is None:
        return
    wrong = draft.with_value(data, path, value)
    found = examine_draft(wrong).faults
    try:
        assert draft.editable_data(text_of(wrong)) == json.loads(text_of(wrong)) or not found
    except InputError:
        # Only what is wrong in a place that no field stands for is refused.
        assert any(f.path[-1] not in draft.MENDABLE for f in found)


def paths_of(data: Any, at: tuple[str | int, ...] = ()) -> list[tuple[str | int, ...]]:
    """Every field of some data."""
    inside = data.items() if isinstance(data, dict) else enumerate(data)
    found = []
    for key, value in inside:
        found.append((*at, key))
        if isinstance(value, dict | list):
            found += paths_of(value, (*at, key))
    return found


def test_a_stage_that_moves_takes_its_entries_along_in_the_file_too() -> None:
    data = unfinished(["a", "b"], ["a", "b", "a"])
    for k, by in ((0, 1), (1, -1)):
        moved, at = arranging.move_stage(data, k, by)
        assert [s["stage_id"] for s in moved["stages"]] == ["b", "a"] and at == k + by
        assert [e["entry_id"] for e in moved["entries"]] == ["e1", "e0", "e2"]
    for k, by in ((0, -1), (1, 1), (0, 0)):
        assert arranging.move_stage(data, k, by) == (data, k)
        assert arranging.move_stage(data, k, by)[0] is data
