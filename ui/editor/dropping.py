"""What it means to drop a line of the outline between two others."""

from __future__ import annotations

from collections.abc import Sequence

from tracker.plan import arranging, draft
from ui.editor.outline import Line
from ui.editor.rows import Item


def dropped(
    data: draft.Data, lines: Sequence[Line], item: Item, gap: int
) -> tuple[draft.Data, Item] | None:
    """The plan with an entry or a stage dropped before the line of a number.

    An entry goes into the stage that it is dropped in; a stage takes its entries along, and
    goes behind the stage in whose midst it is dropped.

    Parameters
    ----------
    lines
        The outline of the plan.
    gap
        From 0, above all lines, to their number, below them.

    Returns
    -------
    data, item
        And what has been moved, as it is called now; the same data where it stands there
        already. None where it can't be dropped there.
    """
    if gap < len(lines) and lines[gap].item[0] in ("plan", "safety", "symptoms"):
        return None
    kind, k = item
    above = [line.item for line in lines[:gap]]
    if kind == "stage":
        before = sum(what == "stage" for what, _ in above)
        by = (before if before <= k else before - 1) - k
        made, at = arranging.move_stage(data, k, by)
        return made, ("stage", at)
    if kind != "entry":
        return None
    stages = {n: s for s, n in arranging.entries_in_order(data)}
    last, n = next(i for i in reversed(above) if i != item)
    if last == "entry":
        stage, after = stages[n], n
        if stage is None and stages[k] is not None:
            # Among entries that have no stage yet none is put that has one.
            return None
    else:
        first = 0 if data.get("stages") else None
        stage, after = (n if last == "stage" else first), None
    made, at = arranging.place_entry(data, k, stage, after)
    return made, ("entry", at)
