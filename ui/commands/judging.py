"""What ``measure`` and ``check`` share: from a clip or a trace to a judged session."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from tracker.session.stage import StageLog, Step, load_stage_log, stage_path_of

if TYPE_CHECKING:
    from tracker.plan.asked import Asked
    from tracker.plan.model import Plan
    from tracker.session.live import SessionInfo
    from tracker.session.projections import SessionRecord

#: An end that no clip reaches; the engine cuts the step where the clip ends.
_OPEN_END_S = 1e7


def find_stage(source: Path, named: Path | None) -> StageLog | None:
    """The stage log named, else the one beside the source, else None."""
    if named is not None:
        return load_stage_log(named)
    # A clip's log carries its name; a session's folder holds a trace and its log.
    places = [stage_path_of(source)]
    if source.name == "trace.csv":
        places.append(source.with_name("stage.json"))
    return next((load_stage_log(p) for p in places if os.path.isfile(p)), None)  # noqa: PTH113 never fails


def session_about(
    notes: tuple[str, ...] = (), plan: Plan | None = None, **setup: object
) -> SessionInfo:
    """What is known of a session that is judged alone; person and plan if there is a plan."""
    from tracker.session.live import SessionInfo
    from ui.cli import program_version

    return SessionInfo(
        person=plan.person if plan is not None else None,
        plan_id=plan.plan_id if plan is not None else None,
        table_group=plan.table_group if plan is not None else None,
        program_version=program_version(),
        setup=dict(setup),
        notes=notes,
    )


def unjudged(stage: StageLog) -> StageLog:
    """The same log with its exercises unnamed: they are measured, not judged."""
    steps = [s.model_copy(update={"exercise": None}) for s in stage.steps]
    return stage.model_copy(update={"steps": steps})


def asked_as(stage: StageLog, exercise_id: str) -> tuple[StageLog, tuple[str, ...]]:
    """The log with only one exercise judged, and notes.

    Where it asked for other exercises alone, those are judged as the one named,
    with a note that says so.
    """
    sets = [s for s in stage.steps if s.step == "exercise"]
    fitting = [s for s in sets if s.exercise in (exercise_id, None)]
    other = bool(sets) and not fitting

    def judged(step: Step) -> Step:
        if step.step != "exercise":
            return step
        chosen = other or step.exercise in (exercise_id, None)
        return step.model_copy(update={"exercise": exercise_id if chosen else None})

    log = stage.model_copy(update={"steps": [judged(s) for s in stage.steps]})
    return log, ("other_exercise",) if other else ()


def asked_by(stage: StageLog, asked: Asked) -> StageLog:
    """The log with what an entry of a plan asks for in place of what it says itself."""
    steps = [
        s.model_copy(update=asked.step_values) if s.exercise == asked.exercise.id else s
        for s in stage.steps
    ]
    return stage.model_copy(update={"steps": steps})


def whole_clip(exercise_id: str | None) -> StageLog:
    """Steps of a clip without a stage log: a second at rest, then the exercise."""
    from tracker.session.clip_run import REST_S

    step = Step(
        from_s=REST_S, to_s=_OPEN_END_S, step="exercise", exercise=exercise_id, no_setup=True
    )
    return StageLog(steps=[step])


def measure_clip(
    path: Path,
    stage: StageLog,
    notes: tuple[str, ...],
    say: Callable[[str], None],
    plan: Plan | None = None,
) -> SessionRecord:
    """Measure and judge a clip."""
    # Imported here: cv2 and mediapipe take a second that a trace doesn't need.
    from calibration.measurer import make_measurer
    from tracker.lens import lens_of
    from tracker.session.clip_run import run_clip
    from tracker.vision.clips import open_clip

    with open_clip(path) as clip:
        camera = {
            "width_px": clip.info.width_px,
            "height_px": clip.info.height_px,
            **lens_of(stage.camera.vertical_fov_deg).found(),
        }
        measurer = make_measurer(vertical_fov_deg=stage.camera.vertical_fov_deg)
        try:
            about = session_about(notes, plan, camera=camera)
            record = run_clip(clip, measurer, stage, about)
        finally:
            measurer.close()
        if clip.truncated:
            say(f"{path} breaks off early; what it holds was measured")
    return record
