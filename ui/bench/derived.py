"""What follows from the angles of an exercise, measured and true: amplitudes, speeds, ratios."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.exercises.catalogue import CATALOGUE
from tracker.motion.turning import Turn
from tracker.sample import TEXT_COLUMNS, TRACE_COLUMNS, Sample
from tracker.session.figures import counter_turn_ratio
from tracker.session.projections import ExerciseRecord

Array = NDArray[np.float64]
#: A turn's true extreme lies this near to the measured one.
NEAR_S = 0.25
#: Head angles within which the head counts as still for the eye rows.
STILL_DEG = 3.0
#: Speed (root of the mean square, deg/s) from which a delay can be told.
MOVES_DEG_S = 15.0
#: The middle of a glance, in which the eyes rest on what they glance at.
GLANCE_EDGE_S = 0.2


def derived(
    exercise: ExerciseRecord, columns: dict[str, Array], rows: NDArray[np.int64], events: Any
) -> dict[str, float]:
    """Errors of an exercise's figures by name; a figure that doesn't apply is left out.

    Parameters
    ----------
    exercise
        What was measured.
    columns
        The truth, columns by name.
    rows
        ``(n,)`` the truth's row of each of the exercise's samples.
    events
        The truth's events.
    """
    out = _of_turns(exercise, columns) | _of_vergence(exercise, columns)
    true = {name: values[rows] for name, values in columns.items()}
    read = {
        name: np.array([getattr(s, name) for s in exercise.samples])
        for name in TRACE_COLUMNS
        if name not in TEXT_COLUMNS
    }
    out |= _of_eyes(read, true) | _of_delay(read, true) | _of_neck(exercise, read, true)
    ratio = counter_turn_ratio(exercise.samples, exercise.turns)["median"]
    expected = counter_turn_ratio(_true_samples(true), exercise.turns)["median"]
    if ratio is not None and expected is not None:
        out["counter-turn ratio"] = abs(ratio - expected)
    glances = [
        g
        for e in events
        if e["code"] == "gaze_off_target"
        and (g := _glance(e["start_s"], e["end_s"], read, true)) is not None
    ]
    if glances:
        out["glance away, %"] = float(np.mean(glances))
    return out


def _of_turns(exercise: ExerciseRecord, columns: dict[str, Array]) -> dict[str, float]:
    """Amplitude (median over the turns) and peak speed (median of the set) against truth."""
    channel = CATALOGUE[exercise.step.exercise or ""].channel
    if channel not in ("head_yaw", "head_pitch"):
        return {}
    axis = channel.removeprefix("head_")
    angle, speed = columns[f"{channel}_deg"], columns[f"{channel}_speed_deg_s"]
    sizes, speeds = [], []
    for turn in exercise.turns:
        true_size, true_speed = _true_turn(turn, columns["time_s"], angle, speed)
        sizes.append(100 * abs(turn.amplitude_deg / true_size - 1.0))
        speeds.append((turn.peak_speed_deg_s, true_speed))
    out = {}
    if sizes:
        out[f"amplitude in {axis}, %"] = float(np.median(sizes))
    pairs = np.array([p for p in speeds if np.isfinite(p).all()]).reshape(-1, 2)
    if len(pairs) >= 4:
        middle = np.median(pairs, axis=0)
        out[f"peak speed in {axis}, %"] = 100 * abs(float(middle[0] / middle[1]) - 1.0)
    return out


def _of_vergence(exercise: ExerciseRecord, columns: dict[str, Array]) -> dict[str, float]:
    """Change of vergence from extreme to extreme (median), and how often it went the wrong way."""
    if CATALOGUE[exercise.step.exercise or ""].channel != "eye_vergence":
        return {}
    true = np.interp([t.peak_s for t in exercise.turns], columns["time_s"], columns["vergence_deg"])
    ways = list(zip(exercise.turns[1:], np.diff(true), strict=True))
    if not ways:
        return {}
    sizes = [100 * abs(turn.swing_deg / abs(way) - 1.0) for turn, way in ways]
    wrong = sum((turn.side == "near") != (way > 0) for turn, way in ways)
    return {"vergence change, %": float(np.median(sizes)), "vergence, wrong ways": float(wrong)}


def _true_turn(turn: Turn, times: Array, angle: Array, speed: Array) -> tuple[float, float]:
    """Extreme and fastest speed of the true movement on the way of a measured turn."""
    sign = 1.0 if turn.side in ("right", "up") else -1.0
    around = np.abs(times - turn.peak_s) <= NEAR_S
    way = (times >= turn.start_s - NEAR_S / 2) & (times <= turn.peak_s + NEAR_S / 2)
    return float((sign * angle[around]).max()), float((sign * speed[way]).max())


def _of_eyes(read: dict[str, Array], true: dict[str, Array]) -> dict[str, float]:
    """Eye error with the head still, and how much of a head turn leaks into the eyes."""
    usable = np.isfinite(read["eye_yaw_deg"]) & (true["eye_open"] > 0.95)
    yaw, pitch = true["head_yaw_deg"], true["head_pitch_deg"]
    still = usable & (np.abs(yaw) < STILL_DEG) & (np.abs(pitch) < STILL_DEG)
    still &= (np.abs(true["eye_yaw_deg"]) <= 15) & (np.abs(true["eye_pitch_deg"]) <= 12)
    out = {}
    if still.sum() > 0.5 * len(usable):
        for axis in ("yaw", "pitch"):
            name = f"eye_{axis}_deg"
            out[f"eye {axis}, head still"] = float(np.abs(read[name] - true[name])[still].mean())
    if usable.any() and yaw[usable].std() > 6.0:
        off = read["eye_yaw_deg"] - true["eye_yaw_deg"]
        out["eye yaw for each degree of head yaw"] = abs(
            float(np.polyfit(yaw[usable], off[usable], 1)[0])
        )
    return out


def _of_delay(read: dict[str, Array], true: dict[str, Array]) -> dict[str, float]:
    """How late or early angle and speed of the head are, in ms, about the axis that moves faster.

    What comes later by tau reads ``angle - tau * speed`` to first order, a speed likewise
    with the acceleration; a scale and an offset that are off are fitted besides and not
    taken for a delay.
    """
    speeds = {axis: true[f"head_{axis}_speed_deg_s"] for axis in ("yaw", "pitch")}
    axis = max(speeds, key=lambda name: float(np.nanstd(speeds[name])))
    speed, times = speeds[axis], true["time_s"]
    if not np.nanstd(speed) > MOVES_DEG_S:
        return {}
    acceleration = np.gradient(speed, times)
    out = {}
    for said, name, rate in (
        ("angle", f"head_{axis}_deg", speed),
        ("speed", f"head_{axis}_speed_deg_s", acceleration),
    ):
        usable = np.isfinite(read[name]) & np.isfinite(true[name]) & np.isfinite(rate)
        if usable.sum() < 3:
            continue
        known = np.column_stack([np.ones(len(rate)), true[name], rate])[usable]
        late = -np.linalg.lstsq(known, (read[name] - true[name])[usable], rcond=None)[0][2]
        out[f"head's {said} late or early by, ms"] = 1000.0 * abs(float(late))
    return out


def _of_neck(
    exercise: ExerciseRecord, read: dict[str, Array], true: dict[str, Array]
) -> dict[str, float]:
    """How far the point about which the head turns strays in 95 % of the frames, in mm.

    From where it truly is, without what is off all the time: sway is a movement.
    """
    axis = CATALOGUE[exercise.step.exercise or ""].channel.removeprefix("head_")
    if axis not in ("yaw", "pitch"):
        return {}
    off = np.column_stack([read[f"neck_{k}_mm"] - true[f"neck_{k}_mm"] for k in "xyz"])
    off = off[np.isfinite(off).all(axis=1)]
    if len(off) < 3:
        return {}
    strays = np.linalg.norm(off - np.median(off, axis=0), axis=1)
    return {f"neck point, head moves in {axis}, mm": float(np.percentile(strays, 95))}


def _true_samples(true: dict[str, Array]) -> list[Sample]:
    """The truth's rows as samples."""
    names = [n for n in TRACE_COLUMNS if n in true]
    return [
        Sample(**dict(zip(names, row, strict=True)))
        for row in np.stack([true[n] for n in names], axis=1).tolist()
    ]


def _glance(
    start_s: float, end_s: float, read: dict[str, Array], true: dict[str, Array]
) -> float | None:
    """By how many per cent the size of a glance away is misread; None where it wasn't measured."""
    times = true["time_s"]
    rest = (times > start_s + GLANCE_EDGE_S) & (times < end_s - GLANCE_EDGE_S)
    rest &= np.isfinite(read["gaze_yaw_deg"]) & (true["eye_open"] > 0.95)
    if rest.sum() < 3:
        return None
    sizes = [
        float(
            np.hypot(
                np.mean((of["gaze_yaw_deg"] - true["target_yaw_deg"])[rest]),
                np.mean((of["gaze_pitch_deg"] - true["target_pitch_deg"])[rest]),
            )
        )
        for of in (read, true)
    ]
    return 100 * abs(sizes[0] / sizes[1] - 1.0)
