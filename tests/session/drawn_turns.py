"""Sets of head turns with exact truth, at uneven times, and what the program tells of them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import exp, log
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tests.motion.stands import rise
from tracker.exercises.counters import Counter, channel_of
from tracker.motion.turning import Turn
from tracker.sample import Sample
from tracker.session import figures
from tracker.session.bench import stated_offset_deg, stated_share
from tracker.session.reckoned import Stated
from tracker.session.uncertain import add_uncertainties

Array = NDArray[np.float64]
#: Within the bench's conditions, so that what the set-up is stated to be off by is known.
STATED = Stated({"distance_mm": 600.0, "glasses": "none"}, frozenset())


def swing(u: Array) -> Array:
    """Half a cosine from 0 to 1."""
    return np.asarray(0.5 - 0.5 * np.cos(np.pi * np.clip(u, 0.0, 1.0)))


#: Two ways to go from one end to the other, and how steep each is at most.
WAYS = ((swing, np.pi / 2), (rise, 1.875))


@dataclass(frozen=True)
class Truth:
    """What was really done: of each turn how far, how fast at most, and when it was there."""

    side: list[str]
    far_deg: Array
    speed_deg_s: Array
    at_s: Array

    @property
    def beats(self) -> Array:
        """Beats a minute; none leads to the first turn."""
        return np.concatenate([[np.nan], 60.0 / np.diff(self.at_s)])


def drawn(
    rng: np.random.Generator, rate_hz: float, noise_deg: float, turns: int = 24, f_hz: float = 0.0
) -> tuple[Truth, Array, Array]:
    """A set with its truth: times and head yaw of its samples.

    Tempo, size, form, rest at the ends, unevenness, tiring, jitter and lost pictures are drawn.
    """
    f_hz = f_hz or exp(rng.uniform(log(0.25), log(min(2.0, rate_hz / 9.0))))
    way, steepest = WAYS[rng.integers(2)]
    lasts_s = 0.5 / f_hz
    rests_s = rng.uniform(0.1, 0.4) if f_hz < 0.8 and rng.random() < 0.4 else 0.0
    uneven, tires = rng.uniform(0.01, 0.15), rng.uniform(-0.15, 0.15)
    size = rng.uniform(8.0, 30.0) * (1.0 + np.linspace(0.0, tires, turns))
    sizes = size * (1.0 + uneven * rng.uniform(-1, 1, turns))
    ends = sizes * np.where(np.arange(turns) % 2 == 0, 1.0, -1.0)
    spans = lasts_s * (1.0 + uneven * rng.uniform(-1, 1, turns))
    begins = 1.0 + np.concatenate([[0.0], np.cumsum(spans + rests_s)])
    froms = np.concatenate([[0.0], ends])
    tos = np.concatenate([ends, [0.0]])
    times = np.arange(0.0, begins[-1] + lasts_s + 1.0, 1.0 / rate_hz)
    times += rng.uniform(0.0, rng.uniform(0.0, 0.6), len(times)) / rate_hz
    times = times[rng.random(len(times)) >= rng.uniform(0.0, 0.1)]
    yaw = np.zeros(len(times))
    for begin, span, a, b in zip(begins, [*spans, lasts_s], froms, tos, strict=True):
        yaw += (b - a) * way((times - begin) / span)
    truth = Truth(
        ["right" if e > 0 else "left" for e in ends],
        np.abs(ends),
        steepest * np.abs(tos - froms)[:-1] / spans,
        begins[:-1] + spans + 0.5 * rests_s,
    )
    return truth, times, yaw + noise_deg * rng.standard_normal(len(times))


def told(times: Array, yaw: Array, stated: Stated = STATED) -> tuple[list[Turn], dict[str, Any]]:
    """Turns and figures of a set, as a summary has them."""
    samples = [Sample(float(t), head_yaw_deg=float(v)) for t, v in zip(times, yaw, strict=True)]
    counter = Counter(channel_of("head_yaw"))
    for sample in samples:
        counter.feed(sample)
    counter.finish()
    turns = counter.turns
    movement = {
        "amplitude_deg": figures.by_side(turns, lambda t: t.amplitude_deg, "none"),
        "peak_speed_deg_s": figures.by_side(turns, lambda t: t.peak_speed_deg_s, "none"),
        "tempo_bpm": figures.tempo(turns),
    }
    add_uncertainties(movement, channel_of("head_yaw"), turns, samples, stated)
    return turns, movement


def compared(
    rng: np.random.Generator, rate_hz: float, noise_deg: float
) -> Iterator[tuple[str, float, float]]:
    """Figures of one drawn set: name, error, and the uncertainty that is told; none if miscounted.

    The set-up's error is drawn as it is stated, of amplitude and of speed, and of the head's
    angle itself: one for all, by which one side reads larger and the other smaller, or one for
    each side.
    """
    truth, times, yaw = drawn(rng, rate_hz, noise_deg)
    off = [
        stated_share(m, "yaw", within=True) * rng.standard_normal()
        for m in ("amplitude", "peak speed")
    ]
    # One for the head's angle everywhere, or each side's own: nobody knows which.
    aside, *own = stated_offset_deg("yaw", within=True) * rng.standard_normal(3)
    if rng.random() < 0.5:
        aside = 0.0
    else:
        own = [0.0, 0.0]
    turns, movement = told(times, yaw * (1.0 + off[0]) + aside)
    if [t.side for t in turns] != truth.side:
        return
    true = {
        # What is off at a side's ends by itself is no part of its speed, which has its own error.
        "amplitude_deg": truth.far_deg - np.resize(own, len(truth.far_deg)),
        "peak_speed_deg_s": truth.speed_deg_s * (1.0 + off[0]) / (1.0 + off[1]),
        "tempo_bpm": truth.beats,
    }
    measured = {
        "amplitude_deg": [t.amplitude_deg for t in turns],
        "peak_speed_deg_s": [t.peak_speed_deg_s for t in turns],
        "tempo_bpm": truth.beats,
    }
    for key, known in true.items():
        found = movement[key]
        if found["median"] is None:
            yield f"{key}.withheld", 0.0, 0.0
            continue
        # Of the turns in which it was measured; how many is told.
        values = np.where(np.isfinite(measured[key]), known, np.nan)
        yield from _middles(key, found, values)
        yield from _last_less_first(key, found["difference"], values)


def _parts(found: dict[str, Any]) -> Iterator[tuple[str, dict[str, Any], slice]]:
    """The parts of a figure: name, what is told of it, and the turns that are in it."""
    yield "", found, slice(None)
    yield "first_five", found["first_five"], slice(10)
    yield "last_five", found["last_five"], slice(-10, None)
    if "by_side" in found:
        yield "right", found["by_side"]["right"], slice(0, None, 2)
        yield "left", found["by_side"]["left"], slice(1, None, 2)


def _middles(key: str, found: dict[str, Any], values: Array) -> Iterator[tuple[str, float, float]]:
    """Of each part of a figure its median and its spread, as :func:`compared`."""
    for name, part, which in _parts(found):
        end = "." * bool(name) + name
        some = values[which][np.isfinite(values[which])]
        yield key + end, part["median"] - np.median(some), part["uncertainty"]["expanded"]
        low, high = np.percentile(some, [25, 75])
        yield f"{key}.spread{end}", part["spread"] - (high - low) / 2, part["spread_uncertainty"]


def _last_less_first(
    key: str, difference: dict[str, Any], values: Array
) -> Iterator[tuple[str, float, float]]:
    """The last five repetitions less the first five, as :func:`compared`; none if withheld."""
    if difference["value"] is None:
        return
    reps = [np.nanmean(values[[k, k + 1]]) for k in (*range(0, 10, 2), *range(-10, 0, 2))]
    yield (
        f"{key}.difference",
        difference["value"] - (np.mean(reps[5:]) - np.mean(reps[:5])),
        difference["uncertainty"]["expanded"],
    )
