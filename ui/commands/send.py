"""``turnpost send``: sessions to a FHIR server that the clinic has chosen."""

from __future__ import annotations

import argparse
import importlib
from pathlib import Path
from typing import Any, NoReturn

from tracker.errors import InputError, RunError


class Refuse(argparse.Action):
    """A token on the command line can be read by others; it is refused and not repeated."""

    def __call__(self, *_: Any) -> NoReturn:
        """Say where a token belongs."""
        raise InputError("a token may not stand in the call; put it in a file for --token-file")


def add_parser(sub: Any) -> None:
    """Add the command's parser."""
    parser = sub.add_parser(
        "send",
        help="therapist: send sessions to the clinic's FHIR server (an extra for clinics)",
        description="Sends each session below FOLDER, and of its people each questionnaire score "
        "and their plan as it stands at the clinic, where the server has not got it yet, as "
        "a FHIR R4 transaction; notes and the names of who made them stay here. A plan that was "
        "changed or replaced goes again, into the same place; so does a session whose marks were. "
        "What could not be sent stays and goes out with the next call; what is sent twice makes "
        "no doubles. What went where is written into FOLDER/notes. One pseudonym is one patient "
        "on that server: practices that share it name a system of their own each (--people), or "
        "must not both have a P-07.",
        allow_abbrev=False,
    )
    parser.add_argument("folder", type=Path, metavar="FOLDER", help="holds the sessions")
    parser.add_argument(
        "--to", required=True, metavar="ADDRESS", help="the server's FHIR base; https only"
    )
    parser.add_argument(
        "--token-file",
        type=Path,
        metavar="FILE",
        help="holds the server's token (or TURNPOST_SEND_TOKEN in the environment)",
    )
    parser.add_argument("--token", action=Refuse, nargs="?", help=argparse.SUPPRESS)
    parser.add_argument(
        "--certificate",
        type=Path,
        metavar="FILE",
        help="trust this certificate alone (PEM), not those that the system trusts",
    )
    parser.add_argument(
        "--people",
        metavar="URI",
        help="the system that the clinic's pseudonyms belong to on that server, if others "
        "have some there, too; the same with every call",
    )
    parser.add_argument(
        "--again", action="store_true", help="send what went before, too, for a server that lost it"
    )
    parser.set_defaults(run=run, secret=True)


def run(args: argparse.Namespace) -> int:
    """Send, and say how much went."""
    address, server_module, record, send = _parts()
    from tracker.records.notes import author_of_system

    if not args.folder.is_dir():
        raise InputError(f"{args.folder}: there is no such folder; name one that holds sessions")
    server = server_module.Server(
        address.address_of(args.to),
        address.trust(args.certificate),
        address.token_of(args.token_file),
    )
    people = {} if args.people is None else {"people": address.people_of(args.people)}
    book = record.SentRecord(args.folder, author_of_system())
    try:
        count = send.send_folder(args.folder, server, book, _tell, again=args.again, **people)
    except server_module.NoServerError as error:
        stop = "" if str(error).endswith("?") else "."
        raise RunError(
            f"{server.address}: {error}{stop} What was not sent stays and goes with the next call"
        ) from error
    finally:
        server.close()
    kinds = [
        f"{n} of them {what}"
        for n, what in ((count.scores, "questionnaire scores"), (count.plans, "plans"))
        if n
    ]
    of_kinds = f" ({', '.join(kinds)})" if kinds else ""
    print(f"{count.sent} sent to {server.address}{of_kinds}, {count.before} had gone before")
    if count.failed:
        raise RunError(f"{count.failed} could not be sent; they stay and go with the next call")
    return 0


def _tell(line: str) -> None:
    """Print a line; the names of files in it may hold anything."""
    print("".join(c if c.isprintable() else "?" for c in line))


def _parts() -> list[Any]:
    """The modules that send; only here, because most copies of the program have no use for them.

    Raises
    ------
    InputError
        If this copy can't send.
    """
    try:
        return [
            importlib.import_module(f"ui.posting.{name}")
            for name in ("address", "server", "record", "send")
        ]
    except ModuleNotFoundError as error:
        # A frozen folder has not even our own part of it.
        if not (error.name or "").startswith(("urllib3", "ui.posting")):
            raise
        raise InputError(
            "this copy of Turnpost can't send; on the clinic's computer install the extra: "
            "pip install 'turnpost[send]'"
        ) from error
