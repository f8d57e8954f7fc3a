"""A copy of the plan opened last, in the user's data: there is none other once a stick is gone."""

from __future__ import annotations

import contextlib
from pathlib import Path

from tracker.errors import TurnpostError
from tracker.plan.files import save_plan
from tracker.plan.model import Plan
from tracker.session.files import data_folder, make_private_folder

NAME = "plan-in-use.json"


def plan_in_use() -> Path | None:
    """The copy, if there is one."""
    path = data_folder() / NAME
    return path if path.is_file() else None


def keep_plan_in_use(plan: Plan) -> None:
    """Keep a copy of a plan; a disk that refuses it stops nobody from practising."""
    with contextlib.suppress(TurnpostError):
        save_plan(make_private_folder(data_folder()) / NAME, plan)


def forget_plan_in_use() -> None:
    """Take the copy away: the plan is not to be used."""
    with contextlib.suppress(OSError):
        (data_folder() / NAME).unlink(missing_ok=True)
