"""Scenarios: small readable files that say who does what before which camera."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationError, model_validator


class ScenarioError(ValueError):
    """A scenario that can't be used; the message names the field."""


class _Strict(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True)


class CameraSpec(_Strict):
    """The camera in the rest frame; a tilt above zero looks down."""

    # H.264 with halved colours needs even sizes.
    width_px: Annotated[int, Field(ge=64, le=4096, multiple_of=2)] = 640
    height_px: Annotated[int, Field(ge=64, le=4096, multiple_of=2)] = 480
    rate_hz: Annotated[int, Field(ge=5, le=120)] = 30
    vertical_fov_deg: Annotated[float, Field(gt=10, lt=120)] = 52.0
    position_mm: tuple[float, float, float] = (0.0, 60.0, 560.0)
    tilt_deg: float = 4.0
    noise: Annotated[float, Field(ge=0, le=40)] = 2.0
    exposures: Annotated[int, Field(ge=1, le=8)] = 1


class Movement(_Strict):
    """What is done in the exercise: a repetition is one there-and-back."""

    kind: Literal[
        "turns",
        "nods",
        "jumps",
        "wander",
        "still",
        "rise",
        "sway_fore_aft",
        "sway_sideways",
        "near_far",
        "shoulders_back",
        "shoulders_forward",
        "toss",
        "reach",
        "turns_x2",
        "nods_x2",
        "follow",
        "eyes_then_head",
        "tilts",
        "near_hold",
    ] = "turns"
    amplitude_deg: Annotated[float, Field(ge=0, le=60)] = 18.0
    # Jumps go up and down, not from side to side.
    vertical: bool = False
    # Height of a rise; depth of a bend; lift of a shoulder; of a sway, to each side.
    amplitude_mm: Annotated[float, Field(ge=0, le=600)] = 60.0
    # Sway of the neck point that goes on besides, to each side.
    sway_mm: Annotated[float, Field(ge=0, le=100)] = 0.0
    # Least amplitude asked, where what is done stays below it in the whole set.
    least_deg: Annotated[float, Field(ge=0, le=60)] = 0.0
    # Of a target that comes near and goes away again: from the eyes, at its nearest and farthest.
    near_mm: Annotated[float, Field(ge=100, le=2000)] = 300.0
    far_mm: Annotated[float, Field(ge=100, le=5000)] = 600.0
    # Of a target that moves, or of two marks: to each side of the middle.
    target_deg: Annotated[float, Field(ge=0, le=40)] = 10.0
    # The head goes with a target that it should go against; or along with one that only
    # the eyes should follow.
    with_target: bool = False
    # Eyes that follow in steps of so long, in place of smoothly.
    steps_s: Annotated[float, Field(ge=0, le=2)] = 0.0
    # These jumps (numbered from 0) stop at this share of their way; these are left out, and the
    # eyes stay where they are.
    short: list[int] = []
    short_share: Annotated[float, Field(gt=0, lt=1)] = 0.55
    skipped: list[int] = []
    # These tilts (numbered from 0) turn the head in place of tilting it.
    turned: list[int] = []
    # How long after the eyes the head goes to a mark; below zero it goes first.
    head_after_s: Annotated[float, Field(ge=-1, le=1)] = 0.3
    # These rises or rolls (numbered from 0) go only half-way up; these throws stay low; after
    # these bends one sits up half-way.
    half: list[int] = []
    tempo_bpm: Annotated[float, Field(gt=5, le=400)] = 60.0
    repetitions: Annotated[int, Field(ge=1, le=200)] = 8
    uneven: Annotated[float, Field(ge=0, le=0.5)] = 0.06


class Glance(_Strict):
    """The gaze leaves the target for a while; times from the exercise's start."""

    at_s: float
    lasts_s: Annotated[float, Field(gt=0.1)]
    yaw_deg: float
    pitch_deg: float


class Wall(_Strict):
    """Marks on a wall in place of the screen: as far away and as high, from the eyes at rest."""

    distance_mm: Annotated[float, Field(ge=500, le=5000)] = 1500.0
    height_mm: float = 0.0
    # Whether the set-up has looks at the marks, besides those at the screen.
    learnt: bool = True


