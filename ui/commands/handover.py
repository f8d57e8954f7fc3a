"""``turnpost handover``: a patient's sessions in one file for the clinic."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from tracker.handover.sending import Offer
    from tracker.plan.model import Plan


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "handover",
        help="put sessions into one file for the clinic",
        description="Puts the sessions that were not handed over yet into one file, encrypted to "
        "the keys of the clinic that the plan names. It holds what was measured and answered, "
        "never pictures, and never the shape of the face. Send it by e-mail or bring it along.",
    )
    parser.add_argument("--to", type=Path, required=True, metavar="F", help="the file")
    parser.add_argument(
        "--plan", type=Path, metavar="PLAN", help="the plan (default: the one opened last)"
    )
    which = parser.add_mutually_exclusive_group()
    which.add_argument("--all", action="store_true", help="all sessions, not the new ones alone")
    which.add_argument(
        "--session", action="append", default=[], metavar="ID", help="this session (repeatable)"
    )
    parser.add_argument(
        "--other-plans",
        action="store_true",
        help="those under other plans of the same pseudonym, too, although this clinic has got "
        "nothing of those plans yet",
    )
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Write the file."""
    import sys

    from tracker.errors import InputError
    from tracker.handover.sending import hand_over_all, offer_of, session_of, way_of
    from tracker.plan.files import load_plan
    from ui.cli import program_version
    from ui.plan_in_use import plan_in_use

    path = args.plan or plan_in_use()
    if path is None:
        raise InputError("no plan was opened on this computer yet; name one with --plan")
    plan = load_plan(path)
    way = way_of(plan)
    _must_be_the_therapists(plan)
    offer = offer_of(plan, foreign=args.other_plans)
    for line in _left_out(offer):
        print(line, file=sys.stderr)
    chosen = offer.all if args.all else offer.new
    if args.session:
        # A folder that was renamed by hand may have the ID of another session for its name.
        by_name = {f.name: f for f in offer.all} | {session_of(f): f for f in offer.all}
        lacks = [s for s in args.session if s not in by_name]
        if lacks:
            raise InputError(f"there is no session {lacks[0]!r} with this plan's person")
        chosen = tuple(dict.fromkeys(by_name[s] for s in args.session))
    if not chosen:
        more = f"; all {len(offer.all)} went out before (--all)" if offer.all else ""
        raise InputError(f"there is no new session to hand over{more}")
    for done in hand_over_all(plan, chosen, args.to, version=program_version()):
        print(f"{done.path}: {_count(len(done.sessions))}, {_how(way.plain)}")
        for name in done.without_trace:
            print(f"{name}: without its samples, which are too large or can't be read")
    return 0


def _must_be_the_therapists(plan: Plan) -> None:
    """Refuse a plan whose words differed; remind of those that nobody has compared."""
    import sys

    from tracker.errors import InputError
    from tracker.session.files import data_folder
    from ui.plan_check import PlanCheck
    from ui.settings import Settings

    check = PlanCheck(Settings(data_folder() / "window.ini"))
    if check.is_refused(plan):
        raise InputError(
            "the words of this plan were other than the therapist's: nothing is handed over with "
            "it; ask for the plan again"
        )
    if not check.is_checked(plan):
        print(
            "the words of this plan were not compared with the therapist's yet ('turnpost plan "
            "words'): whoever made it may get the file",
            file=sys.stderr,
        )


def _left_out(offer: Offer) -> list[str]:
    """What is there and does not go, a line each."""
    lines = [f"left out: {why}" for why in offer.unread]
    for plan_id, count in offer.foreign:
        lines.append(
            f"left out: {_count(count)} of the plan {plan_id or '(none)'}, of which this clinic "
            "has got nothing yet; if they are for it, add --other-plans"
        )
    if offer.unsent:
        lines.append(f"left out: {_count(offer.unsent)} of another pseudonym or of none, not sent")
    if offer.broken_off:
        lines.append(
            f"left out: {_count(offer.broken_off)} that broke off; save them in the window first"
        )
    if offer.elsewhere:
        lines.append(f"left out: {_count(offer.elsewhere)} saved in another folder; bring it along")
    return lines


def _count(number: int) -> str:
    return "1 session" if number == 1 else f"{number} sessions"


def _how(plain: bool) -> str:
    if plain:
        return "NOT encrypted, as the clinic's plan says: anybody who gets it can read it"
    return "encrypted: only the clinic can read it"
