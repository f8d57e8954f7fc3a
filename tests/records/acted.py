"""Sets of the invented clinic, acted by the rendered heads: exact truth with a webcam's errors.

What a set's samples are is the truth of a scenario (eyes that turn against the head about its own
neck, saccades, blinks, a target near by), with the errors that were measured on rendered clips put
upon it (``ui.bench.sets``). Nothing is drawn: that takes minutes a set, and thousands are needed.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any, Protocol

import numpy as np

from sample_clips.render import make_score
from sample_clips.scenario import Glance, Scenario
from sample_clips.score import LEAD_S, TAIL_S, Score
from tracker.sample import Sample
from ui.bench.sets import samples_of

RATE_HZ = 16
GLANCE_S, GLANCE_DEG = 0.5, 9.0
TURNS = ("turns-on-target", "turns-together")


class Manner(Protocol):
    """How somebody is on a day (see ``tests.records.clinic.Form``)."""

    amplitude_deg: float
    tempo: float
    away_right: float
    away_left: float
    light: float
    lost: float
    sway_mm: float


def acted(
    asked: Mapping[str, Any], length_s: float, manner: Manner, head: str, rng: np.random.Generator
) -> tuple[list[float], float, list[Sample]]:
    """A set of about so many seconds.

    Returns
    -------
    target_mm, lasts_s, samples
        Where the target is, how long the set is, and what was measured, from time 0 on.
    """
    bare = _scenario(asked, length_s, manner, head, rng)
    score = make_score(bare)
    glances = _glances(score, manner, rng) if bare.movement.kind == "turns" else []
    if glances:
        score = make_score(bare.model_copy(update={"glances": glances}))
    samples = [_as_seen(s, manner) for s in samples_of(score)]
    return list(score.steps[-1]["target_mm"]), score.end_s, samples


def _scenario(
    asked: Mapping[str, Any], length_s: float, manner: Manner, head: str, rng: np.random.Generator
) -> Scenario:
    turns = asked["exercise"] in TURNS
    bpm = asked.get("tempo_bpm")
    tempo = (bpm if isinstance(bpm, float) else 60.0) * (manner.tempo if turns else 1.0)
    repetitions = max(1, round((length_s - LEAD_S - TAIL_S) * tempo / 120.0))
    return Scenario.model_validate(
        {
            "name": "acted",
            "head": head,
            "exercise": asked["exercise"],
            "seed": int(rng.integers(1_000_000)),
            "setup": False,
            "posture": asked.get("posture") or "sitting",
            "eyes_with_head": asked["exercise"] == "turns-together",
            "camera": {"rate_hz": RATE_HZ},
            "movement": {
                "kind": "turns" if turns else "still",
                "amplitude_deg": manner.amplitude_deg * rng.normal(1.0, 0.04),
                "sway_mm": manner.sway_mm,
                "tempo_bpm": tempo,
                "repetitions": repetitions,
            },
        }
    )


def _glances(score: Score, manner: Manner, rng: np.random.Generator) -> list[Glance]:
    """Looks aside of half a second while the head is on a side, as often as the manner says."""
    times = np.arange(0.0, score.end_s - GLANCE_S, 1.0 / RATE_HZ)
    yaw = np.array([score.head_angles(float(t))[0] for t in times])
    found: list[tuple[float, int]] = []
    for side, share in ((1, manner.away_right), (-1, manner.away_left)):
        there = times[np.sign(np.round(yaw, 1)) == side]
        count = int(share * len(there) / (GLANCE_S * RATE_HZ))
        found += [(float(t), side) for t in (rng.choice(there, count) if len(there) else ())]
    return [
        Glance(at_s=at, lasts_s=GLANCE_S, yaw_deg=GLANCE_DEG * side, pitch_deg=0.0)
        for at, side in sorted(found)
    ]


def _as_seen(sample: Sample, manner: Manner) -> Sample:
    """In the light of that day; nothing where the face was lost in it."""
    if sample.time_s % 5.0 < 5.0 * manner.lost:
        return Sample(sample.time_s, light=manner.light, reason="no_face")
    return replace(sample, light=manner.light)
