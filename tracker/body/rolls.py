"""Which way shoulders roll, from their height and the width between them.

A shoulder that comes forward is nearer to the camera and farther out, so the width between
the shoulders as it is seen tells fore-aft: on rendered bodies that rolled it went along
with the true place (correlation .88 to .93), while the landmarks' own depth told nothing.
Rolling back, the shoulders are forward as they rise and back as they sink; rolling
forward it is the other way round. It was not tried on real people.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite, pi
from typing import Literal

import numpy as np

from tracker.body.steady import Array, running_mean
from tracker.sample import Sample

Direction = Literal["back", "forward"]

#: A circle fills an ellipse (1), to and fro on one line fills nothing (0). It is
#: this project's own choice, in the middle of what its tests draw.
ROUND = 0.35
#: A width that changes by less, in mm, is noise: landmarks of a still body wander by 2
#: (rendered bodies).
LEAST_MM = 5.0
#: Width and height are averaged over this time (this project's own choice).
MEAN_S = 0.3
#: Fewer places than this in one roll tell no way (this project's own choice).
LEAST_PLACES = 8


def lift_mm(sample: Sample) -> float:
    """Height of both shoulders from the point about which the head turns; NaN unless seen."""
    return 0.5 * (sample.shoulder_right_y_mm + sample.shoulder_left_y_mm)


def width_mm(sample: Sample) -> float:
    """Width between the shoulders as it is seen; NaN unless both are."""
    return sample.shoulder_right_x_mm - sample.shoulder_left_x_mm


def direction_of(samples: Sequence[Sample], from_s: float, to_s: float) -> Direction | None:
    """The way of one roll between two times; None where it can't be told."""
    rows = [
        (s.time_s, width_mm(s), lift_mm(s))
        for s in samples
        if from_s - MEAN_S <= s.time_s <= to_s + MEAN_S and isfinite(width_mm(s) + lift_mm(s))
    ]
    if len(rows) < LEAST_PLACES:
        return None
    times, width, height = np.array(rows).T
    width, height = running_mean(times, width, MEAN_S), running_mean(times, height, MEAN_S)
    inside = (times >= from_s) & (times <= to_s)
    return _way(width[inside], height[inside])


def _way(width: Array, height: Array) -> Direction | None:
    if len(width) < LEAST_PLACES or np.ptp(width) < LEAST_MM or np.ptp(height) < LEAST_MM:
        return None
    # Area of the closed curve (shoelace): above zero where it is wide on the way up.
    area = 0.5 * float((width * (np.roll(height, -1) - np.roll(height, 1))).sum())
    roundness = area / (0.25 * pi * float(np.ptp(width) * np.ptp(height)))
    if abs(roundness) < ROUND:
        return None
    return "back" if roundness > 0 else "forward"
