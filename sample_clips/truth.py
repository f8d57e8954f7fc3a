"""What was true in a clip: trace rows, stage log, counts and events."""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import Any

import numpy as np

from sample_clips.angles import Array, yaw_pitch
from sample_clips.bodies import ELBOW, SHOULDER, WRIST, Body
from sample_clips.head_score import HELP_RISE_S
from sample_clips.heads import Attitude
from sample_clips.score import Score
from sample_clips.target_score import order, wrong_throughout
from sample_clips.trunk_score import DOWN, STANDING, UP

#: The columns of a trace, restated: this package knows none of the others.
COLUMNS = (
    "time_s",
    "head_yaw_deg",
    "head_pitch_deg",
    "head_roll_deg",
    "head_x_mm",
    "head_y_mm",
    "head_z_mm",
    "neck_x_mm",
    "neck_y_mm",
    "neck_z_mm",
    "head_yaw_speed_deg_s",
    "head_pitch_speed_deg_s",
    "eye_yaw_deg",
    "eye_pitch_deg",
    "vergence_deg",
    "gaze_yaw_deg",
    "gaze_pitch_deg",
    "target_yaw_deg",
    "target_pitch_deg",
    "eye_open",
    "face_height_px",
    "light",
    "quality",
    "step",
    "reason",
    "body_seen",
    "shoulder_right_x_mm",
    "shoulder_right_y_mm",
    "shoulder_left_x_mm",
    "shoulder_left_y_mm",
    "elbow_right_x_mm",
    "elbow_right_y_mm",
    "elbow_left_x_mm",
    "elbow_left_y_mm",
    "wrist_right_x_mm",
    "wrist_right_y_mm",
    "wrist_left_x_mm",
    "wrist_left_y_mm",
)


def truth_row(score: Score, time_s: float) -> dict[str, float | str]:
    """Exact values of the trace columns at a time; what a renderer can't know is left out."""
    attitude, head = score.attitude(time_s), score.head
    rotation = attitude.rotation
    eyes = head.in_space(head.eyes_mm, attitude)
    middle = eyes.mean(axis=0)
    mean_look = attitude.look.mean(axis=0)
    eye_yaw, eye_pitch = yaw_pitch(mean_look)
    gaze_yaw, gaze_pitch = yaw_pitch(rotation @ mean_look)
    cosine = float(np.clip(attitude.look[0] @ attitude.look[1], -1.0, 1.0))
    before, after = score.head_angles(time_s - 5e-4), score.head_angles(time_s + 5e-4)
    step = _step_at(score, time_s)
    row: dict[str, float | str] = {
        "time_s": time_s,
        "head_yaw_deg": attitude.yaw_deg,
        "head_pitch_deg": attitude.pitch_deg,
        "head_roll_deg": attitude.roll_deg,
        "head_yaw_speed_deg_s": (after[0] - before[0]) / 1e-3,
        "head_pitch_speed_deg_s": (after[1] - before[1]) / 1e-3,
        "eye_yaw_deg": eye_yaw,
        "eye_pitch_deg": eye_pitch,
        "vergence_deg": float(np.degrees(np.arccos(cosine))),
        "gaze_yaw_deg": gaze_yaw,
        "gaze_pitch_deg": gaze_pitch,
        "eye_open": 1.0 - attitude.shut,
        "step": "" if step is None else str(step["step"]),
    }
    for axis, name in enumerate("xyz"):
        row[f"head_{name}_mm"] = float(middle[axis])
        row[f"neck_{name}_mm"] = float(attitude.shift_mm[axis])
    if isinstance(head, Body):
        row |= _body_row(head, attitude, middle)
    target = _target_at(step, time_s)
    if target is not None:
        row["target_yaw_deg"], row["target_pitch_deg"] = yaw_pitch(np.array(target) - middle)
    return row


def _body_row(body: Body, attitude: Attitude, eyes_mm: Array) -> dict[str, float | str]:
    """Shoulders from the neck point, the rest from the eyes: where they are, not as they look."""
    row: dict[str, float | str] = {"body_seen": 1.0}
    neck = body.neck_mm + attitude.shift_mm
    for name, side in (("right", "r"), ("left", "l")):
        joints = body.joints_in_space(side, attitude)
        places = {
            "shoulder": joints[SHOULDER] - neck,
            "elbow": joints[ELBOW] - eyes_mm,
            "wrist": joints[WRIST] - eyes_mm,
        }
        for part, place in places.items():
            row[f"{part}_{name}_x_mm"] = float(place[0])
            row[f"{part}_{name}_y_mm"] = float(place[1])
    return row


