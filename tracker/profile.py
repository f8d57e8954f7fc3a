"""What is known of one person in front of one camera: the result of a set-up."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from tracker.eyes.model import GazeModel
from tracker.eyes.openness import LidRange
from tracker.head.perspective import Array, Pinhole, Pose
from tracker.head.shape import FaceShape
from tracker.head.template import Template
from tracker.lens import DEFAULT_LENS, Lens


@dataclass(frozen=True, slots=True)
class RestFrame:
    """Where the head was and how the axes lay at rest.

    Attributes
    ----------
    axes
        ``(3, 3)``; columns are the patient's right, up and forward in camera
        coordinates (a left-handed triple).
    turned
        ``(3, 3)`` rotation of the head at rest from the picture that its template
        was cut from: a head is never quite still, and one picture is not its rest.
    origin_mm
        Mid-point between the eyeball centres in camera coordinates.
    neck_mm
        The point about which the head turns, relative to the origin, in camera axes.
    """

    axes: Array
    turned: Array
    origin_mm: Array
    neck_mm: Array

    @property
    def camera_mm(self) -> tuple[float, float, float]:
        """Where the camera is: right, up and forward of the mid-point between the eyes."""
        x, y, z = (float(v) for v in -(self.axes.T @ self.origin_mm))
        return x, y, z

    def from_rest(self, pose: Pose) -> Array:
        """Head rotation from rest in camera axes."""
        return np.asarray(pose.rotation @ self.turned.T)

    def rotation(self, pose: Pose) -> Array:
        """Head rotation matrix in (right, up, forward) components."""
        return np.asarray(self.axes.T @ self.from_rest(pose) @ self.axes)

    def head_mm(self, pose: Pose) -> Array:
        """Eye mid-point relative to rest: right, up, forward."""
        return np.asarray(self.axes.T @ (pose.position_mm - self.origin_mm))

    def neck_point_mm(self, pose: Pose) -> Array:
        """Neck point relative to rest: right, up, forward."""
        neck = self.from_rest(pose) @ self.neck_mm + pose.position_mm
        moved = neck - self.origin_mm - self.neck_mm
        return np.asarray(self.axes.T @ moved)


@dataclass(frozen=True, slots=True)
class Profile:
    """Everything that measuring needs to know of a person and a camera."""

    width_px: int
    height_px: int
    vertical_fov_deg: float | None
    camera: Pinhole
    shape: FaceShape
    template: Template
    eyes_mm: Array
    rest: RestFrame
    lids: LidRange
    gaze: GazeModel | None
    #: How the field of view is known; the picture's own shape goes with it.
    fov_source: str = "stated"
    fov_error_deg: float | None = None
    #: The eye in use: a name of ``tracker.eyes.in_use.EYES``.
    eyes: str = "both"

    @property
    def lens(self) -> Lens:
        """The camera's lens, as it was known at the set-up."""
        if self.vertical_fov_deg is None:
            return DEFAULT_LENS
        return Lens(self.vertical_fov_deg, self.fov_source, self.fov_error_deg)
