"""Where one sits or stands before the laptop, as pictures that don't move."""

from __future__ import annotations

from ui.figures.bodies import FLOOR, body_side
from ui.figures.brush import LINE, THIN, Brush
from ui.figures.model import Arrow, Key, Movement, Pose

_FLOOR = FLOOR + 3.5


def sitting(brush: Brush, pose: Pose, movement: Movement) -> None:
    """On a chair with a back, the laptop on a table at arm's length, its camera at eye height."""
    body_side(brush, pose, movement)
    brush.thing([(72, 72), (98, 72)])
    brush.thing([(95, 72), (95, _FLOOR)])
    brush.box(78, 62, 17, 10, 1)
    _laptop(brush, 80, 62, 22)
    brush.line([(47, 38), (78, 40)], THIN, brush.inks.move, dashed=True)


def standing(brush: Brush, pose: Pose, movement: Movement) -> None:
    """A corner behind, a chair in front to hold on to, the laptop high and out of reach."""
    body_side(brush, pose, movement)
    # The corner behind.
    brush.thing([(10, 6), (10, _FLOOR)], LINE * 1.8)
    # The chair: its back is near the hands.
    brush.thing([(48, 46), (48, _FLOOR)])
    brush.thing([(48, 70), (62, 70), (62, _FLOOR)])
    # Something high that stands firm.
    brush.box(82, 36, 15, _FLOOR - 36, 1)
    _laptop(brush, 84, 36, 20)
    brush.line([(38, 17), (80, 18)], THIN, brush.inks.move, dashed=True)


def _laptop(brush: Brush, x: float, y: float, high: float) -> None:
    """Seen from the side, with a dot where its camera is."""
    brush.line([(x + 12, y - 1.5), (x, y - 1.5)], LINE)
    brush.line([(x + 12, y - 1.5), (x + 14, y - high)], LINE)
    brush.oval((x + 13, y - high - 1), 1.6, 1.6, full=brush.inks.move)


#: The two places.
PLACES: dict[str, Movement] = {
    "sitting": Movement(
        ("place_sitting",),
        (Key(Pose(thigh_a=88, thigh_b=88, lean=2, arm_a=14, fore_a=30)),),
        frozenset({"chair"}),
        {"place_sitting": (Arrow((48, 28), (88, 28), 0),)},
        planted=True,
    ),
    "standing": Movement(
        ("place_standing",),
        (Key(Pose(hip_x=26, arm_a=14, fore_a=20)),),
        frozenset(),
        {"place_standing": (Arrow((40, 8), (90, 8), 0),)},
    ),
}
