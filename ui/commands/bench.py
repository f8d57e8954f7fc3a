"""``turnpost bench``: figures as tables, to be printed again by anyone."""

from __future__ import annotations

import argparse
from pathlib import Path

from tracker.errors import InputError


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "bench",
        help="print figures: accuracy against truth, speed as a ratio",
        description="accuracy: errors against the truth of rendered clips (the shipped ones, or "
        "those named). speed: cost of measuring against decoding and landmarks alone, in one run.",
    )
    parser.add_argument("what", choices=("accuracy", "speed"))
    parser.add_argument("clip", nargs="*", type=Path, help="clips with their truth beside them")
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Print the table asked for."""
    from sample_clips import DEMO_CLIP, shipped, shipped_clip

    clips: list[Path] = args.clip or (
        shipped() if args.what == "accuracy" else [shipped_clip(DEMO_CLIP)]
    )
    if not clips:
        raise InputError("no clip to measure; name one with its truth beside it")
    if args.what == "accuracy":
        from ui.bench.accuracy import accuracy_table

        for line in accuracy_table(clips):
            print(line, flush=True)
        return 0
    from ui.bench.speed import speed_table

    for clip in clips:
        for line in speed_table(clip):
            print(line, flush=True)
    return 0
