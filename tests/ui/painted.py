"""What a window paints, widget by widget, as its painters are told it: texts, lines and fills.

A paint device that draws nothing and writes down what it is told, so that widgets that paint
themselves are looked at as labels are: every text with its place, size, colour and clip.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFontInfo,
    QFontMetricsF,
    QPaintDevice,
    QPaintEngine,
    QPainterPath,
    QPalette,
    QPen,
    QRegion,
    QTextDocumentFragment,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractScrollArea,
    QLineEdit,
    QPlainTextEdit,
    QWidget,
)

from ui.widgets.moving import MovementPicture
from ui.widgets.outline import HeadOutline

#: A pixel at each edge is a letter's softness, not its shape.
SOFT_PX = 1.5


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


# --- what is wrong with it ---


def part(picture: Any, window: QWidget, box: QRect) -> Any:
    """A box of the window in its picture."""
    ratio = picture.shape[1] / window.width()
    edges = (box.left(), box.top(), box.right() + 1, box.bottom() + 1)
    left, top, right, bottom = (max(round(v * ratio), 0) for v in edges)
    return picture[top:bottom, left:right]


def _linear(values: Any) -> Any:
    return np.where(values <= 0.04045, values / 12.92, ((values + 0.055) / 1.055) ** 2.4)


def luminances(pixels: Any) -> Any:
    """Relative luminance (WCAG 2.2) of pixels (..., 3; blue, green, red)."""
    return _linear(np.asarray(pixels, float) / 255) @ np.array([0.0722, 0.7152, 0.2126])


def ratio_of(one: Any, other: Any) -> Any:
    """Contrast ratio (WCAG 2.2) of two luminances."""
    return (np.maximum(one, other) + 0.05) / (np.minimum(one, other) + 0.05)


def commonest(pixels: Any) -> Any:
    """The commonest colour of pixels (..., 3)."""
    flat = np.asarray(pixels).reshape(-1, 3)
    values, counts = np.unique(flat, axis=0, return_counts=True)
    return values[counts.argmax()]


def _bgr(colour: QColor) -> Any:
    return np.array([colour.blue(), colour.green(), colour.red()])


def shown(window: QWidget) -> Iterator[QWidget]:
    """What is in sight of a window, or a part of it is."""
    for widget in window.findChildren(QWidget):
        if widget.isVisible() and not widget.visibleRegion().isEmpty():
            yield widget


def scrolls(widget: QWidget) -> bool:
    """Whether what is not in sight of a widget can be brought there by scrolling up or down."""
    parent = widget.parentWidget()
    while parent is not None:
        if isinstance(parent, QAbstractScrollArea) and parent.viewport().isAncestorOf(widget):
            return True
        parent = parent.parentWidget()
    return isinstance(widget.parentWidget(), QAbstractItemView | QPlainTextEdit)


def cut(widget: QWidget, run: Run) -> str:
    """How a text is cut, or nothing."""
    room = QRectF(widget.rect())
    if run.clip is not None:
        room = room.intersected(run.clip)
    soft = QRectF(room).adjusted(-SOFT_PX, -SOFT_PX, SOFT_PX, SOFT_PX)
    box = run.box
    if isinstance(widget, QLineEdit):
        # What is longer than the field is reached by its cursor.
        return ""
    if box.left() < soft.left() or box.right() > soft.right():
        return f"is cut at its side by {_by(box, soft)}"
    if (box.top() < soft.top() or box.bottom() > soft.bottom()) and not scrolls(widget):
        return f"is cut above or below by {_by(box, soft)}"
    seen = widget.visibleRegion().boundingRect()
    if not scrolls(widget):
        allowed = QRectF(seen).adjusted(-SOFT_PX, -SOFT_PX, SOFT_PX, SOFT_PX)
        if not allowed.contains(box):
            return "reaches beyond what holds it"
    return ""


def _by(box: QRectF, room: QRectF) -> str:
    over = (
        room.left() - box.left(),
        room.top() - box.top(),
        box.right() - room.right(),
        box.bottom() - room.bottom(),
    )
    return f"{max(over):.1f} px"


def in_full_sight(widget: QWidget, box: QRectF) -> bool:
    """Whether all of a box is shown and nothing lies over it."""
    return QRegion(box.toAlignedRect()).subtracted(widget.visibleRegion()).isEmpty()


def runs_in(window: QWidget) -> Iterator[tuple[QWidget, Run]]:
    """Every text that a window paints, with the widget that does."""
    for widget in shown(window):
        for run in painted_by(widget).runs:
            if run.text.strip() and run.box.isValid():
                yield widget, run


def cut_texts(window: QWidget) -> list[str]:
    """Painted texts that are cut, shortened, or lie over each other."""
    faults: list[str] = []
    placed: list[tuple[QRectF, str]] = []
    for widget, run in runs_in(window):
        named = name_of(widget, run)
        if how := cut(widget, run):
            faults.append(f"{named} {how}")
        if run.text.rstrip().endswith("…") and not _told_in_full(widget, run):
            faults.append(f"{named} is shortened")
        if in_full_sight(widget, run.box):
            placed.append((run.box.translated(_corner(window, widget)), named))
    return faults + _over_each_other(placed)


def _told_in_full(widget: QWidget, run: Run) -> bool:
    """Whether a line of a list that is shortened gives all of its words to pointer and reader."""
    view = widget.parentWidget()
    if not isinstance(view, QAbstractItemView):
        return False
    index, start = view.indexAt(run.box.center().toPoint()), run.text.rstrip(" …")
    role = Qt.ItemDataRole
    # Without words of its own a reader says what the model has, not what is painted.
    said = str(index.data(role.AccessibleTextRole) or index.data(role.DisplayRole) or "")
    tip = QTextDocumentFragment.fromHtml(str(index.data(role.ToolTipRole) or ""))
    # What stands before a word alone ("Then:") may be left out there.
    return start[len(start) // 2 :] in " ".join(tip.toPlainText().split()) and bool(said)


def faint_texts(window: QWidget, picture: Any, least_ratio: float) -> list[str]:
    """Painted texts that don't stand out from their ground.

    Parameters
    ----------
    picture
        Of the window, as it is shown now (height, width, 3; blue, green, red).
    """
    faults = []
    for widget, run in runs_in(window):
        if in_full_sight(widget, run.box):
            box = run.box.translated(_corner(window, widget))
            ground = _ground(part(picture, window, box.adjusted(-1, -1, 1, 1).toAlignedRect()), run)
            found = 1.0 if ground is None else _apart([run.colour], ground)
            if found < least_ratio:
                faults.append(f"{name_of(widget, run)} has {found:.1f}:1")
    return faults


def _ground(pixels: Any, run: Run) -> Any:
    """What a text is painted on: the commonest colour but its own; None where all is its own."""
    flat = pixels.reshape(-1, 3)
    others = flat[(flat != _bgr(run.colour)).any(axis=1)]
    return commonest(others) if len(others) > 0.1 * len(flat) else None


def small_texts(window: QWidget, least_px: int) -> list[str]:
    """Painted texts below a size of type in pixels."""
    return [
        f"{name_of(widget, run)} is {run.size_px} px"
        for widget, run in runs_in(window)
        if run.size_px < least_px
    ]


def low_texts(window: QWidget, least_share: float) -> list[str]:
    """Painted texts with capitals below a share of the window's height."""
    least = least_share * window.height()
    return [
        f"{name_of(widget, run)} has capitals of {run.capital_px:.1f} px, not {least:.1f}"
        for widget, run in runs_in(window)
        if run.capital_px < least
    ]


