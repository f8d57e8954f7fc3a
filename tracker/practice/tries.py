"""The half minute in which the program is tried out: no practice, but what it tells stays."""

from __future__ import annotations

from collections.abc import Collection

from tracker.plan.starter import TRY_ID


def is_quiet_try(plan_id: str | None, ended: str | None, put_first: Collection[object]) -> bool:
    """Whether it is a try in which nothing happened that the therapist should read.

    Parameters
    ----------
    plan_id, ended
        As in the summary.
    put_first
        What the safety questions put first, of all times they were asked.
    """
    return plan_id == TRY_ID and ended in ("finished", "stopped") and not put_first
