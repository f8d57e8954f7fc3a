"""``turnpost review FOLDER``: the sessions of many people, and what needs eyes first."""

from __future__ import annotations

import argparse
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

from tracker.errors import InputError

if TYPE_CHECKING:
    from tracker.records.people import Person

#: Weeks before and after a day are reckoned, and the calendar has its ends (own choice).
YEARS = range(1900, 3000)


def add_parser(sub: Any) -> None:
    """Add the command's parser."""
    parser = sub.add_parser(
        "review",
        help="review the sessions of many people: who needs a look first, and trends",
        description="Reads every session below FOLDER and shows people by what needs eyes "
        "first, their practice against the plan, and each exercise's trend. The folder is only "
        "read; notes go into its folder 'notes'.",
    )
    parser.add_argument("folder", type=Path, metavar="FOLDER", help="holds the sessions")
    parser.add_argument("--text", action="store_true", help="print it, without a window")
    parser.add_argument("--person", metavar="P", help="with --text: one person's trends")
    parser.add_argument(
        "--today", type=_day, metavar="YYYY-MM-DD", help="count practice up to another day"
    )
    parser.set_defaults(run=run)


def _day(text: str) -> date:
    try:
        day = date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"{text!r} is no day as in 2026-01-31") from None
    if day.year not in YEARS:
        raise argparse.ArgumentTypeError(f"{text!r} is too far from today")
    return day


def run(args: argparse.Namespace) -> int:
    """Print the review, or open the window."""
    if args.person is not None and not args.text:
        raise InputError("--person goes with --text; in the window choose the person in the list")
    if args.folder.is_file():
        raise InputError(
            f"{args.folder}: is a file; one from a patient is taken in with 'turnpost receive FILE "
            "--into FOLDER', then name that folder"
        )
    if not args.folder.is_dir():
        raise InputError(f"{args.folder}: there is no such folder; name one that holds sessions")
    today = args.today or date.today()
    if not args.text:
        from ui.desk.opening import open_desk

        app, _window = open_desk(args.folder, today=args.today)
        return app.exec()
    from tracker.records.index import read_folder
    from tracker.records.people import people_of

    records = read_folder(args.folder)
    people = people_of(records, today)
    if args.person is None:
        from ui.desk.text import list_lines

        for line in list_lines(records, people):
            print(line)
        return 0
    from tracker.records.notes import NoteBook, author_of_system
    from tracker.records.questionnaires import scores_of
    from ui.desk.text import person_lines

    person = _find(people, args.person)
    book = NoteBook(args.folder, author_of_system())
    scores = [] if person.nameless else scores_of(book, [person.name])
    for line in person_lines(person, scores, book.notes()):
        print(line)
    return 0


def _find(people: list[Person], name: str) -> Person:
    from ui.desk.text import NAMELESS

    # Somebody may be called what the nameless are called here.
    found = next((p for p in people if not p.nameless and p.name == name), None)
    if found is None and name == NAMELESS:
        found = next((p for p in people if p.nameless), None)
    if found is None:
        has = ", ".join(NAMELESS if p.nameless else p.name for p in people) or "nobody"
        raise InputError(f"there is nobody called {name!r} in this folder; it has: {has}")
    return found
