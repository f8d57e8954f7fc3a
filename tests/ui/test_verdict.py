"""Whether somebody sits well is told alike by every camera, however fine its pictures are."""

from __future__ import annotations

from math import nan, radians, tan

import pytest

from tests.ui.fakes import FakeWorld, Make, seen
from tests.ui.test_camera_lost_alone import in_picture, page_of
from tracker.sample import Sample
from tracker.vision.messages import SourceStats
from ui import words
from ui.verdict import verdict

#: Height of a face's landmarks from chin to forehead, in millimetres (from memory of tables of
#: adults' faces: chin to hair 180 to 190), and heights of field of common laptop cameras.
FACE_MM, FIELDS_DEG = 185.0, (37.0, 45.0, 55.0)
SIZES = ((640, 480), (1280, 720), (1920, 1080))


def seen_from(distance_mm: float, field_deg: float, height_px: int) -> Sample:
    """A face as high in the picture as it is from there."""
    share = FACE_MM / (2.0 * distance_mm * tan(radians(field_deg) / 2.0))
    return Sample(1.0, face_height_px=share * height_px, light=0.5)


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("field_deg", FIELDS_DEG)
@pytest.mark.parametrize("distance_mm", [500.0, 600.0, 750.0, 1000.0])
def test_where_the_program_asks_one_to_sit_is_good(
    size: tuple[int, int], field_deg: float, distance_mm: float
) -> None:
    assert verdict(seen_from(distance_mm, field_deg, size[1]), size[1]) == "good"


@pytest.mark.parametrize("size", SIZES)
def test_too_near_and_too_far_are_told(size: tuple[int, int]) -> None:
    assert verdict(seen_from(250.0, 45.0, size[1]), size[1]) == "near"
    assert verdict(seen_from(1700.0, 45.0, size[1]), size[1]) == "far"


def test_light_comes_first_and_an_unknown_height_says_nothing_of_the_distance() -> None:
    far = seen_from(1700.0, 45.0, 480)
    assert verdict(far, 0) == "good"
    assert verdict(Sample(1.0, reason="too_far", face_height_px=30.0, light=0.5), 0) == "far"
    assert verdict(Sample(1.0, face_height_px=150.0, light=0.1), 480) == "dark"
    assert verdict(Sample(1.0, face_height_px=150.0, light=0.95), 480) == "bright"
    assert verdict(Sample(1.0, reason="no_face", light=0.5), 480) == "no_face"
    assert verdict(Sample(1.0, reason="no_face", light=0.1), 480) == "dark"
    assert verdict(None, 480) == "opening"
    assert verdict(Sample(1.0, face_height_px=nan, light=0.5), 480) == "no_face"


def test_a_slow_camera_is_told_where_nothing_else_is() -> None:
    well, dark = seen_from(600.0, 45.0, 480), Sample(1.0, face_height_px=150.0, light=0.1)
    for rate_hz, key in ((nan, "good"), (30.0, "good"), (15.0, "good"), (10.0, "slow")):
        assert verdict(well, 480, rate_hz) == key
        assert verdict(dark, 480, rate_hz) == "dark"
        assert verdict(seen_from(1700.0, 45.0, 480), 480, rate_hz) == "far"


@pytest.mark.parametrize("size", SIZES)
def test_the_page_holds_a_face_against_the_cameras_own_pictures(
    make: Make, fake: FakeWorld, size: tuple[int, int]
) -> None:
    """What is shown of them is smaller."""
    person = in_picture(make, fake)
    fake.service.stats = SourceStats(width_px=size[0], height_px=size[1])
    for share, key in ((0.275, "good"), (0.1, "far"), (0.7, "near")):
        person.measured(0.5, lambda t, s=share: seen(t, face_height_px=s * size[1]))
        assert page_of(person).verdict.text() == words.say(f"verdict.{key}")


def test_the_page_tells_of_a_slow_camera_and_leads_on(make: Make, fake: FakeWorld) -> None:
    person = in_picture(make, fake)
    page = page_of(person)
    for rate_hz, key in ((30.0, "good"), (9.5, "slow")):
        fake.service.stats = SourceStats(width_px=640, height_px=480, rate_hz=rate_hz)
        person.measured(0.5, seen)
        assert page.verdict.text() == words.say(f"verdict.{key}") and page.next.isEnabled()
