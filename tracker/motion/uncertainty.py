"""How far the figures of turns can be trusted at the pictures that were really had.

The words are those of JCGM 100:2008 (the "GUM"), the drawing is that of JCGM 101:2008
(propagation of distributions). What goes in:

noise of a sample
    Standard deviation of what is left of the set's own samples once any movement that is
    smooth over seven of them is taken away: their sixth divided difference, scaled to the
    noise of one sample (:func:`noise_of`). Errors that last longer than that are not seen
    by it; they belong to the set-up's error.
times of the pictures
    The turns are made anew, as smooth ways of the same size, length and rest at the end, at
    the very times at which there were samples; noise is put upon them, and they are read by
    the code that reads the turns themselves (:func:`tracker.motion.reading.read_turn`). What
    comes out less what went in is the error of one turn (:func:`errors_of`): its mean is a
    bias, its spread the noise of a turn. Gaps, jitter, rate, the choice of the outermost
    sample and the bias of both polynomials are all in it.
form of the movement
    It isn't known, so two are taken that differ at their ends: half a cosine, and the way of
    least jerk (Flash T, Hogan N 1985, J Neurosci 5:1688). Half of what their biases differ by
    is the half-width of a rectangular distribution (GUM 4.3.7).
the set-up
    A stated error, common to all turns of a set. It comes from whoever asks.

The standard uncertainties are added as squares (GUM 5.1.2). The bias is not taken off the
figure but added to the expanded uncertainty (GUM F.2.4.5), ``U = 2 u + |bias|``: k = 2, some
95 %. The person's own spread from turn to turn is no error of measuring and is not in it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from math import hypot, isfinite, nan, pi, sqrt

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from numpy.typing import NDArray

from tracker.motion.reading import read_turn
from tracker.motion.turning import Turn, TurningRule

Array = NDArray[np.float64]
Indices = NDArray[np.int64]

#: Coverage factor (JCGM 100:2008, 6.2.1 and 6.3.3).
K = 2.0
#: Median of the size of a normal variable with standard deviation 1, inverted (arithmetic).
_MAD = 1.4826
#: Turns that are made anew for each form, at least, and draws of a figure: the standard
#: deviation of the 48 of both forms is known to 10 %, that of the draws to 5 %
#: (JCGM 100:2008, E.4.3; how many is this project's own choice).
READ_AGAIN, DRAWS = 24, 200
#: Fewer samples from one turn to the next than this carry nothing: an end may lie between two
#: (own choice; the least from which an end can be told at all is one).
LEAST_SAMPLES = 4.0


@dataclass(frozen=True, slots=True)
class Form:
    """A smooth way from 0 to 1: where it is at a share of its time, and how fast at most.

    ``early`` is the share of its time at which a twentieth of the way is done (arithmetic).
    """

    at: Callable[[Array], Array]
    steepest: float
    early: float


#: Half a cosine, and the way of least jerk; their figures are arithmetic.
FORMS = (
    Form(lambda u: 0.5 - 0.5 * np.cos(pi * u), pi / 2, 0.14357),
    Form(lambda u: u**3 * (10 - 15 * u + 6 * u * u), 1.875, 0.18934),
)


#: No camera gives pictures as near to each other (this project's own choice).
LEAST_APART_S = 1e-4


@dataclass(frozen=True, slots=True)
class Errors:
    """Errors of the turns of one set: of the level, of its time, and of the peak speed.

    ``level``, ``time_s`` and ``speed`` are draws without their means, ``..._bias`` the means,
    ``..._form`` the standard uncertainty for not knowing the form. The speeds' errors are
    shares of the speed. ``own_s`` ``(n,)`` is the bias of each turn's time, as far as it differs
    from that of the others: an end between a quick and a slow way is taken towards the slow
    one. ``samples_a_turn`` is how many there were.
    """

    level: Array
    level_bias: float
    level_form: float
    time_s: Array
    own_s: Array
    speed: Array
    speed_bias: float
    speed_form: float
    samples_a_turn: float


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


def noise_of(times_s: Array, values: Array, *, at_rest: bool = False) -> float:
    """Standard deviation of the noise of one sample.

    Parameters
    ----------
    times_s, values
        ``(n,)`` finite samples, rising in time.
    at_rest
        Whether the signal rests and jumps: then what is straight over three samples is taken
        away, which a jump spoils for fewer of them.

    Returns
    -------
    float
        NaN from too few samples. White noise is known to some 5 % from 300 samples.
    """
    size = 3 if at_rest else 7
    if len(times_s) < 2 * size:
        return nan
    at = sliding_window_view(times_s, size)
    apart = at[:, :, None] - at[:, None, :]
    apart[:, range(size), range(size)] = 1.0
    weights = 1.0 / apart.prod(axis=2)
    weights /= np.sqrt((weights**2).sum(axis=1, keepdims=True))
    left = (weights * sliding_window_view(values, size)).sum(axis=1)
    whole = at[:, -1] - at[:, 0] <= 3.0 * size * float(np.median(np.diff(times_s)))
    return _MAD * float(np.median(np.abs(left[whole]))) if whole.any() else nan


def errors_of(
    times_s: Array, values: Array, turns: Sequence[Turn], rule: TurningRule
) -> Errors | None:
    """Errors of the turns of a set, drawn at its own times and with its own noise.

    Parameters
    ----------
    times_s, values
        ``(n,)`` finite samples of the set, in the order of time.
    turns
        As found in them.
    rule
        By which they were found.

    Returns
    -------
    Errors
        None from too few samples or turns.
    """
    if len(turns) < 2:
        return None
    # A damaged file can hold one moment twice; nothing is learnt of its second sample.
    apart = np.diff(times_s, prepend=-np.inf) > LEAST_APART_S
    times_s, values = times_s[apart], values[apart]
    noise = noise_of(times_s, values, at_rest=rule.plateau)
    ways = _ways(times_s, values, turns)
    if not isfinite(noise) or sum(w is not None for w in ways) < 2:
        return None
    rng = np.random.default_rng(len(times_s))
    again = -(-READ_AGAIN // len(ways))
    # Of shape (forms, times, turns, 3): of one turn all that is drawn stands in one column.
    drawn = np.array(
        [
            [[_read_again(times_s, w, form, noise, rule, rng) for w in ways] for _ in range(again)]
            for form in FORMS
        ]
    )
    steps = np.diff([t.peak_s for t in turns])
    a_turn = float(np.median(steps) / np.median(np.diff(times_s))) if len(steps) else nan
    level, level_bias, level_form = _together(drawn[..., 0])
    speed, speed_bias, speed_form = _together(drawn[..., 2])
    own_s, time_s = _by_turn(drawn[..., 1].reshape(-1, len(ways)))
    return Errors(
        level, level_bias, level_form, time_s, own_s, speed, speed_bias, speed_form, a_turn
    )


def _by_turn(drawn: Array) -> tuple[Array, Array]:
    """Mean of each turn, less that of all, and what the draws differ from them by."""
    known = np.isfinite(drawn)
    count = known.sum(axis=0)
    mean = np.where(known, drawn, 0.0).sum(axis=0) / np.maximum(count, 1)
    # Of few draws a mean takes a part of what they differ by.
    left = (drawn - mean) * np.sqrt(count / np.maximum(count - 1, 1))
    kept = left[known & (count > 1)]
    return np.where(count > 0, mean - np.median(mean), 0.0), kept


def _together(forms: Array) -> tuple[Array, float, float]:
    """Draws without the mean of their form, mean of the means, and half their distance."""
    kept = [f[np.isfinite(f)] for f in forms]
    if any(len(f) < READ_AGAIN / 2 for f in kept):
        return np.zeros(0), nan, nan
    means = [float(f.mean()) for f in kept]
    drawn = np.concatenate([f - m for f, m in zip(kept, means, strict=True)])
    return drawn, sum(means) / len(means), (max(means) - min(means)) / 2 / sqrt(3)


@dataclass(frozen=True, slots=True)
class _Way:
    """A turn as it is made anew.

    When it left, had arrived, and left again; how far it went; whether it rests at its end; how
    long the middle of the way back takes, and how far that goes. Of two ways that differ no
    parabola tells just where the end between them is.
    """

    left_s: float
    arrived_s: float
    leaves_s: float
    swing: float
    rests: bool
    back_s: float
    back: float

    @property
    def middle_s(self) -> float:
        """How long nine tenths of it take."""
        return self.arrived_s - self.left_s


def _ways(times_s: Array, values: Array, turns: Sequence[Turn]) -> list[_Way | None]:
    """The turns, None where too little was measured of one."""
    found = [_way(times_s, values, t) for t in turns]
    return [
        None if w is None else replace(w, back_s=(b or w).middle_s, back=(b or w).swing)
        for w, b in zip(found, [*found[1:], None], strict=True)
    ]


def _way(times_s: Array, values: Array, turn: Turn) -> _Way | None:
    """Where the turn crosses a twentieth of its way and leaves as much, between samples."""
    first = int(np.searchsorted(times_s, turn.start_s - 1e-5))
    now = int(np.searchsorted(times_s, turn.end_s + 1e-5)) - 1
    if now - first < 2:
        return None
    sign = 1.0 if turn.side in ("right", "up", "near", "forward") else -1.0
    part = sign * values[first : now + 1]
    index = int(part.argmax())
    if index == 0:
        return None
    near = part[index] - 0.05 * turn.swing_deg
    low = part[index] - 0.95 * turn.swing_deg
    arrived = int(np.flatnonzero(part[: index + 1] >= near)[0])
    leaves = index + int(np.flatnonzero(part[index:] >= near)[-1])
    at = times_s[first : now + 1]
    return _Way(
        float(np.interp(low, part[:2], at[:2])) if part[1] > part[0] else float(at[0]),
        _crossing(at, part, arrived - 1, near),
        _crossing(at, part, leaves, near) if leaves + 1 < len(part) else float(at[leaves]),
        float(turn.swing_deg),
        # Of fewer it can't be told from an end that was missed.
        leaves - arrived + 1 >= 4,
        0.0,
        0.0,
    )


def _crossing(times: Array, values: Array, k: int, level: float) -> float:
    """Time between two samples at which a line through them has a level."""
    if k < 0:
        return float(times[0])
    rise = values[k + 1] - values[k]
    share = 0.5 if rise == 0.0 else float(np.clip((level - values[k]) / rise, 0.0, 1.0))
    return float(times[k] + share * (times[k + 1] - times[k]))


def _read_again(
    times_s: Array,
    way: _Way | None,
    form: Form,
    noise: float,
    rule: TurningRule,
    rng: np.random.Generator,
) -> tuple[float, float, float]:
    """Errors of level, time (s) and peak speed (a share) of one turn made anew."""
    if way is None:
        return nan, nan, nan
    lasts_s, back_s = (max(s / (1.0 - 2.0 * form.early), 1e-3) for s in (way.middle_s, way.back_s))
    reached_s = way.arrived_s + form.early * lasts_s
    until_s = way.leaves_s - form.early * back_s
    if until_s <= reached_s or not way.rests:
        reached_s = until_s = 0.5 * (reached_s + until_s)
    begins_s = reached_s - lasts_s
    lo = max(int(np.searchsorted(times_s, begins_s - 0.1 * lasts_s)) - 1, 0)
    hi = min(int(np.searchsorted(times_s, until_s + 0.7 * back_s)) + 1, len(times_s))
    times = times_s[lo:hi]
    if len(times) < 3:
        return nan, nan, nan
    there = form.at(np.clip((times - begins_s) / lasts_s, 0.0, 1.0))
    back = form.at(np.clip((times - until_s) / back_s, 0.0, 1.0))
    values = way.swing * there - way.back * back + noise * rng.standard_normal(len(times))
    index = int(values.argmax())
    if index == 0:
        return nan, nan, nan
    now = len(times) - 1
    read = read_turn(times, values, 0, index, now, plateau=rule.plateau, hole=rule.hole)
    # Where it rests at its ends, the beat is when it came.
    true_s = begins_s + 0.6 * lasts_s if rule.plateau else 0.5 * (reached_s + until_s)
    speed = read.peak_speed * lasts_s / (form.steepest * way.swing) - 1.0
    return read.level - way.swing, read.peak_s - true_s, speed


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


def with_levels(values: Array, errors: Errors) -> Drawn:
    """Levels of the turns with the errors of levels."""
    return Drawn(values, values + _picked(errors.level, len(values)), np.zeros(len(values)))


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
