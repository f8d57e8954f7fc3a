"""What a scenario amounts to: counts, events and truth agree with each other."""

from __future__ import annotations

from itertools import pairwise
from typing import Any

import numpy as np
import pytest

from sample_clips.render import make_score
from sample_clips.scenario import Scenario
from sample_clips.score import JUMP_DEG, LATENCY_S, Score
from sample_clips.truth import events, stage_log, truth_row
from tests.sample_clips.scenes import scenario


def rows_of(score: Score, from_s: float, to_s: float, rate_hz: float = 100.0) -> dict[str, Any]:
    rows = [truth_row(score, float(t)) for t in np.arange(from_s, to_s, 1 / rate_hz)]
    return {key: np.array([row.get(key, np.nan) for row in rows]) for key in rows[0]}


def off_target_deg(rows: dict[str, Any]) -> np.ndarray[Any, Any]:
    return np.hypot(
        rows["gaze_yaw_deg"] - rows["target_yaw_deg"],
        rows["gaze_pitch_deg"] - rows["target_pitch_deg"],
    )


def turning_points(values: np.ndarray[Any, Any], least: float) -> int:
    """How often the sign changes between excursions beyond ``least``, and one more."""
    beyond = np.sign(values[np.abs(values) > least])
    return int(np.count_nonzero(np.diff(beyond))) + 1


@pytest.fixture(scope="module")
def turns() -> Score:
    return make_score(scenario())


def test_steps_follow_each_other_from_the_start(turns: Score) -> None:
    steps = stage_log(turns)["steps"]
    assert [s["step"] for s in steps] == [
        "rest", *["look"] * 8, "turn_slowly", "nod_slowly", "exercise"
    ]  # fmt: skip
    assert steps[0]["from_s"] == 0
    for before, after in pairwise(steps):
        assert after["from_s"] == before["to_s"]


def test_each_look_reaches_its_target_with_the_head_still(turns: Score) -> None:
    for step in turns.steps:
        if step["step"] == "look":
            rows = rows_of(turns, step["from_s"] + 0.35, step["to_s"])
            assert off_target_deg(rows).max() < 0.25
            assert np.ptp(rows["head_yaw_deg"]) < 1.0


def test_setup_turn_and_nod_reach_both_sides(turns: Score) -> None:
    for name, column, size in (
        ("turn_slowly", "head_yaw_deg", 26.0), ("nod_slowly", "head_pitch_deg", 13.0)
    ):  # fmt: skip
        step = next(s for s in turns.steps if s["step"] == name)
        values = rows_of(turns, step["from_s"], step["to_s"])[column]
        assert values.max() == pytest.approx(size, rel=0.06)
        assert values.min() == pytest.approx(-size, rel=0.06)


@pytest.mark.parametrize(
    ("kind", "column"), [("turns", "head_yaw_deg"), ("nods", "head_pitch_deg")]
)
@pytest.mark.parametrize("repetitions", [1, 5, 9])
def test_stated_repetitions_are_really_there(kind: str, column: str, repetitions: int) -> None:
    score = make_score(
        scenario(setup=False, movement={"kind": kind, "repetitions": repetitions, "uneven": 0.2})
    )
    rows = rows_of(score, score.start_s, score.end_s)
    assert events(score)["repetitions"] == repetitions
    assert turning_points(rows[column], 5.0) == 2 * repetitions


def test_eyes_hold_the_target_while_the_head_turns(turns: Score) -> None:
    rows = rows_of(turns, turns.start_s, turns.end_s, 30)
    assert np.abs(rows["head_yaw_deg"]).max() > 15
    assert off_target_deg(rows).max() < 0.1
    # The target is near: the eyes turn back farther than the head turns.
    assert np.abs(rows["eye_yaw_deg"]).max() > np.abs(rows["head_yaw_deg"]).max() + 1


def test_gaze_is_the_heads_rotation_of_the_eyes_direction(turns: Score) -> None:
    from sample_clips.angles import direction, turned, yaw_pitch

    for time_s in np.linspace(0, turns.end_s - 0.1, 25):
        row: dict[str, Any] = truth_row(turns, float(time_s))
        head = turned(row["head_yaw_deg"], row["head_pitch_deg"], row["head_roll_deg"])
        eye = direction(row["eye_yaw_deg"], row["eye_pitch_deg"])
        assert yaw_pitch(head @ eye) == pytest.approx(
            (row["gaze_yaw_deg"], row["gaze_pitch_deg"]), abs=1e-6
        )


