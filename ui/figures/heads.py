"""Head and shoulders: from the front as in a mirror, from the side, from above."""

from __future__ import annotations

import math

from ui.figures.brush import LINE, THIN, Brush, Spot
from ui.figures.model import Movement, Pose

_FRONT, _NECK = (50.0, 42.0), (50.0, 64.0)
_RX, _RY = 18.0, 23.0
_SIDE_AT, _SIDE_NECK = (36.0, 40.0), (34.0, 58.0)
_EYE_LINE = 36.0
_ABOVE = (50.0, 62.0)
#: Degrees of the eyes to units of the iris.
_IRIS = 0.075


# --- from the front ---


def front(brush: Brush, pose: Pose, movement: Movement) -> None:
    """Head and shoulders as in a mirror."""
    things = movement.things
    _shoulders_front(brush, pose)
    painter = brush.painter
    painter.save()
    painter.translate(*_NECK)
    painter.rotate(pose.roll)
    painter.translate(-_NECK[0], -_NECK[1])
    _head_front(brush, pose)
    painter.restore()
    if "thumb" in things:
        _thumb(brush, (50 + 0.95 * pose.target_x, 78.0))
    if "ball" in things:
        for x in (20.0, 80.0):
            brush.curve([(x - 9, 88), (x, 97), (x + 9, 88)])
        brush.oval((pose.ball_x, pose.ball_y), 4.5, 4.5, full=brush.inks.move)


def _shoulders_front(brush: Brush, pose: Pose) -> None:
    up = 9.0 * pose.lift
    y = 80.0 - up
    brush.curve([(8, 98), (9, y + 2), (24, y - 1), (42, y - 4), (43, 60)])
    brush.curve([(92, 98), (91, y + 2), (76, y - 1), (58, y - 4), (57, 60)])


def _on_head(pose: Pose, lon: float, lat: float, radius: float = 1.0) -> tuple[Spot, float]:
    """Place of a point of the head, and how far it is turned to the viewer (1 to -1)."""
    lo, la = math.radians(lon), math.radians(lat)
    x, y, z = math.sin(lo) * math.cos(la), math.sin(la), math.cos(lo) * math.cos(la)
    p, w = math.radians(pose.pitch), math.radians(pose.yaw)
    y, z = y * math.cos(p) + z * math.sin(p), z * math.cos(p) - y * math.sin(p)
    x, z = x * math.cos(w) + z * math.sin(w), z * math.cos(w) - x * math.sin(w)
    return (_FRONT[0] + _RX * radius * x, _FRONT[1] - _RY * radius * y), z


def _head_front(brush: Brush, pose: Pose) -> None:
    for lon in (-90.0, 90.0):
        at, z = _on_head(pose, lon, -2, 1.06)
        if z > -0.5:
            brush.oval(at, 3.4, 5.2, THIN)
    brush.oval(_FRONT, _RX, _RY)
    for lon in (-90.0, 90.0):
        at, z = _on_head(pose, lon, -2)
        if z > 0.15:
            brush.oval(at, 3.4, 5.2, THIN)
    _across(brush, pose, 52, range(-80, 81, 10))
    for lon in (-26.0, 26.0):
        _eye_front(brush, pose, lon)
        _across(brush, pose, 24, [lon - 12, lon, lon + 12])
    _nose_front(brush, pose)
    _across(brush, pose, -42, range(-16, 17, 4))


def _across(brush: Brush, pose: Pose, lat: float, lons: range | list[float]) -> None:
    """A line at one height of the head, as far as it is seen."""
    spots = [at for at, z in (_on_head(pose, lon, lat) for lon in lons) if z > 0]
    if len(spots) > 1:
        brush.line(spots, THIN)


def _nose_front(brush: Brush, pose: Pose) -> None:
    (top, _), (tip, _), (under, _) = (
        _on_head(pose, 0, 4),
        _on_head(pose, 0, -16, 1.2),
        _on_head(pose, -7 if pose.yaw < 0 else 7, -22),
    )
    brush.line([top, tip, under], THIN)