def name_of(widget: QWidget, run: Run) -> str:
    return f"{type(widget).__name__} {run.text!r}"


def _corner(window: QWidget, widget: QWidget) -> QPointF:
    return QPointF(widget.mapTo(window, QPoint(0, 0)))


def _apart(inks: list[QColor], ground: Any) -> float:
    """The highest contrast of some colours against a ground."""
    return max(float(ratio_of(luminances(_bgr(ink)), luminances(ground))) for ink in inks)


def _over_each_other(placed: list[tuple[QRectF, str]]) -> list[str]:
    faults = []
    inner = [(b.adjusted(SOFT_PX, SOFT_PX, -SOFT_PX, -SOFT_PX), n) for b, n in placed]
    for k, (box, named) in enumerate(inner):
        for other, also in inner[k + 1 :]:
            if box.intersects(other):
                faults.append(f"{named} and {also} lie over each other")
    return faults


def paints_itself(widget: QWidget) -> bool:
    """Whether it is a widget of ours with a look of its own."""
    ours = [base for base in type(widget).__mro__ if base.__module__.startswith("ui.")]
    return any("paintEvent" in vars(base) for base in ours)


def faint_shapes(window: QWidget, picture: Any, least_ratio: float) -> list[str]:
    """Shapes of widgets that paint themselves, of which neither line nor fill stands out.

    Drawn people are left out: a stroke of the paper's colour parts two limbs there. Their
    contrast is taken from their picture as a whole. So are lists and tables that leave it to a
    delegate to paint, among frames and lines of the style: what the desk's delegates draw, the
    triangle of who comes first and the charts of the trends, is looked at by itself
    (``test_what_delegates_draw_is_told_from_its_ground``).
    """
    faults = []
    for widget in shown(window):
        if not paints_itself(widget) or isinstance(widget, MovementPicture | HeadOutline):
            continue
        at = _corner(window, widget)
        role = QPalette.ColorRole
        grounds = {widget.palette().color(r).name() for r in (role.Window, role.Base)}
        for box, inks, half in _shapes_by_place(painted_by(widget).shapes):
            # What lines and words are drawn on is no shape.
            if not in_full_sight(widget, box) or set(_names(inks)) <= grounds:
                continue
            rim = _rim(picture, window, box.adjusted(-half, -half, half, half).translated(at))
            if rim is None:
                continue
            # A box is no outline: a quarter of what is around it has to be other.
            found = max(
                float(np.quantile(ratio_of(luminances(_bgr(ink)), luminances(rim)), 0.75))
                for ink in inks
            )
            if found < least_ratio:
                where = box.toAlignedRect().getRect()
                faults.append(f"{type(widget).__name__} at {where} has {found:.1f}:1")
    return faults


