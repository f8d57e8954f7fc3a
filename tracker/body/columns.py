"""From the landmarks of a body to where its shoulders, elbows and wrists are, in the rest frame.

A picture has no depth: each point is placed on a plane that faces the way the head faced
at rest. For the shoulders it goes through the point about which the head turns, for
elbows and wrists through the mid-point of the eyes. So a hand held out towards the camera reads
farther from the eyes than it is; whether it is above or below them it tells rightly with a
camera at the height of the eyes. The library's own depth is not used: on rendered
shoulders that came forward by 60 mm it told nothing (correlation within .5 of none, both
ways).

A hand that sinks below the picture is not seen, but known to be no higher than its lower
edge: its ``y`` is then that of the edge, and its ``x`` is empty.
"""

from __future__ import annotations

from math import isfinite, nan

import numpy as np

from tracker.body.points import ELBOWS, SHOULDERS, WRISTS, BodyPoints
from tracker.head.perspective import Array, Pinhole, Pose
from tracker.profile import RestFrame

#: Names of the columns, in the order of :func:`body_columns`.
NAMES = tuple(
    f"{part}_{side}_{axis}_mm"
    for part in ("shoulder", "elbow", "wrist")
    for side in ("right", "left")
    for axis in ("x", "y")
)
#: Shoulders and wrists are looked for within an arm's length and more; beyond this is an error
#: (this project's own choice).
FAR_MM = 1500.0


def body_columns(
    body: BodyPoints, camera: Pinhole, rest: RestFrame, pose: Pose
) -> dict[str, float]:
    """Columns of a sample: those of :data:`NAMES` and ``body_seen``; NaN where not seen.

    Parameters
    ----------
    body
        The patient's landmarks.
    camera
        The camera that sees them.
    rest
        The rest frame: millimetres right and up are along its axes.
    pose
        Where the head is now.
    """
    neck = rest.from_rest(pose) @ rest.neck_mm + pose.position_mm
    out = {"body_seen": float(min(body.visible[row] for row in SHOULDERS))}
    eyes = pose.position_mm
    parts = (("shoulder", SHOULDERS, neck), ("elbow", ELBOWS, eyes), ("wrist", WRISTS, eyes))
    for part, rows, through in parts:
        for side, row in zip(("right", "left"), rows, strict=True):
            x, y = nan, nan
            if body.seen(row):
                x, y = on_plane(body.points_px[row], camera, rest.axes, through)
            elif part == "wrist" and body.below(row):
                edge_px = np.array([body.points_px[row, 0], body.height_px - 1.0])
                y = on_plane(edge_px, camera, rest.axes, through)[1]
            if not (isfinite(y) and abs(y) <= FAR_MM and not abs(x) > FAR_MM):
                x, y = nan, nan
            out[f"{part}_{side}_x_mm"], out[f"{part}_{side}_y_mm"] = x, y
    return out


def on_plane(
    point_px: Array, camera: Pinhole, axes: Array, through_mm: Array
) -> tuple[float, float]:
    """Right and up, in mm, of a pixel on a plane through a point, from that point.

    Parameters
    ----------
    point_px
        ``(2,)`` pixel.
    camera
        The camera.
    axes
        ``(3, 3)``; columns right, up and forward in camera coordinates. The plane is
        perpendicular to forward.
    through_mm
        ``(3,)`` point in camera coordinates.

    Returns
    -------
    tuple of float
        NaN twice where the pixel's ray doesn't meet the plane before the camera.
    """
    ray = camera.rays(np.asarray(point_px, float))
    forward = axes[:, 2]
    towards = float(forward @ ray)
    if abs(towards) < 1e-6:
        return nan, nan
    depth = float(forward @ through_mm) / towards
    if depth <= 0:
        return nan, nan
    away = axes.T @ (depth * ray - through_mm)
    return float(away[0]), float(away[1])
