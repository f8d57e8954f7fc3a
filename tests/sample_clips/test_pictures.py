"""The pictures show what the truth says, and a face finder finds the face in them."""

from __future__ import annotations

from dataclasses import replace
from itertools import islice
from typing import Any

import numpy as np
import pytest
from numpy.typing import NDArray

from sample_clips.heads import make_head
from sample_clips.people import HEADS
from sample_clips.render import frames
from sample_clips.scene import CameraPlace
from tests.sample_clips.scenes import attitude_to, pixel_of, pupil_px, scenario, still
from tracker.vision.landmarks import LandmarkFinder


def pupils(point: tuple[float, float, float], **how: Any) -> NDArray[Any]:
    """Where both pupils are seen while the eyes look at ``point``: right eye first."""
    head = make_head("anna")
    attitude = attitude_to(head, point, **how)
    picture = still(attitude)
    # A pupil's middle lies on the ball's front, where the eye looks.
    fronts = head.in_space(head.eyes_mm + 12.0 * attitude.look, attitude)
    return np.array([pupil_px(picture, pixel_of(front)) for front in fronts])


@pytest.mark.parametrize(
    ("point", "how"),
    [
        ((0, 0, 600), {}),
        ((120, 0, 600), {}),
        ((-120, 0, 600), {}),
        ((0, 0, 600), {"yaw": 12.0}),
        ((0, 0, 600), {"pitch": -6.0}),
        ((0, 0, 600), {"shift": (15.0, 10.0, -60.0)}),
    ],
)
def test_pupils_are_seen_where_geometry_puts_them(
    point: tuple[float, float, float], how: dict[str, Any]
) -> None:
    head = make_head("anna")
    attitude = attitude_to(head, point, **how)
    fronts = head.in_space(head.eyes_mm + 12.0 * attitude.look, attitude)
    for seen, front in zip(pupils(point, **how), fronts, strict=True):
        assert seen == pytest.approx(pixel_of(front), abs=0.5)


def test_the_patients_right_is_at_the_left_of_the_picture() -> None:
    ahead = pupils((0, 0, 600))
    assert ahead[0, 0] < ahead[1, 0]  # the right eye is at the left
    assert (pupils((150, 0, 600))[:, 0] < ahead[:, 0] - 2).all()  # looking to the right
    assert (pupils((0, 0, 600), yaw=10)[:, 0] < ahead[:, 0] - 5).all()  # turning to the right
    assert (pupils((0, 0, 600), shift=(20, 0, 0))[:, 0] < ahead[:, 0] - 5).all()


def test_up_is_up_in_the_picture() -> None:
    ahead = pupils((0, 0, 600))
    assert (pupils((0, 60, 600))[:, 1] < ahead[:, 1] - 1).all()
    assert (pupils((0, 0, 600), pitch=6)[:, 1] < ahead[:, 1] - 3).all()


def test_a_camera_that_looks_down_sees_the_face_higher() -> None:
    down = CameraPlace(320, 240, 24.0, (0.0, 0.0, 600.0), 5.0)
    assert pixel_of(np.zeros(3), down)[1] < pixel_of(np.zeros(3))[1] - 30


def test_shut_eyes_show_no_pupil() -> None:
    head = make_head("anna")
    picture = still(attitude_to(head, (0, 0, 600), shut=1.0))
    for eye in head.eyes_mm:
        column, row = np.round(pixel_of(eye)).astype(int)
        assert picture[row - 5 : row + 6, column - 5 : column + 6].mean(axis=2).min() > 30


def test_same_scenario_same_pixels() -> None:
    def first_two(seed: int) -> list[NDArray[np.uint8]]:
        run = frames(scenario(seed=seed))
        return [next(run)[1] for _ in range(2)]

    one, again, other = first_two(3), first_two(3), first_two(4)
    assert all(np.array_equal(a, b) for a, b in zip(one, again, strict=True))
    assert not np.array_equal(one[0], other[0])
    assert one[0].dtype == np.uint8 and one[0].shape == (120, 160, 3)
    # The sensor's noise is new in every frame.
    assert not np.array_equal(one[0], one[1])


