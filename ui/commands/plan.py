"""``turnpost plan``: a starter, the faults of a plan, a plan in words, its editor, its sheet."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TypeAlias

_Parts: TypeAlias = "argparse._SubParsersAction[argparse.ArgumentParser]"


def add_parser(sub: _Parts) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "plan",
        help="make, check, show, edit and print a plan",
        description="Makes a starter plan, checks a plan, shows it in words, edits or prints it.",
    )
    parts = parser.add_subparsers(dest="part", metavar="PART", required=True)
    for add in (_add_new, _add_check, _add_show, _add_words, _add_keys, _add_edit, _add_sheet):
        add(parts)


def _add_new(parts: _Parts) -> None:
    new = parts.add_parser(
        "new",
        help="a starter plan",
        description="Writes a starter plan: the whole home programme in five stages. It is meant "
        "to be changed for the person; prints it if no file is named.",
    )
    new.add_argument("--out", type=Path, metavar="PLAN", help="where to write it")
    new.set_defaults(run=run_new)


def _add_check(parts: _Parts) -> None:
    check = parts.add_parser(
        "check",
        help="what is wrong with a plan",
        description="Reads a plan as the program does. A fault is one line with line number and "
        "field, and ends with 2; remarks for the therapist end with 0.",
    )
    check.add_argument("plan", type=Path, metavar="PLAN", help="a plan")
    check.set_defaults(run=run_check)


def _add_show(parts: _Parts) -> None:
    show = parts.add_parser(
        "show",
        help="a plan in words",
        description="Shows a plan in words; without one the whole catalogue, a line an exercise, "
        "its ID first.",
    )
    show.add_argument("plan", nargs="?", type=Path, metavar="PLAN", help="a plan")
    show.add_argument("--week", type=int, metavar="N", help="as it stands in this week of the plan")
    show.add_argument(
        "--options",
        action="store_true",
        help="show instead which options each exercise may be given",
    )
    show.set_defaults(run=run_show)


def _add_words(parts: _Parts) -> None:
    words = parts.add_parser(
        "words",
        help="a plan as eight words, to compare in a call",
        description="Prints eight words that stand for all that a plan says, its keys included. "
        "The patient's program shows the same ones: read them to each other, then a forged plan "
        "is noticed.",
    )
    words.add_argument("plan", type=Path, metavar="PLAN", help="a plan")
    words.set_defaults(run=run_words)


def _add_keys(parts: _Parts) -> None:
    keys = parts.add_parser(
        "keys",
        help="say in a plan to whom sessions are handed over",
        description="Writes a plan that carries the public keys of this computer ('turnpost keys') "
        "and those named, and prints its words. What the patient hands over can then be read by "
        "whoever has one of the secret keys, and by nobody else. Keys that stand in the plan stay; "
        "take one that was stolen or lost out with --drop, or name those that are to stand in it "
        "with --only, and hand the plan out again.",
    )
    keys.add_argument("plan", type=Path, metavar="PLAN", help="a plan")
    keys.add_argument("--out", type=Path, required=True, metavar="F", help="where to write it")
    keys.add_argument(
        "--key", action="append", default=[], metavar="AGE1...", help="a further public key"
    )
    keys.add_argument(
        "--only",
        action="append",
        default=[],
        metavar="KEY",
        help="this key and no other but those named likewise: a public key, or the name of one "
        "that is on this computer or in the plan",
    )
    keys.add_argument(
        "--drop",
        action="append",
        default=[],
        metavar="KEY",
        help="a key to take out, named likewise",
    )
    keys.add_argument(
        "--plain",
        action="store_true",
        help="no keys: sessions come back as files that anybody can read on their way; the "
        "patient is told so",
    )
    keys.set_defaults(run=run_keys)


def _add_edit(parts: _Parts) -> None:
    edit = parts.add_parser(
        "edit",
        help="build or change a plan in a window",
        description="Opens the plan editor, with a plan or with the ways to begin one. A file is "
        "never replaced without being asked. A plan that has faults, or is not finished, can be "
        "opened here and put right.",
    )
    edit.add_argument("plan", nargs="?", type=Path, metavar="PLAN", help="a plan")
    edit.set_defaults(run=run_edit)


def _add_sheet(parts: _Parts) -> None:
    sheet = parts.add_parser(
        "sheet",
        help="the patient's sheet to print",
        description="Writes a sheet for the patient: what is open of the plan, in large type, with "
        "drawings, doses, and when to stop.",
    )
    sheet.add_argument("plan", type=Path, metavar="PLAN", help="a plan")
    sheet.add_argument("--pdf", type=Path, metavar="F", help="as PDF")
    sheet.add_argument("--html", type=Path, metavar="F", help="as one HTML file")
    sheet.add_argument(
        "--paper", choices=("a4", "letter"), default="a4", help="size of the page (a4)"
    )
    sheet.add_argument("--week", type=int, metavar="N", help="as it stands in this week")
    sheet.set_defaults(run=run_sheet)


def run_new(args: argparse.Namespace) -> int:
    """Make a starter plan."""
    from tracker.errors import InputError
    from tracker.outputs import must_harm_nothing
    from tracker.plan.files import format_plan, save_plan
    from tracker.plan.starter import starter_plan

    plan = starter_plan()
    if args.out is None:
        print(format_plan(plan), end="")
        return 0
    if args.out.exists():
        raise InputError(f"{args.out}: is there already; name another file")
    must_harm_nothing(args.out)
    save_plan(args.out, plan)
    print(f"{args.out}: a starter plan; change it for the person, then 'turnpost plan check'")
    return 0


def run_check(args: argparse.Namespace) -> int:
    """Read a plan; say what its therapist should know."""
    from tracker.plan.files import parse_plan, read_text
    from tracker.plan.lines import field_name, index_lines
    from tracker.plan.rules import remarks

    text = read_text(args.plan)
    plan = parse_plan(text, str(args.plan))
    index = index_lines(text)
    print(f"{args.plan}: can be used; {len(plan.entries)} entries")
    for remark in remarks(plan):
        line = index.line_of(remark.path)
        print(f"remark: line {line}, {field_name(remark.path)}: {remark.text}")
    return 0


def run_show(args: argparse.Namespace) -> int:
    """Show a plan or the catalogue."""
    from datetime import date

    from tracker.errors import InputError
    from tracker.plan.asked import week_of
    from tracker.plan.files import load_plan
    from tracker.plan.telling import catalogue_lines, option_lines, plan_lines

    if args.options:
        print("\n".join(option_lines()))
        return 0
    if args.week is not None and args.week < 1:
        raise InputError("--week counts from 1")
    if args.plan is None:
        print("\n".join(catalogue_lines()))
        return 0
    plan = load_plan(args.plan)
    # The day on the person's calendar is meant, wherever they are.
    week = args.week or week_of(plan, date.today())
    print("\n".join(plan_lines(plan, week)))
    return 0


def run_words(args: argparse.Namespace) -> int:
    """Print a plan's words."""
    from tracker.handover.fingerprint import plan_words
    from tracker.plan.files import load_plan

    print(" ".join(plan_words(load_plan(args.plan))))
    return 0


