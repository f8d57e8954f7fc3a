"""``turnpost bench``: figures as tables, to be printed again by anyone."""

from __future__ import annotations

import argparse
import os
import re
import sys
import tempfile
from functools import partial
from pathlib import Path

from tracker.errors import InputError


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "bench",
        help="print figures: accuracy against truth, counts of made-up sets, speed as a ratio",
        description="accuracy: errors against the truth of rendered clips (the shipped ones, or "
        "those named; with --matrix of newly drawn ones, minutes each). "
        "sets: counts and events of made-up sets, the truth with errors as measured, no pictures "
        "(with --people drawn and measured ones, ten sets each, five minutes a person). "
        "speed: cost of measuring against decoding and landmarks alone, in one run. "
        "live: a minute of practice in the window with a clip as its camera. "
        "photos: head angles with no set-up, from a file of landmarks of photos. "
        "review: opening a folder of 500, 1,000, 5,000 and 20,000 sessions, cold and warm "
        "(800 MB of disk, taken away again; --few: not 20,000, 200 MB), and scrolling "
        "long lists on the desk.",
    )
    parser.add_argument("what", choices=("accuracy", "live", "photos", "review", "sets", "speed"))
    parser.add_argument(
        "clip",
        nargs="*",
        type=Path,
        metavar="FILE",
        help="clips with their truth beside them; for photos a file of landmarks (npz)",
    )
    parser.add_argument(
        "--matrix", type=int, metavar="N", help="accuracy: draw N clips by lot and measure those"
    )
    parser.add_argument(
        "--within",
        action="store_true",
        help="--matrix: draw only what the aims are meant for (50 to 75 cm, no glasses ...)",
    )
    parser.add_argument(
        "--standing",
        action="store_true",
        help="--matrix: draw people who stand 0.9 to 1.5 m away and shake the head",
    )
    parser.add_argument(
        "--wide",
        action="store_true",
        help="--matrix: draw turns of 30 to 38 degrees and nods of 18 to 23",
    )
    parser.add_argument(
        "--sets", type=int, default=312, metavar="N", help="sets: how many (default: %(default)s)"
    )
    parser.add_argument(
        "--people",
        metavar="N or FROM-TO",
        help="sets: draw so many people, or those of these numbers, each with a set-up",
    )
    parser.add_argument(
        "--rate", type=int, metavar="HZ", help="--people: pictures a second (default: 30)"
    )
    parser.add_argument("--seed", type=int, default=0, help="other seeds draw other clips and sets")
    parser.add_argument("--keep", type=Path, metavar="DIR", help="keep the drawn clips there")
    parser.add_argument(
        "--lasts",
        type=float,
        default=60.0,
        metavar="SECONDS",
        help="live: seconds of practice that are looked at (default: %(default)g)",
    )
    parser.add_argument("--few", action="store_true", help="review: up to 5,000 sessions alone")
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Print the table asked for."""
    if args.matrix is not None:
        return _run_matrix(args)
    if args.within or args.standing or args.wide:
        raise InputError("--within, --standing and --wide go with --matrix")
    if args.what == "photos":
        return _run_photos(args.clip)
    if args.people is not None and args.what != "sets":
        raise InputError("--people goes with 'sets' alone")
    if args.rate is not None and args.people is None:
        raise InputError("--rate goes with --people")
    if args.few and args.what != "review":
        raise InputError("--few goes with 'review' alone")
    if args.what == "review":
        return _run_review(args)
    if args.what == "sets":
        return _run_sets(args)
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
    if args.what == "live":
        return _run_live(clips[0], args.lasts)
    from ui.bench.speed import speed_table

    for clip in clips:
        for line in speed_table(clip):
            print(line, flush=True)
    return 0


def _run_photos(files: list[Path]) -> int:
    """Print the photos' row of one file."""
    if len(files) != 1:
        raise InputError("'bench photos' takes one file of landmarks")
    from ui.bench.photos import photos_table

    for line in photos_table(files[0]):
        print(line, flush=True)
    return 0


def _run_live(clip: Path, lasts_s: float) -> int:
    """Practise in the window with a clip as its camera, and print what was seen of it."""
    if not 1.0 <= lasts_s <= 4 * 3600.0:
        raise InputError("'bench live' looks at 1 to 14400 seconds (--lasts)")
    from ui.bench.live import live_table

    for line in live_table(clip, lasts_s):
        print(line, flush=True)
    return 0


def _run_review(args: argparse.Namespace) -> int:
    """Write sessions into a scratch folder and print how long opening them takes."""
    if args.clip:
        raise InputError("'bench review' makes its own sessions; name no file")
    from ui.bench.review import COUNTS, MANY, review_table

    with tempfile.TemporaryDirectory() as scratch:
        for line in review_table(Path(scratch), COUNTS if args.few else (*COUNTS, MANY)):
            print(line, flush=True)
    if sys.platform == "linux" and not any(map(os.environ.get, ("DISPLAY", "WAYLAND_DISPLAY"))):
        print("scrolling: not measured, because there is no screen")
        return 0
    from ui.bench.scrolling import scrolling_table

    for line in scrolling_table():
        print(line, flush=True)
    return 0


def _run_sets(args: argparse.Namespace) -> int:
    """Make up sets, judge them, print the table."""
    if args.sets < 1 or args.seed < 0 or args.clip:
        raise InputError("'bench sets' takes a number of sets (--sets) and a seed, no clips")
    rate_hz = 30 if args.rate is None else args.rate
    if not 10 <= rate_hz <= 60:
        raise InputError("--rate takes 10 to 60 pictures a second")
    if args.people is not None:
        from ui.bench.people import people_table

        lines = people_table(_people(args.people), args.seed, rate_hz)
    else:
        from ui.bench.sets import sets_table

        lines = sets_table(args.sets, args.seed)
    for line in lines:
        print(line, flush=True)
    return 0


def _people(words: str) -> range:
    """Numbers of people: ``30`` are 0 to 29, ``5-9`` are those five."""
    found = re.fullmatch(r"(?:(\d{1,4})-)?(\d{1,4})", words)
    first, last = (int(found[1] or 0), int(found[2]) - (found[1] is None)) if found else (0, -1)
    if last < first:
        raise InputError("--people takes a number of people, or the first and last, as in 5-9")
    return range(first, last + 1)


def _run_matrix(args: argparse.Namespace) -> int:
    """Draw clips, measure them, print the table."""
    if args.what != "accuracy" or args.matrix < 1 or args.seed < 0:
        raise InputError("--matrix takes a number of clips and goes with 'accuracy' alone")
    if args.within + args.standing + args.wide > 1:
        raise InputError("--within, --standing and --wide draw different clips; take one of them")
    if args.keep is not None:
        args.keep.mkdir(parents=True, exist_ok=True)
    from sample_clips.matrix import drawn, standing, wide
    from ui.bench.matrix import matrix_table

    draw = standing if args.standing else wide if args.wide else partial(drawn, within=args.within)
    lot = [draw(k, args.seed) for k in range(args.matrix)]

    with tempfile.TemporaryDirectory() as scratch:
        folder = args.keep or Path(scratch)
        for line in matrix_table(lot, args.seed, folder):
            print(line, flush=True)
    return 0
