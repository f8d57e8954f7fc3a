"""Marks on a wall: their place and its error against plain trigonometry, and what is refused.

The trigonometry is written out here from a room's own coordinates, with no code of the program.
"""

from __future__ import annotations

from math import atan2, cos, degrees, hypot, inf, isfinite, nan, radians, sin, tan
from typing import Any

import numpy as np
import pytest

from calibration.placing import placed
from calibration.reuse import reads_marks
from tests.exercises.test_moving_sets import score_of, summary_of
from tracker.exercises.catalogue import CATALOGUE
from tracker.profile import RestFrame
from tracker.sample import Sample
from tracker.session.at_target import CLAIMED_DEG, gaze_error_at_target_deg
from tracker.session.derive import completed
from tracker.session.stage import Step
from tracker.wall import (
    EYES_LEAST_DEG,
    EYES_MOST_DEG,
    LEAST_MM,
    MOST_MM,
    Wall,
    head_error_deg,
    place_error_deg,
    spacing_range_mm,
    wall_of,
    why_not,
)

#: In a room: x to the patient's right, y up from the floor, z towards the wall.
EYES = np.array([120.0, 1180.0, 0.0])
CAMERA = np.array([150.0, 1100.0, 600.0])


def seen_from(here: np.ndarray, there: np.ndarray) -> tuple[float, float]:
    """Yaw and pitch of a place, by the two right-angled triangles."""
    x, y, z = there - here
    return degrees(atan2(x, z)), degrees(atan2(y, hypot(x, z)))


def sample_at(eyes: np.ndarray, time_s: float = 1.0) -> Sample:
    x, y, z = (float(v) for v in eyes - EYES)
    return Sample(
        time_s,
        head_yaw_deg=0.0,
        head_pitch_deg=0.0,
        head_roll_deg=0.0,
        head_x_mm=x,
        head_y_mm=y,
        head_z_mm=z,
        eye_yaw_deg=0.0,
        eye_pitch_deg=0.0,
    )


@pytest.mark.parametrize("up", [False, True])
@pytest.mark.parametrize("moved", [(0.0, 0.0, 0.0), (35.0, -12.0, 8.0)])
def test_two_marks_are_where_a_tape_says_from_wherever_the_eyes_are(
    up: bool, moved: tuple[float, float, float]
) -> None:
    wall = Wall(1500.0, 530.0, above_mm=90.0, right_mm=-40.0)
    # The same marks in the room: on the plane 1.5 m before the eyes, measured from the camera.
    middle = np.array([CAMERA[0] - 40.0, CAMERA[1] + 90.0, EYES[2] + 1500.0])
    half = np.array([0.0, 265.0, 0.0]) if up else np.array([265.0, 0.0, 0.0])
    here = EYES + np.array(moved)
    x, y, z = (float(v) for v in CAMERA - EYES)
    found = wall.marks_mm((x, y, z), up=up)
    for mark, there in zip(found, (middle + half, middle - half), strict=True):
        step = Step(from_s=0.0, to_s=9.0, step="exercise", target_mm=mark)
        seen = completed(sample_at(here), step)
        expected = seen_from(here, there)
        assert (seen.target_yaw_deg, seen.target_pitch_deg) == pytest.approx(expected, abs=1e-6)


def test_the_angle_to_each_side_is_that_of_half_the_way_between_them() -> None:
    assert Wall(1500.0, 529.0).half_deg == pytest.approx(degrees(atan2(264.5, 1500.0)))
    assert Wall(1500.0).half_deg is None
    assert Wall(1500.0).marks_mm((10.0, -80.0, 600.0)) == ((10.0, -80.0, 1500.0),)


def test_a_set_up_places_a_mark_though_its_camera_is_tilted_and_aside() -> None:
    # A camera that looks up by 8 degrees and turns aside by 5: its axes in the room.
    pitch, yaw = radians(8.0), radians(5.0)
    towards = np.array([-sin(yaw) * cos(pitch), sin(pitch), -cos(yaw) * cos(pitch)])
    down = np.array([-sin(yaw) * sin(pitch), -cos(pitch), -cos(yaw) * sin(pitch)])
    right = np.cross(down, towards)
    camera = np.stack([right, down, towards])  # rows: picture right, down, along its line
    assert np.allclose(camera @ camera.T, np.eye(3))
    frame = RestFrame(
        axes=np.stack([camera @ v for v in np.eye(3)], axis=1),
        turned=np.eye(3),
        origin_mm=camera @ (EYES - CAMERA),
        neck_mm=np.zeros(3),
    )
    assert frame.camera_mm == pytest.approx(tuple(CAMERA - EYES), abs=1e-9)
    look = Step.model_validate(
        {"from_s": 0.0, "to_s": 2.0, "step": "look", "wall_mm": (-300.0, 70.0, 1800.0)}
    )
    found = placed(look, frame).target_mm
    there = np.array([CAMERA[0] - 300.0, CAMERA[1] + 70.0, EYES[2] + 1800.0])
    assert found == pytest.approx(tuple(there - EYES), abs=1e-9)


