"""Where the targets of a set-up are for the patient: drawn on the screen, or on the wall."""

from __future__ import annotations

import numpy as np

from calibration.parts import on_wall
from tracker.head.perspective import Array
from tracker.profile import RestFrame
from tracker.session.stage import Step


def on_screen(step: Step) -> Array | None:
    """Place of a step's target in camera coordinates, if it was drawn on a screen.

    The camera looks at the patient from the screen's plane, so the patient's
    right is its left.
    """
    place = (step.model_extra or {}).get("screen_mm")
    if not isinstance(place, list | tuple) or len(place) != 2:
        return None
    return np.array([-float(place[0]), -float(place[1]), 0.0])


def placed(step: Step, frame: RestFrame) -> Step:
    """The step with its target in the rest frame."""
    mark = on_wall(step)
    if mark is not None:
        # The camera's place is known from the eyes, the wall's distance is typed from there.
        right, up, _ = frame.camera_mm
        return step.model_copy(update={"target_mm": (right + mark[0], up + mark[1], mark[2])})
    place = on_screen(step)
    if place is None:
        return step
    x, y, z = (float(v) for v in frame.axes.T @ (place - frame.origin_mm))
    return step.model_copy(update={"target_mm": (x, y, z)})
