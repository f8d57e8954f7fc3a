"""The generic face: what is known of a head before its owner has been measured."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.head.perspective import Array, Pinhole, Pose, fit_pose

#: Mean distance between adult pupils in mm (Dodgson 2004, Proc SPIE 5291:36):
#: the scale of everything that is said in millimetres about a person.
PUPIL_DISTANCE_MM = 63.0

#: How far the centre of the eyeball lies behind the plane of the eye's
#: corners, in mm: common practice for a 24 mm eye whose outer corner lies some
#: 8 mm behind the front of the cornea.
EYE_BEHIND_CORNERS_MM = 5.0

#: Landmarks of the topology used here (outer and inner eye corners), by the numbers of the face
#: mesh's documentation.
RIGHT_EYE_CORNERS = (33, 133)
LEFT_EYE_CORNERS = (263, 362)
NOSE_BASE = 2

#: Landmarks that sit on features and move little with expression: eye corners,
#: brows, ridge, tip and wings of the nose. Landmarks on bare skin lag behind
#: in pitch (measured on rendered heads), so they are left out.
RIGID_FEATURES = np.array(
    [
        *(33, 133, 362, 263),
        *(1, 2, 4, 5, 94, 97, 98, 129, 326, 327, 358),
        *(63, 66, 70, 105, 107, 293, 296, 300, 334, 336),
        *(6, 168, 195, 197),
    ]
)


@dataclass(frozen=True, slots=True)
class FaceShape:
    """Landmarks of a face as a rigid body.

    Attributes
    ----------
    points_mm
        ``(468, 3)`` in body coordinates: camera axes of a head that faces the
        camera, origin between the eyeball centres.
    triangles
        ``(n, 3)`` indices of the surface.
    """

    points_mm: Array
    triangles: NDArray[np.int64]

    @property
    def eyes_mm(self) -> Array:
        """Eyeball centres ``(2, 3)``, right and left, in body coordinates."""
        corners = np.stack(
            [
                self.points_mm[list(RIGHT_EYE_CORNERS)].mean(axis=0),
                self.points_mm[list(LEFT_EYE_CORNERS)].mean(axis=0),
            ]
        )
        return np.asarray(corners + np.array([0.0, 0.0, EYE_BEHIND_CORNERS_MM]))


def generic_shape(vertices_cm: Array, triangles: NDArray[np.int64]) -> FaceShape:
    """Shape from the library's canonical face.

    Parameters
    ----------
    vertices_cm
        ``(468, 3)``: x to the face's left, y up, z out of the face.
    triangles
        ``(n, 3)``.
    """
    points = np.asarray(vertices_cm, dtype=float) * np.array([10.0, -10.0, -10.0])
    right = points[list(RIGHT_EYE_CORNERS)].mean(axis=0)
    left = points[list(LEFT_EYE_CORNERS)].mean(axis=0)
    points = points * (PUPIL_DISTANCE_MM / float(np.linalg.norm(left - right)))
    middle = points[[*RIGHT_EYE_CORNERS, *LEFT_EYE_CORNERS]].mean(axis=0)
    return FaceShape(points - middle - np.array([0.0, 0.0, EYE_BEHIND_CORNERS_MM]), triangles)


def pose_of_landmarks(
    shape: FaceShape, points_px: Array, camera: Pinhole, start: Pose | None = None
) -> tuple[Pose, float]:
    """Pose of a face from its landmarks ``(>= 468, 2)`` in the whole picture, and the misfit in px.

    Without a start three guesses (facing the camera, turned to each side) are
    tried and the best is kept.
    """
    body, seen = shape.points_mm[RIGID_FEATURES], points_px[RIGID_FEATURES]
    if start is not None:
        # Only a start for the alignment: a twentieth of a degree will do.
        return fit_pose(body, seen, camera, start, settled_rad=1e-3, rounds=4)
    corners = points_px[[*RIGHT_EYE_CORNERS, *LEFT_EYE_CORNERS]]
    spread_px = float(np.sqrt(corners.var(axis=0).sum()))
    spread_mm = float(
        np.sqrt(shape.points_mm[[*RIGHT_EYE_CORNERS, *LEFT_EYE_CORNERS]].var(axis=0).sum())
    )
    depth = camera.focal_px * spread_mm / max(spread_px, 1e-6)
    place = camera.rays(corners.mean(axis=0)) * depth
    fits = [
        fit_pose(body, seen, camera, Pose(turned, place))
        for turned in (np.eye(3), _turned(0.6), _turned(-0.6))
    ]
    return min(fits, key=lambda fit: fit[1])


def _turned(yaw_rad: float) -> Array:
    c, s = np.cos(yaw_rad), np.sin(yaw_rad)
    return np.array([[c, 0.0, s], [0.0, 1.0, 0.0], [-s, 0.0, c]])
