"""A head with shoulders, arms and hands that move: for rolls of the shoulders and throws."""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from sample_clips.angles import Array
from sample_clips.heads import Attitude, Head
from sample_clips.mesh import base_mesh, data_folder
from sample_clips.people import HeadSpec, find_head

#: Lowest part of a body that is drawn, below the eyes: hands that hang.
BODY_LOWEST_MM = -950.0
#: Rows of ``joints``: where collar bone, upper arm, forearm and hand begin.
COLLAR, SHOULDER, ELBOW, WRIST = range(4)
_JOINTS = ("clavicle", "shoulder", "elbow", "hand")
_BONES = (
    ("clavicle", "shoulder01"),
    ("upperarm01", "upperarm02"),
    ("lowerarm01", "lowerarm02"),
    ("wrist", "finger", "metacarpal"),
)
#: Hands are painted as a place on the cheek: skin, not sleeve.
_CHEEK_MM = np.array([40.0, -60.0, -20.0])


@dataclass(frozen=True, slots=True)
class Arm:
    """How one arm is held; directions are (right, up, forward) in the rest frame.

    ``rise_mm`` and ``forward_mm`` move the shoulder about the inner end of the collar bone.
    """

    upper: tuple[float, float, float]
    fore: tuple[float, float, float]
    rise_mm: float = 0.0
    forward_mm: float = 0.0


def mirrored(arm: Arm) -> Arm:
    """The same arm on the other side."""
    (ux, uy, uz), (fx, fy, fz) = arm.upper, arm.fore
    return Arm((-ux, uy, uz), (-fx, fy, fz), arm.rise_mm, arm.forward_mm)


#: Arms that hang, hands in the lap.
HANGING = Arm((0.25, -1.0, 0.05), (0.0, -0.5, 0.8))


class Body(Head):
    """The mesh of one head with a body whose arms move by the mesh's own weights."""

    lowest_mm = BODY_LOWEST_MM

    def __init__(
        self,
        spec: HeadSpec,
        pupils_mm: float = 63.0,
        neck_mm: tuple[float, float, float] = (0.0, -70.0, -100.0),
    ) -> None:
        super().__init__(spec, pupils_mm, neck_mm)
        hands = sum(self._weights[side][WRIST] for side in ("r", "l"))
        self._hands = np.asarray(hands) > 0.5

    def _cut(self, placed: Array, body: list[list[int]], to_mm: Array) -> None:
        super()._cut(placed, body, to_mm)
        faces = [f for f in body if placed[f, 1].min() > self.lowest_mm]
        kept = np.unique(np.concatenate(faces))
        _, groups = base_mesh()
        self.joints = {
            side: np.stack(
                [
                    placed[np.unique(np.concatenate(groups[f"joint-{side}-{name}"]))].mean(axis=0)
                    for name in _JOINTS
                ]
            )
            for side in ("r", "l")
        }
        self._weights = {
            side: np.stack([_weights_of(side, names)[kept] for names in _BONES])
            for side in ("r", "l")
        }

    def posed(self, attitude: Attitude) -> tuple[Array, Array]:
        """As of a head, with the arms where the attitude has them."""
        place, _ = super().posed(attitude)
        held = self._held(place, attitude)
        moved = held + self._follows * (self._turn(held, attitude) - held) + attitude.shift_mm
        place = place.copy()
        for side in ("r", "l"):
            hand = self._hands & (self._weights[side][WRIST] > 0.5)
            place[hand] = _CHEEK_MM + 0.1 * (place[hand] - place[hand].mean(axis=0))
        return place, moved

    def joints_in_space(self, side: str, attitude: Attitude) -> Array:
        """Collar bone, shoulder, elbow and wrist ``(4, 3)`` of a side in the rest frame."""
        joints = self.joints[side]
        moves = self._moves(side, attitude)
        held = [joints[0]] + [moves[k][0] @ joints[k + 1] + moves[k][1] for k in range(3)]
        return np.stack(held) + attitude.shift_mm

    def _held(self, points: Array, attitude: Attitude) -> Array:
        out = points.copy()
        for side in ("r", "l"):
            weights = self._weights[side]
            total = weights.sum(axis=0)[:, None]
            moved = sum(
                weights[k][:, None] * (points @ turn.T + shift)
                for k, (turn, shift) in enumerate(self._moves(side, attitude))
            )
            share = np.clip(total, 0.0, 1.0)
            mean = moved / np.maximum(total, 1e-9)
            out = np.where(total > 1e-4, (1 - share) * out + share * mean, out)
        return out

    def _moves(self, side: str, attitude: Attitude) -> list[tuple[Array, Array]]:
        """Rotation and shift of each of the four bones."""
        right, left = attitude.arms or (HANGING, mirrored(HANGING))
        arm = right if side == "r" else left
        joints = self.joints[side]
        collar = joints[SHOULDER] - joints[COLLAR]
        lifted = collar + np.array([0.0, arm.rise_mm, arm.forward_mm])
        first = _turn_to(collar, lifted)
        upper = _turn_to(joints[ELBOW] - joints[SHOULDER], np.array(arm.upper))
        bone = upper @ (joints[WRIST] - joints[ELBOW])
        fore = _turn_to(bone, np.array(arm.fore)) @ upper
        moves: list[tuple[Array, Array]] = []
        at = joints[COLLAR]
        for k, turn in enumerate((first, upper, fore, fore)):
            moves.append((turn, at - turn @ joints[k]))
            if k + 1 < len(joints):
                at = turn @ (joints[k + 1] - joints[k]) + at
        return moves


def _weights_of(side: str, bones: tuple[str, ...]) -> NDArray[np.float64]:
    """How far each vertex of the mesh goes with some bones, 0 to 1."""
    out = np.zeros(len(base_mesh()[0]))
    for name, rows in _all_weights().items():
        if name.endswith(f".{side.upper()}") and name.startswith(bones):
            for vertex, share in rows:
                out[vertex] += share
    return out


@lru_cache(maxsize=1)
def _all_weights() -> dict[str, list[tuple[int, float]]]:
    path = data_folder() / "mpfb2/rigs/standard/weights.default.json"
    found: dict[str, list[tuple[int, float]]] = json.loads(path.read_text(encoding="utf-8"))[
        "weights"
    ]
    return found


def _turn_to(old: Array, new: Array) -> Array:
    """The shortest rotation of one direction to another (Rodrigues), ``(3, 3)``."""
    a, b = old / np.linalg.norm(old), new / np.linalg.norm(new)
    axis, cosine = np.cross(a, b), float(a @ b)
    if cosine < -0.999999:
        raise ValueError("a limb can't be turned right round")
    cross = np.array([[0, -axis[2], axis[1]], [axis[2], 0, -axis[0]], [-axis[1], axis[0], 0]])
    return np.asarray(np.eye(3) + cross + cross @ cross / (1.0 + cosine))


@lru_cache(maxsize=4)
def make_body(name: str) -> Body:
    """A head by name, with a body."""
    spec = find_head(name)
    return Body(spec, spec.pupils_mm, spec.neck_mm)
