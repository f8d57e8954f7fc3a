"""The check of the head's angle by one mark on the wall.

The patient points the nose straight ahead, at a mark to one side, and back. How far the
head should have turned follows from two lengths measured with a tape; the difference is
the error *there*, on that person and camera, with how well one points the nose in it.
"""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass
from math import atan2, cos, degrees, hypot, isfinite, radians, sin

import numpy as np

from tracker.errors import InputError
from tracker.sample import Sample

#: The turn must be larger than what a nose is pointed by, and within what is measured to
#: the full accuracy (head yaw within 40 degrees, this project's own aim; the least is its own
#: choice).
LEAST_DEG, MOST_DEG = 8.0, 40.0
#: Each of the two lengths as measured with a tape (common practice).
TAPE_MM = 10.0
#: The head is held when its yaw stays within this for so long. The sway of a head that is
#: held still is a fraction of it (rendered heads and one person before a webcam).
HELD_DEG, HELD_S = 2.0, 1.0
#: Frames that a hold needs at least: 10 a second (this project's own choice).
HELD_FRAMES = 10
#: A head that still creeps to its place by this much in half of that time isn't there yet (this
#: project's own choice).
CREEP_DEG = 0.3
#: Share of the turn beyond which the head is on its way to the mark, and below which back (this
#: project's own choice).
AT_MARK, BACK = 0.5, 0.3
#: Who has not got there by then does not want to (this project's own choice).
PATIENCE_S = 60.0

STAGES = ("ahead", "mark", "back", "done", "gave_up")


@dataclass(frozen=True, slots=True)
class Hold:
    """A head that was held: yaw in degrees, the eyes' mid-point in mm (right, forward)."""

    yaw_deg: float
    x_mm: float
    z_mm: float


@dataclass(frozen=True, slots=True)
class MarkFound:
    """What the check showed.

    Attributes
    ----------
    measured_deg, expected_deg
        Turn of the head to the mark, to the right above 0: by the camera, by the tape.
    expected_error_deg
        What the tape leaves open (two standard deviations).
    distance_mm, offset_mm
        As they were typed.
    made_on
        The day (ISO 8601) of the check.
    """

    measured_deg: float
    expected_deg: float
    expected_error_deg: float
    distance_mm: float
    offset_mm: float
    made_on: str = ""

    @property
    def error_deg(self) -> float:
        """Measured less expected."""
        return self.measured_deg - self.expected_deg


def expected_yaw_deg(distance_mm: float, offset_mm: float, x_mm: float, z_mm: float) -> float:
    """Direction of the mark from where the eyes' mid-point is, to the right above 0.

    ``atan((offset - x) / (distance - z))``, with the head's own position: a head that turns
    about a point ``r`` behind the eyes moves them, and the same turn is then
    ``atan(offset / (distance + r))``, since the line of the nose goes through that point.

    Parameters
    ----------
    distance_mm
        From the eyes, as they look straight ahead, to the wall.
    offset_mm
        Along the wall from the point straight ahead to the mark, right above 0.
    x_mm, z_mm
        How far the eyes' mid-point has moved since, right and forward.
    """
    return degrees(atan2(offset_mm - x_mm, distance_mm - z_mm))


class MarkCheck:
    """Takes samples until the nose was ahead, at the mark, and back.

    Parameters
    ----------
    distance_mm, offset_mm
        As for :func:`expected_yaw_deg`.

    Raises
    ------
    InputError
        If the mark asks for too small or too large a turn.
    """

    def __init__(self, distance_mm: float, offset_mm: float) -> None:
        turn = abs(expected_yaw_deg(distance_mm, offset_mm, 0.0, 0.0))
        if not LEAST_DEG <= turn <= MOST_DEG:
            aside = "farther out" if turn < LEAST_DEG else "farther in"
            raise InputError(f"the mark would ask for a turn of {turn:.0f} degrees; put it {aside}")
        self._distance_mm, self._offset_mm = distance_mm, offset_mm
        self._recent: deque[Sample] = deque()
        self._held: list[Hold] = []
        self._began_s: float | None = None
        self._turn_deg = expected_yaw_deg(distance_mm, offset_mm, 0.0, 0.0)
        self.stage = "ahead"
        #: Why the newest sample says nothing, or empty.
        self.reason = ""

    @property
    def over(self) -> bool:
        """Whether no more samples are wanted."""
        return self.stage in ("done", "gave_up")

    def take(self, sample: Sample) -> None:
        """Take a sample of the rest frame."""
        if self.over:
            return
        if self._began_s is None:
            self._began_s = sample.time_s
        if sample.time_s - self._began_s > PATIENCE_S:
            self.stage = "gave_up"
            return
        if not isfinite(sample.head_yaw_deg) or not isfinite(sample.head_z_mm):
            self.reason = sample.reason or "gap"
            self._recent.clear()
            return
        self.reason = ""
        self._recent.append(sample)
        while sample.time_s - self._recent[0].time_s > HELD_S:
            self._recent.popleft()
        hold = self._hold()
        if hold is not None and self._is_there(hold):
            self._held.append(hold)
            self._recent.clear()
            self.stage = STAGES[STAGES.index(self.stage) + 1]

    def _hold(self) -> Hold | None:
        """Where the head has been held for the last second: by its second half."""
        recent = list(self._recent)
        if len(recent) < HELD_FRAMES or recent[-1].time_s - recent[0].time_s < 0.9 * HELD_S:
            return None
        yaw = [s.head_yaw_deg for s in recent]
        half = len(recent) // 2
        creeps = abs(np.median(yaw[half:]) - np.median(yaw[:half])) > CREEP_DEG
        if max(yaw) - min(yaw) > HELD_DEG or creeps:
            return None
        recent, yaw = recent[half:], yaw[half:]
        x, z = ([getattr(s, f"head_{a}_mm") for s in recent] for a in "xz")
        return Hold(float(np.median(yaw)), float(np.median(x)), float(np.median(z)))

    def _is_there(self, hold: Hold) -> bool:
        """Whether a hold is one that the stage asks for."""
        if self.stage == "ahead":
            return True
        share = (hold.yaw_deg - self._held[0].yaw_deg) / self._turn_deg
        return share > AT_MARK if self.stage == "mark" else abs(share) < BACK

    def found(self) -> MarkFound:
        """What came of it, once the stage is "done".

        What straight ahead is lies midway between before and after.

        Raises
        ------
        RuntimeError
            Before that.
        """
        if self.stage != "done":
            raise RuntimeError("the check is not over")
        first, mark, last = self._held
        ahead = Hold(
            0.5 * (first.yaw_deg + last.yaw_deg),
            0.5 * (first.x_mm + last.x_mm),
            0.5 * (first.z_mm + last.z_mm),
        )
        # The lengths are typed along and across the line straight ahead.
        x, z = mark.x_mm - ahead.x_mm, mark.z_mm - ahead.z_mm
        turned = radians(ahead.yaw_deg)
        across = x * cos(turned) - z * sin(turned)
        along = x * sin(turned) + z * cos(turned)
        expected = expected_yaw_deg(self._distance_mm, self._offset_mm, across, along)
        away = hypot(self._distance_mm - along, self._offset_mm - across)
        return MarkFound(
            mark.yaw_deg - ahead.yaw_deg,
            expected,
            degrees(2 * TAPE_MM / away),
            self._distance_mm,
            self._offset_mm,
        )
