"""The stage log: what was shown and asked, and when.

A stage log beside a clip (``CLIP.stage.json``) lets the clip be judged exactly
as if it had been live; the program writes one with every session.
"""

from __future__ import annotations

import itertools
import json
from bisect import bisect_right
from collections.abc import Sequence
from pathlib import Path
from typing import Annotated, Any, Literal

from pydantic import (
    BaseModel,
    BeforeValidator,
    ConfigDict,
    Field,
    ValidationError,
    model_validator,
)

from tracker.errors import InputError
from tracker.inputs import read_input_text

StepName = Literal["rest", "look", "turn_slowly", "nod_slowly", "exercise"]
SETUP_STEPS: tuple[StepName, ...] = ("rest", "look", "turn_slowly", "nod_slowly")

#: Bounds that keep a foreign file from filling the memory.
MAX_FILE_BYTES = 4_000_000
MAX_STEPS = 2_000

Finite = Annotated[float, Field(allow_inf_nan=False)]
Millimetres = Annotated[float, Field(allow_inf_nan=False, ge=-100_000, le=100_000)]
Point = tuple[Millimetres, Millimetres, Millimetres]


class Step(BaseModel):
    """One step of a session: what was asked from ``from_s`` up to (not including) ``to_s``.

    ``target_mm`` is a point in the rest frame (right, up, forward; from the
    mid-point between the eyeballs at rest); ``target_track`` is rows of
    ``time_s, x, y, z`` between which the target moves in a straight line.
    """

    model_config = ConfigDict(extra="allow", frozen=True)

    from_s: Finite
    to_s: Finite
    step: StepName
    target_mm: Point | None = None
    target_track: list[tuple[Finite, Millimetres, Millimetres, Millimetres]] | None = None
    exercise: str | None = None
    entry_id: str | None = None
    tempo_bpm: (
        Annotated[float, Field(gt=0, le=400)]
        | tuple[Annotated[float, Field(gt=0, le=400)], Annotated[float, Field(gt=0, le=400)]]
        | None
    ) = None
    eyes: Literal["open", "closed"] | None = None
    posture: str | None = None
    surface: str | None = None

    @model_validator(mode="after")
    def _check(self) -> Step:
        if self.to_s < self.from_s:
            raise ValueError("to_s is before from_s")
        if self.target_mm is not None and self.target_track is not None:
            raise ValueError("give target_mm or target_track, not both")
        if self.target_track is not None:
            times = [row[0] for row in self.target_track]
            if not times or any(b < a for a, b in itertools.pairwise(times)):
                raise ValueError("target_track needs rows in the order of their times")
        return self

    def target_at(self, time_s: float) -> tuple[float, float, float] | None:
        """Target in millimetres in the rest frame at ``time_s``, or None if there is none."""
        rows = self.target_track
        if rows is None:
            return self.target_mm
        after = bisect_right(rows, time_s, key=_time_of)
        if after in (0, len(rows)):
            return rows[min(after, len(rows) - 1)][1:]
        before, then = rows[after - 1], rows[after]
        share = (time_s - before[0]) / (then[0] - before[0])
        x, y, z = (a + share * (b - a) for a, b in zip(before[1:], then[1:], strict=True))
        return x, y, z

    def until(self, to_s: float) -> Step:
        """The step, ended earlier; its track then ends there, too."""
        track = self.target_track
        if track is not None:
            # One row more: the way to it may have begun.
            track = track[: bisect_right(track, to_s, key=_time_of) + 1]
        return self.model_copy(update={"to_s": to_s, "target_track": track})

    def tempo_at(self, time_s: float) -> float | None:
        """Asked tempo in beats a minute at ``time_s``, or None where none was asked."""
        if self.tempo_bpm is None or isinstance(self.tempo_bpm, float):
            return self.tempo_bpm
        first, last = self.tempo_bpm
        share = (time_s - self.from_s) / max(self.to_s - self.from_s, 1e-9)
        return first + (last - first) * min(max(share, 0.0), 1.0)


def _time_of(row: tuple[float, float, float, float]) -> float:
    return row[0]


class Camera(BaseModel):
    """What is known of the camera."""

    model_config = ConfigDict(extra="allow", frozen=True)

    vertical_fov_deg: Annotated[float, Field(gt=5, lt=170)] | None = None


class GazeRead(BaseModel):
    """How well a set-up read the gaze: its error, None where it measured none."""

    model_config = ConfigDict(extra="ignore", frozen=True)

    calibration: Literal["fitted"]
    gaze_error_deg: Annotated[float, Field(ge=0, le=180, allow_inf_nan=False)] | None = None


def _usable(setup: object) -> object:
    """What is understood of a set-up; whatever else stands there says nothing."""
    try:
        return None if setup is None else GazeRead.model_validate(setup)
    except ValidationError:
        return None


class StageLog(BaseModel):
    """A camera and the steps of a session, in the order of time and without overlap.

    ``setup`` says how well the set-up read the gaze, for who judges a trace without its summary.
    """

    model_config = ConfigDict(extra="allow", frozen=True)

    camera: Camera = Camera()
    setup: Annotated[GazeRead | None, BeforeValidator(_usable)] = None
    steps: Annotated[list[Step], Field(max_length=MAX_STEPS)] = []

    @model_validator(mode="after")
    def _check(self) -> StageLog:
        for a, b in zip(self.steps, self.steps[1:], strict=False):
            if b.from_s < a.to_s - 1e-6:
                raise ValueError(f"the step from {b.from_s} s begins before the one before it ends")
        return self

    def step_at(self, time_s: float) -> Step | None:
        """The step that covers ``time_s``, or None between and outside the steps."""
        for step in self.steps:
            if step.from_s <= time_s < step.to_s:
                return step
        return None


def setup_steps(steps: Sequence[Step]) -> list[Step]:
    """Those of ``steps`` that belong to a set-up."""
    return [s for s in steps if s.step in SETUP_STEPS]


def is_judged(step: Step) -> bool:
    """Whether repetitions and events count in a step: an exercise that is named."""
    return step.step == "exercise" and step.exercise is not None


def stage_path_of(clip: Path) -> Path:
    """Where the stage log of a clip lies: beside it, ``NAME.stage.json``."""
    # By hand: Path.with_name fails where there is no name, as of the folder that one is in.
    return clip.parent / f"{clip.stem}.stage.json"


def schema() -> dict[str, Any]:
    """JSON Schema of a stage log."""
    return StageLog.model_json_schema()


def load_stage_log(path: Path) -> StageLog:
    """Read a stage log.

    Raises
    ------
    InputError
        If the file can't be read or is no stage log; the message names the field.
    """
    text = read_input_text(path, MAX_FILE_BYTES, "a stage log")
    try:
        data = json.loads(text)
        return StageLog.model_validate(data)
    except (ValueError, RecursionError) as error:
        raise InputError(f"{path}: not a usable stage log: {_first_fault(error)}") from error


def _first_fault(error: Exception) -> str:
    if isinstance(error, ValidationError):
        first = error.errors()[0]
        where = ".".join(str(part) for part in first["loc"]) or "the file"
        return f"{where}: {first['msg']}"
    return str(error) or type(error).__name__
