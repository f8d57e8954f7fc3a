"""``turnpost report``: documents from summaries."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from tracker.records.figures import SessionFigures
    from tracker.records.index import Records
    from tracker.records.notes import Note, NoteBook
    from tracker.records.over_time import OverTime
    from tracker.records.questionnaires import Score

OUTPUTS = {
    "pdf": "one page a session to file, as PDF (a second one where there are many exercises)",
    "pdf_details": "the same with all figures of each exercise, on as many pages as they need",
    "html": "the same page with all figures as one HTML file",
    "csv": "a table with one row a session",
    "repetitions_csv": "a table with one row a repetition",
    "scores_csv": "a table with one row a questionnaire score (with --notes)",
    "trends_csv": "a table of practice and trends, one row a figure (with --trends)",
    "fhir": "an HL7 FHIR R4 Bundle (JSON)",
}


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "report",
        help="documents from summaries",
        description="Makes documents from one or more sessions. Each is named by its folder or by "
        "its summary.json. If one of them can't be used, nothing is written.",
    )
    parser.add_argument(
        "summaries", nargs="+", type=Path, metavar="SUMMARY", help="a session's folder or summary"
    )
    for name, what in OUTPUTS.items():
        parser.add_argument(f"--{name.replace('_', '-')}", type=Path, metavar="F", help=what)
    parser.add_argument(
        "--notes",
        type=Path,
        metavar="FOLDER",
        help="the reviewed folder: questionnaire scores entered there go into the documents, and "
        "how many repetitions were marked as not valid",
    )
    parser.add_argument(
        "--trends",
        type=Path,
        metavar="FOLDER",
        help="a folder with sessions and plans: practice against the plan and the trends of the "
        "people of these sessions go into the documents, and their whole plans into a Bundle",
    )
    parser.add_argument(
        "--decimal",
        choices=("point", "comma"),
        default="point",
        help="numbers of the tables: 1.5 between commas (point, the default), or 1,5 between "
        "semicolons (comma), for spreadsheets where numbers have a decimal comma",
    )
    parser.add_argument(
        "--text", action="store_true", help="print a few lines a session, to paste into a record"
    )
    parser.add_argument(
        "--paper", choices=("a4", "letter"), default="a4", help="size of the page (a4)"
    )
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Read all, make all, then write."""
    from tracker.errors import InputError
    from tracker.outputs import must_harm_nothing
    from tracker.records.marks import with_marks
    from tracker.records.plans import with_plans
    from tracker.records.questionnaires import scores_of
    from tracker.session.files import write_atomically

    wanted: dict[str, Path] = {n: p for n in OUTPUTS if (p := getattr(args, n)) is not None}
    _must_make_sense(args.summaries, wanted, args.text)
    book = _book(args.notes, wanted)
    scores = [] if book is None else scores_of(book, also_withdrawn=True)
    if "trends_csv" in wanted and args.trends is None:
        raise InputError("--trends-csv needs --trends FOLDER, the folder with all their sessions")
    for path in wanted.values():
        must_harm_nothing(path, inputs=[_summary_file(p) for p in args.summaries])
    records = read_records(args.summaries)
    if book is not None:
        records = with_marks(records, book.notes())
    over_time = []
    if args.trends is not None:
        kept = _folder(args.trends)
        records = with_plans(records, kept.plans)
        over_time = _over_time(args.trends, kept, records, None if book is None else book.notes())
    comma = args.decimal == "comma"
    made = [
        (path, maker(name, args.paper, comma=comma)(records, scores, over_time))
        for name, path in wanted.items()
    ]
    for path, content in made:
        write_atomically(path, content)
        print(f"{path}: written")
    if args.text:
        from ui.documents.paragraph import paragraph

        print("\n\n".join(paragraph(r, scores) for r in records))
    return 0


def _book(folder: Path | None, wanted: dict[str, Path]) -> NoteBook | None:
    """The notes of a reviewed folder, of everybody; None where no folder is named."""
    from tracker.errors import InputError
    from tracker.records.notes import NoteBook, author_of_system

    if folder is None:
        if "scores_csv" in wanted:
            raise InputError("--scores-csv needs --notes FOLDER, where the scores were entered")
        return None
    if not folder.is_dir():
        raise InputError(f"{folder}: there is no such folder; name the one that was reviewed")
    return NoteBook(folder, author_of_system())


