"""The figures of a summary: plain statistics of one exercise."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from math import isfinite, isinf, nan
from typing import Any

import numpy as np

from tracker.exercises.catalogue import Exercise
from tracker.exercises.counters import EYE_OPEN_LEAST, channel_of, eyes_usable
from tracker.exercises.watchers import is_measured, off_target_limit_deg
from tracker.exercises.watchers.lids import is_flicker
from tracker.motion.turning import Turn, steps_s
from tracker.rotation import angle_between_deg, direction_from_angles
from tracker.sample import Sample
from tracker.session.derive import (
    BESIDE,
    BEYOND,
    UNLIKE,
    UNLIKE_AROUND,
    VARIFOCAL,
    gaze_error_deg,
    target_in_head,
)

#: A sample stands for the time to the next one, but for no longer than this
#: (this project's own choice).
MOST_STANDS_S = 0.25
#: Turns below this say little of how far the eyes turn back: an eye error of 0.8 degrees
#: (this project's own aim) is 10 % of it.
LEAST_RATIO_TURN_DEG = 8.0
#: So long before and after an extreme the head hardly moves: a few looks to take the middle of
#: (this project's own choice).
EXTREME_S = 0.07
#: A ratio from fewer turns isn't given (common practice).
LEAST_RATIO_TURNS = 4
#: Why it isn't told whether the gaze was on the target: its error is large, or not known.
GAZE_TOO_COARSE = "the gaze is read too coarsely to tell whether it was on the target"
NOT_CHECKED = "nobody has measured how well these eyes are read"

Figure = dict[str, Any]


def missing(reason: str) -> Figure:
    """A figure that was not measured."""
    return {"median": None, "spread": None, "n": 0, "reason": reason}


def figure(values: Iterable[float], reason: str) -> Figure:
    """Median and spread (half the distance between the quartiles) of what is finite.

    ``reason`` is given when nothing is.
    """
    kept = np.array([v for v in values if isfinite(v)])
    if not len(kept):
        return missing(reason)
    low, high = np.percentile(kept, [25, 75])
    return {
        "median": round(float(np.median(kept)), 4),
        "spread": round(float(high - low) / 2, 4),
        "n": len(kept),
        "reason": None,
    }


def by_side(turns: Sequence[Turn], read: Callable[[Turn], float], reason: str) -> Figure:
    """Figure of turns, with its sides, and its first and last five repetitions."""
    out = figure((read(t) for t in turns), reason)
    sides = sorted({t.side for t in turns})
    out["by_side"] = {s: figure((read(t) for t in turns if t.side == s), reason) for s in sides}
    return out | _ends([read(t) for t in turns], reason)


def _ends(values: Sequence[float], reason: str) -> Figure:
    """Figures of the first and the last five repetitions, of a value for each turn."""
    few = "fewer than ten repetitions"
    enough = len(values) >= 20
    parts = (("first_five", values[:10]), ("last_five", values[-10:]))
    return {name: figure(part, reason) if enough else missing(few) for name, part in parts}


def tempo(turns: Sequence[Turn]) -> Figure:
    """Beats a minute, one beat a turn, and those of its first and last five repetitions."""
    few = "fewer than two turns"
    # A beat belongs to the turn that it leads to; none leads to the first.
    beats = [60.0 / s if s > 0 else nan for s in steps_s(turns)]
    return figure(beats, few) | _ends(beats, few)


def stands_for_s(samples: Sequence[Sample], to_s: float) -> np.ndarray:
    """Seconds for which each sample stands."""
    times = np.array([s.time_s for s in samples] + [to_s])
    return np.clip(np.diff(times), 0.0, MOST_STANDS_S)


def measured_fraction(
    samples: Sequence[Sample], exercise: Exercise, span_s: float, to_s: float
) -> float:
    """Share of the time in which what is counted was measured."""
    if span_s <= 0 or not samples:
        return 0.0
    channel = channel_of(exercise.channel)
    if channel.body:
        # A body isn't looked for in every frame.
        samples = [s for s in samples if isfinite(s.body_seen)]
    good = np.array([is_measured(s, channel) for s in samples], dtype=bool)
    return round(min(1.0, float(stands_for_s(samples, to_s)[good].sum() / span_s)), 4)


def gaze_figures(
    samples: Sequence[Sample],
    turns: Sequence[Turn],
    setup_error_deg: float = nan,
    *,
    head_turns: bool = True,
) -> Figure:
    """How well the gaze stayed on the target, and how far the eyes turned back.

    ``setup_error_deg`` is the error of the gaze that the set-up measured, as for
    :func:`off_target_limit_deg`; without ``head_turns`` the turns are not those of a head, and
    there is nothing to turn back from.
    """
    limit = off_target_limit_deg(setup_error_deg)
    untold = NOT_CHECKED if isinf(setup_error_deg) else GAZE_TOO_COARSE
    rows = [(s, gaze_error_deg(s)) for s in samples if eyes_usable(s)]
    rows = [(s, e) for s, e in rows if isfinite(e)]
    reason = why_no_gaze(samples)
    return {
        "on_target_fraction": _on_target([e for _, e in rows], reason, limit, untold),
        "on_target_within_deg": limit,
        "error_deg": figure((e for _, e in rows), reason),
        "counter_turn_ratio": counter_turn_ratio(samples, turns)
        if head_turns
        else missing("the head is to stay still"),
        "by_side": {
            side: {
                "on_target_fraction": _on_target(
                    [e for s, e in rows if _side(s) == side], reason, limit, untold
                ),
                "error_deg": figure((e for s, e in rows if _side(s) == side), reason),
            }
            for side in ("right", "left")
        },
    }


def _on_target(
    errors: Sequence[float], reason: str, limit_deg: float | None, untold: str
) -> Figure:
    """The share within the limit; without errors ``reason`` is why, without a limit ``untold``."""
    if not errors:
        return {"value": None, "n": 0, "reason": reason}
    if limit_deg is None:
        return {"value": None, "n": len(errors), "reason": untold}
    inside = sum(e <= limit_deg for e in errors)
    return {"value": round(inside / len(errors), 4), "n": len(errors), "reason": None}


def _side(sample: Sample) -> str:
    return "right" if sample.head_yaw_deg > 0 else "left"


def reason_fraction(samples: Sequence[Sample], *reasons: str) -> float:
    """Share of the samples in which something was not measured for these reasons."""
    return sum(s.reason in reasons for s in samples) / max(len(samples), 1)


def why_no_gaze(samples: Sequence[Sample]) -> str:
    """Why there is no angle between gaze and target in any of the samples."""
    if any(s.reason == VARIFOCAL for s in samples):
        return "the eyes can't be judged in nods behind bi- or varifocal glasses"
    if reason_fraction(samples, BEYOND) > 0.5:
        return "the eyes went beyond what the set-up taught"
    if reason_fraction(samples, UNLIKE, UNLIKE_AROUND) > 0.5:
        return "the eyes look unlike those of the set-up: another light, or other glasses"
    if reason_fraction(samples, BESIDE) > 0.5:
        return "the line of sight rested a little beside the target: misread, or really there"
    if not any(isfinite(s.gaze_yaw_deg) for s in samples):
        return "the line of sight was not measured"
    if not any(isfinite(s.target_yaw_deg) for s in samples):
        return "the place of the target isn't known"
    return "gaze and target were never measured together"


def counter_turn_ratio(samples: Sequence[Sample], turns: Sequence[Turn]) -> Figure:
    """How far the eyes turn back for each degree that the head turns.

    From extreme to extreme, catch-up jumps included: the median over turns of the
    eye's way divided by the head's. ``expected`` is the same ratio for eyes that
    stayed on the target (above 1 for a near one, as the eyes move sideways too).
    Not a diagnostic gain.
    """
    axis = 0 if any(t.side in ("right", "left") for t in turns) else 1
    times = np.array([s.time_s for s in samples])
    around = (np.flatnonzero(np.abs(times - t.peak_s) <= EXTREME_S).tolist() for t in turns)
    rows = [_at_extreme([samples[i] for i in found], axis) for found in around]
    pairs = [
        (b.side, p, q)
        for a, b, p, q in zip(turns, turns[1:], rows, rows[1:], strict=False)
        if b.peak_s - a.peak_s < 5.0 and abs(q[0] - p[0]) >= LEAST_RATIO_TURN_DEG
    ]

    def ratio(column: int, side: str | None = None) -> Figure:
        values = [
            -(q[column] - p[column]) / (q[0] - p[0]) for s, p, q in pairs if side in (None, s)
        ]
        found = figure(values, "too few turns with the eyes measured at both ends")
        if found["n"] < LEAST_RATIO_TURNS:
            return missing("too few turns with the eyes measured at both ends")
        return found

    out = ratio(1)
    out["expected"] = ratio(2)["median"]
    out["by_side"] = {s: ratio(1, s) for s in sorted({s for s, _, _ in pairs})}
    out["note"] = "not a diagnostic gain"
    return out


def _at_extreme(around: Sequence[Sample], axis: int) -> tuple[float, float, float]:
    """Head, eye, and the eye that would be on the target, in what is around an extreme."""
    near = [s for s in around if eyes_usable(s) and not _asked_beyond(s)]
    if not near:
        return nan, nan, nan
    head = [(s.head_yaw_deg, s.head_pitch_deg)[axis] for s in near]
    eye = [(s.eye_yaw_deg, s.eye_pitch_deg)[axis] for s in near]
    ideal = [target_in_head(s)[axis] for s in near]
    return float(np.median(head)), float(np.median(eye)), float(np.median(ideal))


def _asked_beyond(sample: Sample) -> bool:
    """Whether the target asked the eyes beyond what the set-up taught."""
    return sample.reason == BEYOND and not isfinite(sample.gaze_yaw_deg)


def stillness(samples: Sequence[Sample]) -> Figure:
    """How far the head was from its own middle: median, and what 95 % stay below."""
    rows = [(s.head_yaw_deg, s.head_pitch_deg) for s in samples]
    rows = [r for r in rows if isfinite(r[0]) and isfinite(r[1])]
    if not rows:
        return {"median_deg": None, "p95_deg": None, "n": 0, "reason": "the head was not measured"}
    angles = np.array(rows)
    middle = np.median(angles, axis=0)
    away = angle_between_deg(
        direction_from_angles(angles[:, 0], angles[:, 1]), direction_from_angles(*middle)
    )
    return {
        "median_deg": round(float(np.median(away)), 4),
        "p95_deg": round(float(np.percentile(away, 95)), 4),
        "n": len(rows),
        "reason": None,
    }


#: Why it is not told how long the eyes were shut. In a film of a rendered
#: body that bends down with open eyes, 14 of the 22 pictures read as shut eyes were of looks down
#: (7 % of all told, 4 % of them falsely); the others were its blinks.
LOOKS_DOWN = "who looks at the floor lowers the lids, which reads as shut eyes"


def eyes_closed_fraction(samples: Sequence[Sample], *, looks_down: bool = False) -> Figure:
    """Share of the measured samples in which the eyes were shut, blinks included.

    Lids that look half open for a moment in between are shut, as for
    :class:`tracker.exercises.watchers.EyesClosed`. Not told where one ``looks_down`` to the
    floor as asked.
    """
    if looks_down:
        return {"value": None, "n": 0, "reason": LOOKS_DOWN}
    known = [s for s in samples if isfinite(s.eye_open)]
    if not known:
        return {"value": None, "n": 0, "reason": "the lids were not measured"}
    shut = _shut(known)
    return {"value": round(shut / len(known), 4), "n": len(known), "reason": None}


def _shut(known: Sequence[Sample]) -> int:
    """How many samples are of shut eyes; lids that flicker between two such are shut, too."""
    count, last = 0, -1
    for k, sample in enumerate(known):
        if sample.eye_open >= EYE_OPEN_LEAST:
            continue
        between = known[last + 1 : k]
        flickered = last >= 0 and between and is_flicker(between)
        count += 1 + (len(between) if flickered else 0)
        last = k
    return count


#: What of a turn goes with a figure of all: of which no more can be told than of all of them.
_OF_TURN = {
    "amplitude_deg": "amplitude_deg",
    "peak_speed_deg_s": "peak_speed_deg_s",
    "tempo_bpm": "time_s",
    "amplitude_mm": "amplitude_mm",
    "swing_mm": "swing_mm",
    "peak_speed_mm_s": "peak_speed_mm_s",
}


def repetition_rows(
    turns: Sequence[Turn], each: int = 2, withheld: Mapping[str, str] | None = None
) -> list[dict[str, Any]]:
    """One row for each repetition: its turns, ``each`` of them (there and back, own choice).

    ``withheld`` has figures of the whole set that are not told, and why: what belongs to them
    of single turns isn't told either, and the row says why (``reason``).
    """
    rows = []
    blank = {of_turn: None for key, of_turn in _OF_TURN.items() if key in (withheld or {})}
    why = "; ".join(dict.fromkeys((withheld or {}).values()))
    for k in range(0, len(turns) - each + 1, each):
        pair = turns[k : k + each]
        rows.append(
            {
                "repetition": k // each + 1,
                "start_s": round(pair[0].start_s, 3),
                "end_s": round(pair[-1].peak_s, 3),
                "turns": [
                    {
                        "side": t.side,
                        "peak_s": round(t.peak_s, 3),
                        "time_s": round(t.peak_s - t.start_s, 3),
                        "amplitude_deg": _or_none(t.amplitude_deg),
                        "peak_speed_deg_s": _or_none(t.peak_speed_deg_s),
                        **_in_mm(t),
                        **blank,
                    }
                    for t in pair
                ],
                **({"reason": why} if why else {}),
            }
        )
    return rows


def _in_mm(turn: Turn) -> dict[str, float | None]:
    """What a turn from place to place has besides; nothing for a rotation."""
    values = {
        "amplitude_mm": turn.amplitude_mm,
        "swing_mm": turn.swing_mm,
        "peak_speed_mm_s": turn.peak_speed_mm_s,
        "short_mm": turn.short_mm,
    }
    if not any(isfinite(v) for v in values.values()):
        return {}
    return {k: _or_none(v) for k, v in values.items()}


def place_figures(turns: Sequence[Turn], *, by_cycle: bool = False) -> Figure:
    """A movement from place to place: how far, how fast, how long, how regular.

    ``time_s`` is the time of one way, ``rhythm_s`` the time from one repetition to the
    next, and its spread tells how even they were.
    """
    none = "no turn was counted"
    unseen = none if not turns else "its end was out of the picture"
    step = 1 if by_cycle else 2
    cycles = [b.peak_s - a.peak_s for a, b in zip(turns, turns[step:], strict=False)]
    return {
        "amplitude_mm": by_side(turns, lambda t: t.amplitude_mm, unseen),
        "swing_mm": by_side(turns, lambda t: t.swing_mm, unseen),
        "peak_speed_mm_s": by_side(turns, lambda t: t.peak_speed_mm_s, unseen),
        "time_s": by_side(turns, lambda t: t.peak_s - t.start_s, none),
        "tempo_bpm": tempo(turns),
        "rhythm_s": figure(cycles, "fewer than two repetitions"),
    }


def frame_rate_hz(samples: Sequence[Sample]) -> float | None:
    """Samples a second that were really had, None from fewer than two."""
    if len(samples) < 2:
        return None
    span_s = samples[-1].time_s - samples[0].time_s
    return round((len(samples) - 1) / span_s, 2) if span_s > 0 else None


def light_of(samples: Sequence[Sample]) -> float | None:
    """Median light on the face."""
    known = [s.light for s in samples if isfinite(s.light)]
    return round(float(np.median(known)), 4) if known else None


def _or_none(value: float) -> float | None:
    return round(value, 3) if isfinite(value) else None
