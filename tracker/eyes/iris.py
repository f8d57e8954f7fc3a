"""How high the irises stand between the eye's corners: a second opinion on looks up and down."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from tracker.head.perspective import Array

#: Corners of each eye, in the picture from left to right, and the middle of its iris; the
#: right eye before the left one.
_EYES = (((33, 133), 468), ((362, 263), 473))
#: Degrees of pitch for each corner distance that an iris goes down, and for each degree that
#: the head goes up: on nine rendered heads the fit to the truth of a set-up gave 300 to 490
#: and .9 to 1.3. With these a look is told by 2 to 3 degrees (scatter from frame to frame).
PER_CORNERS, PER_HEAD = -400.0, -1.05


def iris_pitch_deg(points_px: Array, head_pitch_deg: float, rows: Sequence[int] = (0, 1)) -> float:
    """Pitch of the eyes in the head by the irises' height, less a person's own constant.

    Too coarse to be a measure of the gaze; but where a lid hangs and the eye stays, the iris
    stays too, which a person's own model may take for a look down.

    Parameters
    ----------
    points_px
        ``(478, 2)`` landmarks.
    head_pitch_deg
        Pitch of the head from rest.
    rows
        The eyes in use, 0 the right one and 1 the left.
    """
    heights = []
    for (first, last), middle in (_EYES[row] for row in rows):
        along = points_px[last] - points_px[first]
        length = max(float(np.hypot(*along)), 1.0)
        down = np.array([-along[1], along[0]]) / length
        centre = 0.5 * (points_px[first] + points_px[last])
        heights.append(float((points_px[middle] - centre) @ down) / length)
    return PER_CORNERS * float(np.mean(heights)) + PER_HEAD * head_pitch_deg
