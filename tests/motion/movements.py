"""Made-up movements whose number of turns is known, for the tests of counting."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Movement:
    """One set: its true number of turns, and how it was made."""

    times_s: Array
    values_deg: Array
    turns: int


def turning(
    extremes_deg: Array, half_s: Array, rate_hz: float, lead_s: float = 1.0, pause_s: float = 0.0
) -> Movement:
    """From 0 through all extremes and back to 0, along half cosines with pauses between."""
    levels = np.concatenate([[0.0], extremes_deg, [0.0]])
    first, last = half_s[0] / 2, half_s[-1] / 2
    spans = np.concatenate([[first], half_s[1:], [last]])
    times, values = [0.0, lead_s], [levels[0], levels[0]]
    grid_t: list[float] = list(np.linspace(0, lead_s, 50))
    grid_v: list[float] = [levels[0]] * 50
    now = lead_s
    for a, b, span in zip(levels, levels[1:], spans, strict=False):
        u = np.linspace(0, 1, 60)
        grid_t += list(now + u * span)
        # The way from rest and back to rest is half a swing: a quarter sine.
        grid_v += list(a + (b - a) * 0.5 * (1 - np.cos(np.pi * u)))
        now += span
        if pause_s:
            grid_t.append(now + pause_s)
            grid_v.append(b)
            now += pause_s
    del times, values
    grid_t.append(now + 1.0)
    grid_v.append(0.0)
    t = np.arange(0.0, now + 1.0, 1.0 / rate_hz)
    return Movement(t, np.interp(t, grid_t, grid_v), len(extremes_deg))


def random_set(rng: np.random.Generator) -> Movement:
    """A set as people do them: uneven, one- or two-sided, slow or fast, with noise and drift."""
    rate_hz = float(rng.choice([15, 20, 30, 60]))
    fastest = 2.5 if rate_hz >= 30 else 1.5
    half_s = 0.5 / np.exp(rng.uniform(np.log(0.15), np.log(fastest)))
    count = 2 * int(rng.integers(3, 21))
    amplitude = float(np.exp(rng.uniform(np.log(5), np.log(40))))
    uneven = rng.uniform(0, 0.25)
    sizes = amplitude * (1 + uneven * rng.uniform(-1, 1, count))
    signs = np.where(np.arange(count) % 2 == 0, 1.0, -1.0) * rng.choice([-1, 1])
    extremes = sizes * signs
    if amplitude > 10 and rng.random() < 0.25:  # one-sided: there and back to the middle
        extremes = np.where(np.arange(count) % 2 == 0, 2 * extremes, 0.1 * extremes)[:-1]
    spans = half_s * (1 + 0.25 * rng.uniform(-1, 1, len(extremes)))
    pause_s = float(rng.choice([0.0, 0.0, 0.3, 0.8])) if half_s > 0.4 else 0.0
    move = turning(extremes, spans, rate_hz, pause_s=pause_s)
    t = move.times_s
    noise = rng.normal(0, rng.uniform(0, 0.4), len(t))
    drift = rng.uniform(-0.05, 0.05) * t
    one_sided = len(extremes) % 2 == 1
    # The way back to the middle is the last turn of a one-sided set.
    return Movement(t, move.values_deg + noise + drift, len(extremes) + one_sided)


def hesitating_set(rng: np.random.Generator) -> Movement:
    """A set with a short way back of up to 30 % of the swing in the middle of some turns."""
    rate_hz = float(rng.choice([30, 60]))
    count = 2 * int(rng.integers(5, 12))
    amplitude = rng.uniform(12, 25)
    signs = np.where(np.arange(count) % 2 == 0, 1.0, -1.0)
    levels: list[float] = []
    spans: list[float] = []
    for k, s in enumerate(signs):
        if k > 4 and rng.random() < 0.3:
            back = rng.uniform(0.1, 0.3) * 2 * amplitude
            levels += [s * back / 2, -s * back / 2]
            spans += [0.4, 0.25]
        levels.append(s * amplitude)
        spans.append(0.7)
    move = turning(np.array(levels), np.array(spans), rate_hz)
    noise = rng.normal(0, 0.3, len(move.times_s))
    return Movement(move.times_s, move.values_deg + noise, count)


def still_set(rng: np.random.Generator, duration_s: float = 30.0) -> Movement:
    """No turn at all: tremor up to 2 degrees to each side at 4-6 Hz, drift, talking."""
    rate_hz = float(rng.choice([15, 30, 60]))
    t = np.arange(0, duration_s, 1 / rate_hz)
    tremor = rng.uniform(0, 2.0) * np.sin(2 * np.pi * rng.uniform(4, 6) * t + rng.uniform(0, 6))
    drift = rng.uniform(-4, 4) * t / duration_s
    talk = np.zeros_like(t) if rng.random() < 0.5 else _talking(rng, t)
    if np.abs(talk).max() > 0:
        tremor = 0.3 * tremor
    return Movement(t, tremor + drift + talk + rng.normal(0, 0.2, len(t)), 0)


def _talking(rng: np.random.Generator, t: Array) -> Array:
    """Small irregular movements of about 1.5 degrees, as of a head while talking."""
    out = np.zeros_like(t)
    for _ in range(5):
        out += rng.uniform(0.1, 0.35) * np.sin(
            2 * np.pi * rng.uniform(0.3, 3) * t + rng.uniform(0, 6)
        )
    return out
