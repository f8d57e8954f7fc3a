"""Steps on the entries and stages of a draft: adding, copying, moving, removing, renaming.

As in :mod:`tracker.plan.draft`, each makes new data from old.
"""

from __future__ import annotations

import copy
import uuid
from collections.abc import Sequence
from typing import Any

from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.draft import UNSET, Data, value_at, with_inserted, with_moved, with_value, without
from tracker.plan.lines import Path

# --- the person ---


def for_person(data: Data, name: Any) -> Data:
    """The same plan under another pseudonym.

    What was found of one person holds for nobody else: where there was another pseudonym,
    the ticks of the checklist and the days on which conditions were found met go, and the
    plan gets an ID of its own, so that no session of the other one counts for it.
    """
    made = with_value(data, ("person",), name)
    old = data.get("person")
    if made is data or not isinstance(old, str) or not old:
        return made
    made = {**made, "plan_id": f"plan-{uuid.uuid4().hex[:8]}"}
    for part in ("stages", "entries"):
        if isinstance(made.get(part), list):
            made[part] = [_not_met(item) for item in made[part]]
    if isinstance(made.get("clearance"), list):
        made["clearance"] = [c | {"cleared": False} for c in made["clearance"]]
    return made


def _not_met(item: Data) -> Data:
    unlock = item.get("unlock_after")
    if not isinstance(unlock, dict) or unlock.get("met_on") is None:
        return item
    return item | {"unlock_after": {k: v for k, v in unlock.items() if k != "met_on"}}


# --- entries ---


def entries_in_order(data: Data) -> list[tuple[int | None, int]]:
    """Entries as they are practised: number of the stage (None for none), of the entry.

    Each is there once: where several stages have one ID, or none, it is in the first of them.
    """
    stages = _stage_ids(data)
    inside: list[list[int]] = [[] for _ in stages]
    loose: list[int] = []
    for k, entry in enumerate(data.get("entries", [])):
        own = entry.get("stage")
        (inside[stages.index(own)] if own in stages else loose).append(k)
    found: list[tuple[int | None, int]] = [(s, k) for s, ks in enumerate(inside) for k in ks]
    return found + [(None, k) for k in loose]


def add_entry(data: Data, exercise_id: str, after: int | None = None) -> tuple[Data, int]:
    """One more entry with the usual dose, behind another one or at the end.

    Dose, tempo and range are written out; form and support stay as usual, so that the
    support follows what is chosen.

    Returns
    -------
    data, index
        And where it is.
    """
    exercise = CATALOGUE[exercise_id]
    entry: Data = {"entry_id": _free_name(data, exercise_id), "exercise": exercise_id}
    entries = data.get("entries", [])
    stages = _stage_ids(data)
    if after is not None and "stage" in entries[after]:
        entry["stage"] = entries[after]["stage"]
    elif stages:
        entry["stage"] = stages[-1]
    if exercise.dose_seconds is not None:
        entry["seconds"] = exercise.dose_seconds
    else:
        entry["repetitions"] = exercise.dose_repetitions
    if exercise.tempo_bpm is not None:
        entry["tempo_bpm"] = exercise.tempo_bpm
    if exercise.amplitude_deg is not None:
        entry["amplitude_deg"] = list(exercise.amplitude_deg)
    index = len(entries) if after is None else after + 1
    return with_inserted(data, ("entries",), index, entry), index


def copy_entry(data: Data, index: int) -> tuple[Data, int]:
    """The same entry once more, behind it, under a name of its own."""
    entry = copy.deepcopy(data["entries"][index])
    entry["entry_id"] = _free_name(data, str(entry.get("entry_id", "entry")))
    return with_inserted(data, ("entries",), index + 1, entry), index + 1


def move_entry(data: Data, index: int, by: int) -> tuple[Data, int]:
    """An entry one place up (-1) or down (1), across the border of a stage too.

    Returns
    -------
    data, index
        And where the entry is now. Where it can't be moved, all is as it was.
    """
    order = entries_in_order(data)
    at = next(n for n, (_, k) in enumerate(order) if k == index)
    stages = _stage_ids(data)
    stage = order[at][0]
    entries = [data["entries"][k] for _, k in order]
    to = at + by
    neighbour = order[to][0] if 0 <= to < len(order) else UNSET
    if neighbour == stage:
        entries.insert(to, entries.pop(at))
    else:
        # At the border of its stage it goes into the next one, which may be empty.
        target = len(stages) - 1 if stage is None else stage + by
        if not 0 <= target < len(stages) or (stage is None and by > 0):
            return data, index
        entries[at] = _in_stage(entries[at], stages[target])
        to = at
    return with_value(data, ("entries",), entries), to


def place_entry(
    data: Data, index: int, stage: int | None, after: int | None = None
) -> tuple[Data, int]:
    """An entry into a stage, behind another entry of it or at its beginning.

    Parameters
    ----------
    stage
        Number of the stage; None in a plan without stages.
    after
        Number of the entry that comes before it; None for the stage's first place.

    Returns
    -------
    data, index
        And where the entry is now. Where it stands there already, all is as it was.
    """
    order = entries_in_order(data)
    at = next(n for n, (_, k) in enumerate(order) if k == index)
    rest = order[:at] + order[at + 1 :]
    if after is not None:
        to = next(n for n, (_, k) in enumerate(rest) if k == after) + 1
    else:
        to = sum(s is not None and stage is not None and s < stage for s, _ in rest)
    if to == at and order[at][0] == stage:
        return data, index
    entries = [data["entries"][k] for _, k in rest]
    entry = data["entries"][index]
    entries.insert(to, entry if stage is None else _in_stage(entry, _stage_ids(data)[stage]))
    return with_value(data, ("entries",), entries), to


