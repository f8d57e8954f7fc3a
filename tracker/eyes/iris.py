"""Eye direction from the iris landmarks on a ball: what can be had before a person is known.

The landmarks follow only part of the eye's movement and sit off its middle by
some degrees, differently in each face (measured on rendered heads: 1.3 to 7
degrees of error), so this serves to count eye movements and for no verdict.
"""

from __future__ import annotations

import numpy as np

from tracker.head.perspective import Array, Pinhole, Pose
from tracker.rotation import angles_from_direction

#: Landmark of the middle of the right and of the left iris.
IRIS_POINTS = (468, 473)
#: Radius of an adult's eyeball in mm (common practice: an axial length of 24 mm).
EYE_RADIUS_MM = 12.0


def iris_angles(
    points_px: Array, pose: Pose, eyes_mm: Array, camera: Pinhole, axes: Array
) -> Array:
    """Eye-in-head yaw and pitch in degrees, ``(2,)``, mean of both eyes, with an unknown offset.

    Parameters
    ----------
    points_px
        ``(478, 2)`` landmarks in the whole picture.
    pose
        Pose of the head.
    eyes_mm
        ``(2, 3)`` eyeball centres in body coordinates.
    camera
        The camera.
    axes
        ``(3, 3)`` right, up and forward in camera axes at rest.
    """
    both = []
    for point, eye in zip(IRIS_POINTS, eyes_mm, strict=True):
        ray = camera.rays(points_px[point])
        ray = ray / np.linalg.norm(ray)
        centre = pose.apply(eye)
        along = float(ray @ centre)
        under = along**2 - float(centre @ centre) + EYE_RADIUS_MM**2
        # A ray that misses the ball is taken where it comes nearest.
        hit = ray * (along - np.sqrt(max(under, 0.0)))
        in_head = axes.T @ pose.rotation.T @ (hit - centre)
        both.append(angles_from_direction(in_head))
    return np.asarray(np.mean(both, axis=0))
