"""The whole body: from the side, from the front, and two people from above."""

from __future__ import annotations

import math

from ui.figures.brush import LINE, THIN, Brush, Spot
from ui.figures.model import Movement, Pose

FLOOR = 92.0
_THIGH, _SHIN, _TRUNK, _ARM, _FORE = 20.0, 20.0, 25.0, 13.0, 13.0
_PLANTED_X = 56.0
_HEAD = 8.5
#: Turn at which two people reach the same ball.
_PAIR_TURN = 70.0


def _step(at: Spot, angle: float, long: float, *, up: bool = False) -> Spot:
    """From a place by a length: down and forward by an angle, or up and forward."""
    a = math.radians(angle)
    return at[0] + long * math.sin(a), at[1] + (-long if up else long) * math.cos(a)


def hips(pose: Pose, *, planted: bool) -> Spot:
    """Place of the hips: given, or over a foot that stays."""
    if not planted:
        return pose.hip_x, pose.hip_y
    ankle = (_PLANTED_X, FLOOR)
    x, y = ankle
    for angle, long in ((pose.shin_a, _SHIN), (pose.thigh_a, _THIGH)):
        a = math.radians(angle)
        x, y = x - long * math.sin(a), y - long * math.cos(a)
    return x, y


def body_side(brush: Brush, pose: Pose, movement: Movement) -> None:
    """A whole person from the side, facing the right of the picture."""
    things = movement.things
    hip = hips(pose, planted=movement.planted)
    _ground(brush, things)
    if "helper" in things:
        _helper(brush, 12)
    neck = _step(hip, pose.lean, _TRUNK, up=True)
    head = _step(neck, pose.lean * 0.8, _HEAD + 1, up=True)
    _leg(brush, hip, pose.thigh_b, pose.shin_b)
    _leg(brush, hip, pose.thigh_a, pose.shin_a)
    brush.limb([hip, neck])
    _head_side(brush, head, pose)
    elbow = _step(neck, pose.arm_a, _ARM)
    hand = _step(elbow, pose.arm_a + pose.fore_a, _FORE)
    shoulder = _step(neck, pose.lean, -3, up=True)
    brush.limb([shoulder, elbow, hand])
    if "small_thing" in things:
        brush.pen(brush.inks.move, THIN)
        brush.painter.setBrush(brush.inks.move)
        brush.painter.drawRect(80, round(FLOOR) - 4, 7, 4)


def _leg(brush: Brush, hip: Spot, thigh: float, shin: float) -> None:
    knee = _step(hip, thigh, _THIGH)
    ankle = _step(knee, shin, _SHIN)
    brush.limb([hip, knee, ankle, (ankle[0] + 6, ankle[1])])


def _head_side(brush: Brush, at: Spot, pose: Pose) -> None:
    painter = brush.painter
    painter.save()
    painter.translate(*at)
    painter.rotate(pose.lean * 0.8 - pose.pitch)
    brush.shape([(_HEAD - 1.5, -2), (_HEAD + 3, 1.5), (_HEAD - 1.5, 3)], THIN)
    brush.oval((0, 0), _HEAD - 0.8, _HEAD)
    if pose.lids < 0.5:
        brush.line([(2.5, -1.5), (6, -1.5)], THIN)
    else:
        brush.oval((4.4, -1.8), 0.9, 0.9, full=brush.inks.ink)
    painter.restore()


def _ground(brush: Brush, things: frozenset[str]) -> None:
    floor = FLOOR + 3.5
    if "step" in things:
        brush.thing([(8, floor), (46, floor), (46, floor - 7.5), (94, floor - 7.5)])
    else:
        brush.thing([(8, floor), (92, floor)])
    if "rail" in things:
        brush.thing([(18, 64), (46, 60), (88, 50)])
        brush.thing([(18, 64), (18, floor)], THIN)
        brush.thing([(88, 50), (88, floor - 7.5)], THIN)
    if "chair" in things:
        brush.thing([(24, 34), (24, floor)])
        brush.thing([(24, 78), (46, 78), (46, floor)])


def _helper(brush: Brush, x: float) -> None:
    """Somebody beside, in the colour of things."""
    thing = brush.inks.thing
    brush.line([(x, 40), (x, 66)], LINE, thing)
    brush.line([(x - 4, FLOOR + 3), (x, 66), (x + 4, FLOOR + 3)], LINE, thing)
    brush.line([(x, 46), (x + 13, 52)], LINE, thing)
    brush.pen(thing, LINE)
    brush.painter.drawEllipse(round(x) - 6, 26, 12, 13)


