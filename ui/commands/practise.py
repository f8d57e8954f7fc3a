"""``turnpost practise``: a whole session of a plan, in the window or from clips without it."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

from tracker.errors import InputError, RunError

if TYPE_CHECKING:
    from tracker.plan.model import Plan
    from tracker.practice.matching import StagedClip
    from tracker.practice.scripted import Answers
    from tracker.session.clip_run import MeasuredClip
    from tracker.session.live import SessionInfo
    from tracker.session.summary_file import ExerciseSummary, Summary

DESCRIPTION = """\
Opens the program with a plan. With --no-window it needs nobody: it goes through a
stage of a plan as a live session does, with a clip in place of each
set, and saves one session: summary, trace, stage log, journal. A clip is matched to
an entry by the exercise in the stage log beside it (CLIP.stage.json), which also
brings its set-up. Entries without a clip are recorded as not done.
"""

ANSWERS_HELP = """\
answers (--answers FILE.json): what is left out is recorded as "not asked"
  {"format": "turnpost-answers", "format_version": 1,
   "gate": {QUESTION: true or false, ...} or false for no to all,
   "gate_again": the same, for when they are asked again within the session,
   "weekly": {"falls": "none", "once" or "more", "hurt": true or false,
     "medicines_changed": true or false} (asked once in seven days),
   "since_last": {"rest_of_day": 0-10, "next_morning": 0-10}
     (asked once, in the first session of a later day),
   "scores_before": {"dizziness": 0-10, "nausea": 0-10, "unsteadiness": 0-10},
   "open": [stages and entries that the patient says yes to],
   "sound": true if the test sound was heard, "reader": true if a helper reads aloud,
   "entries": {ENTRY_ID: {"support": true or false,
     "clarity": "clear", "blurred", "jumping" or "double",
     "steadied": true or false, "own_count": a number,
     "landed": "on", "beside" or "not_sure" (eyes that were shut, as they opened),
     "arm": "right", "left", "both" or "not_sure" (where it was not seen),
     "scores_after": as scores_before, "settled_minutes": minutes}}}
