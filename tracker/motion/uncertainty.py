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
    sample, what a running mean takes away and the bias of both polynomials are all in it.
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

from tracker.motion.away import AwayRule
from tracker.motion.reading import read_turn
from tracker.motion.smoothing import SPAN_S, means_of
from tracker.motion.turning import Turn, TurningRule

Array = NDArray[np.float64]
Indices = NDArray[np.int64]

#: Median of the size of a normal variable with standard deviation 1, inverted (arithmetic).
_MAD = 1.4826
#: Turns that are made anew for each form, at least, and draws of a figure: the standard
#: deviation of the 48 of both forms is known to 10 %, that of the draws to 5 %
#: (JCGM 100:2008, E.4.3; how many is this project's own choice).
READ_AGAIN, DRAWS = 24, 200
#: Fewer samples from one turn to the next than this carry nothing: an end may lie between two
#: (own choice; the least from which an end can be told at all is one).
LEAST_SAMPLES = 4.0
#: A top is taken for a bend beyond so many standard errors of it (own choice: none of a stay).
K_BENT = 1.0


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
class Mean:
    """How a signal is averaged before its turns are read (``smoothing.RunningMean``), in s."""

    span_s: float = 0.0
    least_s: float = 0.0

    def of(self, times_s: Array, values: Array) -> tuple[Array, Array]:
        """Mean times and values; without a span as they are."""
        if not self.span_s:
            return times_s, values
        return means_of(times_s, values, self.span_s, least_s=self.least_s)


#: Turns that are read as they come.
NO_MEAN = Mean()


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
    times_s: Array, values: Array, turns: Sequence[Turn], rule: TurningRule, mean: Mean = NO_MEAN
) -> Errors | None:
    """Errors of the turns of a set, drawn at its own times and with its own noise.

    Parameters
    ----------
    times_s, values
        ``(n,)`` finite samples of the set, in the order of time.
    turns
        As found in them.
    rule, mean
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
    ways = _ways(*mean.of(times_s, values), turns)
    if not isfinite(noise) or sum(w is not None for w in ways) < 2:
        return None
    rng = np.random.default_rng(len(times_s))
    again = -(-READ_AGAIN // len(ways))
    # Of shape (forms, times, turns, 3): of one turn all that is drawn stands in one column.
    drawn = np.array(
        [
            [
                [_read_again(times_s, w, form, noise, rule, mean, rng) for w in ways]
                for _ in range(again)
            ]
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


def errors_of_stays(
    times_s: Array, values: Array, turns: Sequence[Turn], rule: AwayRule
) -> Errors | None:
    """Errors of how far ways out and back went (:mod:`tracker.motion.away`), of level alone.

    Where one is farthest is the outermost of some means of a stay. The largest of ten normal
    values lies 1.54 standard deviations beyond their mean (David HA, Nagaraja HN 2003, "Order
    Statistics", from memory; checked in the tests), and six samples go into a mean: .63 of a
    sample's noise too far. A whole one is added to the noise for it, so that home, a median of
    half a second, is in it too. Who turns round at once rests nowhere: the mean over
    ``s`` seconds of a parabola lies ``a s^2 / 24`` short of its top (arithmetic; ``a`` its
    acceleration, read from the samples around each end).

    Parameters
    ----------
    times_s, values
        ``(n,)`` finite samples of the set, in the order of time.
    turns, rule
        As found in them, and by which rule.

    Returns
    -------
    Errors
        None from too few samples.
    """
    noise = noise_of(times_s, values)
    if not isfinite(noise):
        return None
    out = [t for t in turns if t.side == rule.out_side]
    short = [_short_of_top(times_s, rule.direction * values, t, noise) for t in out]
    lost = float(np.median(short)) if short else 0.0
    drawn = noise * np.random.default_rng(len(times_s)).standard_normal(DRAWS)
    none = np.zeros(0)
    # How far an end is like a parabola isn't known: half of what it takes away.
    form = hypot(noise, 0.5 * lost)
    return Errors(drawn - drawn.mean(), -lost, form, none, none, none, nan, nan, nan)


def _short_of_top(times_s: Array, values: Array, turn: Turn, noise: float) -> float:
    """How far the mean stays below the end of a way out, 0 where noise alone may have bent it."""
    inside = np.flatnonzero((times_s >= turn.start_s) & (times_s <= turn.end_s))
    at, means = means_of(times_s[inside], values[inside], SPAN_S)
    if not len(at):
        return 0.0
    near = np.abs(times_s - at[means.argmax()]) <= SPAN_S
    if near.sum() < 4:
        return 0.0
    tau = times_s[near] - times_s[near].mean()
    (bent, _, _), spread = np.polyfit(tau, values[near], 2), tau.std()
    # Of a parabola through so many even samples the bend is known to about so much (arithmetic:
    # the variance of the squares of even times is .8 of their mean squared).
    unsure = noise / (0.89 * spread * spread * sqrt(near.sum()))
    return float(max(-2.0 * bent - 2.0 * K_BENT * unsure, 0.0) * SPAN_S * SPAN_S / 24.0)


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
    swing = swing_of(turn)
    if now - first < 2:
        return None
    sign = 1.0 if turn.side in ("right", "up", "near", "forward") else -1.0
    part = sign * values[first : now + 1]
    index = int(part.argmax())
    if index == 0:
        return None
    near = part[index] - 0.05 * swing
    low = part[index] - 0.95 * swing
    arrived = int(np.flatnonzero(part[: index + 1] >= near)[0])
    leaves = index + int(np.flatnonzero(part[index:] >= near)[-1])
    at = times_s[first : now + 1]
    return _Way(
        float(np.interp(low, part[:2], at[:2])) if part[1] > part[0] else float(at[0]),
        _crossing(at, part, arrived - 1, near),
        _crossing(at, part, leaves, near) if leaves + 1 < len(part) else float(at[leaves]),
        float(swing),
        # Of fewer it can't be told from an end that was missed.
        leaves - arrived + 1 >= 4,
        0.0,
        0.0,
    )


def swing_of(turn: Turn) -> float:
    """How far it went from the extreme before, in its own unit."""
    return turn.swing_mm if isfinite(turn.swing_mm) else turn.swing_deg


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
    mean: Mean,
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
    more_s = mean.span_s
    lo = max(int(np.searchsorted(times_s, begins_s - 0.1 * lasts_s - more_s)) - 1, 0)
    hi = min(int(np.searchsorted(times_s, until_s + 0.7 * back_s + more_s)) + 1, len(times_s))
    times = times_s[lo:hi]
    if len(times) < 3:
        return nan, nan, nan
    there = form.at(np.clip((times - begins_s) / lasts_s, 0.0, 1.0))
    back = form.at(np.clip((times - until_s) / back_s, 0.0, 1.0))
    values = way.swing * there - way.back * back + noise * rng.standard_normal(len(times))
    times, values = mean.of(times, values)
    if len(times) < 3:
        return nan, nan, nan
    index = int(values.argmax())
    if index == 0:
        return nan, nan, nan
    now = len(times) - 1
    read = read_turn(times, values, 0, index, now, plateau=rule.plateau, hole=rule.hole)
    # Where it rests at its ends, the beat is when it came.
    true_s = begins_s + 0.6 * lasts_s if rule.plateau else 0.5 * (reached_s + until_s)
    speed = read.peak_speed * lasts_s / (form.steepest * way.swing) - 1.0
    return read.level - way.swing, read.peak_s - true_s, speed
