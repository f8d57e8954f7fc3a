"""What a window paints, widget by widget, as its painters are told it: texts, lines and fills.

A paint device that draws nothing and writes down what it is told, so that widgets that paint
themselves are looked at as labels are: every text with its place, size, colour and clip.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFontInfo,
    QFontMetricsF,
    QPaintDevice,
    QPaintEngine,
    QPainterPath,
    QPen,
    QRegion,
)
from PySide6.QtWidgets import QWidget


@dataclass(frozen=True, slots=True)
class Run:
    """A stretch of text as it was painted, in the widget's pixels."""

    text: str
    #: Around its ink.
    box: QRectF
    size_px: int
    capital_px: float
    colour: QColor
    #: What may be painted of it; None where nothing is held back.
    clip: QRectF | None


@dataclass(frozen=True, slots=True)
class Shape:
    """A line or a fill, in the widget's pixels."""

    box: QRectF
    pen: QColor | None
    pen_px: float
    fill: QColor | None


@dataclass
class Painted:
    """All that a widget paints by itself, without its children."""

    runs: list[Run] = field(default_factory=list)
    shapes: list[Shape] = field(default_factory=list)


class _Engine(QPaintEngine):
    """Writes down what a painter does."""

    def __init__(self, into: Painted) -> None:
        super().__init__(QPaintEngine.PaintEngineFeature.AllFeatures)
        self.into = into

    def begin(self, _device: Any) -> bool:
        return True

    def end(self) -> bool:
        return True

    def type(self) -> QPaintEngine.Type:
        return QPaintEngine.Type.User

    def updateState(self, _state: Any) -> None:
        """Nothing: the painter is asked when something is drawn."""

    def drawTextItem(self, at: QPointF, item: Any) -> None:
        painter, font = self.painter(), item.font()
        ink = QFontMetricsF(font).tightBoundingRect(item.text())
        to_device = painter.combinedTransform()
        clip = None
        if painter.hasClipping():
            clip = painter.transform().mapRect(painter.clipBoundingRect())
        self.into.runs.append(
            Run(
                item.text(),
                to_device.mapRect(ink.translated(at)),
                QFontInfo(font).pixelSize(),
                QFontMetricsF(font).capHeight(),
                QColor(painter.pen().color()),
                clip,
            )
        )

    def _shape(self, box: QRectF, *, fills: bool = True) -> None:
        painter = self.painter()
        pen, brush = painter.pen(), painter.brush()
        drawn = pen.style() != Qt.PenStyle.NoPen
        solid = fills and brush.style() == Qt.BrushStyle.SolidPattern
        self.into.shapes.append(
            Shape(
                painter.combinedTransform().mapRect(box),
                QColor(pen.color()) if drawn else None,
                _wide(pen) if drawn else 0.0,
                _colour_of(brush) if solid else None,
            )
        )

    def drawPath(self, path: QPainterPath) -> None:
        self._shape(path.boundingRect())

    def drawRects(self, rects: Any, *_many: int) -> None:
        for rect in rects:
            self._shape(QRectF(rect))

    def drawEllipse(self, rect: Any) -> None:
        self._shape(QRectF(rect))

    def drawPolygon(self, points: Any, *more: Any) -> None:
        mode = more[-1] if more else None
        closed = mode != QPaintEngine.PolygonDrawMode.PolylineMode
        self._shape(_around([QPointF(p) for p in points]), fills=closed)

    def drawLines(self, lines: Any, *_many: int) -> None:
        for line in lines:
            ends = [QPointF(line.p1()), QPointF(line.p2())]
            self._shape(_around(ends), fills=False)

    def drawPoints(self, *_points: Any) -> None:
        """A dot says nothing by itself."""

    def drawPixmap(self, *_given: Any) -> None:
        """The style's own pictures of its frames."""

    def drawTiledPixmap(self, *_given: Any) -> None:
        """Likewise."""

    def drawImage(self, *_given: Any) -> None:
        """The camera's picture."""


def _wide(pen: QPen) -> float:
    return max(pen.widthF(), 1.0)


def _colour_of(brush: QBrush) -> QColor:
    return QColor(brush.color())


def _around(points: list[QPointF]) -> QRectF:
    xs, ys = [p.x() for p in points], [p.y() for p in points]
    return QRectF(QPointF(min(xs), min(ys)), QPointF(max(xs), max(ys)))


class _Device(QPaintDevice):
    """Where nothing is drawn."""

    def __init__(self, widget: QWidget, into: Painted) -> None:
        super().__init__()
        self._engine = _Engine(into)
        metric = QPaintDevice.PaintDeviceMetric
        ratio = 1
        self._metrics = {
            metric.PdmWidth: widget.width(),
            metric.PdmHeight: widget.height(),
            metric.PdmDpiX: widget.logicalDpiX(),
            metric.PdmDpiY: widget.logicalDpiY(),
            metric.PdmPhysicalDpiX: widget.physicalDpiX(),
            metric.PdmPhysicalDpiY: widget.physicalDpiY(),
            metric.PdmDepth: 32,
            metric.PdmNumColors: 2**31 - 1,
            metric.PdmDevicePixelRatio: ratio,
            metric.PdmDevicePixelRatioScaled: ratio * 65536,
        }

    def paintEngine(self) -> QPaintEngine:
        return self._engine

    def metric(self, which: QPaintDevice.PaintDeviceMetric) -> int:
        return int(self._metrics.get(which, 0))


def painted_by(widget: QWidget) -> Painted:
    """What a widget paints, without its children."""
    found = Painted()
    widget.render(_Device(widget, found), QPoint(), QRegion(), QWidget.RenderFlag(0))
    return found
