"""``turnpost handover``: a patient's sessions in one file for the clinic."""

from __future__ import annotations

import argparse
from pathlib import Path


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
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Write the file."""
    import sys

    from tracker.errors import InputError
    from tracker.handover.sending import hand_over, offer_of, way_of
    from tracker.plan.files import load_plan
    from ui.cli import program_version
    from ui.plan_in_use import plan_in_use

    path = args.plan or plan_in_use()
    if path is None:
        raise InputError("no plan was opened on this computer yet; name one with --plan")
    plan = load_plan(path)
    way = way_of(plan)
    offer = offer_of(plan)
    for why in offer.unread:
        print(f"left out: {why}", file=sys.stderr)
    chosen = offer.all if args.all else offer.new
    if args.session:
        by_name = {f.name: f for f in offer.all}
        lacks = [s for s in args.session if s not in by_name]
        if lacks:
            raise InputError(f"there is no session {lacks[0]!r} with this plan's person")
        chosen = tuple(by_name[s] for s in dict.fromkeys(args.session))
    if not chosen:
        more = f"; all {len(offer.all)} went out before (--all)" if offer.all else ""
        raise InputError(f"there is no new session to hand over{more}")
    done = hand_over(plan, chosen, args.to, version=program_version())
    print(f"{args.to}: {_count(len(done.sessions))}, {_how(way.plain)}")
    if done.left:
        print(f"{_count(done.left)} did not fit: run it again for a further file")
    for name in done.without_trace:
        print(f"{name}: without its samples, which are too large")
    return 0


def _count(number: int) -> str:
    return "1 session" if number == 1 else f"{number} sessions"


def _how(plain: bool) -> str:
    if plain:
        return "NOT encrypted, as the clinic's plan says: anybody who gets it can read it"
    return "encrypted: only the clinic can read it"
