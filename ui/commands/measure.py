"""``turnpost measure``: one row a frame of a clip, as a trace."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from ui.commands.judging import find_stage, measure_clip, unjudged, whole_clip


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "measure",
        help="measure a clip: one row a frame",
        description="Measures head, eyes and gaze in every frame of a clip and writes a trace "
        "(CSV). A stage log beside the clip (CLIP.stage.json) tells the set-up and the targets; "
        "without one nothing fits the person, and the note on stderr says so.",
    )
    parser.add_argument("clip", type=Path, metavar="CLIP", help="a video clip")
    parser.add_argument("--out", type=Path, metavar="TRACE.csv", help="where to write the trace")
    parser.add_argument("--stage", type=Path, metavar="F", help="the stage log, if not beside it")
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Measure and write."""
    from tracker.outputs import TRACE, must_harm_nothing
    from tracker.session.trace import format_trace, save_trace

    if args.out is not None:
        named = [p for p in (args.clip, args.stage) if p is not None]
        must_harm_nothing(args.out, replaces=TRACE, inputs=named)
    stage = find_stage(args.clip, args.stage)
    log = whole_clip(None) if stage is None else unjudged(stage)
    record = measure_clip(args.clip, log, (), _say)
    if args.out is None:
        sys.stdout.write(format_trace(record.samples))
    else:
        save_trace(args.out, record.samples)
    for note in record.about.notes:
        _say(NOTES.get(note, note))
    return 0


#: Notes of a session -> words.
NOTES = {
    "no_setup": "no stage log with a set-up: generic values were used, not this person's",
    "setup_unknown": "nothing tells whether this trace had a set-up, nor how well its gaze was "
    "read: it is judged as if it had been read well",
    "setup_failed": "the set-up in this clip could not be used, so little was measured",
    "gaze_not_fitted": "the set-up was too poor for the line of sight, which is left out",
    "coarse_picture": "the picture tells too little of the moving face (little light, few bits, "
    "glasses): the head's angles may be 1 to 2 degrees off, and turns by a tenth",
    "other_exercise": "the stage log says that another exercise was asked for",
}


def _say(text: str) -> None:
    print(f"turnpost: note: {text}", file=sys.stderr)
