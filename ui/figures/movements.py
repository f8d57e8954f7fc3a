"""The movement of every exercise of the catalogue, as keyframes.

How far the drawn head turns is for the eye to see it, not a measure of what is asked.
"""

from __future__ import annotations

from dataclasses import replace

from ui.figures.model import Arrow, Key, Movement, Pose

_TURN, _NOD, _LOOK = 28.0, 20.0, 20.0
#: A jump of the eyes, and a slow glide.
_JUMP_S, _GLIDE_S = 0.5, 3.4

_ACROSS = {
    "front": (Arrow((30, 9), (70, 9), -6),),
    "above": (Arrow((31, 40), (69, 40), -12),),
}
_UP_DOWN = {"side": (Arrow((8, 58), (10, 22), -6),), "front": (Arrow((82, 56), (82, 28), 0),)}
_EYES_UP_DOWN = {
    "side": (Arrow((96, 54), (96, 18), 0),),
    "front": (Arrow((82, 52), (82, 30), 0),),
}


def _to_and_fro(
    one: Pose, other: Pose, move_s: float = 2.2, hold_s: float = 1.3
) -> tuple[Key, ...]:
    return Key(one, move_s, hold_s), Key(other, move_s, hold_s)


def _turns(*, eyes: float, target: float = 0.0) -> tuple[Key, ...]:
    """Turns of the head; the eyes in it and the target go by a share of the turn."""
    return _to_and_fro(
        *(Pose(yaw=s * _TURN, eye_x=s * eyes * _TURN, target_x=s * target * _TURN) for s in (1, -1))
    )


def _nods(*, eyes: float, target: float = 0.0) -> tuple[Key, ...]:
    return _to_and_fro(
        *(Pose(pitch=s * _NOD, eye_y=s * eyes * _NOD, target_y=s * target * _NOD) for s in (1, -1))
    )


def _stand_up(fore: float, arm: float) -> tuple[Key, ...]:
    """Sitting, leaning forward, standing, leaning, sitting."""
    sit = Pose(thigh_a=88, shin_a=-4, thigh_b=88, shin_b=-4, lean=4, arm_a=arm, fore_a=fore)
    lean = replace(sit, thigh_a=84, shin_a=-16, thigh_b=84, shin_b=-16, lean=38)
    up = Pose(arm_a=arm, fore_a=fore)
    return Key(sit, 2.6, 2.4), Key(lean, 2.2, 1.2), Key(up, 2.6, 2.4), Key(lean, 2.6, 0.8)


def _stairs() -> tuple[Key, ...]:
    stand = Pose(hip_x=34, arm_a=35, fore_a=55)
    step = replace(stand, hip_x=35, thigh_a=62, shin_a=-12, lean=6)
    up = Pose(hip_x=54, hip_y=44.5, arm_a=35, fore_a=55)
    down = replace(step, hip_x=36, thigh_a=60, lean=4)
    return Key(stand, 2.5, 2), Key(step, 2.5, 1), Key(up, 3, 2.5), Key(down, 3, 1)


def _toss() -> tuple[Key, ...]:
    one = Pose(ball_x=80, ball_y=82, yaw=12, pitch=-10)
    over = Pose(ball_x=50, ball_y=10, pitch=14, eye_y=8)
    other = Pose(ball_x=20, ball_y=82, yaw=-12, pitch=-10)
    return Key(one, 2.2, 1.8), Key(over, 2.0, 0.8), Key(other, 2.0, 1.8), Key(over, 2.0, 0.8)


def _shoulders(way: float) -> Movement:
    """Round: up, back (or forward), down."""
    places = ((0.0, 0.0), (1.0, 0.3 * way), (0.5, way))
    keys = tuple(Key(Pose(lift=lift, reach=reach), 2.4, 1.1) for lift, reach in places)
    side = (Arrow((50, 62), (50 + 13 * way, 76), -8 if way > 0 else 8, both=False),)
    front = (
        Arrow((12, 84), (12, 64), 0, both=False),
        Arrow((88, 84), (88, 64), 0, both=False),
    )
    return Movement(("front", "side"), keys, arrows={"front": front, "side": side}, still=(0, 2))


