"""The figures of what is done with shoulders, hands and the whole body."""

from __future__ import annotations

import itertools
from collections import Counter
from collections.abc import Iterable, Sequence
from typing import Any

from tracker.body.rolls import direction_of
from tracker.exercises.catalogue import Exercise
from tracker.exercises.counters import channel_of
from tracker.exercises.hands import arm_of_bend, head_with_throw, throw_height_mm
from tracker.exercises.near_hand import NOTE as HAND_NOTE
from tracker.exercises.near_hand import eye_turns, eyes_followed, is_of_hand, near_hand
from tracker.motion.turning import Turn
from tracker.sample import Sample
from tracker.session import figures

SHOULDERS_NOTE = (
    "of the landmarks of the shoulders, which follow about half of the true lift "
    "(on rendered bodies)"
)
DIRECTION_NOTE = (
    "from the width between the shoulders as it is seen; tried on rendered bodies, not on people"
)
THROW_NOTE = (
    "above the eyes, of something let go where the hand is fastest; from the wrists, not the "
    "object, as if they were as far from the camera as the eyes"
)
ARM_NOTE = "by the lower wrist, where both were seen in the bend"
HEAD_NOTE = "nods or turns of the head while an object flies; the object itself is not seen"
EYES_REASON = "the object is not seen, so nothing tells where the eyes should be"


def body_figures(
    exercise: Exercise, turns: Sequence[Turn], samples: Sequence[Sample]
) -> dict[str, Any]:
    """Figures of a movement from place to place, and what else its channel tells."""
    channel = exercise.channel
    # Each bend, and each throw, is a cycle of its own.
    by_cycle = channel == "head_reach" or channel_of(channel).turns_each == 1
    out = figures.place_figures(turns, by_cycle=by_cycle)
    if channel_of(channel).body:
        # Shoulders have no rest that is known, nor have two hands: only the way is told.
        del out["amplitude_mm"]
    if channel == "shoulder_lift":
        out["note"] = SHOULDERS_NOTE
        rolls = [direction_of(samples, a.start_s, b.peak_s) for a, b in _rolls(turns)]
        out["direction"] = _counted(rolls, ("back", "forward"), "not_told", DIRECTION_NOTE)
    if channel == "hand_throw":
        heights = figures.by_side(
            turns, lambda t: throw_height_mm(_around(samples, t), t), "no throw was counted"
        )
        out["throw_height_mm"] = heights | {"note": THROW_NOTE}
        heads = [head_with_throw(_around(samples, t), t) for t in turns]
        out["head_follows"] = _counted(heads, ("followed", "stayed"), "not_told", HEAD_NOTE)
        out["eyes_follow"] = {"value": None, "reason": EYES_REASON}
    if channel == "head_reach":
        arms = [arm_of_bend(_around(samples, t), t) for t in turns]
        out["arm"] = _counted(arms, ("right", "left"), "not_seen", ARM_NOTE)
    return out


def _rolls(turns: Sequence[Turn]) -> list[tuple[Turn, Turn]]:
    """Each way up with the way down after it."""
    return [(a, b) for a, b in itertools.pairwise(turns) if a.side == "up"]


def _counted(
    found: Iterable[str | None], names: Sequence[str], unknown: str, note: str
) -> dict[str, Any]:
    """How often each was found, and how often none could be told."""
    counts = Counter(f if f is not None else unknown for f in found)
    return {name: counts[name] for name in (*names, unknown)} | {"note": note}


def _around(samples: Sequence[Sample], turn: Turn) -> list[Sample]:
    return [s for s in samples if turn.start_s - 1.0 <= s.time_s <= turn.peak_s + 1.0]


def hand_figures(
    samples: Sequence[Sample], turns: Sequence[Turn], *, vergence: bool
) -> dict[str, Any]:
    """What the hand did in near and far, whether the eyes went along, what the count rests on.

    Parameters
    ----------
    samples, turns
        Those of the set.
    vergence
        Whether the eyes' turning in was measured.
    """
    found, followed = near_hand(samples), eyes_followed(samples)
    counted = {
        "hand": any(is_of_hand(t) for t in turns),
        "vergence": any(not is_of_hand(t) for t in turns),
    }
    if not turns:
        # Then it says what would have told of some.
        counted = {"hand": found.cycles is not None, "vergence": vergence}
    return {
        "cycles": found.cycles,
        "side": found.side,
        "vergence_cycles": len(eye_turns(samples)) // 2 if vergence else None,
        "counted_from": [name for name, has in counted.items() if has],
        "reason": found.reason or None,
        "note": HAND_NOTE,
        "eyes_followed": {
            "value": followed.followed,
            "vergence_change_deg": followed.change_deg,
            "error_deg": followed.error_deg,
            "reason": followed.reason or None,
        },
    }
