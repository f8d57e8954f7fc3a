"""The exercises, as data.

A new exercise is an entry here and a test: what counts a repetition, what is
watched, how much and how fast by default, what it needs in the picture, and
what isn't measured. The words for the patient belong to the user interface.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal

from tracker.errors import InputError

Need = Literal["face", "eyes"]


@dataclass(frozen=True, slots=True)
class WatcherSpec:
    """A watcher from the registry, with the parameters that differ from its own."""

    name: str
    parameters: MappingProxyType[str, float] = field(default_factory=lambda: MappingProxyType({}))


@dataclass(frozen=True, slots=True)
class Exercise:
    """One exercise.

    Attributes
    ----------
    id
        Its ID in plans, stage logs and summaries.
    channel
        What a repetition is counted from (a key of ``counters.CHANNELS``).
    watchers
        What must hold while it runs.
    dose_repetitions
        Usual number of repetitions (issue 4, the catalogue's table).
    amplitude_deg
        Usual least and most to each side of rest; None where it isn't asked.
    tempo_bpm
        Usual beats a minute, one beat a turn.
    needs
        What has to be seen.
    on_target
        Whether the eyes are asked to stay on a target.
    head_still
        Whether the head is asked to stay still.
    not_measured
        Keys of what isn't measured, to be said openly.
    """

    id: str
    channel: str
    watchers: tuple[WatcherSpec, ...]
    dose_repetitions: int = 20
    amplitude_deg: tuple[float, float] | None = None
    tempo_bpm: float | None = 60.0
    needs: tuple[Need, ...] = ("face",)
    on_target: bool = False
    head_still: bool = False
    not_measured: tuple[str, ...] = ()


def _watch(*names: str) -> tuple[WatcherSpec, ...]:
    return tuple(WatcherSpec(name) for name in names)


#: Amplitudes 15-20 degrees in yaw, 10-15 in pitch and 60 beats a minute: issue 4,
#: "Plan", common practice; tables of head exercises range from 20 to 45 degrees.
_YAW_DEG = (15.0, 20.0)
_PITCH_DEG = (10.0, 15.0)
_HEAD_WATCHERS = _watch("too_small", "too_large", "too_slow", "too_fast", "not_measured")

CATALOGUE: dict[str, Exercise] = {
    e.id: e
    for e in (
        Exercise(
            "eyes-up-down",
            "eye_pitch",
            _watch("head_moved", "eyes_closed", "too_slow", "too_fast", "not_measured"),
            needs=("face", "eyes"),
            head_still=True,
            not_measured=("reach_vertical", "gaze_short", "peak_speed_of_eyes"),
        ),
        Exercise(
            "eyes-side-to-side",
            "eye_yaw",
            _watch("head_moved", "eyes_closed", "too_slow", "too_fast", "not_measured"),
            needs=("face", "eyes"),
            head_still=True,
            not_measured=("gaze_short", "peak_speed_of_eyes"),
        ),
        Exercise(
            "nods-on-target",
            "head_pitch",
            (*_watch("gaze_off_target", "eyes_closed"), *_HEAD_WATCHERS),
            amplitude_deg=_PITCH_DEG,
            needs=("face", "eyes"),
            on_target=True,
            not_measured=("blur_of_target",),
        ),
        Exercise(
            "turns-on-target",
            "head_yaw",
            (*_watch("gaze_off_target", "eyes_closed"), *_HEAD_WATCHERS),
            amplitude_deg=_YAW_DEG,
            needs=("face", "eyes"),
            on_target=True,
            not_measured=("blur_of_target",),
        ),
        Exercise(
            "nods-together",
            "head_pitch",
            _HEAD_WATCHERS,
            amplitude_deg=_PITCH_DEG,
            not_measured=("eyes_with_head",),
        ),
        Exercise(
            "turns-together",
            "head_yaw",
            _HEAD_WATCHERS,
            amplitude_deg=_YAW_DEG,
            not_measured=("eyes_with_head",),
        ),
    )
}


def find_exercise(exercise_id: str) -> Exercise:
    """Exercise of an ID.

    Raises
    ------
    InputError
        If there is none; the message lists those there are.
    """
    try:
        return CATALOGUE[exercise_id]
    except KeyError:
        known = ", ".join(CATALOGUE)
        raise InputError(f"there is no exercise {exercise_id!r}; choose one of: {known}") from None
