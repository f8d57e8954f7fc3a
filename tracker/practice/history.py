"""Summaries of earlier sessions of a plan's person."""

from __future__ import annotations

from pathlib import Path

from tracker.errors import InputError
from tracker.plan.model import Plan
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import Summary, load_summary


def load_history(folder: Path, plan: Plan) -> tuple[list[Summary], list[str]]:
    """A plan's person's earlier sessions, oldest first, and what could not be read.

    Parameters
    ----------
    folder
        Holds one folder a session; it need not be there.
    plan
        Whose person is meant: with other plans too, as what is asked once a week goes on
        over a change of plan. Of a plan that names nobody only its own sessions.
    """
    found, unread = [], []
    for path in sorted(folder.glob(f"*/{SUMMARY_NAME}")):
        try:
            summary = load_summary(path)
        except InputError as error:
            unread.append(str(error))
            continue
        own = plan.person is not None or summary.plan_id == plan.plan_id
        if own and summary.person == plan.person:
            found.append(summary)
    return sorted(found, key=lambda s: s.started_at or ""), unread
