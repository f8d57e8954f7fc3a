"""``turnpost stored``: what is stored on this computer, a copy of it, and its deletion."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

    from tracker.stored.delete import Deleted
    from tracker.stored.look import Item, Kind, Stored

#: What a kind is, in the order in which they are listed.
_TOLD = {
    "sessions": "sessions, with what was measured, answered and scored",
    "broken_off": "sessions that broke off and are not saved",
    "received": "sessions of other people, received or made together",
    "faces": "shape and look of a face, from a set-up",
    "plans": "copy of the plan in use, and of the one before",
    "cameras": "what was measured of cameras",
    "handed_over": "which sessions were handed over",
    "settings": "settings",
    "keys": "keys of a clinic, each locked by its passphrase",
    "notes": "a therapist's notes, and what was sent",
    "desk_index": "index of the therapist's desk",
    "remains": "remains of something that broke off",
}

_READERS = {
    "own": "readable by your account alone, and an administrator's",
    "others": "OTHER ACCOUNTS may be able to read it",
    "unknown": "which accounts can read it can't be told here",
}


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "stored",
        help="list, copy and delete what is stored",
        description="Lists all that Turnpost has stored on this computer, and says whose accounts "
        "can read it. The files are not encrypted unless the disk is. A copy is one ordinary zip "
        "file, not encrypted either; one of everything holds the keys of a clinic, too. What is "
        "deleted is gone from its folder for good; a disk "
        "may still hold parts of it for who has special means, and copies that were handed over "
        "or saved elsewhere stay.",
    )
    parser.add_argument("--export", type=Path, metavar="FILE.zip", help="write a copy into a file")
    parser.add_argument(
        "--only",
        choices=("sessions", "faces"),
        help="copy these alone (with --export; default: everything)",
    )
    parser.add_argument(
        "--delete",
        metavar="WHAT",
        help="delete for good: 'sessions', 'faces', 'everything', or one session by its name",
    )
    parser.add_argument("--yes", action="store_true", help="do delete; without it nothing goes")
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """List what there is; copy it; delete it."""
    from tracker.errors import InputError
    from ui.stored import look

    if args.only and args.export is None:
        raise InputError("--only says what a copy holds; name its file with --export")
    if args.yes and not args.delete:
        raise InputError("--yes goes with --delete")
    stored = look()
    wanted = _chosen(stored, args.delete) if args.delete else ()
    if args.export is None and not args.delete:
        _list(stored)
        return 0
    if args.export is not None:
        _export(stored, args.export, args.only or "everything")
    return _delete(args.delete, wanted, sure=args.yes) if args.delete else 0


def _list(stored: Stored) -> None:
    from tracker.stored.look import SESSIONS, Kind

    print(f"{stored.folder}: {_READERS[stored.readers]}; not encrypted unless the disk is")
    if not stored.items:
        print("nothing is stored")
    for kind in Kind:
        items = stored.of(kind)
        if items:
            days = sorted(f"{i.at:%Y-%m-%d}" for i in items)
            span = days[0] if days[0] == days[-1] else f"{days[0]} to {days[-1]}"
            print(f"{len(items):>6}  {_size(items):>10}  {span:<24}  {_TOLD[kind]}")
    for item in stored.of(Kind.faces):
        print(f"face     {item.at:%Y-%m-%d}  {item.worn or '?'}, {_plain(item.camera) or '?'}")
    for item in stored.of(*SESSIONS):
        broken = "  broken off" if item.kind == Kind.broken_off else ""
        name = _plain(item.path.name)
        print(f"session  {item.at:%Y-%m-%d %H:%M}  {_size([item]):>10}  {name}{broken}")
    for path in stored.others:
        print(f"not Turnpost's, and never deleted: {_plain(str(path))}")
    for path in stored.elsewhere:
        print(f"lies in another place, and is never deleted from here: {_plain(str(path))}")


def _chosen(stored: Stored, what: str) -> tuple[Item, ...]:
    """The parts that a word means: a kind of them, or a session's name."""
    from tracker.errors import InputError
    from tracker.stored.look import SESSIONS
    from ui.stored import WHAT

    if what in WHAT:
        return stored.meant(WHAT[what])
    found = tuple(i for i in stored.of(*SESSIONS) if i.path.name == what)
    if not found:
        raise InputError(
            f"{what}: is no session here; name one as 'turnpost stored' lists it, or one of "
            f"{', '.join(WHAT)}"
        )
    return found


def _export(stored: Stored, to: Path, what: str) -> None:
    from tracker.errors import InputError
    from tracker.stored.copy import save_copy
    from tracker.stored.look import Kind
    from ui.stored import WHAT

    if to.exists():
        raise InputError(f"{to}: is there already; name another file")
    kinds: frozenset[Kind] = WHAT[what]
    if Kind.keys in kinds and stored.of(Kind.keys):
        print(
            "the copy will hold the keys of a clinic, each locked by its passphrase: keep it where "
            "nobody else gets at it (--only sessions leaves them out)",
            flush=True,
        )
    copied = save_copy(stored, to, kinds)
    print(f"{to}: {copied.files} files, NOT encrypted: anybody who gets it can read it")
    for path in copied.in_use:
        print(f"left out, it is being recorded now: {_plain(str(path))}")


def _delete(what: str, items: Sequence[Item], *, sure: bool) -> int:
    from tracker.errors import InputError, RunError
    from tracker.session.files import data_folder
    from tracker.session.lock import LOCK_NAME, OnlyCopy
    from ui.stored import delete_for_good, look

    if not items:
        print("there is nothing of it; nothing was deleted")
        return 0
    goes = f"{len(items)} ({_size(items)})"
    if not sure:
        raise InputError(f"{goes} would be deleted for good, and nothing was; add --yes to do it")
    lock = data_folder() / LOCK_NAME
    only = OnlyCopy(lock)
    try:
        if not only.mine:
            raise RunError("Turnpost is open, and writes there; close it first, or delete in it")
        # What came or went since it was looked at counts as it is now.
        stored = look()
        done = delete_for_good(stored, _chosen(stored, what))
    finally:
        only.close()
    if what == "everything":
        lock.unlink(missing_ok=True)
    print(f"deleted for good: {len(done.gone)} ({_size(done.gone)})")
    return _say_left(done)


def _say_left(done: Deleted) -> int:
    for path, why in done.left:
        print(f"could not be deleted: {_plain(str(path))} ({why})")
    return 1 if done.left else 0


def _size(items: Sequence[Item]) -> str:
    total = sum(i.size_bytes for i in items)
    return f"{total / 1e6:.1f} MB" if total >= 1e6 else f"{total / 1e3:.1f} kB"


def _plain(text: str) -> str:
    """A foreign name without what would break the line."""
    return "".join(c if c.isprintable() else "?" for c in text)
