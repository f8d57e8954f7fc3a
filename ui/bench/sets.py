"""``turnpost bench sets``: counts and events of hundreds of sets, with errors put upon the truth.

No picture is drawn: what a set's samples would be is its truth with errors as large as those
that were measured on rendered clips (``turnpost bench accuracy``), steady ones, slow ones and
fast ones. So it shows what the counters and the watchers make of such samples, not how well
pictures are measured.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable
from typing import Any

import numpy as np

from sample_clips.heads import make_head
from sample_clips.scenario import Scenario
from sample_clips.score import Score
from sample_clips.sets import drawn_set
from sample_clips.truth import events, stage_log, truth_row
from tracker.measure import MIN_OPEN_FOR_GAZE
from tracker.rotation import angles_from_direction, direction_from_angles, matrix_from_angles
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.stage import StageLog
from ui.bench.tally import SetResult, Tally

#: Errors put upon the truth: of the worst clips within 50 to 75 cm without glasses.
HEAD_FAST_DEG, HEAD_SLOW_DEG, HEAD_SLOPE = 0.1, 0.3, 0.02
EYE_FAST_DEG, EYE_SLOW_DEG, EYE_LEAK = 0.3, 0.7, 0.03
VERGENCE_FAST_DEG, VERGENCE_SLOW_DEG = 0.5, 0.4
PLACE_FAST_MM, PLACE_SLOW_MM = 0.7, 2.0
OPEN_FAST, OPEN_SLOW = 0.04, 0.04
#: How much less open an eye reads for each degree that it looks down (a look down by 22
#: degrees reads .75 on rendered heads).
OPEN_BY_LOOKING_DOWN = 0.011
#: A slow error forgets itself in this time.
SLOW_S = 1.5
#: Share of the frames that a camera drops, and how unevenly it delivers the others.
DROPPED, JITTER = 0.02, 0.1
#: What the set-up is said to have found.
_SETUP = {
    "calibration": "fitted",
    "gaze_error_deg": EYE_SLOW_DEG,
    "gaze_reach_deg": ((-26.0, 26.0), (-26.0, 20.0)),
}


def judge_set(scenario: Scenario) -> SetResult:
    """Put errors upon a set's truth and judge the samples as those of a clip are judged."""
    score = Score(scenario, make_head(scenario.head))
    steps = StageLog.model_validate(stage_log(score)).steps
    record = run_samples(samples_of(score), steps, SessionInfo(setup=dict(_SETUP)))
    exercise, truth = record.exercises[0], events(score)
    return SetResult(
        len(exercise.turns) // 2,
        int(truth["repetitions"]),
        [(e.code, e.start_s) for e in exercise.events],
        truth["events"],
        score.end_s - score.start_s,
        len(score.blinks),
    )


def samples_of(score: Score) -> list[Sample]:
    """The samples of a set: its truth at a camera's times, with errors upon it."""
    scenario = score.scenario
    rng = np.random.default_rng([scenario.seed, 2])
    times = _times(score.end_s, scenario.camera.rate_hz, rng)
    head_slope = 1.0 + HEAD_SLOPE * rng.standard_normal(3)
    head = _errors(times, 3, HEAD_FAST_DEG, HEAD_SLOW_DEG, rng)
    eyes = _errors(times, 2, EYE_FAST_DEG, EYE_SLOW_DEG, rng)
    leak = EYE_LEAK * rng.standard_normal(2)
    turned_in = _errors(times, 1, VERGENCE_FAST_DEG, VERGENCE_SLOW_DEG, rng)[:, 0]
    place = _errors(times, 3, PLACE_FAST_MM, PLACE_SLOW_MM, rng)
    opened = _errors(times, 1, OPEN_FAST, OPEN_SLOW, rng)[:, 0]
    out = []
    for k, time_s in enumerate(times):
        row: dict[str, Any] = truth_row(score, float(time_s))
        angles = [row[f"head_{a}_deg"] for a in ("yaw", "pitch", "roll")]
        yaw, pitch, roll = (float(v) for v in angles * head_slope + head[k])
        eye_yaw = row["eye_yaw_deg"] + leak[0] * row["head_yaw_deg"] + eyes[k, 0]
        eye_pitch = row["eye_pitch_deg"] + leak[1] * row["head_pitch_deg"] + eyes[k, 1]
        look = matrix_from_angles(yaw, pitch, roll) @ direction_from_angles(eye_yaw, eye_pitch)
        gaze_yaw, gaze_pitch = (float(v) for v in angles_from_direction(look))
        down = OPEN_BY_LOOKING_DOWN * max(-row["eye_pitch_deg"], 0.0)
        open_read = float(np.clip(row["eye_open"] * (1.0 - down) + opened[k], 0.0, 1.0))
        seen = open_read >= MIN_OPEN_FOR_GAZE
        eye = {
            "eye_yaw_deg": eye_yaw,
            "eye_pitch_deg": eye_pitch,
            "vergence_deg": row["vergence_deg"] + turned_in[k],
            "gaze_yaw_deg": gaze_yaw,
            "gaze_pitch_deg": gaze_pitch,
        }
        out.append(
            Sample(
                float(time_s),
                head_yaw_deg=yaw,
                head_pitch_deg=pitch,
                head_roll_deg=roll,
                **{
                    f"{what}_{a}_mm": row[f"{what}_{a}_mm"] + place[k, i]
                    for what in ("head", "neck")
                    for i, a in enumerate("xyz")
                },
                **(eye if seen else {}),
                eye_open=open_read,
                face_height_px=160.0,
                light=0.5,
                quality=0.9,
                reason="" if seen else "eyes_shut",
            )
        )
    return out


def _times(end_s: float, rate_hz: int, rng: np.random.Generator) -> np.ndarray:
    """When a camera delivers: unevenly, and not all."""
    ideal = np.arange(0.0, end_s, 1.0 / rate_hz)
    late = ideal + rng.uniform(0.0, JITTER / rate_hz, len(ideal))
    return late[rng.random(len(ideal)) >= DROPPED]


def _errors(
    times: np.ndarray, columns: int, fast: float, slow: float, rng: np.random.Generator
) -> np.ndarray:
    """Errors ``(n, columns)``: white ones, and ones that drift (first-order autoregressive)."""
    count = len(times)
    out = fast * rng.standard_normal((count, columns))
    drift = slow * rng.standard_normal(columns)
    for k in range(count):
        if k:
            kept = np.exp(-(times[k] - times[k - 1]) / SLOW_S)
            new = rng.standard_normal(columns)
            drift = kept * drift + slow * np.sqrt(1.0 - kept * kept) * new
        out[k] += drift
    return out


def sets_table(count: int, seed: int) -> Iterable[str]:
    """Lines of the table, one for each kind of set, then one for each kind of event.

    Parameters
    ----------
    count
        Number of sets.
    seed
        Other seeds draw other sets.
    """
    tally = Tally()
    for number in range(count):
        kind, scenario = drawn_set(number, seed)
        yield from tally.add(scenario.name, kind, judge_set(scenario))
    yield (
        f"{count} sets made up with seed {seed}, {dt.date.today():%Y-%m-%d}: truth with errors "
        "as measured on rendered heads, no pictures"
    )
    yield from tally.lines()
