"""What the buttons and fields of a form do to the plan's data. No widgets."""

from __future__ import annotations

from datetime import date
from typing import Any

from tracker.plan.arranging import for_person, rename
from tracker.plan.draft import UNSET, Data, value_at, with_inserted, with_value, without
from tracker.plan.lines import Path
from ui.editor.rows import Row


def take_value(data: Data, row: Row, value: Any) -> Data:
    """Take a field's value over."""
    path = row.path
    if row.kind == "member":
        return with_value(data, path, _members(value_at(data, path), row.member, value))
    if path == ("person",):
        return for_person(data, value)
    if path[-1] in ("entry_id", "stage_id"):
        return rename(data, path, value)
    if row.kind == "day" and isinstance(value, str):
        value = value.strip()
    return with_value(data, path, value)


def _members(found: Any, member: str, inside: bool) -> list[str]:
    have = [m for m in found if m != member] if isinstance(found, list) else []
    return [*have, member] if inside else have


def act_on(data: Data, act: str, path: Path, today: date) -> tuple[Data, Path]:
    """Do what a button of a row stands for.

    Returns
    -------
    data, path
        And the field that gets the keys.
    """
    match act:
        case "remove":
            return _remove(data, path[:-1])
        case "add_item":
            k = len(data.get("clearance", []))
            item = {"item": "", "cleared": False}
            return with_inserted(data, path, k, item), (*path, k, "item")
        case "add_rung":
            return _add_rung(data, path)
        case "add_unlock":
            return with_value(data, path, {"condition": ""}), (*path, "condition")
        case "remove_unlock":
            return with_value(data, path, UNSET), path
        case "met" | "today":
            return with_value(data, path, today.isoformat()), path
    raise ValueError(act)


def _remove(data: Data, path: Path) -> tuple[Data, Path]:
    *where, index = path
    return without(data, path), (*where, max(int(index) - 1, 0))


def _add_rung(data: Data, path: Path) -> tuple[Data, Path]:
    """One rung more, a week after the last; what it changes has still to be said."""
    found = value_at(data, path)
    rungs = found if isinstance(found, list) else []
    last = rungs[-1].get("from_week") if rungs else 1
    week = last + 1 if isinstance(last, int) else 2
    k = len(rungs)
    return with_inserted(data, path, k, {"from_week": week}), (*path, k, "from_week")