def _eye_front(brush: Brush, pose: Pose, lon: float) -> None:
    at, z = _on_head(pose, lon, 6)
    if z < 0.15:
        return
    wide, high = 4.6 * max(z, 0.35), 3.0
    if pose.lids < 0.5:
        brush.curve([(at[0] - wide, at[1]), (at[0], at[1] + 4), (at[0] + wide, at[1])], LINE)
        return
    brush.oval(at, wide, high * pose.lids, THIN)
    most = wide - 1.6
    x = max(-most, min(most, _IRIS * pose.eye_x * 1.6))
    y = max(-1.8, min(1.8, _IRIS * pose.eye_y * 1.6))
    brush.oval((at[0] + x, at[1] - y), 1.3 * max(z, 0.6), 1.3, full=brush.inks.ink)


def _thumb(brush: Brush, at: Spot) -> None:
    x, y = at
    brush.oval((x, y + 7), 6, 5.5)
    brush.shape([(x - 2.4, y + 3), (x - 2, y - 6), (x + 2, y - 6), (x + 2.4, y + 3)])


# --- from the side ---


def side(brush: Brush, pose: Pose, movement: Movement) -> None:
    """Head and shoulders in profile, looking to the right of the picture."""
    _bust_side(brush, pose)
    painter = brush.painter
    painter.save()
    painter.translate(*_SIDE_NECK)
    painter.rotate(-pose.pitch)
    painter.translate(-_SIDE_NECK[0], -_SIDE_NECK[1])
    _profile(brush, pose)
    painter.restore()
    eye = _turned_side((_SIDE_AT[0] + 15, _EYE_LINE), pose.pitch)
    if "finger" in movement.things:
        _finger(brush, pose, eye)
        return
    angle = math.radians(pose.pitch + pose.eye_y)
    if "target" in movement.things:
        place = (90.0, _EYE_LINE - 38 * math.tan(math.radians(pose.target_y)))
        _sight(brush, eye, place, pose)
        brush.target(place)
    elif "marks" in movement.things:
        for s in (1, -1):
            place = (86.0, _EYE_LINE - s * 14)
            brush.target(place, lit=s * pose.eye_y > 0)
            if s * pose.eye_y > 0:
                _sight(brush, eye, place, pose)
    elif pose.lids >= 0.5 and (pose.pitch or pose.eye_y):
        end = (eye[0] + 30 * math.cos(angle), eye[1] - 30 * math.sin(angle))
        _sight(brush, eye, end, pose)


def _turned_side(at: Spot, pitch: float) -> Spot:
    a = math.radians(-pitch)
    x, y = at[0] - _SIDE_NECK[0], at[1] - _SIDE_NECK[1]
    return (
        _SIDE_NECK[0] + x * math.cos(a) - y * math.sin(a),
        _SIDE_NECK[1] + x * math.sin(a) + y * math.cos(a),
    )


def _sight(brush: Brush, eye: Spot, to: Spot, pose: Pose) -> None:
    """The line of sight, which begins and ends a little way off."""
    if pose.lids < 0.5:
        return
    x, y = to[0] - eye[0], to[1] - eye[1]
    long = math.hypot(x, y)
    if long < 14:
        return
    ux, uy = x / long, y / long
    start = (eye[0] + 5 * ux, eye[1] + 5 * uy)
    end = (to[0] - 6.5 * ux, to[1] - 6.5 * uy)
    brush.line([start, end], THIN, brush.inks.move, dashed=True)


def _bust_side(brush: Brush, pose: Pose) -> None:
    brush.curve([(26, 54), (26, 66), (16, 74), (10, 82), (10, 98)])
    brush.curve([(44, 58), (44, 66), (54, 74), (58, 84), (57, 98)])
    at = (36 + 7.0 * pose.reach, 82 - 9.0 * pose.lift)
    brush.oval(at, 9, 9)
    brush.line([(at[0] - 8, at[1] + 3), (at[0] - 7, 98)])
    brush.line([(at[0] + 8, at[1] + 3), (at[0] + 7, 98)])


