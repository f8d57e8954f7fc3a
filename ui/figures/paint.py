"""From a movement and a pose to a picture."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QPalette

from ui.figures.bodies import body_front, body_side, pair
from ui.figures.brush import Brush, Inks
from ui.figures.heads import above, front, scene, side
from ui.figures.model import Movement, Pose
from ui.figures.places import sitting, standing

#: The ways of seeing a person.
VIEWS: dict[str, Callable[[Brush, Pose, Movement], None]] = {
    "front": front,
    "side": side,
    "above": above,
    "scene": scene,
    "body_side": body_side,
    "body_front": body_front,
    "pair": pair,
    "place_sitting": sitting,
    "place_standing": standing,
}


def paint(
    painter: QPainter,
    box: QRectF,
    view: str,
    pose: Pose,
    movement: Movement,
    palette: QPalette,
    *,
    least_px: float = 0.0,
) -> None:
    """Draw one view of a pose into the largest square of a box.

    Parameters
    ----------
    painter, box
        Where it is drawn.
    view
        A key of :data:`VIEWS`.
    pose, movement
        What is drawn.
    palette
        Its colours.
    least_px
        No line is thinner than this, in pixels.
    """
    side_px = min(box.width(), box.height())
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(box.center().x() - side_px / 2, box.center().y() - side_px / 2)
    painter.scale(side_px / 100, side_px / 100)
    brush = Brush(painter, Inks.of(palette), least_px * 100 / max(side_px, 1.0))
    VIEWS[view](brush, pose, movement)
    for arrow in movement.arrows.get(view, ()):
        brush.arrow(arrow)
    painter.restore()
