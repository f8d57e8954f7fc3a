"""Pictures that carry no measurement: each says why, and gives no figure.

The limits are the program's own (``tracker/measure.py``); the picture is one of a shipped clip,
made worse just beyond each limit, and once just within it.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from tracker.head.perspective import rotation_of_vector
from tracker.measure import DARK, MAX_PITCH_DEG, MAX_YAW_DEG, MIN_FACE_HEIGHT_PX, measure
from tracker.profile import Profile
from tracker.sample import Sample
from tracker.session.stage import Step
from tracker.vision.observer import Observation

Seen = tuple[list[Observation], list[Step]]


@pytest.fixture
def good(seen: Seen) -> Observation:
    """A picture at rest, of which everything is measured."""
    observations, steps = seen
    rest = next(s for s in steps if s.step == "rest")
    return next(o for o in observations if rest.from_s + 0.5 <= o.time_s < rest.to_s)


def has_no_figure(sample: Sample) -> bool:
    figures = (
        sample.head_yaw_deg,
        sample.head_pitch_deg,
        sample.head_roll_deg,
        sample.neck_x_mm,
        sample.eye_yaw_deg,
        sample.gaze_yaw_deg,
        sample.eye_open,
    )
    return bool(np.isnan(figures).all()) and sample.quality == 0.0


def test_a_good_picture_is_measured(good: Observation, person: Profile) -> None:
    sample = measure(good, person)
    assert sample.reason == "" and sample.quality > 0.8 and abs(sample.head_yaw_deg) < 2


@pytest.mark.parametrize(("of_limit", "reason"), [(0.99, "too_dark"), (1.01, "")])
def test_the_dark(good: Observation, person: Profile, of_limit: float, reason: str) -> None:
    sample = measure(replace(good, light=DARK * of_limit), person)
    assert sample.reason == reason and has_no_figure(sample) == bool(reason)


@pytest.mark.parametrize(("light", "reason"), [(0.5 * DARK, "too_dark"), (0.5, "no_face")])
def test_no_face_in_the_dark_is_the_darks_fault(
    good: Observation, person: Profile, light: float, reason: str
) -> None:
    sample = measure(replace(good, face=None, crop=None, light=light), person)
    assert sample.reason == reason and has_no_figure(sample)


@pytest.mark.parametrize(("of_limit", "is_too_far"), [(0.97, True), (1.03, False)])
def test_a_small_face(
    good: Observation, person: Profile, of_limit: float, is_too_far: bool
) -> None:
    assert good.face is not None
    middle = good.face.points_px.mean(axis=0)
    smaller = MIN_FACE_HEIGHT_PX * of_limit / good.face.height_px
    points = middle + smaller * (good.face.points_px - middle)
    sample = measure(replace(good, face=replace(good.face, points_px=points)), person)
    assert (sample.reason == "too_far") == is_too_far
    assert has_no_figure(sample) or not is_too_far
    assert sample.face_height_px == pytest.approx(MIN_FACE_HEIGHT_PX * of_limit, abs=0.1)


@pytest.mark.parametrize("way", [-1.0, 1.0])
@pytest.mark.parametrize(("axis", "limit_deg"), [(1, MAX_YAW_DEG), (0, MAX_PITCH_DEG)])
def test_a_wide_turn(
    good: Observation, person: Profile, axis: int, limit_deg: float, way: float
) -> None:
    """Seen from a rest that lies so far from this picture."""
    for turn_deg, reason in ((limit_deg + 4, "turned_too_far"), (limit_deg - 4, "")):
        about = rotation_of_vector(np.radians(way * turn_deg) * person.rest.axes[:, axis])
        rest = replace(person.rest, turned=about @ person.rest.turned)
        sample = measure(good, replace(person, rest=rest))
        assert sample.reason == reason and has_no_figure(sample) == bool(reason)
        if not reason:
            read = sample.head_yaw_deg if axis == 1 else sample.head_pitch_deg
            assert abs(read) == pytest.approx(turn_deg, abs=2)


def test_something_before_the_face(good: Observation, person: Profile) -> None:
    assert good.crop is not None
    image = np.random.default_rng(1).uniform(40, 200, good.crop.image.shape).astype(np.float32)
    sample = measure(replace(good, crop=replace(good.crop, pixels=image)), person)
    assert sample.reason == "covered" and has_no_figure(sample)
