"""``turnpost schema``: the published JSON Schema of a kind of file."""

from __future__ import annotations

import argparse
import json


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "schema",
        help="print the JSON Schema of a kind of file",
        description="Prints the JSON Schema (draft 2020-12) of a plan, a summary, a "
        "stage log, answers to a session, or the head of a hand-over.",
    )
    kinds = ("plan", "summary", "stage", "answers", "handover")
    parser.add_argument("kind", choices=kinds, help="which kind of file")
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Print it."""
    print(json.dumps(published(args.kind), indent=1, ensure_ascii=False))
    return 0


def published(kind: str) -> dict[str, object]:
    """The schema of a kind of file, with the draft it follows."""
    from tracker.handover.container import Head
    from tracker.plan import files as plan
    from tracker.practice import scripted
    from tracker.session import stage, summary_file

    schemas = {
        "plan": plan.schema,
        "summary": summary_file.schema,
        "stage": stage.schema,
        "answers": scripted.schema,
        "handover": Head.model_json_schema,
    }
    found = schemas[kind]()
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **found}
