"""People drawn by lot, each with one set-up and many short sets after it.

A clip of :mod:`sample_clips.matrix` has its own set-up, which takes longer to draw than its
set. Here a person is drawn once, within what the accuracy is aimed at, and does ten kinds of
sets before the same camera. The same seed and number give the same person and sets.
"""

from __future__ import annotations

import re
from typing import Any

import numpy as np

from sample_clips.matrix import FINE, Drawn, drawn
from sample_clips.scenario import Scenario

#: What a person does, one set after the other. The first is that of the film with the set-up.
KINDS = (
    "turns",
    "nods",
    "turns-lagging",
    "nods-fast",
    "jumps",
    "jumps-helped",
    "near-far",
    "turns-glancing",
    "turns-looking-down",
    "turns-shut",
)
_EXERCISE = {
    "turns": "turns-on-target",
    "nods": "nods-on-target",
    "jumps": "eyes-side-to-side",
    "near-far": "near-far",
}
#: Looks and closures begin here, in seconds from the exercise's start, and don't meet.
_FIRST_S, _APART_S, _EVENTS = 2.0, 3.2, 3
#: About how long a set lasts that nothing but its movement fills.
_LASTS_S = 8.0
#: How unevenly people repeat themselves, as a share of size and time.
_UNEVEN = 0.06


def sets_of(number: int, seed: int = 0, rate_hz: int = 30) -> list[Drawn]:
    """One person's sets; the first has the set-up, the others none of their own.

    Parameters
    ----------
    number, seed
        The same two give the same person and sets.
    rate_hz
        Pictures a second; below 20 nothing is done faster than once a second, as the accuracy
        statement has it.
    """
    base = drawn(number, seed, within=True)
    # What webcams mostly give; it also bounds how long drawing takes.
    camera = base.scenario.camera.model_copy(
        update={"width_px": 640, "height_px": 480, "rate_hz": rate_hz}
    )
    rng = np.random.default_rng([seed, number, len(KINDS)])
    return [_set(base, camera, k, kind, rng) for k, kind in enumerate(KINDS)]


def _set(base: Drawn, camera: Any, k: int, kind: str, rng: np.random.Generator) -> Drawn:
    person = base.scenario
    what = _EXERCISE.get(kind) or _EXERCISE[kind.partition("-")[0]]
    made = Scenario(
        name=f"{person.name}-{k}",
        head=person.head,
        seed=person.seed + k,
        camera=camera,
        light=person.light,
        light_from=person.light_from,
        target_distance_mm=person.target_distance_mm,
        exercise=what,
        setup=k == 0,
        **_done(kind, rng, 1.0 if camera.rate_hz < 20 else 2.5),
    )
    # The conditions name the size and rate that were drawn and not taken.
    words = f"480 lines, {base.conditions.split(', ', 1)[1]}"
    words = re.sub(r"\b\d+/s", f"{camera.rate_hz}/s", words)
    return Drawn(made, kind, words, FINE)


def _done(kind: str, rng: np.random.Generator, fastest_hz: float) -> dict[str, Any]:
    """Movement and what the eyes do in a set of a kind."""
    if kind.startswith("turns"):
        # Eyes that lag in fast turns are off the target in truth, and rightly noticed.
        most = 0.6 if kind == "turns-lagging" else min(1.3, fastest_hz)
        hz = float(rng.uniform(0.4, most))
        events = kind in ("turns-glancing", "turns-looking-down", "turns-shut")
        lasts_s = _FIRST_S + _APART_S * _EVENTS if events else _LASTS_S
        move = _move("turns", 1.0 / hz, lasts_s, amplitude_deg=rng.uniform(16.0, 19.0))
        return {"movement": move, **_eyes(kind, rng)}
    if kind.startswith("nods"):
        between = (1.3, 2.5) if kind == "nods-fast" else (0.4, 1.3)
        hz = min(float(rng.uniform(*between)), fastest_hz)
        return {"movement": _move("nods", 1.0 / hz, _LASTS_S, amplitude_deg=rng.uniform(11, 12.5))}
    if kind == "near-far":
        move = _move("near_far", float(rng.uniform(2.8, 4.0)), 14.0)
        near, far = float(rng.uniform(270, 330)), float(rng.uniform(560, 680))
        return {"movement": {**move, "near_mm": round(near), "far_mm": round(far)}}
    move = _move("jumps", float(rng.uniform(1.8, 2.8)), 14.0)
    if kind == "jumps":
        return {"movement": move}
    jump = int(rng.integers(3, 2 * move["repetitions"] - 4))
    by_deg = round(float(rng.choice([-1.0, 1.0]) * rng.uniform(5.5, 9.0)), 1)
    return {"movement": move, "head_helps": {"jumps": [jump, jump + 1], "by_deg": by_deg}}


def _move(kind: str, cycle_s: float, lasts_s: float, **size: float) -> dict[str, Any]:
    return {
        "kind": kind,
        "tempo_bpm": round(120.0 / cycle_s, 1),
        "repetitions": max(4, round(lasts_s / cycle_s)),
        "uneven": _UNEVEN,
        **{name: round(float(value), 1) for name, value in size.items()},
    }


def _eyes(kind: str, rng: np.random.Generator) -> dict[str, Any]:
    """What the eyes do while the head turns."""
    if kind == "turns-lagging":
        return {"counter_turn": round(float(rng.uniform(0.7, 0.9)), 2)}
    times = [_FIRST_S + _APART_S * k + float(rng.uniform(0, 0.8)) for k in range(_EVENTS)]
    if kind == "turns-shut":
        return {"shut": [_span(t, rng.uniform(1.05, 1.8)) for t in times]}
    if kind == "turns-glancing":
        side = float(rng.choice([-1.0, 1.0]))
        return {
            "glances": [
                {
                    **_span(t, rng.uniform(0.6, 1.4)),
                    "yaw_deg": round(side * (-1) ** k * float(rng.uniform(9, 13)), 1),
                    "pitch_deg": 0.0,
                }
                for k, t in enumerate(times)
            ]
        }
    if kind == "turns-looking-down":
        return {
            "glances": [
                {
                    **_span(t, rng.uniform(1.1, 1.8)),
                    "yaw_deg": 0.0,
                    "pitch_deg": round(-float(rng.uniform(20, 25)), 1),
                }
                for t in times
            ]
        }
    return {}


def _span(at_s: float, lasts_s: float) -> dict[str, float]:
    return {"at_s": round(at_s, 2), "lasts_s": round(float(lasts_s), 2)}
