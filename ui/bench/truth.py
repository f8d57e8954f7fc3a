"""What was measured in a clip against what was true in it."""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray
from pydantic import BaseModel, ConfigDict, FiniteFloat, ValidationError

from tracker.errors import InputError
from tracker.inputs import read_input_text
from tracker.sample import TEXT_COLUMNS, TRACE_COLUMNS
from tracker.session.projections import SessionRecord
from tracker.session.trace import load_trace
from ui.bench.derived import derived

Array = NDArray[np.float64]

#: An event is found when one of its kind begins this near to the truth (own choice).
EVENT_WITHIN_S = 0.15
#: Keeps a foreign file from filling the memory (own choice).
MAX_EVENTS_BYTES = 1_000_000
#: Errors of the eyes are counted while they are open and not in a blink's edge.
OPEN = 0.95
ANGLES = (
    "head_yaw_deg",
    "head_pitch_deg",
    "head_roll_deg",
    "eye_yaw_deg",
    "eye_pitch_deg",
    "gaze_yaw_deg",
    "gaze_pitch_deg",
)


class _Event(BaseModel):
    model_config = ConfigDict(extra="allow")

    code: str
    start_s: FiniteFloat
    end_s: FiniteFloat


class _Happened(BaseModel):
    model_config = ConfigDict(extra="allow")

    repetitions: int
    events: list[_Event]


@dataclass(frozen=True, slots=True)
class Truth:
    """A clip's truth: columns by name ``(n,)``, and what happened in it."""

    columns: dict[str, Array]
    events: dict[str, Any]


@dataclass(frozen=True, slots=True)
class Comparison:
    """How near one clip was measured.

    Attributes
    ----------
    error_deg
        Mean absolute error of each of :data:`ANGLES` over the exercise.
    slope
        Measured degrees for each true one, where the truth moved enough to tell.
    derived
        Errors of what follows from the angles, by name (:mod:`ui.bench.derived`).
    measured, gaze_measured
        Share of the exercise's frames with a head pose; of those with open eyes in truth,
        share with a line of sight.
    repetitions, true_repetitions
        Counts.
    found, missed, false
        Events that the truth has and were found in time, those that were not,
        and those that the truth does not have.
    """

    error_deg: dict[str, float]
    slope: dict[str, float]
    derived: dict[str, float]
    measured: float
    gaze_measured: float
    repetitions: int
    true_repetitions: int
    found: int
    missed: int
    false: int


def load_truth(clip: Path) -> Truth:
    """Truth beside a clip.

    Raises
    ------
    InputError
        If the clip or its truth is not there, or can't be used.
    """
    table, told = (clip.with_suffix(ending) for ending in (".truth.csv", ".events.json"))
    if not os.path.isfile(clip):  # noqa: PTH113 never fails
        raise InputError(f"{clip}: is no clip that can be read")
    for path in (table, told):
        if not os.path.isfile(path):  # noqa: PTH113 never fails
            raise InputError(f"{clip}: has no truth to compare with: {path.name} is not beside it")
    samples = load_trace(table)
    columns = {
        name: np.array([getattr(s, name) for s in samples])
        for name in TRACE_COLUMNS
        if name not in TEXT_COLUMNS
    }
    return Truth(columns, _events_of(told))


def _events_of(path: Path) -> dict[str, Any]:
    """What happened in a clip: its repetitions, and events with their times."""
    text = read_input_text(path, MAX_EVENTS_BYTES, "a clip's events")
    try:
        return _Happened.model_validate_json(text).model_dump()
    except ValidationError as error:
        raise InputError(f"{path}: does not say what happened in a clip") from error


def compare(record: SessionRecord, truth: Truth) -> Comparison:
    """Measured session against the truth of its clip, over the exercise."""
    exercise = record.exercises[0]
    times = np.array([s.time_s for s in exercise.samples])
    rows = np.searchsorted(truth.columns["time_s"], times - 1e-4)
    rows = np.minimum(rows, len(truth.columns["time_s"]) - 1)
    errors, slopes = {}, {}
    opened = truth.columns["eye_open"][rows] > OPEN
    for name in ANGLES:
        true = truth.columns[name][rows]
        read = np.array([getattr(s, name) for s in exercise.samples])
        usable = np.isfinite(true) & np.isfinite(read)
        if not name.startswith("head"):
            usable &= opened
        if not usable.any():
            continue
        errors[name] = float(np.abs(read - true)[usable].mean())
        if true[usable].std() > 4.0:
            slopes[name] = float(np.polyfit(true[usable], read[usable], 1)[0])
    measured = np.isfinite([s.head_yaw_deg for s in exercise.samples]).mean()
    found, missed, false = match_events(
        [(e.code, e.start_s) for e in exercise.events], truth.events["events"]
    )
    return Comparison(
        errors,
        slopes,
        derived(exercise, truth.columns, rows, truth.events["events"]),
        float(measured),
        float(np.isfinite([s.gaze_yaw_deg for s in exercise.samples])[opened].mean()),
        len(exercise.turns) // 2,
        int(truth.events["repetitions"]),
        found,
        missed,
        false,
    )


def match_events(seen: list[tuple[str, float]], true: list[dict[str, Any]]) -> tuple[int, int, int]:
    """Numbers of events found in time, missed, and false.

    An eyes-closed or not-measured stretch explains what goes with it, so events
    within a true event's span are false only if the truth knows no reason.
    """
    left = list(seen)
    found = 0
    for event in true:
        hit = next(
            (
                s
                for s in left
                if s[0] == event["code"] and abs(s[1] - event["start_s"]) <= EVENT_WITHIN_S
            ),
            None,
        )
        if hit is not None:
            found += 1
            left.remove(hit)
    return found, len(true) - found, len(left)
