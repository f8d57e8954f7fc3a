"""What every watcher is: it takes samples and turns, and tells what began and what ended."""

# ruff: noqa: ARG002 -- the base class takes what its heirs need

from __future__ import annotations

from collections import deque
from dataclasses import dataclass
from math import isfinite, nan

from tracker.motion.turning import Turn
from tracker.sample import Sample

#: Times are sums of decimals: arithmetic may leave so much.
EPSILON_S = 1e-6


@dataclass(frozen=True, slots=True)
class Change:
    """Something began (at a time that may lie back) or ended."""

    began: bool
    time_s: float
    reason: str = ""


@dataclass(frozen=True, slots=True)
class Asked:
    """What was asked at the time of a turn; None where nothing was."""

    amplitude_deg: tuple[float, float] | None
    tempo_bpm: float | None


class Watcher:
    """Base: notices nothing."""

    code = ""

    def __init__(self) -> None:
        self.on = False

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample."""
        return []

    def turn(self, turn: Turn, asked: Asked) -> list[Change]:
        """Take the next turn."""
        return []

    def wait(self, now_s: float) -> list[Change]:
        """Nothing came up to now."""
        return []

    def finish(self, time_s: float) -> list[Change]:
        """The set ended: what still lasts ends with it."""
        return [self._end(time_s)] if self.on else []

    def _begin(self, time_s: float, reason: str = "") -> Change:
        self.on = True
        return Change(True, time_s, reason)

    def _end(self, time_s: float) -> Change:
        self.on = False
        return Change(False, time_s)


class Excursion(Watcher):
    """A distance that goes beyond a limit for a while and comes back below a lower one.

    Parameters
    ----------
    beyond_deg, back_deg
        It begins above the first and ends below the second.
    least_s
        How long it has to be seen beyond before it is decided.
    calm_s
        How long it has to stay below ``back_deg`` before it is over.
    foot_deg
        The beginning is dated back to when the distance last was this small.
    """

    #: Longer holes end what lasts; shorter ones (blinks) are bridged (own choice: "a blink
    #: under 0.5 s is no loss of gaze").
    BRIDGE_S = 0.5
    #: How far back a beginning is dated at most.
    BACK_S = 1.0

    def __init__(
        self, beyond_deg: float, back_deg: float, least_s: float, calm_s: float, foot_deg: float
    ) -> None:
        super().__init__()
        self._limits = (beyond_deg, back_deg, foot_deg)
        self._least_s, self._calm_s = least_s, calm_s
        self._past: deque[tuple[float, float]] = deque()
        self._crossed_s = nan
        self._seen_s = 0.0
        self._below_s = nan
        self._last_s = nan

    def _follow(self, time_s: float, distance: float) -> list[Change]:
        """One more measured distance."""
        out: list[Change] = []
        if time_s - self._last_s >= self.BRIDGE_S:
            out = self._break()
        step_s = time_s - self._last_s if isfinite(self._last_s) else 0.0
        self._last_s = time_s
        self._past.append((time_s, distance))
        while self._past[0][0] < time_s - self.BACK_S - 2.0:
            self._past.popleft()
        beyond, back, _ = self._limits
        if distance < back:
            return out + self._under(time_s)
        self._below_s = nan
        if distance > beyond and not isfinite(self._crossed_s):
            self._crossed_s, self._seen_s = time_s, 0.0
            self._start_s = self._date_back()
        elif isfinite(self._crossed_s) and distance > beyond:
            # Between the two limits nothing is decided: eyes that lag and catch up are
            # often there, and beyond only for a moment.
            self._seen_s += min(step_s, 0.15)
        if not self.on and isfinite(self._crossed_s) and self._seen_s >= self._least_s - 1e-3:
            out.append(self._begin(self._start_s))
        return out

    def _under(self, time_s: float) -> list[Change]:
        if not isfinite(self._crossed_s):
            return []
        if not isfinite(self._below_s):
            self._below_s = time_s
        if time_s - self._below_s < self._calm_s - EPSILON_S or not self._calm():
            return []
        was_on, ended_s = self.on, self._below_s
        self._crossed_s = self._below_s = nan
        return [self._end(ended_s)] if was_on else []

    def _calm(self) -> bool:
        """Whether what is near now doesn't only pass by."""
        return True

    def _break(self) -> list[Change]:
        was_on, last_s = self.on, self._last_s
        self._past.clear()
        self._crossed_s = self._below_s = nan
        return [self._end(last_s)] if was_on else []

    def _date_back(self) -> float:
        """When the rise that crossed the limit began."""
        foot = self._limits[2]
        rows = list(self._past)
        k = len(rows) - 1
        oldest_s = rows[k][0] - self.BACK_S
        while k > 0 and rows[k - 1][0] >= oldest_s and rows[k][1] > foot:
            if rows[k - 1][1] > rows[k][1] + 0.5:  # it came down to here: the rise began here
                break
            k -= 1
        if k + 1 >= len(rows):
            return rows[k][0]
        return self._onset(rows[k][0], rows[k + 1][0])

    def _onset(self, foot_s: float, next_s: float) -> float:
        """A jump lies between two samples; half-way is the best guess."""
        return 0.5 * (foot_s + next_s)

    def finish(self, time_s: float) -> list[Change]:
        """End with the set, or earlier where the calm had already begun."""
        if not self.on:
            return []
        return [self._end(self._below_s if isfinite(self._below_s) else time_s)]