class Span(_Strict):
    """A stretch of the exercise."""

    at_s: float
    lasts_s: Annotated[float, Field(gt=0.05)]


class HeadHelp(_Strict):
    """In these jumps (numbered from 0) the head turns along."""

    jumps: list[int]
    by_deg: float = 6.5


class Scenario(_Strict):
    """One clip."""

    name: Annotated[str, Field(pattern=r"^[a-z0-9][a-z0-9-]{0,60}$")]
    head: str = "anna"
    exercise: str = "turns-on-target"
    seed: int = 0
    camera: CameraSpec = CameraSpec()
    light: Annotated[float, Field(gt=0, le=2)] = 1.0
    light_from: tuple[float, float, float] = (0.3, 0.6, 0.75)
    # With the exercise the light changes by this factor, and comes from elsewhere.
    light_change: Annotated[float, Field(gt=0, le=3)] = 1.0
    light_then_from: tuple[float, float, float] | None = None
    target_distance_mm: Annotated[float, Field(ge=150, le=5000)] = 600.0
    target_height_mm: float = -60.0
    wall: Wall | None = None
    setup: bool = True
    setup_turn_deg: float = 26.0
    setup_nod_deg: float = 13.0
    setup_turn_s: Annotated[float, Field(ge=2, le=30)] = 5.0
    setup_nod_s: Annotated[float, Field(ge=2, le=30)] = 4.0
    movement: Movement = Movement()
    counter_turn: Annotated[float, Field(ge=0, le=1.2)] = 1.0
    # In the exercise the eyes turn with the head, and not against it.
    eyes_with_head: bool = False
    glances: list[Glance] = []
    head_helps: HeadHelp | None = None
    shut: list[Span] = []
    eyes: Literal["open", "closed"] = "open"
    opens: list[Span] = []
    chin_drops: list[Span] = []
    posture: Literal["sitting", "standing"] = "sitting"
    surface: Literal["firm", "soft"] = "firm"
    away: list[Span] = []
    talks: list[Span] = []
    glasses: bool = False
    low_lids: Annotated[float, Field(ge=0, le=1)] = 0.0
    # How much lower the lids hang in the exercise than in the set-up.
    lids_sink: Annotated[float, Field(ge=0, le=1)] = 0.0
    blinks: bool = True
    neighbour: str | None = None
    neighbour_mm: tuple[float, float, float] = (-330.0, -30.0, 60.0)

    @model_validator(mode="after")
    def _half_rises_exist(self) -> Scenario:
        kinds = ("rise", "shoulders_back", "shoulders_forward", "toss", "reach")
        there = self.movement.repetitions if self.movement.kind in kinds else 0
        if any(not 0 <= number < there for number in self.movement.half):
            raise ValueError(f"movement.half: there are {there} of them, numbered from 0")
        return self

    @model_validator(mode="after")
    def _turned_tilts_exist(self) -> Scenario:
        there = self.movement.repetitions if self.movement.kind == "tilts" else 0
        if any(not 0 <= number < there for number in self.movement.turned):
            raise ValueError(f"movement.turned: there are {there} of them, numbered from 0")
        return self

    @model_validator(mode="after")
    def _named_jumps_exist(self) -> Scenario:
        there = 2 * self.movement.repetitions if self.movement.kind == "jumps" else 0
        helped = self.head_helps.jumps if self.head_helps is not None else []
        move = self.movement
        for name, jumps in (
            ("head_helps.jumps", helped),
            ("movement.short", move.short),
            ("movement.skipped", move.skipped),
        ):
            if any(not 0 <= jump < there for jump in jumps):
                raise ValueError(f"{name}: there are {there} jumps, numbered from 0")
        return self


def load_scenario(path: Path) -> Scenario:
    """Read a scenario file.

    Raises
    ------
    ScenarioError
        One line that names the file and the field.
    """
    try:
        return Scenario.model_validate(json.loads(path.read_text(encoding="utf-8")))
    except ValidationError as error:
        first = error.errors()[0]
        where = ".".join(str(part) for part in first["loc"]) or "the scenario"
        raise ScenarioError(f"{path}: {where}: {first['msg']}") from error
    except (OSError, ValueError, RecursionError) as error:
        raise ScenarioError(f"{path}: not a readable scenario: {error}") from error
