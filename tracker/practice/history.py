"""Summaries of earlier sessions of a plan's person, and what all sessions say of today."""

from __future__ import annotations

import contextlib
from datetime import date, datetime, time, timedelta
from pathlib import Path

from tracker.errors import InputError
from tracker.plan.model import Plan
from tracker.plan.starter import TRY_ID
from tracker.plan.unlocking import had_to_end
from tracker.practice.day import Told, told_by, told_in
from tracker.session.journal import read_journal
from tracker.session.recovery import folders_in
from tracker.session.saving import JOURNAL_NAME, MOVED_NAME, SUMMARY_NAME
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


#: Some systems keep a file's time without its time zone.
_SPARE = timedelta(days=1)


def load_today(folder: Path, today: date) -> list[Told]:
    """What the sessions in this computer's own folder say of a day, whoever's they are.

    One that was not saved, or that went to another place as the disk was full, is read from the
    journal that is here. What can't be read says nothing.

    Parameters
    ----------
    folder
        Holds one folder a session; it need not be there.
    today
        The day; what was written last before it is not opened.
    """
    since_s = (datetime.combine(today, time.min) - _SPARE).timestamp()
    found = []
    for session in folders_in(folder):
        # Whatever a damaged one does, the others count; and what was done before is read with it.
        with contextlib.suppress(Exception):
            told = _told_in(session, since_s)
            if told is not None and told.day == today:
                found.append(told)
    return found


def _told_in(session: Path, since_s: float) -> Told | None:
    """What a session's folder says; None where it is older, or holds none."""
    for name in (SUMMARY_NAME, JOURNAL_NAME, MOVED_NAME):
        path = session / name
        if not path.is_file():
            continue
        if path.stat().st_mtime < since_s:
            return None
        if name == SUMMARY_NAME:
            # Where it is damaged the journal beside it says the same.
            with contextlib.suppress(InputError):
                return told_by(load_summary(path))
            continue
        # A window that is writing it meanwhile does no harm: what is there counts.
        return told_in(read_journal(path, without="sample"))
    return None
