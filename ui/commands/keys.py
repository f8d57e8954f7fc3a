"""``turnpost keys``: the clinic's keys."""

from __future__ import annotations

import argparse
from pathlib import Path


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "keys",
        help="the clinic's keys",
        description="Makes, lists, copies and brings in the clinic's keys. A key opens what "
        "patients hand over. It is kept behind a passphrase, which nobody can recover: keep it, "
        "and a backup, in a safe place. A passphrase is asked for, or read from standard input.",
    )
    parts = parser.add_subparsers(dest="part", metavar="PART", required=True)
    new = parts.add_parser("new", help="make a key", description="Makes a key.")
    new.set_defaults(run=run_new)
    show = parts.add_parser(
        "list", help="the keys on this computer", description="Prints names and public keys."
    )
    show.set_defaults(run=run_list)
    backup = parts.add_parser(
        "backup",
        help="copy a key to a safe place",
        description="Copies a key, still behind its passphrase.",
    )
    backup.add_argument("--to", type=Path, required=True, metavar="F", help="the copy")
    backup.add_argument("--key", metavar="NAME", help="which key, if there are several")
    backup.set_defaults(run=run_backup)
    bring = parts.add_parser(
        "import",
        help="bring in a key from a backup",
        description="Takes a key from a backup, made on this or another computer of the clinic.",
    )
    bring.add_argument("backup", type=Path, metavar="F", help="the backup")
    bring.set_defaults(run=run_import)


def run_new(args: argparse.Namespace) -> int:
    """Make a key."""
    from tracker.handover.keys import check_passphrase, new_key
    from ui.commands.passphrase import ask_passphrase

    del args
    passphrase = ask_passphrase("A passphrase for the new key", again=True)
    check_passphrase(passphrase)
    key = new_key(passphrase)
    print(f"{key.name}: made, in {key.path}")
    print(f"public key: {key.public}")
    print(f"Now copy it to a safe place: turnpost keys backup --key {key.name} --to FILE")
    return 0


def run_list(args: argparse.Namespace) -> int:
    """Print the keys."""
    from tracker.handover.keys import clinic_keys

    del args
    keys = clinic_keys()
    for key in keys:
        print(f"{key.name}  {key.public}")
    if not keys:
        print("there is no key on this computer; 'turnpost keys new' makes one")
    return 0


def run_backup(args: argparse.Namespace) -> int:
    """Copy a key."""
    from tracker.errors import InputError
    from tracker.handover.keys import back_up, clinic_keys

    keys = {k.name: k for k in clinic_keys()}
    name = args.key or (next(iter(keys)) if len(keys) == 1 else None)
    if name not in keys:
        has = ", ".join(keys) or "none"
        raise InputError(f"name the key with --key; this computer has: {has}")
    back_up(keys[name], args.to)
    print(f"{args.to}: a copy of {name}, behind the same passphrase")
    return 0


def run_import(args: argparse.Namespace) -> int:
    """Bring in a key."""
    from tracker.handover.keys import bring_in
    from ui.commands.passphrase import ask_passphrase

    key = bring_in(args.backup, ask_passphrase("Its passphrase"))
    print(f"{key.name}: on this computer now")
    return 0
