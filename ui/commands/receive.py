"""``turnpost receive``: what a patient handed over, into the clinic's folder."""

from __future__ import annotations

import argparse
from pathlib import Path


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "receive",
        help="take in what a patient handed over",
        description="Puts the sessions of a file into a folder that 'turnpost review' reads. All "
        "of it is checked first; a file that can't be used changes nothing, nor does one that "
        "was taken in before. The passphrase of the clinic's key is asked for, or read from "
        "standard input.",
    )
    parser.add_argument("file", type=Path, metavar="FILE", help="what was handed over")
    parser.add_argument(
        "--into", type=Path, required=True, metavar="FOLDER", help="the clinic's folder"
    )
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Take it in."""
    from tracker.handover.keys import open_keys
    from tracker.handover.receive import needs_key, receive
    from ui.commands.passphrase import ask_passphrase

    identities: list[str] = []
    if needs_key(args.file):
        identities = open_keys(ask_passphrase("Passphrase of the clinic's key"))
    got = receive(args.file, args.into, identities)
    who = got.person or "no pseudonym"
    if got.new:
        print(f"{who}: {len(got.new)} new, in {got.folder}")
    else:
        print(f"{who}: nothing new, all of it was here before")
    if got.other:
        names = ", ".join(got.other)
        print(f"left as it was, although the file has another version: {names}")
    if not got.encrypted:
        print("the file was not encrypted")
    return 0
