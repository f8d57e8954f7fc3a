"""Figures of the turns of a set as they could have been read, and what they are uncertain by.

The errors of single turns come from :mod:`tracker.motion.uncertainty`; here they are put upon the
turns of a set, and what a median, a spread or a difference does with them is looked at.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot, nan, sqrt

import numpy as np
from numpy.typing import NDArray

from tracker.motion.uncertainty import DRAWS, Errors

Array = NDArray[np.float64]
Indices = NDArray[np.int64]

#: Coverage factor (JCGM 100:2008, 6.2.1 and 6.3.3).
K = 2.0


@dataclass(frozen=True, slots=True)
class Uncertainty:
    """Of a figure, in its unit.

    Attributes
    ----------
    noise, setup
        Standard uncertainties: from noise, times of the pictures and form of the movement;
        and from the stated error of the set-up.
    bias
        How much larger than the truth it is expected to read.
    """

    noise: float
    setup: float = 0.0
    bias: float = 0.0

    @property
    def expanded(self) -> float:
        """With k = 2; the bias is inside."""
        return K * hypot(self.noise, self.setup) + abs(self.bias)


@dataclass(frozen=True, slots=True)
class Drawn:
    """A figure of each turn, and what it could have been read as.

    Attributes
    ----------
    values
        ``(n,)`` one for each turn, NaN where there is none.
    drawn
        ``(DRAWS, n)`` the same with errors of measuring put upon them.
    off
        ``(n,)`` by how much each of them is known to be off besides.
    """

    values: Array
    drawn: Array
    off: Array

    def median_u(self, chosen: Array) -> float:
        """Standard uncertainty of the median of some turns; NaN of none."""
        kept = self._kept(chosen)
        if not len(kept):
            return nan
        return float(np.std(np.median(self.drawn[:, kept], axis=1)))

    def median_bias(self, chosen: Array) -> float:
        """By how much the median of some turns is known to be off; NaN of none."""
        values, off = self.values[self._kept(chosen)], self.off[self._kept(chosen)]
        return float(np.median(values) - np.median(values - off)) if len(values) else nan

    def spread_u(self, chosen: Array, aside: Array | float = 0.0) -> float:
        """Expanded uncertainty of half the distance between the quartiles; NaN of none.

        Noise makes a spread larger: about as the squares of both spreads add. That is its bias.

        Parameters
        ----------
        chosen
            ``(n,)`` which turns.
        aside
            ``(n,)`` standard error that all of a set share, with the sign that it has in each
            turn: a rest position that is off makes one side larger and the other smaller. Of
            one side alone it is no error.
        """
        kept = self._kept(chosen)
        if not len(kept):
            return nan
        common = np.random.default_rng(len(self.values)).standard_normal((DRAWS, 1))
        drawn = self.drawn[:, kept] + common * np.broadcast_to(aside, self.values.shape)[kept]
        read = float(_spread(self.values[kept][None])[0])
        alone = float(np.median(_spread(drawn - self.values[kept])))
        more = read - sqrt(max(read * read - alone * alone, 0.0))
        off = read - float(_spread((self.values - self.off)[kept][None])[0])
        return K * float(np.std(_spread(drawn))) + abs(off + more)

    def difference_u(self, first: Sequence[Indices], last: Sequence[Indices]) -> float:
        """Standard uncertainty of the difference of two means of repetitions' means."""
        return float(np.std(_difference(self.drawn, first, last)))

    def difference_bias(self, first: Sequence[Indices], last: Sequence[Indices]) -> float:
        """By how much that difference is known to be off."""
        return float(_difference(self.off[None], first, last)[0])

    def _kept(self, chosen: Array) -> Indices:
        return np.flatnonzero(chosen & np.isfinite(self.values))


def _difference(values: Array, first: Sequence[Indices], last: Sequence[Indices]) -> Array:
    """Mean of the last repetitions less that of the first, of each row."""
    ends = [
        np.mean([np.nanmean(values[:, turns], axis=1) for turns in part], axis=0)
        for part in (first, last)
    ]
    return np.asarray(ends[1] - ends[0])


def _spread(values: Array) -> Array:
    low, high = np.percentile(values, [25, 75], axis=1)
    return np.asarray(high - low) / 2


def with_levels(values: Array, errors: Errors, of: Indices | None = None) -> Drawn:
    """Levels of the turns with the errors of levels.

    ``of`` ``(n,)`` is from which reading each of them is, numbered from 0: the way back of
    somebody who stood up is the reading of the way up, with the same error. None: each from its
    own.
    """
    each = np.arange(len(values)) if of is None else of
    drawn = _picked(errors.level, int(each.max()) + 1 if len(each) else 0)[:, each]
    return Drawn(values, values + drawn, np.zeros(len(values)))


def with_swings(values: Array, errors: Errors) -> Drawn:
    """Ways from one extreme to the other: each end's error is in both ways that share it."""
    ends = _picked(errors.level, len(values) + 1)
    return Drawn(values, values + ends[:, 1:] + ends[:, :-1], np.zeros(len(values)))


def with_speeds(values: Array, errors: Errors) -> Drawn:
    """Peak speeds with the errors of speeds, which are shares of them."""
    drawn = values * (1.0 + _picked(errors.speed, len(values)))
    return Drawn(values, drawn, np.zeros(len(values)))


def with_beats(peaks_s: Array, errors: Errors) -> Drawn:
    """Beats a minute from each turn to the one after it, with the errors of their times.

    The first turn has none. An end that is read late makes one step long and the next short.
    Past ends that weren't seen (NaN) the steps are taken for equal, as in
    :func:`~tracker.motion.turning.steps_s`.
    """
    count = len(peaks_s)
    known = peaks_s - errors.own_s
    times = np.vstack([peaks_s, known, peaks_s + _picked(errors.time_s, count)])
    seen = np.flatnonzero(np.isfinite(peaks_s))
    steps = np.diff(times[:, seen], axis=1) / np.diff(seen)
    beats = np.full(times.shape, nan)
    beats[:, seen[1:]] = 60.0 / np.where(steps > 0, steps, nan)
    ever = np.isfinite(beats).all(axis=0)
    values = np.where(ever, beats[0], nan)
    return Drawn(values, beats[2:], values - beats[1])


def _picked(errors: Array, count: int) -> Array:
    """Errors ``(DRAWS, count)`` drawn from those of the set's turns."""
    rng = np.random.default_rng(count)
    if not len(errors):
        return np.full((DRAWS, count), nan)
    return errors[rng.integers(0, len(errors), (DRAWS, count))]
