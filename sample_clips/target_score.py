"""Targets that move, and what head and eyes do with them: part of a score.

Where a target is comes from the same extremes as the head's movement, so that both are
known at any moment. The stage log's track is that of the clip; the program's own targets
need not go the same way.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Any

from sample_clips.scenario import Movement

#: Kinds whose target goes to and fro, and all whose target moves in a way of its own.
SWEEPS = ("turns_x2", "nods_x2", "follow")
TARGET_KINDS = (*SWEEPS, "eyes_then_head")
#: How long a head takes to a mark.
TO_MARK_S = 0.5
#: Rows of a track lie so far apart.
ROW_S = 0.02
#: From here on the eyes are clearly first, or the head is (this project's own choice).
APART_S = 0.1

Jumps = Sequence[tuple[float, int]]


def smooth(x: float) -> float:
    """Minimum-jerk rise from 0 to 1."""
    x = min(max(x, 0.0), 1.0)
    return x**3 * (10 - 15 * x + 6 * x * x)


def target_angles(move: Movement, share: float) -> tuple[float, float]:
    """Yaw and pitch of a sweeping target from the middle, at a share (-1 to 1) of the way."""
    against = move.kind != "follow" and not move.with_target
    angle = move.target_deg * (-share if against else share)
    return (0.0, angle) if move.kind == "nods_x2" else (angle, 0.0)


def head_share(move: Movement, share: float) -> tuple[float, float]:
    """Yaw and pitch of the head while the target sweeps."""
    if move.kind == "follow" and not move.with_target:
        return 0.0, 0.0
    angle = move.amplitude_deg * share
    return (0.0, angle) if move.kind == "nods_x2" else (angle, 0.0)


def stepped(move: Movement, time_s: float, start_s: float) -> float:
    """The time whose place the eyes look at: now, or where they landed last.

    Eyes that follow in steps stay for a while and then jump to where the target is.
    """
    if not move.steps_s or time_s < start_s:
        return time_s
    number = int((time_s - start_s) / move.steps_s)
    landed = start_s + number * move.steps_s
    on_the_way = smooth((time_s - landed) / 0.04)
    before = landed - move.steps_s if number else start_s
    return before + on_the_way * (landed - before)


def head_to_marks(move: Movement, jumps: Jumps, time_s: float) -> float:
    """Yaw of a head that goes to each mark, before or after the eyes."""
    yaw, at = 0.0, 0.0
    for start, side in jumps:
        goal = side * move.amplitude_deg
        yaw += smooth((time_s - start - move.head_after_s) / TO_MARK_S) * (goal - at)
        at = goal
    return yaw


def eyes_wait_s(move: Movement) -> float:
    """How much later the eyes go than usual, so that a head that goes first sees its mark."""
    return max(-move.head_after_s, 0.0) if move.kind == "eyes_then_head" else 0.0


def order(move: Movement, turns: int) -> dict[str, int]:
    """How many turns the eyes went first in, the head, or both together."""
    after = move.head_after_s
    name = "eyes_first" if after >= APART_S else "head_first" if after <= -APART_S else "together"
    return {"eyes_first": 0, "together": 0, "head_first": 0} | {name: turns}


def wrong_throughout(move: Movement) -> str:
    """Code of what is done wrongly in the whole set, or empty."""
    if move.amplitude_deg < move.least_deg:
        return "too_small"
    if move.kind in ("turns_x2", "nods_x2") and move.with_target:
        return "head_with_target"
    if move.kind == "follow" and move.with_target:
        return "head_moved"
    if move.kind == "eyes_then_head":
        found = order(move, 1)
        return "head_first" if found["head_first"] else "moved_together" * found["together"]
    return ""


def landings_s(move: Movement, start_s: float, end_s: float) -> list[float]:
    """When eyes that follow in steps begin to jump; none where they follow smoothly."""
    count = int((end_s - start_s) / move.steps_s) if move.steps_s else 0
    return [start_s + k * move.steps_s for k in range(1, count + 1)]


def followed_rows(places: Sequence[tuple[float, Any]]) -> list[list[float]]:
    """Rows of a track; those between which it stands still are left out."""
    rows = [[round(t, 4), *(round(float(v), 3) for v in p)] for t, p in places]
    kept = rows[:1]
    for (before, here), after in zip(pairwise(rows), rows[2:], strict=False):
        if not before[1:] == here[1:] == after[1:]:
            kept.append(here)
    return [*kept, rows[-1]]
