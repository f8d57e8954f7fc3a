"""The figures of standing work: sway of the neck point, and how long it was held."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import hypot, isfinite, log, pi
from statistics import median
from typing import Any

import numpy as np

from tracker.exercises.events import Event
from tracker.sample import Sample

#: Less than so much of measured standing says nothing of slow sway (common practice).
LEAST_SWAY_S = 5.0
#: 95 % of a two-dimensional normal distribution lie within this squared distance:
#: chi-squared with two degrees of freedom (arithmetic).
CHI2_95 = -2.0 * log(0.05)

#: While one of these lasts, a posture isn't held as it was asked for.
NOT_HELD = frozenset(
    {"not_measured", "left_picture", "possible_fall", "eyes_opened", "eyes_closed"}
)
#: In place is within this distance of where the standing began, and not lower than
#: that: beyond ordinary sway (range 58 mm on foam, see ``counters``) and short of a
#: step or of sitting down. This project's own choice.
PLACE_MM = 200.0
#: Its place is the median of so much time; shorter excursions are bridged (this project's own
#: choice).
PLACE_S = 1.0
BRIDGE_S = 0.5

Spans = list[tuple[float, float]]
Figure = dict[str, Any]


def no_sway(reason: str) -> Figure:
    """Sway that was not measured."""
    return {
        "value": None,
        "rms_sideways_mm": None,
        "rms_fore_aft_mm": None,
        "range_sideways_mm": None,
        "range_fore_aft_mm": None,
        "ellipse_95_mm2": None,
        "n": 0,
        "reason": reason,
    }


def sway(samples: Sequence[Sample]) -> Figure:
    """Sway of the neck point in the horizontal plane.

    Root mean square and range about the mean, sideways and fore-aft (defined as in
    Mancini M et al. 2012, J Neuroeng Rehabil 9:59, table 2), ``value`` the RMS
    distance of both together; and the area of the ellipse that holds 95 % of what is
    to be expected (Schubert P, Kirchner M 2014, Gait Posture 39:518, who advise this
    prediction ellipse, not the confidence ellipse of the mean): pi times chi-squared
    times the root of the covariance's determinant, the limit for many samples. A
    camera's path length is not given: noise lengthens it without end.

    It is the neck point that sways, not the feet's pressure: published figures of
    force plates don't apply to it.
    """
    rows = [
        (s.time_s, s.neck_x_mm, s.neck_z_mm)
        for s in samples
        if isfinite(s.neck_x_mm) and isfinite(s.neck_z_mm)
    ]
    if len(rows) < 3 or rows[-1][0] - rows[0][0] < LEAST_SWAY_S:
        return no_sway("the neck point was measured for less than 5 seconds")
    places = np.array(rows)[:, 1:]
    places = places - places.mean(axis=0)
    spread = places.T @ places / len(places)
    area = pi * CHI2_95 * np.sqrt(max(float(np.linalg.det(spread)), 0.0))
    ranges = places.max(axis=0) - places.min(axis=0)
    return {
        "value": round(float(np.sqrt(np.trace(spread))), 3),
        "rms_sideways_mm": round(float(np.sqrt(spread[0, 0])), 3),
        "rms_fore_aft_mm": round(float(np.sqrt(spread[1, 1])), 3),
        "range_sideways_mm": round(float(ranges[0]), 3),
        "range_fore_aft_mm": round(float(ranges[1]), 3),
        "ellipse_95_mm2": round(float(area), 2),
        "n": len(rows),
        "reason": None,
        "note": "of the neck point, by camera; its error is near the sway of firm standing",
    }


def held(samples: Sequence[Sample], events: Iterable[Event], from_s: float, to_s: float) -> Figure:
    """How long a posture was held: in place, seen, and with the eyes as asked.

    Blinks and holes under half a second don't interrupt it (own choice). ``value`` is
    the whole time in seconds, ``longest_s`` the longest stretch without a break.
    """
    broken = [
        (max(e.start_s, from_s), min(e.end_s if isfinite(e.end_s) else to_s, to_s))
        for e in events
        if e.code in NOT_HELD
    ]
    stretches = _between(broken + out_of_place(samples), from_s, to_s)
    if not samples or not stretches:
        return {"value": 0.0, "longest_s": 0.0, "breaks": 0, "reason": None}
    lengths = [b - a for a, b in stretches]
    return {
        "value": round(sum(lengths), 3),
        "longest_s": round(max(lengths), 3),
        "breaks": len(stretches) - 1,
        "reason": None,
    }


def out_of_place(samples: Sequence[Sample]) -> Spans:
    """When the neck point was a step or more from its place, or far below it."""
    rows = [
        (s.time_s, s.neck_x_mm, s.neck_y_mm, s.neck_z_mm)
        for s in samples
        if isfinite(s.neck_x_mm + s.neck_y_mm + s.neck_z_mm)
    ]
    first = [r for r in rows if r[0] <= rows[0][0] + PLACE_S]
    if not first:
        return []
    x, y, z = (median(r[k] for r in first) for k in (1, 2, 3))
    spans: Spans = []
    start = last = None
    for time_s, *at in rows:
        away = hypot(at[0] - x, at[2] - z) > PLACE_MM or y - at[1] > PLACE_MM
        if away:
            start = time_s if start is None else start
            last = time_s
        elif start is not None and last is not None:
            spans.append((start, time_s))
            start = None
    if start is not None and last is not None:
        spans.append((start, last))
    return [s for s in spans if s[1] - s[0] >= BRIDGE_S]


def _between(broken: Spans, from_s: float, to_s: float) -> Spans:
    """What is left of a stretch of time."""
    out: Spans = []
    now_s = from_s
    for start, end in sorted(broken):
        if start > now_s:
            out.append((now_s, start))
        now_s = max(now_s, end)
    if to_s > now_s:
        out.append((now_s, to_s))
    return out
