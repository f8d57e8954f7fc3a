"""A movement as keyframes: poses, how long the way to each takes and how long it holds.

Pure data and arithmetic. The person is seen as in a mirror: the patient's right is at the
right of the picture. Angles are in degrees with the signs of the whole program (yaw + to
the right, pitch + up, roll + right ear down); places are in units of a picture of 100 by
100, x to the right and y down.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, fields, replace

#: Most movements a second. A picture that is to be copied by a dizzy person is slower
#: than the exercise itself (this project's own choice).
MOST_A_SECOND = 0.3


@dataclass(frozen=True, slots=True)
class Pose:
    """How a person is drawn at one moment.

    Attributes
    ----------
    yaw, pitch, roll
        Of the head.
    eye_x, eye_y
        Of the eyes in the head, to the right and up.
    lids
        1 open, 0 shut.
    lift, reach
        Shoulders: up by this share, and forward (back below 0).
    near
        A fingertip: 0 at arm's length, 1 near the nose.
    target_x, target_y
        Where the target is seen, from straight ahead.
    ball_x, ball_y
        Place of a ball.
    hip_x, hip_y
        Place of the hips of a whole body, where no foot is planted.
    lean
        Of the trunk: forward in the side view, to the right in the front view.
    thigh_a, shin_a, thigh_b, shin_b
        Legs from the vertical, forward; a is the nearer leg, or the right one.
    arm_a, fore_a
        Upper arm and forearm from hanging, forward.
    foot_a, foot_b
        Height of the feet over the floor in the front view.
    turn
        Of the whole trunk, seen from above.
    """

    yaw: float = 0.0
    pitch: float = 0.0
    roll: float = 0.0
    eye_x: float = 0.0
    eye_y: float = 0.0
    lids: float = 1.0
    lift: float = 0.0
    reach: float = 0.0
    near: float = 0.0
    target_x: float = 0.0
    target_y: float = 0.0
    ball_x: float = 50.0
    ball_y: float = 50.0
    hip_x: float = 50.0
    hip_y: float = 52.0
    lean: float = 0.0
    thigh_a: float = 0.0
    shin_a: float = 0.0
    thigh_b: float = 0.0
    shin_b: float = 0.0
    arm_a: float = 0.0
    fore_a: float = 0.0
    foot_a: float = 0.0
    foot_b: float = 0.0
    turn: float = 0.0


@dataclass(frozen=True, slots=True)
class Key:
    """A pose, the time to get there from the one before, and how long it holds (s)."""

    pose: Pose
    move_s: float = 2.0
    hold_s: float = 1.5


@dataclass(frozen=True, slots=True)
class Arrow:
    """An arrow from one place to another, bent to its left by ``bend``; with two heads or one."""

    from_xy: tuple[float, float]
    to_xy: tuple[float, float]
    bend: float = 0.0
    both: bool = True


@dataclass(frozen=True, slots=True)
class Movement:
    """What is drawn of one exercise.

    Attributes
    ----------
    views
        One or two ways of seeing it: keys of ``ui.figures.paint.VIEWS``.
    keys
        The poses, one after the other and over again; a single one stands still.
    things
        What is drawn besides the person: ``target``, ``marks``, ``finger``, ``thumb``,
        ``ball``, ``chair``, ``corner``, ``mat``, ``step``, ``rail``, ``helper``.
    arrows
        For each view, where the movement goes.
    still
        Numbers of the keys that tell the movement where nothing may move; all if empty.
    planted
        Whether the nearer foot stays where it is, and the hips go with the leg.
    """

    views: tuple[str, ...]
    keys: tuple[Key, ...]
    things: frozenset[str] = frozenset()
    arrows: dict[str, tuple[Arrow, ...]] = field(default_factory=dict)
    still: tuple[int, ...] = ()
    planted: bool = False

    @property
    def moves(self) -> bool:
        """Whether anything moves in it."""
        return len(self.keys) > 1

    @property
    def period_s(self) -> float:
        """Time until it begins again."""
        return sum(k.move_s + k.hold_s for k in self.keys)

    @property
    def a_second(self) -> float:
        """Movements a second."""
        return len(self.keys) / self.period_s if self.moves else 0.0

    def pose_at(self, time_s: float) -> tuple[Pose, float]:
        """Pose at a time, and how long it then holds (0 while it moves).

        The way from pose to pose begins and ends gently (half a cosine).
        """
        if not self.moves:
            return self.keys[0].pose, math.inf
        left_s = time_s % self.period_s
        for k, key in enumerate(self.keys):
            if left_s < key.move_s:
                share = (1 - math.cos(math.pi * left_s / key.move_s)) / 2
                return mixed(self.keys[k - 1].pose, key.pose, share), 0.0
            left_s -= key.move_s
            if left_s < key.hold_s:
                return key.pose, key.hold_s - left_s
            left_s -= key.hold_s
        return self.keys[-1].pose, 0.0

    def stills(self) -> list[Pose]:
        """The poses that tell it without moving, at most two."""
        numbers: Sequence[int] = self.still or range(len(self.keys))
        return [self.keys[k].pose for k in numbers][:2]

    def with_eyes_shut(self) -> Movement:
        """The same with the eyes shut all the time."""
        keys = tuple(replace(k, pose=replace(k.pose, lids=0.0)) for k in self.keys)
        return replace(self, keys=keys)


def mixed(one: Pose, other: Pose, share: float) -> Pose:
    """A pose between two."""
    values = {}
    for f in fields(Pose):
        a, b = getattr(one, f.name), getattr(other, f.name)
        values[f.name] = a + (b - a) * share
    return Pose(**values)
