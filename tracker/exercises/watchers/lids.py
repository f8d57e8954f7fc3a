"""Whether the eyes are shut or open."""

from __future__ import annotations

from math import isfinite, nan

from tracker.exercises.counters import EYE_OPEN_LEAST
from tracker.exercises.watchers.base import Change, Watcher
from tracker.sample import Sample

#: A lid on its way has left its place by about a frame before it is seen to have arrived; in a
#: longer gap nobody knows (this project's own choice).
_BEFORE_MOST_S = 0.1


def _set_out_s(before_s: float, time_s: float) -> float:
    """When a lid began to move that is seen to have arrived: at the sample before."""
    return max(before_s, time_s - _BEFORE_MOST_S) if isfinite(before_s) else time_s


class EyesClosed(Watcher):
    """The eyes stay shut: longer than a blink (0.5 s, design.md)."""

    code = "eyes_closed"

    def __init__(self, shut_below: float = EYE_OPEN_LEAST, least_s: float = 0.5) -> None:
        super().__init__()
        self._shut_below, self._least_s = shut_below, least_s
        self._since_s = self._began_s = nan
        self._last_s = nan

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample; an openness that wasn't measured decides nothing."""
        out: list[Change] = []
        if not isfinite(sample.eye_open):
            return self._lost(sample.time_s)
        if sample.time_s - self._last_s >= 0.5:
            out = self._lost(sample.time_s)
        before_s, self._last_s = self._last_s, sample.time_s
        if sample.eye_open >= self._shut_below:
            self._since_s = nan
            return [*out, self._end(sample.time_s)] if self.on else out
        if not isfinite(self._since_s):
            self._since_s, self._began_s = sample.time_s, _set_out_s(before_s, sample.time_s)
        if not self.on and sample.time_s - self._since_s > self._least_s:
            out.append(self._begin(self._began_s))
        return out

    def _lost(self, time_s: float) -> list[Change]:
        if time_s - self._last_s < 0.5:
            return []
        self._since_s = nan
        return [self._end(self._last_s)] if self.on else []


class EyesOpened(Watcher):
    """The eyes open although they should stay shut.

    Open for longer than a flicker of the lids (0.3 s); the beginning of a set leaves
    time to shut them. Eyes between shut and open decide nothing: a lid that trembles
    is not a look around. All common practice.

    Parameters
    ----------
    from_s
        Beginning of the set.
    open_from
        Eyes at least this open are open.
    shut_below
        Eyes less open than this are shut.
    least_s
        How long they have to be open.
    grace_s
        Time to shut them at the beginning.
    """

    code = "eyes_opened"

    def __init__(
        self,
        from_s: float,
        open_from: float = 0.45,
        shut_below: float = EYE_OPEN_LEAST,
        least_s: float = 0.3,
        grace_s: float = 3.0,
    ) -> None:
        super().__init__()
        self._open_from, self._shut_below = open_from, shut_below
        self._least_s = least_s
        self._watch_from_s = from_s + grace_s
        self._since_s = self._began_s = nan
        self._last_s = nan

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample; an openness that wasn't measured decides nothing."""
        out: list[Change] = []
        if sample.time_s - self._last_s >= 0.5:
            self._since_s = nan
            out = [self._end(self._last_s)] if self.on else []
        if not isfinite(sample.eye_open):
            return out
        before_s, self._last_s = self._last_s, sample.time_s
        if sample.eye_open < self._shut_below:
            self._since_s = nan
            # Once they are shut, the time to shut them is over.
            self._watch_from_s = min(self._watch_from_s, sample.time_s)
            return [*out, self._end(sample.time_s)] if self.on else out
        if sample.time_s < self._watch_from_s:
            return out
        if sample.eye_open >= self._open_from and not isfinite(self._since_s):
            self._since_s, self._began_s = sample.time_s, _set_out_s(before_s, sample.time_s)
        elif sample.eye_open < self._open_from and not self.on:
            self._since_s = nan
        if not self.on and sample.time_s - self._since_s > self._least_s:
            out.append(self._begin(self._began_s))
        return out
