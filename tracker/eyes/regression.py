"""A person's own map from the look of their eyes to the direction of their gaze."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.head.perspective import Array

#: Ridge weights for patches of unit variance, of yaw and of pitch, which shows less. More of it
#: makes the eyes' way too short at its ends, up and down above all; less of it learns eyes that lag
#: as if they held the target (own choice, by four people and six clips of rendered heads;
#: DEVELOPERS.md, "How the eyes are read").
RIDGE = (5.0, 2.0)
#: The same where it is told how unlike the set-up's eyes are: with so little nearly everything
#: would be known (own choice; ``tracker.measure.UNLIKE_MOST`` is placed with it).
KNOWN = 30.0
#: Prior variance of the offset against that of the weights: no limit worth the name (this project's
#: own choice).
FREE = 1e4
#: A frame with less weight than this was not believed (this project's own choice).
TRUSTED = 0.3


@dataclass(frozen=True, slots=True)
class Ridge:
    """Linear map with an offset: ``angles = (x - mean) @ weights + offset``.

    Attributes
    ----------
    mean, weights, offset
        ``(n,)``, ``(n, 2)`` and ``(2,)``.
    basis
        ``(k, n)`` directions in which the vectors of the fit varied, each as long as
        they are known.
    usual
        What :meth:`unexplained` left of vectors like those of the fit (median of the
        stretches that were kept from it).
    """

    mean: Array
    weights: Array
    offset: Array
    basis: Array
    usual: float

    def predict(self, vectors: Array) -> Array:
        """Angles ``S + (2,)`` in degrees of vectors ``S + (n,)``."""
        return np.asarray((vectors - self.mean) @ self.weights + self.offset)

    def without(self, last: int) -> Ridge:
        """The same map of vectors that lack their last numbers, which then are 0."""
        kept = len(self.mean) - last
        offset = self.offset - self.mean[kept:] @ self.weights[kept:]
        return Ridge(
            self.mean[:kept], self.weights[:kept], offset, self.basis[:, :kept], self.usual
        )

    def unexplained(self, vectors: Array) -> Array:
        """What the vectors of the fit leave unexplained of vectors ``S + (n,)``, squared.

        It is the variance that a Gaussian process with a linear kernel predicts, freed
        of its noise (Rasmussen and Williams 2006, section 2.2).
        """
        centred = vectors - self.mean
        known = centred @ self.basis.T
        return np.asarray((centred**2).sum(axis=-1) - (known**2).sum(axis=-1))

    def unlike(self, vectors: Array) -> Array:
        """How unlike those of the fit vectors ``S + (n,)`` are; 1 is usual."""
        left = np.maximum(self.unexplained(vectors), 0.0)
        return np.asarray(np.sqrt(left / self.usual))


def fit_ridge(
    vectors: Array, angles_deg: Array, weights: Array, stretches: NDArray[np.int64]
) -> Ridge:
    """Weighted ridge regression in its dual form (fewer samples than pixels).

    Parameters
    ----------
    vectors
        ``(n, m)`` one row a frame.
    angles_deg
        ``(n, 2)`` what each frame should read.
    weights
        ``(n,)`` trust in each frame, 0 to 1.
    stretches
        ``(n,)`` number of the stretch of time a frame belongs to: neighbours are alike,
        so only what is unlike other stretches tells what is usual.
    """
    total = weights.sum()
    mean = weights @ vectors / total
    offset = weights @ angles_deg / total
    root = np.sqrt(weights)[:, None]
    x = (vectors - mean) * root
    y = (angles_deg - offset) * root
    energy, turn = np.linalg.eigh(x @ x.T)
    pulled = turn @ ((turn.T @ y) / np.add.outer(energy, RIDGE))
    strong = energy > KNOWN
    # Unit directions, shortened by how well the fit knows them.
    basis = (turn[:, strong] / np.sqrt(energy[strong] + KNOWN)).T @ x
    usual = _usual((turn / (energy + KNOWN)) @ turn.T, weights, stretches)
    return Ridge(mean, x.T @ pulled, offset, basis, usual)


def left_out(
    vectors: Array, angles_deg: Array, weights: Array, stretches: NDArray[np.int64]
) -> Array:
    """How far each stretch reads from ``angles_deg`` when the fit is made without it.

    In closed form, from one inverse for all stretches (Rasmussen and Williams 2006,
    section 5.4.2, for blocks). Parameters are those of :func:`fit_ridge`.

    Returns
    -------
    ndarray
        ``(n, 2)`` degrees, what is read less what was asked.
    """
    centred = vectors - vectors.mean(axis=0)
    asked = angles_deg - angles_deg.mean(axis=0)
    # The offset is one more regressor, next to free.
    kernel = centred @ centred.T + FREE
    parts = [np.flatnonzero(stretches == s) for s in np.unique(stretches)]
    out = np.empty_like(asked)
    for axis, ridge in enumerate(RIDGE):
        inverse = np.linalg.inv(kernel + np.diag(ridge / weights))
        pulled = inverse @ asked[:, axis]
        for rows in parts:
            out[rows, axis] = -np.linalg.solve(inverse[np.ix_(rows, rows)], pulled[rows])
    return np.asarray(out)


def _usual(inverse: Array, weights: Array, stretches: NDArray[np.int64]) -> float:
    """Median of what a stretch leaves unexplained that was kept from the fit.

    In closed form: the covariance of some frames given all others is the inverse of
    their block of the inverse (Rasmussen and Williams 2006, section 5.4.2).
    """
    left = []
    for stretch in np.unique(stretches):
        rows = np.flatnonzero((stretches == stretch) & (weights > TRUSTED))
        if len(rows):
            block = np.linalg.inv(inverse[np.ix_(rows, rows)])
            left.append((np.diag(block) - KNOWN) / weights[rows])
    return max(float(np.median(np.concatenate(left))), 1e-6) if left else 1e-6
