"""Made-up shoulders and hands, as columns of a trace (logic only)."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from tracker.sample import Sample

Array = NDArray[np.float64]
#: Landmarks of a still body wander by so much (measured on rendered bodies), in mm.
NOISE_MM = 1.5
#: A body is looked at about so often.
RATE_HZ = 15.0


def samples_of(
    times: Array,
    lift: Callable[[Array], Array],
    rng: np.random.Generator,
    *,
    forward: Callable[[Array], Array] = np.zeros_like,
    tilt: Callable[[Array], Array] = np.zeros_like,
    looked: Callable[[Array], Array] | None = None,
) -> list[Sample]:
    """Samples of a lift of both shoulders, of what comes forward, and of one higher than the other.

    ``looked`` tells when a body was looked for; elsewhere all is empty.
    """
    noise = rng.normal(0.0, NOISE_MM, (4, len(times)))
    half = 160.0 + 0.15 * forward(times)  # 30 mm nearer at 600 mm: 5 %, less what turns in
    right = lift(times) + tilt(times) - 170.0
    left = lift(times) - tilt(times) - 170.0
    seen = np.ones(len(times), bool) if looked is None else looked(times)
    return [
        Sample(
            float(t),
            head_yaw_deg=0.0,
            head_pitch_deg=0.0,
            head_roll_deg=0.0,
            eye_open=1.0,
            **(
                {
                    "body_seen": 1.0,
                    "shoulder_right_x_mm": half[k] + noise[0, k],
                    "shoulder_left_x_mm": -half[k] + noise[1, k],
                    "shoulder_right_y_mm": right[k] + noise[2, k],
                    "shoulder_left_y_mm": left[k] + noise[3, k],
                }
                if seen[k]
                else {}
            ),
        )
        for k, t in enumerate(times)
    ]


def rolls(
    rng: np.random.Generator, way: float = 1.0, hesitate: bool = False
) -> tuple[list[Sample], int]:
    """A set of rolls: small or large, slow or quick, uneven, with pauses and a slow drift.

    Heights are those of landmarks, which follow about half of the true lift.
    """
    count = int(rng.integers(2, 12))
    size = np.exp(rng.uniform(np.log(18.0), np.log(45.0)))
    lasts = np.exp(rng.uniform(np.log(1.6), np.log(5.0)))
    now, spans = rng.uniform(0.8, 2.0), []
    for _ in range(count):
        long = lasts * rng.uniform(0.8, 1.25)
        spans.append((now, long, size * rng.uniform(0.75, 1.2)))
        now += long + rng.choice([0.0, 0.0, 0.3, 1.0])
    drift = rng.uniform(-0.3, 0.3)
    stop = rng.uniform(0.2, 0.3) if hesitate else 0.0

    def phase(t: Array, start: float, long: float) -> Array:
        u = np.clip((t - start) / long, 0.0, 1.0)
        # Who hesitates stands still for a fifth of the time, half-way up.
        return u if not stop else np.interp(u, [0, stop, stop + 0.2, 1], [0, 0.25, 0.25, 1])

    def lift(t: Array) -> Array:
        up = sum(h * (0.5 - 0.5 * np.cos(2 * np.pi * phase(t, a, b))) for a, b, h in spans)
        breath = 2.0 * np.sin(2 * np.pi * 0.25 * t)
        return np.asarray(up + breath + drift * t)

    def forward(t: Array) -> Array:
        return np.asarray(
            way * sum(1.3 * h * np.sin(2 * np.pi * phase(t, a, b)) for a, b, h in spans)
        )

    times = np.arange(0.0, now + 1.0, 1.0 / RATE_HZ)
    return samples_of(times, lift, rng, forward=forward), count


def tosses(
    rng: np.random.Generator, high: bool = True, floor_mm: float = -450.0
) -> tuple[list[Sample], int]:
    """Throws from hand to hand; hands below ``floor_mm`` are out of the picture."""
    count = int(rng.integers(4, 21))
    each = rng.uniform(0.8, 2.0)
    rest = rng.uniform(-480.0, -350.0)
    top = rng.uniform(40.0, 150.0) if high else rng.uniform(-250.0, -180.0)
    rise_s = rng.uniform(0.3, 0.5) if high else rng.uniform(0.5, 0.7)
    side, now, spans = int(rng.integers(2)), rng.uniform(0.8, 1.5), []
    for _ in range(count):
        spans.append((now, side, top + rng.uniform(-20, 20)))
        side, now = 1 - side, now + each * rng.uniform(0.85, 1.2)
    times = np.arange(0.0, now + 0.8, 1.0 / RATE_HZ)
    heights = np.full((2, len(times)), rest)
    for start, hand, reach in spans:
        u = np.clip((times - start) / (2 * rise_s), 0.0, 1.0)
        wave = np.sin(np.pi * u) ** 2
        heights[hand] += (reach - rest) * wave
        heights[1 - hand] -= 30.0 * wave
    heights += rng.normal(0.0, 2.0, heights.shape)
    made = []
    for k, t in enumerate(times):
        values = {"body_seen": 1.0, "head_yaw_deg": 0.0, "head_pitch_deg": 0.0, "eye_open": 1.0}
        for hand, name in enumerate(("right", "left")):
            below = heights[hand, k] < floor_mm
            values[f"wrist_{name}_y_mm"] = max(heights[hand, k], floor_mm)
            if not below:
                values[f"wrist_{name}_x_mm"] = 200.0 - 400.0 * hand
        made.append(Sample(float(t), **values))
    return made, count
