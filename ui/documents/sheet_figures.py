"""Our drawings of the movements on the patient's sheet: in the PDF, and as SVG."""

from __future__ import annotations

import re

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF, QSize
from PySide6.QtGui import QColor, QPainter, QPalette
from PySide6.QtSvg import QSvgGenerator

from ui import theme
from ui.figures.model import Movement, Pose
from ui.figures.movements import MOVEMENTS
from ui.figures.paint import paint

#: Side of one drawing in an SVG, in its own units.
SIDE = 200


def pictures_of(exercise: str, eyes: str) -> tuple[Movement, list[tuple[str, Pose]]]:
    """A movement and what is drawn of it on paper: two moments, or the ways of seeing it."""
    movement = MOVEMENTS[exercise]
    if eyes == "closed":
        movement = movement.with_eyes_shut()
    if movement.moves:
        return movement, [(movement.views[0], pose) for pose in movement.stills()]
    return movement, [(view, movement.keys[0].pose) for view in movement.views]


def paper_palette() -> QPalette:
    """Dark ink on white, whatever the window looks like."""
    palette = theme.palette_of(theme.LIGHT)
    palette.setColor(QPalette.ColorRole.WindowText, QColor("#000000"))
    palette.setColor(QPalette.ColorRole.Base, QColor("#ffffff"))
    return palette


def draw_pictures(
    painter: QPainter, box: QRectF, movement: Movement, panels: list[tuple[str, Pose]]
) -> None:
    """Draw them one below the other, each in a square as wide as the box."""
    palette = paper_palette()
    for k, (view, pose) in enumerate(panels):
        square = QRectF(box.left(), box.top() + k * box.width(), box.width(), box.width())
        paint(painter, square, view, pose, movement, palette)


def svg_of(exercise: str, eyes: str) -> str:
    """The drawings side by side as an SVG element, without a name of its own."""
    movement, panels = pictures_of(exercise, eyes)
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    made = QSvgGenerator()
    made.setOutputDevice(buffer)
    size = QSize(SIDE * len(panels), SIDE)
    made.setSize(size)
    made.setViewBox(QRectF(0, 0, size.width(), size.height()))
    painter = QPainter(made)
    palette = paper_palette()
    for k, (view, pose) in enumerate(panels):
        paint(painter, QRectF(k * SIDE, 0, SIDE, SIDE), view, pose, movement, palette)
    painter.end()
    buffer.close()
    text = bytes(data.data()).decode("utf-8")
    inside = re.search(r"<svg[^>]*>(.*)</svg>", text, re.DOTALL)
    assert inside is not None
    body = re.sub(r"<(title|desc)>.*?</\1>", "", inside[1], flags=re.DOTALL)
    body = re.sub(r"\n\s*", "\n", body).strip()
    return f'<svg viewBox="0 0 {size.width()} {size.height()}" aria-hidden="true">{body}</svg>'
