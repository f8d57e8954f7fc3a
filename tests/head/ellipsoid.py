"""A textured ellipsoid, drawn exactly: ground truth with no mesh involved."""

import numpy as np

from tracker.head.crop import GreyCrop
from tracker.head.perspective import Pinhole, Pose

RADII_MM = np.array([75.0, 100.0, 85.0])
CENTRE_MM = np.array([0.0, 20.0, 70.0])


class Ellipsoid:
    """Body coordinates as in the program: origin between the eyes, camera axes."""

    def __init__(self, radii_mm=RADII_MM, centre_mm=CENTRE_MM, seed=0):
        rng = np.random.default_rng(seed)
        self.radii = np.asarray(radii_mm, dtype=float)
        self.centre = np.asarray(centre_mm, dtype=float)
        self.waves = rng.normal(size=(40, 3)) * rng.uniform(0.03, 0.25, (40, 1))
        self.phases = rng.uniform(0, 2 * np.pi, 40)

    def texture(self, body_mm):
        """Grey levels of points on the skin: a fixed sum of waves in space."""
        return 128 + 9.0 * np.cos(body_mm @ self.waves.T + self.phases).sum(axis=-1) / 1.5

    def depth(self, rays, pose):
        """Nearest hit along rays ``(n, 3)``; NaN where the ray misses."""
        local_ray = (rays @ pose.rotation) / self.radii
        local_eye = (-(pose.rotation.T @ pose.position_mm) - self.centre) / self.radii
        a = (local_ray**2).sum(axis=1)
        b = local_ray @ local_eye
        c = local_eye @ local_eye - 1
        inside = b**2 - a * c
        return np.where(inside > 0, (-b - np.sqrt(np.maximum(inside, 0))) / a, np.nan)

    def picture(self, camera: Pinhole, pose: Pose, width=640, height=480, noise=0.0, seed=0):
        """Whole picture as a crop of scale 1."""
        grey = np.full(width * height, 90.0)
        rows = np.flatnonzero(self._near(camera, pose, width, height))
        rays = camera.rays(np.stack([rows % width, rows // width], axis=-1).astype(float))
        depth = self.depth(rays, pose)
        hit = np.isfinite(depth)
        body = (rays[hit] * depth[hit, None] - pose.position_mm) @ pose.rotation
        grey[rows[hit]] = self.texture(body)
        grey = grey + np.random.default_rng(seed).normal(0, noise, grey.shape) if noise else grey
        return GreyCrop(grey.reshape(height, width).astype(np.float32), 0.0, 0.0, 1.0)

    def _near(self, camera, pose, width, height):
        """Pixels that may show it: those in a square about a ball that holds it all."""
        ball = self.radii.max()
        centre = pose.rotation @ self.centre + pose.position_mm
        off = np.abs(np.mgrid[0:width, 0:height].T - camera.project(centre))
        # Along the line of sight to the ball's rim its width grows with the angle to the axis.
        tilt = np.linalg.norm(centre) / centre[2]
        return (off.max(axis=-1) <= 2 * tilt * camera.focal_px * ball / (centre[2] - ball)).ravel()

    def normals(self, body_mm):
        """Outward unit normals."""
        n = (body_mm - self.centre) / self.radii**2
        return n / np.linalg.norm(n, axis=-1, keepdims=True)


NECK_MM = np.array([0.0, 60.0, 100.0])


def about_neck(rotation, rest_mm, neck_mm=NECK_MM):
    """Pose of a head turned about a point behind and below the eyes (camera axes)."""
    return Pose(rotation, rest_mm + neck_mm - rotation @ neck_mm)
