"""Where the drawn targets of a set-up are for the patient."""

from __future__ import annotations

import numpy as np

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
    place = on_screen(step)
    if place is None:
        return step
    x, y, z = (float(v) for v in frame.axes.T @ (place - frame.origin_mm))
    return step.model_copy(update={"target_mm": (x, y, z)})
