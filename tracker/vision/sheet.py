"""Finding a flat rectangle (a sheet of paper, a card) in a picture: its four corners.

Outlines are looked for at several brightnesses and along edges. Each side is then
measured anew, across many places along it, and a line laid through them; where two lines
meet is the corner. So a finger on the rim, or the round corner of a card, moves nothing.
"""

from __future__ import annotations

from typing import Any

import cv2
import numpy as np
from numpy.typing import NDArray

Picture = NDArray[Any]
Corners = NDArray[np.floating[Any]]

#: The rectangle's share of the picture at least: below it the corners are too coarse (this
#: project's own choice).
LEAST_SHARE = 0.015
#: And at most: a rectangle that is cut off by the picture's rim is none (this project's own
#: choice).
MOST_SHARE = 0.9
#: Longer by shorter side as it may look, tilted (this project's own choice: A4 is 1.41, tilted by
#: 60 degrees 2.8).
MOST_RATIO = 3.0
#: Pictures are searched at this length; the sides are measured at full size (this project's own
#: choice, for the time that a search takes).
SEARCH_PX = 480
#: Places along a side, and the part of it near the corners that is left out, where fingers
#: and round corners are (this project's own choice).
_PLACES, _MARGIN = 48, 0.08
#: So many of the places must show an edge within a pixel of the line (this project's own
#: choice: a hand may hide a third).
LEAST_ON_LINE = 0.6
#: Weakest edge that is believed, in grey levels (this project's own choice: above noise).
LEAST_EDGE = 8.0


def find_sheet(picture: Picture) -> Corners | None:
    """Corners of the rectangle that is seen best, None without one.

    Parameters
    ----------
    picture
        ``(height, width, 3)`` BGR or ``(height, width)`` grey, 8 bit.

    Returns
    -------
    ndarray or None
        ``(4, 2)`` corners in pixels of the picture (centres at whole numbers), clockwise
        as they are seen.
    """
    grey = picture if picture.ndim == 2 else cv2.cvtColor(picture, cv2.COLOR_BGR2GRAY)
    grey = np.asarray(grey, dtype=np.uint8)
    height, width = grey.shape
    shrink = min(1.0, SEARCH_PX / max(height, width))
    small = cv2.resize(grey, None, fx=shrink, fy=shrink, interpolation=cv2.INTER_AREA)
    small = np.asarray(cv2.GaussianBlur(small, (5, 5), 0), dtype=np.uint8)
    best, most = None, 0.0
    for rough in _unlike(_rough(small)):
        measured = _measured(grey, (rough + 0.5) / shrink - 0.5)
        if measured is None:
            continue
        corners, trust = measured
        score = trust * float(cv2.contourArea(corners.astype(np.float32))) ** 0.5
        if score > most and _may_be(corners, (height, width)):
            best, most = corners, score
    return best


def _rough(small: Picture) -> list[Corners]:
    """Outlines with four corners, in pixels of the small picture."""
    masks: list[Picture] = []
    low, high = np.percentile(small, [5, 99])
    for level in np.linspace(low, high, 9)[1:-1]:
        light = np.asarray(small > level, dtype=np.uint8) * 255
        masks += [light, 255 - light]
    edges = cv2.Canny(small, 25, 60)
    masks.append(np.asarray(cv2.dilate(edges, np.ones((3, 3), np.uint8))))
    found = []
    for mask in masks:
        outlines, _ = cv2.findContours(mask, cv2.RETR_LIST, cv2.CHAIN_APPROX_SIMPLE)
        for outline in outlines:
            four = _four_corners(outline)
            if four is not None and _may_be(four, small.shape[:2]):
                found.append(four)
    return found


def _four_corners(outline: Any) -> Corners | None:
    """The four corners of an outline that has as many."""
    hull = cv2.convexHull(outline)
    around = cv2.arcLength(hull, True)
    if around < 40:
        return None
    for share in (0.02, 0.035, 0.05):
        few = cv2.approxPolyDP(hull, share * around, True)
        if len(few) == 4:
            four = few.reshape(4, 2).astype(float)
            # Fingers eat a part of the outline; a shape that isn't one loses more.
            if cv2.contourArea(outline) > 0.75 * cv2.contourArea(few):
                return _clockwise(four)
    return None


def _clockwise(four: Corners) -> Corners:
    middle = four.mean(axis=0)
    angle = np.arctan2(four[:, 1] - middle[1], four[:, 0] - middle[0])
    return np.asarray(four[np.argsort(angle)])


