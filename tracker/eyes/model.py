"""How a person's eyes are read: one regression for each eye and kind of patch."""

from __future__ import annotations

from dataclasses import dataclass, field
from math import nan

import numpy as np

from tracker.eyes.regression import Ridge
from tracker.head.perspective import Array
from tracker.rotation import angles_from_direction, direction_from_angles
from tracker.sample import Reach


@dataclass(frozen=True, slots=True)
class EyeModel:
    """Two regressions from the patches of one eye to its yaw and pitch in the head.

    Their mean is the reading: the rectified patch errs with the pose, the cornered one
    with the landmarks.
    """

    rectified: Ridge
    cornered: Ridge

    def predict(self, rectified: Array, cornered: Array) -> Array:
        """Yaw and pitch ``S + (2,)`` in degrees of patches ``S + (p,)``."""
        both = self.rectified.predict(rectified) + self.cornered.predict(cornered)
        return np.asarray(0.5 * both)

    def unlike(self, rectified: Array, cornered: Array) -> Array:
        """How unlike those of the set-up patches ``S + (p,)`` are; 1 is usual."""
        return np.asarray(0.5 * (self.rectified.unlike(rectified) + self.cornered.unlike(cornered)))


@dataclass(frozen=True, slots=True)
class EyeReading:
    """Where the eyes look, relative to the head.

    Attributes
    ----------
    yaw_deg, pitch_deg
        Mean direction of the eyes.
    vergence_deg
        How far the lines of sight turn in, in yaw; that of parallel lines is 0. NaN of one
        eye alone.
    unlike
        How unlike the eyes of the set-up they look; 1 is usual.
    """

    yaw_deg: float
    pitch_deg: float
    vergence_deg: float
    unlike: float


@dataclass(frozen=True, slots=True)
class GazeModel:
    """A person's eyes, and where they were trained.

    Attributes
    ----------
    eyes
        Models of the eyes in use, the patient's own right one before the left one.
    reach_deg
        ``(2, 2)`` lowest and highest trained yaw and pitch of the eyes' mean.
    error_deg
        Median error on targets that were held out.
    turned
        ``(3, 3)`` from the axes it was trained in to those of the rest frame: another
        than none once a kept profile has been given a new rest.
    """

    eyes: tuple[EyeModel, ...]
    reach_deg: Array
    error_deg: float
    turned: Array = field(default_factory=lambda: np.eye(3))

    @property
    def reach(self) -> Reach:
        """The trained ranges of yaw and pitch as plain numbers."""
        (a, b), (c, d) = np.round(self.reach_deg, 2).tolist()
        return (a, b), (c, d)

    def read(self, rectified: Array, cornered: Array) -> EyeReading:
        """Read the eyes in use.

        Parameters
        ----------
        rectified, cornered
            ``(k, p)`` patches of the eyes in use.
        """
        eyes = list(zip(self.eyes, rectified, cornered, strict=True))
        looks = [
            self.turned @ direction_from_angles(*(float(v) for v in eye.predict(r, c)))
            for eye, r, c in eyes
        ]
        unlike = float(np.mean([eye.unlike(r, c) for eye, r, c in eyes]))
        yaw, pitch = angles_from_direction(sum(looks[1:], start=looks[0]))
        yaws = [float(angles_from_direction(look)[0]) for look in looks]
        turned_in = yaws[1] - yaws[0] if len(yaws) == 2 else nan
        return EyeReading(float(yaw), float(pitch), turned_in, unlike)