def body_front(brush: Brush, pose: Pose, movement: Movement) -> None:
    """A whole person from the front, as in a mirror."""
    things = movement.things
    if "corner" in things:
        brush.thing([(50, 4), (50, 70)], THIN)
        brush.thing([(50, 70), (10, FLOOR)], THIN)
        brush.thing([(50, 70), (90, FLOOR)], THIN)
    else:
        brush.thing([(8, FLOOR + 3.5), (92, FLOOR + 3.5)])
    if "mat" in things:
        brush.box(26, FLOOR - 2, 48, 6, 3)
    if "helper" in things:
        _helper(brush, 14)
    floor = FLOOR - 4 if "mat" in things else FLOOR
    hip = (pose.hip_x, 54.0)
    for s, up in ((1, pose.foot_a), (-1, pose.foot_b)):
        foot = (50 + 9.0 * s, floor - up)
        top = (hip[0] + 4.5 * s, hip[1])
        knee = ((top[0] + foot[0]) / 2 + s * up * 0.35, (top[1] + foot[1]) / 2)
        brush.limb([top, knee, foot, (foot[0] + 2.5 * s, foot[1] + 1)])
    neck = (hip[0], 29.0)
    for s in (1, -1):
        brush.limb([(neck[0] + 8.5 * s, 33), (hip[0] + 13 * s, 46), (hip[0] + 14 * s, 57)])
    brush.shape(
        [
            (neck[0] - 8.5, 30.5),
            (neck[0] + 8.5, 30.5),
            (hip[0] + 7, hip[1] + 2),
            (hip[0] - 7, hip[1] + 2),
        ]
    )
    _head_front(brush, (neck[0], 18.5), pose)
    if "chair" in things:
        _chair_front(brush)


def _head_front(brush: Brush, at: Spot, pose: Pose) -> None:
    x, y = at
    shift = 6.5 * math.sin(math.radians(pose.yaw))
    brush.oval((x, y), 7.8, 9.6)
    for s in (1, -1):
        eye = (x + 3 * s + shift, y - 1)
        if pose.lids < 0.5:
            brush.line([(eye[0] - 1.6, eye[1]), (eye[0] + 1.6, eye[1])], THIN)
        else:
            brush.oval(eye, 0.8, 0.8, full=brush.inks.ink)
    brush.line([(x + shift, y), (x + 1.5 * shift, y + 2.6)], THIN)


def _chair_front(brush: Brush) -> None:
    """The back of a chair in front of the person, to hold on to."""
    brush.box(32, 70, 36, 9, 3)
    for x in (35.0, 65.0):
        brush.thing([(x, 79), (x, 99)])


def pair(brush: Brush, pose: Pose, movement: Movement) -> None:  # noqa: ARG001
    """Two people back to back, from above; a ball goes from hand to hand at their side."""
    share = min(abs(pose.turn) / _PAIR_TURN, 1.0)
    ball = (50 + math.copysign(30.0 * share, pose.turn), 50.0)
    for at, way in (((50.0, 34.0), 1), ((50.0, 66.0), -1)):
        turn = way * pose.turn + (0 if way > 0 else 180)
        for s in (1, -1):
            shoulder, ahead = _around(at, turn, s * 13, 0), _around(at, turn, s * 4, -19)
            hand = tuple(a + (b - a) * share for a, b in zip(ahead, ball, strict=True))
            brush.limb([shoulder, (hand[0], hand[1])])
        painter = brush.painter
        painter.save()
        painter.translate(*at)
        painter.rotate(turn)
        brush.oval((0, 0), 16, 6.5)
        brush.shape([(-2, -7), (0, -12), (2, -7)], THIN)
        brush.oval((0, 0), 7.5, 8.5)
        painter.restore()
    if share > 0.9:
        brush.oval(ball, 4, 4, full=brush.inks.move)


def _around(at: Spot, turn: float, x: float, y: float) -> Spot:
    """A place of a body that is turned clockwise about its middle."""
    a = math.radians(turn)
    return at[0] + x * math.cos(a) - y * math.sin(a), at[1] + x * math.sin(a) + y * math.cos(a)
