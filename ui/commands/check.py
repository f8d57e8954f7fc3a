"""``turnpost check``: the checks of one exercise on a clip or a trace, without a window."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

from ui.commands.judging import (
    asked_as,
    asked_by,
    find_stage,
    measure_clip,
    session_about,
    whole_clip,
)
from ui.commands.measure import NOTES

if TYPE_CHECKING:
    from tracker.plan.asked import Asked
    from tracker.plan.model import Plan
    from tracker.session.projections import SessionRecord
    from tracker.session.stage import StageLog
    from tracker.session.summary_file import ExerciseSummary, Summary

ORDERS = ("eyes_first", "together", "head_first", "not_told")
TRACE_SUFFIXES = frozenset({".csv", ".tsv", ".txt"})


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "check",
        help="check one exercise in a clip or a trace",
        description="Counts and checks one exercise in a clip or in a trace (.csv), prints the "
        "figures, and writes the summary. Uses the same code as live practice.",
    )
    parser.add_argument("source", type=Path, metavar="CLIP_OR_TRACE", help="a clip or a trace")
    parser.add_argument("--exercise", required=True, metavar="ID", help="which exercise it is")
    parser.add_argument("--out", type=Path, metavar="SUMMARY.json", help="where to write it")
    parser.add_argument("--stage", type=Path, metavar="F", help="the stage log, if not beside it")
    parser.add_argument(
        "--plan", type=Path, metavar="PLAN", help="take dose, tempo and range from this plan"
    )
    parser.add_argument(
        "--entry", metavar="ENTRY_ID", help="which entry of the plan, if several have the exercise"
    )
    parser.add_argument(
        "--week",
        type=int,
        default=1,
        metavar="N",
        help="which week of the plan's ladders (default: %(default)s)",
    )
    parser.set_defaults(run=run)


def run(args: argparse.Namespace) -> int:
    """Judge, print, write."""
    from tracker.exercises.catalogue import find_exercise
    from tracker.outputs import CLIP_SUMMARY, must_harm_nothing
    from tracker.session.summary import summarise
    from tracker.session.summary_file import save_summary

    find_exercise(args.exercise)
    plan, asked = _planned(args)
    if args.out is not None:
        named = [p for p in (args.source, args.stage, args.plan) if p is not None]
        must_harm_nothing(args.out, replaces=CLIP_SUMMARY, inputs=named)
    stage = find_stage(args.source, args.stage)
    is_trace = args.source.suffix.lower() in TRACE_SUFFIXES
    judge = _judge_trace if is_trace else _judge_clip
    record = judge(args.source, args.exercise, stage, plan, asked)
    summary = summarise(record)
    if args.out is not None:
        save_summary(args.out, summary)
    print("\n".join(table(summary)))
    for note in record.about.notes:
        _say(NOTES.get(note, note))
    return 0


def _planned(args: argparse.Namespace) -> tuple[Plan | None, Asked | None]:
    """The plan and what its entry asks for, if a plan is named."""
    from tracker.errors import InputError

    if args.plan is None:
        if args.entry is not None or args.week != 1:
            raise InputError("--entry and --week belong to a plan; name it with --plan")
        return None, None
    if args.week < 1:
        raise InputError("--week counts from 1")
    from tracker.plan.asked import asked_of, find_entry
    from tracker.plan.files import load_plan

    plan = load_plan(args.plan)
    return plan, asked_of(find_entry(plan, args.exercise, args.entry), args.week)


def _judge_clip(
    path: Path, exercise_id: str, stage: StageLog | None, plan: Plan | None, asked: Asked | None
) -> SessionRecord:
    log, notes = (whole_clip(exercise_id), ()) if stage is None else asked_as(stage, exercise_id)
    log = log if asked is None else asked_by(log, asked)
    return measure_clip(path, log, notes, _say, plan)


def _judge_trace(
    path: Path, exercise_id: str, stage: StageLog | None, plan: Plan | None, asked: Asked | None
) -> SessionRecord:
    from tracker.session.clip_run import run_samples
    from tracker.session.trace import load_trace, setup_notes, stage_of_trace

    samples = load_trace(path)
    notes: tuple[str, ...] = ()
    if stage is None:
        stage = stage_of_trace(samples, exercise_id)
    else:
        stage, notes = asked_as(stage, exercise_id)
    stage = stage if asked is None else asked_by(stage, asked)
    read = {} if stage.setup is None else stage.setup.model_dump()
    notes = (*notes, *setup_notes(samples, stage.setup))
    return run_samples(samples, stage.steps, session_about(notes, plan, **read))


def table(summary: Summary) -> list[str]:
    """The summary's main figures, a line each."""
    if not summary.exercises:
        return ["no exercise was found in the time that was judged"]
    lines: list[str] = []
    for exercise in summary.exercises:
        lines += [f"{name:<24} {value}" for name, value in _rows(exercise)]
    return lines


