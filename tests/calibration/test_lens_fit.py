"""The focal length from rendered sheets and cards, against the camera that rendered them."""

from __future__ import annotations

import cv2
import numpy as np
import pytest

from calibration.lens_fit import SIDES_MM, FoundFocal, find_focal, tilt_between_deg
from tests.calibration.sheets import View, focal_px, held, render
from tracker.errors import InputError
from tracker.vision.sheet import find_sheet

SIZES = ((640, 480), (1280, 720))


def corners(views: list[View]) -> list[np.ndarray]:
    return [c for v in views if (c := find_sheet(v.image)) is not None]


def off(found: FoundFocal, fov_deg: float, height_px: int) -> float:
    return found.focal_px / focal_px(fov_deg, height_px) - 1


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("fov_deg", [35, 44, 52, 60])
@pytest.mark.parametrize("kind", ["paper", "card"])
def test_held_up_tilted_it_gives_the_focal_length_within_one_percent(
    kind: str, fov_deg: int, size: tuple[int, int]
) -> None:
    rng = np.random.default_rng(1000 + fov_deg)
    views = held(rng, fov_deg, 9, sides_mm=SIDES_MM[kind], size=size)
    found = find_focal(corners(views), SIDES_MM[kind], size)
    assert abs(off(found, fov_deg, size[1])) < 0.01
    assert abs(off(found, fov_deg, size[1])) * found.focal_px < found.error_px
    lens = found.lens(kind, *size)
    assert abs(lens.vertical_fov_deg - fov_deg) < 0.5
    assert lens.error_deg is not None and 0.5 < lens.error_deg < 3.0
    assert lens.source == kind


def test_the_corners_are_found_to_a_fraction_of_a_pixel() -> None:
    errors = []
    for seed in range(4):
        rng = np.random.default_rng(seed)
        for view in held(rng, 50.0):
            found = find_sheet(view.image)
            if found is not None:
                turns = [np.roll(found, k, axis=0) - view.corners_px for k in range(4)]
                errors.append(min(float(np.abs(t).max()) for t in turns))
    assert len(errors) >= 20
    assert np.median(errors) < 0.4
    # In clutter another box is taken now and then: the fit leaves it out.
    assert np.mean(np.array(errors) < 1.0) > 0.85


def test_it_agrees_with_the_library_on_exact_corners() -> None:
    rng = np.random.default_rng(3)
    size, sides = (640, 480), SIDES_MM["paper"]
    noisy = [v.corners_px + rng.normal(0, 0.3, (4, 2)) for v in held(rng, 47.0, 8)]
    ours = find_focal(noisy, sides, size)
    x, y = sides[1] / 2, sides[0] / 2
    body = np.array([[-x, -y, 0], [x, -y, 0], [x, y, 0], [-x, y, 0]], np.float32)
    start = np.array([[500.0, 0, 319.5], [0, 500.0, 239.5], [0, 0, 1]])
    flags = (
        cv2.CALIB_USE_INTRINSIC_GUESS
        | cv2.CALIB_FIX_PRINCIPAL_POINT
        | cv2.CALIB_FIX_ASPECT_RATIO
        | cv2.CALIB_ZERO_TANGENT_DIST
        | cv2.CALIB_FIX_K1
        | cv2.CALIB_FIX_K2
        | cv2.CALIB_FIX_K3
    )
    seen = [v.astype(np.float32) for v in noisy]
    _, matrix, *_ = cv2.calibrateCamera([body] * len(seen), seen, size, start, None, flags=flags)
    assert ours.focal_px == pytest.approx(matrix[0, 0], rel=2e-4)


@pytest.mark.parametrize("fov_deg", [35, 52, 60])
def test_a_measured_distance_stands_in_for_tilt(fov_deg: int) -> None:
    rng = np.random.default_rng(fov_deg)
    away = 297 / (2 * np.tan(np.radians(fov_deg / 2))) / 0.6
    views = corners([render(rng, fov_deg, turn_rad=(0.02, 0.01, 0.0), away_mm=away)])
    with pytest.raises(InputError, match=r"tilt|wide"):
        find_focal(views, SIDES_MM["paper"], (640, 480))
    found = find_focal(views, SIDES_MM["paper"], (640, 480), away)
    assert abs(off(found, fov_deg, 480)) < 0.01
    # A tape measure that reads 2 cm too much: the error said covers it.
    slipped = find_focal(views, SIDES_MM["paper"], (640, 480), away + 20)
    assert abs(slipped.focal_px - focal_px(fov_deg, 480)) < slipped.error_px


def test_through_a_lens_that_is_no_pinhole_the_error_said_holds() -> None:
    inside, gone = [], 0
    for fov_deg in (40, 52, 60):
        for seed in range(3):
            rng = np.random.default_rng(seed * 100 + fov_deg)
            views = held(rng, fov_deg, bend=-0.05, off_axis=0.01, blur_px=1.0, noise=6.0)
            try:
                found = find_focal(corners(views), SIDES_MM["paper"], (640, 480))
            except InputError:
                gone += 1
                continue
            inside.append(abs(off(found, fov_deg, 480)) * found.focal_px < found.error_px)
    assert gone <= 2
    assert sum(inside) >= len(inside) - 1


def test_held_square_without_a_distance_it_is_refused() -> None:
    rng = np.random.default_rng(5)
    views = [render(rng, 52.0, turn_rad=(0.02 * k, 0.03, 0), away_mm=500.0) for k in range(5)]
    with pytest.raises(InputError, match="tilt it more"):
        find_focal(corners(views), SIDES_MM["paper"], (640, 480))


@pytest.mark.parametrize("sides_mm", [(250.0, 240.0), (279.4, 215.9)])
def test_a_thing_of_another_shape_is_refused(sides_mm: tuple[float, float]) -> None:
    # The second is the letter paper of North America.
    rng = np.random.default_rng(6)
    views = held(rng, 52.0, 8, sides_mm=sides_mm)
    with pytest.raises(InputError, match="another shape"):
        find_focal(corners(views), SIDES_MM["paper"], (640, 480))


def test_nothing_seen_is_said() -> None:
    with pytest.raises(InputError, match="four corners"):
        find_focal([], SIDES_MM["paper"], (640, 480))


def test_other_things_in_some_views_are_left_out() -> None:
    rng = np.random.default_rng(7)
    views = [v.corners_px for v in held(rng, 52.0)]
    stray = np.array([[100.0, 80.0], [300.0, 85.0], [290.0, 200.0], [110.0, 190.0]])
    found = find_focal([stray, *views], SIDES_MM["paper"], (640, 480))
    assert found.views == len(views)
    assert abs(off(found, 52.0, 480)) < 0.002


def test_no_sheet_in_a_plain_or_noisy_picture() -> None:
    rng = np.random.default_rng(8)
    assert find_sheet(np.full((480, 640, 3), 128, np.uint8)) is None
    assert find_sheet(rng.integers(0, 255, (480, 640, 3), dtype=np.uint8)) is None


def test_the_tilt_between_two_views() -> None:
    rng = np.random.default_rng(9)
    one = render(rng, 52.0, turn_rad=(0.5, 0, 0), away_mm=600.0)
    other = render(rng, 52.0, turn_rad=(0.5, 0.5, 0), away_mm=600.0)
    again = render(rng, 52.0, turn_rad=(0.5, 0, 0), away_mm=550.0, beside=(40.0, 0.0))
    sides, size = SIDES_MM["paper"], (640, 480)
    assert 20 < tilt_between_deg(one.corners_px, other.corners_px, sides, size) < 35
    assert tilt_between_deg(one.corners_px, again.corners_px, sides, size) < 3
