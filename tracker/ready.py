"""Compile the loops before somebody waits for them: ``python -m tracker.ready``.

The machine code is kept (see :mod:`tracker.compiled`), so this is done once, when
the program is installed; without it the first set-up of all takes some seconds more.
"""

from __future__ import annotations

import numpy as np

from tracker.head.alignment import align, match
from tracker.head.crop import GreyCrop, sample_bilinear
from tracker.head.perspective import Pinhole, Pose, fit_pose
from tracker.head.template import Template


def make_ready() -> None:
    """Call every compiled loop once, on next to nothing."""
    camera, ahead = Pinhole(50.0, 30.0, 30.0), np.array([0.0, 0.0, 100.0])
    crop = GreyCrop(np.zeros((60, 60), np.float32), 0.0, 0.0, 1.0)
    pose = Pose(np.eye(3), ahead)
    flat = np.zeros((20, 49, 3))
    flat[..., :2] = np.stack(np.meshgrid(np.arange(7.0), np.arange(7.0)), -1).reshape(-1, 2)
    sample_bilinear(crop.image, np.zeros((1, 2)))
    fit_pose(flat[0], camera.project(flat[0] + ahead), camera, pose)
    template = Template.cut(crop, camera, ahead, flat, np.tile([0.0, 0.0, -1.0], (20, 1)))
    match(template, crop, camera, pose)
    align(template, crop, camera, pose)


if __name__ == "__main__":
    make_ready()