def test_several_exposures_blur_a_moving_head_only() -> None:
    camera = {"width_px": 160, "height_px": 120, "noise": 0.0, "rate_hz": 10}

    def pictures(exposures: int) -> list[NDArray[np.float64]]:
        fast = scenario(
            setup=False,
            movement={"amplitude_deg": 25.0, "tempo_bpm": 160, "repetitions": 1},
            camera=camera | {"exposures": exposures},
        )
        return [picture.astype(float) for _, picture, _ in frames(fast)][:10]

    sharp, blurred = pictures(1), pictures(4)
    # Still for half a second, then through the middle at full speed about 0.87 s in.
    differences = [np.abs(a - b).mean() for a, b in zip(sharp, blurred, strict=True)]
    assert differences[9] > 5 * differences[1]


def test_a_neighbour_is_drawn_beside() -> None:
    camera = {"width_px": 160, "height_px": 120, "noise": 0.0}
    alone = next(frames(scenario(camera=camera)))[1].astype(float)
    both = next(frames(scenario(camera=camera, neighbour="finn")))[1].astype(float)
    changed = np.abs(alone - both).max(axis=2) > 8
    columns = np.nonzero(changed.any(axis=0))[0]
    assert changed.sum() > 200
    assert columns.min() > 80  # at the patient's left: the right half of the picture


def test_glasses_are_drawn_around_the_eyes_and_not_over_the_pupils() -> None:
    head = make_head("anna")
    bare = attitude_to(head, (0, 0, 600))
    with_glasses = still(replace(bare, glasses=True))
    difference = np.abs(still(bare) - with_glasses).max(axis=2)
    assert (difference > 60).sum() > 300
    for eye, centre in zip(head.eyes_mm, head.balls_mm, strict=True):
        pupil = np.round(pixel_of(eye)).astype(int)
        assert difference[pupil[1] - 3 : pupil[1] + 4, pupil[0] - 3 : pupil[0] + 4].max() < 1
        rim = np.round(pixel_of(centre + np.array([0.0, -22.0, head.ball_mm + 12.0]))).astype(int)
        assert difference[rim[1] - 3 : rim[1] + 4, rim[0]].max() > 60


def test_who_is_away_is_not_in_the_picture() -> None:
    away = scenario(
        setup=False,
        movement={"repetitions": 1},
        away=[{"at_s": 0.2, "lasts_s": 2.0}],
        camera={"width_px": 160, "height_px": 120, "noise": 0.0, "rate_hz": 5},
    )
    first, *_, gone, still_gone = (p.astype(float) for _, p, _ in islice(frames(away), 8))
    assert np.abs(first - gone)[20:70, 60:100].mean() > 10
    assert np.abs(gone - still_gone).mean() < 0.5


@pytest.mark.parametrize("name", sorted(HEADS))
def test_a_face_finder_finds_the_face_in_every_attitude(name: str) -> None:
    camera = CameraPlace(640, 480, 52.0, (0.0, 60.0, 560.0), 4.0)
    head = make_head(name)
    ways: list[dict[str, Any]] = [{}, {"yaw": 28}, {"yaw": -28}, {"pitch": 15}, {"pitch": -15}]
    with LandmarkFinder() as finder:
        for number, way in enumerate(ways):
            attitude = attitude_to(head, (0, -60, 600), **way)
            picture = np.clip(still(attitude, name, camera), 0, 255).astype(np.uint8)
            faces = finder.find(picture, number / 10)
            assert len(faces) == 1, way
            middle = pixel_of(head.in_space(head.eyes_mm, attitude).mean(axis=0), camera)
            assert np.linalg.norm(faces[0].centre_px - middle) < 60, way