def _shapes_by_place(shapes: list[Shape]) -> Iterator[tuple[QRectF, list[QColor], float]]:
    """Fill and line of the same place are one shape; what shines through is none."""
    places: dict[tuple[int, ...], list[Shape]] = {}
    for shape in shapes:
        places.setdefault(shape.box.toAlignedRect().getRect(), []).append(shape)
    outer: list[tuple[QRectF, list[QColor]]] = []
    for same in places.values():
        box = same[0].box
        inks = [c for s in same for c in (s.pen, s.fill) if c is not None and c.alpha() == 255]
        # A dot in the middle of a ring of its colour is one shape with it: a filled ring.
        part_of_it = any(
            _one_middle(box, b) and set(_names(inks)) & set(_names(c)) for b, c in outer
        )
        if inks and not part_of_it:
            outer.append((box, inks))
            yield box, inks, max(s.pen_px for s in same) / 2


def _one_middle(one: QRectF, other: QRectF) -> bool:
    apart = one.center() - other.center()
    return other.contains(one) and max(abs(apart.x()), abs(apart.y())) <= 1


def _names(colours: list[QColor]) -> list[str]:
    return [c.name() for c in colours]


def _rim(picture: Any, window: QWidget, box: QRectF) -> Any:
    """Pixels (n, 3) of a rim of 2 px around a box; None where there is nothing around it."""
    inner = box.adjusted(-1, -1, 1, 1).toAlignedRect()
    outer = inner.adjusted(-2, -2, 2, 2).intersected(window.rect())
    band = part(picture, window, outer)
    if not band.size:
        return None
    mask = np.ones(band.shape[:2], bool)
    top, left = max(inner.top() - outer.top(), 0), max(inner.left() - outer.left(), 0)
    mask[top : top + inner.height(), left : left + inner.width()] = False
    return band[mask] if mask.any() else None
