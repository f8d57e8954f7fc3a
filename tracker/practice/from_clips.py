"""A session of a plan from clips: one clip an entry, all on one session clock.

Each clip brings its own clock, which begins at 0, its own set-up and its own camera.
Its times are shifted to where the session stands when the entry begins. Between
two clips the session's clock goes on by what the plan and the answers say (10 s to
the score, the time to settle, the rest): nobody was there, and the summary says so.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from contextlib import AbstractContextManager
from dataclasses import replace
from datetime import date
from math import isfinite
from typing import Any

from tracker.plan.model import Plan
from tracker.practice.conductor import Conductor
from tracker.practice.matching import StagedClip
from tracker.practice.scripted import Answers
from tracker.practice.tasks import DoSet, Over, Prepare, Settle
from tracker.sample import Sample
from tracker.session.clip_run import MeasuredClip
from tracker.session.derive import TIME_DECIMALS
from tracker.session.engine import Engine
from tracker.session.stage import Step
from tracker.session.summary_file import Summary

#: Opens and measures a clip for as long as the context lasts.
OpenClip = Callable[[StagedClip], AbstractContextManager[MeasuredClip]]


def run_plan(
    plan: Plan,
    engine: Engine,
    clips: Mapping[str, StagedClip],
    open_clip: OpenClip,
    answers: Answers,
    *,
    history: Sequence[Summary] = (),
    today: date | None = None,
    week: int = 1,
    stage_id: str | None = None,
) -> Over:
    """Go through a session; everything is in the engine's journal afterwards.

    Parameters
    ----------
    clips
        Entry -> its clip; an entry without one is not done.
    open_clip
        Measures a clip with a measurer of its own.
    history, today, week, stage_id
        As for the conductor.
    """
    absent = {e.entry_id: "no_clip" for e in plan.entries if e.entry_id not in clips}
    conductor = Conductor(
        plan,
        engine,
        history=history,
        today=today,
        week=week,
        stage_id=stage_id,
        absent=absent,
        attended=False,
        countdown_s=0.0,
        standing_countdown_s=0.0,
    )
    while not isinstance(conductor.task, Over):
        task = conductor.task
        if isinstance(task, Prepare) and task.asked is not None:
            with open_clip(clips[task.asked.entry_id]) as clip:
                _do(conductor, engine, clip, task.asked.step_values)
        elif isinstance(task, Settle):
            _settle(conductor, engine, task, answers)
        elif isfinite(task.until_s):
            _wait(conductor, engine, task.until_s)
        else:
            conductor.answer(answers.to(task))
        if not isinstance(conductor.task, Over):
            engine.advance(conductor.now_s)
    return conductor.task


def _do(
    conductor: Conductor, engine: Engine, clip: MeasuredClip, values: Mapping[str, Any]
) -> None:
    """One entry: its set-up, then its set, from one clip."""
    offset_s = conductor.now_s
    steps = [shifted_step(s, offset_s) for s in clip.steps]
    steps = [s.model_copy(update=values) if s.step == "exercise" else s for s in steps]
    first = next(k for k, s in enumerate(steps) if s.step == "exercise")
    engine.use_setup(offset_s, clip.found, clip.notes)
    for step in steps[:first]:
        engine.begin(step)
    conductor.advance(steps[first].from_s)
    conductor.answer(True)
    conductor.advance(conductor.now_s)
    if not isinstance(conductor.task, DoSet):
        raise AssertionError("a clip has no countdown")
    for step in steps[first:]:
        if step.step == "exercise":
            conductor.begin_set(step)
        else:
            engine.begin(step)
    last_s = offset_s
    for sample in clip.samples:
        moved = shifted_sample(sample, offset_s)
        engine.feed(moved)
        last_s = max(last_s, moved.time_s)
    sets_end_s = max(s.to_s for s in steps if s.step == "exercise")
    # A clip may break off within its set, or go on after it.
    end_s = sets_end_s if sets_end_s - last_s < 0.2 else last_s
    conductor.end_set(max(end_s, conductor.now_s))
    # What follows must not begin before the clip has ended.
    conductor.advance(last_s)


def _settle(conductor: Conductor, engine: Engine, task: Settle, answers: Answers) -> None:
    minutes = answers.of(task.entry_id).settled_minutes
    if minutes is None:
        conductor.answer(None)
        return
    _wait(conductor, engine, min(task.since_s + 60.0 * minutes, task.until_s))
    if isinstance(conductor.task, Settle):
        conductor.answer(True)


def _wait(conductor: Conductor, engine: Engine, until_s: float) -> None:
    """The engine's time first: the session may end with the conductor's."""
    engine.advance(until_s)
    conductor.advance(until_s)


def shifted_step(step: Step, offset_s: float) -> Step:
    """The step so much later, its target's track too."""
    changes: dict[str, Any] = {
        "from_s": _later(step.from_s, offset_s),
        "to_s": _later(step.to_s, offset_s),
    }
    if step.target_track is not None:
        changes["target_track"] = [(_later(t, offset_s), *at) for t, *at in step.target_track]
    return step.model_copy(update=changes)


def shifted_sample(sample: Sample, offset_s: float) -> Sample:
    """The sample so much later."""
    return replace(sample, time_s=_later(sample.time_s, offset_s))


def _later(time_s: float, offset_s: float) -> float:
    """With the decimals that are kept, so that a sample stays on its side of a step's edge."""
    return round(time_s + offset_s, TIME_DECIMALS)
