"""Millimetres, degrees and pixels of the screen."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ui.geometry import (
    ASSUMED_DISTANCE_MM,
    REFERENCE_PX_MM,
    FieldExtent,
    ScreenGeometry,
    angle_deg,
    believable_distance_mm,
    facing_map,
    fitted_map,
    length_mm,
    offset_mm,
    screen_geometry,
    shrink_to_fit,
)

number = st.floats(-400, 400)


def test_a_screen_that_knows_its_size_is_believed() -> None:
    found = screen_geometry((1366, 768), (309.0, 174.0))
    assert found.source == "screen"
    assert found.px_per_mm == pytest.approx(1366 / 309)


@pytest.mark.parametrize(
    "size_mm", [(0, 0), (1, 1), (16, 9), (3090, 1740), (309, 309), (-309, -174)]
)
def test_nonsense_about_the_size_is_not(size_mm: tuple[float, float]) -> None:
    found = screen_geometry((1366, 768), size_mm)
    assert found.source == "assumed" and found.px_per_mm == REFERENCE_PX_MM


def test_a_measure_by_a_card_comes_first() -> None:
    found = screen_geometry((1920, 1080), (309.0, 174.0), px_per_mm=1920 / 345)
    assert found.source == "card"
    assert found.width_mm == pytest.approx(345)
    assert screen_geometry((1920, 1080), (309.0, 174.0), px_per_mm=50.0).source == "screen"


def test_the_camera_sits_at_the_top_centre() -> None:
    screen = ScreenGeometry(1000, 600, 4.0, "card")
    assert screen.to_mm((500, 0)) == (0, 0)
    assert screen.to_mm((900, 400)) == (100, -100)


@given(x=number, y=number)
def test_there_and_back(x: float, y: float) -> None:
    screen = ScreenGeometry(1366, 768, 4.4, "card")
    assert screen.to_mm(screen.to_px((x, y))) == pytest.approx((x, y), abs=1e-9)


def test_half_a_degree_at_sixty_centimetres_is_five_millimetres() -> None:
    assert length_mm(0.5, 600) == pytest.approx(2 * 600 * math.tan(math.radians(0.25)))
    assert length_mm(0.5, 600) == pytest.approx(5.236, abs=1e-3)
    assert angle_deg(offset_mm(12, 600), 600) == pytest.approx(12)


@pytest.mark.parametrize("wrong_mm", [0.0, 249.0, 2501.0, math.nan, -600.0])
def test_a_distance_that_cannot_be_is_not_believed(wrong_mm: float) -> None:
    assert believable_distance_mm(wrong_mm) == ASSUMED_DISTANCE_MM
    assert believable_distance_mm(720.0) == 720.0


def test_a_person_who_faces_the_screen() -> None:
    to_rest = facing_map(650, (10, -90))
    assert to_rest.to_rest((10, -90)) == (0, 0, 650)
    assert to_rest.to_rest((110, -40)) == (100, 50, 650)


def test_a_tilted_screen_is_found_from_the_set_up() -> None:
    tilt = math.radians(15)
    true = [(0, 0), (120, 0), (-120, 0), (0, 60), (0, -70), (100, 50)]

    def rest(p: tuple[float, float]) -> tuple[float, float, float]:
        return p[0], -60 + p[1] * math.cos(tilt), 600 + p[1] * math.sin(tilt)

    found = fitted_map(true, [rest(p) for p in true])
    assert found is not None
    assert found.to_rest((40, -30)) == pytest.approx(rest((40, -30)), abs=1e-6)


def test_points_on_a_line_make_no_map() -> None:
    assert fitted_map([(0, 0), (1, 0), (2, 0)], [(0, 0, 600)] * 3) is None
    assert fitted_map([(0, 0), (1, 0)], [(0, 0, 600)] * 2) is None


def test_targets_stay_in_the_field() -> None:
    extent = FieldExtent((0, -100), 150, 70)
    assert extent.inside((200, -90)) == (150, -70)
    assert extent.inside((20, 10)) == (20, 10)
    assert extent.on_screen((20, 10)) == (20, -90)
    assert shrink_to_fit([(300, 0), (0, 70)], extent) == pytest.approx(0.5)
    assert shrink_to_fit([(30, 10)], extent) == 1.0