def test_speed_is_the_slope_of_the_angle(turns: Score) -> None:
    rows = rows_of(turns, turns.start_s, turns.end_s, 250)
    slope = np.gradient(rows["head_yaw_deg"], rows["time_s"])
    inside = slice(5, -5)
    assert rows["head_yaw_speed_deg_s"][inside] == pytest.approx(slope[inside], abs=1.5)
    # Between its two extremes a cycle is a sine of ``size``: peak 2 pi size / period.
    for start, lasts, size in turns.cycles:
        since = rows["time_s"] - start
        cycle = (since > 0.25 * lasts) & (since < 0.75 * lasts)
        peak = np.abs(rows["head_yaw_speed_deg_s"][cycle]).max()
        assert peak == pytest.approx(2 * np.pi * size / lasts, rel=0.03)


def test_lagging_eyes_slip_with_the_head_and_catch_up() -> None:
    score = make_score(scenario(setup=False, counter_turn=0.6, movement={"amplitude_deg": 20.0}))
    rows = rows_of(score, score.start_s, score.end_s, 250)
    slip = rows["gaze_yaw_deg"] - rows["target_yaw_deg"]
    assert 1.5 < np.abs(slip).max() < 7.0
    # Between the jumps the gaze moves with the head at 1 - gain of its speed.
    speed = np.gradient(slip, rows["time_s"])
    head = rows["head_yaw_speed_deg_s"]
    fast = (np.abs(head) > 30) & (np.sign(speed) == np.sign(head))
    assert np.median(speed[fast] / head[fast]) == pytest.approx(0.4, abs=0.05)
    against = (np.abs(head) > 30) & (speed * np.sign(head) < -20)
    assert against.any()


def test_glances_are_where_the_events_say() -> None:
    glances = [
        {"at_s": 2.7, "lasts_s": 0.8, "yaw_deg": 10, "pitch_deg": 3},
        {"at_s": 7.1, "lasts_s": 0.8, "yaw_deg": -9, "pitch_deg": -5},
    ]
    score = make_score(scenario(setup=False, glances=glances))
    found = [e for e in events(score)["events"] if e["code"] == "gaze_off_target"]
    assert len(found) == 2
    rows = rows_of(score, 0, score.end_s)
    off, t = off_target_deg(rows), rows["time_s"]
    inside = np.zeros(len(t), bool)
    for event in found:
        deep = (t > event["start_s"] + 0.06) & (t < event["end_s"])
        assert off[deep].min() > 8.0
        inside |= (t >= event["start_s"]) & (t <= event["end_s"] + 0.06)
    assert off[~inside].max() < 0.2


def test_jumps_last_as_long_as_saccades_do_and_land_on_the_target() -> None:
    score = make_score(scenario(setup=False, movement={"kind": "jumps", "repetitions": 4}))
    start, side = score.jumps[3]
    rows = rows_of(score, start - 0.5, start + 0.6, 1000)
    t, gaze = rows["time_s"], rows["gaze_yaw_deg"]
    size = 2 * JUMP_DEG
    lasts = (2.2 * size + 21) / 1000  # Carpenter 1988
    moving = t[np.abs(np.gradient(gaze, t)) > 5]
    near = moving[np.abs(moving - start - lasts / 2) < 0.2]
    assert near.min() == pytest.approx(start, abs=0.01)
    assert near.max() == pytest.approx(start + lasts, abs=0.01)
    landed = (t > start + lasts) & (t < start + 0.5)
    assert gaze[landed] == pytest.approx(side * JUMP_DEG, abs=0.4)
    # The target had moved one latency earlier.
    moved = t[np.abs(np.gradient(rows["target_yaw_deg"], t)) > 1000]
    assert np.abs(moved - (start - LATENCY_S)).min() < 0.003


