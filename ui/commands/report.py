"""``turnpost report``: documents from summaries."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from tracker.records.figures import SessionFigures
    from tracker.records.questionnaires import Score

OUTPUTS = {
    "pdf": "a page to file, as PDF",
    "html": "the same page as one HTML file",
    "csv": "a table with one row a session",
    "repetitions_csv": "a table with one row a repetition",
    "scores_csv": "a table with one row a questionnaire score (with --notes)",
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
        help="the reviewed folder: questionnaire scores entered there go into the documents",
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
    from tracker.session.files import must_be_writable, write_atomically

    wanted: dict[str, Path] = {n: p for n in OUTPUTS if (p := getattr(args, n)) is not None}
    _must_make_sense(args.summaries, wanted, args.text)
    scores = _scores(args.notes, wanted)
    for path in wanted.values():
        must_be_writable(path)
    records = read_records(args.summaries)
    made = [(path, maker(name, args.paper)(records, scores)) for name, path in wanted.items()]
    for path, content in made:
        write_atomically(path, content)
        print(f"{path}: written")
    if args.text:
        from ui.documents.paragraph import paragraph

        print("\n\n".join(paragraph(r, scores) for r in records))
    return 0


def _scores(folder: Path | None, wanted: dict[str, Path]) -> list[Score]:
    """Questionnaire scores of a reviewed folder, of everybody."""
    from tracker.errors import InputError
    from tracker.records.notes import NoteBook, author_of_system
    from tracker.records.questionnaires import scores_of

    if folder is None:
        if "scores_csv" in wanted:
            raise InputError("--scores-csv needs --notes FOLDER, where the scores were entered")
        return []
    if not folder.is_dir():
        raise InputError(f"{folder}: there is no such folder; name the one that was reviewed")
    return scores_of(NoteBook(folder, author_of_system()), also_withdrawn=True)


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


def maker(
    name: str, paper: str
) -> Callable[[Sequence[SessionFigures], Sequence[Score]], str | bytes]:
    """What makes an output; Qt is imported for a PDF alone."""
    if name == "pdf":
        from ui.documents.pdf import pdf_document

        return lambda records, scores: pdf_document(records, paper, scores)
    if name == "html":
        from ui.documents.html import html_document

        return lambda records, scores: html_document(records, paper, scores)
    if name == "fhir":
        from ui.documents.fhir import fhir_bundle

        return fhir_bundle
    from ui.documents.csv import repetitions_csv, scores_csv, sessions_csv

    if name == "scores_csv":
        return scores_csv
    table = sessions_csv if name == "csv" else repetitions_csv
    return lambda records, _: table(records)