_GAZE: dict[str, Movement] = {
    "eyes-up-down": Movement(
        ("side", "front"),
        _to_and_fro(Pose(eye_y=_LOOK), Pose(eye_y=-_LOOK), _JUMP_S, 3.2),
        frozenset({"marks"}),
        _EYES_UP_DOWN,
    ),
    "eyes-side-to-side": Movement(
        ("front", "above"),
        _to_and_fro(Pose(eye_x=_LOOK), Pose(eye_x=-_LOOK), _JUMP_S, 3.2),
        frozenset({"marks"}),
        {"front": (Arrow((34, 9), (66, 9), 0),)},
    ),
    "nods-on-target": Movement(("side", "front"), _nods(eyes=-1), frozenset({"target"}), _UP_DOWN),
    "turns-on-target": Movement(
        ("front", "above"), _turns(eyes=-1), frozenset({"target"}), _ACROSS
    ),
    "nods-together": Movement(("side", "front"), _nods(eyes=0), frozenset(), _UP_DOWN),
    "turns-together": Movement(("front", "above"), _turns(eyes=0), frozenset(), _ACROSS),
    "turns-x2": Movement(
        ("front", "above"),
        _turns(eyes=-1.6, target=-0.6),
        frozenset({"target"}),
        _ACROSS,
    ),
    "nods-x2": Movement(
        ("side", "front"), _nods(eyes=-1.6, target=-0.6), frozenset({"target"}), _UP_DOWN
    ),
    "near-far": Movement(
        ("side",),
        _to_and_fro(Pose(near=0.0), Pose(near=0.8), 3.4, 1.2),
        frozenset({"finger"}),
        {"side": (Arrow((64, 24), (90, 24), 0),)},
    ),
    "near-hold": Movement(("side",), (Key(Pose(near=0.6)),), frozenset({"finger"})),
    "eyes-then-head": Movement(
        ("front", "above"),
        (
            Key(Pose(yaw=-_LOOK, eye_x=2 * _LOOK), _JUMP_S, 2.9),
            Key(Pose(yaw=_LOOK), 2.2, 1.6),
            Key(Pose(yaw=_LOOK, eye_x=-2 * _LOOK), _JUMP_S, 2.9),
            Key(Pose(yaw=-_LOOK), 2.2, 1.6),
        ),
        frozenset({"marks"}),
        {"front": _ACROSS["front"]},
        still=(0, 1),
    ),
    "remembered-target": Movement(
        ("front", "above"),
        (
            Key(Pose(), 2.0, 2.0),
            Key(Pose(lids=0), 1.0, 2.4),
            Key(Pose(yaw=_TURN, eye_x=-_TURN, lids=0), 2.4, 2.0),
            Key(Pose(yaw=_TURN, eye_x=-_TURN), 1.0, 2.4),
        ),
        frozenset({"target"}),
        {"front": (Arrow((40, 9), (70, 9), -4, both=False),)},
        still=(0, 2),
    ),
    "follow-slowly": Movement(
        ("front", "above"),
        _to_and_fro(
            Pose(eye_x=_LOOK, target_x=_LOOK), Pose(eye_x=-_LOOK, target_x=-_LOOK), _GLIDE_S, 0.6
        ),
        frozenset({"target"}),
        {"front": (Arrow((34, 9), (66, 9), 0),)},
    ),
    "thumb-together": Movement(
        ("above", "front"),
        _to_and_fro(Pose(yaw=_TURN, target_x=_TURN), Pose(yaw=-_TURN, target_x=-_TURN), 2.6, 1.0),
        frozenset({"thumb"}),
        {"front": _ACROSS["front"]},
    ),
    "moving-background": Movement(
        ("scene",), (Key(Pose()),), frozenset(), {"scene": (Arrow((22, 14), (78, 14), 0),)}
    ),
    "head-tilts": Movement(
        ("front",),
        _to_and_fro(Pose(roll=22), Pose(roll=-22)),
        frozenset(),
        {"front": (Arrow((26, 14), (74, 14), -8),)},
    ),
}

