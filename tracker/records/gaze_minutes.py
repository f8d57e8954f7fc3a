"""Minutes of gaze stabilisation that were really done, to set beside the guideline's figure.

Only head movement with the eyes on a target counts (``Exercise.gaze_minutes``). What the
camera saw is measured; of practice that was told of, the usual length of the dose stands in.
What was led but not seen counts as neither.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from tracker.records.rows import SessionRow


@dataclass(frozen=True, slots=True)
class GazeMinutes:
    """Minutes a day, averaged over all days of a window: seen by the camera, and told of."""

    measured: float
    reported: float
    days: int


def gaze_minutes(
    rows: Iterable[SessionRow], from_day: date | None, to_day: date
) -> GazeMinutes | None:
    """Minutes a day from one day to another, both counted in; None without a day."""
    if from_day is None or from_day > to_day:
        return None
    days = (to_day - from_day).days + 1
    sets = [s for r in rows if r.day is not None and from_day <= r.day <= to_day for s in r.sets]
    a_day = 60.0 * days
    return GazeMinutes(
        sum(s.gaze_measured_s for s in sets) / a_day,
        sum(s.gaze_reported_s for s in sets) / a_day,
        days,
    )