@pytest.mark.parametrize("distance_mm", [900.0, 1500.0, 3000.0])
def test_how_far_the_eyes_turn_back_is_expected_for_the_wall_as_far_as_it_is(
    distance_mm: float,
) -> None:
    move = {"kind": "turns", "amplitude_deg": 17, "tempo_bpm": 60, "repetitions": 8, "uneven": 0}
    score = score_of("turns-on-target", move, wall={"distance_mm": distance_mm})
    found = summary_of(score)
    assert found.gaze is not None
    # The eyes lie a radius before the neck; for small angles the ratio is 1 + r/D.
    radius = float(score.head.eyes_mm.mean(axis=0)[2] - score.head.neck_mm[2])
    turned = radians(17.0)
    aside, nearer = radius * sin(turned), radius * (1.0 - cos(turned))
    expected = 1.0 + degrees(atan2(aside, distance_mm + nearer)) / 17.0
    assert expected == pytest.approx(1.0 + radius / distance_mm, abs=0.01)
    assert found.gaze["counter_turn_ratio"]["expected"] == pytest.approx(expected, abs=0.01)
    assert found.gaze["counter_turn_ratio"]["median"] == pytest.approx(expected, abs=0.1)


@pytest.mark.parametrize(
    "wall", [Wall(900.0), Wall(1500.0, 529.0), Wall(3000.0, 900.0, 100.0, 200.0)]
)
def test_the_error_of_a_place_is_that_of_its_lengths(wall: Wall) -> None:
    # A thousand people with a tape (common practice: to a centimetre each time).
    rng = np.random.default_rng(5)
    half = 0.5 * (wall.spacing_mm or 0.0)
    away = wall.distance_mm + rng.normal(0, 10.0, 20000)
    aside = half + wall.right_mm + rng.normal(0, 10.0, 20000)
    spread = float(np.degrees(np.arctan2(aside, away)).std())
    assert place_error_deg(wall) == pytest.approx(spread, rel=0.05)
    # Where the camera lies aside of the eyes, that is not known exactly either.
    assert place_error_deg(wall, (30.0, -200.0, 600.0)) > place_error_deg(wall)


def test_what_lies_outside_what_the_eyes_are_read_in_is_refused_with_what_would_do() -> None:
    for distance in (LEAST_MM, 1500.0, MOST_MM):
        least, most = (2.0 * distance * tan(radians(d)) for d in (EYES_LEAST_DEG, EYES_MOST_DEG))
        assert spacing_range_mm(distance, eyes=True) == pytest.approx((least, most))
        for spacing in (least - 2.0, most + 2.0):
            refused = why_not(Wall(distance, spacing), two=True, eyes=True)
            assert refused is not None and refused[0] == "wall_angle"
            for named in ("least", "most"):
                good = Wall(distance, refused[1][named])
                assert why_not(good, two=True, eyes=True) is None
        assert why_not(Wall(distance, least + 2.0), two=True, eyes=True) is None
    # A head may go farther than eyes alone.
    assert why_not(Wall(1200.0, 900.0), two=True, eyes=True) is not None
    assert why_not(Wall(1200.0, 900.0), two=True, eyes=False) is None
    far = why_not(Wall(1000.0, right_mm=300.0), two=False, eyes=False)
    assert far == ("wall_right", {"angle": 16.7, "most": 212.0})
    high = why_not(Wall(1000.0, above_mm=-300.0), two=False, eyes=False)
    assert high is not None and high[0] == "wall_above"


@pytest.mark.parametrize(
    "logged", [None, 3, [], {}, {"distance_mm": 0}, {"distance_mm": "far"}, {"distance_mm": nan}]
)
def test_what_is_no_wall_is_none(logged: Any) -> None:
    assert wall_of(logged) is None


def test_a_wall_survives_its_stage_log() -> None:
    for wall in (Wall(1500.0), Wall(2000.0, 500.0, -30.0, 12.0)):
        assert wall_of(wall.to_log()) == wall


# --- how well the gaze is known there ---

TURNS, JUMPS = CATALOGUE["turns-on-target"], CATALOGUE["eyes-side-to-side"]
MARK = {"error_deg": 0.6, "expected_deg": 20.0, "expected_error_deg": 0.8}


def on_wall(exercise: str, **wall: float) -> Step:
    return Step.model_validate(
        {"from_s": 0, "to_s": 9, "step": "exercise", "exercise": exercise}
        | ({"wall": wall} if wall else {})
    )


