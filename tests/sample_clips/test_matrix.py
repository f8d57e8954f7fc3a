"""People and conditions drawn by lot: the same name gives the same, all within their ranges."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.signal import find_peaks

from sample_clips.heads import make_head
from sample_clips.matrix import FINE, KINDS, drawn, standing, wide
from sample_clips.people import HEADS, find_head, random_head
from sample_clips.scenario import Scenario
from sample_clips.score import Score
from sample_clips.truth import events, truth_row


def test_the_same_number_draws_the_same_and_another_seed_another() -> None:
    assert drawn(3, 5) == drawn(3, 5)
    assert drawn(3, 5).scenario != drawn(3, 6).scenario
    assert random_head(17) == random_head(17) != random_head(18)


def test_what_is_drawn_lies_within_the_statements_ranges() -> None:
    for number in range(120):
        one = drawn(number, 2)
        camera, move = one.scenario.camera, one.scenario.movement
        assert one.kind == KINDS[number % len(KINDS)]
        assert 35 <= camera.vertical_fov_deg <= 60
        assert 450 <= camera.position_mm[2] <= 900
        assert camera.rate_hz in (15, 30, 60)
        slowest = 0.15 if one.kind == "near-far" else 0.3
        assert slowest <= move.tempo_bpm / 120 <= 2.5
        if camera.rate_hz == 15:
            assert move.tempo_bpm / 120 <= 1.0
    lots = [drawn(k, 2).scenario for k in range(120)]
    assert {s.glasses for s in lots} == {True, False}
    assert {np.sign(s.camera.position_mm[1]) for s in lots} >= {1.0, -1.0}
    assert len({s.head for s in lots}) == 120


def test_a_lot_within_the_aims_keeps_to_them() -> None:
    for number in range(120):
        one = drawn(number, 2, within=True)
        scenario = one.scenario
        assert one.quality == FINE
        assert 500 <= scenario.camera.position_mm[2] <= 750
        assert scenario.camera.rate_hz >= 30 and not scenario.glasses
    assert drawn(3, 2, within=True).scenario.name != drawn(3, 2).scenario.name


def test_wide_movements_come_after_a_set_up_that_went_farther() -> None:
    for number in range(40):
        one = wide(number, 2)
        scenario, size = one.scenario, one.scenario.movement.amplitude_deg
        nods = scenario.movement.kind == "nods"
        assert nods == (number % 2 == 1) and one == wide(number, 2)
        assert (18 <= size <= 23) if nods else (30 <= size <= 38)
        reach = scenario.setup_nod_deg if nods else scenario.setup_turn_deg
        assert reach == pytest.approx(1.15 * size, abs=0.06)


def test_the_head_goes_as_far_in_the_set_up_as_its_scenario_says() -> None:
    scenario = wide(0, 2).scenario
    score = Score(scenario, make_head("anna"))
    step = next(s for s in score.steps if s["step"] == "turn_slowly")
    times = np.arange(step["from_s"], step["to_s"], 0.02)
    yaws = np.array([score.head_angles(float(t))[0] for t in times])
    assert step["to_s"] - step["from_s"] == 8.0
    assert np.abs(yaws).max() == pytest.approx(scenario.setup_turn_deg, abs=1.0)


def test_those_who_stand_are_seen_whole_by_a_wide_lens() -> None:
    lot = [standing(k, 2) for k in range(60)]
    assert standing(7, 2) == lot[7] and len({one.scenario.head for one in lot}) == 60
    for number, one in enumerate(lot):
        camera = one.scenario.camera
        x, y, away = camera.position_mm
        assert (camera.width_px, camera.height_px, camera.vertical_fov_deg) == (1280, 720, 55.0)
        assert away == 900 if number % 2 == 0 else 1000 <= away <= 1500
        # The head, 15 cm up and down from the eyes, in a picture half of which is 27.5 degrees.
        up = np.degrees(np.arctan2(-y, away)) + camera.tilt_deg
        assert abs(up) + np.degrees(np.arctan2(150, away)) < 27.5
        assert abs(x) + 100 < away * np.tan(np.radians(27.5)) * 16 / 9
        assert one.scenario.posture == "standing"


@pytest.mark.parametrize("number", range(4))
def test_a_drawn_head_has_its_own_pupils_and_neck(number: int) -> None:
    spec = random_head(number)
    head = make_head(f"random-{number}")
    right, left = head.eyes_mm
    assert np.linalg.norm(right - left) == pytest.approx(spec.pupils_mm, abs=0.2)
    assert tuple(head.neck_mm) == spec.neck_mm
    assert 54 <= spec.pupils_mm <= 74
    assert sum(share for *_, share in spec.mix) == pytest.approx(1.0, abs=0.01)


@pytest.mark.parametrize("name", ["nobody", "random-", "random-x", "random--1", "random-1.5"])
def test_nobody_else_has_a_name(name: str) -> None:
    with pytest.raises(KeyError):
        find_head(name)
    assert find_head("anna") is HEADS["anna"]


def test_hooded_lids_hang_in_the_clip() -> None:
    hooded = next(k for k in range(50) if random_head(k).hooded > 0.1)
    scenario = drawn(0).scenario.model_copy(update={"head": f"random-{hooded}", "blinks": False})
    score = Score(scenario, make_head(scenario.head))
    assert score.attitude(0.5).low == pytest.approx(random_head(hooded).hooded)


def first_of(kind: str, seed: int = 3) -> Scenario:
    return drawn(KINDS.index(kind), seed).scenario.model_copy(update={"blinks": False})


def test_a_fingertip_comes_near_and_goes_away_as_often_as_the_truth_says() -> None:
    scenario = first_of("near-far")
    score = Score(scenario, make_head(scenario.head))
    times = np.arange(score.start_s + 0.5, score.end_s, 1 / 60)
    rows = [truth_row(score, float(t)) for t in times]
    away = np.array([np.linalg.norm(score.looked_at(float(t))) for t in times])
    move = scenario.movement
    assert away.min() == pytest.approx(move.near_mm, abs=3)
    assert away.max() == pytest.approx(move.far_mm, abs=3)
    near, _ = find_peaks(-away, prominence=100)
    assert len(near) == move.repetitions == events(score)["repetitions"]
    # 2 atan of half the eyes' distance by that of the tip (plain geometry), the head at rest.
    apart = random_head(int(scenario.head.removeprefix("random-"))).pupils_mm
    read = np.array([float(row["vergence_deg"]) for row in rows])
    assert read == pytest.approx(np.degrees(2 * np.arctan(apart / 2 / away)), abs=0.15)


def test_lids_sink_and_the_light_changes_with_the_exercise_not_before() -> None:
    scenario = first_of("turns-lids-lower")
    score = Score(scenario, make_head(scenario.head))
    sunk = score.attitude(score.start_s + 1.0).low - score.attitude(score.start_s - 1.0).low
    assert sunk == pytest.approx(scenario.lids_sink) and sunk >= 0.1
    lit = next(
        one.scenario
        for k in range(20)
        if (one := drawn(KINDS.index("turns-light-changed") + k * len(KINDS), 3)).scenario
        and one.scenario.light_then_from is not None
    )
    assert lit.light_then_from != lit.light_from
