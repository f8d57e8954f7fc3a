"""Figures of jumps between two targets: whether the eyes arrived, and which were left out."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from itertools import pairwise
from math import isfinite, isinf
from typing import Any

import numpy as np

from tracker.exercises.landing import APART_DEG, Array, is_told, landing_of, rows_of, stays_in
from tracker.exercises.stays import Stay, way_deg
from tracker.exercises.watchers import off_target_limit_deg
from tracker.motion.turning import Turn
from tracker.sample import Sample
from tracker.session.figures import NOT_CHECKED, figure, missing, why_no_gaze

#: So much of the time at a target must have been measured to say that nobody looked there
#: (own choice: a blink alone leaves more).
SEEN_LEAST = 0.6
#: Who is early or late by less than this share of a beat still goes with it (own choice).
BESIDE_BEAT = 0.5
WHERE = ("arrived", "short", "over", "not_told")
NO_TARGETS = "the targets lie too near to each other, or their place isn't known"
NEVER_AT_REST = "the eyes were never seen at rest on a target"
TOO_COARSE = "the gaze is read too coarsely to tell whether the eyes arrived"


def arrival_figures(
    samples: Sequence[Sample], turns: Sequence[Turn], error_deg: float, *, led: bool
) -> dict[str, Any]:
    """In how many jumps the eyes came to rest on the target, short of it, or beyond.

    Parameters
    ----------
    error_deg
        Error of the gaze at the targets (NaN: none is known; infinite: nobody has measured it).
    led
        Whether a beat said when to look where; only then a target can have been left out.

    Returns
    -------
    dict
        Counts, ``skipped``, ``off_deg`` (beyond the target; below 0 short of it), what counts
        as arrived (``within_deg``), and the reason where nothing could be told.
    """
    rows = rows_of(samples)
    stays, limit = stays_in(rows), off_target_limit_deg(error_deg)
    reason = _why_not(samples, rows, stays, limit, error_deg)
    landed = []
    if not reason and limit is not None:
        landed = [landing_of(rows, turn, stays, limit) for turn in turns]
        if not any(isfinite(found.off_deg) for found in landed):
            reason = NEVER_AT_REST
    off = figure((found.off_deg for found in landed), reason or "")
    off["by_side"] = {
        side: figure((f.off_deg for f in landed if f.side == side), "not seen")
        for side in sorted({f.side for f in landed})
    }
    counts = Counter(found.where for found in landed)
    return {
        **{name: None if reason else counts[name] for name in WHERE},  # type: ignore[index]
        "skipped": None if reason or not led else left_out(rows, stays),
        "off_deg": missing(reason) if reason else off,
        "within_deg": None if limit is None else round(limit, 2),
        "reason": reason or None,
    }


def _why_not(
    samples: Sequence[Sample],
    rows: Array,
    stays: Sequence[Stay],
    limit: float | None,
    error_deg: float,
) -> str:
    """Why no jump of the set can be told; of a set that is small at first, some can be."""
    if not np.isfinite(rows[:, 1] * rows[:, 2]).any():
        return why_no_gaze(samples)
    farthest = max((way_deg(stays, k) for k in range(len(stays))), default=0.0)
    if farthest < APART_DEG:
        return NO_TARGETS
    if is_told(limit, farthest):
        return ""
    return NOT_CHECKED if isinf(error_deg) else TOO_COARSE


def left_out(rows: Array, stays: Sequence[Stay]) -> int:
    """How often the eyes never came nearer to the asked target than to the one before it.

    From half a beat before a target is asked for to half a beat after, so that who is early
    or late has not left it out.
    """
    count = 0
    # At the first and at the last one of a set nobody has to be anywhere yet, or any more.
    for before, stay in pairwise(stays[:-1]):
        beside_s = BESIDE_BEAT * (stay.to_s - stay.from_s)
        inside = (rows[:, 0] >= stay.from_s) & (rows[:, 0] <= stay.to_s)
        if np.isfinite(rows[inside, 1]).mean() < SEEN_LEAST:
            continue
        around = (rows[:, 0] >= stay.from_s - beside_s) & (rows[:, 0] <= stay.to_s + beside_s)
        gaze = rows[around & np.isfinite(rows[:, 1]), 1]
        middle = 0.5 * (before.deg + stay.deg)
        count += not (gaze > middle if stay.plus else gaze < middle).any()
    return count
