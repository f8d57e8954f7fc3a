"""A copy of the plan opened last, in the user's data: there is none other once a stick is gone.

One that a newer version of the program has kept stays as it is: only that can read it.
"""

from __future__ import annotations

import contextlib
from pathlib import Path

from tracker.errors import TurnpostError
from tracker.plan.files import NewerPlanError, load_plan, save_plan
from tracker.plan.model import Plan
from tracker.session.files import data_folder, make_private_folder

NAME, BEFORE = "plan-in-use.json", "plan-before.json"


def plan_in_use() -> Path | None:
    """The copy, if there is one."""
    path = data_folder() / NAME
    return path if path.is_file() else None


def keep_plan_in_use(plan: Plan, *, new: bool = False) -> None:
    """Keep a copy of a plan; a disk that refuses it stops nobody from practising.

    The one before a new plan stays beside it, until it is known whose the new one is.
    """
    with contextlib.suppress(TurnpostError, OSError):
        if _is_newer(data_folder() / NAME):
            return
        folder = make_private_folder(data_folder())
        if new and not (folder / BEFORE).exists() and _holds_other(folder / NAME, plan):
            (folder / NAME).replace(folder / BEFORE)
        save_plan(folder / NAME, plan)


def _holds_other(copy: Path, plan: Plan) -> bool:
    """Whether a copy is there, can be used, and is not this plan's."""
    with contextlib.suppress(TurnpostError):
        return load_plan(copy) != plan
    return False


def _is_newer(copy: Path) -> bool:
    try:
        load_plan(copy)
    except NewerPlanError:
        return True
    except TurnpostError:
        pass
    return False


def forget_plan_before() -> None:
    """The plan at hand is the therapist's: the one before is not needed any more."""
    with contextlib.suppress(OSError):
        if not _is_newer(data_folder() / BEFORE):
            (data_folder() / BEFORE).unlink(missing_ok=True)


def forget_plan_in_use() -> None:
    """Take the copy away: the plan is not to be used. The one before takes its place."""
    folder = data_folder()
    if _is_newer(folder / NAME):
        return
    with contextlib.suppress(OSError):
        (folder / NAME).unlink(missing_ok=True)
        if (folder / BEFORE).exists():
            (folder / BEFORE).replace(folder / NAME)
