"""Whether the eyes arrive at their target: truth with the errors of a webcam, and made-up jumps."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np
import pytest

from sample_clips.truth import events, stage_log
from tests.exercises.test_moving_sets import SETUP, judged, score_of, summary_of
from tracker.exercises.landing import landing_of, rows_of, stays_in
from tracker.exercises.stays import Stay, at, towards, way_deg
from tracker.motion.turning import Turn
from tracker.sample import Sample
from tracker.session.arrivals import (
    NEVER_AT_REST,
    NO_TARGETS,
    TOO_COARSE,
    arrival_figures,
    left_out,
)
from tracker.session.clip_run import run_samples
from tracker.session.figures import NOT_CHECKED
from tracker.session.live import SessionInfo
from tracker.session.stage import StageLog
from tracker.session.summary import summarise
from tracker.session.summary_file import ExerciseSummary
from tracker.session.trace import format_trace, parse_trace
from ui.bench.sets import samples_of

JUMPS = {"kind": "jumps", "tempo_bpm": 60, "repetitions": 8, "target_deg": 10}
SHORT = {"short": [3, 5, 8], "skipped": [10]}
WALLS: dict[str, dict[str, Any]] = {
    "screen": {},
    "wall": {"wall": {"distance_mm": 1500, "height_mm": -40}},
    "far wall": {"wall": {"distance_mm": 3000, "height_mm": 0}},
}
SETS = pytest.mark.parametrize(
    ("where", "rate_hz"), [("screen", 15), ("screen", 30), ("wall", 15), ("far wall", 30)]
)


def jumps_of(rate_hz: int = 30, *, where: str = "screen", **move: Any) -> Any:
    return score_of("eyes-side-to-side", JUMPS | move, rate_hz, **WALLS[where])


@SETS
def test_a_set_done_well_arrives_each_time(where: str, rate_hz: int) -> None:
    found = summary_of(jumps_of(rate_hz, where=where))
    assert found.events == []
    assert found.arrivals is not None
    counts = {k: found.arrivals[k] for k in ("arrived", "short", "over", "skipped")}
    assert counts == {"arrived": 16, "short": 0, "over": 0, "skipped": 0}
    assert found.arrivals["off_deg"]["median"] == pytest.approx(0.0, abs=1.0)
    assert ("wall" in found.prescribed) == (where != "screen")


@SETS
def test_short_jumps_and_a_mark_left_out_are_told(where: str, rate_hz: int) -> None:
    score = jumps_of(rate_hz, where=where, **SHORT)
    found, truth = summary_of(score), events(score)
    assert found.done.repetitions == truth["repetitions"]
    (true,) = truth["events"]
    (event,) = found.events
    assert event.code == true["code"] == "gaze_short"
    assert event.start_s == pytest.approx(true["start_s"], abs=0.15)
    assert event.end_s == pytest.approx(true["end_s"], abs=0.15)
    assert found.arrivals is not None
    assert (found.arrivals["short"], found.arrivals["skipped"]) == (3, 1)
    assert found.arrivals["over"] == 0


def test_one_short_jump_alone_is_counted_and_not_said() -> None:
    found = summary_of(jumps_of(short=[5]))
    assert found.events == [] and found.arrivals is not None
    assert found.arrivals["short"] == 1


def test_a_head_that_helps_changes_nothing_about_where_the_eyes_land() -> None:
    helps = {"head_helps": {"jumps": [4, 5], "by_deg": 7.0}}
    found = summary_of(score_of("eyes-side-to-side", JUMPS, **helps))
    assert {e.code for e in found.events} == {"head_moved"}
    assert found.arrivals is not None and found.arrivals["short"] == found.arrivals["over"] == 0


def with_targets(share: float, to_deg: float = 10.0) -> ExerciseSummary:
    """Eyes that go so far to each side of targets that are nearer to each other."""
    score = jumps_of(where="wall", target_deg=to_deg)
    log = stage_log(score)
    for row in log["steps"][-1]["target_track"]:
        row[1] *= share
    steps = StageLog.model_validate(log).steps
    record = run_samples(samples_of(score), steps, SessionInfo(setup=dict(SETUP)))
    return summarise(record).exercises[0]


def test_eyes_that_go_beyond_their_target_are_told_and_not_corrected() -> None:
    # To 14 degrees, past targets at atan(.45 tan 14) = 6.4.
    found = with_targets(0.45, 14.0)
    assert found.arrivals is not None and found.arrivals["over"] >= 15
    assert found.arrivals["off_deg"]["median"] == pytest.approx(7.6, abs=0.8)
    assert found.events == []


def test_of_targets_that_are_too_near_to_each_other_nothing_is_said() -> None:
    for share, reason in ((0.42, TOO_COARSE), (0.2, NO_TARGETS)):
        found = with_targets(share)
        assert found.arrivals is not None and found.arrivals["reason"] == reason
        assert found.arrivals["arrived"] is None and found.events == []


def test_what_the_error_does_not_allow_is_not_measured_with_the_reason() -> None:
    score = jumps_of(**SHORT)
    found = summary_of(score, gaze_error_deg=1.9)
    assert found.arrivals is not None
    assert found.arrivals["reason"] == TOO_COARSE and found.arrivals["short"] is None
    assert found.arrivals["off_deg"]["reason"] == TOO_COARSE
    assert found.events == []
    blind = summary_of(score, gaze_error_deg=2.5)
    assert blind.arrivals is not None and blind.arrivals["reason"] == TOO_COARSE


def test_where_nobody_has_measured_how_well_the_gaze_is_read_no_jump_is_judged() -> None:
    score = jumps_of(**SHORT)
    record = judged(score)
    assert {e.code for e in summarise(record).exercises[0].events} == {"gaze_short"}
    about = SessionInfo(setup={"calibration": "fitted", "gaze_error_deg": None})
    (alone,) = summarise(run_samples(record.samples, record.steps, about)).exercises
    assert alone.events == [] and alone.arrivals is not None
    assert alone.arrivals["reason"] == NOT_CHECKED and alone.arrivals["short"] is None
    assert alone.arrivals["off_deg"]["median"] is None and alone.arrivals["within_deg"] is None


def test_without_targets_or_eyes_there_is_a_reason_and_no_count() -> None:
    score = jumps_of()
    samples = judged(score).exercises[0].samples
    bare = [replace(s, target_yaw_deg=np.nan, target_pitch_deg=np.nan) for s in samples]
    turns = judged(score).exercises[0].turns
    found = arrival_figures(bare, turns, 0.7, led=True)
    assert found["reason"] == "the place of the target isn't known" and found["arrived"] is None
    one = [replace(s, target_yaw_deg=3.0) for s in samples]
    assert arrival_figures(one, turns, 0.7, led=True)["reason"] == NO_TARGETS
    assert arrival_figures(samples, [], 0.7, led=True)["reason"] == NEVER_AT_REST
    unled = arrival_figures(samples, turns, 0.7, led=False)
    assert unled["skipped"] is None and unled["arrived"] == 16


def test_a_trace_written_and_read_again_says_the_same() -> None:
    score = jumps_of(where="wall", **SHORT)
    record = judged(score)
    samples = parse_trace(format_trace(record.samples), "t.csv")
    steps = StageLog.model_validate(stage_log(score)).steps
    again = summarise(run_samples(samples, steps, SessionInfo(setup=dict(SETUP)))).exercises[0]
    once = summarise(record).exercises[0]
    assert (again.arrivals, again.events) == (once.arrivals, once.events)


# --- made-up jumps, with nothing but what is told of them ---


def turn(side: str, peak_s: float, end_s: float) -> Turn:
    return Turn(0, side, peak_s - 0.1, peak_s, end_s, 10.0, 20.0, float("nan"))


def rest_at(yaw_deg: float, from_s: float, to_s: float, target_deg: float) -> list[Sample]:
    times = np.arange(from_s, to_s, 1 / 30)
    return [
        Sample(float(t), gaze_yaw_deg=yaw_deg, target_yaw_deg=target_deg, eye_open=1.0)
        for t in times
    ]


#: Targets at 10 degrees to each side, second by second.
APART = [Stay(k, k + 0.97, 10.0 if k % 2 else -10.0, bool(k % 2)) for k in range(4)]


@pytest.mark.parametrize(
    ("rests_at", "where", "off"),
    [(10.0, "arrived", 0.0), (6.0, "arrived", -4.0), (4.0, "short", -6.0), (16.0, "over", 6.0)],
)
@pytest.mark.parametrize("side", ["right", "left"])
def test_where_a_jump_ended(side: str, rests_at: float, where: str, off: float) -> None:
    way = 1.0 if side == "right" else -1.0
    at_s = 1.0 if side == "right" else 2.0
    rows = rows_of(rest_at(way * rests_at, at_s, at_s + 1.0, way * 10.0))
    found = landing_of(rows, turn(side, at_s + 0.05, at_s + 1.0), APART, 5.0)
    assert found.where == where
    assert found.off_deg == pytest.approx(off)


def test_a_first_jump_that_is_made_up_for_has_arrived() -> None:
    short = rest_at(3.0, 1.0, 1.2, 10.0)
    rows = rows_of([*short, *rest_at(9.5, 1.2, 2.0, 10.0)])
    assert landing_of(rows, turn("right", 1.0, 2.0), APART, 5.0).where == "arrived"


def test_too_short_a_rest_tells_nothing() -> None:
    rows = rows_of(rest_at(3.0, 1.0, 1.4, 10.0))
    assert landing_of(rows, turn("right", 1.0, 1.4), APART, 5.0).where == "not_told"


def test_two_targets_are_known_by_where_they_stay() -> None:
    moving = [Sample(1.99, target_yaw_deg=0.4)]
    samples = [*rest_at(0, 0, 1, -9.0), *moving, *rest_at(0, 2, 3, 11.0)]
    stays = stays_in(rows_of(samples))
    assert [(s.deg, s.plus) for s in stays] == [(-9.0, False), (11.0, True)]
    assert way_deg(stays, 0) == way_deg(stays, 1) == 20.0
    still = stays_in(rows_of(rest_at(0, 0, 1, 2.0)))
    assert [way_deg(still, k) for k in range(len(still))] == [0.0]
    assert stays_in(rows_of([])) == [] and towards([], "right", 1.0) is None


@pytest.mark.parametrize(
    ("side", "time_s", "number"),
    [("right", 1.3, 1), ("left", 1.3, 0), ("left", 1.8, 2), ("right", 9.0, 3), ("left", -1, 0)],
    ids=["in time", "late", "early", "after the last", "before the first"],
)
def test_a_jump_is_held_against_the_nearest_stay_on_its_side(
    side: str, time_s: float, number: int
) -> None:
    assert towards(APART, side, time_s) == number
    assert at(APART, 1.3) == 1 and at(APART, 1.98) == 2


def test_of_a_set_that_is_small_at_first_each_jump_is_held_against_its_own_target() -> None:
    """Eyes that land on their target each time, and ones that stay at the size of the first."""
    sizes = [4.0 + k for k in range(12)]
    ends = [(1.0 if k % 2 else -1.0) * size for k, size in enumerate(sizes)]

    def landed(reads: Callable[[int], float]) -> list[float]:
        samples = [s for k, end in enumerate(ends) for s in rest_at(reads(k), k, k + 1, end)]
        rows = rows_of(samples)
        turns = [turn("right" if k % 2 else "left", k + 0.1, k + 1.0) for k in range(12)]
        return [landing_of(rows, t, stays_in(rows), 2.0).off_deg for t in turns]

    assert landed(lambda k: ends[k]) == pytest.approx([0.0] * 12)
    stuck = landed(lambda k: float(np.copysign(4.0, ends[k])))
    assert stuck == pytest.approx([4.0 - size for size in sizes])
    # A jump too small for the error isn't told, the larger ones of the same set are.
    close = landing_of(
        rows_of(rest_at(3.0, 1.0, 2.0, 3.5)),
        turn("right", 1.05, 2.0),
        [Stay(0.0, 1.0, -3.0, False), Stay(1.0, 2.0, 3.5, True), Stay(2.0, 3.0, -9.0, False)],
        3.0,
    )
    assert close.where == "not_told"


def test_who_is_late_by_less_than_half_a_beat_has_left_nothing_out() -> None:
    def looked(late_s: float, blink_at: int = -1) -> int:
        samples = []
        for beat in range(8):
            for t in np.arange(beat, beat + 1.0, 1 / 30):
                gaze = 9.0 if int(np.floor(t - late_s)) % 2 == 0 else -9.0
                shut = beat == blink_at
                samples.append(
                    Sample(
                        float(t),
                        gaze_yaw_deg=np.nan if shut else gaze,
                        target_yaw_deg=10.0 if beat % 2 == 0 else -10.0,
                        eye_open=1.0,
                    )
                )
        return left_out(rows := rows_of(samples), stays_in(rows))

    assert looked(0.2) == looked(0.4) == looked(-0.2) == 0
    assert looked(0.2, blink_at=3) == 0, "what was not seen was not left out"
    never = [replace(s, gaze_yaw_deg=9.0) for s in rest_at(9.0, 0, 1, 10.0)]
    stays = [
        replace(s, time_s=s.time_s + k, target_yaw_deg=10.0 if k % 2 == 0 else -10.0)
        for k in range(8)
        for s in never
    ]
    # Three of the four left ones: at the last nobody has to be any more.
    assert left_out(rows_of(stays), stays_in(rows_of(stays))) == 3
