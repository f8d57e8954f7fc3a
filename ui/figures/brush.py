"""The strokes that every figure is made of: ink lines, filled outlines, dashes, arrows."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPalette, QPen, QPolygonF

from ui.figures.model import Arrow

Spot = tuple[float, float]
#: Widths of lines in units of the picture (100 across).
THIN, LINE, LIMB = 1.5, 2.1, 6.5
_HEAD = 5.5


@dataclass(frozen=True, slots=True)
class Inks:
    """The colours of a figure, from a palette: ink, what is behind it, movement, things."""

    ink: QColor
    fill: QColor
    move: QColor
    thing: QColor

    @classmethod
    def of(cls, palette: QPalette) -> Inks:
        """Take them from a palette."""
        role = QPalette.ColorRole
        return cls(
            palette.color(role.WindowText),
            palette.color(role.Base),
            palette.color(role.Highlight),
            palette.color(role.Mid),
        )


class Brush:
    """Draws in units of the picture.

    Parameters
    ----------
    painter
        Scaled so that the picture is 100 units wide and high.
    inks
        The colours.
    least
        No line is thinner than this, in units of the picture.
    """

    def __init__(self, painter: QPainter, inks: Inks, least: float = 0.0) -> None:
        self.painter, self.inks, self.least = painter, inks, least

    def pen(self, colour: QColor, width: float, *, dashed: bool = False) -> None:
        """Take a pen with round ends."""
        pen = QPen(colour, max(width, self.least), Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        if dashed:
            pen.setDashPattern([1.2, 2.4])
        self.painter.setPen(pen)
        self.painter.setBrush(Qt.BrushStyle.NoBrush)

    def line(
        self,
        spots: Sequence[Spot],
        width: float = LINE,
        colour: QColor | None = None,
        *,
        dashed: bool = False,
    ) -> None:
        """A line through some places."""
        self.pen(colour or self.inks.ink, width, dashed=dashed)
        self.painter.drawPolyline(QPolygonF([QPointF(*s) for s in spots]))

    def curve(self, spots: Sequence[Spot], width: float = LINE, *, fill: bool = False) -> None:
        """A smooth line through places given as start, control, end, control, end ..."""
        path = QPainterPath(QPointF(*spots[0]))
        for k in range(1, len(spots) - 1, 2):
            path.quadTo(QPointF(*spots[k]), QPointF(*spots[k + 1]))
        self.pen(self.inks.ink, width)
        if fill:
            self.painter.setBrush(self.inks.fill)
        self.painter.drawPath(path)

    def oval(
        self, at: Spot, rx: float, ry: float, width: float = LINE, *, full: QColor | None = None
    ) -> None:
        """An ellipse, filled with what is behind everything or with a colour of its own."""
        self.pen(full or self.inks.ink, width)
        self.painter.setBrush(full or self.inks.fill)
        self.painter.drawEllipse(QPointF(*at), rx, ry)

    def shape(self, spots: Sequence[Spot], width: float = LINE) -> None:
        """A closed outline, filled with what is behind everything."""
        self.pen(self.inks.ink, width)
        self.painter.setBrush(self.inks.fill)
        self.painter.drawPolygon(QPolygonF([QPointF(*s) for s in spots]))

    def thing(self, spots: Sequence[Spot], width: float = LINE) -> None:
        """A line of something that is no person."""
        self.line(spots, width, self.inks.thing)

    def limb(self, spots: Sequence[Spot]) -> None:
        """An arm or a leg: a broad rounded line with an outline."""
        self.line(spots, LIMB, self.inks.ink)
        self.line(spots, LIMB - 2 * THIN, self.inks.fill)

    def target(self, at: Spot, *, lit: bool = True, radius: float = 4.2) -> None:
        """The target as it is drawn on the screen: a disc with a ring in it."""
        ink = self.inks.ink
        self.pen(ink if lit else self.inks.thing, THIN)
        self.painter.setBrush(ink if lit else self.inks.fill)
        self.painter.drawEllipse(QPointF(*at), radius, radius)
        if lit:
            self.pen(self.inks.fill, radius * 0.25)
            self.painter.drawEllipse(QPointF(*at), radius * 0.5, radius * 0.5)

    def arrow(self, arrow: Arrow) -> None:
        """Where a movement goes."""
        (x0, y0), (x1, y1) = arrow.from_xy, arrow.to_xy
        long = math.hypot(x1 - x0, y1 - y0) or 1.0
        side = ((y1 - y0) / long, -(x1 - x0) / long)
        # A curve reaches half as far as its control point.
        middle = (
            (x0 + x1) / 2 - 2 * arrow.bend * side[0],
            (y0 + y1) / 2 - 2 * arrow.bend * side[1],
        )
        path = QPainterPath(QPointF(x0, y0))
        path.quadTo(QPointF(*middle), QPointF(x1, y1))
        self.pen(self.inks.move, LINE)
        self.painter.drawPath(path)
        self._head(middle, (x1, y1))
        if arrow.both:
            self._head(middle, (x0, y0))

    def _head(self, behind: Spot, tip: Spot) -> None:
        angle = math.atan2(tip[1] - behind[1], tip[0] - behind[0])
        ends = [
            QPointF(tip[0] - _HEAD * math.cos(angle + s), tip[1] - _HEAD * math.sin(angle + s))
            for s in (0.5, -0.5)
        ]
        self.pen(self.inks.move, LINE)
        self.painter.drawPolyline(QPolygonF([ends[0], QPointF(*tip), ends[1]]))

    def box(self, x: float, y: float, wide: float, high: float, corner: float = 2.0) -> None:
        """A thing with four corners."""
        self.pen(self.inks.thing, LINE)
        self.painter.setBrush(self.inks.fill)
        self.painter.drawRoundedRect(QRectF(x, y, wide, high), corner, corner)