def test_head_helps_only_where_the_events_say() -> None:
    score = make_score(
        scenario(
            setup=False,
            movement={"kind": "jumps", "repetitions": 6},
            head_helps={"jumps": [3, 4, 8], "by_deg": 6.5},
        )
    )
    found = [e for e in events(score)["events"] if e["code"] == "head_moved"]
    assert len(found) == 2
    rows = rows_of(score, 0, score.end_s)
    t, yaw = rows["time_s"], np.abs(rows["head_yaw_deg"])
    inside = np.zeros(len(t), bool)
    for event in found:
        span = (t >= event["start_s"]) & (t <= event["end_s"])
        assert yaw[span].max() > 5.5
        inside |= span
    assert yaw[~inside].max() < 1.0


def test_lids_are_shut_in_the_spans_and_briefly_in_blinks() -> None:
    score = make_score(
        scenario(setup=False, blinks=True, seed=3, shut=[{"at_s": 4.0, "lasts_s": 2.0}])
    )
    told = events(score)
    (closed,) = [e for e in told["events"] if e["code"] == "eyes_closed"]
    rows = rows_of(score, 0, score.end_s)
    t, open_ = rows["time_s"], rows["eye_open"]
    assert open_[(t > closed["start_s"] + 0.15) & (t < closed["end_s"])].max() < 0.05
    assert told["blinks"]
    allowed = (t >= closed["start_s"]) & (t <= closed["end_s"] + 0.2)
    for start, end in told["blinks"]:
        assert 0.1 < end - start < 0.5
        assert open_[(t >= start) & (t <= end)].min() < 0.1
        allowed |= (t >= start) & (t <= end)
    assert open_[~allowed].min() == 1.0


def test_talking_moves_the_jaw_in_its_span_alone() -> None:
    score = make_score(scenario(setup=False, talks=[{"at_s": 2.0, "lasts_s": 3.0}]))
    times = np.arange(0, score.end_s, 0.01)
    jaw = np.array([score.attitude(float(t)).jaw for t in times])
    inside = (times >= 2.0) & (times <= 5.0)
    assert jaw[inside].max() > 0.2 and jaw[~inside].max() == 0.0
    assert jaw.min() >= 0.0
    opened = np.diff((jaw > 0.1).astype(int)) == 1
    assert 9 <= opened.sum() <= 13  # about four times a second


def test_truth_can_be_had_again_and_differs_between_clips() -> None:
    def yaw(seed: int) -> list[Any]:
        score = make_score(Scenario(name="a", seed=seed))
        return [truth_row(score, t)["head_yaw_deg"] for t in (1.0, 12.0, 24.0)]

    assert yaw(5) == yaw(5)
    assert yaw(5) != yaw(6)