def _may_be(four: Corners, shape: tuple[int, ...]) -> bool:
    """Whether four corners can be those of a rectangle in sight."""
    height, width = shape[:2]
    area = float(cv2.contourArea(four.astype(np.float32)))
    if not LEAST_SHARE <= area / (height * width) <= MOST_SHARE:
        return False
    if (four < 1).any() or (four > [width - 2, height - 2]).any():
        return False
    sides = np.linalg.norm(np.roll(four, -1, axis=0) - four, axis=1)
    lengths = sides[:2] + sides[2:]
    if lengths.max() > MOST_RATIO * lengths.min():
        return False
    return bool((np.maximum(sides[:2], sides[2:]) < 1.8 * np.minimum(sides[:2], sides[2:])).all())


def _unlike(found: list[Corners]) -> list[Corners]:
    """Each outline once, the largest twelve."""
    out: list[Corners] = []
    for four in sorted(found, key=lambda f: -cv2.contourArea(f.astype(np.float32))):
        if all(np.abs(four - other).max() > 3 for other in out):
            out.append(four)
    return out[:12]


def _measured(grey: Picture, four: Corners) -> tuple[Corners, float] | None:
    """Corners where the measured sides meet, and how far they are to be trusted (0 to 1)."""
    trust = 0.0
    for _ in range(2):
        lines = []
        trust = 1.0
        for k in range(4):
            side = _side(grey, four[k], four[(k + 1) % 4], four.mean(axis=0))
            if side is None:
                return None
            lines.append(side[0])
            trust = min(trust, side[1])
        corners = [_crossing(lines[k - 1], lines[k]) for k in range(4)]
        moved = np.array(corners)
        if not np.isfinite(moved).all() or np.abs(moved - four).max() > 0.1 * _size(four):
            return None
        four = moved
    return four, trust


def _size(four: Corners) -> float:
    return float(np.sqrt(cv2.contourArea(four.astype(np.float32))))


def _side(
    grey: Picture, one: Corners, other: Corners, middle: Corners
) -> tuple[tuple[Corners, Corners], float] | None:
    """A line along a side, and the share of the places that lie on it."""
    along = (other - one) / np.linalg.norm(other - one)
    out = np.array([along[1], -along[0]])
    if out @ (0.5 * (one + other) - middle) < 0:
        out = -out
    reach = float(np.clip(0.03 * np.linalg.norm(other - one), 4.0, 9.0))
    step = 0.5
    depths = np.arange(-reach, reach + 1e-6, step)
    places = one + np.linspace(_MARGIN, 1 - _MARGIN, _PLACES)[:, None] * (other - one)
    points = (places[:, None] + depths[:, None] * out).astype(np.float32)
    across, down = points[..., 0], points[..., 1]
    values = cv2.remap(grey, across, down, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
    slope = cv2.GaussianBlur(np.gradient(values.astype(float), axis=1), (5, 1), 1.0)
    # Light inside and dark outside, or the other way: the same all along the side.
    sign = 1.0 if slope.sum() > 0 else -1.0
    strong = np.clip(sign * slope, 0.0, None)
    peak = strong[:, 2:-2].argmax(axis=1) + 2
    rows = np.arange(_PLACES)
    a, b, c = strong[rows, peak - 1], strong[rows, peak], strong[rows, peak + 1]
    shift = 0.5 * (a - c) / np.minimum(a - 2 * b + c, -1e-6)
    seen = b * (1 / step) > LEAST_EDGE
    if seen.sum() < LEAST_ON_LINE * _PLACES:
        return None
    depth = depths[peak] + step * np.clip(shift, -1, 1)
    edge = places[seen] + depth[seen, None] * out
    return _line(edge)


def _line(edge: Corners) -> tuple[tuple[Corners, Corners], float] | None:
    """Line through most of the points: a point and a direction."""
    kept = edge
    for limit in (3.0, 1.5, 1.0, 1.0):
        vx, vy, x, y = cv2.fitLine(kept.astype(np.float32), cv2.DIST_HUBER, 0, 0.01, 0.01).ravel()
        direction, point = np.array([vx, vy], float), np.array([x, y], float)
        off = np.abs((edge - point) @ np.array([-direction[1], direction[0]]))
        kept = edge[off < limit]
        if len(kept) < LEAST_ON_LINE * _PLACES:
            return None
    return (point, direction), len(kept) / _PLACES


def _crossing(one: tuple[Corners, Corners], other: tuple[Corners, Corners]) -> Corners:
    (p, d), (q, e) = one, other
    cross = d[0] * e[1] - d[1] * e[0]
    if abs(cross) < 1e-6:
        return np.full(2, np.nan)
    t = ((q[0] - p[0]) * e[1] - (q[1] - p[1]) * e[0]) / cross
    return np.asarray(p + t * d)
