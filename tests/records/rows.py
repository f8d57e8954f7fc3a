"""Made-up rows, as the review keeps them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from typing import Any

from tracker.records.rows import SessionRow, SetRow

START = date(2026, 3, 2)


def set_row(figures: dict[str, float | None] | None = None, **changes: Any) -> SetRow:
    values: dict[str, Any] = {
        "exercise": "turns-on-target",
        "entry_id": "turns",
        "form": "",
        "figures": {"measured": 1.0, **(figures or {})},
        "asked": {},
        "flags": {},
        "events": {},
    }
    return SetRow(**{**values, **changes})


def row(day: int = 0, hour: int = 9, **changes: Any) -> SessionRow:
    """A session so many days after the start, finished without anything to remark."""
    when = START + timedelta(days=day)
    values: dict[str, Any] = {
        "place": f"{when}-{hour}/summary.json",
        "session_id": f"{when}-{hour}",
        "person": "P-1",
        "plan_id": "plan-7",
        "started_at": f"{when}T{hour:02d}:00:00+01:00",
        "duration_s": 300.0,
        "ended": "finished",
        "put_first": (),
        "before": 2.0,
        "after": 2.0,
        "settled_minutes": 1.0,
        "not_settled": False,
        "since_last": {},
        "weekly": {},
        "flags": {},
        "sets": (set_row(),),
    }
    return SessionRow(**{**values, **changes})


def rows_with(figure: str, values: Sequence[float | None], **changes: Any) -> list[SessionRow]:
    """A session a day with one figure in its one set."""
    return [row(k, sets=(set_row({figure: value}, **changes),)) for k, value in enumerate(values)]
