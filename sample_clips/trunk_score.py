"""What the trunk does in a scenario: rises from a chair and bends to the floor, over time."""

from __future__ import annotations

import numpy as np

from sample_clips.angles import Array
from sample_clips.body_score import Cycles
from sample_clips.scenario import Movement
from sample_clips.target_score import smooth

#: Kinds of movement that are the trunk's.
TRUNK_KINDS = ("rise", "reach")
#: Shares of a rise's time: up, standing, down; the rest is sitting.
UP, STANDING, DOWN = 0.3, 0.2, 0.3
#: A head bows so far in a bend to the floor.
BOW_DEG = 25.0
#: On the way up and down the trunk leans forward, the head with it, and the head is bowed a
#: little (how far is this project's own choice).
LEAN_MM, LEAN_BOW_DEG = 220.0, 8.0


def trunk_mm(t: float, move: Movement, cycles: Cycles) -> Array:
    """Way of the neck point at a time: right, up and forward, in mm."""
    if move.kind == "rise":
        return np.array([0.0, _risen_mm(t, move, cycles), LEAN_MM * _leant(t, move, cycles)])
    return np.asarray(_bent(t, move, cycles) * move.amplitude_mm * np.array([0.0, -1.0, 0.4]))


def bowed_deg(t: float, move: Movement, cycles: Cycles) -> float:
    """How far the head is bowed with the trunk."""
    return BOW_DEG * _bent(t, move, cycles) + LEAN_BOW_DEG * _leant(t, move, cycles)


def _risen_mm(t: float, move: Movement, cycles: Cycles) -> float:
    """Height above sitting."""
    height = 0.0
    for number, (start, lasts, size) in enumerate(cycles):
        top = move.amplitude_mm * size / max(move.amplitude_deg, 1e-9)
        top *= 0.5 if number in move.half else 1.0
        u = (t - start) / lasts
        height += top * (smooth(u / UP) - smooth((u - UP - STANDING) / DOWN))
    return float(height)


def _leant(t: float, move: Movement, cycles: Cycles) -> float:
    """How far the trunk leans forward on the way up or down, 0 to 1."""
    if move.kind != "rise":
        return 0.0
    ways = [
        (u / UP, (u - UP - STANDING) / DOWN)
        for u in ((t - start) / lasts for start, lasts, _ in cycles)
    ]
    return float(sum(np.sin(np.pi * x) ** 2 for way in ways for x in way if 0 < x < 1))


def _bent(t: float, move: Movement, cycles: Cycles) -> float:
    """How far one is bent down, 0 upright to 1; after some bends one sits up half-way."""
    if move.kind != "reach":
        return 0.0
    level = 0.0
    for number, (start, lasts, _) in enumerate(cycles):
        u = (t - start) / lasts
        up_to = 0.5 if number in move.half else 0.0
        level += (1.0 - level) * smooth(u / UP)
        level += (up_to - level) * smooth((u - UP - STANDING) / DOWN)
    return float(level)