def run_keys(args: argparse.Namespace) -> int:
    """Write a plan with keys in it."""
    from tracker.errors import InputError
    from tracker.handover.fingerprint import plan_words
    from tracker.handover.preparing import readers, with_keys
    from tracker.outputs import PLAN, must_harm_nothing
    from tracker.plan.files import load_plan, save_plan

    if args.out.exists() and args.out.resolve() != args.plan.resolve():
        raise InputError(f"{args.out}: is there already; name another file")
    must_harm_nothing(args.out, replaces=PLAN)
    if args.only and args.key:
        raise InputError("--only names all keys: leave out --key")
    plan = with_keys(
        load_plan(args.plan), args.key, plain=args.plain, only=args.only, drop=args.drop
    )
    save_plan(args.out, plan)
    how = "plain, readable for anybody" if args.plain else "encrypted"
    print(f"{args.out}: sessions will be handed over {how}")
    for name, here in readers(plan):
        print(f"opens them: {name}, {'on this computer' if here else 'not on this computer'}")
    print(f"words: {' '.join(plan_words(plan))}")
    return 0


def run_edit(args: argparse.Namespace) -> int:
    """Open the editor."""
    from tracker.plan.draft import editable_data
    from tracker.plan.files import read_text

    if args.plan is not None:
        # A file that is no plan is said before any window is made.
        editable_data(read_text(args.plan), str(args.plan))
    from ui.editor.opening import open_editor

    app, _window = open_editor(args.plan)
    return app.exec()


def run_sheet(args: argparse.Namespace) -> int:
    """Write the patient's sheet."""
    from datetime import date

    from tracker.errors import InputError
    from tracker.outputs import must_harm_nothing
    from tracker.plan.asked import week_of
    from tracker.plan.files import load_plan
    from tracker.session.files import write_atomically

    if args.week is not None and args.week < 1:
        raise InputError("--week counts from 1")
    wanted = {k: p for k, p in (("pdf", args.pdf), ("html", args.html)) if p is not None}
    if not wanted:
        raise InputError("say what to make: --pdf or --html")
    if len({path.resolve() for path in wanted.values()}) < len(wanted):
        raise InputError(f"{args.pdf}: is named twice; name another file to write")
    for path in wanted.values():
        if path.resolve() == args.plan.resolve():
            raise InputError(f"{path}: is the plan itself; name another file to write")
        must_harm_nothing(path)
    plan = load_plan(args.plan)
    from ui.documents.sheet import sheet_of
    from ui.documents.sheet_html import sheet_html
    from ui.documents.sheet_pdf import sheet_pdf

    today = date.today()
    sheet = sheet_of(plan, today, args.week or week_of(plan, today))
    makers = {"pdf": sheet_pdf, "html": sheet_html}
    made = [(path, makers[kind](sheet, args.paper)) for kind, path in wanted.items()]
    for path, content in made:
        write_atomically(path, content)
        print(f"{path}: written")
    return 0
