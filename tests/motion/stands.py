"""Made-up stands, bends and sways of the head, in millimetres, whose number is known."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


def rise(u: Array | float) -> Array:
    """Minimum-jerk way from 0 to 1."""
    u = np.clip(u, 0.0, 1.0)
    return np.asarray(u**3 * (10 - 15 * u + 6 * u * u))


@dataclass
class Path:
    """A height over time, put together piece by piece; ends of pieces are exact truth."""

    at_s: float = 0.0
    level: float = 0.0
    pieces: list[tuple[float, float, float, float]] = field(default_factory=list)
    dips: list[tuple[float, float, float]] = field(default_factory=list)

    def wait(self, lasts_s: float) -> Path:
        self.at_s += lasts_s
        return self

    def go(self, level: float, lasts_s: float) -> Path:
        self.pieces.append((self.at_s, lasts_s, self.level, level))
        self.at_s += lasts_s
        self.level = level
        return self

    def dip(self, by: float, lasts_s: float) -> Path:
        """The trunk bends forward from now on, on top of what follows."""
        self.dips.append((self.at_s, lasts_s, by))
        return self

    def sampled(self, rate_hz: float) -> tuple[Array, Array]:
        t = np.arange(0.0, self.at_s, 1.0 / rate_hz)
        y = np.zeros_like(t)
        for start, lasts, a, b in self.pieces:
            y += (b - a) * rise((t - start) / lasts)
        for start, lasts, by in self.dips:
            u = (t - start) / lasts
            y -= np.where((u > 0) & (u < 1), by * np.sin(np.pi * np.clip(u, 0, 1)) ** 2, 0.0)
        return t, y


def stands(rng: np.random.Generator, hesitate: bool = False) -> tuple[Array, Array, int]:
    """A set of stands as people do them: uneven, slow or quick, with dips, drift and tremor."""
    rate_hz = float(rng.choice([15, 20, 30, 60]))
    height = rng.uniform(300, 450)
    slow = np.exp(rng.uniform(np.log(0.7), np.log(2.5)))
    count = int(rng.integers(1, 13))
    path = Path().wait(rng.uniform(0.7, 2))
    for _ in range(count):
        full = height * rng.uniform(0.9, 1.05)
        lasts = slow * rng.uniform(0.8, 1.25)
        path.dip(rng.uniform(0, 90), 0.8 * lasts)
        if hesitate and rng.random() < 0.6:
            stop = full * rng.uniform(0.3, 0.8)
            path.go(stop, 0.6 * lasts).wait(rng.uniform(0, 1.5))
            path.go(stop * (1 - 0.3 * rng.random()), 0.4).go(full, 0.7 * lasts)
        else:
            path.go(full, lasts)
        path.wait(rng.choice([0.0, 0.3, 1.0, 3.0]))
        lasts = slow * rng.uniform(0.8, 1.25)
        if hesitate and rng.random() < 0.5:
            stop = full * rng.uniform(0.55, 0.85)
            path.go(stop, 0.5 * lasts).wait(rng.uniform(0, 1.5))
        path.dip(rng.uniform(0, 60), 0.6 * lasts).go(rng.uniform(-15, 25), lasts)
        path.wait(rng.choice([0.0, 0.3, 1.0, 4.0]))
    t, y = path.wait(0.8).sampled(rate_hz)
    tremor = rng.uniform(0, 6) * np.sin(2 * np.pi * rng.uniform(3, 6) * t)
    return (
        t,
        y + tremor + rng.uniform(-0.6, 0.6) * t + rng.normal(0, rng.uniform(0, 5), len(t)),
        count,
    )


def sitting(rng: np.random.Generator) -> tuple[Array, Array]:
    """No stand: slumping, sitting tall, leaning forward and back, tremor, a false start."""
    rate_hz = float(rng.choice([15, 30, 60]))
    path = Path().wait(1.0)
    for _ in range(int(rng.integers(3, 9))):
        path.go(rng.uniform(-80, 45), rng.uniform(0.6, 3)).wait(rng.uniform(0, 3))
    path.go(0, 1.0).go(rng.uniform(60, 100), 0.6).go(0, 0.6).wait(2.0)
    t, y = path.sampled(rate_hz)
    return t, y + rng.normal(0, 5, len(t)) + 5 * np.sin(2 * np.pi * 5 * t)


def bends(rng: np.random.Generator, quickest_s: float = 0.8) -> tuple[Array, Array, int]:
    """Bends to the floor; the face is lost beyond a height of its own, or never."""
    rate_hz = float(rng.choice([15, 30, 60]))
    count = int(rng.integers(1, 15))
    lost_mm = rng.choice([-130.0, -200.0, -300.0, -1e9])
    path = Path().wait(rng.uniform(0.7, 2))
    for _ in range(count):
        path.go(-rng.uniform(420, 650), rng.uniform(quickest_s, 2.5)).wait(rng.uniform(0.2, 4))
        path.go(rng.uniform(-30, 10), rng.uniform(0.8, 2.5)).wait(rng.choice([0.5, 1.0, 3.0]))
    t, y = path.wait(0.5).sampled(rate_hz)
    seen = np.where(y < lost_mm, np.nan, y)
    return t, seen + rng.normal(0, rng.uniform(0, 5), len(t)), count


def sways(rng: np.random.Generator, floor: float) -> tuple[Array, Array, int]:
    """Sways to and fro, even and uneven, with ordinary sway and noise of depth on top."""
    rate_hz = float(rng.choice([15, 20, 30, 60]))
    size = np.exp(rng.uniform(np.log(1.8 * floor), np.log(200)))  # from end to end
    half_s = np.exp(rng.uniform(np.log(0.8), np.log(3.0)))
    count = 2 * int(rng.integers(2, 21))
    path = Path().wait(1.0)
    side = rng.choice([-1.0, 1.0])
    for k in range(count):
        side = -side
        lasts = half_s * rng.uniform(0.8, 1.25) * (0.5 if k == 0 else 1)
        path.go(side * size / 2 * rng.uniform(0.85, 1.15), lasts)
        path.wait(rng.choice([0.0, 0.0, 0.4, 1.0]))
    path.go(0.0, 0.5 * half_s).wait(1.0)
    t, z = path.sampled(rate_hz)
    ordinary = 4 * np.sin(0.6 * t + rng.uniform(0, 6)) + 2 * np.sin(2.0 * t)
    noise = rng.normal(0, rng.uniform(0, 0.05 * size), len(t))
    return t, z + ordinary + noise + rng.uniform(-0.3, 0.3) * t, count


def standing_still(rng: np.random.Generator, rms: float) -> tuple[Array, Array]:
    """Ordinary sway: noise below 0.5 Hz of a given RMS, and the camera's own."""
    rate_hz = float(rng.choice([15, 30, 60]))
    t = np.arange(0, 30, 1 / rate_hz)
    z = sum(
        np.sin(2 * np.pi * f * t + rng.uniform(0, 6.28)) / (1 + 4 * f)
        for f in rng.uniform(0.03, 0.5, 8)
    )
    z = (z - np.mean(z)) * rms / np.std(z)
    return t, z + rng.normal(0, 3, len(t))
