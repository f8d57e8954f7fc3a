"""Where a face looks in one picture, of a person of whom nothing else is known."""

from __future__ import annotations

import numpy as np

from tracker.head.perspective import Array, Pinhole, rotation_of_vector
from tracker.head.shape import LEFT_EYE_CORNERS, NOSE_BASE, RIGHT_EYE_CORNERS, FaceShape
from tracker.rotation import angles_from_matrix


def facing_of_landmarks(shape: FaceShape, points_px: Array, depth_px: Array) -> Array:
    """Rotation of a face against its line of sight, from landmarks with depth.

    The rotation that takes the generic face onto the landmarks with the least
    squared distance, whatever their size (Umeyama 1991, IEEE TPAMI 13:376). What lies
    below the base of the nose moves with the mouth and is left out.

    Parameters
    ----------
    shape
        The generic face.
    points_px
        ``(>= 468, 2)`` landmarks.
    depth_px
        ``(>= 468,)`` their depth away from the camera in the same unit.

    Returns
    -------
    rotation
        ``(3, 3)`` in camera axes.
    """
    still = shape.points_mm[:, 1] < shape.points_mm[NOSE_BASE, 1]
    seen = np.column_stack([points_px[:468], depth_px[:468]])[still]
    body = shape.points_mm[still]
    across, _, back = np.linalg.svd((seen - seen.mean(axis=0)).T @ (body - body.mean(axis=0)))
    proper = np.diag([1.0, 1.0, float(np.linalg.det(across @ back))])
    return np.asarray(across @ proper @ back)


def facing_deg(
    shape: FaceShape, points_px: Array, depth_px: Array, camera: Pinhole
) -> tuple[float, float]:
    """Yaw and pitch of a face in the camera's axes, in degrees.

    Some 2.5 and 3 degrees off on photos of people (DEVELOPERS.md), most of it the same in all
    pictures of one person: good to say how far a head has turned since, not where it is.

    Parameters
    ----------
    shape, points_px, depth_px
        As for :func:`facing_of_landmarks`.
    camera
        The camera; a usual one does.
    """
    rotation = towards(facing_of_landmarks(shape, points_px, depth_px), points_px, camera)
    # Right, up and forward of who faces the camera are minus its axes, which changes nothing.
    angles = angles_from_matrix(rotation)
    return float(angles[0]), float(angles[1])


def towards(rotation: Array, points_px: Array, camera: Pinhole) -> Array:
    """Rotation in camera axes of a face whose facing against its line of sight is known."""
    corners = points_px[[*RIGHT_EYE_CORNERS, *LEFT_EYE_CORNERS]]
    ray = camera.rays(corners.mean(axis=0))
    ray = ray / np.linalg.norm(ray)
    # The turn that takes the camera's axis onto the ray: about their common normal.
    normal = np.array([-ray[1], ray[0], 0.0])
    aside = float(np.linalg.norm(normal))
    if aside < 1e-9:
        return rotation
    return np.asarray(rotation_of_vector(normal / aside * np.arcsin(aside)) @ rotation)