def _rows(e: ExerciseSummary) -> Iterator[tuple[str, str]]:
    yield "exercise", e.exercise
    if e.done.repetitions is None:
        yield "repetitions", f"not counted: {e.done.reason}"
    else:
        yield "repetitions", f"{e.done.repetitions}   ({e.done.turns} turns)"
    yield (
        "measured",
        f"{100 * (e.done.measured_fraction or 0.0):.0f} % of {e.done.duration_s:.1f} s",
    )
    movement = e.head or e.eyes
    if movement is not None:
        yield from _movement(movement)
        yield "tempo, beats a minute", _figure(movement.get("tempo_bpm"))
    yield from _body(e)
    if e.gaze is not None:
        yield "gaze on target", _share(e.gaze["on_target_fraction"])
        yield "gaze error, deg", _figure(e.gaze["error_deg"])
        ratio = _figure(e.gaze["counter_turn_ratio"], 2)
        yield "counter-turn ratio", f"{ratio}   (not a diagnostic gain)"
    yield from _target(e)
    if e.stillness is not None:
        still = e.stillness
        moved = "p95_deg"
        value = _missing(still) if still[moved] is None else f"95 % within {still[moved]:.1f} deg"
        yield "head still", value
    yield "eyes closed", _share(e.eyes_closed_fraction)
    for event in e.events:
        end = "" if event.end_s is None else f" to {event.end_s:.2f}"
        why = f"   ({event.reason})" if event.reason else ""
        yield event.code, f"{event.start_s:.2f}{end} s{why}"
    for flag in e.quality:
        yield flag.flag, flag.reason


def _movement(movement: dict[str, Any]) -> Iterator[tuple[str, str]]:
    """How far and how fast head or eyes moved."""
    if "vergence_change_deg" in movement:
        yield "change of vergence, deg", _sides(movement["vergence_change_deg"])
        return
    yield "amplitude, deg", _sides(movement.get("amplitude_deg"))
    yield "peak speed, deg/s", _sides(movement.get("peak_speed_deg_s"))


def _target(e: ExerciseSummary) -> Iterator[tuple[str, str]]:
    """What a target did that moves, who went first to a mark, and jumps while following."""
    wall = e.prescribed.get("wall")
    if wall is not None:
        apart = "" if wall["half_deg"] is None else f", {2 * wall['half_deg']:.1f} deg apart"
        yield "marks on the wall", f"{wall['distance_mm'] / 10:g} cm away{apart}"
        error = wall["gaze_error_deg"]
        yield "gaze error there, deg", "not known" if error is None else f"{error:.1f}"
    swing = e.prescribed.get("target", {}).get("swing_deg")
    if swing is not None:
        yield "target, to each side, deg", f"{swing:.1f}"
    if e.order is not None:
        counts = (f"{n.replace('_', ' ')} {e.order[n]}" for n in ORDERS)
        yield "to the mark", _missing(e.order) if e.order["reason"] else ", ".join(counts)
        yield "eyes before the head, s", _figure(e.order["lead_s"], 2)
    if e.arrivals is not None:
        yield from _arrivals(e.arrivals)
    if e.catch_up_jumps is not None:
        jumps = e.catch_up_jumps
        known = jumps["value"] is not None
        yield (
            "jumps while following",
            f"{jumps['value']}   (not diagnostic)" if known else _missing(jumps),
        )


def _arrivals(found: dict[str, Any]) -> Iterator[tuple[str, str]]:
    """Whether the eyes arrived at their targets, and how many they left out."""
    from tracker.records.of_target import ARRIVED

    if found["reason"]:
        yield "eyes came to rest", _missing(found)
        return
    counts = (f"{words} {found[n]}" for n, words in ARRIVED.items() if found[n])
    yield "eyes came to rest", f"{', '.join(counts)}   (within {found['within_deg']:g} deg)"
    yield "beyond the target, deg", _figure(found["off_deg"])
    if found["skipped"] is not None:
        yield "targets left out", str(found["skipped"])


def _body(e: ExerciseSummary) -> Iterator[tuple[str, str]]:
    """What is done with the whole body: held, swayed, stood up."""
    if e.done.held_s is not None:
        yield "held", f"{e.done.held_s:.1f} s   (longest {e.done.held_longest_s:.1f} s)"
    if e.body is not None:
        yield "from end to end, mm", _sides(e.body["swing_mm"])
        yield "time of a way, s", _sides(e.body["time_s"])
        yield "repetition to repetition, s", _figure(e.body["rhythm_s"])
    if e.table is not None:
        yield "published table", _against_table(e.table)
    if e.sway["value"] is not None:
        yield (
            "sway of the neck, mm",
            f"{e.sway['value']:.1f}   (sideways {e.sway['rms_sideways_mm']:.1f}, "
            f"fore-aft {e.sway['rms_fore_aft_mm']:.1f}; RMS)",
        )


def _against_table(table: dict[str, Any]) -> str:
    """A chair stand test against its table, with the source and what it holds for."""
    value = "not known" if table["value"] is None else f"{table['value']:g} {table['unit']}"
    if table["below_average"] is None:
        verdict = f"not set against it: {table['reason']}"
    else:
        worse = "below average" if table["below_average"] else "not below average"
        verdict = f"{worse} (limit {table['limit']:g}; {table['source']})"
    return f"{value}, {verdict}; holds for {table['holds_for']}"


def _figure(figure: dict[str, Any] | None, places: int = 1) -> str:
    if figure is None or figure["median"] is None:
        return _missing(figure)
    return f"{figure['median']:.{places}f}   (spread {figure['spread']:.{places}f})"


def _sides(figure: dict[str, Any] | None) -> str:
    if figure is None or figure["median"] is None:
        return _missing(figure)
    sides = ", ".join(
        f"{name} {f['median']:.1f}"
        for name, f in figure["by_side"].items()
        if f["median"] is not None
    )
    return f"{figure['median']:.1f}   ({sides})"


def _share(figure: dict[str, Any]) -> str:
    if figure["value"] is None:
        return _missing(figure)
    return f"{100 * figure['value']:.0f} % of what was measured"


def _missing(figure: dict[str, Any] | None) -> str:
    return f"not measured: {(figure or {}).get('reason', 'no reason is known')}"


def _say(text: str) -> None:
    print(f"turnpost: note: {text}", file=sys.stderr)
