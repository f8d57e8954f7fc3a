"""A small chart of one figure over sessions, in which not measured is a gap and not a 0.

A baseline is a lozenge, any other session a dot.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPalette, QPen, QPolygonF

from tracker.records.trends import Point

MARGIN = 6.0
DOT = 3.0


def scale_of(points: Sequence[Point]) -> tuple[float, float] | None:
    """Lowest and highest of what is drawn, some room around it; None with no value."""
    values = [p.value for p in points if p.value is not None]
    if not values:
        return None
    for point in points:
        values += list(asked_range(point.asked) or ())
    low, high = min(values), max(values)
    room = 0.08 * (high - low) or max(abs(high) * 0.1, 0.5)
    return low - room, high + room


def asked_range(asked: object) -> tuple[float, float] | None:
    """Least and most that was asked; one number is both."""
    if isinstance(asked, int | float):
        return float(asked), float(asked)
    if isinstance(asked, list | tuple) and len(asked) == 2:
        return float(min(asked)), float(max(asked))
    return None


def draw_chart(painter: QPainter, box: QRectF, points: Sequence[Point], palette: QPalette) -> None:
    """Draw it into a box: one step across for each session."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    inner = box.adjusted(MARGIN, MARGIN, -MARGIN, -MARGIN)
    role = QPalette.ColorRole
    ink, line = palette.color(role.Highlight), palette.color(role.Mid)
    scale = scale_of(points)
    step = inner.width() / max(len(points) - 1, 1)
    across = [inner.left() + k * step for k in range(len(points))]
    if len(points) == 1:
        across = [inner.center().x()]
    _gaps(painter, inner, points, across, line)
    if scale is not None:
        _asked(painter, inner, points, across, scale, line)
        _values(painter, inner, points, across, scale, ink, palette.color(role.Base))
    painter.restore()


def _up(inner: QRectF, value: float, scale: tuple[float, float]) -> float:
    return inner.bottom() - (value - scale[0]) / (scale[1] - scale[0]) * inner.height()


def _gaps(
    painter: QPainter, inner: QRectF, points: Sequence[Point], across: list[float], line: QColor
) -> None:
    painter.setPen(QPen(line, 1.5, Qt.PenStyle.DotLine))
    drawn = -1
    for point, x in zip(points, across, strict=True):
        # Of years many lie within a pixel: drawn once, or scrolling would wait for them.
        if point.value is None and round(x) != drawn:
            drawn = round(x)
            painter.drawLine(QPointF(x, inner.top()), QPointF(x, inner.bottom()))


def _asked(
    painter: QPainter,
    inner: QRectF,
    points: Sequence[Point],
    across: list[float],
    scale: tuple[float, float],
    line: QColor,
) -> None:
    """A band (or a line) where it was asked to be."""
    fill = QColor(line)
    fill.setAlphaF(0.25)
    found = [asked_range(point.asked) for point in points]
    at = 0
    for span, run in groupby(found):
        first, at = at, at + sum(1 for _ in run)
        if span is None:
            continue
        low, high = (_up(inner, v, scale) for v in span)
        left = across[0] if first == 0 else (across[first] + across[first - 1]) / 2
        right = across[-1] if at == len(points) else (across[at - 1] + across[at]) / 2
        band = QRectF(left, high, max(right - left, 2.0), max(low - high, 2.0))
        painter.fillRect(band, fill)


def _values(
    painter: QPainter,
    inner: QRectF,
    points: Sequence[Point],
    across: list[float],
    scale: tuple[float, float],
    ink: QColor,
    paper: QColor,
) -> None:
    """Dots, joined where nothing lies between them that was not measured."""
    dots: dict[tuple[int, int, bool, bool], tuple[QPointF, Point]] = {}
    painter.setPen(QPen(ink, 1.5))
    joined: list[QPointF] = []
    for point, x in zip(points, across, strict=True):
        if point.value is None:
            painter.drawPolyline(joined)
            joined = []
            continue
        at = QPointF(x, _up(inner, point.value, scale))
        joined.append(at)
        # Of those on one pixel one is enough.
        spot = (round(at.x()), round(at.y()), bool(point.doubts), point.baseline)
        dots[spot] = (at, point)
    painter.drawPolyline(joined)
    # Among many sessions the dots would hide the line.
    size = DOT if len(points) <= 40 else DOT * 0.6
    for at, point in dots.values():
        painter.setBrush(paper if point.doubts else ink)
        if point.baseline:
            # As large as ever: it is what the others are compared with.
            side, up = QPointF(1.7 * DOT, 0.0), QPointF(0.0, 1.7 * DOT)
            painter.drawPolygon(QPolygonF([at - side, at - up, at + side, at + up]))
        else:
            painter.drawEllipse(at, size, size)
