"""The rest frame and the neck: up from the slow turn, right from the slow nod."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from tracker.head.perspective import Array, Pose, rotation_of_vector, vector_of_rotation
from tracker.profile import RestFrame

#: Turns smaller than this say too little about an axis (this project's own choice: four times the
#: wander below, which then turns it by some 15 degrees at most).
MIN_SPREAD_DEG = 4.0
#: Nobody turns about one axis alone: a degree or so of nodding goes with a turn of
#: 25, and the other way round, so an axis is known to about this many degrees
#: over the spread (common practice; rendered set-ups wander as much).
WANDER_DEG = 1.0
#: How well the line through the eye corners lies across the head (faces are not quite even; this
#: project's own choice).
EYE_LINE_SPREAD_DEG = 1.5
#: Evidence farther than this from the turn's own axis speaks of another posture, not of wander
#: (this project's own choice).
SAME_POSTURE_DEG = 4.0
#: A head asked to be still that is farther from its middle has been moved (half of what
#: counts as moved in an exercise) (this project's own choice).
STILL_DEG = 2.0
#: Where the neck point lies where the set-up can't tell, relative to the eyes,
#: in (right, up, forward) mm: common practice for an adult (the joint below
#: the skull base, some 10 cm behind the eyes).
USUAL_NECK_MM = np.array([0.0, -60.0, -100.0])
#: How firmly the usual neck point is believed, as mm of spread of the head (this project's own
#: choice).
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
    turn: Sequence[Array],
    nod: Sequence[Array],
    origin_mm: Array,
    ahead_mm: Array | None = None,
    eye_line: Array | None = None,
) -> Array:
    """Axes of the rest frame in camera coordinates, columns right, up, forward.

    Up is the axis of the slow turn (without one, the camera's). Forward is the
    direction to the centre target made perpendicular to it where the target's
    place is known; else right is the axis of the slow nod made perpendicular to
    up; without a nod, forward points at the camera's side of the head. What the
    head wandered to the side in the turn tilts its axis to one side; the nod and
    the eyes' own line say by how much.

    Parameters
    ----------
    turn, nod
        Rotations from rest in camera axes during the two movements.
    origin_mm
        Eye mid-point at rest in camera coordinates.
    ahead_mm
        The centre target in camera coordinates, or None where it isn't known.
    eye_line
        From the left to the right eye at rest in camera coordinates, or None.
    """
    turn_axis = rotation_axis(turn, np.array([0.0, -1.0, 0.0]))
    nod_axis = rotation_axis(nod, np.array([-1.0, 0.0, 0.0]))
    up = np.array([0.0, -1.0, 0.0]) if turn_axis is None else turn_axis
    right = nod_axis if ahead_mm is None else None
    if right is None:
        forward = (np.zeros(3) if ahead_mm is None else ahead_mm) - origin_mm
        right = np.cross(forward, up)
    right = _unit(right - (right @ up) * up)
    forward = np.cross(up, right)
    if turn_axis is not None:
        lean = _lean(
            right,
            up,
            spread_deg(turn),
            [(nod_axis, _known_deg(spread_deg(nod))), (eye_line, EYE_LINE_SPREAD_DEG)],
        )
        right = np.cos(lean) * right + np.sin(lean) * up
        up = np.cross(right, forward)
    return np.stack([right, up, forward], axis=1)


def _unit(vector: Array) -> Array:
    return np.asarray(vector / np.linalg.norm(vector))


def spread_deg(rotations: Sequence[Array]) -> float:
    """Root mean square turn in degrees of rotations from their middle; never 0."""
    if not rotations:
        return 1e-3
    vectors = np.degrees([vector_of_rotation(r) for r in rotations])
    return max(float(np.sqrt(((vectors - vectors.mean(axis=0)) ** 2).sum(axis=1).mean())), 1e-3)


def _known_deg(movement_deg: float) -> float:
    """How well the axis of a movement of that spread is known, in degrees."""
    return float(np.degrees(WANDER_DEG / movement_deg))


def _lean(
    right: Array, up: Array, turn_spread_deg: float, others: Sequence[tuple[Array | None, float]]
) -> float:
    """Angle in radians by which ``right`` should be lifted towards ``up``.

    A mean of what each piece of evidence asks for, weighted by its spread in
    degrees; the turn itself asks for none.
    """
    total = _known_deg(turn_spread_deg) ** -2
    asked = 0.0
    for axis, sigma_deg in others:
        if axis is None:
            continue
        off_deg = float(np.degrees(np.arctan2(axis @ up, axis @ right)))
        fits = max(1.0 - (off_deg / SAME_POSTURE_DEG) ** 2, 0.0) ** 2
        total += fits / sigma_deg**2
        asked += fits * off_deg / sigma_deg**2
    return float(np.radians(asked / total))


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


def still_pose(poses: Sequence[Pose]) -> Pose:
    """The pose about which a head that should be still wavers; identity at 0 without any.

    A mean that leaves out what lies farther off than :data:`STILL_DEG`: somebody
    who helped a glance with the head.
    """
    if not poses:
        return Pose(np.eye(3), np.zeros(3))
    vectors = np.array([vector_of_rotation(p.rotation) for p in poses])
    middle = np.median(vectors, axis=0)
    near = np.linalg.norm(np.degrees(vectors - middle), axis=1) < STILL_DEG
    return Pose(
        rotation_of_vector(vectors[near].mean(axis=0)),
        np.mean([p.position_mm for p, kept in zip(poses, near, strict=True) if kept], axis=0),
    )


def make_rest_frame(
    still: Sequence[Pose],
    turn: Sequence[Pose],
    nod: Sequence[Pose],
    ahead_mm: Array | None = None,
    eye_line: Array | None = None,
) -> RestFrame:
    """Rest frame of a set-up.

    Parameters
    ----------
    still
        Poses while the head was asked to be still; at least one.
    turn, nod
        Poses during the slow turn and nod; either may be empty.
    ahead_mm, eye_line
        As for :func:`rest_axes`.
    """
    rest = still_pose(still)
    turned, nodded = (
        [Pose(p.rotation @ rest.rotation.T, p.position_mm) for p in part] for part in (turn, nod)
    )
    axes = rest_axes(
        [p.rotation for p in turned],
        [p.rotation for p in nodded],
        rest.position_mm,
        ahead_mm,
        eye_line,
    )
    neck_mm = fit_neck([*turned, *nodded], rest.position_mm, axes)
    return RestFrame(axes, rest.rotation, rest.position_mm, neck_mm)
