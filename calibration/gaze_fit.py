"""From set-up frames with known targets to a person's gaze model."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.eyes.regression import Ridge, fit_ridge
from tracker.head.perspective import Array
from tracker.profile import GazeModel

#: Discarded after a look target changes: a saccade starts after 100-300 ms
#: (Carpenter 1988 lineage) and lasts some 50 ms.
SETTLE_S = 0.35
#: Reading further off than this in the moving part is taken for eyes that did
#: not hold the target.
MOVING_LIMIT_DEG = 4.0
MIN_FRAMES = 30


@dataclass(frozen=True, slots=True)
class LabelledEyes:
    """Eye patches of set-up frames with the direction that the target asks for.

    Attributes
    ----------
    rectified, cornered
        ``(n, m)`` patch vectors of the eyes in use, right before left.
    angles_deg
        ``(n, 2)`` eye-in-head yaw and pitch of an eye on the target.
    group
        ``(n,)`` number of the step a frame belongs to; one look is one group.
    moving
        ``(n,)`` whether the head was asked to move.
    """

    rectified: Array
    cornered: Array
    angles_deg: Array
    group: NDArray[np.int64]
    moving: NDArray[np.bool_]


def fit_gaze(eyes: LabelledEyes) -> GazeModel | None:
    """Fit the two regressions; None when there are too few frames.

    Static looks carry the fit: frames of the moving part count by how well they
    agree with what the rest says, so that eyes which did not hold the target
    while the head moved are not learned as if they had.
    """
    if len(eyes.angles_deg) < MIN_FRAMES:
        return None
    weights: Array = np.ones(len(eyes.angles_deg))
    for _ in range(2):
        weights = _trust(eyes, weights)
    models = _both(eyes, weights)
    trusted = eyes.angles_deg[weights > 0.3]
    reach = np.stack([trusted.min(axis=0), trusted.max(axis=0)], axis=1)
    return GazeModel(models[0], models[1], reach, _held_out_error(eyes, weights))


def _both(eyes: LabelledEyes, weights: Array) -> tuple[Ridge, Ridge]:
    return (
        fit_ridge(eyes.rectified, eyes.angles_deg, weights),
        fit_ridge(eyes.cornered, eyes.angles_deg, weights),
    )


def _predict(models: tuple[Ridge, Ridge], eyes: LabelledEyes, rows: NDArray[np.bool_]) -> Array:
    return np.asarray(
        0.5 * (models[0].predict(eyes.rectified[rows]) + models[1].predict(eyes.cornered[rows]))
    )


def _trust(eyes: LabelledEyes, weights: Array) -> Array:
    """New weights: folds of the moving part judged by models that have not seen them."""
    out = weights.copy()
    folds = _folds(eyes)
    for fold in np.unique(folds):
        rows = folds == fold
        if (~rows).sum() < MIN_FRAMES:
            continue
        reading = _predict(_both(eyes, np.where(rows, 0.0, weights) + 1e-9), eyes, rows)
        off = np.sqrt(((reading - eyes.angles_deg[rows]) ** 2).sum(axis=1))
        limit = np.where(eyes.moving[rows], MOVING_LIMIT_DEG, 2.0 * MOVING_LIMIT_DEG)
        out[rows] = np.clip(1.0 - (off / limit) ** 2, 0.02, 1.0) ** 2
    return out


def _folds(eyes: LabelledEyes) -> NDArray[np.int64]:
    """Groups, with each moving group cut into stretches of half a second."""
    folds = eyes.group * 1000
    for group in np.unique(eyes.group[eyes.moving]):
        rows = np.flatnonzero(eyes.group == group)
        folds[rows] += np.arange(len(rows)) // 7
    return folds


def _held_out_error(eyes: LabelledEyes, weights: Array) -> float:
    """Median error in degrees on whole looks that the fit had not seen."""
    errors: list[float] = []
    for group in np.unique(eyes.group[~eyes.moving]):
        rows = eyes.group == group
        if (~rows).sum() < MIN_FRAMES:
            continue
        reading = _predict(_both(eyes, np.where(rows, 0.0, weights) + 1e-9), eyes, rows)
        errors.extend(np.sqrt(((reading - eyes.angles_deg[rows]) ** 2).sum(axis=1)))
    return float(np.median(errors)) if errors else float("nan")


def stack_vectors(patches: Sequence[Array]) -> Array:
    """Patches ``(eyes, p)`` of many frames as rows ``(n, eyes * p)``."""
    return np.stack([p.ravel() for p in patches])
