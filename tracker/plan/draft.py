"""Editing a plan: each step makes new data from old, so that every step can be undone.

A plan that is being written is seldom whole: a list is still empty, a number half typed.
So what is edited is the plan's data as it stands in the file (``Data``), not the model;
:func:`examine_draft` says what is still wrong with it, in the words of the reading. Data
is never changed in place. What was left to the catalogue or to a default stays left out.
"""

from __future__ import annotations

import json
import uuid
from dataclasses import dataclass
from typing import Any, Final

from pydantic import ValidationError

from tracker.exercises.catalogue import CATALOGUE, no_such_exercise
from tracker.plan.files import examine, format_plan, parse_data, refusal
from tracker.plan.findings import Finding
from tracker.plan.lines import Path
from tracker.plan.model import ClearanceItem, Entry, Part, Plan, Rung, Stage
from tracker.plan.rules import remarks
from tracker.plan.starter import starter_plan

Data = dict[str, Any]


class Unset:
    """In place of a value: the field is left out."""

    def __repr__(self) -> str:
        return "UNSET"

    def __deepcopy__(self, _memo: object) -> Unset:
        return self


UNSET: Final = Unset()


@dataclass(frozen=True, slots=True)
class Draft:
    """What a draft comes to.

    Attributes
    ----------
    plan
        The plan, None where something is wrong with it.
    faults
        What keeps it from being a plan, with the paths of the fields.
    remarks
        What its therapist should know; only where there are no faults.
    """

    plan: Plan | None
    faults: tuple[Finding, ...]
    remarks: tuple[Finding, ...]


def examine_draft(data: Data) -> Draft:
    """What is wrong with a draft; the same rules and words as for a file."""
    plan, found = examine(text_of(data))
    if plan is None or found:
        return Draft(None, tuple(found), ())
    return Draft(plan, (), tuple(remarks(plan)))


#: Fields in which anything may stand while it is written: an editor can show it and have
#: it put right. What is wrong elsewhere has to be put right in the file itself.
MENDABLE = frozenset(
    [
        "plan_id",
        "person",
        "starts_on",
        "affected_side",
        "kind_of_loss",
        "age_group",
        "sex",
        "words",
        "bouts_a_day",
        "days_a_week",
        "rest_s",
        "seat_distance_mm",
        "yaw",
        "pitch",
        "emergency_number",
        "score_most",
        "settle_minutes_most",
        "high_start",
        "baseline_rise_most",
        "item",
        "stage_id",
        "name",
        "entry_id",
        "stage",
        "repetitions",
        "seconds",
        "tempo_bpm",
        "amplitude_deg",
        "from_week",
        "note",
        "distance_mm",
        "spacing_mm",
        "above_mm",
        "right_mm",
        "condition",
        "after",
        "sessions",
        "rise_most",
        "on_target_least",
        "measured_least",
        "met_on",
    ]
)


def editable_data(text: str, name: str = "plan") -> Data:
    """Data of a plan's text to go on with, also where it is not finished or has faults.

    Raises
    ------
    InputError
        If it is no plan, or something is wrong that no field of an editor stands for.
    """
    data, index = parse_data(text, name)
    plan, found = examine(text, index)
    if plan is not None and not found:
        return data_of(plan)
    if plan is not None:
        stuck = [f for f in found if f.path[-1] == "exercise"]
    else:
        stuck = [f for f in found if not _can_be_mended(f.path, data)]
        # Where the fields are not all right yet, nobody has looked for the exercises.
        found += (lost := _unknown_exercises(data))
        stuck += lost
    if stuck:
        raise refusal(name, index, found)
    return data


#: Lists that an editor can take too many into; what one of each has to be.
_LISTS: dict[str, type[Part]] = {
    "entries": Entry,
    "stages": Stage,
    "clearance": ClearanceItem,
    "ladder": Rung,
}


def _can_be_mended(path: Path, data: Data) -> bool:
    part = _LISTS.get(str(path[-1])) if path else None
    if part is not None:
        found = value_at(data, path)
        # One that is empty or too long; of the latter nobody has looked at the parts yet.
        return isinstance(found, list) and all(_part_can_be_mended(part, v) for v in found)
    # A pair's own places, and the branches of a choice, stand behind its field.
    return any(p in MENDABLE for p in path)


def _part_can_be_mended(part: type[Part], value: Any) -> bool:
    try:
        part.model_validate_json(json.dumps(value), strict=True)
    except ValidationError as error:
        return all(_can_be_mended(e["loc"], value) for e in error.errors(include_url=False))
    return True


def _unknown_exercises(data: Data) -> list[Finding]:
    entries = data.get("entries")
    return [
        Finding.of(("entries", k, "exercise"), "other", text=no_such_exercise(entry["exercise"]))
        for k, entry in enumerate(entries if isinstance(entries, list) else [])
        if isinstance(entry, dict)
        and isinstance(entry.get("exercise"), str)
        and entry["exercise"] not in CATALOGUE
    ]


def text_of(data: Data) -> str:
    """The text of the file."""
    return json.dumps(data, indent=2, ensure_ascii=False) + "\n"


def data_of(plan: Plan) -> Data:
    """Data of a plan."""
    found: Data = json.loads(format_plan(plan))
    return found


def empty_data() -> Data:
    """A plan without exercises: the usual days, rests and rules, and the checklist."""
    data = data_of(starter_plan()) | {"stages": [], "entries": []}
    return data | {"plan_id": f"plan-{uuid.uuid4().hex[:8]}"}


# --- single values ---


def value_at(data: Data, path: Path) -> Any:
    """Value of a field; ``UNSET`` where it is left out."""
    at: Any = data
    for part in path:
        try:
            at = at[part]
        except (KeyError, IndexError, TypeError):
            return UNSET
    return at


def with_value(data: Data, path: Path, value: Any) -> Data:
    """The same with another value; ``UNSET`` leaves the field out.

    What a field stands in is made where it is missing. A part that is left with no field
    at all goes too, if it isn't one of a list.
    """
    made = _with(data, path, value)
    return data if made == data and _same_kinds(made, data) else made


def _with(at: Any, path: Path, value: Any) -> Any:
    if not path:
        return value
    first, rest = path[0], path[1:]
    if isinstance(first, int):
        items = list(at)
        items[first] = _with(items[first], rest, value)
        return items
    fields = dict(at) if isinstance(at, dict) else {}
    inner = value if not rest else _with(fields.get(first, {}), rest, value)
    if inner is UNSET or (inner == {} and rest):
        fields.pop(first, None)
    else:
        fields[first] = inner
    return fields


def _same_kinds(one: Data, other: Data) -> bool:
    """Equality takes 1 for 1.0 and for true, which a file doesn't."""
    return json.dumps(one) == json.dumps(other)


# --- lists ---


def with_inserted(data: Data, path: Path, index: int, value: Any) -> Data:
    """The same with one more in a list."""
    found = value_at(data, path)
    items = list(found) if isinstance(found, list) else []
    items.insert(index, value)
    return with_value(data, path, items)


def without(data: Data, path: Path) -> Data:
    """The same without one of a list."""
    *where, index = path
    items = list(value_at(data, tuple(where)))
    del items[int(index)]
    return with_value(data, tuple(where), items)


def with_moved(data: Data, path: Path, by: int) -> Data:
    """The same with one of a list moved up (below 0) or down; as it was where it can't be."""
    *where, index = path
    items = list(value_at(data, tuple(where)))
    to = int(index) + by
    if not 0 <= to < len(items):
        return data
    items.insert(to, items.pop(int(index)))
    return with_value(data, tuple(where), items)
