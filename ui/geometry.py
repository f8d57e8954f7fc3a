"""Millimetres and degrees on the screen: where a target is drawn, and how large.

Everything here is pure arithmetic. The camera is taken to sit at the top centre
of the screen; millimetres on the screen run right (the patient's right, who
faces the screen) and up from the camera, so that they are negative below it.
Pixels are Qt's logical pixels.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

#: Distance of the eyes from the screen that is taken before it is measured.
ASSUMED_DISTANCE_MM = 600.0
#: What a measured distance must lie between to be believed.
DISTANCE_RANGE_MM = (250.0, 2500.0)
#: Logical pixels a millimetre of the reference pixel of the web and desktop (96 to the inch).
REFERENCE_PX_MM = 96.0 / 25.4
#: Screens tell nonsense about their size (0, 1 or 16 x 9 mm; projectors): what is believed.
PX_MM_RANGE = (1.2, 14.0)
_ASPECT_TOLERANCE = 0.15
#: What an edge of a field has to move by (own choice): from 600 mm it is .3 degrees, half of the
#: error that the gaze is read with at best.
MOVED_MM = 3.0

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class ScreenGeometry:
    """A screen: its size in pixels, how dense they are, and how that is known.

    ``source`` is "card" (measured with a card held against it), "screen" (the screen's
    own word) or "assumed".
    """

    width_px: float
    height_px: float
    px_per_mm: float
    source: str

    @property
    def width_mm(self) -> float:
        """Width of the screen."""
        return self.width_px / self.px_per_mm

    def to_mm(self, point_px: Point) -> Point:
        """Millimetres right of and above the camera of a pixel of the screen."""
        x_px, y_px = point_px
        return (x_px - self.width_px / 2) / self.px_per_mm, -y_px / self.px_per_mm

    def to_px(self, point_mm: Point) -> Point:
        """Pixel of the screen at millimetres right of and above the camera."""
        x_mm, y_mm = point_mm
        return self.width_px / 2 + x_mm * self.px_per_mm, -y_mm * self.px_per_mm


@dataclass(frozen=True, slots=True)
class FieldPlace:
    """Where on a screen a field lies, in mm, and what its place hangs on.

    ``window`` is the screen, where on it the window lies, and the size of its text: without a
    change of these a page that lays itself out anew is no move, and could else have a set-up
    begin again for ever.
    """

    window: tuple[object, ...]
    left_mm: float
    top_mm: float
    right_mm: float
    bottom_mm: float

    def moved_from(self, other: FieldPlace) -> bool:
        """Whether it lies elsewhere, or has another size, by more than a tiny shift."""
        here = (self.left_mm, self.top_mm, self.right_mm, self.bottom_mm)
        there = (other.left_mm, other.top_mm, other.right_mm, other.bottom_mm)
        shifts = (abs(a - b) for a, b in zip(here, there, strict=True))
        if self.window[:1] != other.window[:1]:
            # The camera stays where it is, whatever is alike.
            return True
        return self.window != other.window and max(shifts) >= MOVED_MM


def screen_geometry(
    size_px: tuple[float, float],
    size_mm: tuple[float, float],
    px_per_mm: float | None = None,
) -> ScreenGeometry:
    """Geometry of a screen from what it says of itself.

    Parameters
    ----------
    size_px, size_mm
        Width and height in logical pixels and as the screen states them in millimetres.
    px_per_mm
        As measured with a card held against it; overrides what the screen says.
    """
    width_px, height_px = size_px
    if px_per_mm is not None and PX_MM_RANGE[0] <= px_per_mm <= PX_MM_RANGE[1]:
        return ScreenGeometry(width_px, height_px, px_per_mm, "card")
    width_mm, height_mm = size_mm
    if width_mm > 0 and height_mm > 0:
        across, down = width_px / width_mm, height_px / height_mm
        square = abs(across / down - 1.0) <= _ASPECT_TOLERANCE
        if square and PX_MM_RANGE[0] <= across <= PX_MM_RANGE[1]:
            return ScreenGeometry(width_px, height_px, across, "screen")
    return ScreenGeometry(width_px, height_px, REFERENCE_PX_MM, "assumed")


def believable_distance_mm(distance_mm: float) -> float:
    """The measured distance if it can be one, else the assumed one."""
    low, high = DISTANCE_RANGE_MM
    return distance_mm if low <= distance_mm <= high else ASSUMED_DISTANCE_MM


def length_mm(angle_deg: float, distance_mm: float) -> float:
    """Length on the screen of a thing straight ahead that is seen at ``angle_deg``."""
    return 2.0 * distance_mm * math.tan(math.radians(angle_deg) / 2.0)


def offset_mm(angle_deg: float, distance_mm: float) -> float:
    """How far from straight ahead a point lies that is seen at ``angle_deg`` from there."""
    return distance_mm * math.tan(math.radians(angle_deg))


def angle_deg(offset: float, distance_mm: float) -> float:
    """Direction of a point ``offset`` millimetres from straight ahead."""
    return math.degrees(math.atan2(offset, distance_mm))


@dataclass(frozen=True, slots=True)
class ScreenMap:
    """Points of the screen to points of the rest frame: an affine map.

    Attributes
    ----------
    origin_mm, across_mm, down_mm
        ``target = origin + x * across + y * down`` for a screen point (x, y).
    """

    origin_mm: tuple[float, float, float]
    across_mm: tuple[float, float, float]
    down_mm: tuple[float, float, float]

    def to_rest(self, point_mm: Point) -> tuple[float, float, float]:
        """Where a point of the screen lies in the rest frame."""
        x, y = point_mm
        a, b, c = (
            o + x * u + y * v
            for o, u, v in zip(self.origin_mm, self.across_mm, self.down_mm, strict=True)
        )
        return a, b, c


def facing_map(distance_mm: float, eyes_mm: Point) -> ScreenMap:
    """The map for a person who looks straight at the screen.

    ``eyes_mm`` is the point of the screen plane right in front of the eyes.
    """
    x, y = eyes_mm
    return ScreenMap((-x, -y, distance_mm), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0))


def fitted_map(
    screen_mm: Sequence[Point], rest_mm: Sequence[tuple[float, float, float]]
) -> ScreenMap | None:
    """The map that best takes points of the screen to where a set-up has found them.

    None when there are fewer than three different points or all lie on a line.
    """
    points = np.asarray(screen_mm, dtype=float).reshape(-1, 2)
    found = np.asarray(rest_mm, dtype=float).reshape(-1, 3)
    if len(points) < 3 or len(points) != len(found):
        return None
    rows = np.column_stack([np.ones(len(points)), points])
    if np.linalg.matrix_rank(rows, tol=1e-3) < 3:
        return None
    solved, *_ = np.linalg.lstsq(rows, found, rcond=None)
    origin, across, down = ((float(r[0]), float(r[1]), float(r[2])) for r in solved)
    return ScreenMap(origin, across, down)


@dataclass(frozen=True, slots=True)
class FieldExtent:
    """The part of the screen that targets may be drawn on.

    ``centre_mm`` is its middle on the screen, the halves how far a target may lie from it,
    ``screen`` the screen, where it is known.
    """

    centre_mm: Point
    half_width_mm: float
    half_height_mm: float
    screen: ScreenGeometry | None = None

    def inside(self, offset: Point) -> Point:
        """The nearest place to ``offset`` (from the middle) that is in the field."""
        x, y = offset
        w, h = self.half_width_mm, self.half_height_mm
        return min(max(x, -w), w), min(max(y, -h), h)

    def on_screen(self, offset: Point) -> Point:
        """Screen point of an offset from the field's middle."""
        return self.centre_mm[0] + offset[0], self.centre_mm[1] + offset[1]


def shrink_to_fit(offsets: Sequence[Point], extent: FieldExtent) -> float:
    """Factor (at most 1) that brings all offsets into the field."""
    factor = 1.0
    for x, y in offsets:
        if abs(x) > 0:
            factor = min(factor, extent.half_width_mm / abs(x))
        if abs(y) > 0:
            factor = min(factor, extent.half_height_mm / abs(y))
    return max(factor, 0.0)
