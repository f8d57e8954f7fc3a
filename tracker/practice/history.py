"""Summaries of earlier sessions of a plan's person."""

from __future__ import annotations

from pathlib import Path

from tracker.errors import InputError
from tracker.plan.model import Plan
from tracker.plan.starter import TRY_ID
from tracker.plan.unlocking import had_to_end
from tracker.session.saving import SUMMARY_NAME
from tracker.session.summary_file import Summary, load_summary


def load_history(
    folder: Path, plan: Plan, *, own_computer: bool = False
) -> tuple[list[Summary], list[str]]:
    """A plan's person's earlier sessions, oldest first, and what could not be read.

    Parameters
    ----------
    folder
        Holds one folder a session; it need not be there.
    plan
        Whose person is meant: with other plans too, as what is asked once a week goes on
        over a change of plan. Of a plan that names nobody only its own sessions.
    own_computer
        Whether the folder is the one that this computer's own sessions go into. Only there
        what names nobody counts; in the clinic's folders it may be anybody's.

    Notes
    -----
    Practice outside a plan names nobody, nor does a try of the program where its plan has no
    name. What had to be ended of these may have been theirs, so it holds back what is new
    (``practice.today``): to be wrong in this only makes them wait. It must say nothing else of
    them, least of all that a fall was told already: ``practice.week`` passes it over.
    """
    found, unread = [], []
    for path in sorted(folder.glob(f"*/{SUMMARY_NAME}")):
        try:
            summary = load_summary(path)
        except InputError as error:
            unread.append(str(error))
            continue
        own = plan.person is not None or summary.plan_id == plan.plan_id
        alone = summary.plan_id in (None, TRY_ID) and summary.person is None
        ended_alone = own_computer and alone and had_to_end(plan, None, summary.ended)
        if ended_alone or (own and summary.person == plan.person):
            found.append(summary)
    # A folder that was copied by hand is no second session in a row.
    once = {s.session_id or id(s): s for s in found}
    return sorted(once.values(), key=lambda s: s.started_at or ""), unread
