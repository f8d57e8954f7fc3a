"""Where the count stands at each target: near enough to be read, and never cut."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSizeF


def count_places(
    targets: Sequence[QPointF], field: QRectF, radius: float, size: QSizeF, gap: float
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
    size
        Of the count.
    """
    away = radius + gap
    places = []
    for at in targets:
        top = at.y() + away
        if top + size.height() > field.bottom():
            top = at.y() - away - size.height()
        places.append(QRectF(QPointF(at.x() - size.width() / 2, top), size))
    if all(field.contains(p) for p in places) and not _touch(places, targets, radius):
        return places
    return [_beside(at, field, away, size) for at in targets]


def count_place_moving(
    at: QPointF, field: QRectF, radius: float, size: QSizeF, gap: float, *, up: bool
) -> QRectF:
    """A box for the count of a target that moves, across or (``up``) up and down.

    It goes with the target and never changes its side: that would pull the eyes away.
    At the field's edge it stays inside.
    """
    away = radius + gap
    if up:
        return _beside(at, field, away, size)
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