_SITTING: dict[str, Movement] = {
    "shoulders-back": _shoulders(-1.0),
    "shoulders-forward": _shoulders(1.0),
    "hand-toss": Movement(
        ("front",),
        _toss(),
        frozenset({"ball", "hands"}),
        {"front": (Arrow((20, 72), (80, 72), -58),)},
        still=(0, 1),
    ),
    "floor-reach": Movement(
        ("body_side",),
        (
            Key(Pose(thigh_a=88, shin_a=0, thigh_b=88, lean=2, arm_a=24, fore_a=40), 3.2, 1.8),
            Key(
                Pose(
                    thigh_a=88,
                    shin_a=0,
                    thigh_b=88,
                    lean=92,
                    pitch=-6,
                    arm_a=26,
                    fore_a=26,
                ),
                3.2,
                1.8,
            ),
        ),
        frozenset({"chair", "small_thing"}),
        {"body_side": (Arrow((66, 22), (88, 52), -8),)},
        planted=True,
    ),
    "sit-to-stand": Movement(
        ("body_side",),
        _stand_up(30, 8),
        frozenset({"chair"}),
        {"body_side": (Arrow((78, 58), (78, 26), 0),)},
        still=(0, 2),
        planted=True,
    ),
    "chair-stands-five": Movement(
        ("body_side",),
        _stand_up(128, 22),
        frozenset({"chair"}),
        {"body_side": (Arrow((78, 58), (78, 26), 0),)},
        still=(0, 2),
        planted=True,
    ),
    "chair-stands-30-s": Movement(
        ("body_side",),
        _stand_up(128, 22),
        frozenset({"chair"}),
        {"body_side": (Arrow((78, 58), (78, 26), 0),)},
        still=(0, 2),
        planted=True,
    ),
}

_STANDING: dict[str, Movement] = {
    "stand": Movement(("body_front",), (Key(Pose()),), frozenset({"corner", "chair"})),
    "ankle-sway": Movement(
        ("body_side",),
        _to_and_fro(
            *(Pose(lean=a, thigh_a=-a, shin_a=-a, thigh_b=-a, shin_b=-a) for a in (7, -5)),
            2.8,
            1.0,
        ),
        frozenset(),
        {"body_side": (Arrow((38, 4), (76, 4), 0),)},
        planted=True,
    ),
    "stand-head-shake": Movement(
        ("body_front", "front"),
        _to_and_fro(Pose(yaw=_TURN), Pose(yaw=-_TURN)),
        frozenset({"mat", "helper"}),
        {"front": _ACROSS["front"]},
    ),
    "weight-shift": Movement(
        ("body_front",),
        _to_and_fro(Pose(hip_x=56, foot_b=2), Pose(hip_x=44, foot_a=2), 2.8, 1.2),
        frozenset({"mat", "helper"}),
        {"body_front": (Arrow((36, 5), (64, 5), 0),)},
    ),
    "stand-tandem": Movement(
        ("body_side",),
        (Key(Pose(thigh_a=9, shin_a=9, thigh_b=-9, shin_b=-9, hip_y=48.6)),),
        frozenset({"helper"}),
    ),
    "stand-one-leg": Movement(
        ("body_front",),
        (
            Key(Pose(), 2.6, 1.2),
            Key(Pose(foot_a=16, hip_x=46), 2.6, 2.6),
            Key(Pose(), 2.6, 1.2),
            Key(Pose(foot_b=16, hip_x=54), 2.6, 2.6),
        ),
        frozenset({"corner"}),
        still=(1, 3),
    ),
    "walk": Movement(
        ("body_side",),
        (
            Key(
                Pose(thigh_a=20, shin_a=14, thigh_b=-14, shin_b=-24, hip_y=49.5, arm_a=-16), 2.6, 1
            ),
            Key(Pose(thigh_a=-14, shin_a=-24, thigh_b=20, shin_b=14, hip_y=49.5, arm_a=16), 2.6, 1),
        ),
        frozenset({"helper"}),
        {"body_side": (Arrow((74, 50), (94, 50), 0),)},
    ),
    "stairs": Movement(
        ("body_side",),
        _stairs(),
        frozenset({"step", "rail"}),
        {"body_side": (Arrow((76, 34), (88, 20), 0),)},
        still=(1, 2),
    ),
    "partner-turns": Movement(
        ("pair",),
        _to_and_fro(Pose(turn=70), Pose(turn=-70), 3.0, 1.6),
        frozenset(),
        {"pair": (Arrow((34, 10), (66, 10), -4),)},
    ),
}

#: Exercise -> its movement.
MOVEMENTS: dict[str, Movement] = {**_GAZE, **_SITTING, **_STANDING}
