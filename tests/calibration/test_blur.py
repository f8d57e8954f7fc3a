"""A picture that is blurred against the set-up is trusted less, and in the end not measured."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import cv2
import numpy as np
import pytest

from calibration.fit import fit_profile
from sample_clips import shipped_clip
from tests.calibration.conftest import FOV_DEG, SHAPE, observed
from tracker.frame import Frame
from tracker.head.alignment import Alignment
from tracker.head.perspective import Pose
from tracker.measure import MIN_QUALITY, SHARP, SMEARED, measure, quality_of
from tracker.profile import Profile
from tracker.sample import Sample
from tracker.vision.clips import open_clip
from tracker.vision.observer import Observer
from ui.bench.truth import load_truth

#: The limits of the sharpness were placed on three other clips.
CLIP = "turns-gaze-drops"
Filmed = tuple[Profile, list[Frame]]


@pytest.fixture(scope="module")
def filmed() -> Filmed:
    """The person of a clip, and pictures of the exercise: twelve, turned as they come."""
    observations, steps = observed(CLIP)
    person = fit_profile(observations, steps, SHAPE, FOV_DEG)[0]
    begins_s = max(s.to_s for s in steps)
    frames = []
    with open_clip(shipped_clip(CLIP)) as clip:
        for frame in clip:
            if frame.time_s >= begins_s and frame.index % 11 == 0:
                frames.append(replace(frame, image=frame.image.copy()))
            if len(frames) == 12:
                break
    return person, frames


def seen(filmed: Filmed, change: Callable[[Any], Any]) -> list[Sample]:
    """Samples of the pictures, changed."""
    person, frames = filmed
    observer = Observer()
    try:
        return [
            measure(observer.observe(replace(f, image=change(f.image))), person) for f in frames
        ]
    finally:
        observer.close()


def off_deg(samples: list[Sample]) -> float:
    """Mean error of the head's yaw."""
    truth = load_truth(shipped_clip(CLIP)).columns
    true = np.interp([s.time_s for s in samples], truth["time_s"], truth["head_yaw_deg"])
    return float(np.nanmean(np.abs(np.array([s.head_yaw_deg for s in samples]) - true)))


def quality(samples: list[Sample]) -> float:
    return float(np.median([s.quality for s in samples]))


def out_of_focus(px: float) -> Callable[[Any], Any]:
    return lambda image: cv2.GaussianBlur(image, (0, 0), px)


def moved(px: int) -> Callable[[Any], Any]:
    """Smeared sideways, as by a head that turns while the shutter is open."""
    line = np.zeros((px, px), np.float32)
    line[px // 2] = 1.0 / px
    return lambda image: cv2.filter2D(image, -1, line)


def dim(image: Any) -> Any:
    noise = np.random.default_rng(2).normal(0.0, 2.5, image.shape)
    return np.clip(image * 0.4 + noise, 0, 255).astype(np.uint8)


def test_blur_lowers_the_quality_as_the_error_grows(filmed: Filmed) -> None:
    good = seen(filmed, lambda image: image)
    assert quality(good) > 0.85 and not any(s.reason in ("blurred", "covered") for s in good)
    soft = seen(filmed, out_of_focus(2.0))
    assert quality(soft) < 0.8 * quality(good) and off_deg(soft) > 1.3 * off_deg(good)


@pytest.mark.parametrize("smear", [out_of_focus(5.0), moved(19)])
def test_what_is_blurred_for_good_is_not_measured_and_says_why(
    filmed: Filmed, smear: Callable[[Any], Any]
) -> None:
    samples = [s for s in seen(filmed, smear) if s.reason != "no_face"]
    blurred = [s for s in samples if s.reason == "blurred"]
    assert len(samples) > 4 and len(blurred) > 0.7 * len(samples)
    assert all(np.isnan(s.head_yaw_deg) and s.quality == 0.0 for s in blurred)
    assert not any(s.reason == "covered" for s in samples)


def test_dim_light_is_no_blur(filmed: Filmed) -> None:
    samples = seen(filmed, dim)
    assert not any(s.reason in ("blurred", "covered") for s in samples)
    assert quality(samples) > 0.75


def test_sharpness_goes_into_the_quality_between_its_limits() -> None:
    found = Alignment(Pose(np.eye(3), np.zeros(3)), 0.98, 0.9)
    full = quality_of(found, 1.0)
    assert full == quality_of(found, SHARP) == quality_of(found, 1.4)
    assert quality_of(found, 0.5 * (SHARP + SMEARED)) == pytest.approx(0.5 * full)
    assert quality_of(found, SMEARED) == 0.0 < MIN_QUALITY < full
