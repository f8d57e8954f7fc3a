"""What the head does that wasn't asked for."""

# ruff: noqa: ARG002 -- the base class takes what its heirs need

from __future__ import annotations

from collections import deque
from math import exp, hypot, isfinite, nan
from statistics import fmean, median

from tracker.exercises.watchers.base import EPSILON_S, Change, Excursion
from tracker.rotation import angle_between_deg, direction_from_angles
from tracker.sample import Sample


class HeadMoved(Excursion):
    """The head moves although only the eyes should.

    Found from 4 degrees, ignored up to 1.5 (this project's own aim): decided half-way,
    at 2.75 degrees from a reference that is the head's position at the start and
    follows slow drift. Over when the head is back within 1.5 degrees and doesn't only pass
    there, or still again elsewhere. With ``pitch_share`` 0 only turning counts, where another
    watcher has the chin.
    """

    code = "head_moved"
    #: How much earlier than the foot, as a share of the way from there to the limit.
    EARLIER, EARLIER_MOST_S = 0.3, 0.1
    #: From its start to the limit a movement takes this often what it takes from half of the
    #: limit to the limit: 1 / (1 - 2^(-1/2)), as long as it gathers speed evenly.
    GATHERING = 3.414
    #: Whose head is farther on by this, in the mean of so long against that of as long before,
    #: only passes by: one that goes to and fro by 4 degrees at 20 beats a minute, the slowest
    #: beat that eyes are asked for, passes its middle at 4.2 degrees a second (.84 here).
    PASSING_S, PASSING_DEG = 0.2, 0.5

    def __init__(
        self,
        beyond_deg: float = 2.75,
        back_deg: float = 1.5,
        reference_s: float = 0.5,
        follow_s: float = 10.0,
        still_s: float = 2.0,
        still_deg: float = 1.0,
        pitch_share: float = 1.0,
    ) -> None:
        super().__init__(beyond_deg, back_deg, least_s=0.05, calm_s=0.4, foot_deg=0.5)
        self._pitch_share = pitch_share
        self._reference: list[float] | None = None
        self._first: list[tuple[float, float, float]] = []
        self._reference_s, self._follow_s = reference_s, follow_s
        self._still_s, self._still_deg = still_s, still_deg
        self._recent: deque[tuple[float, float, float]] = deque()

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        pitch = self._pitch_share * sample.head_pitch_deg
        row = (sample.time_s, sample.head_yaw_deg, pitch)
        if not (isfinite(row[1]) and isfinite(row[2])):
            if self.on and sample.time_s - self._last_s >= self.BRIDGE_S:
                return self._break()
            return []
        self._recent.append(row)
        while self._recent[0][0] < row[0] - self._still_s - EPSILON_S:
            self._recent.popleft()
        if self._reference is None:
            self._start(row)
            return []
        distance = self._distance(row)
        if distance <= self._limits[1]:
            self._drift(row)
        out = self._follow(row[0], distance)
        if self.on and isfinite(self._crossed_s) and self._still_again(row[0]):
            out += self._settle()
        return out

    def _calm(self) -> bool:
        now_s = self._recent[-1][0] + EPSILON_S
        halves: tuple[list[tuple[float, float]], ...] = ([], [])
        for time_s, yaw, pitch in self._recent:
            back = int((now_s - time_s) / self.PASSING_S)
            if back < len(halves):
                halves[back].append((yaw, pitch))
        if not all(halves):
            return True
        now, then = ([fmean(axis) for axis in zip(*rows, strict=True)] for rows in halves)
        return hypot(now[0] - then[0], now[1] - then[1]) <= self.PASSING_DEG

    def _onset(self, foot_s: float, next_s: float) -> float:
        """A head gathers speed slowly: it began before it was seen to leave the foot.

        By a parabola through foot and limit it began .74 of the way between them
        earlier, by a straight line .22; the start of real movements lies between.
        A head that sways about the foot would be dated too early, so the way from half
        of the limit on, which no sway reaches, has the last word.
        """
        by_foot_s = foot_s - min(self.EARLIER * (self._crossed_s - foot_s), self.EARLIER_MOST_S)
        crossed_s, half_s = self._passed(self._limits[0]), self._passed(0.5 * self._limits[0])
        return max(by_foot_s, crossed_s - self.GATHERING * (crossed_s - half_s))

    def _passed(self, level_deg: float) -> float:
        """When the distance last rose through a level, between the samples."""
        rows = list(self._past)
        for (t0, d0), (t1, d1) in zip(rows[-2::-1], rows[:0:-1], strict=True):
            if d0 <= level_deg < d1:
                return t0 + (t1 - t0) * (level_deg - d0) / (d1 - d0)
        return rows[0][0]

    def _start(self, row: tuple[float, float, float]) -> None:
        self._first.append(row)
        if row[0] - self._first[0][0] >= self._reference_s - EPSILON_S:
            self._reference = [median(r[1] for r in self._first), median(r[2] for r in self._first)]

    def _distance(self, row: tuple[float, float, float]) -> float:
        assert self._reference is not None
        return float(
            angle_between_deg(
                direction_from_angles(row[1], row[2]), direction_from_angles(*self._reference)
            )
        )

    def _drift(self, row: tuple[float, float, float]) -> None:
        assert self._reference is not None
        step_s = min(row[0] - self._last_s, 0.2) if isfinite(self._last_s) else 0.0
        share = 1.0 - exp(-step_s / self._follow_s)
        self._reference = [
            r + share * (v - r) for r, v in zip(self._reference, row[1:], strict=True)
        ]

    def _still_again(self, time_s: float) -> bool:
        if time_s - self._recent[0][0] < self._still_s - 0.1:
            return False
        spans = [max(r[k] for r in self._recent) - min(r[k] for r in self._recent) for k in (1, 2)]
        return max(spans) <= self._still_deg

    def _settle(self) -> list[Change]:
        """Still at another place: that is the new reference."""
        began_s = self._recent[0][0]
        self._reference = [median(r[k] for r in self._recent) for k in (1, 2)]
        self._crossed_s = self._below_s = nan
        self._past.clear()
        return [self._end(began_s)]


class ChinDown(Excursion):
    """The chin sinks, or the person looks down at the feet, where the head should stay level.

    Counted from the rest pose, which a level head took. Ordinary sway tips a head by a
    degree or two; looking at a floor two metres ahead takes far more than 12 (common
    practice). A short glance down of less than a second is passed over (common practice, too).
    """

    code = "chin_down"

    def __init__(self, beyond_deg: float = 12.0, back_deg: float = 8.0, least_s: float = 0.7):
        super().__init__(beyond_deg, back_deg, least_s, calm_s=0.3, foot_deg=4.0)

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        down = -sample.head_pitch_deg
        if isfinite(down):
            return self._follow(sample.time_s, max(0.0, down))
        if self.on and sample.time_s - self._last_s >= self.BRIDGE_S:
            return self._break()
        return []

    def _onset(self, foot_s: float, next_s: float) -> float:
        return foot_s
