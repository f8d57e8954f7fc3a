"""How well the gaze is read where the target is: on the screen, or at a mark on the wall."""

from __future__ import annotations

from collections.abc import Mapping
from math import hypot, inf, isfinite, isnan, nan
from typing import Any

from tracker.exercises.catalogue import Exercise
from tracker.session.bench import WORST
from tracker.session.live import check_error_deg, setup_gaze_error_deg, was_set_up
from tracker.session.run import amplitude_asked
from tracker.session.stage import Step
from tracker.wall import Wall, camera_of, head_error_deg, place_error_deg, wall_of

#: Error of the gaze that is claimed where no set-up measured one.
CLAIMED_DEG = WORST["gaze yaw while turning, eyes that lag"][0]
#: Error of the head's turn that is claimed: the 5 percent of an amplitude that the program
#: promises to stay below, and what the bench found at any angle.
CLAIMED_SHARE, CLAIMED_HEAD_DEG = 0.05, WORST["head yaw"][0]


def wall_of_step(step: Step) -> Wall | None:
    """The marks on the wall that a step is done with; None for the screen."""
    return wall_of((step.model_extra or {}).get("wall"))


def look_error_deg(step: Step, found: Mapping[str, Any]) -> float:
    """Error of a look, as far as looks of the set-up have shown it where a step is done.

    The larger of what its fit and its check showed at the screen; with marks on the wall never
    less than the check at them showed. Each is the median angle between the line of sight and
    what was looked at. NaN where none was measured.
    """
    errors = [setup_gaze_error_deg(found)]
    if wall_of_step(step) is not None:
        errors.append(check_error_deg(found.get("wall_check")))
    return max((e for e in errors if isfinite(e)), default=nan)


def gaze_error_at_target_deg(step: Step, exercise: Exercise, found: Mapping[str, Any]) -> float:
    """Error of the gaze against a step's target, in degrees.

    Infinite where a set-up measured none. On the screen that which it measured there, NaN where
    nothing is known of a set-up (a trace alone). At a mark on the wall what looks at the marks
    have shown, and never less than at the screen; where nobody looked there, that of the screen
    or, of a trace alone, the claimed one, with what is not known of the mark's place. What is not
    known of the head's turn comes to it, as an independent error.

    Parameters
    ----------
    found
        What the set-up found.
    """
    error = look_error_deg(step, found)
    if isnan(error) and was_set_up(found):
        return inf
    wall = wall_of_step(step)
    if wall is None:
        return error
    amplitude = amplitude_asked(step, exercise)
    turn = 0.0 if exercise.head_still or amplitude is None else amplitude[1]
    head = head_error_deg(found.get("mark"), turn, CLAIMED_SHARE, CLAIMED_HEAD_DEG)
    if isfinite(check_error_deg(found.get("wall_check"))):
        return hypot(error, head)
    at_screen = error if isfinite(error) else CLAIMED_DEG
    return hypot(at_screen, place_error_deg(wall, camera_of(found)), head)
