"""Sets drawn by lot, to be judged without drawing a picture: hundreds of them in minutes.

A set is a scenario without a set-up, named by its seed and number; the same name gives the
same set. What is done in it lies inside what its exercise asks for, so that whatever is
noticed beyond the truth's events is false.
"""

from __future__ import annotations

from typing import Any

import numpy as np

from sample_clips.scenario import CameraSpec, Scenario

#: What is done, in turns.
KINDS = (
    "turns",
    "nods",
    "turns-glancing",
    "turns-looking-down",
    "turns-shut",
    "turns-lagging",
    "jumps",
    "jumps-helped",
    "near-far",
    "rises",
    "sway-fore-aft",
    "sway-sideways",
    "stance-shut",
)
#: Few people: only the places of their eyes and their neck matter here.
_PEOPLE = ("anna", "bo")
_EXERCISE = {
    "turns": "turns-on-target",
    "nods": "nods-on-target",
    "jumps": "eyes-side-to-side",
    "near-far": "near-far",
    "rises": "sit-to-stand",
    "sway-fore-aft": "ankle-sway",
    "sway-sideways": "weight-shift",
    "stance-shut": "stand",
}
#: Looks and closures begin here, in seconds from the exercise's start, and don't meet.
_FIRST_S, _APART_S = 2.5, 4.5


def drawn_set(number: int, seed: int = 0) -> tuple[str, Scenario]:
    """Kind and scenario of a number."""
    rng = np.random.default_rng([seed, 1, number])
    kind = KINDS[number % len(KINDS)]
    rate = int(rng.choice([15, 24, 30, 30, 30, 60]))
    what = _EXERCISE.get(kind) or _EXERCISE[kind.partition("-")[0]]
    return kind, Scenario(
        name=f"set-{seed}-{number}",
        head=_PEOPLE[int(rng.integers(len(_PEOPLE)))],
        seed=int(rng.integers(1_000_000)),
        exercise=what,
        setup=False,
        camera=CameraSpec(rate_hz=rate),
        target_distance_mm=round(float(rng.uniform(500, 750))),
        **_done(kind, rng, rate),
    )


def _done(kind: str, rng: np.random.Generator, rate_hz: int) -> dict[str, Any]:
    """Movement and what else happens in a set of a kind."""
    if kind.startswith("turns"):
        # Eyes that lag in fast turns are off the target in truth, and rightly noticed.
        fastest = 0.6 if kind == "turns-lagging" else 1.6
        move = _head("turns", rng, rate_hz, (16.0, 19.0), fastest)
        return {"movement": move, **_eyes_in_turns(kind, rng)}
    if kind == "nods":
        return {"movement": _head("nods", rng, rate_hz, (11.5, 13.5))}
    if kind.startswith("jumps"):
        repetitions = int(rng.integers(8, 15))
        made: dict[str, Any] = {
            "movement": _move("jumps", rng, cycle_s=(1.8, 3.5), repetitions=repetitions)
        }
        if kind == "jumps-helped":
            jump = int(rng.integers(4, 2 * repetitions - 4))
            by_deg = round(float(rng.uniform(5.5, 9.0)), 1)
            made["head_helps"] = {"jumps": [jump, jump + 1], "by_deg": by_deg}
        return made
    if kind == "near-far":
        move = _move("near_far", rng, cycle_s=(3.0, 6.0), repetitions=int(rng.integers(5, 11)))
        near, far = float(rng.uniform(270, 330)), float(rng.uniform(560, 680))
        return {"movement": {**move, "near_mm": round(near), "far_mm": round(far)}}
    return _standing(kind, rng)


def _standing(kind: str, rng: np.random.Generator) -> dict[str, Any]:
    """Rises, sways that were asked for, and a stance with shut eyes."""
    standing = {"posture": "standing"}
    if kind == "rises":
        move = _move("rise", rng, cycle_s=(4.0, 7.0), repetitions=int(rng.integers(5, 11)))
        return {"movement": {**move, "amplitude_mm": round(float(rng.uniform(300, 450)))}}
    if kind == "stance-shut":
        move = _move("still", rng, cycle_s=(3.0, 3.0), repetitions=10)
        opens = [{"at_s": round(float(rng.uniform(8, 20)), 2), "lasts_s": 2.0}]
        sway = round(float(rng.uniform(0, 12)), 1)
        return {"movement": {**move, "sway_mm": sway}, "eyes": "closed", "opens": opens, **standing}
    along = kind == "sway-fore-aft"
    size = (35.0, 70.0) if along else (50.0, 90.0)
    move = _move(
        "sway_fore_aft" if along else "sway_sideways",
        rng,
        cycle_s=(2.5, 5.0),
        repetitions=int(rng.integers(6, 13)),
    )
    move["amplitude_mm"] = round(float(rng.uniform(*size)))
    return {"movement": move, **standing, "surface": "firm" if along else "soft"}


def _head(
    kind: str,
    rng: np.random.Generator,
    rate_hz: int,
    size_deg: tuple[float, float],
    fastest_hz: float = 1.6,
) -> dict[str, Any]:
    """Turns or nods; at 15 pictures a second no faster than one a second."""
    hz = float(rng.uniform(0.3, min(fastest_hz, 1.0 if rate_hz < 20 else 1.6)))
    cycle_s = 1.0 / hz
    move = _move(kind, rng, cycle_s=(cycle_s, cycle_s), repetitions=max(8, round(14.0 * hz)))
    return {**move, "amplitude_deg": round(float(rng.uniform(*size_deg)), 1)}


def _move(
    kind: str, rng: np.random.Generator, cycle_s: tuple[float, float], repetitions: int
) -> dict[str, Any]:
    return {
        "kind": kind,
        "tempo_bpm": round(120.0 / float(rng.uniform(*cycle_s)), 1),
        "repetitions": repetitions,
        "uneven": 0.06,
    }


def _eyes_in_turns(kind: str, rng: np.random.Generator) -> dict[str, Any]:
    """What the eyes do while the head turns."""
    times = [_FIRST_S + _APART_S * k + float(rng.uniform(0, 1.5)) for k in range(2)]
    if kind == "turns-lagging":
        return {"counter_turn": round(float(rng.uniform(0.7, 0.9)), 2)}
    if kind == "turns-shut":
        return {"shut": [_span(t, rng.uniform(1.1, 2.5)) for t in times]}
    if kind == "turns-glancing":
        side = float(rng.choice([-1.0, 1.0]))
        return {
            "glances": [
                {
                    **_span(t, rng.uniform(0.6, 1.4)),
                    "yaw_deg": s * rng.uniform(8, 13),
                    "pitch_deg": 0,
                }
                for t, s in zip(times, (side, -side), strict=True)
            ]
        }
    if kind == "turns-looking-down":
        return {
            "glances": [
                {**_span(t, rng.uniform(1.1, 2.0)), "yaw_deg": 0, "pitch_deg": -rng.uniform(20, 25)}
                for t in times
            ]
        }
    return {}


def _span(at_s: float, lasts_s: float) -> dict[str, float]:
    return {"at_s": round(at_s, 2), "lasts_s": round(float(lasts_s), 2)}
