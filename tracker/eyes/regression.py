"""A person's own map from the look of their eyes to the direction of their gaze."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from tracker.head.perspective import Array

#: Ridge weight for patches of unit variance; the error is flat over a decade
#: around it (measured on rendered heads).
RIDGE = 30.0


@dataclass(frozen=True, slots=True)
class Ridge:
    """Linear map with an offset: ``angles = (x - mean) @ weights + offset``."""

    mean: Array
    weights: Array
    offset: Array

    def predict(self, vectors: Array) -> Array:
        """Angles ``S + (2,)`` in degrees of vectors ``S + (n,)``."""
        return np.asarray((vectors - self.mean) @ self.weights + self.offset)


def fit_ridge(vectors: Array, angles_deg: Array, weights: Array) -> Ridge:
    """Weighted ridge regression in its dual form (fewer samples than pixels).

    Parameters
    ----------
    vectors
        ``(n, m)`` one row a frame.
    angles_deg
        ``(n, 2)`` what each frame should read.
    weights
        ``(n,)`` trust in each frame, 0 to 1.
    """
    total = weights.sum()
    mean = weights @ vectors / total
    offset = weights @ angles_deg / total
    root = np.sqrt(weights)[:, None]
    x = (vectors - mean) * root
    y = (angles_deg - offset) * root
    dual = np.linalg.solve(x @ x.T + RIDGE * np.eye(len(x)), y)
    return Ridge(mean, x.T @ dual, offset)
