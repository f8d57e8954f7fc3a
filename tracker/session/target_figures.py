"""Figures of exercises with a target that moves: who went first, and jumps while following."""

from __future__ import annotations

import itertools
from collections import Counter
from collections.abc import Sequence
from math import isfinite
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.exercises.catalogue import Exercise
from tracker.exercises.counters import eyes_usable
from tracker.exercises.order import APART_S, leads_s, order_of
from tracker.exercises.stays import at, stays_of
from tracker.motion.turning import Turn
from tracker.sample import Sample
from tracker.session.figures import figure

#: Smaller jumps are lost in the error of a reading from picture to picture (own choice;
#: a camera's rate can't carry how fast they are).
LEAST_JUMP_DEG = 2.0
#: The time before and after a jump that is compared; a hole in it longer than two pictures of
#: a slow camera hides a jump (this project's own choice).
SIDE_S, HOLE_S = 0.12, 0.15
#: Fewer samples tell nothing (this project's own choice).
LEAST_SAMPLES = 12
#: Two jumps lie at least so far apart: one can't begin another saccade sooner (the
#: shortest usual latency of one is 100 ms) (this project's own choice).
BETWEEN_S = 0.15
#: Where the target has gone less far the jump was to where it had been before, or from there (this
#: project's own choice).
LEAST_ASKED_DEG = 3.0

Array = NDArray[np.float64]


def target_figures(
    exercise: Exercise, samples: Sequence[Sample], turns: Sequence[Turn]
) -> dict[str, Any]:
    """What an exercise with a moving target has besides; nothing for any other."""
    if exercise.target == "places":
        return {"order": order_figures(samples, turns)}
    if exercise.target == "sweep":
        return {"catch_up_jumps": jump_figures(samples)}
    return {}


def reach_of(samples: Sequence[Sample], turns: Sequence[Turn], *, up: bool) -> dict[int, float]:
    """How far jumps between two targets went, as a share of the way that was asked for then.

    Parameters
    ----------
    samples, turns
        Those of the set, with where the target was.
    up
        Whether the targets lie above each other.

    Returns
    -------
    dict
        Number of a turn -> share. The first one is left out, as nobody knows where it began,
        and so is a turn before which the target had not moved on.
    """
    places = [s.target_pitch_deg if up else s.target_yaw_deg for s in samples]
    stays = stays_of(np.array([s.time_s for s in samples]), np.array(places))
    found = {}
    for before, turn in itertools.pairwise(turns):
        one, other = at(stays, before.peak_s), at(stays, turn.peak_s)
        if one is None or other is None:
            break
        asked = abs(stays[other].deg - stays[one].deg)
        if asked >= LEAST_ASKED_DEG:
            # Between the levels at which they rested: from extreme to extreme is noise besides.
            found[turn.index] = (before.amplitude_deg + turn.amplitude_deg) / asked
    return found


def order_figures(samples: Sequence[Sample], turns: Sequence[Turn]) -> dict[str, Any]:
    """In how many turns the eyes went first, the head, or both together; and by how long.

    ``lead_s`` is how long before the head the eyes went: median, spread and by side.
    """
    leads = leads_s(samples, turns)
    counts = Counter(order_of(lead) for lead in leads)
    seen = any(isfinite(lead) for lead in leads)
    reason = None if seen else "the beginning of eyes and head was never seen together"
    lead = figure(leads, reason or "")
    lead["by_side"] = {
        side: figure(
            (v for v, t in zip(leads, turns[1:], strict=True) if t.side == side), "not seen"
        )
        for side in sorted({t.side for t in turns[1:]})
    }
    names = ("eyes_first", "together", "head_first")
    return {
        **{n: counts[n] if seen else None for n in names},  # type: ignore[index]
        "not_told": counts["not_told"],
        "lead_s": lead,
        "apart_s": APART_S,
        "reason": reason,
    }


def jump_figures(samples: Sequence[Sample]) -> dict[str, Any]:
    """How often the eyes jumped to catch up with a target that they follow. No diagnosis."""
    kept = [s for s in samples if eyes_usable(s) and isfinite(s.gaze_yaw_deg)]
    kept = [s for s in kept if isfinite(s.target_yaw_deg)]
    note = {"least_deg": LEAST_JUMP_DEG, "note": "not diagnostic"}
    if len(kept) < LEAST_SAMPLES:
        return {"value": None, "reason": "gaze and target were not measured together", **note}
    times = np.array([s.time_s for s in kept])
    gaze = np.array([s.gaze_yaw_deg for s in kept])
    target = np.array([s.target_yaw_deg for s in kept])
    return {"value": count_jumps(times, gaze, target), "reason": None, **note}


def count_jumps(times_s: Array, gaze_deg: Array, target_deg: Array) -> int:
    """Jumps of the gaze the way that the target goes, beyond what the target itself went.

    Parameters
    ----------
    times_s, gaze_deg, target_deg
        ``(n,)`` samples in which both were measured.

    Returns
    -------
    int
        Jumps of :data:`LEAST_JUMP_DEG` and more. Where samples are missing none is seen.
    """
    steps = np.zeros(len(times_s))
    for k, time_s in enumerate(times_s):
        first, last = np.searchsorted(times_s, [time_s - SIDE_S, time_s + SIDE_S])
        if first == k or last <= k + 1 or np.diff(times_s[first:last]).max() > HOLE_S:
            continue
        gaze, target = (
            float(np.median(v[k + 1 : last]) - np.median(v[first:k]))
            for v in (gaze_deg, target_deg)
        )
        steps[k] = np.sign(target) * (gaze - target)
    jumps = 0
    while steps.max(initial=0.0) >= LEAST_JUMP_DEG:
        jumps += 1
        at = times_s[int(steps.argmax())]
        steps[np.abs(times_s - at) < BETWEEN_S] = 0.0
    return jumps