def _step_at(score: Score, time_s: float) -> dict[str, Any] | None:
    for step in score.steps:
        if step["from_s"] <= time_s < step["to_s"]:
            return step
    return None


def _target_at(step: dict[str, Any] | None, time_s: float) -> list[float] | None:
    if step is None:
        return None
    if "target_track" in step:
        rows = np.array(step["target_track"])
        return [float(np.interp(time_s, rows[:, 0], rows[:, k])) for k in (1, 2, 3)]
    return list(step["target_mm"]) if "target_mm" in step else None


def stage_log(score: Score) -> dict[str, Any]:
    """The stage log that belongs to the clip."""
    return {
        "camera": {"vertical_fov_deg": score.scenario.camera.vertical_fov_deg},
        "steps": score.steps,
    }


def events(score: Score) -> dict[str, Any]:
    """Counts and events of the exercise."""
    scenario = score.scenario
    found: list[dict[str, Any]] = []
    for glance in scenario.glances:
        found.append(_event("gaze_off_target", score.start_s + glance.at_s, glance.lasts_s))
    for span in scenario.shut:
        found.append(_event("eyes_closed", score.start_s + span.at_s, span.lasts_s))
    for span in scenario.opens:
        found.append(_event("eyes_opened", score.start_s + span.at_s, span.lasts_s))
    # Who stands lets the chin sink; who sits and should keep still has moved the head.
    chin = "chin_down" if scenario.posture == "standing" else "head_moved"
    for span in scenario.chin_drops:
        found.append(_event(chin, score.start_s + span.at_s, span.lasts_s))
    rises = scenario.movement.half if scenario.movement.kind == "rise" else []
    low = scenario.movement.half if scenario.movement.kind == "toss" else []
    for first, last in _runs(low):
        start, until = score.cycles[first][0], score.cycles[last][0] + score.cycles[last][1]
        found.append(_event("throw_low", start, until - start))
    for first, last in _runs(rises):
        start = _top_s(score, first)
        until = _top_s(score, last + 1) if last + 1 < len(score.cycles) else score.end_s
        found.append(_event("not_upright", start, until - start))
    found += _half_up(score)
    if scenario.exercise.endswith("-together") and not scenario.eyes_with_head:
        # The first whole turn goes from the first extreme to the second.
        start = score.cycles[0][0] + 0.25 * score.cycles[0][1]
        found.append(_event("eyes_not_with_head", start, score.end_s - start))
    for span in scenario.away:
        start_s, lasts_s = _out_of_picture(score, score.start_s + span.at_s, span.lasts_s)
        found.append(_event("not_measured", start_s, lasts_s))
    for first, last in _runs(scenario.head_helps.jumps if scenario.head_helps else []):
        until = score.jumps[last + 1][0] if last + 1 < len(score.jumps) else score.end_s
        start = score.jumps[first][0]
        found.append(_event("head_moved", start, until + HELP_RISE_S - start))
    found += _short(score)
    for first, last in _runs(scenario.movement.turned):
        after = score.cycles[last + 1 :][:1]
        # Over with the first whole tilt to a side.
        until = after[0][0] + 0.25 * after[0][1] if after else score.end_s
        start = score.cycles[first][0]
        found.append(_event("head_turned", start, until - start))
    move = scenario.movement
    code, from_s = wrong_throughout(move), score.cycles[0][0]
    if code:
        found.append(_event(code, from_s, score.end_s - from_s))
    more: dict[str, Any] = {}
    if move.kind == "eyes_then_head":
        more["order"] = order(move, len(score.jumps))
    elif move.kind == "follow":
        more["catch_up_jumps"] = [
            {"at_s": round(at_s, 4), "size_deg": round(abs(size), 3)}
            for at_s, size in score.catch_up_jumps()
        ]
    return {
        "exercise": scenario.exercise,
        "repetitions": _repetitions(score),
        "events": sorted(found, key=lambda e: float(e["start_s"])),
        "blinks": score.blinks,
        **more,
    }


