"""From set-up frames with known targets to a person's gaze model."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.eyes.model import EyeModel, GazeModel
from tracker.eyes.regression import TRUSTED, fit_ridge, left_out
from tracker.head.perspective import Array

#: Discarded after a look target changes: a saccade starts after 100-300 ms
#: (Carpenter 1988 lineage) and lasts some 50 ms.
SETTLE_S = 0.35
#: Reading further off than this in the moving part is taken for eyes that did
#: not hold the target (this project's own choice: several times what a reading is off).
MOVING_LIMIT_DEG = 4.0
#: Fewer frames than this teach no eyes (this project's own choice).
MIN_FRAMES = 30
#: Eyes that turn back less than the head turns catch up by a few jumps
#: a second, so what they lag behind goes on about so long, in seconds (this project's own choice;
#: on rendered heads half of it and the double do nearly as well).
LAG_S = 0.2
#: Frames farther apart than this don't tell how the head went from one to the other (own choice:
#: half a second without news is "not measured").
GAP_S = 0.5


@dataclass(frozen=True, slots=True)
class LabelledEyes:
    """Eye patches of set-up frames with the directions that the target asks for.

    Attributes
    ----------
    rectified, cornered
        ``(n, k, p)`` patches of the eyes in use, the right eye's before the left's.
    angles_deg
        ``(n, k, 2)`` yaw and pitch in the head of each of them when it is on the target.
    group
        ``(n,)`` number of the step a frame belongs to; one look is one group.
    moving
        ``(n,)`` whether the head was asked to move.
    turned_deg
        ``(n, 2)`` how far the head has just turned in yaw and pitch (:func:`just_turned`);
        0 where it was asked to be still.
    """

    rectified: Array
    cornered: Array
    angles_deg: Array
    group: NDArray[np.int64]
    moving: NDArray[np.bool_]
    turned_deg: Array

    @property
    def kinds(self) -> tuple[Array, Array]:
        """Both kinds of patches with what the head has just turned behind them.

        Eyes that lag while the head turns are not where they are asked to be, and farther
        behind the more it has just turned. By how much is fitted beside the patches, so that
        it is not learned as the look of eyes on the target.
        """
        beside = np.repeat(self.turned_deg[:, None], self.angles_deg.shape[1], axis=1)
        return (
            np.concatenate([self.rectified, beside], axis=2),
            np.concatenate([self.cornered, beside], axis=2),
        )

    @property
    def mean_deg(self) -> Array:
        """``(n, 2)`` mean direction that is asked of the eyes."""
        return np.asarray(self.angles_deg.mean(axis=1))


def just_turned(times_s: Array, angles_deg: Array) -> Array:
    """How far a head has just turned: each turn counts less with :data:`LAG_S`.

    Parameters
    ----------
    times_s
        ``(n,)`` rising times.
    angles_deg
        ``(n, 2)`` yaw and pitch.

    Returns
    -------
    ndarray
        ``(n, 2)`` degrees; of a head that turns evenly, its speed times :data:`LAG_S`. It
        begins anew after a gap of :data:`GAP_S`.
    """
    out = np.zeros_like(angles_deg)
    for i, gap_s in enumerate(np.diff(times_s), start=1):
        if gap_s < GAP_S:
            # What was turned since the frame before was turned half the time ago on average.
            half = np.exp(-0.5 * gap_s / LAG_S)
            out[i] = half * (half * out[i - 1] + angles_deg[i] - angles_deg[i - 1])
    return out


def fit_gaze(eyes: LabelledEyes) -> GazeModel | None:
    """Fit the regressions of the eyes in use; None when there are too few frames.

    Static looks carry the fit: frames of the moving part count by how well they
    agree with what the rest says, so that eyes which did not hold the target
    while the head moved are not learned as if they had; what they lag behind the head
    all through is fitted beside (:attr:`LabelledEyes.kinds`) and left out of the reading.
    """
    if len(eyes.angles_deg) < MIN_FRAMES:
        return None
    weights: Array = np.ones(len(eyes.angles_deg))
    for _ in range(2):
        weights = _trust(eyes, weights)
    stretches = _folds(eyes)
    beside = eyes.turned_deg.shape[1]
    models = tuple(
        EyeModel(
            *(
                fit_ridge(kind[:, k], eyes.angles_deg[:, k], weights, stretches).without(beside)
                for kind in eyes.kinds
            )
        )
        for k in range(eyes.angles_deg.shape[1])
    )
    trusted = eyes.mean_deg[weights > TRUSTED]
    reach = np.stack([trusted.min(axis=0), trusted.max(axis=0)], axis=1)
    return GazeModel(models, reach, _held_out_error(eyes, weights))


def _off_deg(eyes: LabelledEyes, weights: Array, stretches: NDArray[np.int64]) -> Array:
    """How far each stretch reads from what was asked by a fit without it, ``(n,)``.

    Of the mean of the eyes; a stretch with too little left to fit is NaN.
    """
    off = np.mean(
        [
            left_out(kind[:, k], eyes.angles_deg[:, k], weights, stretches)
            for kind in eyes.kinds
            for k in range(kind.shape[1])
        ],
        axis=0,
    )
    _, of, count = np.unique(stretches, return_inverse=True, return_counts=True)
    enough = len(stretches) - count[of] >= MIN_FRAMES
    return np.asarray(np.where(enough, np.sqrt((off**2).sum(axis=1)), np.nan))


def _trust(eyes: LabelledEyes, weights: Array) -> Array:
    """New weights: folds of the moving part judged by models that have not seen them."""
    off = _off_deg(eyes, weights, _folds(eyes))
    limit = np.where(eyes.moving, MOVING_LIMIT_DEG, 2.0 * MOVING_LIMIT_DEG)
    trust = np.clip(1.0 - (off / limit) ** 2, 0.02, 1.0) ** 2
    return np.asarray(np.where(np.isnan(off), weights, trust))


def _folds(eyes: LabelledEyes) -> NDArray[np.int64]:
    """Groups, with each moving group cut into stretches of half a second."""
    folds = eyes.group * 1000
    for group in np.unique(eyes.group[eyes.moving]):
        rows = np.flatnonzero(eyes.group == group)
        folds[rows] += np.arange(len(rows)) // 7
    return folds


def _held_out_error(eyes: LabelledEyes, weights: Array) -> float:
    """Median error in degrees on whole looks that the fit had not seen."""
    off = _off_deg(eyes, weights, eyes.group)[~eyes.moving]
    off = off[np.isfinite(off)]
    return float(np.median(off)) if len(off) else float("nan")
