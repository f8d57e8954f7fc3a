"""Whether the eyes are shut or open."""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite, nan

from tracker.exercises.counters import EYE_OPEN_LEAST
from tracker.exercises.watchers.base import EPSILON_S, Change, Watcher
from tracker.sample import Sample

#: A lid on its way has left its place by about a frame before it is seen to have arrived; in a
#: longer gap nobody knows (this project's own choice).
_BEFORE_MOST_S = 0.1

#: Lids that look half open for less than this do not open, if they never look more open than the
#: second (this project's own choice: shorter than a blink takes, and what open eyes read).
FLICKER_S, SURELY_OPEN = 0.15, 0.75


def _set_out_s(before_s: float, time_s: float) -> float:
    """When a lid began to move that is seen to have arrived: at the sample before."""
    return max(before_s, time_s - _BEFORE_MOST_S) if isfinite(before_s) else time_s


def is_flicker(between: Sequence[Sample]) -> bool:
    """Whether samples between two of shut eyes are noise of the lids, and no look."""
    return not any(_is_open(s, between[0].time_s) for s in between)


def _is_open(sample: Sample, half_open_from_s: float) -> bool:
    """Whether lids that look apart are: surely so, or for no shorter than a flicker."""
    surely = sample.eye_open >= SURELY_OPEN
    return surely or sample.time_s - half_open_from_s >= FLICKER_S - EPSILON_S


class EyesClosed(Watcher):
    """The eyes stay shut: longer than a blink (0.5 s, own choice).

    On a small face the lids of shut eyes are read to and fro: on one of nine rendered heads (74 cm
    away, 640x480) a quarter of the samples of shut eyes read .3 to .5. So a moment in which they
    look half open does not interrupt (:func:`is_flicker`), if they look shut on the whole.

    Parameters
    ----------
    shut_below
        Eyes less open than this are shut.
    least_s
        How long they have to be.
    """

    code = "eyes_closed"

    def __init__(self, shut_below: float = EYE_OPEN_LEAST, least_s: float = 0.5) -> None:
        super().__init__()
        self._shut_below, self._least_s = shut_below, least_s
        self._last_s = nan
        self._forget()

    def _forget(self) -> None:
        self._since_s = self._began_s = self._half_s = nan
        self._sum, self._count = 0.0, 0

    def feed(self, sample: Sample) -> list[Change]:
        """Take the next sample; an openness that wasn't measured decides nothing."""
        out: list[Change] = []
        if not isfinite(sample.eye_open):
            return self._lost(sample.time_s)
        if sample.time_s - self._last_s >= 0.5:
            out = self._lost(sample.time_s)
        before_s, self._last_s = self._last_s, sample.time_s
        if sample.eye_open >= self._shut_below:
            if not isfinite(self._half_s):
                self._half_s = sample.time_s
            if _is_open(sample, self._half_s):
                ended_s = self._half_s
                self._forget()
                return [*out, self._end(ended_s)] if self.on else out
        else:
            self._half_s = nan
            if not isfinite(self._since_s):
                self._since_s, self._began_s = sample.time_s, _set_out_s(before_s, sample.time_s)
        if isfinite(self._since_s):
            self._sum, self._count = self._sum + sample.eye_open, self._count + 1
            long = sample.time_s - self._since_s > self._least_s and not isfinite(self._half_s)
            if not self.on and long and self._sum < self._shut_below * self._count:
                out.append(self._begin(self._began_s))
        return out

    def _lost(self, time_s: float) -> list[Change]:
        if time_s - self._last_s < 0.5:
            return []
        self._forget()
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