def _repetitions(score: Score) -> int:
    """How many were done; to lay an object down and to fetch it is one."""
    kind = score.scenario.movement.kind
    if kind in ("still", "wander", "near_hold"):
        return 0
    # Who leaves out a mark goes neither there nor back.
    left_out = len(score.scenario.movement.skipped) + len(score.scenario.movement.turned)
    return len(score.cycles) // (2 if kind == "reach" else 1) - left_out


def _short(score: Score) -> list[dict[str, Any]]:
    """From the first of several jumps near each other that stop short to the next two whole ones.

    One alone is nothing to speak of.
    """
    short, found = score.scenario.movement.short, []
    whole = [n for n in range(len(score.jumps)) if n not in short]
    for first in short:
        near = [n for n in short if first < n < first + 4]
        if not near or (found and score.jumps[first][0] < found[-1]["end_s"]):
            continue
        after = [n for n in whole if n > max(near) and n + 1 in whole]
        until = score.jumps[after[0] + 1][0] if after else score.end_s
        start = score.jumps[first][0]
        found.append(_event("gaze_short", start, until - start))
    return found


def _half_up(score: Score) -> list[dict[str, Any]]:
    """From a bend after which one sat up half-way to the end of the next whole one."""
    move = score.scenario.movement
    found = []
    for first, last in _runs(move.half if move.kind == "reach" else []):
        until = _up_s(score, last + 1) if last + 1 < len(score.cycles) else score.end_s
        start = _up_s(score, first)
        found.append(_event("not_upright", start, until - start))
    return found


def _up_s(score: Score, number: int) -> float:
    """When one has sat up after a bend."""
    start, lasts, _ = score.cycles[number]
    return start + (UP + STANDING + DOWN) * lasts


def _top_s(score: Score, number: int) -> float:
    """When a rise has reached its top."""
    start, lasts, _ = score.cycles[number]
    return start + UP * lasts


def _out_of_picture(score: Score, start_s: float, lasts_s: float) -> tuple[float, float]:
    """When the middle of the eyes leaves the picture sideways, and for how long."""
    camera = score.scenario.camera
    half_px = 0.5 * camera.width_px
    focal_px = 0.5 * camera.height_px / np.tan(np.radians(0.5 * camera.vertical_fov_deg))
    times = np.arange(start_s, start_s + lasts_s, 0.002)
    outside = []
    for time_s in times:
        attitude = score.attitude(float(time_s))
        eyes = score.head.in_space(score.head.eyes_mm, attitude).mean(axis=0)
        aside, _, towards = eyes - np.array(camera.position_mm)
        outside.append(abs(aside) * focal_px > half_px * -towards)
    out = times[np.array(outside, dtype=bool)]
    return (float(out[0]), float(out[-1] - out[0])) if len(out) else (start_s, lasts_s)


def _event(code: str, start_s: float, lasts_s: float) -> dict[str, Any]:
    return {"code": code, "start_s": round(start_s, 4), "end_s": round(start_s + lasts_s, 4)}


def _runs(numbers: list[int]) -> list[tuple[int, int]]:
    """First and last of each run of consecutive numbers."""
    runs: list[tuple[int, int]] = []
    for n in sorted(numbers):
        if runs and n == runs[-1][1] + 1:
            runs[-1] = (runs[-1][0], n)
        else:
            runs.append((n, n))
    return runs


def write_truth(score: Score, rows: list[dict[str, float | str]], clip: Path) -> None:
    """Truth, stage log and events beside a clip."""
    with clip.with_suffix(".truth.csv").open("w", newline="", encoding="utf-8") as out:
        writer = csv.writer(out)
        writer.writerow(COLUMNS)
        for row in rows:
            cells = (row.get(c, "") for c in COLUMNS)
            writer.writerow([f"{v:.4f}" if isinstance(v, float) else v for v in cells])
    for ending, content in ((".stage.json", stage_log(score)), (".events.json", events(score))):
        text = json.dumps(content, indent=1) + "\n"
        clip.with_suffix(ending).write_text(text, encoding="utf-8")