def _folder(folder: Path) -> Records:
    """The folder with all sessions and plans.

    What is left out is told on standard error, as what a hand-over leaves out is.
    """
    import sys

    from tracker.errors import InputError
    from tracker.records.index import read_folder

    if not folder.is_dir():
        raise InputError(f"{folder}: there is no such folder; name the one with their sessions")
    kept = read_folder(folder)
    for fault in kept.unread:
        print(f"left out of the trends: {fault.path}: {fault.why}", file=sys.stderr)
    return kept


def _over_time(
    folder: Path,
    kept: Records,
    records: Sequence[SessionFigures],
    notes: Sequence[Note] | None,
) -> list[OverTime]:
    """The people of some sessions over time, from a folder with all their sessions."""
    import sys
    from datetime import date

    from tracker.errors import InputError
    from tracker.records.over_time import over_time_to_tell
    from tracker.records.people import people_of
    from tracker.records.places import clean

    names = {r.person_id for r in records}
    people = [p for p in people_of(kept, date.today()) if p.name in names]
    found = [one for p in people for one in over_time_to_tell(p, notes=notes)]
    for name in sorted(n for n in names - {one.person_id for one in found} if n):
        print(f"without trends: {clean(name)}: no sessions of theirs in {folder}", file=sys.stderr)
    if None in names:
        print("without trends: sessions without a pseudonym, which may be of many", file=sys.stderr)
    if not found:
        raise InputError(f"{folder}: there are no sessions of these people in it")
    return sorted(found, key=lambda c: c.person_id)


def read_records(paths: Sequence[Path]) -> list[SessionFigures]:
    """Figures of all summaries, by person and time.

    Raises
    ------
    InputError
        If one can't be used, or if two are the same session; names the file and the place.
    """
    from tracker.records.figures import must_differ

    found = [(str(p), _read(_summary_file(p))) for p in paths]
    must_differ(found)
    return sorted((r for _, r in found), key=lambda r: (r.person, r.started or ""))


def _read(path: Path) -> SessionFigures:
    from tracker.errors import InputError
    from tracker.records.figures import record_of
    from tracker.session.summary_file import load_summary

    summary = load_summary(path)
    try:
        return record_of(summary)
    except InputError as error:
        raise InputError(f"{path}: {error}") from error


def _summary_file(path: Path) -> Path:
    from tracker.errors import InputError
    from tracker.session.saving import SUMMARY_NAME

    if not path.is_dir():
        return path
    inside = path / SUMMARY_NAME
    if not inside.is_file():
        raise InputError(f"{path}: there is no {SUMMARY_NAME} in this folder; name a session's own")
    return inside


def _must_make_sense(inputs: Sequence[Path], wanted: dict[str, Path], text: bool) -> None:
    from tracker.errors import InputError

    if not wanted and not text:
        names = ", ".join(f"--{n.replace('_', '-')}" for n in OUTPUTS)
        raise InputError(f"say what to make: {names} or --text")
    seen: set[Path] = {_summary_file(p).resolve() for p in inputs}
    for path in wanted.values():
        if path.resolve() in seen:
            raise InputError(f"{path}: is named twice; name another file to write")
        seen.add(path.resolve())


Maker = Callable[[Sequence["SessionFigures"], Sequence["Score"], Sequence["OverTime"]], str | bytes]


def maker(name: str, paper: str, *, comma: bool = False) -> Maker:
    """What makes an output; Qt is imported for a PDF alone."""
    if name in ("pdf", "pdf_details"):
        from ui.documents.pdf import pdf_document

        details = name == "pdf_details"
        return lambda r, s, over_time: pdf_document(r, paper, s, over_time, details=details)
    if name == "html":
        from ui.documents.html import html_document

        return lambda r, scores, over_time: html_document(r, paper, scores, over_time)
    if name == "fhir":
        from ui.documents.fhir import fhir_bundle

        return lambda r, scores, over_time: fhir_bundle(r, scores, over_time=over_time)
    from ui.documents.csv import repetitions_csv, scores_csv, sessions_csv, trends_csv

    if name == "scores_csv":
        return lambda r, scores, _: scores_csv(r, scores, comma=comma)
    if name == "trends_csv":
        return lambda _, __, over_time: trends_csv(over_time, comma=comma)
    table = sessions_csv if name == "csv" else repetitions_csv
    return lambda r, _, __: table(r, comma=comma)
