"""``turnpost demo``: the whole main job with a sample clip in place of a camera."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any


def add_parser(sub: Any) -> None:
    """Add the command's parser."""
    parser = sub.add_parser(
        "demo", help="the whole main job with a sample clip in place of a camera"
    )
    parser.add_argument(
        "--auto",
        action="store_true",
        help="go through by itself, save, print the summary's path and end",
    )
    parser.add_argument(
        "--clip", type=Path, metavar="CLIP", help="another clip with its stage log beside it"
    )
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Open the program with a clip."""
    from tracker.errors import RunError
    from ui.wiring import clip_plan, demo_clip

    plan = clip_plan(args.clip or demo_clip())
    from ui.opening import open_window

    app, window = open_window(clip=plan)
    if not args.auto:
        return app.exec()
    from ui.auto import AutoWalk

    walk = AutoWalk(window)
    with walk.watching():
        app.exec()
    saved = window.director.saved
    if walk.failure is not None:
        raise walk.failure
    if saved is None:
        raise RunError("the demo was closed before its end; start it again")
    print(saved.summary_path, flush=True)
    return 0
