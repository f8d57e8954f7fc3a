"""What shoulders and arms do in a scenario: rolls and throws, as functions of time."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from sample_clips.bodies import HANGING, Arm, mirrored
from sample_clips.scenario import Movement

#: Kinds of movement that need a body.
BODY_KINDS = ("shoulders_back", "shoulders_forward", "toss")
#: A shoulder goes so far forward and back as a share of how far it is lifted.
ROUND_SHARE = 0.5
#: Forearms held out before a throw, and at the top of one; directions of the right arm.
READY = Arm((0.25, -0.95, 0.2), (-0.1, 0.05, 1.0))
HIGH = Arm((0.45, 0.3, 0.85), (-0.15, 1.0, 0.25))
#: A throw that stays below the eyes goes so far on that way; how far the other hand sinks.
LOW_SHARE, SINK_SHARE = 0.45, -0.08
#: Shares of a throw's time in which the hand goes up, and is down again.
UP, DOWN = 0.4, 0.9

Cycles = Sequence[tuple[float, float, float]]


def arms_at(t: float, move: Movement, cycles: Cycles, start_s: float) -> tuple[Arm, Arm]:
    """Right and left arm at a time; before ``start_s`` they hang."""
    if move.kind == "toss" and t >= start_s:
        return _throwing(t, move, cycles)
    if move.kind not in ("shoulders_back", "shoulders_forward"):
        return HANGING, mirrored(HANGING)
    way = 1.0 if move.kind == "shoulders_back" else -1.0
    rise = forward = 0.0
    for number, (start, lasts, _) in enumerate(cycles):
        u = (t - start) / lasts
        if 0.0 <= u < 1.0:
            size = move.amplitude_mm * (0.5 if number in move.half else 1.0)
            rise = size * float(0.5 - 0.5 * np.cos(2 * np.pi * u))
            forward = way * ROUND_SHARE * size * float(np.sin(2 * np.pi * u))
    right = Arm(HANGING.upper, HANGING.fore, rise, forward)
    return right, mirrored(right)


def _throwing(t: float, move: Movement, cycles: Cycles) -> tuple[Arm, Arm]:
    """Throws from hand to hand, the right one first."""
    shares = [0.0, 0.0]
    for number, (start, lasts, _) in enumerate(cycles):
        u = (t - start) / lasts
        if 0.0 <= u < 1.0:
            rise = _ease(u / UP) - _ease((u - UP) / (DOWN - UP))
            top = LOW_SHARE if number in move.half else 1.0
            shares[number % 2] = top * rise
            shares[1 - number % 2] = SINK_SHARE * rise
    right, left = (_between(READY, HIGH, share) for share in shares)
    return right, mirrored(left)


def _ease(x: float) -> float:
    x = min(max(x, 0.0), 1.0)
    return x * x * (3 - 2 * x)


def _between(a: Arm, b: Arm, share: float) -> Arm:
    """An arm on the way from one place to another (a little before the first, if below 0)."""

    def mix(p: tuple[float, float, float], q: tuple[float, float, float]) -> Sequence[float]:
        return [float(x + share * (y - x)) for x, y in zip(p, q, strict=True)]

    upper, fore = mix(a.upper, b.upper), mix(a.fore, b.fore)
    return Arm((upper[0], upper[1], upper[2]), (fore[0], fore[1], fore[2]))
