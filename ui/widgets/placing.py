"""Where the count stands at each target: near enough to be read, and never cut."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import hypot, inf

from PySide6.QtCore import QPointF, QRectF, QSizeF


@dataclass(frozen=True, slots=True)
class CountSizes:
    """Sizes of the count: under or over its target, and beside it."""

    under: QSizeF
    beside: QSizeF


def share_under(size: QSizeF, away: float, reach: float, *, right: float = inf) -> float:
    """The share of its size at which a count under its target lies within a reach.

    Parameters
    ----------
    size
        Of the whole count.
    away
        From the target's middle to the count's upper edge.
    reach
        How far from that middle its corners may lie.
    right
        Room to the right of that middle: a wider count moves to the left.
    """
    wide, high = size.width(), size.height()
    return _largest(lambda f: hypot(max(f * wide / 2, f * wide - right), away + f * high) <= reach)


def share_beside(size: QSizeF, away: float, reach: float) -> float:
    """The same for a count beside its target; ``away`` is that of its nearer edge."""
    wide, high = size.width(), size.height()
    return _largest(lambda f: hypot(away + f * wide, f * high / 2) <= reach)


def _largest(fits: Callable[[float], bool]) -> float:
    """The largest share up to 1 that fits, within a thousandth; a tenth at least."""
    low, high = 0.1, 1.0
    if fits(high):
        return high
    while high - low > 0.001:
        middle = (low + high) / 2
        low, high = (middle, high) if fits(middle) else (low, middle)
    return low


def count_places(
    targets: Sequence[QPointF], field: QRectF, radius: float, sizes: CountSizes, gap: float
) -> list[QRectF]:
    """A box for the count of each target, in pixels of the field.

    Under the target; over it where the field ends too soon below. Where these would run
    into another target or its count, the counts of all stand beside their targets.

    Parameters
    ----------
    targets
        Middles of the targets.
    field
        Where may be drawn.
    radius, gap
        Radius of a target, and the room between it and its count.
    sizes
        Of the count.
    """
    away, size = radius + gap, sizes.under
    places = []
    for at in targets:
        top = at.y() + away
        if top + size.height() > field.bottom():
            top = at.y() - away - size.height()
        places.append(QRectF(QPointF(at.x() - size.width() / 2, top), size))
    if all(field.contains(p) for p in places) and not _touch(places, targets, radius):
        return places
    return [_beside(at, field, away, sizes.beside) for at in targets]


def count_place_moving(
    at: QPointF, field: QRectF, radius: float, sizes: CountSizes, gap: float, *, up: bool
) -> QRectF:
    """A box for the count of a target that moves, across or (``up``) up and down.

    It goes with the target and never changes its side: that would pull the eyes away.
    At the field's edge it stays inside.
    """
    away, size = radius + gap, sizes.under
    if up:
        return _beside(at, field, away, sizes.beside)
    top = at.y() + away
    if top + size.height() > field.bottom():
        top = at.y() - away - size.height()
    left = min(max(at.x() - size.width() / 2, field.left()), field.right() - size.width())
    return QRectF(QPointF(left, top), size)


def _touch(places: Sequence[QRectF], targets: Sequence[QPointF], radius: float) -> bool:
    """Whether a count lies on another count or on a target."""
    discs = [QRectF(t.x() - radius, t.y() - radius, 2 * radius, 2 * radius) for t in targets]
    return any(
        place.intersects(disc) or (k < j and place.intersects(places[j]))
        for k, place in enumerate(places)
        for j, disc in enumerate(discs)
    )


def _beside(at: QPointF, field: QRectF, away: float, size: QSizeF) -> QRectF:
    """Right of the target, left where the field ends; as high as it, but within the field."""
    left = at.x() + away
    if left + size.width() > field.right():
        left = at.x() - away - size.width()
    top = at.y() - size.height() / 2
    top = min(max(top, field.top()), field.bottom() - size.height())
    return QRectF(QPointF(left, top), size)