def _profile(brush: Brush, pose: Pose) -> None:
    x, y = _SIDE_AT
    brush.curve(
        [
            (x - 9, y + 22),
            (x - 8, y + 14),
            (x - 16, y + 8),
            (x - 24, y - 12),
            (x - 4, y - 22),
            (x + 16, y - 26),
            (x + 17, y - 8),
            (x + 18, y - 4),
            (x + 24, y + 5),
            (x + 22, y + 8),
            (x + 18, y + 8),
            (x + 20, y + 13),
            (x + 17, y + 15),
            (x + 18, y + 23),
            (x + 6, y + 21),
            (x + 5, y + 22),
            (x + 7, y + 27),
        ],
        fill=True,
    )
    brush.curve([(x - 6, y - 2), (x - 2, y - 6), (x, y), (x - 2, y + 6), (x - 5, y + 3)], THIN)
    brush.curve(
        [(x - 17, y + 4), (x - 14, y - 14), (x + 8, y - 14), (x + 14, y - 14), (x + 15, y - 18)],
        THIN,
    )
    brush.line([(x + 18, y + 14), (x + 13, y + 13)], THIN)
    eye = (x + 13.0, y - 4)
    if pose.lids < 0.5:
        brush.curve([(eye[0] - 3, eye[1]), (eye[0], eye[1] + 3), (eye[0] + 3, eye[1])], LINE)
        return
    brush.oval(eye, 3.2, 2.6 * pose.lids, THIN)
    brush.oval((eye[0] + 1.2, eye[1] - _IRIS * pose.eye_y * 1.2), 1.2, 1.2, full=brush.inks.ink)


def _finger(brush: Brush, pose: Pose, eye: Spot) -> None:
    tip = (90 - 26 * pose.near, _EYE_LINE)
    elbow = (62 + 4 * pose.near, 92.0)
    brush.limb([(38, 84), elbow, (tip[0] + 1, tip[1] + 16)])
    brush.shape(
        [
            (tip[0] - 2, tip[1] + 12),
            (tip[0] - 2, tip[1]),
            (tip[0] + 2, tip[1]),
            (tip[0] + 2, tip[1] + 12),
        ]
    )
    _sight(brush, eye, (tip[0] + 3.5, tip[1]), pose)


# --- from above ---


def above(brush: Brush, pose: Pose, movement: Movement) -> None:
    """Head and shoulders from above, looking to the top of the picture."""
    things = movement.things
    brush.oval((50, 78), 36, 11)
    if "thumb" in things:
        _arm_above(brush, pose)
    at = _ABOVE
    painter = brush.painter
    painter.save()
    painter.translate(*at)
    painter.rotate(pose.yaw)
    brush.shape([(-3.4, -15), (0, -23), (3.4, -15)])
    for s in (1, -1):
        brush.oval((s * 15, 1), 2.6, 4, THIN)
    brush.oval((0, 0), 15, 17.5)
    for s in (1, -1):
        brush.line([(s * 9.5, -10.5), (s * 4.5, -13)], LINE)
    painter.restore()
    _look_above(brush, pose, things)


def _ahead(angle: float, far: float) -> Spot:
    a = math.radians(angle)
    return _ABOVE[0] + far * math.sin(a), _ABOVE[1] - far * math.cos(a)


def _look_above(brush: Brush, pose: Pose, things: frozenset[str]) -> None:
    looks = pose.yaw + pose.eye_x
    start = _ahead(pose.yaw, 20)
    if "marks" in things:
        for s in (1, -1):
            brush.target(_ahead(s * 20.0, 48), lit=s * looks > 0)
    elif "target" in things:
        # Straight ahead, however the head stands; it moves only where the exercise has it move.
        brush.target(_ahead(pose.target_x, 50))
    if "thumb" not in things:
        _sight(brush, start, _ahead(looks, 50), pose)


def _arm_above(brush: Brush, pose: Pose) -> None:
    hand = _ahead(pose.target_x, 48)
    brush.limb([(78, 76), hand])
    brush.oval(hand, 4, 4)
    _sight(brush, _ahead(pose.yaw, 20), hand, pose)


def scene(brush: Brush, pose: Pose, movement: Movement) -> None:  # noqa: ARG001
    """A person from behind before a screen whose pattern moves; the picture itself is still."""
    brush.box(14, 6, 72, 50)
    for x in (24, 37, 63, 76):
        brush.thing([(x, 22), (x, 50)], THIN)
    brush.target((50, 36))
    brush.oval((50, 76), 14, 17)
    brush.curve([(38, 84), (50, 96), (62, 84)], THIN)
    brush.curve([(20, 98), (22, 92), (42, 92)])
    brush.curve([(80, 98), (78, 92), (58, 92)])
