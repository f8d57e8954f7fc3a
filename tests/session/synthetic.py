"""Made-up sessions: samples with known turns, glances, head movements and blinks."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from math import nan

import numpy as np

from tracker.sample import Sample
from tracker.session.stage import Step

FROM_S, TO_S = 2.0, 22.0
#: What a set-up found that read the gaze well: without one no verdict is given on the gaze.
WELL_READ = {"gaze_error_deg": 0.5}
Glances = Iterable[tuple[float, float, float]]


def turns_samples(
    *,
    rate_hz: float = 30.0,
    f_hz: float = 0.5,
    amplitude: float = 18.0,
    to_s: float = TO_S,
    glances: Glances = (),
    shut: Iterable[tuple[float, float]] = (),
    lost: Iterable[tuple[float, float]] = (),
    offset: Callable[[float], float] = lambda _: 0.0,
    noise: float = 0.3,
    number: int = 0,
) -> list[Sample]:
    """Head turns from 2 s on, gaze on a target 600 mm away except in glances (start, end, deg)."""
    rng = np.random.default_rng(number)
    out = []
    for t in np.arange(0.0, to_s, 1.0 / rate_hz):
        if any(a <= t < b for a, b in lost):
            out.append(Sample(t, light=0.5, reason="no_face"))
            continue
        yaw = amplitude * np.sin(2 * np.pi * f_hz * (t - FROM_S)) if t >= FROM_S else 0.0
        x = 100 * np.sin(np.radians(yaw))
        away = sum(d for a, b, d in glances if a <= t < b) + offset(t)
        is_shut = any(a <= t < b for a, b in shut)
        e = rng.normal(0, noise, 3)
        out.append(
            Sample(
                t,
                head_yaw_deg=yaw + 0.3 * e[0],
                head_pitch_deg=0.0,
                head_roll_deg=0.0,
                head_x_mm=x,
                head_y_mm=0.0,
                head_z_mm=0.0,
                gaze_yaw_deg=nan if is_shut else np.degrees(np.arctan2(-x, 600)) + away + e[1],
                gaze_pitch_deg=nan if is_shut else e[2],
                eye_open=0.05 if is_shut else 0.9,
                light=0.5,
            )
        )
    return out


def jump_samples(
    head: Callable[[float], float] = lambda _: 0.0,
    *,
    rate_hz: float = 30.0,
    to_s: float = TO_S,
    noise: float = 0.2,
    number: int = 0,
) -> list[Sample]:
    """Eye jumps of 8 degrees to each side, one a second, while the head does what it does."""
    rng = np.random.default_rng(number)
    out = []
    for t in np.arange(0.0, to_s, 1.0 / rate_hz):
        since = t - FROM_S - 0.3  # eyes take a moment to go
        side = 0.0 if since < 0 else (8.0 if int(since) % 2 == 0 else -8.0)
        e = rng.normal(0, noise, 3)
        out.append(
            Sample(
                t,
                head_yaw_deg=head(t) + e[0],
                head_pitch_deg=e[1],
                head_roll_deg=0.0,
                eye_yaw_deg=side - head(t) + 2 * e[2],
                eye_pitch_deg=0.0,
                eye_open=0.9,
            )
        )
    return out


def steps(exercise: str = "turns-on-target", to_s: float = TO_S, **extra: object) -> list[Step]:
    """A rest, then the exercise."""
    return [
        Step(from_s=0.0, to_s=FROM_S, step="rest", target_mm=(0.0, 0.0, 600.0)),
        Step.model_validate(
            {
                "from_s": FROM_S,
                "to_s": to_s,
                "step": "exercise",
                "exercise": exercise,
                "tempo_bpm": 60.0,
                "target_mm": (0.0, 0.0, 600.0),
                **extra,
            }
        ),
    ]