def _in_stage(entry: Data, stage_id: Any) -> Data:
    """An entry in a stage; in one that has no ID yet it has none either."""
    rest = {k: v for k, v in entry.items() if k != "stage"}
    return rest if stage_id is None else entry | {"stage": stage_id}


def remove_entry(data: Data, index: int) -> Data:
    """The same without an entry; a condition that rests on it is left, and is then a fault."""
    return without(data, ("entries", index))


# --- stages ---


def add_stage(data: Data, name: str) -> tuple[Data, int]:
    """One more stage at the end; the first one takes the entries in that there are."""
    stages = _stage_ids(data)
    stage = {"stage_id": _free_name(data, f"stage-{len(stages) + 1}"), "name": name}
    data = with_inserted(data, ("stages",), len(stages), stage)
    if not stages:
        inside = [e | {"stage": stage["stage_id"]} for e in data.get("entries", [])]
        data = with_value(data, ("entries",), inside)
    return data, len(stages)


def move_stage(data: Data, index: int, by: int) -> tuple[Data, int]:
    """A stage so many places up (below 0) or down; its entries go with it, in the file too.

    A condition rests on what stands further up, so it is judged as the plan is practised now.

    Returns
    -------
    data, index
        And where the stage is now. Where it can't be moved, all is as it was.
    """
    made = with_moved(data, ("stages", index), by)
    if made is data:
        return data, index
    entries = [made["entries"][k] for _, k in entries_in_order(made)]
    return with_value(made, ("entries",), entries), index + by


def remove_stage(data: Data, index: int) -> Data:
    """The same without a stage; its entries go to the one before it, or after it.

    What the stage waited for, its entries wait for, but for those with a condition of their own.
    """
    stages = _stage_ids(data)
    gone = stages[index]
    rest = stages[:index] + stages[index + 1 :]
    unlock = data["stages"][index].get("unlock_after")
    entries, waiting = [], []
    for k, entry in enumerate(data.get("entries", [])):
        moved = dict(entry)
        if moved.get("stage") == gone:
            if rest:
                moved["stage"] = rest[max(index - 1, 0)]
            else:
                moved.pop("stage", None)
            if moved.get("unlock_after") is None:
                waiting.append(k)
        entries.append(moved)
    made = with_value(without(data, ("stages", index)), ("entries",), entries)
    for k in waiting if isinstance(unlock, dict) else []:
        made = with_value(made, ("entries", k, "unlock_after"), _moved_to(made, k, unlock))
    return made


def _moved_to(data: Data, index: int, unlock: Data) -> Data:
    """A stage's condition for an entry of it.

    Where the entry now stands in the stage that the figures were taken from, the condition
    stays in words, for the therapist to find met.
    """
    after = unlock.get("after")
    if after is None or after in names_before(data, ("entries", index)):
        return copy.deepcopy(unlock)
    return {k: v for k, v in unlock.items() if k in ("condition", "met_on")}


# --- names ---


def rename(data: Data, path: Path, name: Any) -> Data:
    """Another ID for an entry or a stage; what refers to it goes with it.

    Nothing goes with it while the new one, or the old one, is no ID of its own.
    """
    old = value_at(data, path)
    made = with_value(data, path, name)
    names = _names(data)
    if not isinstance(name, str) or not name or name in names or names.count(old) != 1:
        return made
    for part in ("stages", "entries"):
        items = [_referring(item, old, name) for item in made.get(part, [])]
        if part in made:
            made = with_value(made, (part,), items)
    return made


def _referring(item: Data, old: str, new: str) -> Data:
    made = dict(item)
    if made.get("stage") == old:
        made["stage"] = new
    unlock = made.get("unlock_after")
    if isinstance(unlock, dict) and unlock.get("after") == old:
        made["unlock_after"] = unlock | {"after": new}
    return made


def names_before(data: Data, path: Path) -> list[str]:
    """What a condition of an entry or a stage may rest on: what comes before it in the plan."""
    part, index = path[0], int(path[1])
    stages = _stage_ids(data)
    if part == "stages":
        return stages[:index]
    entries = data.get("entries", [])
    own = entries[index].get("stage")
    earlier = stages[: stages.index(own)] if own in stages else []
    return [*earlier, *(str(e.get("entry_id", "")) for e in entries[:index])]


def _stage_ids(data: Data) -> list[Any]:
    return [s.get("stage_id") for s in data.get("stages", [])]


def _names(data: Data) -> list[Any]:
    return [*_stage_ids(data), *(e.get("entry_id") for e in data.get("entries", []))]


def _free_name(data: Data, wanted: str) -> str:
    """An ID that is not taken, from the one that is wanted."""
    taken: Sequence[Any] = _names(data)
    wanted = wanted[:56]
    if wanted not in taken:
        return wanted
    base = wanted.rstrip("0123456789").rstrip("-") or wanted
    number = 2
    while f"{base}-{number}" in taken:
        number += 1
    return f"{base}-{number}"
