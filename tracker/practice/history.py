"""Summaries of earlier sessions with a plan."""

from __future__ import annotations

from pathlib import Path

from tracker.errors import InputError
from tracker.plan.model import Plan
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary import Summary, load_summary


def load_history(folder: Path, plan: Plan) -> tuple[list[Summary], list[str]]:
    """Earlier sessions with a plan and its person, oldest first, and what could not be read.

    Parameters
    ----------
    folder
        Holds one folder a session; it need not be there.
    """
    found, unread = [], []
    for path in sorted(folder.glob(f"*/{SUMMARY_NAME}")):
        try:
            summary = load_summary(path)
        except InputError as error:
            unread.append(str(error))
            continue
        if summary.plan_id == plan.plan_id and summary.person == plan.person:
            found.append(summary)
    return sorted(found, key=lambda s: s.started_at or ""), unread
