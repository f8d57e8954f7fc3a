"""What of all that a window paints doesn't stand out from its ground, texts and shapes."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import numpy as np
from PySide6.QtCore import QRect, QRectF
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QWidget

from tests.ui.legible import corner, in_full_sight, name_of, runs_in, shown
from tests.ui.painted import Run, Shape, painted_by
from ui.widgets.moving import MovementPicture
from ui.widgets.outline import HeadOutline


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


def _apart(inks: list[QColor], ground: Any) -> float:
    """The highest contrast of some colours against a ground."""
    return max(float(ratio_of(luminances(_bgr(ink)), luminances(ground))) for ink in inks)


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
            box = run.box.translated(corner(window, widget))
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
        at = corner(window, widget)
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
