"""The exercises, as data.

A new exercise is an entry here and a test: what counts a repetition, what is
watched, how much and how fast by default and where that comes from, what it
needs in the picture, what to beware of, and what isn't measured. The words for
the patient belong to the user interface.
"""

from __future__ import annotations

from tracker.errors import InputError
from tracker.exercises.catalogue import further, gaze, seated, standing
from tracker.exercises.catalogue.model import (
    GUIDED,
    HELD,
    Exercise,
    Eyes,
    Guide,
    Need,
    Posture,
    Support,
    Surface,
    WatcherSpec,
)
from tracker.exercises.catalogue.notes import CAUTIONS, NOT_MEASURED
from tracker.exercises.catalogue.permissions import (
    OPTIONS,
    PERMISSIONS,
    Option,
    Permission,
    permission,
    why_never,
)

__all__ = [
    "CATALOGUE",
    "CAUTIONS",
    "GUIDED",
    "HELD",
    "NOT_MEASURED",
    "OPTIONS",
    "PERMISSIONS",
    "Exercise",
    "Eyes",
    "Guide",
    "Need",
    "Option",
    "Permission",
    "Posture",
    "Support",
    "Surface",
    "WatcherSpec",
    "body_every_s",
    "find_exercise",
    "needs_body",
    "no_such_exercise",
    "permission",
    "why_never",
]

#: In the order of the home programme, then what goes beyond it.
CATALOGUE: dict[str, Exercise] = {
    e.id: e
    for e in (
        *gaze.EXERCISES,
        *seated.EXERCISES,
        *standing.EXERCISES,
        *further.GAZE,
        *further.BALANCE,
    )
}


def find_exercise(exercise_id: str) -> Exercise:
    """Exercise of an ID.

    Raises
    ------
    InputError
        If there is none; the message says which is nearest, or how to see them all.
    """
    try:
        return CATALOGUE[exercise_id]
    except KeyError:
        raise InputError(no_such_exercise(exercise_id)) from None


def needs_body(exercise_id: str | None) -> bool:
    """Whether shoulders or hands have to be measured for an exercise; not for an unknown one."""
    exercise = CATALOGUE.get(exercise_id or "")
    return exercise is not None and "body" in exercise.needs


def body_every_s(exercise_id: str | None) -> float:
    """Least time between two looks at the body in an exercise; 0 for as often as can be.

    A fingertip goes near and far slowly, and the eyes are to be measured meanwhile: half the
    looks are enough (tried in ``tests/motion/test_near_hand.py``).
    """
    exercise = CATALOGUE.get(exercise_id or "")
    return 0.12 if exercise is not None and exercise.channel == "eye_vergence" else 0.0


def no_such_exercise(exercise_id: str) -> str:
    """What is said of an ID that isn't in the catalogue, with the nearest one there is."""
    import difflib

    near = difflib.get_close_matches(exercise_id, CATALOGUE, n=1)
    hint = f"did you mean '{near[0]}'? " if near else ""
    return f"there is no exercise {exercise_id!r}; {hint}'turnpost plan show' lists them all"
