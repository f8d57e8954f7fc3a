"""A camera's field of view: typed, taken for granted, and what a summary says of it."""

from __future__ import annotations

import pytest

from tracker.errors import InputError
from tracker.lens import DEFAULT_LENS, Lens, lens_of, stated_lens


def test_the_diagonal_field_gives_the_vertical_one() -> None:
    # A 3-4-5 picture: tan(v / 2) = 3/5 tan(d / 2); 2 atan(.6 tan 39 deg) = 51.83.
    lens = stated_lens(78.0, 640, 480, diagonal=True)
    assert lens.vertical_fov_deg == pytest.approx(51.83, abs=0.01)
    assert lens.source == "stated" and lens.error_deg == 3.0
    assert stated_lens(51.0, 640, 480, diagonal=False).vertical_fov_deg == 51.0


@pytest.mark.parametrize("fov", [0.0, -40.0, 15.0, 179.9, 400.0, float("nan")])
@pytest.mark.parametrize("diagonal", [True, False])
def test_no_webcam_sees_like_that(fov: float, diagonal: bool) -> None:
    with pytest.raises(InputError, match="degrees"):
        stated_lens(fov, 640, 480, diagonal=diagonal)


def test_it_holds_for_pictures_of_one_shape() -> None:
    lens = stated_lens(50.0, 640, 480, diagonal=False)
    assert lens.fits(1280, 960) and not lens.fits(1280, 720)
    assert DEFAULT_LENS.fits(1280, 720)


def test_what_a_summary_says() -> None:
    assert lens_of(None).found() == {
        "vertical_fov_deg": 52.0,
        "vertical_fov_source": "default",
        "vertical_fov_error_deg": 12.0,
    }
    assert lens_of(48.0).found()["vertical_fov_error_deg"] is None
    assert lens_of(48.0).known_deg == 48.0 and lens_of(None).known_deg is None
    assert Lens(44.123, "paper", 1.234).found()["vertical_fov_deg"] == 44.12
