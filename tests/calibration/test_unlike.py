"""Eyes that look unlike those of the set-up are not read; the others are, head and all."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import cv2
import numpy as np

from tests.calibration.test_one_eye import CORNERS
from tracker.measure import MIN_OPEN_FOR_GAZE, measure
from tracker.profile import Profile
from tracker.sample import Sample
from tracker.session.stage import Step
from tracker.vision.observer import Observation

Spoil = Callable[[np.ndarray], np.ndarray]


def shadowed(patch: np.ndarray) -> np.ndarray:
    """A hard shadow with a slanting edge, as of a frame or a lamp to the side, over an eye."""
    y, x = np.mgrid[0 : patch.shape[0], 0 : patch.shape[1]]
    dark = x + 0.8 * y > 0.7 * patch.shape[1]
    return np.where(dark, 0.45 * patch, patch)


def unfocused(patch: np.ndarray) -> np.ndarray:
    """As through a smeared lens."""
    return np.asarray(cv2.GaussianBlur(patch, (0, 0), 0.12 * patch.shape[1]))


def brighter(patch: np.ndarray) -> np.ndarray:
    """More light from the side: level and slope alone."""
    return np.asarray(patch * 0.9 + np.linspace(5, 40, patch.shape[1]))


def spoilt(observation: Observation, how: Spoil) -> Observation:
    """The same picture with both eyes changed."""
    face, crop = observation.face, observation.crop
    assert face is not None and crop is not None
    image = crop.image.copy()
    for corners in CORNERS.values():
        a, b = ((face.points_px[c] - [crop.left_px, crop.top_px]) * crop.scale for c in corners)
        (x, y), half = 0.5 * (a + b), 0.9 * float(np.linalg.norm(a - b))
        rows = slice(max(int(y - 0.6 * half), 0), int(y + 0.6 * half) + 1)
        columns = slice(max(int(x - half), 0), int(x + half) + 1)
        image[rows, columns] = how(image[rows, columns])
    return replace(observation, crop=replace(crop, pixels=image))


def readings(
    seen: tuple[list[Observation], list[Step]], person: Profile, how: Spoil | None = None
) -> list[Sample]:
    """Samples of looks with open eyes, as they are or spoilt."""
    observations, steps = seen
    looks = [s for s in steps if s.step == "look"]
    chosen = [
        o
        for o in observations
        if o.face is not None and any(s.from_s + 0.4 <= o.time_s < s.to_s for s in looks)
    ][::6]
    chosen = [o for o in chosen if measure(o, person).eye_open > MIN_OPEN_FOR_GAZE + 0.2]
    assert len(chosen) > 10
    return [measure(o if how is None else spoilt(o, how), person) for o in chosen]


def share_read(samples: list[Sample]) -> float:
    return float(np.isfinite([s.gaze_yaw_deg for s in samples]).mean())


def test_eyes_as_in_the_set_up_are_read(
    seen: tuple[list[Observation], list[Step]], person: Profile
) -> None:
    samples = readings(seen, person)
    assert share_read(samples) == 1.0
    assert all(np.isfinite(s.vergence_deg) and s.reason == "" for s in samples)


def test_eyes_in_shadow_or_behind_a_smeared_lens_are_not(
    seen: tuple[list[Observation], list[Step]], person: Profile
) -> None:
    for how in (shadowed, unfocused):
        samples = readings(seen, person, how)
        assert share_read(samples) < 0.1, how.__name__
        withheld = [s for s in samples if not np.isfinite(s.gaze_yaw_deg)]
        assert {s.reason for s in withheld} == {"eyes_unlike"}
        # The head is measured all the same.
        assert all(np.isfinite([s.head_yaw_deg, s.eye_open]).all() for s in withheld)
        assert not any(np.isfinite([s.eye_yaw_deg, s.vergence_deg]).any() for s in withheld)


def test_a_slope_of_light_over_the_eyes_misleads_nobody(
    seen: tuple[list[Observation], list[Step]], person: Profile
) -> None:
    plain, lit = readings(seen, person), readings(seen, person, brighter)
    assert share_read(lit) > 0.9
    moved = [
        abs(a.eye_yaw_deg - b.eye_yaw_deg)
        for a, b in zip(plain, lit, strict=True)
        if np.isfinite(b.eye_yaw_deg)
    ]
    assert np.median(moved) < 0.5
