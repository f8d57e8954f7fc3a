"""Heads: who they are, and how a head turns, looks and closes its lids."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from sample_clips.angles import Array, turned
from sample_clips.mesh import base_mesh, face_unit, feature, person
from sample_clips.people import HeadSpec, find_head
from sample_clips.spectacles import spectacles

#: Radius of a life-size eyeball in mm; the mesh's own balls are 1.4 times as large.
EYE_RADIUS_MM = 12.0
#: Lowest part of the body that is drawn, below the eyes.
LOWEST_MM = -520.0
#: The mesh's mouth droops at rest; this makes the face a calm one.
SMILE = 0.2
_UNITS = ("eyeBlink", "eyeLookDown", "eyeLookUp")


@dataclass(frozen=True, slots=True)
class Attitude:
    """What a head does at one moment.

    ``shift_mm`` moves the neck point; ``look`` is a direction for each eye in
    the head's own axes ``(2, 3)``; ``shut`` closes the lids (0 to 1), ``low``
    lowers them as in a tired face, ``jaw`` opens the mouth; ``glasses`` are worn or not;
    ``arms`` are the right and the left :class:`~sample_clips.bodies.Arm` of a body.
    """

    yaw_deg: float
    pitch_deg: float
    roll_deg: float
    shift_mm: Array
    look: Array
    shut: float = 0.0
    low: float = 0.0
    jaw: float = 0.0
    glasses: bool = False
    arms: Any = None

    @property
    def rotation(self) -> Array:
        """Head rotation from rest."""
        return turned(self.yaw_deg, self.pitch_deg, self.roll_deg)


class Head:
    """The mesh of one head in millimetres, (right, up, forward) from between the eyeballs.

    What lies below ``lowest_mm`` is not drawn.

    Parameters
    ----------
    spec
        Who it is.
    pupils_mm
        Distance of the eyeball centres.
    neck_mm
        The point about which the head turns.
    """

    lowest_mm = LOWEST_MM

    def __init__(
        self,
        spec: HeadSpec,
        pupils_mm: float = 63.0,
        neck_mm: tuple[float, float, float] = (0.0, -70.0, -100.0),
    ) -> None:
        self.spec = spec
        self.neck_mm = np.array(neck_mm)
        vertices, groups = base_mesh()
        shape = vertices.copy()
        for ancestry, sex, age, share in spec.mix:
            shape += share * person(ancestry, sex, age)
        for name, share in spec.features:
            shape += share * feature(name)
        balls = [np.unique(np.concatenate(groups[f"helper-{s}-eye"])) for s in "rl"]
        right, left = (shape[ball].mean(axis=0) for ball in balls)
        scale = pupils_mm / float(np.linalg.norm(left - right))
        # The mesh looks along its z with its left at positive x.
        to_mm = scale * np.array([-1.0, 1.0, 1.0])
        self.ball_mm = float(np.linalg.norm((shape[balls[1]] - left) * scale, axis=1).mean())
        # A life-size ball touches the mesh's larger one in front, behind the lids.
        forward = np.array([0.0, 0.0, self.ball_mm - EYE_RADIUS_MM])
        origin = 0.5 * (left + right) + forward / to_mm
        self.balls_mm = np.stack([(right - origin) * to_mm, (left - origin) * to_mm])
        self.eyes_mm = self.balls_mm + forward
        self.glasses = spectacles(self.balls_mm, self.ball_mm)
        placed = (shape - origin) * to_mm
        self._cut(placed, groups["body"], to_mm)
        self.noise = np.random.default_rng(spec.seed).random((64, 64, 64)).astype(np.float32)

    def _cut(self, placed: Array, body: list[list[int]], to_mm: Array) -> None:
        """Keep head and shoulders; split faces into triangles."""
        faces = [f for f in body if placed[f, 1].min() > self.lowest_mm]
        triangles = [t for f in faces for t in ([f[0], f[1], f[2]], [f[0], f[2], f[-1]])]
        flat = np.array([t for t in triangles if len(set(t)) == 3])
        kept = np.unique(flat)
        smile = sum(face_unit(f"mouthSmile{side}") for side in ("Left", "Right"))
        self.vertices = placed[kept] + SMILE * (smile * to_mm)[kept]
        self.triangles: NDArray[np.int64] = np.searchsorted(kept, flat)
        self._units = {
            name + side: (face_unit(name + side) * to_mm)[kept]
            for name in _UNITS
            for side in ("Right", "Left")
        }
        self._units["jawOpen"] = (face_unit("jawOpen") * to_mm)[kept]
        lips = sum(
            np.linalg.norm(face_unit(f"mouthRoll{part}")[kept], axis=1)
            for part in ("Lower", "Upper")
        )
        middle = np.average(self.vertices, axis=0, weights=lips**2)
        #: Middle of the lips, of which the mesh's own units know where they are.
        self.mouth_mm = np.array([0.0, middle[1], middle[2]])
        rise = np.clip((self.vertices[:, 1] + 190.0) / 70.0, 0.0, 1.0)
        # Shoulders stay, the head turns, the throat goes between.
        self._follows = (rise * rise * (3.0 - 2.0 * rise))[:, None]

    def posed(self, attitude: Attitude) -> tuple[Array, Array]:
        """Vertices with the face's movement but no turn, and the same in the rest frame."""
        face = self.vertices.copy()
        for number, side in enumerate(("Right", "Left")):
            pitch = np.degrees(np.arcsin(np.clip(attitude.look[number, 1], -1.0, 1.0)))
            down = np.clip(-pitch / 30.0 + attitude.low, 0.0, 1.2) * (1.0 - attitude.shut)
            up = np.clip(pitch / 30.0, 0.0, 1.0) * (1.0 - attitude.shut)
            face += self._units["eyeLookDown" + side] * down + self._units["eyeLookUp" + side] * up
            face += self._units["eyeBlink" + side] * attitude.shut
        face += self._units["jawOpen"] * attitude.jaw
        for centre in self.balls_mm:
            away = face - centre
            reach = np.linalg.norm(away, axis=1)
            sunk = (reach < self.ball_mm + 0.6) & (away[:, 2] > -2.0)
            face[sunk] = centre + away[sunk] / reach[sunk, None] * (self.ball_mm + 0.6)
        moved = face + self._follows * (self._turn(face, attitude) - face) + attitude.shift_mm
        return face, moved

    def _turn(self, points: Array, attitude: Attitude) -> Array:
        return (points - self.neck_mm) @ attitude.rotation.T + self.neck_mm

    def in_space(self, points: Array, attitude: Attitude) -> Array:
        """Points of the head itself in the rest frame."""
        return self._turn(points, attitude) + attitude.shift_mm


@lru_cache(maxsize=8)
def make_head(name: str) -> Head:
    """A head by name: one with a name, or ``random-NUMBER``."""
    spec = find_head(name)
    return Head(spec, spec.pupils_mm, spec.neck_mm)
