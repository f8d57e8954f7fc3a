"""The rest frame and the neck: up from the slow turn, right from the slow nod."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from tracker.head.perspective import Array, Pose, vector_of_rotation
from tracker.profile import RestFrame

#: Turns smaller than this say too little about an axis.
MIN_SPREAD_DEG = 4.0
#: Where the neck point lies where the set-up can't tell, relative to the eyes,
#: in (right, up, forward) mm: common practice for an adult (the joint below
#: the skull base, some 10 cm behind the eyes).
USUAL_NECK_MM = np.array([0.0, -60.0, -100.0])
#: How firmly the usual neck point is believed, as mm of spread of the head.
NECK_PRIOR_SPREAD_MM = 40.0


def rotation_axis(rotations: Sequence[Array], like: Array) -> Array | None:
    """Main axis of a movement, a unit vector on the side of ``like``; None if it hardly moved."""
    if len(rotations) < 8:
        return None
    vectors = np.degrees([vector_of_rotation(r) for r in rotations])
    centred = vectors - np.median(vectors, axis=0)
    _, spread, directions = np.linalg.svd(centred, full_matrices=False)
    if spread[0] / np.sqrt(len(vectors)) < MIN_SPREAD_DEG:
        return None
    axis = directions[0]
    return np.asarray(axis * np.sign(axis @ like))


def rest_axes(
    turn: Sequence[Array], nod: Sequence[Array], origin_mm: Array, ahead_mm: Array | None = None
) -> Array:
    """Axes of the rest frame in camera coordinates, columns right, up, forward.

    Up is the axis of the slow turn (without one, the camera's). Forward is the
    direction to the centre target made perpendicular to it where the target's
    place is known; else right is the axis of the slow nod made perpendicular to
    up; without a nod, forward points at the camera's side of the head.

    Parameters
    ----------
    turn, nod
        Rotations from rest in camera axes during the two movements.
    origin_mm
        Eye mid-point at rest in camera coordinates.
    ahead_mm
        The centre target in camera coordinates, or None where it isn't known.
    """
    up = rotation_axis(turn, np.array([0.0, -1.0, 0.0]))
    if up is None:
        up = np.array([0.0, -1.0, 0.0])
    right = None if ahead_mm is not None else rotation_axis(nod, np.array([-1.0, 0.0, 0.0]))
    if right is None:
        forward = (np.zeros(3) if ahead_mm is None else ahead_mm) - origin_mm
        right = np.cross(forward, up)
    right = right - (right @ up) * up
    right = right / np.linalg.norm(right)
    forward = np.cross(up, right)
    return np.stack([right, up, forward], axis=1)


def fit_neck(poses: Sequence[Pose], origin_mm: Array, axes: Array) -> Array:
    """Point of the head that moved least, relative to the eyes at rest, in camera axes.

    Least squares over ``n + position_i`` of the poses' turned point, with the
    usual place as a weak prior.
    """
    usual = axes @ USUAL_NECK_MM
    stillness_mm = 3.0
    rows, values = [], []
    for pose in poses:
        rows.append((pose.rotation - np.eye(3)) / stillness_mm)
        values.append((origin_mm - pose.position_mm) / stillness_mm)
    rows.append(np.eye(3) / NECK_PRIOR_SPREAD_MM * np.sqrt(max(len(poses) / 50, 1.0)))
    values.append(usual / NECK_PRIOR_SPREAD_MM * np.sqrt(max(len(poses) / 50, 1.0)))
    return np.asarray(np.linalg.lstsq(np.vstack(rows), np.concatenate(values), rcond=None)[0])


def make_rest_frame(
    turn: Sequence[Pose], nod: Sequence[Pose], origin_mm: Array, ahead_mm: Array | None = None
) -> RestFrame:
    """Rest frame of a set-up's slow turn and nod (either may be empty)."""
    turned, nodded = [p.rotation for p in turn], [p.rotation for p in nod]
    axes = rest_axes(turned, nodded, origin_mm, ahead_mm)
    return RestFrame(axes, origin_mm, fit_neck([*turn, *nod], origin_mm, axes))