class TestBody:
    def test_rises_reach_their_height_and_lean_forward_on_the_way(self) -> None:
        score = make_score(
            scenario(
                exercise="sit-to-stand",
                posture="standing",
                movement={
                    "kind": "rise",
                    "amplitude_mm": 370,
                    "repetitions": 4,
                    "tempo_bpm": 40,
                    "uneven": 0,
                    "half": [2],
                },
            )
        )
        rows = rows_of(score, score.start_s, score.end_s)
        high = rows["neck_y_mm"] > 100
        assert np.count_nonzero(np.diff(high.astype(int)) == 1) == 4
        assert rows["neck_y_mm"].max() == pytest.approx(370, abs=1)
        third_s = score.cycles[2][0]
        third = (rows["time_s"] > third_s) & (rows["time_s"] < third_s + 3)
        assert rows["neck_y_mm"][third].max() == pytest.approx(185, abs=1)
        # Bowed and forward half-way up, upright and back in place at the top.
        assert rows["neck_z_mm"].max() == pytest.approx(220, abs=3)
        assert rows["head_pitch_deg"].min() == pytest.approx(-8, abs=1)
        top = rows["neck_y_mm"] > 369.9
        assert np.abs(rows["head_pitch_deg"][top]).max() < 1
        assert np.abs(rows["neck_z_mm"][top]).max() < 6
        (event,) = events(score)["events"]
        assert event["code"] == "not_upright"
        assert event["end_s"] - event["start_s"] == pytest.approx(3.0, abs=0.01)
        assert score.steps[-1]["posture"] == "standing"

    @pytest.mark.parametrize(("kind", "axis"), [("sway_fore_aft", "z"), ("sway_sideways", "x")])
    def test_sways_go_to_and_fro_along_one_axis(self, kind: str, axis: str) -> None:
        move = {"kind": kind, "amplitude_mm": 60, "repetitions": 5, "tempo_bpm": 40, "uneven": 0}
        score = make_score(scenario(exercise="ankle-sway", movement=move))
        rows = rows_of(score, score.start_s, score.end_s)
        assert turning_points(rows[f"neck_{axis}_mm"], 30) == 10
        assert np.ptp(rows[f"neck_{axis}_mm"]) == pytest.approx(120, abs=5)
        other = "x" if axis == "z" else "z"
        assert np.ptp(rows[f"neck_{other}_mm"]) < 6
        assert np.abs(rows["head_yaw_deg"]).max() < 1
        assert events(score)["repetitions"] == 5

    def test_shut_eyes_open_only_when_they_are_to(self) -> None:
        score = make_score(
            scenario(
                exercise="stand",
                posture="standing",
                eyes="closed",
                movement={"kind": "still", "repetitions": 8, "sway_mm": 15},
                opens=[{"at_s": 3, "lasts_s": 1}],
                chin_drops=[{"at_s": 5, "lasts_s": 1.5}],
            )
        )
        rows = rows_of(score, score.start_s, score.end_s - 0.01)
        since = rows["time_s"] - score.start_s
        assert rows["eye_open"][(since > 0.5) & (since < 3)].max() < 0.01
        assert rows["eye_open"][(since > 3.2) & (since < 3.9)].min() > 0.99
        assert rows["eye_open"][since > 4.2].max() < 0.01
        assert rows["head_pitch_deg"][(since > 5.6) & (since < 6.4)].max() < -20
        assert [e["code"] for e in events(score)["events"]] == ["eyes_opened", "chin_down"]
        # The sway goes on besides: up to 15 mm to each side and that of nobody standing still.
        assert 10 < np.abs(rows["neck_x_mm"]).max() < 18

    def test_a_half_rise_that_is_not_there_is_refused(self) -> None:
        with pytest.raises(ValueError, match=r"movement.half: there are 8 of them"):
            scenario(movement={"kind": "rise", "repetitions": 8, "half": [8]})

    def test_bends_go_down_and_up_and_some_only_half_way_up(self) -> None:
        move = {
            "kind": "reach",
            "amplitude_mm": 450,
            "tempo_bpm": 20,
            "repetitions": 4,
            "half": [1],
        }
        score = make_score(scenario(exercise="floor-reach", setup=False, movement=move))
        down = [score.shift(a + 0.4 * b)[1] for a, b, _ in score.cycles]
        up = [score.shift(a + 0.95 * b)[1] for a, b, _ in score.cycles]
        assert down == pytest.approx([-450.0] * 4, abs=3)
        assert up == pytest.approx([0.0, -225.0, 0.0, 0.0], abs=3)
        told = events(score)
        # To lay the object down and to fetch it is one.
        assert told["repetitions"] == 2
        (half,) = told["events"]
        assert half["code"] == "not_upright"
        assert score.cycles[1][0] < half["start_s"] < score.cycles[2][0] < half["end_s"]


def test_vertical_jumps_move_the_eyes_up_and_down_alone() -> None:
    move = {"kind": "jumps", "vertical": True, "repetitions": 4}
    score = make_score(scenario(exercise="eyes-up-down", setup=False, movement=move))
    rows = rows_of(score, score.start_s, score.end_s - 0.01)
    assert np.ptp(rows["gaze_pitch_deg"]) > 14 and np.ptp(rows["gaze_yaw_deg"]) < 2
    # Eight jumps, the first of them from the middle.
    above = rows["gaze_pitch_deg"] > np.median(rows["target_pitch_deg"][:1])
    assert np.count_nonzero(np.diff(above)) >= 7


@pytest.mark.parametrize("along", [True, False])
def test_eyes_go_along_with_the_head_or_stay(along: bool) -> None:
    score = make_score(
        scenario(
            exercise="turns-together",
            setup=False,
            eyes_with_head=along,
            movement={"repetitions": 4},
        )
    )
    rows = rows_of(score, score.start_s, score.end_s - 0.01)
    still = {True: "eye_yaw_deg", False: "gaze_yaw_deg"}[along]
    # Eyes that stay on a near target turn by a few degrees in space, as they move aside.
    assert np.ptp(rows[still]) < 8 < 25 < np.ptp(rows["head_yaw_deg"])
    assert [e["code"] for e in events(score)["events"]] == ["eyes_not_with_head"] * (not along)