the questions: QUESTIONS
'turnpost schema answers' prints the JSON Schema.
"""


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "practise",
        help="practise a stage of a plan: in the window, or from clips without it",
        description=DESCRIPTION,
        epilog=ANSWERS_HELP.replace("QUESTIONS", _questions()),
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("--plan", type=Path, required=True, metavar="PLAN", help="the plan")
    parser.add_argument(
        "--clip",
        type=Path,
        action="append",
        default=[],
        metavar="CLIP",
        help="a clip of one entry; may be given several times",
    )
    parser.add_argument("--no-window", action="store_true", help="without a window")
    parser.add_argument("--answers", type=Path, metavar="FILE.json", help="answers, see below")
    parser.add_argument(
        "--stage-id",
        metavar="STAGE_ID",
        help="which stage of the plan (default: that of the clips, else the furthest open)",
    )
    parser.add_argument(
        "--out",
        type=Path,
        metavar="FOLDER",
        help="a new folder for the session (default: beside the other sessions)",
    )
    parser.add_argument(
        "--baseline",
        action="store_true",
        help="this session, done together in the clinic, is what later ones are compared with",
    )
    parser.set_defaults(run=run)


def _questions() -> str:
    import textwrap

    from tracker.plan.gate import QUESTIONS

    return textwrap.fill(", ".join(QUESTIONS), 78, subsequent_indent="  ")


def run(args: argparse.Namespace) -> int:
    """Match, go through, save, print."""
    from tracker.plan.files import load_plan
    from tracker.practice.matching import match_clips, staged_clip
    from tracker.practice.scripted import NO_ANSWERS, load_answers
    from tracker.practice.today import entries_of_today
    from tracker.session.stage import load_stage_log, stage_path_of

    plan = load_plan(args.plan)
    if not args.no_window:
        return _in_window(args)
    if args.stage_id is not None:
        entries_of_today(plan, args.stage_id)
    answers = NO_ANSWERS if args.answers is None else load_answers(args.answers, plan)
    clips = [staged_clip(p, load_stage_log(stage_path_of(p))) for p in args.clip]
    matched = match_clips(plan, clips, args.stage_id)
    stages = {e.stage for e in plan.entries if e.entry_id in matched}
    stage_id = args.stage_id or next(iter(stages), None)
    about = _about(plan, baseline=args.baseline)
    summary, folder = _session(args.out, about, plan, matched, answers, stage_id)
    left = _not_asked(summary, answers)
    if left:
        _say(f"answers that nothing asked for in this session: weekly {left}")
    print("\n".join(table(summary)))
    print(folder / "summary.json")
    return 0


def _in_window(args: argparse.Namespace) -> int:
    """Open the program with the plan; what belongs to clips has no place there."""
    given = {"--clip": args.clip, "--answers": args.answers, "--stage-id": args.stage_id}
    for name, value in given.items():
        if value:
            raise InputError(f"{name} goes with --no-window")
    if args.out is not None and not args.baseline:
        raise InputError("--out goes with --no-window or --baseline")
    if args.out is not None and args.out.exists():
        raise InputError(f"{args.out}: is there already; name a new folder")
    from ui.commands.open import open_program
    from ui.ports import Baseline

    baseline = Baseline(args.out) if args.baseline else None
    return open_program(plan=args.plan, baseline=baseline)


def _session(
    out: Path | None,
    about: SessionInfo,
    plan: Plan,
    clips: dict[str, StagedClip],
    answers: Answers,
    stage_id: str | None,
) -> tuple[Summary, Path]:
    """Go through the session and save it; its folder appears whole or not at all."""
    from datetime import date

    from tracker.plan.asked import week_of
    from tracker.practice.from_clips import run_plan
    from tracker.practice.history import load_history
    from tracker.session.engine import Engine
    from tracker.session.files import data_folder, new_folder, session_folder
    from tracker.session.journal import FileJournal
    from tracker.session.saving import JOURNAL_NAME, save_session

    # The day on the person's calendar is meant, wherever they are.
    today = date.today()
    history, unread = load_history(data_folder() / "sessions", plan, own_computer=True)
    for fault in unread:
        _say(f"left out of what was done before: {fault}")
    target = out if out is not None else session_folder(about.session_id or "")
    with new_folder(target) as folder:
        with FileJournal(folder / JOURNAL_NAME) as journal:
            run_plan(
                plan,
                Engine(journal, about=about),
                clips,
                _measured,
                answers,
                history=history,
                today=today,
                week=week_of(plan, today),
                stage_id=stage_id,
            )
        if journal.fault:
            # What didn't reach the disk is missing: a summary of the rest would look whole.
            raise RunError(f"{target}: the session could not be written ({journal.fault})")
        summary = save_session(folder)
    return summary, target


def _about(plan: Plan, *, baseline: bool) -> SessionInfo:
    import datetime as dt
    import secrets

    from tracker.session.flags import FROM_CLIPS
    from ui.commands.judging import session_about

    now = dt.datetime.now().astimezone()
    return session_about((FROM_CLIPS,), plan).model_copy(
        update={
            "session_id": f"{now:%Y%m%d-%H%M%S}-{secrets.token_hex(2)}",
            "started_at": now.isoformat(timespec="seconds"),
            "baseline": baseline,
        }
    )


@contextmanager
def _measured(staged: StagedClip) -> Iterator[MeasuredClip]:
    """A clip with a measurer of its own."""
    # Imported here: cv2 and mediapipe take a second that a refused session doesn't need.
    from dataclasses import replace

    from calibration.measurer import make_measurer
    from tracker.lens import lens_of
    from tracker.session.clip_run import measured_clip
    from tracker.vision.clips import open_clip

    fov_deg = staged.stage.camera.vertical_fov_deg
    with open_clip(staged.path) as clip:
        camera = {
            "name": "clip",
            "width_px": clip.info.width_px,
            "height_px": clip.info.height_px,
            **lens_of(fov_deg).found(),
        }
        measurer = make_measurer(vertical_fov_deg=fov_deg)
        try:
            measured = measured_clip(clip, measurer, staged.stage)
            yield replace(measured, found={"camera": camera, **measured.found})
        finally:
            measurer.close()
        if clip.truncated:
            _say(f"{staged.path} breaks off early; what it holds was measured")


def table(summary: Summary) -> list[str]:
    """The session in a line an entry."""
    ended = summary.ended
    why = f" ({', '.join(summary.ended_because)})" if summary.ended_because else ""
    lines = [f"{'ended':<28} {ended}{why}", f"{'safety questions':<28} {_gate(summary)}"]
    lines += [f"{e.entry_id or '':<28} {_done(e)}" for e in summary.exercises]
    for entry in summary.not_done:
        lines.append(f"{entry.entry_id:<28} not done: {', '.join(entry.reasons)}")
    lines += [f"{flag.flag:<28} {flag.reason}" for flag in summary.quality]
    return lines


def _gate(summary: Summary) -> str:
    """What the safety questions led to when they were asked last."""
    gate = summary.gate or {}
    last = (gate.get("asked_again") or [gate])[-1]
    outcome = str(last.get("outcome", "not_asked")).replace("_", " ")
    because = last.get("asked_because")
    return (
        f"{outcome} (a fall, told in the question of the week)" if because == "weekly" else outcome
    )


def _not_asked(summary: Summary, answers: Answers) -> str:
    """Answers to questions of the week that it was not the time for."""
    given, taken = answers.weekly.model_dump(), summary.weekly or {}
    return ", ".join(q for q, v in given.items() if v is not None and taken.get(q) is None)


def _done(e: ExerciseSummary) -> str:
    count = "not counted" if e.done.repetitions is None else f"{e.done.repetitions} repetitions"
    shown = [
        count,
        f"{e.done.duration_s:.1f} s",
        f"{100 * (e.done.measured_fraction or 0.0):.0f} % measured",
    ]
    symptoms = e.symptoms or {}
    for name, value in (
        ("clarity", e.clarity["value"] or ("" if e.gaze is None else "not asked")),
        ("score before", _score(symptoms.get("before"))),
        ("after", _score(symptoms.get("after"))),
    ):
        if value:
            shown.append(f"{name} {value}")
    if e.events:
        shown.append(", ".join(dict.fromkeys(event.code for event in e.events)))
    return "; ".join(shown)


def _score(value: int | None) -> str:
    return "not asked" if value is None else str(value)


def _say(text: str) -> None:
    print(f"turnpost: note: {text}", file=sys.stderr)
