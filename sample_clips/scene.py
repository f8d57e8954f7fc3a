"""A room with a camera, a light and one or two heads: attitudes in, pictures out."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sample_clips import paint
from sample_clips.angles import Array
from sample_clips.heads import Attitude, Head

_SHIRT = np.array([90.0, 100.0, 130.0])
#: Fineness of drawing: each pixel is the mean of this many by this many.
FINENESS = 2
#: Nearer to the camera than this nothing is drawn.
_NEAREST_MM = 50.0


@dataclass(frozen=True, slots=True)
class CameraPlace:
    """A pinhole camera in the rest frame; ``tilt_deg`` > 0 looks down."""

    width_px: int
    height_px: int
    vertical_fov_deg: float
    position_mm: tuple[float, float, float]
    tilt_deg: float

    @property
    def focal_px(self) -> float:
        """Focal length in pixels."""
        return float(0.5 * self.height_px / np.tan(np.radians(self.vertical_fov_deg / 2)))

    def see(self, points: Array) -> Array:
        """Points of the rest frame in camera axes (picture's right, down, away)."""
        t = np.radians(self.tilt_deg)
        axes = np.array([[-1.0, 0, 0], [0, -np.cos(t), np.sin(t)], [0, -np.sin(t), -np.cos(t)]])
        return np.asarray((points - np.array(self.position_mm)) @ axes.T)


class Scene:
    """Draws heads before a still room."""

    def __init__(self, camera: CameraPlace, light_from: Sequence[float], seed: int) -> None:
        self._camera = camera
        self.light_from(light_from)
        self._size = (camera.height_px * FINENESS, camera.width_px * FINENESS)
        self._room = _room(*self._size, seed)
        self._balls = _ball()
        self._signs: dict[int, tuple[float, float]] = {}

    def light_from(self, direction: Sequence[float]) -> None:
        """From now on the light comes from there (right, up, towards the camera)."""
        self._light = np.array(direction) / float(np.linalg.norm(direction))

    def draw(self, people: Sequence[tuple[Head, Attitude]]) -> NDArray[np.float32]:
        """Picture ``(h, w, 3)`` in blue, green, red, before the sensor's noise."""
        picture = self._room.copy()
        nearest = np.zeros(self._size, np.float32)
        for head, attitude in people:
            self._add(head, attitude, picture, nearest)
        return np.asarray(paint.coarse(picture, FINENESS))

    def _add(
        self,
        head: Head,
        attitude: Attitude,
        picture: NDArray[np.float32],
        nearest: NDArray[np.float32],
    ) -> None:
        """Draw one head into the picture where it is before what is there."""
        rest, moved = head.posed(attitude)
        sphere, sphere_triangles = self._balls
        parts, places, kinds = [rest], [moved], [np.full(len(rest), paint.SKIN)]
        triangles, count = [head.triangles], len(rest)
        for number, centre in enumerate(head.balls_mm):
            ball = centre + sphere * head.ball_mm
            parts.append(ball)
            places.append(head.in_space(ball, attitude))
            kinds.append(np.full(len(ball), number + 1))
            triangles.append(sphere_triangles + count)
            count += len(ball)
        if attitude.glasses:
            frame, frame_triangles = head.glasses
            parts.append(frame)
            places.append(head.in_space(frame, attitude))
            kinds.append(np.full(len(frame), paint.FRAME))
            triangles.append(frame_triangles + count)
        space = np.vstack(places)
        faces = np.vstack(triangles)
        normals = self._normals(head, space, faces, len(rest))
        seen = self._camera.see(space)
        where = self._box(seen)
        if where is None:
            return
        top, left = where[0].start, where[1].start
        shape = (where[0].stop - top, where[1].stop - left)
        inverse = np.zeros(shape, np.float32)
        place, facing = np.zeros((*shape, 3), np.float32), np.zeros((*shape, 3), np.float32)
        kind = np.zeros(shape, np.int32)
        paint.rasterise(
            seen, faces, np.vstack(parts), normals,
            np.concatenate(kinds).astype(np.int32), self._camera.focal_px * FINENESS,
            (self._size[1] - 1) / 2 - left, (self._size[0] - 1) / 2 - top,
            inverse, place, facing, kind,
        )  # fmt: skip
        # The camera as the head has it, for the ray into the eye.
        seen_from = np.array(self._camera.position_mm) - attitude.shift_mm - head.neck_mm
        viewer = seen_from @ attitude.rotation + head.neck_mm
        spec = head.spec
        paint.shade(
            inverse, nearest[where], place, facing, kind, picture[where], head.noise,
            np.array(spec.skin, float), np.array(spec.hair, float), np.array(spec.iris, float),
            _SHIRT, head.balls_mm, head.ball_mm,
            head.eyes_mm, head.mouth_mm, attitude.look, viewer, self._light,
        )  # fmt: skip

    def _box(self, seen: Array) -> tuple[slice, slice] | None:
        """Rows and columns within which something can be seen, or None."""
        if seen[:, 2].min() < _NEAREST_MM:
            return slice(0, self._size[0]), slice(0, self._size[1])
        fine = self._camera.focal_px * FINENESS
        ends = []
        for size, axis in zip(self._size, (1, 0), strict=True):
            at = seen[:, axis] * fine / seen[:, 2] + (size - 1) / 2
            first, last = max(0, int(at.min())), min(size, int(at.max()) + 2)
            if first >= last:
                return None
            ends.append(slice(first, last))
        return ends[0], ends[1]

    def _normals(self, head: Head, space: Array, faces: NDArray[np.int64], skin: int) -> Array:
        """Outward vertex normals; the mesh's winding is found once for each head."""
        a, b, c = (space[faces[:, k]] for k in range(3))
        across = np.cross(b - a, c - a)
        normals = np.zeros_like(space)
        for k in range(3):
            np.add.at(normals, faces[:, k], across)
        normals /= np.linalg.norm(normals, axis=1, keepdims=True) + 1e-9
        if id(head) not in self._signs:
            body, ball = space[:skin], space[skin:][: len(self._balls[0])]
            self._signs[id(head)] = (
                float(np.sign(((body - body.mean(axis=0)) * normals[:skin]).sum())),
                float(np.sign(((ball - ball.mean(axis=0)) * normals[skin:][: len(ball)]).sum())),
            )
        signs = self._signs[id(head)]
        normals[:skin] *= signs[0]
        normals[skin:] *= signs[1]
        return normals


def _ball(rings: int = 24) -> tuple[Array, NDArray[np.int64]]:
    """Unit sphere."""
    down = np.linspace(0, np.pi, rings)[:, None]
    round_ = np.linspace(0, 2 * np.pi, 2 * rings, endpoint=False)[None]
    points = np.stack(
        [np.sin(down) * np.cos(round_), np.sin(down) * np.sin(round_), np.cos(down) + 0 * round_],
        axis=-1,
    ).reshape(-1, 3)
    faces = []
    for i in range(rings - 1):
        for j in range(2 * rings):
            a, b = i * 2 * rings + j, i * 2 * rings + (j + 1) % (2 * rings)
            faces += [[a, b, b + 2 * rings], [a, b + 2 * rings, a + 2 * rings]]
    return points, np.array(faces)


def _room(height: int, width: int, seed: int) -> NDArray[np.float32]:
    """A calm wall with a window's light and a few blurred things on it."""
    y, x = np.mgrid[0:height, 0:width].astype(np.float32)
    rng = np.random.default_rng(seed)
    wall = 168 + 18 * y / height - 22 * np.abs(x / width - 0.3)
    room = np.stack([wall * 0.98, wall, wall * 1.01], axis=-1)
    for _ in range(4):
        cx, cy = rng.random() * width, rng.random() * height * 0.8
        half_w, half_h = (0.04 + 0.08 * rng.random(2)) * width
        soft = 0.02 * width
        inside = np.clip((half_w - np.abs(x - cx)) / soft, 0, 1) * np.clip(
            (half_h - np.abs(y - cy)) / soft, 0, 1
        )
        colour = rng.random(3) * 60 + 110
        room = room + 0.6 * inside[..., None] * (colour - room)
    return np.asarray(room, np.float32)
