"""What the head does by itself in a scenario: from extreme to extreme, and what goes wrong.

Its ways with a moving target are in :mod:`~sample_clips.target_score`, those with the trunk in
:mod:`~sample_clips.trunk_score`.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np

from sample_clips.angles import Array
from sample_clips.body_score import Cycles
from sample_clips.scenario import HeadHelp, Movement, Span
from sample_clips.target_score import Jumps, smooth

#: How long a head takes to turn along with a jump of the eyes.
HELP_RISE_S = 0.35
#: A head that turns in place of tilting, or tilts again, changes over so long.
CHANGED_S = 0.4
#: A chin that sinks, and how fast.
CHIN_DEG, CHIN_S = 22.0, 0.5

#: Times and angles between which a movement goes.
Knots = Sequence[tuple[float, float]]


def knots_of(cycles: Cycles) -> Knots:
    """Times and angles of rest and of every extreme; at rest where cycles don't meet."""
    knots, last_s = [(cycles[0][0], 0.0)], 0.0
    for start, lasts, size in cycles:
        ended = knots[-1][0] + 0.25 * last_s
        if start > ended + 0.05:
            knots += [(ended, 0.0), (start, 0.0)]
        knots += [(start + 0.25 * lasts, size), (start + 0.75 * lasts, -size)]
        last_s = lasts
    return [*knots, (cycles[-1][0] + cycles[-1][1], 0.0)]


def through(knots: Knots, t: float) -> float:
    """From rest through each extreme and back to rest, in half cosines.

    Even cycles make a sine; uneven ones meet without a jump in speed.
    """
    if not knots[0][0] < t < knots[-1][0]:
        return 0.0
    before, after = next(pair for pair in pairwise(knots) if t <= pair[1][0])
    way = 0.5 - 0.5 * np.cos(np.pi * (t - before[0]) / (after[0] - before[0]))
    return float(before[1] + way * (after[1] - before[1]))


def unrest(t: float, waves: Array) -> tuple[float, float, float]:
    """Yaw, pitch and roll of a head that is asked to be still."""
    yaw = 0.25 * np.sin(0.9 * t + waves[0]) + 0.1 * np.sin(2.3 * t + waves[1])
    return yaw, 0.25 * np.sin(0.8 * t + waves[2]), 0.15 * np.sin(0.7 * t + waves[3])


def wandering(u: float, size_deg: float) -> tuple[float, float, float]:
    """Yaw, pitch and roll of a head that goes anywhere, ``u`` seconds after it began."""
    return (
        size_deg * (0.6 * np.sin(1.1 * u) + 0.4 * np.sin(2.9 * u)),
        size_deg * (0.3 * np.sin(1.7 * u + 1) + 0.2 * np.sin(0.9 * u)),
        size_deg * 0.2 * np.sin(1.3 * u),
    )


def soft_ends(t: float, cycles: Cycles) -> float:
    """Soft start and end of a movement, 0 to 1."""
    first, last = cycles[0][0], cycles[-1][0] + cycles[-1][1]
    return smooth((t - first) / 0.3) * smooth((last - t) / 0.3)


def share_turned(t: float, move: Movement, cycles: Cycles) -> float:
    """How far a movement that should be a tilt is a turn by now, 0 to 1."""
    if not move.turned:
        return 0.0
    half_s = 0.5 * CHANGED_S
    return sum(
        smooth((t - start + half_s) / CHANGED_S) - smooth((t - start - lasts + half_s) / CHANGED_S)
        for start, lasts, _ in (cycles[n] for n in move.turned)
    )


def helped_deg(t: float, helps: HeadHelp | None, jumps: Jumps) -> float:
    """How far the head turns along with jumps that are the eyes' alone."""
    if helps is None:
        return 0.0
    helped = 0.0
    for number in helps.jumps:
        start, side = jumps[number]
        until = jumps[number + 1][0] if number + 1 < len(jumps) else start + 1.0
        rise = smooth((t - start) / HELP_RISE_S) - smooth((t - until) / HELP_RISE_S)
        helped += side * helps.by_deg * rise
    return helped


def chin_deg(t: float, drops: Sequence[Span], start_s: float) -> float:
    """Pitch of a chin that sinks for a while; ``start_s`` is the exercise's."""
    return -CHIN_DEG * sum(
        smooth((t - start_s - s.at_s) / CHIN_S)
        - smooth((t - start_s - s.at_s - s.lasts_s) / CHIN_S)
        for s in drops
    )