def test_on_the_screen_the_error_is_that_of_the_set_up() -> None:
    assert (
        gaze_error_at_target_deg(on_wall("turns-on-target"), TURNS, {"gaze_error_deg": 0.7}) == 0.7
    )
    assert np.isnan(gaze_error_at_target_deg(on_wall("turns-on-target"), TURNS, {}))


def test_at_the_wall_the_error_grows_by_what_is_not_known_there() -> None:
    jumps = on_wall("eyes-side-to-side", distance_mm=1500.0, spacing_mm=529.0)
    place = place_error_deg(Wall(1500.0, 529.0))
    found = {"gaze_error_deg": 0.7}
    assert gaze_error_at_target_deg(jumps, JUMPS, found) == pytest.approx(hypot(0.7, place))
    assert gaze_error_at_target_deg(jumps, JUMPS, {}) == pytest.approx(hypot(CLAIMED_DEG, place))
    # A set-up that measured none allows no claim; a clip without one claims what is stated.
    unread = {"calibration": True, "gaze_error_deg": None}
    assert gaze_error_at_target_deg(jumps, JUMPS, unread) == inf
    assert isfinite(gaze_error_at_target_deg(jumps, JUMPS, {"calibration": "generic"}))
    # A head that turns adds its own: 5 percent of 20 degrees, or what the nose at a mark showed.
    turns = on_wall("turns-on-target", distance_mm=1500.0)
    claimed = gaze_error_at_target_deg(turns, TURNS, found)
    assert claimed > hypot(0.7, 1.0)
    checked = gaze_error_at_target_deg(turns, TURNS, found | {"mark": MARK})
    assert checked == pytest.approx(
        hypot(0.7, place_error_deg(Wall(1500.0)), hypot(0.6, 0.4)), abs=1e-9
    )
    assert head_error_deg({"error_deg": None}, 20.0, 0.05, 0.0) == pytest.approx(1.0)


def test_looks_at_the_marks_tell_more_than_lengths_but_never_less_than_the_screen() -> None:
    jumps = on_wall("eyes-side-to-side", distance_mm=1500.0, spacing_mm=529.0)
    for there, expected in ((1.4, 1.4), (0.3, 0.7)):
        found = {"gaze_error_deg": 0.7, "wall_check": {"gaze_error_deg": there}}
        assert gaze_error_at_target_deg(jumps, JUMPS, found) == pytest.approx(expected)


def test_where_the_error_is_near_the_limit_nothing_is_said() -> None:
    move = {"kind": "turns", "amplitude_deg": 17, "tempo_bpm": 60, "repetitions": 6}
    glance = {"glances": [{"at_s": 3.0, "lasts_s": 1.2, "yaw_deg": 11, "pitch_deg": 0}]}
    score = score_of("turns-on-target", move, wall={"distance_mm": 1500}, **glance)
    told = summary_of(score)
    assert {e.code for e in told.events} == {"gaze_off_target"}
    coarse = summary_of(score, gaze_error_deg=1.9)
    assert not coarse.events and coarse.gaze is not None
    assert coarse.gaze["on_target_fraction"]["value"] is None
    assert "too coarsely" in coarse.gaze["on_target_fraction"]["reason"]
    # The same eyes at a target on the screen can still be judged.
    on_screen = score_of("turns-on-target", move, **glance)
    assert {e.code for e in summary_of(on_screen, gaze_error_deg=1.9).events} == {"gaze_off_target"}


def test_a_kept_set_up_is_asked_whether_the_eyes_were_led_to_the_marks() -> None:
    class Gaze:
        reach = np.array([[-13.0, 13.0], [-20.0, -3.0]])

    class Kept:
        gaze: Any = Gaze()
        rest = RestFrame(
            np.stack([[-1.0, 0, 0], [0, -1.0, 0], [0, 0, -1.0]], axis=1),
            np.eye(3),
            np.array([0.0, -100.0, 600.0]),
            np.zeros(3),
        )

    kept: Any = Kept()
    assert kept.rest.camera_mm == pytest.approx((0.0, -100.0, 600.0))
    # 1.5 m away: a mark as high as the camera lies 3.8 degrees down, the lid's edge above it.
    assert reads_marks(kept, [(264.0, 0.0, 1500.0), (-264.0, 0.0, 1500.0)])
    assert not reads_marks(kept, [(264.0, 100.0, 1500.0)]), "0 degrees up were never looked at"
    assert not reads_marks(kept, [(420.0, 0.0, 1500.0)])
    kept.gaze = None
    assert not reads_marks(kept, [(0.0, 0.0, 1500.0)])
